"""Bins that the group has no name for yet and that are called bins: "bin 7", "the attic bin"."""

from collections.abc import Sequence

from handlers.reading.bincalls import SMALL_LETTERS
from handlers.reading.binforms import SPELLED
from handlers.reading.binwords import AFTER_NOT_OURS, BIN_WORDS, COLOURS, PLACE_NAMES, BinRef
from handlers.reading.vocabulary import verb_words, vocabulary, words_in
from handlers.reading.words import Word

_BIN_PLURALS = words_in("bins buckets pails caddies tubs drums barrels kegs containers")
_LEADS = BIN_WORDS | _BIN_PLURALS | {"called", "named", "one"}
_NOT_OURS = words_in(
    "donation clothes clothing charity textile ballot book battery nappy recycling wheelie "
    "rubbish trash garbage dust waste wheely general council paper glass "
    "plastic dog bread toy storage laundry-basket shopping bath ice champagne mop ash sand "
    "bottle"
)
# Words before "bin" that describe it and are no name.
GENERIC = words_in(
    "the a an my our your his her their this that these those same other another next second "
    "first third last new old big small wee little full empty whole each every both all any "
    "including incl some one two which what whose of in into to from off on for at and or but with "
    "is was "
    "are put it i we you shared communal spare current fermenting ready sealed starter scrap "
    "scraps food bokashi compost kitchen-scrap litre liter l gallon gal plastic metal lidded "
    "clean fresh good bad up out down over no not left per extra large mini nearly almost now "
    "then so started opened sealed drained emptied buried mixed opening starting got get have "
    "has had need about how wrong right actual open closed stinky smelly poor dear damn "
    "bloody stupid blasted single correct gonna go went can could would will should may might "
    "do does did more most kg g lb lbs oz ml litres liters kilos there here when if because "
    "cos as than that's like its 's set start feed fed fill filled check checked close closed "
    "seal drain bury dump dumped toss chucked threw called named calling entire original just "
    "also only again already your still today yesterday tonight tomorrow un una el la los mi "
    "nuestro de del der die das den mein unser le les mon ma une und y e o ang sa yung ng mga"
)


def said_bins(
    words: Sequence[Word], norms: Sequence[str], taken: frozenset[int], *, by_food: bool
) -> tuple[BinRef, ...]:
    """Bins meant by words that are no known name: "bin 7", "the attic bin", "the bucket".

    With `by_food` one may be called by what goes into it ("the coffee bin") or by a colour alone.
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
            ref = _written_oddly(words, norms, i) or _said(words, norms, i, taken)
            if ref is not None and ref.name is None and by_food:
                ref = _by_food(words, norms, i) or ref
        elif norm == "one":
            if by_food and _is_told_apart(norms, i):
                ref = BinRef(i - 1, i + 1, words[i - 1].text, plain=True)  # "sealed the red one"
        else:
            end = _after_signs(words, norms, i + 1)
            if end > i + 1:
                ref = BinRef(i + 1, end, written(words, i + 1, end), plain=True)
            elif closing := _closing_quote(norms, i + 1):
                ref = BinRef(i + 1, closing + 1, written(words, i + 2, closing), plain=True)
        if ref is not None:
            out.append(ref)
    return tuple(out)


def _two_of_one_word(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> list[BinRef]:
    """ "The blue and purple bins": two names before one word for bin; a known one is found."""
    if i < 4 or norms[i - 2] not in ("and", "&") or not _names(words[i - 1], i - 1, taken):
        return []
    second = BinRef(i - 1, i + 1, words[i - 1].text, plain=True)
    if i - 3 in taken:
        return [second]
    if norms[i - 4] not in ("the", "our") or not _names(words[i - 3], i - 3, taken):
        return []
    return [BinRef(i - 3, i - 2, words[i - 3].text, plain=True), second]


def _closing_quote(norms: Sequence[str], start: int) -> int:
    """Index of the mark that closes a name in quotation marks at word `start`; 0 if none does."""
    if norms[start : start + 1] != ['"']:
        return 0
    end = start + 2
    while end < min(len(norms), start + _QUOTED) and norms[end] != '"':
        end += 1
    return end if norms[end : end + 1] == ['"'] else 0


_QUOTED = 10
"""Words between quotation marks that are still a name."""


def _is_told_apart(norms: Sequence[str], i: int) -> bool:
    if i < 3 or norms[i - 2] not in ("the", "our", "my"):
        return False
    if norms[i - 1] in COLOURS:
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


def written(words: Sequence[Word], start: int, end: int) -> str:
    """The words as they stand: parted where they are parted."""
    parts = [words[start].text]
    for i in range(start + 1, end):
        parts.append(words[i].text if joined(words, i) else f" {words[i].text}")
    return "".join(parts)


def _after_signs(words: Sequence[Word], norms: Sequence[str], start: int) -> int:
    """Index behind the pictures that stand from word `start` on without a space between them."""
    end = start
    while end < len(words) and norms[end] == "☺" and (end == start or joined(words, end)):
        end += 1
    return end


def joined(words: Sequence[Word], i: int) -> bool:
    """Whether word i stands right behind the one before it, without a space."""
    return words[i - 1].end == words[i].start


def _written_oddly(words: Sequence[Word], norms: Sequence[str], i: int) -> BinRef | None:
    """ "The 🦄 bin", "the !!! bin", 'the "big one" bin', "the kitchen.corner bin"."""
    if i < 2:
        return None
    if norms[i - 1] == '"':
        opening = next((k for k in range(i - 3, max(-1, i - 8), -1) if norms[k] == '"'), None)
        if opening is None:
            return None
        return BinRef(opening, i + 1, written(words, opening + 1, i - 1), plain=True)
    start = i - 1
    if words[start].kind == "sign" and norms[start] not in _PARTING:
        while joined(words, start) and words[start - 1].kind == "sign":
            start -= 1
        named = start > 0 and norms[start - 1] in _ARTICLES
        return BinRef(start, i + 1, written(words, start, i), plain=True) if named else None
    stop = i - 2  # an address was parted behind its stop: see storage/words.py
    if (
        i >= 4
        and norms[stop] == "."
        and joined(words, stop)
        and norms[i - 4] in ("the", "our", "my")
    ):
        ending = words[i - 1]
        short = ending.kind == "word" and ending.text.islower() and len(ending.text) <= _ENDING
        if short and words[i - 3].kind == "word" and ending.norm not in GENERIC | COLOURS:
            return BinRef(stop - 1, i + 1, written(words, stop - 1, i), plain=True)
    return None


_ENDING = 3
"""Letters of the last part of an address; a longer word begins a sentence of its own."""
_ARTICLES = words_in("the our my a an to into in from off")
_PARTING = words_in(", . ; : ( ) [ ] - — → & + = | '") | {"\n"}


def _by_food(words: Sequence[Word], norms: Sequence[str], i: int) -> BinRef | None:
    """ "The coffee bin": one that is called by what goes into it, and by nothing else."""
    food = norms[i - 1] if i else ""
    if i < 2 or food not in _FOODS or norms[i - 2] not in ("the", "our"):
        return None
    return BinRef(i - 1, i + 1, words[i - 1].text, plain=True)


_FOODS = words_in(
    "meat fish bone bones coffee tea fruit citrus lemon orange banana apple potato onion cheese "
    "dairy bread rice egg eggs leaf leaves garden flower flowers"
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
    numbered = _numbered(words, norms, i, taken) or _with_number(words, norms, i, taken)
    if numbered is not None:
        return numbered
    start = i
    if before in vocabulary() and _is_new_name(norms, i):
        return BinRef(i - 1, i + 1, words[i - 1].text, plain=True)
    while start > max(0, i - 2) and _names(words[start - 1], start - 1, taken):
        start -= 1
    if start < i and norms[start] == "'s":
        start += 1
    if start < i:
        return BinRef(start, i + 1, written(words, start, i), plain=True)
    if before in _TELLING and i >= 2 and norms[i - 2] in ("the", "our", "my"):
        return BinRef(i - 1, i + 1, f"{words[i - 1].text} {words[i].text}", plain=True)
    owner = _owner(words, norms, i)
    return owner or BinRef(i, i + 1, None, plain=True)


def _with_number(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> BinRef | None:
    """ "The plot 7 bin", "the b12 bin": one that is called by a word and a number."""
    if i < 2 or words[i - 1].kind != "number" or words[i - 2].kind != "word":
        return None
    number = norms[i - 1]
    if i - 1 in taken or i - 2 in taken or not number.isdecimal() or len(number) > DIGITS:
        return None
    if norms[i - 2] in ("the", "our"):
        return BinRef(i - 1, i + 1, f"{norms[i]} {number}", plain=True)  # "the 12 bin"
    if i < 3:
        return None
    if norms[i - 3] not in _ARTICLES or (norms[i - 2] in GENERIC and len(norms[i - 2]) > 1):
        return None
    if norms[i - 2] in ("number", "no", "nr"):
        return BinRef(i - 2, i + 1, f"{norms[i]} {number}", plain=True)  # "the number 5 bin"
    return BinRef(i - 2, i + 1, written(words, i - 2, i), plain=True)


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
    """ "Deb's bin" is called so."""
    if i < 2 or norms[i - 1] != "'s" or norms[i - 2] in ("it", "that", "he", "she", "who"):
        return None
    return BinRef(i - 2, i + 1, f"{words[i - 2].text}'s", plain=True)


def _names(word: Word, index: int, taken: frozenset[int]) -> bool:
    if index in taken or word.kind != "word" or word.norm in GENERIC:
        return False
    return word.norm not in vocabulary() or word.norm in PLACE_NAMES | COLOURS


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
