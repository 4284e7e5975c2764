"""How much the group has kept out of the rubbish so far."""

from collections import defaultdict
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from handlers.answer import Answer, Turn
from handlers.asked.history import deeds, exact_percent
from handlers.people import is_same
from handlers.phrasing import capital, day, mass, span, the, volume
from handlers.practice import density
from handlers.practice.figure import number
from handlers.reading.acts import Ask, By
from handlers.reading.questions.summing import DRAWN
from handlers.state import layer_mass
from storage import sums
from storage.rows import Entry, Facts, Units

MOST_FIGURES = 6
"""Densities that the arithmetic names; more would fill a phone."""


async def asked(act: Ask, turn: Turn) -> Answer:
    """Layers and weight so far: of one bin or member if one was named; of a time, or told apart
    by person, bin, month or week, if that was asked.
    """
    book = turn.book
    bin = await book.bin(act.bin) if act.bin else None
    member = await book.member(act.member) if act.member else None
    if (act.bin and bin is None) or (act.member and member is None):
        return Answer(say="Nothing so far.")
    if act.first or act.last or act.by or act.what == DRAWN:
        return Answer(say=await _of_a_time(act, turn))
    parts = await sums.put_in(book, bin, member)
    if not parts:
        return Answer(say="Nothing so far.")
    total = sum(part.mass_kg + density.mass_kg(part.volume_l, part.materials) for part in parts)
    layers = sum(part.layers for part in parts)
    who = f" by {act.member}" if act.member else ""
    where = f" in {the(act.bin)}" if act.bin else ""
    since = await sums.first_layer(book, bin, member) or turn.today
    counted = _count(layers, "layer")
    said = f"{mass(total, turn.units)} in {counted}" if total else f"{counted}, none measured,"
    begun = f"since {day(since, turn.today)}" if since < turn.today else "today"
    say = f"{said}{who}{where} {begun}."
    return Answer(say=say, why=_why(parts, total))


def _count(number: int, of: str) -> str:
    return f"{number} {of}" if number == 1 else f"{number} {of}s"


@dataclass(frozen=True, slots=True, kw_only=True)
class _Measured:
    """What is summed up: scraps by their weight, or liquid by its volume."""

    deed: str
    size: Callable[[Facts], float | None]
    said: Callable[[float, Units], str]
    one: str
    done: str


_SCRAPS = _Measured(deed="layer", size=layer_mass, said=mass, one="layer", done="put in")
_LIQUID = _Measured(
    deed="drain", size=lambda facts: facts.volume_l, said=volume, one="draining", done="drained"
)


async def _of_a_time(act: Ask, turn: Turn) -> str:
    """What went in, or was drained, between two days, if they were said, and the parts asked for.

    A member's part is told with its share of what all put in.
    """
    kind = _LIQUID if act.what == DRAWN else _SCRAPS
    told = await deeds(act.bin, turn, kind.deed, act.first, act.last)
    if act.member and act.by != "member":
        told = [one for one in told if is_same(one.member or "", act.member)]
    parts = _parts(told, act.by, kind)
    where = f" {'from' if kind is _LIQUID else 'in'} {the(act.bin)}" if act.bin else ""
    when = _days(act, told, turn)
    total = sum(parts.values())

    def share(name: str) -> str:
        said = kind.said(parts[name], turn.units)
        return f"{capital(name)}: {said}, {exact_percent(parts[name] / total)}."

    if act.member and act.by == "member":
        own = [name for name in parts if parts[name] and is_same(name, act.member)]
        nothing = f"{capital(act.member)} has {kind.done} nothing{where}{when}."
        return share(own[0]) if own else nothing
    who = f" by {act.member}" if act.member else ""
    if not told:
        return f"Nothing was {kind.done}{where}{who}{when}."
    said = f"{kind.said(total, turn.units)} in {_count(len(told), kind.one)}{where}{who}{when}"
    if act.by is None:
        return f"{said}."
    names = [name for name in parts if parts[name]]
    if act.by in ("member", "bin"):
        names.sort(key=lambda name: -parts[name])
    return "\n".join([f"{said}:", *map(share, names)])


def _parts(told: Iterable[Entry], by: By | None, kind: _Measured) -> dict[str, float]:
    """The size of each part (kg or L), in the order of its days."""
    parts: dict[str, float] = defaultdict(float)
    for one in told:
        parts[_part_of(one, by)] += kind.size(one.facts) or 0.0
    return parts


def _part_of(layer: Entry, by: By | None) -> str:
    on = layer.on or date.min
    match by:
        case "member":
            return layer.member or "somebody"
        case "bin":
            return the(layer.bin.name) if layer.bin else "no bin"
        case "month":
            return f"{on:%B %Y}"
        case "week":
            monday = on - timedelta(days=on.weekday())
            return f"week of {monday.day} {monday:%B %Y}"
    return ""


def _days(act: Ask, told: Sequence[Entry], turn: Turn) -> str:
    """The time that was asked about, no day of it after today; else since the first of them."""
    begun = act.first or min((one.on for one in told if one.on), default=None)
    if begun is None:
        return " so far"
    if begun < turn.today <= (act.last or date.max):
        return f" since {day(begun, turn.today)}"
    last = min(act.last or begun, turn.today)
    days = span(begun, max(begun, last), turn.today)
    return f" {days}" if begun == last else f", {days}"


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
