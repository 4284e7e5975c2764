"""The answer given last asked for in other units: "in pounds?", "what's that in cups?", "in metric
please".
"""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from math import isclose, log10

from handlers.practice.units import LITRES
from handlers.reading.acts import Ask, Layer, Topic, Units
from handlers.reading.measures.unitwords import Quantity, Unit, unit_table
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.questions.doses import dose_on
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in("in into to many as")
"""Words without one of which nothing is asked so."""

_MASS, _LIQUID = frozenset[Quantity]({"mass", "volume"}), frozenset[Quantity]({"volume"})
_WEIGHED = frozenset[Quantity]({"mass"})
_SAID: Mapping[Topic, frozenset[Quantity]] = {
    **dict.fromkeys(("bin", "batch", "full", "bins", "totals"), _MASS),
    **dict.fromkeys(("liquid", "starter", "bran"), _MASS),
    **dict.fromkeys(("moisture", "carbon"), _WEIGHED),
    "dose": _MASS | {"length"},
    "dilution": _LIQUID,
    "trench": _LIQUID | {"length"},
    "bed": _WEIGHED | {"area", "length"},
}
"""What the answer to each question is measured in."""
_IN = Late(
    r"^(?:(?:and|so|ok|okay|but|oh|er|um|hm+|sorry|thanks|,|what|what's|whats|how|much|is|'s|that|"
    r"it|this|would|be|can|could|you|we|i|say|give|tell|put|show|convert|have|get|me|them|us|the|"
    r"same|answer|again) )*"
    r"(?:in|into|to|as|many) (?P<units>\S+(?: \S+){0,4}?)"
    r"(?: (?:is|are|would|be|that|it|this|then|instead|units?|measures?|,))*$"
)
_JOINED = Late(r" (?:and|or|&|/|,) ")
_SYSTEMS: Mapping[str, Units] = {
    **dict.fromkeys(("metric", "si"), "metric"),
    **dict.fromkeys(("us", "american", "us customary", "customary"), "us"),
    **dict.fromkeys(("imperial", "british", "old money"), "imperial"),
}
_AMERICAN = frozenset(
    value for name, value in LITRES.items() if name.startswith("us_") and "bushel" not in name
)
_ASKING = words_in("? please pls what how can could")
"""Without one of which "in pounds" behind a layer may put it right."""
_CUPS, _SPOONS = frozenset({"cups"}), words_in("spoons tablespoons grams")


def in_other_units(message: Message) -> tuple[Ask, ...]:
    """The questions answered last, or that of the dose on the layer just told, in the units that
    the words ask for; none if they ask for none, or for such as the answer has no amount in.
    """
    asked = message.context.asked or _of_layer(message)
    lot = _lot(message)
    if not (asked or lot) or not message.has(CUES):
        return ()
    wanted = _IN.search(plain_text(message))
    if wanted is None:
        return ()
    words = wanted["units"].split()
    if lot and _is_other_measure(lot, words, message.context.units):
        return (lot,)
    found = (_in_units(one, words, message.context.units) for one in asked)
    return tuple(one for one in found if one is not None)


def _lot(message: Message) -> Ask | None:
    """What the layer told last weighs, or how much room it takes; none if there is no such."""
    last = message.context.last
    if message.context.asked or not isinstance(last, Layer) or not message.has(_ASKING):
        return None
    return Ask(
        topic="full",
        what="lot",
        mass_kg=last.mass_kg,
        volume_l=last.volume_l,
        materials=last.materials,
    )


def _is_other_measure(lot: Ask, words: list[str], own: Units) -> bool:
    """Whether it is asked in kilos of what was told in litres, or the other way round."""
    units = [named[1].quantity for named in _named(words, own) if named]
    if lot.mass_kg is None:
        return lot.volume_l is not None and units == ["mass"]
    return units == ["volume"] and not _BRAN_MEASURES.issuperset(words)


_BRAN_MEASURES = words_in("cups cup spoons tablespoons teaspoons tbsp")
"""The starter is asked for in these."""


def _of_layer(message: Message) -> tuple[Ask, ...]:
    """What was answered to a layer: how much starter it wants."""
    last = message.context.last
    if not message.context.after_bot or not isinstance(last, Layer) or not message.has(_ASKING):
        return ()
    return (dose_on(last),) if last.mass_kg or last.volume_l else ()


def _in_units(asked: Ask, words: list[str], own: Units) -> Ask | None:
    said = set(words)
    if asked.topic == "dose" and asked.what in (None, "cups") and said <= _CUPS | _SPOONS:
        what = "cups" if said == _CUPS else None
        if "grams" not in said:
            return replace(asked, what=what)
        return replace(asked, what=what, units=None if own == "metric" else "metric")
    units = _SYSTEMS.get(" ".join(words))
    if units is None:
        named = list(_named(words, own))
        if not named or not all(named):
            return None
        if not any(_measures(unit, asked.topic) for _, unit in filter(None, named)):
            return None
        units = next(_system(name, unit, own) for name, unit in filter(None, named))
    elif asked.topic not in _SAID:
        return None
    return replace(asked, units=None if units == own else units)


def _named(words: list[str], own: Units) -> Iterator[tuple[str, Unit] | None]:
    """Each unit with its spelling; None for words that are none."""
    for part in _JOINED.sub("\n", " ".join(words)).splitlines():
        name = part.replace(" ", "_")
        unit = unit_table(own).get(name)
        yield None if unit is None or unit.vessel else (name, unit)


def _measures(unit: Unit, topic: Topic) -> bool:
    said = _SAID.get(topic, frozenset[Quantity]())
    return unit.quantity in said or (unit.liquid is not None and "volume" in said)


def _system(name: str, unit: Unit, own: Units) -> Units:
    """Whose unit it is; bare ones of two countries are the group's, or else imperial."""
    if isclose(log10(unit.factor), round(log10(unit.factor)), abs_tol=1e-9):
        return "metric"
    if name.startswith(("us_", "american_")):
        return "us"
    if own != "metric" and not name.startswith(("imperial_", "uk_", "imp_")):
        return own
    return "us" if unit.factor in _AMERICAN or name.startswith("cup") else "imperial"
