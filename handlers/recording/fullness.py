"""A bin is told to be fuller than its layers make it: is the rest to be written down?"""

from handlers.answer import SILENCE, Answer, Query, Turn
from handlers.phrasing import how_full, mass, the
from handlers.practice.density import capacity_kg
from handlers.reading.acts import Layer
from handlers.reading.arranged import Fullness
from handlers.state import named

MISSING = 0.2
"""Of the whole bin, from which on what is told is more than a glance can be wrong by."""


async def told(plan: Fullness, turn: Turn) -> Answer:
    """One question where the book lacks scraps that are there; else nothing."""
    state = await named(turn.book, plan.bin, turn.today)
    if state is None or state.retired or not state.capacity_l:
        return SILENCE
    if state.run.stage(turn.today) != "filling":
        return SILENCE
    make_up = state.run.make_up
    whole_kg = capacity_kg(state.capacity_l, make_up)
    there_kg = plan.mass_kg or whole_kg * (plan.share or 0.0)
    if plan.litres:
        there_kg = capacity_kg(plan.litres, make_up)
    lacks_kg = round(there_kg - state.run.mass_kg, 1)
    if there_kg > whole_kg or lacks_kg < MISSING * whole_kg:
        return SILENCE
    layer = Layer(
        mass_kg=lacks_kg,
        materials=make_up or {"mixed": 1.0},
        bin=plan.bin,
        on=turn.today,
        rest=True,
    )
    fill = "empty" if not state.run.mass_kg or state.fill is None else how_full(state.fill)
    much = mass(lacks_kg, turn.units)
    rest = f"the rest, about {much}" if state.run.mass_kg else f"what is in it, about {much}"
    return Answer(
        say=f"By the book {the(plan.bin)} is {fill}. Shall I write down {rest}?",
        query=Query.about(layer, lacks="yes"),
    )
