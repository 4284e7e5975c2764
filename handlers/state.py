"""What a bin's entries add up to: stage, fill, days. Computed anew, never stored."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Literal

from handlers.chosen import choices
from handlers.practice import days, density
from handlers.practice.choices import OURS, Choices
from handlers.practice.kinds import Kind, Shares, rich_share
from handlers.practice.trouble import put_back
from handlers.sharing.keepers import custody_of
from storage.book import Book
from storage.rows import Bin, Entry, Facts, NewEntry, Room

Stage = Literal["filling", "fermenting", "ready", "in the ground"]


Line = Entry | NewEntry


@dataclass(slots=True, kw_only=True)
class Run:
    """One run of a bin, from its first layer until it is buried; `fold` alone changes one."""

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
    soil_celsius: float | None = None
    """Of the soil in which it is buried, as far as it was said."""
    acidity: tuple[date, float] | None = None
    """The pH last measured, and when."""
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
        window = days.bury_window(sealed, celsius, ferment_days=self.choices.ferment_days)
        if self.acidity is None or self.acidity[0] < sealed:
            return window
        return put_back(window, *self.acidity)

    def to_plant(self, buried: date, celsius: float | None = None) -> days.Window:
        """When the soil, of that temperature if it is known, can be planted if the bin was buried
        on that day.
        """
        soil = self.soil_celsius if celsius is None else celsius
        return days.plant_window(
            buried, None if soil is None else days.held(soil), plant_days=self.choices.plant_days
        )


NOTHING_YET = Run()


@dataclass(slots=True, kw_only=True)
class _Sum:
    """Entries, oldest first, and the run that they add up to."""

    run: Run
    entries: list[Line] = field(default_factory=list)


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
    left: str | None = None
    """The keeper who left the room without handing it over: it is unattended since."""
    retired: bool = False
    """It is out of use."""

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
    run = _copied(run)
    for entry in entries:
        if entry.on is not None:
            _add(run, entry, entry.on)
    return run


def _copied(run: Run) -> Run:
    copy = Run.__new__(Run)
    for name in Run.__slots__:  # several times as quick as `replace`
        setattr(copy, name, getattr(run, name))
    return copy


def _add(run: Run, entry: Line, on: date) -> None:
    facts = entry.facts
    match entry.act:
        case "layer":
            _add_layer(run, entry, on)
        case "open":
            run.opened = run.opened or on
        case "drain":
            run.last_drain = on
            if facts.volume_l is not None:
                run.drained_l += facts.volume_l
                run.drainings += 1
        case "seal":
            run.sealed = run.sealed or on
        case "bury":
            run.buried = run.buried or on
            run.place = facts.place or run.place
            run.soil_celsius = facts.celsius
        case "observe":
            run.signs += tuple((on, sign) for sign in facts.signs)
            run.acidity = (on, facts.ph) if facts.ph is not None else run.acidity
            run.celsius = facts.celsius if facts.celsius is not None else run.celsius
            # Whoever found no liquid has opened the tap: that counts as draining.
            run.last_drain = on if "no_liquid" in facts.signs else run.last_drain


def _add_layer(run: Run, entry: Line, on: date) -> None:
    facts = entry.facts
    mass = layer_mass(facts)
    made_of = facts.materials or {"mixed": 1.0}
    kinds = dict(run.kinds_kg)
    for kind, part in made_of.items():
        kinds[kind] = kinds.get(kind, 0.0) + (mass or 0.0) * part
    share = facts.rich if facts.rich is not None else rich_share(facts.materials or {})
    if mass is not None:
        run.layers = (*run.layers, (on, mass))
        run.mass_kg += mass
        run.rich_kg += mass * share
    run.layer_count += 1
    run.kinds_kg = kinds
    run.fed_by |= {entry.member} if entry.member else set()
    run.opened = run.opened or on
    run.first_layer = run.first_layer or on
    run.last_layer = on
    run.sealed = None  # a layer on top of a sealed bin opens it again


async def _added_up(book: Book, bin: Bin, entries: Sequence[Line]) -> Run:
    """The run that entries add up to; those added up before are not gone through again."""
    empty = new_run(book.room)

    async def nothing() -> _Sum:
        return _Sum(run=empty)

    known = await book.known("bin member entry:rewritten", ("sum", bin.id, book.aside), nothing)
    count = len(known.entries)
    if known.run.choices != empty.choices or known.entries != entries[:count]:
        known.entries, known.run, count = [], empty, 0
    if count == len(entries):
        return known.run
    run = fold(entries[count:], known.run)
    if isinstance(entries[-1], Entry):  # what is being written down comes back as an entry
        known.entries, known.run = list(entries), run
    return run


def new_run(room: Room) -> Run:
    """A run in which nothing has happened, by the group's choices."""
    return Run(choices=choices(room))


async def run_before(book: Book, state: BinState) -> Run | None:
    """The run of a bin before its present one; None if that is its first."""
    if state.number < 2:
        return None
    buried, celsius = await book.buried(state.bin, state.number - 1)
    return replace(new_run(book.room), buried=buried, soil_celsius=celsius)


async def named(book: Book, name: str | None, today: date) -> BinState | None:
    """The bin of that name, if one was named and is known."""
    bin = await book.bin(name) if name else None
    return await look_up(book, bin, today) if bin else None


async def look_up(book: Book, bin: Bin, today: date) -> BinState:
    """A bin as its entries that stand describe it; its keeper is today's."""
    number = await book.present_run(bin)
    return await described(book, bin, today, number, await book.since_run(bin, number))


async def states_of(book: Book, today: date) -> list[BinState]:
    """The group's bins in use, each as its entries that stand describe it."""
    return [await look_up(book, bin, today) for bin in await book.bins()]


async def described(
    book: Book, bin: Bin, today: date, number: int, entries: Sequence[Line]
) -> BinState:
    """A bin whose present run, of that number, has these entries, oldest first."""
    about = await book.about(bin)
    custody = await custody_of(book, bin, today)
    return BinState(
        bin=bin,
        number=number,
        run=await _added_up(book, bin, entries),
        capacity_l=about.capacity_l,
        shared=about.shared,
        keeper=custody.keeper,
        left=custody.leaver,
        retired=custody.retired is not None,
    )
