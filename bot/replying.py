"""What comes up while an event is taken in, and the one message that it is answered with."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime

from bot import unasked
from bot.attachments import attachment
from handlers.answer import Answer, Turn
from handlers.asked import why
from handlers.phrasing import DONE
from handlers.practice.figure import listed
from handlers.recording.describing import describe
from storage import outbox
from storage.book import Book
from storage.rows import Message

MOST_ANSWERS = 6
"""Answers to one message that are told in full; all of it is written down."""


@dataclass(slots=True)
class Replying:
    """The answers to one event, gathered into a reply."""

    book: Book
    now: datetime
    message: Message | None = None
    """What is to be put into the outbox, after the files and pictures."""
    spoken: list[str] = field(default_factory=list)
    noted: list[str] = field(default_factory=list)
    """What was written down and needs no words but a mark."""
    aloud: bool = False
    """Whether what was written down is said in words: whoever told it named no bin."""
    urgent: bool = False
    """Whether it tells what to do where somebody is hurt."""
    _reasons: list[str] = field(default_factory=list)
    _attached: list[Message] = field(default_factory=list)
    """Files and pictures to be posted."""
    _called: list[str] = field(default_factory=list)
    """The members whom the words are to reach."""

    def say(self, words: str | None) -> None:
        """Say something, if there is anything to say."""
        if words:
            self.spoken.append(words)

    async def take_up(self, answer: Answer, turn: Turn) -> None:
        """Keep what an answer says, or the mark in place of words."""
        told = any(said.endswith(answer.say) for said in self.spoken)  # as advice with its record
        if answer.say and (answer.entries or not told):
            self.spoken = [s for s in self.spoken if s == answer.say or not answer.say.endswith(s)]
            self.spoken.append(answer.say)
        elif answer.noted:
            entries = [describe(entry, turn) for entry in answer.entries]
            self.noted.append(listed(entries) if entries else "")
        if answer.attach:
            self._attached.append(await attachment(self.book, answer.attach, turn))
        self._reasons.extend(answer.why)
        self._called.extend(answer.calls)

    async def to(self, event: str, cause: str, thread: str | None = None) -> None:
        """Reply to an event with what came up: words, or else a mark that it is written down."""
        await self._post(cause, event, thread)
        if self.spoken or (self.noted and self.aloud):
            self.message = await self._worded(cause, event, thread=thread)
        elif self.noted:
            self.message = Message(tx_id=f"ok-{cause}", kind="reaction", body=DONE, to_event=event)

    async def anew(self, event: str, cause: str, *, only_if_answered: bool = False) -> None:
        """Like `to`, in place of the answer that was given before, if one was."""
        before = await outbox.answer_to(self.book.db, self.book.room.id, event)
        if before is None:
            if not only_if_answered:
                await self.to(event, cause)
            return
        await self._post(cause, event, None)
        if self.spoken or self.noted:
            row, _ = before
            self.message = await self._worded(cause, event, rewrites=row)

    async def _worded(
        self, cause: str, event: str, *, thread: str | None = None, rewrites: int | None = None
    ) -> Message:
        return Message(
            tx_id=f"{outbox.URGENT if self.urgent else 're'}-{cause}",
            kind="reply",
            body=_words(self.spoken, [words for words in self.noted if words]),
            to_event=event,
            mentions=await unasked.users(self.book, self._called),
            thread=thread,
            rewrites=rewrites,
            why=why.explained(self._reasons) or None,
        )

    async def _post(self, cause: str, event: str, thread: str | None) -> None:
        """Put the files and pictures into the outbox."""
        for message in self._attached:
            tx_id = f"{message.kind}-{cause}"
            posted = replace(message, tx_id=tx_id, to_event=event, thread=thread)
            await outbox.put(self.book.db, self.book.room.id, posted, self.now)


def _words(spoken: Sequence[str], noted: Sequence[str]) -> str:
    if len(spoken) > MOST_ANSWERS:
        rest = len(spoken) - MOST_ANSWERS
        spoken = [*spoken[:MOST_ANSWERS], f"… and so on for {rest} more."]
    if not noted:
        return "\n".join(spoken) or f"{DONE} Noted."
    also = "Also noted" if spoken else "Noted"
    return "\n".join([*spoken, f"{also}: {listed(noted[:MOST_ANSWERS])}."])
