"""When a bin will be full, by its layers and by who feeds it."""

from datetime import date

from handlers.practice.figure import Refused
from handlers.practice.outlook import HOUSEHOLD, Outlook, full_forecast
from handlers.state import BinState


def outlook_of(state: BinState, today: date, *, explained: bool = True) -> Outlook | None:
    """The forecast of a bin, seen from a day; None where its size is not known or cannot be."""
    if state.capacity_l is None:
        return None
    # Each of several members stands for a household; one alone may come from one of any size.
    feeders = len(state.run.fed_by)
    try:
        return full_forecast(
            state.run.layers,
            state.capacity_l,
            today,
            people=feeders * HOUSEHOLD.value if feeders > 1 else None,
            materials=state.run.make_up,
            explained=explained,
        )
    except Refused:
        return None  # a size that no bin has, written down before: it forecasts nothing
