"""The day's digest, and the reminder that comes at an hour of its own."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from itertools import groupby

from handlers.phrasing import capital, day, span
from handlers.planning.calendar import about, duty, together
from handlers.planning.care import Care
from handlers.planning.dues import OWN
from storage.book import Book
from storage.rows import Due


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One line of a digest, and the dues that it names."""

    words: str
    dues: tuple[Due, ...]


def digest(dues: Sequence[Due], today: date, care: Care) -> list[Line]:
    """A day's digest, a line for each day: what must be done today comes first, then what can be
    done from today on, then what is late, the longest last.
    """
    ordered = sorted(dues, key=lambda due: _urgency(due, today))
    lines = []
    for _, group in groupby(ordered, key=lambda due: _urgency(due, today)[:3]):
        named = tuple(group)
        words = f"{_by_when(named[0], today)}: {together(named, care)}."
        lines.append(Line(words=words, dues=named))
    return lines


def _by_when(due: Due, today: date) -> str:
    last = _day_of(due)
    if last < today:
        return (
            f"Meant for {day(last, today)}"
            if due.what in OWN
            else f"Late, since {day(last, today)}"
        )
    if (last - today).days > 1:
        return f"Today, or by {day(last, today)}"
    return capital(span(today, last, today))


def _urgency(due: Due, today: date) -> tuple[bool, int, bool, str, str, str]:
    """Today first; late things last, what members set and was missed after those of its day."""
    last = _day_of(due)
    is_missed = last < today and due.what in OWN
    return last < today, abs((last - today).days), is_missed, *about(due)


def _day_of(due: Due) -> date:
    """Its last day; of what members set and put off when it was said, the day it was put off to."""
    is_moved = due.what in OWN and due.told_on is not None
    return (due.put_off_until or due.to_day) if is_moved else due.to_day


def reminder(due: Due, care: Care) -> str:
    """What is said at the hour that members set: "Bram: bring the bran."."""
    words = due.words or ""
    who = care.keeper(due)
    if care.is_away(due):
        return f"{capital(duty(due, care, with_hour=False))}."
    return f"{who}: {words}." if who else f"{capital(words)}."


async def called(book: Book, dues: Sequence[Due], care: Care) -> tuple[str, ...]:
    """The user ids of those who are to be told of these dues."""
    doers = {name.casefold() for due in dues for name in care.doers(due)}
    return tuple(
        member.user
        for member in await book.members()
        if member.user and member.present and member.name.casefold() in doers
    )
