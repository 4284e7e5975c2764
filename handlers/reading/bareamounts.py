"""Numbers without a unit of their own, that take one told elsewhere in the message."""

from collections.abc import Collection, Mapping, Sequence, Set
from typing import NamedTuple

from handlers.reading.acts import Units
from handlers.reading.amounts import Amount
from handlers.reading.daywords import WEEKDAYS
from handlers.reading.numbers import digits_value, read_number
from handlers.reading.numberwords import TENS, UNITS
from handlers.reading.spans import indexes
from handlers.reading.unitwords import Quantity, Unit, unit_table
from handlers.reading.vocabulary import vocabulary, words_in
from handlers.reading.words import Word

_SHORT_UNITS = words_in(
    "kg kgs kilo kilos g grams gm lb lbs pounds oz ounces l litres liters ml mls"
)
_ENDINGS = words_in(". , ; ! ? ) ☺ in into to and n & so then left remaining all both + — -") | {
    "\n",
    "",
}
_NO_MEASURE = words_in(
    "bin room plot no number at by until till # page flat house apartment bus route on since ph "
    "temp day layer block degrees bucket tub keg barrel drum bed row from @ before after version "
    "x pit v line step level of for age aged floor unit lot week year until not "
    "pas nicht niet nie £ $ €"
)
_CLOCK = words_in("am pm h hrs hours oclock % ° degrees celsius c days weeks cm m mm ft")
_OTHERS = frozenset({"other", "rest", "remaining", "further", "ither"})
_LISTED = frozenset({",", "and", "&", "n", "plus", "+"})
_WHOLE = words_in("it that thats which them this those")
_NOT_THINGS = words_in("us them you those these the my our which whom it july june may")
_LEAST_SPELLED = 20
"""From here on a number spelled out is read as one in figures ("and four hundred of pastry")."""
_NEAR = 14
"""Words between a unit and a bare number that shares it, at most."""


class _Place(NamedTuple):
    """A bare number at words[i:end], between two words."""

    i: int
    end: int
    value: float
    before: str
    after: str
    beyond: str
    dated: bool = False
    """A day stands behind it."""

    @property
    def ends(self) -> bool:
        """Whether nothing that it could count follows."""
        out_of = self.after in ("from", "off") and self.before in _LISTED
        return self.after in _ENDINGS or out_of or self.dated


def with_bare_amounts(
    words: Sequence[Word],
    units: Units,
    taken: Collection[int],
    found: Sequence[Amount],
    leads: Sequence[int],
) -> tuple[Amount, ...]:
    """The amounts found, and the numbers that share their units or one that stands alone.

    All numbers are among `leads`; those spelled out count only beside an amount.
    """
    known = [a for a in found if a.factor]
    numbers = [
        i for i in leads if words[i].kind == "number" or (known and words[i].norm in _SPELLED)
    ]
    if not numbers:
        return tuple(found)
    held = set(taken) | indexes(found)
    free = _free_numbers(words, numbers, held)
    if not free:
        return tuple(found)
    table = unit_table(units)
    apart = None if known else _unit_apart(words, table)
    more: list[Amount] = []
    for i, end, value in free:
        before, after, beyond = (_norm(words, k) for k in (i - 1, end, end + 1))
        dated = end in taken and after in _DAY_STARTS
        place = _Place(i, end, value, before, after, beyond, dated)
        named = i - 1 in taken and _is_decimal(words[i])  # "shed bin 1.9"
        counts = place.before in _NO_MEASURE and not (named or _is_weighed(words, i))
        if counts or place.after in _CLOCK:
            continue
        amount = _told_of_bin(words, place, known, taken)
        if amount is not None:
            more.append(amount)
            continue
        amount = _led_by_unit(words, place, table, held) or _of_unit_apart(words, place, apart)
        if amount is None:
            earlier = [a for a in known if a.end <= i]
            amount = _of_a_day(place, earlier) or _for_bin(words, place, earlier, taken)
            amount = amount or _in_list(words, place, earlier)
            if amount is None and words[i].kind == "word" and value < _LEAST_SPELLED:
                amount = _spelled(words, place, earlier)
            elif amount is None:
                amount = _shared(words, place, earlier) or _shared_ahead(words, place, known, taken)
        if amount is not None:
            more.append(amount)
    return tuple(sorted((*found, *more))) if more else tuple(found)


def _is_weighed(words: Sequence[Word], i: int) -> bool:
    """ "I weighed it at 3.8": the figure that the scales showed."""
    lead = [word.norm for word in words[max(0, i - 3) : i]]
    return lead[-1:] == ["at"] and not _WEIGHED.isdisjoint(lead)


_WEIGHED = words_in("weighed weighs weigh scales scale")


_SPELLED = UNITS.keys() | TENS.keys()


def _free_numbers(
    words: Sequence[Word], numbers: Sequence[int], held: Set[int]
) -> list[tuple[int, int, float]]:
    """The numbers of no amount yet, with their ends."""
    out: list[tuple[int, int, float]] = []
    behind = 0
    for i in numbers:
        if i in held or i < behind:
            continue
        if words[i].kind == "number":
            behind, value = i + 1, digits_value(words[i].norm)
        else:
            number = read_number(words, i)
            behind, value = (i + 1, None) if number is None else (number.end, number.value)
        if value and held.isdisjoint(range(i, behind)):
            out.append((i, behind, value))
    return out


def _norm(words: Sequence[Word], i: int) -> str:
    return words[i].norm if 0 <= i < len(words) else ""


def _unit_apart(words: Sequence[Word], table: Mapping[str, Unit]) -> Unit | None:
    """ "1.2 rice, 0.8 bread. Both kg": a unit that stands alone at the end of what it measures."""
    for i, word in enumerate(words):
        if word.norm not in _SHORT_UNITS or i == 0 or words[i - 1].kind == "number":
            continue
        alone = words[i - 1].kind == "sign" or words[i - 1].norm in _BEFORE_APART
        after = _norm(words, i + 1)
        if alone and (after in _ENDINGS or after in _BEHIND_APART):
            return table.get(word.norm)
    return None


_BEFORE_APART = words_in("both all in thats 's is are obvs meaning")
_BEHIND_APART = words_in("obvs obviously that of btw each by is i not")


def _of_unit_apart(words: Sequence[Word], place: _Place, unit: Unit | None) -> Amount | None:
    if unit is None:
        return None
    small = unit.factor <= _SMALL and 20 <= place.value < 1900
    if not small and not _is_decimal(words[place.i]):
        return None
    return _amount(place, unit.quantity, unit.factor)


def _led_by_unit(
    words: Sequence[Word], place: _Place, table: Mapping[str, Unit], held: set[int]
) -> Amount | None:
    """ "kg 2,5": the unit stands before its number, as in a ledger."""
    at = place.i - 2 if place.before == ":" else place.i - 1
    if at < 0 or at in held or words[at].norm not in _SHORT_UNITS or not place.ends:
        return None
    unit = table.get(words[at].norm)
    return None if unit is None else _amount(place, unit.quantity, unit.factor)._replace(start=at)


def _shared(words: Sequence[Word], place: _Place, before: Sequence[Amount]) -> Amount | None:
    """A number that goes on from an amount: "700 g of skin, 300 of peppers"."""
    near = [a for a in before if place.i - a.end <= _NEAR]
    if not near:
        return None
    last = near[-1]
    tare = place.before in ("less", "minus") and place.after in ("for", "of", "tare")
    called = place.before == "it" and _norm(words, place.i - 2) in ("call", "make")
    alone = place.before == "say" and _norm(words, place.i - 2) in _STOPS and place.ends
    alike = 0.4 <= place.value * last.factor / (last.value or 1.0) <= 2.5
    called = called or (alone and alike)  # "2 lb, maybe 4. Say 3"
    if tare or called or _guesses_again(words, place, last):
        return _amount(place, last.quantity, last.factor)
    if place.after == "of" and place.beyond in _WHOLE:
        return _part_of(place, last)
    if place.before in _OTHERS and place.after in ("to", "into", "tae", "."):
        return _amount(place, last.quantity, last.factor)
    if place.after in ("of", "o") and place.before in _LISTED and place.beyond not in _NOT_THINGS:
        things = place.value >= 10 or place.beyond in vocabulary()
        return _amount(place, last.quantity, last.factor) if things else None
    if place.before == "(" and last.end == place.i - 1 and place.after == ")":
        return None  # "half a kilo (0.5)"
    if not place.ends:
        return None
    if _is_decimal(words[place.i]):
        large = [a for a in near if a.factor >= _LARGE]
        return _amount(place, large[-1].quantity, large[-1].factor) if large else None
    named = place.before.isalpha() and len(place.before) > 2
    small = last.factor <= _SMALL and 50 <= place.value < 1900
    thing = named and place.before not in _LISTED and place.after in _ENDINGS
    if thing and last.factor == 1 and 100 <= place.value < 1000 and place.value % 10 == 0:
        return _amount(place, last.quantity, _SMALL)  # "bothy 1 kg, cream 600"
    return _amount(place, last.quantity, last.factor) if named and small else None


def _of_a_day(place: _Place, before: Sequence[Amount]) -> Amount | None:
    """ "Ten kilos yesterday and two today": the day stands behind the number."""
    near = [a for a in before[-1:] if place.i - a.end <= _NEAR]
    if not near or place.before not in _LISTED or not place.dated:
        return None
    return _amount(place, near[-1].quantity, near[-1].factor)


_DAY_STARTS = WEEKDAYS.keys() | words_in("today yesterday this last on tonight")


def _told_of_bin(
    words: Sequence[Word], place: _Place, known: Sequence[Amount], taken: Collection[int]
) -> Amount | None:
    """ "7 lb, shared by the shed (five) and the hall (two)", "shed 1.5 lb. hall 3"."""
    before = [a for a in known if a.end <= place.i and a.factor >= _LARGE]
    if not before:
        return None
    last = before[-1]
    if place.before == "(" and place.after == ")" and place.i - 2 in taken:
        part = _amount(place, last.quantity, last.factor)
        return part if part.value <= before[0].value else None
    row = place.i - 1 in taken and last.start - 1 in taken and place.i - last.end <= _NEAR
    ends = place.after in _STOPS and words[place.i].kind == "number"
    alike = 0.1 <= place.value * last.factor / (last.value or 1.0) <= 10
    return _amount(place, last.quantity, last.factor) if row and ends and alike else None


_STOPS = frozenset({"", ".", ",", ";", "\n", "!", "and", "&", "+"})


def _in_list(words: Sequence[Word], place: _Place, before: Sequence[Amount]) -> Amount | None:
    """ "Husks 5 lb, melon rinds 9", "peels eight pound, crusts two": each thing with its number."""
    if not before or place.after not in _STOPS or before[-1].factor < _LARGE:
        return None
    last = before[-1]
    between = [w.norm for w in words[last.end : place.i]]
    thing = between[1:]
    if between[:1] == [] or between[0] not in _LISTED or not 1 <= len(thing) <= _THING_WORDS:
        return None
    led = last.start > 0 and words[last.start - 1].norm.isalpha()
    things = led and all(w.isalpha() for w in thing) and place.value * last.factor <= _MOST_LISTED
    foods = things and any(mark.tag == "food" for mark in vocabulary().find(thing))
    return _amount(place, last.quantity, last.factor) if foods else None


_THING_WORDS = 4
_MOST_LISTED = 20
"""kg or litres of one thing in a list, at most."""


def _spelled(words: Sequence[Word], place: _Place, before: Sequence[Amount]) -> Amount | None:
    """ "Two kilos of bones and one of rice"."""
    near = [a for a in before if place.i - a.end <= _NEAR and a.factor >= _LARGE]
    if not near or place.before not in _LISTED or place.after != "of":
        return None
    beyond = [word.norm for word in words[place.end + 1 : place.end + 4]]  # "of corned beef"
    things = any(mark.tag == "food" and not mark.start for mark in vocabulary().find(beyond))
    return _amount(place, near[-1].quantity, near[-1].factor) if things else None


_LARGE = 0.4
"""kg or litres in a unit that decimals are told in."""
_SMALL = 0.001


_LEAST_GRAMS = 50


def _for_bin(
    words: Sequence[Word], place: _Place, before: Sequence[Amount], taken: Collection[int]
) -> Amount | None:
    """ "1 kg for the hall, 400 for the shed", "2 kg in the hall and 3 in the shed"."""
    from_me = place.after == "from" and place.beyond in ("me", "us")
    if from_me and before and place.before in _LISTED and before[-1].factor >= _LARGE:
        return _amount(place, before[-1].quantity, before[-1].factor)  # "2 kg from Tom, 1 from me"
    if not before or place.after not in _TO_BIN or place.i - before[-1].end > _NEAR:
        return None
    last, at = before[-1], place.end + 1
    at += at < len(words) and words[at].norm in ("the", "our", "my")
    grams = last.factor == 1 and _LEAST_GRAMS <= place.value < 1000
    amount = _amount(place, last.quantity, _SMALL if grams else last.factor)
    put = place.before in _PUT and amount.value <= last.value
    if place.after == "for" and not put:
        return amount if grams and place.before in _LISTED else None
    return amount if (put or place.before in _LISTED) and at in taken else None


_TO_BIN = words_in("in into to for")
_PUT = words_in("put took tipped added chucked dumped went gave threw")


def is_second_guess(between: Sequence[str]) -> bool:
    """Whether nothing but doubt stands between two figures ("700 g, may have been 800")."""
    return _PERHAPS_SAID.issuperset(between) and not _PERHAPS.isdisjoint(between)


_PERHAPS = words_in("maybe perhaps possibly may might could")
_PERHAPS_SAID = _PERHAPS | words_in(", ( or so thereabouts ish even may might could have been be")


def _guesses_again(words: Sequence[Word], place: _Place, last: Amount) -> bool:
    """ "5 lbs, maybe 6, of pears"."""
    between = [words[k].norm for k in range(last.end, place.i)]
    return is_second_guess(between) and 0.5 <= place.value * last.factor / (last.value or 1.0) <= 2


def _part_of(place: _Place, last: Amount) -> Amount | None:
    """ "3.1 kg, 1.1 of it meat", "2 kg, 300 of that cheese"."""
    grams = last.factor == 1 and place.value >= _LEAST_GRAMS
    part = _amount(place, last.quantity, _SMALL if grams else last.factor)
    return part if part.value < last.value else None


def _shared_ahead(
    words: Sequence[Word], place: _Place, known: Sequence[Amount], taken: Collection[int]
) -> Amount | None:
    """ "Bread 400, peel 350 g": a thing's number before the one that has the unit of both."""
    behind = next((a for a in known if place.i < a.start <= place.i + _AHEAD), None)
    if behind is None:
        return None
    if (
        place.after == "of"
        and behind.quantity == "mass"
        and place.value < 10
        and _is_decimal(words[place.i])
    ):
        return _amount(place, "mass", 1.0)  # "1.8 of veg peel, 200 g of rind"
    in_named = place.i - 1 in taken
    if in_named and place.end in taken and behind.factor == _SMALL and place.value >= _LEAST_GRAMS:
        return _amount(place, behind.quantity, behind.factor)  # "gate 600 shed 450 g"
    bin_behind = place.after in _TO_BIN and place.end + 1 in taken
    if bin_behind and behind.quantity == "mass" and _is_decimal(words[place.i]):
        kilos = behind.factor in (1, _SMALL)
        return _amount(place, "mass", 1.0 if kilos else behind.factor)  # "peel 1.8 in shed, 400 g"
    if place.after not in (",", ";", "and", "&", "n", "+"):
        return None
    alike = 0.1 <= place.value * behind.factor / (behind.value or 1.0) <= 10
    if place.after in ("and", "&", "n") and behind.start == place.end + 1 and alike:
        return _amount(place, behind.quantity, behind.factor)  # "300 and 150 ml"
    if in_named and behind.factor == 1 and 100 <= place.value < 1000:
        return _amount(place, behind.quantity, _SMALL)  # "cobber 600, nan 900, den a kilo"
    if place.after == "+" and behind.start == place.end + 1:
        return _amount(place, behind.quantity, behind.factor)  # "150 + 200 ml"
    if behind.factor == _SMALL and _is_listed(words, place, behind):
        return _amount(place, behind.quantity, behind.factor)  # "Tom 800, Priya 650, me 900 g"
    things = place.before in vocabulary() and place.beyond.isalpha()
    return _amount(place, behind.quantity, behind.factor) if alike and things else None


def _is_listed(words: Sequence[Word], place: _Place, behind: Amount) -> bool:
    """Whether each of several words in a row has its number: "Tom 800, Priya 650, me 900 g"."""
    led = place.before.isalpha() and words[behind.start - 1].norm.isalpha()
    between = words[place.end : behind.start]
    row = all(
        w.kind != "word" or (k and between[k - 1].kind == "sign") for k, w in enumerate(between)
    )
    grams = _LEAST_GRAMS <= place.value < 2000
    return led and row and grams and len(between) % 3 == 2


_AHEAD = 8
"""Words from a bare number to the amount whose unit it shares, at most."""


def _is_decimal(word: Word) -> bool:
    head, point, tail = word.norm.replace(",", ".").partition(".")
    return bool(point) and head.isdecimal() and tail.isdecimal() and len(tail) <= 2


def _amount(place: _Place, quantity: Quantity, factor: float) -> Amount:
    return Amount(place.i, place.end, quantity, place.value * factor, factor=factor)
