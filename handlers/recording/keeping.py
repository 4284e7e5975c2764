"""Carrying out an answer: its entries, strikes and settings, then the dues that follow."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, time

from handlers.answer import Answer, Setting, SettingName, Turn
from handlers.chosen import kept
from handlers.planning import owndates
from handlers.planning.dues import OF_STARTER, ON_STARTER, TURNS, dues_of, dues_of_starter
from handlers.recording import starter
from handlers.runs import STARTERS, numbering
from handlers.sharing.keepers import custody_of
from handlers.sharing.rotas import ON_TURNS, dues_of_turns, rotas_of, turn_to_drain
from handlers.state import BinState, described, look_up, run_before
from storage import changes, dues, forgetting, links, notices, renaming, rooms, rotas
from storage.book import Book
from storage.moments import local_day
from storage.rows import Bin, Entry, NewEntry, Question

PLAIN = {"zone": rooms.set_zone, "units": rooms.set_units, "habit": rooms.set_habit}
"""Settings that are kept as they are said."""


async def carry_out(turn: Turn, answer: Answer) -> None:
    """Write down all that an answer changes, inside a transaction."""
    book = turn.book
    await changes.strike_out(book, answer.strikes, turn.cause, turn.now)
    await write_down(turn, answer.entries, answer.strikes)
    acts = {entry.act for entry in answer.entries} | {entry.act for entry in answer.strikes}
    if "rename" in acts:
        await renaming.settle(book)
    if acts & ON_STARTER:
        await settle_starter(turn)
    if acts & ON_TURNS:
        await settle_turns(turn)
    if "date" in acts:
        await owndates.settle(book, turn.now)
    for put_off in answer.put_off:
        await dues.put_off(book.db, put_off.due, put_off.until)
    if answer.settings:
        await _set_all(turn, answer.settings)
    if answer.query:
        question = Question(
            id=0,
            event=turn.event,
            sender=answer.query.of or turn.sender,
            guess=answer.query.guess,
            lacks=answer.query.lacks,
            asked_at=turn.now,
        )
        await changes.ask(book, question)
    if answer.forgets:
        await forgetting.forget_member(book, answer.forgets)


async def write_down(turn: Turn, new: Sequence[NewEntry], struck: Sequence[Entry]) -> None:
    """Write new entries down; the bins that entries touched get their runs and dues made anew."""
    book = turn.book
    touched: dict[Bin, list[NewEntry]] = {}
    lost: dict[Bin, list[int]] = {}
    for entry in new:
        if entry.bin:
            touched.setdefault(await changes.ensure_bin(book, entry.bin), []).append(entry)
    for old in struck:
        if old.bin:
            touched.setdefault(old.bin, [])
            if old.act == "bury" or old.act in STARTERS:
                lost.setdefault(old.bin, []).append(old.run or 1)
    made = {
        bin: await numbering(book, bin, entries, min(lost.get(bin, ()), default=None))
        for bin, entries in touched.items()
    }
    run_of = {id(entry): run for one in made.values() for entry, run in one.new}
    for entry in new:
        await changes.write_down(book, entry, run_of.get(id(entry)))
    for bin, one in made.items():
        await changes.set_runs(book, one.moved)
        book.note_run(bin, one.present)
        await settle_dues(turn, await described(book, bin, turn.today, one.present, one.entries))


async def settle_dues(turn: Turn, state: BinState) -> None:
    """Make a bin's dues anew from its present run, the burial before it and who takes it."""
    book, bin = turn.book, state.bin
    before = await run_before(book, state)
    today = local_day(turn.now, book.room.zone)
    current = await rotas_of(book, today)
    drains = turn_to_drain(current, bin, today)
    due = [
        replace(one, to_member=drains) if drains and one.what == "drain" else one
        for one in dues_of(state, before, await _passing(book, bin, turn.today))
    ]
    turns = dues_of_turns(current, bin, today)
    # Nothing is to be drained of what is in the ground, until a new run begins.
    due += [one for one in turns if not (state.run.buried and one.what == "turn to drain")]
    await dues.put(book.db, book.room, bin, due, turn.now)


async def _set_all(turn: Turn, settings: Sequence[Setting]) -> None:
    """Change settings; what else the message says is answered by them."""
    book = turn.book
    for setting in settings:
        await _set(turn, setting.what, setting.value)
    book.room = await rooms.find(book.db, book.room.address) or book.room
    if any(setting.what == "choice" for setting in settings):
        await _settle_all(turn)


async def _settle_all(turn: Turn) -> None:
    """Make the dues of all bins anew, as the group has just chosen."""
    for bin in await turn.book.bins():
        await settle_dues(turn, await look_up(turn.book, bin, turn.today))


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
        await settle_dues(turn, await look_up(book, bin, turn.today))
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
        case "quiet days":
            await rooms.set_quiet_days(book.db, book.room, value)
        case "reminders":
            await rooms.set_reminds(book.db, book.room, value == "on")
        case "reserved":
            await rooms.set_reserved(book.db, book.room, filter(None, value.split(",")))
        case "zone" | "units" | "habit":
            await PLAIN[what](book.db, book.room, value)
        case "choice":
            name, _, chosen = value.partition("=")
            await rooms.set_choice(book.db, book.room, name, kept(name, chosen))
