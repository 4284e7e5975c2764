"""How much a bed takes, counting the nitrogen that it had from the group's bins in a year."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import partial

from handlers.answer import Answer, Turn
from handlers.chosen import choices, reasons
from handlers.phrasing import area, capital, day, length, mass, percent, rough_mass, the, volume
from handlers.practice.bed import DRESSING, TOPSOIL, Bed, bed
from handlers.practice.cautions import caution
from handlers.practice.composition import content
from handlers.practice.days import plant_window
from handlers.practice.density import capacity_kg
from handlers.practice.figure import Refused, listed, number
from handlers.practice.kinds import Kind, Shares
from handlers.reading.acts import Ask, Bury
from handlers.recording.bins import usual_bin
from handlers.state import BinState, fold, look_up, named
from storage.book import Book
from storage.rows import Entry, Units

NO_SUCH_BED = "By the book nothing was buried there in the last twelve months."

YEAR_DAYS = 365
"""Burials that count towards the yearly limit."""

_ARTICLES = frozenset({"the", "our", "my", "your", "her", "his", "their", "a", "an"})


@dataclass(frozen=True, slots=True)
class Had:
    """One burial in a bed: what it was, and the nitrogen in it."""

    on: date
    bin: str
    kg: float
    nitrogen_g: float
    guessed: bool
    """No weights were said of it, so that it is taken as full."""

    @property
    def step(self) -> str:
        """The burial as a step of the arithmetic."""
        where = (
            f"{the(self.bin)} (no weights said, taken as full)" if self.guessed else the(self.bin)
        )
        if not self.kg:
            return f"{self.on}: {where}, of unknown size"
        return (
            f"{self.on}: {number(self.kg)} kg from {where} at "
            f"{number(self.nitrogen_g / self.kg / 10)} % nitrogen are {number(self.nitrogen_g)} g"
        )


def which_area(units: Units) -> str:
    """What is asked where no size was said."""
    sides = "3 m by 1.2" if units == "metric" else "4 by 8 ft"
    return f"How big is the bed? Say its area or its sides, like “a bed of {sides}”."


async def asked(act: Ask, turn: Turn) -> Answer:
    """How much a bed of that area takes, less what it had; what it had; or a bin's worth of bed."""
    buried = [deed for deed in turn.told if isinstance(deed, Bury)]
    bins = await _bins(act, buried, turn)
    held, mixed = _together(bins)
    place = act.place or next((deed.place for deed in buried), None)
    had = await had_by(turn.book, place, turn.today, but=turn.event) if place else []
    if act.area_m2 is None:
        if place:
            return _history(place, had, turn)
        if holds := act.mass_kg or held:
            return _area_for(holds, turn)
        full = await usual_bin(turn)
        answer = _area_for(capacity_kg(full), turn, f"a full bin of {volume(full, turn.units)}, ")
        return replace(answer, say=f"{answer.say} {which_area(turn.units)}")
    reckoned = partial(
        bed,
        act.area_m2,
        had_nitrogen_g=sum(each.nitrogen_g for each in had),
        materials=act.materials or mixed,
        limit_kg_ha=choices(turn.book.room).limit_kg_ha,
    )
    try:
        dressing = reckoned(mass_kg=act.mass_kg)
        if held and not act.mass_kg and (buried or held < dressing.mass_kg):  # all there is
            dressing = reckoned(mass_kg=held)
    except Refused as refused:
        return Answer(say=str(refused))
    whose = f" from {listed([the(state.bin.name) for state in bins])}" if bins else ""
    why = reasons(dressing.led_by([each.step for each in had]), turn.book.room)
    return Answer(say=_words(dressing, whose, had, turn), why=why)


async def _bins(act: Ask, buried: Sequence[Bury], turn: Turn) -> list[BinState]:
    """The bins that are meant: those that the message tells the burial of, else those it names."""
    names: Sequence[str | None] = [deed.bin for deed in buried if deed.bin]
    names = names or act.bins or [act.bin]
    states = [await named(turn.book, name, turn.today) for name in names]
    return [state for state in states if state is not None]


def _together(states: Sequence[BinState]) -> tuple[float, Shares | None]:
    """What bins hold together (kg), and what that is made of."""
    kinds: dict[Kind, float] = defaultdict(float)
    for state in states:
        for kind, kg in state.run.kinds_kg.items():
            kinds[kind] += kg
    whole = sum(kinds.values())
    made_of = {kind: kg / whole for kind, kg in kinds.items()} if whole else None
    return sum(state.run.mass_kg for state in states), made_of


async def had_by(book: Book, place: str, today: date, *, but: str) -> list[Had]:
    """The burials in a bed of that name in the last twelve months, the first one first; those that
    the message `but` told are left out.
    """
    begin = today - timedelta(days=YEAR_DAYS - 1)
    found = [
        await _had(book, entry, entry.on, today)
        for entry in await book.of_days(begin, today, "bury")
        if entry.event != but and entry.on and _is_in(entry, place)
    ]
    return sorted(found, key=lambda each: each.on)


def bed_name(place: str) -> str:
    """A place as beds are told apart by it: without its article, whatever its case."""
    words = place.casefold().split()
    return " ".join(words[1:] if words[:1] and words[0] in _ARTICLES else words)


def _is_in(burial: Entry, place: str) -> bool:
    return burial.facts.place is not None and bed_name(burial.facts.place) == bed_name(place)


async def _had(book: Book, burial: Entry, on: date, today: date) -> Had:
    bin, number_of_run = burial.bin, burial.run
    if bin is None or number_of_run is None:
        return Had(on, "a bin", 0.0, 0.0, guessed=True)
    run = fold(await book.run(bin, number_of_run))
    capacity = (await look_up(book, bin, today)).capacity_l
    kg = run.mass_kg or (capacity_kg(capacity) if capacity else 0.0)
    nitrogen = kg * content(run.make_up).nitrogen * 10
    return Had(on, bin.name, kg, nitrogen, guessed=not run.mass_kg)


def _history(place: str, had: Sequence[Had], turn: Turn) -> Answer:
    """What a bed had, where its size is not known."""
    if not had:
        return Answer(say=f"{NO_SUCH_BED} {which_area(turn.units)}")
    kg = sum(each.kg for each in had)
    nitrogen = sum(each.nitrogen_g for each in had)
    bins = "1 bin" if len(had) == 1 else f"{len(had)} bins"
    since = day(had[0].on, turn.today)
    return Answer(
        say=f"The {bed_name(place)} had {bins}, {mass(kg, turn.units)} with about "
        f"{number(nitrogen, 2)} g of nitrogen, since {since}. How big is it? Then I can say what "
        "it still takes.",
        why=[*(each.step for each in had), f"together {number(nitrogen)} g"],
    )


def _area_for(kg: float, turn: Turn, what: str = "") -> Answer:
    """The bed that so much ferment (`what` it is) is the usual dressing for."""
    try:
        dressing = bed(kg / DRESSING.value)
    except Refused as refused:
        return Answer(say=str(refused))
    room = area(_rounded(dressing.area_m2), turn.units)
    much = f"{what}about {rough_mass(kg, turn.units)}," if what else mass(kg, turn.units)
    asks = "" if what else " How big is yours?"
    return Answer(
        say=f"{capital(much)} is enough for {room} of bed.{asks}",
        why=reasons(dressing, turn.book.room),
    )


def _words(dressing: Bed, whose: str, had: Sequence[Had], turn: Turn) -> str:
    units = turn.units
    used = f"{percent(dressing.used_share)} of the nitrogen it should have in a year"
    if not dressing.mass_kg:
        lines = [f"Nothing more: what it had since {day(had[0].on, turn.today)} is {used}."]
        return "\n".join([*lines, caution("rules")])
    together = f", with the {_nitrogen(had)} it had" if had else ""
    first = (
        f"{rough_mass(dressing.mass_kg, units)}{whose} on {area(dressing.area_m2, units)}, worked "
        f"into the top {length(TOPSOIL.value, units)}{together}: {used}."
    )
    if dressing.mass_kg > dressing.most_kg * 1.001:
        most = (
            f"at most {rough_mass(dressing.most_kg, units)}" if dressing.most_kg else "nothing more"
        )
        first += f" That is too much: give it {most}."
    wait = plant_window(turn.today, plant_days=choices(turn.book.room).plant_days)
    first_day, usual_day = ((on - turn.today).days for on in (wait.start, wait.end))
    days = f"{first_day} to {usual_day}" if first_day < usual_day else f"{usual_day}"
    plant = f"Plant there {days} days later."
    return f"{first}\n{plant} {caution('rules')}"


def _nitrogen(had: Sequence[Had]) -> str:
    return f"{number(sum(each.nitrogen_g for each in had), 2)} g of nitrogen"


def _rounded(amount: float) -> float:
    """To two digits, as nobody weighs or digs more exactly."""
    return float(number(amount, 2))
