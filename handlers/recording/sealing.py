"""A bin is closed to ferment: when it can be buried."""

from dataclasses import replace
from datetime import date, timedelta

from handlers.answer import SILENCE, Answer, Query, Turn
from handlers.chosen import reasons
from handlers.doubtful.nosuchbin import first_heard
from handlers.phrasing import capital, day, span, the
from handlers.practice.cautions import caution
from handlers.practice.days import drained_every
from handlers.reading.acts import Open, Seal
from handlers.reading.arranged import Reopened
from handlers.recording.bins import ask_which, choose, meant, opened
from handlers.state import BinState, named, new_run


async def sealed(act: Seal, turn: Turn) -> Answer:
    """A bin was closed to ferment."""
    name = await choose(act.bin, turn, stages={"filling"})
    entry = turn.entry("seal", bin=name, member=act.member, on=act.on)
    if name is None:
        return await ask_which(entry, turn, {"filling"})
    state = await named(turn.book, name, turn.today)
    if state and state.retired:
        say = f"{capital(the(name))} is out of use. Say “opened {the(name)} again” first."
        return Answer(say=say)
    on = entry.on or turn.today
    if state and not state.run.buried and state.run.sealed and state.run.sealed <= on:
        since = day(state.run.sealed, turn.today)
        window = state.run.to_bury(state.run.sealed)
        bury = span(window.start, window.end, turn.today)
        say = f"{capital(the(name))} has been sealed since {since}. Bury it {bury}."
        return Answer(entries=[entry], say=say, why=reasons(window, turn.book.room))
    if state and state.run.buried and on < state.run.buried:
        say = f"Noted: {the(name)} was sealed {day(on, turn.today)}, before it was buried."
        return Answer(entries=[entry], say=say)
    if state and state.run.last_layer and not state.run.buried and on < state.run.last_layer:
        return Answer(entries=[entry], say=_fed_since(state, on, state.run.last_layer, turn))
    if state and not act.firm and _is_empty(state, on, turn):
        return _doubted(replace(act, bin=name, on=on), state, turn)
    window = (state.run if state else new_run(turn.book.room)).to_bury(on)
    when = "" if on == turn.today else f", {day(on, turn.today)}"
    bury = span(window.start, window.end, turn.today)
    lines = [
        f"{capital(the(name))} is sealed{when}. Bury it {bury}; drain it {drained_every()} "
        "until then."
    ]
    if state and state.run.rich and state.run.rich > 0:
        lines.append(caution("gas"))
    lines += await first_heard(name, turn)
    return Answer(entries=[entry], say="\n".join(lines), why=reasons(window, turn.book.room))


SO_SOON = timedelta(days=7)
"""Within that no bin of ours is filled again after its burial without a word."""


def _is_empty(state: BinState, on: date, turn: Turn) -> bool:
    """Whether by the book nothing went in since the bin was emptied, a few days before."""
    since = state.run.buried
    return since is not None and on - since < SO_SOON and turn.book.is_whole


def _doubted(act: Seal, state: BinState, turn: Turn) -> Answer:
    """A sealing of a bin that was just emptied may be a slip of the day or of the bin."""
    name, on = the(state.bin.name), day(act.on or turn.today, turn.today)
    buried = day(state.run.buried or turn.today, turn.today)
    return Answer(
        say=f"By the book {name} was buried {buried}, and nothing went in since. Shall I write "
        f"down all the same that it was sealed {on}?",
        query=Query.about(replace(act, firm=True), lacks="yes"),
    )


def _fed_since(state: BinState, on: date, fed: date, turn: Turn) -> str:
    """A sealing on a day before the last layer, which opened the bin again by the book."""
    name = the(state.bin.name)
    if state.run.sealed:
        return (
            f"Noted: {name} was sealed {day(on, turn.today)}. But by the book a layer went in "
            f"{day(fed, turn.today)} and it was sealed {day(state.run.sealed, turn.today)}: that "
            "day counts. If that layer is of another day, correct it."
        )
    return (
        f"Noted: {name} was sealed {day(on, turn.today)}. But by the book a layer went in "
        f"{day(fed, turn.today)}, after that, so {name} counts as open. If that layer is of "
        f"another day, correct it; if {name} is closed now, say “sealed {name}”."
    )


async def reopened(plan: Reopened, turn: Turn) -> Answer:
    """A bin that was sealed is open again: its seal is struck out; any other is begun anew."""
    name = await choose(plan.bin, turn, stages={"fermenting", "ready"})
    state = await named(turn.book, name, turn.today)
    sealed_on = state.run.sealed if state and not state.run.buried else None
    if state is None or sealed_on is None:
        return await _not_sealed(plan, state, turn)
    seals = [
        entry
        for entry in await turn.book.run(state.bin, state.number)
        if entry.act == "seal" and not entry.struck and entry.on and entry.on >= sealed_on
    ]
    return Answer(
        entries=[turn.entry("unseal", bin=state.bin.name)],
        strikes=seals,
        say=f"{capital(the(state.bin.name))} is open again: its sealing, "
        f"{day(sealed_on, turn.today)}, is struck out. Seal it anew when you are done, and its "
        "days count from then.",
    )


async def _not_sealed(plan: Reopened, state: BinState | None, turn: Turn) -> Answer:
    if plan.bin is None:
        return SILENCE
    stage = state.run.stage(turn.today) if state and not state.retired else None
    if stage == "in the ground" or (plan.anew and stage != "filling"):
        return await opened(Open(bin=plan.bin, on=turn.today), turn)
    found = state or await meant(plan.bin, turn)
    if isinstance(found, Answer):
        return found
    return Answer(say=f"{capital(the(found.bin.name))} is not sealed: its records go on.")
