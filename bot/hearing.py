"""What one event does: the record it makes, changes or strikes, and the reply to it."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from functools import partial

from bot import asked, favours, marks, neighbours, unasked
from bot.heard import Edited, Heard, Moved, Ranked, Reacted, Said, Withdrawn, local_part
from bot.passing import by_account, by_present_name, with_offers
from bot.replying import Replying
from bot.talk import REMINDERS, Talk
from handlers import arranging, people, route
from handlers.answer import Answer, Turn
from handlers.asked import why
from handlers.asked.help import NOT_UNDERSTOOD
from handlers.doubtful import unsure
from handlers.doubtful.neighbours import UNCLEAR, asked_first, bin_meant
from handlers.planning import reminded
from handlers.reading.acts import Act, Amend, Ask, Decline, Later, Observe, Retract
from handlers.reading.arranged import CallOff, Harm, Plan, Skip
from handlers.reading.arranged import Moved as DateMoved
from handlers.reading.plans import Reading
from handlers.reading.room.inthetalk import SmallTalk, may_answer, small_talk
from handlers.reading.room.neighbours import asks_neighbours
from handlers.recording import keeping
from handlers.righting import corrections
from handlers.righting.whichrecord import with_bin_told
from handlers.sharing import custody, presence
from storage import changes, inbox, leaders, notices, outbox
from storage.book import Book
from storage.inbox import Item, Trace
from storage.moments import local_day
from storage.rows import Entry, Question, Room

QUESTION_STANDS, BIN_STANDS = timedelta(days=1), timedelta(days=14)
"""How long a bare answer is taken for one to a question of ours; one that lacks its bin till a bin
is filled.
"""


@dataclass(slots=True)
class Hearing:
    """One event being taken in, inside a transaction: `take` it once."""

    book: Book
    heard: Heard
    item: Item
    now: datetime
    own: str
    replying: Replying = field(init=False)
    forgot: bool = False
    """Whether the sender asked to be forgotten, and was."""
    asks: bool = False
    """Whether it asks the others in the room."""
    favour: str | None = None
    """The mark of what it asks of a neighbour, or promises one."""
    helps: Sequence[str] = ()
    """The bins that its sender promised to see to, if one of them may be meant."""
    talked: SmallTalk | None = None
    """What it is of, where it is of other things than the bins."""
    asked: list[Ask] = field(default_factory=list)
    """What it asked of the craft, and was answered."""
    leant_on: Sequence[Ask] = ()
    """What had been asked before, where its words may lean on that."""
    talk: Talk = field(init=False)

    def __post_init__(self) -> None:
        self.talk = Talk(self.book, self.item, self.own)
        self.replying = Replying(self.book, self.now)

    @property
    def room(self) -> Room:
        """The room it was heard in."""
        return self.book.room

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
                await self._withdrawn(self.heard)
            case Reacted():
                await self._reacted(self.heard)
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
        turn = await self._turn(moved.event, moved.at)
        name = await self.book.name_of(moved.user) or name
        told = presence.returned if moved.present else presence.left
        await keeping.carry_out(turn, told(name, turn))
        if not moved.present:
            await unasked.put_at_once(self.book, self.now)

    async def _said(self, said: Said) -> None:
        if await self.book.is_withdrawn(said.event):
            return  # its key came only after it was taken back
        refers_to = await self.talk.record_behind(said.replies_to)
        turn = await self._turn(said.event, said.at, refers_to)
        if await self._settled(said, turn):
            return
        acts = await self._understood(said, turn)
        turn = replace(turn, helps=self.helps)
        acts, which = await asked.which_of_many(acts, said, turn, self.talk)
        if which:
            await self._take_up(which, turn)
        if refers_to is None and any(isinstance(act, Amend) for act in acts):
            turn = replace(turn, refers_to=await self.talk.told_of_sender(turn))
        await self._answer(acts, turn)
        self.replying.say(await asked.cut_off(said, turn, self.talk))
        if not acts and self.talk.calls_us(said):
            if "?" in said.body:
                self.replying.say(NOT_UNDERSTOOD)
            else:
                self.replying.say(await asked.unwritten(said, self.book))
        await self.replying.to(said.event, said.event, said.thread)

    async def _settled(self, said: Said, turn: Turn) -> bool:
        """Whether it answered a question of ours, and was dealt with as such."""
        question = (
            await self.book.question_about(turn.refers_to)
            if turn.refers_to
            else await self.book.question(turn.sender)
        )
        if question is None or question.sender != turn.sender:
            question = await asked.of_another(said, turn, self.talk)
        if question is None:
            return False
        stands = BIN_STANDS if question.lacks in ("bin", "leave") else QUESTION_STANDS
        if said.at - question.asked_at > stands:
            return False
        if question.lacks == "yes" and turn.refers_to is None:
            last = await self.book.last_by(turn.sender)
            if last and last.written_at > question.asked_at:
                return False  # what was written down since is what a bare yes would be about
        acts = await unsure.settled(said.body, question, self.book)
        if acts is None and question.lacks == "amount" and turn.refers_to is None:
            await changes.settle_question(self.book, question, said.event)
            return await self._settled(said, turn)  # the question before it may be meant
        if acts is None:
            return False
        if question.lacks in UNCLEAR and await self._is_of_talk(said, turn, question):
            meant = bin_meant(question, acts)
            if meant is None:
                return False
            await self._take_up(meant, turn)
        else:
            await self._settle(question, acts, said.event)
            await self._settle_before(question, acts, said, turn)
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
        self, question: Question, acts: Sequence[Act], said: Said, turn: Turn
    ) -> None:
        """Settle also the question before it, where the same words answer both."""
        if question.lacks != "bin" or not unsure.is_of_more(said.body, acts):
            return
        before = await asked.before(said, turn, self.talk)
        also = await unsure.settled(said.body, before, self.book) if before else None
        if before and also is not None:
            await self._settle(before, also, said.event)

    async def _settle(self, question: Question, acts: Sequence[Act], by: str) -> None:
        await changes.settle_question(self.book, question, by)
        about = await inbox.trace(self.book.db, self.room.address, question.event)
        at = about.at if about else question.asked_at
        amends = question.lacks == "bin" and any(isinstance(act, Amend) for act in acts)
        turn = await self._turn(
            question.event, at, refers_to=question.event if amends else None, cause=by
        )
        await self._answer(acts, turn)

    async def _edited(self, edited: Edited) -> None:
        original = await inbox.trace(self.book.db, self.room.address, edited.original)
        if original is None or original.sender != edited.sender or original.kind != "said":
            return  # unknown, another's, or itself an edit: invalid by the specification
        for event in (edited.event, edited.original):
            if await self.book.is_withdrawn(event):
                return
        turn = await self._turn(
            edited.original,
            original.at,
            await self.talk.record_behind(original.about),
            edited.event,
        )
        await self._drop_question(edited.original, edited.event)
        undone = await corrections.undo(edited.original, turn)
        await keeping.carry_out(turn, undone)
        question = await asked.before_edit(edited.original, original, turn)
        answers = await unsure.settled(edited.body, question, self.book) if question else None
        if question and answers is not None:
            await self._settle(question, answers, edited.event)
        else:
            acts = await self._understood(edited, turn)
            former = await self.book.last_of_event(edited.original)
            acts = await with_bin_told(acts, former, edited.original, self.book)
            await self._answer(acts, turn, succeeding=former)
        if undone.strikes and not self.replying.spoken and not self.replying.noted:
            self.replying.say(corrections.undone_words(undone, turn))
        await self.replying.anew(edited.original, edited.event)

    async def _withdrawn(self, withdrawn: Withdrawn) -> None:
        target = withdrawn.target
        ours = await outbox.said_as(self.book.db, self.room.id, target)
        if ours and ours.kind == "calendar":
            await notices.take_away(self.book.db, self.room)
            return
        if ours:
            await outbox.taken_away(self.book.db, self.room.id, target)
        trace = await inbox.trace(self.book.db, self.room.address, target)
        at = trace.at if trace else withdrawn.at
        turn = await self._turn(target, at, cause=withdrawn.event)
        await self._drop_question(target, withdrawn.event)
        if trace and (other := await self._other_strike(trace)):
            await changes.strike_in_place_of(self.book, target, other)
            return
        undone = await corrections.undo(target, turn)
        await keeping.carry_out(turn, undone)
        if trace is None or trace.kind != "edited":
            await asked.reopened(target, self.book)
        if trace and trace.kind == "reacted":
            await favours.given_back(trace, turn)
        if not undone.strikes and not undone.entries:
            return
        self.replying.say(corrections.undone_words(undone, turn))
        await self.replying.anew(
            await self._answered(target, trace), withdrawn.event, only_if_answered=True
        )

    async def _other_strike(self, mark: Trace) -> str | None:
        """The mark by which its setter still strikes out what the one taken back did."""
        if mark.kind != "reacted" or not _strikes(mark) or not mark.sender or not mark.about:
            return None
        db, room = self.book.db, self.room
        event = await self.talk.record_behind(mark.about) or mark.about
        marked = [event, *await outbox.answers_to(db, room.id, event)]
        for other in await inbox.marked_by(db, room.address, mark.sender, marked):
            is_another = other.event != mark.event and _strikes(other)
            if is_another and not await self.book.is_withdrawn(other.event):
                return other.event
        return None

    async def _answered(self, event: str, trace: Trace | None) -> str:
        """The message whose answer tells what an event did: an edit's, or the one struck out."""
        if trace is None or trace.about is None:
            return event
        if trace.kind == "reacted" and _strikes(trace):
            return await self.talk.record_behind(trace.about) or event
        return trace.about if trace.kind == "edited" else event

    async def _reacted(self, reacted: Reacted) -> None:
        key = marks.plain(reacted.key)
        if await self._answers_offer(reacted, key) or await self._answers_digest(reacted, key):
            return
        event = await self.talk.record_behind(reacted.target) or reacted.target
        trace = await inbox.trace(self.book.db, self.room.address, event)
        if trace and trace.sender != reacted.sender and key in marks.YES:
            turn = await self._turn(reacted.event, reacted.at)
            if promise := await favours.taken_by_mark(trace, turn):
                await self._take_up(await arranging.answer(promise, turn), turn)
        if await self._settled_by_mark(reacted, key, event):
            return
        if trace and trace.sender == reacted.sender and key in marks.STRIKE:
            turn = await self._turn(event, trace.at, cause=reacted.event)
            undone = await corrections.undo(event, turn)
            await keeping.carry_out(turn, undone)
            if undone.strikes or undone.entries:
                self.replying.say(corrections.undone_words(undone, turn))
                await self.replying.anew(event, reacted.event)

    async def _settled_by_mark(self, reacted: Reacted, key: str, event: str) -> bool:
        """Whether it was set on a question of ours by whom that was asked of, and answers it."""
        question = await self.book.question_about(event)
        if question is None or question.lacks not in ("yes", "leave"):
            return False
        asked_of = question.sender == await self.book.name_of(reacted.sender)
        if not asked_of or key not in marks.YES | marks.NO:
            return False
        word = "yes" if key in marks.YES else "no"
        acts = await unsure.settled(word, question, self.book)
        await self._settle(question, acts or [], reacted.event)
        await self.replying.to(event, reacted.event)
        return True

    async def _answers_offer(self, reacted: Reacted, key: str) -> bool:
        """Whether it was set on an offer, and so accepts or declines it."""
        if key not in marks.YES | marks.NO:
            return False
        event = await self.talk.record_behind(reacted.target) or reacted.target
        asked = [e for e in await self.book.of_event(event) if e.act in ("offer", "swap")]
        trace = await inbox.trace(self.book.db, self.room.address, event)
        if not asked or (trace and trace.sender == reacted.sender):
            return False
        turn = await self._turn(reacted.event, reacted.at, refers_to=event)
        await self._take_up(await custody.marked(event, turn, yes=key in marks.YES), turn)
        await self.replying.to(reacted.target, reacted.event)
        return True

    async def _answers_digest(self, reacted: Reacted, key: str) -> bool:
        """Whether it was set on a digest of ours, and was taken as "done" or "later"."""
        said = await outbox.said_as(self.book.db, self.room.id, reacted.target)
        line = marks.line_of(key)
        if said is None or said.kind not in REMINDERS:
            return False
        if line is None and key not in marks.DONE | marks.LATER:
            return False
        turn = await self._turn(reacted.event, reacted.at)
        if line is not None or key in marks.DONE:
            acts, rest = await reminded.ticked(said.tx_id, line, turn)
            await self._answer(acts, turn)
            await keeping.carry_out(turn, rest)
        else:
            put_off = await reminded.snoozed(said.tx_id, turn)
            await keeping.carry_out(turn, put_off)
            self.replying.say(put_off.say)
        await self.replying.to(reacted.target, reacted.event)
        return True

    async def _turn(
        self, event: str, at: datetime, refers_to: str | None = None, cause: str | None = None
    ) -> Turn:
        sender = await self.book.name_of(self.heard.sender)
        if sender is None:
            # Whoever was forgotten is met anew by the name they show, and not by their account.
            sender = self.heard.shown or local_part(self.heard.sender)
            await changes.meet(self.book, self.heard.sender, sender)
            sender = await self.book.name_of(self.heard.sender) or sender
        return Turn(
            book=self.book,
            event=event,
            cause=cause or event,
            sender=sender,
            at=at,
            now=self.heard.at,
            today=local_day(self.heard.at, self.room.zone),
            refers_to=refers_to,
        )

    async def _next(self, heard: Said | Edited) -> bool:
        """Whether it comes next after words of ours."""
        return isinstance(heard, Said) and await self.talk.comes_next(heard)

    async def _understood(self, heard: Said | Edited, turn: Turn) -> list[Act | Plan]:
        former = await self.book.former_names()
        context = await self.talk.context(heard, turn, tuple(former))
        self.leant_on = context.asked
        reading = Reading(heard.body, await with_offers(context, turn, partial(self._next, heard)))
        acts: Sequence[Act | Plan] = await neighbours.not_of_another(reading.acts, heard, self.talk)
        if isinstance(heard, Said):
            acts = await neighbours.not_among_others(acts, heard, reading, self.talk)
            acts = await neighbours.only_amounts(acts, heard, reading, self.talk)
            self.asks = not turn.refers_to and asks_neighbours(reading, acts)
            acts, self.favour = await favours.asked_or_promised(
                acts, heard, reading, self.talk, turn
            )
            told = acts
            acts, self.helps = await favours.fulfilled(told, heard, self.talk, turn)
            self.replying.aloud = acts != told
            acts, doubted = await neighbours.for_us(acts, heard, reading, self.talk, turn)
            if not doubted:
                unkept = all(isinstance(act, Observe) and act.soil for act in acts)
                self.talked = small_talk(heard.body, context, () if unkept else acts)
            for act in doubted:
                await self._take_up(await asked_first(act, turn), turn)
        members = await self.book.members()
        acts = [by_account(act, members, (*heard.mentions, *heard.ids)) for act in acts]
        return [by_present_name(act, former) for act in acts] if former else list(acts)

    async def _answer(
        self, acts: Sequence[Act | Plan], turn: Turn, succeeding: Sequence[Entry] = ()
    ) -> None:
        turn = replace(turn, told=acts)
        meant: set[type[Act]] = set()
        for act in acts:
            if isinstance(act, tuple(meant)):
                # "Cancel the caddy": the reminder was meant, and no record. Which reminders are set
                # is asked of the book only for a calling off, so that the reading cannot know it.
                continue
            if isinstance(act, Plan):
                answer = await arranging.answer(act, turn)
            elif isinstance(act, Ask) and act.topic == "why":
                answer = why.asked(await self.talk.figure_asked_about(self.heard, act.what))
                self.asked += self.leant_on
            else:
                answer = await route.answer(act, turn)
            if not self._names_somebody:
                answer = await people.with_namesake(answer, turn)
            if succeeding:
                answer = replace(answer, entries=corrections.succeed(answer.entries, succeeding))
            if isinstance(act, Ask) and answer.say:
                self.asked.append(act)
            self.replying.urgent |= isinstance(act, Harm) and bool(answer.say)
            meant |= _meant_besides(act, answer)
            await self._take_up(answer, turn)

    @property
    def _names_somebody(self) -> bool:
        """Whether a member is called by their Matrix id, so that nobody else can be meant."""
        return isinstance(self.heard, Said | Edited) and bool(self.heard.mentions or self.heard.ids)

    async def _take_up(self, answer: Answer, turn: Turn) -> None:
        """Write down what an answer says, and keep its words for the reply."""
        await keeping.carry_out(turn, answer)
        self.forgot = self.forgot or answer.forgets is not None
        await self.replying.take_up(answer, turn)

    async def _drop_question(self, event: str, by: str) -> None:
        question = await self.book.question_about(event)
        if question:
            await changes.settle_question(self.book, question, by)


def _strikes(mark: Trace) -> bool:
    return marks.plain(mark.mark or "") in marks.STRIKE


def _meant_besides(act: Act | Plan, answer: Answer) -> set[type[Act]]:
    """What else the words of a plan may be read as, which they do not mean once it is carried
    out.
    """
    if isinstance(act, CallOff) and answer.say:
        return {Retract}
    if isinstance(act, Skip) and answer.say:
        return {Retract, Later, Decline, Ask}
    return {Amend} if isinstance(act, DateMoved) and answer.entries else set()
