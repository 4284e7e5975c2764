"""How much ground the ferment wants: a trench for a bin, or a tub of soil."""

from dataclasses import dataclass, replace
from math import ceil

from handlers.answer import Answer, Turn
from handlers.chosen import choices, reasons
from handlers.people import is_same
from handlers.phrasing import length, mass, the, volume
from handlers.practice.cautions import caution
from handlers.practice.choices import Choices
from handlers.practice.figure import Refused, listed, number
from handlers.practice.trench import (
    COVER,
    COVER_ANIMALS,
    DEPTH,
    DEPTH_ANIMALS,
    LEAST_BED_M,
    Ferment,
    Trench,
    depth_for_m,
    ferment,
    trench,
    trench_holds_l,
    tub,
)
from handlers.reading.acts import Ask
from handlers.reading.questions.trenchsizes import FULL, HALF, HALF_FULL
from handlers.recording.bins import usual_bin
from handlers.state import BinState, states_of
from storage.rows import Units

HOW_MUCH = "How much is there to bury: a bin by its name, so many litres, or so many kilos?"

NARROWEST_M = 0.1
"""A trench is no narrower, however little goes in."""

NEARLY_FULL = 0.8
"""From this share of a bin on no word is lost on how full it is."""

TUB_L = 40.0
"""Ferment up to which a tub of soil is worth naming: beyond it nobody could move one."""


@dataclass(frozen=True, slots=True)
class _ToBury:
    ferment: Ferment
    where: str = ""
    """The bins it lies in, as a clause; empty where an amount was said."""


async def asked_trench(act: Ask, turn: Turn) -> Answer:
    """The trench for a bin, a volume or a mass of ferment; for all ripe bins if none was named."""
    ours = choices(turn.book.room)
    try:
        if act.length_m and act.width_m and (act.depth_m or not _is_measured(act)):
            return await _held_by(act, turn)
        found = await _to_bury(act, turn)
        if found is None:
            return Answer(say=_where_animals_dig(act, turn) + HOW_MUCH)
        litres = found.ferment.litres
        width_m, depth_m = _other_sides(act, litres, ours)
        dug = trench(
            litres,
            depth_m=depth_m,
            width_m=width_m,
            cover_m=act.cover_m,
            animals=bool(act.animals),
            soil_parts=ours.soil_parts,
            usual_depth_m=ours.depth_cm / 100,
        )
    except Refused as refused:
        return Answer(say=str(refused))
    said = replace(dug, length_m=act.length_m) if act.length_m else dug
    lines = [_trench_words(said, found.where, turn.units)]
    if litres <= TUB_L:
        pot = tub(litres, soil_parts=ours.soil_parts)
        lines.append(
            f"No garden? Mix it with {_about(pot.soil_l, turn.units)} of soil in a tub, "
            f"{_about(pot.cover_l, turn.units)} more on top, and wait {pot.ready_days:.0f} days."
        )
    led = dug.led_by(found.ferment.steps, found.ferment.figures)
    return Answer(say="\n".join([*lines, caution("digging")]), why=reasons(led, turn.book.room))


def _where_animals_dig(act: Ask, turn: Turn) -> str:
    """How deep to dig, where that is all that can be said; nothing where no animals do."""
    if not act.animals:
        return ""
    deep, over = (length(each.value, turn.units) for each in (DEPTH_ANIMALS, COVER_ANIMALS))
    return f"Where animals dig, {deep} deep with {over} of soil on top. "


def _is_measured(act: Ask) -> bool:
    """Whether it says what is to be buried: so much, or that of bins."""
    said = (act.volume_l, act.mass_kg, act.bin, act.each, act.count)
    return bool(act.bins) or any(each is not None for each in said)


def _cover_m(act: Ask) -> float:
    usual = COVER_ANIMALS if act.animals else COVER
    return usual.value if act.cover_m is None else act.cover_m


def _other_sides(act: Ask, litres: float, ours: Choices) -> tuple[float | None, float | None]:
    """Width and depth of a trench, what was left open of them reckoned from the length said."""
    width_m, depth_m, length_m = act.width_m, act.depth_m, act.length_m
    if not length_m:
        return width_m, depth_m
    cover_m, parts = _cover_m(act), ours.soil_parts
    if width_m:
        deep = depth_for_m(litres, length_m * width_m, cover_m=cover_m, soil_parts=parts)
        return width_m, ceil(deep * 100) / 100
    usual_m = DEPTH_ANIMALS.value if act.animals else ours.depth_cm / 100
    deep = depth_m or max(usual_m, cover_m + LEAST_BED_M)
    holds = trench_holds_l(length_m, 1, deep, cover_m=cover_m, soil_parts=parts)
    return (max(litres / holds, NARROWEST_M) if holds else None), depth_m


async def _held_by(act: Ask, turn: Turn) -> Answer:
    """How much a trench with its sides said takes, and whether that is enough."""
    ours, cover_m, found = choices(turn.book.room), _cover_m(act), None
    length_m, width_m = act.length_m or 0.0, act.width_m or 0.0
    depth_m = act.depth_m or max(ours.depth_cm / 100, cover_m + LEAST_BED_M)
    parts = ours.soil_parts
    litres = trench_holds_l(length_m, width_m, depth_m, cover_m=cover_m, soil_parts=parts)
    if litres <= 0:
        deep = length(max(DEPTH.value, cover_m + LEAST_BED_M), turn.units)
        raise Refused(
            f"{length(depth_m, turn.units)} deep leaves no room under the soil on top: dig "
            f"{deep} deep or deeper."
        )
    dug = trench(litres, depth_m=depth_m, width_m=width_m, cover_m=cover_m, soil_parts=parts)
    usual = "" if act.depth_m else f", dug {length(depth_m, turn.units)} deep,"
    lines = [
        f"That{usual} takes about {_about(litres, turn.units)} of ferment, mixed with its soil and "
        f"under {length(dug.cover_m, turn.units)} of cover."
    ]
    if _is_measured(act) and (found := await _to_bury(act, turn)):
        wanted = found.ferment.litres
        longer = trench(
            wanted, depth_m=depth_m, width_m=width_m, cover_m=cover_m, soil_parts=parts
        ).length_m
        much = f"{_about(wanted, turn.units)}{found.where}"
        lines[0] = (
            f"Enough for {much}. {lines[0]}"
            if wanted <= litres
            else f"Not enough for {much}: as wide and deep, that wants "
            f"{length(longer, turn.units)}. {lines[0]}"
        )
        dug = dug.led_by(found.ferment.steps, found.ferment.figures)
    return Answer(say="\n".join([*lines, caution("digging")]), why=reasons(dug, turn.book.room))


async def _to_bury(act: Ask, turn: Turn) -> _ToBury | None:
    if act.count:
        return await _of_bins_alike(act, act.count, turn)
    if act.volume_l is not None:
        return _ToBury(ferment(volume_l=act.volume_l))
    if act.mass_kg is not None:
        return _ToBury(ferment(mass_kg=act.mass_kg, materials=act.materials))
    known = await states_of(turn.book, turn.today)
    held = [(state, amount) for state in _meant(act, known, turn) if (amount := _held(state, act))]
    if not held:
        return None
    whole = Ferment(
        sum(amount.litres for _, amount in held),
        tuple(step for _, amount in held for step in amount.steps),
        held[0][1].figures,
    )
    named = [f"{the(state.bin.name)}{_how_full(state, act, turn)}" for state, _ in held]
    return _ToBury(whole, f" in {listed(named)}")


async def _of_bins_alike(act: Ask, count: float, turn: Turn) -> _ToBury:
    """What so many bins hold: each the amount that was said, or else as much as the group's."""
    if act.mass_kg is not None:
        each, whole = mass(act.mass_kg, turn.units), count * act.mass_kg
        amount = ferment(mass_kg=whole, materials=act.materials)
    else:
        each_l = act.volume_l or await usual_bin(turn)
        each, amount = volume(each_l, turn.units), ferment(volume_l=count * each_l)
    return _ToBury(amount, f", {number(count)} bins of {each}")


def _how_full(state: BinState, act: Ask, turn: Turn) -> str:
    """What is said of a bin that is not full yet: whether all of it is reckoned, or what is in it.

    A closed bin of which no weights were told is taken as full without a word.
    """
    if act.what in (HALF, HALF_FULL):
        return ""
    if act.what == FULL:
        return " when it is full"
    if state.run.stage(turn.today) != "filling":
        return ""
    if not state.run.layer_count:
        return " when it is full (nothing is in it yet)"
    return " so far" if state.fill is not None and state.fill < NEARLY_FULL else ""


def _meant(act: Ask, known: list[BinState], turn: Turn) -> list[BinState]:
    """The bins that were named; else both or all of those at work; else the ripest."""
    names = act.bins or ((act.bin,) if act.bin else ())
    if names:
        return [state for state in known if any(is_same(state.bin.name, name) for name in names)]
    ripest = _ripest(known, turn)
    if not act.each:
        return ripest
    at_work = [state for state in known if state.run.stage(turn.today) != "in the ground"]
    if act.each == "all":
        return ripest if len(ripest) > 1 else at_work
    return next((some for some in (ripest, at_work) if len(some) == 2), [])


def _ripest(states: list[BinState], turn: Turn) -> list[BinState]:
    """The bins that are ready to bury; else those that ferment; else the only one there is."""
    for stage in ("ready", "fermenting"):
        if found := [state for state in states if state.run.stage(turn.today) == stage]:
            return found
    return states if len(states) == 1 else []


def _held(state: BinState, act: Ask) -> Ferment | None:
    """What a bin's ferment, or the half of it, takes up: by its layers, else by what it holds."""
    if act.what in (HALF_FULL, FULL) and state.capacity_l:
        return ferment(volume_l=state.capacity_l * (0.5 if act.what == HALF_FULL else 1.0))
    part = 0.5 if act.what == HALF else 1.0
    if state.run.mass_kg:
        return ferment(mass_kg=part * state.run.mass_kg, materials=state.run.make_up)
    return ferment(volume_l=part * state.capacity_l) if state.capacity_l else None


def _trench_words(dug: Trench, where: str, units: Units) -> str:
    width = length(dug.width_m, units)
    sides = f"{length(dug.length_m, units)} long, {width} wide"
    if dug.length_m <= dug.width_m:
        sides = f"one hole {width} square"
    stirred = "half" if dug.soil_parts == 2 else _about(dug.stirred_l, units)
    return (
        f"Dig {sides} and {length(dug.depth_m, units)} deep for "
        f"{_about(dug.volume_l, units)}{where}. Stir {stirred} of the soil in and put the rest on "
        f"top: {length(dug.cover_m, units)} of cover."
    )


def _about(litres: float, units: Units) -> str:
    return volume(float(number(litres, 2)) if units == "metric" else litres, units)
