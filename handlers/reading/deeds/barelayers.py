"""An amount and what it is of, with nothing else said: "700 g chicken", "another kilo", "1 kg, some
meat in it". Whether it is a layer depends on what the room talks of.
"""

from handlers.reading.acts import Drain
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

BARE = "an amount, and nothing else"
"""The rule of such a layer: it is told only where the talk is of the bins."""

_SMALL = words_in(
    "of about around roughly approx maybe some ish a an the in it there here now just more another "
    "too also as well and & plus + with mostly mainly mixed from me us mine ours i also then so ok "
    "today tonight this morning evening afternoon full , . : ! - – — ~ ( ) party dinner lunch "
    "breakfast supper weekend birthday wedding barbecue bbq fridge freezer office school kitchen "
    "picnic yesterday's last night's sunday's my our left over turn put on top brunch"
)
_AMOUNTS = words_in("kg kgs kilo kilos g gr gram grams lb lbs pound pounds oz ounces litre litres")
_LONGEST = 16
_ORDERED = Late(r"(?i)\b(?:please|pls|plz)\b")
""" "2 kg of rice, please": what somebody is to bring."""


def is_bare(message: Message) -> bool:
    """Whether only an amount is told, its food, and that it is the sender's or of today."""
    norms = message.norms
    if len(norms) > _LONGEST or not message.measured() or message.bins or message.members:
        return False
    if not message.has(_AMOUNTS) or any(amount.negative for amount in message.amounts):
        return False
    if _ORDERED.search(message.body) or any(sentence.asked for sentence in message.sentences):
        return False
    if any(day.past != message.today for day in message.days):
        return False
    if any(item.absent for item in message.items):
        return False
    held = indexes(message.amounts, message.items, message.days)
    return _SMALL.issuperset(unheld(norms, held))


_DRINKS = words_in("pint pints glass glasses")
_DRAINED = Late(
    r"(?:(?:ok|i|we|just|have|'ve|and|,) )*drained (?:it |off )?(?:, )?(?:about |only |nearly )?"
    r"qmuch(?: (?:off|out|today|now|just now|tonight|this morning|[.!]))*"
)


def drained_glass(message: Message) -> Drain | None:
    """ "Drained a pint": liquid of a bin, or a drink."""
    amounts = message.measured()
    if len(amounts) != 1 or not message.has(_DRINKS) or amounts[0].quantity != "volume":
        return None
    [much], norms = amounts, message.norms
    text = " ".join([*norms[: much.start], "qmuch", *norms[much.end :]])
    said = _DRAINED.fullmatch(text)
    return Drain(volume_l=much.value, on=message.today, rules=(BARE,)) if said else None
