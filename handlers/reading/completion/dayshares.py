"""Shares of one amount told with their days: "2 L off the shed, half yesterday, the rest today"."""

from collections.abc import Sequence
from datetime import date
from math import isclose

from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in


def shares_of_days(message: Message) -> list[tuple[float, date]]:
    """The share of each day, which add up to the whole; empty if no shares are told so."""
    days = [d for d in message.days if not d.aside and d.past <= message.today]
    if len(days) < 2 or not message.has(_CUES) or len(message.measured()) != 1:
        return []
    told: list[tuple[float | None, date]] = []
    at = message.measured()[0].end
    for day in days:
        if day.start >= at:
            told.append((_share_before(message.norms, message, at, day.start), day.past))
            at = day.end
    return _whole(told)


def _whole(told: Sequence[tuple[float | None, date]]) -> list[tuple[float, date]]:
    """The shares, where each day has its own and they make up the whole; "the rest" is 0 yet."""
    if len({day for _, day in told}) < 2 or any(share is None for share, _ in told):
        return []
    shares = [share or 0.0 for share, _ in told]
    rest = 1 - sum(shares)
    if shares.count(0.0) == 1 and 0 < rest < 1:
        shares = [share or rest for share in shares]
    if not isclose(sum(shares), 1.0, abs_tol=0.01):
        return []
    return [(share, day) for share, (_, day) in zip(shares, told, strict=True)]


def _share_before(norms: Sequence[str], message: Message, start: int, end: int) -> float | None:
    """The share told right before a day; 0 for the rest, None if there is none."""
    at = end
    while at > start and norms[at - 1] in _BETWEEN:
        at -= 1
    for i in range(max(start, at - 2), at):
        if norms[i] in _REST:
            return 0.0
        number = read_number(message.words, i)
        if number is not None and number.fraction and number.end == at and 0 < number.value < 1:
            return number.value
    return None


_REST = words_in("rest remainder remaining")
_BETWEEN = words_in("of it that them on was the went in just and this came out")
_CUES = _REST | words_in("half third quarter thirds quarters fifth 1/2 1/3 2/3 1/4 3/4")
