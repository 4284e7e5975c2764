"""The records that cross the border between the book and the handlers."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, time
from typing import Any, Literal

Units = Literal["metric", "us", "imperial"]
Habit = Literal["spoon", "weight"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Room:
    """A group and its settings."""

    id: int
    address: str
    joined_at: datetime
    zone: str
    units: Units
    habit: Habit
    choices: Mapping[str, float | str]
    """Figures and recipes of the craft that the group chose itself, by the handlers' names."""
    digest_at: time
    quiet_from: time
    quiet_to: time
    quiet_days: frozenset[int]
    """Days of the week (Monday: 0) on which no digest is said."""
    reminds: bool
    told_on: date | None
    reserved: frozenset[str]
    """What only those with power in the room may do."""
    own_name: str
    """The name that the bot shows in the room; empty where it is not known."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Member:
    """Somebody in the group, or somebody only spoken of (`user` is None)."""

    id: int
    user: str | None
    name: str
    present: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Bin:
    """A bin by name; all else about it follows from its entries."""

    id: int
    name: str


@dataclass(frozen=True, slots=True, kw_only=True)
class About:
    """What was last said of a bin itself."""

    capacity_l: float | None
    shared: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Facts:
    """What an entry says, as it was said, in the book's units."""

    mass_kg: float | None = None
    volume_l: float | None = None
    materials: Mapping[Any, float] | None = None
    """Kind of scraps to share; the kinds are the handlers' words."""
    rich: float | None = None
    starter_g: float | None = None
    capacity_l: float | None = None
    shared: bool | None = None
    place: str | None = None
    signs: tuple[str, ...] = ()
    celsius: float | None = None
    ph: float | None = None
    words: str | None = None
    """What a member wishes to be reminded of; a bin's new name, its condition, what became of what
    was in it where it begins again; a rota's duty; that starter came ("more") or went ("less")."""
    days: int | None = None
    """How long each turn of a rota lasts; how far ahead a bin is accepted for."""
    hour: time | None = None
    """The local hour of it; None: with the digest."""
    rule: str | None = None
    """How it recurs: an RRULE of RFC 5545; None: once."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Entry:
    """One line of the book."""

    id: int
    act: str
    bin: Bin | None
    run: int | None
    member: str | None
    """Who did it."""
    writer: str | None
    """Who said so."""
    on: date | None
    said_at: datetime
    event: str
    cause: str
    facts: Facts
    written_at: datetime
    receiver: str | None = None
    until: date | None = None
    """The last day of what lasts; None where it has no end."""
    struck_at: datetime | None = None
    struck_by: str | None = None
    replaces: int | None = None
    root: int
    """The first of the entries that replaced each other."""

    @property
    def struck(self) -> bool:
        """Whether it no longer stands."""
        return self.struck_by is not None

    def anew(self, at: datetime, *, cause: str, replaces: int, facts: Facts) -> "NewEntry":
        """The same written down once more, at a moment, with these facts."""
        return NewEntry(
            act=self.act,
            event=self.event,
            cause=cause,
            said_at=self.said_at,
            written_at=at,
            bin=self.bin.name if self.bin else None,
            member=self.member,
            writer=self.writer,
            on=self.on,
            facts=facts,
            receiver=self.receiver,
            until=self.until,
            replaces=replaces,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class NewEntry:
    """An entry to write down. `bin` and people are names; an unknown one is added."""

    act: str
    event: str
    cause: str
    said_at: datetime
    written_at: datetime
    bin: str | None = None
    member: str | None = None
    writer: str | None = None
    on: date | None = None
    facts: Facts = field(default_factory=Facts)
    receiver: str | None = None
    until: date | None = None
    replaces: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Due:
    """Something to be done between two local days: to a bin, or (None) with the starter."""

    bin: Bin | None
    what: str
    from_day: date
    to_day: date
    occasion: str = ""
    """Which draining or which run it is of: tells it from the next due of its kind."""
    to_member: str | None = None
    """Who takes a bin that changes hands, mixed the starter, or wished to be reminded."""
    words: str | None = None
    """What a member set themselves to be reminded of."""
    hour: time | None = None
    """The local hour at which it is to be said; None: with the digest."""
    id: int = 0
    """Where it is kept; 0 before it was."""
    told_on: date | None = None
    """The day of the latest digest that named it."""
    put_off_until: date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Listed:
    """A due as calendars keep it: with how often it changed, and when it last did."""

    due: Due
    sequence: int
    changed_at: datetime
    gone: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Question:
    """What the bot asked and what it will write down when answered."""

    id: int
    event: str
    sender: str
    guess: str
    lacks: str
    asked_at: datetime


Kind = Literal[
    "reply", "reaction", "reminder", "digest", "notice", "greeting", "calendar", "file", "picture"
]


@dataclass(frozen=True, slots=True, kw_only=True)
class Message:
    """Something to say; `tx_id` makes sending it twice harmless."""

    tx_id: str
    kind: Kind
    body: str
    to_event: str | None = None
    mentions: tuple[str, ...] = ()
    thread: str | None = None
    rewrites: int | None = None
    why: str | None = None
    attached: str | None = None
    """What a file or a picture is made of."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Waiting:
    """A message of the outbox with the room it goes to; `rewrites_event` is the answer it edits."""

    id: int
    room: str
    message: Message
    made_at: datetime
    rewrites_event: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Absence:
    """A member is away from the first day to the last one; until they are back if that is None."""

    entry: int
    """The id of the entry that says so."""
    member: str
    first: date
    last: date | None
    stand_in: str | None = None
    """Whom the member named to do their part meanwhile."""
    asked: str | None = None
    """Who was asked to, and has not answered."""
