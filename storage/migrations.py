"""From any earlier schema to the present one: ordered steps, each committed with its number."""

import asyncio
from collections.abc import Sequence
from pathlib import Path

import aiosqlite

from storage import backup
from storage.errors import BookError
from storage.schema import SCHEMA, SUMS, VERSION

ABSENCES = """
-- The last local day of what lasts: of an absence ('away'); NULL: until the member is back.
ALTER TABLE entry ADD COLUMN until_day TEXT;
CREATE INDEX entry_away ON entry (room) WHERE act = 'away';
CREATE INDEX entry_back ON entry (member) WHERE act = 'back';
"""

SHARED_CALENDAR = """
-- What members wish to be reminded of ('date' entries): `receiver` is for whom, NULL: for all.
ALTER TABLE entry ADD COLUMN words TEXT;  -- what of
ALTER TABLE entry ADD COLUMN hour TEXT;   -- local hour, HH:MM; NULL: with the digest
ALTER TABLE entry ADD COLUMN rule TEXT;   -- RRULE of RFC 5545; NULL: once, on `on_day`
CREATE INDEX entry_date ON entry (room) WHERE act = 'date';

-- Dues that members set themselves (what = 'own', occasion = 'entry root/day').
ALTER TABLE due ADD COLUMN words TEXT;
ALTER TABLE due ADD COLUMN hour TEXT;
CREATE INDEX due_by_hour ON due (room, from_day)
    WHERE hour IS NOT NULL AND gone = 0 AND told_on IS NULL;

-- What a digest or reminder named, and in which of its lines (1, 2, ...).
CREATE TABLE naming (
    message     TEXT NOT NULL,              -- tx_id in the outbox
    line        INTEGER NOT NULL,
    due         INTEGER NOT NULL REFERENCES due,
    PRIMARY KEY (message, line, due)
) STRICT, WITHOUT ROWID;
CREATE INDEX naming_by_due ON naming (due);
INSERT INTO naming SELECT outbox.tx_id, 1, due.id FROM outbox JOIN room ON room.id = outbox.room
    JOIN due ON due.room = room.id AND due.gone = 0 AND due.told_on = room.told_on
    WHERE outbox.id IN (SELECT max(id) FROM outbox WHERE kind = 'digest' GROUP BY room);

-- The message of a room that always shows the present calendar.
CREATE TABLE notice_board (
    room        INTEGER PRIMARY KEY REFERENCES room,
    message     TEXT NOT NULL,              -- tx_id of the message that its edits rewrite
    shown       TEXT NOT NULL,              -- the words it shows
    shown_on    TEXT NOT NULL,              -- the local day they were made for
    pinned      INTEGER NOT NULL DEFAULT 0, -- 1: it hangs at the top of the room
    unwanted    INTEGER NOT NULL DEFAULT 0, -- 1: it was taken away, and is not put up again
    explained   INTEGER NOT NULL DEFAULT 0  -- 1: how to let the bot hang it there was said
) STRICT;

-- What stands in the CalDAV calendar of a room, as we last put it there.
CREATE TABLE caldav (
    room        INTEGER NOT NULL REFERENCES room,
    uid         TEXT NOT NULL,
    fingerprint TEXT NOT NULL,              -- of the event's text
    PRIMARY KEY (room, uid)
) STRICT, WITHOUT ROWID;

-- The outbox learns of the calendar's message and of files: its kinds are not checked any more,
-- since every new one would need a new table.
CREATE TABLE outbox_anew (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    tx_id       TEXT NOT NULL UNIQUE,
    kind        TEXT NOT NULL,              -- see `Kind` in storage/rows.py
    to_event    TEXT,                       -- the message answered or marked
    body        TEXT NOT NULL,              -- plain words, or the sign of a reaction
    mentions    TEXT NOT NULL DEFAULT '[]', -- JSON: user ids
    thread      TEXT,                       -- the thread it belongs in
    rewrites    INTEGER REFERENCES outbox_anew, -- renamed with it: the answer it takes the place of
    why         TEXT,                       -- the arithmetic behind it, its sources and standing
    made_at     INTEGER NOT NULL,
    sent_as     TEXT,                       -- event id, once the homeserver has it
    sent_at     INTEGER,
    refused     TEXT,                       -- why the homeserver will never take it
    gathered    INTEGER,                    -- not said by itself: 0 until told together with others
                                            -- in the message of this number
    attached    TEXT                        -- what a file or a picture is made of, until it is sent
) STRICT;
INSERT INTO outbox_anew SELECT *, NULL FROM outbox;
DROP TABLE outbox;
ALTER TABLE outbox_anew RENAME TO outbox;
CREATE INDEX outbox_waiting ON outbox (id)
    WHERE sent_as IS NULL AND refused IS NULL AND gathered IS NULL;
CREATE INDEX outbox_held ON outbox (room) WHERE gathered = 0;
CREATE INDEX outbox_by_target ON outbox (room, to_event);
CREATE INDEX outbox_by_event ON outbox (sent_as);
"""

COMMUNAL = """
-- `words` of an entry is also a bin's new name, its condition, or what a rota is for.
ALTER TABLE entry ADD COLUMN days INTEGER;  -- how long each turn of a rota lasts
CREATE INDEX entry_turns ON entry (room)
    WHERE act IN ('rota', 'join', 'quit', 'over', 'swap', 'swapped');
CREATE INDEX entry_asked ON entry (room) WHERE act IN ('offer', 'swap');
CREATE INDEX entry_taken ON entry (room, member) WHERE act = 'accept';
CREATE INDEX entry_presence ON entry (room) WHERE act IN ('leave', 'return');
CREATE INDEX entry_renamed ON entry (room) WHERE act = 'rename';

-- Whoever has left the room by now can keep no bin in it.
INSERT INTO entry (room, act, member, on_day, said_at, written_at, event, cause)
    SELECT room, 'leave', id, date('now'), unixepoch() * 1000, unixepoch() * 1000,
        'left-' || id, 'left-' || id
    FROM member WHERE present = 0 AND user IS NOT NULL;
UPDATE entry SET root = id WHERE root IS NULL;

-- The name that a bin was first called by; NULL: the one it has.
ALTER TABLE bin ADD COLUMN called TEXT;

-- What only those with power in the room may do (JSON); all else is for everybody.
ALTER TABLE room ADD COLUMN reserved TEXT NOT NULL DEFAULT '[]';

-- Those with power in a room; '*': everybody.
CREATE TABLE leader (
    room        INTEGER NOT NULL REFERENCES room,
    user        TEXT NOT NULL,              -- Matrix user id
    made_by     TEXT NOT NULL CHECK (made_by IN ('creation', 'level')),
    UNIQUE (room, user, made_by)
) STRICT;
"""

STEPS: Sequence[str] = (SCHEMA, f"{ABSENCES} {SHARED_CALENDAR} {COMMUNAL} {SUMS}")
"""Step n brings a book from version n to n + 1; `PRAGMA user_version` holds the version."""


async def migrate(connection: aiosqlite.Connection, book: Path | None) -> None:
    """Bring the book up to VERSION, after a backup of it; BookError if a newer program wrote it."""
    version = await _version(connection)
    if version > VERSION:
        raise BookError(
            f"this book was written by a newer Pailkeeper (schema {version}, this one knows "
            f"{VERSION}): update the program, nothing was changed"
        )
    if book is not None and 0 < version < VERSION:
        await asyncio.to_thread(backup.before_migration, book, version)
    # A table made anew is dropped: with references watched, each of its rows would be looked for
    # in all the others (https://sqlite.org/lang_altertable.html, "Making other kinds of changes").
    await connection.execute_fetchall("PRAGMA foreign_keys = OFF")
    lost = len(list(await connection.execute_fetchall("PRAGMA foreign_key_check")))
    for step in range(version, VERSION):
        await connection.executescript(
            f"BEGIN IMMEDIATE; {STEPS[step]}; PRAGMA user_version = {step + 1};"
        )
        if len(list(await connection.execute_fetchall("PRAGMA foreign_key_check"))) > lost:
            await connection.rollback()
            raise BookError(
                f"this book cannot be brought to schema {step + 1} without losing something: "
                "nothing was changed; go on with the program that you had"
            )
        await connection.commit()
    await connection.execute_fetchall("PRAGMA foreign_keys = ON")


async def refuse_foreign(connection: aiosqlite.Connection, path: Path | str) -> None:
    """BookError for a database that another program made: ours would write into it."""
    if await _version(connection) == 0 and list(
        await connection.execute_fetchall("SELECT 1 FROM sqlite_master LIMIT 1")
    ):
        raise BookError(
            f"{path} is the database of another program: nothing was changed; name another file"
        )


async def _version(connection: aiosqlite.Connection) -> int:
    rows = list(await connection.execute_fetchall("PRAGMA user_version"))
    return int(rows[0][0])
