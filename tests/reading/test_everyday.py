"""Everyday turns of speech with their fields: halves, bowls, taps, days, and what is seen."""

from datetime import date

import pytest

from handlers.reading.acts import Act, Ask, Drain, Layer, Observe, Seal
from tests.reading.context import acts

BINS = ("shed", "bin 3", "plot 22", "basement", "third floor", "gen house", "north gate")


def read(text: str) -> tuple[Act, ...]:
    return acts(text, bins=BINS)


@pytest.mark.parametrize(
    ("text", "kg", "shares"),
    [
        ("4 kg of peel and rice half half, shed", 4, {"vegetable": 0.5, "grain": 0.5}),
        ("two kilos exactly, kale half, pasta half. shed", 2, {"vegetable": 0.5, "grain": 0.5}),
        ("3 kg of bread and carrots, half and half, to the shed", 3, None),
        ("a ham bone and all the rice in the shed, 2 kg", 2, {"bone": 0.5, "grain": 0.5}),
        ("yesterday I gave gen house one and half kilo of peel", 1.5, {"vegetable": 1}),
        ("put 3 kg in the shed, half of it rice", 3, None),
        ("half a kilo of peel into the shed", 0.5, {"vegetable": 1}),
        ("dumped the beans nobody ate in the shed one, 600g", 0.6, {"pulse": 1}),
    ],
)
def test_what_went_in_and_of_what(text: str, kg: float, shares: dict[str, float] | None) -> None:
    (layer,) = read(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(kg)
    assert shares is None or layer.materials == pytest.approx(shares)


@pytest.mark.parametrize(
    ("text", "kind", "day"),
    [
        ("put in 2 kg on 1/6", Layer, date(2026, 6, 1)),
        ("put in 2 kg on 1 June", Layer, date(2026, 6, 1)),
        ("I put 2 kg in on June 1st", Layer, date(2026, 6, 1)),
        ("drained 200 ml on 1 June", Drain, date(2026, 6, 1)),
        ("tipped in 2 kg of rice on 1 June", Layer, date(2026, 6, 1)),
    ],
)
def test_a_deed_an_amount_and_a_date_are_a_record(
    text: str, kind: type[Layer | Drain], day: date
) -> None:
    (act,) = acts(text, bins=("shed",), in_room=True)
    assert isinstance(act, kind)
    assert act.on == day


@pytest.mark.parametrize(
    "text",
    [
        "I put on 2 kg on 1 June",
        "put in 2 hours on 1 June",
        "I will put in 2 kg on 20 June",
        "put in 2 kg on 1 June?",
        "we threw 2 kg out on 1 June",
    ],
)
def test_what_is_no_such_record(text: str) -> None:
    assert acts(text, bins=("shed",), in_room=True) == ()


def test_half_into_a_bin_and_half_elsewhere_is_half() -> None:
    (layer,) = read("2 kg of rice, half into the shed and half to the dog")
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(1)


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("2 bowls from the shed, each bowl maybe 300 ml", 0.6),
        ("drained the shed, got one small cup, maybe 200 ml", 0.2),
        ("drained the shed, a cup and a half", 0.375),
        ("half a bucket of peel in the shed, the bucket's a ten litre", 5),
        ("half a pail of dock leaves. Shed. Pail's a six litre", 3),
    ],
)
def test_vessels_and_what_they_hold(text: str, litres: float) -> None:
    (act,) = read(text)
    assert isinstance(act, Drain | Layer)
    assert act.volume_l == pytest.approx(litres)


@pytest.mark.parametrize(
    ("text", "bin"),
    [
        ("added 2 kg to plot twenty two", "plot 22"),
        ("2 kg of peel, 3rd floor", "third floor"),
        ("bsmt 1 kg bread", "basement"),
        ("added 1 kg to t'shed", "shed"),
    ],
)
def test_other_ways_to_write_a_bin(text: str, bin: str) -> None:
    (layer,) = read(text)
    assert isinstance(layer, Layer)
    assert layer.bin == bin


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("the shed grew a beard. White one", ("white_mould",)),
        ("fur on top of the shed, white, looks fine", ("white_mould",)),
        ("the shed has black black spot on top", ("black_mould",)),
        ("drained the shed, 200 ml, proper pickles", ("sour",)),
        ("ran a pint off the shed tap, sharp vinegar off it", ("sour",)),
        ("black spots on top in the shed, took them out with a spoon", ("black_mould",)),
    ],
)
def test_what_is_seen_or_smelt(text: str, signs: tuple[str, ...]) -> None:
    (seen,) = [act for act in read(text) if isinstance(act, Observe)]
    assert seen.signs == signs


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("drained the shed and added 1 kg of pickles, vinegar and all", {Layer, Drain}),
        ("1 kg of peel in the shed, tap closed", {Layer}),
        ("fish heads, 2 kg, already in the shed with the lid on tight", {Layer}),
        ("lard, a litre and a half, into the shed", {Layer}),
        ("300 ml shed, 250 ml bin 3. Juice only, no smell", {Drain}),
        ("do we know when the shed was last drained?", {Ask}),
        ("did you see that fuzz when I sealed the shed yesterday", {Seal}),
    ],
)
def test_no_more_is_told_than_was_done(text: str, kinds: set[type[Act]]) -> None:
    told = {type(act) for act in read(text)} - {Observe}
    assert told == kinds


@pytest.mark.parametrize(
    ("text", "on"),
    [
        ("sealed the shed ytd nite", date(2026, 6, 16)),
        ("can anyone take the shed next week Monday", date(2026, 6, 22)),
        ("I will take the shed from the 8th onwards", date(2026, 7, 8)),
        ("I'll have the shed from the first of the month", date(2026, 7, 1)),
    ],
)
def test_days(text: str, on: date) -> None:
    (act,) = read(text)
    assert getattr(act, "on", None) == on
