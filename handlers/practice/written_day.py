"""A calendar day as it is written: 2026-03-20, 20260320, 20 March 2026, March 20, 2026."""

import re
from datetime import date

from handlers.practice.figure import Refused, quoted

_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
_YEAR_FIRST = re.compile(r"(\d{4})([-/.])(\d{1,2})\2(\d{1,2})(?:[t ]\d\d:.*)?")
_BARE = re.compile(r"(\d{4})()(\d\d)(\d\d)")
_DAY_FIRST = re.compile(r"(\d{1,2})(?:st|nd|rd|th)?\s+([a-z]{3,9})\.?,?\s+(\d{4})")
_MONTH_FIRST = re.compile(r"([a-z]{3,9})\.?\s+(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})")
_FIGURES = re.compile(r"(\d{1,2})([-/.])(\d{1,2})\2(\d{4})")


def day(text: str) -> date:
    """The day; Refused if it is none, or could be read two ways (03/04/2026)."""
    words = re.sub(r"^[a-z]+day,?\s+", "", " ".join(text.lower().split()))
    try:
        year, month, number = _parts(words, text)
        return date(year, month, number)
    except ValueError as wrong:
        if isinstance(wrong, Refused):
            raise
        raise Refused(
            f"{quoted(text)} is not a day I can read: write it like 2026-03-20."
        ) from None


def _parts(words: str, text: str) -> tuple[int, int, int]:
    if not words.isascii():
        raise ValueError
    if found := _YEAR_FIRST.fullmatch(words) or _BARE.fullmatch(words):
        return int(found[1]), int(found[3]), int(found[4])
    if found := _DAY_FIRST.fullmatch(words):
        return int(found[3]), _month(found[2]), int(found[1])
    if found := _MONTH_FIRST.fullmatch(words):
        return int(found[3]), _month(found[1]), int(found[2])
    if found := _FIGURES.fullmatch(words):
        return int(found[4]), *_month_and_day(int(found[1]), int(found[3]), found[2], text)
    raise ValueError


def _month(word: str) -> int:
    return _MONTHS.index(word[:3]) + 1


def _month_and_day(first: int, second: int, sign: str, text: str) -> tuple[int, int]:
    # Points are written day first everywhere; strokes and dashes are not.
    if sign == "." or first > 12 or first == second:
        return second, first
    if second > 12:
        return first, second
    raise Refused(f"{quoted(text)} could be read two ways: write it like 2026-03-20.")
