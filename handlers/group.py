"""The group's settings: zone, units, dosing habit, and when it is reminded."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from datetime import date, time
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from handlers import chosen
from handlers.answer import SILENCE, Answer, PutOff, Setting, SettingName, Turn
from handlers.asked import addresses
from handlers.chosen import CHOICES
from handlers.planning import owndates
from handlers.planning.quiet import is_quiet, parsed
from handlers.powers import refusal
from handlers.practice.figure import listed, number
from handlers.practice.units import LITRES
from handlers.reading.acts import Set
from handlers.reading.arranged import Moved
from handlers.reading.arrangements import reminderdays
from handlers.reading.arrangements.reminderdays import WEEK, quiet_days

UNITS = {
    "metric": "metric",
    "kg": "metric",
    "us": "us",
    "american": "us",
    "imperial": "imperial",
}
NAMED = {"metric": "metric", "us": "US", "imperial": "imperial"}
HABITS = {"spoon": "spoon", "spoons": "spoon", "weight": "weight"}


NOT_HAD: Mapping[str, str] = {
    "language": "I write in English alone.",
    "dates": "I write days with the month in words, like “Friday 4 December”, and hours from 0 to "
    "24; that cannot be set.",
    "reminder days": "I remind on the days when something is due, at {digest}. There is “remind us "
    "at 18:00”, “no reminders on Sundays”, “only remind us on weekdays”, “no reminders till "
    "Monday” and “turn the reminders off”; no other rhythm can be set. For a day of your own say "
    "“remind us every Friday to empty the caddy”.",
    "some reminders": owndates.OF_NO_BIN,
    "rota": "To change a rota say it anew: “rota for the shed bin: Ines, Bram, weekly, from "
    "Monday”; turns change hands on that weekday. “Add Mei to the rota” and “take Bram off the "
    "rota” change who is on it.",
    "keeper": "A keeper takes a bin over: “I've got the shed bin now”; or has it offered: “pass "
    "the shed bin to Mei”.",
}
"""What is asked for and cannot be set, and what there is instead."""


async def changed(act: Set, turn: Turn) -> Answer:
    """A setting is changed, or what it can be is said."""
    value = act.value.strip()
    only_asks = act.what == "calendar link" and "new" not in value.split()
    if not only_asks and (refused := await refusal("settings", turn)):
        return Answer(say=refused)
    if act.what in CHOICES:
        return chosen.changed(act.what, value, turn.units)
    if act.what == "calendar link":
        return await addresses.link(value, turn)
    if act.what == "reminders" and value.casefold() == "on":
        return await _reminding_again(turn)
    if act.what == reminderdays.NAME and (days := quiet_days(value)) is not None:
        return _quiet_days(days)
    if change := _CHANGES.get(act.what):
        return change(value, turn)
    if await owndates.is_moved(turn):
        return SILENCE
    if act.what in NOT_HAD:
        at = f"{turn.book.room.digest_at:%H:%M}"
        return Answer(say=NOT_HAD[act.what].format(digest=at))
    if moved := next((one for one in turn.told if isinstance(one, Moved)), None):
        return owndates.unmoved(moved)
    return Answer(
        say="That I cannot set. You can set units, zone, habit (spoon or weight), the reminder "
        "time, quiet hours, turn reminders on or off, and ask for a new calendar link; of the "
        f"craft: {listed(CHOICES)}."
    )


def _units(value: str, _: Turn) -> Answer:
    if units := UNITS.get(value.casefold()):
        return _set("units", units, f"From now on I answer in {NAMED[units]} units.")
    if value == "pounds":
        return Answer(
            say="Pounds are the same, pints and gallons are not: say “use US units” or “use "
            "imperial units”."
        )
    return Answer(say="Units can be metric, US or imperial: say “use metric units”.")


def _habit(value: str, _: Turn) -> Answer:
    if habit := HABITS.get(value.casefold()):
        return _set("habit", habit, f"From now on I dose by the {habit} habit.")
    return Answer(say="The dosing habit can be spoon or weight: say “use the weight habit”.")


def _zone(value: str, _: Turn) -> Answer:
    if not value:
        return Answer(
            say="Name the zone of a city near you, like “our time zone is Europe/London”."
        )
    try:
        zone = ZoneInfo(value).key
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return Answer(say=f"I know no zone “{value}”. Name it like Europe/London.")
    return _set("zone", zone, f"This group's clock is now {zone}.")


def _digest(value: str, turn: Turn) -> Answer:
    room = turn.book.room
    at = parsed(value)
    if at is None:
        return Answer(say="Name an hour of the day, like 8:00 or 18:30.")
    if is_quiet(at, room.quiet_from, room.quiet_to):
        return Answer(
            say=f"{at:%H:%M} is in your quiet hours, {_hours(room.quiet_from, room.quiet_to)}. "
            "Name another hour, or change the quiet hours first."
        )
    return _set("digest", f"{at:%H:%M}", f"What is due comes at {at:%H:%M} from now on.")


def _quiet(value: str, turn: Turn) -> Answer:
    if value == "off":
        return _set("quiet", _NO_QUIET, "There are no quiet hours from now on.")
    start, end = (parsed(part) for part in (*value.split("-", 1), "")[:2])
    if start is None or end is None:
        return Answer(say="Name two hours, like “quiet hours 21:00 to 7:00”.")
    if start == end:
        return Answer(
            say="That would be quiet all day. Name two hours, like “quiet hours 21:00 to 7:00”, "
            "or say “quiet hours off” or “turn the reminders off”."
        )
    digest_at = turn.book.room.digest_at
    coming = _digest_told(turn) or digest_at
    if is_quiet(digest_at, start, end) and is_quiet(coming, start, end):
        return Answer(
            say=f"What is due comes at {digest_at:%H:%M}, which would then be quiet. "
            "Name other hours, or change the reminder time first."
        )
    hours = _hours(start, end)
    return _set("quiet", f"{start:%H:%M}-{end:%H:%M}", f"I keep quiet from {hours} from now on.")


_NO_QUIET = "00:00-00:00"
"""As the book keeps that there are no quiet hours."""


def _digest_told(turn: Turn) -> time | None:
    """The reminder time that the same message sets."""
    return next(
        (parsed(a.value) for a in turn.told if isinstance(a, Set) and a.what == "reminder time"),
        None,
    )


def _quiet_before(value: str, turn: Turn) -> Answer:
    """Quiet up to an hour of the morning; a digest that came before it comes then."""
    room, end = turn.book.room, parsed(value)
    if end is None or end > _NOON:
        return Answer(say="Name two hours, like “quiet hours 21:00 to 7:00”.")
    quiet = Setting(what="quiet", value=f"{room.quiet_from:%H:%M}-{end:%H:%M}")
    say = f"I keep quiet from {_hours(room.quiet_from, end)} from now on."
    if not is_quiet(room.digest_at, room.quiet_from, end):
        return Answer(settings=[quiet], say=say)
    digest = Setting(what="digest", value=f"{end:%H:%M}")
    return Answer(settings=[quiet, digest], say=f"{say} What is due comes at {end:%H:%M}.")


def _quiet_after(value: str, turn: Turn) -> Answer:
    """Quiet from an hour of the evening."""
    return _quiet(f"{value}-{turn.book.room.quiet_to:%H:%M}", turn)


_NOON = time(12)


def _hours(start: time, end: time) -> str:
    if start == end:
        return "none"
    return f"{start:%H:%M} to {end:%H:%M}"


def _reminders(value: str, _: Turn) -> Answer:
    if value.casefold() != "off":
        return Answer(say="Say “turn the reminders on” or “turn the reminders off”.")
    return _set(
        "reminders",
        "off",
        "No more reminders until you say “turn the reminders on”. Ask “what's due?” at any time.",
    )


async def _reminding_again(turn: Turn) -> Answer:
    """Reminders are on; what a pause put off, like all that waits for its day, waits no longer."""
    waiting = [
        due
        for due in await turn.book.dues()
        if due.put_off_until and turn.today < due.put_off_until < date.max
    ]
    at = turn.book.room.digest_at
    answer = _set("reminders", "on", f"I remind you again, at {at:%H:%M}.")
    return replace(answer, put_off=[PutOff(due=due, until=None) for due in waiting])


def _quiet_days(days: frozenset[int]) -> Answer:
    """On which days of the week nothing is said of what is due."""
    said = "".join(map(str, sorted(days)))
    if len(days) == len(WEEK):
        return Answer(say="Name a day on which I may remind you, or say “turn the reminders off”.")
    if not days:
        return _set("quiet days", said, "I remind you on every day of the week again.")
    others = days_named(set(range(len(WEEK))) - days)
    when = f"No reminders on {days_named(days)}" if len(days) < 4 else f"Reminders only on {others}"
    return _set(
        "quiet days",
        said,
        f"{when} from now on. What falls due meanwhile I name the next time; what you set for a "
        "day of its own still comes then. “Remind us every day” ends it.",
    )


def days_named(days: Iterable[int]) -> str:
    """Days of the week as they come again: "Saturdays and Sundays"."""
    return listed([f"{WEEK[day].capitalize()}s" for day in sorted(days)])


def _set(what: SettingName, value: str, say: str) -> Answer:
    return Answer(settings=[Setting(what=what, value=value)], say=say)


_CHANGES: Mapping[str, Callable[[str, Turn], Answer]] = {
    "units": _units,
    "zone": _zone,
    "habit": _habit,
    "digest": _digest,
    "reminder time": _digest,
    "quiet": _quiet,
    "quiet hours": _quiet,
    "quiet before": _quiet_before,
    "quiet after": _quiet_after,
    "reminders": _reminders,
}
"""What can be set, by the words for it."""


def shown(what: str, turn: Turn) -> Answer:
    """How a setting is, or all of them with the words that change them."""
    room = turn.book.room
    quiet = _hours(room.quiet_from, room.quiet_to)
    reminds = f"what is due comes at {room.digest_at:%H:%M}" if room.reminds else "no reminders"
    if room.reminds and room.quiet_days:
        reminds += f", not on {days_named(room.quiet_days)}"
    other = "weight" if room.habit == "spoon" else "spoon"
    remind = (
        "remind us at 8:00”, “turn the reminders off" if room.reminds else "turn the reminders on"
    )
    lines = {
        "zone": f"Time zone: {room.zone} (“our time zone is Europe/London”).",
        "units": f"Units: {NAMED[room.units]} (“set the units to us”).",
        "habit": f"Starter by the {room.habit} habit (“use the {other} habit”).",
        "digest": f"Reminders: {reminds} (“{remind}”).",
        "quiet": f"Quiet hours: {quiet} (“quiet hours 21:00 to 7:00”).",
    }
    if what in lines:
        return Answer(say=lines[what])
    return Answer(say="\n".join([*lines.values(), *chosen.own(room)]))


def measure(unit: str) -> Answer:
    """Which gallon, quart or pint was reckoned with."""
    ours, other = LITRES[f"imperial_{unit}"], LITRES[f"us_{unit}"]
    return Answer(
        say=f"I took the {unit} as the imperial one, {number(ours)} L; a US {unit} is "
        f"{number(other)} L: say “US {unit}s”, or “set the units to us”."
    )
