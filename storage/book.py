"""The book's questions, bound to one room so that no answer can cross rooms."""

import json
import sqlite3
from collections.abc import Iterable, Sequence
from datetime import date

from storage import dues, words
from storage.database import Database
from storage.moments import from_ms, to_day, to_hour
from storage.rows import Bin, Due, Entry, Facts, Member, Question, Room

# A bin that was retired is in use again once it is opened, somebody takes it or scraps go in.
_BINS_IN_USE = """
SELECT * FROM bin WHERE room = ?
    AND EXISTS (SELECT 1 FROM entry WHERE entry.bin = bin.id AND struck_at IS NULL)
    AND NOT EXISTS (SELECT 1 FROM entry AS gone
        WHERE gone.bin = bin.id AND gone.act = 'retire' AND gone.struck_at IS NULL
            AND NOT EXISTS (SELECT 1 FROM entry AS again
                WHERE again.bin = bin.id AND again.act IN ('open', 'layer', 'accept')
                    AND again.struck_at IS NULL AND again.root > gone.root))
ORDER BY id
"""


class Book:
    """What one room's entries say."""

    def __init__(self, db: Database, room: Room, aside: Iterable[Entry] = ()) -> None:
        self.db = db
        self.room = room
        self._aside = frozenset(entry.id for entry in aside)

    @property
    def is_whole(self) -> bool:
        """Whether no entries are set aside."""
        return not self._aside

    def without(self, entries: Iterable[Entry]) -> "Book":
        """The book as it is once these entries are struck out."""
        return Book(self.db, self.room, entries)

    async def bins(self) -> list[Bin]:
        """Every bin in use: with an entry that stands, and not retired since; oldest first."""
        rows = await self.db.rows(_BINS_IN_USE, (self.room.id,))
        return [Bin(id=row["id"], name=row["name"]) for row in rows]

    async def bin(self, name: str) -> Bin | None:
        """The bin of that name, or once of that name, in any case, as `words.name` lets it in."""
        key = words.name(name).casefold()
        row = await self.db.row("SELECT * FROM bin WHERE room = ? AND key = ?", (self.room.id, key))
        if row:
            return Bin(id=row["id"], name=row["name"])
        return (await self.former_names()).get(key)

    async def former_names(self) -> dict[str, Bin]:
        """Bins by the names that they had before, casefolded; none that another has now."""
        rows = await self.db.rows(
            "SELECT id, name, key, called AS before FROM bin WHERE room = ?1 "
            "AND called IS NOT NULL UNION ALL "
            "SELECT bin.id, name, key, words FROM entry JOIN bin ON bin.id = entry.bin "
            "WHERE entry.room = ?1 AND act = 'rename' AND struck_at IS NULL",
            (self.room.id,),
        )
        if not rows:
            return {}
        present = await self.db.rows("SELECT key FROM bin WHERE room = ?", (self.room.id,))
        taken = {row["key"] for row in present}
        before = {row["before"].casefold(): Bin(id=row["id"], name=row["name"]) for row in rows}
        return {name: bin for name, bin in before.items() if name not in taken}

    async def members(self) -> list[Member]:
        """Everybody known in the room."""
        rows = await self.db.rows(
            "SELECT * FROM member WHERE room = ? ORDER BY id", (self.room.id,)
        )
        return [
            Member(id=r["id"], user=r["user"], name=r["name"], present=bool(r["present"]))
            for r in rows
        ]

    async def name_of(self, user: str) -> str | None:
        """The name shown of a user id."""
        row = await self.db.row(
            "SELECT name FROM member WHERE room = ? AND user = ?", (self.room.id, user)
        )
        return str(row["name"]) if row else None

    async def present_run(self, bin: Bin) -> int:
        """The number of a bin's present (or last) run; 0 before its first entry."""
        row = await self.db.row(
            "SELECT run FROM entry WHERE bin = ? AND run IS NOT NULL AND struck_at IS NULL "
            "ORDER BY run DESC LIMIT 1",
            (bin.id,),
        )
        return int(row["run"]) if row else 0

    async def run(self, bin: Bin, run: int) -> list[Entry]:
        """The entries that stand in one run of a bin, oldest first."""
        return self._entries(
            await self.db.rows(
                "SELECT * FROM line WHERE bin = ? AND run = ? AND struck_at IS NULL "
                "ORDER BY on_day, said_at, id",
                (bin.id, run),
            )
        )

    async def history(self, bin: Bin) -> list[Entry]:
        """All entries of a bin that stand, oldest first."""
        return self._entries(
            await self.db.rows(
                "SELECT * FROM line WHERE bin = ? AND struck_at IS NULL "
                "ORDER BY on_day, said_at, id",
                (bin.id,),
            )
        )

    async def unnumbered(self, bin: Bin) -> list[Entry]:
        """The entries of a bin that have not been put into a run yet."""
        return self._entries(
            await self.db.rows(
                "SELECT * FROM line WHERE bin = ? AND run IS NULL AND struck_at IS NULL",
                (bin.id,),
            )
        )

    async def latest(self, bin: Bin, act: str) -> Entry | None:
        """The last entry of one act written about a bin that stands."""
        row = await self.db.row(
            "SELECT * FROM line WHERE bin = ? AND act = ? AND struck_at IS NULL "
            "ORDER BY id DESC LIMIT 1",
            (bin.id, act),
        )
        return _entry(row) if row else None

    async def latest_batch(self, act: str) -> Entry | None:
        """The last entry that stands of one act on the starter: a batch mixed, or a count."""
        row = await self.db.row(
            "SELECT * FROM line WHERE bin IS NULL AND act = ? AND room = ? AND struck_at IS NULL "
            "ORDER BY id DESC LIMIT 1",
            (act, self.room.id),
        )
        return _entry(row) if row else None

    async def latest_by(self, bin: Bin, act: str, day: date) -> Entry | None:
        """The last entry of one act whose day has come by `day`."""
        row = await self.db.row(
            "SELECT * FROM line WHERE bin = ? AND act = ? AND on_day <= ? AND struck_at IS NULL "
            "ORDER BY on_day DESC, id DESC LIMIT 1",
            (bin.id, act, day.isoformat()),
        )
        return _entry(row) if row else None

    async def hands(self, bin: Bin) -> list[str]:
        """Who had a hand in a bin, the latest first."""
        rows = await self.db.rows(
            "SELECT member_name FROM line WHERE bin = ? AND struck_at IS NULL "
            "AND member IS NOT NULL GROUP BY member ORDER BY max(id) DESC",
            (bin.id,),
        )
        return [row["member_name"] for row in rows]

    async def dated(self) -> list[Entry]:
        """The reminders that members set and that stand, oldest first."""
        return self._entries(
            await self.db.rows(
                "SELECT * FROM line WHERE room = ? AND act = 'date' AND struck_at IS NULL "
                "ORDER BY id",
                (self.room.id,),
            )
        )

    async def dosed_since(self, entry: Entry) -> float:
        """The starter (g) that went into bins by what was written down after an entry."""
        row = await self.db.row(
            "SELECT sum(starter_g) AS grams FROM entry INDEXED BY entry_by_dose "
            "WHERE room = ? AND id > ? AND starter_g IS NOT NULL AND struck_at IS NULL",
            (self.room.id, entry.id),
        )
        return float(row["grams"] or 0.0) if row else 0.0

    async def doses(self, since: date) -> list[tuple[date, float]]:
        """The starter (g) that went into bins on each day from `since` on."""
        rows = await self.db.rows(
            "SELECT on_day, sum(starter_g) AS grams FROM entry "
            "INDEXED BY entry_by_dose_day WHERE room = ? AND on_day >= ? "
            "AND starter_g IS NOT NULL AND struck_at IS NULL GROUP BY on_day ORDER BY on_day",
            (self.room.id, since.isoformat()),
        )
        return [(date.fromisoformat(row["on_day"]), float(row["grams"])) for row in rows]

    async def openings(self, bin: Bin) -> list[Entry]:
        """What was said of a bin itself (its size, whether it is shared), oldest first."""
        return self._entries(
            await self.db.rows(
                "SELECT * FROM line WHERE bin = ? AND act = 'open' AND struck_at IS NULL "
                "ORDER BY id",
                (bin.id,),
            )
        )

    async def told(self, question: str, values: Sequence[object]) -> list[Entry]:
        """The entries that a question to `line` finds, without those set aside."""
        return self._entries(await self.db.rows(question, values))

    async def entry(self, id: int) -> Entry | None:
        """The entry of that number."""
        row = await self.db.row("SELECT * FROM line WHERE id = ? AND room = ?", (id, self.room.id))
        return _entry(row) if row else None

    async def of_event(self, event: str) -> list[Entry]:
        """The entries that stand for a message."""
        return self._entries(
            await self.db.rows(
                "SELECT * FROM line WHERE room = ? AND event = ? AND struck_at IS NULL ORDER BY id",
                (self.room.id, event),
            )
        )

    async def touched_by(self, event: str) -> list[Entry]:
        """Every entry that an event made or struck out, struck ones too."""
        return self._entries(
            await self.db.rows(
                "SELECT * FROM line WHERE room = ?1 AND cause = ?2 UNION "
                "SELECT * FROM line WHERE room = ?1 AND struck_by = ?2 ORDER BY id",
                (self.room.id, event),
            )
        )

    async def edits_of(self, event: str) -> list[str]:
        """The edits that a message had."""
        rows = await self.db.rows(
            "SELECT event FROM inbox WHERE room = ? AND about = ? AND kind = 'edited'",
            (self.room.address, event),
        )
        return [row["event"] for row in rows]

    async def chain(self, root: int) -> list[Entry]:
        """The entries that replaced each other, the first one first."""
        return self._entries(
            await self.db.rows("SELECT * FROM line WHERE root = ? ORDER BY id", (root,))
        )

    async def last_of_event(self, event: str) -> list[Entry]:
        """The last entry of each chain of a message, struck or not."""
        return self._entries(
            await self.db.rows(
                "SELECT * FROM line WHERE id IN (SELECT max(id) FROM entry "
                "WHERE room = ? AND event = ? GROUP BY root) ORDER BY id",
                (self.room.id, event),
            )
        )

    async def is_withdrawn(self, event: str) -> bool:
        """Whether a message or mark was taken back, by its writer or a moderator."""
        return bool(
            await self.db.row(
                "SELECT 1 FROM inbox WHERE kind = 'withdrawn' AND about = ?2 AND "
                "room IN (SELECT ?1 UNION ALL SELECT before FROM renamed WHERE address = ?1)",
                (self.room.address, event),
            )
        )

    async def withdraws(self, event: str) -> bool:
        """Whether an event is itself the taking back of another."""
        return bool(
            await self.db.row(
                "SELECT 1 FROM inbox WHERE kind = 'withdrawn' AND event = ?2 AND "
                "room IN (SELECT ?1 UNION ALL SELECT before FROM renamed WHERE address = ?1)",
                (self.room.address, event),
            )
        )

    async def last_by(self, member: str, *, but: Iterable[str] = ()) -> Entry | None:
        """The last entry that stands of what a member wrote down, those acts left out."""
        row = await self.db.row(
            "SELECT * FROM line WHERE room = ? AND writer_name = ? AND struck_at IS NULL "
            "AND act NOT IN (SELECT value FROM json_each(?)) ORDER BY id DESC LIMIT 1",
            (self.room.id, member, json.dumps(list(but))),
        )
        return _entry(row) if row else None

    async def last_layer_by(self, member: str) -> Entry | None:
        """The last layer that a member put into a bin."""
        row = await self.db.row(
            "SELECT * FROM line WHERE room = ? AND member_name = ? AND act = 'layer' "
            "AND bin IS NOT NULL AND struck_at IS NULL ORDER BY id DESC LIMIT 1",
            (self.room.id, member),
        )
        return _entry(row) if row else None

    async def entries(self) -> list[Entry]:
        """Every entry ever written, struck ones too, in order of writing."""
        return self._entries(
            await self.db.rows("SELECT * FROM line WHERE room = ? ORDER BY id", (self.room.id,))
        )

    async def dues(self, until: date | None = None) -> list[Due]:
        """What is to be done, soonest first; with `until` only what begins by that day."""
        return await dues.open_ones(self.db, self.room, until)

    async def question(self, sender: str) -> Question | None:
        """The last question asked of a sender that is still open."""
        row = await self.db.row(
            "SELECT * FROM question WHERE room = ? AND sender = ? AND settled_by IS NULL "
            "ORDER BY id DESC LIMIT 1",
            (self.room.id, sender),
        )
        return _question(row) if row else None

    async def question_about(self, event: str) -> Question | None:
        """The question that is still open about a message."""
        row = await self.db.row(
            "SELECT * FROM question WHERE room = ? AND event = ? AND settled_by IS NULL "
            "ORDER BY id DESC LIMIT 1",
            (self.room.id, event),
        )
        return _question(row) if row else None

    def _entries(self, rows: Sequence[sqlite3.Row]) -> list[Entry]:
        return [_entry(row) for row in rows if row["id"] not in self._aside]


def _question(row: sqlite3.Row) -> Question:
    return Question(
        id=row["id"],
        event=row["event"],
        sender=row["sender"],
        guess=row["guess"],
        lacks=row["lacks"],
        asked_at=from_ms(row["asked_at"]),
    )


def _entry(row: sqlite3.Row) -> Entry:
    return Entry(
        id=row["id"],
        act=row["act"],
        bin=Bin(id=row["bin"], name=row["bin_name"]) if row["bin"] else None,
        run=row["run"],
        member=row["member_name"],
        writer=row["writer_name"],
        on=to_day(row["on_day"]),
        said_at=from_ms(row["said_at"]),
        event=row["event"],
        cause=row["cause"],
        facts=Facts(
            mass_kg=row["mass_kg"],
            volume_l=row["volume_l"],
            materials=json.loads(row["materials"]) if row["materials"] else None,
            rich=row["rich"],
            starter_g=row["starter_g"],
            capacity_l=row["capacity_l"],
            shared=None if row["shared"] is None else bool(row["shared"]),
            place=row["place"],
            signs=tuple(json.loads(row["signs"])) if row["signs"] else (),
            celsius=row["celsius"],
            ph=row["ph"],
            words=row["words"],
            days=row["days"],
            hour=to_hour(row["hour"]),
            rule=row["rule"],
        ),
        receiver=row["receiver_name"],
        until=to_day(row["until_day"]),
        written_at=from_ms(row["written_at"]),
        struck_at=from_ms(row["struck_at"]) if row["struck_at"] is not None else None,
        struck_by=row["struck_by"],
        replaces=row["replaces"],
        root=row["root"],
    )
