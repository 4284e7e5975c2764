"""The amount that was plainly said, beside a second number or a vessel, and who put it in."""

import pytest

from handlers.reading.acts import Act, Drain, Layer
from tests.reading.context import acts

BINS = ("shed", "green", "bin 3", "Mabel")


def read(text: str) -> tuple[Act, ...]:
    return acts(text, bins=BINS, in_room=True)


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("drained Mabel, one cup of 200 ml", 0.2),
        ("drained Mabel, half a cup of 300 ml", 0.15),
        ("barley in the shed, one cup of 180 ml", 0.18),
        ("turnip tops to bin 3, one bucket of 6 litres", 6),
        ("leaves in bin 3, one bag of 4 litres", 4),
        ("3 jars of 400 ml of soup in green", 1.2),
    ],
)
def test_a_vessel_with_its_size_holds_so_much(text: str, litres: float) -> None:
    [act] = read(text)
    assert isinstance(act, Drain | Layer)
    assert act.volume_l == pytest.approx(litres)


@pytest.mark.parametrize(
    ("text", "kg", "shares"),
    [
        (
            "200g ham, 300g bread, 1.5kg veg all in green",
            2,
            {"meat": 0.1, "grain": 0.15, "vegetable": 0.75},
        ),
        (
            "quarter of a kilo brie, rest veg, 1 kg all in, green",
            1,
            {"dairy": 0.25, "vegetable": 0.75},
        ),
        ("400 g fish, rest peels, 2 kg altogether in Mabel", 2, {"fish": 0.2, "vegetable": 0.8}),
        ("2 kg all in: 500 g brie, rest veg, green", 2, {"dairy": 0.25, "vegetable": 0.75}),
    ],
)
def test_amounts_of_each_kind_and_the_rest(text: str, kg: float, shares: dict[str, float]) -> None:
    [layer] = read(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(kg)
    assert layer.materials == pytest.approx(shares)


@pytest.mark.parametrize(
    ("text", "kg", "litres"),
    [
        ("Ruth brought 2 kg of plums and I put them in green", 2, None),
        ("Ruth turned up with a bucket of windfalls and we chucked the lot in the shed", None, 10),
        ("Ruth brought round a bucket of chard and I put it all into bin 3", None, 10),
        ("Ruth brought a bucket of chard and I put the lot into bin 3, about 4 litres", None, 4),
    ],
)
def test_what_another_brought_is_of_whoever_put_it_in(
    text: str, kg: float | None, litres: float | None
) -> None:
    [layer] = read(text)
    assert isinstance(layer, Layer)
    assert (layer.mass_kg, layer.volume_l, layer.member) == (kg, litres, None)


def test_what_another_brought_and_put_in_is_theirs() -> None:
    [layer] = read("Ruth brought 2 kg of plums and put them in green")
    assert isinstance(layer, Layer)
    assert layer.member == "ruth"
