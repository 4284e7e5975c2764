"""The book's questions, bound to one room so that no answer can cross rooms."""

import json
from collections.abc import Iterable, Sequence
from datetime import date, datetime

from storage import dues, inbox
from storage.database import Database
from storage.desk import Values
from storage.lines import LINES, entry_of, question_of
from storage.moments import to_day
from storage.roster import Roster
from storage.rows import About, Bin, Due, Entry, Question, Room

ABOUT = """
SELECT
    (SELECT capacity_l FROM entry INDEXED BY entry_on_size
        WHERE bin = ?1 AND act = 'open' AND struck_at IS NULL AND capacity_l > 0
        AND id NOT IN (SELECT value FROM json_each(?2)) ORDER BY id DESC LIMIT 1),
    (SELECT shared FROM entry INDEXED BY entry_on_sharing
        WHERE bin = ?1 AND act = 'open' AND struck_at IS NULL AND shared IS NOT NULL
        AND id NOT IN (SELECT value FROM json_each(?2)) ORDER BY id DESC LIMIT 1)
"""
"""The size of a bin, and whether it is shared, from its openings that stand."""

LATELY = 100
"""Of so many entries of a bin it is said whose they are."""

_ASIDE = "(SELECT value FROM json_each(?))"
_ACT = "act = (SELECT ?)"
"""Asked so, SQLite has no plan of its own for each act, which it would make anew every time."""

LAST_QUESTIONS = 500
"""Questions asked, in all rooms, behind which the answer to one is not changed any more."""

LATEST_QUESTIONS = 100
"""Questions asked, in all rooms, among which one of the last hour is looked for."""


class Book(Roster):
    """What one room's entries say."""

    def __init__(self, db: Database, room: Room, aside: Iterable[Entry] = ()) -> None:
        super().__init__(db, room)
        self.aside = frozenset(entry.id for entry in aside)
        """The entries, by id, that are set aside."""

    @property
    def is_whole(self) -> bool:
        """Whether no entries are set aside."""
        return not self.aside

    def without(self, entries: Iterable[Entry]) -> "Book":
        """The book as it is once these entries are struck out."""
        book = Book(self.db, self.room, entries)
        book.aside |= self.aside
        return book

    async def present_run(self, bin: Bin) -> int:
        """The number of a bin's present (or last) run; 0 before its first entry."""

        async def ask() -> int:
            row = await self.db.row(
                "SELECT run FROM entry WHERE bin = ? AND run IS NOT NULL AND struck_at IS NULL "
                "ORDER BY run DESC LIMIT 1",
                (bin.id,),
            )
            return int(row["run"]) if row else 0

        return await self.known("entry", ("run", bin.id), ask)

    def note_run(self, bin: Bin, run: int) -> None:
        """What `present_run` finds now that its entries are numbered."""
        self.db.note(self.room.id, "entry", ("run", bin.id), run)

    async def since_run(self, bin: Bin, run: int) -> Sequence[Entry]:
        """The entries of a bin that stand from a run on, oldest first."""

        key = "since", bin.id, run, self.aside

        async def none() -> list[Entry]:
            return []

        async def ask() -> Sequence[Entry]:
            # Entries are only ever added: what was read stays so until one of them is rewritten.
            read = await self.known("bin member entry:rewritten", key, none)
            read += await self._lines(
                "WHERE bin = ? AND run >= ? AND struck_at IS NULL AND +id > ?",
                (bin.id, run, max((entry.id for entry in read), default=0)),
            )
            return sorted(read, key=_in_run)

        return await self.known("bin member entry", key, ask)

    async def run(self, bin: Bin, run: int) -> list[Entry]:
        """The entries that stand in one run of a bin, oldest first."""
        return await self._lines(
            "WHERE bin = ? AND run = ? AND struck_at IS NULL ORDER BY on_day, said_at, id",
            (bin.id, run),
        )

    async def run_before(self, bin: Bin, day: date) -> int:
        """The run of the last entry of a bin from before a day; 0 where there is none."""
        row = await self.db.row(
            "SELECT run FROM entry WHERE bin = ? AND on_day < ? AND run IS NOT NULL "
            "AND struck_at IS NULL ORDER BY on_day DESC, said_at DESC, id DESC LIMIT 1",
            (bin.id, day.isoformat()),
        )
        return int(row["run"]) if row else 0

    async def buried(self, bin: Bin, run: int) -> tuple[date | None, float | None]:
        """The day on which a run of a bin was buried, and the soil's temperature (°C) if said."""

        async def ask() -> tuple[date | None, float | None]:
            row = await self.db.row(
                "SELECT on_day, celsius FROM entry WHERE bin = ? AND run = ? AND act = 'bury' "
                "AND struck_at IS NULL ORDER BY on_day, said_at, id LIMIT 1",
                (bin.id, run),
            )
            return (to_day(row["on_day"]), row["celsius"]) if row else (None, None)

        return await self.known("entry:bury", ("buried", bin.id, run), ask)

    async def latest(self, bin: Bin, act: str) -> Entry | None:
        """The last entry of one act written about a bin that stands."""

        async def ask() -> Entry | None:
            return await self._line(
                f"WHERE bin = ? AND {_ACT} AND struck_at IS NULL ORDER BY id DESC LIMIT 1",
                (bin.id, act),
            )

        return await self.known(f"bin member entry:{act}", ("latest", bin.id), ask)

    async def latest_batch(self, act: str) -> Entry | None:
        """The last entry that stands of one act on the starter: a batch mixed, or a count."""

        async def ask() -> Entry | None:
            return await self._line(
                f"WHERE bin IS NULL AND {_ACT} AND room = ? AND id NOT IN {_ASIDE} "
                "AND struck_at IS NULL ORDER BY id DESC LIMIT 1",
                (act, self.room.id, json.dumps(list(self.aside))),
            )

        return await self.known(f"member entry:{act}", ("latest batch", self.aside), ask)

    async def about(self, bin: Bin) -> About:
        """What is known of a bin itself: the last that was said of each thing."""

        async def ask() -> About:
            row = await self.db.row(ABOUT, (bin.id, json.dumps(list(self.aside))))
            assert row is not None
            capacity_l, shared = row
            return About(capacity_l=capacity_l, shared=bool(shared))

        return await self.known("entry:open", ("about", bin.id, self.aside), ask)

    async def history(self, bin: Bin) -> list[Entry]:
        """All entries of a bin that stand, oldest first."""
        return await self._lines(
            "WHERE bin = ? AND struck_at IS NULL ORDER BY on_day, said_at, id", (bin.id,)
        )

    async def hands(self, bin: Bin) -> list[str]:
        """Who had a hand in a bin of late, the latest first."""
        rows = await self.db.rows(
            "SELECT member_name FROM (SELECT id, member, member_name FROM line WHERE bin = ? "
            "AND run IS NOT NULL AND struck_at IS NULL AND member IS NOT NULL "
            "ORDER BY on_day DESC, said_at DESC, id DESC LIMIT ?) "
            "GROUP BY member ORDER BY max(id) DESC",
            (bin.id, LATELY),
        )
        return [row["member_name"] for row in rows]

    async def dated(self) -> list[Entry]:
        """The reminders that members set and that stand, oldest first."""
        return await self._lines(
            "WHERE room = ? AND act = 'date' AND struck_at IS NULL ORDER BY id", (self.room.id,)
        )

    async def told(self, question: str, values: Sequence[object]) -> list[Entry]:
        """The entries that a question beginning with `LINES` finds, without those set aside."""
        rows = await self.db.rows(question, values)
        return [entry_of(row) for row in rows if row[0] not in self.aside]

    async def entry(self, id: int) -> Entry | None:
        """The entry of that number."""
        return await self._line("WHERE id = ? AND room = ?", (id, self.room.id))

    async def of_event(self, event: str) -> list[Entry]:
        """The entries that stand for a message."""
        return await self._lines(
            "WHERE room = ? AND event = ? AND struck_at IS NULL ORDER BY id", (self.room.id, event)
        )

    async def last_standing(self, event: str) -> Entry | None:
        """The last entry that stands for a message, or was made because of it."""

        async def ask() -> Entry | None:
            return await self._line(
                "WHERE id = (SELECT max(id) FROM ("
                "SELECT id FROM entry WHERE room = ?1 AND event = ?2 AND struck_at IS NULL "
                "UNION ALL "
                "SELECT id FROM entry WHERE room = ?1 AND cause = ?2 AND struck_at IS NULL))",
                (self.room.id, event),
            )

        return await self.known("bin member entry", ("last standing", event), ask)

    async def touched_by(self, event: str) -> list[Entry]:
        """Every entry that an event made or struck out, struck ones too."""
        return await self._lines(
            "WHERE id IN (SELECT id FROM entry WHERE room = ?1 AND cause = ?2 "
            "UNION ALL SELECT id FROM entry WHERE room = ?1 AND struck_by = ?2) ORDER BY id",
            (self.room.id, event),
        )

    async def standing_by(self, event: str) -> list[Entry]:
        """The entries that an event made, of whatever message, and that stand."""
        return [entry for entry in await self.touched_by(event) if not entry.struck]

    async def edits_of(self, event: str) -> list[str]:
        """The edits that a message had."""
        rows = await self.db.rows(
            "SELECT event FROM inbox WHERE room = ? AND about = ? AND kind = 'edited'",
            (self.room.address, event),
        )
        return [row["event"] for row in rows]

    async def chain(self, root: int) -> list[Entry]:
        """The entries that replaced each other, the first one first."""
        return await self._lines("WHERE root = ? ORDER BY id", (root,))

    async def last_of_event(self, event: str) -> list[Entry]:
        """The last entry of each chain of a message, struck or not."""
        return await self._lines(
            "WHERE id IN (SELECT max(id) FROM entry "
            "WHERE room = ? AND event = ? GROUP BY root) ORDER BY id",
            (self.room.id, event),
        )

    async def is_withdrawn(self, event: str) -> bool:
        """Whether a message or mark was taken back, by its writer or a moderator."""
        return await inbox.is_withdrawn(self.db, self.room.address, event)

    async def withdraws(self, event: str) -> bool:
        """Whether an event is itself the taking back of another."""
        return await inbox.withdraws(self.db, self.room.address, event)

    async def last_by(self, member: str, *, but: Iterable[str] = ()) -> Entry | None:
        """The last of what a member wrote down, struck or not, those acts left out; as another
        has put it right since, if so.
        """
        last = await self._line(
            "WHERE room = ?1 AND writer = (SELECT id FROM member WHERE room = ?1 AND name = ?2) "
            "AND act NOT IN (SELECT value FROM json_each(?3)) "
            "ORDER BY id DESC LIMIT 1",
            (self.room.id, member, json.dumps(list(but))),
        )
        if last is None or not last.struck:
            return last
        return await self._line("WHERE root = ? ORDER BY id DESC LIMIT 1", (last.root,)) or last

    async def written_by(self, member: str, first: date, last: date) -> list[Entry]:
        """What stands of what a member wrote down of the days from `first` to `last`."""
        return await self._lines(
            "WHERE room = ?1 AND writer = (SELECT id FROM member WHERE room = ?1 AND name = ?2) "
            "AND struck_at IS NULL AND on_day BETWEEN ?3 AND ?4 ORDER BY on_day, id",
            (self.room.id, member, first.isoformat(), last.isoformat()),
        )

    async def of_days(self, first: date, last: date, act: str | None = None) -> list[Entry]:
        """What stands of what members wrote down (of one act) of the days from `first` to `last`,
        in order of writing.
        """
        of_act = (f" AND {_ACT}", (act,)) if act else ("", ())
        return await self._lines(
            "WHERE room = ? AND writer IS NOT NULL AND struck_at IS NULL "
            f"AND on_day BETWEEN ? AND ?{of_act[0]} ORDER BY id",
            (self.room.id, first.isoformat(), last.isoformat(), *of_act[1]),
        )

    async def last_layer_by(self, member: str) -> Entry | None:
        """The last layer that a member put into a bin."""
        return await self._line(
            "WHERE member = (SELECT id FROM member WHERE room = ? AND name = ?) "
            "AND act = 'layer' AND bin IS NOT NULL AND struck_at IS NULL ORDER BY id DESC LIMIT 1",
            (self.room.id, member),
        )

    async def entries(self) -> list[Entry]:
        """Every entry ever written, struck ones too, in order of writing."""
        return await self._lines("WHERE room = ? ORDER BY id", (self.room.id,))

    async def dues(self, until: date | None = None) -> list[Due]:
        """What is to be done, soonest first; with `until` only what begins by that day."""
        return await dues.open_ones(self.db, self.room, until)

    async def question(self, sender: str) -> Question | None:
        """The last question asked of a sender that is still open."""

        async def ask() -> Question | None:
            row = await self.db.row(
                "SELECT * FROM question WHERE room = ? AND sender = ? AND settled_by IS NULL "
                "ORDER BY id DESC LIMIT 1",
                (self.room.id, sender),
            )
            return question_of(row) if row else None

        return await self.known("question", ("question", sender), ask)

    async def question_about(self, event: str) -> Question | None:
        """The question that is still open about a message."""
        row = await self.db.row(
            "SELECT * FROM question WHERE room = ? AND event = ? AND settled_by IS NULL "
            "ORDER BY id DESC LIMIT 1",
            (self.room.id, event),
        )
        return question_of(row) if row else None

    async def doubted(self) -> list[Question]:
        """The last questions still open whether something is to be written down, latest first."""

        async def ask() -> list[Question]:
            rows = await self.db.rows(
                "SELECT * FROM question WHERE id > (SELECT max(id) FROM question) - ? "
                "AND room = ? AND lacks = 'yes' AND settled_by IS NULL ORDER BY id DESC",
                (LATEST_QUESTIONS, self.room.id),
            )
            return [question_of(row) for row in rows]

        return await self.known("question", ("doubted",), ask)

    async def is_settled(self, event: str) -> bool:
        """Whether a question was asked about a message, and none is open."""
        row = await self.db.row(
            "SELECT count(*), count(settled_by) FROM question WHERE room = ? AND event = ?",
            (self.room.id, event),
        )
        return row is not None and 0 < row[0] == row[1]

    async def question_settled_by(self, event: str) -> Question | None:
        """Of the last questions asked, the one about another message that a message, or an edit of
        it, answered.
        """
        answers = json.dumps([event, *await self.edits_of(event)])
        row = await self.db.row(
            "SELECT * FROM question WHERE id > (SELECT max(id) FROM question) - ? AND room = ? "
            "AND event != ? AND settled_by IN (SELECT value FROM json_each(?)) "
            "ORDER BY id DESC LIMIT 1",
            (LAST_QUESTIONS, self.room.id, event, answers),
        )
        return question_of(row) if row else None

    async def _lines(self, which: str, values: Values) -> list[Entry]:
        return await self.told(LINES + which, values)

    async def _line(self, which: str, values: Values) -> Entry | None:
        row = await self.db.row(LINES + which, values)
        return entry_of(row) if row else None


def _in_run(entry: Entry) -> tuple[int, date, datetime, int]:
    """By it the entries of a bin are in order."""
    return entry.run or 0, entry.on or date.min, entry.said_at, entry.id
