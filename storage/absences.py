"""Who is away on which days, by the entries `away` and `back` that stand."""

import sqlite3
from datetime import date

from storage.book import Book
from storage.moments import to_day
from storage.rows import Absence

ASKED = "asked"
"""The words of an absence whose stand-in was asked and has not answered yet."""

# A return ends every absence that was written down before it and had begun by its day. One without
# an end is over, too, on the day that the member writes something down again.
_ABSENCES = """
SELECT away.id, away.member_name AS member, away.receiver_name AS named,
    away.words IS ? AS is_asked, away.on_day AS first,
    min(ifnull(away.until_day, '9999-12-31'), ifnull((
        SELECT min(date(back.on_day, '-1 day')) FROM entry AS back
        WHERE back.act = 'back' AND back.member = away.member AND back.struck_at IS NULL
            AND back.id > away.id AND back.on_day >= away.on_day), '9999-12-31'),
        CASE WHEN away.until_day IS NULL THEN ifnull((
            SELECT min(date(seen.on_day, '-1 day')) FROM entry AS seen
            WHERE seen.room = away.room AND seen.writer = away.member AND seen.id > away.id
                AND seen.act NOT IN ('away', 'back', 'date') AND seen.struck_at IS NULL
                AND seen.on_day > away.on_day), '9999-12-31') ELSE '9999-12-31' END) AS last
FROM line AS away
WHERE away.act = 'away' AND away.room = ? AND away.struck_at IS NULL
"""


async def absences(book: Book, first: date, last: date) -> list[Absence]:
    """The absences that touch the days from `first` to `last`, the earliest first."""
    rows = await book.db.rows(
        f"SELECT * FROM ({_ABSENCES}) WHERE first <= last AND first <= ? AND last >= ? "  # noqa: S608
        "ORDER BY first, id",
        (ASKED, book.room.id, last.isoformat(), first.isoformat()),
    )
    return [_absence(row) for row in rows]


async def away_on(book: Book, day: date) -> frozenset[str]:
    """The names of those who are away on a day."""
    return frozenset(absence.member for absence in await absences(book, day, day))


def _absence(row: sqlite3.Row) -> Absence:
    until = to_day(row["last"])
    return Absence(
        entry=row["id"],
        member=row["member"],
        first=date.fromisoformat(row["first"]),
        last=None if until == date.max else until,
        stand_in=None if row["is_asked"] else row["named"],
        asked=row["named"] if row["is_asked"] else None,
    )
