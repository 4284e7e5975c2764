"""A few words that lean on the amount last written down: more of it, or another number."""

from collections.abc import Mapping, Sequence
from dataclasses import replace
from itertools import pairwise
from math import log

from handlers.practice.units import KILOGRAMS, LITRES
from handlers.reading.acts import (
    Act,
    Amend,
    Batch,
    Bury,
    Drain,
    Layer,
    Open,
    Retract,
    Seal,
    Stock,
    Unsure,
)
from handlers.reading.corrections.amending import (
    BARE_AMOUNT,
    SORRY,
    is_bare_amount,
    is_of_another_thing,
)
from handlers.reading.deeds.liquid import drain_from, drawn
from handlers.reading.deeds.scraps import layer_from
from handlers.reading.food.makeups import makeup
from handlers.reading.food.quantities import amount_sum, scrap_amounts
from handlers.reading.grouping import groups_of
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message, read_message
from handlers.reading.plaintext import is_asking, plain_text, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import vocabulary, words_in
from handlers.reading.words.wording import FURTHER, NOTHING_FURTHER, PUTTING_RIGHT, first_in

_RULE = "and another amount"
_MOST_WORDS = 6
_REFUSING = SORRY | words_in("no nope nah make")
_UNDONE = frozenset({"will", "if", "not", "said", "ask"})


_OTHER_DEEDS = frozenset({"open", "seal", "bury", "batch", "drain", "stock"})
"""What is told with such a verb is read for itself."""

_UNITS: Mapping[str, tuple[tuple[str, ...], tuple[str, ...]]] = {
    "metric": (("kilogram", "gram"), ("litre", "millilitre")),
    "us": (("pound", "ounce"), ("us_gallon", "us_quart", "us_cup")),
    "imperial": (("pound", "ounce"), ("imperial_gallon", "imperial_pint", "litre")),
}
"""What a bare number may count in each system: of a mass, and of a volume."""


def adds(message: Message) -> bool:
    """Whether a short answer tells of a further amount, and puts no earlier one right."""
    drains = isinstance(spoken_of(message), Drain)
    deeds = _OTHER_DEEDS - {"drain"} if drains else _OTHER_DEEDS
    return (
        (message.context.after_bot or spoken_of(message) is not None)
        and word_count(message) <= _MOST_WORDS
        and any(a.quantity in ("mass", "volume") for a in message.amounts)
        and not is_asking(message)
        and all(c.sense not in _UNDONE for c in message.clauses)
        and not any(c.verb and c.verb.verb.classes & deeds for c in message.clauses)
        and is_further(message)
        and not is_of_another_thing(message)
    )


def spoken_of(message: Message) -> Act | None:
    """The record that the talk is on, else the sender's own, whoever has spoken since."""
    return message.context.last or message.context.earlier


def is_further(message: Message) -> bool:
    """Whether an amount is told of as a further one: it puts no earlier one right."""
    if any(a == "not" and b[:1].isdigit() for a, b in pairwise(message.norms)):
        return False  # "and 3 lb not 2"
    return _REFUSING.isdisjoint(message.norms[:3]) and _tells_further(plain_text(message))


def _tells_further(text: str) -> bool:
    return (
        first_in(FURTHER, text) is not None
        and first_in(NOTHING_FURTHER, text) is None
        and first_in(PUTTING_RIGHT, text) is None
    )


def more(message: Message) -> Layer | Drain | None:
    """The further amount, of the kind and in the bin of the record that the talk is on."""
    if not adds(message):
        return None
    last = spoken_of(message)
    if isinstance(last, Batch | Stock):
        return None
    groups = groups_of(message)
    for k, group in enumerate(groups):
        act: Layer | Drain | None = None
        runs = isinstance(last, Drain) or message.liquid()
        if runs and drawn(group) and not group.solids():
            act = drain_from(groups, k, _RULE)
        elif scrap_amounts(group):
            act = layer_from(groups, k, _RULE)
        if act is not None:
            known = last.bin if isinstance(last, Layer | Drain) else None
            return act if act.bin else replace(act, bin=known)
    return None


def amount_owed(message: Message) -> Amend | Unsure | None:
    """ "300 mL" behind "drained blue", "a bowl and a half" behind "leftovers in green": how much
    there was of the record that lacks it, and no further layer.

    Where others have spoken since, scraps are asked about: it may be their question's answer.
    """
    match spoken_of(message):
        case Drain(volume_l=None) if is_bare_amount(_without_coming(message)):
            owed = [a for a in message.measured() if a.quantity == "volume"]
        case Layer(mass_kg=None, volume_l=None) as layer if _is_amount_of(layer, message):
            owed = scrap_amounts(groups_of(message)[-1])
        case Layer(mass_kg=None, volume_l=None) if message.context.after_bot:
            return _grams_owed(message)
        case _:
            return None
    mass, volume = amount_sum(owed)
    if not (mass or volume):
        return None
    owing = Amend(mass_kg=mass, volume_l=volume, rules=(BARE_AMOUNT,))
    doubtful = message.context.last is None and isinstance(message.context.earlier, Layer)
    return Unsure(guess=(owing,), rules=owing.rules) if doubtful else owing


def _without_coming(message: Message) -> Message:
    """ "Got 150 ml", "about half a litre came out": without what says that it came out."""
    norms, end = message.norms, len(message.norms)
    start = next((i for i, norm in enumerate(norms) if norm not in _COMING), end)
    while end > start and norms[end - 1] in _COME:
        end -= 1
    if (start, end) == (0, len(norms)) or start == end:
        return message
    return read_message(message.text(start, end), message.context)


_COMING = words_in("got it gave there was were about we i had took that 's")
_COME = words_in("out off came this time of it . !")


def _grams_owed(message: Message) -> Amend | None:
    """ "About 500" in answer to how much it was: grams, in a metric group."""
    norms = [norm for norm in message.norms if norm not in _ROUNDLY]
    metric = message.context.units == "metric" and not (message.amounts or message.bins)
    if not metric or len(norms) != 1 or is_asking(message):
        return None
    at = message.norms.index(norms[0])
    number = read_number(message.words, at)
    if number is None or number.word or not _FEWEST_GRAMS <= number.value <= _MOST_GRAMS:
        return None
    return Amend(mass_kg=number.value / 1000, rules=(BARE_AMOUNT,))


_ROUNDLY = words_in("about around roughly approx maybe ish or so ~ . ! , say probably")
_FEWEST_GRAMS, _MOST_GRAMS = 50, 5000
"""A bare number between them is of grams."""


def _is_amount_of(layer: Layer, message: Message) -> bool:
    """Whether no more is told than an amount, of the same things if of any."""
    if message.bins or any(c.verb is not None or c.sense != "none" for c in message.clauses):
        return False
    few = word_count(message) <= 2 * _MOST_WORDS and len(message.measured()) == 1
    if not few or is_asking(message) or first_in(FURTHER, plain_text(message)):
        return False
    made = makeup([item for item in message.items if not item.generic])
    return made is None or made.shares.keys() <= (layer.materials or {}).keys()


def another_number(message: Message) -> Amend | None:
    """ "No 2", "no, it was 3": a bare number in place of the one last written down."""
    if message.amounts or (message.bins and not is_number_alone(message)):
        return None
    norms = message.norms
    at = next((i for i, norm in enumerate(norms) if norm not in _BEFORE_NUMBER), len(norms))
    number = read_number(message.words, at) if at < len(norms) else None
    if number is None or number.word or number.value <= 0:
        return None
    if _REFUSING.isdisjoint(norms[:at]) and not _goes_on_with(message, at):
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


_NEVER_DID = Late(
    r"^(?:(?:no|wait|oops|sorry|actually|hang on|but|hey|,) )*i (?:didnt|did not|havent|never) "
    r"(?:(?:actually|even|really) )?(?P<did>\w+)(?: (?:it|that|any|anything|them))?"
    r"(?: (?:in|on|off|up|at all|after all|yet|today|actually|then|though))*(?: [.,;!].*)?$"
)
_ANOTHER_DAY = Late(
    r"^(?:(?:no|wait|oops|sorry|actually|hang on|but|hey|,) )*i (?:didnt|did not|havent|never) "
    r"(?:(?:actually|even|really) )?(?P<did>\w+)(?: (?:it|that|any|anything|them|am))?"
    r"(?: (?:in|on|off|up|actually|though|o|qday))*(?: [.,;-])*"
    r"(?:(?: but| na| actually| it was| that was| it is| i (?:did|put|added|drained|sealed|buried)"
    r"(?: (?:it|that|am))?(?: in| up)?| it happened| it went in)+(?: on)?) qday"
    r"(?: (?:i|put|did|added|drained|sealed|it|that|am|in|off|up|sorry|actually|instead|o))*$"
)
_DEEDS: Mapping[str, type[Act]] = {
    **dict.fromkeys(("drain", "drained"), Drain),
    **dict.fromkeys(("add", "added", "put"), Layer),
    **dict.fromkeys(("seal", "sealed"), Seal),
    **dict.fromkeys(("bury", "buried"), Bury),
}


def never_done(message: Message) -> Retract | Amend | None:
    """ "I didn't drain it at all", of the record that the talk is on; "I didn't put it in today, it
    was yesterday" was done on another day.
    """
    last = message.context.last
    named = any(ref.known and ref.name for ref in message.bins)
    if last is None or message.amounts or named:
        return None
    moved = _ANOTHER_DAY.match(plain_text(message, days=True)) if message.days else None
    did = moved or _NEVER_DID.match(plain_text(message))
    if did is None or not isinstance(last, Drain | Layer | Seal | Bury):
        return None
    if _DEEDS.get(did["did"]) is not type(last):
        return None
    day = message.days[-1].past if moved else last.on
    if moved and day is not None and day != last.on and day <= message.today:
        return Amend(on=day, rules=("it was done on another day",))
    return Retract(bin=last.bin, rules=("it was not done",))


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


def another_doer(message: Message) -> Amend | None:
    """ "That was Bram, not me": one whom the group has not named before."""
    if not message.context.after_bot or message.members:
        return None
    match = _NOT_ME.fullmatch(" ".join(message.norms))
    if match is None:
        return None
    named = message.words[match.group()[: match.start("name")].count(" ")]
    if not named.text[:1].isupper() or named.norm in vocabulary():
        return None
    return Amend(member=named.text, rules=("another did it",))


_NOT_ME = Late(
    r"(?:(?:no|oops|sorry|actually|,) )*(?:that|it) (?:was|is|'s) (?P<name>[^\W\d]+)"
    r"(?: ,)?(?: and)? not me(?: [.!])*"
)


_BEFORE_NUMBER = _REFUSING | words_in(
    ", . : - ! it that is was 's only just about should be i meant but"
)
_BEHIND_NUMBER = words_in(", . ! sorry please not really actually")


def _likeliest(number: float, factors: list[float], said: float) -> float | None:
    """The number in the unit that brings it nearest to what was said before."""
    if number <= 0:
        return None
    if said <= 0:
        return number
    near = min((number * factor for factor in factors), key=lambda much: abs(log(much / said)))
    return near if abs(log(near / said)) <= log(FARTHEST) else None


FARTHEST = 8
"""Times as much, or as little, as was said before that a bare number may mean."""
