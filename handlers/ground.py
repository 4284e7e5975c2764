"""How much ground the ferment wants: a trench for a bin, or a dressing for a bed."""

from dataclasses import dataclass

from handlers.answer import Answer, Turn
from handlers.chosen import choices
from handlers.phrasing import area, capital, length, mass, percent, the, volume
from handlers.practice.bed import DRESSING, Bed, bed
from handlers.practice.cautions import caution
from handlers.practice.density import in_bin_l
from handlers.practice.figure import Refused, listed, number
from handlers.practice.kinds import Kind, Shares
from handlers.practice.trench import Trench, ferment_l, trench, tub
from handlers.reading.acts import Ask
from handlers.state import BinState, layer_mass, look_up
from storage.book import Book
from storage.rows import Units

HOW_MUCH = "How much is there to bury: a bin by its name, so many litres, or so many kilos?"
WHICH_AREA = "How big is the bed? Say its area or its sides, like “a bed of 3 m by 1.2”."

TUB_L = 40.0
"""Ferment up to which a tub of soil is worth naming: beyond it nobody could move one."""


@dataclass(frozen=True, slots=True)
class _Ferment:
    litres: float
    where: str = ""
    """The bins it lies in, as a clause; empty where an amount was said."""


async def asked_trench(act: Ask, turn: Turn) -> Answer:
    """The trench for a bin, a volume or a mass of ferment; for all ripe bins if none was named."""
    try:
        ferment = await _ferment(act, turn)
        if ferment is None:
            return Answer(say=HOW_MUCH)
        dug = trench(ferment.litres, soil_parts=choices(turn.book.room).soil_parts)
    except Refused as refused:
        return Answer(say=str(refused))
    lines = [_trench_words(dug, ferment, turn)]
    if ferment.litres <= TUB_L:
        pot = tub(ferment.litres)
        lines.append(
            f"No garden? Mix it with {_about(pot.soil_l, turn.units)} of soil in a tub, "
            f"{_about(pot.cover_l, turn.units)} more on top, and wait {pot.ready_days:.0f} days."
        )
    return Answer(say="\n".join([*lines, caution("digging")]), why=dug.why())


async def _ferment(act: Ask, turn: Turn) -> _Ferment | None:
    if act.volume_l is not None:
        return _Ferment(ferment_l(volume_l=act.volume_l))
    if act.mass_kg is not None:
        return _Ferment(ferment_l(mass_kg=act.mass_kg, materials=act.materials))
    known = [await look_up(turn.book, bin, turn.today) for bin in await turn.book.bins()]
    meant = [state for state in known if _is(state, act.bin)] if act.bin else _ripest(known, turn)
    amounts = [(state, await _litres(state, turn.book)) for state in meant]
    litres = [amount for _, amount in amounts if amount]
    if not litres:
        return None
    names = [the(state.bin.name) for state, amount in amounts if amount]
    return _Ferment(sum(litres), f" in {listed(names)}")


def _is(state: BinState, name: str) -> bool:
    return state.bin.name.casefold() == name.casefold()


def _ripest(states: list[BinState], turn: Turn) -> list[BinState]:
    """The bins that are ready to bury; else those that ferment; else the only one there is."""
    for stage in ("ready", "fermenting"):
        if found := [state for state in states if state.run.stage(turn.today) == stage]:
            return found
    return states if len(states) == 1 else []


async def _litres(state: BinState, book: Book) -> float | None:
    """What a bin's ferment takes up: by its layers, else by what it holds."""
    if not state.run.mass_kg:
        return state.capacity_l
    return in_bin_l(state.run.mass_kg, await make_up(state, book))


async def make_up(state: BinState, book: Book) -> Shares | None:
    """What the present run of a bin was made of, by mass; None before its first layer."""
    kilograms: dict[Kind, float] = {}
    for entry in await book.run(state.bin, state.number):
        weight = layer_mass(entry.facts) if entry.act == "layer" else None
        for kind, share in (entry.facts.materials or {"mixed": 1.0}).items():
            kilograms[kind] = kilograms.get(kind, 0.0) + (weight or 0.0) * share
    whole = sum(kilograms.values())
    return {kind: kg / whole for kind, kg in kilograms.items()} if whole else None


def _trench_words(dug: Trench, ferment: _Ferment, turn: Turn) -> str:
    units = turn.units
    return (
        f"Dig {length(dug.length_m, units)} long, {length(dug.width_m, units)} wide and "
        f"{length(dug.depth_m, units)} deep for {_about(dug.volume_l, units)}{ferment.where}. "
        f"Stir half of the soil in and put the rest on top: {length(dug.cover_m, units)} of cover."
    )


def _about(litres: float, units: Units) -> str:
    return volume(_rounded(litres), units)


def _rounded(amount: float) -> float:
    """To two digits, as nobody weighs or digs more exactly."""
    return float(number(amount, 2))


async def asked_bed(act: Ask, turn: Turn) -> Answer:
    """How much a bed of that area takes, by the nitrogen that was logged; or a bin's area."""
    bin = await turn.book.bin(act.bin) if act.bin else None
    state = await look_up(turn.book, bin, turn.today) if bin else None
    if act.area_m2 is None:
        holds = act.mass_kg or (state.run.mass_kg if state else 0.0)
        return _area_for(holds, turn) if holds else Answer(say=WHICH_AREA)
    made_of = act.materials or (await make_up(state, turn.book) if state else None)
    try:
        dressing = bed(act.area_m2, mass_kg=act.mass_kg, materials=made_of)
    except Refused as refused:
        return Answer(say=str(refused))
    whose = f" from {the(state.bin.name)}" if state else ""
    return Answer(say=_bed_words(dressing, whose, turn), why=dressing.why())


def _area_for(kg: float, turn: Turn) -> Answer:
    """The bed that so much ferment is the usual dressing for."""
    try:
        dressing = bed(kg / DRESSING.value)
    except Refused as refused:
        return Answer(say=str(refused))
    room = area(_rounded(dressing.area_m2), turn.units)
    return Answer(
        say=f"{capital(mass(kg, turn.units))} is enough for {room} of bed. How big is yours?",
        why=dressing.why(),
    )


def _bed_words(dressing: Bed, whose: str, turn: Turn) -> str:
    units = turn.units
    given = f"{mass(_rounded(dressing.mass_kg), units)}{whose}"
    first = (
        f"{given} on {area(dressing.area_m2, units)}, worked into the top {length(0.15, units)}: "
        f"{percent(dressing.used_share)} of the nitrogen that manure law lets a field have in a "
        "year."
    )
    if dressing.mass_kg > dressing.most_kg * 1.001:
        first += f" That is too much: give it at most {mass(_rounded(dressing.most_kg), units)}."
    return f"{first}\nPlant there two to three weeks later. {caution('rules')}"
