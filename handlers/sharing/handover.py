"""The card that goes with a bin when it changes hands, and what the taker finds."""

from collections.abc import Iterator, Sequence
from datetime import date

from handlers.answer import Answer, Turn
from handlers.phrasing import capital, day, mass, percent, span, the
from handlers.planning.dues import done_to_it, shown
from handlers.practice.cautions import caution
from handlers.practice.figure import listed, quoted
from handlers.practice.trouble import GOOD
from handlers.reading.arrangements.communal import Condition
from handlers.recording.bins import choose, summary
from handlers.state import BinState, look_up
from storage.rows import Due, Facts

TO_BE_DONE = ("drain", "seal", "bury")

MOST_SEEN = 4
"""Things seen that a card tells, the latest."""
MOST_CAUTIONS = 2
"""Cautions on a card beside that of its weight."""

SEEN_CARE = {
    "rodents": "rats",
    "green_mould": "mould",
    "black_mould": "mould",
    "other_mould": "mould",
    "gas": "gas",
}
"""The caution that goes with what was seen, the gravest first."""

MASS_DIFFERS, FILL_DIFFERS = 0.2, 0.15
"""How far, as a share of the weight or of the bin, what is found may lie from the book."""


async def card(state: BinState, turn: Turn) -> list[str]:
    """A short state of a bin for whoever takes it: what it is, what to do first, what to mind."""
    coming = await shown(turn.book, turn.today)
    dues = [due for due in coming if due.bin == state.bin and due.what in TO_BE_DONE]
    lines = [f"{capital(summary(state, turn))}."]
    if not state.run.layer_count or state.run.buried:
        return lines
    drained = state.run.last_drain
    lines.append(f"Last drained {day(drained, turn.today)}." if drained else "Not drained yet.")
    lines.extend(_to_do(dues, turn))
    if seen := await _seen(state, turn):
        lines.append(f"Seen: {'; '.join(seen)}.")
    lines.extend(caution(name) for name in _cautions(state, dues, turn))
    if state.run.mass_kg:
        lines.append(f"It holds about {mass(state.run.mass_kg, turn.units)}. {caution('lifting')}")
    return lines


def _to_do(dues: Sequence[Due], turn: Turn) -> Iterator[str]:
    """What is to be done first, and what then, in one line."""
    ordered = sorted(dues, key=lambda due: (max(due.from_day, turn.today), due.to_day))
    parts = []
    for lead, due in zip(("First", "then"), ordered, strict=False):
        parts.append(f"{lead} {done_to_it(due.what)} ({_days(due, turn.today)})")
    if parts:
        yield f"{', '.join(parts)}."


def _days(due: Due, today: date) -> str:
    late = (today - due.to_day).days
    if late > 0:
        return "late by a day" if late == 1 else f"late by {late} days"
    return span(max(due.from_day, today), due.to_day, today)


async def _seen(state: BinState, turn: Turn) -> list[str]:
    """What was odd in this run, and what its takers found, the latest last."""
    found = []
    for entry in await turn.book.run(state.bin, state.number):
        if entry.on is None:
            continue
        odd = [sign.replace("_", " ") for sign in entry.facts.signs if sign not in GOOD]
        said = [quoted(entry.facts.words)] if entry.act == "note" and entry.facts.words else []
        if odd or said:
            found.append(f"{listed([*odd, *said])}, {day(entry.on, turn.today)}")
    return found[-MOST_SEEN:]


def _cautions(state: BinState, dues: Sequence[Due], turn: Turn) -> list[str]:
    seen = {sign for _, sign in state.run.signs}
    names = [name for sign, name in SEEN_CARE.items() if sign in seen]
    if state.run.sealed:
        names.append("gas")
    if any(due.what == "drain" and due.from_day <= turn.today for due in dues):
        names.append("liquid")
    if state.run.rich_kg:
        names.append("meat")
    return list(dict.fromkeys(names))[:MOST_CAUTIONS]


async def found(note: Condition, turn: Turn) -> Answer:
    """What somebody finds a bin to be like is kept beside what the book says of it."""
    name = await choose(note.bin, turn)
    bin = await turn.book.bin(name) if name else None
    if bin is None:
        return Answer(say="Of which bin is that? Say it again with its name.")
    state = await look_up(turn.book, bin, turn.today)
    facts = Facts(words=note.words, mass_kg=note.mass_kg)
    entry = turn.entry("note", bin=bin.name, facts=facts)
    differing = list(_differing(note, state, turn))
    if not differing:
        return Answer(entries=[entry], noted=True)
    return Answer(
        entries=[entry], say=f"Noted for {the(bin.name)}. {' '.join(differing)} Both are kept."
    )


def _differing(note: Condition, state: BinState, turn: Turn) -> Iterator[str]:
    """Where what was found is another thing than what the book says."""
    held = state.run.mass_kg
    if note.mass_kg is not None and abs(note.mass_kg - held) > MASS_DIFFERS * max(held, 1.0):
        said = f"about {mass(held, turn.units)}" if held else "nothing in it"
        yield f"You found {mass(note.mass_kg, turn.units)}; by the book there is {said}."
    fill = state.fill
    if note.fill is not None and fill is not None and abs(note.fill - fill) > FILL_DIFFERS:
        yield f"You found it {percent(note.fill)} full; by the book it is {percent(fill)} full."
