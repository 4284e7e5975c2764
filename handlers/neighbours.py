"""What may be meant for a neighbour is asked about before the book is changed by it."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.answer import SILENCE, Answer, Query, Turn
from handlers.corrections import last_lately
from handlers.describing import describe
from handlers.layers import right_amount
from handlers.onoffer import offered_to, on_offer
from handlers.phrasing import day, the
from handlers.practice.figure import listed
from handlers.reading.acts import Act, Amend, Retract
from handlers.reading.neighbours import ANSWERING
from storage.rows import Question

TAKE_IT = "If you mean {bin}, say “I'll take {bin}” or “I can't take {bin}”."


async def asked_first(act: ANSWERING, turn: Turn) -> Answer:
    """Whether the sender's own last record, or what is on offer, is meant; silence if neither."""
    if not isinstance(act, Amend | Retract):
        waiting = offered_to(turn.sender, await on_offer(None, turn))
        name = the(waiting[0].bin.name) if len(waiting) == 1 else None
        return Answer(say=TAKE_IT.format(bin=name)) if name else SILENCE
    last = await last_lately(turn)
    if last is None or last.struck:
        return SILENCE
    theirs = await turn.book.of_event(last.event)
    do = f"correct it{_right(act, turn)}" if isinstance(act, Amend) else "strike it out"
    return Answer(
        say=f"Your last record is {listed([describe(e, turn) for e in theirs])}. Shall I {do}?",
        query=Query.about(replace(act, of=last.event), lacks="yes"),
    )


def _right(act: Amend, turn: Turn) -> str:
    """What a correction would put there, in words."""
    much = right_amount(act, turn)
    bin = the(act.bin) if act.bin else ""
    when = day(act.on, turn.today) if act.on else ""
    right = [each for each in (much, bin, when, act.member) if each]
    return f" to {listed(right)}" if right else ""


def bin_meant(question: Question, acts: Sequence[Act]) -> Answer | None:
    """Whether a bin's name answers what we asked; None where none was asked for."""
    if question.lacks == "yes" or not acts:
        return None
    [act] = acts
    name: str | None = getattr(act, "bin", None)
    if isinstance(act, Amend):
        act = replace(act, of=question.event)
    return (
        Answer(say=f"Did you mean {the(name)}?", query=Query.about(act, lacks="yes"))
        if name
        else None
    )


UNCLEAR = frozenset({"yes", "bin", "which"})
"""Questions of ours whose answer may be one to another's."""
