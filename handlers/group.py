"""The group's settings: its zone, its units, its dosing habit."""

from typing import Literal
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from handlers.answer import Answer, Setting, Turn
from handlers.reading.acts import Set

UNITS = {
    "metric": "metric",
    "kg": "metric",
    "us": "us",
    "american": "us",
    "pounds": "us",
    "imperial": "imperial",
}
NAMED = {"metric": "metric", "us": "US", "imperial": "imperial"}
HABITS = {"spoon": "spoon", "spoons": "spoon", "weight": "weight"}


def changed(act: Set, turn: Turn) -> Answer:
    """A setting is changed, or what it can be is said."""
    value = act.value.strip()
    match act.what:
        case "units" if units := UNITS.get(value.casefold()):
            return _set("units", units, f"From now on I answer in {NAMED[units]} units.")
        case "habit" if habit := HABITS.get(value.casefold()):
            return _set("habit", habit, f"From now on I dose by the {habit} habit.")
        case "zone" if zone := _zone(value):
            return _set("zone", zone, f"This group's clock is now {zone}.")
        case "units":
            return Answer(say="Units can be metric, us or imperial.")
        case "habit":
            return Answer(say="The dosing habit can be spoon or weight.")
        case "zone":
            return Answer(say=f"I know no zone “{value}”. Name it like Europe/London.")
        case _:
            return Answer(say="You can set units, zone and habit (spoon or weight).")


def _set(what: Literal["zone", "units", "habit"], value: str, say: str) -> Answer:
    return Answer(settings=[Setting(what=what, value=value)], say=say)


def _zone(name: str) -> str | None:
    try:
        return ZoneInfo(name).key
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return None
