"""How much the group has kept out of the rubbish so far."""

from collections.abc import Sequence

from handlers.answer import Answer, Turn
from handlers.phrasing import day, mass, the
from handlers.practice import density
from handlers.practice.figure import number
from handlers.reading.acts import Ask
from storage import sums

MOST_FIGURES = 6
"""Densities that the arithmetic names; more would fill a phone."""


async def asked(act: Ask, turn: Turn) -> Answer:
    """Layers and weight so far: of one bin or member if one was named."""
    book = turn.book
    bin = await book.bin(act.bin) if act.bin else None
    member = await book.member(act.member) if act.member else None
    if (act.bin and bin is None) or (act.member and member is None):
        return Answer(say="Nothing so far.")
    parts = await sums.put_in(book, bin, member)
    if not parts:
        return Answer(say="Nothing so far.")
    total = sum(part.mass_kg + density.mass_kg(part.volume_l, part.materials) for part in parts)
    layers = sum(part.layers for part in parts)
    who = f" by {act.member}" if act.member else ""
    where = f" in {the(act.bin)}" if act.bin else ""
    since = await sums.first_layer(book, bin, member) or turn.today
    count = "1 layer" if layers == 1 else f"{layers} layers"
    say = f"{mass(total, turn.units)} in {count}{who}{where} since {day(since, turn.today)}."
    return Answer(say=say, why=_why(parts, total))


def _why(parts: Sequence[sums.Part], total_kg: float) -> list[str]:
    """What was weighed, and what was measured by volume at the density of its kinds."""
    weighed = sum(part.mass_kg for part in parts)
    by_volume = [part for part in parts if part.volume_l]
    steps = [f"{number(weighed)} kg weighed"] if weighed else []
    if by_volume:
        litres = sum(part.volume_l for part in by_volume)
        kg = sum(density.mass_kg(part.volume_l, part.materials) for part in by_volume)
        steps.append(f"{number(litres)} L, by kind {number(kg)} kg")
    kinds = {kind: 1.0 for part in by_volume for kind in part.materials or {"mixed": 1.0}}
    figures = density.loose_figures(kinds) if by_volume else ()
    reckoned = [f"{' + '.join(steps)} = {number(total_kg)} kg"] if steps else []
    return [*reckoned, *(figure.line() for figure in figures[:MOST_FIGURES])]
