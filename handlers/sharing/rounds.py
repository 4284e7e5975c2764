"""What the bot says of the bins' keepers unasked, once a day at the group's hour.

Each thing is said once: its key is the transaction id of the message that says it.
"""

from collections.abc import AsyncIterator, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from handlers.answer import Turn
from handlers.phrasing import capital, day, span, the
from handlers.planning.dues import ACTS, DUTIES
from handlers.sharing.custody import found
from handlers.sharing.handover import card
from handlers.sharing.keepers import Custody, custody_of, last_day
from handlers.sharing.rotas import RotaState, rotas_of
from handlers.sharing.turns import DAY, Stint
from handlers.state import look_up
from storage.absences import away_on
from storage.custody import last_heard
from storage.moments import local_day
from storage.rows import Bin, Due, Entry, Facts, NewEntry

TOLD_LATE = timedelta(days=4)
"""What could not be told on its day, since the bot was away, is told for so long."""

SILENT_AFTER = timedelta(days=7)
"""Past the last day of a due, after which a keeper who has not been heard is asked for."""

OPEN_TURN_AHEAD = timedelta(days=3)
"""How long before a turn that nobody is there for the others are asked."""

TAKE = "Say “I'll take it” or put 👍 here"


@dataclass(frozen=True, slots=True, kw_only=True)
class Notice:
    """Something to say once, to whom, and what to write down with it."""

    key: str
    say: str
    calls: Sequence[str] = ()
    entries: Sequence[NewEntry] = ()
    about: str | None = None
    """The message that it replies to."""


async def notices(turn: Turn) -> AsyncIterator[Notice]:
    """All that could be said on a day; what was said before is for the caller to leave out."""
    async for notice in unattended(turn):
        yield notice
    rotas = await rotas_of(turn.book, turn.today)
    late = [due for due in await turn.book.dues() if _is_long_late(due, turn.today)]
    for bin in await turn.book.bins():
        custody = await custody_of(turn.book, bin, turn.today)
        offer = custody.offer
        if offer and _has_moved_on(bin, offer, rotas, turn):
            offer = None
        if offer and (told := _offer(bin, custody, offer, turn)):
            yield told
        if handed := await _handed(bin, custody, turn):
            yield handed
        own = [due for due in late if due.bin == bin and due.to_member in (None, custody.keeper)]
        if own and custody.keeper and (told := await _silent(own[0], bin, custody, turn)):
            yield told
    for rota in rotas:
        async for notice in _turns(rota, turn):
            yield notice


async def unattended(turn: Turn) -> AsyncIterator[Notice]:
    """The bins whose keepers have left."""
    for bin in await turn.book.bins():
        custody = await custody_of(turn.book, bin, turn.today)
        if custody.left:
            yield _unattended(bin, custody.left, custody.leaver, turn)


def _key(turn: Turn, *parts: object) -> str:
    return "-".join(str(part) for part in (*parts, turn.book.room.id))


def _own(key: str, entry: NewEntry) -> NewEntry:
    """What the bot asks itself stands for the message that asks it."""
    return replace(entry, event=key, cause=key, writer=None)


def _unattended(bin: Bin, left: Entry, leaver: str | None, turn: Turn) -> Notice:
    key = _key(turn, "unattended", left.root, bin.id)
    why = f"{capital(leaver)} has left the room, and nobody keeps" if leaver else "Nobody keeps"
    return Notice(
        key=key,
        say=f"{why} {the(bin.name)}. Who takes it? {TAKE}. If it is out of use, say “retire "
        f"{the(bin.name)}”.",
        entries=[_own(key, turn.entry("offer", bin=bin.name))],
    )


def _has_moved_on(bin: Bin, offer: Entry, rotas: Sequence[RotaState], turn: Turn) -> bool:
    """Whether a turn was offered by the rota to one whose turn it is no more."""
    if offer.writer is not None or offer.receiver is None:
        return False
    keepers = [
        stint.member
        for rota in rotas
        if rota.duty == "keep" and rota.bin == bin
        for stint in rota.coming(turn.today)
        if stint.start <= turn.today
    ]
    return bool(keepers) and offer.receiver not in keepers


def _offer(bin: Bin, custody: Custody, offer: Entry, turn: Turn) -> Notice | None:
    """That an offer ends soon, or has ended without an answer."""
    zone = turn.book.room.zone
    last, said_on = last_day(offer, zone), local_day(offer.said_at, zone)
    is_dated = bool(offer.on and offer.on > said_on)
    calls = [name for name in (custody.keeper, offer.receiver) if name]
    if offer.writer is None and offer.receiver is None:
        return None  # the group was asked for a keeper, once
    if last < turn.today <= last + TOLD_LATE:
        stays = f"it stays with {custody.keeper}" if custody.keeper else "nobody keeps it"
        return Notice(
            key=_key(turn, "lapsed", offer.root),
            say=f"Nobody took {the(bin.name)}, so {stays}. Hand it over anew if it is still to go.",
            calls=calls,
            about=offer.event,
        )
    if said_on < turn.today and last - DAY * is_dated <= turn.today <= last:
        who = f"{capital(offer.receiver)}, " if offer.receiver else ""
        whose = f" from {custody.keeper}" if custody.keeper else ""
        until = day(last, turn.today)
        return Notice(
            key=_key(turn, "still", offer.root),
            say=capital(f"{who}{the(bin.name)} is still on offer{whose}, until {until}. {TAKE}; ")
            + "or “not me”.",
            calls=calls,
            about=offer.event,
        )
    return None


async def _handed(bin: Bin, custody: Custody, turn: Turn) -> Notice | None:
    """The card, on the day for which a bin was to change hands."""
    taken, zone = custody.by, turn.book.room.zone
    if taken is None or taken.act != "accept" or taken.on is None or taken.member is None:
        return None
    if not (local_day(taken.said_at, zone) < taken.on <= turn.today < taken.on + TOLD_LATE):
        return None
    state = await look_up(turn.book, bin, turn.today)
    before = (await custody_of(turn.book, bin, taken.on - DAY)).keeper
    whence = f" from {before}" if before else ""
    lines = [
        f"{capital(day(taken.on, turn.today))} {the(bin.name)} goes{whence} to {taken.member}.",
        *await card(state, turn),
        found(turn.units),
    ]
    return Notice(
        key=_key(turn, "handed", taken.root),
        say="\n".join(lines),
        calls=[name for name in (before, taken.member) if name],
        about=taken.event,
    )


async def _silent(due: Due, bin: Bin, custody: Custody, turn: Turn) -> Notice | None:
    """A keeper who has not been heard since before what is long late, and long since."""
    keeper = custody.keeper or ""
    members = {member.name: member for member in await turn.book.members()}
    member = members.get(keeper)
    if member is None or member.user is None or keeper in await away_on(turn.book, turn.today):
        return None
    if not await _is_communal(bin, turn):
        return None
    heard_at = await last_heard(turn.book, member)
    heard = local_day(heard_at, turn.book.room.zone) if heard_at else None
    if heard and heard >= due.from_day:
        return None
    since = f" since {day(heard, turn.today)}" if heard else ""
    key = _key(turn, "silent", bin.id, heard or (custody.by.root if custody.by else 0))
    to_do = DUTIES[due.what].format(bin=the(bin.name))
    return Notice(
        key=key,
        say=f"{capital(keeper)}, are you there? Nothing was heard of you{since}, and it was time "
        f"to {to_do} by {day(due.to_day, turn.today)}. If {keeper} cannot: who takes it? {TAKE}.",
        calls=[keeper],
        entries=[_own(key, turn.entry("offer", bin=bin.name))],
    )


async def _is_communal(bin: Bin, turn: Turn) -> bool:
    """Whether others than one household have to do with a bin."""
    state = await look_up(turn.book, bin, turn.today)
    return state.shared or len(await turn.book.hands(bin)) > 1


def _is_long_late(due: Due, today: date) -> bool:
    return due.what in ACTS and today - due.to_day >= SILENT_AFTER


async def _turns(rota: RotaState, turn: Turn) -> AsyncIterator[Notice]:
    """A bin goes to whose turn it is to keep it; a turn that nobody is there for is told."""
    for stint in rota.coming(turn.today):
        if stint.start > turn.today + OPEN_TURN_AHEAD:
            return
        if stint.member is None:
            yield _open_turn(rota, stint, turn)
        elif rota.duty == "keep" and rota.bin and stint.start <= turn.today:
            custody = await custody_of(turn.book, rota.bin, turn.today)
            if stint.member not in (custody.keeper, custody.coming and custody.coming.member):
                yield _turn_to_keep(rota.bin, custody, rota, stint, turn)


def _open_turn(rota: RotaState, stint: Stint, turn: Turn) -> Notice:
    key = _key(turn, "open", rota.said.root, stint.start)
    wish = turn.entry(
        "swap",
        bin=rota.bin.name if rota.bin else None,
        on=stint.start,
        facts=Facts(words=rota.duty),
    )
    days = span(max(stint.start, turn.today), stint.end, turn.today)
    return Notice(
        key=key,
        say=f"None of the rota is there to {rota.deed} {days}. Who can? Say “I can” or put 👍 "
        "here.",
        entries=[_own(key, wish)],
    )


def _turn_to_keep(bin: Bin, custody: Custody, rota: RotaState, stint: Stint, turn: Turn) -> Notice:
    has_moved = custody.offer is not None and _has_moved_on(bin, custody.offer, [rota], turn)
    key = _key(turn, "turn", rota.said.root, stint.start, *([stint.member] if has_moved else []))
    days = span(max(stint.start, turn.today), stint.end, turn.today)
    until = f" Until you do, {custody.keeper} keeps it." if custody.keeper else ""
    offer = turn.entry("offer", bin=bin.name, member=custody.keeper, receiver=stint.member)
    return Notice(
        key=key,
        say=f"{capital(stint.member or '')}, it is your turn to keep {the(bin.name)}, {days}. "
        f"{TAKE}; or “not me”.{until}",
        calls=[name for name in (stint.member, custody.keeper) if name],
        entries=[_own(key, offer)],
    )
