"""A bin that goes to a member for a time: "Ruth has the shed till I'm back", "leaving it with Bram
while we're gone". From when to when that is, the absence may tell.
"""

from collections.abc import Iterator
from dataclasses import replace

from handlers.reading.arrangements.communal import Handing
from handlers.reading.arrangements.handedon import lent, while_away
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = ("while ", "whilst ", "meanwhile", "meantime", "absence", "until ", "till ", "til ")
_HAS = (
    r"(?:(?:is|will|'ll|can|could|kindly|'s|has|agreed to|offered to|going to|be) )*"
    r"(?:has|have|having|takes?|taking|gets?|getting|keeps?|keeping|minds?|minding|houses?|"
    r"housing|hosts?|hosting|looks? after|looking after) (?:the |my |our )?qbin"
)
_LEFT = (
    r"(?:(?:i|we|am|are|is|'s|have|will|'ll|be) )*(?:leaving|leave|left|handing|hand|passing|pass|"
    r"giving|give)(?: over| on)? (?:the |my |our )?qbin (?:(?:on|over|along) )*(?:to|with) qmember"
)
_LENT = Late(rf"(?P<told>\bqmember {_HAS}|(?:^|\b(?=leaving |i |we )){_LEFT})(?: \S+){{0,9}}$")
"""It is so only for a time: the words behind say for which."""
_JOINTS = words_in(", . ; : - and so then but therefore meanwhile")
"""What may stand before it: "if Ruth has the shed till then" tells nothing."""


def lending(message: Message) -> Iterator[Found]:
    """Each bin that somebody is told to have for a time."""
    for phrase in phrases(message):
        if phrase.asked or not phrase.members:
            continue
        found = _lent(phrase)
        if found is not None:
            yield found


def _lent(phrase: Phrase) -> Found | None:
    match = _LENT.search(phrase.text)
    span = phrase.words(match, "told") if match else None
    if span is None or phrase.member is None:
        return None
    start = span[0]
    if start > phrase.start and phrase.message.norms[start - 1] not in _JOINTS:
        return None
    bins = [ref.name for ref in phrase.known_bins]
    if len(bins) != 1 or bins[0] is None:
        return None
    told = lent(Handing(bin=bins[0], to=phrase.member), phrase.message)
    if not any(start <= day.start for day in phrase.days):  # those of the absence tell it better
        told = replace(told, away=while_away(phrase.message))
    return Found(start, phrase.end, told) if told.days or told.away else None
