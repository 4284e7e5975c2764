"""Numbers that share the unit of another amount: "700 g of skin, 300 of peppers"."""

from collections.abc import Collection, Sequence
from math import isclose

from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.bareplaces import (
    ENDINGS,
    LARGE,
    LEAST_GRAMS,
    LISTED,
    NEAR,
    SMALL,
    STOPS,
    TO_BIN,
    Place,
    is_decimal,
    norm_at,
)
from handlers.reading.measures.binshares import for_bin, put_too
from handlers.reading.words.vocabulary import vocabulary, words_in
from handlers.reading.words.words import Word


def shared(
    words: Sequence[Word], place: Place, known: Sequence[Amount], taken: Collection[int]
) -> Amount | None:
    """The number as an amount in the unit of one of those known, if it goes with one."""
    earlier = [a for a in known if a.end <= place.i]
    if place.before in _BACK and any(isclose(a.value, place.value * a.factor) for a in earlier):
        return None  # "900 g of hulls and one melon that was in with the 900"
    amount = _of_a_day(place, earlier) or for_bin(words, place, earlier, taken)
    amount = amount or put_too(words, place, earlier)
    amount = amount or _in_list(words, place, earlier) or _in_row(words, place, known)
    if amount is not None:
        return amount
    if words[place.i].kind == "word" and place.value < _LEAST_SPELLED:
        return _spelled(words, place, earlier)
    return _shared_behind(words, place, earlier) or _shared_ahead(words, place, known, taken)


_LEAST_SPELLED = 20
"""From here on a number spelled out is read as one in figures ("and four hundred of pastry")."""


def _shared_behind(words: Sequence[Word], place: Place, before: Sequence[Amount]) -> Amount | None:
    """A number that goes on from an amount: "700 g of skin, 300 of peppers"."""
    near = [a for a in before if place.i - a.end <= NEAR]
    if not near:
        return None
    last = near[-1]
    tare = place.before in ("less", "minus") and place.after in ("for", "of", "tare")
    called = place.before == "it" and norm_at(words, place.i - 2) in ("call", "make")
    called = called or _is_said_last(words, place, last)
    if tare or called or _guesses_again(words, place, last):
        return place.in_unit_of(last)
    if place.after == "of" and place.beyond in _WHOLE:
        return _part_of(place, last)
    if place.before in _OTHERS and place.after in ("to", "into", "tae", "."):
        return place.in_unit_of(last)
    if place.after in ("of", "o") and place.before in LISTED and place.beyond not in _NOT_THINGS:
        things = place.value >= 10 or place.beyond in vocabulary()
        return place.in_unit_of(last) if things else None
    if place.before == "(" and last.end == place.i - 1 and place.after == ")":
        return None  # "half a kilo (0.5)"
    if not place.ends:
        return None
    if is_decimal(words[place.i]):
        large = [a for a in near if a.factor >= LARGE]
        return place.in_unit_of(large[-1]) if large else None
    named = place.before.isalpha() and len(place.before) > 2
    small = last.factor <= SMALL and 50 <= place.value < 1900
    thing = named and place.before not in LISTED and place.after in ENDINGS
    if thing and last.factor == 1 and 100 <= place.value < 1000 and place.value % 10 == 0:
        return place.amount(last.quantity, SMALL)  # "bothy 1 kg, cream 600"
    return place.in_unit_of(last) if named and small else None


def _is_said_last(words: Sequence[Word], place: Place, last: Amount) -> bool:
    """ "2 lb, maybe 4. Say 3", "2 kg. Well 3", "2 kg less what was eaten, so 1 only", "not 2 kg,
    as I said, but 3": a figure that settles what was told before it.
    """
    lead = place.i - 1 - (place.before == ",")
    stopped = norm_at(words, lead - 1) in STOPS
    alone = norm_at(words, lead) in ("say", "well") and stopped and place.ends
    alone = alone or (place.before == "so" and place.after in _ONLY)
    denied = place.before == "but" and norm_at(words, last.start - 1) == "not"
    if denied and (place.ends or place.after in (":", "of")):
        return True
    return alone and 0.3 <= place.value * last.factor / (last.value or 1.0) <= 2.5


_ONLY = frozenset({"only", "left"})
_BACK = frozenset({"the", "that", "those"})
_OTHERS = frozenset({"other", "rest", "remaining", "further", "ither"})
_NOT_THINGS = words_in("us them you those these the my our which whom it july june may")
_WHOLE = words_in("it that thats which them this those")


def _of_a_day(place: Place, before: Sequence[Amount]) -> Amount | None:
    """ "Ten kilos yesterday and two today": the day stands behind the number."""
    near = [a for a in before[-1:] if place.i - a.end <= NEAR]
    if not near or not place.dated:
        return None
    again = place.before == "another" and place.is_like(near[-1])
    return place.in_unit_of(near[-1]) if again or place.before in LISTED else None


def _in_list(words: Sequence[Word], place: Place, before: Sequence[Amount]) -> Amount | None:
    """ "Husks 5 lb, melon rinds 9", "peels eight pound, crusts two": each thing with its number."""
    if not before or place.after not in STOPS or before[-1].factor < LARGE:
        return None
    last = before[-1]
    between = [w.norm for w in words[last.end : place.i]]
    thing = between[1:]
    if between[:1] == [] or between[0] not in LISTED or not 1 <= len(thing) <= _THING_WORDS:
        return None
    led = last.start > 0 and words[last.start - 1].norm.isalpha()
    things = led and all(w.isalpha() for w in thing) and place.value * last.factor <= _MOST_LISTED
    foods = things and any(mark.tag == "food" for mark in vocabulary().find(thing))
    return place.in_unit_of(last) if foods else None


_THING_WORDS = 4
_MOST_LISTED = 20
"""kg or litres of one thing in a list, at most."""


def _in_row(words: Sequence[Word], place: Place, known: Sequence[Amount]) -> Amount | None:
    """ "300, 200 and a kilo": grams in a row of nothing but amounts, one of which has its unit."""
    held = [a for a in known if a.quantity == "mass" and a.factor in (1, SMALL)]
    if not held or not _is_grams(words[place.i]):
        return None
    inside = {i for a in held for i in range(a.start, a.end)}
    row = {i for i in range(len(words)) if i in inside or words[i].norm in _ROW_JOINTS}
    row |= {i for i in range(len(words)) if _is_grams(words[i])}
    start, end = place.i, place.end
    while start - 1 in row:
        start -= 1
    while end in row:
        end += 1
    bare = [i for i in range(start, end) if i not in inside and _is_grams(words[i])]
    in_one = len(bare) > 1 and any(start <= a.start < end for a in held)
    return place.amount("mass", SMALL) if in_one else None


def _is_grams(word: Word) -> bool:
    return word.kind == "number" and word.norm in _ROUND_GRAMS


_ROUND_GRAMS = frozenset(str(grams) for grams in range(int(LEAST_GRAMS), 1000, 10))
_ROW_JOINTS = words_in(", and & + then")


def _spelled(words: Sequence[Word], place: Place, before: Sequence[Amount]) -> Amount | None:
    """ "Two kilos of bones and one of rice"."""
    if before and _is_said_last(words, place, before[-1]):
        return place.in_unit_of(before[-1])
    near = [a for a in before if place.i - a.end <= NEAR and a.factor >= LARGE]
    if near and _is_the_rest(words, place):
        return place.in_unit_of(near[-1])
    if not near or place.before not in LISTED or place.after != "of":
        return None
    beyond = [word.norm for word in words[place.end + 1 : place.end + 4]]  # "of corned beef"
    things = any(mark.tag == "food" and not mark.start for mark in vocabulary().find(beyond))
    return place.in_unit_of(near[-1]) if things else None


def _is_the_rest(words: Sequence[Word], place: Place) -> bool:
    """ "The shed got 5 lb and the hall got the rest, maybe two": how much the rest was."""
    at = place.i - 1
    while norm_at(words, at) in _PERHAPS | _ABOUT:
        at -= 1
    return place.ends and at < place.i - 1 and norm_at(words, at) in _OTHERS


_ABOUT = words_in(", about roughly around like say another ( -")


def is_second_guess(between: Sequence[str]) -> bool:
    """Whether nothing but doubt stands between two figures ("700 g, may have been 800")."""
    return _PERHAPS_SAID.issuperset(between) and not _PERHAPS.isdisjoint(between)


_PERHAPS = words_in("maybe perhaps possibly may might could")
_PERHAPS_SAID = _PERHAPS | words_in(", ( or so thereabouts ish even may might could have been be")


def _guesses_again(words: Sequence[Word], place: Place, last: Amount) -> bool:
    """ "5 lbs, maybe 6, of pears"."""
    between = [words[k].norm for k in range(last.end, place.i)]
    return is_second_guess(between) and 0.5 <= place.value * last.factor / (last.value or 1.0) <= 2


def _part_of(place: Place, last: Amount) -> Amount | None:
    """ "3.1 kg, 1.1 of it meat", "2 kg, 300 of that cheese"."""
    grams = last.factor == 1 and place.value >= LEAST_GRAMS
    part = place.amount(last.quantity, SMALL if grams else last.factor)
    return part if part.value < last.value else None


def _shared_ahead(
    words: Sequence[Word], place: Place, known: Sequence[Amount], taken: Collection[int]
) -> Amount | None:
    """ "Bread 400, peel 350 g": a thing's number before the one that has the unit of both."""
    behind = next((a for a in known if place.i < a.start <= place.i + _AHEAD), None)
    if behind is None:
        return None
    if _is_of_thing(words, place, behind):
        return place.amount("mass", 1.0)
    in_named = place.i - 1 in taken
    if in_named and place.end in taken and behind.factor == SMALL and place.value >= LEAST_GRAMS:
        return place.in_unit_of(behind)  # "gate 600 shed 450 g"
    bin_behind = place.after in TO_BIN and place.end + 1 in taken
    if bin_behind and behind.quantity == "mass" and is_decimal(words[place.i]):
        kilos = behind.factor in (1, SMALL)
        return place.amount("mass", 1.0 if kilos else behind.factor)  # "peel 1.8 in shed, 400 g"
    if place.after not in (",", ";", "and", "&", "n", "+"):
        return None
    alike = place.is_like(behind)
    if place.after in ("and", "&", "n") and behind.start == place.end + 1 and alike:
        return place.in_unit_of(behind)  # "300 and 150 ml"
    if in_named and behind.factor == 1 and 100 <= place.value < 1000:
        return place.amount(behind.quantity, SMALL)  # "cobber 600, nan 900, den a kilo"
    if place.after == "+" and behind.start == place.end + 1:
        return place.in_unit_of(behind)  # "150 + 200 ml"
    if behind.factor == SMALL and _is_listed(words, place, behind):
        return place.in_unit_of(behind)  # "Tom 800, Priya 650, me 900 g"
    things = place.before in vocabulary() and place.beyond.isalpha()
    return place.in_unit_of(behind) if alike and things else None


def _is_of_thing(words: Sequence[Word], place: Place, behind: Amount) -> bool:
    """ "1.8 of veg peel, 200 g of rind", "cabbage and leeks 1.1, fish 700 g": kilograms."""
    if behind.quantity != "mass" or place.value >= _MANY or not is_decimal(words[place.i]):
        return False
    listed = place.after in (",", ";", "and", "&", "n", "+") and behind.factor == SMALL
    named = place.before in vocabulary() and words[behind.start - 1].norm in vocabulary()
    return place.after == "of" or (listed and named)


_MANY = 10
"""Kilograms from which on a bare decimal is none."""


def _is_listed(words: Sequence[Word], place: Place, behind: Amount) -> bool:
    """Whether each of several words in a row has its number: "Tom 800, Priya 650, me 900 g"."""
    led = place.before.isalpha() and words[behind.start - 1].norm.isalpha()
    between = words[place.end : behind.start]
    row = all(
        w.kind != "word" or (k and between[k - 1].kind == "sign") for k, w in enumerate(between)
    )
    grams = LEAST_GRAMS <= place.value < 2000
    return led and row and grams and len(between) % 3 == 2


_AHEAD = 8
"""Words from a bare number to the amount whose unit it shares, at most."""
