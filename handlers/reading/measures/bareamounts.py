"""Numbers without a unit of their own that are amounts: beside others, or their unit set apart."""

from collections.abc import Collection, Mapping, Sequence, Set

from handlers.reading.acts import Units
from handlers.reading.calendar.daywords import WEEKDAYS
from handlers.reading.completion.lots import portions
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.bareplaces import ENDINGS, SMALL, Place, is_decimal, norm_at
from handlers.reading.measures.binshares import told_of_bin
from handlers.reading.measures.digits import digits_value
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.numberwords import TENS, UNITS
from handlers.reading.measures.sharedunits import shared
from handlers.reading.measures.unitwords import Unit, unit_table
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word

_SHORT_UNITS = words_in(
    "kg kgs kilo kilos g grams gm lb lbs pounds oz ounces l litres liters ml mls"
)
_NO_MEASURE = words_in(
    "bin room plot no number at by until till # page flat house apartment bus route on since ph "
    "temp day layer block degrees bucket tub keg barrel drum bed row from @ before after version "
    "x pit v line step level of for age aged floor unit lot week year until not "
    "pas nicht niet nie £ $ €"
)
_CLOCK = words_in("am pm h hrs hours oclock % ° degrees celsius c days weeks cm m mm ft")


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
    parts = [i for i, _, value in free if value < 1] if len(known) == 1 else []
    shares = portions(words, parts, known[0], taken) if parts else ()
    more: list[Amount] = []
    for i, end, value in free:
        before, after, beyond = (norm_at(words, k) for k in (i - 1, end, end + 1))
        dated = end in taken and after in _DAY_STARTS  # "300 this morning", "300 again today"
        dated = dated or (after in _ONCE_MORE and end + 1 in taken and beyond in _DAY_STARTS)
        place = Place(i, end, value, before, after, beyond, dated)
        named = i - 1 in taken and is_decimal(words[i])  # "shed bin 1.9"
        counts = place.before in _NO_MEASURE and not (named or _is_weighed(words, i))
        if counts or place.after in _CLOCK or i in shares:
            continue
        amount = told_of_bin(words, place, known, taken)
        if amount is not None:
            more.append(amount)
            continue
        amount = _led_by_unit(words, place, table, held) or _of_unit_apart(words, place, apart)
        amount = amount or shared(words, place, known, taken)
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


def _unit_apart(words: Sequence[Word], table: Mapping[str, Unit]) -> Unit | None:
    """ "1.2 rice, 0.8 bread. Both kg": a unit that stands alone at the end of what it measures."""
    for i, word in enumerate(words):
        if word.norm not in _SHORT_UNITS or i == 0 or words[i - 1].kind == "number":
            continue
        alone = words[i - 1].kind == "sign" or words[i - 1].norm in _BEFORE_APART
        after = norm_at(words, i + 1)
        if alone and (after in ENDINGS or after in _BEHIND_APART):
            return table.get(word.norm)
    return None


_BEFORE_APART = words_in("both all in thats 's is are obvs meaning")
_BEHIND_APART = words_in("obvs obviously that of btw each by is i not like mind innit pls please")


def _of_unit_apart(words: Sequence[Word], place: Place, unit: Unit | None) -> Amount | None:
    if unit is None:
        return None
    small = unit.factor <= SMALL and 20 <= place.value < 1900
    if not small and not is_decimal(words[place.i]):
        return None
    return place.amount(unit.quantity, unit.factor)


def _led_by_unit(
    words: Sequence[Word], place: Place, table: Mapping[str, Unit], held: set[int]
) -> Amount | None:
    """ "kg 2,5": the unit stands before its number, as in a ledger."""
    at = place.i - 2 if place.before == ":" else place.i - 1
    if at < 0 or at in held or words[at].norm not in _SHORT_UNITS or not place.ends:
        return None
    unit = table.get(words[at].norm)
    return None if unit is None else place.amount(unit.quantity, unit.factor)._replace(start=at)


_ONCE_MORE = words_in("again more")
_DAY_STARTS = WEEKDAYS.keys() | words_in("today yesterday this last on tonight tonite")
