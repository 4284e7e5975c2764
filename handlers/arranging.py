"""Which handler answers what a group arranges beside its record."""

from typing import assert_never

from handlers import group
from handlers.answer import SILENCE, Answer, Turn
from handlers.asked import advising, allowed
from handlers.doubtful.unsure import WHICH_DAY
from handlers.planning import beforehand, owndates, putoff, showing, skipping
from handlers.reading.arranged import (
    Away,
    AwayAgain,
    AwayChanged,
    Back,
    BetweenBins,
    CallOff,
    Favour,
    Fullness,
    Harm,
    KeepUp,
    Moved,
    NoSuchDay,
    OwnDate,
    OwnDates,
    Pausing,
    Plan,
    Promise,
    Reopened,
    Restored,
    Show,
    Skip,
    StarterUsed,
    Staying,
    Taught,
    Unfit,
    Untimed,
    WhatIsSet,
    WhichMeasure,
    WhoIsAway,
)
from handlers.reading.arrangements.communal import Communal
from handlers.recording import betweenbins, fullness, sealing
from handlers.righting import retracting, starterused
from handlers.sharing import absence, communal, favours


async def answer(plan: Plan, turn: Turn) -> Answer:  # noqa: C901  # one line for each plan
    """What to write down and say about one plan."""
    if isinstance(plan, Communal):
        return await communal.answer(plan, turn)
    match plan:
        case Away():
            return await absence.away(plan, turn)
        case AwayAgain():
            return Answer(say=absence.AGAIN)
        case AwayChanged():
            return await absence.changed(plan, turn)
        case Back():
            return await absence.back(plan, turn)
        case Staying():
            return await absence.staying(plan, turn)
        case WhoIsAway():
            return await absence.who(plan, turn)
        case Favour():
            return SILENCE  # the neighbours answer it: see bot/favours.py
        case Promise():
            return await favours.promised(plan, turn)
        case OwnDate():
            return await owndates.set_date(plan, turn)
        case CallOff():
            return await owndates.call_off(plan, turn)
        case Skip():
            return await skipping.skip(plan, turn)
        case Untimed():
            return await beforehand.beforehand(plan, turn)
        case Moved():
            return await owndates.move(plan, turn)
        case OwnDates():
            return await owndates.listing(plan, turn)
        case Reopened():
            return await sealing.reopened(plan, turn)
        case BetweenBins():
            return await betweenbins.told(plan, turn)
        case Fullness():
            return await fullness.told(plan, turn)
        case StarterUsed():
            return await starterused.told(plan, turn)
        case Pausing():
            return await putoff.paused(plan, turn)
        case Restored():
            return await retracting.restored(turn)
        case Harm():
            return advising.about_harm(plan)
        case Taught():
            return await advising.taught(plan, turn)
        case WhatIsSet():
            return group.shown(plan.what, turn)
        case WhichMeasure():
            return group.measure(plan.unit)
        case NoSuchDay():
            return Answer(say=WHICH_DAY)
        case Unfit():
            return allowed.put_in(plan)
        case KeepUp():
            return await showing.kept_up(plan, turn)
        case Show():
            return await showing.shown(plan, turn)
    assert_never(plan)
