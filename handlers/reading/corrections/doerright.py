"""A deed put down to the one who did it: "Ines carried that one, not me"."""

from handlers.reading.acts import Amend, Bury, Drain, Layer, Seal
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.food.quantities import amount_sum
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, plain_text, with_people, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_DID = (
    r"(?:did|done|carried|carry|brought|bring|put|poured|pour|added|tipped|emptied|drained|sealed|"
    r"buried|weighed|closed|shut|opened|started|dug)"
)
_THAT = r"(?:that|it|this|them|those)(?: (?:one|lot|bin|layer|in|down|out|over|up))*"
_LEAD = r"^(?:(?:oh|no|sorry|oops|actually|and|wait|ah|,|\.) )*"
_NOT_ME = Late(
    _LEAD + rf"(?:it was )?qmember (?:who |that |it was )*{_DID} {_THAT}(?: (?:,|\.|and))* not "
    r"(?:me|muggins)\b|"
    + _LEAD
    + rf"(?:it (?:was|is|'s) (?:actually )?qmember|qmember (?:was|is|'s) the one) (?:who|that) "
    rf"{_DID} {_THAT}"
    r"(?: (?:actually|sorry|,))*$|"
    + _LEAD
    + rf"not (?:me|qmember) (?:, )?qmember (?:it was |that |who |it )*{_DID}(?: {_THAT})?\b|"
    + _LEAD
    + rf"qmember {_DID} {_THAT} (?:, )?i only (?:carried|held|opened|typed|wrote|watched)\b|"
    + _LEAD
    + r"(?:it |that )?(?:should|shd|must) (?:be|have been|ve been|read|say) qmember ,? ?not "
    r"(?:me|i|qmember)\b(?= ?$| [.!])|"
    + _LEAD
    + r"(?:please )?credit (?:that|it|this|the last) (?:one )?(?:to|with) qmember(?: please)?$"
)


_WHOSE = r"qmember(?: 's)?(?P<thing> (?!not ).+)?"
_NOT_MINE = Late(
    _LEAD + r"(?:(?:that|it|this)(?: one)? )?(?:was not|wasnt|is not|isnt|not) "
    rf"(?:me|mine|from me)(?: (?:who|that) {_DID} {_THAT})?(?: (?:lol|sorry|btw|,|\.|:|-|but))* "
    rf"(?:(?:it|that|this) ?)?(?:is|was|its|thats|'s|twas)? ?{_WHOSE}$"
)
""" "That wasn't me, that's Tom's ham"."""
_ANOTHER = Late(
    _LEAD + rf"qmember (?!did |done ){_DID} {_THAT}(?: (?:sorry|actually|btw|not me|,))*$"
)
"""Right behind the answer to what the sender told: "Zoe put that in"."""
_REST = Late(
    _LEAD
    + r"(?:(?:only|just|about) )*qmuch (?:of (?:that|it|this|the last one) )?(?:was|were|is|'s) "
    r"(?:mine|from me|my own)(?: [,.])?(?: and)? the (?:rest|other half|remainder) "
    r"(?:(?:was|were|is|'s|came|from) )*qmember(?: 's| put (?:it )?in)?$"
)


def shared_with(message: Message) -> Amend | None:
    """ "Only 2 kg of that was mine, the rest was Tom's": whose the rest of it was."""
    measured = message.measured()
    if not message.context.in_room or len(measured) != 1 or len(message.members) != 1:
        return None
    norms = message.norms.copy()
    norms[measured[0].start : measured[0].end] = ["qmuch"]
    text = with_people(message, " ".join(norms).strip(" .!"))
    if _REST.match(text) is None:
        return None
    mass, volume = amount_sum(measured)
    return Amend(mass_kg=mass, volume_l=volume, rest=message.members[0].name, rules=(BY_FORM,))


def another_did(message: Message) -> Amend | None:
    """Who did what was written down, where the sender says that it was another."""
    if not message.members or word_count(message) > SHORT or message.amounts:
        return None
    if message.context.in_room and message.context.last is None:
        return None
    text = with_people(message, plain_text(message))
    if (not_mine := _NOT_MINE.match(text)) and _is_of_scraps(message, not_mine["thing"]):
        return Amend(member=message.members[-1].name, rules=(BY_FORM,))
    if message.items:
        return None
    last = message.context.last
    own = message.context.after_bot and getattr(last, "member", "") in (
        None,
        message.context.sender,
    )
    match = _NOT_ME.search(text) or (_ANOTHER.search(text) if own else None)
    if match is None or "?" in message.said:
        return None
    named = [m.name for m in message.members if message.norms[m.start - 1 : m.start] != ["not"]]
    return Amend(member=named[0], rules=(BY_FORM,)) if named else None


def _is_of_scraps(message: Message, thing: str | None) -> bool:
    """Whether what is told to be another's is the record or a food, and no dog."""
    if thing is None or not message.items:
        return thing is None or thing.strip() in _RECORD
    return message.items[-1].end == len(message.norms) and "?" not in message.said


_RECORD = words_in("one lot bag layer entry doing scraps stuff")
_BY_ME = Late(
    _LEAD + r"(?:it|that) was (?P<right>me|i|qmember) (?:that |who |what )?"
    rf"{_DID}(?: (?:the )?qbin(?: bin)?| {_THAT})(?: (?:,|\.|and))* not qmember$|"
    + _LEAD
    + rf"i {_DID}(?: (?:the )?qbin(?: bin)?| {_THAT})(?: (?:,|\.|and))* not qmember$"
)


_MINE = Late(
    _LEAD + r"(?:that|it|this)(?: one)? (?:was|is|'s) (?:me|mine|my lot)"
    r"(?: (?:actually|though|sorry|by the way|btw|,|not qmember|not hers|not his))*$"
)


def _mine(message: Message) -> Amend | None:
    """ "That was mine", right behind what another told as their own."""
    told, sender = message.context.just_told, message.context.sender
    whose: str | None = getattr(told, "member", None)
    if not isinstance(told, Layer | Drain | Seal | Bury) or whose in (None, sender):
        return None
    text = with_people(message, plain_text(message))
    return Amend(member=sender, whose=whose, rules=(BY_FORM,)) if _MINE.search(text) else None


def was_by_me(message: Message) -> Amend | None:
    """ "It was me that drained green, not Cleo", "that was mine": who did what is in the book as
    another's.
    """
    if not message.bins and "?" not in message.said and (mine := _mine(message)):
        return mine
    if not message.members or len(message.bins) > 1 or message.amounts or message.items:
        return None
    match = _BY_ME.search(with_people(message, plain_text(message)))
    if match is None or "?" in message.said:
        return None
    right = message.members[0].name if match["right"] == "qmember" else message.context.sender
    whose = message.members[-1].name
    if right is None or whose == message.context.sender:
        return None
    bin = message.bins[0].name if message.bins else None
    return Amend(member=right, bin=bin, whose=whose, rules=(BY_FORM,))
