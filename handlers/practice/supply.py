"""How long the starter lasts, and when the next batch has to be begun."""

from dataclasses import dataclass
from datetime import date, timedelta
from math import floor

from handlers.practice.days import after
from handlers.practice.dose import Habit, dose
from handlers.practice.figure import Figure, Reckoning, number, positive, within
from handlers.practice.kinds import Shares
from handlers.practice.starter import DRY_DAYS, FERMENT_DAYS, KEEPS_DRY

SPARE_DAYS = Figure("days in hand for a batch that is slow", 3, "d", "", "common practice", 0, 7)
HORIZON_DAYS = 3650
"""Days beyond which no day is named."""


def keeps_until(day: date) -> date:
    """The day until which starter that is dry on a day keeps."""
    return day + timedelta(days=round(KEEPS_DRY.value * 365 / 12))


@dataclass(frozen=True, slots=True, kw_only=True)
class Supply(Reckoning):
    """The day on which the starter has run out, and the last good one to begin a batch."""

    starter_out_on: date | None
    begin_batch_by: date | None
    g_day: float


def supply(
    starter_kg: float,
    scraps_kg_day: float,
    today: date,
    *,
    habit: Habit = "spoon",
    materials: Shares | None = None,
    g_day: float | None = None,
) -> Supply:
    """How long so much starter lasts at so many kg of scraps a day, dosed by the habit.

    `g_day`, if known, is the starter that the group really uses. A batch takes two weeks sealed,
    a few days to dry, and a few in hand; a day that has passed means that it is already late.
    """
    within(starter_kg, 0, 5000, what="The starter", unit="kg", advice="say how much is left")
    dosed: tuple[str, ...] = ()
    if g_day is None:
        positive(scraps_kg_day, 1e5, what="A day", unit="kg", advice="say what goes in")
        # The dose of an ordinary layer: small layers get a sprinkle at least, so it is no less.
        layer = dose(mass_kg=2, materials=materials, habit=habit)
        g_day = layer.starter_g / layer.mass_kg * scraps_kg_day
        dosed = (
            f"{number(layer.starter_g)} g on a layer of 2 kg, by the {habit} habit: at "
            f"{number(scraps_kg_day)} kg of scraps a day {number(g_day)} g",
        )
    positive(g_day, 1e7, what="A day", unit="g of starter", advice="say how much is used")
    lasts = floor(min(starter_kg * 1000 / g_day, HORIZON_DAYS + 1) + 1e-9)
    takes = int(FERMENT_DAYS.value + DRY_DAYS.value + SPARE_DAYS.value)
    out = after(today, lasts) if lasts <= HORIZON_DAYS else None
    begin = after(today, lasts - takes) if lasts <= HORIZON_DAYS else None
    return Supply(
        starter_out_on=out,
        begin_batch_by=begin,
        g_day=g_day,
        steps=(
            *dosed,
            f"{number(starter_kg * 1000)} g at {number(g_day)} g a day last {lasts} days",
            f"a batch takes {takes} days: {number(FERMENT_DAYS.value)} sealed, "
            f"{number(DRY_DAYS.value)} to dry, {number(SPARE_DAYS.value)} in hand",
        ),
        figures=(FERMENT_DAYS, DRY_DAYS, SPARE_DAYS),
        chosen=("habit",) if dosed else (),
        lines=(_said(out, begin, today),),
    )


def _said(out: date | None, begin: date | None, today: date) -> str:
    if out is None or begin is None:
        return "There is starter for years; it is best within one."
    if begin <= today:
        return f"The starter lasts until about {out}: begin a batch now."
    return f"The starter lasts until about {out}: begin a batch by {begin}."
