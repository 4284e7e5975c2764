"""Whether a day dates something else than what was done: "since Monday", "as on a Sunday"."""

from collections.abc import Sequence
from datetime import date, timedelta

from handlers.reading.calendar.dates import Day
from handlers.reading.calendar.daystarts import STEPS
from handlers.reading.calendar.daywords import ASIDE, DAY_PARTS, DEEDS, MEETING
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word


def placed(day: Day, words: Sequence[Word], norms: Sequence[str], today: date) -> Day:
    """The day, set aside if the words round it say that it dates something else."""
    if norms[day.start] == "today":
        return day
    aside = _is_aside(day, words, norms) or _is_likened(norms, day) or _lasts(norms, day)
    if aside and _is_deeds(day, norms, today):
        aside = False
    return day._replace(aside=True) if aside else day


def _is_aside(day: Day, words: Sequence[Word], norms: Sequence[str]) -> bool:
    before = norms[day.start - 1] if day.start else ""
    after = norms[day.end] if day.end < len(norms) else ""
    beyond = words[day.end + 1] if day.end + 1 < len(words) else None
    deed = beyond is not None and (beyond.kind == "number" or beyond.norm in DEEDS)
    owns = after == "'s" and not deed  # "last night's draining" was last night
    meeting = not MEETING.isdisjoint(norms[max(0, day.start - 4) : day.start])
    return meeting or before in ASIDE or owns or norms[day.start].endswith("days")


def _is_deeds(day: Day, norms: Sequence[str], today: date) -> bool:
    """Whether a day said in one of the ways that set one aside is that of the deed."""
    before = norms[day.start - 1] if day.start else ""
    after = norms[day.end] if day.end < len(norms) else ""
    leads = norms[max(0, day.start - 2) : day.start]
    if before == "from":  # "From last evening: 2 kg", but "from last evening on"
        return after in (":", ",", "-", "—") and _opens(norms, day.start - 1)
    if before == "of":
        return leads[0] in DAY_PARTS or leads == ["as", "of"] or _leads_event(norms, day.start)
    if before == "at":
        return after == "'s"  # "at Tuesday's meeting I sealed it"
    if before == "by":
        return leads[0] in _CALLED_BY
    return before == "for" and day.past == day.future < today  # "log 2 kg for yesterday"


_CALLED_BY = words_in(
    "come came comes coming drop dropped drops swing swung stop stopped pop popped went passed"
)
"""Behind which "by Tuesday" is when somebody was there."""


def _opens(norms: Sequence[str], i: int) -> bool:
    """Whether word i begins the message or a sentence."""
    return i == 0 or norms[i - 1] in (".", "!", "\n", "?")


def _leads_event(norms: Sequence[str], start: int) -> bool:
    """ "At the fair of Saturday": whether "at" stands before what the day is of."""
    for i in range(start - 2, max(-1, start - 2 - _EVENT), -1):
        if norms[i] == "at":
            return True
        if norms[i] in (",", ".", ":", "from", "and"):
            return False
    return False


_EVENT = 5
"""Words in the name of what people met at, at most."""


def _is_likened(norms: Sequence[str], day: Day) -> bool:
    """ "Like a brewery on a Sunday", "like after Monday at my gran's": a day of no date."""
    leads = norms[max(0, day.start - 2) : day.start]
    if leads == ["on", "a"]:
        return True
    return leads[:1] == ["like"] and leads[-1] in _LIKE_WHEN


_LIKE_WHEN = words_in("after on every any some the before of")


def _lasts(norms: Sequence[str], day: Day) -> bool:
    """ "Not a drop in a week", "no smell in three days": how long it has been so, and no day."""
    if norms[day.start] != "in" or norms[day.end - 1] not in STEPS:
        return False
    for i in range(day.start - 1, max(-1, day.start - 1 - _SINCE), -1):
        if norms[i] in _NONE or norms[i] in _STOPS:
            return norms[i] in _NONE
    return False


_NONE = words_in("not no nothing none never hasnt havent didnt nowt nothin nobody without first")
_STOPS = words_in(". , ; ! ? : again ask remind call") | {"\n"}
_SINCE = 8
"""Words between what has not been and how long that is, at most."""


def day_before(norms: Sequence[str], i: int, told: Day) -> Day | None:
    """ "Sunday a pint, and the day before that two", "yesterday 1 kg, day before 600 g": the day
    before the one told last."""
    at = i + (norms[i] == "the")
    led = at > i or (i > 0 and norms[i - 1] in (",", ";", ".", "and", "&", "\n"))
    if not led or norms[at : at + 2] != ["day", "before"]:
        return None
    end = at + 2
    after = norms[end] if end < len(norms) else ""
    if after.isalpha() and after not in _BEHIND_BEFORE:
        return None
    past, future = told.past - timedelta(1), told.future - timedelta(1)
    return Day(i, end + (after in ("that", "this")), past, future)


_BEHIND_BEFORE = words_in("that this it i we was there another he she they a two three half")
