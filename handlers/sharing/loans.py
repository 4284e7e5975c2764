"""What a member lends while away: it goes and comes back with the absence, whenever that is."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date, timedelta

from handlers.answer import Answer, Turn
from handlers.people import is_same
from handlers.phrasing import capital, day, the
from handlers.sharing.keepers import is_return, present_custody
from storage.rows import Bin, Entry, NewEntry

DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class _Loan:
    """A bin that its keeper has lent, or offers for a time."""

    bin: Bin
    goes: Entry | None
    """The offer, or the acceptance whose day is still to come; None where it has begun."""
    back: Entry | None
    """The acceptance by which it goes back; None where nobody has taken it yet."""

    @property
    def first(self) -> date | None:
        return self.goes.on if self.goes else None

    @property
    def home(self) -> date | None:
        """The day on which it goes back."""
        if self.back:
            return self.back.on
        offer = self.goes
        days = offer.facts.days if offer else None
        return offer.on + timedelta(days=days) if offer and offer.on and days else None

    @property
    def others(self) -> set[str]:
        """Who else is concerned."""
        goes, back = self.goes, self.back
        taker = goes and (goes.receiver if goes.act == "offer" else goes.member)
        return {name for name in (taker, back and back.writer) if name}


async def moved(former: Entry, first: date, home: date, turn: Turn) -> Answer:
    """What was lent for an absence is for its new days: from the first, until they are home."""
    strikes, entries, lines, calls = list[Entry](), list[NewEntry](), list[str](), set[str]()
    for loan in await _for_its_sake(former, turn):
        goes, back = loan.goes, loan.back
        is_offer = goes is not None and goes.act == "offer"
        if goes and (goes.on != first or (is_offer and loan.home != home)):
            strikes.append(goes)
            entries.append(_on(goes, first, home, turn))
        if back and back.on != home:
            strikes.append(back)
            entries.append(_on(back, home, home, turn))
        goes_on = f"goes {day(first, turn.today)} and comes" if goes else "goes"
        lines.append(f"{capital(the(loan.bin.name))} {goes_on} back {day(home, turn.today)}.")
        calls |= loan.others
    if not entries:
        return Answer()
    return _answer(strikes, entries, lines, calls, turn)


async def off(former: Entry, turn: Turn) -> Answer:
    """What was to be lent for an absence that is off stays where it is; what is lent comes back."""
    strikes, entries, lines, calls = list[Entry](), list[NewEntry](), list[str](), set[str]()
    for loan in await _for_its_sake(former, turn):
        name = capital(the(loan.bin.name))
        if loan.goes:
            strikes += [loan.goes, loan.back] if loan.back else []
            entries.append(turn.entry("withdraw", bin=loan.bin.name))
            lines.append(f"{name} stays with {former.member}.")
        elif loan.back:
            strikes.append(loan.back)
            entries.append(_on(loan.back, turn.today, turn.today, turn))
            lines.append(f"{name} goes back today.")
        calls |= loan.others
    return _answer(strikes, entries, lines, calls, turn)


def _answer(
    strikes: list[Entry],
    entries: list[NewEntry],
    lines: list[str],
    calls: Iterable[str],
    turn: Turn,
) -> Answer:
    others = sorted({*calls} - {turn.sender})
    return Answer(strikes=strikes, entries=entries, say="\n".join(lines), calls=others)


async def _for_its_sake(former: Entry, turn: Turn) -> list[_Loan]:
    """The loans of a member that begin and end with an absence of theirs, give or take a day."""
    found = []
    for bin in await turn.book.bins():
        custody = await present_custody(turn.book, bin, turn.today)
        back, offer = custody.goes_back, custody.pending(turn.today, turn.book.room.zone)
        if back and is_same(back.member, former.member):
            goes = [one for one in custody.ahead if one.event == back.event and not is_return(one)]
            found.append(_Loan(bin=bin, goes=next(iter(goes), None), back=back))
        elif offer and custody.keeper and is_same(custody.keeper, former.member):
            found.append(_Loan(bin=bin, goes=offer, back=None))
    return [one for one in found if _is_of(one, former)]


def _is_of(loan: _Loan, former: Entry) -> bool:
    home, first = loan.home, loan.first
    if former.until is None or former.on is None or home is None:
        return False
    begins = first is None or abs(first - former.on) <= DAY
    return begins and abs(home - former.until - DAY) <= DAY


def _on(said: Entry, on: date, home: date, turn: Turn) -> NewEntry:
    """The same written down for another day."""
    days = (home - on).days if said.act == "offer" else max((on - turn.today).days, 1)
    facts = replace(said.facts, days=days)
    return replace(said.anew(turn.now, cause=turn.cause, replaces=said.id, facts=facts), on=on)
