"""`python -m bot export`: everything the book knows, as JSON, CSV or a calendar."""

import argparse
import asyncio
import csv
import io
import json
import sys
from datetime import date, datetime
from pathlib import Path
from typing import Any

from bot import clock
from bot.options import book_at
from bot.terminal import say
from handlers.planning.dues import shown
from handlers.recording import starter
from handlers.state import BinState, look_up
from storage import rooms, session
from storage.book import Book
from storage.database import Database
from storage.errors import BookError
from storage.moments import local_day
from storage.rows import Entry, Room


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "export",
        help="write out everything the book knows",
        description="Writes out a book: its bins, entries, starter and members, as they stand now; "
        "a replayed book as it stood at the end of its log.",
    )
    parser.add_argument("--book", metavar="FILE", type=Path, required=True, help="the book")
    parser.add_argument("--room", metavar="ROOM", help="one room only (its address)")
    parser.add_argument("--format", choices=("json", "csv", "ics"), default="json")


def run(args: argparse.Namespace) -> int:
    """Write the book to standard output."""
    book_at(args.book)
    return asyncio.run(_export(args))


async def _export(args: argparse.Namespace) -> int:
    db = await Database.open(args.book)
    try:
        room = await chosen_room(db, args.room)
        book = Book(db, room)
        now = await session.played_until(db) or clock.now()
        match args.format:
            case "csv":
                sys.stdout.write(await as_csv(book))
            case "ics":
                from bot.feed import as_calendar  # slow to import, needed only here

                sys.stdout.write((await as_calendar(book, now)).decode())
            case _:
                say(json.dumps(await as_json(book, now), ensure_ascii=False, indent=1))
    finally:
        await db.close()
    return 0


async def chosen_room(db: Database, address: str | None) -> Room:
    """The room at an address, or the only one; BookError where that is none or several."""
    known = await rooms.every(db)
    chosen = [room for room in known if address in (None, room.address)]
    if len(chosen) == 1:
        return chosen[0]
    names = ", ".join(room.address for room in known) or "none"
    if address:
        raise BookError(f"this book has no room {address}; it has: {names}")
    raise BookError(f"say which room with --room; this book has: {names}")


async def as_json(book: Book, now: datetime) -> dict[str, Any]:
    """The book of one room as plain values; dates ISO 8601, amounts kg and L."""
    today = local_day(now, book.room.zone)
    dues = await shown(book, today)
    bins = []
    for bin in await book.bins():
        state = await look_up(book, bin, today)
        own = [due for due in dues if due.bin == bin]
        windows = [
            {"what": due.what, "from": due.from_day.isoformat(), "to": due.to_day.isoformat()}
            for due in own
        ]
        bins.append({**_bin(state, today), "dues": windows})
    left = await starter.on_hand(book)
    return {
        "room": book.room.address,
        "zone": book.room.zone,
        "units": book.room.units,
        "bins": bins,
        "entries": [_entry(entry) for entry in await book.entries()],
        "starter": {"on_hand_kg": left and round(left[1], 4)},
        "members": [
            {"name": member.name, "user": member.user, "present": member.present}
            for member in await book.members()
        ],
    }


def _bin(state: BinState, today: date) -> dict[str, Any]:
    run = state.run
    return {
        "name": state.bin.name,
        "shared": state.shared,
        "capacity_l": state.capacity_l,
        "keeper": state.keeper,
        "stage": run.stage(today),
        "fill": None if state.fill is None else round(state.fill, 3),
        "run": state.number,
        "layers": run.layer_count,
        "mass_kg": round(run.mass_kg, 4),
        "rich": None if run.rich is None else round(run.rich, 3),
        "opened": _day(run.opened),
        "sealed": _day(run.sealed),
        "buried": _day(run.buried),
    }


def _entry(entry: Entry) -> dict[str, Any]:
    facts = entry.facts
    said = {
        "mass_kg": facts.mass_kg,
        "volume_l": facts.volume_l,
        "materials": facts.materials,
        "rich": facts.rich,
        "starter_g": facts.starter_g,
        "capacity_l": facts.capacity_l,
        "shared": facts.shared,
        "place": facts.place,
        "signs": list(facts.signs),
        "celsius": facts.celsius,
        "ph": facts.ph,
        "words": facts.words,
        "days": facts.days,
        "hour": f"{facts.hour:%H:%M}" if facts.hour else None,
        "rule": facts.rule,
        "to": entry.receiver,
        "until": _day(entry.until),
    }
    return {
        "id": entry.id,
        "act": entry.act,
        "bin": entry.bin.name if entry.bin else None,
        "run": entry.run,
        "member": entry.member,
        "on": _day(entry.on),
        "said_at": entry.said_at.isoformat(),
        "event": entry.event,
        **{name: _rounded(value) for name, value in said.items()},
        "struck": entry.struck,
        "replaces": entry.replaces,
    }


def _rounded(value: object) -> object:
    """Six figures that count of a number, alone or by its name; all else as it is."""
    if isinstance(value, float):
        return float(f"{value:.6g}")
    return {k: _rounded(v) for k, v in value.items()} if isinstance(value, dict) else value


def _day(day: date | None) -> str | None:
    return day.isoformat() if day else None


async def as_csv(book: Book) -> str:
    """The entries as comma-separated values, one line each, with a line of names above."""
    entries = [_entry(entry) for entry in await book.entries()]
    out = io.StringIO()
    names = list(entries[0]) if entries else ["id", "act", "bin", "run", "member", "on"]
    writer = csv.DictWriter(out, names)
    writer.writeheader()
    writer.writerows({name: _cell(value) for name, value in entry.items()} for entry in entries)
    return out.getvalue()


def _cell(value: object) -> object:
    """A cell that no spreadsheet takes for a formula."""
    if isinstance(value, dict | list):
        return json.dumps(value, ensure_ascii=False) if value else ""
    if isinstance(value, str) and value[:1] in "=+-@\t\r＝＋－＠" and value:
        return f"'{value}"
    return value
