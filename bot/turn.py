"""One event's life: heard, read, answered, stored in one transaction."""

import logging
from collections.abc import Callable
from datetime import datetime

from bot.gathering import holds_back, tell_together
from bot.heard import Edited, Heard, Moved, Ranked, Reacted, Said, Withdrawn, from_event
from bot.hearing import Hearing
from storage import inbox, outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.errors import StorageRefused
from storage.inbox import Item, Trace
from storage.rows import Message

log = logging.getLogger(__name__)

SORRY = (
    "Something went wrong on my side and I could not take that in; nothing of it is written down. "
    "Please say it again in other words."
)


async def work_off(db: Database, *, now: Callable[[], datetime], own: str) -> int:
    """Work through what waits in the inbox, in order; how many events that was.

    Where nothing waits, the answers held back are told; how many messages that took.
    """
    items = await inbox.waiting(db)
    for item in items:
        await _work(db, item, now(), own)
    return len(items) or await tell_together(db, now())


async def _work(db: Database, item: Item, now: datetime, own: str) -> None:
    heard = from_event(item.raw)
    try:
        async with db.transaction():
            if heard is not None and (hearing := await _hearing(db, item, heard, now, own)):
                await hearing.take()
                if await holds_back(db, hearing.room, item, now):
                    await outbox.hold(db, hearing.room.id, item.event)
            await inbox.settle(db, item.id, "done", _trace(item, heard))
    except StorageRefused:
        raise  # the disk's fault, not the event's: it waits for a better day
    except Exception:  # the one broad catch: one event must not stop those after it
        log.exception("could not work through event %s", item.event)
        async with db.transaction():
            await inbox.settle(db, item.id, "failed", _trace(item, heard))
            room = await rooms.find(db, item.room)
            if room and isinstance(heard, Said) and heard.sender != own:
                sorry = Message(
                    tx_id=f"re-{item.event}", kind="reply", body=SORRY, to_event=item.event
                )
                await outbox.put(db, room.id, sorry, now)


async def _hearing(
    db: Database, item: Item, heard: Heard, now: datetime, own: str
) -> Hearing | None:
    """The event in its room; None if it is not for us."""
    room = await rooms.find(db, item.room)
    if room is None or (heard.sender == own and not isinstance(heard, Moved | Ranked)):
        return None
    if isinstance(heard, Moved | Ranked):
        moved_here = item.room == room.address  # leaving the room from before an upgrade is none
        return Hearing(Book(db, room), heard, item, now, own) if moved_here else None
    if heard.at < room.joined_at:
        return None
    return Hearing(Book(db, room), heard, item, now, own)


def _trace(item: Item, heard: Heard | None) -> Trace:
    """What stays known of the event: never its words."""
    kind, about, mark = "other", None, None
    match heard:
        case Said():
            kind, about = ("automatic" if heard.automatic else "said"), heard.replies_to
        case Edited():
            kind, about = "edited", heard.original
        case Withdrawn():
            kind, about = "withdrawn", heard.target
        case Reacted():
            kind, about, mark = "reacted", heard.target, heard.key
        case Moved():
            kind = "moved"
    sender = heard.sender if heard else None
    return Trace(event=item.event, at=item.at, sender=sender, kind=kind, about=about, mark=mark)
