"""An amount told with how often it was put in, "2 kg to the shed twice", or "less 10 %"."""

from collections.abc import Collection, Sequence

from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.proportions import PERCENT
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word

_OFF = words_in("less minus")
CUES = _OFF | words_in("twice thrice times")
"""Words without one of which an amount is what it says."""
_OFTEN = {"twice": 2.0, "thrice": 3.0}
_TO_BIN = words_in("to in into from off out of the my our")
_STOPS = words_in(". , ; !") | {"\n"}
_ENDS = _STOPS | words_in("and today yesterday now")
_NEAR = 6
"""Words between an amount and its bin, at most."""


def repeated(
    words: Sequence[Word], norms: Sequence[str], amounts: Sequence[Amount], taken: Collection[int]
) -> list[Amount]:
    """The amounts, those with "twice" behind their bin as often, those with "less 10 %" less."""
    return [
        a._replace(value=a.value * times, counted=True)
        if a.factor
        and not a.counted
        and (times := _times(words, norms, a, taken) or _left(words, norms, a.end))
        else a
        for a in amounts
    ]


def _times(
    words: Sequence[Word], norms: Sequence[str], amount: Amount, taken: Collection[int]
) -> float:
    """How often it is told behind an amount and its bin; 0 if it is not."""
    near = range(amount.end, min(len(norms), amount.end + _NEAR))
    at = next((i for i in near if i in taken or norms[i] in _STOPS), len(norms))
    while at < len(norms) and (at in taken or norms[at] in _TO_BIN):
        at += 1
    if at >= len(norms) or at - 1 not in taken:
        return 0.0
    often, end = _OFTEN.get(norms[at], 0.0), at + 1
    if not often and (number := read_number(words, at)) and norms[number.end :][:1] == ["times"]:
        often, end = number.value, number.end + 1
    return often if end == len(norms) or norms[end] in _ENDS else 0.0


def _left(words: Sequence[Word], norms: Sequence[str], end: int) -> float:
    """What "less 10 %" behind a word leaves of 1; 0 where nothing is taken off so."""
    number = read_number(words, end + 1) if norms[end : end + 1] and norms[end] in _OFF else None
    if number is None or norms[number.end : number.end + 1] == []:
        return 0.0
    return max(0.0, 1 - number.value / 100) if norms[number.end] in PERCENT else 0.0
