"""The book's changes; each is made inside a transaction and none overwrites an entry."""

import json
from collections.abc import Sequence
from datetime import datetime

from storage import words
from storage.book import Book
from storage.moments import to_ms
from storage.rows import Bin, Entry, NewEntry, Question


async def write_down(book: Book, entry: NewEntry, run: int | None = None) -> int:
    """Add an entry, of a run of its bin; bin and people are made known if they are new. Its id."""
    facts = entry.facts
    return await book.db.write(
        "INSERT INTO entry (room, act, bin, run, member, writer, on_day, said_at, written_at, "
        "event, cause, mass_kg, volume_l, materials, rich, starter_g, capacity_l, shared, place, "
        "signs, celsius, ph, words, hour, rule, days, receiver, until_day, replaces, root) "
        "VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?,?29,"
        "coalesce((SELECT root FROM entry WHERE id = ?29), (SELECT max(id) FROM entry) + 1, 1))",
        (
            book.room.id,
            entry.act,
            (await ensure_bin(book, entry.bin)).id if entry.bin else None,
            run,
            await ensure_member(book, entry.member) if entry.member else None,
            await ensure_member(book, entry.writer) if entry.writer else None,
            entry.on.isoformat() if entry.on else None,
            to_ms(entry.said_at),
            to_ms(entry.written_at),
            entry.event,
            entry.cause,
            facts.mass_kg,
            facts.volume_l,
            json.dumps(dict(facts.materials)) if facts.materials else None,
            facts.rich,
            facts.starter_g,
            facts.capacity_l,
            None if facts.shared is None else int(facts.shared),
            words.name(facts.place, words.LONGEST_PLACE) if facts.place else None,
            json.dumps(facts.signs) if facts.signs else None,
            facts.celsius,
            facts.ph,
            words.name(facts.words, words.LONGEST_NOTE) if facts.words else None,
            f"{facts.hour:%H:%M}" if facts.hour else None,
            facts.rule,
            facts.days,
            await ensure_member(book, entry.receiver) if entry.receiver else None,
            entry.until.isoformat() if entry.until else None,
            entry.replaces,
        ),
        room=book.room.id,
        # What stands in for another entry has its place among those that were read before.
        part=f"{entry.act},{REWRITTEN}" if entry.replaces else entry.act,
    )


REWRITTEN = "rewritten"
"""The part of the entries that changes where they are not only added to."""


async def strike_out(book: Book, entries: Sequence[Entry], by: str, at: datetime) -> None:
    """Strike entries out; they stay readable and say which event struck them."""
    await book.db.write_many(
        "UPDATE entry SET struck_at = ?, struck_by = ? WHERE id = ? AND struck_at IS NULL",
        [(to_ms(at), by, entry.id) for entry in entries],
        room=book.room.id,
        part=",".join([*sorted({entry.act for entry in entries}), REWRITTEN]),
    )


async def strike_in_place_of(book: Book, former: str, by: str) -> None:
    """What one event struck out is struck out by another, since the former was taken back."""
    await book.db.write(
        "UPDATE entry SET struck_by = ? WHERE room = ? AND struck_by = ?",
        (by, book.room.id, former),
        room=book.room.id,
    )


async def set_runs(book: Book, runs: Sequence[tuple[int, int]]) -> None:
    """Number entries: pairs of entry id and run."""
    await book.db.write_many(
        "UPDATE entry SET run = ? WHERE id = ?",
        [(run, entry) for entry, run in runs],
        room=book.room.id,
    )


async def ensure_bin(book: Book, name: str) -> Bin:
    """The bin of that name, made if it is new."""
    found = await book.bin(name)
    if found:
        return found
    name = words.name(name)
    made = await book.db.write(
        "INSERT INTO bin (room, name, key) VALUES (?, ?, ?)",
        (book.room.id, name, name.casefold()),
        room=book.room.id,
    )
    return Bin(id=made, name=name)


async def ensure_member(book: Book, name: str) -> int:
    """The id of the member of that name, made if only spoken of."""

    async def ask() -> int | None:
        row = await book.db.row(
            "SELECT id FROM member WHERE room = ? AND name = ? COLLATE NOCASE "
            "ORDER BY present DESC, user IS NULL, id LIMIT 1",
            (book.room.id, name),
        )
        return int(row["id"]) if row else None

    known = await book.known("member", ("id", name), ask)
    if known:
        return known
    clean = words.name(name)
    if clean != name:
        return await ensure_member(book, clean)
    return await book.db.write(
        "INSERT INTO member (room, name) VALUES (?, ?)",
        (book.room.id, name),
        room=book.room.id,
    )


async def meet(book: Book, user: str, name: str, *, present: bool = True) -> None:
    """A user is in the room (or has left it) under a name; no two share one."""
    namesake = await book.db.row(
        "SELECT 1 FROM member WHERE room = ? AND user != ? AND name = ? COLLATE NOCASE",
        (book.room.id, user, name),
    )
    if namesake:
        name = f"{name} ({user})"
    spoken_of = await book.db.row(
        "SELECT id FROM member WHERE room = ? AND user IS NULL AND name = ? COLLATE NOCASE",
        (book.room.id, name),
    )
    known = await book.db.row(
        "SELECT id, name FROM member WHERE room = ? AND user = ?", (book.room.id, user)
    )
    if known:
        if known["name"] != name:
            await _call_anew(book, known["name"], name)
        await book.db.write(
            "UPDATE member SET name = ?, present = ? WHERE id = ?",
            (name, int(present), known["id"]),
            room=book.room.id,
        )
    elif spoken_of:
        await book.db.write(
            "UPDATE member SET user = ?, name = ?, present = ? WHERE id = ?",
            (user, name, int(present), spoken_of["id"]),
            room=book.room.id,
        )
    else:
        await book.db.write(
            "INSERT INTO member (room, user, name, present) VALUES (?, ?, ?, ?)",
            (book.room.id, user, name, int(present)),
            room=book.room.id,
        )


async def _call_anew(book: Book, before: str, name: str) -> None:
    """A member shows another name: what is due to them, asked of them or promised bears it, too."""
    db, room = book.db, book.room
    await db.write(
        "UPDATE due SET to_member = ? WHERE room = ? AND to_member = ?",
        (name, room.id, before),
        room=room.id,
    )
    await db.write(
        "UPDATE question SET sender = ? WHERE room = ? AND sender = ?",
        (name, room.id, before),
        room=room.id,
    )
    of_room = "room IN (SELECT ?3 UNION ALL SELECT before FROM renamed WHERE address = ?3)"
    for key in PEOPLE:  # a bin may be called the same
        written = [f'"{key}": {json.dumps(one)}' for one in (before, name)]
        await db.write(
            "UPDATE question SET guess = replace(guess, ?1, ?2) "
            "WHERE room = ?3 AND instr(guess, ?1)",
            (*written, room.id),
            room=room.id,
        )
        await db.write(
            "UPDATE inbox SET mark = replace(mark, ?1, ?2) "  # noqa: S608
            f"WHERE kind IN ('said', 'edited') AND instr(mark, ?1) AND {of_room}",
            (*written, room.address),
        )


PEOPLE = ("member", "to", "whose", "by")
"""Where an act or a promise, written as JSON, names a member."""


async def ask(book: Book, question: Question) -> None:
    """Keep a question that the bot asks, with what it will write down (its `id` is ignored)."""
    await book.db.write(
        "INSERT INTO question (room, event, sender, guess, lacks, asked_at) "
        "VALUES (?, ?, ?, ?, ?, ?)",
        (
            book.room.id,
            question.event,
            question.sender,
            question.guess,
            question.lacks,
            to_ms(question.asked_at),
        ),
        room=book.room.id,
    )


async def settle_question(book: Book, question: Question, by: str | None) -> None:
    """A question was answered, or its message withdrawn; by None, it is open again."""
    await book.db.write(
        "UPDATE question SET settled_by = ? WHERE id = ?", (by, question.id), room=book.room.id
    )
