"""Bins called by no more than a letter, a number or a picture: "1 kg to B", "shells, 40"."""

from collections import Counter
from collections.abc import Iterator, Sequence
from functools import lru_cache

from handlers.reading.bins.binforms import SPELLED, by_their_number, is_pictured
from handlers.reading.words.binwords import BIN_WORDS, INTO, BinRef
from handlers.reading.words.vocabulary import verb_words, words_in
from handlers.reading.words.words import Word, cleaned, words_of


@lru_cache(maxsize=1024)
def are_called_briefly(bins: tuple[str, ...]) -> bool:
    """Whether any of the bins may be called so."""
    return bool(_lettered(bins) or _numbered(bins) or _initials(bins))


@lru_cache(maxsize=1024)
def _lettered(bins: tuple[str, ...]) -> dict[str, str]:
    """The bins that are told apart by a letter ("bin B"), by that letter; none that two have."""
    named = [(name.split(), name) for name in bins]
    named = [(parts, name) for parts, name in named if len(parts) == 2 and _is_letter(parts[1])]
    leads = Counter(parts[0].lower() for parts, _ in named)
    found = [
        (parts[1].upper(), name)
        for parts, name in named
        if parts[0].lower() in BIN_WORDS or leads[parts[0].lower()] > 1
    ]
    count = Counter(letter for letter, _ in found)
    taken = {name.upper() for name in bins}
    return {letter: name for letter, name in found if count[letter] == 1 and letter not in taken}


def _is_letter(text: str) -> bool:
    return len(text) == 1 and text.isalpha()


def by_letter(
    words: Sequence[Word], norms: Sequence[str], bins: tuple[str, ...]
) -> Iterator[BinRef]:
    """ "Added 1 kg to B": a capital alone, behind what is done to a bin or goes into it."""
    lettered = _lettered(bins)
    for i in range(len(words)) if lettered else ():
        text = words[i].text
        name = lettered.get(text.upper() if i and text in SMALL_LETTERS else text)
        if name is None:
            continue
        before = norms[i - 1] if i else "."
        after = norms[i + 1] if i + 1 < len(norms) else ""
        led = before in INTO | _ASKED_OF or before in verb_words()
        ends = not after or not after[0].isalpha() or after in _BEHIND_LETTER
        listed = before == "," and i + 1 == len(words)  # "1 kg of peel, A"
        heads = before in ".!,;\n" and after == ":" and _is_amount(words, norms, i + 2)
        if (
            (led and ends)
            or (heads and text.isupper())
            or (listed and text.isupper())
            or (before in ".!,;\n" and after in _DONE_BY_BIN)
        ):
            yield BinRef(i, i + 1, name, True, True)


def _is_amount(words: Sequence[Word], norms: Sequence[str], i: int) -> bool:
    """Whether an amount may begin at word i: "B: about 400 g of rice"."""
    i += norms[i : i + 1] in _ROUGHLY
    return i < len(words) and (words[i].kind == "number" or norms[i] in ("half", "a"))


_ROUGHLY = (["about"], ["approx"], ["roughly"], ["around"], ["another"])
SMALL_LETTERS = frozenset("bcdef")
"""By which bins are told apart without a capital: they stand for no word and no unit of amounts."""
_ASKED_OF = words_in("is was for about can could may should shall must will")
_DONE_BY_BIN = words_in("'s got has had is was took smells stinks hisses needs")


@lru_cache(maxsize=1024)
def _numbered(bins: tuple[str, ...]) -> dict[str, str]:
    """The bins that are meant by their number alone: no other is called just so."""
    found = by_their_number(bins)
    return {number: name for number, name in found.items() if number not in bins}


def by_number(
    words: Sequence[Word], norms: Sequence[str], bins: tuple[str, ...]
) -> Iterator[BinRef]:
    """ "Mussel shells, 40": the number alone, as a breath of its own or as the one that got it;
    "sealed one and two": in words too behind a deed.
    """
    numbered = _numbered(bins)
    end = -1
    for i, norm in enumerate(norms) if numbered else ():
        name = numbered.get(norm) or numbered.get(_SPELLED.get(norm, ""))
        if name is None:
            continue
        after = norms[i + 1] if i + 1 < len(norms) else ""
        ends = after in _BREATHS or after in _BEHIND_LETTER
        alone = _leads_number(norms, i) and (after in _BREATHS or after in _BEHIND_NUMBER)
        within = norms[i - 1 : i] in _WITHIN and ends
        if norms[i - 1 : i] == ["from"] and _DRAWN.isdisjoint(norms):
            continue  # "we are here from four": a time of day
        if not ((norm in numbered and alone) or within or _is_done_to(norms, i, end, numbered)):
            continue
        end = i + 1
        yield BinRef(i, end, name, True, True)


def by_further_number(
    words: Sequence[Word], norms: Sequence[str], bins: tuple[str, ...]
) -> Iterator[BinRef]:
    """ "4: 500 g, 5: 300 g" in a group that numbers its bins: others that it has not had as yet."""
    numbered = by_their_number(bins) if ":" in norms else {}
    kinds = {name.split()[0].lower() for name in numbered.values()}
    if len(kinds) != 1:
        return
    for i in range(len(words) - 2):
        leads = i == 0 or (norms[i - 1] in _ROW and norms[i - 2 : i - 1] != [":"])
        told = norms[i + 1] == ":" and words[i + 1].end < words[i + 2].start  # "at 4:30"
        short = words[i].kind == "number" and norms[i].isdecimal() and len(norms[i]) <= _DIGITS
        if leads and told and short and norms[i] not in numbered:
            yield BinRef(i, i + 1, f"{min(kinds)} {norms[i]}", plain=True)


_ROW = frozenset({",", ";", ".", "\n", "and", "&"})
_DIGITS = 2
_SPELLED = {word: str(number) for number, word in SPELLED.items()}


def _is_done_to(norms: Sequence[str], i: int, end: int, numbered: dict[str, str]) -> bool:
    """ "Sealed one", "buried 1 and 2 under the fig": behind a deed, or in a row that began so."""
    before, after, beyond = norms[i - 1 : i], norms[i + 1 : i + 2], norms[i + 2 : i + 3]
    led = before in _DONE if i else False
    led = led or (before in _JOINTS and end == i - 1)
    another = {*beyond, *(_SPELLED.get(norm, "") for norm in beyond)}
    goes_on = after in _JOINTS and not numbered.keys().isdisjoint(another)
    ends = not after or after[0] in _BREATHS | _BEHIND_LETTER | _PLACES
    return led and (goes_on or ends)


_DONE = [["sealed"], ["drained"], ["buried"], ["emptied"], ["bins"], ["buckets"], ["pails"]]
_JOINTS = [["and"], ["&"], [","], ["n"]]
_PLACES = words_in("in under by near behind beside beneath")


@lru_cache(maxsize=1024)
def _initials(bins: tuple[str, ...]) -> dict[tuple[str, str], str]:
    """The bins of a word and a number ("level 3"), by its first letter and the number."""
    named = [(name.lower().split(), name) for name in bins]
    named = [(x, name) for x, name in named if len(x) == 2 and x[0].isalpha() and x[1].isdecimal()]
    count = Counter((x[0][0], x[1]) for x, _ in named)
    return {key: name for x, name in named if len(x[0]) > 1 and count[key := (x[0][0], x[1])] == 1}


def by_initial(
    words: Sequence[Word], norms: Sequence[str], bins: tuple[str, ...]
) -> Iterator[BinRef]:
    """ "500 g peel l3": the first letter of a name and its number, written as one."""
    short = _initials(bins)
    letters = {letter for letter, _ in short if letter in norms} if short else ()
    for i in [i for i in range(1, len(words)) if norms[i - 1] in letters] if letters else ():
        name = short.get((norms[i - 1], norms[i]))
        if name is None or words[i - 1].end != words[i].start:
            continue
        glued = i > 1 and words[i - 2].end == words[i - 1].start and words[i - 2].kind != "sign"
        ends = i + 1 == len(words) or words[i + 1].start > words[i].end
        if not glued and (ends or words[i + 1].kind == "sign"):
            yield BinRef(i - 1, i + 1, name, True, True)


def _leads_number(norms: Sequence[str], i: int) -> bool:
    """Whether a breath begins at word i, and no list of numbers goes on there."""
    if i < 2:
        return i == 0
    below = norms[i - 1] == "-" and norms[i - 2] in BIN_WORDS  # "bin -1"
    return norms[i - 1] in _BREATHS and not norms[i - 2].isdecimal() and not below


_BREATHS = frozenset({"", ",", ".", "-", ":", "!", "(", ")", "—", "\n"})
_BEHIND_NUMBER = words_in("has had got gets 's tapped drained sealed buried gave is was went")
_WITHIN = (["in"], ["into"], ["off"], ["from"], ["fed"])
_DRAWN = words_in(
    "drained drain drew drawn tapped tap took ml litre litres liquid juice leachate tea"
)
_BEHIND_LETTER = words_in(
    "on at since by before after and with today yesterday tonight now just this last please is was "
    "be ready due full mostly"
)


def pictured(
    words: Sequence[Word], norms: Sequence[str], bins: tuple[str, ...]
) -> tuple[BinRef, ...]:
    """Bins whose names are nothing but pictures, which have one plain form between them all."""
    out: list[BinRef] = []
    for name in bins:
        if not is_pictured(name):
            continue
        drawn = [word.text for word in words_of(cleaned(name))]
        for i in range(len(words) - len(drawn) + 1):
            end = i + len(drawn)
            called = norms[end : end + 1] and norms[end] in BIN_WORDS
            if "☺" in (*norms[max(0, i - 1) : i], *norms[end : end + 1]):
                continue  # part of a longer row of pictures
            leads = end < len(words) and words[end].kind == "number" and _leads_number(norms, i)
            behind = i > 0 and norms[i - 1] in INTO | {"the", "called", "named"}
            if [word.text for word in words[i:end]] == drawn and (called or behind or leads):
                out.append(BinRef(i, end + bool(called), name, known=True, plain=True))
    return tuple(out)
