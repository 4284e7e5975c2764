"""What the whole message adds to its acts: amounts told apart, a bin named in passing, shares."""

import re
from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import (
    Act,
    Batch,
    Drain,
    Layer,
    Observe,
    OnBins,
    Open,
    Seal,
    Stock,
)
from handlers.reading.allotted import allotted, halved
from handlers.reading.amounts import Amount
from handlers.reading.described import described
from handlers.reading.elsewhere import measured_elsewhere
from handlers.reading.enumerated import enumerated
from handlers.reading.groups import Group, whole_of
from handlers.reading.liquid import drawn, litres
from handlers.reading.materials import Makeup
from handlers.reading.message import Message
from handlers.reading.naming import given_name
from handlers.reading.numbers import digits_value
from handlers.reading.quantities import amount_sum, makeup_of, scrap_amounts
from handlers.reading.told import deeds
from handlers.reading.unlike import parted
from handlers.reading.vocabulary import words_in

_SHARED_OUT = words_in("split divided divide shared share half halves evenly equally halved mitad")
_EACH = words_in("each both apiece")
_SUMMED = words_in("total so far now altogether week month weighs makes average per")


def completed(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, each in the bin that the message names and with what is told elsewhere in it."""
    done = described(measured_elsewhere(_with_amounts(acts, message), message), message)
    return [_on_several(act, message) for act in done] if message.context.in_room else done


def _with_amounts(acts: Sequence[Act], message: Message) -> list[Act]:
    acts = enumerated([_in_bin(act, message) for act in acts], message)
    if deeds(message) < 2:
        acts = _one_each(acts)
    told = {(act.act, getattr(act, "bin", None)) for act in acts}
    acts = [
        each
        for act in acts
        for each in _for_each(act, message)
        if each is act or each == act or (each.act, getattr(each, "bin", None)) not in told
    ]
    shared = _allotted(acts, message)
    if shared:
        return shared
    layers = sum(isinstance(act, Layer) for act in acts)
    drains = sum(isinstance(act, Drain) for act in acts)
    out: list[Act] = []
    for act in acts:
        if isinstance(act, Layer) and layers == 1:
            whole = act if drains else _measured(act, message)
            out += _shares(whole, message) or parted(halved(whole, message), message)
        elif isinstance(act, Drain) and drains == 1 and layers == 0 and act.volume_l is None:
            out.append(replace(act, volume_l=_drained(message)))
        else:
            out.append(act)
    return out


def _allotted(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts with the layers as one lot was shared out; none where nothing was."""
    layers = [act for act in acts if isinstance(act, Layer)]
    parts = allotted(layers, message) if layers else []
    if {(p.bin, p.mass_kg) for p in parts} == {(a.bin, a.mass_kg) for a in layers}:
        return []
    return [*parts, *(act for act in acts if not isinstance(act, Layer))] if parts else []


def _in_bin(act: Act, message: Message) -> Act:
    """An act without a bin is of the one whose name stands somewhere in the message."""
    if isinstance(act, Batch | Stock) or getattr(act, "bin", "") is not None:
        return act
    if isinstance(act, Open):
        given = given_name(message)
        if given is not None:
            return replace(act, bin=given)
    names = {ref.name for ref in message.named}
    if isinstance(act, Layer | Drain | Seal | Observe):
        names |= {ref.name for ref in message.bins if ref.name is not None}
    if isinstance(act, Open) and message.has(_ANEW):
        names |= {ref.name for ref in message.bins if ref.known and ref.name is not None}
    return replace(act, bin=names.pop()) if len(names) == 1 else act  # type: ignore[arg-type]


_ANEW = words_in("restarted restart reopened again relaunched")


def _for_each(act: Act, message: Message) -> list[Act]:
    """ "Two closed today: bin 6 and the hall": an act for each bin of the list."""
    if not isinstance(act, Seal) and not (isinstance(act, Drain) and act.volume_l is None):
        return [act]
    lists = _lists(message)
    for names in lists:
        if act.bin in names or (act.bin is None and len(lists) == 1):
            return [replace(act, bin=name) for name in names]
    return [act]


def _on_several(act: Act, message: Message) -> Act:
    """ "Sealed both", "drained all of them": a deed on several bins that are not named."""
    if not isinstance(act, OnBins) or act.bin is not None or not message.has(_EVERY):
        return act
    match = _SEVERAL.search(" ".join(message.norms))
    if match is None:
        return act
    return replace(act, each="both" if match.group().startswith("both") else "all")


_EVERY = words_in("both all every")
_SEVERAL = re.compile(
    r"\bboth(?= of (?:them|the|our)\b| bins?\b| buckets?\b| [^\w\s]| today\b| now\b| up\b|$)|"
    r"\b(?:all(?: of)?(?: the| our| these)?|every) "
    r"(?:bins?|buckets?|them|three|four|five|six|[3-6])\b|"
    r"\bthem all\b"
)


def _lists(message: Message) -> list[list[str]]:
    """The bins that are named in a row, with nothing but "and" and commas between them."""
    out: list[list[str]] = []
    end = -1
    for ref in sorted((*message.bins, *message.named)):
        if ref.name is None or ref.start < end:
            continue
        between = message.norms[end : ref.start] if out else [""]
        if out and set(between) <= _JOINTS:
            if ref.name not in out[-1]:
                out[-1].append(ref.name)
        else:
            out.append([ref.name])
        end = ref.end
    return [names for names in out if len(names) > 1]


_JOINTS = words_in("and & n , + the then y und et e")


def _one_each(acts: list[Act]) -> list[Act]:
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


def _measured(layer: Layer, message: Message) -> Layer:
    """The one layer of a message, with the amounts that its other sentences tell of it."""
    whole = whole_of(message)
    if whole is None or len(set(whole.names())) > 1:
        return layer
    mass, volume = amount_sum(scrap_amounts(whole))
    if mass is None and layer.mass_kg is None:
        mass = _weighed_aside(message) or _bare_kilos(message)
    made = makeup_of(whole)
    if layer.mass_kg is None and mass is not None:
        layer = replace(layer, mass_kg=mass, volume_l=None)
    elif layer.mass_kg is None and layer.volume_l is None and volume is not None:
        layer = replace(layer, volume_l=volume)
    elif layer.mass_kg is not None and mass is not None and mass > layer.mass_kg * 1.05:
        if not _lists_things(whole):
            return layer
        layer = replace(layer, mass_kg=mass)
    else:
        made = None if layer.materials != {"mixed": 1.0} else made
    return layer if made is None else replace(layer, materials=made.shares, rich=made.rich)


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


def _weighed_aside(message: Message) -> float | None:
    """ "She says it's 1.6 kg": the one mass of the message, whoever read it off the scale."""
    masses = [a for a in message.amounts if a.quantity == "mass" and not a.negative]
    said = [a for a in masses if _sense_at(message, a.start) not in _SUPPOSED]
    return said[0].value if len(masses) == 1 and said and not message.bran() else None


_SUPPOSED = frozenset({"if", "will", "habit"})


def _bare_kilos(message: Message) -> float | None:
    """ "Bin 12: rendang mostly. 1.4": in a metric group a lone decimal is one of kilos."""
    return _bare(message, _DECIMAL, weighed=message.has(_SCALES))


def _bare_millilitres(message: Message) -> float | None:
    """ "Drained Bridie, 250": in a metric group a lone round number is one of millilitres."""
    found = _bare(message, _HUNDREDS, weighed=False)
    return None if found is None else found / 1000


def _bare(message: Message, form: re.Pattern[str], *, weighed: bool) -> float | None:
    """The one number of that form, said of nothing else, where nothing is measured."""
    if message.context.units != "metric" or message.amounts:
        return None
    spans = [(d.start, d.end) for d in message.days] + [(b.start, b.end) for b in message.bins]
    held = {i for start, end in spans for i in range(start, end)}
    words = enumerate(message.words)
    alone = [i for i, w in words if i not in held and form.fullmatch(w.norm)]
    if len(alone) != 1 or not (weighed or _ends(message.norms[alone[0] + 1 : alone[0] + 2])):
        return None
    return digits_value(message.norms[alone[0]])


_HUNDREDS = re.compile(r"[1-9]\d?[05]0|[5-9]0")
_SCALES = words_in("scale scales weighed")
_DECIMAL = re.compile(r"\d{1,2}[.,]\d")


def _ends(after: Sequence[str]) -> bool:
    return not after or not after[0].isalnum()


def _is_asked(message: Message, i: int) -> bool:
    return _sense_at(message, i) == "ask"


def _sense_at(message: Message, i: int) -> str:
    return next((c.sense for c in message.clauses if c.start <= i < c.end), "none")


def _lists_things(whole: Group) -> bool:
    """Whether each mass stands beside a thing, so that they add up ("rolls 2 lb, ham 2 lb")."""
    if not _SUMMED.isdisjoint(whole.norms) or len({d.past for d in whole.days}) > 1:
        return False
    ends = {i.end for i in whole.items}
    starts = {i.start for i in whole.items}
    masses = [a for a in scrap_amounts(whole) if a.quantity == "mass"]
    near = [
        _in_list(whole.message.norms, a)
        or any(a.start - 2 <= e <= a.start for e in ends)
        or any(a.end <= s <= a.end + 2 for s in starts)
        for a in masses
    ]
    return len(masses) > 1 and all(near)


def _drained(message: Message) -> float | None:
    whole = whole_of(message)
    told = None if whole is None or whole.solids() else litres(drawn(whole))
    if told is not None:
        return told
    exact = [a for a in message.amounts if a.quantity == "volume" and not a.vessel and not a.size]
    told_of = len(exact) == 1 and _sense_at(message, exact[0].start) not in _SUPPOSED
    return exact[0].value if told_of else _bare_millilitres(message)


def _shares(layer: Layer, message: Message) -> list[Layer]:
    """ "Split between the shed and the hall" is half for each, "1 kg to each bin" one for each."""
    refs = [r for r in sorted((*message.bins, *message.named)) if not _is_asked(message, r.start)]
    names = list(dict.fromkeys(ref.name for ref in refs if ref.name is not None))
    if len(names) < 2:
        return []
    measures = {i for a in message.amounts for i in range(a.start, a.end)}
    if any(n in _SHARED_OUT for i, n in enumerate(message.norms) if i not in measures):
        part = 1 / len(names)
    elif message.has(_EACH):
        part = 1.0
    else:
        return []
    mass = None if layer.mass_kg is None else layer.mass_kg * part
    volume = None if layer.volume_l is None else layer.volume_l * part
    return [replace(layer, bin=name, mass_kg=mass, volume_l=volume) for name in names]
