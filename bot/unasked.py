"""What is said of the bins' keepers unasked: put into the outbox once, with what goes with it."""

from collections.abc import Sequence
from datetime import datetime
from zoneinfo import ZoneInfo

from handlers.answer import Answer, Turn
from handlers.planning.quiet import is_quiet
from handlers.recording import keeping
from handlers.sharing import rounds
from handlers.sharing.rounds import Notice
from storage import outbox
from storage.book import Book
from storage.moments import local_day
from storage.rows import Message


def turn_of(book: Book, now: datetime) -> Turn:
    """The bot's own turn to speak, in a room at a moment."""
    event = f"round-{book.room.id}-{now:%Y%m%d}"
    today = local_day(now, book.room.zone)
    return Turn(book=book, event=event, cause=event, sender="", at=now, now=now, today=today)


async def put(book: Book, now: datetime) -> None:
    """All notices of a day that were not given yet, inside a transaction."""
    turn = turn_of(book, now)
    await _give([notice async for notice in rounds.notices(turn)], turn)


async def put_at_once(book: Book, now: datetime) -> None:
    """What needs no waiting for the group's hour, unless it is to be quiet."""
    room, local = book.room, now.astimezone(ZoneInfo(book.room.zone))
    if room.reminds and not is_quiet(local.time(), room.quiet_from, room.quiet_to):
        turn = turn_of(book, now)
        await _give([notice async for notice in rounds.unattended(turn)], turn)


async def _give(notices: Sequence[Notice], turn: Turn) -> None:
    book = turn.book
    for notice in notices:
        if await outbox.is_known(book.db, notice.key):
            continue
        await keeping.carry_out(turn, Answer(entries=notice.entries))
        message = Message(
            tx_id=notice.key,
            kind="notice",
            body=notice.say,
            to_event=notice.about,
            mentions=await users(book, notice.calls),
        )
        await outbox.put(book.db, book.room.id, message, turn.now)


async def users(book: Book, names: Sequence[str]) -> tuple[str, ...]:
    """The user ids of the members of these names who are in the room."""
    if not names:
        return ()
    return tuple(
        member.user
        for member in await book.members()
        if member.user and member.present and member.name in names
    )
