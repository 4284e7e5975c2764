"""Slips in the names of bins, put right where a bin is meant."""

from collections.abc import Sequence
from functools import lru_cache

from handlers.reading.context import Context
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.vocabulary import is_spelling_slip, one_slip, vocabulary, words_in
from handlers.reading.words.words import plain

_BEFORE_BIN = words_in("in into to from off of the inside")


def mended(norms: list[str], context: Context) -> list[str]:
    """The words with slips in bin names put right: letters missing or swapped in a long name, and
    any slip where a bin's name is expected."""
    unknown = _unknown(norms)
    if not unknown:
        return norms
    noted = norms[0][:1].isdigit() or not _DEEDS.isdisjoint(norms)
    if noted and _mend_in_notes(norms, unknown, context.bins):
        unknown = _unknown(norms)
    single, by_initial = _single(context.bins)
    if not single:
        return norms
    for i in unknown:
        norm = norms[i]
        before = norms[i - 1] if i else ""
        after = norms[i + 1] if i + 1 < len(norms) else ""
        alone = i > 0 and before in _STOPS and after in _STOPS  # "250 g of skins. landin."
        expected = before in _BEFORE_BIN or after in BIN_WORDS or alone
        near = single if expected else by_initial.get(norm[0])
        if near and norm.isalpha():
            name = slipped(norm, near)
            if name is None:
                continue
            owning = norm == f"{name}s" and _is_owning(norms, i, name, context.members)
            if expected or owning or (norm not in _PHONE_SHORT and is_scrambled(norm, name)):
                norms[i] = name
    return norms


_PHONE_SHORT = words_in("shd cld wld hv bk wk wrk txt msg bcs cmg gng")
"""Other words as phones shorten them: "shd" is the shed's only where a bin is expected."""
_STOPS = frozenset({"", ".", ",", ";", ":", "\n", "(", ")", "!"})


def _is_owning(norms: Sequence[str], i: int, name: str, members: Sequence[str]) -> bool:
    """ "Mudrooms full", "sheilas lid is up", "drained garys": a name and its "'s", as phones write
    it, where what stands beside it is a bin's; a member of that name may be meant elsewhere.
    """
    after, beyond = (norms[k] if k < len(norms) else "" for k in (i + 1, i + 2))
    if after in _STATES:
        return True
    if any(plain(member) == name for member in members):
        return False
    told = after in _HOW and beyond in _STATES | _HOW
    fed = after in _TIMES and beyond in _FED
    return told or fed or after in _PARTS or (i > 0 and norms[i - 1] in _DEEDS)


_PARTS = words_in("lid lids tap spigot contents juice leachate liquid tape rim")
"""What a bin has."""
_TIMES, _FED = words_in("first second last next"), words_in("meal feed layer scraps lot draining")
_HOW = words_in("is has actually really already properly just so very well totally a bit quite all")
"""What stands before a state."""
_STATES = words_in(
    "full sealed done ready empty closed shut buried drained due leaking been got gone nearly "
    "almost "
    "starting getting going still never half stinking smelling looking bulging hissing"
)
"""What is said of a bin: "mudrooms full" is of the mudroom."""


def _unknown(norms: Sequence[str]) -> list[int]:
    """Where words stand that may be slips: long ones that no list begins a phrase with."""
    known = vocabulary().firsts
    return [
        i
        for i, norm in enumerate(norms)
        if norm not in known
        and norm not in _EVERYDAY
        and (len(norm) > _SHORT or (len(norm) == _SHORT and _VOWELS.isdisjoint(norm)))
    ]


_DEEDS = words_in("drained sealed buried opened closed emptied fed filled tapped")


def _mend_in_notes(norms: list[str], unknown: Sequence[int], bins: tuple[str, ...]) -> bool:
    """ "Drianed turtel 6 oz", "2 lb corn cobs valut": a name with its letters swapped or left out,
    beside the deed or at the end of a short note; whether there was one."""
    names, initials = _long(bins)
    found = False
    for i in unknown:
        norm = norms[i]
        if norm[0] not in initials or norm in _OWN_WORDS:
            continue
        beside = norms[i - 1 : i] and norms[i - 1] in _DEEDS
        ahead = i == 0 and not _DEEDS.isdisjoint(norms[1:4])
        ends = i == len(norms) - 1 and i < _NOTE and norms[0][:1].isdigit()
        name = slipped(norm, names) if beside or ahead or ends else None
        if name is not None and is_spelling_slip(norm, name):
            norms[i] = name
            found = True
    return found


_NOTE = 6
"""Words of a note that gives no more than an amount, a thing and a bin."""
_EVERYDAY = words_in(
    "hear bear wear tear fear dear near year gear rear glue clue flue shred shoe show nose hose "
    "doze pose feed heed weed room rest fine each both wall noon tall size hour late tank deck "
    "dock "
    "step while thank mine four nine till love forget bank lane boot coat march match most miss "
    "east space share soon train word skip case stairs sides site hill main"
)
"""Words that people write so often that they are slips of no name."""
_OWN_WORDS = words_in("heater diary sliver")
"""Words that are no slip of a name, though they differ from it by as little."""


@lru_cache(maxsize=1024)
def _long(bins: tuple[str, ...]) -> tuple[tuple[str, ...], frozenset[str]]:
    """The long names of one word without their article, and the letters that they begin with."""
    names = [plain(name).removeprefix("the ") for name in bins]
    long = tuple([name for name in names if len(name) > _SHORT and " " not in name])
    return long, frozenset([name[0] for name in long])


@lru_cache(maxsize=1024)
def _single(bins: tuple[str, ...]) -> tuple[tuple[str, ...], dict[str, tuple[str, ...]]]:
    """The names of one word, without their accents, and those that begin with each letter."""
    single = tuple([plain(name) for name in bins if name.isalpha()])
    initials = {name[0] for name in single}
    return single, {a: tuple([n for n in single if n[0] == a]) for a in initials}


_SHORT = 3
"""Letters of a word in which nothing is told to be a slip, unless it has no vowel ("grn")."""


@lru_cache(maxsize=1024)
def slipped(word: str, names: tuple[str, ...]) -> str | None:
    """The one-word name that `word` was meant to be, one slip away; None if not plain."""
    near = [
        name
        for name in names
        if len(name) >= 4
        and any(alike(word, name) for alike in (one_slip, sounds_as, is_shortened))
    ]
    return near[0] if len(near) == 1 else None


def sounds_as(word: str, name: str) -> bool:
    """Whether a word is a name with another ending of the same sound: "Gerty", "Gertie"."""
    return word != name and word[0] == name[0] and _sound(word) == _sound(name)


def _sound(word: str) -> str:
    ending = next((end for end in ("ie", "ey", "y", "i") if word.endswith(end)), "")
    return f"{word[: -len(ending)]}y" if ending else word


def is_shortened(word: str, name: str) -> bool:
    """Whether a word is a name with its vowels left out: "bsmt", "basement"."""
    if not _VOWELS.isdisjoint(word) or (word[0], word[-1]) != (name[0], name[-1]):
        return False
    letters = iter(name)
    return len(word) < len(name) and all(letter in letters for letter in word)


_VOWELS = frozenset("aeiou")


def is_scrambled(word: str, name: str) -> bool:
    """Whether a long word has a name's ends and letters, but for one left out or two swapped; or
    its sound, or its consonants."""
    ends = len(word) > _LONG and (word[0], word[-1]) == (name[0], name[-1])
    slip = ends and is_spelling_slip(word, name)
    return slip or sounds_as(word, name) or is_shortened(word, name)


_LONG = 5
"""Letters of a word up to which it may be another word as well as a slip."""
