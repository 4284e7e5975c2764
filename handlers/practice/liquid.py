"""How much liquid to expect from a bin: from none to about 100 mL for each kg of scraps.

No measured yields are known to us. That juicy scraps give more and that none is no fault is what
the trade says; between the two the water in the scraps decides.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal

from handlers.practice.composition import content, water_in
from handlers.practice.density import shares
from handlers.practice.figure import Figure, Reckoning, number, positive, within
from handlers.practice.kinds import Shares

MOST = Figure(
    "liquid from juicy scraps, at most",
    100,
    "mL to 1 kg",
    "",
    "common practice",
    0,
    100,
)
HELD = Figure(
    "water that scraps hold without dripping",
    0.60,
    "of the mass",
    "meat, rice and bread give none; fruit and vegetables, at 80 to 95 %, do",
    "derived",
    0.55,
    0.70,
)


DRY_MOST = Figure(
    "liquid that is no reason to wonder, however dry the scraps",
    30,
    "mL to 1 kg",
    "ours",
    "derived",
    20,
    50,
)
TWICE = Figure("times the expected liquid over which it is much", 2, "times", "ours", "derived")
LITTLE = Figure(
    "share of the expected liquid under which it is little", 0.25, "of it", "ours", "derived"
)
WORTH_A_WORD_L = 0.3
"""Where less than this is expected, having drained little means nothing."""

Drained = Literal["little", "usual", "much"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Liquid(Reckoning):
    """Liquid that a bin may give in all, and the range that is no reason to wonder."""

    expected_l: float
    low_l: float
    high_l: float
    drained_l: float | None = None
    drained: Drained | None = None
    """What was drained, held against that."""


def liquid(
    mass_kg: float, materials: Shares | None = None, *, drained_l: float | None = None
) -> Liquid:
    """Liquid from so many kg of scraps: the wetter the make-up, the nearer to the most.

    With what was drained from them so far, whether that is little or much.
    """
    positive(mass_kg, 10000, what="The scraps", unit="kg", advice="say how much went in")
    made = content(materials)
    water = made.water / 100
    part = min(1.0, max(0.0, (water - HELD.value) / (1 - HELD.value)))
    most = mass_kg * MOST.value / 1000
    expected = most * part
    # Mixed scraps may be all melon: whatever is not of a known kind has the whole range.
    unknown = shares(materials).get("mixed", 0.0)
    known = min(most, max(TWICE.value * expected, mass_kg * DRY_MOST.value / 1000))
    high = unknown * most + (1 - unknown) * known
    found = None if drained_l is None else _found(drained_l, expected, high)
    return Liquid(
        expected_l=expected,
        low_l=0.0,
        high_l=high,
        drained_l=drained_l,
        drained=found,
        caution="liquid",
        steps=(
            f"scraps of {number(water * 100)} % water, of which they hold "
            f"{number(HELD.value * 100)} %",
            f"{number(mass_kg)} kg x {number(MOST.value)} mL x ({number(water)} - "
            f"{number(HELD.value)}) / {number(1 - HELD.value)} = {number(expected * 1000)} mL",
        ),
        figures=(MOST, HELD, water_in(made), *(() if unknown == 1 else (DRY_MOST, TWICE))),
        lines=(
            f"About {_said(expected)} in all; anything from none to {_said(high)} is normal.",
            *((_WORDS[found],) if found else ()),
        ),
    )


_WORDS: Mapping[Drained, str] = {
    "little": "Less came off than such scraps give: see that the tap and the grid are clear. Dry "
    "is no fault.",
    "usual": "What you drained is as usual.",
    "much": "That is much: drain it every other day, and add torn paper or dry bread.",
}


def _found(drained_l: float, expected_l: float, high_l: float) -> Drained:
    within(drained_l, 0, 1000, what="What was drained", unit="L", advice="say how much came off")
    if drained_l > high_l * (1 + 1e-9):
        return "much"
    if expected_l >= WORTH_A_WORD_L and drained_l < LITTLE.value * expected_l:
        return "little"
    return "usual"


def _said(litres: float) -> str:
    return f"{number(litres * 1000, 2)} mL" if litres < 1 else f"{number(litres, 2)} L"
