"""A group's only bin, of no name: "I have one bucket only", "just one bin so far, 15 L"."""

from handlers.reading.acts import Open
from handlers.reading.bins.sizes import SMALLEST_BARE
from handlers.reading.deeds.openings import INTRODUCED
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in


def only_bin(message: Message) -> Open | None:
    """The one bin of a group that has none as yet, if nothing else is told."""
    if message.context.bins or not message.has(_HAD) or message.items or message.asked:
        return None
    sizes = [a for a in message.measured() if a.size or not a.vessel]
    if len(sizes) > 1 or not (sizes or message.context.in_room):
        return None
    if any(size.quantity != "volume" or size.value < SMALLEST_BARE for size in sizes):
        return None
    vessels = [i for i, norm in enumerate(message.norms) if norm in BIN_WORDS]
    if len(vessels) != 1 or _ONE.isdisjoint(message.norms[: vessels[0]]):
        return None
    if not _AROUND.issuperset(unheld(message.norms, indexes(sizes, message.bins))):
        return None
    size = sizes[0].value if sizes else None
    return Open(capacity_l=size, on=message.today, rules=(INTRODUCED,))


_HAD = words_in("have got own use only just single")
_ONE = words_in("one 1 a single")
_AROUND = (
    BIN_WORDS
    | _HAD
    | _ONE
    | words_in(
        "i we it that there here 've 's is the hi hello hey so ok well yes and far for now at home "
        "between us moment of about around roughly holds takes size sized , . ! - — ( ) :"
    )
)
