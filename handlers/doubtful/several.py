"""One deed on several bins that nobody names, "sealed both", or on one of two: "red or blue"."""

import json
from collections.abc import Mapping, Sequence
from dataclasses import replace

from handlers.answer import SILENCE, Answer, Handler, Query, Turn
from handlers.doubtful.spokenof import bins_spoken_of
from handlers.phrasing import the, volume
from handlers.practice.figure import listed
from handlers.reading.acts import Drain, OnBins
from handlers.reading.completion.binlists import UNDIVIDED
from handlers.reading.deeds.baredeeds import IN_ONE_WORD
from handlers.reading.deeds.buried import ALL_LIE
from handlers.recording.bins import AT_WORK, either
from handlers.state import BinState, Stage, states_of

STAGES: Mapping[str, frozenset[Stage]] = {
    "layer": frozenset({"filling"}),
    "seal": frozenset({"filling"}),
    "drain": AT_WORK,
    "bury": frozenset({"fermenting", "ready"}),
}
"""Where a bin has to be for the deed to be meant of it."""


async def answer(act: OnBins, turn: Turn, carry_on: Handler) -> Answer:
    """The deed on each bin that can be meant; which are "both" of more than two, or which is meant
    of those named, is asked.
    """
    states = await states_of(turn.book, turn.today)
    names = [s.bin.name for s in states if s.run.stage(turn.today) in STAGES[act.act]]
    apart = {one.bin for one in turn.told if isinstance(one, OnBins) and one.act == act.act}
    alone = replace(act, each=None)
    if ALL_LIE in act.rules and not names:
        return SILENCE  # plants, say
    if len(names) > 1:
        names = await _narrowed(act, names, states, turn)
    if act.each == "them" and len(names) > 2:
        return Answer(
            say=f"Which of them: {either(names)}? Say it again with their names, or “all”."
        )
    if act.each == "both" and len(names) > 2:
        return Answer(say=f"Which two: {either(names)}? Say it again with their names.")
    if act.each and act.each.isdecimal() and len(names) != int(act.each):
        at_work = [s.bin.name for s in states if s.run.stage(turn.today) in AT_WORK]
        return Answer(say=_which_of(int(act.each), names, at_work))
    if act.each == "either" and len(names) > 1:
        return Answer(say=f"Which bin: {either(names)}? Say it again with its name alone.")
    if ALL_LIE in act.rules:
        each = [replace(alone, bin=name) for name in names]
        bins = listed([the(name) for name in names])
        say = f"Shall I write down the burial of {bins}?"
        return Answer(say=say, query=Query.about(*each, lacks="yes"))
    if len(names) < 2:
        return await carry_on(replace(alone, bin=next(iter(names), None)), turn)
    names = [name for name in names if name not in apart]  # told in the same breath
    if isinstance(act, Drain) and UNDIVIDED in act.rules:
        bare = [replace(act, bin=name, each=None, volume_l=None) for name in names]
        noted = together([await carry_on(one, turn) for one in bare])
        return replace(noted, noted=False, say=_how_divided(act, names, turn))
    return together([await carry_on(replace(alone, bin=name), turn) for name in names])


async def _narrowed(
    act: OnBins, names: list[str], states: Sequence[BinState], turn: Turn
) -> list[str]:
    """The two that were just spoken of, for "both" or "them"; for a deed in one word the bin in
    talk, or the only one of the sender's.
    """
    if IN_ONE_WORD not in act.rules:
        if act.each not in ("both", "them") or len(names) == 2:
            return names
        spoken_of = await bins_spoken_of(turn)
        return [name for name in names if name in spoken_of] if len(spoken_of) == 2 else names
    spoken_of = await bins_spoken_of(turn)
    own = [s.bin.name for s in states if s.keeper == turn.sender and s.bin.name in names]
    return next((found for found in ([*spoken_of], own) if len(found) == 1), names)


def _how_divided(act: Drain, names: Sequence[str], turn: Turn) -> str:
    """The question how much came off each of them."""
    bins, first = listed([the(name) for name in names]), the(names[0])
    much = volume(act.volume_l or 0.0, turn.units)
    return (
        f"Noted that {bins} were drained. {much} from each, or in all? Say how much came off each, "
        f"such as “{much} from {first}”."
    )


def _which_of(count: int, names: Sequence[str], at_work: Sequence[str]) -> str:
    """The question which bins are so many, as the deed fits more of them by the book, or fewer."""
    if len(names) > count or not names:
        return f"Which {count}: {either(names or at_work)}? Say it again with their names."
    fitting, rest = listed([the(name) for name in names]), [n for n in at_work if n not in names]
    other = f": {either(rest)}" if rest else ""
    return (
        f"By the book it can be only {fitting}. Which is the other{other}? Nothing is written down "
        "yet: say it again with their names."
    )


def together(answers: Sequence[Answer]) -> Answer:
    """All that they say; one yes is for all that is asked about."""
    asked = [one.query for one in answers if one.query and one.query.lacks == "yes"]
    guess = [act for query in asked for act in json.loads(query.guess)]
    return Answer(
        query=Query(guess=json.dumps(guess), lacks="yes") if guess else None,
        entries=[entry for one in answers for entry in one.entries],
        put_off=[due for one in answers for due in one.put_off],
        say="\n".join(one.say for one in answers if one.say),
        noted=all(one.noted for one in answers),
        why=[step for one in answers for step in one.why],
    )
