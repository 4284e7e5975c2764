"""Whose question of ours a few words answer, where it is not the sender's own last one; what is
asked of a reply to many records at once, and said to an order that was not understood.
"""

from collections.abc import Sequence

from bot.heard import Said
from bot.talk import TALK_GOES_ON, Talk
from handlers.answer import Answer, Turn
from handlers.asked.help import NOTHING_WRITTEN, TOO_LONG
from handlers.doubtful import unsure
from handlers.doubtful.asking import is_meant
from handlers.reading.acts import Act, Amend, Drain, Layer, Open, Retract, Unsure, meant
from handlers.reading.arranged import Plan
from handlers.reading.read import read
from handlers.reading.records import RECORD_KINDS
from handlers.righting.whichrecord import names_none
from storage import changes, outbox, traces
from storage.book import Book
from storage.rows import Question
from storage.traces import Trace


async def of_another(said: Said, turn: Turn, talk: Talk) -> Question | None:
    """What another was just asked about a record of the sender's own, who may answer it too."""
    latest = await outbox.latest(talk.book.db, talk.book.room.id)
    event = latest[0].to_event if latest and unsure.is_bare(said.body) else None
    before = await traces.last_said(talk.book.db, talk.book.room.address, talk.item.id)
    if event is None or before is None or before.event != event:
        return None
    question = await talk.book.question_about(event)
    if question and all(isinstance(act, Open) for act in unsure.guess_of(question)):
        return question  # whether a bin is to be begun is anybody's to say
    about = unsure.record_of(question) if question else None
    entries = await talk.book.of_event(about) if about else []
    return question if any(entry.writer == turn.sender for entry in entries) else None


async def begun_by_use(
    acts: Sequence[Act | Plan], said: Said, talk: Talk
) -> tuple[list[Act | Plan], Question | None]:
    """The acts, with what goes into a bin of which we asked lately whether it is to be begun no
    longer in doubt; and that question, which is answered by it.
    """
    named = [meant(act) for act in acts if isinstance(act, Act)]
    bins = {act.bin.casefold() for act in named if isinstance(act, Layer | Drain) and act.bin}
    if not bins:
        return list(acts), None
    for question in await talk.book.doubted():
        guess = unsure.guess_of(question)
        begun = {act.bin.casefold() for act in guess if isinstance(act, Open) and act.bin}
        if begun & bins and said.at - question.asked_at <= TALK_GOES_ON:
            return [meant(act) if isinstance(act, Unsure) else act for act in acts], question
    return list(acts), None


async def before(said: Said, turn: Turn, talk: Talk) -> Question | None:
    """Which bin was asked before the question just settled, if that was lately."""
    question = await talk.book.question(turn.sender)
    if question is None or question.lacks != "bin" or said.at - question.asked_at > TALK_GOES_ON:
        return None
    return question


async def reopened(answer: str, book: Book) -> Question | None:
    """The question that a message had answered, open again as the answer is changed or undone;
    none where the message that it was about is gone, or was itself changed.
    """
    question = await book.question_settled_by(answer)
    if question is None or await book.is_withdrawn(question.event):
        return None
    if await book.edits_of(question.event):
        return None
    await changes.settle_question(book, question, None)
    return question


async def before_edit(original: str, said: Trace, turn: Turn) -> Question | None:
    """The question that a message had answered, or stood behind without answering it."""
    if question := await reopened(original, turn.book):
        return question
    question = await turn.book.question(turn.sender)
    if question is None or question.lacks == "yes" or question.asked_at > said.at:
        return None
    return question if said.at - question.asked_at <= TALK_GOES_ON else None


async def unwritten(said: Said, book: Book) -> str | None:
    """What is said to an order that speaks of an amount and a bin, and was not understood."""
    names = [bin.name.casefold() for bin in await book.bins()]
    body = said.body.casefold()
    ordered = any(letter.isdecimal() for letter in body) and any(name in body for name in names)
    return NOTHING_WRITTEN if ordered else None


async def cut_off(said: Said, turn: Turn, talk: Talk) -> str | None:
    """What is owned up to where records stand behind the stretch of a message that is read."""
    if not said.beyond:
        return None
    context = await talk.context(said, turn, ())
    told = any(meant(act).act in RECORD_KINDS for act in read(said.beyond, context))
    return TOO_LONG if told else None


async def which_of_many(
    acts: list[Act | Plan], said: Said, turn: Turn, talk: Talk
) -> tuple[list[Act | Plan], Answer | None]:
    """The acts but for what is asked about first, and the question.

    A reply to a message that told several records together names none by itself.
    """
    bare = [act for act in acts if isinstance(act, Amend | Retract) and names_none(act)]
    if not bare or not (made := await talk.told_together(said)):
        return acts, None
    last = [entry for entry in made if entry.event == made[-1].event]
    question = is_meant(bare[0], last, turn, called="last record there")
    return [act for act in acts if act not in bare], question


async def of_anothers_bin(
    acts: list[Act | Plan], turn: Turn, talk: Talk
) -> tuple[list[Act | Plan], Answer | None]:
    """The acts but for a bin put right that is of what another has just told, and the question
    whether it is.

    The sender's own last record only opened a bin: "that's green actually" is not of that.
    """
    amends = [act for act in acts if isinstance(act, Amend) and act.bin]
    bare = [act for act in amends if act == Amend(bin=act.bin, rules=act.rules)]
    event = await talk.told_since_opening(turn) if bare and not turn.refers_to else None
    if event is None:
        return acts, None
    told = [entry for entry in await turn.book.of_event(event) if not entry.struck]
    return [act for act in acts if act not in bare], is_meant(bare[0], told, turn)


async def is_put_right_since(question: Question, book: Book) -> bool:
    """Whether the record that a question is about was changed after it was asked."""
    about = unsure.record_of(question)
    entries = await book.of_event(about) if about else []
    return any(entry.written_at > question.asked_at for entry in entries)
