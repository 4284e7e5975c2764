"""Amounts and days that cannot be taken at their word: in a unit nobody knows, none, or below;
on a day that no calendar has.

Such a record is not written down as if nothing had been measured, or today: it is asked about.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from handlers.reading.acts import (
    Accept,
    Act,
    Amend,
    Ask,
    Batch,
    Bury,
    Decline,
    Drain,
    Layer,
    Observe,
    Offer,
    Open,
    Seal,
    Stock,
    Unsure,
)
from handlers.reading.calendar.nodates import is_no_date
from handlers.reading.corrections.amending import is_within
from handlers.reading.measures.singleamounts import MOST_PH
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_PORTIONS = words_in(
    "slice slices piece pieces bit bits lot lots load loads head heads bunch bunches stick sticks "
    "leaf leaves chunk chunks rasher rashers clove cloves sprig sprigs stalk stalks loaf loaves "
    "kinds sorts types days weeks months layers rounds quarters halves thirds us them"
)
"""Words that count things, if they do not measure them."""

NOUGHT, NO_NUMBER, NO_UNIT = (
    "an amount of nothing or less", "a number nobody knows", "a unit nobody knows",
)  # fmt: skip
BAD_AMOUNTS = frozenset({NOUGHT, NO_NUMBER, NO_UNIT})
"""The rules of what is asked for its amount again."""


def asked_first(acts: Sequence[Act], message: Message) -> tuple[Act, ...]:
    """The acts, with a record whose amount or day could not be read turned into a question.

    Outside of a room nobody can be asked: what is less than nothing is left out there.
    """
    if message.context.in_room and is_no_date(message.words):
        return tuple(_asked_for_day(act) for act in acts)
    if message.context.in_room and _is_some_day(message):
        return tuple(_asked_for_day(act, some=True) for act in acts)
    if len(acts) == 1 and _is_only_within(acts[0], message):
        return ()
    acts = _wondered_at(acts, message)
    if not message.context.in_room:
        acts = [act for act in acts if not (isinstance(act, Observe) and (act.ph or 0) > MOST_PH)]
    sound = [act for act in acts if not _is_naught(act, message)]
    if len(sound) < len(acts):
        if sound or not message.context.in_room:
            return tuple(sound)
        return tuple(_asked_for_amount(act, NOUGHT) for act in acts)
    if message.context.in_room and (_is_misheard(message) or _is_one_of_two(message)):
        return tuple(
            _asked_for_amount(act, NO_NUMBER) if isinstance(act, _OF_AMOUNTS) else act
            for act in acts
        )
    if any(_is_uncounted(act, message) for act in acts):
        return tuple(
            _asked_for_amount(act, NO_NUMBER) if _is_uncounted(act, message) else act
            for act in acts
            if not isinstance(act, Ask)
        )
    measured = [act for act in acts if _is_measured(act)]
    if len(measured) == len(acts) or not any(
        is_so(message) for is_so in (_has_strange_unit, _has_bare_unit, _has_misspelt_unit)
    ):
        return tuple(acts)
    return tuple(act if _is_measured(act) else _asked_for_amount(act, NO_UNIT) for act in acts)


def _may_be_counted(message: Message) -> bool:
    """ "1 400 g, 2 300 g": in a list it may as well be one of 400 g and two of 300 g as 3.7 kg."""
    return len(list(_SPACED.finditer(" ".join(message.norms)))) > 1


_SPACED = Late(
    r"(?<!\S)[1-9] \d{3} (?:g|gr|grams?|ml)\b"
    r"(?! (?:bag|tub|pack|packet|jar|tin|box|pot|bowl|carton|punnet)e?s?\b)"
)


def _only_wonders(message: Message) -> bool:
    """ "1 kg of bread in the yard bin?": no deed, and a question mark behind it."""
    if not message.context.in_room or message.norms[-1] != "?" or len(message.sentences) > 1:
        return False
    return all(clause.verb is None for clause in message.clauses)


def _wondered_at(acts: Sequence[Act], message: Message) -> Sequence[Act]:
    """The acts, with what is only wondered at asked about: drinks, no deeds, counts, thousands."""
    kinds: list[type[Act]] = []
    layers = [act for act in acts if isinstance(act, Layer)]
    if layers and len(layers) == len(acts) and _may_be_counted(message):
        return [Unsure(guess=tuple(acts))] if message.context.in_room else acts
    if len(acts) == 1 and _only_wonders(message):
        kinds.append(Layer)
    if message.context.in_room and _is_drink(message):
        kinds.append(Drain)
    return [
        Unsure(guess=(act,), rules=act.rules) if isinstance(act, tuple(kinds)) else act
        for act in acts
    ]


_TEA = frozenset({"tea", "☺"})
_OUT = words_in("off from out drained tap")
_DRINKS = frozenset("☕🍵🥛🥤🧃🍺🍷")


def _is_drink(message: Message) -> bool:
    """ "Tea 500 ml shed", "☕ 1 L green": what was left of a drink, or what came out of the tap."""
    if not message.has(_TEA) or message.has(_OUT):
        return False
    if any(clause.verb is not None for clause in message.clauses):
        return False
    first = message.words[0]
    return first.norm == "tea" or not _DRINKS.isdisjoint(first.text)


def _is_only_within(act: Act, message: Message) -> bool:
    """ "And in a bucket?": neither a deed nor scraps nor a bin of ours."""
    guess = act.guess[0] if isinstance(act, Unsure) and len(act.guess) == 1 else act
    if not isinstance(guess, Layer) or guess.bin or message.items or not is_within(message):
        return False
    return all(clause.verb is None for clause in message.clauses)


_DATED = Layer | Drain | Open | Seal | Bury | Observe | Batch | Offer | Accept | Decline


def _is_some_day(message: Message) -> bool:
    """ "1 kg in green the other day": told last, of a day that nobody can count back to."""
    norms = message.norms
    if not message.has(_OTHER) or message.days:
        return False
    at = norms.index("other")
    sentence = next(s for s in message.sentences if s.start <= at < s.end)
    told = any(sentence.start <= ref.start < at for ref in message.bins)
    ends = norms[at + 2 : at + 3] in ([], ["."], [","], ["!"])
    return told and ends and norms[at - 1 : at + 2] == ["the", "other", "day"]


_OTHER = frozenset({"other"})


def _asked_for_day(act: Act, *, some: bool = False) -> Act:
    if not isinstance(act, _DATED):
        return act
    guess = (replace(act, on=None),)
    if some:
        return Unsure(guess=guess, some_day=True, rules=("some day or other",))
    return Unsure(guess=guess, no_such_day=True, rules=("a day that no calendar has",))


def _asked_for_amount(act: Act, rule: str) -> Act:
    if isinstance(act, Layer | Batch):
        act = replace(act, mass_kg=None, volume_l=None)
    elif isinstance(act, Drain):
        act = replace(act, volume_l=None)
    elif isinstance(act, Amend):
        act = Amend()
    return Unsure(guess=(act,), rules=(rule,))


def _is_naught(act: Act, message: Message) -> bool:
    """Whether a record is of nothing, or of an amount with a minus before it."""
    if not isinstance(act, _OF_AMOUNTS):
        return False
    amount = _amount(act)
    if amount == 0 and not isinstance(act, Drain | Stock):
        return True
    below = [abs(a.value) for a in message.amounts if a.negative and a.quantity in _MASSY]
    return bool(below) if amount is None else amount in below


_OF_AMOUNTS = (Layer, Drain, Batch, Stock, Amend)
_MASSY = ("mass", "volume")


def _amount(act: Layer | Drain | Batch | Stock | Amend) -> float | None:
    if isinstance(act, Drain) or act.mass_kg is None:
        return act.volume_l
    return act.mass_kg


def _is_measured(act: Act) -> bool:
    return not isinstance(act, _WITH_AMOUNT) or _amount(act) is not None


_WITH_AMOUNT = (Layer, Drain)


def _is_misheard(message: Message) -> bool:
    """ "Put ate hundred grams", "added for and a half kilos": an amount whose number begins with a
    word that only sounds like one.
    """
    if not message.has(_SOUNDS):
        return False
    norms = message.norms
    for a in message.measured():
        at = a.start - 1 - (norms[a.start - 1 : a.start] == ["and"])
        goes_on = norms[a.start] in _GOING_ON or at < a.start - 1
        if at > 0 and goes_on and norms[at] in _SOUNDS and norms[at - 1] in _BEFORE_SOUND:
            return True
    return False


_SOUNDS = words_in("ate for fore too to tree won sex sicks")
_GOING_ON = words_in("hundred thousand")
_BEFORE_SOUND = words_in(
    "put add added adding chucked tipped threw tossed dumped binned drained poured tapped about "
    "roughly around another took"
)


def _is_one_of_two(message: Message) -> bool:
    """ "Added 2 kg 3 kg of bread": two amounts with nothing between, which nobody can add or take
    for one.
    """
    return any(
        a.end == b.start and a.quantity == b.quantity
        for a, b in pairwise(message.measured())
        if not (a.size or b.size or a.vessel or b.vessel)
    )


def _is_uncounted(act: Act, message: Message) -> bool:
    """ "About too kilos of bran left": a count of starter whose number could not be read."""
    if not isinstance(act, Stock) or act.change is not None or _amount(act) is not None:
        return False
    return _has_bare_unit(message)


def _has_bare_unit(message: Message) -> bool:
    """ "Added NaN kg", "kilos of peel": a unit without a number that could be read."""
    if not message.context.in_room:
        return False
    held = indexes(message.amounts)
    return any(norm in _BARE_UNITS and i not in held for i, norm in enumerate(message.norms))


_BARE_UNITS = words_in("kg kgs kilo kilos lb lbs pounds litres liters grams")


def _has_misspelt_unit(message: Message) -> bool:
    """ "Drained bin 2, 350 mq": a number with a short word behind it that is none we know."""
    words = message.words
    held = indexes(message.amounts, message.items, message.bins, message.days, message.members)
    return message.context.in_room and any(
        words[i].kind == "number"
        and words[i + 1].kind == "word"
        and not {i, i + 1} & held
        and len(words[i + 1].norm) in _UNIT_LETTERS
        and _VOWELS.isdisjoint(words[i + 1].norm)
        and words[i + 1].norm not in _NO_UNITS
        for i in range(len(words) - 1)
    )


_UNIT_LETTERS = (2, 3)
_VOWELS = frozenset("aeiouy")
_NO_UNITS = words_in("st nd rd th pm hr hrs wk wks yr yrs mth pcs pc dz tv")


def _has_strange_unit(message: Message) -> bool:
    """ "2 flurbs of veg": a number, a word that is no food, and "of"."""
    things = indexes(message.items, message.amounts)
    words = message.words
    return any(
        words[i].kind == "number"
        and words[i + 1].kind == "word"
        and words[i + 1].norm not in _PORTIONS
        and i + 1 not in things
        and words[i + 2].norm == "of"
        for i in range(len(words) - 2)
    )
