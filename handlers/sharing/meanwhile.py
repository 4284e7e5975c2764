"""A bin that passes on while its keeper is away: from which day to which that is."""

from dataclasses import replace
from datetime import date, timedelta

from handlers.answer import Answer, Query, Turn
from handlers.people import is_same
from handlers.phrasing import capital, the
from handlers.reading.acts import KEEPER, Offer
from storage.absences import absences
from storage.rows import Absence

JUST_TOLD = timedelta(hours=6)
"""So long after a keeper has told to be away, what they hand on is for these days."""
DAY = timedelta(days=1)


async def dated(act: Offer, keeper: str, turn: Turn) -> Offer:
    """The offer for the days on which the bin's keeper is away, where it tells no day of its own:
    "handing it to Bram on Friday" is for good.

    `away` still stands where it is not known when that is.
    """
    if (act.days or act.on) and not act.away:
        return act
    who = keeper if act.away in (None, KEEPER) else act.away
    for one in await absences(turn.book, act.on or turn.today, date.max):
        if is_same(one.member, who) and await _is_meant(act, one, turn):
            on = act.on or max(one.first, turn.today)
            days = (one.last - on).days + 1 if one.last else None
            return replace(act, on=on, days=days, away=None)
    is_asked = is_same(who, keeper) and not act.days
    return act if is_asked else replace(act, away=None)


async def _is_meant(act: Offer, one: Absence, turn: Turn) -> bool:
    """Whether a bin is handed on for the sake of that absence."""
    if act.on and act.on < one.first - DAY:
        return False
    if act.away or one.first <= turn.today:
        return True
    entry = await turn.book.entry(one.entry)
    return entry is not None and turn.at - entry.said_at <= JUST_TOLD


def from_when(act: Offer, bin: str, keeper: str, turn: Turn) -> Answer:
    """A question to a keeper who is to be away on days that nobody has told."""
    to = f" for {act.to}" if act.to else ""
    return Answer(
        say=f"{capital(keeper)}, from which day to which are you away? Say it (“Friday to "
        f"Tuesday”), and I put {the(bin)} down{to} for these days.",
        query=Query.about(replace(act, bin=bin), lacks="days", of=keeper),
        calls=[keeper] if keeper != turn.sender else [],
    )
