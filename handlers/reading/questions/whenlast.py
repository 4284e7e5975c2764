"""When, where and by whom something was last done to a bin; what lies at a place."""

from collections.abc import Mapping
from typing import Literal

from handlers.reading.arrangements.communal import InGround, WhenLast
from handlers.reading.phrases import Phrase
from handlers.reading.words.late import Late

_LAST_DEEDS: Mapping[str, Literal["open", "layer", "drain", "seal", "bury"]] = {
    "drain": "drain", "drained": "drain", "draining": "drain",
    "fed": "layer", "feed": "layer", "filled": "layer", "layer": "layer", "add to": "layer",
    "added to": "layer", "put something in": "layer",
    "seal": "seal", "sealed": "seal", "close": "seal", "closed": "seal",
    "bury": "bury", "buried": "bury", "burial": "bury",
    "start": "open", "started": "open", "open": "open", "opened": "open", "begin": "open",
    "begun": "open", "going": "open",
}  # fmt: skip
_DEED = rf"(?P<deed>{'|'.join(sorted(_LAST_DEEDS, key=len, reverse=True))})"
_OF = r"(?:(?:the )?(?:qbin|bin|bucket)|it|one|a bin|any(?: bin)?)"
_WHEN_LAST = (
    Late(rf"^(?:and |so )?when (?:was|were|has|is) {_OF} (?:been )?last (?:been )?{_DEED}$"),
    Late(
        rf"^(?:and |so )?when (?:did|have|has) (?:we|i|you|anyone|anybody|somebody|qmember) "
        rf"last {_DEED}(?: {_OF})?$"
    ),
    Late(rf"^(?:and |so )?when was the last {_DEED}(?: (?:of|in|for) {_OF})?$"),
    Late(rf"^(?:and |so )?who (?:was the last to|last) {_DEED} {_OF}$"),
    Late(rf"^(?:and |so )?who {_DEED} {_OF} last(?: time)?$"),
    Late(
        rf"^(?:and |so )?how (?:long|many days)(?: ago)? (?:is it |has it been )?(?:since|was) "
        rf"(?:the )?last {_DEED}(?: (?:of|in|for) {_OF})?$"
    ),
)
_IN_TALK = (
    Late(
        rf"^(?:and |so )?which(?: one| bin)? (?:was|has been|did we) (?:last )?{_DEED}(?: last)?$"
    ),
    Late(
        rf"^(?:and |so )?(?:did|has|have) (?:qmember|anyone|anybody|we) "
        rf"(?:already |just )?{_DEED} {_OF}(?: (?:yet|already|qday))*$"
    ),
    Late(
        r"^(?:and |so )?(?:did|has|have) (?:anyone|anybody|somebody|someone|we) (?:already |just )?"
        r"(?P<deed>drained|drain|sealed|seal|fed|feed)(?: (?:yet|already|qday|lately))*$"
    ),
    Late(
        r"^(?:and |so )?who (?:last )?(?P<deed>drained|sealed|fed|buried)(?: (?:last|time|qday))*$"
    ),
    Late(
        r"^(?:and |so )?when (?:was|did) (?:it|we|you) (?:last )?(?P<deed>drained|drain|sealed|"
        r"seal|fed|feed|opened|buried|bury)(?: it)?(?: last)?$"
    ),
)
"""Asked of us only where the talk is of the bins: else neighbours ask each other."""
_ABOUT_BIN = (
    Late(
        r"^(?:and |so )?where (?:did|have) (?:we|i|you|they|qmember) (?P<deed>bury|buried) "
        r"(?:the )?qbin(?: bin)?$"
    ),
    Late(
        r"^(?:and |so )?who (?:has |had |'s )?(?:just )?(?P<deed>drained|sealed|closed|buried|"
        r"opened|started) (?:the )?qbin(?: bin)?$"
    ),
    Late(
        r"^(?:and |so )?where(?: was| is|'s| 's| were) (?:the )?qbin(?: bin)? "
        r"(?P<deed>buried)$"
    ),
    Late(
        r"^(?:and |so )?when (?:did|have) (?:we|i|you|they|qmember) "
        r"(?P<deed>start|begin|open|opened|begun|started) (?:the )?qbin(?: bin)?$"
    ),
    Late(r"^(?:and |so )?when was (?:the )?qbin(?: bin)? (?P<deed>started|opened|begun)$"),
    Late(
        r"^(?:and |so )?how long(?: has| is|'s| 's) (?:the )?qbin(?: bin)? (?:been )?"
        r"(?P<deed>going|open|started)(?: now| for)?$"
    ),
)
_PLACE = (
    r"(?:been )?(?:buried |planted )?(?:in |under |by |at |on |near |beside |behind )*"
    r"(?:the |our |my )?(?P<place>\S.{1,40})$"
)
_IN_GROUND = Late(
    r"^(?:and |so )?(?:when (?:can|may|could|should|do|shall) (?:we|i|you|one) plant"
    rf"(?: something| anything| things)?|(?:what(?: is|'s| 's| was)|whats|who is)) {_PLACE}"
)  # fmt: skip


def when_last(phrase: Phrase) -> WhenLast | None:
    """When something was last done to a bin, or where it was buried."""
    match = next((m for pattern in _WHEN_LAST if (m := pattern.match(phrase.text))), None)
    in_talk = phrase.to_bot or phrase.message.context.of_bins
    if match is None and in_talk:
        match = next((m for pattern in _IN_TALK if (m := pattern.match(phrase.text))), None)
    if match is None:
        match = next((m for pattern in _ABOUT_BIN if (m := pattern.match(phrase.text))), None)
        if match is None or said_bin(phrase) is None:
            return None
    return WhenLast(deed=_LAST_DEEDS[match["deed"]], bin=said_bin(phrase))


def said_bin(phrase: Phrase) -> str | None:
    """The group's bin that it names where only a bin can be meant, be it called after a place."""
    refs = [ref for ref in phrase.message.bins if phrase.start <= ref.start < phrase.end]
    return next((ref.name for ref in refs if ref.known), None)


def in_ground(phrase: Phrase) -> InGround | None:
    """ "What's under the fig?", of a place where the group buried something."""
    if not phrase.message.context.places:
        return None
    match = _IN_GROUND.match(phrase.message_text.removesuffix("?").strip())
    if match is None or not (_OF_GROUND.search(phrase.text) or phrase.to_bot):
        return None
    named = _ARTICLE.sub("", match["place"].strip())
    for place in phrase.message.context.places:
        if _ARTICLE.sub("", " ".join(place.casefold().split())) == named:
            return InGround(place=place)
    return None


_OF_GROUND = Late(r"\b(?:plant|buried)\b")
_ARTICLE = Late(r"^(?:the|our|my|your) ")
