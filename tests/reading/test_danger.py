"""Rats, gas and green mould are written down even where nothing else was found in the words."""

import pytest

from handlers.practice.signs import Sign
from handlers.reading.acts import Ask, Layer, Observe
from handlers.reading.arranged import WhatIsSet, WhichMeasure
from handlers.reading.plans import read
from tests.reading.context import group


@pytest.mark.parametrize(
    ("text", "sign", "bin"),
    [
        ("rats at the bin", "rodents", None),
        ("there are rats at the bin", "rodents", None),
        ("the lid exploded", "gas", None),
        ("something furry and green in the shed", "green_mould", "shed"),
    ],
)
def test_a_danger_is_written_down(text: str, sign: Sign, bin: str | None) -> None:
    [act] = read(text, group(in_room=True))
    assert isinstance(act, Observe)
    assert (act.signs, act.bin) == ((sign,), bin)


@pytest.mark.parametrize(
    "text",
    [
        "rats in the shed again",
        "are there rats at the bin?",
        "no rats at the bin",
        "my friend's bin got rats",
        "mouldy bread in the kitchen",
        "the fireworks exploded over the bin",
        "rats, forgot the milk",
    ],
)
def test_what_may_be_elsewhere_is_not(text: str) -> None:
    assert not [one for one in read(text, group(in_room=True)) if isinstance(one, Observe)]


def test_outside_a_room_the_contract_alone_is_read() -> None:
    assert read("the lid exploded", group()) == ()


@pytest.mark.parametrize(
    ("text", "units", "unit"),
    [
        ("how much starter for 5 gallons", "metric", "gallon"),
        ("put 2 gallons of peelings in the shed bin", "metric", "gallon"),
        ("how much starter for 5 US gallons", "metric", None),
        ("how much starter for 5 gallons", "us", None),
        ("drained a pint from the shed bin", "metric", None),
    ],
)
def test_which_gallon_is_said_in_a_metric_group(text: str, units: str, unit: str | None) -> None:
    said = read(text, group(in_room=True, units=units))
    measures = [one.unit for one in said if isinstance(one, WhichMeasure)]
    assert measures == ([unit] if unit else [])


@pytest.mark.parametrize(
    ("text", "what"),
    [
        ("what are our settings?", "all"),
        ("what is set here?", "all"),
        ("bot, what's set up in this room", "all"),
        ("what's our time zone", "zone"),
        ("which units do we use?", "units"),
        ("when do you remind us?", "digest"),
        ("what are the quiet hours?", "quiet"),
    ],
)
def test_what_is_set_is_asked(text: str, what: str) -> None:
    assert read(text, group(in_room=True)) == (WhatIsSet(what=what),)


def test_a_weight_below_nought_is_no_dose() -> None:
    [act] = read("how much starter for -1 kg", group(in_room=True))
    assert isinstance(act, Ask)
    assert act.mass_kg == -1.0
    assert not [one for one in read("added -1 kg", group(in_room=True)) if isinstance(one, Layer)]
