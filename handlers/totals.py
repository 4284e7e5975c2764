"""How much the group has kept out of the rubbish so far."""

from collections.abc import Sequence

from handlers.answer import Answer, Turn
from handlers.phrasing import day, mass, the
from handlers.practice.density import loose_figures
from handlers.practice.figure import number
from handlers.reading.acts import Ask
from handlers.state import layer_mass
from storage.rows import Entry

MOST_FIGURES = 6
"""Densities that the arithmetic names; more would fill a phone."""


async def asked(act: Ask, turn: Turn) -> Answer:
    """Layers and weight so far: of one bin or member if one was named."""
    layers = [
        entry
        for entry in await turn.book.entries()
        if entry.act == "layer"
        and not entry.struck
        and (not act.bin or (entry.bin and entry.bin.name.casefold() == act.bin.casefold()))
        and (not act.member or (entry.member or "").casefold() == act.member.casefold())
    ]
    if not layers:
        return Answer(say="Nothing so far.")
    total = sum(layer_mass(entry.facts) or 0.0 for entry in layers)
    who = f" by {act.member}" if act.member else ""
    where = f" in {the(act.bin)}" if act.bin else ""
    since = min(entry.on or turn.today for entry in layers)
    count = _count(len(layers))
    say = f"{mass(total, turn.units)} in {count}{who}{where} since {day(since, turn.today)}."
    return Answer(say=say, why=_why(layers, total))


def _why(layers: Sequence[Entry], total_kg: float) -> list[str]:
    """What was weighed, and what was measured by volume at the density of its kinds."""
    weighed = [kg for entry in layers if (kg := entry.facts.mass_kg) is not None]
    by_volume = [
        (litres, layer_mass(entry.facts) or 0.0)
        for entry in layers
        if entry.facts.mass_kg is None and (litres := entry.facts.volume_l) is not None
    ]
    unsaid = len(layers) - len(weighed) - len(by_volume)
    parts = [f"{number(sum(weighed))} kg weighed in {_count(len(weighed))}"] if weighed else []
    if by_volume:
        litres, kg = (sum(column) for column in zip(*by_volume, strict=True))
        parts.append(f"{number(litres)} L in {_count(len(by_volume))}, by kind {number(kg)} kg")
    steps = [f"{' + '.join(parts)} = {number(total_kg)} kg"] if parts else []
    if unsaid:
        steps.append(f"{_count(unsaid)} of unknown size not counted")
    kinds = {kind: 1.0 for entry in layers for kind in entry.facts.materials or {"mixed": 1.0}}
    figures = loose_figures(kinds) if by_volume else ()
    return [*steps, *(figure.line() for figure in figures[:MOST_FIGURES])]


def _count(layers: int) -> str:
    return "1 layer" if layers == 1 else f"{layers} layers"
