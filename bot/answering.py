"""What all that is heard meets in: acts answered, questions settled, answers written down."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime

from bot.heard import Edited, Heard, Said, local_part
from bot.replying import Replying
from bot.talk import Talk
from handlers import arranging, people, route
from handlers.answer import Answer, Turn
from handlers.asked import why
from handlers.reading.acts import Act, Amend, Ask, Decline, Later, Retract
from handlers.reading.arranged import CallOff, Harm, Plan, Skip
from handlers.reading.arranged import Moved as DateMoved
from handlers.recording import keeping
from handlers.righting import corrections
from storage import changes, traces
from storage.book import Book
from storage.inbox import Item
from storage.moments import local_day
from storage.rows import Entry, Question, Room


@dataclass(slots=True)
class Answering:
    """One event being taken in: what the kinds of events have alike."""

    book: Book
    heard: Heard
    item: Item
    now: datetime
    own: str
    replying: Replying = field(init=False)
    forgot: bool = False
    """Whether the sender asked to be forgotten, and was."""
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

    async def turn(
        self, event: str, at: datetime, refers_to: str | None = None, cause: str | None = None
    ) -> Turn:
        """What the handlers need to know of an event; its sender is met if we do not know them."""
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

    async def answer(
        self, acts: Sequence[Act | Plan], turn: Turn, succeeding: Sequence[Entry] = ()
    ) -> None:
        """Answer the acts one by one; `succeeding` are the entries of the words they stand for."""
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
            await self.take_up(answer, turn)

    @property
    def _names_somebody(self) -> bool:
        """Whether a member is called by their Matrix id, so that nobody else can be meant."""
        return isinstance(self.heard, Said | Edited) and bool(self.heard.mentions or self.heard.ids)

    async def take_up(self, answer: Answer, turn: Turn) -> None:
        """Write down what an answer says, and keep its words for the reply."""
        await keeping.carry_out(turn, answer)
        self.forgot = self.forgot or answer.forgets is not None
        await self.replying.take_up(answer, turn)

    async def settle(self, question: Question, acts: Sequence[Act | Plan], by: str) -> None:
        """Take what a question of ours was answered with as told by what it asked about."""
        await changes.settle_question(self.book, question, by)
        about = await traces.trace(self.book.db, self.room.address, question.event)
        at = about.at if about else question.asked_at
        amends = question.lacks == "bin" and any(isinstance(act, Amend) for act in acts)
        turn = await self.turn(
            question.event, at, refers_to=question.event if amends else None, cause=by
        )
        await self.answer(acts, turn)

    async def drop_question(self, event: str, by: str) -> None:
        """Ask no longer about an event."""
        question = await self.book.question_about(event)
        if question:
            await changes.settle_question(self.book, question, by)


def _meant_besides(act: Act | Plan, answer: Answer) -> set[type[Act]]:
    """What else the words of a plan may be read as, which they do not mean once it is carried
    out.
    """
    if isinstance(act, CallOff) and answer.say:
        return {Retract}
    if isinstance(act, Skip) and answer.say:
        return {Retract, Later, Decline, Ask}
    return {Amend} if isinstance(act, DateMoved) and answer.entries else set()
