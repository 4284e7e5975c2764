"""What the whole message adds to its acts: amounts told apart, a bin named in passing, shares."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import (
    Act,
    Amend,
    Batch,
    Bury,
    Drain,
    Layer,
    Observe,
    OnBins,
    Open,
    Retract,
    Seal,
    Unsure,
)
from handlers.reading.allotted import allotted, halved
from handlers.reading.amounts import Amount
from handlers.reading.apart import drained_apart, told_apart
from handlers.reading.begun import in_opened, unsized
from handlers.reading.described import described
from handlers.reading.elsewhere import measured_elsewhere
from handlers.reading.enumerated import enumerated
from handlers.reading.figures import bare_mass, bare_volume, drawn_from
from handlers.reading.groups import Group, whole_of
from handlers.reading.lastword import settled_at_last
from handlers.reading.late import Late
from handlers.reading.liquid import drawn, litres
from handlers.reading.makeups import Makeup
from handlers.reading.message import Message
from handlers.reading.naming import given_name
from handlers.reading.ofwhat import is_level, of_what
from handlers.reading.quantities import amount_sum, makeup_of, scrap_amounts
from handlers.reading.spans import indexes
from handlers.reading.supplied import SURE
from handlers.reading.told import deeds, is_now
from handlers.reading.unlike import parted
from handlers.reading.vocabulary import words_in

_SHARED_OUT = words_in("split divided divide shared share half halves evenly equally halved mitad")
_EACH = words_in("each both apiece")
_SUMMED = words_in("total so far now altogether week month weighs makes average per only")


def completed(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, each in the bin that the message names and with what is told elsewhere in it."""
    if len(acts) == 1 and isinstance(acts[0], Unsure):  # what a "yes" would write down
        return [replace(acts[0], guess=tuple(completed(acts[0].guess, message)))]
    acts = _drained_only(unsized(_with_amounts(acts, message)), message)
    acts = _without_false_drains(acts, message)
    acts = described(measured_elsewhere(_without_echoes(acts), message), message)
    acts = [_lying_since(act, message) for act in _on_one_day(acts, message)]
    if sum(isinstance(act, Layer | Drain) for act in acts) == 1:
        acts = [settled_at_last(act, message) for act in acts]
    if not message.context.in_room:
        return acts
    return [_on_several(_struck_in(act, message), message) for act in acts]


def _struck_in(act: Act, message: Message) -> Act:
    """ "Scratch that last one in the shed": the bin whose record is to be struck out."""
    if not isinstance(act, Retract):
        return act
    named = {ref.name for ref in message.bins if ref.known and ref.plain}
    return replace(act, bin=named.pop()) if len(named) == 1 else act


def _on_one_day(acts: list[Act], message: Message) -> list[Act]:
    """ "Tom sealed the shed, I sealed the hall, both yesterday": the day of every report."""
    if not message.days:
        return acts
    norms = message.norms
    told = [d for d in message.days if d.start and not d.aside]
    said = [d for d in told if norms[d.start - 1] in ("both", "all")]
    if len(said) != 1 or said[0].past > message.today:
        return acts
    return [
        replace(act, on=said[0].past)
        if isinstance(act, Layer | Drain | Seal) and act.on == message.today
        else act
        for act in acts
    ]


def _lying_since(act: Act, message: Message) -> Act:
    """ "The carcass is in the shed since last night": the day on which it went in."""
    if not isinstance(act, Layer) or act.on != message.today or "since" not in message.norms:
        return act
    ends = {b.end for b in message.bins}
    since = [d for d in message.days if message.norms[d.start - 1 : d.start] == ["since"]]
    days = [d.past for d in since if d.start - 1 in ends or _lies_there(message, d.start - 2)]
    return replace(act, on=days[0]) if len(days) == 1 and days[0] <= message.today else act


def _lies_there(message: Message, i: int) -> bool:
    return message.norms[max(0, i - 1) : i + 1] == ["in", "there"]


def _drained_only(acts: list[Act], message: Message) -> list[Act]:
    """ "Navy had a dribble for me, 30 ml": one volume of nothing named is no layer besides."""
    drained = any(isinstance(act, Drain) for act in acts)
    if not drained and not message.items and message.has(_DRIBBLES):
        acts = [_as_drain(act) if isinstance(act, Layer) and act.volume_l else act for act in acts]
    out = {(a.bin, a.volume_l) for a in acts if isinstance(a, Drain) and a.volume_l}
    if not out or message.items:
        return acts
    bins = {name for name, _ in out}
    loose = {a.value for a in message.amounts if a.vessel}
    kept = [a for a in acts if not (isinstance(a, Layer) and (a.bin, a.volume_l) in out)]
    return [
        _as_drain(a)
        if isinstance(a, Layer) and a.volume_l and a.volume_l not in loose and a.bin in bins
        else a
        for a in kept
    ]


def _without_false_drains(acts: list[Act], message: Message) -> list[Act]:
    """ "Fryer oil, a quart and a half, bucket 1": what went in did not come out besides, unless
    something is said of draining."""
    layers = [act for act in acts if isinstance(act, Layer)]
    if not layers or not message.items or message.has(_DRAINING) or message.liquid():
        return acts
    went_in = {None, *(layer.volume_l for layer in layers)}
    return [
        act
        for act in acts
        if not (isinstance(act, Drain) and act.rules == (SURE,) and act.volume_l in went_in)
    ]


_DRAINING = words_in(
    "drain drains drained draining drainings drian drianed drew drawn draw tap taps tapped tapping "
    "spigot bled siphoned decanted"
)


def _without_echoes(acts: list[Act]) -> list[Act]:
    """ "It was Kofi who sealed the roof": a report that says all that it seems to correct."""
    amends = [a for a in acts if isinstance(a, Amend)]
    if not amends:
        return acts
    told = [a for a in acts if isinstance(a, Layer | Drain | Seal | Open | Bury | Batch)]
    echoed = [a for a in amends if any(_echoes(a, b) for b in told)]
    return [a for a in acts if a not in echoed]


def _echoes(amend: Amend, act: Act) -> bool:
    said = ("mass_kg", "volume_l", "materials", "bin", "member", "on")
    given = {name: getattr(amend, name) for name in said if getattr(amend, name) is not None}
    return amend.member is not None and all(
        getattr(act, name, None) == value for name, value in given.items()
    )


def _as_drain(layer: Layer) -> Drain:
    return Drain(
        volume_l=layer.volume_l,
        bin=layer.bin,
        member=layer.member,
        on=layer.on,
        rules=layer.rules,
    )


_DRIBBLES = words_in("dribble dribbles trickle drips drip squirt drizzle")


def _with_amounts(acts: Sequence[Act], message: Message) -> list[Act]:
    acts = [_in_bin(act, message) if isinstance(act, Open) else act for act in acts]
    acts = enumerated([_in_bin(act, message) for act in in_opened(acts, message)], message)
    if len(acts) > 1 and deeds(message) < 2:
        acts = _one_each(acts)
    if any(isinstance(act, _LISTED) for act in acts):
        acts = _of_each_bin(acts, message)
    shared = _allotted(acts, message)
    if shared:
        return shared
    kinds = [act.act for act in acts]
    layers, drains = kinds.count("layer"), kinds.count("drain")
    out: list[Act] = []
    for act in acts:
        if isinstance(act, Layer) and layers == 1:
            whole = _whole(act, acts, message)
            apart = _shares(whole, message) or ([] if drains else told_apart(whole, message))
            out += apart or parted(halved(whole, message), message)
        elif (
            isinstance(act, Drain)
            and drains == 1
            and (each := [] if layers else drained_apart(act, message))
        ):
            out += each
        elif isinstance(act, Drain) and drains == 1 and act.volume_l is None:
            volume = _left(message, acts) if layers else _drained(message)
            out.append(replace(act, volume_l=volume, bin=drawn_from(message) or act.bin))
        else:
            out.append(act)
    return out


def _whole(layer: Layer, acts: Sequence[Act], message: Message) -> Layer:
    """The one layer with what other sentences tell of it, and nothing that they tell of others."""
    if any(isinstance(act, Drain) for act in acts):
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


def _allotted(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts with the layers as one lot was shared out; none where nothing was."""
    layers = [act for act in acts if isinstance(act, Layer)]
    parts = allotted(layers, message) if layers else []
    if not parts or {(p.bin, p.mass_kg) for p in parts} == {(a.bin, a.mass_kg) for a in layers}:
        return []
    return [*parts, *(act for act in acts if not isinstance(act, Layer))]


def _in_bin(act: Act, message: Message) -> Act:
    """An act without a bin is of the one whose name stands somewhere in the message."""
    if getattr(act, "bin", "") is not None:  # starter is in no bin
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


_ANEW = words_in("fresh afresh restarted restart reopened again relaunched")


def _of_each_bin(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, and one for each further bin of the list that one of them is told of."""
    told = {(act.act, getattr(act, "bin", None)) for act in acts}
    return [
        each
        for act in acts
        for each in _for_each(act, message)
        if each is act or each == act or (each.act, getattr(each, "bin", None)) not in told
    ]


def _for_each(act: Act, message: Message) -> list[Act]:
    """ "Two closed today: bin 6 and the hall": an act for each bin of the list."""
    if not isinstance(act, _LISTED) or (isinstance(act, Drain) and act.volume_l is not None):
        return [act]
    lists = _lists(message)
    if isinstance(act, Open):  # "opened the orange bin and the pink bin"
        new = {ref.name for ref in message.bins if ref.plain and not ref.known}
        lists = [names for names in lists if new.issuperset(names)]
    for names in lists:
        if act.bin in names or (act.bin is None and len(lists) == 1):
            told = [d for d in message.days if not d.aside and d.past <= message.today]
            days = [d.past for d in told if not is_now(message, d)]
            if len(days) == len(names):  # "sealed: gate (Mon), blue (Tue)"
                return [replace(act, bin=n, on=day) for n, day in zip(names, days, strict=True)]
            return [replace(act, bin=name) for name in names]
    return [act]


_LISTED = (Seal, Open, Drain)
"""What may be told of a list of bins."""


def _on_several(act: Act, message: Message) -> Act:
    """ "Sealed both", "drained all of them": a deed on several bins that are not named."""
    if not isinstance(act, OnBins) or act.bin is not None or not message.has(_EVERY):
        return act
    match = _SEVERAL.search(" ".join(message.norms))
    if match is None:
        return act
    return replace(act, each="both" if match.group().startswith("both") else "all")


_EVERY = words_in("both all every")
_SEVERAL = Late(
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
    if whole is None or (len(set(whole.names())) > 1 and not message.has(_EACH)):
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


def _is_more(told: float | None, whole: float | None) -> bool:
    return told is not None and whole is not None and whole > told * 1.05


def _weighed(layer: Layer, message: Message) -> Layer:
    """A layer beside a draining, with the weight that another sentence tells of it."""
    whole = whole_of(message)
    drained = layer.volume_l is not None and layer.volume_l == _drained(message)
    if whole is None or layer.mass_kg is not None or not (layer.volume_l is None or drained):
        return layer
    mass, _ = amount_sum([a for a in scrap_amounts(whole) if a.quantity == "mass"])
    return replace(layer, mass_kg=mass, volume_l=layer.volume_l if mass is None else None)


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
    masses = [a for a in masses if not is_level(message, a)]
    said = [
        a
        for a in masses
        if _sense_at(message, a.start) not in _SUPPOSED or _is_estimate(message, a.start)
    ]
    return said[0].value if len(masses) == 1 and said and not message.bran() else None


def _is_estimate(message: Message, i: int) -> bool:
    """ "It'd be a kilo and a half easy": supposed in form only."""
    clause = next(c for c in message.clauses if c.start <= i < c.end)
    words = message.norms[clause.start : clause.start + 4]
    return words[:1] in (["it"], ["that"], ["they"]) and "be" in words


_SUPPOSED = frozenset({"if", "will", "habit"})


def _is_asked(message: Message, i: int) -> bool:
    return _sense_at(message, i) == "ask"


def _sense_at(message: Message, i: int) -> str:
    return next((c.sense for c in message.clauses if c.start <= i < c.end), "none")


def _lists_things(whole: Group, quantity: str) -> bool:
    """Whether each amount stands beside a thing, so that they add up ("rolls 2 lb, ham 2 lb")."""
    if not _MADE.isdisjoint(whole.norms):
        return False  # "I made a pie of 2 lb of apples. The peels, 6 oz, are in the shed"
    if not _SUMMED.isdisjoint(whole.norms) or len({d.past for d in whole.days}) > 1:
        return False
    ends = {i.end for i in whole.items}
    starts = {i.start for i in whole.items}
    masses = [a for a in scrap_amounts(whole) if a.quantity == quantity]
    near = [
        _in_list(whole.message.norms, a)
        or any(a.start - 2 <= e <= a.start for e in ends)
        or any(a.end <= s <= a.end + 2 for s in starts)
        for a in masses
    ]
    return len(masses) > 1 and all(near)


_MADE = words_in("made baked cooked bought brewed juiced bottled")


def _drained(message: Message) -> float | None:
    whole = whole_of(message)
    told = None if whole is None or whole.solids() else litres(drawn(whole))
    if told is not None:
        return told
    exact = [a for a in message.amounts if a.quantity == "volume" and not a.vessel and not a.size]
    told_of = len(exact) == 1 and not _is_supposed(message, exact[0].start)
    return exact[0].value if told_of else bare_volume(message)


def _is_supposed(message: Message, i: int) -> bool:
    """Whether what the clause of word i tells did not happen: an order to drain is none such."""
    clause = next((c for c in message.clauses if c.start <= i < c.end), None)
    if clause is None or clause.sense not in _SUPPOSED:
        return False
    words = message.norms[clause.start : clause.end]
    return clause.sense == "if" or not _AHEAD.isdisjoint(words)


_AHEAD = words_in("will 'll gonna going shall could would should can might may must need to want")


def _left(message: Message, acts: Sequence[Act]) -> float | None:
    """The one volume that no layer of the message has, in a clause that tells what was."""
    layers = [act for act in acts if isinstance(act, Layer)]
    if any(layer.mass_kg is None for layer in layers):
        return None
    exact = [a for a in message.amounts if a.quantity == "volume" and not a.vessel and not a.size]
    if not exact:
        return bare_volume(message)
    told = len(exact) == 1 and _sense_at(message, exact[0].start) in ("did", "none")
    return exact[0].value if told and of_what(message, exact[0]) in ("", "liquid") else None


def _shares(layer: Layer, message: Message) -> list[Layer]:
    """ "Split between the shed and the hall" is half for each, "1 kg to each bin" one for each."""
    if len(message.bins) + len(message.named) < 2:
        return []
    refs = [r for r in sorted((*message.bins, *message.named)) if not _is_asked(message, r.start)]
    names = list(dict.fromkeys(ref.name for ref in refs if ref.name is not None))
    if len(names) < 2:
        return []
    measures = indexes(message.amounts, message.items)
    if any(n in _SHARED_OUT for i, n in enumerate(message.norms) if i not in measures):
        part = 1 / len(names)
    elif message.has(_EACH):
        part = 1.0
    else:
        return []
    mass = None if layer.mass_kg is None else layer.mass_kg * part
    volume = None if layer.volume_l is None else layer.volume_l * part
    return [replace(layer, bin=name, mass_kg=mass, volume_l=volume) for name in names]
