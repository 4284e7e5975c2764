"""What another put in besides, told without an amount: "900 g of peel in red, and Mia dropped a
yoghurt in as well" is the sender's layer and one of Mia's.
"""

from handlers.reading.acts import Layer
from handlers.reading.food.makeups import makeup
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.people.members import may_be_name
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

CUES = words_in("too well also")
"""Words without one of which nobody put anything in besides."""
RULE = "what another put in besides"
_PUT = words_in("put added dropped chucked threw tipped popped tossed bunged lobbed")
_BESIDES = CUES | words_in("as in it there on top a an the some whole his her their old of . !")
_JOINTS = words_in("and , ; . & -")


def others_share(message: Message) -> tuple[int, Layer] | None:
    """Where the sender's own words end, and the layer of the other, whose bin is not told."""
    own = message.measured()
    if not own or message.asked:
        return None
    norms = message.norms
    for at in range(own[-1].end, len(norms) - 1):
        name = _name(message, at) if norms[at] in _PUT and at > 1 else None
        if name is None or norms[at - 2] not in _JOINTS:
            continue
        items = [i for i in message.items if i.start > at and not i.generic]
        rest = unheld(norms, indexes(items), at + 1)
        made = makeup(items) if items and _BESIDES.issuperset(rest) else None
        if made is None or CUES.isdisjoint(rest):
            return None
        end = at - 2
        while end and norms[end - 1] in _JOINTS:
            end -= 1
        others = Layer(
            materials=made.shares, rich=made.rich, member=name, on=message.today, rules=(RULE,)
        )
        return end, others
    return None


def likewise(message: Message) -> tuple[int, str | None] | None:
    """ "Ruth put 2 lb in the shed and Tom did the same": where the first one's words end, and who
    put in as much; None for the sender.
    """
    norms = message.norms
    end = len(norms) - (norms[-1:] == ["."]) - (norms[-1:] == ["!"])
    for same in _THE_SAME:
        at = end - len(same) - 2
        if at < 1 or tuple(norms[at + 2 : end]) != same or norms[at] not in _JOINTS:
            continue
        known = next((m.name for m in message.members if m.start == at + 1 == m.end - 1), None)
        if known is None and norms[at + 1] not in ("i", "me"):
            return None
        return at, None if known is None or is_sender(message, known) else known
    return None


_THE_SAME = tuple(
    tuple(words.split())
    for words in ("the same", "did the same", "same", "same again", "did too", "did as well",
                  "did likewise", "likewise", "as much", "as much again")
)  # fmt: skip
SAME = words_in("same did likewise much")
"""Words without one of which nobody put in as much."""


def _name(message: Message, at: int) -> str | None:
    """Who stands right before a verb, and is not the sender."""
    known = next((m.name for m in message.members if m.end == at and m.end == m.start + 1), None)
    word = message.words[at - 1]
    name = known or (word.text if may_be_name(word) else None)
    return None if name is None or is_sender(message, name) else name
