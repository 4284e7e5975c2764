"""What one event does: the record it makes, changes or strikes, and the reply to it."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from functools import partial

from bot import answered, asked, favours, marked, neighbours, planned, takenback, unasked
from bot.answering import Answering
from bot.heard import Edited, Moved, Ranked, Reacted, Said, Withdrawn, local_part
from bot.passing import by_account, by_present_name, with_offers
from bot.spoken import bin_named, of_bin_in_talk
from bot.talk import ASKS_AMOUNT
from handlers import arranging
from handlers.answer import Turn
from handlers.asked.help import NOT_UNDERSTOOD
from handlers.doubtful import unsure
from handlers.doubtful.confirming import fullness_anew
from handlers.doubtful.neighbours import FIGURES, UNCLEAR, asked_first, bin_meant
from handlers.reading.acts import Act, Amend, Drain, Layer, Observe
from handlers.reading.arranged import Plan
from handlers.reading.plans import Reading, planned_in
from handlers.reading.room.askeddeed import CUES as ASKING_DEED
from handlers.reading.room.askeddeed import asked_deed
from handlers.reading.room.inthetalk import SmallTalk, may_answer, small_talk
from handlers.reading.room.neighbours import asks_neighbours
from handlers.recording import keeping
from handlers.righting import corrections
from handlers.righting.whichrecord import with_bin_told
from handlers.sharing import presence
from storage import changes, leaders, traces
from storage.rows import Question

QUESTION_STANDS, BIN_STANDS = timedelta(days=1), timedelta(days=14)
"""How long a bare answer is taken for one to a question of ours; one that lacks its bin till a bin
is filled.
"""


@dataclass(slots=True)
class Hearing(Answering):
    """One event being taken in, inside a transaction: `take` it once."""

    asks: str | None = None
    """The mark of what it asks of the others in the room."""
    favour: str | None = None
    """The mark of what it asks of a neighbour, or promises one."""
    deed: Drain | Layer | None = None
    """What it asks the others to have done."""
    planned: Sequence[Layer] = ()
    """What its sender means to put in."""
    helps: Sequence[str] = ()
    """The bins that its sender promised to see to, if one of them may be meant."""
    named: str | None = None
    """The one bin that it names."""
    talked: SmallTalk | None = None
    """What it is of, where it is of other things than the bins."""

    async def take(self) -> None:
        """Change the book as the event demands, and find the reply to it."""
        self.heard = await self.talk.with_names(self.heard)
        match self.heard:
            case Moved():
                await self._moved(self.heard)
            case Said(automatic=False):
                await self._said(self.heard)
            case Edited(automatic=False):
                await self._edited(self.heard)
            case Withdrawn():
                await takenback.take(self.heard, self)
            case Reacted():
                await marked.take(self.heard, self)
            case Ranked():
                await leaders.put(self.book, self.heard.users, self.heard.made_by)

    async def _moved(self, moved: Moved) -> None:
        if moved.user == self.own:
            return
        known = next((m for m in await self.book.members() if m.user == moved.user), None)
        name = moved.name or (known.name if known else local_part(moved.user))
        await changes.meet(self.book, moved.user, name, present=moved.present)
        if known is None or known.present == moved.present:
            return
        turn = await self.turn(moved.event, moved.at)
        name = await self.book.name_of(moved.user) or name
        told = presence.returned if moved.present else presence.left
        await keeping.carry_out(turn, told(name, turn))
        if not moved.present:
            await unasked.put_at_once(self.book, self.now)

    async def _said(self, said: Said) -> None:
        if await self.book.is_withdrawn(said.event):
            return  # its key came only after it was taken back
        refers_to = await self.talk.record_behind(said.replies_to)
        turn = await self.turn(said.event, said.at, refers_to)
        if await self._settled(said, turn):
            return
        acts = await self._understood(said, turn)
        turn = replace(turn, helps=self.helps)
        acts, begun = await asked.begun_by_use(acts, said, self.talk)
        if begun:
            await self.settle(begun, unsure.guess_of(begun), said.event)
        acts, which = await asked.which_of_many(acts, said, turn, self.talk)
        acts, others = await asked.of_anothers_bin(acts, turn, self.talk)
        for question in filter(None, (which, others)):
            await self.take_up(question, turn)
        if refers_to is None and any(isinstance(act, Amend) for act in acts):
            turn = replace(turn, refers_to=await self.talk.told_of_sender(turn))
        await self.answer(acts, turn)
        self.replying.say(await asked.cut_off(said, turn, self.talk))
        if not acts and self.talk.calls_us(said):
            if "?" in said.body:
                self.replying.say(NOT_UNDERSTOOD)
            else:
                self.replying.say(await asked.unwritten(said, self.book))
        await self.replying.to(said.event, said.event, said.thread)

    async def _open_question(self, said: Said, turn: Turn) -> Question | None:
        """The question of ours that it may answer: the one replied to, or the sender's last."""
        question = (
            await self.book.question_about(turn.refers_to)
            if turn.refers_to
            else await self.book.question(turn.sender)
        )
        if question is None or question.sender != turn.sender:
            question = await asked.of_another(said, turn, self.talk)
        if question is None:
            return None
        stands = BIN_STANDS if question.lacks in ("bin", "days", "leave") else QUESTION_STANDS
        if said.at - question.asked_at > stands:
            return None
        if question.lacks == "yes" and turn.refers_to is None:
            last = await self.book.last_by(turn.sender)
            if last and last.written_at > question.asked_at:
                return None  # what was written down since is what a bare yes would be about
            if await asked.is_put_right_since(question, self.book):
                return None
        return question

    async def _settled(self, said: Said, turn: Turn) -> bool:
        """Whether it answered a question of ours, and was dealt with as such."""
        question = await self._open_question(said, turn)
        if question is None:
            return False
        if question.lacks == "yes" and await self._asked_anew(said, question, turn):
            return True
        acts = await unsure.settled(said.body, question, self.book)
        if acts is None and question.lacks == "amount" and turn.refers_to is None:
            await changes.settle_question(self.book, question, said.event)
            return await self._settled(said, turn)  # the question before it may be meant
        if acts is None or await self._figure_is_of_talk(said, question):
            return False
        if question.lacks in UNCLEAR and await self._is_of_talk(said, turn, question):
            meant = bin_meant(question, acts)
            if meant is None:
                return False
            await self.take_up(meant, turn)
        else:
            await self.settle(question, acts, said.event)
            await self._settle_before(question, acts, said, turn)
        await self.replying.to(said.event, said.event, said.thread)
        return True

    async def _figure_is_of_talk(self, said: Said, question: Question) -> bool:
        """Whether a figure that would settle a question of ours answers another's question."""
        return question.lacks in FIGURES and await neighbours.is_answered(
            said, self.talk, but=ASKS_AMOUNT
        )

    async def _asked_anew(self, said: Said, question: Question, turn: Turn) -> bool:
        """Whether it tells otherwise what was asked about, which is then asked once more."""
        guess, room = unsure.guess_of(question), self.room
        fuller = fullness_anew(said.body, guess, question.asked_at, room)
        if fuller is None or await self._is_of_talk(said, turn, question):
            return False
        await changes.settle_question(self.book, question, said.event)
        await self.take_up(await arranging.answer(fuller, turn), turn)
        await self.replying.to(said.event, said.event, said.thread)
        return True

    async def _is_of_talk(self, said: Said, turn: Turn, question: Question) -> bool:
        """Whether what would answer a question of ours answers what was talked of since."""
        if await neighbours.is_answered(said, self.talk):
            return True
        if turn.refers_to is not None or self.talk.calls_us(said):
            return False
        return not may_answer(await neighbours.said_behind([question.event], said, self.talk))

    async def _settle_before(
        self, question: Question, acts: Sequence[Act | Plan], said: Said, turn: Turn
    ) -> None:
        """Settle also the question before it, where the same words answer both."""
        if question.lacks != "bin" or not unsure.is_of_more(said.body, acts):
            return
        before = await asked.before(said, turn, self.talk)
        also = await unsure.settled(said.body, before, self.book) if before else None
        if before and also is not None:
            await self.settle(before, also, said.event)

    async def _edited(self, edited: Edited) -> None:
        original = await traces.trace(self.book.db, self.room.address, edited.original)
        if original is None or original.sender != edited.sender or original.kind != "said":
            return  # unknown, another's, or itself an edit: invalid by the specification
        for event in (edited.event, edited.original):
            if await self.book.is_withdrawn(event):
                return
        turn = await self.turn(
            edited.original,
            original.at,
            await self.talk.record_behind(original.about),
            edited.event,
        )
        await self.drop_question(edited.original, edited.event)
        undone = await corrections.undo(edited.original, turn)
        await keeping.carry_out(turn, undone)
        question = await asked.before_edit(edited.original, original, turn)
        answers = await unsure.settled(edited.body, question, self.book) if question else None
        if question and answers is not None:
            await self.settle(question, answers, edited.event)
        else:
            acts = await self._understood(edited, turn)
            await planned.told_anew(original, self.planned, self.book)
            former = await self.book.last_of_event(edited.original)
            acts = await with_bin_told(acts, former, edited.original, self.book)
            await self.answer(acts, turn, succeeding=former)
        if undone.strikes and not self.replying.spoken and not self.replying.noted:
            self.replying.say(corrections.undone_words(undone, turn))
        await self.replying.anew(edited.original, edited.event)

    async def _next(self, heard: Said | Edited) -> bool:
        """Whether it comes next after words of ours."""
        return isinstance(heard, Said) and await self.talk.comes_next(heard)

    async def _understood(self, heard: Said | Edited, turn: Turn) -> list[Act | Plan]:
        former = await self.book.former_names()
        context = await self.talk.context(heard, turn, tuple(former))
        self.leant_on = context.asked
        reading = Reading(heard.body, await with_offers(context, turn, partial(self._next, heard)))
        self.planned = planned_in(reading)
        acts: Sequence[Act | Plan] = await neighbours.not_of_another(reading.acts, heard, self.talk)
        if isinstance(heard, Said):
            self.deed = asked_deed(reading.message) if reading.message.has(ASKING_DEED) else None
            self.named = bin_named(reading.message)
            acts = await neighbours.not_among_others(acts, heard, reading, self.talk)
            acts = await neighbours.only_amounts(acts, heard, reading, self.talk)
            acts = await answered.without_doses(acts, heard, reading, self.talk)
            if not turn.refers_to and asks_neighbours(reading, acts):
                self.asks = neighbours.asking_mark(reading.message)
            acts, self.favour = await favours.asked_or_promised(
                acts, heard, reading, self.talk, turn
            )
            told = acts
            acts, self.helps = await favours.fulfilled(told, heard, reading, self.talk, turn)
            self.replying.aloud = acts != told
            acts = await of_bin_in_talk(acts, heard, reading.message, self.talk)
            acts, doubted = await neighbours.for_us(acts, heard, reading, self.talk, turn)
            if not doubted:
                unkept = all(isinstance(act, Observe) and act.soil for act in acts)
                self.talked = small_talk(heard.body, context, () if unkept else acts)
            for act in doubted:
                await self.take_up(await asked_first(act, turn), turn)
        members = await self.book.members()
        acts = [by_account(act, members, (*heard.mentions, *heard.ids)) for act in acts]
        return [by_present_name(act, former) for act in acts] if former else list(acts)
