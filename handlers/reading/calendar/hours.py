"""Hours of the day as people say them: "at 6", "half past six", "18:00", "in the evening"."""

from collections.abc import Sequence
from datetime import time
from typing import NamedTuple

from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.numberwords import NUMBER_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.words import Word


class Hour(NamedTuple):
    """An hour said by words[start:end]."""

    start: int
    end: int
    at: time
    vague: bool = False
    """A part of the day, and no hour by the clock."""
    guessed: bool = False
    """Written as "5:00", with nothing that says of which half of the day."""


PARTS = {
    "morning": time(9), "am": time(9), "noon": time(12), "midday": time(12), "lunch": time(12),
    "lunchtime": time(12), "afternoon": time(15), "arvo": time(15), "pm": time(15),
    "evening": time(18), "tonight": time(19), "night": time(19), "nite": time(19),
}  # fmt: skip
"""When a part of the day is meant by itself."""

_LATE = frozenset({"afternoon", "arvo", "pm", "evening", "tonight", "night", "nite"})
_EARLY = frozenset({"morning", "am"})
_CLOCK = Late(r"([01]?\d|2[0-3])[:.]([0-5]\d)")
_FOUR = Late(r"([01]\d|2[0-3])([0-5]\d)")
_FIRST_MORNING_HOUR = 7
"""A bare hour from here to noon is one of the morning; a smaller one is one of the afternoon."""


def hour_at(words: list[Word], norms: list[str], i: int) -> Hour | None:
    """The hour that begins at word i, if one does; `norms` are the words' plain forms."""
    norm = norms[i]
    if norm in ("noon", "midday") or (norm == "at" and norms[i + 1 : i + 2] in (["noon"],)):
        return Hour(i, i + 1 + (norm == "at"), time(12))
    if norm == "in" and norms[i + 1 : i + 2] == ["the"] and norms[i + 2 : i + 3]:
        part = PARTS.get(norms[i + 2])
        is_part = part and norms[i + 2] not in ("am", "pm")
        return Hour(i, i + 3, part, vague=True) if part and is_part else None
    if norm in ("tonight",) or (norm == "this" and norms[i + 1 : i + 2] == ["evening"]):
        part = PARTS["evening" if norm == "this" else "tonight"]
        return Hour(i, i + 1 + (norm == "this"), part, vague=True)
    leads = norm in ("at", "around", "about", "@")
    at = i + 1 if leads else i
    found = hour_behind(words, norms, at) if _is_halved(norms, at) and leads else None
    found = found or _clock(words, norms, at, bare=leads)
    return found._replace(start=i) if found else None


def hour_behind(words: Sequence[Word], norms: Sequence[str], i: int) -> Hour | None:
    """The hour at word i, behind a word that leads to nothing else: "6", "half six", "midnight"."""
    if norms[i] == "midnight":
        return Hour(i, i + 1, time(0))
    halved = _is_halved(norms, i)
    found = _clock(list(words), list(norms), i + halved, bare=True)
    return found._replace(start=i, at=found.at.replace(minute=30)) if found and halved else found


def _is_halved(norms: Sequence[str], i: int) -> bool:
    """ "Half six", half an hour past it; what goes on with "a" is half of something."""
    return norms[i : i + 1] == ["half"] and norms[i + 1 : i + 2] not in ([], ["past"], ["a"])


def _clock(words: list[Word], norms: list[str], i: int, *, bare: bool) -> Hour | None:
    """ "6", "6:30", "6 pm", "half past six"; without its "at" only what can be nothing else."""
    past, at = _minutes_past(norms, i)
    if at >= len(words):
        return None
    written = _CLOCK.fullmatch(norms[at]) or (_FOUR.fullmatch(norms[at]) if bare else None)
    marked = norms[at + 1 : at + 2] in (["am"], ["pm"])
    if written and past is None and (bare or marked or ":" in norms[at]):
        hour, minute, end = int(written[1]), int(written[2]), at + 1
        told = _told(norms, i, end, hour, minute, is_exact=len(written[1]) == 2 or hour > 12)
        return told._replace(guessed=told.end == end and told.at.hour != hour)
    number = read_number(words, at) if norms[at].isdecimal() or norms[at] in NUMBER_WORDS else None
    if number is None or number.value != int(number.value) or not 0 <= number.value <= 23:
        return None
    end, hour = number.end, int(number.value)
    if norms[end : end + 1] == ["oclock"]:
        end, bare = end + 1, True
    marked = norms[end : end + 1] in (["am"], ["pm"]) or past is not None
    if not (bare or marked) or norms[end : end + 1] in (["%"], ["/"]):
        return None
    minute = past or 0
    if minute < 0:
        hour, minute = hour - 1, 60 + minute
    return _told(norms, i, end, hour, minute, is_exact=hour > 12)


def _minutes_past(norms: list[str], i: int) -> tuple[int | None, int]:
    """The minutes of "half past" and "quarter to", and where the hour stands."""
    for words, minutes in (
        (["half", "past"], 30), (["quarter", "past"], 15), (["quarter", "to"], -15),
        (["a", "quarter", "past"], 15), (["a", "quarter", "to"], -15),
    ):  # fmt: skip
        if norms[i : i + len(words)] == words:
            return minutes, i + len(words)
    return None, i


def _told(
    norms: list[str], start: int, end: int, hour: int, minute: int, *, is_exact: bool
) -> Hour:
    """The hour by the half of the day that is said near it, or the one people mean."""
    half = ""
    if norms[end : end + 1] and norms[end] in ("am", "pm"):
        half, end = norms[end], end + 1
    elif norms[end : end + 2] in (["in", "the"], ["at", "night"]):
        part = norms[end + 1] if norms[end] == "at" else (norms[end + 2 : end + 3] or [""])[0]
        if part in _LATE | _EARLY:
            half, end = part, end + (2 if norms[end] == "at" else 3)
    elif norms[end : end + 2] in (["tomorrow", "morning"], ["this", "morning"]):
        half = "morning"
    elif start and norms[start - 1 - (norms[start - 1] == "at")] in _LATE | _EARLY:
        half = norms[start - 1 - (norms[start - 1] == "at")]
    if half in _LATE and hour < 12:
        hour += 12
    elif half in _EARLY and hour == 12:
        hour = 0
    elif not half and not is_exact and 0 < hour < _FIRST_MORNING_HOUR:
        hour += 12
    return Hour(start, end, time(hour, minute))
