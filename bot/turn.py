"""One event's life: heard, read, answered, stored in one transaction."""

import logging
from collections.abc import Awaitable, Callable
from dataclasses import replace
from datetime import datetime
from functools import partial
from pathlib import Path
from traceback import extract_tb

from bot import askeddeed, planned
from bot.gathering import holds_back, tell_together
from bot.heard import Edited, Heard, Moved, Ranked, Reacted, Said, Withdrawn, from_event
from bot.hearing import Hearing
from bot.lastasked import kept
from bot.neighbours import mark_of
from bot.spoken import with_bin
from storage import inbox, outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.errors import StorageRefused
from storage.inbox import Item
from storage.rows import Message
from storage.traces import Trace

log = logging.getLogger(__name__)

SORRY = (
    "Something went wrong on my side and I could not take that in; nothing of it is written down. "
    "Please say it again in other words."
)


TOGETHER = 100
"""Events that are committed together where many wait."""

Work = Callable[[Database, Item, datetime, str, bool], Awaitable[None]]
"""What is done with an event: in which book, when, by which user of ours, and whether paced."""


async def work_off(
    db: Database, *, now: Callable[[], datetime], own: str, paced: bool = False
) -> int:
    """Work through what waits in the inbox, in order; how many events that was.

    As many as can be are committed together, each of them whole or not at all. Where nothing
    waits, the answers held back are told; how many messages that took. `paced`: no member, and no
    room, is answered faster than people can read.
    """

    async def batch(db: Database, work: Work = _work) -> int:
        items = await inbox.waiting(db, limit=TOGETHER)
        for item in items:
            await work(db, item, now(), own, paced)
        return len(items) or await tell_together(db, now(), paced=paced)

    try:
        return await db.at_once(batch)
    except StorageRefused:
        raise  # the disk's fault, not an event's: they wait for a better day
    except Exception:  # noqa: BLE001 - which of them it was, and why, is found out now
        return await db.at_once(partial(batch, work=_work_apart))


async def _work(db: Database, item: Item, now: datetime, own: str, paced: bool) -> None:
    heard = from_event(item.raw)
    trace = _trace(item, heard)
    if heard is not None and (hearing := await _hearing(db, item, heard, now, own)):
        if about := await _still_to_come(db, item.room, heard):
            await inbox.put_by(db, item.id, about)
            return
        await hearing.take()
        reply = hearing.replying.message
        if reply:
            held = await holds_back(db, hearing.room, item, reply, now, paced=paced)
            sender = heard.sender if held else None
            await outbox.put(db, hearing.room.id, reply, now, held_of=sender)
        trace = replace(trace, mark=_mark_of(hearing, trace, answered=reply is not None))
        trace = replace(trace, mark=with_bin(trace.mark, hearing.named))
        if hearing.forgot:
            trace = replace(trace, sender=None)
    await inbox.settle(db, item, "done", trace)


def _mark_of(hearing: Hearing, trace: Trace, *, answered: bool) -> str | None:
    """What is kept of what a message asked, promised, planned or talked of."""
    if hearing.favour:
        return hearing.favour
    if hearing.deed and not answered:
        return askeddeed.kept(hearing.deed)
    if hearing.asks and not answered:  # what we answer is asked of nobody else
        return hearing.asks
    if hearing.asked and trace.kind in ("said", "edited"):
        return kept(hearing.asked)
    if hearing.planned and trace.kind == "said":
        return planned.kept(hearing.planned)
    return mark_of(hearing.talked) if hearing.talked and not answered else trace.mark


async def _work_apart(db: Database, item: Item, now: datetime, own: str, paced: bool) -> None:
    """Work through an event so that, if it fails, it takes none of the others along."""
    try:
        async with db.transaction():
            await _work(db, item, now, own, paced)
    except StorageRefused:
        raise
    except Exception as error:  # noqa: BLE001 - one event must not stop those after it
        log.error("could not work through event %s: %s", item.event, _where(error))
        heard = from_event(item.raw)
        async with db.transaction():
            await inbox.settle(db, item, "failed", _trace(item, heard))
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


def _where(error: Exception) -> str:
    """What went wrong and where; not in its own words, which may be somebody's."""
    steps = [
        f"{Path(s.filename).name}:{s.lineno} {s.name}" for s in extract_tb(error.__traceback__)
    ]
    return f"{type(error).__name__} at {' > '.join(steps)}"


async def _still_to_come(db: Database, room: str, heard: Heard) -> str | None:
    """The message that an edit or a mark is about, where that one has yet to come or be read."""
    if isinstance(heard, Edited) and not heard.automatic:
        state = await inbox.state(db, room, heard.original)
        return heard.original if state in (None, "waiting", "parked") else None
    if isinstance(heard, Reacted):
        state = await inbox.state(db, room, heard.target)
        return heard.target if state in ("waiting", "parked") else None
    return None


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
