"""Records of two bins that belong to the other one: "I mixed up green and red today", "sorry, other
way round"."""

from handlers.reading.acts import Amend
from handlers.reading.message import Message
from handlers.reading.plaintext import is_asking, plain_text, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in(
    "mixed mix muddled confused swapped swap switched switch crossed round around "
    "about versa wrong reversed opposite"
)
"""Words without one of which no two bins are taken for each other."""
_LEAD = (
    r"^(?:(?:no|nope|sorry|oops|whoops|wait|actually|but|and|oh|ah|damn|hang on|my bad|my mistake|"
    r"i think|think|bot|please|can you|could you|,|[.!-]) )*"
)
_TWO = r"(?:the |my |our )?qbin(?: bin)? (?:and|&|n|with|for|/) (?:the |my |our )?qbin(?: bin)?"
_THEM = (
    rf"(?:{_TWO}|them|those(?: two)?|these(?: two)?|the (?:two )?(?:bins|qbin)|the two|"
    r"both(?: bins)?)"
)
_CROSSWISE = (
    r"(?:(?:all )?(?:mixed|muddled|swapped|crossed)(?: up| over)?|(?:the )?wrong way (?:a)?round|"
    r"(?:the )?other way (?:a)?round|back to front)"
)
_WHO = r"(?:(?:i|we)(?: 've| have| had| must have)?(?: just)? )?"
_END = r"(?: (?:sorry|please|though|actually|of course|i think|my bad|my mistake|oops|,|[.!]))*$"
_STOP = r"(?= (?:qday|[,.;:!-]|this|last|again|when|sorry|my|oops|the other way)|$)"
_MIXED = Late(
    rf"{_LEAD}{_WHO}(?:(?:mixed|muddled)(?: up)?|confused|crossed)(?: over)? "
    rf"(?:{_TWO}|(?:the )?(?:two )?(?:bins|qbin)){_STOP}|"
    rf"{_LEAD}{_WHO}(?:mixed|muddled|mix|got|had|put) {_THEM}(?: in)? (?:up|{_CROSSWISE}){_STOP}|"
    rf"{_LEAD}{_TWO} (?:are|were|got|should be) {_CROSSWISE}{_STOP}|"
    rf"{_LEAD}(?:swap|switch) {_THEM}(?: over| round| around)* ?[,;:-]? "
    r"(?:because |since |as )?(?:i|we) (?:got|had|mixed|muddled|put)\b"
)
"""What follows may say the same in other words: "the bread went in red"."""
_ROUND = Late(
    rf"{_LEAD}(?:(?:it|that|they|those) (?:'s|is|was|were|are|should be|should have been) |"
    rf"(?:should be|i meant|i mean|meant|make it|put it) )?(?:the )?"
    rf"(?:(?:other|wrong) way (?:a)?(?:round|bout)|vice versa|reversed|opposite|swap (?:those|them|"
    rf"these|the two|that|the bins|them round)){_END}"
)
_LONGEST = 30


def crossed(message: Message) -> Amend | None:
    """The records of which each was told of the other's bin."""
    if message.amounts or is_asking(message) or word_count(message) > _LONGEST:
        return None
    called = {name.casefold(): name for name in message.context.bins}
    words = plain_text(message, days=True).split(" ")
    text = " ".join("qbin" if word in called else word for word in words)
    named = {ref.start: ref.name for ref in message.bins if ref.known and ref.name}
    bare = {i: called[norm] for i, norm in enumerate(message.norms) if norm in called}
    bins = tuple(dict.fromkeys(name for _, name in sorted((bare | named).items())))
    days = [day.past for day in message.days if day.past <= message.today]
    mixed = _MIXED.search(text)
    if not mixed and (bins or not _ROUND.search(text)):
        return None
    if len(bins) not in (0, 2) or len(days) > 1:
        return None
    on = days[0] if days else None
    return Amend(crossed="each", between=bins, on=on, rules=("told of each other's bin",))
