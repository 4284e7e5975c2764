"""The course of one bin: every day of its calendar that follows from what is known of it."""

from dataclasses import dataclass
from datetime import date

from handlers.practice.days import (
    FERMENT,
    bury_window,
    drain_window,
    low_days,
    plant_window,
    seal_by,
)
from handlers.practice.figure import Reckoning, Refused


@dataclass(frozen=True, slots=True, kw_only=True)
class Course(Reckoning):
    """Days that follow from a bin's days so far; None where nothing follows."""

    drain_from: date | None = None
    drain_by: date | None = None
    seal_by: date | None = None
    bury_from: date | None = None
    bury_by: date | None = None
    late_after: date | None = None
    plant_from: date | None = None
    plant_usual: date | None = None


def course(
    *,
    first_layer: date | None = None,
    drained: date | None = None,
    sealed: date | None = None,
    buried: date | None = None,
    celsius: float | None = None,
    soil_celsius: float | None = None,
    ferment_days: int | None = None,
    plant_days: int | None = None,
) -> Course:
    """The bin's calendar; planting counts from the burial, or from the last good day for one."""
    _in_order(first_layer, sealed, buried)
    if celsius is not None and celsius < 0:
        raise Refused(
            "A frozen bin does not ferment: bring it indoors, and count from the day it has thawed."
        )
    drain = None if drained is None else drain_window(drained)
    seal = None if first_layer is None or sealed else seal_by(first_layer)
    bury = None
    if sealed is not None and buried is None:
        bury = bury_window(sealed, celsius, ferment_days=ferment_days)
    in_ground = buried or (bury.end if bury else None)
    plant = None
    if in_ground is not None:
        plant = plant_window(in_ground, soil_celsius, plant_days=plant_days)
    parts = [part for part in (drain, seal, bury, plant) if part is not None]
    if not parts:
        raise Refused("Say which day you know, such as sealed=2026-03-20.")
    return Course(
        drain_from=drain.start if drain else None,
        drain_by=drain.end if drain else None,
        seal_by=seal.end if seal else None,
        bury_from=bury.start if bury else None,
        bury_by=bury.end if bury else None,
        late_after=bury.late_after if bury else None,
        plant_from=plant.start if plant else None,
        plant_usual=plant.end if plant else None,
        steps=tuple(step for part in parts for step in part.steps),
        figures=tuple(dict.fromkeys(figure for part in parts for figure in part.figures)),
        chosen=tuple(name for part in parts for name in part.chosen),
        lines=(*(line for part in parts for line in part.lines), *_early(sealed, buried)),
    )


def _early(sealed: date | None, buried: date | None) -> tuple[str, ...]:
    """A word on a bin that was buried before it had fermented."""
    if sealed is None or buried is None or (buried - sealed).days >= low_days(FERMENT):
        return ()
    return (
        f"That was after only {(buried - sealed).days} days sealed: cover it well, and give the "
        "soil the longer wait.",
    )


def _in_order(*days: date | None) -> None:
    known = [day for day in days if day is not None]
    if known != sorted(known):
        raise Refused("A bin is filled, then sealed, then buried: check the order of these days.")
