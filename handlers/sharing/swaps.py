"""Turns that members swap: asked for, agreed, declined, or kept after all."""

from collections.abc import Sequence
from datetime import date

from handlers.answer import SILENCE, Answer, Turn
from handlers.people import is_same
from handlers.phrasing import capital, day, span
from handlers.practice.figure import listed
from handlers.reading.arrangements.communal import Swap, SwapOff
from handlers.sharing.rotas import RotaState, bin_of, called, exchange_of, is_on, rotas_of
from handlers.sharing.turns import Exchange, Stint
from storage import rotas
from storage.rows import Bin, Entry, Facts

NO_TURN = "You have no turn coming up that I know of."
NO_TURN_THEN = "You have no turn on that day that I know of."


async def wished(plan: Swap, turn: Turn) -> Answer:
    """A member would rather have another turn than theirs; the others are asked."""
    found = await _own_stint(plan, turn)
    if found is None:
        of_ours = plan.bin is not None or bool(await rotas_of(turn.book, turn.today))
        return (
            SILENCE
            if plan.told or not of_ours
            else Answer(say=NO_TURN_THEN if plan.on else NO_TURN)
        )
    one, stint = found
    before = [wish for wish in open_wishes(one, turn.today) if _is_of(wish, stint)]
    to = (await called([plan.to], turn))[0] if plan.to else None
    facts = Facts(words=one.duty)
    entry = turn.entry("swap", bin=bin_of(one), on=stint.start, receiver=to, facts=facts)
    others = [to] if to else [name for name, _ in one.members if name != turn.sender]
    asked = f"{capital(to)}, can you swap" if to else "Who can swap"
    days = span(stint.start, stint.end, turn.today)
    return Answer(
        entries=[entry],
        strikes=before,
        say=f"{asked} with {turn.sender}: {one.deed}, {days}? Say “I can” or put "
        f"👍 here; {turn.sender} does your next turn for it.",
        calls=[name for name in others if is_on(one, name)],
    )


async def _own_stint(plan: Swap, turn: Turn) -> tuple[RotaState, Stint] | None:
    """The sender's turn on a day, or the next one; of the bin that was named, if one was."""
    found = [
        (one, stint)
        for one in await rotas_of(turn.book, turn.today)
        if plan.bin is None or (one.bin and is_same(one.bin.name, plan.bin))
        for stint in one.coming(turn.today, ahead=one.round)
        if stint.member == turn.sender and (plan.on is None or stint.start <= plan.on <= stint.end)
    ]
    return min(found, key=lambda each: each[1].start, default=None)


async def has_turn(on: date, bin: str | None, turn: Turn) -> bool:
    """Whether the sender has the turn of a day to come."""
    return await _own_stint(Swap(bin=bin, on=on), turn) is not None


async def present_stint(bin: Bin, turn: Turn) -> Stint | None:
    """The present turn to keep a bin, if it is the sender's."""
    for one in await rotas_of(turn.book, turn.today):
        stint = next(iter(one.coming(turn.today)), None)
        if one.duty == "keep" and one.bin in (None, bin) and stint and stint.start <= turn.today:
            return stint if stint.member == turn.sender else None
    return None


def open_wishes(one: RotaState, today: date) -> list[Entry]:
    """Swaps asked for that can still be agreed."""
    has = {(stint.member, stint.start) for stint in one.coming(today, ahead=one.round)}
    return [wish for wish in one.wishes if (wish.member, wish.on) in has]


def _is_of(wish: Entry, stint: Stint) -> bool:
    """Whether a swap that was asked for is of that turn."""
    return (wish.member, wish.on) == (stint.member, stint.start)


async def kept(bin: Bin, turn: Turn) -> list[Entry]:
    """The swaps that a member asked for and needs no more: they take their turn with the bin."""
    return [
        wish
        for one in await rotas_of(turn.book, turn.today)
        if one.duty == "keep" and one.bin in (None, bin)
        for wish in open_wishes(one, turn.today)
        for stint in one.coming(turn.today)[:1]
        if stint.member == turn.sender and _is_of(wish, stint)
    ]


def wish_line(wish: Entry, turn: Turn) -> str:
    """That a swap is asked for, as it stands under a rota."""
    when = day(wish.on, turn.today) if wish.on else ""
    if wish.member is None:
        return f"Nobody is there for the turn from {when}: say “I can” if you are."
    return f"{capital(wish.member)} would like to swap the turn from {when}."


async def called_off(plan: SwapOff, turn: Turn) -> Answer:
    """A swap that one of the two asked for or agreed to is off, unless its turn is over."""
    found = [
        (one, swap)
        for one in await rotas_of(turn.book, turn.today)
        if plan.bin is None or (one.bin and is_same(one.bin.name, plan.bin))
        for swap in [*open_wishes(one, turn.today), *_agreed(one, turn.today)]
        if _is_between(swap, turn.sender, plan.to)
    ]
    if not found:
        return SILENCE
    one, swap = max(found, key=lambda each: each[1].id)
    strikes = [swap, *await _asked_by(swap, one, turn)]
    if swap.act == "swapped":
        one.exchanges.remove(exchange_of(swap))
    coming = one.coming(turn.today, ahead=one.round)
    turns = [_next_of(who, coming, turn) for who in (swap.member, swap.receiver)]
    whose = [words for words in turns if words]
    others = {swap.member, swap.receiver} - {turn.sender, None}
    return Answer(
        strikes=strikes,
        say="The swap is off." + (f" To {one.deed}: {listed(whose)}." if whose else ""),
        calls=sorted(name for name in others if name),
    )


def _agreed(one: RotaState, today: date) -> list[Entry]:
    """Swaps that were agreed, of turns that are not over."""
    days = {stint.start for stint in one.coming(today, ahead=one.round)}
    return [swap for swap in one.swapped if swap.on in days]


def _is_between(swap: Entry, sender: str, other: str | None) -> bool:
    """Whether the sender asked for the swap, or agreed to it; with the other, if one is named."""
    members = [name for name in (swap.member, swap.receiver) if name]
    own = swap.member == sender or (swap.act == "swapped" and swap.receiver == sender)
    return own and (other is None or any(is_same(name, other) for name in members))


async def _asked_by(swap: Entry, one: RotaState, turn: Turn) -> list[Entry]:
    """The wish that was agreed to: it is not to stand open again."""
    if swap.act == "swap":
        return []
    return [
        entry
        for entry in await rotas.said(turn.book)
        if entry.act == "swap"
        and (entry.member, entry.on, entry.bin) == (swap.receiver, swap.on, one.bin)
    ]


def _next_of(member: str | None, coming: Sequence[Stint], turn: Turn) -> str:
    """The next turn of a member, in words; none if there is none."""
    stint = next((stint for stint in coming if stint.member == member), None)
    if member is None or stint is None:
        return ""
    return f"{capital(member)} {span(stint.start, stint.end, turn.today)}"


async def accepted(turn: Turn, event: str | None) -> Answer | None:
    """Somebody does the turn of another, who does their next one for it; None: there is none.

    `event`: the message that asked for it, if that is known.
    """
    found = await _answerable(turn, event)
    if found is None:
        return None
    one, wish = found
    assert wish.on is not None  # every wish is for a day
    stint = next(s for s in one.coming(turn.today, ahead=one.round) if s.start == wish.on)
    facts = Facts(words=one.duty)
    entry = turn.entry("swapped", bin=bin_of(one), on=wish.on, receiver=wish.member, facts=facts)
    one.exchanges.append(Exchange(giver=wish.member, taker=turn.sender, on=wish.on))
    after = one.coming(turn.today, ahead=wish.on - turn.today + one.round)
    if next((s.member for s in after if s.start == wish.on), None) != turn.sender:
        return Answer(say=f"You are away then. Who else can {one.deed}?")
    back = [s for s in after if s.owner == turn.sender and s.member == wish.member]
    days = span(stint.start, stint.end, turn.today)
    lines = [f"{capital(turn.sender)} is to {one.deed} {days}."]
    if back and wish.member:
        days = span(back[0].start, back[0].end, turn.today)
        lines.append(f"{capital(wish.member)} does it {days} instead.")
    calls = [wish.member] if wish.member else []
    return Answer(entries=[entry], say=" ".join(lines), calls=calls)


async def declined(turn: Turn) -> Answer:
    """A member who was asked by name does not swap."""
    found = await _answerable(turn, turn.refers_to)
    if found is None or found[1].receiver is None:
        return SILENCE
    one, wish = found
    return Answer(
        say=f"Fair enough. Who else can swap with {wish.member}: {one.deed}, from "
        f"{day(wish.on or turn.today, turn.today)}?"
    )


async def _answerable(turn: Turn, event: str | None) -> tuple[RotaState, Entry] | None:
    """The latest swap that the sender can agree to, or that of an event."""
    found = [
        (one, wish)
        for one in await rotas_of(turn.book, turn.today)
        for wish in open_wishes(one, turn.today)
        if wish.member != turn.sender
        and (wish.receiver is None or is_same(wish.receiver, turn.sender))
    ]
    if event is not None:
        found = [each for each in found if each[1].event == event]
    return max(found, key=lambda each: each[1].id, default=None)
