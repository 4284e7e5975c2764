"""What a reminder was of, and whether words of a member are said to it."""

from datetime import timedelta

from handlers.answer import Turn
from handlers.doubtful.spokenof import is_of_sender
from handlers.planning.calendar import is_of, task
from handlers.planning.care import care_of
from handlers.planning.dues import OWN, done_to_it, is_shown_on
from storage import naming, outbox
from storage.rows import Due

JUST_SAID = timedelta(hours=1)
"""So long a bare "done" is about what our last words named."""

PUT_OFF = "I will say again"
"""How it is answered that something is put off."""


async def told_by(message: str, line: int | None, turn: Turn) -> list[Due]:
    """What a digest named to a member and is still to be done.

    Of nobody's own, all of it: if it was one thing, or one line was marked.
    """
    named = [due for due in await naming.named(turn.book, message, line) if _is_open(due, turn)]
    care = await care_of(turn.book, named, turn.today)
    own = [due for due in named if care.concerns(due, turn.sender)]
    free = [due for due in named if care.keeper(due) is None]
    is_one = len(named) == 1 or line is not None
    return own or free or (named if is_one else [])


def _is_open(due: Due, turn: Turn) -> bool:
    return due.from_day <= turn.today and is_shown_on(due, turn.today)


async def dues_meant(bin: str | None, turn: Turn, *, told_today: bool = False) -> list[Due]:
    """What is due now: of the digest replied to, of the bin named; else what was just said to all
    or to the speaker, or what the speaker keeps; with `told_today` also what members set and all
    were reminded of on that day.
    """
    dues = await open_dues(bin, turn)
    if bin is not None:
        return dues
    care = await care_of(turn.book, dues, turn.today)
    own = [due for due in dues if care.concerns(due, turn.sender) or is_promised(due, turn)]
    free = own + [due for due in dues if care.keeper(due) is None]
    just_said = {due.id for due in await _just_said(turn)}
    if said := [due for due in free if due.id in just_said]:
        return said
    of_today = [due for due in free if due.what in OWN and due.told_on == turn.today]
    told = [due for due in of_today if due not in own] if told_today else []
    return [*told, *own] or dues


async def open_dues(bin: str | None, turn: Turn) -> list[Due]:
    """What is due now, whoever is to do it: of the digest replied to, of the bin named."""
    named = await naming.named(turn.book, turn.refers_to, None) if turn.refers_to else []
    return [
        due
        for due in named or await turn.book.dues(until=turn.today)
        if _is_open(due, turn) and (bin is None or is_of(due, bin))
    ]


def is_promised(due: Due, turn: Turn) -> bool:
    """Whether it is of a bin that the sender promised to see to."""
    return due.bin is not None and due.bin.name in turn.helps


async def answers_else(turn: Turn) -> bool:
    """Whether it is said to an answer of ours to its sender, or in reply to one to anybody, that
    names nothing due.
    """
    db, room = turn.book.db, turn.book.room
    if turn.refers_to:
        found = await outbox.answer_to(db, room.id, turn.refers_to)
        answer = found[1] if found else None
    else:
        latest = await outbox.latest(db, room.id)
        answer = latest[0] if latest and turn.now - latest[1] <= JUST_SAID else None
        if answer is None or not await is_of_sender(answer.to_event or "", turn):
            return False
    if answer is None or answer.kind != "reply":
        return False
    dues = await turn.book.dues(until=turn.today)
    return not any(
        words in answer.body for due in dues for words in (task(due), done_to_it(due.what)) if words
    )


async def names_dues(turn: Turn) -> bool:
    """Whether it is said in reply to a digest or reminder, or our last words were one."""
    if turn.refers_to:
        return bool(await naming.named(turn.book, turn.refers_to, None))
    latest = await outbox.latest(turn.book.db, turn.book.room.id)
    if latest is None:
        return False
    is_put_off = latest[0].body.startswith(PUT_OFF)
    return is_put_off or bool(await naming.named(turn.book, latest[0].tx_id, None))


async def _just_said(turn: Turn) -> list[Due]:
    """What our last words named, if they were said a short while ago."""
    latest = await outbox.latest(turn.book.db, turn.book.room.id)
    if latest is None or turn.now - latest[1] > JUST_SAID:
        return []
    return await naming.named(turn.book, latest[0].tx_id, None)
