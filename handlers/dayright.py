"""A day alone puts right the record that was last spoken of, and nothing else that was asked."""

from handlers.answer import Turn
from handlers.corrections import ARRANGED, targets_of
from handlers.reading.acts import Amend
from handlers.reading.corrections.dayright import ALONE, AND_SO
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
