"""Who keeps which bin, as somebody tells it: "Bram keeps the green bin", "green is mine and red is
Bram's". A bin that another has by the book is offered.
"""

import re
from collections.abc import Iterator

from handlers.reading.arrangements.communal import Handing, Taking
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

CUES = ("keep", "look", "mind", "tak", "mine", "'s", "’s", "s'", "belong", "with ")
_DOES = (
    r"(?:keeps?|looks? after|minds?|takes? care of|(?:is|am) (?:keeping|minding|looking after|"
    r"taking care of|in charge of|the keeper of))"
)
_BIN = r"(?:the )?qbin"
_ONE = Late(
    rf"(?:(?:(?P<who>qmember|i) {_DOES} {_BIN})|"
    rf"(?:{_BIN} (?:is|belongs to|is kept by|is with) (?P<whose>qmember(?: 's)?|mine|me))|"
    rf"(?:the )?keeper of {_BIN} is (?P<keeper>qmember|me))(?= |$)"
)
_JOINT = Late(r" (?:(?:and|but|while) )*")
_END = Late(r"(?: (?:now|please|from now on|by the way|of course))*")
_MOST = 2
"""Sentences of a message that tells it; a longer one only mentions it."""


def who_keeps(message: Message) -> Iterator[Found]:
    """Each bin with who is told to keep it, where that is all that is said and not of oneself."""
    said = phrases(message)
    if not message.members or len(said) > _MOST:
        return
    for phrase in said:
        told = [] if phrase.asked else list(_told(phrase))
        if any(isinstance(found.plan, Handing) for found in told):
            yield from told


def _told(phrase: Phrase) -> Iterator[Found]:
    """What each part of the sentence tells; nothing unless all of it is told so."""
    found, at = list[Found](), 0
    while (match := _ONE.match(phrase.text[at:])) is not None:
        first = phrase.text[:at].count(" ")
        last = first + match[0].count(" ")
        one = _plan(phrase, match, phrase.spans[first][0], phrase.spans[last][1])
        if one is None:
            return
        found.append(one)
        at += match.end()
        joint = _JOINT.match(phrase.text[at:])
        if joint is None or _END.fullmatch(phrase.text[at:]):
            break
        at += joint.end()
    if found and _END.fullmatch(phrase.text[at:]):
        yield from found


def _plan(phrase: Phrase, match: re.Match[str], start: int, end: int) -> Found | None:
    message = phrase.message
    bins = [b for b in message.bins if start <= b.start < end and b.known and b.name is not None]
    members = [m for m in message.members if start <= m.start < end]
    if len(bins) != 1 or bins[0].name is None:
        return None
    told = match["who"] or match["whose"] or match["keeper"]
    if not told.startswith("qmember") or (members and is_sender(message, members[0].name)):
        return Found(start, end, Taking(bin=bins[0].name))
    return Found(start, end, Handing(bin=bins[0].name, to=members[0].name)) if members else None
