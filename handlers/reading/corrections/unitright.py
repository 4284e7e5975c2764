"""A unit put right where its figure was: "kilos, not grams"."""

from collections.abc import Sequence
from dataclasses import replace
from math import isclose, log10

from handlers.reading.acts import Amend
from handlers.reading.corrections.rightwrong import BY_FORM, REASONS, STOPS, Sides
from handlers.reading.measures.unitwords import Unit, unit_table
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, word_count


def another_unit(message: Message, told: Sides) -> Amend | None:
    """ "Kilos! Not grams": the unit put right; the figure is as it was."""
    norms = message.norms
    units = [(thing, thing.of) for thing in told.units if isinstance(thing.of, Unit)]
    units = [(thing, of) for thing, of in units if of.quantity in ("mass", "volume")]
    meant = {of for thing, of in units if not thing.wrong}
    wrong = [of for thing, of in units if thing.wrong]
    if "please" in norms or message.bot:
        return None  # "ounces please, not grams" is a wish for all that is to come
    if len(meant) != 1 or message.items:
        return None
    if any(amount.start >= told.end for amount in message.amounts):
        return None
    if word_count(message) > SHORT or message.days:
        return None
    if told.end < len(norms) and STOPS.isdisjoint(norms[units[-1][0].end : told.end + 1]):
        return None
    if wrong:
        return _converted(message, meant.pop(), wrong[:1])
    alone = told.end >= len(norms) and not {"should", "meant"}.isdisjoint(norms)
    if alone or not REASONS.isdisjoint(norms[told.end :]):
        return _converted(message, meant.pop(), _measures(message))
    return None


def in_unit(message: Message, name: str) -> Amend | None:
    """The number last written down in the unit of that name, if it was said in another."""
    meant = unit_table(message.context.units).get(name)
    if meant is None or meant.quantity not in ("mass", "volume"):
        return None
    wrong = [unit for unit in _measures(message) if unit.quantity == meant.quantity]
    act = _converted(message, meant, wrong)
    return None if act == Amend() else act


def _measures(message: Message) -> list[Unit]:
    """The units that the last amount may have been said in: those that make a round number."""
    last = message.context.last
    mass, volume = getattr(last, "mass_kg", None), getattr(last, "volume_l", None)
    quantity, said = ("mass", mass) if mass else ("volume", volume)
    if not said:
        return []
    return [u for u in _usual(message, quantity) if _is_round(said / u.factor)]


def unit_said(message: Message, number: float) -> Unit | None:
    """The unit in which the amount last written down is that number."""
    last = message.context.last
    for name, quantity in (("mass_kg", "mass"), ("volume_l", "volume")):
        said = getattr(last, name, None)
        if said:
            usual = _usual(message, quantity)
            return next((u for u in usual if isclose(number * u.factor, said, rel_tol=0.01)), None)
    return None


def _usual(message: Message, quantity: str) -> list[Unit]:
    table = unit_table(message.context.units)
    return [table[name] for name in _USUAL if table[name].quantity == quantity]


_USUAL = ("kg", "g", "lb", "oz", "l", "ml", "gallon", "quart", "pint")


def _is_round(number: float) -> bool:
    return abs(number * _PARTS - round(number * _PARTS)) < 1e-6 * number


_PARTS = 20
"""Parts of a unit that people say, at the finest: "1.35 kg"."""


def _converted(message: Message, meant: Unit, wrong: Sequence[Unit]) -> Amend:
    """The number last written down in the unit that was meant, the nearest to what was said."""
    found: list[tuple[float, Amend]] = []
    for unit in wrong:
        last = message.context.last
        said = getattr(last, "mass_kg" if unit.quantity == "mass" else "volume_l", None)
        ratio = meant.factor / unit.factor
        act = None if said is None or unit == meant else amount_of(meant.quantity, said * ratio)
        if act is not None:
            found.append((abs(log10(ratio)), act))
    nearest = min(found, key=lambda pair: pair[0], default=(0.0, Amend()))
    return replace(nearest[1], rules=(BY_FORM,))


def amount_of(quantity: str, much: float) -> Amend | None:
    """A corrected mass in kg, or volume in litres; None for what no record has."""
    match quantity:
        case "mass":
            return Amend(mass_kg=much)
        case "volume":
            return Amend(volume_l=much)
    return None
