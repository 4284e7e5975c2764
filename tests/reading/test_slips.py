"""A slip put right in the same breath is read as it was meant, once."""

from datetime import date, timedelta

import pytest

from handlers.reading.acts import Act, Amend, Bury, Drain, Layer, Seal, meant
from tests.reading.context import acts

TODAY = date(2026, 6, 17)


@pytest.mark.parametrize(
    ("text", "act"),
    [
        (
            "put 2 kg of peelings in the shed, no wait, in bin 3",
            Layer(mass_kg=2, materials={"vegetable": 1.0}, rich=0, bin="bin 3", on=TODAY),
        ),
        (
            "added 1 kg bread to bin 3, oops shed",
            Layer(mass_kg=1, materials={"grain": 1.0}, rich=0, bin="shed", on=TODAY),
        ),
        (
            "added 2kg bones to shed *3kg",
            Layer(mass_kg=3, materials={"bone": 1.0}, rich=1, bin="shed", on=TODAY),
        ),
        (
            "added 3 kg, sorry 2 kg of bones to bin 3",
            Layer(mass_kg=2, materials={"bone": 1.0}, rich=1, bin="bin 3", on=TODAY),
        ),
        (
            "put 1 kg bread in bin 3 today, no, yesterday",
            Layer(
                mass_kg=1,
                materials={"grain": 1.0},
                rich=0,
                bin="bin 3",
                on=TODAY - timedelta(days=1),
            ),
        ),
        ("drained 200 ml from bin 3. sorry 250", Drain(volume_l=0.25, bin="bin 3", on=TODAY)),
        ("drained half a litre from the shed, I mean a litre", Drain(
            volume_l=1, bin="shed", on=TODAY)),
        ("sealed the shed, I mean bin 3", Seal(bin="bin 3", on=TODAY)),
        ("buried the shed bin. wait no, drained", Drain(bin="shed", on=TODAY)),
        ("sealed bin 3, sorry, buried", Bury(bin="bin 3", on=TODAY)),
    ],
)  # fmt: skip
def test_what_was_meant_takes_the_place_of_what_was_said(text: str, act: Act) -> None:
    assert acts(text) == (act,)


@pytest.mark.parametrize(
    ("text", "act"),
    [
        ("drained 200 ml from bin 3, sorry 3 days late", Drain(
            volume_l=0.2, bin="bin 3", on=TODAY)),
        ("sealed bin 3, no smell", Seal(bin="bin 3", on=TODAY)),
        ("sealed bin 3. sorry Ruth", Seal(bin="bin 3", on=TODAY)),
    ],
)  # fmt: skip
def test_an_excuse_changes_nothing(text: str, act: Act) -> None:
    assert acts(text)[0] == act


@pytest.mark.parametrize(
    ("text", "of"),
    [
        ("drianed kithcen 200 ml", "kitchen"),
        ("kitchn sealed till the 4th", "kitchen"),
        ("2 lb carrot tops kichen", "kitchen"),
        ("burried kitchen by the shed", "kitchen"),
        ("drained kittens 200 ml", None),
        ("2 lb carrot tops chicken", None),
    ],
)
def test_a_slip_in_the_name_beside_the_deed(text: str, of: str | None) -> None:
    names = [getattr(act, "bin", None) for act in acts(text, bins=("kitchen", "bin 3"))]
    assert (names == [of]) if of else "kitchen" not in names


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("put 400 g of peel in bin 3, no wait, that's sealed, it was the shed", ["layer shed"]),
        ("put 1 kg of peel in bin 3, or rather the shed, bin 3 is sealed", ["layer shed"]),
        ("added 1 kg to bin 3, no sorry, bin 3 is closed, the shed", ["layer shed"]),
        ("put 1 kg of peel in bin 3, I mean the shed, since bin 3 is full", ["layer shed"]),
        ("1 kg of peel in the shed, bin 3 is sealed", ["layer shed", "seal bin 3"]),
        ("put 1 kg of peel in bin 3, and the shed is sealed", ["layer bin 3", "seal shed"]),
    ],
)
def test_why_a_bin_was_wrong_seals_none(text: str, told: list[str]) -> None:
    found = [f"{act.act} {getattr(act, 'bin', None)}" for act in acts(text)]
    assert sorted(found) == told


@pytest.mark.parametrize(
    ("text", "kilos", "kind"),
    [
        ("2 kg crusts. scratch that, it was 2.5", 2.5, "grain"),
        ("800 g of leeks, sorry, 900", 0.9, "vegetable"),
        ("3 kg rice. No wait, 2", 2, "grain"),
        ("half a kilo of crusts, no, 700 g", 0.7, "grain"),
        ("crusts in the shed, 1 kg. Wait no, 1.4", 1.4, "grain"),
        ("1 kg of leeks\nscratch that, it was 1.2", 1.2, "vegetable"),
        ("put 4 kg of crusts in the shed, my mistake, 3.5 kg", 3.5, "grain"),
        ("put 4 lb of leeks in the shed. Tell a lie, 3 and a half", 3.5 * 0.45359237, "vegetable"),
        ("2 kg of crusts to the shed. Hold on. 1.5 kg. I misread the scale", 1.5, "grain"),
        ("put 3 kg of crusts in the shed, no, leeks", 3, "vegetable"),
        ("4 lb of crusts in the shed, I mean ounces", 0.25 * 0.45359237, "grain"),
        ("700 kg of leeks into the shed. Sorry, grams", 0.7, "vegetable"),
        ("put 3 kg of crusts in the shed, no meat", 3, "grain"),
    ],
)
def test_only_the_right_amount_is_a_layer(text: str, kilos: float, kind: str) -> None:
    [act] = acts(text, in_room=True)
    layer = meant(act)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(kilos)
    assert layer.materials == {kind: 1.0}


def test_what_the_last_record_holds_is_put_right_there() -> None:
    last = Layer(mass_kg=2.0, materials={"grain": 1.0})
    [amend] = acts("2 kg of rice, sorry, 3", in_room=True, last=last)
    assert isinstance(amend, Amend)
    assert amend.mass_kg == pytest.approx(3)


@pytest.mark.parametrize(
    "text",
    [
        "2 kg of rice. Sorry, 3 kg of potatoes are still in the larder",
        "1 kg of leeks, sorry, 2 late",
        "2 kg of pears, no, thanks",
    ],
)
def test_another_thing_is_no_better_amount(text: str) -> None:
    assert not any(isinstance(meant(act), Layer) for act in acts(text, in_room=True))
