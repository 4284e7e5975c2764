"""Carrying out an answer: its entries, strikes and settings, then the dues that follow."""

from collections.abc import Iterable
from datetime import date

from handlers.answer import Answer, Turn
from handlers.dues import dues_of
from handlers.runs import STARTERS, renumber
from handlers.state import fold, look_up
from storage import changes, rooms
from storage.book import Book
from storage.rows import Bin, Entry, NewEntry, Question


async def carry_out(turn: Turn, answer: Answer) -> None:
    """Write down all that an answer changes, inside a transaction."""
    book = turn.book
    await changes.strike_out(book, [entry.id for entry in answer.strikes], turn.cause, turn.now)
    for entry in answer.entries:
        await changes.write_down(book, entry)
    await settle_bins(book, answer.entries, answer.strikes, turn.today)
    for put_off in answer.put_off:
        await changes.put_off(book, put_off.due, put_off.until)
    for setting in answer.settings:
        await _set(book, setting.what, setting.value)
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


async def settle_bins(
    book: Book, new: Iterable[NewEntry], struck: Iterable[Entry], today: date
) -> None:
    """Number the runs and make the dues anew of every bin that entries touched."""
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
            await settle_dues(book, bin, today)


async def settle_dues(book: Book, bin: Bin, today: date) -> None:
    """Make a bin's dues anew from its present run and the burial before it."""
    state = await look_up(book, bin, today)
    before = fold(await book.run(bin, state.number - 1)) if state.number > 1 else None
    await changes.set_dues(book, bin, dues_of(state, before))


async def _set(book: Book, what: str, value: str) -> None:
    match what:
        case "zone":
            await rooms.set_zone(book.db, book.room, value)
        case "units":
            await rooms.set_units(book.db, book.room, value)
        case "habit":
            await rooms.set_habit(book.db, book.room, value)
