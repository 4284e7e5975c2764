"""How the liquid of a bin is thinned: the figures of a question about it."""

from collections.abc import Sequence

from handlers.practice.dilution_words import TENDER, YOUNG
from handlers.reading.acts import Ask, Drain
from handlers.reading.food.items import PLANTS as GROWN
from handlers.reading.food.ofwhat import MURKY, called_behind, is_drawn, of_what
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import LIQUID, Message
from handlers.reading.questions.briefly import PLANTS
from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def dilution_of(q: Question, name: str | None) -> Ask:
    """The question with the litres of liquid and of water told in it; `name` is its bin."""
    asked = [a for a in q.message.amounts if q.start <= a.start < q.end]
    poured = _poured_into(asked, q)
    liquid, water = poured or (None, None)
    total: float | None = None
    for amount, litres in () if poured else _in_litres(asked, q):
        if _is_of_liquid(q, amount):
            liquid = litres if liquid is None else liquid
        elif q.message.context.in_room and _is_whole(q, amount):
            total = litres
        elif water is None:
            water = litres
    if liquid is None and water is not None and water < _SPOON_L and len(q.amounts("volume")) > 1:
        liquid, water = water, max(q.amounts("volume"))
    drawn = q.message.context.last
    if liquid is water is None and isinstance(drawn, Drain) and q.has(_LEANING):
        liquid = drawn.volume_l  # "how much water for that?"
    return Ask(
        topic="dilution",
        water_l=water if total is None else None,
        liquid_l=liquid,
        total_l=total,
        parts=_parts(q),
        use=_use(q),
        bin=name,
        rules=("asks about dilution",),
    )


_SPOON_L = 0.25
"""Litres; the smaller of two amounts, if it is no more, is that of the liquid."""


def _in_litres(asked: Sequence[Amount], q: Question) -> list[tuple[Amount, float]]:
    """The amounts of liquid and of water; no vessel beside a measure, and no place to grow in."""
    exact = any(a.quantity == "volume" and not a.vessel for a in asked)
    out: list[tuple[Amount, float]] = []
    for a in asked:
        loose = (
            a.vessel and exact and a.value >= _SPOON_L and called_behind(q.message, a) != "liquid"
        )
        loose = loose or (a.vessel and exact and _is_measured_behind(q.message, a))
        if a.quantity not in ("volume", "mass") or loose or of_what(q.message, a) == "bran":
            continue
        litres = a.value if a.quantity == "volume" else a.liquid_l
        if litres is not None and not _stands_in_it(q, a):
            out.append((a, litres))
    return out


def _is_measured_behind(message: Message, vessel: Amount) -> bool:
    """ "A bottle of leachate here, 500 ml": what the vessel holds stands behind it."""
    exact = [a for a in message.amounts if a.start >= vessel.end and not a.vessel]
    if not exact or exact[0].quantity != "volume":
        return False
    between = message.norms[vessel.end : exact[0].start]
    return len(between) <= _NEAR and between[-1:] == [","]


_NEAR = 6
"""Words between a vessel of liquid and what it holds, at most."""


def _poured_into(asked: Sequence[Amount], q: Question) -> tuple[float, float] | None:
    """ "A cup of juice in a bucket of water": the litres of the one and of the other."""
    volumes = sorted(a for a in asked if a.quantity == "volume" and not a.negative)
    if len(volumes) != 2 or volumes[1].value < _LEAST_CAN or _asks_water(q):
        return None
    small, large = volumes
    between = q.message.norms[small.end : large.start]
    poured = not _INTO.isdisjoint(between) and _BETWEEN.issuperset(between)
    return (small.value, large.value) if poured and small.value < large.value else None


_LEAST_CAN = 2.0
"""Litres; in less than that liquid is kept, not thinned."""
_INTO = words_in("in into to per")
_BETWEEN = _INTO | LIQUID | words_in("of the a my our this that")


def _is_whole(q: Question, amount: Amount) -> bool:
    """ "For 7 litres in total": an amount of the mix, and not of the water in it."""
    behind = q.message.norms[amount.end : amount.end + _BEHIND]
    return behind[:1] in (["total"], ["altogether"]) or any(behind[: len(w)] == w for w in _WHOLE)


_WHOLE = [["in", "total"], ["in", "all"], ["of", "mix"], ["of", "the", "mix"], ["of", "mixture"]]


def _is_of_liquid(q: Question, amount: Amount) -> bool:
    """Whether an amount is of liquid: called so, drawn off, thinned, or beside water asked for."""
    norms, end = q.message.norms, amount.end
    if amount.size and norms[end : end + 1] != ["of"]:
        return False
    for i in range(end, min(len(norms), end + _BEHIND)):
        if norms[i] in LIQUID or norms[i] in MURKY or norms[i] == "stuff":
            return True
        if norms[i] in _NO_LIQUID:
            break
    if not _WATER.isdisjoint(norms[end : end + 1]) or norms[end : end + 2] == ["of", "water"]:
        return False
    if norms[max(q.start, amount.start - 3) : amount.start] == ["of", "water", ","]:
        return False
    if norms[end : end + 2] == ["of", "it"]:
        return True  # "the liquid of the blue one, I have 2 litres of it"
    near = norms[max(q.start, amount.start - 4) : amount.start] + norms[end : end + 2]
    if not _OFF.isdisjoint(near):
        return True
    thinned = not _THINNED.isdisjoint(norms[max(q.start, amount.start - 3) : amount.start])
    return _asks_water(q) or thinned or is_drawn(q.message, amount)


def _asks_water(q: Question) -> bool:
    return any(f" {words} water " in q.text for words in _WATER_ASKED)


def _stands_in_it(q: Question, amount: Amount) -> bool:
    """ "A lemon tree in a tub": where something grows, not how much there is."""
    norms = q.message.norms
    grown = amount.vessel and not _GROWN_IN.isdisjoint(norms[amount.start : amount.end])
    return grown and norms[amount.end : amount.end + 1] != ["of"]


_GROWN_IN = words_in("tub tubs pot pots")
_LEANING = words_in("that this it them need")
_BEHIND = 4
"""Words behind an amount in which its liquid is named."""
_OFF = words_in("drained from off came tapped drew stretch produced gave")
_WATER = words_in("water can watering bucket butt tank sprayer")
_NO_LIQUID = _WATER | words_in(", how")
_THINNED = words_in("dilute diluting thin thinning water cut")
_WATER_ASKED = ("how much", "how many litres of", "what amount of", "how many litre", "much")


def _use(q: Question) -> str | None:
    """What the liquid is for; "house plants" want it far weaker than a bed does."""
    norms = q.message.norms
    held = {i for a in q.message.amounts if _holds(q, a) for i in range(a.start, a.end)}
    places = [i for i in range(q.start, q.end) if i not in held]
    found = _named_use(norms, places) or _given_to(q)
    tender = [norms[i] for i in places if norms[i] in TENDER or (found and norms[i] in YOUNG)]
    if not tender and _IN_A_TUB.search(" ".join(norms[i] for i in places)):
        tender = ["tub"]
    if not tender or not TENDER.isdisjoint((found or "").split()):
        return found
    return f"{found} {tender[0]}" if found else tender[0]


_IN_A_TUB = Late(
    r"\bin (?:(?:a|the|my|our|their|big|large|small|little|clay|plastic) )*"
    r"(?:tubs?|pots?|containers?|grow ?bags?|window ?boxes|hanging baskets?)\b(?! of\b)"
)
"""A plant in little soil takes no more than a house plant does; "a pot of water" holds none."""


def _holds(q: Question, amount: Amount) -> bool:
    """ "A yoghurt pot of juice": a vessel that is filled with it, and no place for a plant."""
    of, *behind = q.message.norms[amount.end : amount.end + 3] or [""]
    return (amount.vessel or amount.size) and of == "of" and not LIQUID.isdisjoint(behind)


def _named_use(norms: Sequence[str], places: Sequence[int]) -> str | None:
    """The first plant, place or drain that is named."""
    for i in places:
        if norms[i] in PLANTS or norms[i] in _DOWN:
            indoor = i > places[0] and norms[i - 1] in _INDOOR
            return f"{norms[i - 1]} {norms[i]}" if indoor else norms[i]
    return None


def _given_to(q: Question) -> str | None:
    """ "For the passionfruit", "5 L of water, how much? I want to give the roses": what is called
    by its food, or told behind the question.
    """
    norms = q.message.norms
    foods = {i.start: i.end for i in q.message.items if i.food.shares[0][0] in GROWN}
    for at in range(q.start, len(norms)):
        end = foods.get(at, at + 1 if at >= q.end and norms[at] in PLANTS else 0)
        lead = at - 1
        while lead > 0 and norms[lead] in _WHOSE:
            lead -= 1
        if end and norms[lead] in _GIVING:
            return " ".join(norms[at:end])
    return None


_WHOSE = words_in("the my our his her their some these those")
_GIVING = words_in("for on onto to give giving feed feeding water watering round around")
_DOWN = words_in("sink toilet loo")
_INDOOR = words_in("house pot potted indoor")


_MOST_DIGITS = 12
"""A longer row of figures is no number; what is beyond sense is refused where it is reckoned."""


def _parts(q: Question) -> float | None:
    """The parts of water in "1:100", "1 to 100", "1 part in 100"."""
    words = q.message.words
    for i in range(q.start, q.end):
        one, _, many = words[i].norm.partition(":")
        if one == "1" and many.isdecimal() and len(many) <= _MOST_DIGITS:
            return float(many)
        if words[i].norm != "1":
            continue
        for word in words[i + 1 : i + 5]:
            if word.kind == "number" and word.norm.isdecimal() and len(word.norm) <= _MOST_DIGITS:
                return float(word.norm)
            if word.norm not in ("to", "in", "part", "parts", "of"):
                break
    return None
