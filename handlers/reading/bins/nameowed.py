"""The name of a bin that was begun without one: "green, 20 litres" behind "new bin please"."""

from handlers.reading.acts import Amend, Open
from handlers.reading.bins.rollread import stands_alone
from handlers.reading.bins.sizes import SMALLEST_BARE
from handlers.reading.message import Message
from handlers.reading.words.binwords import PLACE_NAMES, TOLD_BY
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import vocabulary, words_in

_NAMELESS = Late(r"bin \d+")
"""What a bin is called that nobody has named."""
_LED = words_in("it is 's its name called call the our we for will be in")
_BEHIND = words_in("bin bucket pail caddy tub please pls thanks ta one holds takes about and . !")
_APART = words_in(", : ; - ( ) \n")
_NO_NAME = words_in(
    "great ok okay yes yep cool lovely perfect right sure thanks hi hello about now"
)
_LONGEST = 12


def name_owed(message: Message) -> Amend | None:
    """What the bin just begun is called, with its size or not, if no more is said."""
    last = message.context.last
    if not isinstance(last, Open) or last.capacity_l or not last.bin or not message.words:
        return None
    if _NAMELESS.fullmatch(last.bin) is None or len(message.norms) > _LONGEST:
        return None
    if any(sentence.asked for sentence in message.sentences) or message.days:
        return None
    sizes = [a for a in message.amounts if a.quantity == "volume" and a.value >= SMALLEST_BARE]
    if len(sizes) != len(message.amounts) or len(sizes) > 1:
        return None
    held = {i for a in sizes for i in range(a.start, a.end)}
    said = [i for i in range(len(message.norms)) if i not in held]
    while said and message.norms[said[0]] in _LED:
        del said[0]
    while said and message.norms[said[-1]] in _BEHIND | _APART:
        del said[-1]
    name = message.text(said[0], said[-1] + 1) if said else ""
    alone = len(said) == 1 and message.norms[said[0]] in TOLD_BY | PLACE_NAMES
    if not alone and not (sizes and _may_be_called(said, message)):
        return None
    known = [bin.casefold() for bin in message.context.bins]
    if name.casefold() in known:
        return None
    return Amend(
        bin=name,
        capacity_l=sizes[0].value if sizes else None,
        rules=("the name of a bin begun without one",),
    )


def _may_be_called(said: list[int], message: Message) -> bool:
    """Whether one or two words in a row, each a name, are all that is left beside the size."""
    if not 0 < len(said) <= 2 or said[-1] - said[0] + 1 != len(said):
        return False
    words = [message.words[i] for i in said]
    names = all(w.kind == "word" and stands_alone(w.text) for w in words)
    plain = all(w.norm not in vocabulary() or w.norm in TOLD_BY | PLACE_NAMES for w in words)
    return names and plain and _NO_NAME.isdisjoint(w.norm for w in words)
