"""What members say of a bin that they share: no scraps, and no act of the reading contract."""

from dataclasses import dataclass
from datetime import date
from typing import Literal, get_args

from handlers.practice.kinds import Kind

Duty = Literal["keep", "drain", "carry"]
"""What members take turns at."""

DUTIES: tuple[Duty, ...] = get_args(Duty)

Power = Literal["rename", "retire", "take", "settings"]
"""What a group may leave to those with power in its room."""

POWERS: tuple[Power, ...] = get_args(Power)


@dataclass(frozen=True, slots=True, kw_only=True)
class Handing:
    """A bin is to pass to somebody whom the room does not know yet."""

    bin: str
    to: str
    on: date | None = None
    days: float | None = None
    """For how many days."""
    away: str | None = None
    """While somebody is away, on days that are not told: see `Offer`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HandedOver:
    """The sender has given a bin to a member."""

    to: str
    bin: str | None = None
    """The one told of last; None: the one that the sender has offered."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Volunteered:
    """Somebody says of a member that they would take what is on offer."""

    to: str
    bin: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Condition:
    """What a bin was found to be like."""

    words: str
    bin: str | None = None
    mass_kg: float | None = None
    fill: float | None = None
    """How full it looks, 0 to 1."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Taking:
    """The sender has a bin now, or takes what is on offer."""

    bin: str | None = None
    by_name: bool = False
    """It takes only what is offered to the sender by name: "perfect"."""
    here: bool = False
    """So does this, and it is there by now: "it's arrived"."""
    again: bool = False
    """The bin was the sender's before: "got it back"."""
    found: Condition | None = None
    """What the bin was found to be like."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Wanting:
    """The sender asks to have a bin that another keeps."""

    bin: str | None = None
    """None: the one that was just spoken of."""
    on: date | None = None
    days: float | None = None
    """For how many days."""
    away: str | None = None
    """While somebody is away, on days that are not told: see `Offer`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Refusing:
    """The sender does not take what is on offer."""

    bin: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Withdrawing:
    """A bin is no longer on offer: its keeper keeps it."""

    bin: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Rehanded:
    """What the sender hands on is for another day, or for another to take."""

    bin: str | None = None
    to: str | None = None
    on: date | None = None
    days: int | None = None
    """So many days later than it was to be; earlier, if less than none."""
    turned_to: bool = False
    """The other is only turned to, so that it is meant of what nobody else is asked to take."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rota:
    """Members take turns, each for some days, from a day on."""

    members: tuple[str, ...]
    days: int
    guessed: bool = False
    """Nobody said how long a turn is."""
    duty: Duty = "keep"
    bin: str | None = None
    start: date | None = None
    other: str | None = None
    """What else than a bin they are to take turns at, in the words said."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Joining:
    """A member comes to a rota."""

    member: str | None = None
    bin: str | None = None
    duty: Duty | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Quitting:
    """A member leaves a rota."""

    member: str | None = None
    bin: str | None = None
    duty: Duty | None = None
    on: date | None = None
    """From which day on; None: at once."""
    after_turn: bool = False
    """Once the present turn is over."""
    until: date | None = None
    """The last day of a time for which alone they are out of it."""


Place = Literal["first", "last", "before", "after", "swapped", "instead", "by name"]
"""Where in the order of turns somebody is to come."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Rearranged:
    """The turns of a rota in another order, or of another length in days."""

    member: str | None = None
    place: Place | None = None
    other: str | None = None
    """Before, after or instead of whom, or with whom swapped."""
    days: int | None = None
    bin: str | None = None
    maybe: bool = False
    """Other things may be meant: nothing is said where there is no rota."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RotaOver:
    """A rota ends."""

    bin: str | None = None
    duty: Duty | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WhoseTurn:
    """Who has the turn, and who comes after?"""

    bin: str | None = None
    on: date | None = None
    """From which day to come on."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Swap:
    """The sender would rather have another turn than their next one, or than that of a day."""

    to: str | None = None
    bin: str | None = None
    on: date | None = None
    told: bool = False
    """Told as agreed between the two, where it may be of something else: "I swapped with Bram"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SwapOff:
    """A swap that was asked for, or agreed, is not to be."""

    to: str | None = None
    bin: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Rename:
    """A bin gets another name."""

    bin: str
    name: str
    other: str | None = None
    """The bin whose name it is to have, and which is to have its own."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Retire:
    """A bin goes out of use."""

    bin: str | None = None
    deleted: bool = False
    """It is to be deleted: where it was opened by mistake, that is struck out."""
    maybe: bool = False
    """It may be meant: "the blue bin is gone"."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelWanted:
    """A label is to be made for a bin."""

    bin: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Bar:
    """A group keeps some kinds out of a bin; none: whatever the craft allows may go in."""

    bin: str
    kinds: tuple[Kind, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Reserve:
    """Some things are to be for those with power in the room, or for everybody."""

    what: tuple[Power, ...]
    for_everybody: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class WhoMay:
    """Who may do what?"""


@dataclass(frozen=True, slots=True, kw_only=True)
class WhoPut:
    """Who put such scraps in, or what did a member put in?"""

    kinds: tuple[Kind, ...] = ()
    words: str = ""
    """The scraps in the words said; empty: any."""
    member: str | None = None
    bin: str | None = None
    first: date | None = None
    last: date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WhoKept:
    """Who kept a bin, between two days or at all?"""

    bin: str | None = None
    first: date | None = None
    last: date | None = None
    before: str | None = None
    """The keeper before this one is asked for."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WhenLast:
    """When was something last done to a bin, or to any, and by whom?"""

    deed: Literal["open", "layer", "drain", "seal", "bury"]
    bin: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class InGround:
    """What was buried at a place, and when can it be planted?"""

    place: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Written:
    """What did the sender, or another, or everybody write down between two days?"""

    first: date
    last: date
    member: str | None = None
    of_all: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Story:
    """What happened to a bin in its present run, the one before, or the one of a number?"""

    bin: str | None = None
    run: int = 0
    """0: the present one; -1: the one before; 1, 2, …: that one."""


Communal = (
    Handing
    | HandedOver
    | Volunteered
    | Taking
    | Wanting
    | Refusing
    | Withdrawing
    | Rehanded
    | Condition
    | Rota
    | Joining
    | Quitting
    | Rearranged
    | RotaOver
    | WhoseTurn
    | Swap
    | SwapOff
    | Rename
    | Retire
    | LabelWanted
    | Bar
    | Reserve
    | WhoMay
    | WhoPut
    | WhoKept
    | WhenLast
    | InGround
    | Written
    | Story
)
