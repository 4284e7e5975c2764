"""A day put right in the same breath, and a day of something else that is the deed's too."""

from datetime import date
from itertools import pairwise

from handlers.reading.days import Day
from handlers.reading.message import Message
from handlers.reading.once import once
from handlers.reading.vocabulary import words_in


def put_right(message: Message, said: Day) -> Day | None:
    """ "Was it Tuesday I put them in, no it was Monday": the day told last, behind "no"."""
    behind = [d for d in message.days if d.start >= said.end] if "no" in message.norms else []
    if not behind:
        return None
    lead = message.norms[said.end : behind[0].start]
    if "no" not in lead:
        return None
    at = len(lead) - 1 - lead[::-1].index("no")
    return behind[0] if _IT_WAS.issuperset(lead[at + 1 :]) else None


_IT_WAS = words_in(
    "it was that on , wait actually sorry i mean tell a lie 's is twas ' rather more"
)


@once
def day_named_again(message: Message) -> date | None:
    """ "The Sunday bread, added that same day", "the juice of yesterday, forgot to write it": the
    one day over that dates something else, where it is said to be that of the deed too."""
    if not message.days or not (message.has(_SAME) or message.has(_FORGOT)):
        return None
    past = {d.past for d in message.days}
    if len(past) != 1 or max(past) >= message.today:
        return None
    norms = message.norms
    same = any(
        b == "day" and (a == "same" or (a == "that" and norms[i - 1] == "on"))
        for i, (a, b) in enumerate(pairwise(norms))
    )
    of = norms[message.days[0].start - 1 : message.days[0].start] == ["of"]
    late = of and any(a in _FORGOT and b == "to" for a, b in pairwise(norms))
    return past.pop() if same or late else None


_SAME = words_in("that same")
_FORGOT = words_in("forgot forgotten forget")
