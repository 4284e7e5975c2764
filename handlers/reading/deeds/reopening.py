"""A bin that was sealed is open again: "unsealed it", "opened the shed bin again"."""

from collections.abc import Iterator

from handlers.reading.arranged import Reopened
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

CUES = (
    "unseal",
    "un-seal",
    "open",
    "in use",
    "in service",
    "not sealed",
    "isn't sealed",
    "isnt sealed",
)

_IT = r"(?:it|that|that one|them|(?:the |our )?qbin)"
_BEFORE = (
    r"(?:(?:i|we|have|had to|had|just|actually|oops|no|so|then|now|again|qmember|has|he|she) )*"
)
_WHY = r"(?: (?:cos|because|since|as|we|i|forgot|to|for) .*)?"
"""Why it was opened again: "we forgot the peelings"."""
_AFTER = (
    r"(?: (?:again|now|(?:from |as of |since )?qday|already|though|actually|today|sorry|after all|"
    rf"for (?:scraps|business|more|use)))*{_WHY}"
)
_REOPENED = Late(
    rf"^{_BEFORE}(?:unsealed|un sealed|unseal|reopened|re opened|reopen|broke the seal(?: of| on)?)"
    rf"(?: {_IT})?{_AFTER}$|"
    rf"^{_BEFORE}(?:opened|open)(?: {_IT})?(?: up)? (?:again|back up)(?: again)?{_AFTER}$|"
    rf"^{_IT} (?:is|'s|was|has been) (?:unsealed|open again|opened again|reopened|"
    rf"open for scraps again|back in (?:use|service)|in use again){_AFTER}$|"
    rf"^{_IT} (?:is not|'s not|isnt|was not|wasnt) sealed"
    r"(?: (?:after all|any ?more|actually))+$|"
    rf"^{_BEFORE}(?:sorry |wait |(?:{_IT} (?:is |'s )?))?not sealed"
    r"(?: (?:yet|it|after all|actually))+$"
)


def _is_ahead(phrase: Phrase) -> bool:
    """ "Open again from Monday": a shop, or what is to be."""
    today = phrase.message.today
    days = [d for d in phrase.message.days if phrase.start <= d.start < phrase.end]
    return any(d.future > today and phrase.message.norms[d.start - 1] == "from" for d in days)


def reopened(message: Message) -> Iterator[Found]:
    """Each sentence that says no more than that a bin is open again."""
    for phrase in phrases(message):
        if phrase.asked or _REOPENED.match(phrase.text) is None or _is_ahead(phrase):
            continue
        names = [
            ref.name
            for ref in message.bins
            if phrase.start <= ref.start < phrase.end and ref.name is not None
        ]
        bin = names[0] if names else None
        anew = "opened" in phrase.tokens
        yield Found(phrase.start, phrase.end, Reopened(bin=bin, anew=anew))
