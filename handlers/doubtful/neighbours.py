"""What may be meant for a neighbour is asked about before the book is changed by it."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.answer import SILENCE, Answer, Query, Turn
from handlers.doubtful.asking import is_meant
from handlers.phrasing import the
from handlers.reading.acts import Act, Amend, Retract
from handlers.reading.arranged import Plan
from handlers.reading.room.neighbours import ANSWERING
from handlers.righting.corrections import last_lately
from handlers.sharing.onoffer import offered_to, on_offer
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
    return is_meant(act, theirs, turn)


def bin_meant(question: Question, acts: Sequence[Act | Plan]) -> Answer | None:
    """Whether a bin's name answers what we asked; None where none was asked for."""
    if question.lacks == "yes" or not acts:
        return None
    [act] = [one for one in acts if isinstance(one, Act)]
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

FIGURES = frozenset({"size", "amount"})
"""Questions of ours that a figure settles, as it does many of another's."""
