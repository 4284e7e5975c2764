"""What the bot reminded of is done: of which bin, of all that is due, and how much came out."""

from collections.abc import Sequence
from datetime import date

from handlers.reading.acts import Act, Done, Drain
from handlers.reading.food.quantities import amount_sum
from handlers.reading.message import Message
from handlers.reading.plaintext import word_count
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in("done did sorted")
_ALL = words_in("all both everything each")
_FEW, _LONGEST = 5, 10
"""Words of a message that "all" is said in of what is due, and of one that tells how much."""
_WITH_MUCH = Late(
    r"(?:(?:ok|okay|yes|yep|yeah|right|all|just|already|now|that 's|thats|it 's|its|,) )*"
    r"(?:done|did it|done it|did that|sorted)(?: (?:it|now|just now|,|-|[.:]))* "
    r"(?:(?:about|around|roughly|some|only|just|maybe|nearly|with|got|~) )*qmuch"
    r"(?: (?:again|this time|out|out of it|came out|off it|only|all in all|or so|ish|[,.!]))*"
)


def finished(message: Message, rule: str) -> Done:
    """That it is done, with what the message says of it."""
    names = [ref.name for ref in message.bins if ref.name is not None]
    bin = names[0] if names else None
    if not message.context.in_room:
        return Done(bin=bin, rules=(rule,))
    brief = word_count(message) <= _FEW
    return Done(
        bin=bin,
        volume_l=amount_sum(message.measured())[1],
        on=_day(message),
        each=True if message.has(_ALL) and brief and not names else None,
        rules=(rule,),
    )


def is_not_yet(message: Message) -> bool:
    """ "Doing it now", "almost done": it is not yet done."""
    return message.has(_NOT_YET)


_NOT_YET = words_in("doing almost nearly halfway")


def _day(message: Message) -> date | None:
    """The one day of it that is said: "did that yesterday actually"."""
    over = [day.past for day in message.days if day.past < message.today and not day.aside]
    return over[0] if len(over) == len(message.days) == 1 else None


def finished_with_much(message: Message, rule: str) -> Done | None:
    """ "Done, about 150 ml again": no more than that, and how much it was."""
    measured = message.measured() if message.context.in_room else []
    if len(measured) != 1 or measured[0].quantity != "volume" or word_count(message) > _LONGEST:
        return None
    norms = message.norms.copy()
    norms[measured[0].start : measured[0].end] = ["qmuch"]
    found = _WITH_MUCH.fullmatch(" ".join(norms).strip(" .!"))
    return finished(message, rule) if found else None


def without_drained(acts: Sequence[Act]) -> list[Act]:
    """The acts; what came out as the reminder was seen to is of the bin that it was about."""
    much = {act.volume_l for act in acts if isinstance(act, Done)} - {None}
    return [
        act
        for act in acts
        if not (isinstance(act, Drain) and act.bin is None and act.volume_l in much)
    ]
