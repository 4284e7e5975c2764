"""Scraps that pass from one bin into another: "tipped the blue bin into the shed bin"."""

from collections.abc import Iterator

from handlers.reading.arranged import BetweenBins
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

_DEEDS = (
    "moved", "shifted", "transferred", "tipped", "emptied", "poured", "decanted", "combined",
    "merged", "dumped", "scooped",
)  # fmt: skip
CUES = (*_DEEDS, "put ", "took ", " is in", " are in", " went in", "gone in")

_LED = r"^(?:(?:i|we|qmember|have|has|just|then|so|now|qday|he|she|they|also) )*"
_DEED = rf"(?:{'|'.join(_DEEDS)}|put|took)"
_BIN = r"(?:the |our |my )?qbin"
_INTO = r"(?:over |out |all |right |back )*(?:in|into|to|with)"
_STUFF = r"(?:(?!(?:liquid|juice|leachate|bran|starter|lid|lids|tap|label|bin) )\S+ ){1,6}?"
_CONTENTS = r"(?:scraps|contents|stuff|lot|layers?|peelings|food|waste)"
_ENDS = r"(?: (?:now|too|instead|qday|already|by mistake|\d.*|about .*))*$"
_MOVED = Late(
    rf"{_LED}{_DEED} {_STUFF}(?:from|out of) {_BIN} {_INTO} {_BIN}{_ENDS}|"
    rf"{_LED}{_DEED} {_STUFF}(?:from|out of) {_BIN} (?:and|then) (?:then )?"
    rf"(?:put|tipped|threw|dumped|chucked) (?:it |them |that |this )?{_INTO} {_BIN}{_ENDS}|"
    rf"^{_BIN} (?:'s )?{_CONTENTS} (?:(?:is|are|'s|went|have|has|gone|all|now) )+{_INTO} {_BIN}"
    rf"{_ENDS}|"
    rf"^(?:the |all the |everything |all )?(?:{_CONTENTS} )?(?:from|of|in) {_BIN} "
    rf"(?:(?:is|are|'s|went|have|has|gone|all|now) )+{_INTO} {_BIN}{_ENDS}"
)
_TIPPED = Late(
    rf"{_LED}(?:(?P<carried>moved|shifted|transferred|put|took)|{_DEED}) "
    rf"(?P<part>(?:all|half|some|the rest|everything|the contents) (?:of |in )?)?{_BIN} {_INTO} "
    rf"{_BIN}{_ENDS}"
)
"""What was carried into a bare name may stand in the place of that name."""


def between_bins(message: Message) -> Iterator[Found]:
    """Each sentence that says no more than that scraps passed from one bin into another."""
    known = {ref.name for ref in message.bins if ref.known and ref.name}
    if len(known) < 2:
        return
    for phrase in phrases(message):
        names = _names(phrase)
        if len(names) != 2 or names[0] == names[1] or phrase.asked:
            continue
        [source, target] = names
        masses = [a for a in message.amounts if phrase.start <= a.start < phrase.end]
        mass = masses[0].value if len(masses) == 1 and masses[0].quantity == "mass" else None
        half = "half" in phrase.tokens
        plan = BetweenBins(source=source, target=target, mass_kg=mass, half=half)
        yield Found(phrase.start, phrase.end, plan)


def _names(phrase: Phrase) -> list[str]:
    """The bins, first the one that it was taken from, if that is what is told."""
    tipped = _TIPPED.match(phrase.text)
    if tipped is None and _MOVED.match(phrase.text) is None:
        return []
    refs = [r for r in phrase.message.bins if phrase.start <= r.start < phrase.end and r.known]
    if tipped and tipped["carried"] and not tipped["part"]:
        refs = phrase.bins
    return [ref.name for ref in refs if ref.name]
