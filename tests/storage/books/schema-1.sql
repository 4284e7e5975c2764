BEGIN TRANSACTION;
CREATE TABLE bin (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    name        TEXT NOT NULL,              -- as first said
    key         TEXT NOT NULL,              -- casefolded: one bin for one name
    UNIQUE (room, key)
) STRICT;
INSERT INTO "bin" VALUES(1,1,'shed','shed');
INSERT INTO "bin" VALUES(2,1,'yard','yard');
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
INSERT INTO "due" VALUES(1,1,1,'drain','2026-03-02','2026-03-04','2026-03-05',NULL,'2026-03-18',NULL,1,1773857580000,1);
INSERT INTO "due" VALUES(2,1,1,'seal','1','2026-03-16','2026-03-16',NULL,NULL,NULL,3,1772475120000,1);
INSERT INTO "due" VALUES(3,1,2,'drain','2026-03-02','2026-03-04','2026-03-05',NULL,'2026-03-18',NULL,0,1772474760000,0);
INSERT INTO "due" VALUES(4,1,2,'seal','1','2026-03-16','2026-03-16',NULL,'2026-03-18',NULL,0,1772474760000,0);
INSERT INTO "due" VALUES(5,1,NULL,'dry','8','2026-03-16','2026-04-01','ines','2026-03-18',NULL,0,1772474940000,0);
INSERT INTO "due" VALUES(6,1,1,'hand over','2026-03-06','2026-03-06','2026-03-06','bram',NULL,NULL,0,1772475000000,0);
INSERT INTO "due" VALUES(7,1,1,'bury','1','2026-03-12','2026-03-16',NULL,'2026-03-18',NULL,1,1773857580000,1);
INSERT INTO "due" VALUES(8,1,1,'plant','1','2026-04-01','2026-04-08',NULL,NULL,NULL,0,1773857580000,0);
INSERT INTO "due" VALUES(9,1,1,'drain','2026-03-18','2026-03-20','2026-03-21',NULL,NULL,NULL,0,1773857640000,0);
INSERT INTO "due" VALUES(10,1,1,'seal','2','2026-04-01','2026-04-01',NULL,NULL,NULL,0,1773857640000,0);
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
INSERT INTO "entry" VALUES(1,1,'open',1,1,1,1,'2026-03-02',1772474460000,1772474460000,'$e1','$e1',NULL,NULL,NULL,NULL,NULL,20.0,1,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,1);
INSERT INTO "entry" VALUES(2,1,'layer',1,1,1,1,'2026-03-02',1772474520000,1772474520000,'$first','$first',2.0,NULL,'{"meat": 0.7, "mixed": 0.30000000000000004}',0.7,1.3778801383066177522e+01,NULL,NULL,NULL,NULL,NULL,NULL,NULL,1772474640000,'$e4',NULL,2);
INSERT INTO "entry" VALUES(3,1,'layer',1,1,2,2,'2026-03-02',1772474580000,1772474580000,'$second','$second',1.0,NULL,'{"mixed": 1.0}',NULL,4.89428012927916178398e+00,NULL,NULL,NULL,NULL,NULL,NULL,NULL,1772474700000,'$e5',NULL,3);
INSERT INTO "entry" VALUES(4,1,'layer',1,1,1,1,'2026-03-02',1772474520000,1772474640000,'$first','$e4',3.0,NULL,'{"meat": 0.7, "mixed": 0.30000000000000004}',0.7,2.06682020745992680579e+01,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,2,2);
INSERT INTO "entry" VALUES(5,1,'layer',2,1,2,2,'2026-03-02',1772474760000,1772474760000,'$e6','$e6',NULL,4.0,'{"vegetable": 1.0}',0.0,8.90758983528807668506e+00,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,5);
INSERT INTO "entry" VALUES(6,1,'drain',1,1,1,1,'2026-03-02',1772474820000,1772474820000,'$e7','$e7',NULL,0.3,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,6);
INSERT INTO "entry" VALUES(7,1,'observe',1,1,1,1,'2026-03-02',1772474880000,1772474880000,'$e8','$e8',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,'["white_mould"]',21.0,NULL,NULL,NULL,NULL,NULL,7);
INSERT INTO "entry" VALUES(8,1,'batch',NULL,NULL,1,1,'2026-03-02',1772474940000,1772474940000,'$e9','$e9',2.0,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,8);
INSERT INTO "entry" VALUES(9,1,'offer',1,1,1,1,'2026-03-06',1772475000000,1772475000000,'$e10','$e10',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,2,NULL,NULL,NULL,9);
INSERT INTO "entry" VALUES(10,1,'accept',1,1,2,2,'2026-03-06',1772475060000,1772475060000,'$e11','$e11',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,10);
INSERT INTO "entry" VALUES(11,1,'seal',1,1,2,2,'2026-03-02',1772475120000,1772475120000,'$e12','$e12',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,11);
INSERT INTO "entry" VALUES(12,1,'bury',1,1,2,2,'2026-03-18',1773857580000,1773857580000,'$e13','$e13',NULL,NULL,NULL,NULL,NULL,NULL,NULL,'pear tree',NULL,NULL,NULL,NULL,NULL,NULL,NULL,12);
INSERT INTO "entry" VALUES(13,1,'layer',1,2,1,1,'2026-03-18',1773857640000,1773857640000,'$e14','$e14',2.0,NULL,'{"mixed": 1.0}',NULL,9.78856025855832356796e+00,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,13);
INSERT INTO "entry" VALUES(14,1,'layer',NULL,NULL,3,3,'2026-03-18',1773857700000,1773857700000,'$e15','$e15',1.0,NULL,'{"mixed": 1.0}',NULL,4.89428012927916178398e+00,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,14);
CREATE TABLE former (
    address     TEXT PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room
) STRICT;
INSERT INTO "former" VALUES('terminal',1);
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
INSERT INTO "inbox" VALUES(1,'terminal','$e1',1772474460000,NULL,'done','@ines:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(2,'terminal','$first',1772474520000,NULL,'done','@ines:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(3,'terminal','$second',1772474580000,NULL,'done','@bram:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(4,'terminal','$e4',1772474640000,NULL,'done','@ines:test','edited','$first',NULL);
INSERT INTO "inbox" VALUES(5,'terminal','$e5',1772474700000,NULL,'done','@bram:test','withdrawn','$second',NULL);
INSERT INTO "inbox" VALUES(6,'terminal','$e6',1772474760000,NULL,'done','@bram:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(7,'terminal','$e7',1772474820000,NULL,'done','@ines:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(8,'terminal','$e8',1772474880000,NULL,'done','@ines:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(9,'terminal','$e9',1772474940000,NULL,'done','@ines:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(10,'terminal','$e10',1772475000000,NULL,'done','@ines:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(11,'terminal','$e11',1772475060000,NULL,'done','@bram:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(12,'terminal','$e12',1772475120000,NULL,'done','@bram:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(13,'terminal','$e13',1773857580000,NULL,'done','@bram:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(14,'terminal','$e14',1773857640000,NULL,'done','@ines:test','said',NULL,NULL);
INSERT INTO "inbox" VALUES(15,'terminal','$e15',1773857700000,NULL,'done','@oda:test','said',NULL,NULL);
CREATE TABLE link (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    member      INTEGER REFERENCES member,  -- NULL: the whole group's
    token       TEXT NOT NULL UNIQUE,       -- the unguessable part of the address
    made_at     INTEGER NOT NULL            -- UTC ms
) STRICT;
INSERT INTO "link" VALUES(1,1,NULL,'the-group''s-token',1773857700000);
CREATE TABLE member (
    id          INTEGER PRIMARY KEY,
    room        INTEGER NOT NULL REFERENCES room,
    user        TEXT,                       -- Matrix user id; NULL for one only spoken of
    name        TEXT NOT NULL,              -- as shown in the room
    present     INTEGER NOT NULL DEFAULT 1, -- 0 after leaving
    UNIQUE (room, user)
) STRICT;
INSERT INTO "member" VALUES(1,1,'@ines:test','ines',0);
INSERT INTO "member" VALUES(2,1,'@bram:test','bram',0);
INSERT INTO "member" VALUES(3,1,'@oda:test','oda',0);
INSERT INTO "member" VALUES(4,1,'@mei:test','Mei',0);
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
INSERT INTO "outbox" VALUES(1,1,'re-$e1','reply','$e1','Opened the shed bin, 20 L, for everybody. First a thin bed of starter bran: 2 tablespoons (about 8 g).','[]',NULL,NULL,'- 30 mL for a bin of 18.9 L, and for 20 L by its floor: 31.2 mL
- 31.2 mL of bran at 0.245 g/mL weigh 7.64 g
- Starter on the floor of an empty bucket: 2 tablespoon (1 to 8), common practice: a US restaurant-scrap programme: one spoon; a US firm: half a cup
- Size of that bucket: 18.9 L (15 to 23), derived: 5 US gal
- Loose density of starter bran: 0.245 kg/L (0.2 to 0.5), derived: USDA SR28 20077: wheat bran, 58 g to the US cup',1772474460000,'re-$e1',1772474460000,NULL,NULL);
INSERT INTO "outbox" VALUES(2,1,'re-$first','reply','$first','3½ tablespoons (about 14 g) of starter on 2 kg in the shed bin: rich in meat, so three quarters more.
The shed bin is about 10 % full.','[]',NULL,NULL,'- 2 kg at 0.549 kg/L, loose, is 3.64 L
- 2.5 spoons of 15 mL on 6.25 cm in a 29 cm bucket are 9.08 mL to the litre
- 3.64 L x 9.08 mL x 1.7 = 56.2 mL
- 56.2 mL of bran at 0.245 g/mL weigh 13.8 g
- Level spoons on a layer of 5 to 7.5 cm: 2.5 tablespoons (2 to 3), common practice
- Inner width of an ordinary household bucket: 29 cm (26 to 31), common practice
- More if all of it is meat, fish, dairy, egg or fat: 100 % of the plain dose (50 to 100), common practice: guides say extra on meat; the size of the step is ours
- Loose density, meat: 0.59 kg/L (0.5 to 0.9), derived: USDA SR28, weight of one US cup: chicken 140 g
- Loose density, mixed scraps: 0.455 kg/L (0.235 to 0.6), derived: US EPA volume-to-weight factors, 2016: 3.8 lb/US gal, 396 lb/yd³',1772474520000,'re-$first',1772474520000,NULL,NULL);
INSERT INTO "outbox" VALUES(3,1,'re-$second','reply','$second','1½ tablespoons (about 5 g) of starter on 1 kg in the shed bin.
The shed bin is about 20 % full.','[]',NULL,NULL,'- 1 kg at 0.455 kg/L, loose, is 2.2 L
- 2.5 spoons of 15 mL on 6.25 cm in a 29 cm bucket are 9.08 mL to the litre
- 2.2 L x 9.08 mL = 20 mL
- 20 mL of bran at 0.245 g/mL weigh 4.89 g
- Level spoons on a layer of 5 to 7.5 cm: 2.5 tablespoons (2 to 3), common practice
- Inner width of an ordinary household bucket: 29 cm (26 to 31), common practice
- Loose density, mixed scraps: 0.455 kg/L (0.235 to 0.6), derived: US EPA volume-to-weight factors, 2016: 3.8 lb/US gal, 396 lb/yd³',1772474580000,'re-$second',1772474580000,NULL,NULL);
INSERT INTO "outbox" VALUES(4,1,'re-$e4','reply','$first','5½ tablespoons (about 21 g) of starter on 3 kg in the shed bin: rich in meat, so three quarters more.
The shed bin is about 25 % full.','[]',NULL,2,'- 3 kg at 0.549 kg/L, loose, is 5.46 L
- 2.5 spoons of 15 mL on 6.25 cm in a 29 cm bucket are 9.08 mL to the litre
- 5.46 L x 9.08 mL x 1.7 = 84.3 mL
- 84.3 mL of bran at 0.245 g/mL weigh 20.7 g
- Level spoons on a layer of 5 to 7.5 cm: 2.5 tablespoons (2 to 3), common practice
- Inner width of an ordinary household bucket: 29 cm (26 to 31), common practice
- More if all of it is meat, fish, dairy, egg or fat: 100 % of the plain dose (50 to 100), common practice: guides say extra on meat; the size of the step is ours
- Loose density, meat: 0.59 kg/L (0.5 to 0.9), derived: USDA SR28, weight of one US cup: chicken 140 g
- Loose density, mixed scraps: 0.455 kg/L (0.235 to 0.6), derived: US EPA volume-to-weight factors, 2016: 3.8 lb/US gal, 396 lb/yd³',1772474640000,'re-$e4',1772474640000,NULL,NULL);
INSERT INTO "outbox" VALUES(5,1,'re-$e5','reply','$second','Struck out: 1 kg in the shed bin.','[]',NULL,3,NULL,1772474700000,'re-$e5',1772474700000,NULL,NULL);
INSERT INTO "outbox" VALUES(6,1,'re-$e6','reply','$e6','2½ tablespoons (about 9 g) of starter on 4 L in the yard bin.
That begins the yard bin. How big is it? (“yard is 20 L”)','[]',NULL,NULL,'- 2.5 spoons of 15 mL on 6.25 cm in a 29 cm bucket are 9.08 mL to the litre
- 4 L x 9.08 mL = 36.3 mL
- 36.3 mL of bran at 0.245 g/mL weigh 8.91 g
- Level spoons on a layer of 5 to 7.5 cm: 2.5 tablespoons (2 to 3), common practice
- Inner width of an ordinary household bucket: 29 cm (26 to 31), common practice',1772474760000,'re-$e6',1772474760000,NULL,NULL);
INSERT INTO "outbox" VALUES(7,1,'ok-$e7','reaction','$e7','✅','[]',NULL,NULL,NULL,1772474820000,'ok-$e7',1772474820000,NULL,NULL);
INSERT INTO "outbox" VALUES(8,1,'re-$e8','reply','$e8','The shed bin: White growth is the ferment at work. Carry on.','[]',NULL,NULL,'- Nothing is wrong: 56% likely; the remedy is published: Footer, Bokashi Composting, 2013, ch. 4; booklets
- Air gets in: 23% likely; the remedy is published: Footer, Bokashi Composting, 2013, ch. 4 and 6
- Too cold for the ferment: 15 °C, common practice
- Too warm for the ferment: 35 °C, common practice',1772474880000,'re-$e8',1772474880000,NULL,NULL);
INSERT INTO "outbox" VALUES(9,1,'re-$e9','reply','$e9','Noted. Keep it airtight until Monday 16 March, then dry it in a thin layer.','[]',NULL,NULL,NULL,1772474940000,'re-$e9',1772474940000,NULL,NULL);
INSERT INTO "outbox" VALUES(10,1,'re-$e10','reply','$e10','Bram, will you take the shed bin Friday 6 March? Say “I''ll take it” or “not me”.','[]',NULL,NULL,NULL,1772475000000,'re-$e10',1772475000000,NULL,NULL);
INSERT INTO "outbox" VALUES(11,1,'re-$e11','reply','$e11','Bram takes the shed bin Friday 6 March; until then ines keeps it.
The shed bin: filling, 1 layer, 3 kg, about 20 % full.
Last drained today.
It holds about 3 kg. A full bin can weigh more than 15 kg: lift it in pairs or on a trolley.','[]',NULL,NULL,NULL,1772475060000,'re-$e11',1772475060000,NULL,NULL);
INSERT INTO "outbox" VALUES(12,1,'re-$e12','reply','$e12','The shed bin is sealed. Bury it Thursday 12 to Monday 16 March; drain it every two or three days until then.
If the lid bulges, let the gas out with your face turned away; never ferment in glass or under a screw cap.','[]',NULL,NULL,'- 2026-03-02 + 10 to 14 days = 2026-03-12 to 2026-03-16
- Days sealed, at room temperature: 14 d (10 to 14), published: Footer 2013 ch. 7; a US retailer says 10 to 12
- Days sealed after which a bin is late, at room temperature: 21 d (14 to 21), common practice: a US supplier: two to three weeks',1772475120000,'re-$e12',1772475120000,NULL,NULL);
INSERT INTO "outbox" VALUES(13,1,'digest-1-1773857520000','digest',NULL,'Today, or by Wednesday 1 April: dry the starter (ines).
Late, since Monday 16 March: bury the shed bin (bram); seal the yard bin (bram).
Late, since Thursday 5 March: drain the shed bin (bram) and the yard bin (bram).','["@ines:test", "@bram:test"]',NULL,NULL,NULL,1773857520000,'digest-1-1773857520000',1773857580000,NULL,NULL);
INSERT INTO "outbox" VALUES(14,1,'re-$e13','reply','$e13','The shed bin is in the ground. Plant there Wednesday 1 to Wednesday 8 April, later in cold soil.
Before digging deep, ask where pipes and cables run; cover well if animals dig.','[]',NULL,NULL,'- 2026-03-18 + 14 to 21 days = 2026-04-01 to 2026-04-08
- Days in warm soil before roots: 21 d (14 to 21), published: a New York booklet: two weeks; a UK master composter: two to three',1773857580000,'re-$e13',1773857580000,NULL,NULL);
INSERT INTO "outbox" VALUES(15,1,'re-$e14','reply','$e14','2½ tablespoons (about 10 g) of starter on 2 kg in the shed bin.
The shed bin begins a new run with this layer: a thin bed of starter under it first.','[]',NULL,NULL,'- 2 kg at 0.455 kg/L, loose, is 4.4 L
- 2.5 spoons of 15 mL on 6.25 cm in a 29 cm bucket are 9.08 mL to the litre
- 4.4 L x 9.08 mL = 39.9 mL
- 39.9 mL of bran at 0.245 g/mL weigh 9.79 g
- Level spoons on a layer of 5 to 7.5 cm: 2.5 tablespoons (2 to 3), common practice
- Inner width of an ordinary household bucket: 29 cm (26 to 31), common practice
- Loose density, mixed scraps: 0.455 kg/L (0.235 to 0.6), derived: US EPA volume-to-weight factors, 2016: 3.8 lb/US gal, 396 lb/yd³',1773857640000,'re-$e14',1773857640000,NULL,NULL);
INSERT INTO "outbox" VALUES(16,1,'re-$e15','reply','$e15','1½ tablespoons (about 5 g) of starter on 1 kg.
Which bin: the shed bin or the yard bin?','[]',NULL,NULL,'- 1 kg at 0.455 kg/L, loose, is 2.2 L
- 2.5 spoons of 15 mL on 6.25 cm in a 29 cm bucket are 9.08 mL to the litre
- 2.2 L x 9.08 mL = 20 mL
- 20 mL of bran at 0.245 g/mL weigh 4.89 g
- Level spoons on a layer of 5 to 7.5 cm: 2.5 tablespoons (2 to 3), common practice
- Inner width of an ordinary household bucket: 29 cm (26 to 31), common practice
- Loose density, mixed scraps: 0.455 kg/L (0.235 to 0.6), derived: US EPA volume-to-weight factors, 2016: 3.8 lb/US gal, 396 lb/yd³',1773857700000,'re-$e15',1773857700000,NULL,NULL);
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
INSERT INTO "question" VALUES(1,1,'$e15','oda','[]','bin',1773857700000,NULL);
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
INSERT INTO "room" VALUES(1,'!later:test',1772474460000,NULL,'Europe/Lisbon','metric','spoon','09:00','21:00','07:00','{}',1,'2026-03-18');
CREATE TABLE session (
    what        TEXT PRIMARY KEY,
    value       TEXT NOT NULL
) STRICT;
CREATE INDEX former_by_room ON former (room);
CREATE VIEW renamed AS
    SELECT room.address AS address, former.address AS before
    FROM former JOIN room ON room.id = former.room;
CREATE INDEX member_by_name ON member (room, name COLLATE NOCASE);
CREATE INDEX entry_by_run ON entry (bin, run);
CREATE INDEX entry_by_act ON entry (bin, act, id);
CREATE INDEX entry_by_writer ON entry (room, writer, id);
CREATE INDEX entry_by_event ON entry (room, event);
CREATE INDEX entry_by_cause ON entry (room, cause);
CREATE INDEX entry_by_root ON entry (root);
CREATE INDEX entry_by_striker ON entry (room, struck_by);
CREATE VIEW line AS
    SELECT entry.*, bin.name AS bin_name, doer.name AS member_name, teller.name AS writer_name,
        taker.name AS receiver_name
    FROM entry
    LEFT JOIN bin ON bin.id = entry.bin
    LEFT JOIN member AS doer ON doer.id = entry.member
    LEFT JOIN member AS teller ON teller.id = entry.writer
    LEFT JOIN member AS taker ON taker.id = entry.receiver;
CREATE UNIQUE INDEX due_once ON due (room, ifnull(bin, 0), what, occasion);
CREATE INDEX due_by_day ON due (room, gone, from_day);
CREATE INDEX due_open ON due (room, bin) WHERE gone = 0;
CREATE INDEX link_by_room ON link (room, member);
CREATE INDEX question_open ON question (room, settled_by, id);
CREATE INDEX inbox_by_about ON inbox (room, about) WHERE about IS NOT NULL;
CREATE INDEX inbox_by_state ON inbox (state, id) WHERE state IN ('waiting', 'parked');
CREATE INDEX outbox_waiting ON outbox (id)
    WHERE sent_as IS NULL AND refused IS NULL AND gathered IS NULL;
CREATE INDEX outbox_held ON outbox (room) WHERE gathered = 0;
CREATE INDEX outbox_by_target ON outbox (room, to_event);
CREATE INDEX outbox_by_event ON outbox (sent_as);
COMMIT;
PRAGMA user_version = 1;
