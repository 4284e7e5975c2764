"""Sums over a whole history, asked for without going through it: see `tally` and `dosed`."""

import json
from dataclasses import dataclass
from datetime import date
from typing import Any

from storage.book import Book
from storage.moments import to_day
from storage.rows import Bin, Entry, Facts, Member

_FIRST = "SELECT min(on_day) AS day FROM entry WHERE act = 'layer' AND struck_at IS NULL "
_FIRST_OF_ROOM = _FIRST + "AND room = ?"
_FIRST_OF_BIN = _FIRST + "AND bin = ?1 AND (?2 IS NULL OR member = ?2)"
_FIRST_OF_MEMBER = _FIRST + "AND member = ?"


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """Layers of one make-up: those that were weighed (kg), and the loose volume (L) of others."""

    layers: int
    mass_kg: float
    volume_l: float
    materials: dict[Any, float] | None


async def put_in(book: Book, bin: Bin | None = None, member: Member | None = None) -> list[Part]:
    """All layers that stand, of one bin or member if given, by what their volumes are made of."""
    rows = await book.db.rows(
        "SELECT materials, sum(layers) AS layers, sum(mass_kg) AS mass_kg, "
        "sum(volume_l) AS volume_l FROM tally "
        "WHERE room = ?1 AND (?2 IS NULL OR bin = ?2) AND (?3 IS NULL OR member = ?3) "
        "GROUP BY materials HAVING sum(layers) > 0",
        (book.room.id, bin and bin.id, member and member.id),
    )
    return [
        Part(
            layers=row["layers"],
            mass_kg=row["mass_kg"],
            volume_l=row["volume_l"],
            materials=json.loads(row["materials"]) if row["materials"] else None,
        )
        for row in rows
    ]


async def first_layer(
    book: Book, bin: Bin | None = None, member: Member | None = None
) -> date | None:
    """The day of the first layer that stands, of one bin or member if given."""
    if bin:
        row = await book.db.row(_FIRST_OF_BIN, (bin.id, member and member.id))
    elif member:
        row = await book.db.row(_FIRST_OF_MEMBER, (member.id,))
    else:
        row = await book.db.row(_FIRST_OF_ROOM, (book.room.id,))
    return to_day(row["day"]) if row else None


async def dosed_since(book: Book, stock: Entry) -> float:
    """The starter (g) of all doses since it was counted."""
    row = await book.db.row(
        "SELECT total(grams) AS grams FROM dosed WHERE room = ? AND stock >= ?",
        (book.room.id, stock.id),
    )
    return float(row["grams"]) if row else 0.0


async def doses_since(book: Book, day: date) -> list[tuple[date, float]]:
    """Day and starter (g) of each dose from a day on."""
    rows = await book.db.rows(
        "SELECT on_day, starter_g FROM entry WHERE room = ? AND act = 'layer' "
        "AND struck_at IS NULL AND on_day >= ? AND starter_g > 0",
        (book.room.id, day.isoformat()),
    )
    return [(date.fromisoformat(row["on_day"]), row["starter_g"]) for row in rows]


async def counts_since(book: Book, day: date) -> list[tuple[date, Facts]]:
    """The counts of the starter that stand, from a day on, in the order of their days."""
    rows = await book.db.rows(
        "SELECT on_day, mass_kg, volume_l FROM entry WHERE room = ? AND act = 'stock' "
        "AND bin IS NULL AND struck_at IS NULL AND on_day >= ? ORDER BY on_day, id",
        (book.room.id, day.isoformat()),
    )
    return [
        (
            date.fromisoformat(row["on_day"]),
            Facts(mass_kg=row["mass_kg"], volume_l=row["volume_l"]),
        )
        for row in rows
    ]


async def last_mixed(book: Book) -> date | None:
    """The last day on which starter was mixed."""
    row = await book.db.row(
        "SELECT max(on_day) AS day FROM entry WHERE room = ? AND act = 'batch' "
        "AND bin IS NULL AND struck_at IS NULL",
        (book.room.id,),
    )
    return to_day(row["day"]) if row else None
