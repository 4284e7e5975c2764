"""A record put right bin by bin counts once."""

import pytest

from handlers.reading.acts import Act, Amend, Layer
from tests.reading.context import acts

_LAST = Layer(mass_kg=3.0, bin="shed", materials={"grain": 1.0}, rich=0.0, member="kofi")


def _told(text: str, last: Layer | None = _LAST) -> list[tuple[str, str | None, float | None]]:
    return [(a.act, a.bin, a.mass_kg) for a in _read(text, last) if isinstance(a, Layer | Amend)]


def _read(text: str, last: Layer | None) -> tuple[Act, ...]:
    return acts(text, in_room=True, last=last)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (
            "actually it was 2 kg in bin 3 and 1 kg in the shed",
            [("amend", "shed", 1), ("layer", "bin 3", 2)],
        ),
        (
            "no, 1 kg to bin 3 and 2 kg to big blue",
            [("amend", "bin 3", 1), ("layer", "big blue", 2)],
        ),
        ("no, half of it went in bin 3", [("amend", None, 1.5), ("layer", "bin 3", 1.5)]),
        ("actually a third of that to big blue", [("amend", None, 2), ("layer", "big blue", 1)]),
        ("a third went into bin 3 actually", [("amend", None, 2), ("layer", "bin 3", 1)]),
        ("half of that went to big blue", [("amend", None, 1.5), ("layer", "big blue", 1.5)]),
        ("nope, 1 kg to bin 3", [("amend", "bin 3", 1)]),
        ("sorry I'm late, added 2 kg to bin 3", [("layer", "bin 3", 2)]),
        ("added 2 kg to bin 3 and 1 kg to the shed", [("layer", "bin 3", 2), ("layer", "shed", 1)]),
    ],
)
def test_a_record_split_over_bins(text: str, told: list[tuple[str, str, float]]) -> None:
    assert _told(text) == told


def test_the_parts_are_of_what_the_record_was() -> None:
    amend, layer = _read("no, 1 kg to bin 3 and 2 kg to the shed", _LAST)
    assert isinstance(amend, Amend)
    assert amend.materials in (None, {"grain": 1.0})
    assert isinstance(layer, Layer)
    assert layer.materials == {"grain": 1.0}


@pytest.mark.parametrize("last", [None, Layer(mass_kg=3.0, bin="shed", member="ruth")])
def test_nothing_is_put_right_where_no_record_of_ones_own_was(last: Layer | None) -> None:
    assert _told("no, 1 kg to bin 3", last) == [("layer", "bin 3", 1)]
