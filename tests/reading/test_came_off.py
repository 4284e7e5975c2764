"""Liquid told in a few words: beside what went in, and off several bins one after the other."""

from datetime import date

import pytest

from handlers.reading.acts import Drain, Layer
from tests.reading.context import acts

TODAY, YESTERDAY = date(2026, 6, 17), date(2026, 6, 16)


def _drained(text: str) -> list[tuple[str | None, float | None, date | None]]:
    found = [act for act in acts(text) if isinstance(act, Drain)]
    return [(act.bin, act.volume_l and round(act.volume_l, 3), act.on) for act in found]


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("2 kg of peel in the shed and I've run 150 mil off it", 0.15),
        ("leeks 400 g + cod skin 200 g in shed, and half a cup of juice out of it", 0.125),
        ("Herring heads, two pounds, shed. Pint came off it, too.", 0.568),
        ("shed is left tidy: 250 ml off, 900 g of leek tops in", 0.25),
        ("The shed lid is up like a dome. I let out 300 ml and now it is calm", 0.3),
        ("the shed is full so I ran half a pint off it and shut it up", 0.284),
        ("shed got 800 g of rice today and 200 ml of juice came off", 0.2),
    ],
)
def test_what_came_off_is_told_beside_something_else(text: str, litres: float) -> None:
    assert _drained(text) == [("shed", litres, TODAY)]


@pytest.mark.parametrize(
    "text",
    [
        "1 kg of rice in the shed, 500 g of it was mould so I took that out",
        "Milk 500 ml off, in the shed",
        "1 kg of stew in the shed, drank a pint out of it first",
        "800 g of leeks in the shed, and 20 litres of petrol out of the van",
    ],
)
def test_what_else_is_off_or_out_was_not_drained(text: str) -> None:
    assert _drained(text) == []


def test_it_was_drained_on_the_day_told_with_it() -> None:
    assert _drained("yesterday drain 3, 600 ml. today 400 g boiled rice in 3") == [
        ("bin 3", 0.6, YESTERDAY)
    ]


@pytest.mark.parametrize("part", ["skin", "rind"])
def test_the_skin_of_an_orange_is_weighed_and_is_no_mould(part: str) -> None:
    layer, drain = acts(f"Yesterday 700 gram orange {part} in shed. Today, 200 ml juice out.")
    assert isinstance(layer, Layer)
    assert isinstance(drain, Drain)
    assert (layer.materials, layer.on, drain.on) == ({"fruit": 1.0}, YESTERDAY, TODAY)


@pytest.mark.parametrize(
    ("text", "told"),
    [
        (
            "Drained big blue, 300 ml, and the shed, 100 ml.",
            [("big blue", 0.3, TODAY), ("shed", 0.1, TODAY)],
        ),
        (
            "taps done yesterday: shed 250 ml, Tall Paul 400 ml",
            [("shed", 0.25, YESTERDAY), ("Tall Paul", 0.4, YESTERDAY)],
        ),
    ],
)
def test_each_bin_of_a_round_has_its_own(text: str, told: list[tuple[str, float, date]]) -> None:
    assert _drained(text) == told


def test_a_round_tells_which_bin_gave_nothing() -> None:
    told = acts("Tap round: big blue 250 ml, Tall Paul 400 ml, nothing out of the shed.")
    assert [(act.act, getattr(act, "bin", None)) for act in told] == [
        ("drain", "big blue"),
        ("drain", "Tall Paul"),
        ("observe", "shed"),
    ]
