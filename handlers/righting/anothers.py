"""Another member's record is put right only once somebody has said that it is meant."""

from dataclasses import replace

from handlers.answer import SILENCE, Answer, Handler, Turn
from handlers.doubtful.asking import is_meant
from handlers.reading.acts import Amend
from handlers.reading.corrections.justtold import JUST_TOLD
from handlers.righting.corrections import (
    ARRANGED,
    NOTHING_THERE,
    PASSING,
    amend,
    last_lately,
    targets_of,
)
from handlers.righting.whichrecord import said
from storage.rows import Entry


async def put_right(act: Amend, whose: str, turn: Turn, carry_on: Handler) -> Answer:
    """What the sender told of a member is put right; the member's own record is asked about."""
    told = await targets_of(turn, but=ARRANGED | PASSING)
    if any(entry.member == whose for entry in told):
        return await amend(act, turn, carry_on)
    right_bin = JUST_TOLD in act.rules or said(act) <= {"bin", "whose", "rules"}
    there = None if right_bin else act.bin
    last = await _last(whose, there, turn)
    if last is None:
        return Answer(say=NOTHING_THERE) if there else SILENCE
    called = "last record there" if there else "last record"
    return is_meant(act, [last], turn, called=called, owner=whose)


async def _last(whose: str, name: str | None, turn: Turn) -> Entry | None:
    """The member's last record in the bin as it is now; of any bin only if it is of late."""
    bin = await turn.book.bin(name) if name else None
    if bin is None:
        last = await last_lately(replace(turn, sender=whose), ARRANGED | PASSING)
        return None if last is None or last.struck else last
    run = await turn.book.run(bin, await turn.book.present_run(bin))
    return max(
        (e for e in run if e.member == whose and e.act not in ARRANGED | PASSING | {"open"}),
        key=lambda entry: entry.id,
        default=None,
    )
