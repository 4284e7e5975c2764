"""A message, or a mark, taken back: what it did is undone, and its answer says so."""

from datetime import datetime

from bot import asked, favours, marks
from bot.answering import Answering
from bot.heard import Withdrawn
from handlers.recording import keeping
from handlers.righting import corrections
from storage import changes, notices, outbox, traces
from storage.traces import Trace


async def take(withdrawn: Withdrawn, answering: Answering) -> None:
    """Undo what the event did, and say so in place of its answer."""
    target = withdrawn.target
    ours = await outbox.said_as(answering.book.db, answering.room.id, target)
    if ours and ours.kind == "calendar":
        await notices.take_away(answering.book.db, answering.room)
        return
    if ours:
        await outbox.taken_away(answering.book.db, answering.room.id, target)
    trace = await traces.trace(answering.book.db, answering.room.address, target)
    at = trace.at if trace else withdrawn.at
    turn = await answering.turn(target, at, cause=withdrawn.event)
    await answering.drop_question(target, withdrawn.event)
    if trace and (other := await _other_strike(trace, answering)):
        await changes.strike_in_place_of(answering.book, target, other)
        return
    undone = await corrections.undo(target, turn)
    await keeping.carry_out(turn, undone)
    if trace is None or trace.kind != "edited":
        await asked.reopened(target, answering.book)
    if trace and trace.kind == "reacted":
        await favours.given_back(trace, turn)
    if not undone.strikes and not undone.entries:
        return
    answering.replying.say(corrections.undone_words(undone, turn))
    await answering.replying.anew(
        await _answered(target, trace, answering), withdrawn.event, only_if_answered=True
    )


async def _other_strike(mark: Trace, answering: Answering) -> str | None:
    """The mark by which its setter still strikes out what the one taken back did."""
    if mark.kind != "reacted" or not _strikes(mark) or not mark.sender or not mark.about:
        return None
    db, room = answering.book.db, answering.room
    event = await answering.talk.record_behind(mark.about) or mark.about
    marked = [event, *await outbox.answers_to(db, room.id, event)]
    found = await traces.marked_by(db, room.address, mark.sender, marked)
    others = [one for one in found if one.event != mark.event and _strikes(one)]
    edited = await _last_edit(event, answering) if others else None
    for other in others:
        is_of_now = edited is None or other.at >= edited
        if is_of_now and not await answering.book.is_withdrawn(other.event):
            return other.event
    return None


async def _last_edit(event: str, answering: Answering) -> datetime | None:
    """When a message was last edited: a mark from before that says nothing of its new words."""
    book = answering.book
    edits = [e for e in await book.edits_of(event) if not await book.is_withdrawn(e)]
    found = [await traces.trace(book.db, answering.room.address, edit) for edit in edits]
    return max((edit.at for edit in found if edit), default=None)


async def _answered(event: str, trace: Trace | None, answering: Answering) -> str:
    """The message whose answer tells what an event did: an edit's, or the one struck out."""
    if trace is None or trace.about is None:
        return event
    if trace.kind == "reacted" and _strikes(trace):
        return await answering.talk.record_behind(trace.about) or event
    return trace.about if trace.kind == "edited" else event


def _strikes(mark: Trace) -> bool:
    return marks.plain(mark.mark or "") in marks.STRIKE
