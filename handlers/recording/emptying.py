"""A bin was emptied, but not into a bed, and begins again."""

from dataclasses import replace

from handlers.answer import Answer, Query, Turn
from handlers.phrasing import capital, mass, spoon, starter, the
from handlers.practice.first_bed import first_bed
from handlers.reading.acts import Bury, Open
from handlers.recording.bins import AT_WORK, ask_which, choose, opened
from handlers.state import BinState, named
from storage.rows import Facts


async def begun_again(act: Open, turn: Turn) -> Answer:
    """What was in a bin is gone, and its next run begins."""
    name = await choose(act.bin, turn, stages=AT_WORK)
    entry = turn.entry(
        "open", bin=name, facts=Facts(words=act.emptied), member=act.member, on=act.on
    )
    if name is None:
        return await ask_which(entry, turn, AT_WORK)
    state = await named(turn.book, name, turn.today)
    if state is None or not state.number or state.run.buried:
        return await opened(replace(act, bin=name, emptied=None), turn)
    run = state.run
    if run.sealed and act.emptied == "emptied":
        return _asked_where(replace(act, bin=name), turn)
    if not (run.layer_count or run.sealed):
        return Answer(say=f"{capital(the(name))} is empty by the book, so nothing is written down.")
    return Answer(entries=[entry], say=_said(state, turn))


def _asked_where(act: Open, turn: Turn) -> Answer:
    """What was sealed is most likely in the ground: that is another record."""
    bin = the(act.bin or "")
    return Answer(
        say=f"Did what was in {bin} go into the ground? Then “yes” writes down that it was buried. "
        f"If not, say “threw out {bin}, starting again”.",
        query=Query.about(
            Bury(bin=act.bin, member=act.member, on=act.on), replace(act, emptied=None), lacks="yes"
        ),
    )


def _said(state: BinState, turn: Turn) -> str:
    bin, run = the(state.bin.name), state.run
    held = f"the {mass(run.mass_kg, turn.units)} in it" if run.mass_kg else "what was in it"
    bed = first_bed(capacity_l=state.capacity_l, tablespoon=spoon(turn.units))
    return (
        f"{capital(bin)} begins again; {held} went into no bed. First a thin bed of starter bran: "
        f"{starter(bed.tablespoons, bed.starter_g, turn.units)}.\n"
        f"Was it dug in? Say “scratch that”, then “buried {bin}”."
    )
