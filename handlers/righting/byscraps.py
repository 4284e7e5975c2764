"""A record that is called by what it holds is put right or struck out: "the 1 kg of bread"; so is
one that is called by its day alone: "Monday's was in red".
"""

from collections.abc import Sequence
from datetime import timedelta

from handlers.answer import Answer, Handler, Turn
from handlers.doubtful.asking import is_meant
from handlers.practice.figure import listed
from handlers.reading.acts import Amend, Layer, Retract
from handlers.recording.describing import describe
from handlers.righting.corrections import struck_words, written_anew
from handlers.righting.whichrecord import left_without
from storage.rows import Entry

REMEMBERED = timedelta(days=60)
"""For so long a record may be called by what it holds, where its day is not said."""
CLOSE = 0.02
"""By so much of it an amount may be rounded that a record is called by."""
NO_SUCH_LAYER = (
    "I find no such layer in the book, so nothing is changed. Reply to the message that told it."
)


async def corrected(act: Amend, which: Layer, turn: Turn, carry_on: Handler) -> Answer:
    """The layer so called is written anew; another's only once that was asked."""
    entry = await _meant(act, which, turn)
    if isinstance(entry, Answer):
        return entry
    return await written_anew(entry, act, turn, carry_on)


async def struck(act: Retract, which: Layer, turn: Turn, carry_on: Handler) -> Answer:
    """The layer so called is struck out, or what of it is; another's only once that was asked."""
    entry = await _meant(act, which, turn)
    if isinstance(entry, Answer):
        return entry
    weighed = which.mass_kg or which.volume_l
    left = None if weighed or not which.materials else left_without(which.materials, entry)
    if left is not None:
        return await written_anew(entry, left, turn, carry_on)
    return Answer(strikes=[entry], say=struck_words([entry], turn))


async def _meant(act: Amend | Retract, which: Layer, turn: Turn) -> Entry | Answer:
    """The layer that is called so; else that there is none, or the question which or whether."""
    such = await _called_so(which, act.of, turn)
    if not such:
        return Answer(say=NO_SUCH_LAYER)
    if act.of is None and (alike := _alike(which, such, turn)):
        return Answer(say=_which_one(alike, turn))
    entry = such[-1]
    if act.of is None and entry.writer != turn.sender:
        return is_meant(act, [entry], turn, called="record of that")
    return entry


async def _called_so(which: Layer, event: str | None, turn: Turn) -> list[Entry]:
    """The layers that are called so, be they of one message alone, the likeliest meant last."""
    first, last = which.on or turn.today - REMEMBERED, which.on or turn.today
    layers = await turn.book.of_days(first, last, "layer")
    such = [e for e in layers if _is_called(which, e) and event in (None, e.event)]
    return sorted(such, key=lambda entry: _likelihood(entry, turn))


def _alike(which: Layer, such: Sequence[Entry], turn: Turn) -> list[Entry]:
    """The sender's own of one day, where nothing but the day is said and it has several."""
    own = [e for e in such if e.writer == turn.sender]
    by_day = which == Layer(on=which.on) and turn.refers_to is None
    return own if by_day and len(own) > 1 else []


def _which_one(alike: Sequence[Entry], turn: Turn) -> str:
    """ "Which of these do you mean: 1 kg in the green bin or 500 g in the red bin?" """
    told = listed([describe(entry, turn) for entry in alike], "or")
    return f"Which of these do you mean: {told}? Say it with its amount, or reply to its message."


def _likelihood(entry: Entry, turn: Turn) -> tuple[bool, bool, int]:
    """The one replied to is likelier meant than the sender's own, and that than a later one."""
    return entry.event == turn.refers_to, entry.writer == turn.sender, entry.id


def _is_called(which: Layer, entry: Entry) -> bool:
    facts = entry.facts
    of_bin = entry.bin.name.casefold() if entry.bin else None
    return (
        which.bin in (None, of_bin, entry.bin and entry.bin.name)
        and which.member in (None, entry.member)
        and _is_about(which.mass_kg, facts.mass_kg)
        and _is_about(which.volume_l, facts.volume_l)
        and not (which.materials and which.materials.keys().isdisjoint(facts.materials or {}))
    )


def _is_about(said: float | None, kept: float | None) -> bool:
    return said is None or (kept is not None and abs(said - kept) <= CLOSE * kept)
