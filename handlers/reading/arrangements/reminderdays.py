"""Days of the week on which the group wants no reminders: "no reminders at weekends", "only remind
us on Mondays and Thursdays".
"""

import re

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

WEEK = ("monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday")
_SEVERAL = {"weekday": frozenset(range(5)), "weekend": frozenset({5, 6})}
_ALL = frozenset(range(7))
_DAY = rf"(?:{'|'.join((*WEEK, *_SEVERAL))})"
CUES = words_in("reminders") | {f"{day}{s}" for day in (*WEEK, *_SEVERAL) for s in ("", "s")}
"""Words without one of which no such day is named."""

_AND = r"(?: (?:,|and|or|&|nor))+(?: on)?"
_EACH = rf"(?:(?:every |each ){_DAY}|(?:the )?{_DAY}s)"
_EACHES = rf"(?:{_EACH}(?:{_AND} {_EACH})*)"
"""Days that come again; one alone is that of the week to come."""
_DAYS = rf"(?:(?:every |each |the |a )?{_DAY}s?(?:{_AND} (?:the )?{_DAY}s?)*)"
_LEAD = (
    r"(?:(?:can|could|would|will) (?:you|we) |(?:please|bot|and|so|ok|,|actually|from now on|we "
    r"want|we would like|id like|lets have|can we have) )*"
)
_SENT = r"(?:reminders?|digests?|pings?|nudges?|nagging)"
_TELL = r"(?:remind|ping|nag|nudge)"
_TAIL = r"(?: (?:please|any ?more|from now on|thanks|then|at all|,|ever))*"
_NOT_ON = Late(
    rf"{_LEAD}(?:(?:no|stop|skip|dont send(?: us)?(?: any)?|not any) (?:the )?{_SENT}|"
    rf"(?:dont|do not|never) {_TELL}(?: us| me| everyone)?) (?:on|at|over|during) "
    rf"(?P<days>{_EACHES}){_TAIL}"
)
_ONLY_ON = Late(
    rf"{_LEAD}(?:(?:only|just) {_TELL} us|{_TELL} us only|(?:only|just) (?:send )?{_SENT}|"
    rf"(?:send |have )?{_SENT} only) (?:on|at|over) (?P<days>{_DAYS}){_TAIL}|"
    rf"{_LEAD}{_SENT} (?:on )?(?P<alone>{_DAYS}) only{_TAIL}"
)
_BRIEF = Late(
    rf"{_LEAD}(?P<way>only|just|not|never|(?:dont|do not) (?:send|post|say) (?:us )?anything|"
    rf"(?:only )?post only) (?:on|at|over) (?P<days>{_EACHES}){_TAIL}"
)
"""Said to us, or right behind our words."""
_EVERY_DAY = Late(
    rf"{_LEAD}(?:(?:{_TELL} us|(?:send )?{_SENT})(?: again)? (?:on )?(?:every day|all days|"
    rf"all week|each day|daily)(?: of the week)?(?: again)?|"
    rf"{_SENT} (?:at|on) {_DAYS} again){_TAIL}"
)
NAME = "reminder days"
"""What is set."""


def reminder_days(message: Message) -> tuple[str, str] | None:
    """The setting and its words, where a message says on which days there are to be none."""
    if CUES.isdisjoint(message.said) and "remind" not in message.said:
        return None
    text = plain_text(message)
    to_us = bool(message.bot) or message.context.after_bot or message.context.to_bot
    brief = _BRIEF.fullmatch(text) if to_us else None
    named = brief or _NOT_ON.fullmatch(text) or _ONLY_ON.fullmatch(text)
    found = named or _EVERY_DAY.fullmatch(text)
    return (NAME, text) if found else None


def quiet_days(words: str) -> frozenset[int] | None:
    """The days of the week (Monday: 0) without reminders that such words tell; None for others."""
    parted = _SIGN.sub(" , ", words.casefold().replace("don't", "dont").strip(" .!"))
    text = " ".join(parted.split())
    if _EVERY_DAY.fullmatch(text):
        return frozenset()
    if match := _NOT_ON.fullmatch(text):
        return _named(match["days"])
    if match := _ONLY_ON.fullmatch(text):
        return _ALL - _named(match["days"] or match["alone"])
    match = _BRIEF.fullmatch(text)
    if match is None:
        return None
    days = _named(match["days"])
    refused = match["way"].startswith(("not", "never", "dont", "do not"))
    return days if refused else _ALL - days


_SIGN = Late(r"[,:]")


def _named(words: str) -> frozenset[int]:
    days: set[int] = set()
    for day in re.findall(_DAY, words):
        days |= _SEVERAL[day] if day in _SEVERAL else {WEEK.index(day)}
    return frozenset(days)
