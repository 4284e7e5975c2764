"""A record put right that is called by what was done, whichever was written down last: "the
draining was 200 ml, not 300", "the shed was sealed on Monday, not Tuesday", "no, it was sealed on
Monday"; or struck out that is called by what was done, seen or measured: "delete the pH value".
"""

from dataclasses import replace

from handlers.reading.acts import Amend, Drain, Retract
from handlers.reading.corrections.amended import amend_from
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, is_asking, plain_text, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_DRAINS = words_in("drain draining drainage")
CUES = _DRAINS | words_in("layer sealed sealing buried burial burying drained drains drainings")
"""Words without one of which no record is called so."""
_KINDS = {"seal": "seal", "buri": "bury", "bury": "bury", "drai": "drain"}
"""The kind of record by the first letters of its deed."""
_LEAD = r"(?:(?:no|oh|sorry|oops|actually|wait|and|,) )*"
_NAMED = r"(?:(?:the|my|our|that|last|qbin|qday|'s|of|on) )*"
_CALLED = Late(
    rf"{_LEAD}{_NAMED}(?:drain|draining|drainage) (?:(?:of|from|on|in|the|qbin|qday) )*"
    r"(?:was|is|'s|came to|should (?:be|have been)) .+"
)
_DATED = Late(
    rf"{_LEAD}(?:(?:the |our |my )?qbin (?:(?:was|got|actually) )*(?P<was>sealed|buried|drained)|"
    r"(?:(?:i|we) )?(?P<did>sealed|buried|drained) (?:the |our |my )?qbin|"
    r"(?:the |our |my )?qbin (?:'s )?(?P<noun>sealing|burial|burying|draining) was) "
    r"(?:on )?qday (?:, )?(?:and )?not (?:on )?qday(?: (?:sorry|actually|[,.!]))*"
)
_REDATED = Late(
    r"(?P<no>(?:(?:no|nope|oh|sorry|oops|actually|wait|and|,) )+)?"
    r"(?:i |we |(?:it|(?:the |our |my )?qbin) (?:was |got )?)?(?:actually )?"
    r"(?P<deed>sealed|buried|drained)(?: it| (?:the |our |my )?qbin)? (?:actually )?(?:on )?qday"
    r"(?P<behind>(?: (?:actually|in fact|sorry|[,.!]))*)"
)
"""The day told anew; it takes some word that the one before was wrong."""
_LAYER = Late(
    rf"{_LEAD}(?:(?:the|my|our|that|last) )+layer (?:(?:in|into|of) (?:the |our |my )?qbin )?"
    r"was (?:from |put in |added )?(?:actually )?(?:on )?qday(?: (?:actually|sorry|[,.!]))*"
)
_CORRECTING = words_in("only not just really actually sorry no oops should")

_STRUCK = {
    "drain draining drainage": "drain", "seal sealing": "seal", "burial burying": "bury",
    "ph": "ph", "temperature temp": "celsius", "mould mold": "mould",
    "flies maggots insects": "insects", "observation": "observe",
    "one entry record": "one",
}  # fmt: skip
_BY_WORD = {word: kind for words, kind in _STRUCK.items() for word in words.split()}
STRUCK = frozenset(_BY_WORD)
"""Words by which a record is called that is to be struck out."""
_STRIKE = Late(
    r"(?:(?:no|oh|ok|sorry|oops|actually|wait|bot|please|pls|can you|could you|and|,) )*"
    r"(?:(?:scratch|strike|delete|undo|erase|scrap|cross)(?: out)?|(?P<lifted>remove|take out)) "
    r"(?:(?:the|my|our|that|last|qbin|bin|'s|green|black|white|blue) )*"
    rf"(?:(?P<what>{'|'.join(_BY_WORD)})|qbin)(?P<entry>(?: (?:value|reading|record|entry|one|"
    r"figure|measurement))*)(?: (?:again|out|(?:of|in|on|from|for)(?: the)? qbin|sorry|please|,))*"
)
_NOT_LAST = Late(
    r"(?:(?:no|oh|ok|sorry|oops|actually|wait|bot|please|pls|can you|could you|and|,) )*"
    r"(?:scratch|strike|delete|undo|erase|scrap|remove|cancel)(?: out)? (?:the|my|that) "
    r"(?:(?:very )?first|earlier|older|other|second|third)(?: (?:one|entry|record|layer|of those))+"
    r"(?: (?:please|pls|sorry|bot|[,.!]))*"
)
NOT_THE_LAST = "one of several, by its place among them"
_WRITTEN = frozenset({"ph", "celsius", "one"})
"""What nobody can take out of a bin."""


def struck_by_kind(message: Message) -> Retract | None:
    """The striking out of the last record of such a thing, if nothing else is said."""
    if word_count(message) > SHORT or message.measured() or "?" in message.said:
        return None
    if _NOT_LAST.fullmatch(plain_text(message)) is not None:
        return Retract(rules=(NOT_THE_LAST,))
    match = _STRIKE.fullmatch(plain_text(message))
    if match is None:
        return None
    bin, what = message.bins[0].name if message.bins else None, _BY_WORD.get(match["what"] or "one")
    if match["lifted"] and what not in _WRITTEN and not match["entry"]:
        return None  # "remove the mould in green" is a thing to do
    if what != "one":
        return Retract(what=what, bin=bin, rules=("called by what was done",))
    called = match["what"] or "one" in message.norms[message.bins[0].start : message.bins[0].end]
    known = len(message.bins) == 1 and message.bins[0].known and bin
    return Retract(bin=bin, rules=("called by its bin",)) if known and called else None


def kind_right(message: Message) -> Amend | None:
    """The right volume of a draining, or the right day of what was done to a bin."""
    if not (message.days or message.has(_DRAINS)):
        return None
    alone = word_count(message) <= SHORT and len(message.sentences) == 1 and not message.items
    if not alone or is_asking(message):
        return None
    text = plain_text(message, days=True)
    return _dated(message, text) or _drained(message, text)


def _drained(message: Message, text: str) -> Amend | None:
    context = message.context
    of_drain = isinstance(context.last, Drain) or isinstance(context.earlier, Drain)
    told = of_drain or message.has(_CORRECTING)
    if not told or not message.has(_DRAINS) or _CALLED.fullmatch(text) is None:
        return None
    act = amend_from(message, BY_FORM)
    return replace(act, what="drain", on=None, was=act.on) if act.volume_l else None


def _dated(message: Message, text: str) -> Amend | None:
    if len(message.days) == 1:
        return _dated_anew(message, text)
    if len(message.days) != 2 or (match := _DATED.fullmatch(text)) is None:
        return None
    right, wrong = message.days
    deed = match["was"] or match["did"] or match["noun"]
    bin = message.bins[0].name
    return Amend(what=_KINDS[deed[:4]], bin=bin, on=right.past, was=wrong.past, rules=(BY_FORM,))


def _dated_anew(message: Message, text: str) -> Amend | None:
    """ "No, it was sealed on Monday", "the shed was buried on Sunday actually"."""
    bin = message.bins[0].name if message.bins else None
    if "layer" in message.said and _LAYER.fullmatch(text):
        return Amend(what="layer", bin=bin, on=message.days[0].past, rules=(BY_FORM,))
    match = _REDATED.fullmatch(text) if message.has(_AGAINST) else None
    if match is None or _AGAINST.isdisjoint(f"{match['no'] or ''} {match['behind']}".split()):
        return None
    if bin and match["deed"] == "buried":
        return None  # told with its bin, a burial is compared with the book's
    what = _KINDS[match["deed"][:4]]
    return Amend(what=what, bin=bin, on=message.days[0].past, rules=(BY_FORM,))


_AGAINST = words_in("no nope sorry oops actually wait fact")
