"""How much liquid to expect from a bin: from none to about 100 mL for each kg of scraps."""

from dataclasses import dataclass

from handlers.practice.composition import content
from handlers.practice.figure import Figure, Reckoning, number, positive
from handlers.practice.kinds import Shares

MOST = Figure(
    "liquid from juicy scraps, at most",
    100,
    "mL to 1 kg",
    "habit of the trade; none at all is normal too",
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


@dataclass(frozen=True, slots=True, kw_only=True)
class Liquid(Reckoning):
    """Liquid that a bin may give in all, and the range that is no reason to wonder."""

    expected_l: float
    low_l: float
    high_l: float


def liquid(mass_kg: float, materials: Shares | None = None) -> Liquid:
    """Liquid from so many kg of scraps: the wetter the make-up, the nearer to the most."""
    positive(mass_kg, 10000, what="The scraps", unit="kg", advice="say how much went in")
    made = content(materials)
    water = made.water / 100
    part = min(1.0, max(0.0, (water - HELD.value) / (1 - HELD.value)))
    most = mass_kg * MOST.value / 1000
    return Liquid(
        expected_l=most * part,
        low_l=0.0,
        high_l=most,
        steps=(
            f"scraps of {number(water * 100)} % water ({made.source})",
            f"{number(mass_kg)} kg x {number(MOST.value)} mL x ({number(water)} - "
            f"{number(HELD.value)}) / {number(1 - HELD.value)} = {number(most * part * 1000)} mL",
        ),
        figures=(MOST, HELD),
        lines=(
            f"About {number(most * part * 1000, 2)} mL in all; anything from none to "
            f"{number(most * 1000, 2)} mL is normal.",
        ),
    )
