"""Whether a neighbour has drained a bin or put something in, asked by another: "did you drain the
yard?", and then "yes, 300 ml".
"""

from dataclasses import replace

from handlers.reading.acts import Drain, Layer
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.food.makeups import makeup
from handlers.reading.food.quantities import amount_sum
from handlers.reading.message import Message
from handlers.reading.phrases import named_text
from handlers.reading.room.echoes import SAID_AGAIN
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

AS_ASKED = "what a neighbour has asked about"
CUES = words_in("did have has")
"""Words without one of which nobody is asked what they did."""
_WHO = r"(?:you|u|ya|anyone|anybody|someone|somebody|qmember)(?: guys| all| two)?"
_LEAD = r"(?:(?:hey|hi|hello|oh|so|ok|and|btw|morning|,|qmember) )*"
_YET = (
    r"(?: (?:yet|already|too|out|today|yesterday|this|last|tonight|morning|evening|night|qmember|,"
    r"))*"
)
_ASKED = Late(
    rf"^{_LEAD}(?:(?:did|have|has) {_WHO}(?: (?:already|just|manage to|get to|remember to))* "
    rf"(?:(?P<drain>drain(?:ed)?|(?:empty|emptied|draw|drawn|drew) (?:off )?(?:the |any |some )?"
    r"(?:liquid|juice|leachate|tea)(?: (?:from|of|out of|off))?)|"
    r"(?:put|add|added|chuck|chucked) (?:anything|something|any|some|your scraps|stuff|scraps)"
    r"(?: (?:in|into|to))?)|"
    rf"how much (?:liquid |juice )?did {_WHO} (?:(?P<much>drain|get|draw) (?:from|out of|off)|"
    r"(?:put|add|chuck) (?:in|into|to)))"
    rf" (?:the |our )?qbin(?: bin)?{_YET} \?$"
)
_YES = words_in("yes yep yeah yup aye ya yea")
_OF_ANSWER = _YES | words_in(
    "i we did have 've it was about around roughly just only got out of in put drained added a an "
    "some the bit this morning tonight evening afternoon , . ! : - indeed sure thing"
)
_MOST_WORDS = 14


def may_be_told_as_asked(body: str) -> bool:
    """Whether a message is so short, and has such a figure or yes, that it may answer that."""
    words = body.casefold().replace(",", " ").split()
    led = bool(words) and (words[0] in _YES or words[0] in _OF_ANSWER or words[0][0].isdigit())
    return led and len(words) <= _MOST_WORDS


def asked_deed(message: Message) -> Drain | Layer | None:
    """What the sender asks of another: whether, or how much, they drained or put in."""
    if not message.asked or len(message.bins) != 1 or message.measured() or message.bot:
        return None
    [ref] = message.bins
    match = _ASKED.search(named_text(message)) if ref.known and ref.name else None
    days = {day.past for day in message.days if day.past <= message.today}
    if match is None or len(days) > 1:
        return None
    on = days.pop() if days else None
    drained = match["drain"] or match["much"]
    return Drain(bin=ref.name, on=on) if drained else Layer(bin=ref.name, on=on)


def told_as_asked(message: Message) -> Drain | Layer | None:
    """ "Yes, 300 ml": the deed asked about, with its amount; what the sender has told of it before
    is none besides.
    """
    asked, norms = message.context.asked_deed, message.norms
    if asked is None or "?" in message.said or len(norms) > _MOST_WORDS or message.bins:
        return None
    amounts, own = message.measured(), spoken_of(message)
    if len(amounts) != 1 or len(message.days) > 1 or message.members:
        return None
    if own is not None and own.act == asked.act and getattr(own, "bin", None) == asked.bin:
        return None
    held = indexes(amounts, message.days, message.items)
    if not _OF_ANSWER.issuperset(unheld(norms, held)):
        return None
    on = message.days[0].past if message.days else asked.on or message.today
    mass, volume = amount_sum(amounts)
    if on > message.today:
        return None
    if isinstance(asked, Drain):
        solid = mass is not None or any(not item.generic for item in message.items)
        return None if solid else replace(asked, volume_l=volume, on=on, rules=(AS_ASKED,))
    made = makeup(message.items) if message.items else None
    return replace(
        asked,
        mass_kg=mass,
        volume_l=volume,
        materials={"mixed": 1.0} if made is None else made.shares,
        rich=None if made is None else made.rich,
        on=on,
        rules=(AS_ASKED, SAID_AGAIN),
    )
