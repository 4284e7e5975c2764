"""A member asks to have a bin that another keeps: its keeper is asked, whose yes passes it on."""

from datetime import timedelta

from handlers.answer import SILENCE, Answer, Query, Turn
from handlers.doubtful.spokenof import bin_spoken_of
from handlers.phrasing import capital, day, the
from handlers.powers import refusal
from handlers.reading.acts import Accept, Offer
from handlers.reading.arrangements.communal import Wanting
from handlers.sharing import custody, meanwhile
from handlers.sharing.keepers import present_custody
from handlers.sharing.onoffer import in_use, offered_to, on_offer


async def wanted(plan: Wanting, turn: Turn) -> Answer:
    """Asks the keeper; a bin that is on offer, or nobody's, is taken at once."""
    if plan.bin is None and offered_to(turn.sender, await on_offer(None, turn)):
        return await custody.accepted(Accept(on=plan.on), turn)
    name = plan.bin or await bin_spoken_of(turn)
    bin = await in_use(name, turn) if name else None
    if bin is None:
        return SILENCE
    held = await present_custody(turn.book, bin, turn.today)
    if held.keeper is None or await on_offer(bin.name, turn):
        return await custody.accepted(Accept(bin=bin.name, on=plan.on), turn)
    if held.keeper == turn.sender:
        return Answer(say=f"You keep {the(bin.name)} already.")
    if refused := await refusal("take", turn):
        return Answer(say=refused)
    wish = Offer(
        bin=bin.name, to=turn.sender, on=plan.on, days=plan.days, away=plan.away, wished=True
    )
    wish = await meanwhile.dated(wish, held.keeper, turn)
    when = f" from {day(wish.on, turn.today)}" if wish.on and wish.on > turn.today else ""
    if wish.days:
        back = (wish.on or turn.today) + timedelta(days=wish.days)
        when += f" until {day(back, turn.today)}"
    asked = f"may {capital(turn.sender)} have {the(bin.name)}{when}"
    return Answer(
        say=f"{capital(held.keeper)}, {asked}? Say “yes” or put 👍 here; or “no”.",
        query=Query.about(wish, lacks="leave", of=held.keeper),
        calls=[held.keeper],
    )
