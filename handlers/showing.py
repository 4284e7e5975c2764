"""The calendar as something to post: a picture, or a file for calendar programs."""

from handlers.answer import Answer, Turn
from handlers.reading.arranged import Show


async def shown(plan: Show, turn: Turn) -> Answer:
    """The calendar is to be posted."""
    del turn
    return Answer(attach="calendar file" if plan.as_file else "picture")
