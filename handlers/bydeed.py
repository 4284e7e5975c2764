"""A record that is called by what was done is corrected, whichever was written down last."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import timedelta

from handlers import corrections, unsure
from handlers.answer import SILENCE, Answer, Handler, Turn
from handlers.reading.acts import Act, Amend, Bury, Drain, Layer, Seal, Unsure
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
    meant = replace(act, of=last.event)
    if own:
        return await corrections.amend(meant, turn, carry_on)
    return corrections.is_meant(meant, last, f"The last {noun}", turn)


def _is_called(act: Amend, entry: Entry) -> bool:
    of_bin = act.bin is None or bool(entry.bin and entry.bin.name == act.bin)
    return of_bin and act.was in (None, entry.on)
