"""Scraps that passed from one bin into another: what to write in place of it."""

from handlers.answer import Answer, Query, Turn
from handlers.phrasing import mass, the, volume
from handlers.practice.figure import listed
from handlers.reading.acts import Amend
from handlers.reading.arranged import BetweenBins
from handlers.state import named
from storage.rows import Entry

NO_ENTRY = "A move from bin to bin is no entry of mine, so nothing is written down."


async def told(plan: BetweenBins, turn: Turn) -> Answer:
    """A move is no entry: nothing is written down. Whether all layers are to stand in the other
    bin is asked; of a part it is named what to correct and put in.
    """
    state = await named(turn.book, plan.source, turn.today)
    run = await turn.book.run(state.bin, state.number) if state else []
    layers = [entry for entry in run if entry.act == "layer" and not entry.struck]
    held = state.run.mass_kg if state else 0.0
    kg = plan.mass_kg or (held / 2 if plan.half else held)
    put_in = f"“added {mass(kg, turn.units) if kg else '2 kg'} to {the(plan.target)}”"
    if not layers or not held:
        return Answer(say=f"{NO_ENTRY} Say what went in: {put_in}.")
    if not plan.half and kg >= NEARLY_ALL * held:
        count = "1 layer" if len(layers) == 1 else f"{len(layers)} layers"
        say = (
            f"{NO_ENTRY} Shall I put what {the(plan.source)} holds ({count}, "
            f"{mass(held, turn.units)}) down in {the(plan.target)} instead?"
        )
        moved = Amend(crossed="one", between=(plan.source, plan.target))
        return Answer(say=say, query=Query.about(moved, lacks="yes"))
    return Answer(say=f"{NO_ENTRY} {_how(plan, layers, kg, put_in, turn)}")


def _how(plan: BetweenBins, layers: list[Entry], kg: float, put_in: str, turn: Turn) -> str:
    """What to correct in the one bin, and what to write of the other."""
    source, last = the(plan.source), layers[-1].facts.mass_kg
    if last and kg < last:
        there = f"the {mass(last, turn.units)} in {source} was {mass(last - kg, turn.units)}"
        return f"Say what stayed (“{there}”) and what went in ({put_in})."
    each = [_amount(entry, turn) for entry in reversed(layers)]
    scratch = listed([f"“scratch the {much} in {source}”" for much in each if much][:MOST_LAYERS])
    strike = f"Strike out what left {source} ({scratch}), then say" if scratch else "Say"
    return f"{strike} what went in ({put_in})."


NEARLY_ALL = 0.8
"""Of what a bin holds by the book, from which on what was tipped out of it is all of it."""
MOST_LAYERS = 4
"""So many layers are named one by one."""


def _amount(layer: Entry, turn: Turn) -> str:
    """What a layer is called by; nothing where nobody measured it."""
    if layer.facts.mass_kg:
        return mass(layer.facts.mass_kg, turn.units)
    return volume(layer.facts.volume_l, turn.units) if layer.facts.volume_l else ""
