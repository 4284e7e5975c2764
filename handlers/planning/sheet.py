"""The next four weeks as a sheet: what a picture of the calendar shows, and the same in words."""

from collections.abc import Sequence
from dataclasses import asdict, dataclass
from datetime import date, timedelta
from itertools import groupby
from typing import Any

from handlers.phrasing import capital, clock, span, the
from handlers.planning.calendar import is_late, next_of_each
from handlers.planning.care import Care, care_of
from handlers.planning.dues import DUTIES, EVENTS, OWN, shown
from storage.book import Book
from storage.rows import Due

DAYS = 28
MOST_LINES = 30
"""Rows on a sheet with the titles above them, as many as a phone shows at once: of more rows only
the number is said."""

TITLE = "Our bins"
FOR_ALL = "Other dates"

SHORT = {"plant": "plant there", "cover": "look at the ground", "check": "look again"}
"""What is to be done, where the bin is named above."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """What is to be done, and on which days of the sheet (0 is the first)."""

    what: str
    words: str
    """ "drain, Wed 4 or Thu 5", as the picture says it."""
    said: str
    """The same in full words."""
    first: int
    last: int
    late: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Block:
    """The rows of one bin."""

    title: str
    rows: Sequence[Row]


@dataclass(frozen=True, slots=True, kw_only=True)
class Sheet:
    """Four weeks from a day on."""

    begin: date
    blocks: Sequence[Block]
    left_out: int = 0

    @property
    def days(self) -> str:
        """The days it shows, in words."""
        end = self.begin + timedelta(days=DAYS - 1)
        return span(self.begin, end, date(self.begin.year - 1, 1, 1))

    @property
    def more(self) -> str:
        """What is said of the rows that did not fit; empty if all did."""
        return f"and {self.left_out} more; ask “what's due?”" if self.left_out else ""


async def sheet(book: Book, today: date) -> Sheet:
    """What is due in the next four weeks, bin by bin, the most pressing first."""
    until = today + timedelta(days=DAYS - 1)
    dues = _few_of_each(await shown(book, today, until))
    care = await care_of(book, dues, today)
    by_bin = sorted(dues, key=_block_of)
    blocks = [
        Block(title=_title(group[0], care), rows=[_row(due, care, today) for due in group])
        for _, same in groupby(by_bin, key=_block_of)
        if (group := sorted(same, key=lambda due: (due.to_day, due.from_day, due.what)))
    ]
    blocks.sort(key=lambda block: min(row.last for row in block.rows))
    return _fitting(today, blocks)


def _few_of_each(dues: Sequence[Due]) -> list[Due]:
    """All dues of bins; of what comes again each time, unless that is daily."""
    own = [due for due in dues if due.what in OWN]
    return list(dues) if len(own) <= MOST_LINES // 2 else next_of_each(dues)


def _fitting(begin: date, blocks: Sequence[Block]) -> Sheet:
    kept: list[Block] = []
    room = MOST_LINES
    for block in blocks:
        rows = block.rows[: max(room - 1, 0)]
        room -= 1 + len(rows)
        kept += [Block(title=block.title, rows=rows)] if rows else []
    left_out = sum(len(b.rows) for b in blocks) - sum(len(b.rows) for b in kept)
    return Sheet(begin=begin, blocks=kept, left_out=left_out)


def _block_of(due: Due) -> tuple[bool, str]:
    return (due.bin is None, due.bin.name if due.bin else "")


def _title(due: Due, care: Care) -> str:
    if due.bin is None:
        return FOR_ALL
    keeper = care.keeper(due)
    return f"{capital(the(due.bin.name))} ({keeper})" if keeper else capital(the(due.bin.name))


def _row(due: Due, care: Care, today: date) -> Row:
    who = care.keeper(due) if due.bin is None else due.to_member
    task = due.words or DUTIES[due.what].replace(" {bin}", "").replace("{bin}", "it")
    task = SHORT.get(due.what, task)
    if who:
        task += f" to {who}" if due.what == "hand over" else f" ({who})"
    if care.is_away(due):
        task += f" ({care.stand_in(due) or 'nobody'} for {care.keeper(due)})"
    task += f" at {clock(due.hour)}" if due.hour else ""
    late = is_late(due, today)
    return Row(
        what=due.what,
        words=f"{task}, {_short(due, today, late=late)}",
        said=f"{task} {_long(due, late=late)}",
        first=max((due.from_day - today).days, 0),
        last=min(max((due.to_day - today).days, 0), DAYS - 1),
        late=late,
    )


def _short(due: Due, today: date, *, late: bool) -> str:
    if late:
        return f"late since {_tiny(due.to_day)}"
    if due.to_day == today:
        return "today"
    if due.from_day == due.to_day:
        return _tiny(due.from_day)
    joint = "or" if (due.to_day - due.from_day).days == 1 else "to"
    if due.from_day < today and due.what not in EVENTS:
        return f"by {_tiny(due.to_day)}"
    first = _tiny(due.from_day)
    if due.from_day.month == due.to_day.month:
        first = first.rpartition(" ")[0]
    return f"{first} {joint} {_tiny(due.to_day)}"


def _tiny(day: date) -> str:
    return f"{day:%a} {day.day} {day:%b}"


def _long(due: Due, *, late: bool) -> str:
    far = due.from_day - timedelta(days=30)  # so that no day is called "today"
    if late:
        return f"(late since {span(due.to_day, due.to_day, far)})"
    return span(due.from_day, due.to_day, far)


def in_words(sheet: Sheet) -> str:
    """All that the picture shows, for those who cannot see it."""
    lines = [f"{TITLE}, {sheet.days}."]
    lines += [
        f"{block.title}: {'; '.join(row.said for row in block.rows)}." for block in sheet.blocks
    ]
    if not sheet.blocks:
        lines.append("Nothing is due.")
    return "\n".join([*lines, *([capital(sheet.more)] if sheet.more else [])])


def as_json(sheet: Sheet) -> dict[str, Any]:
    """The sheet as plain values."""
    return asdict(sheet) | {"begin": sheet.begin.isoformat()}


def from_json(said: dict[str, Any]) -> Sheet:
    """The sheet that `as_json` wrote."""
    blocks = [
        Block(title=block["title"], rows=[Row(**row) for row in block["rows"]])
        for block in said["blocks"]
    ]
    return Sheet(begin=date.fromisoformat(said["begin"]), blocks=blocks, left_out=said["left_out"])
