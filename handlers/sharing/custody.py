"""Who keeps a bin, and how it passes from one keeper to the next.

A keeper stays responsible until somebody else accepts; the first who does has the bin.
"""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

from handlers.answer import SILENCE, Answer, Query, Turn
from handlers.people import is_same, known_as
from handlers.phrasing import agreeing, capital, day, does, the
from handlers.powers import refusal
from handlers.practice.figure import listed
from handlers.reading.acts import Accept, Decline, Offer
from handlers.reading.arrangements.communal import Swap
from handlers.recording.bins import choose, which
from handlers.sharing import absence, meanwhile, swaps
from handlers.sharing.handover import card
from handlers.sharing.keepers import Custody, is_return, present_custody
from handlers.sharing.onoffer import (
    OnOffer,
    answered,
    back_on,
    bin_meant,
    bins_named,
    handed_back,
    in_use,
    is_here,
    keeps,
    lapsed,
    lent_days,
    offered_to,
    on_offer,
    returned,
    returned_on,
    stays,
    with_return,
)
from handlers.state import look_up
from storage import custody as custodial
from storage.absences import absences
from storage.rows import Bin, Entry, Facts, Units

AT_ONCE = timedelta(minutes=10)
"""Whoever accepts so soon after another is told who was first."""

THINKS_BETTER = timedelta(days=1)
"""So long after taking a bin, “not me after all” gives it back."""


def found(units: Units) -> str:
    """What is asked of whoever takes a bin."""
    weight = "6 kg" if units == "metric" else "13 lb"
    return f"Reply with what you find, such as “lid cracked, about {weight}”, and I keep it."


async def offered(act: Offer, turn: Turn) -> Answer:
    """A bin is to pass to somebody else; the keeper stays so until it is accepted."""
    name = await choose(act.bin, turn)
    if name is None:
        question, _ = await which(turn)
        return Answer(say=f"{question} Say it again with its name.")
    known = await in_use(name, turn)
    if known is None and not act.to:
        return SILENCE  # "can someone take the recycling bin out?"
    former = known or await turn.book.bin(name)
    custody = await present_custody(turn.book, former, turn.today) if former else Custody()
    if custody.retired:
        return Answer(say=f"{capital(the(name))} is out of use. Say “opened {the(name)}” first.")
    keeper = custody.keeper or turn.sender
    act = await meanwhile.dated(act, keeper, turn)
    receiver, refused = await _receiver(act.to, turn)
    if receiver and is_same(receiver, custody.keeper):
        if prolonged := _prolonged(act, custody, turn):
            return prolonged
        refused = f"{does(receiver, 'keep')} {the(name)} already."
    if known and custody.keeper != turn.sender and not refused and receiver:
        refused = await refusal("take", turn)
    if refused:
        return Answer(say=refused)
    if act.away:
        return meanwhile.from_when(replace(act, to=receiver), name, keeper, turn)
    if known and receiver and act.wished:
        taken = Accept(bin=name, on=act.on)
        takes = replace(turn, sender=receiver)
        return await _passes(known, custody, None, taken, takes, lent_days(act.days))
    lent = Facts(days=lent_days(act.days))
    entry = turn.entry("offer", bin=name, on=act.on, receiver=receiver, facts=lent)
    # Whoever hands on a bin that the book does not know has had it so far.
    begun = [] if known else [turn.entry("open", bin=name)]
    calls = [one for one in (receiver, custody.keeper) if one and one != turn.sender]
    return Answer(
        entries=[*begun, entry],
        say=_asking(name, receiver, entry.on, custody, turn)
        + await _gone(receiver, entry.on, turn)
        + handed_back(entry, keeper, turn),
        calls=calls,
    )


def _prolonged(act: Offer, custody: Custody, turn: Turn) -> Answer | None:
    """Whoever has borrowed a bin is asked by its lender to keep it until another day."""
    back = custody.goes_back
    if not (back and back.bin and act.days and custody.is_lent_by(turn.sender)):
        return None
    on = (act.on or turn.today) + timedelta(days=act.days)
    return Answer(
        entries=[returned_on(back, on, turn)],
        strikes=[back],
        say=f"{capital(the(back.bin.name))} goes back to {back.member} {day(on, turn.today)}.",
        calls=[custody.keeper] if custody.keeper else [],
    )


async def _gone(receiver: str | None, on: date | None, turn: Turn) -> str:
    """A word where the one who is asked is away on that day."""
    day_of = on or turn.today
    away = await absences(turn.book, day_of, day_of) if receiver else []
    for one in away:
        if is_same(one.member, receiver or ""):
            back = f", back {day(one.last + timedelta(days=1), turn.today)}" if one.last else ""
            return f" By what was said {one.member} is away then{back}."
    return ""


async def _receiver(name: str | None, turn: Turn) -> tuple[str | None, str]:
    """To whom a bin is offered, by the name they show; or why it cannot be."""
    if name is None:
        return None, ""
    called = known_as(name, await turn.book.members())
    if len(called) > 1:
        names = listed([member.name for member in called], "or")
        return None, f"Whom do you mean, {names}? Say it again with the whole name."
    if not called:
        return name, ""  # somebody who has never spoken here
    [member] = called
    if member.user and not member.present:
        return None, f"{capital(member.name)} is not in this room any more."
    return member.name, ""


def _asking(name: str, receiver: str | None, on: date | None, custody: Custody, turn: Turn) -> str:
    when = f" {day(on, turn.today)}" if on and on > turn.today else ""
    how = "Say “I'll take it” or put 👍 here"
    if receiver:
        asked = f"will you take {the(name)}{when}"
        if on and on < turn.today:
            asked = f"have you had {the(name)} since {day(on, turn.today)}"
        lines = [f"{capital(receiver)}, {asked}? {how}; or “not me”."]
    else:
        lines = [f"Who takes {the(name)}{when}? {how}: the first has it."]
    before = custody.pending(turn.today, turn.book.room.zone)
    if before and before.receiver and not is_same(before.receiver, receiver):
        lines.append(f"It is no longer offered to {before.receiver}.")
    coming = custody.coming
    if coming and coming.on and not is_return(coming):
        agreed = day(coming.on, turn.today)
        lines.append(f"Until somebody does, {coming.member} is to have it {agreed}.")
    elif custody.keeper and custody.keeper != turn.sender:
        lines.append(f"Until then it stays with {custody.keeper}.")
    return " ".join(lines)


async def accepted(act: Accept, turn: Turn) -> Answer:
    """Somebody takes a bin that was offered, or takes it up unasked."""
    if not await is_here(turn):
        return SILENCE
    about = await bin_meant(act.bin, turn)
    waiting = await on_offer(about, turn)
    mine = [one for one in waiting if one.custody.keeper == turn.sender]
    open_to = offered_to(turn.sender, [one for one in waiting if one not in mine])
    theirs = await answered(open_to, act, turn)
    if open_to and not theirs:
        return SILENCE
    if len(theirs) == 1:
        return await _passes(theirs[0].bin, theirs[0].custody, theirs[0].offer, act, turn)
    if theirs:
        names = listed([the(one.bin.name) for one in theirs], "or")
        return Answer(say=f"Which do you take: {names}?")
    if len(mine) == 1:
        own = mine[0]  # "fine" is said to whoever will not have it
        return SILENCE if act.bare else stays(own.bin, own.custody, own.offer.receiver, turn)
    if agreed := await _agreed_to(turn.refers_to, turn):
        return agreed
    if about is None and not act.bare:
        about = await lapsed(turn)
    if about is None:
        return await _too_late(turn)
    if waiting and (receiver := waiting[0].offer.receiver):
        return Answer(say=f"{capital(the(about))} was offered to {receiver}.")
    return await _taken(about, act, turn)


async def _passes(
    bin: Bin,
    custody: Custody,
    offer: Entry | None,
    act: Accept,
    turn: Turn,
    days: int | None = None,
) -> Answer:
    """The sender has a bin, now or from a day on; for so many days, if no offer says so."""
    on = max(act.on or (offer.on if offer else None) or turn.today, turn.today)
    keeper, coming, lent = custody.keeper, custody.coming, custody.goes_back
    if lent and (is_same(lent.member, turn.sender) or not lent.on or lent.on <= on):
        lent = None
    ahead = max((on - turn.today).days, 1 if lent else 0)  # what was agreed of it before stands
    entry = turn.entry("accept", bin=bin.name, on=on, facts=Facts(days=ahead))
    if on > turn.today:
        who = f"{keeper} {agreeing('keep', keeper)}" if keeper else "nobody keeps"
        until = f"; until then {who} it"
        lines = [f"{does(turn.sender, 'take')} {the(bin.name)} {day(on, turn.today)}{until}."]
    else:
        state = await look_up(turn.book, bin, turn.today)
        lines = [f"{does(turn.sender, 'keep')} {the(bin.name)} now.", *await card(state, turn)]
        lines.append(found(turn.units))
    concerned = (keeper, offer.writer if offer else None)
    calls = dict.fromkeys(name for name in concerned if name and name != turn.sender)
    strikes = await _agreed(coming, bin, turn) if coming and not is_return(coming) else []
    strikes += await swaps.kept(bin, turn)
    entries = [entry]
    back = back_on(offer) if offer else on + timedelta(days=days) if days else None
    if keeper and back and back > on:
        entries.append(returned(bin.name, keeper, back, turn))
        lines.insert(1, f"It is to go back to {keeper} {day(back, turn.today)}.")
    elif lent and lent.on:
        lines.insert(1, f"It is to go back to {lent.member} {day(lent.on, turn.today)}.")
    return Answer(entries=entries, strikes=strikes, say="\n".join(lines), calls=list(calls))


async def _agreed(taken: Entry, bin: Bin, turn: Turn) -> list[Entry]:
    """An acceptance with all that goes with it."""
    return with_return(taken, await custodial.said(turn.book, bin))


async def _taken(about: str, act: Accept, turn: Turn) -> Answer:
    """A bin that is not on offer is taken: at once if nobody keeps it, else only when sure."""
    bin = await in_use(about, turn)
    if bin is None or act.bare == "aside":
        return SILENCE
    custody = await present_custody(turn.book, bin, turn.today)
    if custody.keeper == turn.sender:
        return Answer(say=f"You keep {the(bin.name)} already.")
    if not act.firm and (late := _first(custody, turn)):
        return Answer(say=f"{late} was first and keeps {the(bin.name)} now.")
    if refused := await refusal("take", turn):
        return Answer(say=refused)
    if custody.keeper is None or act.firm or custody.is_lent_by(turn.sender):
        return await _passes(bin, custody, None, act, turn)
    sure = Accept(bin=bin.name, on=act.on, firm=True)
    since = day(act.on, turn.today) if act.on and act.on > turn.today else "now"
    return Answer(
        say=f"{does(custody.keeper, 'keep')} {the(bin.name)}. Shall I write down that you keep "
        f"it from {since} on?",
        query=Query.about(sure, lacks="yes"),
    )


def _first(custody: Custody, turn: Turn) -> str | None:
    """Who accepted a bin just before the sender did."""
    taken = custody.taken
    if taken is None or taken.act != "accept" or taken.member == turn.sender:
        return None
    return taken.member if abs(turn.at - taken.said_at) <= AT_ONCE else None


async def _too_late(turn: Turn) -> Answer:
    """ "I'll take it", just after somebody else has taken what the sender could have."""
    latest: tuple[Entry, Bin, Custody] | None = None
    for bin in await turn.book.bins():
        custody = await present_custody(turn.book, bin, turn.today)
        taken = custody.taken
        if taken and (latest is None or taken.id > latest[0].id):
            latest = taken, bin, custody
    late = _first(latest[2], turn) if latest else None
    if latest is None or late is None:
        return SILENCE
    taken, bin, _ = latest
    before = await present_custody(turn.book.without([taken]), bin, turn.today)
    if not before.is_open_to(turn.sender) or before.keeper == turn.sender:
        return SILENCE
    return Answer(say=f"{capital(late)} was first and has {the(bin.name)}.")


async def marked(event: str, turn: Turn, *, yes: bool) -> Answer:
    """A sign on an offer answers it, from whoever it is made to; of others it says nothing."""
    for bin in await turn.book.bins() if await is_here(turn) else ():
        custody = await present_custody(turn.book, bin, turn.today)
        offer = custody.pending(turn.today, turn.book.room.zone)
        if offer and offer.event == event:
            can = custody.is_open_to(turn.sender) and turn.sender != custody.keeper
            if can and yes:
                return await _passes(bin, custody, offer, Accept(), turn)
            if can and offer.receiver:
                return _refused(bin, custody, [], [offer.writer], turn)
            return SILENCE
    agreed = await _agreed_to(event, turn) if yes else None
    return agreed or SILENCE


async def _agreed_to(event: str | None, turn: Turn) -> Answer | None:
    """What else than a bin is agreed to by a yes: a turn to swap, or to stand in for somebody."""
    return await swaps.accepted(turn, event) or await absence.stands_in(turn, event)


async def declined(act: Decline, turn: Turn) -> Answer:
    """Somebody will not take a bin that was offered, or that they had agreed to take."""
    about = await bin_meant(act.bin, turn)
    waiting = [one for one in await on_offer(about, turn) if one.custody.is_open_to(turn.sender)]
    named = [one for one in waiting if one.offer.receiver]
    if act.on and named and await _is_of_another_turn(named[-1], act.on, turn):
        return await swaps.wished(Swap(bin=named[-1].bin.name, on=act.on), turn)
    if named:
        latest = max(named, key=lambda one: one.offer.id)
        return _refused(latest.bin, latest.custody, [], [latest.offer.writer], turn)
    for bin in await bins_named(about, turn):
        custody = await present_custody(turn.book, bin, turn.today)
        if custody.coming and custody.coming.member == turn.sender:
            if about is None and act.on not in (None, custody.coming.on):
                continue  # "I can't do the 12th" gives back nothing that begins another day
            agreed = await _agreed(custody.coming, bin, turn)
            return _refused(bin, custody, agreed, [custody.keeper], turn)
        if custody.keeper == turn.sender and (taken := await _just_taken(bin, custody, turn)):
            return await _given_back(bin, taken, turn)
    if about and waiting:
        return Answer(entries=[turn.entry("decline", bin=waiting[0].bin.name)], noted=True)
    if act.on and await swaps.has_turn(act.on, about, turn):
        return await swaps.wished(Swap(bin=about, on=act.on), turn)
    if about and act.on and act.on > turn.today and await keeps(about, turn):
        return await offered(Offer(bin=about, on=act.on), turn)
    return await swaps.declined(turn)


async def _is_of_another_turn(one: OnOffer, on: date, turn: Turn) -> bool:
    """Whether a bin was offered by its rota for a turn in which that day is not."""
    stint = await swaps.present_stint(one.bin, turn) if one.offer.writer is None else None
    return stint is not None and not stint.start <= on <= stint.end


async def _just_taken(bin: Bin, custody: Custody, turn: Turn) -> Entry | None:
    """An acceptance so new that whoever made it may think better of it: nothing was said since."""
    taken = custody.by
    if taken is None or taken.act != "accept" or turn.at - taken.said_at > THINKS_BETTER:
        return None
    said = await custodial.said(turn.book, bin)
    since = [one for one in said if one.bin and one.root > taken.root]
    return taken if all(one.event == taken.event for one in since) else None


async def _given_back(bin: Bin, taken: Entry, turn: Turn) -> Answer:
    """Whoever has just taken a bin will not have it after all: it is as it was before."""
    agreed = await _agreed(taken, bin, turn)
    before = await present_custody(turn.book.without(agreed), bin, turn.today)
    return _refused(bin, replace(before, offer=None), agreed, [before.keeper], turn)


def _refused(
    bin: Bin, custody: Custody, strikes: Sequence[Entry], calls: Sequence[str | None], turn: Turn
) -> Answer:
    keeper = custody.keeper
    stays = f"{keeper} still {agreeing('keep', keeper)} it" if keeper else "it needs a keeper"
    return Answer(
        entries=[turn.entry("decline", bin=bin.name)],
        strikes=strikes,
        say=f"Fair enough: {stays}. Who else could take {the(bin.name)}?",
        calls=[name for name in calls if name and name != turn.sender],
    )
