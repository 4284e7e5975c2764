"""Carrying out an answer: its entries, strikes and settings, then the dues that follow."""

from collections.abc import Iterable
from dataclasses import replace
from datetime import date, time

from handlers import owndates, starter
from handlers.answer import Answer, SettingName, Turn
from handlers.dues import OF_STARTER, ON_STARTER, TURNS, dues_of, dues_of_starter
from handlers.keepers import custody_of
from handlers.rotas import ON_TURNS, dues_of_turns, rotas_of, whose_turn
from handlers.runs import STARTERS, renumber
from handlers.state import fold, look_up
from storage import changes, dues, links, notices, renaming, rooms, rotas
from storage.book import Book
from storage.moments import local_day
from storage.rows import Bin, Entry, NewEntry, Question

PLAIN = {"zone": rooms.set_zone, "units": rooms.set_units, "habit": rooms.set_habit}
"""Settings that are kept as they are said."""


async def carry_out(turn: Turn, answer: Answer) -> None:
    """Write down all that an answer changes, inside a transaction."""
    book = turn.book
    await changes.strike_out(book, [entry.id for entry in answer.strikes], turn.cause, turn.now)
    for entry in answer.entries:
        await changes.write_down(book, entry)
    acts = {entry.act for entry in answer.entries} | {entry.act for entry in answer.strikes}
    if "rename" in acts:
        await renaming.settle(book)
    await settle_bins(turn, answer.entries, answer.strikes)
    if acts & ON_STARTER:
        await settle_starter(turn)
    if acts & ON_TURNS:
        await settle_turns(turn)
    if "date" in acts:
        await owndates.settle(book, turn.now)
    for put_off in answer.put_off:
        await dues.put_off(book.db, put_off.due, put_off.until)
    for setting in answer.settings:
        await _set(turn, setting.what, setting.value)
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
    before = fold(await book.run(bin, state.number - 1)) if state.number > 1 else None
    today = local_day(turn.now, book.room.zone)
    current = await rotas_of(book, today)
    drains = whose_turn(current, bin, "drain", today)
    due = [
        replace(one, to_member=drains) if one.what == "drain" else one
        for one in dues_of(state, before, await _passing(book, bin, turn.today))
    ]
    due += dues_of_turns(current, bin, today)
    await dues.put(book.db, book.room, bin, due, turn.now)


async def settle_starter(turn: Turn) -> None:
    """Make the dues of the starter anew from its last batch, and the last count of it."""
    book = turn.book
    batch, count = await book.latest_batch("batch"), await book.latest_batch("stock")
    lasts = await starter.lasting(book, turn.today) if count else None
    due = dues_of_starter(batch, count, lasts)
    await dues.put(book.db, book.room, None, due, turn.now, of=OF_STARTER)


async def settle_turns(turn: Turn) -> None:
    """Make the turns of every rota anew, each with the dues of its bin."""
    book, today = turn.book, local_day(turn.now, turn.book.room.zone)
    said = await rotas.said(book)
    bins = {entry.bin.id: entry.bin for entry in said if entry.bin}
    if any(entry.bin is None for entry in said):
        bins |= {bin.id: bin for bin in await book.bins()}
    for bin in bins.values():
        await settle_dues(turn, bin)
    of_all = dues_of_turns(await rotas_of(book, today), None, today)
    await dues.put(book.db, book.room, None, of_all, turn.now, of=TURNS)


async def _passing(book: Book, bin: Bin, today: date) -> Entry | None:
    """The offer or acceptance that says who has a bin next and from which day, if one stands."""
    custody, zone = await custody_of(book, bin, today), book.room.zone
    offer = None if custody.refused else custody.pending(today, zone)
    for entry in (custody.coming, offer, custody.by):
        if entry and entry.act in ("accept", "offer") and entry.on and entry.on >= today:
            return entry if entry.on > local_day(entry.said_at, zone) else None
    return None


async def _set(turn: Turn, what: SettingName, value: str) -> None:
    book = turn.book
    match what:
        case "calendar link" | "own calendar link":
            member = turn.sender if what == "own calendar link" else None
            await links.put(book, member, value, turn.now)
        case "notice":
            change = notices.take_away if value == "off" else notices.put_up_again
            await change(book.db, book.room)
        case "digest":
            await rooms.set_digest_at(book.db, book.room, time.fromisoformat(value))
        case "quiet":
            start, end = (time.fromisoformat(part) for part in value.split("-"))
            await rooms.set_quiet(book.db, book.room, start, end)
        case "reminders":
            await rooms.set_reminds(book.db, book.room, value == "on")
        case "reserved":
            await rooms.set_reserved(book.db, book.room, filter(None, value.split(",")))
        case "zone" | "units" | "habit":
            await PLAIN[what](book.db, book.room, value)
        case "choice":
            name, _, figure = value.partition("=")
            await rooms.set_choice(book.db, book.room, name, float(figure))
