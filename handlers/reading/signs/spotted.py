"""What was seen, smelt or measured: moulds with their colours, smells, flies, a bulging lid."""

from collections.abc import Collection, Sequence

from handlers.practice.signs import Sign
from handlers.reading.signs.moulds import moulds_in
from handlers.reading.signs.notsigns import (
    LIKE_WEATHER,
    describes_food,
    is_meant_well,
    is_of_creatures,
    is_of_else,
    is_of_food,
    is_of_house,
    is_of_my_food,
    is_of_people_or_scraps,
    is_of_somebody,
    is_of_utility,
    is_tank,
    of_another,
    somebody_smells,
)
from handlers.reading.signs.seen import Seen, denied
from handlers.reading.signs.signturns import Turn, turns_in
from handlers.reading.signs.smells import ANY_LIQUID, SMELL, SMELLS, before_smell, smelling
from handlers.reading.words.marks import Mark
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import SignWord, words_in


def find_signs(
    norms: Sequence[str],
    marks: Sequence[Mark],
    in_bins: Collection[int],
    people: Collection[int],
) -> tuple[Seen, ...]:
    """All signs told in the words, in order, also those said to be absent.

    `in_bins` are the words that name a bin, beside which everyday words are signs too; `people`
    those that name a member.
    """
    if any(norms[i] in SMELL for i in in_bins):
        norms = ["qbin" if i in in_bins and n in SMELL else n for i, n in enumerate(norms)]
    of_bin = bool(in_bins) or not _VESSELS.isdisjoint(norms)
    found = moulds_in(norms, marks, in_bins, of_bin=of_bin)
    tags = _TAGS_OF_BIN if of_bin else _TAGS
    of_people = SMELLS if not of_bin and somebody_smells(norms, people) else ()
    told = [m for m in marks if m.tag in tags and m.value.sign not in of_people]
    turns = list(turns_in(norms, in_bins)) if of_bin else []
    stale = _of_old_food(norms, marks)
    if not (found or told or turns or stale or "any" in norms):
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
        if norms[i] == "any" and norms[i + 1] in ANY_LIQUID and denied(norms, i)
    ]
    found += _turned(norms, turns, found, foods, in_bins)
    found += [s for s in stale if indexes(found).isdisjoint(range(s.start, s.end))]
    found = _heard_right(norms, found)
    return tuple(
        sorted(s for s in found if not (_is_inside(s, found) or _is_only_from(norms, s, found)))
    )


def _of_old_food(norms: Sequence[str], marks: Sequence[Mark]) -> list[Seen]:
    """ "Smells like old meat", "of last week's fish": what was alive once and is stale."""
    if _STALE.isdisjoint(norms):
        return []
    return [
        Seen(food.start - 1, food.end, "rotten", True, denied(norms, food.start - 1))
        for food in marks
        if food.tag == "food"
        and food.start
        and norms[food.start - 1] in _STALE
        and food.value.shares[0][0] in _ONCE_ALIVE
        and not _LIKE.isdisjoint(norms[max(0, food.start - 4) : food.start - 1])
        and smelling(norms, food)
    ]


_STALE = words_in("old stale bad off spoiled spoilt forgotten warm raw week 's")
_ONCE_ALIVE = frozenset({"meat", "fish", "egg", "bone", "dairy", "oil"})
_LIKE = words_in("like of")


def _heard_right(norms: Sequence[str], found: list[Seen]) -> list[Seen]:
    """The signs, without those whose words mean something else beside others; what smells like
    something dead is rotten.
    """
    if "nose" in norms:  # "alcohol on the nose" is only where it is smelt
        ends = {s.end for s in found if s.sign in SMELLS}
        found = [s for s in found if s.start not in ends or norms[s.start : s.end][-1:] != ["nose"]]
    if any(s.sign == "ammonia" for s in found):
        found = [s for s in found if list(norms[s.start : s.end]) != ["sharp"]]
    if "septic" in norms:
        found = [s for s in found if not is_tank(norms, s)]
    if not _DEAD.isdisjoint(norms):
        found = [s._replace(sign="rotten") if _is_likened(norms, s) else s for s in found]
    if "good" in norms or "nice" in norms:
        found = [s for s in found if s.sign != "rotten" or not is_meant_well(norms, s)]
    if not _TAPS.isdisjoint(norms):
        found = [s._replace(sign="no_liquid") if _is_tap_dry(norms, s) else s for s in found]
    return found


_TAPS = words_in("tap spigot spout")


def _is_tap_dry(norms: Sequence[str], seen: Seen) -> bool:
    """ "The tap on bin 3 ran dry": nothing comes, whatever lies in the bin."""
    if seen.sign != "dry" or norms[seen.start - 1] not in _RAN:
        return False
    lead = norms[max(0, seen.start - 7) : seen.start]
    return not _TAPS.isdisjoint(lead) and _APART.isdisjoint(lead)


_RAN = words_in("ran run runs went is was 's dripped")
_APART = words_in(", . ; : and n & it it's its")


_DEAD = words_in("dead died dying rotting decomposing")


def _is_likened(norms: Sequence[str], seen: Seen) -> bool:
    """ "Like a dead rat", "like a mouse died in it": a smell, and no rodent."""
    if seen.sign != "rodents" or "like" not in norms[max(0, seen.start - 4) : seen.start]:
        return False
    return not _DEAD.isdisjoint(norms[max(0, seen.start - 2) : seen.end + 3])


def _is_only_from(norms: Sequence[str], seen: Seen, found: Sequence[Seen]) -> bool:
    """ "A vinegar smell off bin 3": where the smell is named, "off" says no more than "from"."""
    alone = list(norms[seen.start : seen.end]) == ["off"]
    return alone and any(s.sign in SMELLS and not s.absent for s in found if s is not seen)


_TAGS = frozenset({"sign-plain", "sign-smell", "sign-bin"})
_TAGS_OF_BIN = _TAGS | {"sign-named", "sign-scent"}
_VESSELS = words_in(
    "bin bins bucket buckets pail pails tub tubs caddy caddies bokashi drum barrel ferment leachate"
)


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
    smelt = any(s.sign in SMELLS for s in found)
    out: list[Seen] = []
    for turn in turns:
        if not held.isdisjoint(range(turn.start, turn.end)):
            continue
        if turn.sign == "ammonia" and smelt and not _only_sharp(norms, found):
            continue
        if turn.of_growth and (is_of_food(turn, foods) or not _WALLS.isdisjoint(norms)):
            continue
        if is_of_house(norms, turn.sign):
            continue
        absent = turn.sign != "no_liquid" and denied(norms, turn.start)
        plain = not turn.of_growth and (
            turn.sign not in LIKE_WEATHER or _names_juice(norms, turn.sign, turn.start, turn.end)
        )
        out.append(Seen(turn.start, turn.end, turn.sign, plain, absent))
        held |= set(range(turn.start, turn.end))
    return out


def _names_juice(norms: Sequence[str], sign: Sign, start: int, end: int) -> bool:
    """Whether much liquid is told by its own name: a room has none."""
    return sign == "much_liquid" and not ANY_LIQUID.isdisjoint(norms[start:end])


def _only_sharp(norms: Sequence[str], found: Sequence[Seen]) -> bool:
    """Whether no other smell is named than a sharp one, which may be either."""
    return all(list(norms[s.start : s.end]) == ["sharp"] or s.sign not in SMELLS for s in found)


_WALLS = words_in("wall walls ceiling roof bathroom shower leaves lawn")


def _is_inside(seen: Seen, found: Sequence[Seen]) -> bool:
    """ "A dead mouse" is what it smells of, and no mouse; "the tap is bone dry", not the bin."""
    return any(_says_more(other, seen) for other in found)


def _says_more(other: Seen, seen: Seen) -> bool:
    if (other.start, other.end) == (seen.start, seen.end):
        return other.sign in SMELLS and seen.sign not in SMELLS  # "smells like a swamp"
    return other.start <= seen.start and seen.end <= other.end


def _seen(norms: Sequence[str], mark: Mark, foods: Sequence[Mark]) -> Seen | None:
    word: SignWord = mark.value
    by_smell = word.where in ("smell", "scent")
    if by_smell and not smelling(norms, mark):
        return None
    smelt = word.sign in SMELLS and before_smell(norms, mark.end)
    if not by_smell and not smelt and describes_food(mark, foods, norms):
        return None
    if word.where == "named" and (
        is_of_people_or_scraps(norms, mark) or is_of_house(norms, word.sign)
    ):
        return None
    if list(norms[mark.start - 1 : mark.end]) == ["a", "cold"] and not _has_noun(norms, mark.end):
        return None  # "Walter has a cold"
    if is_of_my_food(mark, foods, norms) or is_of_somebody(norms, mark):
        return None
    if is_of_else(norms, mark) or (word.sign in _CREATURES and is_of_creatures(norms, mark)):
        return None
    if word.sign == "rotten" and of_another(norms, mark):
        return None
    if word.sign == "gas" and is_of_utility(norms, mark):
        return None
    if word.sign == "gas" and not SMELL.isdisjoint(norms[max(0, mark.start - 3) : mark.start]):
        return None
    absent = word.sign != "no_liquid" and denied(norms, mark.start)
    plain = word.where != "bin" and not (
        word.where == "named"
        and word.sign in LIKE_WEATHER
        and not _names_juice(norms, word.sign, mark.start, mark.end)
    )
    return Seen(mark.start, mark.end, word.sign, plain, absent)


_CREATURES = frozenset[Sign]({"insects", "rodents"})


def _has_noun(norms: Sequence[str], at: int) -> bool:
    return at < len(norms) and norms[at][0].isalpha() and norms[at] not in ("and", "so", "but")
