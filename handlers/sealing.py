"""A bin is closed to ferment: when it can be buried."""

from handlers.answer import Answer, Turn
from handlers.bins import ask_which, choose
from handlers.chosen import reasons
from handlers.phrasing import capital, day, span, the
from handlers.practice.cautions import caution
from handlers.reading.acts import Seal
from handlers.state import named, new_run


async def sealed(act: Seal, turn: Turn) -> Answer:
    """A bin was closed to ferment."""
    name = await choose(act.bin, turn, stages={"filling"})
    entry = turn.entry("seal", bin=name, member=act.member, on=act.on)
    if name is None:
        return await ask_which(entry, turn, {"filling"})
    state = await named(turn.book, name, turn.today)
    on = entry.on or turn.today
    if state and not state.run.buried and state.run.sealed and state.run.sealed <= on:
        since = day(state.run.sealed, turn.today)
        window = state.run.to_bury(state.run.sealed)
        bury = span(window.start, window.end, turn.today)
        say = f"{capital(the(name))} has been sealed since {since}. Bury it {bury}."
        return Answer(entries=[entry], say=say, why=reasons(window, turn.book.room))
    window = (state.run if state else new_run(turn.book.room)).to_bury(on)
    when = "" if on == turn.today else f", {day(on, turn.today)}"
    bury = span(window.start, window.end, turn.today)
    lines = [
        f"{capital(the(name))} is sealed{when}. Bury it {bury}; drain it every two or three days "
        "until then."
    ]
    if state and state.run.rich and state.run.rich > 0:
        lines.append(caution("gas"))
    return Answer(entries=[entry], say="\n".join(lines), why=reasons(window, turn.book.room))
