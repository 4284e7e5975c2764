"""The amounts of a message, as they hang together: "2 lb 4 oz", "3 bags of 2 kg", "1 kg (2.2 lb)".

Numbers that are read one by one in `amounts` are here made into what was meant: joined, taken
once where they were said twice, multiplied, and given the unit that they share.
"""

from collections.abc import Collection, Sequence

from handlers.reading.acts import Units
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.bareamounts import with_bare_amounts
from handlers.reading.measures.differences import CUES as DIFFERING
from handlers.reading.measures.differences import with_differences
from handlers.reading.measures.digits import Number
from handlers.reading.measures.drunk import DRINKS, without_drinks
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.prices import CUES as PRICED
from handlers.reading.measures.prices import without_prices
from handlers.reading.measures.repeated import CUES, repeated
from handlers.reading.measures.sharedunits import is_second_guess
from handlers.reading.measures.singleamounts import leads_of, single_amounts
from handlers.reading.measures.tails import LEAST_GRAMS
from handlers.reading.measures.takenout import CUES as TAKEN
from handlers.reading.measures.takenout import without_taken_out
from handlers.reading.measures.tare import CUES as WEIGHED_IN
from handlers.reading.measures.tare import with_tare
from handlers.reading.measures.vesselamounts import CUES_FULL, filled, of_size, sized
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import verb_words, words_in
from handlers.reading.words.words import Word

_AND = frozenset({"and", "n", "&", "+", ",", "y", "e", "et", "und", "en", "i"})
_TO = frozenset({"to", "-", "or", "till"})
_OR = frozenset({("/",), ("(",), ("=",), ("or",), ("[",), ("that", "is"), (",", "that", "is")})
_SAME = 0.12
"""Two figures that differ by no more are one amount in two units, rounded."""
_MASSY = ("mass", "volume")
_PACKS = words_in(
    "packets packs bags tubs jars boxes pots bottles jugs sacks bowls punnets cartons trays tins "
    "cans parcels bundles pouches containers buckets pails caddies basins trugs lots "
    "loads portions batches sachets pouch crates"
)
_BEFORE_EACH = 8
"""Words between the packs and what each holds ("two bags of bran came, 1 kg each")."""
_BEFORE_PACK = 4
"""Words between a count and what it counts, at most ("two old ice cream tubs")."""


def read_amounts(
    words: Sequence[Word], norms: Sequence[str], units: Units, taken: Collection[int] = ()
) -> tuple[Amount, ...]:
    """All amounts in order; words whose index is in `taken` belong to names or dates."""
    found = _read(words, norms, units, taken)
    if found and not DRINKS.isdisjoint(norms):
        found = tuple(without_drinks(norms, found))
    if len(found) > 1 and not PRICED.isdisjoint(norms):
        found = tuple(without_prices(norms, found))
    if len(found) > 1 and not WEIGHED_IN.isdisjoint(norms):
        found = tuple(with_tare(norms, found))
    if len(found) > 1 and not TAKEN.isdisjoint(norms):
        found = tuple(without_taken_out(norms, found))
    return found


def _read(
    words: Sequence[Word], norms: Sequence[str], units: Units, taken: Collection[int]
) -> tuple[Amount, ...]:
    leads = leads_of(words, norms, units)
    if not leads:
        return ()
    single = single_amounts(words, norms, units, taken, leads)
    if not single:
        return with_bare_amounts(words, units, taken, (), leads)
    several = len(single) > 1
    one = _said_once(norms, _joined(norms, single)) if several else single
    joined = _counted(words, norms, one)
    if not CUES.isdisjoint(norms):
        joined = repeated(words, norms, joined, taken)
    if not DIFFERING.isdisjoint(norms):
        joined = with_differences(norms, joined)
    if several and "of" in norms:
        joined = of_size(norms, joined, units)
    joined = sized(norms, joined, units)
    if not CUES_FULL.isdisjoint(norms):
        joined = filled(norms, joined)
    if not _TIMES.keys().isdisjoint(norms):
        joined = _compared(norms, joined, taken)
    whole = with_bare_amounts(words, units, taken, joined, leads)
    return whole if len(whole) == len(joined) else tuple(_joined(norms, whole))


def _joined(norms: Sequence[str], amounts: Sequence[Amount]) -> list[Amount]:
    out: list[Amount] = []
    for amount in amounts:
        last = out[-1] if out else None
        one = None if last is None else _as_one(norms, last, amount)
        if one is None:
            out.append(amount)
        else:
            out[-1] = one
    return out


def _as_one(norms: Sequence[str], last: Amount, amount: Amount) -> Amount | None:
    """ "2 lb 4 oz" and "2 kg and 300 g" add up; "1 kg to 2 kg" is a range and gives its middle."""
    if last.quantity != amount.quantity or not (last.factor and amount.factor):
        return None
    if last.size or amount.size:
        return None
    between = [norm for norm in norms[last.end : amount.start] if norm not in _ABOUT]
    if between == ["+"] and last.factor == amount.factor and last.end == last.start + 1:
        return amount._replace(start=last.start, value=last.value + amount.value)  # "150 + 200 ml"
    hedged = len(between) < amount.start - last.end and between in ([], [","])
    if hedged and last.factor != amount.factor and 0.5 <= amount.value / (last.value or 1.0) <= 2:
        return amount._replace(start=last.start)  # "a small cup, maybe 200 ml"
    if between in _LESS and (less := _in_grams(amount)) < last.value:
        return last._replace(end=amount.end, value=last.value - less, liquid_l=None)
    smaller = amount.factor < last.factor and amount.value < last.factor
    if (
        smaller
        and not _is_exact(norms, last, amount)
        and (not between or (len(between) == 1 and between[0] in _AND))
    ):
        liquid = _sum(last.liquid_l, amount.liquid_l)
        return last._replace(end=amount.end, value=last.value + amount.value, liquid_l=liquid)
    ranges = len(between) == 1 and between[0] in _TO
    if last.start and norms[last.start - 1] == "between":
        ranges = between == ["and"]
    guessed = is_second_guess(norms[last.end : amount.start])
    guessed = guessed and 1 / _ALIKE <= amount.value / (last.value or 1.0) <= _ALIKE
    if guessed or (ranges and last.value < amount.value):
        middle = (last.value + amount.value) / 2
        return amount._replace(start=last.start, value=middle, vague=True)
    return None


def _in_grams(amount: Amount) -> float:
    """ "1.5 kg less 200 for the dish": a bare number of hundreds is of the smaller unit."""
    bare = amount.end == amount.start + 1 and amount.factor == 1
    return amount.value / 1000 if bare and amount.value >= LEAST_GRAMS else amount.value


_LESS = (["minus"], ["less"], [",", "minus"], [",", "less"])


def _is_exact(norms: Sequence[str], last: Amount, amount: Amount) -> bool:
    """ "About half a litre, 450 ml to be exact", "nearly a litre, 900 ml"."""
    if norms[amount.end : amount.end + 2] == ["to", "be"]:
        return True
    guessed = last.start > 0 and norms[last.start - 1] in _NEARLY
    beside = norms[last.end : amount.start] in ([","], ["("], ["-"], ["—"], [":"])
    return guessed and beside and abs(last.value - amount.value) <= _NEAR * last.value


_NEARLY = words_in("nearly almost about roughly around approx approximately under over")
_NEAR = 0.15
"""Share of a guess by which the figure told behind it may differ."""


_ALIKE = 1.5
"""Times the less that the greater of two guesses at one amount may be."""
_ABOUT = frozenset({"about", "~", "maybe", "perhaps", "around"})


def _sum(first: float | None, second: float | None) -> float | None:
    return None if first is None or second is None else first + second


def _said_once(norms: Sequence[str], amounts: Sequence[Amount]) -> list[Amount]:
    """ "500 g/1 lb 2 oz", "2.2 lb (1 kg)": one amount in two units counts once."""
    out: list[Amount] = []
    for amount in amounts:
        last = out[-1] if out else None
        if last is not None and _is_same(norms, last, amount):
            exact = _is_exact(norms, last, amount)
            out[-1] = amount._replace(start=last.start) if exact else last._replace(end=amount.end)
        else:
            out.append(amount)
    return out


def _is_same(norms: Sequence[str], last: Amount, amount: Amount) -> bool:
    between = [norm for norm in norms[last.end : amount.start] if norm not in _ABOUT]
    return (
        last.quantity == amount.quantity
        and last.quantity in _MASSY
        and last.factor != amount.factor
        and (tuple(between) in _OR or between in ([], [","]))
        and (abs(last.value - amount.value) <= _SAME * last.value or _is_exact(norms, last, amount))
    )


def _counted(
    words: Sequence[Word], norms: Sequence[str], amounts: Sequence[Amount]
) -> list[Amount]:
    """ "Three bags of 2 kg", "two packets, 1 kg each": the amount of one, times their number."""
    out: list[Amount] = []
    for amount in amounts:
        count = _count_before(words, norms, amount) if amount.factor and not amount.size else None
        if count is None:
            out.append(amount)
            continue
        out = [a for a in out if a.end <= count.start]
        start = count.start if amount.start - count.end < _BEFORE_EACH // 2 else amount.start
        liquid = None if amount.liquid_l is None else amount.liquid_l * count.value
        out.append(
            amount._replace(
                start=start,
                value=amount.value * count.value,
                liquid_l=liquid,
                vessel=False,
                counted=True,
            )
        )
    return out


def _compared(
    norms: Sequence[str], amounts: Sequence[Amount], taken: Collection[int]
) -> list[Amount]:
    """ "Gate got 3 kilos, blue half that", "2 kg in the shed and the same in the hall"."""
    out = list(amounts)
    held = indexes(amounts) | set(taken)
    for i, norm in enumerate(norms):
        times = _TIMES.get(norm)
        if times is None or i in held or (norm == "same" and _is_it(norms, i, amounts)):
            continue
        end = _end_of_likeness(norms, i)
        reach = _FAR if norms[i + 1 : i + 2] and norms[i + 1] in _MEASURED else _LIKE_REACH
        near = [a for a in amounts if a.factor and not a.size and 0 < i - a.end <= reach]
        if end and near:
            liquid = None if near[-1].liquid_l is None else near[-1].liquid_l * times
            like = near[-1]._replace(start=i, end=end, value=near[-1].value * times)
            out.append(like._replace(liquid_l=liquid))
    return sorted(out)


def _is_it(norms: Sequence[str], i: int, amounts: Sequence[Amount]) -> bool:
    """ "1.5 kilo of beans, dropped same in bin 4", "today 500 g same", "a pound of the same",
    "Monday: 300 g of peel, same": no more of it is told."""
    if list(norms[max(0, i - 2) : i]) == ["of", "the"]:
        return True
    before = norms[i - 1] if i else ","
    if before == "," and norms[i + 1 : i + 2] in ([], ["."]):
        start = max((k + 1 for k in range(i) if norms[k] in _SENTENCE_ENDS), default=0)
        return start > 0 and any(start <= a.start < i for a in amounts)
    puts = before in verb_words() and before not in _BEFORE_SAME
    return puts or any(a.end == i for a in amounts)


_SENTENCE_ENDS = frozenset({".", "!", "?", "\n"})
_BEFORE_SAME = words_in("got gets has had did do does took takes gave")


def _end_of_likeness(norms: Sequence[str], i: int) -> int:
    """Index behind "half that", "the same" and the like at word i; 0 if nothing is likened."""
    after = norms[i + 1 : i + 2]
    if norms[i] in ("same", "ditto"):
        if not _AHEAD.isdisjoint(norms[i + 1 : i + 3]):
            return 0  # "2 kg in the shed, same again next week"
        if after == ["of"] and norms[i + 2 : i + 3] and norms[i + 2] not in _SAME_AS_IT:
            return i + 1  # "800 g of veg and the same of bread"
        stops = not after or after[0] in _STOPS
        said_anew = norms[i + 2 : i + 3] and norms[i + 2][0].isdigit()  # "same, 4 lb"
        goes = stops and norms[i - 1] != "the" and not said_anew
        return i + 1 if goes or (after and after[0] in _SAME_GOES) else 0
    for words in _THAT:
        end = i + 1 + len(words)
        if tuple(norms[i + 1 : end]) == words:
            behind = norms[end] if end < len(norms) else "."
            said_of_it = behind in _IS or (words == ("of", "that") and _is_named(behind))
            return 0 if said_of_it else end  # "half of that was naan", "half of that bones"
    return 0


def _is_named(norm: str) -> bool:
    """Whether a word may name what a share is of, and only that."""
    return norm[0].isalpha() and norm not in _SAME_GOES | _BEHIND_SHARE


_SAME_AS_IT = words_in("the it that this them what")
_BEHIND_SHARE = words_in("and or but then on at today yesterday plus with by again")
_IS = words_in("was were is are")
_THAT = (("that",), ("as", "much"), ("of", "that"), ("this",))
_SAME_GOES = words_in("in into to for from off out amount weight again too")
_AHEAD = words_in("tomorrow next")
_STOPS = words_in(", . ;") | {"\n"}
_TIMES = {
    "half": 0.5,
    "twice": 2.0,
    "double": 2.0,
    "triple": 3.0,
    "treble": 3.0,
    "same": 1.0,
    "ditto": 1.0,
}
_LIKE_REACH = 10
"""Words between an amount and what is compared with it, at most."""
_FAR = 20
"""The same, where it is said that their weights are compared."""
_MEASURED = words_in("weight amount quantity volume")


def _count_before(words: Sequence[Word], norms: Sequence[str], amount: Amount) -> Number | None:
    """The number of packs whose size the amount is, if it is one."""
    at = amount.start
    behind = norms[amount.end : amount.end + 2]
    if of_each := _each_before(norms, at):
        return _count_of_packs(words, norms, of_each - 1, _BEFORE_EACH)
    if at > 1 and norms[at - 1] == "times":
        return _count_at(words, at - 2, at - 1)  # "three times 2 kg"
    led = at > 0 and norms[at - 1] in _LEADS
    if not (led or (behind and (behind[0] in _PACKS or behind[0] in _OF_ONE))):
        return None
    each = behind[:1] in (["each"], ["apiece"], ["ea"]) or behind in _IN_EACH
    each = each or _is_a_pack(behind)
    if at > 1 and norms[at - 1] == "each":
        each, at = True, at - 1
    while at > 0 and norms[at - 1] in _GUESSED:
        at -= 1
    lead = norms[at - 1] if at else ""
    if tuple(norms[amount.end : amount.end + 2]) in _EACH_TIME:
        return _times_before(words, norms, at)
    if norms[amount.end : amount.end + 1] and norms[amount.end] in _PACKS:
        return _count_at(words, at - 1, at)  # "three 2 lb bags"
    if lead not in ("of", "at", "x", "@") and not each:
        return None
    return _count_of_packs(words, norms, at - 2, _BEFORE_EACH if each else 1)


def _each_before(norms: Sequence[str], at: int) -> int:
    """Where "each" stands in "2 bowls, each bowl maybe 300 ml", before the amount at a word."""
    while at > 0 and norms[at - 1] in _HEDGES:
        at -= 1
    if at < 2 or norms[at - 2] != "each":
        return 0
    return at - 2 if norms[at - 1] in ("one", "of") or _is_pack(norms[at - 1]) else 0


_HEDGES = words_in("about roughly ~ maybe around perhaps is was holds held")
_GUESSED = words_in("about roughly ~ maybe around perhaps say i 'd we reckon guess think call it")
"""What leads to a guess: "two trays, I'd say three kilos each"."""


def _count_of_packs(
    words: Sequence[Word], norms: Sequence[str], at: int, reach: int
) -> Number | None:
    """The number of the packs that stand at most so many words back from word `at`."""
    pack = _pack_before(norms, at, reach)
    if pack < 1:
        return None
    for i in range(pack - 1, max(-1, pack - 1 - _BEFORE_PACK), -1):
        if norms[i] in _ONE_OR_STOP:
            return None  # "bin 2, one bag of 4 litres"
        number = _count_at(words, i, pack)
        if number is not None:
            return number
    return None


_ONE_OR_STOP = words_in("a an one , .")
_LEADS = words_in("of at x @ each about roughly ~")
_OF_ONE = words_in("each apiece ea in a per every")
"""Words before an amount, and behind it, beside packs, without which it is not that of one."""
_IN_EACH = (["in", "each"], ["a", "pop"], ["a", "piece"], ["per", "piece"])
_EACH_TIME = (("each", "time"), ("a", "time"), ("every", "time"), ("each", "go"), ("a", "go"))


def _is_a_pack(behind: Sequence[str]) -> bool:
    """ "500 g a bag", "1 kg per jar"."""
    return behind[:1] in (["a"], ["per"]) and f"{behind[-1]}s" in _PACKS


def _times_before(words: Sequence[Word], norms: Sequence[str], at: int) -> Number | None:
    """ "Drained it twice, 200 ml each time": how often, said shortly before."""
    for i in range(at - 1, max(-1, at - 1 - _BEFORE_EACH), -1):
        if norms[i] in _OFTEN:
            return Number(at, at, _OFTEN[norms[i]])
        if norms[i] == "times":
            return _count_at(words, i - 1, i)
    return None


_OFTEN = {"twice": 2.0, "thrice": 3.0}


def _pack_before(norms: Sequence[str], at: int, reach: int) -> int:
    """Index of the packs, at most so many words back from word `at`; 0 if there are none."""
    return next((i for i in range(at, max(0, at - reach), -1) if _is_pack(norms[i])), 0)


def _is_pack(norm: str) -> bool:
    """Whether a word is one for packs; a learner says "2 packet"."""
    return norm in _PACKS or f"{norm}s" in _PACKS


def _count_at(words: Sequence[Word], i: int, end: int) -> Number | None:
    """The whole number from 2 to 50 at word i that ends before word `end`."""
    number = read_number(words, i) if i >= 0 else None
    if number is None or number.end > end or not 2 <= number.value <= 50:
        return None
    return number if number.value == int(number.value) and not number.vague else None
