"""Who does an absent member's part: "Bram looks after my bin", "Bram, can you do mine?"."""

from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.plaintext import words_between
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_STANDS_IN = Late(
    r"(?:(?:will|can|'ll|'s|is|has agreed to|is going to|going to|kindly) )*(?:(?:looks?|looking) "
    r"after|(?:stands?|standing|steps?|stepping|fills?|filling) in|(?:covers?|covering)|"
    r"(?:minds?|minding)|(?:does|do|doing|makes?)(?= (?:my|our) )|"
    r"(?:sees? to|takes? care of|keeps? an eye on)(?= (?:my|our|the|it|things) )|"
    r"(?:has|takes|keeps) (?:my|our) (?:bin|bucket|pail|tub))"
    r"(?: (?:for|my|our|the|it|them|mine|bins?|me|us|part|things|jobs|bits|duties|turns?|share|"
    r"meanwhile|then))*"
)


def stand_in(message: Message, at: int) -> tuple[str | None, int]:
    """Who is said, behind the absence, to stand in; and where that ends."""
    for member in message.members:
        if member.start >= at and not is_sender(message, member.name):
            end = min(member.end + 10, len(message.words))
            if match := _STANDS_IN.match(words_between(message, member.end, end)):
                return member.name, member.end + len(match.group().split())
    return _strange_stand_in(message, at)


def asked_in(message: Message, at: int) -> tuple[str | None, int]:
    """Who is asked, behind the absence, to stand in; and where that ends."""
    for member in message.members:
        if member.start >= at and not is_sender(message, member.name):
            end = min(member.end + 12, len(message.words))
            led = message.norms[member.start - 1] in _CAN
            pattern = _ASKED_IN if led else _ASKED_IN_BY_NAME
            if match := pattern.match(words_between(message, member.end, end)):
                return member.name, member.end + len(match.group().split())
            if _ASKED_IN_BEFORE.fullmatch(words_between(message, at, member.start)):
                return member.name, member.end
    return None, at


_CAN = words_in("can could will would")
_DO_MINE = (
    r"(?:please |maybe |possibly |be able to )*(?:(?:do|mind|cover|look after|see to|take care of|"
    r"keep an eye on|check(?: on)?) (?:mine|it|me|things|(?:my|our) (?:bin|bucket|pail|tub|part|"
    r"bit|bits|jobs|things|share|turns?|draining))|cover for (?:me|us)|(?:stand|fill|step) in)"
    r"(?: (?:for (?:me|us)|please|meanwhile|then|bin))*"
)
_ASKED_IN = Late(_DO_MINE)
_ASKED_IN_BEFORE = Late(rf"(?:[,.!-] )*(?:can|could|will|would) (?:you|u) {_DO_MINE}(?: ,)?")
_ASKED_IN_BY_NAME = Late(rf"(?:, )?(?:can|could|will|would|might) (?:you|u) {_DO_MINE}")


def _strange_stand_in(message: Message, at: int) -> tuple[str | None, int]:
    """The same by a name that nobody here has: "Zora looks after my bin"."""
    first = None
    for i in range(at, min(at + _NEAR, len(message.words))):
        word = message.words[i]
        is_name = word.text[:1].isupper() and word.text[1:2].islower()
        if not is_name or word.norm in _NO_NAMES:
            first = None
            continue
        first = i if first is None else first
        if match := _STANDS_IN.match(
            words_between(message, i + 1, min(i + 10, len(message.words)))
        ):
            return message.text(first, i + 1), i + 1 + len(match.group().split())
    return None, at


_NEAR = 6
_NO_NAMES = words_in(
    "he she it they we i you who that this someone somebody anyone anybody everyone everybody "
    "nobody one somebody's please and so thanks"
)
