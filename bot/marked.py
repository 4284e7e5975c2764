"""What a mark set on a message does: yes and no, done and later, and striking out."""

from bot import favours, marks
from bot.answering import Answering
from bot.heard import Reacted
from bot.talk import REMINDERS
from handlers import arranging
from handlers.doubtful import unsure
from handlers.planning import putoff, reminded
from handlers.recording import keeping
from handlers.righting import corrections
from handlers.sharing import custody
from storage import outbox, traces


async def take(reacted: Reacted, answering: Answering) -> None:
    """Do what the mark says, if it answers, agrees or strikes out."""
    key = marks.plain(reacted.key)
    answers = await _answers_offer(reacted, key, answering)
    if answers or await _answers_digest(reacted, key, answering):
        return
    event = await answering.talk.record_behind(reacted.target) or reacted.target
    trace = await traces.trace(answering.book.db, answering.room.address, event)
    if trace and trace.sender != reacted.sender and key in marks.YES:
        turn = await answering.turn(reacted.event, reacted.at)
        if promise := await favours.taken_by_mark(trace, turn):
            await answering.take_up(await arranging.answer(promise, turn), turn)
    if await _settled(reacted, key, event, answering):
        return
    if trace and trace.sender == reacted.sender and key in marks.STRIKE:
        turn = await answering.turn(event, trace.at, cause=reacted.event)
        undone = await corrections.undo(event, turn)
        await keeping.carry_out(turn, undone)
        if undone.strikes or undone.entries:
            answering.replying.say(corrections.undone_words(undone, turn))
            await answering.replying.anew(event, reacted.event)


async def _settled(reacted: Reacted, key: str, event: str, answering: Answering) -> bool:
    """Whether it was set on a question of ours by whom that was asked of, and answers it."""
    question = await answering.book.question_about(event)
    if question is None or question.lacks not in ("yes", "leave"):
        return False
    asked_of = question.sender == await answering.book.name_of(reacted.sender)
    if not asked_of or key not in marks.YES | marks.NO:
        return False
    word = "yes" if key in marks.YES else "no"
    acts = await unsure.settled(word, question, answering.book)
    await answering.settle(question, acts or [], reacted.event)
    await answering.replying.to(event, reacted.event)
    return True


async def _answers_offer(reacted: Reacted, key: str, answering: Answering) -> bool:
    """Whether it was set on an offer, and so accepts or declines it."""
    if key not in marks.YES | marks.NO:
        return False
    event = await answering.talk.record_behind(reacted.target) or reacted.target
    asked = [e for e in await answering.book.of_event(event) if e.act in ("offer", "swap")]
    trace = await traces.trace(answering.book.db, answering.room.address, event)
    if not asked or (trace and trace.sender == reacted.sender):
        return False
    turn = await answering.turn(reacted.event, reacted.at, refers_to=event)
    await answering.take_up(await custody.marked(event, turn, yes=key in marks.YES), turn)
    await answering.replying.to(reacted.target, reacted.event)
    return True


async def _answers_digest(reacted: Reacted, key: str, answering: Answering) -> bool:
    """Whether it was set on a digest of ours, and was taken as "done" or "later"."""
    said = await outbox.said_as(answering.book.db, answering.room.id, reacted.target)
    line = marks.line_of(key)
    if said is None or said.kind not in REMINDERS:
        return False
    if line is None and key not in marks.DONE | marks.LATER:
        return False
    turn = await answering.turn(reacted.event, reacted.at)
    if line is not None or key in marks.DONE:
        acts, rest = await reminded.ticked(said.tx_id, line, turn)
        await answering.answer(acts, turn)
        await keeping.carry_out(turn, rest)
    else:
        put_off = await putoff.snoozed(said.tx_id, turn)
        await keeping.carry_out(turn, put_off)
        answering.replying.say(put_off.say)
    await answering.replying.to(reacted.target, reacted.event)
    return True
