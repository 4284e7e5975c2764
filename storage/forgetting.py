"""Forgetting: a member who asks for it, and rooms that the bot left long ago."""

import json
import re
import sqlite3
from collections.abc import Iterable
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

FORGOTTEN = "forgotten-"
"""How the event begins that stands for the forgetting of a member."""

NO_NAMES = frozenset({"The", "A", "Mr", "Mrs", "Ms", "Dr", "Mr.", "Mrs.", "Ms.", "Dr."})
"""What may stand first in a name shown, and is no part of it that people call anybody by."""


def naming(member: Member, members: Iterable[Member]) -> re.Pattern[str]:
    """Where words name a member: by the name shown, in any case, or by a part of it that people
    call them by and nobody else in the room; with the "s" of what is theirs in `theirs`.
    """
    first = member.name.split()[0]
    others = {one.name.split()[0].casefold() for one in members if one.id != member.id}
    is_short = first[0].isupper() and first not in NO_NAMES and first.casefold() not in others
    names = [f"(?i:{re.escape(member.name)})", *([re.escape(first)] if is_short else [])]
    return re.compile(rf"(?<!\w)(?:{'|'.join(names)})(?P<theirs>['’]?s|['’])?(?!\w)")


async def forget_member(book: Book, member: Member) -> int:
    """Take a person out of a book, inside a transaction; how many entries stay without the name.

    What went into shared bins stays in their totals, under a name that says nothing.
    """
    db, room = book.db, book.room.id
    named = naming(member, await book.members())
    nobody = f"former neighbour {member.id}"
    user = member.user or ""
    await db.write(
        "UPDATE member SET name = ?, user = NULL, present = 0 WHERE id = ?", (nobody, member.id)
    )
    await _see_off(book, member)
    await _end_reminders(book, member)
    await db.write("DELETE FROM link WHERE member = ?", (member.id,))
    await _drop_questions(book, member, named)
    await db.write("DELETE FROM leader WHERE room = ? AND user = ?", (room, user))
    await db.write(
        "UPDATE due SET to_member = ? WHERE room = ? AND to_member = ?",
        (nobody, room, member.name),
    )
    await db.write(
        "UPDATE due SET to_member = NULL WHERE room = ?1 AND gone = 1 AND to_member NOT IN "
        "(SELECT name FROM member WHERE room = ?1)",
        (room,),
    )
    await _blank_words(book, named)
    await _blank_sayings(book, named, user)
    await _blank_traces(book, named, user)
    rows = await db.rows(
        "SELECT 1 FROM entry WHERE room = ?1 AND (member = ?2 OR writer = ?2 OR receiver = ?2)",
        (room, member.id),
    )
    return len(rows)


async def _drop_questions(book: Book, member: Member, named: re.Pattern[str]) -> None:
    """What was asked of whoever is forgotten, under any name, or was of them."""
    rows = await book.db.rows(
        "SELECT id, guess, sender = ?2 OR sender NOT IN (SELECT name FROM member WHERE room = ?1) "
        "AS asked FROM question WHERE room = ?1",
        (book.room.id, member.name),
    )
    await book.db.write_many(
        "DELETE FROM question WHERE id = ?",
        [(row["id"],) for row in rows if row["asked"] or named.search(_unescaped(row["guess"]))],
    )


async def _blank_words(book: Book, named: re.Pattern[str]) -> None:
    """What was set keeps no words that name whoever is forgotten, nor does a place."""
    db, room = book.db, book.room.id
    for table, of in (("entry", "act IN ('date', 'note')"), ("due", "what = 'own'")):
        rows = await db.rows(
            f"SELECT id, words FROM {table} WHERE room = ? AND {of} AND words NOT NULL",  # noqa: S608
            (room,),
        )
        await db.write_many(
            f"UPDATE {table} SET words = 'something that was set' WHERE id = ?",  # noqa: S608
            [(row["id"],) for row in rows if named.search(row["words"])],
        )
    rows = await db.rows(
        "SELECT id, place FROM entry WHERE room = ? AND place NOT NULL",
        (room,),
    )
    await db.write_many(
        "UPDATE entry SET place = ? WHERE id = ?",
        [(named.sub(_nobody, r["place"]), r["id"]) for r in rows if named.search(r["place"])],
    )


def _nobody(named: re.Match[str]) -> str:
    return "a neighbour's" if named["theirs"] else "a neighbour"


async def _blank_sayings(book: Book, named: re.Pattern[str], user: str) -> None:
    """What we said is blanked whole, since it may be under a name shown long ago; of what is still
    to be said, only what names whoever is forgotten is not.
    """
    db, room = book.db, book.room.id
    await db.write("DELETE FROM notice_board WHERE room = ?", (room,))  # it is posted anew
    rows = await db.rows(
        "SELECT id, sent_as IS NULL AND refused IS NULL AND ifnull(gathered, 0) = 0 AS to_be_said, "
        "body, ifnull(why, '') AS why, ifnull(attached, '') AS attached, mentions FROM outbox "
        "WHERE room = ? AND kind != 'reaction'",
        (room,),
    )

    def names(row: sqlite3.Row) -> bool:
        said = f"{row['body']}\n{row['why']}\n{_unescaped(row['attached'])}"
        return bool(named.search(said)) or user in json.loads(row["mentions"])

    await db.write_many(
        "UPDATE outbox SET body = '', mentions = '[]', why = iif(?, NULL, why) WHERE id = ?",
        [
            (named.search(row["why"]) is not None, row["id"])
            for row in rows
            if not row["to_be_said"]
        ],
    )
    await db.write_many(
        "UPDATE outbox SET body = '', why = NULL, attached = NULL, mentions = '[]', "
        "refused = 'forgotten', gathered = NULL WHERE id = ?",
        [(row["id"],) for row in rows if row["to_be_said"] and names(row)],
    )


async def _blank_traces(book: Book, named: re.Pattern[str], user: str) -> None:
    """Of the messages that were heard it is no longer known who wrote them, or whom they named."""
    db = book.db
    of_room = "room IN (SELECT ?1 UNION ALL SELECT before FROM renamed WHERE address = ?1)"
    await db.write(
        f"UPDATE inbox SET sender = NULL WHERE sender = ?2 AND {of_room}",  # noqa: S608
        (book.room.address, user),
    )
    rows = await db.rows(
        "SELECT id, mark FROM inbox WHERE kind IN ('said', 'edited') "  # noqa: S608
        f"AND instr(mark, '\"') AND {of_room}",
        (book.room.address,),
    )
    await db.write_many(
        "UPDATE inbox SET mark = NULL WHERE id = ?",
        [(row["id"],) for row in rows if named.search(_unescaped(row["mark"]))],
    )


def _unescaped(written: str) -> str:
    """JSON with its letters as they are read, whatever alphabet they are of."""
    letters = _ESCAPED.sub(lambda code: chr(int(code[1], 16)), written)
    return letters.encode("utf-16", "surrogatepass").decode("utf-16", "replace")


_ESCAPED = re.compile(r"\\u([0-9a-f]{4})")


async def _see_off(book: Book, member: Member) -> None:
    """Whoever is forgotten keeps no bin and takes no turns, from the last thing written down on."""
    last = await book.db.row(
        "SELECT max(written_at) AS at FROM entry WHERE room = ?", (book.room.id,)
    )
    if last is None or last["at"] is None or not member.present:
        return
    on = local_day(from_ms(last["at"]), book.room.zone)
    event = f"{FORGOTTEN}{member.id}"
    made = await book.db.write(
        "INSERT INTO entry (room, act, member, on_day, said_at, written_at, event, cause) "
        "VALUES (?1, 'leave', ?2, ?3, ?4, ?4, ?5, ?5)",
        (book.room.id, member.id, on.isoformat(), last["at"], event),
    )
    await book.db.write("UPDATE entry SET root = id WHERE id = ?", (made,))


async def _end_reminders(book: Book, member: Member) -> None:
    """What was to be said to whoever is forgotten is said to nobody."""
    await book.db.write(
        "UPDATE due SET gone = 1, to_member = NULL WHERE room = ?1 AND what = 'own' AND "
        "(to_member = ?2 OR CAST(substr(occasion, 1, instr(occasion, '/') - 1) AS INTEGER) IN "
        "(SELECT root FROM entry WHERE room = ?1 AND act = 'date' AND receiver = ?3))",
        (book.room.id, member.name, member.id),
    )
    await book.db.write(
        "UPDATE entry SET struck_by = ?3, struck_at = (SELECT max(written_at) FROM entry "
        "WHERE room = ?1) WHERE room = ?1 AND act = 'date' AND receiver = ?2 "
        "AND struck_at IS NULL",
        (book.room.id, member.id, f"{FORGOTTEN}{member.id}"),
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
