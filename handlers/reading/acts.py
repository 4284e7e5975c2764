"""What a message can mean: the acts.

The names of acts and fields are those of the reading contract and of `python -m bot read`.
A field is None when it was neither said nor follows from what was said.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import ClassVar, Literal

from handlers.practice.kinds import Shares
from handlers.practice.signs import Sign

Units = Literal["metric", "us", "imperial"]

By = Literal["member", "bin", "month", "week"]
"""By what a total is told apart."""

Topic = Literal[
    "dose",
    "dilution",
    "due",
    "bin",
    "trench",
    "bed",
    "batch",
    "starter",
    "trouble",
    "allowed",
    "totals",
    "custody",
    "help",
    "why",
    "me",
    "full",
    "bins",
    "liquid",
    "moisture",
    "carbon",
    "bran",
]
"""What can be asked. `why` is read only where `Context.after_bot` holds, `me` (what is known of
the sender) only where `Context.to_bot` does, and what comes after it (when a bin is full, how many
bins are wanted, how much liquid is normal, moisture, C:N, bran by its amount) only where
`Context.in_room` does."""


Each = Literal["both", "all", "them", "either", "3", "4", "5", "6"]
"""Of several bins that are not named, all or so many, or one of those that are; told only in a
room."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Act:
    act: ClassVar[str]
    rules: tuple[str, ...] = field(default=(), compare=False)
    """Names of the rules that made this act, for `--explain`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Layer(_Act):
    """Scraps went into a bin."""

    act = "layer"
    mass_kg: float | None = None
    volume_l: float | None = None
    materials: Shares | None = None
    rich: float | None = None
    bin: str | None = None
    member: str | None = None
    on: date | None = None
    each: Each | None = None
    same: bool | None = None
    """As much as the sender's last, and of the same; told only in a room."""
    like: date | None = None
    """The same as the one of that day; told only in a room."""
    in_it: bool | None = None
    """It went into "it": the bin that the talk is on; told only in a room."""
    firm: bool | None = None
    """It stands though by the book the bin was opened long after; no message says so."""
    rest: bool | None = None
    """It is what the book lacks of a bin that is told to be so full; no message says so."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Drain(_Act):
    """Liquid was drawn off."""

    act = "drain"
    volume_l: float | None = None
    bin: str | None = None
    member: str | None = None
    on: date | None = None
    each: Each | None = None


Emptied = Literal["emptied", "thrown out"]


@dataclass(frozen=True, slots=True, kw_only=True)
class Open(_Act):
    """A bin was started, or named for the first time."""

    act = "open"
    bin: str | None = None
    capacity_l: float | None = None
    shared: bool | None = None
    member: str | None = None
    on: date | None = None
    emptied: Emptied | None = None
    """What became of what was in it, where it begins again; told only in a room."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Seal(_Act):
    """A bin was closed to ferment."""

    act = "seal"
    bin: str | None = None
    member: str | None = None
    on: date | None = None
    each: Each | None = None
    firm: bool | None = None
    """Said when asked about a bin that nothing went into since its burial; never read from words.
    """


@dataclass(frozen=True, slots=True, kw_only=True)
class Bury(_Act):
    """Fermented contents went into soil."""

    act = "bury"
    bin: str | None = None
    member: str | None = None
    on: date | None = None
    place: str | None = None
    celsius: float | None = None
    """Of the soil; told only in a room."""
    part: bool | None = None
    """Only a part of what was in the bin; told only in a room."""
    each: Each | None = None
    firm: bool | None = None
    """Said when asked about a day that the book speaks against; never read from words."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Observe(_Act):
    """Something was seen, smelt or measured in a bin."""

    act = "observe"
    signs: tuple[Sign, ...] = ()
    celsius: float | None = None
    ph: float | None = None
    bin: str | None = None
    member: str | None = None
    on: date | None = None
    soil: bool | None = None
    """It is the soil that was measured, where bins were buried; told only in a room."""
    place: str | None = None
    """Where that was, by a name in `Context.places`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Batch(_Act):
    """Starter bran was mixed to ferment."""

    act = "batch"
    mass_kg: float | None = None
    volume_l: float | None = None
    member: str | None = None
    on: date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Stock(_Act):
    """How much starter is on hand, or was bought."""

    act = "stock"
    mass_kg: float | None = None
    volume_l: float | None = None
    member: str | None = None
    change: Literal["more", "less"] | None = None
    """It came to what was there, or went from it; told only in a room."""


KEEPER = "keeper"
"""Whoever keeps the bin that is spoken of."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Offer(_Act):
    """A bin is to pass to somebody else."""

    act = "offer"
    bin: str | None = None
    to: str | None = None
    on: date | None = None
    days: float | None = None
    """For how many days, told only in a room."""
    away: str | None = None
    """While somebody is away, on days that the offer does not tell: who, or `KEEPER`; told only in
    a room."""
    wished: bool | None = None
    """Its receiver has asked for the bin, so that it need not be asked; never read from words."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Accept(_Act):
    """Yes to an offer, or to a turn on the rota."""

    act = "accept"
    bin: str | None = None
    on: date | None = None
    firm: bool | None = None
    """Said when asked whether the bin is to be taken from its keeper; never read from words."""
    bare: Literal["answer", "aside"] | None = None
    """No more than "fine by me", in a room: as an answer to the bot, or behind others' words."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Decline(_Act):
    """No to an offer, or to a turn on the rota."""

    act = "decline"
    bin: str | None = None
    on: date | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Amend(_Act):
    """The last record, or the one replied to, is to be corrected: the corrected fields."""

    act = "amend"
    mass_kg: float | None = None
    volume_l: float | None = None
    capacity_l: float | None = None
    shared: bool | None = None
    materials: Shares | None = None
    rich: float | None = None
    signs: tuple[Sign, ...] = ()
    celsius: float | None = None
    ph: float | None = None
    place: str | None = None
    bin: str | None = None
    member: str | None = None
    on: date | None = None
    was: date | None = None
    """The wrong day, by which one of several records is known; told only in a room."""
    what: str | None = None
    """The kind of record that is to be corrected, where it is named; told only in a room."""
    rest: str | None = None
    """Who put in what was left of it; told only in a room."""
    whose: str | None = None
    """The member whose record it is, where that is said; told only in a room."""
    several: int | None = None
    """So many of the sender's last records are meant; 0: all that were told just now. Told only in
    a room."""
    of: str | None = None
    """The message whose record was asked about; never read from words."""
    which: Layer | None = None
    """The record as it is called by what went in, when, where, by whom; told only in a room."""
    crossed: Literal["each", "one"] | None = None
    """What was told of each of two bins belongs to the other one, or what is in the first was put
    into the second (never read from words); told only in a room."""
    between: tuple[str, ...] = ()
    """The two bins, where they are named."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Retract(_Act):
    """The last record, or the one replied to, is to be struck out."""

    act = "retract"
    bin: str | None = None
    materials: Shares | None = None
    """What went in with it, if the record is called by that; told only in a room."""
    several: int | None = None
    """So many of the sender's last records are meant; told only in a room."""
    of: str | None = None
    """The message whose record was asked about; never read from words."""
    which: Layer | None = None
    """The record as it is called by what went in, when, where, by whom; told only in a room."""
    what: str | None = None
    """What the record is of, if it is called by that: a kind of record, a sign, what was measured;
    told only in a room."""
    of_bin: Literal["undone", "only", "not"] | None = None
    """What is said of `bin` alone: `what` was not done to it, or the record that told of several
    bins holds only for it, or not for it; told only in a room."""
    anew: bool | None = None
    """Something else is told in its place, in the same message; told only in a room."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Done(_Act):
    """What the bot reminded of has been done."""

    act = "done"
    bin: str | None = None
    volume_l: float | None = None
    """What came out, if it was a draining; told only in a room."""
    each: bool | None = None
    """All that is due; told only in a room."""
    count: int | None = None
    """How many that is, with `each`; 0: whatever others have to do too. Told only in a room."""
    what: Literal["drain", "seal", "bury", "cover", "plant"] | None = None
    """Which deed it was, or what was done with the ground, if that is said; told only in a room."""
    on: date | None = None
    """When, if a day is said; told only in a room."""
    member: str | None = None
    """Who did it, if that was another; told only in a room."""
    task: str | None = None
    """Which of several things it was, when that was asked; never read from words."""
    doubtful: bool | None = None
    """What is remarked beside it may be of other things; told only in a room."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Later(_Act):
    """What the bot reminded of is put off, by `days` if said."""

    act = "later"
    bin: str | None = None
    days: float | None = None
    what: Literal["drain", "seal", "bury"] | None = None
    """Which deed it is, if that is said; told only in a room."""
    on: date | None = None
    """Until when, in place of `days`; told only in a room."""
    each: bool | None = None
    """Whoever has to do it; told only in a room."""
    firm: bool | None = None
    """Said when asked whether what others have to do is put off; never read from words."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Ask(_Act):
    """A question the bot can answer, with the figures that were said."""

    act = "ask"
    topic: Topic
    mass_kg: float | None = None
    volume_l: float | None = None
    materials: Shares | None = None
    rich: float | None = None
    water_l: float | None = None
    liquid_l: float | None = None
    total_l: float | None = None
    """Of liquid and water together, told only in a room (`dilution`)."""
    parts: float | None = None
    """Parts of water to one part of liquid."""
    use: str | None = None
    at_hand: Mapping[str, float] | None = None
    """Litres of culture and of molasses that there are, told only in a room (`bran`)."""
    area_m2: float | None = None
    signs: tuple[Sign, ...] = ()
    ph: float | None = None
    """The acidity that is only asked about, told only in a room (`trouble`)."""
    what: str | None = None
    """What may go in, in the words said (`allowed`); what of it is asked (`bran` and others)."""
    at_most: bool | None = None
    """How much of it is too much is asked, told only in a room (`allowed`)."""
    place: str | None = None
    """The bed that is meant, by a name in `Context.places` (`bed`)."""
    week_kg: float | None = None
    """Scraps a week (`bins`)."""
    people: float | None = None
    days: float | None = None
    """Days in which a bin fills (`bins`)."""
    capacity_l: float | None = None
    """What a bin holds (`bins`)."""
    length_m: float | None = None
    width_m: float | None = None
    depth_m: float | None = None
    """Of a trench, told only in a room (`trench`)."""
    cover_m: float | None = None
    """Soil over what is in it, told only in a room (`trench`)."""
    animals: bool | None = None
    """Foxes, dogs and the like dig there, told only in a room (`trench`)."""
    ferment_days: float | None = None
    """Days that a bin stands sealed, told only in a room (`bins`)."""
    bins: tuple[str, ...] = ()
    """Several bins that are meant together, told only in a room (`trench`, `bed`)."""
    count: float | None = None
    """So many bins alike, each with that amount, or else full; told only in a room (`trench`,
    `dose`)."""
    each: Each | None = None
    bin: str | None = None
    member: str | None = None
    members: tuple[str, ...] = ()
    """Several members who are meant together, told only in a room (`due`)."""
    on: date | None = None
    first: date | None = None
    """The first and the last day asked about, told only in a room (`totals`)."""
    last: date | None = None
    by: By | None = None
    """By what a total is told apart, only in a room (`totals`)."""
    units: Units | None = None
    """The units that the answer is wanted in, where these are asked for; told only in a room."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Set(_Act):
    """A setting of the group."""

    act = "set"
    what: str
    value: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Forget(_Act):
    """The sender is to be taken out of the book; read only where `Context.to_bot` holds."""

    act = "forget"
    sure: bool = False
    whose: str | None = None
    """Another member, of whom the sender asks it in vain."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Unsure(_Act):
    """It may be meant for the record, but must be asked first."""

    act = "unsure"
    guess: tuple["Act", ...] = ()
    no_such_day: bool | None = None
    """It was said of a day that no calendar has; told in a room alone."""
    some_day: bool | None = None
    """It was said of "the other day"; told in a room alone."""
    count: int | None = None
    """So many bins were told, and these are those that were caught; told in a room alone."""


OnBins = Layer | Drain | Seal | Bury
"""What can be done to several bins in one breath."""

Act = (
    Layer
    | Drain
    | Open
    | Seal
    | Bury
    | Observe
    | Batch
    | Stock
    | Offer
    | Accept
    | Decline
    | Amend
    | Retract
    | Done
    | Later
    | Ask
    | Set
    | Forget
    | Unsure
)


def meant(act: Act) -> Act:
    """What is told, or would be if it were not asked about."""
    return act.guess[0] if isinstance(act, Unsure) and act.guess else act
