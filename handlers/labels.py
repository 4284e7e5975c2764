"""The label of a bin."""

from handlers.answer import Answer, Turn
from handlers.reading.communal import LabelWanted


async def asked(plan: LabelWanted, turn: Turn) -> Answer:
    """A label."""
    del plan, turn
    return Answer(say="soon")
