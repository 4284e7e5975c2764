"""What the bot says: stored with its cause, sent afterwards, each thing once."""

import json
import sqlite3
from collections.abc import Sequence
from datetime import datetime

from storage.database import Database
from storage.moments import from_ms, to_ms
from storage.rows import Message, Waiting

OF_EVENT = (
    "SELECT * FROM outbox WHERE id IN (SELECT id FROM outbox WHERE sent_as = ?1 "
    "UNION SELECT id FROM outbox WHERE tx_id = ?1)"
)
"""What was said as an event, or under a transaction id (a replay has no other)."""
UNSAID = frozenset({"reaction", "calendar"})
"""Kinds of messages that are not said."""
_SAID = "outbox:said,held"
_HELD = "outbox:held,gathered"
"""What depends on all that was said, and on what is held back."""
DELETED = "deleted in the room"
"""Why an answer that was sent is not to be changed any more."""
URGENT = "harm"
"""How the `tx_id` begins of what is said before all else."""
LATEST = 500
"""Of so many messages it is looked when they were made: in a minute there are no more."""


async def put(
    db: Database, room: int, message: Message, made_at: datetime, *, held_of: str | None = None
) -> None:
    """Keep something to say, inside a transaction; a `tx_id` used before changes nothing.

    `held_of`: it is an answer to that user which is not said by itself, but later with others.
    """
    moment = to_ms(made_at)
    new = await db.write(
        "INSERT OR IGNORE INTO outbox (room, tx_id, kind, to_event, body, mentions, thread, "
        "rewrites, why, attached, made_at, gathered) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        (
            room,
            message.tx_id,
            message.kind,
            message.to_event,
            message.body,
            json.dumps(message.mentions) if message.mentions else "[]",
            message.thread,
            message.rewrites,
            message.why,
            message.attached,
            moment,
            0 if held_of else None,
        ),
        room=room,
        part="held" if held_of else "said",
    )
    if new and message.rewrites and message.to_event:
        await _tell_instead(db, room, message.to_event, new)
    if new and message.kind not in UNSAID:
        db.note(room, _SAID, "latest", (message, from_ms(moment)))
    if new and held_of:
        db.note(room, _HELD, held_of, True)


async def _tell_instead(db: Database, room: int, event: str, row: int) -> None:
    """The answers to an event that still wait to be sent are told by that of a row, made later."""
    await db.write(
        "UPDATE outbox SET gathered = ?1 WHERE room = ?2 AND id < ?1 AND sent_as IS NULL "
        "AND refused IS NULL AND gathered IS NULL AND to_event = ?3 AND kind = 'reply'",
        (row, room, event),
        room=room,
        part="gathered",
    )


async def waiting(db: Database, limit: int = 50, busy: Sequence[str] = ()) -> list[Waiting]:
    """What is to be sent next, in order, leaving out the rooms in `busy`; first aid before all.

    An answer that was never sent is edited in the first that was sent in its place. What was said
    in the room from before an upgrade cannot be edited from the new one: it is said anew there.
    """
    rows = await db.rows(
        "SELECT outbox.*, room.address, iif(outbox.rewrites < (SELECT id FROM outbox AS moved "
        "WHERE moved.tx_id = 'moved-' || room.id || '-' || room.address), NULL, "
        "ifnull(earlier.sent_as, (SELECT sent_as FROM outbox AS one "
        "WHERE one.room = outbox.room AND one.to_event = outbox.to_event "
        "AND one.rewrites = outbox.rewrites AND one.sent_as IS NOT NULL ORDER BY one.id LIMIT 1))) "
        "AS rewrites_event "
        "FROM outbox INDEXED BY outbox_waiting JOIN room ON room.id = outbox.room "
        "LEFT JOIN outbox AS earlier ON earlier.id = outbox.rewrites "
        "WHERE outbox.sent_as IS NULL AND outbox.refused IS NULL AND outbox.gathered IS NULL "
        "AND room.left_at IS NULL "
        "AND room.address NOT IN (SELECT value FROM json_each(?)) "
        "ORDER BY outbox.tx_id NOT LIKE ?, outbox.id LIMIT ?",
        (json.dumps(list(busy)), f"{URGENT}-%", limit),
    )
    return [
        Waiting(
            id=row["id"],
            room=row["address"],
            message=_message(row),
            made_at=from_ms(row["made_at"]),
            rewrites_event=row["rewrites_event"],
        )
        for row in rows
    ]


async def sent(db: Database, row: int, event: str, at: datetime) -> None:
    """The homeserver has it, as `event`."""
    async with db.transaction():
        await db.write(
            "UPDATE outbox SET sent_as = ?, sent_at = ?, attached = NULL WHERE id = ?",
            (event, to_ms(at), row),
        )


async def refused(db: Database, row: int, why: str) -> None:
    """The homeserver will never take it: do not try again."""
    async with db.transaction():
        await db.write("UPDATE outbox SET refused = ? WHERE id = ?", (why, row))


async def taken_away(db: Database, room: int, event: str) -> None:
    """An answer of ours was deleted: what would change it is said anew; inside a transaction."""
    await db.write(
        "UPDATE outbox SET refused = ?1 WHERE room = ?2 AND (sent_as = ?3 OR tx_id = ?3) "
        "AND rewrites IS NULL",
        (DELETED, room, event),
    )


async def is_known(db: Database, tx_id: str) -> bool:
    """Whether something was said, or is to be, under a transaction id."""
    return await db.row("SELECT 1 FROM outbox WHERE tx_id = ?", (tx_id,)) is not None


async def is_holding(db: Database, room: int, sender: str) -> bool:
    """Whether answers to a user in a room are held back."""

    async def ask() -> bool:
        return bool(
            await db.rows(
                "SELECT 1 FROM outbox INDEXED BY outbox_held JOIN room ON room.id = outbox.room "
                "CROSS JOIN inbox ON inbox.room = room.address AND inbox.event = outbox.to_event "
                "WHERE outbox.room = ? AND gathered = 0 AND inbox.sender = ? LIMIT 1",
                (room, sender),
            )
        )

    return await db.known(room, _HELD, sender, ask)


async def held(db: Database, room: int) -> list[tuple[int, Message]]:
    """The answers of a room that are held back, with their row ids, in order."""
    rows = await db.rows(
        "SELECT * FROM outbox WHERE room = ? AND gathered = 0 ORDER BY id", (room,)
    )
    return [(row["id"], _message(row)) for row in rows]


async def holding(db: Database) -> list[str]:
    """The addresses of the rooms with answers held back."""
    rows = await db.rows(
        "SELECT DISTINCT address FROM outbox JOIN room ON room.id = outbox.room WHERE gathered = 0"
    )
    return [row["address"] for row in rows]


async def unsent(db: Database, room: int, limit: int, before: datetime | None = None) -> int:
    """How many messages of a room (made before a moment) wait to be sent, up to a limit."""
    rows = await db.rows(
        "SELECT 1 FROM outbox WHERE room = ?1 AND sent_as IS NULL AND refused IS NULL "
        "AND gathered IS NULL AND (?3 IS NULL OR made_at < ?3) LIMIT ?2",
        (room, limit, None if before is None else to_ms(before)),
    )
    return len(rows)


async def was_said(db: Database, room: int, body: str, since: datetime, until: datetime) -> bool:
    """Whether these words were said by themselves in a room between two moments."""
    rows = await db.rows(
        "SELECT 1 FROM outbox WHERE id > (SELECT max(id) FROM outbox) - ? AND room = ? "
        "AND made_at BETWEEN ? AND ? AND body = ? AND gathered IS NULL LIMIT 1",
        (LATEST, room, to_ms(since), to_ms(until), body),
    )
    return bool(rows)


async def lately(
    db: Database,
    room: int,
    since: datetime,
    until: datetime,
    *,
    sender: str | None = None,
    besides: str = "",
) -> tuple[int, int]:
    """How many answers by themselves a room got between moments, and how many told together.

    What a clock that was since set back dates later does not count. With `sender`, only answers to
    that user count among the first; those to the event `besides` do not count.
    """
    row = await db.row(
        "SELECT sum(outbox.tx_id NOT LIKE 'sum-%' AND (?4 IS NULL OR inbox.sender = ?4)) AS single,"
        " sum(outbox.tx_id LIKE 'sum-%') AS together FROM outbox JOIN room ON room.id = outbox.room"
        " LEFT JOIN inbox ON inbox.room = room.address AND inbox.event = outbox.to_event "
        "WHERE outbox.id > (SELECT max(id) FROM outbox) - ?1 "
        "AND outbox.room = ?2 AND outbox.made_at BETWEEN ?3 AND ?6 "
        "AND outbox.kind IN ('reply', 'reaction') "
        "AND outbox.gathered IS NULL AND outbox.to_event IS NOT ?5",
        (LATEST, room, to_ms(since), sender, besides, to_ms(until)),
    )
    return (row["single"] or 0, row["together"] or 0) if row else (0, 0)


async def gather(db: Database, room: int, tx_id: str) -> None:
    """The message of a transaction id tells all that a room held back; inside a transaction."""
    await db.write(
        "UPDATE outbox SET gathered = (SELECT id FROM outbox WHERE tx_id = ?) "
        "WHERE room = ? AND gathered = 0",
        (tx_id, room),
        room=room,
        part="gathered",
    )


async def told_in(db: Database, room: int, event: str, sender: str) -> list[str]:
    """The messages of a user whose answers the bot told together with others, as `event`."""
    together = await db.row(OF_EVENT, (event,))
    if together is None:
        return []
    rows = await db.rows(
        "SELECT outbox.to_event FROM outbox JOIN room ON room.id = outbox.room "
        "CROSS JOIN inbox ON inbox.room = room.address AND inbox.event = outbox.to_event "
        "WHERE outbox.room = ?1 AND outbox.kind = 'reply' AND inbox.sender = ?3 "
        "AND outbox.gathered = ?2 ORDER BY outbox.id",
        (room, together["id"], sender),
    )
    return list(dict.fromkeys(row["to_event"] for row in rows))


async def answer_to(db: Database, room: int, event: str) -> tuple[int, Message] | None:
    """The latest reply to a message, if one was made, with the row id of the answer itself: an
    edit of an edit is shown by no client.
    """
    rows = await db.rows(
        "SELECT * FROM outbox WHERE room = ? AND to_event = ? AND kind = 'reply' ORDER BY id DESC",
        (room, event),
    )
    first = next(
        (row["id"] for row in rows if row["rewrites"] is None and row["refused"] != DELETED), None
    )
    return (first, _message(rows[0])) if first is not None else None


async def answers_to(db: Database, room: int, event: str) -> list[str]:
    """The events as which a message was answered."""
    rows = await db.rows(
        "SELECT sent_as FROM outbox WHERE room = ? AND to_event = ? AND sent_as IS NOT NULL",
        (room, event),
    )
    return [row["sent_as"] for row in rows]


async def said_as(db: Database, room: int, event: str) -> Message | None:
    """What the bot said in a room as `event`; its `tx_id` is understood as well."""
    rows = [row for row in await db.rows(OF_EVENT, (event,)) if row["room"] == room]
    return _message(rows[0]) if rows else None


async def latest(db: Database, room: int) -> tuple[Message, datetime] | None:
    """The last thing said in a room (reactions are not said), and when."""
    return await _last_of(db, room, "latest", _LATEST)


async def latest_digest(db: Database, room: int) -> tuple[Message, datetime] | None:
    """The last reminder of what is due that was said in a room, and when."""
    return await _last_of(db, room, "latest digest", _LATEST_DIGEST)


async def latest_to_people(db: Database, room: int) -> tuple[Message, datetime] | None:
    """The last thing said in a room that is no notice of the bot's own doings, and when."""
    return await _last_of(db, room, "latest to people", _LATEST_TO_PEOPLE)


_LATEST = (
    "SELECT * FROM outbox WHERE room = ? AND kind != 'reaction' AND kind != 'calendar' "
    "ORDER BY id DESC LIMIT 1"
)
_LATEST_DIGEST = (
    "SELECT * FROM outbox WHERE room = ? AND kind != 'reaction' AND kind = 'digest' "
    "ORDER BY id DESC LIMIT 1"
)
_LATEST_TO_PEOPLE = (
    "SELECT * FROM outbox WHERE room = ? AND kind != 'reaction' AND kind != 'calendar' "
    "AND (kind != 'notice' OR to_event IS NOT NULL) ORDER BY id DESC LIMIT 1"
)


async def _last_of(
    db: Database, room: int, name: str, query: str
) -> tuple[Message, datetime] | None:
    async def ask() -> tuple[Message, datetime] | None:
        row = await db.row(query, (room,))
        return (_message(row), from_ms(row["made_at"])) if row else None

    return await db.known(room, _SAID, name, ask)


def _message(row: sqlite3.Row) -> Message:
    return Message(
        tx_id=row["tx_id"],
        kind=row["kind"],
        body=row["body"],
        to_event=row["to_event"],
        mentions=tuple(json.loads(row["mentions"])) if row["mentions"] != "[]" else (),
        thread=row["thread"],
        rewrites=row["rewrites"],
        why=row["why"],
        attached=row["attached"],
    )
