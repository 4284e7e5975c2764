"""A bin gets another name, or goes out of use; its record is kept."""

from handlers.answer import Answer, Turn
from handlers.phrasing import capital, mass, the
from handlers.powers import refusal
from handlers.reading.arrangements.communal import Rename, Retire
from handlers.recording.bins import LONGEST_NAME, unknown
from handlers.righting.corrections import struck_words
from handlers.sharing.rotas import rotas_of
from handlers.state import look_up, states_of
from storage import words
from storage.rows import Bin, Entry, Facts


async def renamed(plan: Rename, turn: Turn) -> Answer:
    """A bin is called something else; it is still known by the name it had."""
    bin, unfound = await _bin(plan.bin, turn)
    if bin is None:
        return unfound
    if refused := await refusal("rename", turn):
        return Answer(say=refused)
    if plan.other:
        return Answer(
            say=f"Two bins cannot take each other's names: the records of {the(bin.name)} and "
            f"{the(plan.other)} would be taken for one another. Give one a new name."
        )
    if not plan.name:
        return Answer(say=f"What is its name to be? Say “rename {the(bin.name)} to …”.")
    if " and " in plan.name and await _names_another(plan.name, bin, turn):
        return Answer(say="One bin at a time: say “rename … to …” for each by itself.")
    name = words.name(plan.name)
    if not name or len(plan.name) > LONGEST_NAME:
        return Answer(say=f"A bin's name has one to {LONGEST_NAME} letters. Say another.")
    if name == bin.name:
        return Answer(say=f"{capital(the(bin.name))} is called so already.")
    known = await turn.book.bin(name)
    if known and known != bin:
        return Answer(say=f"{await _why_taken(known, turn)} Say another name.")
    entry = turn.entry("rename", bin=bin.name, facts=Facts(words=name))
    return Answer(
        entries=[entry],
        say=f"{capital(the(bin.name))} is {the(name)} now. Its record goes on, and the old name "
        "is still understood.",
    )


async def _names_another(name: str, bin: Bin, turn: Turn) -> bool:
    """ "Rosie and the green bin Ella", "Rosie and green to Ella": more bins than one."""
    said = f" {name.casefold()} "
    others = [other.name.casefold() for other in await turn.book.bins() if other != bin]
    return " to " in said or any(f" {other} " in said for other in others)


async def _why_taken(known: Bin, turn: Turn) -> str:
    """Why a name is not free: the bin is there, or its record may yet be wanted under it."""
    if known in await turn.book.bins():
        return f"There is {the(known.name)} already."
    if known in await turn.book.retired():
        return f"{capital(the(known.name))} is out of use and keeps its name."
    return f"{capital(the(known.name))} was struck out and keeps its name, should it come back."


async def retired(plan: Retire, turn: Turn) -> Answer:
    """A bin goes out of use, with its turns; what is in it is named."""
    bin, unfound = await _bin(plan.bin, turn)
    if bin is None:
        return unfound
    if plan.deleted and (opened := await _only_opened(bin, turn)):
        return Answer(strikes=[opened], say=struck_words([opened], turn))
    if plan.maybe:
        return Answer(say=f"Is {the(bin.name)} out of use? Then say “retire {the(bin.name)}”.")
    if refused := await refusal("retire", turn):
        return Answer(say=refused)
    state = await look_up(turn.book, bin, turn.today)
    turns = [one for one in await rotas_of(turn.book, turn.today) if one.bin == bin]
    entries = [turn.entry("retire", bin=bin.name)]
    entries += [turn.entry("over", bin=bin.name, facts=Facts(words=one.duty)) for one in turns]
    lines = [
        f"{capital(the(bin.name))} is out of use; its record is kept. Say “opened {the(bin.name)} "
        "again” should it come back."
    ]
    if state.run.mass_kg and not state.run.buried:
        held = mass(state.run.mass_kg, turn.units)
        lines.append(f"By the book there is {held} in it that was never buried.")
    return Answer(entries=entries, say=" ".join(lines))


async def _only_opened(bin: Bin, turn: Turn) -> Entry | None:
    """The bin's opening, if the sender wrote it down and nothing else is in its record."""
    told = await turn.book.run(bin, await turn.book.present_run(bin))
    only = told[0] if len(told) == 1 and told[0].act == "open" else None
    return only if only and only.writer == turn.sender else None


async def _bin(name: str | None, turn: Turn) -> tuple[Bin | None, Answer]:
    """The bin that is meant, or what to say where there is none."""
    bins = await turn.book.bins()
    if name is None and len(bins) == 1:
        return bins[0], Answer()
    known = await turn.book.bin(name) if name else None
    if known in bins:
        return known, Answer()
    if known and known in await turn.book.retired():
        return None, Answer(say=f"{capital(the(known.name))} is out of use already.")
    if name is None or not bins:
        return None, Answer(say="Which bin? Say it again with its name.")
    states = await states_of(turn.book, turn.today)
    return None, unknown(name, states)
