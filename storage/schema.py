"""The book's tables as one text: read this, and the steps in `migrations`, to know what is kept.

Versions shipped:
1  the first season
2  a long history is as quick to ask as a short one; absences; the shared calendar: dates of the
   members' own, what was named, the calendar's message, files; the communal bin: turns, names,
   powers
"""

VERSION = 2

SCHEMA = """
-- A room: one group, whose book no other room sees.
CREATE TABLE room (
    id          INTEGER PRIMARY KEY,
    address     TEXT NOT NULL UNIQUE,       -- Matrix room id, or 'terminal'
    joined_at   INTEGER NOT NULL,           -- UTC ms; nothing said before is acted upon
    left_at     INTEGER,                    -- UTC ms; NULL while the bot is in the room
    zone        TEXT NOT NULL,              -- IANA name
    units       TEXT NOT NULL CHECK (units IN ('metric', 'us', 'imperial')),
    habit       TEXT NOT NULL DEFAULT 'spoon' CHECK (habit IN ('spoon', 'weight')),
    digest_at   TEXT NOT NULL DEFAULT '09:00', -- local hour of the digest, HH:MM
    quiet_from  TEXT NOT NULL DEFAULT '21:00', -- quiet hours: nothing is said unasked from here
    quiet_to    TEXT NOT NULL DEFAULT '07:00', -- until here; the same twice: no quiet hours
    choices     TEXT NOT NULL DEFAULT '{}', -- JSON: figures of the craft the group chose itself
    reminds     INTEGER NOT NULL DEFAULT 1, -- 0 while the group wants no digests
    told_on     TEXT                        -- local day of the latest digest, told or found empty
) STRICT;

-- The addresses that a room had before it was upgraded: what is still heard there is its own.
CREATE TABLE former (
    address     TEXT PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room
) STRICT;
CREATE INDEX former_by_room ON former (room);
CREATE VIEW renamed AS
    SELECT room.address AS address, former.address AS before
    FROM former JOIN room ON room.id = former.room;

CREATE TABLE member (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    user        TEXT,                       -- Matrix user id; NULL for one only spoken of
    name        TEXT NOT NULL,              -- as shown in the room
    present     INTEGER NOT NULL DEFAULT 1, -- 0 after leaving
    UNIQUE (room, user)
) STRICT;
CREATE INDEX member_by_name ON member (room, name COLLATE NOCASE);

CREATE TABLE bin (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    name        TEXT NOT NULL,              -- as first said
    key         TEXT NOT NULL,              -- casefolded: one bin for one name
    UNIQUE (room, key)
) STRICT;

-- Entries are only ever added. A wrong one is struck out and may be replaced by a later one.
CREATE TABLE entry (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    act         TEXT NOT NULL,              -- the reading contract's word
    bin         INTEGER REFERENCES bin,
    run         INTEGER,                    -- 1, 2, ...: from the first layer until burial
    member      INTEGER REFERENCES member,  -- who did it
    writer      INTEGER REFERENCES member,  -- who said so
    on_day      TEXT,                       -- local day it was done, ISO 8601
    said_at     INTEGER NOT NULL,           -- UTC ms of the message
    written_at  INTEGER NOT NULL,           -- UTC ms of the cause
    event       TEXT NOT NULL,              -- the message it stands for
    cause       TEXT NOT NULL,              -- what made it: that message, its edit or a correction
    mass_kg     REAL,                       -- as said
    volume_l    REAL,                       -- as said
    materials   TEXT,                       -- JSON: kind -> share
    rich        REAL,                       -- share of meat, fish, dairy, egg, bone, oil: 0 to 1
    starter_g   REAL,                       -- starter the answer advised
    capacity_l  REAL,
    shared      INTEGER,                    -- 1 for a communal bin
    place       TEXT,
    signs       TEXT,                       -- JSON: the contract's signs
    celsius     REAL,
    ph          REAL,
    receiver    INTEGER REFERENCES member,  -- to whom a bin is offered
    struck_at   INTEGER,                    -- UTC ms; NULL while it stands
    struck_by   TEXT,                       -- the event that struck it out
    replaces    INTEGER REFERENCES entry,   -- the struck entry it stands in for
    root        INTEGER                     -- the first of the entries that replaced each other
) STRICT;
CREATE INDEX entry_by_run ON entry (bin, run);
CREATE INDEX entry_by_act ON entry (bin, act, id);
CREATE INDEX entry_by_writer ON entry (room, writer, id);
CREATE INDEX entry_by_event ON entry (room, event);
CREATE INDEX entry_by_cause ON entry (room, cause);
CREATE INDEX entry_by_root ON entry (root);
CREATE INDEX entry_by_striker ON entry (room, struck_by);

-- Entries with the names behind their numbers.
CREATE VIEW line AS
    SELECT entry.*, bin.name AS bin_name, doer.name AS member_name, teller.name AS writer_name,
        taker.name AS receiver_name
    FROM entry
    LEFT JOIN bin ON bin.id = entry.bin
    LEFT JOIN member AS doer ON doer.id = entry.member
    LEFT JOIN member AS teller ON teller.id = entry.writer
    LEFT JOIN member AS taker ON taker.id = entry.receiver;

-- What is to be done when, made anew from a bin's entries whenever they change. One that no longer
-- follows from them is kept as gone: calendars are told so, and it may come back by a correction.
CREATE TABLE due (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    bin         INTEGER REFERENCES bin,     -- NULL: of the starter
    what        TEXT NOT NULL,              -- drain, seal, bury, plant, hand over, dry
    occasion    TEXT NOT NULL,              -- which draining, which run: one due from the next
    from_day    TEXT NOT NULL,              -- local days, ISO 8601
    to_day      TEXT NOT NULL,
    to_member   TEXT,                       -- who takes a bin that changes hands, or dries starter
    told_on     TEXT,                       -- local day of the latest digest that named it
    put_off     TEXT,                       -- local day before which no digest names it
    sequence    INTEGER NOT NULL DEFAULT 0, -- how often its days changed, or it went or came back
    changed_at  INTEGER NOT NULL,           -- UTC ms of the latest such change
    gone        INTEGER NOT NULL DEFAULT 0  -- 1: done, or no longer asked for
) STRICT;
CREATE UNIQUE INDEX due_once ON due (room, ifnull(bin, 0), what, occasion);
CREATE INDEX due_by_day ON due (room, gone, from_day);
CREATE INDEX due_open ON due (room, bin) WHERE gone = 0;

-- Addresses under which the calendar and the board can be read by whoever knows them.
CREATE TABLE link (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    member      INTEGER REFERENCES member,  -- NULL: the whole group's
    token       TEXT NOT NULL UNIQUE,       -- the unguessable part of the address
    made_at     INTEGER NOT NULL            -- UTC ms
) STRICT;
CREATE INDEX link_by_room ON link (room, member);

-- A question the bot asked before writing down what it guessed.
CREATE TABLE question (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    event       TEXT NOT NULL,              -- the message it is about
    sender      TEXT NOT NULL,
    guess       TEXT NOT NULL,              -- JSON: the acts as the contract writes them
    lacks       TEXT NOT NULL,              -- what would settle it: 'yes', 'bin'
    asked_at    INTEGER NOT NULL,
    settled_by  TEXT                        -- the event that answered or withdrew it
) STRICT;
CREATE INDEX question_open ON question (room, settled_by, id);

-- Every event seen, once. The words stay only until they have been worked through.
CREATE TABLE inbox (
    id          INTEGER PRIMARY KEY,
    room        TEXT NOT NULL,              -- address
    event       TEXT NOT NULL,
    at          INTEGER NOT NULL,           -- UTC ms, by the sender's homeserver
    raw         TEXT,                       -- JSON of the event; NULL once worked through
    state       TEXT NOT NULL CHECK (state IN ('waiting', 'parked', 'done', 'failed')),
    sender      TEXT,
    kind        TEXT,                       -- said, edited, withdrawn, reacted, moved, other
    about       TEXT,                       -- the event it replies to, edits, withdraws or marks
    mark        TEXT,                       -- the sign of a reaction
    UNIQUE (room, event)
) STRICT;
CREATE INDEX inbox_by_about ON inbox (room, about) WHERE about IS NOT NULL;
CREATE INDEX inbox_by_state ON inbox (state, id) WHERE state IN ('waiting', 'parked');

-- What the bot says: stored with its cause, sent afterwards under an id that makes resending safe.
CREATE TABLE outbox (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    tx_id       TEXT NOT NULL UNIQUE,
    kind        TEXT NOT NULL CHECK
                (kind IN ('reply', 'reaction', 'reminder', 'digest', 'greeting')),
    to_event    TEXT,                       -- the message answered or marked
    body        TEXT NOT NULL,              -- plain words, or the sign of a reaction
    mentions    TEXT NOT NULL DEFAULT '[]', -- JSON: user ids
    thread      TEXT,                       -- the thread it belongs in
    rewrites    INTEGER REFERENCES outbox,  -- the answer it takes the place of
    why         TEXT,                       -- the arithmetic behind it, its sources and standing
    made_at     INTEGER NOT NULL,
    sent_as     TEXT,                       -- event id, once the homeserver has it
    sent_at     INTEGER,
    refused     TEXT,                       -- why the homeserver will never take it
    gathered    INTEGER                     -- not said by itself: 0 until told together with others
                                            -- in the message of this number
) STRICT;
CREATE INDEX outbox_waiting ON outbox (id)
    WHERE sent_as IS NULL AND refused IS NULL AND gathered IS NULL;
CREATE INDEX outbox_held ON outbox (room) WHERE gathered = 0;
CREATE INDEX outbox_by_target ON outbox (room, to_event);
CREATE INDEX outbox_by_event ON outbox (sent_as);

-- Where the book stands: 'sync_token' of the Matrix account, 'played_until' of a replayed log,
-- 'address' under which calendars and boards are served.
CREATE TABLE session (
    what        TEXT PRIMARY KEY,
    value       TEXT NOT NULL
) STRICT;
"""

_COUNT = """
    INSERT INTO tally
        SELECT {row}.room, ifnull({row}.bin, 0), ifnull({row}.member, 0),
            iif({row}.mass_kg IS NULL, ifnull({row}.materials, ''), ''),
            {sign}1, {sign}ifnull({row}.mass_kg, 0),
            {sign}iif({row}.mass_kg IS NULL, ifnull({row}.volume_l, 0), 0)
        {source} WHERE {row}.act = 'layer' AND {row}.struck_at IS NULL
        ON CONFLICT DO UPDATE SET layers = layers + excluded.layers,
            mass_kg = mass_kg + excluded.mass_kg, volume_l = volume_l + excluded.volume_l;
    INSERT INTO dosed
        SELECT {row}.room, ifnull((SELECT max(stock.id) FROM entry AS stock
            WHERE stock.room = {row}.room AND stock.act = 'stock' AND stock.bin IS NULL
            AND stock.id < {row}.id), 0), {sign}{row}.starter_g
        {source} WHERE {row}.act = 'layer' AND {row}.struck_at IS NULL
            AND {row}.starter_g IS NOT NULL
        ON CONFLICT DO UPDATE SET grams = grams + excluded.grams;
"""
_IN = _COUNT.format(row="NEW", sign="+", source="")
_OUT = _COUNT.format(row="OLD", sign="-", source="")

SUMS = f"""
-- Sums over the entries that stand, kept by SQLite itself whenever an entry changes.
-- What was put in: by whom, into which bin and (where only a volume was said) of what.
CREATE TABLE tally (
    room        INTEGER NOT NULL,
    bin         INTEGER NOT NULL,           -- 0: it is not known into which
    member      INTEGER NOT NULL,
    materials   TEXT NOT NULL,              -- JSON as in the entry; '' for what was weighed
    layers      INTEGER NOT NULL,
    mass_kg     REAL NOT NULL,              -- of the layers that were weighed
    volume_l    REAL NOT NULL,              -- of the others
    PRIMARY KEY (room, bin, member, materials)
) STRICT, WITHOUT ROWID;

-- The doses of starter since each count of what is left of it.
CREATE TABLE dosed (
    room        INTEGER NOT NULL,
    stock       INTEGER NOT NULL,           -- the entry of the count; 0 before the first one
    grams       REAL NOT NULL,
    PRIMARY KEY (room, stock)
) STRICT, WITHOUT ROWID;

-- What is asked for, found without looking at the rest of a long history. No index is for one act
-- alone: SQLite would plan a question about `act = ?` anew whenever it is asked about another act.
DROP INDEX entry_by_run;
DROP INDEX entry_by_act;
DROP INDEX question_open;
CREATE INDEX entry_of_run ON entry (bin, run, on_day, said_at, id)
    WHERE bin IS NOT NULL AND struck_at IS NULL;
CREATE INDEX entry_by_day ON entry (bin, on_day, said_at, id)
    WHERE bin IS NOT NULL AND run IS NOT NULL AND struck_at IS NULL;
CREATE INDEX entry_by_act ON entry (bin, act, id) WHERE bin IS NOT NULL AND struck_at IS NULL;
CREATE INDEX entry_by_act_and_day ON entry (bin, act, on_day, id)
    WHERE bin IS NOT NULL AND struck_at IS NULL;
CREATE INDEX entry_of_room ON entry (room, act, on_day, starter_g) WHERE struck_at IS NULL;
CREATE INDEX entry_of_starter ON entry (room, act, id) WHERE bin IS NULL;
CREATE INDEX entry_of_member ON entry (member, act, on_day) WHERE struck_at IS NULL;
CREATE INDEX entry_of_member_and_bin ON entry (member, act, id)
    WHERE bin IS NOT NULL AND struck_at IS NULL;
CREATE INDEX entry_on_size ON entry (bin, act, id) WHERE capacity_l > 0 AND struck_at IS NULL;
CREATE INDEX entry_on_sharing ON entry (bin, act, id)
    WHERE shared IS NOT NULL AND struck_at IS NULL;
CREATE INDEX question_of ON question (room, sender, id) WHERE settled_by IS NULL;
CREATE INDEX question_about ON question (room, event, id) WHERE settled_by IS NULL;
CREATE INDEX inbox_said ON inbox (room, id) WHERE kind = 'said';
DROP INDEX inbox_by_state;
CREATE INDEX inbox_waiting ON inbox (state, id) WHERE state = 'waiting';
CREATE INDEX inbox_waiting_in ON inbox (room, at) WHERE state = 'waiting';
CREATE INDEX inbox_parked ON inbox (at) WHERE state = 'parked';
CREATE INDEX outbox_said ON outbox (room, id) WHERE kind != 'reaction';
CREATE INDEX outbox_unsent ON outbox (room, id)
    WHERE sent_as IS NULL AND refused IS NULL AND gathered IS NULL;
CREATE INDEX due_changed ON due (room, changed_at);

CREATE TRIGGER entry_added AFTER INSERT ON entry BEGIN {_IN} END;
CREATE TRIGGER entry_taken AFTER DELETE ON entry BEGIN {_OUT} END;
CREATE TRIGGER entry_changed
    AFTER UPDATE OF room, act, bin, member, mass_kg, volume_l, materials, starter_g, struck_at
    ON entry BEGIN {_OUT} {_IN} END;
{_COUNT.format(row="line", sign="+", source="FROM entry AS line")}
"""
