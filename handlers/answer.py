"""What a handler is given and what it gives back; it neither sends nor commits."""

import json
from collections.abc import Awaitable, Callable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Literal

from handlers.asked.labelart import Label
from handlers.reading.actjson import as_json
from handlers.reading.acts import Act
from handlers.reading.arranged import Plan
from storage.book import Book
from storage.moments import local_day
from storage.rows import Due, Entry, Facts, Member, NewEntry, Units

Lacking = Literal["yes", "bin", "bins", "size", "which", "amount", "day", "days", "task", "leave"]
"""What would settle a question: a yes, a bin, which one or which a group has, a bin's size, how
much, what day or days."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Turn:
    """One message being answered: whose book, which message, by whom, on which day."""

    book: Book
    event: str
    """The message that entries stand for: an edit stands for the message it changes."""
    cause: str
    """The event that makes us write: the message, its edit, or a correction of it."""
    sender: str
    """The sender's name in the room."""
    at: datetime
    """When the message was said (UTC)."""
    now: datetime
    """When its cause was heard (UTC): later than `at` for an edit or a correction."""
    today: date
    """The group's local day of `now`: what "yesterday" in an answer is counted from."""
    refers_to: str | None = None
    """The message whose record it replies to, through the bot's answer if need be."""
    told: Sequence[Act | Plan] = ()
    """All that the message tells, of which one thing is being answered."""
    wanted: Units | None = None
    """The units that the answer is asked for in; None: the group's own."""
    helps: Sequence[str] = ()
    """The bins that the sender promised to see to, where it is asked whether one of them is meant.
    """

    @property
    def units(self) -> Units:
        """The units that amounts are said in."""
        return self.wanted or self.book.room.units

    def entry(  # one parameter for each thing that can be said of an entry
        self,
        act: str,
        *,
        bin: str | None,
        facts: Facts | None = None,
        member: str | None = None,
        on: date | None = None,
        receiver: str | None = None,
        until: date | None = None,
    ) -> NewEntry:
        """A new entry for this message, done by its sender on its day unless said otherwise."""
        return NewEntry(
            act=act,
            event=self.event,
            cause=self.cause,
            said_at=self.at,
            written_at=self.now,
            bin=bin,
            member=member or self.sender,
            writer=self.sender,
            on=on or local_day(self.at, self.book.room.zone),
            facts=facts or Facts(),
            receiver=receiver,
            until=until,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class PutOff:
    """A due not to be named before a day; None: it is put off no longer."""

    due: Due
    until: date | None


SettingName = Literal[
    "zone",
    "units",
    "habit",
    "choice",
    "digest",
    "quiet",
    "quiet days",
    "reminders",
    "calendar link",
    "own calendar link",
    "reserved",
    "notice",
]


@dataclass(frozen=True, slots=True, kw_only=True)
class Setting:
    """A setting of the group to change."""

    what: SettingName
    value: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Query:
    """What the bot asks before writing down: the acts it guessed, and what would settle it."""

    guess: str
    lacks: Lacking
    of: str | None = None
    """Who is to answer it; None: the sender."""

    @classmethod
    def about(cls, *acts: Act, lacks: Lacking, of: str | None = None) -> "Query":
        """The question about these acts."""
        return cls(guess=json.dumps([as_json(act) for act in acts]), lacks=lacks, of=of)


@dataclass(frozen=True, slots=True, kw_only=True)
class Answer:
    """What to write down and what to say about one act."""

    entries: Sequence[NewEntry] = ()
    strikes: Sequence[Entry] = ()
    put_off: Sequence[PutOff] = ()
    settings: Sequence[Setting] = ()
    query: Query | None = None
    forgets: Member | None = None
    """Who is to be taken out of the book, after all else."""
    attach: Literal["picture", "calendar file"] | Label | None = None
    """What is to be posted besides words."""
    say: str = ""
    """The words of the reply; lines are parted by newlines."""
    noted: bool = False
    """A mark on the message is answer enough."""
    calls: Sequence[str] = ()
    """The names of the members whom the words are to reach."""
    why: Sequence[str] = ()
    """The arithmetic behind the words, its sources and standing, line by line."""


SILENCE = Answer()

Handler = Callable[[Act, Turn], Awaitable[Answer]]
"""What answers any act: given to a handler that turns one act into another."""
