"""Hours at which the bot may speak: "no messages after nine", "move the daily post to 10:15"."""

from collections.abc import Sequence
from datetime import time
from typing import NamedTuple

from handlers.reading.amending import word_count
from handlers.reading.hours import Hour, hour_behind
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

_SENT = words_in(
    "message messages ping pings post posts notice notices notification notifications reminder "
    "reminders nagging nudge nudges digest bulletin beeping beeps announcements"
)
"""What the bot sends."""
_ROUSING = words_in("wake disturb ping message bother buzz beep nag nudge nothing anything")
"""What it is not to do; said of people too, so that the bot has to be spoken to."""
_QUIET = words_in("quiet silent silence hush shush still")
CUES = _SENT | _ROUSING | _QUIET
"""Words without one of which no such hour is set."""
_NEVER = words_in("no not dont never stop nothing without")
_CHANGE = words_in("set move change make do have put could can let shift switch")
_DAILY = words_in("daily morning evening nightly")
_OWN = words_in("reminder reminders nagging digest")
"""What only the bot sends; a message or a post needs its "daily"."""
_LEADS = words_in("before after between from to until till past and or - at")
_BETWEEN_THEM = words_in("to - and until till or")
_MOST_WORDS = 14
_NEAR = 4
"""Words from a "no" on, among which stands what is not to be sent."""
_NOON = time(12)


class _Bound(NamedTuple):
    lead: str
    hour: Hour


def hours_set(message: Message) -> tuple[str, str] | None:
    """Which setting of hours is asked for, and its value."""
    norms = message.norms
    if CUES.isdisjoint(norms) or word_count(message) > _MOST_WORDS:
        return None
    if any(sentence.asked for sentence in message.sentences[1:]):
        return None
    bounds = _bounds(message)
    if not bounds:
        return None
    return _quiet(message, bounds) or _daily(norms, bounds)


def _bounds(message: Message) -> list[_Bound]:
    """The hours that a word leads to, in the order said."""
    bounds: list[_Bound] = []
    i = 1
    while i < len(message.norms):
        leads = message.norms[i - 1] in _LEADS or message.norms[i - 1] in _QUIET | {"hours"}
        hour = hour_behind(message.words, message.norms, i) if leads else None
        if hour is not None:
            bounds.append(_Bound(message.norms[i - 1], hour))
        i = hour.end if hour is not None else i + 1
    return bounds


def _quiet(message: Message, bounds: Sequence[_Bound]) -> tuple[str, str] | None:
    norms = message.norms
    to_bot = bool(message.bot) or message.context.to_bot or message.context.after_bot
    stopped = _SENT | _ROUSING if to_bot else _SENT
    forbidden = any(
        norm in _NEVER and not stopped.isdisjoint(norms[i : i + _NEAR])
        for i, norm in enumerate(norms)
    )
    hushed = not _QUIET.isdisjoint(norms) and (to_bot or "hours" in norms)
    if not (forbidden or hushed):
        return None
    early = [b.hour.at for b in bounds if b.lead == "before"]
    late = [_late(norms, b.hour) for b in bounds if b.lead in ("after", "past")]
    if len(bounds) == 2 and early and late:
        return "quiet hours", f"{late[0]:%H:%M}-{early[0]:%H:%M}"
    if len(bounds) == 2 and bounds[1].lead in _BETWEEN_THEM:
        first, second = bounds[0].hour, bounds[1].hour
        start = _late(norms, first) if second.at <= first.at else first.at
        return "quiet hours", f"{start:%H:%M}-{second.at:%H:%M}"
    if len(bounds) != 1 or not forbidden:
        return None
    if early:
        return "quiet before", f"{early[0]:%H:%M}"
    return ("quiet after", f"{late[0]:%H:%M}") if late else None


def _late(norms: Sequence[str], hour: Hour) -> time:
    """A bare hour from which it is quiet is one of the evening."""
    said = {"am", "morning"} & set(norms[hour.start : hour.end])
    return hour.at if said or hour.at >= _NOON else hour.at.replace(hour=hour.at.hour + 12)


def _daily(norms: Sequence[str], bounds: Sequence[_Bound]) -> tuple[str, str] | None:
    """ "The daily post to 10:15"; "a reminder" for something is a date of its own."""
    at = next((i for i, norm in enumerate(norms) if norm in _SENT), None)
    if at is None or len(bounds) != 1 or bounds[0].lead not in ("to", "at"):
        return None
    known = norms[at] in _OWN or not _DAILY.isdisjoint(norms[max(0, at - 1) : at])
    between = norms[at + 1 : bounds[0].hour.start - 1]
    meant = {"a", "another", "my"}.isdisjoint(norms[max(0, at - 2) : at])
    goes = all(norm in _BEHIND_IT for norm in between)
    if not (known and meant and goes) or _CHANGE.isdisjoint(norms[:at]):
        return None
    return "reminder time", f"{bounds[0].hour.at:%H:%M}"


_BEHIND_IT = words_in("hour time come go out be back round")
