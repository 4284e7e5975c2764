"""What lies ahead of a group: when its bin is full, and when its starter runs out."""

from dataclasses import dataclass
from datetime import date

from handlers.practice.figure import Reckoning
from handlers.practice.outlook import Outlook
from handlers.practice.supply import Supply


@dataclass(frozen=True, slots=True, kw_only=True)
class Prospect(Reckoning):
    """The day a bin is full with its 80 % range, and the days that follow from the starter."""

    full_on: date | None = None
    full_from: date | None = None
    full_to: date | None = None
    """None where the day lies beyond a year, or no bin was asked about."""
    filled_l: float | None = None
    filled_share: float | None = None
    rate_kg_day: float | None = None
    days_logged: int | None = None
    starter_out_on: date | None = None
    begin_batch_by: date | None = None


def prospect(filling: Outlook | None, starter: Supply | None) -> Prospect:
    """Both forecasts as one, or the one there is."""
    parts = [part for part in (filling, starter) if part is not None]
    return Prospect(
        full_on=filling.full_on if filling else None,
        full_from=filling.earliest if filling else None,
        full_to=filling.latest if filling else None,
        filled_l=filling.filled_l if filling else None,
        filled_share=filling.filled_share if filling else None,
        rate_kg_day=filling.rate_kg_day if filling else None,
        days_logged=filling.days_logged if filling else None,
        starter_out_on=starter.starter_out_on if starter else None,
        begin_batch_by=starter.begin_batch_by if starter else None,
        steps=tuple(step for part in parts for step in part.steps),
        figures=tuple(figure for part in parts for figure in part.figures),
        lines=tuple(line for part in parts for line in part.lines),
    )
