"""What a bin has been through and what lies ahead, as stretches of days."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from handlers.practice import days
from handlers.state import BinState, Run, Stage
from storage.rows import Due


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
    """Days that a run of a bin spends in one stage; the last one is a forecast if `is_forecast`."""

    run: int
    stage: Stage
    start: date
    end: date
    is_forecast: bool


def stretches(
    state: BinState, before: Run | None, dues: Sequence[Due], today: date
) -> list[Stretch]:
    """The stages of a bin's present run, and the ground of the one before, oldest first."""
    made: list[Stretch] = []
    if before and before.buried and not state.run.buried:
        made.append(_ground(before, before.buried, state.number - 1, today))
    run = state.run
    begun = run.first_layer or run.opened or run.sealed
    if begun is None:
        return made

    def add(stage: Stage, start: date, until: date | None, forecast: date) -> None:
        end = until or max(forecast, today)
        if end >= start:
            made.append(
                Stretch(
                    run=state.number, stage=stage, start=start, end=end, is_forecast=until is None
                )
            )

    sealing = next((due.to_day for due in dues if due.what == "seal"), days.seal_by(begun).end)
    if begun != run.sealed:
        add("filling", begun, run.sealed or run.buried, sealing)
    if run.sealed:
        window = run.to_bury(run.sealed)
        ready = min(window.start, run.buried or window.start)
        known = ready if ready <= today else None
        add("fermenting", run.sealed, known, ready)
        if ready == window.start:
            add("ready", ready, run.buried, window.end)
    if run.buried:
        made.append(_ground(run, run.buried, state.number, today))
    return made


def _ground(run: Run, buried: date, number: int, today: date) -> Stretch:
    planting = run.to_plant(buried).end
    return Stretch(
        run=number, stage="in the ground", start=buried, end=planting, is_forecast=planting > today
    )
