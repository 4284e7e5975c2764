"""Units that our own tables lack, by name, from pint's registry.

Only a bare name of letters is looked up, never an expression, and pint is imported only then: its
registry takes a quarter of a second to build.
"""

import re
from functools import cache
from typing import TYPE_CHECKING

from handlers.practice.units import System

if TYPE_CHECKING:
    from pint import UnitRegistry

_NAME = re.compile(r"[A-Za-z_]{1,30}")


def factor(name: str, ours: str, units: System) -> float | None:
    """How many of our unit (in pint's words: "liter", "meter ** 2") one of that name is.

    None if there is no such unit or it measures something else. Outside the US a name that has an
    imperial meaning has that one.
    """
    if not _NAME.fullmatch(name):
        return None
    names = [name] if units == "us" else [f"imperial_{name}", name]
    known = next((each for each in names if _registry().parse_unit_name(each)), None)
    return None if known is None else _in_ours(known, ours)


def _in_ours(name: str, ours: str) -> float | None:
    registry = _registry()
    unit, wanted = registry.Unit(name), registry.Unit(ours)
    if unit.dimensionality != wanted.dimensionality:
        return None
    return float(registry.Quantity(1.0, unit).to(wanted).magnitude)


@cache
def _registry() -> "UnitRegistry[float]":
    from pint import UnitRegistry

    return UnitRegistry()
