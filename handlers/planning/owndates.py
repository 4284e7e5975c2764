"""Reminders that members set: written down, listed, called off, and made into dues."""

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from handlers.answer import SILENCE, Answer, Turn
from handlers.phrasing import capital, clock, day
from handlers.planning.dues import OWN, SHOWN_BEHIND, dues_of_date, is_waiting, root_of
from handlers.planning.quiet import is_quiet
from handlers.practice.figure import listed
from handlers.reading.acts import Retract, Set
from handlers.reading.arranged import CallOff, Moved, OwnDate, OwnDates
from handlers.reading.calendar.recurrence import CODES, first_after, first_on, spoken
from handlers.reading.words.vocabulary import words_in
from storage import dues
from storage.book import Book
from storage.moments import local_day
from storage.rows import Entry, Facts

MOST_SET = 50
"""Reminders of a group at a time: more would be noise, or mischief."""

MOST_WORDS = 160
"""Characters of what is to be said."""

SMALL = words_in("a an the to of for about our my your we i us me and on in at it that one")
"""Words that tell no reminder from another."""

_AHEAD = re.compile(r" \((?:(tomorrow)|in (\d+) days)\)$")

_NO_HOUR = re.compile(r"(?:^| )at \d{1,3}(?:[:.]\d\d)?(?: ?[ap]m)?$", re.IGNORECASE)
"""What is left in the words where the hour that was said is none."""

OF_NO_BIN = (
    "I remind the group together of all that is due, and of no bin or member apart. Say “later” to "
    "what need not be done yet, “no reminders till Monday” or “turn the reminders off”."
)
WHAT_AND_WHEN = (
    "What, and on which day? Say “put the work party in the calendar for Saturday at 10:00”."
)
NO_SUCH = "No such reminder is set. Ask “which reminders are set?”."
NONE_SET = "No reminders are set. Say “remind us to wash the lids every second Sunday”."


async def set_date(plan: OwnDate, turn: Turn) -> Answer:
    """A reminder is set, or it is asked what is missing."""
    if not plan.words:
        return Answer(say=WHAT_AND_WHEN)
    if plan.first is None:
        return Answer(say=f"When? Say “remind us to {plan.words} on Friday at 18:00”.")
    if plan.hour is None and _NO_HOUR.search(plan.words):
        return Answer(say="That is no hour of the day. Say it again with one like 8:00 or 18:30.")
    room = turn.book.room
    if len(await set_ones(turn)) >= MOST_SET:
        return Answer(say=f"{MOST_SET} reminders are set already: call one off first.")
    if plan.hour and is_quiet(plan.hour, room.quiet_from, room.quiet_to):
        return Answer(
            say=f"{clock(plan.hour)} is in your quiet hours, {clock(room.quiet_from)} to "
            f"{clock(room.quiet_to)}. Say it again with another hour."
        )
    first, hour = _first(plan, turn)
    if first is None:
        return Answer(say="That moment has passed. Say it again with a day or an hour to come.")
    if plan.until and plan.until < first:
        return Answer(
            say=f"There is no such day by {day(plan.until, turn.today)}. Say it again with a later "
            "end."
        )
    facts = Facts(words=plan.words[:MOST_WORDS], hour=hour, rule=plan.rule)
    entry = turn.entry(
        "date", bin=None, facts=facts, on=first, until=plan.until, receiver=plan.for_whom
    )
    former = await _former(plan, turn) if plan.instead else []
    whom = f"{plan.for_whom}: " if plan.for_whom and plan.for_whom != turn.sender else ""
    words = _when(first, hour, plan.rule, plan.until, turn.today)
    say = f"I will say it {words}: {whom}{facts.words}."
    if plan.guessed and plan.hour:
        early = f"{plan.hour.hour - 12}:{plan.hour.minute:02} am"
        say += f" If you mean the morning, call this off and say it with “{early}”."
    return Answer(entries=[entry], strikes=former, say=say)


async def _former(plan: OwnDate, turn: Turn) -> list[Entry]:
    """The one reminder of the same words, which another takes the place of."""
    dated = await set_ones(turn)
    such = [one for one in dated if (one.facts.words or "").casefold() == plan.words.casefold()]
    return such if len(such) == 1 else []


def _first(plan: OwnDate, turn: Turn) -> tuple[date | None, time | None]:
    """The first day to say it on, and the hour; of today only what is still to come."""
    room = turn.book.room
    now = turn.at.astimezone(ZoneInfo(room.zone))
    first, hour = plan.first, plan.hour
    is_over = first == now.date() and now.time() >= (hour or room.digest_at)
    if first is None or first < now.date():
        return None, hour
    if not is_over:
        return first, hour
    if plan.rule:
        return first_on(plan.rule, first + timedelta(days=1)), hour
    if hour is None:  # "today" said after the digest: at the next hour but one
        soon = now.replace(minute=0, second=0, microsecond=0) + timedelta(hours=2)
        is_today = soon.date() == now.date()
        if is_today and not is_quiet(soon.time(), room.quiet_from, room.quiet_to):
            return first, soon.time()
    return None, hour


def _when(first: date, hour: time | None, rule: str | None, until: date | None, today: date) -> str:
    at = f" at {clock(hour)}" if hour else ""
    if rule is None:
        return f"{day(first, today)}{at}"
    ends = f" until {day(until, today)}" if until else ""
    return f"{spoken(rule, first)}{at}{ends}, from {day(first, today)} on"


async def listing(plan: OwnDates, turn: Turn) -> Answer:
    """The reminders that are set and still to come."""
    del plan
    dated = await set_ones(turn)
    lines = [f"{capital(_told(entry, turn.today))}." for entry in dated]
    return Answer(say="\n".join(lines) or NONE_SET)


def _told(entry: Entry, today: date) -> str:
    facts = entry.facts
    assert entry.on is not None
    at = f" at {clock(facts.hour)}" if facts.hour else ""
    ends = f" until {day(entry.until, today)}" if entry.until else ""
    days = spoken(facts.rule, entry.on) + ends if facts.rule else day(entry.on, today)
    whom = f" ({entry.receiver})" if entry.receiver else ""
    return f"{days}{at}: {facts.words}{whom}"


async def set_ones(turn: Turn) -> list[Entry]:
    """The reminders that are set and still to come."""
    return [entry for entry in await turn.book.dated() if _coming(entry, turn)]


async def _put_off(turn: Turn) -> list[Entry]:
    """The reminders whose day is over, and that are to be said again."""
    waiting = {
        root_of(due)
        for due in await turn.book.dues()
        if due.what in OWN and due.put_off_until and turn.today <= due.put_off_until < date.max
    }
    over = [entry for entry in await turn.book.dated() if not _coming(entry, turn)]
    return [entry for entry in over if str(entry.root) in waiting]


def _coming(entry: Entry, turn: Turn) -> bool:
    if entry.on is None:
        return False
    if entry.facts.rule is None:
        return entry.on >= turn.today
    return entry.until is None or entry.until >= turn.today


async def call_off(plan: CallOff, turn: Turn) -> Answer:
    """Reminders are no longer wanted; where it could be several, it is asked which."""
    dated = [*await set_ones(turn), *await _put_off(turn)]
    meant = dated if plan.all else [one for one in dated if is_meant(one, plan.words, plan.on)]
    if meant and (plan.all or len({subject(entry) for entry in meant}) == 1):
        return struck(meant)
    named = any(word.casefold() not in SMALL for word in plan.words.split())
    if not meant and plan.if_set and not (named and await would_strike_another(turn)):
        return SILENCE
    if not meant and await _of_bins(plan.words, turn):
        return Answer(say=OF_NO_BIN)
    if meant:
        return Answer(say=which_one(meant))
    if not dated:
        return Answer(say=NONE_SET)
    known = "\n".join(f"{capital(_told(entry, turn.today))}." for entry in dated)
    return Answer(say=f"I know no such reminder. These are set:\n{known}")


def struck(meant: Sequence[Entry]) -> Answer:
    """These are called off."""
    words = listed(list(dict.fromkeys(subject(entry) for entry in meant)))
    return Answer(strikes=list(meant), say=f"Called off: {words}.")


def with_ahead(words: str, days: int) -> str:
    """The words of a reminder as they are said so many days before its own day."""
    return f"{words} ({'tomorrow' if days == 1 else f'in {days} days'})"


def subject(entry: Entry) -> str:
    """What a reminder is of: the same for the one that is said the day before."""
    return _AHEAD.sub("", entry.facts.words or "")


def days_ahead(entry: Entry) -> int:
    """How many days before its own day a reminder is said."""
    found = _AHEAD.search(entry.facts.words or "")
    return 0 if found is None else int(found[2] or 1)


def which_one(meant: Sequence[Entry]) -> str:
    """What is asked where several are meant."""
    named = list(dict.fromkeys(f"“{subject(entry)}”" for entry in meant))
    return f"Which one: {listed(named, 'or')}?"


async def would_strike_another(turn: Turn) -> bool:
    """Whether the same words would strike out what the sender told last, and that is a reminder
    which they do not call: none is then struck out in its place.
    """
    last = await turn.book.last_by(turn.sender)
    strikes = any(isinstance(act, Retract) for act in turn.told)
    return strikes and last is not None and last.act == "date" and not last.struck


async def move(plan: Moved, turn: Turn) -> Answer:
    """A reminder is for another day or hour; nothing is said where none is meant."""
    dated = await set_ones(turn)
    meant = [entry for entry in dated if is_meant(entry, plan.words, None)]
    if not plan.words:  # "move it to Monday"
        last = await turn.book.last_by(turn.sender)
        meant = [entry for entry in dated if last and entry.id == last.id]
    deed = _deed_named(plan.words)
    if not meant and deed and not any(isinstance(one, Set) for one in turn.told):
        return Answer(say=RECKONED.format(deed=deed))
    if len(meant) != 1:
        return SILENCE
    [old] = meant
    if old.facts.rule and plan.rule is None and plan.first:
        return Answer(say=COMES_AGAIN.format(words=old.facts.words))
    first, rule = _days_of(plan, old, turn.today)
    wish = OwnDate(
        words=old.facts.words or "",
        first=first,
        rule=rule,
        hour=_hour_of(plan, old.facts.hour),
        for_whom=old.receiver,
    )
    answer = await set_date(wish, turn)
    entries = [replace(entry, replaces=old.id, event=old.event) for entry in answer.entries]
    return replace(answer, entries=entries, strikes=[old] if entries else [])


def _hour_of(plan: Moved, had: time | None) -> time | None:
    """The hour that it is said at now: "make it 7" of a reminder at 18:00 is 19:00."""
    hour = plan.hour or had
    if hour and had and plan.same_half and (hour < _NOON) != (had < _NOON):
        return hour.replace(hour=(hour.hour + _NOON.hour) % 24)
    return hour


_NOON = time(12)


def _days_of(plan: Moved, old: Entry, today: date) -> tuple[date | None, str | None]:
    """From which day on, and by which rule: with another hour alone as before; "every two weeks"
    keeps the day of the week it had, "the same every week" the day.
    """
    had = old.facts.rule or ""
    if plan.first is None and plan.rule is None:
        return (first_after(had, old.on, today) if had and old.on else old.on), old.facts.rule
    named = next((part for part in had.split(";") if part.startswith("BYDAY=")), None)
    of_weeks = plan.rule is not None and plan.rule.startswith("FREQ=WEEKLY")
    if not had and plan.rule and "BY" not in plan.rule and "DAILY" not in plan.rule:
        by_day = f";BYDAY={CODES[old.on.weekday()]}" if of_weeks and old.on else ""
        return old.on, f"{plan.rule}{by_day}"
    if not of_weeks or "BYDAY" in (plan.rule or "") or not named or "WEEKLY" not in had:
        return plan.first or old.on, plan.rule
    return first_after(had, old.on or today, today), f"{plan.rule};{named}"


def unmoved(plan: Moved) -> Answer:
    """What is said of a wish for no setting there is, which by its words moves a reminder."""
    deed = _deed_named(plan.words)
    return Answer(say=RECKONED.format(deed=deed) if deed else NO_SUCH)


async def is_moved(turn: Turn) -> bool:
    """Whether the same message moves a reminder that is set: it wishes for no setting then."""
    moved = [one.words for one in turn.told if isinstance(one, Moved) and one.words]
    return bool(moved) and any(
        is_meant(entry, words, None) for entry in await set_ones(turn) for words in moved
    )


COMES_AGAIN = (
    "That one comes again and again: say on which days now, such as “{words} every Saturday "
    "instead”."
)
RECKONED = (
    "The day of a {deed} follows from what is in the book, so I cannot move it. Say “later” when I "
    "name it, or set a day of your own: “remind us to bury the blue bin on Saturday”."
)
_DEEDS = {
    "burial": "burial", "burying": "burial", "draining": "draining", "sealing": "sealing",
    "bury": "burial", "drain": "draining", "seal": "sealing",
}  # fmt: skip


async def _of_bins(words: str, turn: Turn) -> bool:
    """Whether what follows from the book is meant: a deed on a bin, or all that is due with one."""
    said = f" {words.casefold()} "
    return bool(_deed_named(words)) or any(
        f" {bin.name.casefold()} " in said for bin in await turn.book.bins()
    )


def _deed_named(words: str) -> str | None:
    """The deed on a bin that is to be moved, if its first word is one."""
    return _DEEDS.get(next(iter(words.casefold().split()), ""))


def is_meant(entry: Entry, words_said: str, on: date | None) -> bool:
    """Whether a reminder is called by some of its words, in whatever form ("the bucket one" of
    "wash the buckets"), or by its day alone.
    """
    if on and on != entry.on:
        return False
    said = {stem(word) for word in words_said.split() if word.casefold() not in SMALL}
    if not said and on is None:
        return False
    return said <= {stem(word) for word in (entry.facts.words or "").split()}


def stem(word: str) -> str:
    """A word without its ending: "bucket" of "buckets", "dig" of "digging"."""
    plain = word.casefold().strip(".,!?:;()“”\"'").removesuffix("'s").removesuffix("’s")
    for ending in ("ing", "ies", "es", "s", "y", "e"):
        if plain.endswith(ending) and len(plain) - len(ending) >= _ROOT:
            plain = plain.removesuffix(ending)
            break
    return plain[:-1] if len(plain) > _ROOT and plain[-1] == plain[-2] else plain


_ROOT = 3
"""Letters of the shortest stem."""


async def settle(book: Book, now: datetime) -> None:
    """Make the dues of the members' own dates anew for the weeks to come, in a transaction."""
    today = local_day(now, book.room.zone)
    since = dict[str, date]()
    for one in await book.dues():  # soonest first: from the first that still waits on
        if one.what in OWN and is_waiting(one, today):
            since.setdefault(root_of(one), one.from_day)
    shown = today - SHOWN_BEHIND
    due = [
        each
        for entry in await book.dated()
        for each in dues_of_date(entry, today, min(shown, since.get(str(entry.root), shown)))
    ]
    await dues.let_go(book.db, book.room, OWN, before=today - SHOWN_BEHIND)
    await dues.put(book.db, book.room, None, due, now, of=OWN)
