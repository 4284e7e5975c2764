"""A day alone puts right the record that was last spoken of, and nothing else that was asked; of a
draining "and Friday" tells one more.
"""

from handlers.answer import Turn
from handlers.reading.acts import Amend, Drain
from handlers.reading.corrections.dayright import ALONE, AND_SO, ONCE_MORE
from handlers.righting.corrections import ARRANGED, targets_of
from storage import outbox


async def is_of_another_matter(act: Amend, turn: Turn) -> bool:
    """Whether "no, Wednesday" answers other words of ours than those about the sender's record, or
    "and yesterday" goes on from no correction.
    """
    if turn.refers_to or act.of or not {ALONE, AND_SO}.intersection(act.rules):
        return False
    targets = await targets_of(turn, but=ARRANGED)
    if AND_SO in act.rules and not any(entry.replaces for entry in targets):
        return True
    latest = await outbox.latest(turn.book.db, turn.book.room.id)
    if latest is None or not targets:
        return False
    [message, made_at], last = latest, targets[-1]
    return made_at > last.written_at and message.to_event not in (last.event, last.cause)


async def drained_again(act: Amend, turn: Turn) -> Drain | None:
    """ "And Friday" behind a draining that is no correction: another, on that day."""
    targets = await targets_of(turn, but=ARRANGED)
    if ONCE_MORE not in act.rules or {entry.act for entry in targets} != {"drain"}:
        return None
    last, bins = targets[-1], {entry.bin for entry in targets}
    if last.replaces or last.bin is None or len(bins) > 1:
        return None
    if act.on in [entry.on for entry in targets]:
        return None
    return Drain(bin=last.bin.name, member=last.member, on=act.on)
