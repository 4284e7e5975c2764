"""Whose deed it is where names are words, are those of bins too, or head a pasted line."""

import pytest

from handlers.reading.acts import Drain, Layer, Seal
from tests.reading.context import acts

SHED = ("shed", "blue")
CALLED_BLUE = ("ines", "Blue")


@pytest.mark.parametrize(
    ("text", "member"),
    [
        ("Rose put 550 g of apples in the shed bin", "Rose"),
        ("Will put 550 g of apples in the shed bin", "Will"),
        ("Ivy added 550 g of apples to the shed bin", "Ivy"),
        ("morning all. Hope tipped 550 g of apples in the shed", "Hope"),
        ("Apples put in the shed bin, 550 g", None),
        ("Today put 550 g of apples in the shed bin", None),
        ("Basil and apples in the shed bin, 550 g", None),
    ],
)
def test_a_name_that_is_a_word(text: str, member: str | None) -> None:
    [layer] = acts(text, in_room=True)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.bin, layer.member) == (0.55, "shed", member)
    assert member is None or layer.materials == {"fruit": 1.0}


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("blue 300 g", [("blue", None)]),
        ("blue: 200 g peelings", [("blue", None)]),
        ("blue 1 kg, shed 2 kg", [("blue", None), ("shed", None)]),
        ("Blue put 2 kg in the shed", [("shed", "Blue")]),
        ("2 kg in the shed by Blue", [("shed", "Blue")]),
    ],
)
def test_a_member_called_like_a_bin(text: str, told: list[tuple[str, str | None]]) -> None:
    found = acts(text, in_room=True, bins=SHED, members=CALLED_BLUE, sender="ines")
    assert [(act.bin, act.member) for act in found if isinstance(act, Layer)] == told


def test_a_deed_of_a_member_called_like_a_bin() -> None:
    [seal] = acts("blue sealed the shed bin", bins=SHED, members=CALLED_BLUE, sender="ines")
    assert isinstance(seal, Seal)
    assert (seal.bin, seal.member) == ("shed", "Blue")


@pytest.mark.parametrize(
    "text",
    [
        "[12:03] Ines: added 2 kg to the shed bin\n[12:05] Kofi: drained bin 3",
        "[28/11/2026, 09:12] ines: drained the shed bin",
        "28/11/2026, 09:12 - Ines: drained the shed bin",
        "<ines> added 2 kg to the shed bin",
        "Ines, 12:03\nadded 2 kg to the shed bin",
        "Forwarded from Ines:\nadded 2 kg to the shed bin",
        "fwd: added 2 kg to the shed bin",
    ],
)
def test_a_pasted_line_was_told_where_it_was_written(text: str) -> None:
    assert acts(text, in_room=True) == ()
    [act] = acts(f"{text}\n\nand I drained the shed bin", in_room=True)
    assert isinstance(act, Drain)


@pytest.mark.parametrize(
    "text",
    [
        "[12:03] shed: 2 kg of peel",
        "shed, 12:03\n2 kg of peel",
        "12:03 added 2 kg of peel to the shed",
        "forwarded the recipe. added 2 kg of peel to the shed",
    ],
)
def test_an_hour_and_a_bin_head_the_senders_own_line(text: str) -> None:
    [layer] = acts(text, in_room=True)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.bin) == (2, "shed")
