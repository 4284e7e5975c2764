"""A record that is called by what was done is corrected or struck out, whichever came last."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import timedelta

from handlers.answer import SILENCE, Answer, Handler, Turn
from handlers.doubtful import unsure
from handlers.doubtful.asking import is_meant
from handlers.reading.acts import Act, Amend, Bury, Drain, Layer, Retract, Seal, Unsure
from handlers.righting import corrections
from storage.rows import Entry

LOOKED_BACK = timedelta(days=14)
"""So far back a record is looked for that is called by what was done."""
_KINDS: Mapping[str, tuple[str, Act]] = {
    "drain": ("draining", Drain()),
    "seal": ("sealing", Seal()),
    "bury": ("burial", Bury()),
    "layer": ("layer", Layer()),
}


async def amend(act: Amend, turn: Turn, carry_on: Handler) -> Answer:
    """The last record of its kind is corrected where the sender wrote it, else asked about."""
    if act.what is None or act.of or turn.refers_to:
        return await corrections.amend(act, turn, carry_on)
    noun, untold = _KINDS[act.what]
    of_late = await turn.book.of_days(turn.today - LOOKED_BACK, turn.today, act.what)
    such = [entry for entry in of_late if _is_called(act, entry)]
    own = [entry for entry in such if entry.writer == turn.sender]
    last = max(own or such, key=lambda entry: entry.id, default=None)
    if last is None:
        told = corrections.put_right(act, untold)
        return unsure.asked(Unsure(guess=(told,)), turn) if told else SILENCE
    if own:
        return await corrections.amend(replace(act, of=last.event), turn, carry_on)
    return is_meant(act, [last], turn, called=f"last {noun}")


def _is_called(act: Amend, entry: Entry) -> bool:
    of_bin = act.bin is None or bool(entry.bin and entry.bin.name == act.bin)
    return of_bin and act.was in (None, entry.on)


async def struck(act: Retract, what: str, turn: Turn) -> Answer:
    """The last record of such a thing is struck out; asked first where it is another's, or holds
    more than that.
    """
    of_late = await turn.book.of_days(turn.today - LOOKED_BACK, turn.today)
    such = [e for e in of_late if _is_of(what, e) and act.bin in (None, e.bin and e.bin.name)]
    event = act.of or turn.refers_to
    such = [e for e in such if e.event == event] or ([] if act.of else such)
    own = [e for e in such if e.writer == turn.sender]
    last = max(own or such, key=lambda entry: entry.id, default=None)
    if last is None:
        return Answer(say=corrections.NOTHING_THERE)
    if act.of or (own and _is_only(what, last)):
        return Answer(strikes=[last], say=corrections.struck_words([last], turn))
    holds_more = not _is_only(what, last)
    return is_meant(
        Retract(what=what),
        [last],
        turn,
        called="record of that, with what else was seen," if holds_more else "record of that",
    )


def _is_of(what: str, entry: Entry) -> bool:
    """Whether the record is of such a kind, or tells such a sign or reading."""
    facts = entry.facts
    match what:
        case "ph" | "celsius":
            return getattr(facts, what) is not None
        case "mould" | "insects":
            return any(what in sign for sign in facts.signs or ())
    return entry.act == what


def _is_only(what: str, entry: Entry) -> bool:
    """Whether nothing else was seen or measured in that record."""
    facts = entry.facts
    told = [facts.celsius is not None, facts.ph is not None, *(True for _ in facts.signs or ())]
    return entry.act != "observe" or what == "observe" or sum(told) == 1
