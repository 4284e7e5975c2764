"""Liquid comes off a bin: written down, and marked as noted."""

from handlers.answer import Answer, Turn
from handlers.bins import ask_which, choose
from handlers.phrasing import the, volume
from handlers.reading.acts import Drain
from handlers.state import Stage, named
from storage.rows import Facts

MOST_DRAINED_L = 60.0
"""More liquid than any shared bin gives at once: beyond it, it is a slip of the hand."""

DRAINED_STAGES: frozenset[Stage] = frozenset({"filling", "fermenting", "ready"})


async def drained(act: Drain, turn: Turn) -> Answer:
    """Liquid was drawn off a bin."""
    if act.volume_l is not None and not 0 <= act.volume_l <= MOST_DRAINED_L:
        return Answer(
            say=f"{volume(abs(act.volume_l), turn.units)} is more liquid than any bin gives, so "
            "nothing is written down. Say it again with the right amount."
        )
    name = await choose(act.bin, turn, stages=DRAINED_STAGES)
    state = await named(turn.book, name, turn.today)
    if state and state.capacity_l and act.volume_l and act.volume_l >= state.capacity_l:
        return Answer(
            say=f"{volume(act.volume_l, turn.units)} is all that {the(state.bin.name)} holds, so "
            "nothing is written down. Say it again with the right amount or bin."
        )
    facts = Facts(volume_l=act.volume_l)
    entry = turn.entry("drain", bin=name, facts=facts, member=act.member, on=act.on)
    if name is None:
        return await ask_which(entry, turn, DRAINED_STAGES)
    return Answer(entries=[entry], noted=True)
