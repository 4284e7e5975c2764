"""An amount and what it is of, with nothing else said: "700 g chicken", "another kilo", "1 kg, some
meat in it". Whether it is a layer depends on what the room talks of.
"""

from handlers.reading.acts import Drain
from handlers.reading.message import BRAN, Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

BARE = "an amount, and nothing else"
"""The rule of such a layer: it is told only where the talk is of the bins."""

_SMALL = words_in(
    "of about around roughly approx maybe some ish a an the in it there here now just more another "
    "too also as well and & plus + with mostly mainly mixed from me us mine ours i also then so ok "
    "'s is are was went gone has have first already just another "
    "today tonight this morning evening afternoon full , . : ! - – — ~ ( ) party dinner lunch "
    "breakfast supper weekend birthday wedding barbecue bbq fridge freezer office school kitchen "
    "picnic yesterday's last night's sunday's my our left over turn put on top brunch all only"
)
_NONE = words_in("no not without any time week minus")
"""What may stand beside a food that is not among them: "1 kg of peel, no meat this time"."""
_AMOUNTS = words_in("kg kgs kilo kilos g gr gram grams lb lbs pound pounds oz ounces litre litres")
_LONGEST = 16
_ORDERED = Late(r"(?i)\b(?:please|pls|plz)\b")
""" "2 kg of rice, please": what somebody is to bring."""
_LONGEST_TOLD = 40
"""Words of a message that tells a layer with a little more."""


_NO_BRAN = Late(
    r"(?: (?:[,.;:(—–-]|and|but))* (?:no|without|w/o|minus|(?:i |we )?forgot(?: the)?|"
    r"(?:(?:i|we) )?(?:(?:'ve|have|got|had) )+no|"
    r"there was no|didnt (?:have|put|add)(?: on)?|not) (?:any |more |much )?"
    rf"(?:{'|'.join(sorted(BRAN))})(?: (?:yet|on|it|top|this time|today|though|sorry|so far|with|"
    r"in|at hand|either|at all|here|\)|,|\.|!))*$"
)


_GROUP = Late(
    r"^(?:(?:and|so|then|ok|also|now|today|,) )*(?:group|class|team|table|year|grade|form) "
    r"(?:\d{1,2}|[a-f])(?: (?:[,:–—-]|has|had|have|got|gave|brought|put|in|added|collected|just|"
    r"also|did|with|weighed))+(?= )"
)


def behind_a_group(message: Message) -> str | None:
    """ "Group 4 put in another 300 g", "class 2: 1 kg of peel": what several put in together, who
    may have a bin of their own; None if no more is said than the amount and its food.
    """
    if message.bins or not message.measured() or len(message.norms) > _LONGEST_TOLD:
        return None
    text = " ".join(message.norms)
    found = _GROUP.match(text)
    return message.text(found.group().count(" ") + 1, len(message.norms)) if found else None


def before_no_bran(message: Message) -> str | None:
    """ "2 kg in, no bran": what went in before the words that no starter was put on it; None if
    these end no such message.
    """
    if not message.has(BRAN) or len(message.norms) > _LONGEST_TOLD:
        return None
    if not message.measured() or "?" in message.said:
        return None
    text = " ".join(message.norms)
    found = _NO_BRAN.search(text)
    at = text[: found.start()].count(" ") + 1 if found else 0
    measured = any(amount.start < at for amount in message.measured())
    return message.text(0, at) if measured and not message.bran(0, at) else None


def is_told_in(message: Message) -> bool:
    """ "2.5 kg in, full now": it is said to be in, behind the amount or its food."""
    ends = {a.end for a in message.measured()} | {item.end for item in message.items}
    return any(
        norm == "in" and _leads_back(message, i, ends) for i, norm in enumerate(message.norms)
    )


def _leads_back(message: Message, at: int, ends: set[int]) -> bool:
    while at not in ends and at and message.norms[at - 1] in _WENT:
        at -= 1
    return at in ends


_WENT = words_in("'s is are was went gone has have just")


def is_bare(message: Message) -> bool:
    """Whether only an amount is told, its food, and that it is the sender's or of today."""
    norms = message.norms
    if len(norms) > _LONGEST or not message.measured() or message.bins or message.members:
        return False
    if not message.has(_AMOUNTS) or any(amount.negative for amount in message.amounts):
        return False
    if _ORDERED.search(message.body) or message.asked:
        return False
    if any(day.past != message.today for day in message.days):
        return False
    absent = [item for item in message.items if item.absent]
    if absent and len(absent) == len(message.items):
        return False  # "2 kg, no sugar"
    held = indexes(message.amounts, message.items, message.days)
    return (_SMALL | _NONE if absent else _SMALL).issuperset(unheld(norms, held))


_DRINKS = words_in("pint pints glass glasses")
_DRAINED = Late(
    r"(?:(?:ok|i|we|just|have|'ve|and|,) )*drained (?:it |off )?(?:, )?(?:about |only |nearly )?"
    r"qmuch(?: (?:off|out|today|now|just now|tonight|this morning|[.!]))*"
)


def drained_glass(message: Message) -> Drain | None:
    """ "Drained a pint": liquid of a bin, or a drink."""
    amounts = message.measured() if message.has(_DRINKS) else []
    if len(amounts) != 1 or amounts[0].quantity != "volume":
        return None
    [much], norms = amounts, message.norms
    text = " ".join([*norms[: much.start], "qmuch", *norms[much.end :]])
    said = _DRAINED.fullmatch(text)
    return Drain(volume_l=much.value, on=message.today, rules=(BARE,)) if said else None
