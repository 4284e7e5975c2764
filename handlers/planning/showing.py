"""The calendar as something to post: a picture, or a file for calendar programs."""

from handlers.answer import Answer, Setting, Turn
from handlers.powers import refusal
from handlers.reading.arranged import KeepUp, Show


async def shown(plan: Show, turn: Turn) -> Answer:
    """The calendar is to be posted."""
    del turn
    return Answer(attach="calendar file" if plan.as_file else "picture")


async def kept_up(plan: KeepUp, turn: Turn) -> Answer:
    """The calendar is to hang at the top of the room, or no longer."""
    if refused := await refusal("settings", turn):
        return Answer(say=refused)
    if plan.wanted:
        return Answer(
            settings=[Setting(what="notice", value="on")],
            say="I put the calendar up anew and keep it up to date.",
        )
    return Answer(
        settings=[Setting(what="notice", value="off")],
        say="I no longer keep the calendar's message up to date. Say “pin the calendar” to have it "
        "back.",
    )
