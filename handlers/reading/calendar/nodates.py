"""Dates that no calendar has: "31 February", "30/02/2026", "2026-02-31", "in -2 days"."""

import calendar
import re
from collections.abc import Sequence

from handlers.reading.calendar.dates import ISO, MONTHS_A_YEAR, NUMERIC
from handlers.reading.calendar.daystarts import STEPS
from handlers.reading.calendar.daywords import AMOUNT_BEHIND, ENDS, MONTHS
from handlers.reading.words.words import Word


def is_no_date(words: Sequence[Word]) -> bool:
    """Whether a day is said that no calendar has, by its date or by how far it is."""
    norms = [word.norm for word in words]
    dated = [i for i, n in enumerate(norms) if n in MONTHS or (len(n) >= _WHOLE and n[0].isdigit())]
    if dated and any(_is_no_date(norms, i) for i in dated):
        return True
    if STEPS.keys().isdisjoint(norms):
        return False
    counted = [i for i, n in enumerate(norms) if n in STEPS and i > 1 and norms[i - 1].isdecimal()]
    return any(_is_no_count(words, norms, i) for i in counted)


def _is_no_count(words: Sequence[Word], norms: Sequence[str], i: int) -> bool:
    """Whether the days before word i are below none, or more than a hundred years: "in -2 days"."""
    lead, number, behind = norms[i - 2], norms[i - 1], norms[i + 1 : i + 2]
    is_signed = lead == "-" and words[i - 2].end == words[i - 1].start
    if (is_signed or lead == "minus") and i > 2:
        return norms[i - 3] in ("in", "every")
    is_far = len(number) > _DIGITS or int(number) * STEPS[norms[i]] > _FARTHEST
    return is_far and (lead in ("in", "every") or behind in (["ago"], ["back"], ["earlier"]))


_DIGITS = 6
_FARTHEST = 36_525
"""Days that are still counted."""


_WHOLE = len("1/1/2026")
"""Signs in the shortest date that is written as one word with its year."""


def _is_no_date(norms: Sequence[str], i: int) -> bool:
    numeric = NUMERIC.fullmatch(norms[i])
    if numeric and len(numeric[4] or "") == 4:
        first, second, written = int(numeric[1]), int(numeric[3]), int(numeric[4])
        return not (_fits(first, second, written) or _fits(second, first, written))
    if ISO.fullmatch(norms[i]):
        year, numbered, number = norms[i].split("-")
        return not _fits(int(number), int(numbered), int(year))
    month = MONTHS.get(norms[i])
    behind = norms[i + 1 : i + 3]
    is_numbered = bool(behind) and behind[0].isdecimal() and len(behind[0]) <= 2
    if month and is_numbered and not AMOUNT_BEHIND.intersection(behind):
        later = [norm for norm in norms[i + 2 : i + 5] if norm not in ENDS | {","}]
        # "February 30", "February 29th, 2027"
        return not _fits(int(behind[0]), month, _year(later))
    at = i - 1
    while at > 0 and norms[at] in ENDS | {"of"}:
        at -= 1
    if month is None or at < 0 or (norms[i] in ("may", "march", "mar") and at == i - 1):
        return False
    said = norms[at]
    return said.isdecimal() and len(said) <= 2 and not _fits(int(said), month, _year(behind))


def _year(behind: Sequence[str]) -> int:
    """The year said first of these words, else a leap year."""
    return int(behind[0]) if behind and re.fullmatch(r"[12]\d{3}", behind[0]) else 2024


def _fits(number: int, month: int, year: int) -> bool:
    """Whether a month of that year has a day of that number."""
    return (
        1 <= month <= MONTHS_A_YEAR and 1 <= number <= calendar.monthrange(max(year, 1), month)[1]
    )
