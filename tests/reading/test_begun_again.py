"""A bin that is begun anew: emptied, washed and started over, or told tersely to be started."""

import pytest

from handlers.reading.acts import Bury, Layer, Open
from tests.reading.context import acts

_BINS = ("shed", "barn", "attic", "silver", "bin 3", "Tall Paul")


def _opened(text: str) -> list[str | None]:
    return [act.bin for act in acts(text, bins=_BINS) if isinstance(act, Open)]


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("Silver is rinsed out and started over, same 20 litre bucket", "silver"),
        ("The barn's empty and scrubbed, so she starts over today", "barn"),
        ("washed the attic one and started it afresh", "attic"),
        ("Tall Paul's clean, started him back up this morning", "Tall Paul"),
        ("Start bin 3 this morning. Shed one is resting", "bin 3"),
        ("Begin bin 3 yesterday", "bin 3"),
    ],
)
def test_it_is_begun_again(text: str, name: str) -> None:
    assert _opened(text) == [name]


def test_its_first_layer_is_in_it() -> None:
    text = "Attic is started fresh, lovely and clean, first thing in was 400 g of toast"
    opened, layer = acts(text, bins=_BINS)
    assert isinstance(opened, Open)
    assert isinstance(layer, Layer)
    assert (opened.bin, layer.bin, layer.mass_kg) == ("attic", "attic", 0.4)


def test_it_is_begun_again_behind_its_burial() -> None:
    told = acts("emptied the barn at last, in the ground by the wall, n started it back up empty",
                bins=_BINS)  # fmt: skip
    assert [(type(act), getattr(act, "bin", None)) for act in told] == [
        (Bury, "barn"),
        (Open, "barn"),
    ]


@pytest.mark.parametrize(
    "text",
    [
        "Start bin 3 tomorrow morning",
        "start bin 3 this morning?",
        "please start bin 3 today",
        "sealed the attic bin, the clean one next, started a fresh batch of bran",
        "the barn smells again, it was clean on Monday",
        "the attic's been cleaned and is open again",
        "the meeting in the barn was a mess, so we start over next week",
        "will rinse silver and start it over on Friday",
    ],
)
def test_what_is_ahead_or_of_something_else_begins_none(text: str) -> None:
    assert _opened(text) == []


_THERE = ("yard", "green", "shed", "bin 3")


def _emptied(text: str) -> list[tuple[str | None, str | None]]:
    told = [act for act in acts(text, bins=_THERE, in_room=True) if isinstance(act, Open)]
    return [(act.bin, act.emptied) for act in told]


@pytest.mark.parametrize(
    ("text", "name", "became"),
    [
        ("tipped yard out, starting again", "yard", "thrown out"),
        ("threw out what was in the shed, starting fresh", "shed", "thrown out"),
        ("the green one went off, chucked it all, fresh start", "green", "thrown out"),
        ("had to bin everything in yard, started over", "yard", "thrown out"),
        ("green was binned, it went mouldy. Starting over", "green", "thrown out"),
        ("chucked the contents of bin 3, new start today", "bin 3", "thrown out"),
        ("emptied the green, back to nought", "green", "emptied"),
        ("washed out yard, back to square one", "yard", "emptied"),
        ("emptied the shed bin and washed it, starting again", "shed", "emptied"),
    ],
)
def test_what_was_in_it_is_gone(text: str, name: str, became: str) -> None:
    assert _emptied(text) == [(name, became)]


@pytest.mark.parametrize(
    "text",
    [
        "tipped the peelings into yard, starting again",
        "chucked everything in yard, starting again",
        "tipped yard's juice out, starting again",
        "shed got thrown out, we start over tomorrow",
        "if it stinks we tip the green out and start again",
        "should we throw out green and start again?",
        "Bram wants to tip out green and start over",
        "the green team lost, binned the lot and started again",
        "the curry burnt, binned the lot and washed it up, starting again",
    ],
)
def test_nothing_of_a_bin_is_gone(text: str) -> None:
    assert _emptied(text) == []


@pytest.mark.parametrize(
    "text",
    [
        "cleaned bin 3's tap and got it going again",
        "bin 3 smells clean and is going again",
        "emptied bin 3's tray and started again",
        "nothing wrong with bin 3, it's started again",
    ],
)
def test_a_part_of_it_is_cleaned_and_its_run_goes_on(text: str) -> None:
    assert {became for _, became in _emptied(text)} <= {None}


@pytest.mark.parametrize(
    "text",
    ["emptied the shed and started again", "emptied bin 3 into the trench and started again"],
)
def test_a_room_may_be_emptied_and_a_bin_into_the_ground(text: str) -> None:
    assert [became for _, became in _emptied(text)] == [None]
