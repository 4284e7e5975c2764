"""What a message measures in another sentence than the act's: warmth, acidity, size, starter."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Ask, Batch, Layer, Observe, Open, Stock
from handlers.reading.bins.sizes import SMALLEST_BARE
from handlers.reading.deeds.observations import is_in_bin
from handlers.reading.deeds.told import deeds
from handlers.reading.food.ofwhat import of_what
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.questions.askedbeside import FIGURED, asked_elsewhere
from handlers.reading.words.vocabulary import words_in

_SIZE = words_in("capacity holds hold holding size sized takes")
_EACH = words_in("each apiece every per")


def measured_elsewhere(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts with the one measure that the message has for them and that no other act uses."""
    if not any(isinstance(act, _MEASURED) or _asks_of_figures(act) for act in acts):
        return list(acts)
    acts = _one_stock(_without_sizes(acts, message), message)
    free = _free(acts, message)
    return [_measured(act, acts, free, message) for act in acts]


_MEASURED = (Observe, Open, Stock, Batch)


def _asks_of_figures(act: Act) -> bool:
    return isinstance(act, Ask) and act.topic in ("trench", *FIGURED)


_ON_HAND = words_in("shelf total altogether makes thats 's left hand stock us")


def _one_stock(acts: Sequence[Act], message: Message) -> list[Act]:
    """ "A jar of starter left, about a pound": what was weighed says how much the vessel holds."""
    weighed = any(isinstance(act, Stock) and act.mass_kg is not None for act in acts)
    masses = [a.value for a in message.amounts if a.quantity == "mass"]
    mixed = any(isinstance(a, Batch) and [a.mass_kg] == masses for a in acts)
    if mixed and not message.has(_ON_HAND):  # "got 10 lb of bran fermenting"
        return [a for a in acts if not (isinstance(a, Stock) and a.mass_kg == masses[0])]
    if not weighed:
        return list(acts)
    held = {a.value for a in message.amounts if a.vessel}
    return [
        act
        for act in acts
        if not (isinstance(act, Stock) and act.volume_l in held and not act.mass_kg)
    ]


def _measured(act: Act, acts: Sequence[Act], free: list[Amount], message: Message) -> Act:
    alone = sum(type(other) is type(act) for other in acts) == 1
    if isinstance(act, Observe) and alone:
        return replace(
            act,
            celsius=act.celsius if act.celsius is not None else _only(message, "celsius"),
            ph=act.ph if act.ph is not None else _only(message, "ph"),
        )
    if isinstance(act, Open) and alone and act.capacity_l is None:
        return replace(act, capacity_l=_size(message, free))
    on_hand = {other.mass_kg for other in acts if isinstance(other, Stock)}
    unmeasured = isinstance(act, Batch) and act.volume_l is None
    if isinstance(act, Batch) and unmeasured and alone and act.mass_kg in {None, *on_hand}:
        return _mixed(act, message, free)
    if isinstance(act, Stock) and alone and act.mass_kg is None:
        return _stocked(act, message, free)
    if isinstance(act, Ask) and act.topic == "trench" and act.volume_l is None and not act.mass_kg:
        sizes = [a.value for a in free if a.quantity == "volume" and a.value >= SMALLEST_BARE]
        return replace(act, volume_l=sizes[0]) if len(sizes) == 1 else act
    if isinstance(act, Ask) and act.topic in FIGURED and alone:
        return asked_elsewhere(act, acts, free, message)
    return act


def _free(acts: Sequence[Act], message: Message) -> list[Amount]:
    """The amounts of mass and volume whose value no act has."""
    used = {
        ("mass" if name == "mass_kg" else "volume", value)
        for act in acts
        for name in ("mass_kg", "volume_l", "capacity_l", "water_l", "liquid_l")
        if (value := getattr(act, name, None)) is not None
    }
    measures = message.measured()
    return [a for a in measures if (a.quantity, a.value) not in used and not a.negative]


def _only(message: Message, quantity: str) -> float | None:
    """The one value of that quantity in the message, if it is not told of something else."""
    found = [a.value for a in message.amounts if a.quantity == quantity and is_in_bin(message, a)]
    return found[0] if len(found) == 1 else None


def _size(message: Message, free: Sequence[Amount]) -> float | None:
    """What a new bin holds: the size named as such, or the one volume of a bin's size."""
    sizes = [a for a in free if a.quantity == "volume" and a.value >= SMALLEST_BARE]
    named = [
        a for a in sizes if not _SIZE.isdisjoint(message.norms[max(0, a.start - 3) : a.end + 2])
    ]
    chosen = named or sizes
    return chosen[0].value if len(chosen) == 1 else None


def _without_sizes(acts: Sequence[Act], message: Message) -> list[Act]:
    """A new bin's size ("new bin in the yard. 60 litres.") is no layer where nothing went in."""
    opened = [a for a in acts if isinstance(a, Open) and a.capacity_l is None]
    if len(opened) != 1 or message.items:
        return list(acts)
    return [
        act
        for act in acts
        if not (
            isinstance(act, Layer)
            and act.volume_l is not None
            and act.volume_l >= SMALLEST_BARE
            and not deeds(message)
        )
    ]


def _mixed(act: Batch, message: Message, free: Sequence[Amount]) -> Batch:
    """ "We've made starter, Paz stirred, 4 kg in total": the one amount that is left for it."""
    own = [a for a in free if of_what(message, a) != "water" and not a.size]
    masses = [a for a in own if a.quantity == "mass"]
    volumes = [a for a in own if a.quantity == "volume" and not a.vessel]
    if len(masses) == 1:
        return replace(act, mass_kg=masses[0].value)
    return replace(act, volume_l=volumes[0].value) if not masses and len(volumes) == 1 else act


def _stocked(act: Stock, message: Message, free: Sequence[Amount]) -> Stock:
    """ "We are low on bran. Maybe 8 oz in the bag.", "six bags, 1 kg each"."""
    masses = [a for a in free if a.quantity == "mass"]
    if len(masses) != 1:
        return act
    mass = masses[0]
    if _EACH.isdisjoint(message.norms[mass.end : mass.end + 2]):
        vessels = {a.value for a in message.amounts if a.vessel}
        measured = act.volume_l is not None and act.volume_l not in vessels
        return act if measured else replace(act, mass_kg=mass.value, volume_l=None)
    bags = [a for a in message.amounts if a.vessel and a.end <= mass.start and a.factor]
    if len(bags) != 1:
        return act
    count = bags[0].value / bags[0].factor
    return replace(act, mass_kg=count * mass.value, volume_l=None)
