"""A bare number in place of the one that was last written down: "no 2", "no, it was 3"."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from math import log

from handlers.practice.units import KILOGRAMS, LITRES
from handlers.reading.acts import Act, Amend, Batch, Drain, Layer, Open, Stock
from handlers.reading.corrections.leaning import REFUSING, spoken_of
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_UNITS: Mapping[str, tuple[tuple[str, ...], tuple[str, ...]]] = {
    "metric": (("kilogram", "gram"), ("litre", "millilitre")),
    "us": (("pound", "ounce"), ("us_gallon", "us_quart", "us_cup")),
    "imperial": (("pound", "ounce"), ("imperial_gallon", "imperial_pint", "litre")),
}
"""What a bare number may count in each system: of a mass, and of a volume."""


def another_number(message: Message) -> Amend | None:
    """ "No 2", "no, it was 3": a bare number in place of the one last written down."""
    if message.amounts or (message.bins and not is_number_alone(message)):
        return None
    norms = message.norms
    at = next((i for i, norm in enumerate(norms) if norm not in _BEFORE_NUMBER), len(norms))
    number = read_number(message.words, at) if at < len(norms) else None
    if number is None or number.word or number.value <= 0:
        return None
    if REFUSING.isdisjoint(norms[:at]) and not _goes_on_with(message, at):
        return None
    if any(norm not in _BEHIND_NUMBER for norm in norms[number.end :]):
        return None
    meaning = number_of_talk if message.bins else number_meant
    meant = meaning(number.value, message)
    return None if meant is None else replace(meant, rules=("another number",))


def _goes_on_with(message: Message, at: int) -> bool:
    """ "But it's 1.2" right behind what we said of the sender's own record."""
    last = message.context.last
    own = getattr(last, "member", None) in (None, message.context.sender)
    led = message.norms[0] in _GOING_ON and "." in message.norms[at]
    return led and own and message.context.after_bot and isinstance(last, Layer | Drain)


_GOING_ON = words_in("but")


def is_number_alone(message: Message) -> bool:
    """ "No, 2" of what went into Rosie: the amount, though a bin 2 is there as well; and so it is
    of what went into bin 2."""
    [ref, *others] = message.bins
    bin = getattr(spoken_of(message), "bin", None)
    alone = not others and message.words[ref.start].kind == "number" and ref.end == ref.start + 1
    return alone and bin is not None and (ref.name == bin or not bin[-1].isdecimal())


def number_meant(number: float, message: Message) -> Amend | None:
    """A bare number in the unit of what was last written down, if it can stand in its place."""
    return _meant(number, message.context.last, *_UNITS[message.context.units])


def number_beside(number: float, told: Act, message: Message) -> Amend | None:
    """The same in the unit of what another told."""
    return _meant(number, told, *_UNITS[message.context.units])


def number_of_talk(number: float, message: Message) -> Amend | None:
    """The same of the sender's own record, though others may have spoken since."""
    return _meant(number, spoken_of(message), *_UNITS[message.context.units])


def _meant(
    number: float, last: Act | None, masses: Sequence[str], volumes: Sequence[str]
) -> Amend | None:
    """The number in the place of the one that was said last, if it can be one for the other."""
    by_weight = [KILOGRAMS[unit] for unit in masses]
    by_volume = [LITRES[unit] for unit in volumes]
    match last:
        case Layer(mass_kg=float(said)) | Batch(mass_kg=float(said)) | Stock(mass_kg=float(said)):
            much = _likeliest(number, by_weight, said)
            return None if much is None else Amend(mass_kg=much)
        case (
            Layer(volume_l=float(said)) | Drain(volume_l=float(said)) | Batch(volume_l=float(said))
        ):
            much = _likeliest(number, by_volume, said)
            return None if much is None else Amend(volume_l=much)
        case Open(capacity_l=float(said)):
            much = _likeliest(number, by_volume, said)
            return None if much is None else Amend(capacity_l=much)
    return None


def figure_meant(message: Message) -> Amend | None:
    """ "My bad, it's 2.4 and it was Tuesday": the one bare figure that a correction does not take
    back; in a metric group one with decimals is of kilos where no record tells its unit."""
    held = indexes(message.days, message.bins, message.amounts, message.named)
    norms, found, i = message.norms, [], 0
    while i < len(norms):
        number = None if i in held else read_number(message.words, i)
        if number is None or number.word:
            i += 1
            continue
        if _REFUSED.isdisjoint(norms[max(0, i - 2) : i]):
            found.append(number.value)
        i = number.end
    decimal = len(found) == 1 and found[0] != int(found[0]) and found[0] < _MOST_DECIMAL
    if not decimal or message.context.last is not None:
        return number_meant(found[0], message) if decimal else None
    metric = message.context.units == "metric" and not message.liquid()
    return Amend(mass_kg=found[0]) if metric else None


_REFUSED = words_in("not no isnt wasnt than said wrote typed put")
_MOST_DECIMAL = 30


def with_figure(act: Amend, message: Message) -> Amend:
    """The correction with the bare figure that it tells, where it measures nothing."""
    measures = (act.mass_kg, act.volume_l, act.celsius, act.ph, act.materials)
    figure = None if any(measures) else figure_meant(message)
    if figure is None:
        return act
    return replace(act, mass_kg=figure.mass_kg, volume_l=figure.volume_l)


_BEFORE_NUMBER = REFUSING | words_in(
    ", . : - ! it that is was 's only just about should be i meant but"
)
_BEHIND_NUMBER = words_in(", . ! sorry please not really actually")


def _likeliest(number: float, factors: list[float], said: float) -> float | None:
    """The number in the unit that brings it nearest to what was said before."""
    if number <= 0:
        return None
    if said <= 0:
        return number
    return nearest([number * factor for factor in factors], said, FARTHEST)


FARTHEST = 8
"""Times as much, or as little, as was said before that a bare number may mean."""


def nearest(amounts: Sequence[float], said: float, farthest: float) -> float | None:
    """The one of some amounts that is nearest to what was said, by their ratio; none that is
    farther from it than so many times. All are more than nothing.
    """
    near = min(amounts, key=lambda much: abs(log(much / said)))
    return near if abs(log(near / said)) <= log(farthest) else None
