"""What a bin's entries add up to: stage, fill, days. Computed anew, never stored."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Literal

from handlers.chosen import choices
from handlers.practice import days, density
from handlers.practice.choices import OURS, Choices
from handlers.practice.kinds import Kind, Shares, rich_share
from storage.book import Book
from storage.rows import Bin, Entry, Facts, NewEntry, Room

Stage = Literal["filling", "fermenting", "ready", "in the ground"]


Line = Entry | NewEntry


@dataclass(frozen=True, slots=True, kw_only=True)
class Run:
    """One run of a bin, from its first layer until it is buried."""

    layers: tuple[tuple[date, float], ...] = ()
    """Day and mass (kg) of each layer with an amount; volumes taken at their kind's density."""
    layer_count: int = 0
    mass_kg: float = 0.0
    rich_kg: float = 0.0
    kinds_kg: Mapping[Kind, float] = field(default_factory=dict)
    """Mass of each kind, of the layers with an amount."""
    fed_by: frozenset[str] = frozenset()
    """Who put layers in."""
    drained_l: float = 0.0
    """Liquid drawn off, as far as its volume was said."""
    drainings: int = 0
    """How often its volume was said."""
    opened: date | None = None
    first_layer: date | None = None
    last_layer: date | None = None
    last_drain: date | None = None
    sealed: date | None = None
    buried: date | None = None
    place: str | None = None
    celsius: float | None = None
    signs: tuple[tuple[date, str], ...] = ()
    choices: Choices = OURS
    """The group's own, where the craft's sources disagree."""

    @property
    def rich(self) -> float | None:
        """Share of all scraps that is meat, fish, dairy, egg, bone or oil."""
        return self.rich_kg / self.mass_kg if self.mass_kg else None

    @property
    def make_up(self) -> Shares | None:
        """What it is made of, by mass; None before its first layer with an amount."""
        whole = sum(self.kinds_kg.values())
        return {kind: kg / whole for kind, kg in self.kinds_kg.items()} if whole else None

    def stage(self, today: date) -> Stage:
        """Where the run stands on a day."""
        if self.buried:
            return "in the ground"
        if not self.sealed:
            return "filling"
        return "ready" if today >= self.to_bury(self.sealed).start else "fermenting"

    def to_bury(self, sealed: date) -> days.BuryWindow:
        """When to bury it if it was sealed on that day."""
        celsius = None if self.celsius is None else days.held(self.celsius)
        return days.bury_window(sealed, celsius, ferment_days=self.choices.ferment_days)

    def to_plant(self, buried: date) -> days.Window:
        """When the soil can be planted if it was buried on that day."""
        return days.plant_window(buried, plant_days=self.choices.plant_days)


NOTHING_YET = Run()


@dataclass(frozen=True, slots=True, kw_only=True)
class BinState:
    """A bin with its present run."""

    bin: Bin
    number: int
    """Of the present run: 1, 2, …; 0 before anything was recorded."""
    run: Run
    capacity_l: float | None
    shared: bool
    keeper: str | None

    @property
    def fill(self) -> float | None:
        """Share of the bin that is taken, 0 to 1; None where sizes are unknown."""
        if not self.capacity_l or (self.run.layer_count and not self.run.layers):
            return None
        return min(1.0, self.run.mass_kg / density.capacity_kg(self.capacity_l, self.run.make_up))


def layer_mass(facts: Facts) -> float | None:
    """Mass of a layer (kg): as said, or its volume at the density of its kinds."""
    if facts.mass_kg is not None:
        return facts.mass_kg
    if facts.volume_l is not None:
        return density.mass_kg(facts.volume_l, facts.materials or {"mixed": 1.0})
    return None


def fold(entries: Sequence[Line], run: Run = NOTHING_YET) -> Run:
    """The run that entries, oldest first, add up to."""
    for entry in entries:
        if entry.on is not None:
            run = _step(run, entry, entry.on)
    return run


def _step(run: Run, entry: Line, on: date) -> Run:
    match entry.act:
        case "layer":
            return _with_layer(run, entry, on)
        case "open":
            return replace(run, opened=run.opened or on)
        case "drain":
            return _with_draining(run, entry.facts, on)
        case "seal":
            return replace(run, sealed=run.sealed or on)
        case "bury":
            return replace(run, buried=run.buried or on, place=entry.facts.place or run.place)
        case "observe":
            seen = tuple((on, sign) for sign in entry.facts.signs)
            celsius = entry.facts.celsius if entry.facts.celsius is not None else run.celsius
            # Whoever found no liquid has opened the tap: that counts as draining.
            drained = on if "no_liquid" in entry.facts.signs else run.last_drain
            return replace(run, signs=run.signs + seen, celsius=celsius, last_drain=drained)
        case _:
            return run


def _with_draining(run: Run, facts: Facts, on: date) -> Run:
    if facts.volume_l is None:
        return replace(run, last_drain=on)
    drained = run.drained_l + facts.volume_l
    return replace(run, last_drain=on, drained_l=drained, drainings=run.drainings + 1)


def _with_layer(run: Run, entry: Line, on: date) -> Run:
    facts = entry.facts
    mass = layer_mass(facts)
    made_of = facts.materials or {"mixed": 1.0}
    kinds = dict(run.kinds_kg)
    for kind, part in made_of.items():
        kinds[kind] = kinds.get(kind, 0.0) + (mass or 0.0) * part
    share = facts.rich if facts.rich is not None else rich_share(facts.materials or {})
    return replace(
        run,
        layers=(*run.layers, (on, mass)) if mass is not None else run.layers,
        layer_count=run.layer_count + 1,
        mass_kg=run.mass_kg + (mass or 0.0),
        rich_kg=run.rich_kg + (mass or 0.0) * share,
        kinds_kg=kinds,
        fed_by=run.fed_by | ({entry.member} if entry.member else set()),
        opened=run.opened or on,
        first_layer=run.first_layer or on,
        last_layer=on,
        sealed=None,  # a layer on top of a sealed bin opens it again
    )


def new_run(room: Room) -> Run:
    """A run in which nothing has happened, by the group's choices."""
    return Run(choices=choices(room))


async def run_before(book: Book, state: BinState) -> Run | None:
    """The run of a bin before its present one; None if that is its first."""
    if state.number < 2:
        return None
    return fold(await book.run(state.bin, state.number - 1), new_run(book.room))


async def named(book: Book, name: str | None, today: date) -> BinState | None:
    """The bin of that name, if one was named and is known."""
    bin = await book.bin(name) if name else None
    return await look_up(book, bin, today) if bin else None


async def look_up(book: Book, bin: Bin, today: date) -> BinState:
    """A bin as its entries that stand describe it; its keeper is today's."""
    number = await book.present_run(bin)
    entries = await book.run(bin, number)
    capacity: float | None = None
    shared = False
    opener: str | None = None
    for opening in await book.openings(bin):
        capacity = opening.facts.capacity_l or capacity
        shared = shared if opening.facts.shared is None else opening.facts.shared
        opener = opening.member or opener
    taken = await book.latest_by(bin, "accept", today)
    if not (taken or opener) and entries:
        opener = entries[0].member
    return BinState(
        bin=bin,
        number=number,
        run=fold(entries, new_run(book.room)),
        capacity_l=capacity,
        shared=shared,
        keeper=taken.member if taken else opener,
    )
