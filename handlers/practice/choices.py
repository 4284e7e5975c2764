"""What a group may settle for itself, because the craft's sources disagree; and our choice."""

from collections.abc import Mapping
from dataclasses import dataclass

from handlers.practice.bed import LIMIT
from handlers.practice.days import FERMENT, PLANT
from handlers.practice.dilution import PARTS, Use
from handlers.practice.dose import Habit
from handlers.practice.recipes import Recipe
from handlers.practice.trench import DEPTH, SOIL_PARTS


@dataclass(frozen=True, slots=True, kw_only=True)
class Choices:
    """One group's choices; each default is a figure of the module that reckons with it."""

    habit: Habit = "spoon"
    recipe: Recipe = "tablespoon"
    bed_parts: float = PARTS["bed"].value
    """Parts of water to one of liquid on established beds."""
    pot_parts: float = PARTS["pot"].value
    """The same for pots and house plants."""
    ferment_days: int = int(FERMENT.value)
    """Usual days sealed at room temperature."""
    plant_days: int = int(PLANT.value)
    """Usual days in warm soil before roots."""
    soil_parts: float = SOIL_PARTS.value
    """Parts of soil to one of ferment."""
    depth_cm: float = DEPTH.value * 100
    """Depth of a trench where no animals dig."""
    limit_kg_ha: float = LIMIT.value
    """Nitrogen that a bed may have in twelve months."""

    @property
    def parts(self) -> Mapping[Use, float]:
        """Parts of water to one of liquid, for each use that is theirs to settle."""
        return {"bed": self.bed_parts, "pot": self.pot_parts}


OURS = Choices()

WHY: Mapping[str, str] = {
    "habit": "spoons are what households are shown; by weight, families use five times as much",
    "recipe": "a tablespoon to ten cups lies within printed recipes, ten to one beyond them",
    "bed_parts": "1:100 is called safe for soil; 1:200 and 1:300 are said too",
    "pot_parts": "1:500 is said, and 1:1000",
    "ferment_days": "two weeks; others say 7 to 12 days, or three weeks",
    "plant_days": "three weeks; others say two, or four",
    "soil_parts": "two parts of soil; half and half is the most that anybody advises",
    "depth_cm": "a spade's blade; a foot and more is said too",
    "limit_kg_ha": "the lower of two published limits; neither binds a home bed",
}
"""Why each was chosen, and what else is said."""
