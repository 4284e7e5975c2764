"""What lies ahead of a group: when its bin is full, and when its starter runs out."""

from dataclasses import dataclass
from datetime import date

from handlers.practice.figure import Reckoning
from handlers.practice.outlook import Outlook
from handlers.practice.supply import Supply


@dataclass(frozen=True, slots=True, kw_only=True)
class Prospect(Reckoning):
    """The day a bin is full with its 80 % range, and the days that follow from the starter."""

    full_on: date | None
    full_from: date | None
    full_to: date | None
    """None where the day lies beyond a year."""
    filled_l: float
    filled_share: float
    rate_kg_day: float
    days_logged: int
    starter_out_on: date | None = None
    begin_batch_by: date | None = None


def prospect(filling: Outlook, starter: Supply | None) -> Prospect:
    """Both forecasts as one."""
    parts: tuple[Reckoning, ...] = (filling,) if starter is None else (filling, starter)
    return Prospect(
        full_on=filling.full_on,
        full_from=filling.earliest,
        full_to=filling.latest,
        filled_l=filling.filled_l,
        filled_share=filling.filled_share,
        rate_kg_day=filling.rate_kg_day,
        days_logged=filling.days_logged,
        starter_out_on=starter.starter_out_on if starter else None,
        begin_batch_by=starter.begin_batch_by if starter else None,
        steps=tuple(step for part in parts for step in part.steps),
        figures=tuple(figure for part in parts for figure in part.figures),
        lines=tuple(line for part in parts for line in part.lines),
    )
