"""Carrying out an answer: its entries, strikes and settings, then the dues that follow."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, time
from zoneinfo import ZoneInfo

from handlers.answer import Answer, SettingName, Turn
from handlers.chosen import kept
from handlers.dues import ON_STARTER, dues_of, dues_of_starter
from handlers.runs import STARTERS, renumber
from handlers.state import look_up, run_before
from storage import changes, dues, links, rooms
from storage.book import Book
from storage.rows import Bin, Entry, NewEntry, Question


async def carry_out(turn: Turn, answer: Answer) -> None:
    """Write down all that an answer changes, inside a transaction."""
    book = turn.book
    await changes.strike_out(book, [entry.id for entry in answer.strikes], turn.cause, turn.now)
    for entry in answer.entries:
        await changes.write_down(book, entry)
    await settle_bins(turn, answer.entries, answer.strikes)
    acts = {entry.act for entry in answer.entries} | {entry.act for entry in answer.strikes}
    if acts & ON_STARTER:
        await settle_starter(turn)
    for put_off in answer.put_off:
        await dues.put_off(book.db, put_off.due, put_off.until)
    for setting in answer.settings:
        await _set(turn, setting.what, setting.value)
    if any(setting.what == "choice" for setting in answer.settings):
        await _settle_all(turn)
    if answer.query:
        question = Question(
            id=0,
            event=turn.event,
            sender=turn.sender,
            guess=answer.query.guess,
            lacks=answer.query.lacks,
            asked_at=turn.now,
        )
        await changes.ask(book, question)


async def settle_bins(turn: Turn, new: Iterable[NewEntry], struck: Iterable[Entry]) -> None:
    """Number the runs and make the dues anew of every bin that entries touched."""
    book = turn.book
    touched: dict[str, list[date]] = {}
    reopened: set[str] = set()
    for entry in new:
        if entry.bin:
            touched.setdefault(entry.bin, []).extend([entry.on] if entry.on else [])
    for old in struck:
        if old.bin:
            touched.setdefault(old.bin.name, [])
            if old.act == "bury" or old.act in STARTERS:
                reopened.add(old.bin.name)
    for name, on in touched.items():
        bin = await book.bin(name)
        if bin:
            await renumber(book, bin, from_day=min(on, default=None), struck=bin.name in reopened)
            await settle_dues(turn, bin)


async def settle_dues(turn: Turn, bin: Bin) -> None:
    """Make a bin's dues anew from its present run, the burial before it and who takes it."""
    book = turn.book
    state = await look_up(book, bin, turn.today)
    due = dues_of(state, await run_before(book, state), await _passing(book, bin))
    await dues.put(book.db, book.room, bin, due, turn.now)


async def _settle_all(turn: Turn) -> None:
    """Make the dues of all bins anew, as the group has just chosen."""
    room = await rooms.find(turn.book.db, turn.book.room.address)
    if room is None:
        return
    turn = replace(turn, book=Book(turn.book.db, room))
    for bin in await turn.book.bins():
        await settle_dues(turn, bin)


async def settle_starter(turn: Turn) -> None:
    """Make the dues of the starter anew from its last batch, and the last count of it."""
    book = turn.book
    batch, count = await book.latest_batch("batch"), await book.latest_batch("stock")
    await dues.put(book.db, book.room, None, dues_of_starter(batch, count), turn.now)


async def _passing(book: Book, bin: Bin) -> Entry | None:
    """The offer or acceptance that says who has a bin next and from which day, if one stands."""
    said = [await book.latest(bin, act) for act in ("offer", "accept", "decline")]
    last = max((entry for entry in said if entry), key=lambda entry: entry.id, default=None)
    if last is None or last.on is None or last.act == "decline":
        return None
    said_on = last.said_at.astimezone(ZoneInfo(book.room.zone)).date()
    return last if last.on > said_on else None


async def _set(turn: Turn, what: SettingName, value: str) -> None:
    book = turn.book
    match what:
        case "calendar link":
            await links.put(book, None, value, turn.now)
        case "own calendar link":
            await links.put(book, turn.sender, value, turn.now)
        case "digest":
            await rooms.set_digest_at(book.db, book.room, time.fromisoformat(value))
        case "quiet":
            start, end = (time.fromisoformat(part) for part in value.split("-"))
            await rooms.set_quiet(book.db, book.room, start, end)
        case "reminders":
            await rooms.set_reminds(book.db, book.room, value == "on")
        case "zone":
            await rooms.set_zone(book.db, book.room, value)
        case "units":
            await rooms.set_units(book.db, book.room, value)
        case "choice":
            name, _, chosen = value.partition("=")
            await rooms.set_choice(book.db, book.room, name, kept(name, chosen))
        case "habit":
            await rooms.set_habit(book.db, book.room, value)
