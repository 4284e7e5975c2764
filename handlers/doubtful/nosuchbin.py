"""A deed on a bin that the group has not: asked about, or written down and said to be the first."""

from handlers.answer import Answer, Query, Turn
from handlers.people import is_same
from handlers.phrasing import capital, the
from handlers.practice.figure import listed
from handlers.reading.acts import Act, Amend, Drain, Observe
from handlers.reading.doubts.doubted import BY_PLACE
from handlers.recording.bins import LONGEST_NAME, unknown
from handlers.state import BinState, named, states_of

ON_A_BIN = Drain | Observe
"""What is told in passing of a bin that was begun before: it begins none."""

NEW = frozenset({"new", "another", "begun"})
"""Words that answer that the bin is one more."""

ONE_MORE = "the bin is one more"
"""The rule of an act whose bin was asked about and is new."""


async def asked(act: Act, turn: Turn) -> Answer | None:
    """The question which bin was meant, if the group has bins and not the one that was named, or
    if it is called by somebody who keeps several.
    """
    if ONE_MORE in act.rules:
        return None
    if (kept := await _kept_several(getattr(act, "bin", None), turn)) is not None:
        return Answer(say=f"{kept}: which was it?", query=Query.about(act, lacks="which"))
    if not isinstance(act, ON_A_BIN) and BY_PLACE not in act.rules:
        return None
    bin: str | None = getattr(act, "bin", None)
    if (states := await _others(bin, turn)) is None:
        return None
    say = unknown(bin or "", states).say
    return Answer(
        say=f"{say} Nothing of it is written down yet: which was it? Say “new” if it is one more.",
        query=Query.about(act, lacks="which"),
    )


async def corrected(act: Amend, target: str, turn: Turn) -> Answer | None:
    """What to say to a correction of such a deed into a bin that the group has not."""
    if target not in ("drain", "observe") or (states := await _others(act.bin, turn)) is None:
        return None
    say = unknown(act.bin or "", states).say
    return Answer(
        say=f"{say} The record stands as it was: which did you mean?",
        query=Query.about(act, lacks="which"),
    )


async def first_heard(name: str, turn: Turn) -> list[str]:
    """What to add to a record that begins a bin beside others, which may be a slip."""
    states = await _others(name, turn)
    if not states:
        return []
    return [
        f"{capital(the(name))} is new to me. Meant another? Say “no, {the(states[0].bin.name)}”."
    ]


async def _kept_several(name: str | None, turn: Turn) -> str | None:
    """That somebody keeps several, if a bin is called by no more than its keeper."""
    owner, belongs, behind = (name or "").rpartition("'s")
    if not belongs or behind or await turn.book.bin(name or ""):
        return None
    states = await states_of(turn.book, turn.today)
    kept = [the(state.bin.name) for state in states if is_same(state.keeper or "", owner)]
    return f"{capital(owner)} keeps {listed(kept)}" if len(kept) > 1 else None


async def _others(name: str | None, turn: Turn) -> list[BinState] | None:
    """The group's bins, if none of them was ever called so and a bin was named at all."""
    bins = await turn.book.bins()
    if not name or len(name) > LONGEST_NAME or not bins:
        return None
    known = await named(turn.book, name, turn.today)
    if known and (known.bin in bins or known.retired):
        return None
    return await states_of(turn.book, turn.today)
