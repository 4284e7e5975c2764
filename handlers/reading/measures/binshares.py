"""Numbers without a unit that stand with a bin: "400 ml off the shed, 200 off the hall"."""

from collections.abc import Collection, Sequence

from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.bareplaces import (
    LARGE,
    LEAST_GRAMS,
    LISTED,
    NEAR,
    SMALL,
    STOPS,
    TO_BIN,
    Place,
    norm_at,
)
from handlers.reading.words.vocabulary import vocabulary, words_in
from handlers.reading.words.words import Word


def told_of_bin(
    words: Sequence[Word], place: Place, known: Sequence[Amount], taken: Collection[int]
) -> Amount | None:
    """ "7 lb, shared by the shed (five) and the hall (two)", "shed 1.5 lb. hall 3", "pears in
    shed: 2 kg. Plums in hall: 3"."""
    apart = place.before == "(" and place.after == ")" and place.i - 2 in taken
    parted = _is_parted(words, place.i, taken)
    if not apart and not parted and place.i - 1 not in taken:
        return None
    earlier = [a for a in known if a.end <= place.i]
    if apart and earlier and earlier[-1].factor == SMALL and place.value >= LEAST_GRAMS:
        return place.amount(earlier[-1].quantity, SMALL)  # "to the shed (800 g), to green (300)"
    before = [a for a in earlier if a.factor >= LARGE]
    if not before:
        return None
    last = before[-1]
    if apart:
        part = place.in_unit_of(last)
        return part if part.value <= before[0].value else None
    row = last.start - 1 in taken or _is_parted(words, last.start, taken)
    row = row and place.i - last.end <= NEAR
    ends = place.after in STOPS and (parted or words[place.i].kind == "number")
    return place.in_unit_of(last) if row and ends and place.is_like(last) else None


def _is_parted(words: Sequence[Word], at: int, taken: Collection[int]) -> bool:
    """Whether no more than a colon parts word `at` from a name before it."""
    return norm_at(words, at - 1) == ":" and at - 2 in taken


def for_bin(
    words: Sequence[Word], place: Place, before: Sequence[Amount], taken: Collection[int]
) -> Amount | None:
    """ "1 kg for the hall, 400 for the shed", "2 kg in the hall and 3 in the shed"."""
    from_me = place.after == "from" and place.beyond in ("me", "us")
    if from_me and before and place.before in LISTED and before[-1].factor >= LARGE:
        return place.in_unit_of(before[-1])  # "2 kg from Tom, 1 from me"
    if not before or place.i - before[-1].end > NEAR:
        return None
    lot, last = before[0], before[-1]
    went = place.after in _WENT  # "5 kg of peel, 3 went to the shed"
    to, at = norm_at(words, place.end + went), _behind_to(words, place.end + went)
    led = place.before in _PARTED or place.i - 1 in taken  # "2 shed 3 hall"
    part = led and place.value * lot.factor < lot.value
    parted = any(w.norm in _SPLIT for w in words[lot.end : place.i])
    parted = parted or went
    # "6 kg of bread, all stale. 4 in the shed, 2 in the hall"
    parted = parted or (
        place.before in _BREAKS and not any(i in taken for i in range(lot.end, place.i))
    )
    if part and (
        parted or any(w.norm in _TOTAL for w in words[max(0, lot.start - 2) : lot.end + 2])
    ):
        straight = place.end in taken  # "6 kg split: 4 shed, 2 hall"
        if straight or (to in TO_BIN and at in taken):
            return place.in_unit_of(lot)
    if place.end in taken and place.before in LISTED and _goes_likewise(words, place, last, taken):
        return place.in_unit_of(last)
    if place.after not in TO_BIN and not (place.after == "out" and place.beyond == "of"):
        return None
    grams = last.factor == 1 and LEAST_GRAMS <= place.value < 1000
    amount = place.amount(last.quantity, SMALL if grams else last.factor)
    put = place.before in _PUT and amount.value <= last.value
    if place.after == "for" and not put:
        likewise = last.quantity == "mass" and at in taken
        likewise = likewise and _goes_likewise(words, place, last, taken)
        return amount if (grams or likewise) and place.before in LISTED else None
    put = put or place.before in LISTED or (_is_by_name(words, place) and place.is_like(last))
    return amount if put and at in taken else None


def _is_by_name(words: Sequence[Word], place: Place) -> bool:
    """ "2 kg in the shed, Ines 1 in the hall", "Ines 2 kg in the shed, me 1 in the hall"."""
    lead = words[place.i - 1]
    called = lead.text[:1].isupper() or lead.norm in _ME or lead.norm not in vocabulary()
    return called and lead.kind == "word" and norm_at(words, place.i - 2) in LISTED


_ME = words_in("me i we us")


def _goes_likewise(
    words: Sequence[Word], place: Place, last: Amount, taken: Collection[int]
) -> bool:
    """ "300 ml off the shed, 150 green", "2.4 kg shed, 1.8 green": the amount before stands with
    its bin, too, and nothing else is between.
    """
    straight = last.end in taken and words[place.i].kind == "number"
    at = last.end if straight else _behind_to(words, last.end)
    if not straight and (norm_at(words, last.end) not in TO_BIN | {"out"} or at not in taken):
        return False
    at = _behind_bin(at, taken)
    while at < place.i - 1 and words[at + 1].kind == "number" and at + 2 in taken:
        at = _behind_bin(at + 2, taken)  # "500 ml shed, 250 green, 300 hall"
    return place.is_like(last) and at == place.i - 1


def _behind_bin(at: int, taken: Collection[int]) -> int:
    while at in taken:
        at += 1
    return at


def _behind_to(words: Sequence[Word], i: int) -> int:
    """Index behind "off the", "out of our", "into" at word i."""
    at = i + 1 + (norm_at(words, i) == "out" and norm_at(words, i + 1) == "of")
    return at + (norm_at(words, at) in ("the", "our", "my"))


def put_too(words: Sequence[Word], place: Place, before: Sequence[Amount]) -> Amount | None:
    """ "Ruth put a pound in and I put two": what another put in beside."""
    if not before or place.before not in _PUT or not place.ends:
        return None
    last = before[-1]
    put = any(word.norm in _PUT for word in words[max(0, last.start - 2) : last.start])
    if not put or last.factor < LARGE or place.i - last.end > NEAR:
        return None
    return place.in_unit_of(last)


_BREAKS = frozenset({".", "\n"})
_SPLIT = words_in(": split divided shared parted")
_TOTAL = words_in("total altogether overall")
_PARTED = LISTED | {":", "-", "—", "(", ".", "\n", "into", "split", "divided"}
_WENT = words_in("went go goes gone")
_PUT = words_in("put took tipped added chucked dumped went gave threw")
