"""Fermented contents go into the soil: when it can be planted."""

from datetime import date

from handlers.answer import Answer, Turn
from handlers.bins import ask_which, choose
from handlers.chosen import reasons
from handlers.nosuchbin import first_heard
from handlers.phrasing import capital, day, span, the
from handlers.practice.cautions import caution
from handlers.reading.acts import Bury
from handlers.state import BinState, Stage, named, new_run
from storage.rows import Facts

CLOSED: frozenset[Stage] = frozenset({"fermenting", "ready"})


async def buried(act: Bury, turn: Turn) -> Answer:
    """Fermented contents went into soil."""
    name = await choose(act.bin, turn, stages=CLOSED)
    facts = Facts(place=act.place)
    entry = turn.entry("bury", bin=name, facts=facts, member=act.member, on=act.on)
    if name is None:
        return await ask_which(entry, turn, CLOSED)
    on = entry.on or turn.today
    state = await named(turn.book, name, turn.today)
    window = (state.run if state else new_run(turn.book.room)).to_plant(on)
    when = "" if on == turn.today else f" since {day(on, turn.today)}"
    lines = [
        f"{capital(the(name))} is in the ground{when}. Plant there "
        f"{span(window.start, window.end, turn.today)}, later in cold soil."
    ]
    lines += _early(state, turn, on) if state else []
    lines += await first_heard(name, turn)
    return Answer(entries=[entry], say="\n".join(lines), why=reasons(window, turn.book.room))


def _early(state: BinState, turn: Turn, on: date) -> list[str]:
    """A word where the bin was buried before it can have fermented, else the usual caution."""
    sealed = state.run.sealed
    if sealed is None or on >= state.run.to_bury(sealed).start:
        return [caution("digging")]
    days = (on - sealed).days
    since = f"only {days} day{'' if days == 1 else 's'} before" if days else "the same day"
    return [
        f"It was sealed {since}: cover it well (20 cm or more), and give the soil the longer wait."
    ]
