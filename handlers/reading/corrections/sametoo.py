"""A deed told of one bin more, or once more: "green too, by the shed", "same in Rosie", "ok, sealed
again".
"""

from dataclasses import replace

from handlers.practice.signs import MOULD_OF_COLOUR
from handlers.reading.acts import Bury, Drain, Layer, Observe, Seal, Unsure
from handlers.reading.corrections.fewwords import TIMES
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.corrections.likewise import LED, LIKEWISE
from handlers.reading.corrections.numberright import number_beside
from handlers.reading.deeds.buried import bury_from
from handlers.reading.grouping import groups_of
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message, read_message
from handlers.reading.phrases import named_text
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_RULE = "the same, of another bin"
_TOO = Late(
    r"^(?:(?:and|oh|yes|yep|,) )*(?:the )?qbin(?: bin)? (?:too|as well|also|likewise)"
    r"(?: ,)?(?P<where>(?: (?:by|under|near|behind|beside|in|next|at|along|below)\b.{1,60})?)$"
)
_AGAIN = Late(
    r"^(?:(?:ok|okay|right|now|and|there|all|done|,|[.]) )*(?:its |it is |i |ive )?"
    r"(?:(?:re-?sealed|re-?shut)(?: it)?(?: again| now)?|"
    r"(?:sealed|shut|closed)(?: it)?(?: up)? again(?: now)?)$"
)


_SAME = Late(
    r"^(?:(?:and|oh|yes|yep|then|,) )*(?:(?:the )?same|ditto)(?: again| amount)?"
    r"(?: (?:for|from|with|by) me)?"
    r"(?: (?:in|into|for|with|to|from|on|of|at))? (?:the )?qbin(?: bin)?"
    r"(?: (?:too|as well|also|again|please|now))*$"
)
_CUES = words_in("same ditto too also likewise well")
_Done = Bury | Drain | Layer | Observe | Seal


def done_too(message: Message) -> _Done | Unsure | None:
    """What was done to the bin that the talk is on, done to another."""
    if not message.has(_CUES) or len(message.bins) != 1:
        return None
    if message.amounts or message.days or message.items:
        return None
    [ref] = message.bins
    last = spoken_of(message)
    if not isinstance(last, _Done) or not ref.known or ref.name is None or "?" in message.said:
        return None
    if ref.name == last.bin and not (isinstance(last, Layer) and "again" in message.said):
        return None
    if _SAME.search(plain_text(message)) is not None:
        return _as_much(last, ref.name, message)
    return _also(last, ref.name, message)


def _as_much(last: _Done, bin: str | None, message: Message) -> _Done | Unsure | None:
    """ "Same in green": as much of the same, asked first where it was another's."""
    if isinstance(last, Layer) and not (last.mass_kg or last.volume_l or last.materials):
        return None
    same = replace(last, bin=bin, member=None, rules=(_RULE,))
    if last.member in (None, message.context.sender):
        return same
    return Unsure(guess=(replace(same, on=message.today),), rules=(_RULE,))


def _also(last: _Done, bin: str | None, message: Message) -> _Done | Unsure | None:
    """ "Green too, by the shed": the deed or the sign, without what was measured; asked first where
    a mould may be of the colour that a bin is called by."""
    words = (bin or "").casefold().split()
    match = _TOO.search(plain_text(message))
    if match is None or isinstance(last, Layer) or message.context.last is None:
        return None
    if isinstance(last, Bury):
        place = last.place
        if match["where"]:
            told = read_message(f"buried {bin}{match['where']}", message.context)
            place = bury_from(groups_of(told), 0, _RULE).place
        return replace(last, bin=bin, member=None, place=place, rules=(_RULE,))
    if match["where"]:
        return None
    if isinstance(last, Drain):
        return Drain(bin=bin, on=last.on, rules=(_RULE,))
    if isinstance(last, Observe):
        if not last.signs or last.celsius is not None or last.ph is not None:
            return None
        seen = Observe(signs=last.signs, bin=bin, on=last.on, rules=(_RULE,))
        coloured = any(
            "mould" in sign for sign in last.signs
        ) and not MOULD_OF_COLOUR.keys().isdisjoint(words)
        return Unsure(guess=(seen,), rules=(_RULE,)) if coloured else seen
    return Seal(bin=bin, on=last.on, rules=(_RULE,))


def drained_again(message: Message) -> tuple[Drain, ...]:
    """ "And Friday", "also on the 5th, 50 ml", behind a draining: the same bin, on other days."""
    last = spoken_of(message)
    if not isinstance(last, Drain) or not message.days or message.bins or message.items:
        return ()
    volumes = [a for a in message.measured() if a.quantity == "volume"]
    held = indexes(message.days, volumes)
    rest = [norm for i, norm in enumerate(message.norms) if i not in held]
    if len(message.measured()) > len(volumes) or len(volumes) > 1 or not _AGAIN_ON.issuperset(rest):
        return ()
    days = [day.past for day in message.days]
    rest += message.body.lower().split()[:1]  # where "also" is no courtesy
    if len(days) == 1 and not volumes:
        return ()  # "and Friday" may put a correction's day right, too: see `and_so`
    if _FURTHER.isdisjoint(rest) or max(days) > message.today or last.on in days:
        return ()
    much = volumes[0].value if volumes else None
    return tuple(Drain(bin=last.bin, volume_l=much, on=on, rules=(_RULE,)) for on in days)


_FURTHER = words_in("and also again plus too & well")
_AGAIN_ON = _FURTHER | words_in("on , . then as about only just drained it we i ! got")


_DRAINED_AGAIN = Late(
    r"^(?:(?:and|ok|i|we|have|'ve|just|,) )*drained(?: it| (?:the )?qbin(?: bin)?)? again"
    r"(?: (?:today|now|just now))*(?: [,.;:-])* (?:(?:about|only|just|maybe) )*"
    r"(?:(?P<times>half|double|twice) (?:of )?(?:that|as much)|"
    r"(?:the )?same(?: amount)?(?: again)?|as much)(?: (?:again|this time|[.!]))*$"
)


def drained_as_before(message: Message) -> Drain | None:
    """ "Drained it again, half that": another draining, by the amount of the last one; of none
    where that was days ago.
    """
    if "again" not in message.said:
        return None
    match = _DRAINED_AGAIN.search(plain_text(message))
    if match is None:
        return None
    last = spoken_of(message)
    bin, much = message.bins[0].name if message.bins else None, None
    if isinstance(last, Drain):
        much = last.volume_l and last.volume_l * TIMES.get(match["times"] or "", 1.0)
        bin = bin or last.bin
    return Drain(bin=bin, volume_l=much, on=message.today, rules=(_RULE,))


_ONE_MORE = Late(
    r"^(?:(?:and|also|plus|then|so is|so 's|,) )+(?:the )?qbin(?: one| bin)?"
    r"(?: (?:too|as well|also|now|is|done|,))*"
    r"(?P<where>(?: (?:by|under|near|behind|beside|in|next|at|along|below|right)\b.{1,60})?)$"
)
_OWN_TOO = Late(
    rf"{LED}(?:{LIKEWISE}|(?:so )?(?:did|have) (?:i|we)|did (?:mine|ours) (?:too|as well|also))"
    r"(?: (?:,|just now|now|about|around|got|only|with|\d+(?:[.,]\d+)?|ml|l|litres?|liters?))*$"
)
_THERE = Late(r"\b(?:it|that|there|same)\b")
_FEW = 12
"""Words of a message that does as another has just told."""


def may_do_as_told(body: str) -> bool:
    """Whether a message may do as the one before it told, or put it right, whoever wrote that."""
    words = body.casefold().translate(_STOPS).split()
    return len(words) <= _FEW and not _JUST_CUES.isdisjoint(words)


_STOPS = str.maketrans(",?!", "   ")
_JUST_CUES = _CUES | words_in("and for ditto mine ours so plus me us & + it that no nope not")
AS_JUST_TOLD = "the same as another has just told"


def as_just_told(message: Message) -> _Done | Unsure | None:
    """ "And blue next to it", "me too, 150": what a neighbour has just told of another bin, done to
    one that is named; of the sender's own it is asked, unless it is told how much.
    """
    last = message.context.just_told
    if not isinstance(last, Bury | Drain | Seal) or "?" in message.said or message.items:
        return None
    if message.days or message.members or len(message.bins) > 1:
        return None
    text = named_text(message).strip(" .!")
    if not message.bins:
        own = message.context.own_bin
        if own in (None, last.bin) or _OWN_TOO.match(text) is None:
            return None
        much = _much(last, message)
        made = _done_to(own, last, much, last.place if isinstance(last, Bury) else None)
        known = much is not None or "mine" in message.said or "ours" in message.said
        return made if known else Unsure(guess=(replace(made, on=message.today),), rules=made.rules)
    [ref] = message.bins
    match = _TOO.match(text) or _ONE_MORE.match(text)
    if match is None or not ref.known or ref.name in (None, last.bin) or message.amounts:
        return None
    place = last.place if isinstance(last, Bury) else None
    if match["where"]:
        if not isinstance(last, Bury):
            return None
        if _THERE.search(match["where"]) is None:
            told = read_message(f"buried {ref.name}{match['where']}", message.context)
            place = bury_from(groups_of(told), 0, AS_JUST_TOLD).place
    return _done_to(ref.name, last, None, place)


def _done_to(
    bin: str | None, last: Bury | Drain | Seal, much: float | None, place: str | None
) -> Bury | Drain | Seal:
    """The same deed on another bin, on the same day; not what was measured in the first."""
    rules = (AS_JUST_TOLD,)
    match last:
        case Bury():
            return Bury(bin=bin, on=last.on, place=place, rules=rules)
        case Drain():
            return Drain(bin=bin, on=last.on, volume_l=much, rules=rules)
        case Seal():
            return Seal(bin=bin, on=last.on, rules=rules)


def _much(last: Bury | Drain | Seal, message: Message) -> float | None:
    """How much came out: with its unit, or in that of what the other told."""
    if not isinstance(last, Drain):
        return None
    measured = [a.value for a in message.amounts if a.quantity == "volume"]
    if measured:
        return measured[0] if len(measured) == 1 else None
    numbers = [read_number(message.words, i) for i in range(len(message.words))]
    bare = [number.value for number in numbers if number is not None and not number.word]
    meant = number_beside(bare[0], last, message) if len(bare) == 1 else None
    return meant.volume_l if meant else None


def sealed_again(message: Message) -> Seal | None:
    """The bin that the talk is on was closed once more."""
    bin: str | None = getattr(spoken_of(message), "bin", None)
    if bin is None or message.bins or message.amounts or "?" in message.said:
        return None
    return Seal(bin=bin, rules=(_RULE,)) if _AGAIN.search(plain_text(message)) else None
