"""Forgetting: a member who asks for it, and rooms that the bot left long ago."""

from datetime import datetime

from storage.book import Book
from storage.database import Database
from storage.moments import from_ms, local_day, to_ms
from storage.rows import Member

OF_A_ROOM = (
    "DELETE FROM notice_board WHERE room = ?",
    "DELETE FROM caldav WHERE room = ?",
    "DELETE FROM outbox WHERE room = ?",
    "DELETE FROM question WHERE room = ?",
    "DELETE FROM link WHERE room = ?",
    "DELETE FROM leader WHERE room = ?",
    "DELETE FROM naming WHERE due IN (SELECT id FROM due WHERE room = ?)",
    "DELETE FROM due WHERE room = ?",
    "DELETE FROM entry WHERE room = ?",
    "DELETE FROM tally WHERE room = ?",
    "DELETE FROM dosed WHERE room = ?",
    "DELETE FROM bin WHERE room = ?",
    "DELETE FROM member WHERE room = ?",
    "DELETE FROM former WHERE room = ?",
    "DELETE FROM room WHERE id = ?",
)
"""What deletes a room: rows that point to others first."""


async def forget_member(book: Book, member: Member) -> int:
    """Take a person out of a book, inside a transaction; how many entries stay without the name.

    What went into shared bins stays in their totals, under a name that says nothing.
    """
    db, room = book.db, book.room.id
    nobody = f"former neighbour {member.id}"
    user = member.user or ""
    await db.write(
        "UPDATE member SET name = ?, user = NULL, present = 0 WHERE id = ?", (nobody, member.id)
    )
    await _see_off(book, member)
    await _end_reminders(book, member)
    await db.write("DELETE FROM link WHERE member = ?", (member.id,))
    await db.write(
        "DELETE FROM question WHERE room = ?1 AND (sender = ?2 OR instr(lower(guess), lower(?2)))",
        (room, member.name),
    )
    await db.write("DELETE FROM leader WHERE room = ? AND user = ?", (room, user))
    await db.write(
        "UPDATE due SET to_member = ? WHERE room = ? AND to_member = ?",
        (nobody, room, member.name),
    )
    await _blank_words(book, member, user)
    await _blank_traces(book, member, user)
    rows = await db.rows(
        "SELECT 1 FROM entry WHERE room = ?1 AND (member = ?2 OR writer = ?2 OR receiver = ?2)",
        (room, member.id),
    )
    return len(rows)


async def _blank_words(book: Book, member: Member, user: str) -> None:
    """What was set, and what we said, keeps no words that name whoever is forgotten."""
    db, room = book.db, book.room.id
    for of in ("entry SET words = 'something that was set' WHERE act IN ('date', 'note')",
               "due SET words = 'something that was set' WHERE what = 'own'"):  # fmt: skip
        await db.write(
            f"UPDATE {of} AND room = ? AND instr(lower(words), lower(?))",
            (room, member.name),
        )
    await db.write("DELETE FROM notice_board WHERE room = ?", (room,))  # it is posted anew
    await db.write(
        "UPDATE outbox SET body = '', why = NULL, attached = NULL, mentions = '[]', "
        "refused = CASE WHEN sent_as IS NULL THEN 'forgotten' ELSE refused END, "
        "gathered = CASE gathered WHEN 0 THEN NULL ELSE gathered END "
        "WHERE room = ?1 AND kind != 'reaction' "
        "AND (instr(lower(body), lower(?2)) OR (?3 != '' AND instr(mentions, ?3)))",
        (room, member.name, user),
    )


async def _blank_traces(book: Book, member: Member, user: str) -> None:
    """Of the messages that were heard it is no longer known who wrote them, or whom they named."""
    db = book.db
    await db.write(
        "UPDATE inbox SET sender = NULL WHERE sender = ?2 AND "
        "room IN (SELECT ?1 UNION ALL SELECT before FROM renamed WHERE address = ?1)",
        (book.room.address, user),
    )
    await db.write(
        "UPDATE inbox SET mark = NULL WHERE kind IN ('said', 'edited') AND "
        "instr(lower(mark), lower(?2)) AND "
        "room IN (SELECT ?1 UNION ALL SELECT before FROM renamed WHERE address = ?1)",
        (book.room.address, member.name),
    )


async def _see_off(book: Book, member: Member) -> None:
    """Whoever is forgotten keeps no bin and takes no turns, from the last thing written down on."""
    last = await book.db.row(
        "SELECT max(written_at) AS at FROM entry WHERE room = ?", (book.room.id,)
    )
    if last is None or last["at"] is None or not member.present:
        return
    on = local_day(from_ms(last["at"]), book.room.zone)
    event = f"forgotten-{member.id}"
    made = await book.db.write(
        "INSERT INTO entry (room, act, member, on_day, said_at, written_at, event, cause) "
        "VALUES (?1, 'leave', ?2, ?3, ?4, ?4, ?5, ?5)",
        (book.room.id, member.id, on.isoformat(), last["at"], event),
    )
    await book.db.write("UPDATE entry SET root = id WHERE id = ?", (made,))


async def _end_reminders(book: Book, member: Member) -> None:
    """What was to be said to whoever is forgotten is said to nobody."""
    await book.db.write(
        "UPDATE entry SET struck_by = ?3, struck_at = (SELECT max(written_at) FROM entry "
        "WHERE room = ?1) WHERE room = ?1 AND act = 'date' AND receiver = ?2 "
        "AND struck_at IS NULL",
        (book.room.id, member.id, f"forgotten-{member.id}"),
    )
    await book.db.write(
        "UPDATE due SET gone = 1 WHERE room = ? AND what = 'own' AND to_member = ? AND gone = 0",
        (book.room.id, member.name),
    )


async def forget_left_rooms(db: Database, before: datetime) -> int:
    """Delete all that is known of the rooms left before a moment; how many rooms that was."""
    rows = await db.rows("SELECT id, address FROM room WHERE left_at < ?", (to_ms(before),))
    for row in rows:
        async with db.transaction():
            await db.write(
                "DELETE FROM inbox WHERE room IN "
                "(SELECT ?1 UNION ALL SELECT before FROM renamed WHERE address = ?1)",
                (row["address"],),
            )
            for delete in OF_A_ROOM:
                await db.write(delete, (row["id"],))
    return len(rows)
