"""A bin closed again after a look, a tap or a layer: nothing was sealed to ferment."""

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.once import once
from handlers.reading.words.vocabulary import words_in

_CLOSING = words_in("close closes closed closing shut shuts shutting lid lids")
_OPEN = (
    r"(?:opened|open|lids? (?:off|up)|peek|peeked|peeped|look(?:ed)? in(?:side)?|prised|prized|"
    r"lifted|swung by|stopped by|nipped in|popped in|called (?:by|on|in)|turned|un\w*ed)"
)
_CLOSE = r"(?:closed?|shut|lids? (?:\S+ )?(?:on|down))"
_OPENED_FIRST = Late(rf"\b{_OPEN} .{{0,200}}\b{_CLOSE}\b")
_ONCE_MORE = Late(
    r"\b(?:closed?|shut) (?:\S+ ){1,3}?(?:straight )?"
    r"(?:again|back up|back down|after me|behind me)\b|"
    r"\b(?:closed?|shut) (?:back up|straight back|again quick\w*)\b"
)
_TO_FERMENT = words_in(
    "good last final till until til full fortnight week weeks days sealed seal tape taped brick "
    "ferment rest finished filled done clamped strapped topped brim date dated now"
)
"""Words that say that it stays closed."""
_UNDER_BRAN = Late(
    r"\b(?:sealed|locked) (?:in (?:\S+ ){1,5}|(?:\S+ ){1,6}(?:in|down) )with (?:\S+ ){0,4}bran\b"
)
_SEALED_IN = words_in("sealed locked")


@once
def is_shut_again(message: Message) -> bool:
    """ "Opened bin 3, saw maggots, shut it again"; "sealed today's lot in with bran"."""
    if message.has(_SEALED_IN) and message.bran() and _UNDER_BRAN.search(" ".join(message.norms)):
        return True
    if not message.has(_CLOSING) or message.has(_TO_FERMENT):
        return False
    if len({ref.name for ref in message.bins if ref.name is not None}) > 1:
        return False
    text = " ".join(message.norms)
    if _OPENED_FIRST.search(text):
        return True
    told = message.signs or message.items or message.amounts
    return bool(told) and _ONCE_MORE.search(text) is not None


LIDS = words_in("lid lids")
CLOSED_WELL = words_in("tight tightly firmly firm well properly securely snugly")
_WELL = rf"(?:{'|'.join(sorted(CLOSED_WELL))})"
_CLOSED_WELL = Late(
    r"\blids? (?:is |'s |was |back |put |pressed |pushed |snapped |on |down |shut |closed |nice |"
    rf"and |good |very )*{_WELL}\b|"
    rf"\b(?:closed?|shut) (?:it |her |him |them |up |down |the |lid |nice |and |very )*{_WELL}\b|"
    r"(?:[,.;] |\band )lid (?:on|down)(?= [,.!☺]|$)"
)


def is_closed_well(message: Message) -> bool:
    """ "700 g in the shed, lid on", "closed it firmly": how a lid is closed behind every layer."""
    if not message.amounts or message.has(_TO_FERMENT | _AT_AN_END):
        return False
    return _CLOSED_WELL.search(" ".join(message.norms)) is not None


_AT_AN_END = words_in(
    "finally end ended keeps duration chockers chocka stuffed completely topping limit capacity "
    "lastly sealing seals fermenting ferments"
)
"""Further words of that."""


_FALLEN = Late(
    r"\b(?:on (?:its|his|her) side|upside down|lying down|toppled|tumbled|tipped over|keeled over|"
    r"(?:fell|fallen|falls|blew|blown|knocked|kicked|pushed|went|had|rolled|"
    r"dropped)\b.{0,40}\b(?:over|"
    r"down|off)|rolled|dropped|kicked|fox tipped)\b.*\b(?:lids?|clips?|clamps?|latch)\b.{0,20}"
    r"\b(?:held|stayed|still on|budge[ds]?|tight|intact|survived)\b"
)


def is_held_in_a_fall(message: Message) -> bool:
    """ "The shed bin blew over but the lid held": it was sealed long before."""
    if not message.has(HOLDING):
        return False
    return _FALLEN.search(" ".join(message.norms)) is not None


HOLDING = words_in("lid lids clip clips clamp clamps latch")


_PART = r"(?:lids?|gaskets?|rubbers?|seals?|rings?|rims?|hinges?|clips?|catch|latch|washers?)"
MENDED = words_in("repaired mended replaced fitted swapped greased oiled patched changed new")
_MENDED = Late(
    r"\b(?:repaired|mended|replaced|fitted|swapped|greased|oiled|patched|changed) "
    rf"(?:\S+ ){{0,4}}{_PART}\b|\b{_PART} (?:\S+ ){{0,4}}(?:repaired|mended|replaced|fitted|"
    rf"swapped|greased|oiled|patched|changed)\b|\bnew (?:\S+ )?{_PART}\b"
)
_SHUT_AFTER_ALL = Late(
    r"\b(?:sealed|taped|locked|clamped|secured|latched|fastened|lidded|fortnight|weeks|ferment|"
    r"fermenting)\b|"
    r"\b(?:closed|shut) (?:it|her|him|them|up|off|down|the|qbin|for|till|until|today|tonight|now|"
    r"last|this|yesterday)\b|\bqbin (?:is |'s |was |now )*(?:closed|shut)\b"
)


def is_mended(message: Message) -> bool:
    """ "New rubber on the shed's lid, now it's airtight": how a lid shuts, and no bin shut."""
    text = plain_text(message)
    return _MENDED.search(text) is not None and _SHUT_AFTER_ALL.search(text) is None
