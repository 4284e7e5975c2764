"""A reminder is called off, or left out once, by a word for it: "cancel the bucket one", "skip the
bran check next week", "not this Friday"."""

from datetime import date

from handlers.reading.arranged import CallOff, Skip
from handlers.reading.arrangements.pared import Pared
from handlers.reading.calendar.weeks import named_in
from handlers.reading.calendar.whens import When
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = (
    *("skip", "leave out", "miss out", "never mind", "nevermind", "not need", "dont need"),
    *("don't need", "don’t need", "forget", "stop the", "stop that", "remove the", "delete the"),
    *("drop the", "scrap the", "scratch the", "strike the", "ditch the"),
)

_LEADS = (
    r"(?:(?:hey|hi|hello|ok|so|also|and|then|please|can you|could you|would you|can we|lets|let us|"
    r"we can|we could|we will|actually|sorry|,|:|-|just) )*"
)
_THE = r"(?: (?:the|our|my|that|this|those|next|s|'s))*"
_TAIL = r"(?: (?:reminder|one|thing|please|then|only|just|this time|for once|on|this|,))*"
_SKIPPED = Late(
    rf"{_LEADS}(?:skip|leave out|miss out|cancel|call off|drop|no){_THE} "
    rf"(?P<rest>[^\s,]+(?: [^\s,]+){{0,5}}?){_TAIL}"
)
_SKIPPED_IT = Late(
    rf"{_LEADS}(?:\S+ ){{0,4}}?(?:, )?(?:(?:but )?(?:not|except)|"
    rf"(?:skip|leave out|cancel|drop) (?:it|that)|leave it out|skip){_TAIL}"
)
_DAYS_OWN = Late(rf"{_LEADS}(?:skip|leave out|cancel|call off|drop)(?: the)? (?:'s|s){_TAIL}")
"""Only the day is told: "cancel Saturday's"."""
_NEXT_TIME = Late(rf"{_LEADS}skip(?: |$)")
"""Said so, the next time is meant where no day is told."""
_BY_WORD = Late(
    rf"{_LEADS}(?:cancel|call off|delete|remove|drop|scrap|scratch|strike|strike out|take out|"
    rf"ditch|stop|forget)(?: about)?{_THE} "
    r"(?:(?P<rest>\S+(?: \S+){0,4}?) (?:one|thing)(?: please| any ?more| now)*|"
    r"(?:one|reminder|thing) (?:about|for|of|with|to) (?P<about>\S+(?: \S+){0,5}?)"
    r"(?: please| any ?more| now)*)"
)
_NO_MORE = Late(
    rf"{_LEADS}(?:(?:never ?mind|nevermind)(?: about)?|"
    rf"(?:we|i) (?:(?:do not|dont|no longer) )(?:any ?more )?need){_THE} "
    r"(?P<rest>\S+(?: \S+){0,4}?)(?: reminders?| one)?(?: please| any ?more| any longer| now)*"
)
_OF_TURNS = Late(r"(?:(?:my|our|a|the) )?(?:turn|go|week|shift|it|that|this|me|us)s?$")
"""What is left out is a turn, or not said."""


def called_by_word(text: Pared) -> CallOff | None:
    """A reminder that is called off by a word for it, if it is one that is set."""
    match = _BY_WORD.fullmatch(text.text) or _NO_MORE.fullmatch(text.text)
    if match is None:
        return None
    group = "about" if match.groupdict().get("about") else "rest"
    words = text.said(match, group)
    return (
        CallOff(words=words, if_set=True) if words and not _OF_TURNS.match(match[group]) else None
    )


def skipped(message: Message, start: int, end: int, when: When | None) -> Found | None:
    """What is left out once; behind a comma stands why, which is another matter."""
    if when is not None and when.rule is not None:
        return None
    first, last, said = _days(message, start, end, when)
    comma = next((i for i in range(start + 1, end) if message.norms[i] == ","), end)
    for stop in dict.fromkeys((end, comma)):
        text = Pared(message, start, stop, said)
        words = _left_out(text, told=first is not None)
        if words is not None:
            return Found(start, stop, Skip(words=words, first=first, last=last), aside=True)
    return None


def _left_out(text: Pared, *, told: bool) -> str | None:
    """What is left out, "" for what was just set; None if nothing is. A day may be `told`."""
    if not told and not _NEXT_TIME.match(text.text):
        return None
    if told and _DAYS_OWN.fullmatch(text.text):
        return ""
    if _SKIPPED_IT.fullmatch(text.text):
        return "" if text.message.context.on_reminder else None
    match = _SKIPPED.fullmatch(text.text)
    if match is None or _OF_TURNS.match(match["rest"]):
        return None
    return text.said(match, "rest") or None


def _days(
    message: Message, start: int, end: int, when: When | None
) -> tuple[date | None, date | None, frozenset[int]]:
    """From which day to which, and the words that say so."""
    named = named_in(" ".join(message.norms[start:end]), message.today)
    if named is not None and named.first is not None:
        said = range(start + named.start, start + named.end)
        led = [i for i in (said[0] - 1,) if i >= start and message.norms[i] in _LED]
        return named.first, named.last, frozenset((*said, *led))
    if when is None or when.first is None:
        return None, None, frozenset()
    return when.first, when.first, when.said


_LED = words_in("for on over at in")
