"""Several of the sender's last records put right or struck out together: "those were both
yesterday", "Tom's and mine should both be in the shed", "scratch both".

Every word is accounted for, so that no score is asked.
"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Amend, Retract
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.message import Message
from handlers.reading.words.spans import Span, indexes, unheld
from handlers.reading.words.vocabulary import words_in

_RULES = (BY_FORM, "several of the last records")
_COUNTS = {"both": 2, "two": 2, "three": 3, "four": 4}
_ALL = words_in("all everything")
_THEY = words_in("those these they")
CUES = _ALL | _THEY | _COUNTS.keys()
"""Words without one of which one record alone is put right."""
_MOST_WORDS = 14
_LEADS = words_in("no nope wait sorry oops actually oh ah and but , . ! : - ok please bot")
_CALLED = (
    _ALL
    | _THEY
    | _COUNTS.keys()
    | words_in("that it them of the last my our records entries layers lots ones lot mine")
)
_BEING = words_in("was were should went")
_OF_RIGHT = (
    _LEADS
    | _CALLED
    | _BEING
    | words_in("be have been gone go in into to on from by 's put down as meant really")
)
_STRIKING = words_in("scratch strike delete remove erase undo cancel scrap")
_OF_STRIKING = _LEADS | _CALLED | _STRIKING | words_in("out off again")


def several_right(message: Message) -> tuple[Amend | Retract, ...]:
    """What is right of several records: their day, their bin or who did it; or that none was."""
    norms = message.norms
    if len(norms) > _MOST_WORDS or "?" in message.said or not _are_own(message):
        return ()
    if message.amounts or message.signs:
        return ()
    if any(norms[item.start] not in _STRIKING for item in message.items):
        return ()
    said = next((i for i, norm in enumerate(norms) if norm not in _LEADS), 0)
    if norms[said] in _STRIKING:
        count = _count(message)
        whole = count and _OF_STRIKING.issuperset(norms)
        return (Retract(several=count, rules=_RULES),) if whole else ()
    return _right(message)


def _are_own(message: Message) -> bool:
    """Whether the sender told one of the records that may be meant."""
    context = message.context
    told = [record for record in (context.last, context.earlier) if record is not None]
    return any(getattr(one, "member", None) in (None, context.sender) for one in told)


def _right(message: Message) -> tuple[Amend, ...]:
    bins = [ref for ref in message.bins if ref.known and ref.name]
    spans: list[Span] = [*message.days, *bins, *message.members]
    called = [i for i, norm in enumerate(message.norms) if norm in CUES]
    behind = [span for span in spans if called and span.start > called[-1]]
    rest = unheld(message.norms, indexes(spans))
    if len(behind) != 1 or len(message.bins) > len(bins) or not _OF_RIGHT.issuperset(rest):
        return ()
    count = _count(message)
    told = message.has(_BEING) or (bool(message.days) and message.context.after_bot)
    if not count and ("it" in message.said or not told):
        return ()  # "all in the shed", "it was all in the shed": of the last one alone
    right = _of_thing(behind[0], message)
    if right is None or len(spans) == 1:
        return (replace(right, several=count, rules=_RULES),) if right else ()
    whose = [ref.name for ref in message.members if ref not in behind]
    if len(whose) < len(spans) - 1 or len(whose) + ("mine" in message.said) != count:
        return ()
    return _of_each(right, whose, message)


def _of_thing(span: Span, message: Message) -> Amend | None:
    """The day, the bin or the doer that is right."""
    for day in message.days:
        if day is span:
            return Amend(on=day.past) if day.past <= message.today else None
    for ref in message.bins:
        if ref is span:
            return Amend(bin=ref.name)
    return next(Amend(member=m.name) for m in message.members if m is span)


def _of_each(right: Amend, whose: Sequence[str], message: Message) -> tuple[Amend, ...]:
    """ "Tom's and mine should both be in the shed": of each one's last record."""
    own = (replace(right, rules=_RULES),) if "mine" in message.said else ()
    return (*own, *(replace(right, whose=name, rules=_RULES) for name in whose))


def _count(message: Message) -> int:
    """So many records as are told; 0 where all are meant."""
    return next((_COUNTS[norm] for norm in message.norms if norm in _COUNTS), 0)
