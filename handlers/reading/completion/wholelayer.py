"""The one layer of a message: parts of it added up, and what other sentences weigh of it."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Amend, Bury, Drain, Layer
from handlers.reading.completion.drawnoff import SUPPOSED, drained_volume
from handlers.reading.completion.figures import bare_mass
from handlers.reading.food.makeups import Makeup
from handlers.reading.food.ofwhat import is_level
from handlers.reading.food.quantities import amount_sum, makeup_of, scrap_amounts
from handlers.reading.grouping import whole_of
from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.sense import ALWAYS
from handlers.reading.words.vocabulary import words_in


def one_each(acts: list[Act]) -> list[Act]:
    """Layers of one bin on one day by one member are one, its amounts added up."""
    out: list[Act] = []
    for act in acts:
        last = next((k for k, a in enumerate(out) if isinstance(a, Layer)), None)
        if isinstance(act, Layer) and last is not None:
            joined = _joined(out[last], act)
            if joined is not None:
                out[last] = joined
                continue
        out.append(act)
    return out


def _joined(first: Act, second: Layer) -> Layer | None:
    assert isinstance(first, Layer)
    if (first.bin, first.on, first.member) != (second.bin, second.on, second.member):
        return None
    parts = [(a.mass_kg if a.mass_kg is not None else a.volume_l) for a in (first, second)]
    if parts[0] is None or parts[1] is None or (first.mass_kg is None) != (second.mass_kg is None):
        return None
    total = parts[0] + parts[1]
    made = _blended([(first, parts[0]), (second, parts[1])], total)
    return replace(
        first,
        mass_kg=None if first.mass_kg is None else total,
        volume_l=None if first.volume_l is None else total,
        materials=made.shares,
        rich=made.rich,
    )


def _blended(parts: Sequence[tuple[Layer, float]], total: float) -> Makeup:
    shares: dict[str, float] = {}
    for layer, amount in parts:
        for kind, share in (layer.materials or {}).items():
            shares[kind] = shares.get(kind, 0.0) + share * amount / (total or 1.0)
    known = [layer.rich for layer, _ in parts if layer.rich is not None]
    rich = sum((layer.rich or 0.0) * amount for layer, amount in parts) / (total or 1.0)
    return Makeup(shares, rich if known else None)  # type: ignore[arg-type]


def whole_layer(layer: Layer, acts: Sequence[Act], message: Message) -> Layer:
    """The one layer with what other sentences tell of it, and nothing that they tell of others."""
    if any(isinstance(act, Drain | Bury) for act in acts):  # "in the rose bed" is no scraps
        return _weighed(layer, message)
    amend = next((act for act in acts if isinstance(act, Amend)), None)
    if amend is None or layer.mass_kg is None:
        return _measured(layer, message)
    rest = layer.mass_kg - (amend.mass_kg or 0.0)
    if any(a.value == layer.mass_kg for a in message.amounts):
        return layer
    told = any(a.quantity == "mass" and abs(a.value - rest) < _EXACT for a in message.amounts)
    if told and amend.mass_kg:
        return replace(layer, mass_kg=rest)
    more = [a for a in message.amounts if a.quantity == "mass"][-1:]
    return replace(layer, mass_kg=more[0].value) if more and amend.mass_kg else layer


_EXACT = 1e-6


def _measured(layer: Layer, message: Message) -> Layer:
    """The one layer of a message, with the amounts that its other sentences tell of it."""
    whole = whole_of(message)
    if whole is None or (len(set(whole.names())) > 1 and not message.has(EACH)):
        return layer
    mass, volume = amount_sum(scrap_amounts(whole))
    if mass is None and layer.mass_kg is None:
        mass = _weighed_aside(message) or bare_mass(message)
    made = makeup_of(whole)
    if layer.mass_kg is None and mass is not None:
        layer = replace(layer, mass_kg=mass, volume_l=None)
    elif layer.mass_kg is None and layer.volume_l is None and volume is not None:
        layer = replace(layer, volume_l=volume)
    elif layer.mass_kg is not None and mass is not None and mass > layer.mass_kg * 1.05:
        if not _lists_things(whole, "mass"):
            return layer
        layer = replace(layer, mass_kg=mass)
    elif _is_more(layer.volume_l, volume) and _lists_things(whole, "volume"):
        layer = replace(layer, volume_l=volume)
    else:
        made = None if layer.materials != {"mixed": 1.0} else made
    if made is None or made.shares is layer.materials:
        return layer
    return replace(layer, materials=made.shares, rich=made.rich)


EACH = words_in("each both apiece")


def _is_more(told: float | None, whole: float | None) -> bool:
    return told is not None and whole is not None and whole > told * 1.05


def _weighed(layer: Layer, message: Message) -> Layer:
    """A layer beside a draining or a burial, with the weight that another sentence tells of it."""
    whole = whole_of(message)
    drained = layer.volume_l is not None and layer.volume_l == drained_volume(message)
    if whole is None or layer.mass_kg is not None or not (layer.volume_l is None or drained):
        return layer
    mass, _ = amount_sum([a for a in scrap_amounts(whole) if a.quantity == "mass"])
    return replace(layer, mass_kg=mass, volume_l=layer.volume_l if mass is None else None)


def _weighed_aside(message: Message) -> float | None:
    """ "She says it's 1.6 kg": the one mass of the message, whoever read it off the scale."""
    masses = [a for a in message.amounts if a.quantity == "mass" and not a.negative]
    masses = [a for a in masses if not is_level(message, a)]
    said = [
        a
        for a in masses
        if message.sense_at(a.start) not in SUPPOSED or _is_estimate(message, a.start)
    ]
    return said[0].value if len(masses) == 1 and said and not message.bran() else None


def _is_estimate(message: Message, i: int) -> bool:
    """ "It'd be a kilo and a half easy": supposed in form only."""
    clause = message.clause_at(i)
    words = [] if clause is None else message.norms[clause.start : clause.start + 4]
    led = words[:1] in (["it"], ["that"], ["they"]) or not _SUMS.isdisjoint(words[:2])
    return led and "be" in words  # "together will be a kilo and a half"


_SUMS = words_in("together total altogether all totally whole sum everything")


def _lists_things(whole: Group, quantity: str) -> bool:
    """Whether each amount stands beside a thing, so that they add up ("rolls 2 lb, ham 2 lb")."""
    if _says_what_was_made(whole.norms):
        return False  # "I made a pie of 2 lb of apples. The peels, 6 oz, are in the shed"
    if any(_tells_a_habit(whole.message, amount) for amount in whole.amounts):
        return False
    if not _SUMMED.isdisjoint(whole.norms) or len({d.past for d in whole.days}) > 1:
        return False
    ends = {i.end for i in whole.items}
    starts = {i.start for i in whole.items}
    masses = [a for a in scrap_amounts(whole) if a.quantity == quantity]
    near = [
        _in_list(whole.message.norms, a)
        or any(a.start - _ASIDE <= e <= a.start for e in ends)
        or any(a.end <= s <= a.end + 2 for s in starts)
        for a in masses
    ]
    return len(masses) > 1 and all(near)


def _tells_a_habit(message: Message, amount: Amount) -> bool:
    """ "Always 3 kilos of leaves to eat 200 grams": what is so each time is not put in besides."""
    clause = message.clause_at(amount.start)
    return clause is not None and clause.sense == "habit" and message.norms[clause.start] in ALWAYS


_ASIDE = 4
"""Words between a thing and its amount ("rice left from lunch, another kilo"), at most."""
_SUMMED = words_in("total so far now altogether week month weighs makes average per only")
_MADE = words_in("made baked cooked bought brewed juiced bottled")


def _says_what_was_made(norms: Sequence[str]) -> bool:
    """Whether a thing was made of some of it; "(we made too much)" tells of none."""
    if _MADE.isdisjoint(norms):
        return False
    return any(
        norm in _MADE and _TOO_MUCH.isdisjoint(norms[i + 1 : i + 4]) for i, norm in enumerate(norms)
    )


_TOO_MUCH = words_in("too much many extra plenty loads enough double twice")


def _in_list(norms: Sequence[str], amount: Amount) -> bool:
    """Whether an amount stands behind a word or two that a comma or a colon leads."""
    lead = norms[max(0, amount.start - 3) : amount.start]
    return (
        bool(lead)
        and lead[-1].isalpha()
        and lead[-1] not in _ABOUT
        and (not {",", ":"}.isdisjoint(lead[:-1]))
    )


_ABOUT = words_in("about maybe perhaps roughly around approx nearly almost say some only just")
