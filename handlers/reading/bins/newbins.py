"""Bins that the group has no name for yet and that are called bins: "bin 7", "the attic bin"."""

from collections.abc import Sequence

from handlers.reading.bins.bincalls import SMALL_LETTERS
from handlers.reading.bins.binforms import SPELLED
from handlers.reading.bins.longnames import before_owner, in_full, names_bin
from handlers.reading.bins.writtenbins import ARTICLES, called_by, written, written_oddly
from handlers.reading.words.binwords import (
    AFTER_NOT_OURS,
    BIN_WORDS,
    COLOURS,
    GENERIC,
    PLACE_NAMES,
    BinRef,
)
from handlers.reading.words.titles import end_of_titled, start_of_titled
from handlers.reading.words.vocabulary import verb_words, vocabulary, words_in
from handlers.reading.words.words import Word, joined

_BIN_PLURALS = words_in("bins buckets pails caddies tubs drums barrels kegs containers")
_OWN = words_in("mine ours")
_LEADS = BIN_WORDS | _BIN_PLURALS | _OWN | {"called", "named", "one"}
_NOT_OURS = words_in(
    "donation clothes clothing charity textile ballot book battery nappy recycling wheelie "
    "rubbish trash garbage dust waste wheely general council paper glass "
    "plastic dog bread toy storage laundry-basket shopping bath ice champagne mop ash sand "
    "bottle"
)


def said_bins(
    words: Sequence[Word],
    norms: Sequence[str],
    taken: frozenset[int],
    *,
    by_food: bool,
    by_place: bool,
) -> tuple[BinRef, ...]:
    """Bins meant by words that are no known name: "bin 7", "the attic bin", "the bucket".

    With `by_food` one may be called by what goes into it ("the coffee bin") or by a colour alone;
    with `by_place` by where it stands ("the bin under the sink").
    """
    out: list[BinRef] = []
    if _LEADS.isdisjoint(norms):
        return ()
    for i, norm in enumerate(norms):
        if norm not in _LEADS or i in taken:
            continue
        ref = None
        if norm in BIN_WORDS or norm in _BIN_PLURALS:
            if pair := _two_of_one_word(words, norms, i, taken):
                out += pair
                continue
            ref = written_oddly(words, norms, i) or _said(words, norms, i, taken)
            if ref is not None and ref.name is None and by_food:
                ref = _by_food(words, norms, i) or ref
            if ref is not None and ref.name is None and by_place:
                ref = _by_place(words, norms, i, taken) or ref
        elif norm == "one" or norm in _OWN:
            ref = _without_noun(words, norms, i) if by_food else None
        else:
            ref = called_by(words, norms, i + 1) or _called_short(words, norms, i + 1)
        if ref is not None:
            out.append(ref)
    return tuple(out)


def _without_noun(words: Sequence[Word], norms: Sequence[str], i: int) -> BinRef | None:
    """ "2 kg in mine", "in my one", "sealed the red one"."""
    if norms[i] in _OWN:
        return BinRef(i, i + 1, None, plain=True) if norms[i - 1 : i] in _IN else None
    if norms[i - 1 : i] == ["my"] and norms[i - 2 : i - 1] in _IN:
        return BinRef(i - 1, i + 1, None, plain=True)
    if not _is_told_apart(norms, i) or norms[i + 1 : i + 2] in _OF_TIMES:
        return None
    placed = norms[i - 1] in PLACE_NAMES
    return BinRef(i - 1, i + 1, words[i - 1].text, plain=True, place=placed)


_IN = (["in"], ["into"])
_OF_TIMES = tuple(
    [word] for word in ("day", "last", "more", "final", "morning", "evening", "night")
)
"""Behind "one" that is said of no bin: "in the yard one last time"."""


def _two_of_one_word(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> list[BinRef]:
    """ "The blue and purple bins": two names before one word for bin; a known one is found."""
    if i < 4 or norms[i - 2] not in ("and", "&") or not names_bin(words[i - 1], i - 1, taken):
        return []
    second = BinRef(i - 1, i + 1, words[i - 1].text, plain=True)
    if i - 3 in taken:
        return [second]
    if norms[i - 4] not in _DONE_TO | _BEGUN | {"the", "our"} or not names_bin(
        words[i - 3], i - 3, taken
    ):
        return []
    return [BinRef(i - 3, i - 2, words[i - 3].text, plain=True), second]


def _is_told_apart(norms: Sequence[str], i: int) -> bool:
    if i < 3 or norms[i - 2] not in ("the", "our", "my"):
        return False
    if norms[i - 1] in COLOURS | PLACE_NAMES:
        return norms[i - 3] in _DONE_TO
    named = norms[i - 1].isalpha() and (
        norms[i - 1] in _LOOKS or norms[i - 1] not in GENERIC | verb_words()
    )
    return norms[i - 3] in _BEGUN and named  # "opened the tall one, 20 L"


_BEGUN = words_in("opened started began launched")
_LOOKS = words_in("big small little wee large mini plastic metal lidded")
_DONE_TO = words_in(
    "to into in from off of sealed closed shut drained emptied buried fed filled topped opened "
    "unsealed"
)


def _by_food(words: Sequence[Word], norms: Sequence[str], i: int) -> BinRef | None:
    """ "The coffee bin": one that is called by what goes into it, and by nothing else."""
    food = norms[i - 1] if i else ""
    if i < 2 or food not in _FOODS or norms[i - 2] not in ("the", "our"):
        return None
    return BinRef(i - 1, i + 1, words[i - 1].text, plain=True)


def _by_place(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> BinRef | None:
    """ "The bin in the garage", "our caddy by the back door": where several are kept, it tells
    which."""
    at = i + 2 + (norms[i + 1 : i + 3] == ["next", "to"])
    if not i or at > len(norms) or norms[i - 1] not in ARTICLES or norms[at - 1] not in _STANDS:
        return None
    if i > 1 and norms[i - 2] in _MOVED:
        return None  # it is told where it went
    if norms[at : at + 1] not in (["the"], ["our"], ["my"]):
        return None
    end = at + 2 + (norms[at + 1 : at + 2] in _SIDES)
    if not taken.isdisjoint(range(i, end)) or end > len(norms):
        return None
    if norms[end - 1] not in PLACE_NAMES | _SPOTS:
        return None
    return BinRef(i, end, written(words, at + 1, end), plain=True, place=True)


_STANDS = words_in("in under underneath by behind beside on near outside to")
_MOVED = words_in(
    "buried bury dug emptied tipped moved put stood left found keep keeping kept have has had"
)
_SIDES = (["back"], ["front"], ["side"], ["kitchen"], ["garden"])
_SPOTS = words_in(
    "sink stairs staircase door window gate fence hedge bench wall counter worktop cupboard steps "
    "entrance stairwell carport conservatory boiler rack ramp tap tree pump house"
)
"""Where a bin may stand, beside rooms."""


_FOODS = words_in(
    "meat fish bone bones coffee tea fruit citrus lemon orange banana apple potato onion cheese "
    "dairy bread rice egg eggs leaf leaves garden flower flowers chicken chickens chook chooks hen "
    "hens duck ducks prawn prawns shrimp seafood salad pumpkin herb herbs berry berries"
)
"""What people call a bin by, where they keep several; "the veg bin" may be any of them."""


def _said(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> BinRef | None:
    after = norms[i + 1] if i + 1 < len(norms) else ""
    before = norms[i - 1] if i else ""
    if before == "hot" and norms[i] == "tub":
        return None
    if after in AFTER_NOT_OURS or before in _NOT_OURS or norms[i] == "bokashi":
        return None
    if norms[i] in _BIN_PLURALS:
        return BinRef(i, i + 1, None, plain=True)
    if before == "own":
        return _had(words, norms, i, taken)
    numbered = _numbered(words, norms, i, taken) or _with_number(words, norms, i, taken)
    return numbered or in_full(_worded(words, norms, i, taken), words, norms, taken)


def _worded(words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]) -> BinRef:
    """A bin that is called by the words before it, or that no word calls anything."""
    before = norms[i - 1] if i else ""
    start = i
    if before in vocabulary() and _is_new_name(norms, i):
        return BinRef(i - 1, i + 1, words[i - 1].text, plain=True)
    while start > max(0, i - 2) and names_bin(words[start - 1], start - 1, taken):
        start -= 1
    if start < i and norms[start] == "'s":
        start += 1
    if start < i:
        return BinRef(start, i + 1, written(words, start, i), plain=True)
    if before in _TELLING and i >= 2 and norms[i - 2] in ("the", "our", "my"):
        return BinRef(i - 1, i + 1, f"{words[i - 1].text} {words[i].text}", plain=True)
    owner = _owner(words, norms, i)
    return owner or BinRef(i, i + 1, None, plain=True)


def _had(words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]) -> BinRef:
    """ "Room 12 has its own pail", "Ben has his own bin": called by what or who has it."""
    end = i - 2
    while end > 0 and norms[end] in _HAVING:
        end -= 1
    end += 1
    if norms[i - 2 : i - 1] and norms[i - 2] in _WHOSE and "has" in norms[end : i - 2]:
        number = words[end - 1].kind == "number"
        start = end - 1 - number
        if start >= 0 and words[start].kind == "word" and norms[start] not in GENERIC | _NOBODY:
            name = written(words, start, end)
            named = start in taken or (words[start].text[:1].isupper() and not number)
            return BinRef(start, i + 1, f"{name}'s" if named else name, plain=True)
    return BinRef(i, i + 1, None, plain=True)


_HAVING = words_in("its his her their has got now also")
_WHOSE = words_in("its his her their")
_NOBODY = words_in("he she it they who everybody everyone each nobody somebody anyone")


def _with_number(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> BinRef | None:
    """ "The plot 7 bin", "the b12 bin": one that is called by a word and a number."""
    if flat := _with_letter(words, norms, i, taken):
        return flat
    if norms[i - 3 : i - 1] == ["no", "."] and norms[i - 4 : i - 3] and norms[i - 4] in ARTICLES:
        number = norms[i - 1] if words[i - 1].kind == "number" else ""
        short = number.isdecimal() and len(number) <= DIGITS
        return BinRef(i - 3, i + 1, f"{norms[i]} {number}", plain=True) if short else None
    if i < 2 or words[i - 1].kind != "number" or words[i - 2].kind != "word":
        return None
    number = norms[i - 1]
    if i - 1 in taken or i - 2 in taken or not number.isdecimal() or len(number) > DIGITS:
        return None
    if norms[i - 2] in ("the", "our"):
        return BinRef(i - 1, i + 1, f"{norms[i]} {number}", plain=True)  # "the 12 bin"
    if i < 3:
        return None
    if norms[i - 3] not in ARTICLES or (norms[i - 2] in GENERIC and len(norms[i - 2]) > 1):
        return None
    if norms[i - 2] in ("number", "no", "nr"):
        return BinRef(i - 2, i + 1, f"{norms[i]} {number}", plain=True)  # "the number 5 bin"
    return BinRef(i - 2, i + 1, written(words, i - 2, i), plain=True)


def _with_letter(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> BinRef | None:
    """ "The flat 3b bin", "the 3b bin": a number with a letter right behind it."""
    if i < 3 or not joined(words, i - 1) or words[i - 2].kind != "number":
        return None
    number, letter = words[i - 2 : i]
    if len(letter.text) != 1 or not letter.text.isalpha() or not number.text.isdecimal():
        return None
    at = i - 2
    if not taken.isdisjoint(range(at, i)) or len(number.text) > DIGITS:
        return None
    if norms[at - 1] not in ARTICLES and words[at - 1].kind == "word" and at >= 2:
        at -= 1
    led = norms[at - 1] in ARTICLES and (at not in taken)
    called = norms[at] not in GENERIC or words[at].kind == "number"
    return BinRef(at, i + 1, written(words, at, i), plain=True) if led and called else None


DIGITS = 3
"""Of a number that a bin is called by; a longer one is a year or an amount."""


def _is_new_name(norms: Sequence[str], i: int) -> bool:
    """ "Started the rosemary bin": a bin may be called by what it is for when it is opened."""
    if norms[i - 1] in GENERIC or norms[i - 1] in verb_words() or i < 2:
        return False
    lead = norms[max(0, i - 4) : i - 1]
    sized = not _LITRES.isdisjoint(norms[i + 1 : i + 8])
    begun = not _STARTING.isdisjoint(lead) or (sized and "opened" in lead)
    return lead[-1] in ("the", "our", "a") and begun


_STARTING = words_in("started began launched kicked")
_LITRES = words_in("l litre litres liter liters gallon gallons gal")


def _owner(words: Sequence[Word], norms: Sequence[str], i: int) -> BinRef | None:
    """ "Deb's bin", "the Hendersons' bin", "Dr. Bell's bin": one that is called so."""
    if before_owner(words, norms, i):
        named = names_bin(words[i - 2], i - 2, frozenset())
        return BinRef(i - 2, i + 1, written(words, i - 2, i), plain=True) if named else None
    if i < 2 or norms[i - 1] != "'s" or norms[i - 2] in ("it", "that", "he", "she", "who"):
        return None
    start = start_of_titled(words, i - 2)
    return BinRef(start, i + 1, f"{written(words, start, i - 1)}'s", plain=True)


def _called_short(words: Sequence[Word], norms: Sequence[str], start: int) -> BinRef | None:
    """ "Called St. Mary's", "named No. 12": a stop in the name, which ends no sentence."""
    if norms[start : start + 2] == ["no", "."] and start + 2 < len(words):
        end, number = start + 3, norms[start + 2]
        short = number.isdecimal() and len(number) <= DIGITS
        return BinRef(start, end, f"bin {number}", plain=True) if short else None
    titled = end_of_titled(words, norms, start)
    return BinRef(start, titled, written(words, start, titled), plain=True) if titled else None


_TELLING = words_in(
    "new old big small little wee second third other large back front top bottom spare"
)


def _numbered(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> BinRef | None:
    """ "bin 3", "bin no 3", "bin #3", "bin three"."""
    at = i + 1
    if norms[at : at + 1] and norms[at] in ("no", "number", "nr", "#"):
        at += 1
        if norms[at : at + 1] == ["."]:
            at += 1
    if at >= len(words) or at in taken:
        return None
    number = _SPELLED.get(norms[at], norms[at] if words[at].kind == "number" else "")
    if _is_letter(words, norms, at):
        number = words[at].text.upper()
    elif not number.isdecimal() or len(number) > 3:
        return None
    return BinRef(i, at + 1, f"{words[i].norm} {number}", plain=True)


def _is_letter(words: Sequence[Word], norms: Sequence[str], at: int) -> bool:
    """Whether "bin C" is called so; an article is no capital amid a sentence in small letters."""
    text = words[at].text
    if len(text) != 1 or not text.isalpha() or norms[at] == "i":
        return False
    if text.isupper():
        return text != "A" or any(word.text.islower() for word in words)
    return text in SMALL_LETTERS and not (at + 1 < len(words) and joined(words, at + 1))


_SPELLED = {word: str(number) for number, word in SPELLED.items()}
