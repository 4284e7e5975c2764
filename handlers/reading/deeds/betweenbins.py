"""Scraps that pass from one bin into another: "tipped the blue bin into the shed bin"."""

from collections.abc import Iterator

from handlers.reading.arranged import BetweenBins
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_DEEDS = (
    "moved", "shifted", "transferred", "tipped", "emptied", "poured", "decanted", "combined",
    "merged", "dumped", "scooped",
)  # fmt: skip
CUES = (
    *_DEEDS, "put ", "took ", " is in", " are in", " went in", "gone in", "topped up", "filled",
    "→", "->",
)  # fmt: skip

_LED = r"^(?:(?:i|we|qmember|have|has|just|then|so|now|qday|he|she|they|also) )*"
_DEED = rf"(?:{'|'.join(_DEEDS)}|put|took)"
_BIN = r"(?:the |our |my )?qbin"
_INTO = r"(?:over |out |all |right |back )*(?:in|into|to|with)"
_STUFF = r"(?:(?!(?:liquid|juice|leachate|bran|starter|lid|lids|tap|label|bin) )\S+ ){1,6}?"
_CONTENTS = r"(?:scraps|contents|stuff|lot|layers?|peelings|food|waste)"
_ENDS = (
    r"(?: (?:now|too|instead|qday|already|by mistake|\d.*|about .*|(?:and |so )?(?:the )?qbin "
    r"(?:is|'s) (?:now )?empty.*|(?:and|then) (?:i |we )?(?:rinsed|washed|cleaned|scrubbed) .*))*$"
)
_ARE = r"(?:(?:is|are|'s|went|was|were|have|has|gone|got|moved|tipped|put|all|now) )+"
_PART = r"(?:all|half|some|most|part|a third|a quarter|the rest|everything|the contents)"
_MOVED = Late(
    rf"{_LED}{_DEED} {_STUFF}(?:from|out of) {_BIN} {_INTO} {_BIN}{_ENDS}|"
    rf"{_LED}{_DEED} {_STUFF}(?:from|out of) {_BIN} (?:and|then) (?:then )?"
    rf"(?:put|tipped|threw|dumped|chucked) (?:it |them |that |this )?{_INTO} {_BIN}{_ENDS}|"
    rf"^{_BIN} (?:'s )?{_CONTENTS} {_ARE}{_INTO} {_BIN}{_ENDS}|"
    rf"^(?:the |all the |everything |all )?(?:{_CONTENTS} )?(?:from|of|in) {_BIN} "
    rf"{_ARE}{_INTO} {_BIN}{_ENDS}|"
    rf"^(?:{_PART} of )?(?:what(?: 's| is| was)|the {_CONTENTS}) (?:in|of|from) {_BIN} "
    rf"{_ARE}{_INTO} {_BIN}{_ENDS}|"
    rf"^{_BIN} (?:is|'s|was|got) (?:too |so |nearly |quite )?full (?:so |and )*(?:i|we) "
    rf"(?:have |'ve |just )*{_DEED} (?:it|it all|all of it|everything|the lot|that) "
    rf"{_INTO} {_BIN}{_ENDS}|"
    rf"^(?:{_CONTENTS} (?:of|from) {_BIN}|{_BIN} (?:'s )?{_CONTENTS}) (?:→|>) {_BIN}{_ENDS}"
)
_TOPPED = Late(
    rf"{_LED}(?:topped up|topped|filled up|filled) {_BIN} (?:up )?with "
    rf"(?:(?:half|some|most|all|the rest) (?:of )?)?(?:the {_CONTENTS} (?:of|from|in)|what was in|"
    rf"{_CONTENTS} from) {_BIN}{_ENDS}"
)
"""Here what was fed stands before what it came from."""
_TIPPED = Late(
    rf"{_LED}(?:(?P<carried>moved|shifted|transferred|put|took)|{_DEED}) "
    rf"(?P<part>(?:{_PART}) (?:of |in )?)?{_BIN} {_INTO} {_BIN}{_ENDS}"
)
"""What was carried into a bare name may stand in the place of that name."""
_JOINED = Late(
    rf"{_LED}(?:combined|merged|emptied|tipped) (?:(?:the |our |both )*(?:two |both )*bins|{_BIN} "
    rf"and {_BIN}) (?:(?:into one|together|up) )?(?:so |and )?(?:(?:it|everything|the lot|both) )?"
    rf"(?:(?:is|are|'s|all|now) )*in(?:to)? {_BIN}(?: now)?$"
)
_LESS = words_in("half some most part third quarter")


def between_bins(message: Message) -> Iterator[Found]:
    """Each sentence that says no more than that scraps passed from one bin into another."""
    known = {ref.name for ref in message.bins if ref.known and ref.name}
    if not known:
        return
    for phrase in phrases(message):
        names = _names(phrase)
        if len(names) != 2 or phrase.asked:
            continue
        [source, target] = names
        masses = [a for a in message.amounts if phrase.start <= a.start < phrase.end]
        mass = masses[0].value if len(masses) == 1 and masses[0].quantity == "mass" else None
        half = not _LESS.isdisjoint(phrase.tokens)
        plan = BetweenBins(source=source, target=target, mass_kg=mass, half=half)
        yield Found(phrase.start, phrase.end, plan)


def _names(phrase: Phrase) -> list[str]:
    """The bins, first the one that it was taken from, if that is what is told."""
    said = [r for r in phrase.message.bins if phrase.start <= r.start < phrase.end and r.known]
    refs = [ref.name for ref in said if ref.name]
    if _JOINED.match(phrase.text):
        context = phrase.message.context
        used = [name for name in context.bins if name not in context.retired]
        two = dict.fromkeys(refs[:2]) if len(refs) > 1 else used
        return [*(name for name in two if name != refs[-1]), refs[-1]] if len(two) == 2 else []
    tipped = _TIPPED.match(phrase.text)
    topped = _TOPPED.match(phrase.text)
    if not (tipped or topped) and _MOVED.match(phrase.text) is None:
        return []
    if tipped and tipped["carried"] and not tipped["part"]:
        refs = [ref.name for ref in phrase.bins if ref.name]
    named = list(dict.fromkeys(refs))[:2]
    return named[::-1] if topped else named
