"""Level tablespoons, of whichever country, and how people count them."""

from collections.abc import Mapping
from typing import Literal

from handlers.practice.figure import spoons
from handlers.practice.units import LITRES

Spoon = Literal["us", "metric", "au", "imperial"]

SPOON_ML: Mapping[Spoon, float] = {
    "us": LITRES["us_tablespoon"] * 1000,
    "metric": LITRES["metric_tablespoon"] * 1000,
    "au": LITRES["australian_tablespoon"] * 1000,
    "imperial": LITRES["imperial_tablespoon"] * 1000,
}
"""mL in a level tablespoon of each country's."""


def spoken(count: float, tablespoon: Spoon) -> str:
    """Level spoons as people count them."""
    return f"{spoons(count)} level {country(tablespoon)}tablespoon{'s' if count > 1.1 else ''}"


def country(tablespoon: Spoon) -> str:
    """Whose spoon it is, as a word before it; empty for the metric one."""
    return {"us": "US ", "au": "Australian ", "imperial": "imperial "}.get(tablespoon, "")
