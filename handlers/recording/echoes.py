"""Scraps that are told twice: by who put them in and by who saw it, or by who repeats it."""

from datetime import timedelta
from math import isclose

from handlers.answer import SILENCE, Answer, Query, Turn
from handlers.phrasing import the
from handlers.reading.acts import Layer
from handlers.reading.room.echoes import QUOTED, SAID_AGAIN
from handlers.recording.layers import said_amount
from storage.rows import Entry

_LATELY = timedelta(hours=1)
_AS_GOOD_AS = 0.01
_MIXED = {"mixed": 1.0}


async def heard_before(act: Layer, turn: Turn) -> Answer | None:
    """What is answered to a layer that was written down a while ago; None if it is a new one.

    What only repeats it is passed over; the same deed told by another is asked about.
    """
    if turn.cause != turn.event or not (act.mass_kg or act.volume_l):
        return None
    again = not {SAID_AGAIN, QUOTED}.isdisjoint(act.rules)
    names = [act.member or turn.sender]
    if QUOTED in act.rules:
        names = [one.name for one in await turn.book.members()]
    for name in names:
        last = await turn.book.last_layer_by(name)
        if last is None or not _is_same(act, last, turn):
            continue
        if again:
            return SILENCE
        if last.writer != turn.sender:
            return _asked(act, last, turn)
    return None


def _is_same(act: Layer, last: Entry, turn: Turn) -> bool:
    """Whether it is as much of the same, in the same bin on the same day, and lately told."""
    if turn.at - last.written_at > _LATELY or last.event == turn.event or last.bin is None:
        return False
    if (act.bin or "").casefold() != last.bin.name.casefold() or last.on != (act.on or turn.today):
        return False
    told, known = (act.mass_kg, act.volume_l), (last.facts.mass_kg, last.facts.volume_l)
    much = all(
        isclose(a or 0, b or 0, rel_tol=_AS_GOOD_AS) for a, b in zip(told, known, strict=True)
    )
    made = [
        shares for shares in (act.materials, last.facts.materials) if shares not in (None, _MIXED)
    ]
    return much and (len(made) < 2 or made[0] == made[1])


def _asked(act: Layer, last: Entry, turn: Turn) -> Answer:
    amount = said_amount(last.facts, turn)
    whose = "" if last.member == last.writer else f"{last.member}'s "
    whose = "your " if last.member == turn.sender else whose
    return Answer(
        say=f"{last.writer} told of {whose}{amount} in {the(act.bin or '')} already. "
        f"Shall I write down another {amount}?",
        query=Query.about(act, lacks="yes"),
    )
