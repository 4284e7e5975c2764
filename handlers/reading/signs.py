"""What was seen, smelt or measured: moulds with their colours, smells, flies, a bulging lid."""

from collections.abc import Collection, Sequence

from handlers.practice.signs import Sign
from handlers.reading.marks import Mark
from handlers.reading.moulds import moulds_in
from handlers.reading.seen import Seen, denied
from handlers.reading.signturns import Turn, turns_in
from handlers.reading.spans import indexes
from handlers.reading.vocabulary import SignWord, words_in

_SMELL = words_in(
    "smell smells smelled smelling smelt smelly whiff whiffs whiffed odour odor scent aroma "
    "stink stinks niffs niff nose sniff sniffed sniffs stank pong pongs pongy reek reeks "
    "reeking reeked ponged ponging stunk stench huele riecht amoy hint note notes tang fumes "
    "perfume perfumes perfumed fug waft wafts wafting twang reminds bouquet nosed niffy whiffy "
    "scented scents odours odors aromas smeller smellin pongin hums cheira puzza pachnie ruikt "
    "niff nostrils stinky stinking whiffing humming"
)
_SMELL_GAP = 7


def find_signs(
    norms: Sequence[str], marks: Sequence[Mark], in_bins: Collection[int] = frozenset()
) -> tuple[Seen, ...]:
    """All signs told in the words, in order, also those said to be absent.

    `in_bins` are the words that name a bin, beside which everyday words are signs too.
    """
    of_bin = bool(in_bins) or not _VESSELS.isdisjoint(norms)
    found = moulds_in(norms, marks, in_bins, of_bin=of_bin)
    tags = _TAGS_OF_BIN if of_bin else _TAGS
    told = [m for m in marks if m.tag in tags]
    turns = list(turns_in(norms, in_bins)) if of_bin else []
    if not (found or told or turns or "any" in norms):
        return ()
    foods = [m for m in marks if m.tag == "food"]
    used = indexes(found)
    for mark in told:
        if any(i in used for i in range(mark.start, mark.end)):
            continue
        seen = _seen(norms, mark, foods)
        if seen is not None:
            found.append(seen)
    found += [
        Seen(i, i + 2, "no_liquid", True)
        for i in range(len(norms) - 1 if "any" in norms else 0)
        if norms[i] == "any" and norms[i + 1] in _ANY_LIQUID and denied(norms, i)
    ]
    found += _turned(norms, turns, found, foods, in_bins)
    if any(s.sign == "ammonia" for s in found):
        found = [s for s in found if list(norms[s.start : s.end]) != ["sharp"]]
    if "septic" in norms:
        found = [s for s in found if not _is_tank(norms, s)]
    if "good" in norms or "nice" in norms:
        found = [s for s in found if s.sign != "rotten" or not _is_meant_well(norms, s)]
    return tuple(
        sorted(s for s in found if not (_is_inside(s, found) or _is_only_from(norms, s, found)))
    )


def _is_tank(norms: Sequence[str], seen: Seen) -> bool:
    """ "Poured it down the septic": a tank, and no smell."""
    before, after = norms[max(0, seen.start - 1) : seen.start], norms[seen.end : seen.end + 1]
    return norms[seen.start] == "septic" and (list(before) == ["the"] or list(after) == ["tank"])


def _is_meant_well(norms: Sequence[str], seen: Seen) -> bool:
    """ "Stinky in the good way": strong, and not foul."""
    behind = norms[seen.end : seen.end + 5]
    return any(
        behind[k] in ("good", "nice") and behind[k + 1] in ("way", "sense")
        for k in range(len(behind) - 1)
    )


def _is_only_from(norms: Sequence[str], seen: Seen, found: Sequence[Seen]) -> bool:
    """ "A vinegar smell off bin 3": where the smell is named, "off" says no more than "from"."""
    alone = list(norms[seen.start : seen.end]) == ["off"]
    return alone and any(s.sign in _SMELLS and not s.absent for s in found if s is not seen)


_TAGS = frozenset({"sign-plain", "sign-smell", "sign-bin"})
_TAGS_OF_BIN = _TAGS | {"sign-named", "sign-scent"}
_VESSELS = words_in(
    "bin bins bucket buckets pail pails tub tubs caddy caddies bokashi drum barrel ferment leachate"
)
_SMELLS: frozenset[Sign] = frozenset({"sour", "rotten", "ammonia", "alcohol"})


def _turned(
    norms: Sequence[str],
    turns: Sequence[Turn],
    found: Sequence[Seen],
    foods: Sequence[Mark],
    in_bins: Collection[int],
) -> list[Seen]:
    """The turns of phrase that no other sign stands in; a sting in the nose only tells a smell
    where no other word does."""
    held = indexes(found) | set(in_bins)
    smelt = any(s.sign in _SMELLS for s in found)
    out: list[Seen] = []
    for turn in turns:
        if not held.isdisjoint(range(turn.start, turn.end)):
            continue
        if turn.sign == "ammonia" and smelt and not _only_sharp(norms, found):
            continue
        if turn.of_growth and (_is_of_food(turn, foods) or not _WALLS.isdisjoint(norms)):
            continue
        if _is_of_house(norms, turn.sign):
            continue
        absent = turn.sign != "no_liquid" and denied(norms, turn.start)
        plain = not turn.of_growth and (
            turn.sign not in _LIKE_WEATHER or _names_juice(norms, turn.sign, turn.start, turn.end)
        )
        out.append(Seen(turn.start, turn.end, turn.sign, plain, absent))
        held |= set(range(turn.start, turn.end))
    return out


def _names_juice(norms: Sequence[str], sign: Sign, start: int, end: int) -> bool:
    """Whether much liquid is told by its own name: a room has none."""
    return sign == "much_liquid" and not _ANY_LIQUID.isdisjoint(norms[start:end])


def _only_sharp(norms: Sequence[str], found: Sequence[Seen]) -> bool:
    """Whether no other smell is named than a sharp one, which may be either."""
    return all(list(norms[s.start : s.end]) == ["sharp"] or s.sign not in _SMELLS for s in found)


def _is_of_food(turn: Turn, foods: Sequence[Mark]) -> bool:
    """ "Bananas gone black", "green peas": the colour of a food."""
    return any(
        turn.first - 1 <= food.end <= turn.start or food.start <= turn.end < food.end
        for food in foods
    )


_WALLS = words_in("wall walls ceiling roof bathroom shower leaves lawn")
_LIKE_WEATHER: frozenset[Sign] = frozenset({"wet", "dry", "warm", "cold", "much_liquid"})
"""What may also be told of a room or a day."""


def _is_inside(seen: Seen, found: Sequence[Seen]) -> bool:
    """ "A dead mouse" is what it smells of, and no mouse; "the tap is bone dry", not the bin."""
    return any(_says_more(other, seen) for other in found)


def _says_more(other: Seen, seen: Seen) -> bool:
    if (other.start, other.end) == (seen.start, seen.end):
        return other.sign in _SMELLS and seen.sign not in _SMELLS  # "smells like a swamp"
    return other.start <= seen.start and seen.end <= other.end


_ANY_LIQUID = frozenset({"liquid", "juice", "leachate", "tea", "fluid", "liquor"})


def _seen(norms: Sequence[str], mark: Mark, foods: Sequence[Mark]) -> Seen | None:
    word: SignWord = mark.value
    by_smell = word.where in ("smell", "scent")
    if by_smell and not _smelling(norms, mark):
        return None
    smelt = word.sign in _SMELLS and _before_smell(norms, mark.end)
    if not by_smell and not smelt and _describes_food(mark, foods, norms):
        return None
    if word.where == "named" and (
        _is_of_people_or_scraps(norms, mark) or _is_of_house(norms, word.sign)
    ):
        return None
    if list(norms[mark.start - 1 : mark.end]) == ["a", "cold"] and not _has_noun(norms, mark.end):
        return None  # "Walter has a cold"
    if _is_of_my_food(mark, foods, norms) or _is_of_somebody(norms, mark):
        return None
    if word.sign == "rotten" and _of_another(norms, mark):
        return None
    if word.sign == "gas" and not _SMELL.isdisjoint(norms[max(0, mark.start - 3) : mark.start]):
        return None
    absent = word.sign != "no_liquid" and denied(norms, mark.start)
    plain = word.where != "bin" and not (
        word.where == "named"
        and word.sign in _LIKE_WEATHER
        and not _names_juice(norms, word.sign, mark.start, mark.end)
    )
    return Seen(mark.start, mark.end, word.sign, plain, absent)


def _is_of_people_or_scraps(norms: Sequence[str], mark: Mark) -> bool:
    """ "I'm sweating", "wasps and all": said of the sender, or of what was put in."""
    told = norms[max(0, mark.start - 2) : mark.start]
    person = not _PEOPLE.isdisjoint(told[-1:]) or (
        len(told) > 1 and told[0] in _PEOPLE and told[1] in _BEING
    )
    behind = list(norms[mark.end : mark.end + 2])
    return (
        (person and mark.value.sign != "rotten")
        or behind == ["and", "all"]
        or not _MORSELS.isdisjoint(behind[:1])
    )


def _is_of_house(norms: Sequence[str], sign: Sign) -> bool:
    """ "The roof is leaking": water, heat and cold have more places than a bin."""
    return sign in _LIKE_WEATHER and not _HOUSE.isdisjoint(norms)


_HOUSE = words_in(
    "roof geyser pipe pipes plumber ceiling boiler radiator dishwasher washer gutter gutters "
    "cistern toilet shower hose hosepipe tyre tyres car van boat tent wall walls cistern sink "
    "window windows fridge freezer kettle nappy pram shoes boots wellies coat"
)
_MORSELS = words_in(
    "bits bread toast scraps leftovers stuff remains ends rinds nibbled eaten bitten"
)
_PEOPLE = words_in("i we you am he")
_BEING = words_in("am are was were is get got feel felt 're")


def _has_noun(norms: Sequence[str], at: int) -> bool:
    return at < len(norms) and norms[at][0].isalpha() and norms[at] not in ("and", "so", "but")


def _of_another(norms: Sequence[str], mark: Mark) -> bool:
    """ "Stinks of paint": the smell is named, and it is not one of rot."""
    if norms[mark.end : mark.end + 1] != ["of"]:
        return False
    named = list(norms[mark.end : mark.end + 6])
    stop = next((i for i, norm in enumerate(named) if not norm[0].isalpha()), len(named))
    return _ROT.isdisjoint(named[:stop])


_ROT = words_in(
    "rotten rot death dead sewage drains sick vomit poo fish meat eggs egg bin bins sulphur "
    "sulfur cabbage garbage manure feet everything hell off rubbish trash bad"
)


def _smelling(norms: Sequence[str], mark: Mark) -> bool:
    at = mark.start
    for k in range(at - 1, max(-1, at - 1 - _SMELL_GAP), -1):
        if norms[k] in _SMELL or (norms[k] == "off" and norms[k - 1] in _GIVING):
            return True
        if norms[k] in (".", "!", "?", ";", "\n") or (norms[k] == "," and at - k > 3):
            break
    if "like" in norms[max(0, at - _LIKENED) : at] and _is_likened(norms, at):
        return True
    if not _SMELL.isdisjoint(norms[at + 1 : at + 2]):
        return True
    return _before_smell(norms, mark.end)


_LIKENED = 6
"""Words between "like" and what the smell is like, at most."""
_SENTENCE = 16
"""Words looked back over for the smell that is likened."""


def _is_likened(norms: Sequence[str], at: int) -> bool:
    """ "Grand smell off bin 2 this morning, like my nan's pickled onions"."""
    like = next(k for k in range(at - 1, -1, -1) if norms[k] == "like")
    if "of" in norms[like:at]:
        return False  # "like a jar of dill pickles": a vessel off a bin would be a drain
    for k in range(like - 1, max(-1, like - _SENTENCE), -1):
        if norms[k] in (".", "!", "?", ";", "\n"):
            return False
        if norms[k] in _SMELL:
            return True
    return False


def _before_smell(norms: Sequence[str], at: int) -> bool:
    """ "A pickle smell", "a vinegar type smell": what smells stands before the word for it."""
    behind = norms[at + 1 : at + 2] if norms[at : at + 1] and norms[at] in _SORT else ()
    return not _A_SMELL.isdisjoint((*norms[at : at + 1], *behind))


_A_SMELL = words_in(
    "smell whiff odour odor scent aroma pong stink stench tang note notes fumes hint nose twang fug"
)
_GIVING = words_in("giving gives gave give")
_SORT = words_in("type kind sort y ish like milk")


def _describes_food(mark: Mark, foods: Sequence[Mark], norms: Sequence[str]) -> bool:
    """ "Rotten tomatoes", "dry coffee grounds", "sour cream": said of the food, not of the bin."""
    return any(
        (food.start in (mark.end, mark.end + 1) and norms[mark.end : food.start] in ([], ["old"]))
        or (
            food.start <= mark.start < mark.end <= food.end
            and food.end - food.start > mark.end - mark.start
        )
        for food in foods
    )


def _is_of_my_food(mark: Mark, foods: Sequence[Mark], norms: Sequence[str]) -> bool:
    """ "My kefir smells sour": said of a thing to eat; scraps and the liquid of a bin are none."""
    return any(
        norms[food.start - 1 : food.start] == ["my"]
        and not _SMELL.isdisjoint(norms[food.end : food.end + 1])
        and food.end < mark.start <= food.end + 3
        and food.value.shares[0][0] != "mixed"
        and food.value.name not in _ANY_LIQUID
        for food in foods
    )


def _is_of_somebody(norms: Sequence[str], mark: Mark) -> bool:
    """ "My feet smell rotten": said of a body or its clothes."""
    return any(
        norms[i] in _BODY and norms[i - 1] in _OWN and not _SMELL.isdisjoint(norms[i + 1 : i + 4])
        for i in range(max(1, mark.start - 6), mark.start)
    )


_OWN = words_in("my his her your our their the")
_BODY = words_in(
    "feet foot socks sock shoes trainers boots breath armpits armpit hair clothes jacket coat car "
    "sofa towels towel laundry dog cat baby husband wife fridge"
)
