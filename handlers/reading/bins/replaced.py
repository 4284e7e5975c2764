"""A vessel that is replaced by another: "swapped the gate bin for a 20 litre one"."""

from handlers.reading.acts import Open
from handlers.reading.bins.sizes import OF_SIZE, SMALLEST_BARE
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in("swapped replaced exchanged upgraded")
_VESSEL = rf"(?:one|{'|'.join(sorted(BIN_WORDS))}|qbin)"
_REPLACED = Late(
    r"\b(?:(?:swapped|replaced|exchanged|upgraded) (?P<what>(?:the |my |our )?qbin|it) "
    r"(?:for|with|by|to) (?:an? )?(?:\S+ ){0,5}?"
    rf"{_VESSEL}\b|"
    r"(?:the |my |our )?qbin (?:is|'s|was|has been|got) (?:now )?(?:replaced|swapped) )"
)


def replaced(message: Message) -> Open | None:
    """The bin with the size of what took its place, in which its record goes on."""
    context = message.context
    if not context.in_room or not message.has(CUES) or message.asked:
        return None
    if message.items or message.members:  # "swapped it with Bram's 20 L one"
        return None
    sizes = [a for a in message.measured() if a.size or not a.vessel]
    if len(sizes) != 1 or sizes[0].quantity != "volume" or sizes[0].value < SMALLEST_BARE:
        return None
    told = _REPLACED.search(plain_text(message))
    clause = message.clause_at(sizes[0].start)
    if told is None or clause is None or clause.sense not in ("none", "did"):
        return None
    named = {ref.name for ref in message.bins if ref.known and ref.start < sizes[0].start}
    last = getattr(context.last, "bin", None)
    name = named.pop() if len(named) == 1 else last if told["what"] == "it" and not named else None
    size = sizes[0].value
    return Open(bin=name, capacity_l=size, on=message.today, rules=(OF_SIZE,)) if name else None
