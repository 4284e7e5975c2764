"""What members arrange among themselves: no record, and no act of the reading contract."""

from dataclasses import dataclass
from datetime import date, time
from typing import Literal

from handlers.practice.harm import Hazard
from handlers.practice.lessons import Lesson
from handlers.reading.arrangements.communal import Communal


@dataclass(frozen=True, slots=True, kw_only=True)
class Away:
    """A member is away, from the first day to the last one; until they say so if `last` is None.

    It may be said to end before it begins: "from Monday till last Friday".
    """

    first: date
    last: date | None = None
    member: str | None = None
    stand_in: str | None = None
    """Who does their part meanwhile, if that is said."""
    asked: str | None = None
    """Who is asked to do it, and has not answered yet."""


@dataclass(frozen=True, slots=True, kw_only=True)
class AwayChanged:
    """An absence that was told before lasts until another day, or is on other days."""

    last: date | None = None
    """None: it is `more` days longer."""
    first: date | None = None
    """None: it begins as it was told; with no `last`, it ends as it was told."""
    more: int | None = None
    later: int | None = None
    """So many days later does it begin."""
    either: date | None = None
    """A day that may be its first one, or that on which its member is back."""
    no_earlier: bool = False
    """It is told to be later than it was: "I'm here till Sunday", "not back before Friday"."""
    is_back: bool = False
    """It was told when its member is back, on the day behind the last one."""
    weekday: bool = False
    """Told by days of the week: those of the absence are meant."""
    member: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class AwayAgain:
    """A member is away on days that come again: "I'm away on Tuesdays"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Back:
    """A member is back from a day on."""

    on: date
    member: str | None = None
    weekday: bool = False
    """Told by a day of the week."""
    by_the_way: bool = False
    """Told in words that one who was not away says as well: "home now"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Restored:
    """What the sender has just struck out is to stand as it was."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Pausing:
    """Reminders are to stop until a day; None: no such day was said."""

    until: date | None = None
    first: date | None = None
    """From a day to come on; None: from now on."""
    own: bool = False
    """Only the sender wants none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Staying:
    """A member does not go away after all."""

    member: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WhoIsAway:
    """Who is away between two days?"""

    first: date
    last: date


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnDate:
    """A reminder that a member sets: of what, from which day, how it recurs, and for whom."""

    words: str
    first: date | None
    """None: no day was said."""
    rule: str | None = None
    """An RRULE of RFC 5545; None: once."""
    until: date | None = None
    hour: time | None = None
    for_whom: str | None = None
    """None: for all."""
    guessed: bool = False
    """The half of the day that the hour is in was not said."""
    instead: bool = False
    """In place of the one of the same words, if there is one."""


@dataclass(frozen=True, slots=True, kw_only=True)
class CallOff:
    """Reminders that members set are no longer wanted: those of these words, or of a day."""

    words: str
    on: date | None = None
    all: bool = False
    if_set: bool = False
    """It may be something else that is called off: nothing is said if no reminder is meant."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Skip:
    """What comes again is left out between two days, or (None) the next time: a reminder of these
    words, if there is one; without words, the one that its sender has just set.
    """

    words: str
    first: date | None = None
    last: date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Untimed:
    """A reminder is wished for at no day of its own: so long before something, or once it is so."""

    words: str = ""
    """Before what; empty: before what was just set, or whatever is due."""
    days: int | None = None
    """None: not so many days before it."""
    hour: time | None = None
    instead: bool = False
    """In place of its own day."""
    once: bool = False
    """Once something is so, which no calendar can tell."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved:
    """A reminder of these words is for other days, or another hour, if there is one; without
    words, the one that its sender has just set."""

    words: str
    first: date | None
    rule: str | None = None
    """The RRULE that it is to come by now."""
    hour: time | None = None
    same_half: bool = False
    """The hour is told by its number alone: it is in the same half of the day as the one before."""


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnDates:
    """Which reminders are set?"""


@dataclass(frozen=True, slots=True, kw_only=True)
class Show:
    """The calendar is to be posted: as a picture, or as a file for calendar programs."""

    as_file: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class KeepUp:
    """The calendar is to hang at the top of the room, or no longer."""

    wanted: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Reopened:
    """A bin that was sealed is open again."""

    bin: str | None = None
    anew: bool = False
    """Words that may also begin a bin anew: "opened the shed bin again"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class BetweenBins:
    """Scraps passed from one bin of the group's into another."""

    source: str
    target: str
    mass_kg: float | None = None
    half: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Fullness:
    """How full a bin of the group's is told to be: a share of it, or what is in it."""

    bin: str
    share: float | None = None
    mass_kg: float | None = None
    litres: float | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Harm:
    """Somebody is hurt or could be."""

    hazard: Hazard


@dataclass(frozen=True, slots=True, kw_only=True)
class Taught:
    """Something of the craft is asked that nothing has to be reckoned for."""

    lesson: Lesson
    celsius: float | None = None
    """The temperature that it is asked for, if the lesson is of days."""
    since: date | None = None
    """The day of the sealing or burial from which it is asked."""
    days: int | None = None
    """How long the asker means to ferment."""
    bin: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WhatIsSet:
    """How is a setting of the group: its name, or "all"?"""

    what: str


@dataclass(frozen=True, slots=True, kw_only=True)
class WhichMeasure:
    """A volume was said in a measure that is not the same everywhere."""

    unit: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Unfit:
    """Something was put into a bin that stays out of it."""

    what: str
    bin: str | None = None
    volume_l: float | None = None
    beside_food: bool = False
    """There was food too, so that a layer is written down all the same."""
    ours: bool = True
    """A bin of the group is meant; else it may be the one for rubbish."""


@dataclass(frozen=True, slots=True, kw_only=True)
class NoSuchDay:
    """Something was arranged for a day that no calendar has."""


Deed = Literal["drain", "seal", "bury"]
"""What a neighbour may do to a bin in its keeper's place."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Favour:
    """The others are asked to see to a bin in its keeper's place: it changes no keeper."""

    deed: Deed | None = None
    """None: what it needs."""
    bin: str | None = None
    whose: str | None = None
    """Whose bin it is, where it has no name; None: the sender's."""
    is_it: bool = False
    """It was only called "it": the bin that the talk is on, if it is on one."""
    to: str | None = None
    """Who is asked; None: anybody."""
    cover: bool = False
    """It is for as long as its keeper is away."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Promise:
    """Somebody is to see to a bin in its keeper's place."""

    deed: Deed | None = None
    bin: str | None = None
    whose: str | None = None
    """Whose bin it is, where it has no name; None: that of the favour asked last."""
    by: str | None = None
    """Who does it; None: the sender."""
    cover: bool = False
    on: date | None = None
    """On or from which day to come, if that is said."""
    until: date | None = None
    """The last day, if one is said."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StarterUsed:
    """So much starter went on the layer just told, whatever was advised."""

    mass_kg: float | None = None
    volume_l: float | None = None


Plan = (
    Reopened
    | BetweenBins
    | Fullness
    | StarterUsed
    | Restored
    | Pausing
    | NoSuchDay
    | Unfit
    | KeepUp
    | Harm
    | Taught
    | WhatIsSet
    | WhichMeasure
    | Moved
    | Away
    | AwayAgain
    | AwayChanged
    | Back
    | Staying
    | WhoIsAway
    | Favour
    | Promise
    | OwnDate
    | CallOff
    | Skip
    | Untimed
    | OwnDates
    | Show
    | Communal
)
