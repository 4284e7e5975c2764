"""What stands in a message and is nobody's report: links, files, struck words, empty boxes."""

import pytest

from handlers.reading.acts import Drain, Layer, Seal, Unsure
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    [
        "https://example.org/added-2-kg-scraps-to-the-shed-bin",
        "look at this https://blog.example.org/2024/05/i-buried-the-shed-bin-in-may",
        "https://example.org/?q=added+3+kg+to+the+shed+bin",
        "www.example.org/added-2-kg-scraps-to-the-shed-bin",
        "nice article: news.example.org/sealed-the-shed-bin-3-weeks-ago",
        "see added-2-kg-to-the-shed-bin.jpg",
        "photo_of_drained_shed_bin_500_ml.HEIC",
        "- [ ] sealed the shed bin",
        "[ ] buried the shed bin",
        "1. [] drained the shed bin",
        "☐ drained the shed bin",
        "to do: sealed the shed, drained bin 3",
        "still to do: sealed the shed",
        "To-do list:\n- sealed the shed\n- drained bin 3",
        "TODO added 370 g to the shed",
        "not done yet: sealed the shed",
        "~drained the shed bin~ not yet",
    ],
)
def test_words_that_are_nobodys_report(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize(
    "text",
    [
        "added 2 kg to the shed, as in https://example.org/added-5-kg-to-bin-3.",
        "[added 2 kg to the shed](https://example.org/5-kg-to-bin-3)",
        "added 2 kg to the shed (shed-5-kg.jpg)",
        "- [x] added 2 kg to the shed\n- [ ] added 5 kg to bin 3",
        "☑ added 2 kg to the shed ☐ added 5 kg to bin 3",
        "to do:\n- added 5 kg to bin 3\n\nadded 2 kg to the shed",
        "added ~~1 kg~~ 2 kg to the shed",
        "added ~1 kg~ 2 kg to the shed",
        "added ~2 kg to the shed",
        "nothing left to do: added 2 kg to the shed",
    ],
)
def test_the_senders_own_words_beside_them(text: str) -> None:
    [layer] = acts(text, in_room=True)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.bin) == (2, "shed")


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("to do: sealed the shed ✅", [Seal]),
        ("nothing left to do: sealed the shed, drained bin 3", [Seal, Drain]),
    ],
)
def test_what_was_to_do_and_is_done(text: str, kinds: list[type]) -> None:
    assert [type(act) for act in acts(text, in_room=True)] == kinds


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("added 2 kg 4.4 lb to the shed", 2),
        ("added 1 kg 500 g to the shed", 1.5),
        ("added 1kg-2kg to the shed", 1.5),
        ("added 2 kg 3 kg to the shed", None),
        ("added 500 g 1 kg of bread to the shed", None),
    ],
)
def test_of_two_amounts_side_by_side_one_is_meant(text: str, kg: float | None) -> None:
    [act] = acts(text, in_room=True)
    if kg is None:
        assert isinstance(act, Unsure)
        [act] = act.guess
    assert isinstance(act, Layer)
    assert act.mass_kg == kg
