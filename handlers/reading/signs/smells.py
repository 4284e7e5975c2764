"""Whether something smells, by the words round what it smells of: "a whiff of", "like pickles"."""

from collections.abc import Sequence

from handlers.practice.signs import Sign
from handlers.reading.words.marks import Mark
from handlers.reading.words.vocabulary import words_in

SMELL = words_in(
    "smell smells smelled smelling smelt smelly whiff whiffs whiffed odour odor scent aroma "
    "stink stinks niffs niff nose sniff sniffed sniffs stank pong pongs pongy reek reeks "
    "reeking reeked ponged ponging stunk stench huele riecht amoy hint note notes tang fumes "
    "perfume perfumes perfumed fug waft wafts wafting twang reminds bouquet nosed niffy whiffy "
    "scented scents odours odors aromas smeller smellin pongin hums cheira puzza pachnie ruikt "
    "niff nostrils stinky stinking whiffing humming"
)
_SMELL_GAP = 7
SMELLS: frozenset[Sign] = frozenset({"sour", "rotten", "ammonia", "alcohol"})
ANY_LIQUID = frozenset({"liquid", "juice", "leachate", "tea", "fluid", "liquor"})


def smelling(norms: Sequence[str], mark: Mark) -> bool:
    """Whether the words round a mark say that something smells of it."""
    at = mark.start
    if norms[at] == "wrong" and norms[at - 1] in _ASKED_WRONG:
        return False  # "it smells like vinegar, is that wrong?"
    for k in range(at - 1, max(-1, at - 1 - _SMELL_GAP), -1):
        if norms[k] in SMELL or (norms[k] == "off" and norms[k - 1] in _GIVING):
            return norms[k] != "note" or (k > 0 and norms[k - 1] not in _PLEASE)
        if norms[k] == "giving" and k and norms[k - 1] in _IS_GIVING and at - k <= _GIVEN:
            return norms[mark.end : mark.end + 1] != ["to"]  # "it's giving vinegar"
        if norms[k] in (".", "!", "?", ";", "\n") or (norms[k] == "," and at - k > 3):
            if list(norms[k + 1 : k + 4]) in _IT_IS_LIKE:
                continue  # "the smell of it! It's like a dead rat"
            break
    if "like" in norms[max(0, at - _LIKENED) : at] and _is_likened(norms, at):
        return True
    if not SMELL.isdisjoint(norms[at + 1 : at + 2]) or _is_on_the_nose(norms, mark.end):
        return True
    return before_smell(norms, mark.end) or _is_of_drained(norms, mark)


def _is_on_the_nose(norms: Sequence[str], at: int) -> bool:
    return list(norms[at : at + 3]) == ["on", "the", "nose"]


def _is_of_drained(norms: Sequence[str], mark: Mark) -> bool:
    """ "Drained it, 200 ml, proper pickles", "a pint off the tap, sharp vinegar off it"."""
    behind = norms[mark.end : mark.end + 2]
    ends = not behind or not behind[0][0].isalpha() or behind[0] == "off"
    if not ends or _DRAWN.isdisjoint(norms[: mark.start]) or not _PUT.isdisjoint(norms):
        return False
    at = mark.start - 1
    while at > 0 and norms[at] in _DEGREES:
        at -= 1
    return norms[at] in _BREAKS


_DRAWN = words_in("drained drew drawn tapped tap taps spigot spout ran")
_PUT = words_in("added add put chucked threw tipped fed kg kilo kilos lb lbs g grams scraps")
"""Words of a layer, of which pickles and vinegar may be a part."""
_DEGREES = words_in(
    "proper properly straight up sharp good nice pure nasty a an bit of strong very real right "
    "serious faint weak mild lovely pong"
)
_BREAKS = frozenset({",", ".", ";", "!", "-", "(", "\n"})


_ASKED_WRONG = words_in("that it this anything something nothing what whats")
_IS_GIVING = words_in("is are 's its still just really definitely very")
_GIVEN = 3
_IT_IS_LIKE = [["it", "is", "like"], ["it", "'s", "like"], ["its", "like", "a"]]
_PLEASE = words_in("kindly please pls to do must also")
"""Words behind which a note is taken, and none is smelt."""
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
        if norms[k] in SMELL:
            return True
    return False


def before_smell(norms: Sequence[str], at: int) -> bool:
    """ "A pickle smell", "a vinegar type smell": what smells stands before the word for it."""
    behind = norms[at + 1 : at + 2] if norms[at : at + 1] and norms[at] in _SORT else ()
    return not _A_SMELL.isdisjoint((*norms[at : at + 1], *behind))


_A_SMELL = words_in(
    "smell whiff odour odor scent aroma pong stink stench tang note notes fumes hint nose twang fug"
)
_GIVING = words_in("giving gives gave give")
_SORT = words_in("type kind sort y ish like milk")
