"""The map: which handler answers which act."""

from dataclasses import replace
from datetime import timedelta
from typing import assert_never

from handlers import group
from handlers.answer import SILENCE, Answer, Turn
from handlers.asked import (
    addresses,
    beds,
    dilution,
    dosing,
    forecast,
    ground,
    mixture,
    privacy,
    receipt,
    totals,
)
from handlers.asked.help import HELP, HELP_WITH
from handlers.doubtful import nosuchbin, several, unsure
from handlers.phrasing import still_to_come, too_long_ago
from handlers.planning import calendar, planting, putoff, reminded
from handlers.reading import acts
from handlers.reading.acts import Act, Ask
from handlers.reading.arrangements.calls import A_RECEIPT
from handlers.recording import (
    batches,
    bins,
    burying,
    draining,
    echoes,
    emptying,
    layers,
    observing,
    rules,
    sealing,
    starter,
)
from handlers.righting import (
    anothers,
    bydeed,
    byscraps,
    crossed,
    dayright,
    onlythese,
    retracting,
    together,
)
from handlers.sharing import custody, whohas

DEEDS = (acts.Layer, acts.Drain, acts.Open, acts.Seal, acts.Bury, acts.Observe, acts.Batch)


LONGEST_AGO = timedelta(days=270)
"""No bin is filled, fermented and buried in so long a time: a day before that is a slip."""


async def answer(act: Act, turn: Turn) -> Answer:  # noqa: C901  # one line for each act
    """What to write down and say about one act."""
    if isinstance(act, DEEDS) and act.on and act.on > turn.today:
        return Answer(say=still_to_come(act.on, turn.today))
    if isinstance(act, DEEDS) and act.on and turn.today - act.on > LONGEST_AGO:
        return Answer(say=too_long_ago(act.on, turn.today))
    if (unheard_of := await nosuchbin.asked(act, turn)) is not None:
        return unheard_of
    if isinstance(act, acts.OnBins) and act.each:
        return await several.answer(act, turn, answer)
    match act:
        case acts.Layer():
            return await echoes.heard_before(act, turn) or await layers.added(act, turn)
        case acts.Drain():
            return await draining.drained(act, turn)
        case acts.Open(emptied=str()):
            return await emptying.begun_again(act, turn)
        case acts.Open():
            return await bins.opened(act, turn)
        case acts.Seal():
            return await sealing.sealed(act, turn)
        case acts.Bury():
            return await burying.buried(act, turn)
        case acts.Observe(soil=True):
            return await planting.measured(act, turn)
        case acts.Observe():
            return await observing.observed(act, turn)
        case acts.Batch():
            return await starter.mixed(act, turn)
        case acts.Stock():
            return await starter.counted(act, turn)
        case acts.Offer():
            return await custody.offered(act, turn)
        case acts.Accept():
            return await custody.accepted(act, turn)
        case acts.Decline():
            return await custody.declined(act, turn)
        case acts.Amend(whose=str(name)) if act.of is None:
            return await anothers.put_right(act, name, turn, answer)
        case acts.Amend(several=int(count)):
            return await together.put_right(act, count, turn, answer)
        case acts.Amend():
            if act.crossed:
                return await crossed.put_right(act, turn, answer)
            if act.which:
                return await byscraps.corrected(act, act.which, turn, answer)
            if await dayright.is_of_another_matter(act, turn):
                again = await dayright.drained_again(act, turn)
                return await answer(again, turn) if again else SILENCE
            right = await retracting.told_right(act, turn, answer)
            return right or await bydeed.amend(act, turn, answer)
        case acts.Retract(several=int(count)):
            return await together.struck(count, turn)
        case acts.Retract():
            if act.which:
                return await byscraps.struck(act, act.which, turn, answer)
            if act.of_bin:
                return await onlythese.struck(act, turn)
            if act.what:
                return await bydeed.struck(act, act.what, turn)
            return await retracting.retract(act, turn, answer)
        case acts.Done():
            return await reminded.done(act, turn, answer)
        case acts.Later():
            return await putoff.later(act, turn)
        case acts.Set():
            return await group.changed(act, turn)
        case acts.Forget():
            return await privacy.forget(act, turn)
        case acts.Unsure():
            return unsure.asked(act, turn)
        case acts.Ask():
            return await _asked(act, replace(turn, wanted=act.units))
    assert_never(act)


async def _asked(act: Ask, turn: Turn) -> Answer:  # noqa: C901  # one line for each topic
    match act.topic:
        case "dose":
            return await dosing.asked(act, turn)
        case "dilution":
            return dilution.asked(act, turn)
        case "due":
            return await calendar.asked(act, turn)
        case "bin":
            return await bins.about(act, turn)
        case "trouble":
            return await observing.asked(act, turn)
        case "starter":
            return await starter.asked(act, turn)
        case "totals":
            return await totals.asked(act, turn)
        case "custody":
            return await whohas.asked(act, turn)
        case "help" if act.what == "a page":
            return await addresses.link("", turn)
        case "help" if act.what == A_RECEIPT:
            return await receipt.asked(turn)
        case "help":
            return Answer(say=HELP_WITH.get(act.what or "", HELP))
        case "trench":
            return await ground.asked_trench(act, turn)
        case "bed":
            return await beds.asked(act, turn)
        case "batch":
            return batches.asked(act, turn)
        case "bran":
            return await starter.of_bran(act, turn)
        case "allowed":
            return await rules.asked(act, turn)
        case "me":
            return await privacy.known(turn)
        case "full":
            return await forecast.asked_full(act, turn)
        case "bins":
            return await forecast.asked_bins(act, turn)
        case "liquid":
            return await draining.asked(act, turn)
        case "moisture" | "carbon":
            return await mixture.asked(act, turn)
        case "why":
            return SILENCE  # what was said last is known to the room alone: see bot/answering.py
    assert_never(act.topic)
