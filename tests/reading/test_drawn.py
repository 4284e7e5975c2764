"""Food told by its picture alone, beside an amount."""

import pytest

from handlers.practice.kinds import Kind
from handlers.reading.acts import Act, Ask, Layer, meant
from tests.reading.context import acts


def of(text: str) -> Act | None:
    """The one thing told or asked, be it asked back first."""
    told = acts(text, in_room=True)
    return meant(told[0]) if len(told) == 1 else None


@pytest.mark.parametrize(
    ("text", "kind", "kg"),
    [
        ("350 g 🐟", "fish", 0.35),
        ("900g 🥖 in the shed", "grain", 0.9),
        ("🍗 400 g shed", "meat", 0.4),
        ("added half a kilo 🧀 to the shed", "dairy", 0.5),
        ("600 g 🥕🥦 shed", "vegetable", 0.6),
        ("put 1.2 kg 🐟 heads in the shed", "fish", 1.2),
    ],
)
def test_a_picture_is_the_food(text: str, kind: Kind, kg: float) -> None:
    layer = of(text)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == pytest.approx(kg)
    assert layer.materials == {kind: 1.0}


def test_its_dose_is_that_of_the_food() -> None:
    asked = of("how much bran for 700 g 🐟?")
    assert isinstance(asked, Ask)
    assert (asked.topic, asked.materials, asked.rich) == ("dose", {"fish": 1.0}, 1.0)


@pytest.mark.parametrize("text", ["I've lost 2 kg 🥗", "drank a cup ☕", "ran 5 km 🍌", "🐟🐟🐟"])
def test_other_talk_with_pictures_is_none(text: str) -> None:
    assert acts(text, in_room=True) == ()


@pytest.mark.parametrize("text", ["2 kg in the 🍌 bin", "🍌 2 kg"])
def test_a_picture_that_is_a_bins_name_is_no_food(text: str) -> None:
    layer = acts(text, bins=("🍌", "shed"), in_room=True)[0]
    assert isinstance(layer, Layer)
    assert layer.bin == "🍌"
    assert layer.materials == {"mixed": 1.0}
