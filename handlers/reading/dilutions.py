"""How the liquid of a bin is thinned: the figures of a question about it."""

from handlers.practice.dilution_words import TENDER
from handlers.reading.acts import Ask, Drain
from handlers.reading.amounts import Amount
from handlers.reading.briefly import PLANTS
from handlers.reading.message import LIQUID
from handlers.reading.ofwhat import MURKY, called_behind, is_drawn, of_what
from handlers.reading.question import Question
from handlers.reading.vocabulary import words_in


def dilution_of(q: Question, name: str | None) -> Ask:
    """The question with the litres of liquid and of water told in it; `name` is its bin."""
    water: float | None = None
    liquid: float | None = None
    asked = [a for a in q.message.amounts if q.start <= a.start < q.end]
    exact = any(a.quantity == "volume" and not a.vessel for a in asked)
    for a in asked:
        loose = (
            a.vessel and exact and a.value >= _SPOON_L and called_behind(q.message, a) != "liquid"
        )
        if a.quantity not in ("volume", "mass") or loose or of_what(q.message, a) == "bran":
            continue
        if _stands_in_it(q, a):
            continue
        litres = a.value if a.quantity == "volume" else a.liquid_l
        if litres is None:
            continue
        of_liquid = _is_of_liquid(q, a)
        if of_liquid and liquid is None:
            liquid = litres
        elif not of_liquid and water is None:
            water = litres
    if liquid is None and water is not None and water < _SPOON_L and len(q.amounts("volume")) > 1:
        liquid, water = water, max(q.amounts("volume"))
    drawn = q.message.context.last
    if liquid is water is None and isinstance(drawn, Drain) and q.has(_LEANING):
        liquid = drawn.volume_l  # "how much water for that?"
    return Ask(
        topic="dilution",
        water_l=water,
        liquid_l=liquid,
        parts=_parts(q),
        use=_use(q.message.norms, q.start, q.end),
        bin=name,
        rules=("asks about dilution",),
    )


_LEANING = words_in("that it this")
_SPOON_L = 0.25
"""Litres; the smaller of two amounts, if it is no more, is that of the liquid."""


def _is_of_liquid(q: Question, amount: Amount) -> bool:
    """Whether an amount is of liquid: called so, drawn off, thinned, or beside water asked for."""
    norms, end = q.message.norms, amount.end
    if amount.size:
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
    near = norms[max(q.start, amount.start - 4) : amount.start] + norms[end : end + 2]
    if not _OFF.isdisjoint(near):
        return True
    thinned = not _THINNED.isdisjoint(norms[max(q.start, amount.start - 3) : amount.start])
    asked = any(f" {words} water " in q.text for words in _WATER_ASKED)
    return asked or thinned or is_drawn(q.message, amount)


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


def _use(norms: list[str], start: int, end: int) -> str | None:
    """What the liquid is for; "house plants" want it far weaker than a bed does."""
    found = _named_use(norms, start, end)
    tender = [norm for norm in norms[start:end] if norm in TENDER]
    if not tender and any(norms[i : i + 3] in _IN_A_TUB for i in range(start, end)):
        tender = ["tub"]
    if not tender or not TENDER.isdisjoint((found or "").split()):
        return found
    return f"{found} {tender[0]}" if found else tender[0]


_IN_A_TUB = [["in", lead, tub] for lead in ("a", "the", "my", "our") for tub in ("tub", "tubs")]


def _named_use(norms: list[str], start: int, end: int) -> str | None:
    """The first plant, place or drain that is named."""
    for i in range(start, end):
        if norms[i] in PLANTS or norms[i] in _DOWN:
            indoor = i > start and norms[i - 1] in _INDOOR
            return f"{norms[i - 1]} {norms[i]}" if indoor else norms[i]
    return None


_DOWN = words_in("sink toilet loo")
_INDOOR = words_in("house pot potted indoor")


def _parts(q: Question) -> float | None:
    """The parts of water in "1:100", "1 to 100", "1 part in 100"."""
    words = q.message.words
    for i in range(q.start, q.end):
        one, _, many = words[i].norm.partition(":")
        if one == "1" and many.isdecimal() and len(many) <= 4:
            return float(many)
        if words[i].norm != "1":
            continue
        for word in words[i + 1 : i + 5]:
            if word.kind == "number" and word.norm.isdecimal() and len(word.norm) <= 4:
                return float(word.norm)
            if word.norm not in ("to", "in", "part", "parts", "of"):
                break
    return None
