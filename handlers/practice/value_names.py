"""The words that a named value may use for itself and for what it chooses."""

import re
from collections.abc import Collection, Mapping

from handlers.practice.dose import Habit
from handlers.practice.figure import Refused, quoted
from handlers.practice.recipes import Recipe
from handlers.practice.tablespoons import Spoon

SPOONS: Mapping[str, Spoon] = {
    "us": "us",
    "metric": "metric",
    "au": "au",
    "imperial": "imperial",
    "usa": "us",
    "american": "us",
    "uk": "metric",
    "british": "metric",
    "australian": "au",
    "australia": "au",
}
"""Whose tablespoon; the spoons sold in Britain today are metric."""

HABITS: Mapping[str, Habit] = {
    "spoon": "spoon",
    "weight": "weight",
    "spoons": "spoon",
    "mass": "weight",
    "percent": "weight",
}

RECIPES: Mapping[str, Recipe] = {
    "tablespoon": "tablespoon",
    "ten-to-one": "ten-to-one",
    "one-to-a-hundred": "one-to-a-hundred",
    "ten-pounds": "ten-pounds",
    **dict.fromkeys(
        (
            *("spoon", "tbsp", "tablespoons", "cups", "ten-cups", "10-cups", "household"),
            *("tablespoon-ten-cups", "tablespoon-for-ten-cups", "tablespoon-per-ten-cups"),
            *("a-tablespoon-for-ten-cups", "1-tbsp-per-10-cups", "1tbsp-10cups", "by-volume"),
        ),
        "tablespoon",
    ),
    **dict.fromkeys(
        (
            *("10:1", "10-1", "10to1", "10-to-1", "1:10", "1-to-10", "one-to-ten", "ten", "tenth"),
            *("parts", "ten-parts", "ten-parts-to-one", "ratio", "by-weight", "weight"),
            "ten-parts-bran-to-one-of-molasses",
        ),
        "ten-to-one",
    ),
    **dict.fromkeys(("1:1:100", "1:100", "hundred", "moisture", "norm"), "one-to-a-hundred"),
    **dict.fromkeys(("10-lb", "ten-lb", "10lb", "pounds"), "ten-pounds"),
}
"""The recipes, and other words for them."""

WETNESS: Mapping[str, float] = {
    "dry": 0.0,
    "ordinary": 0.5,
    "wet": 0.75,
    "soaking": 1.0,
    "very dry": 0.0,
    "normal": 0.5,
    "usual": 0.5,
    "moist": 0.5,
    "damp": 0.5,
    "medium": 0.5,
    "juicy": 0.75,
    "very wet": 1.0,
    "soaked": 1.0,
    "soggy": 1.0,
    "dripping": 1.0,
}
"""How wet scraps are, from 0 for dry to 1 for soaking."""

_OTHER_NAMES: Mapping[str, str] = {
    "weight": "mass",
    "vol": "volume",
    "temp": "celsius",
    "temperature": "celsius",
    "soil_temperature": "soil",
    "spoon": "tablespoon",
    "tbsp": "tablespoon",
    "wet": "wetness",
    "fill": "fill_days",
    "ferment": "ferment_days",
    "on": "mixed",
    "mixed_on": "mixed",
    "date": "mixed",
    "sealed_on": "sealed",
    "seal": "sealed",
    "buried_on": "buried",
    "ratio": "parts",
    "for": "use",
    "mix": "mass",
    "sign": "signs",
    "persons": "people",
    "bin": "capacity",
    "size": "capacity",
    "household": "people",
    "item": "what",
    "previous": "had",
    "already": "had",
    "ferment_mass": "mass",
    "liters": "volume",
    "litres": "volume",
    "layer": "layers",
    "limit": "limit_kg_ha",
    "history": "layers",
    "log": "layers",
    "volume": "capacity",
    "stock": "starter",
    "bran": "starter",
    "number": "bins",
    "count": "bins",
    "dilution": "parts",
    "days": "fill_days",
    "now": "today",
    "as_of": "today",
    "new": "empty",
    "first": "empty",
}
_UNIT_IN_NAME = re.compile(r"(.+)_(kg|g|lb|l|ml|m|cm|m2|ft|in|c|f)")


def canonical(values: Mapping[str, str], names: Collection[str]) -> dict[str, str]:
    """The values under the names that a topic has for them.

    A name may be another word for it, or carry the unit of a bare number ("mass_kg=2").
    """
    found: dict[str, str] = {}
    for name, value in values.items():
        known, text = _known(name.strip().lower().replace("-", "_"), value, names)
        if known in found:
            raise Refused(f"{quoted(known)} was given twice: give it once.")
        found[known] = text
    return found


def _known(name: str, value: str, names: Collection[str]) -> tuple[str, str]:
    if name in names:
        return name, value
    if _OTHER_NAMES.get(name) in names:
        return _OTHER_NAMES[name], value
    if found := _UNIT_IN_NAME.fullmatch(name):
        known, text = _known(found[1], value, names)
        if known in names:
            bare = re.fullmatch(r"\s*-?[\d.,/ ]+\s*", value)
            return known, f"{text} {found[2]}" if bare else text
    return name, value
