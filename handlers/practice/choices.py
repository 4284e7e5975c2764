"""What a group may settle for itself, because the craft's sources disagree; and our choice."""

from collections.abc import Mapping
from dataclasses import dataclass

from handlers.practice.bed import LIMIT
from handlers.practice.days import FERMENT, PLANT
from handlers.practice.dilution import PARTS
from handlers.practice.dose import Habit
from handlers.practice.recipes import Recipe
from handlers.practice.trench import SOIL_PARTS


@dataclass(frozen=True, slots=True, kw_only=True)
class Choices:
    """One group's choices; each default is a figure of the module that reckons with it."""

    habit: Habit = "spoon"
    recipe: Recipe = "tablespoon"
    bed_parts: float = PARTS["bed"].value
    """Parts of water to one of liquid on established beds."""
    ferment_days: int = int(FERMENT.value)
    """Usual days sealed at room temperature."""
    plant_days: int = int(PLANT.value)
    """Usual days in warm soil before roots."""
    soil_parts: float = SOIL_PARTS.value
    """Parts of soil to one of ferment."""
    limit_kg_ha: float = LIMIT.value
    """Nitrogen that a bed may have in twelve months."""


OURS = Choices()

WHY: Mapping[str, str] = {
    "habit": "spoons are what households are shown; by weight, families use five times as much",
    "recipe": "a tablespoon to ten cups lies within printed recipes, ten to one beyond them",
    "bed_parts": "1:100 is called safe for soil; 1:200 and 1:300 are said too",
    "ferment_days": "two weeks; others say 7 to 12 days, or three weeks",
    "plant_days": "three weeks; others say two, or four",
    "soil_parts": "two parts of soil; half and half is the most that anybody advises",
    "limit_kg_ha": "the lower of two published limits; neither binds a home bed",
}
"""Why each was chosen, and what else is said."""
