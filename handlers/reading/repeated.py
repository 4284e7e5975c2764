"""An amount with how often it was put in: "2 kg to the shed twice", "drained 200 ml, 3 times"."""

from collections.abc import Collection, Sequence

from handlers.reading.amounts import Amount
from handlers.reading.numbers import read_number
from handlers.reading.vocabulary import words_in
from handlers.reading.words import Word

CUES = words_in("twice thrice times")
"""Words without one of which nothing is told of how often."""
_OFTEN = {"twice": 2.0, "thrice": 3.0}
_TO_BIN = words_in("to in into from off out of the my our")
_STOPS = words_in(". , ; !") | {"\n"}
_ENDS = _STOPS | words_in("and today yesterday now")
_NEAR = 6
"""Words between an amount and its bin, at most."""


def repeated(
    words: Sequence[Word], norms: Sequence[str], amounts: Sequence[Amount], taken: Collection[int]
) -> list[Amount]:
    """The amounts, those with a bin and "twice" behind them as often as that."""
    return [
        a._replace(value=a.value * times, counted=True)
        if a.factor and not a.counted and (times := _times(words, norms, a, taken))
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
