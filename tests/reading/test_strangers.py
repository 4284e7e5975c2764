"""Somebody whom no member is called like, told of as one who did it."""

import pytest

from handlers.reading.acts import Drain, Layer, Seal
from tests.reading.context import acts


def doers(text: str) -> list[str | None]:
    return [act.member for act in acts(text, in_room=True) if isinstance(act, Layer | Drain | Seal)]


@pytest.mark.parametrize(
    ("text", "who"),
    [
        ("Yusra put 800 g of peel in bin 3", ["Yusra"]),
        ("Yusra has just added 2 kg of peel to bin 3", ["Yusra"]),
        ("Auntie Yusra drained bin 3, 300 ml", ["Yusra"]),
        ("I put 1 kg in the shed and Yusra put 2 kg in bin 3", [None, "Yusra"]),
        ("Yusra sealed bin 3", ["Yusra"]),
        ("Yesterday Yusra put 2 kg of peelings in the shed", ["Yusra"]),
        ("this morning Yusra drained bin 3", ["Yusra"]),
        ("On Sunday Yusra sealed bin 3", ["Yusra"]),
        ("Last night Yusra added 1 kg of rice to bin 3", ["Yusra"]),
        ("Earlier Yusra put 2 kg in bin 3", ["Yusra"]),
        ("I think Yusra put 2 kg in bin 3", ["Yusra"]),
    ],
)
def test_a_name_right_before_the_deed_is_whose_it_is(text: str, who: list[str | None]) -> None:
    assert doers(text) == who


@pytest.mark.parametrize(
    "text",
    [
        "Jst put 800 g of peel in bin 3",
        "Todat added 2 kg of peel to bin 3",
        "Already put 2 kg of peel in bin 3",
        "Absentmindedly put 2 kg of peel in bin 3",
        "Bokashi added, 2 kg of peel in bin 3",
        "me and Yusra put 2 kg of peel in bin 3",
        "thanks Yusra, put 2 kg of peel in bin 3",
        "Yusra, put 2 kg of peel in bin 3",
        "yusra put 2 kg of peel in bin 3",
        "Yesterday Put 2 kg in bin 3",
        "On Sunday Scraps went in bin 3, 2 kg",
        "Yesterday Afternoon drained bin 3",
        "Yesterday Yusra and I put 2 kg in bin 3",
        "Sunday Roast put in bin 3, 2 kg",
        "Himself put another 2 kg of peel in bin 3",
    ],
)
def test_what_may_be_no_name_leaves_the_record_to_its_sender(text: str) -> None:
    assert doers(text) == [None]


@pytest.mark.parametrize(
    ("text", "bin", "who"),
    [
        ("Shed put 200 g of peel in bin 3", "bin 3", "Shed"),
        ("put 200 g of peel in the shed", "shed", None),
        ("Ruth put 200 g of peel in the shed", "shed", "ruth"),
    ],
)
def test_a_member_called_like_a_bin(text: str, bin: str, who: str | None) -> None:
    members = ("ines", "kofi", "ruth", "Shed")
    [layer] = [a for a in acts(text, members=members, in_room=True) if isinstance(a, Layer)]
    assert (layer.bin, layer.member) == (bin, who)


@pytest.mark.parametrize(
    "text",
    [
        "Maybe Yusra put 800 g in",
        "Has Yusra drained the shed",
        "did Yusra put 2 kg in bin 3",
        "do you think Yusra put 2 kg in bin 3",
    ],
)
def test_what_somebody_may_have_done_is_not_told(text: str) -> None:
    assert acts(text, in_room=True) == ()
