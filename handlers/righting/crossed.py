"""What was told of two bins, each of the other one, is put right; so is where the layers are of a
bin that was tipped into another."""

from dataclasses import replace

from handlers.answer import SILENCE, Answer, Handler, Turn
from handlers.people import is_same
from handlers.phrasing import the
from handlers.practice.figure import listed
from handlers.reading.acts import Amend, Bury, Drain, Layer, Observe, Seal
from handlers.recording.describing import describe
from handlers.righting.corrections import NOTHING_THERE, as_act, targets_of
from storage.rows import Entry, NewEntry

_MOVABLE = Layer | Drain | Seal | Bury | Observe


async def put_right(act: Amend, turn: Turn, carry_on: Handler) -> Answer:
    """Each of the records is written anew in the other bin."""
    if act.of:
        turn = replace(turn, refers_to=act.of)
    targets = await (_layers(act, turn) if act.crossed == "one" else _targets(act, turn))
    bins = act.between or tuple(dict.fromkeys(e.bin.name for e in targets if e.bin))
    if len(bins) != 2 or not targets:
        return Answer(say=NOTHING_THERE) if act.between else SILENCE
    there = replace(turn, book=turn.book.without(targets), refers_to=None)
    entries: list[NewEntry] = []
    for target in targets:
        told = as_act(target)
        if not isinstance(told, _MOVABLE) or target.bin is None:
            continue
        other = bins[1] if is_same(target.bin.name, bins[0]) else bins[0]
        answer = await carry_on(replace(told, bin=other), replace(there, event=target.event))
        if not answer.entries:
            return answer
        entries += [replace(entry, replaces=target.id) for entry in answer.entries]
    if act.crossed == "one":
        count = "1 layer" if len(entries) == 1 else f"{len(entries)} layers"
        say = f"Corrected: {count} of {the(bins[0])} now stand in {the(bins[1])}."
        return Answer(entries=entries, strikes=targets, say=say)
    words = listed([describe(entry, turn) for entry in entries])
    return Answer(entries=entries, strikes=targets, say=f"Corrected: {words}.")


async def _targets(act: Amend, turn: Turn) -> list[Entry]:
    """The records that are meant, all in one of the two bins: those of the message replied to or
    the last one, else the sender's of the day."""
    last = [e for e in await targets_of(turn) if isinstance(as_act(e), _MOVABLE) and e.bin]
    if not act.between:
        return last
    told = [e for e in last if _is_in(e, act.between)]
    if turn.refers_to or len({e.bin for e in told}) > 1:
        return told
    on = act.on or turn.today
    of_day = [e for e in await turn.book.written_by(turn.sender, on, on) if not e.struck]
    return [e for e in of_day if e.act in ("layer", "drain") and _is_in(e, act.between)]


async def _layers(act: Amend, turn: Turn) -> list[Entry]:
    """All layers of the first bin's present run."""
    bin = await turn.book.bin(act.between[0])
    run = await turn.book.run(bin, await turn.book.present_run(bin)) if bin else []
    return [entry for entry in run if entry.act == "layer" and not entry.struck]


def _is_in(entry: Entry, bins: tuple[str, ...]) -> bool:
    return any(entry.bin and is_same(entry.bin.name, name) for name in bins)
