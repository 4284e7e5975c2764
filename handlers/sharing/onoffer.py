"""What is on offer to whom, and which bin is meant where somebody answers an offer."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from handlers.answer import Answer, Turn
from handlers.people import is_same
from handlers.phrasing import capital, day, the
from handlers.reading.acts import Accept
from handlers.sharing.keepers import (
    GOES_BACK,
    Custody,
    is_return,
    last_day,
    present_custody,
)
from storage import outbox
from storage.custody import said
from storage.rows import Bin, Entry, Facts, NewEntry

LONGEST_LOAN = 366
"""Days: a bin that goes for longer is not lent."""


STILL_MEANT = timedelta(days=3)
"""So long after an offer has lapsed, “I'll take it” is still of it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OnOffer:
    """A bin that waits for somebody to take it."""

    bin: Bin
    custody: Custody
    offer: Entry


async def on_offer(about: str | None, turn: Turn) -> list[OnOffer]:
    """The bins that wait for somebody to take them: of a name, or all."""
    waiting = []
    for bin in await bins_named(about, turn):
        custody = await present_custody(turn.book, bin, turn.today)
        if offer := custody.pending(turn.today, turn.book.room.zone):
            waiting.append(OnOffer(bin=bin, custody=custody, offer=offer))
    return waiting


async def lapsed(turn: Turn) -> str | None:
    """The bin that the sender could have taken until a few days ago, or has lent, if it was one
    alone.
    """
    zone, late = turn.book.room.zone, []
    for bin in await turn.book.bins():
        custody = await present_custody(turn.book, bin, turn.today)
        if custody.is_lent_by(turn.sender):
            late.append(bin.name)
        offer = custody.offer if custody.is_open_to(turn.sender) else None
        if offer and custody.keeper not in (None, turn.sender):
            late += [bin.name] if turn.today - last_day(offer, zone) <= STILL_MEANT else []
    return late[0] if len(late) == 1 else None


def offered_to(member: str, waiting: Sequence[OnOffer]) -> Sequence[OnOffer]:
    """What a member can take; what was offered to them by name comes before what anybody can, but
    for what was offered since.
    """
    can = [one for one in waiting if one.custody.is_open_to(member)]
    named = max((one.offer.id for one in can if one.offer.receiver), default=0)
    return [one for one in can if one.offer.receiver or one.offer.id > named]


JUST_OFFERED = timedelta(days=1)
"""For so long a bare yes may be to an offer though we have answered others since."""


async def answered(theirs: Sequence[OnOffer], act: Accept, turn: Turn) -> list[OnOffer]:
    """Of what a member can take, what these words may be an answer to."""
    if act.bare == "aside":  # behind another's words it may be said of whoever was named there
        return [one for one in theirs if one.offer.receiver]
    if act.bare == "answer" and turn.refers_to is None and act.bin is None:
        return [one for one in theirs if await _is_answered(one.offer, turn)]
    return list(theirs)


async def _is_answered(offer: Entry, turn: Turn) -> bool:
    """Whether a bare yes is to that offer, and not to what we last answered to somebody."""
    latest = await outbox.latest(turn.book.db, turn.book.room.id)
    about = latest[0].to_event if latest else None
    return about in (None, offer.event) or turn.at - offer.written_at <= JUST_OFFERED


async def bin_meant(bin: str | None, turn: Turn) -> str | None:
    """The bin that was named, or that is on offer in the message replied to."""
    if bin is not None:
        known = await turn.book.bin(bin)
        return known.name if known else bin
    replied = await turn.book.of_event(turn.refers_to) if turn.refers_to else []
    offers = [entry for entry in replied if entry.act == "offer" and entry.bin]
    return offers[0].bin.name if offers and offers[0].bin else None


async def bins_named(about: str | None, turn: Turn) -> list[Bin]:
    """The bin in use of that name, or all of them."""
    return [bin for bin in await turn.book.bins() if about is None or is_same(bin.name, about)]


async def in_use(name: str, turn: Turn) -> Bin | None:
    """The bin of that name, if it is in use."""
    known = await turn.book.bin(name)
    return known if known in await turn.book.bins() else None


async def keeps(about: str, turn: Turn) -> bool:
    """Whether the sender keeps a bin, and nothing is agreed of its passing on."""
    for bin in await bins_named(about, turn):
        custody = await present_custody(turn.book, bin, turn.today)
        return custody.keeper == turn.sender and custody.coming is None
    return False


def stays(bin: Bin, custody: Custody, taker: str | None, turn: Turn) -> Answer:
    """A bin that was offered or promised to somebody stays where it is."""
    name = capital(the(bin.name))
    say = f"{name} is no longer on offer; nobody keeps it."
    if custody.keeper:
        say = f"{name} stays with {custody.keeper}."
    entry = turn.entry("withdraw", bin=bin.name)
    return Answer(entries=[entry], say=say, calls=[taker] if taker else [])


async def is_here(turn: Turn) -> bool:
    """Whether the sender is still in the room: a message may come late."""
    return any(one.name == turn.sender and one.present for one in await turn.book.members())


def lent_days(days: float | None) -> int | None:
    """For how many days a bin is to go, if it is to come back."""
    return round(days) if days and 0.5 <= days <= LONGEST_LOAN else None


def back_on(offer: Entry) -> date | None:
    """The day on which a bin that was lent is to go back."""
    days = offer.facts.days
    return offer.on + timedelta(days=days) if days and offer.on else None


def handed_back(offer: NewEntry, lender: str, turn: Turn) -> str:
    """A word where a bin is to go for some days."""
    if not offer.facts.days or not offer.on:
        return ""
    back = day(offer.on + timedelta(days=offer.facts.days), turn.today)
    return f" It is to go back to {lender} {back}."


def returned(bin: str, lender: str, on: date, turn: Turn) -> NewEntry:
    """What ends a loan: its lender has the bin again, from a day on."""
    ahead = max((on - turn.today).days, 1)  # it never stands alone, as what is taken at once does
    facts = Facts(words=GOES_BACK, days=ahead)
    return turn.entry("accept", bin=bin, member=lender, on=on, facts=facts)


def with_return(taken: Entry, said: Sequence[Entry]) -> list[Entry]:
    """An acceptance, and what takes the bin back to whoever lent it."""
    return [
        taken,
        *(one for one in said if one.event == taken.event and is_return(one) and one != taken),
    ]


def returned_on(back: Entry, on: date, turn: Turn) -> NewEntry:
    """The end of a loan, moved to another day."""
    anew = returned(back.bin.name if back.bin else "", back.member or "", on, turn)
    return replace(anew, event=back.event, replaces=back.id, writer=back.writer)


async def taken_on(offer: Entry, right: NewEntry, turn: Turn) -> Sequence[Entry]:
    """The taking of a bin that was offered by a slip, where another one is right."""
    if offer.act != "offer" or offer.bin is None or right.bin == offer.bin.name:
        return []
    since = [entry for entry in await said(turn.book, offer.bin) if entry.id > offer.id]
    return since[:1] if since and since[0].act == "accept" else []
