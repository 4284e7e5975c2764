"""A hand-over that is called off, or is to be on another day or with another."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from handlers.answer import SILENCE, Answer, Turn
from handlers.phrasing import capital, day, the
from handlers.reading.acts import Decline, Offer
from handlers.reading.arrangements.communal import HandedOver, Rehanded, Volunteered
from handlers.sharing.custody import declined, offered
from handlers.sharing.keepers import Custody, is_return, present_custody
from handlers.sharing.onoffer import (
    JUST_OFFERED,
    bin_meant,
    bins_named,
    in_use,
    on_offer,
    returned_on,
    stays,
    with_return,
)
from storage import custody as custodial
from storage.rows import Bin, Entry


@dataclass(frozen=True, slots=True, kw_only=True)
class _Coming:
    """A bin that is to pass on: it was offered, or somebody has agreed to take it."""

    bin: Bin
    custody: Custody
    said: Entry
    """The offer, or the acceptance."""
    agreed: Sequence[Entry]
    """The acceptance, if there is one, with the return of what is only lent."""

    @property
    def days(self) -> int | None:
        """For how many days it goes, if it is only lent."""
        if self.said.act == "offer":
            return self.said.facts.days
        back = next((one.on for one in self.agreed if is_return(one) and one != self.said), None)
        return (back - self.said.on).days if back and self.said.on else None

    @property
    def taker(self) -> str | None:
        """Who has agreed, or was asked by name."""
        return self.said.member if self.said.act == "accept" else self.said.receiver


async def withdrawn(bin: str | None, turn: Turn) -> Answer:
    """A bin that was offered or promised stays with its keeper; its taker gives it back."""
    coming = await _coming(bin, turn)
    own = [one for one in coming if _is_own(one, turn)]
    if not own:
        mine = [one for one in coming if one.agreed and one.taker == turn.sender]
        return await declined(Decline(bin=mine[-1].bin.name), turn) if mine else SILENCE
    last = own[-1]
    answer = stays(last.bin, last.custody, last.taker, turn)
    return replace(answer, strikes=last.agreed)


async def handed_over(plan: HandedOver, turn: Turn) -> Answer:
    """The bin in talk was given to a member, who is asked to take it; none that is another's."""
    own = [one for one in await _coming(plan.bin, turn) if _is_own(one, turn)]
    name = plan.bin or (own[-1].bin.name if own else None)
    bin = await in_use(name, turn) if name else None
    if bin is None:
        return SILENCE
    custody = await present_custody(turn.book, bin, turn.today)
    if custody.keeper != turn.sender:
        return SILENCE
    return await offered(Offer(bin=bin.name, to=plan.to), turn)


async def volunteered(plan: Volunteered, turn: Turn) -> Answer:
    """Who is said to take what is on offer is asked: nobody takes a bin by another's word."""
    waiting = [o for o in await on_offer(plan.bin, turn) if o.custody.is_open_to(plan.to)]
    if len(waiting) != 1 or waiting[0].custody.keeper == plan.to:
        return SILENCE
    offer = waiting[0].offer
    on = offer.on if offer.on and offer.on > turn.today else None
    wish = Offer(bin=waiting[0].bin.name, to=plan.to, on=on, days=offer.facts.days)
    return await offered(wish, turn)


async def changed(plan: Rehanded, turn: Turn) -> Answer:
    """What the sender hands on is offered anew: for another day, to another."""
    own = [one for one in await _coming(plan.bin, turn) if _is_own(one, turn)]
    if not own:
        return SILENCE
    last = own[-1]
    if plan.turned_to and is_return(last.said):
        return await offered(Offer(bin=last.bin.name, to=plan.to), turn)
    if plan.turned_to and not _may_be_of(last, turn):
        return SILENCE
    to, on = plan.to or last.taker, plan.on or last.said.on
    if plan.days and on:
        on += timedelta(days=plan.days)
    if (to, on) == (last.taker, last.said.on):
        return SILENCE
    if on and is_return(last.said) and to == last.taker:
        return _goes_back(last, on, turn)
    there = replace(turn, book=turn.book.without(last.agreed))
    answer = await offered(Offer(bin=last.bin.name, to=to, on=on, days=last.days), there)
    if not answer.entries:
        return answer
    calls = {*answer.calls, *([last.taker] if last.taker else [])} - {turn.sender}
    return replace(answer, strikes=last.agreed, calls=sorted(calls))


def _may_be_of(one: _Coming, turn: Turn) -> bool:
    """Whether a bin was offered a short while ago, and nobody is asked by name to take it."""
    is_open = one.said.act == "offer" and one.said.receiver is None
    return is_open and turn.at - one.said.said_at <= JUST_OFFERED


def _goes_back(one: _Coming, on: date, turn: Turn) -> Answer:
    """What was lent goes back to its lender on another day."""
    return Answer(
        entries=[returned_on(one.said, on, turn)],
        strikes=[one.said],
        say=f"{capital(the(one.bin.name))} goes back to {one.taker} {day(on, turn.today)}.",
        calls=[one.taker] if one.taker else [],
    )


async def _coming(bin: str | None, turn: Turn) -> list[_Coming]:
    """What is to pass on, of a bin or of all, in the order it was said."""
    found = []
    for one in await bins_named(await bin_meant(bin, turn), turn):
        custody = await present_custody(turn.book, one, turn.today)
        said = custody.coming or custody.pending(turn.today, turn.book.room.zone)
        if said and (said.act == "offer" or (said.on or date.min) > turn.today):
            is_agreed = said.act == "accept"
            agreed = with_return(said, await custodial.said(turn.book, one)) if is_agreed else []
            found.append(_Coming(bin=one, custody=custody, said=said, agreed=agreed))
    return sorted(found, key=lambda one: one.said.id)


def _is_own(one: _Coming, turn: Turn) -> bool:
    """Whether the sender keeps the bin, or has offered it."""
    writer = one.said.writer if one.said.act == "offer" else None
    return turn.sender in (one.custody.keeper, writer)
