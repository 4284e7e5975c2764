"""How a bin that the group has no name for may be written: in pictures, signs, quotation marks."""

from collections.abc import Sequence

from handlers.reading.words.binwords import COLOURS, GENERIC, BinRef
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word, joined


def written(words: Sequence[Word], start: int, end: int) -> str:
    """The words as they stand: parted where they are parted."""
    parts = [words[start].text]
    for i in range(start + 1, end):
        parts.append(words[i].text if joined(words, i) else f" {words[i].text}")
    return "".join(parts)


def called_by(words: Sequence[Word], norms: Sequence[str], start: int) -> BinRef | None:
    """The pictures, or the words in quotation marks, that a bin is called by."""
    end = _after_signs(words, norms, start)
    if end > start:
        return BinRef(start, end, written(words, start, end), plain=True)
    end = _closing_quote(norms, start)
    return BinRef(start, end + 1, written(words, start + 1, end), plain=True) if end else None


def _after_signs(words: Sequence[Word], norms: Sequence[str], start: int) -> int:
    """Index behind the pictures that stand from word `start` on without a space between them."""
    end = start
    while end < len(words) and norms[end] == "☺" and (end == start or joined(words, end)):
        end += 1
    return end


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


def written_oddly(words: Sequence[Word], norms: Sequence[str], i: int) -> BinRef | None:
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
        named = start > 0 and norms[start - 1] in ARTICLES
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
ARTICLES = words_in("the our my a an to into in from off")
_PARTING = words_in(", . ; : ( ) [ ] - — → & + = | '") | {"\n"}
