"""What is to be done to a bin, and between which days: it follows from the bin's entries."""

from datetime import date, timedelta

from handlers.practice import days, outlook
from handlers.state import BinState, Run
from storage.rows import Due

NAMED_LATE = (2, 5, 9, 14, 21)
"""Days after its last day on which something overdue is named again: ever more rarely."""

PLANT_SHOWN = timedelta(days=7)
"""How long after its last day "the soil is ready" is still worth showing."""

DUTIES = {
    "drain": "drain {bin}",
    "seal": "seal {bin}",
    "bury": "bury {bin}",
    "plant": "plant where {bin} was buried",
}
"""What a due asks to do, in words."""


Days = tuple[date, date]
"""The first and the last day on which to do it."""


def dues_of(state: BinState, before: Run | None = None) -> list[Due]:
    """The dues of a bin's present run, and when the soil of the run before can be planted."""
    run = state.run
    windows: dict[str, Days] = {}
    if buried := run.buried or (before.buried if before else None):
        windows["plant"] = _days(days.plant_window(buried))
    if not run.buried and (begun := run.first_layer or run.sealed):
        windows["drain"] = _days(days.drain_window(max(begun, run.last_drain or begun)))
        if run.sealed:
            windows["bury"] = _days(days.bury_window(run.sealed, run.celsius))
        else:
            windows["seal"] = _seal_days(state, begun)
    return [
        Due(bin=state.bin, what=what, from_day=first, to_day=last)
        for what, (first, last) in windows.items()
    ]


def _days(window: days.Window) -> Days:
    return window.start, window.end


def _seal_days(state: BinState, begun: date) -> Days:
    """From the day it is likely full to the last likely one; two weeks of filling at most."""
    latest = days.seal_by(begun).end
    layers = state.run.layers
    if not layers or not state.capacity_l:
        return latest, latest
    full = outlook.full_forecast(layers, state.capacity_l, layers[-1][0])
    return min(full.full_on or latest, latest), min(full.latest or latest, latest)


def is_named_on(due: Due, today: date) -> bool:
    """Whether a digest of that day names the due: first day, last day, then ever more rarely.

    The last day of a window of two days goes unnamed, so as not to say the same twice running.
    """
    if due.put_off_until and today < due.put_off_until:
        return False
    if due.what == "plant":
        return today == due.from_day
    late = (today - due.to_day).days
    is_last = today == due.to_day and (due.to_day - due.from_day).days > 1
    return (
        today == due.from_day
        or is_last
        or today == due.put_off_until
        or late in NAMED_LATE
        or (late > NAMED_LATE[-1] and late % NAMED_LATE[-1] == 0)
    )


def is_shown_on(due: Due, today: date) -> bool:
    """Whether the due still belongs in the calendar on that day."""
    return due.what != "plant" or today <= due.to_day + PLANT_SHOWN
