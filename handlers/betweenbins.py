"""Scraps that passed from one bin into another: what to write in place of it."""

from handlers.answer import Answer, Turn
from handlers.phrasing import mass, the
from handlers.reading.arranged import BetweenBins
from handlers.state import named


async def told(plan: BetweenBins, turn: Turn) -> Answer:
    """A move is no entry: nothing is written down, and what is to be struck out and put in is
    named."""
    source, target = the(plan.source), the(plan.target)
    state = await named(turn.book, plan.source, turn.today)
    held = state.run.mass_kg if state else 0.0
    kg = plan.mass_kg or (held / 2 if plan.half else held)
    put_in = f"“added {mass(kg, turn.units) if kg else '2 kg'} to {target}”"
    nothing = "A move from bin to bin is no entry of mine, so nothing is written down."
    if not held:
        return Answer(say=f"{nothing} Say what went in: {put_in}.")
    stayed = " Part of it stayed? Add that again." if kg < held else ""
    return Answer(
        say=f"{nothing} Strike out what left {source} (“scratch the last layer in {source}”), then "
        f"say what went in ({put_in}).{stayed}"
    )
