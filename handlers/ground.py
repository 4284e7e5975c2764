"""How much ground the ferment wants: a trench for a bin, or a dressing for a bed."""

from handlers.answer import Answer, Turn
from handlers.phrasing import area, length, mass, percent, the, volume
from handlers.practice.bed import bed
from handlers.practice.cautions import caution
from handlers.practice.density import in_bin_l
from handlers.practice.figure import Refused
from handlers.practice.trench import Trench, ferment_l, trench
from handlers.reading.acts import Ask
from handlers.state import look_up

HOW_MUCH = "How much is there to bury: a bin by its name, so many litres, or so many kilos?"
WHICH_AREA = "How big is the bed? Say its area or its sides, like “a bed of 3 m by 1.2”."


async def asked_trench(act: Ask, turn: Turn) -> Answer:
    """The trench for a bin, a volume or a mass of ferment."""
    try:
        litres = await _litres(act, turn)
        if litres is None:
            return Answer(say=HOW_MUCH)
        dug = trench(litres)
    except Refused as refused:
        return Answer(say=str(refused))
    return Answer(say=f"{_trench_words(dug, turn)}\n{caution('digging')}", why=dug.why())


async def _litres(act: Ask, turn: Turn) -> float | None:
    if act.volume_l is not None or act.mass_kg is not None:
        return ferment_l(
            volume_l=act.volume_l, mass_kg=act.mass_kg if act.volume_l is None else None
        )
    bin = await turn.book.bin(act.bin) if act.bin else None
    if bin is None:
        return None
    state = await look_up(turn.book, bin, turn.today)
    return in_bin_l(state.run.mass_kg) if state.run.mass_kg else state.capacity_l


def _trench_words(dug: Trench, turn: Turn) -> str:
    units = turn.units
    return (
        f"Dig {length(dug.length_m, units)} long, {length(dug.width_m, units)} wide and "
        f"{length(dug.depth_m, units)} deep for {volume(dug.volume_l, units)}. Stir half of the "
        f"soil in and put the rest on top: {length(dug.cover_m, units)} of cover."
    )


async def asked_bed(act: Ask, turn: Turn) -> Answer:
    """How much a bed of that area can take, against the nitrogen it brings."""
    if act.area_m2 is None:
        return Answer(say=WHICH_AREA)
    bin = await turn.book.bin(act.bin) if act.bin else None
    try:
        dressing = bed(act.area_m2, mass_kg=act.mass_kg)
    except Refused as refused:
        return Answer(say=str(refused))
    whose = f" from {the(bin.name)}" if bin else ""
    return Answer(
        say=f"{mass(dressing.mass_kg, turn.units)}{whose} on {area(act.area_m2, turn.units)}, "
        f"worked into the top 15 cm. That brings {percent(dressing.used_share)} of the nitrogen "
        "that manure law lets a field have in a year.",
        why=dressing.why(),
    )
