"""What went in or came out on a further day, told behind a record: "forgot Wednesday, that was
3 lb", "the same on Friday", "and some on Friday", "1 kg the day before".

Every word is accounted for, so that no score is asked.
"""

from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise

from handlers.reading.acts import Drain, Layer
from handlers.reading.calendar.asidedays import day_before
from handlers.reading.calendar.days import Day
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.food.makeups import makeup
from handlers.reading.food.quantities import amount_sum
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_RULE = "a further day"
_FORGOT = words_in("forgot forgotten missed omitted")
_TOO = words_in("too also well")
_SAME, _SOME = words_in("same"), words_in("some")
CUES = _FORGOT | _TOO | _SAME | _SOME | words_in("left before and also plus & + oh")
"""Words without one of which no further day is told in few words."""
_MOST_WORDS = 16
_ONE_MORE = words_in("and also plus & + oh")
_BARE = _ONE_MORE | _TOO | words_in("sorry ah oops then but , . : ; ! - – — on the as")
_OF_DAY = _BARE | words_in(
    "another about around roughly just only of a an some that it was more in"
)
_OF_FORGOTTEN = (
    _OF_DAY
    | _FORGOT
    | words_in(
        "i we left out off one mine ours 's to say add mention log put write down tell you record "
        "my our were there had have 've into each both went"
    )
)
_OF_SAME = _BARE | _SAME | words_in("again amount lot please")
_OF_SOME = _BARE | _SOME | words_in("more in i we went there was put")


def further_days(message: Message) -> tuple[Layer | Drain, ...]:
    """A record like the last one for each day that is told besides."""
    last = spoken_of(message)
    if not isinstance(last, Layer | Drain) or last.bin is None or "?" in message.said:
        return ()
    days = message.days or _day_before(last, message)
    if not days or last.member not in (None, message.context.sender) or message.members:
        return ()
    if len(message.norms) > _MOST_WORDS or any(day.past > message.today for day in days):
        return ()
    names = {ref.name for ref in message.bins if ref.known}
    if len(names) > 1 or len(message.bins) > len(names):
        return ()
    told = _told(last, days, message)
    bin = names.pop() if names else last.bin
    return () if told is None else tuple(replace(told, bin=bin, on=day.past) for day in days)


def _day_before(last: Layer | Drain, message: Message) -> tuple[Day, ...]:
    """ "And the day before, 1 kg": before that of the last record."""
    if last.on is None or "before" not in message.said:
        return ()
    of_last = Day(0, 0, last.on, last.on)
    found = (day_before(message.norms, i, of_last) for i in range(len(message.norms)))
    return tuple([day for day in found if day is not None][:1])


def _told(last: Layer | Drain, days: Sequence[Day], message: Message) -> Layer | Drain | None:
    """What is told of each of the days; None where anything else is said."""
    amounts, said = message.measured(), message.said
    held = indexes(days, message.amounts, message.items, message.bins)
    rest = unheld(message.norms, held)
    if len(days) > 1 and (len(amounts) != 1 or not message.has(_EACH)):
        return None
    if not amounts and not message.items and days[0].past != last.on:
        like = "as" in said and "well" not in said  # "same as on Friday"
        if "same" in said and not like and _OF_SAME.issuperset(rest):
            return replace(last, rules=(_RULE,))
        if "some" in said and "and" in said and _OF_SOME.issuperset(rest):
            layer = Layer(materials={"mixed": 1.0}, rules=(_RULE,))
            return layer if isinstance(last, Layer) else Drain(rules=(_RULE,))
    if len(amounts) != 1:
        return None
    left_out = ("left", "out") in pairwise(message.norms)
    forgotten = left_out or message.has(_FORGOT | (_TOO if "there" in said else _NONE))
    more = message.norms[0] in _ONE_MORE or not message.days
    free = _OF_FORGOTTEN if forgotten else _OF_DAY if more else _NONE
    return _so_much(last, amounts, message) if free.issuperset(rest) else None


_NONE: frozenset[str] = frozenset()
_EACH = words_in("each both")


def _so_much(
    last: Layer | Drain, amounts: Sequence[Amount], message: Message
) -> Layer | Drain | None:
    mass, volume = amount_sum(amounts)
    if isinstance(last, Drain):
        return None if mass or message.items else Drain(volume_l=volume, rules=(_RULE,))
    made = makeup(message.items) if message.items else None
    return Layer(
        mass_kg=mass,
        volume_l=volume,
        materials={"mixed": 1.0} if made is None else made.shares,
        rich=None if made is None else made.rich,
        rules=(_RULE,),
    )
