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
    "habit": "Spoons on a layer are what households are shown; what families use up comes to five "
    "times as much, which is the weight habit.",
    "recipe": "A tablespoon to ten cups lies within what printed recipes take; ten to one is twice "
    "the richest of them, one to a hundred among the leanest.",
    "bed_parts": "A book calls 1:100 safe for soil; 1:200 and 1:300 are said too, and do no harm.",
    "ferment_days": "A book and a community booklet say two weeks; others 7 to 12 days, or three "
    "weeks. Two weeks are enough for most and too long for none.",
    "plant_days": "Two weeks, two to three, and two to four are said; three weeks lie between.",
    "soil_parts": "Half and half is the most that anybody advises; two parts are safer for roots.",
    "limit_kg_ha": "The lower of the two published limits for manure; neither binds a home bed.",
}
"""Why each was chosen."""
