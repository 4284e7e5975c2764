"""Many answers at once become one message: after the bot was away, or when a room overflows.

Every event is worked through and recorded by itself, at its own time; only the answers are held
back, in the outbox, until nothing waits any more. Then one message tells them all (`inshort.py`).
"""

from datetime import datetime, timedelta

from bot.inshort import in_short
from storage import inbox, outbox, rooms
from storage.book import Book
from storage.database import Database
from storage.inbox import Item
from storage.rows import Message, Room

OLD = timedelta(minutes=10)
"""A message that waited so long is old news."""
OLD_ONES = 3
"""So many old messages of a room are still answered one by one."""
FLOOD = 30
"""Messages of one sender that wait in a room: more are answered together."""
UNSENT = 10
SLOW = timedelta(seconds=20)
"""Where more messages of a room wait longer than this to be sent, answers are told together."""
OF_MEMBER_A_MINUTE = 30
OF_ROOM_A_MINUTE = 60
"""Answers given one by one to a member, and in a room; more are told together."""
TOGETHER_EVERY = timedelta(seconds=30)
"""Where that many are asked for, what is told together comes no faster than this."""
MINUTE = timedelta(minutes=1)


async def holds_back(
    db: Database, room: Room, item: Item, answer: Message, now: datetime, *, paced: bool
) -> bool:
    """Whether the answer to an event is to be told together with others.

    First aid is not, unless the room has just been told the same. `paced`: also where a member,
    or the room, has had many answers in the last minute.
    """
    is_urgent = answer.tx_id.startswith(outbox.URGENT)
    if is_urgent and not await outbox.was_said(db, room.id, answer.body, now - MINUTE, now):
        return False
    sender = str(item.raw.get("sender"))
    # One member's flood holds up nobody else's answers, but all of theirs: they stay in order.
    if await outbox.is_holding(db, room.id, sender):
        return True
    is_old = now - item.at > OLD
    return (
        (is_old and await _old_ones(db, item, now) > OLD_ONES)
        or await inbox.messages_waiting(db, item.room, sender=sender, limit=FLOOD + 1) > FLOOD
        or await outbox.unsent(db, room.id, before=now - SLOW, limit=UNSENT + 1) > UNSENT
        or (paced and await _is_fast(db, room, item, now))
    )


async def _old_ones(db: Database, item: Item, now: datetime) -> int:
    """How many messages of a room are old news, up to one more than are answered one by one."""
    return await inbox.messages_waiting(db, item.room, before=now - OLD, limit=OLD_ONES + 1)


async def _is_fast(db: Database, room: Room, item: Item, now: datetime) -> bool:
    """Whether a member or a room has had as many answers as there are in a minute."""
    sender, since = str(item.raw.get("sender")), now - MINUTE
    to_member, _ = await outbox.lately(db, room.id, since, now, sender=sender, besides=item.event)
    in_room, _ = await outbox.lately(db, room.id, since, now, besides=item.event)
    return to_member >= OF_MEMBER_A_MINUTE or in_room >= OF_ROOM_A_MINUTE


async def tell_together(db: Database, now: datetime, *, paced: bool) -> int:
    """Make one message of the answers held back in each room, once nothing more is to come.

    `paced`: not again before some time has passed.
    """
    told = 0
    for address in await outbox.holding(db):
        async with db.transaction():
            room = await rooms.find(db, address)
            if room is None or await outbox.unsent(db, room.id, limit=1):
                continue
            if paced and (await outbox.lately(db, room.id, now - TOGETHER_EVERY, now))[1]:
                continue
            held = await outbox.held(db, room.id)
            message = await in_short(Book(db, room), held, now)
            await outbox.put(db, room.id, message, now)
            await outbox.gather(db, room.id, message.tx_id)
            told += 1
    return told
