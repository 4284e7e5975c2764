"""How much ground the ferment wants: a trench for a bin, or a tub of soil."""

from dataclasses import dataclass

from handlers.answer import Answer, Turn
from handlers.chosen import choices, reasons
from handlers.phrasing import length, the, volume
from handlers.practice.cautions import caution
from handlers.practice.figure import Refused, listed, number
from handlers.practice.trench import DEPTH, Ferment, Trench, ferment, trench, trench_holds_l, tub
from handlers.reading.acts import Ask
from handlers.state import BinState, look_up
from storage.rows import Units

HOW_MUCH = "How much is there to bury: a bin by its name, so many litres, or so many kilos?"

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
        if act.length_m and act.width_m and act.depth_m:
            return _held_by(act, ours.soil_parts, turn)
        found = await _to_bury(act, turn)
        if found is None:
            return Answer(say=HOW_MUCH)
        litres = found.ferment.litres
        dug = trench(
            litres,
            depth_m=act.depth_m,
            width_m=act.width_m,
            soil_parts=ours.soil_parts,
            usual_depth_m=ours.depth_cm / 100,
        )
    except Refused as refused:
        return Answer(say=str(refused))
    lines = [_trench_words(dug, found.where, turn.units)]
    if litres <= TUB_L:
        pot = tub(litres, soil_parts=ours.soil_parts)
        lines.append(
            f"No garden? Mix it with {_about(pot.soil_l, turn.units)} of soil in a tub, "
            f"{_about(pot.cover_l, turn.units)} more on top, and wait {pot.ready_days:.0f} days."
        )
    led = dug.led_by(found.ferment.steps, found.ferment.figures)
    return Answer(say="\n".join([*lines, caution("digging")]), why=reasons(led, turn.book.room))


def _held_by(act: Ask, soil_parts: float | None, turn: Turn) -> Answer:
    """How much a trench with all its sides said takes, and whether that is enough."""
    length_m, width_m, depth_m = act.length_m or 0.0, act.width_m or 0.0, act.depth_m or 0.0
    litres = trench_holds_l(length_m, width_m, depth_m, soil_parts=soil_parts)
    if litres <= 0:
        raise Refused(
            f"{length(depth_m, turn.units)} deep leaves no room under the soil on top: dig "
            f"{length(DEPTH.value, turn.units)} deep or deeper."
        )
    dug = trench(litres, depth_m=depth_m, width_m=width_m, soil_parts=soil_parts)
    lines = [
        f"That takes about {_about(litres, turn.units)} of ferment, mixed with its soil and under "
        f"{length(dug.cover_m, turn.units)} of cover."
    ]
    wanted = act.volume_l or (act.mass_kg and ferment(mass_kg=act.mass_kg).litres)
    if wanted:
        enough = f"Enough for {_about(wanted, turn.units)}."
        longer = trench(wanted, depth_m=depth_m, width_m=width_m, soil_parts=soil_parts).length_m
        lines[0] = (
            f"{enough} {lines[0]}"
            if wanted <= litres
            else f"Not enough for {_about(wanted, turn.units)}: as wide and deep, that wants "
            f"{length(longer, turn.units)}. {lines[0]}"
        )
    return Answer(say="\n".join([*lines, caution("digging")]), why=reasons(dug, turn.book.room))


async def _to_bury(act: Ask, turn: Turn) -> _ToBury | None:
    if act.volume_l is not None:
        return _ToBury(ferment(volume_l=act.volume_l))
    if act.mass_kg is not None:
        return _ToBury(ferment(mass_kg=act.mass_kg, materials=act.materials))
    known = [await look_up(turn.book, bin, turn.today) for bin in await turn.book.bins()]
    meant = [state for state in known if _is(state, act.bin)] if act.bin else _ripest(known, turn)
    held = [(state, amount) for state in meant if (amount := _held(state))]
    if not held:
        return None
    whole = Ferment(
        sum(amount.litres for _, amount in held),
        tuple(step for _, amount in held for step in amount.steps),
        held[0][1].figures,
    )
    return _ToBury(whole, f" in {listed([the(state.bin.name) for state, _ in held])}")


def _is(state: BinState, name: str) -> bool:
    return state.bin.name.casefold() == name.casefold()


def _ripest(states: list[BinState], turn: Turn) -> list[BinState]:
    """The bins that are ready to bury; else those that ferment; else the only one there is."""
    for stage in ("ready", "fermenting"):
        if found := [state for state in states if state.run.stage(turn.today) == stage]:
            return found
    return states if len(states) == 1 else []


def _held(state: BinState) -> Ferment | None:
    """What a bin's ferment takes up: by its layers, else by what it holds."""
    if state.run.mass_kg:
        return ferment(mass_kg=state.run.mass_kg, materials=state.run.make_up)
    return ferment(volume_l=state.capacity_l) if state.capacity_l else None


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
