"""Fermented contents go into the soil: when it can be planted."""

from datetime import date

from handlers.answer import Answer, Turn
from handlers.bins import ask_which, choose
from handlers.chosen import reasons
from handlers.phrasing import capital, day, span, the
from handlers.practice.cautions import caution
from handlers.reading.acts import Bury
from handlers.state import BinState, Stage, named, new_run
from storage.rows import Facts

CLOSED: frozenset[Stage] = frozenset({"fermenting", "ready"})


async def buried(act: Bury, turn: Turn) -> Answer:
    """Fermented contents went into soil."""
    name = await choose(act.bin, turn, stages=CLOSED)
    if act.part:
        return Answer(say=_in_part(name))
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
    return Answer(entries=[entry], say="\n".join(lines), why=reasons(window, turn.book.room))


def _in_part(name: str | None) -> str:
    """What is said of a bin that is not empty yet: its run ends with the last of it."""
    which = the(name) if name else "the bin"
    return (
        f"Only a part of {which}? I note a burial once all of it is in the ground, so nothing is "
        f"written down. Then say “buried {which}”."
    )


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
