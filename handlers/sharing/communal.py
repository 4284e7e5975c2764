"""Which handler answers what is said of a bin that members share."""

from typing import assert_never

from handlers import powers
from handlers.answer import Answer, Turn
from handlers.asked import history, labels
from handlers.reading.acts import Decline, Offer
from handlers.reading.arrangements import communal as said
from handlers.recording import renaming, rules
from handlers.sharing import (
    custody,
    handover,
    rearranging,
    received,
    rehanding,
    rota,
    swaps,
    wishes,
)


async def answer(plan: said.Communal, turn: Turn) -> Answer:  # noqa: C901  # one line for each
    """What to write down and say."""
    match plan:
        case said.Handing():
            return await custody.offered(
                Offer(bin=plan.bin, to=plan.to, on=plan.on, days=plan.days, away=plan.away), turn
            )
        case said.HandedOver():
            return await rehanding.handed_over(plan, turn)
        case said.Volunteered():
            return await rehanding.volunteered(plan, turn)
        case said.Taking():
            return await received.had(plan, turn)
        case said.Wanting():
            return await wishes.wanted(plan, turn)
        case said.Refusing():
            return await custody.declined(Decline(bin=plan.bin), turn)
        case said.Withdrawing():
            return await rehanding.withdrawn(plan.bin, turn)
        case said.Rehanded():
            return await rehanding.changed(plan, turn)
        case said.Condition():
            return await handover.found(plan, turn)
        case said.Rota():
            return await rota.agreed(plan, turn)
        case said.Joining():
            return await rota.joined(plan, turn)
        case said.Quitting():
            return await rota.quitted(plan, turn)
        case said.Rearranged():
            return await rearranging.rearranged(plan, turn)
        case said.RotaOver():
            return await rota.ended(plan, turn)
        case said.WhoseTurn():
            return await rota.shown(plan.bin, turn, plan.on)
        case said.Swap():
            return await swaps.wished(plan, turn)
        case said.SwapOff():
            return await swaps.called_off(plan, turn)
        case said.Rename():
            return await renaming.renamed(plan, turn)
        case said.Retire():
            return await renaming.retired(plan, turn)
        case said.LabelWanted():
            return await labels.asked(plan, turn)
        case said.Bar():
            return await rules.set_for(plan, turn)
        case said.Reserve():
            return await powers.reserved(plan, turn)
        case said.WhoMay():
            return await powers.asked(turn)
        case said.WhoPut():
            return await history.who_put(plan, turn)
        case said.WhoKept():
            return await history.who_kept(plan, turn)
        case said.WhenLast():
            return await history.when_last(plan, turn)
        case said.InGround():
            return await history.in_ground(plan, turn)
        case said.Written():
            return await history.written(plan, turn)
        case said.Story():
            return await history.story(plan, turn)
    assert_never(plan)
