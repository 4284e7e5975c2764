"""Hours at which the bot may speak: "no messages after nine", "move the daily post to 10:15"."""

import re
from collections.abc import Sequence
from datetime import time
from itertools import pairwise
from typing import NamedTuple

from handlers.reading.calendar.hours import PARTS, Hour, hour_at, hour_behind
from handlers.reading.message import Message
from handlers.reading.plaintext import word_count
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

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
_NEVER = words_in("no not nae nuh dont never stop quit nothing without")
_CHANGE = words_in("set move change make do have put could can let shift switch")
_DAILY = words_in("daily morning evening nightly")
_OWN = words_in("reminder reminders nagging digest")
"""What only the bot sends; a message or a post needs its "daily"."""
_LEADS = words_in("before after efter between from to until till while past and or - at")
_BETWEEN_THEM = words_in("to - and until till while or")
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
    if not bounds or _of_a_place(norms, bounds[-1].hour.end):
        return None
    return _quiet(message, bounds) or _daily(norms, bounds)


def _of_a_place(norms: Sequence[str], end: int) -> bool:
    """ "Quiet hours at the pool are …", "quiet hours … on the noticeboard"."""
    pairs = [tuple(norms[end : end + 2])]
    pairs += [tuple(norms[i + 1 : i + 3]) for i, norm in enumerate(norms) if norm == "hours"]
    return any(pair in (("on", "the"), ("at", "the"), ("in", "the")) for pair in pairs)


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
    forbidden = _forbids(norms, stopped)
    hushed = not _QUIET.isdisjoint(norms) and (to_bot or "hours" in norms)
    return _kept_quiet(norms, bounds, forbidden=forbidden) if forbidden or hushed else None


def _forbids(norms: Sequence[str], stopped: frozenset[str]) -> bool:
    """Whether something that the bot does is not wanted."""
    return any(
        norm in _NEVER and not stopped.isdisjoint(norms[i : i + _NEAR])
        for i, norm in enumerate(norms)
    )


def _kept_quiet(
    norms: Sequence[str], bounds: Sequence[_Bound], *, forbidden: bool
) -> tuple[str, str] | None:
    """The hours in which nothing is to be said."""
    early = [b.hour.at for b in bounds if b.lead in _BEFORE]
    late = [_late(norms, b.hour) for b in bounds if b.lead in _AFTER]
    if len(bounds) == 2 and early and late:
        return "quiet hours", f"{late[0]:%H:%M}-{early[0]:%H:%M}"
    if len(bounds) == 2 and bounds[1].lead in _BETWEEN_THEM:
        start, end = _night(norms, bounds[0].hour, bounds[1].hour)
        return "quiet hours", f"{start:%H:%M}-{end:%H:%M}"
    if len(bounds) != 1 or not forbidden:
        return None
    if early:
        return "quiet before", f"{early[0]:%H:%M}"
    return ("quiet after", f"{late[0]:%H:%M}") if late else None


def _night(norms: Sequence[str], first: Hour, second: Hour) -> tuple[time, time]:
    """From when to when: "10 to 6" is a night, "13 to 15" is none."""
    late = _late(norms, first)
    if _is_bare(norms, second) and (late >= _EVENING or not late.hour) and second.at > _NOON:
        return late, second.at.replace(hour=second.at.hour - 12)
    return (late if second.at <= first.at else first.at), second.at


def _is_bare(norms: Sequence[str], hour: Hour) -> bool:
    """Whether neither its half of the day is said, nor an hour that is in one only."""
    said = norms[hour.start : hour.end]
    plain = _HALVES.isdisjoint(said) and not any(norm.startswith("0") for norm in said)
    return plain and not any(re.match(r"1[3-9]|2\d", norm) for norm in said)


_HALVES = words_in("am pm morning afternoon evening night noon midday midnight")
_EVENING = time(20)
_BEFORE, _AFTER = words_in("before"), words_in("after efter past")


def _late(norms: Sequence[str], hour: Hour) -> time:
    """A bare hour from which it is quiet is one of the evening."""
    said = {"am", "morning", "midnight"} & set(norms[hour.start : hour.end])
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


def hours_wanted(message: Message, said: Sequence[str]) -> tuple[str, str] | None:
    """The same where it is sure that a setting was told; `said`: without what is refused."""
    bounds = [bound for bound in _all_hours(message) if not bound.hour.vague]
    return _wanted_quiet(message.norms, bounds) or _wanted_hour(message, said)


def _wanted_quiet(norms: Sequence[str], bounds: Sequence[_Bound]) -> tuple[str, str] | None:
    if _of_a_place(norms, len(norms)):
        return None
    late_or_early = any(a in _NEVER and b in _BEFORE | _AFTER for a, b in pairwise(norms))
    hushed = not (_QUIET | _HUSHED).isdisjoint(norms)
    if hushed or late_or_early or _forbids(norms, _SENT | _ROUSING):
        return _kept_quiet(norms, bounds, forbidden=True)
    if "only" not in norms:
        return None
    match [(b.lead, b.hour.at) for b in bounds]:
        case [(lead, first), (other, last)] if lead in _FROM and other in _BETWEEN_THEM:
            last = last if last > first else last.replace(hour=(last.hour + 12) % 24)
            return "quiet hours", f"{last:%H:%M}-{first:%H:%M}"
        case [(lead, last)] if lead in _BEFORE:
            return "quiet after", f"{last:%H:%M}"
        case [(lead, first)] if lead in _AFTER | {"from"}:
            return "quiet before", f"{first:%H:%M}"
    return None


_HUSHED = words_in("peep zipped schtum shush disturb pinging texting messaging")
_FROM = words_in("between from")


def _wanted_hour(message: Message, said: Sequence[str]) -> tuple[str, str] | None:
    """The hour to remind at: one by the clock, else a part of the day."""
    hours = [bound.hour for bound in _all_hours(message) if said[bound.hour.start]]
    exact = [_in_its_half(message.norms, said, hour) for hour in _to_the_hour(message, hours)]
    meals = [_MEALS[norm] for norm in said if norm in _MEALS]
    parts = [PARTS[part] for norm in said if (part := norm.removesuffix("s")) in PARTS]
    found = exact or meals or [hour.at for hour in hours] or parts
    return ("reminder time", f"{found[0]:%H:%M}") if found else None


def _in_its_half(norms: Sequence[str], said: Sequence[str], hour: Hour) -> time:
    """ "Evenings, like 7", "the morning post at 6:30": a bare hour in the half that is named."""
    if not _is_bare(norms, hour):
        return hour.at
    late, early = not _LATE.isdisjoint(said), not _EARLY.isdisjoint(said)
    if late and not early and hour.at < _NOON:
        return hour.at.replace(hour=hour.at.hour + 12)
    if early and not late and hour.at > _NOON:
        return hour.at.replace(hour=hour.at.hour - 12)
    return hour.at


_LATE = words_in("evening evenings night nights tea teatime supper arvo afternoon afternoons noche")
_EARLY = words_in("morning mornings breakfast dawn")


def _to_the_hour(message: Message, hours: Sequence[Hour]) -> Sequence[Hour]:
    """Those told by the clock; "at ten to eight" is one, ten minutes before eight."""
    exact = [hour for hour in hours if not hour.vague]
    for first, second in pairwise(exact):
        minutes = _MINUTES.get(message.norms[first.end - 1])
        between = message.norms[first.end : second.start]
        if minutes and between == ["to"] and message.norms[first.start] == "at":
            at = time((second.at.hour - 1) % 24, 60 - minutes)
            return [second._replace(start=first.start, at=at)]
    return exact


_MINUTES = {"five": 5, "5": 5, "ten": 10, "10": 10, "twenty": 20, "20": 20}
_MEALS = {"breakfast": time(8), "teatime": time(17), "tea": time(18), "supper": time(19),
          "suppertime": time(19), "dinnertime": time(18)}  # fmt: skip


def _all_hours(message: Message) -> Sequence[_Bound]:
    """All hours that are said, each with the word before it; an amount is none."""
    norms, words = message.norms, message.words
    taken = indexes(a for a in message.amounts if a.quantity in _MEASURED)
    bounds: list[_Bound] = []
    i = 0
    while i < len(norms):
        lead = norms[i - 1] if i else ""
        hour = None if i in taken else hour_at(list(words), norms, i)
        led = lead in _LEADS | _QUIET | _SAID or norms[i + 1 : i + 2] in (["to"], ["till"], ["-"])
        if hour is None and led and i not in taken:
            hour = hour_behind(words, norms, i)
        if hour is not None:
            lead = "at" if norms[hour.start] in ("at", "around", "about") else lead
            bounds.append(_Bound(lead, hour))
        i = hour.end if hour is not None else i + 1
    return bounds


_MEASURED = ("mass", "volume", "days")
_SAID = words_in("hours be say like is it do by for : make of with in than um las")
