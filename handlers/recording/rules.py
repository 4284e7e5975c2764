"""What a group keeps out of a bin of its own accord: "no meat in the courtyard bin"."""

from collections.abc import Sequence

from handlers.answer import Answer, Turn
from handlers.asked import allowed
from handlers.phrasing import capital, the
from handlers.powers import refusal
from handlers.practice.figure import listed
from handlers.practice.kinds import KINDS, Shares
from handlers.reading.acts import Ask
from handlers.reading.arrangements.communal import Bar
from handlers.recording.bins import not_meant
from storage.book import Book
from storage.rows import Bin, Facts


async def barred(book: Book, bin: Bin) -> Sequence[str]:
    """The kinds that a group keeps out of a bin, by its last word on it."""
    said = await book.latest(bin, "bar")
    kept_out = (said.facts.words or "").split(",") if said else []
    return [kind for kind in KINDS if kind in kept_out]


async def set_for(plan: Bar, turn: Turn) -> Answer:
    """The group decides what is not to go into a bin; nothing barred: all that the craft allows."""
    bin = await turn.book.bin(plan.bin)
    if bin not in await turn.book.bins() or bin is None:
        return await not_meant(plan.bin, turn)
    if refused := await refusal("settings", turn):
        return Answer(say=refused)
    kinds = list(plan.kinds)
    facts = Facts(words=",".join(kinds) or "nothing")
    where = capital(the(bin.name))
    if not kinds:
        say = f"{where} takes all that the craft allows again."
    else:
        say = f"{where} takes no {listed(kinds, 'or')} from now on. Its label says so."
    return Answer(entries=[turn.entry("bar", bin=bin.name, facts=facts)], say=say)


async def asked(act: Ask, turn: Turn) -> Answer:
    """Whether something may go in: by the group's own rule for that bin, else by the craft's."""
    bins = await turn.book.bins()
    bin = await turn.book.bin(act.bin) if act.bin else bins[0] if len(bins) == 1 else None
    kept_out = await barred(turn.book, bin) if bin else []
    against = [kind for kind in act.materials or {} if kind in kept_out]
    if bin is None or not against:
        return allowed.at_most(act, turn.units) if act.at_most else allowed.asked(act)
    return Answer(say=f"No: by your own rule {the(bin.name)} takes no {listed(against, 'or')}.")


async def broken(book: Book, name: str | None, materials: Shares | None) -> list[str]:
    """One line where a layer holds what its group keeps out of that bin."""
    bin = await book.bin(name) if name else None
    if bin is None:
        return []
    against = [kind for kind in await barred(book, bin) if (materials or {}).get(kind)]  # type: ignore[call-overload]
    if not against:
        return []
    return [f"By your own rule {the(bin.name)} takes no {listed(against, 'or')}."]
