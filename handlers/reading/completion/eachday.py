"""So much on each of the last days: "500 g every day since Monday except Friday", "last three days:
500 g, 700 g and 1 kg"."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta
from typing import NamedTuple

from handlers.reading.acts import Act, Drain, Layer, Unsure
from handlers.reading.calendar.days import Day
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import accounted
from handlers.reading.words.vocabulary import words_in

RULE = "so much on each of several days"
_Told = Layer | Drain
_DAY = timedelta(days=1)
_MOST = 7
"""Days of which each may be told in one breath."""
_CUES = words_in("every each daily a per days")
_EACH = Late(
    r"\b(?:every|each|a|per) (?:single )?(?:day|morning|evening|night|afternoon)\b(?! (?:if|when))|"
    r"\bdaily\b|\bdays (?:running|in a row|straight|on the trot)\b"
)
_THIS_WEEK = Late(r"\bthis week\b(?! ?'s)")
_LAST_WEEK = Late(r"\b(?:last week|all (?:of )?last week)\b(?! ?'s)")
_DAYS_BACK = Late(
    r"\b(?:last|past|these) (?P<count>\d|two|three|four|five|six|seven)(?: or so)? days\b|"
    r"\b(?P<row>\d|two|three|four|five|six|seven) days (?:running|in a row|straight|on the trot)\b"
)
_COUNTED = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7}
_TO = ("to", "till", "until", "through", "thru", "-", "–")
_SINCE = ("since", "from")


class _Days(NamedTuple):
    """The days told of, and whether their end is plain, too."""

    dates: Sequence[date]
    plain: bool


def on_each_day(acts: list[Act], message: Message) -> list[Act]:
    """The layers or drainings, each as often as days are told.

    Where the days run up to now, today may be meant or not: it is asked.
    """
    told = [act for act in acts if isinstance(act, Layer | Drain)]
    if not told or len(told) < len(acts) or len({act.on for act in told}) > 1:
        return acts
    if not message.has(_CUES) or not _says_no_more(message):
        return acts
    text = " ".join(message.norms)
    days = _days(text, message) if _EACH.search(text) else None
    if days is None:
        listed = _listed(told, text, message)
        return [Unsure(guess=listed, rules=(RULE,))] if listed else acts
    if not 1 < len(days.dates) <= _MOST:
        return acts
    each = [replace(act, on=on) for act in told for on in days.dates]
    return [*each] if days.plain else [Unsure(guess=tuple(each), rules=(RULE,))]


def _says_no_more(message: Message) -> bool:
    """Whether nothing but what went in or came out, where and when, is told: what happens every
    day may be something else ("2 kg in green, it smells every day")."""
    marks = (message.items, message.amounts, message.members, message.named, message.bins)
    spans = [span for some in (*marks, message.days) for span in some]
    free = _FREE | _LEAVING_OUT if message.days else _FREE
    return all(not isinstance(p, str) or p in free for p in accounted(message.norms, spans))


_FREE = words_in(
    "every each a per day days morning evening night afternoon single daily this last past these "
    "week running in a row straight on the trot or so of to till until through thru - – since from "
    "i we have has 've put been putting added adding drained draining tipped chucked fed went gone "
    "threw got into out off by for over and & , . : ; ! ok also too both all it the my our bin "
    "ml liquid juice scraps now again 's i'm one two three four five six seven"
)
_EXCEPT = words_in("except bar excluding excepting minus skipping without")
_LEAVING_OUT = _EXCEPT | words_in("but not apart other than save")
_NOT_ON = (
    ["but", "not"],
    [",", "not"],
    ["apart", "from"],
    ["but", "for"],
    ["other", "than"],
    ["save", "for"],
)


def _left_out(message: Message) -> list[Day]:
    """The days on which it was not so: "except Saturday", "but not on Monday or Tuesday"."""
    out: list[Day] = []
    for day in message.days:
        at = day.start - (message.norms[day.start - 1 : day.start] in (["on"], ["for"], ["the"]))
        before = message.norms[max(0, at - 2) : at]
        joined = out and message.norms[out[-1].end : at] in (["and"], ["or"], [","], ["&"])
        if joined or not _EXCEPT.isdisjoint(before[-1:]) or before in _NOT_ON:
            out.append(day)
    return out


def _days(text: str, message: Message) -> _Days | None:
    """The days of which each is told; None where no such stretch is."""
    left_out = _left_out(message)
    told = [day for day in message.days if day not in left_out]
    found = _stretch_told(text, message, told)
    if not left_out:
        return found
    if found is None and not told:  # "every day but not Friday"
        found = _Days(_back("seven", message.today), plain=False)
    without = {day.past.weekday() for day in left_out}
    dates = [on for on in found.dates if on.weekday() not in without] if found else []
    return found and found._replace(dates=dates)


def _stretch_told(text: str, message: Message, days: Sequence[Day]) -> _Days | None:
    today = message.today
    monday = today - today.weekday() * _DAY
    if _LAST_WEEK.search(text):
        return _Days(_stretch(monday - 7 * _DAY, monday - _DAY), plain=True)
    if _THIS_WEEK.search(text) and not days:
        return _Days(_stretch(monday, today), plain=False)
    if back := _DAYS_BACK.search(text):
        return _Days(_back(back["count"] or back["row"], today), plain=False)
    if len(days) == 2 and message.norms[days[0].end : days[1].start] in [[to] for to in _TO]:
        return _Days(_stretch(days[0].past, days[1].past), plain=True)
    if len(days) == 1 and _lead(days[0], message) in _SINCE:
        return _Days(_stretch(days[0].past, today), plain=False)
    return None


def _stretch(first: date, last: date) -> list[date]:
    return [first + k * _DAY for k in range((last - first).days + 1)]


def _back(count: str, today: date) -> list[date]:
    """So many days up to today."""
    number = _COUNTED.get(count) or int(count)
    return _stretch(today - (number - 1) * _DAY, today)


def _lead(day: Day, message: Message) -> str:
    return message.norms[day.start - 1] if day.start else ""


def _listed(told: Sequence[_Told], text: str, message: Message) -> tuple[_Told, ...]:
    """ "Last three days: 500 g, 700 g, 1 kg": as many amounts as days, the oldest first."""
    back = _DAYS_BACK.search(text)
    if back is None or message.days or len(told) > 1:
        return ()
    [act] = told
    quantity = "mass" if isinstance(act, Layer) else "volume"
    values = [a.value for a in message.measured() if a.quantity == quantity and a.factor]
    dates = _back(back["count"] or back["row"], message.today)
    if len(values) != len(dates) or len(values) < 2:
        return ()
    pairs = zip(values, dates, strict=True)
    if isinstance(act, Drain):
        return tuple(replace(act, volume_l=value, on=on) for value, on in pairs)
    return tuple(replace(act, mass_kg=value, volume_l=None, on=on) for value, on in pairs)
