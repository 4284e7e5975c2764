"""Records that hold whatever their score: turns of phrase that can tell nothing else of a bin."""

from handlers.reading.deeds.bywordforms import BYWORDS, Byword
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import first_in

_CUES = frozenset[str]().union(*(each.cues for each in BYWORDS))
_UNTOLD = words_in(
    "? not no never nobody noone none nowt wont will if when unless until shall should would "
    "could can cannot cant might may must tomorrow gonna going want wants wanna need needs "
    "please pls kindly who why how did does do says said told dream imagine hypothetically "
    "nearly almost again wish hope hoping let's lets pick anybody anyone spare"
)
"""Words beside which a deed may be asked, denied, wished or planned."""
_ALLOWED = {
    "seal": words_in("no not please kindly did until again if"),
    "bury": words_in("no never not if will going please kindly did"),
    "drain": words_in("would could not no kindly please do"),
    "layer": frozenset(),
    "batch": words_in("kindly please no not"),
    "stock": words_in("kindly please said told says no not"),
    "observe": words_in("told said nowt again"),
}
"""Of those words, such as stand in a turn of phrase or beside it."""
LONGEST = 200
"""Letters of a message that may tell so; a longer one tells a story."""


def told_by_word(message: Message) -> tuple[str | None, frozenset[str]]:
    """The kind of record that a turn of phrase tells, and the kinds that it is not."""
    words = _CUES & message.said
    if words and len(message.sentences) == 1 and message.sentences[0].asked:
        return None, frozenset()
    text = ""
    for each in BYWORDS if words else ():
        if words.isdisjoint(each.cues) or not _may_tell(each, message):
            continue
        text = text or plain_text(message, days=True)
        if len(text) > LONGEST:
            return None, frozenset()
        found = first_in(each.told, text)
        if found and _is_told(text[: found.end()], text[found.end() :], each.kind):
            return each.kind, each.rivals
    return None, frozenset()


def _names_bin(message: Message) -> bool:
    return any(b.name and (b.plain or b.known) for b in message.bins)


def _may_tell(each: Byword, message: Message) -> bool:
    """Whether the message names and measures what such a turn of phrase needs."""
    if each.in_room and not message.context.in_room:
        return False
    if each.in_talk and not message.context.of_bins:
        return False
    if each.beside and not message.has(each.beside):
        return False
    if each.of_bin and not _names_bin(message):
        return False
    if each.measured and all(a.quantity != each.measured for a in message.amounts):
        return False
    return not each.of_scraps or _measures_scraps(message)


def _measures_scraps(message: Message) -> bool:
    weighed = any(a.quantity in ("mass", "volume") for a in message.amounts)
    return weighed and any(i.scrap and not (i.absent or i.generic) for i in message.items)


def _is_told(upto: str, after: str, kind: str) -> bool:
    """Whether no word of the sentence up to its end takes the deed back."""
    start = max(upto.rfind(stop) for stop in (" . ", " ! ", " ? ")) + 1
    rest = after.split(" . ")[0].split(" ! ")[0]
    if kind == "drain" and _OTHER_LIQUID.search(f"{upto}{rest}"):
        return False
    before = frozenset(upto[start:].split())
    if not before.isdisjoint(_CONDITIONS) or "?" in rest:
        return False
    return before.union(rest.split()).isdisjoint(_UNTOLD - _ALLOWED[kind])


_CONDITIONS = words_in("if will unless when")
"""Before the deed they make it none; behind it they may speak of what follows."""


_OTHER_LIQUID = Late(
    r"\b(?:milk|oil|paint|petrol|diesel|beer|wine|cider|ale|rainwater|rain|coolant|varnish|soup|"
    r"blood|bleach|ghost|roof|ceiling|window|fridge|freezer|mower|pipe|boiler|radiator|cash|rent)\b"
)
"""What is no liquid of a bin, and what else may leak."""
