"""What a layer was made of, told in the next few words: "put 700 g in", "fish heads"."""

from handlers.reading.acts import Amend, Layer
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.plaintext import is_asking
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_RULE = "what its layer was made of"
_LONGEST = 10
_BESIDE = words_in(
    "it its it's that that's thats they was were is are 's all mostly mainly just only some a an "
    "the few couple of bit bits lot lots and or with old leftover my our last night's yesterday's "
    "from mixed together btw actually sorry i think probably , . ! & + -"
)


def kind_told(message: Message) -> Amend | None:
    """What the sender's own layer was made of, where it was told by its amount alone and these
    words are of nothing else.
    """
    last, items = spoken_of(message), message.items
    if not items or not isinstance(last, Layer) or last.materials != {"mixed": 1.0}:
        return None
    if len(message.norms) > _LONGEST or message.amounts or message.members:
        return None
    bin = bin_first(message)
    if message.bins and bin is None:
        return None
    own = last.member in (None, message.context.sender)
    if not own or not (last.mass_kg or last.volume_l) or is_asking(message):
        return None
    if any(item.absent for item in items) or all(item.generic for item in items):
        return None
    made, rest = makeup(items), unheld(message.norms, indexes(items, message.bins))
    if made is None or not _BESIDE.issuperset(rest):
        return None
    moved = bin if bin != last.bin else None
    return Amend(materials=made.shares, rich=made.rich, bin=moved, rules=(_RULE,))


def bin_first(message: Message) -> str | None:
    """ "Green. Fish heads": the one bin named, before what went into it."""
    if len(message.bins) != 1 or not message.bins[0].known:
        return None
    [ref] = message.bins
    led = _BEFORE_BIN.issuperset(message.norms[: ref.start])
    return ref.name if led and message.norms[ref.end : ref.end + 1] in _STOPS else None


_BEFORE_BIN = words_in("the in into our")
_STOPS = ([","], ["."], ["-"], [":"])
