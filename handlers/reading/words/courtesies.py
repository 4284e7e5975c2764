"""Greetings, fillers and thanks round a message, which change nothing of what it means."""

from collections.abc import Iterator, Sequence
from functools import cache

from handlers.reading.words.vocabulary import lines_of, words_in
from handlers.reading.words.words import Word

_LONGEST = 6
"""Words in the longest phrase of the list."""
_ROUNDS = 6
"""How many phrases in a row are passed over."""


@cache
def _phrases(side: str) -> frozenset[tuple[str, ...]]:
    return frozenset(_read(side))


@cache
def _outermost(side: str) -> frozenset[str]:
    """The words with which phrases begin before a message, or end behind it."""
    return frozenset(phrase[0 if side == "lead" else -1] for phrase in _phrases(side))


def _read(side: str) -> Iterator[tuple[str, ...]]:
    for line in lines_of("courtesies.txt"):
        where, _, phrases = line.partition("|")
        if where.strip() == side:
            yield from (tuple(phrase.split()) for phrase in phrases.split(",") if phrase.strip())


def without_courtesies(words: list[Word]) -> list[Word]:
    """The words without greetings before and thanks behind; all of them if that is all."""
    start, end = _lead(words), _tail(words)
    if start == 0 and end == len(words):
        return words
    core = words[start:end]
    if not any(word.kind != "sign" for word in core):
        return words
    return core + [word for word in words[end:] if word.norm == "?"]


def _lead(words: Sequence[Word]) -> int:
    start = 0
    for _ in range(_ROUNDS):
        at = start
        while at < len(words) and at > 0 and words[at].norm in (",", ".", "!", ":", "-", "—", "☺"):
            at += 1
        if at >= len(words) or words[at].norm not in _outermost("lead"):
            return at if start else 0
        length = _match([w.norm for w in words[at : at + _LONGEST]], "lead", front=True)
        if not length or _goes_on(words, at + length):
            return at if start else 0
        start = at + length
    return start


def _goes_on(words: Sequence[Word], at: int) -> bool:
    """ "Ok to add bones?", "also 1 kg", "well done", "no problem with it": no filler before
    the word behind it.
    """
    behind = words[at] if at < len(words) else None
    if behind is None:
        return False
    if behind.norm == "done":
        return words[at - 1].norm == "well"
    if words[at - 1].norm in _EASE and behind.norm in _OF_IT:
        return True
    return behind.norm == "to" or (behind.kind == "number" and words[at - 1].norm in _ADDING)


_ADDING = frozenset({"also", "and"})
_EASE = words_in("worries problem problems bother rush hurry stress drama trouble")
_OF_IT = words_in(
    "with if about at for there in on getting doing what whatever when as unless until"
)


def _tail(words: Sequence[Word]) -> int:
    end = len(words)
    for _ in range(_ROUNDS):
        at = end
        while at > 0 and words[at - 1].kind == "sign":
            at -= 1
        if at == 0 or words[at - 1].norm not in _outermost("tail"):
            return end
        length = _match([w.norm for w in words[max(0, at - _LONGEST) : at]], "tail", front=False)
        if not length:
            return end
        end = at - length
    return end


def _match(norms: Sequence[str], side: str, *, front: bool) -> int:
    """Length of the longest phrase at the front or the back of the words; 0 if there is none."""
    known = _phrases(side)
    for length in range(len(norms), 0, -1):
        if tuple(norms[:length] if front else norms[-length:]) in known:
            return length
    return 0
