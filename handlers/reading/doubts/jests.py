"""Reports that take themselves back as a jest: "added 5 kg to the shed, jk", "in my dreams"."""

from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_JESTING = words_in(
    "jk jks kidding joking dreams dream universe psych psyche fools fool not nobody noone upon "
    "knock said tell dreamt dreamed bar call cross say hear one no nope nah "
    "believe doubt doubts"
)
_SWEARING = words_in("day minute moment second first more nothing")
CUES = _JESTING | _SWEARING
"""Words without one of which nothing is taken for a jest."""
_JEST = Late(
    r"^(?:(?:lol|haha) )?jks?\b(?! (?:it|that|rowling))|\bjks?(?= lol| haha| dont| [.!☺]|$)|"
    r"\bno dont(?: [.!☺])*$|"
    r"(?<!no )(?<!not )(?<!not even )\b(?:just |only )?(?:kidding|joking)\b|"
    r"\b(?:in|only in) (?:my|your|his|her|our) (?:wildest )?dreams?\b|"
    r"\b(?:parallel|alternate|alternative|another) universe\b|\bapril fools?\b|"
    r"(?:^|[,.!] )psyche?(?: [!.])*$|[,.!—-] not(?: [!.☺])*$|"
    r"\bin (?:a|the|my|this|that|last night 's) dream\b|"
    r"\b(?:dreamt|dreamed|had a dream)\b(?!.* (?:but|then) )|"
    r"\btell me (?:you|they|he|she|we) (?:didnt|have not|havent)\b|"
    r"\bi (?:dont|do not|cant|cannot|wouldnt) believe (?:him|her|them|a word)\b|"
    r"\bi (?:doubt (?:it|that|him|her)|have my doubts)\b|\bbelieve (?:it|that) when i see it\b|"
    r"\bsaid (?:nobody|noone|no one)\b|\bonce upon a time\b|^knock knock\b|"
    r"^[^?.,;:]+ \? (?:no|nope|nah)(?: , (?:that|it) was [^,.]+)?(?: [!.☺])*$|"
    r"\bnot really(?: [!.☺])*$"
)
_SWORN = Late(
    r"(?:(?:and|but|well|,) )*(?:(?:the (?:day|minute|moment|second)|the first \w+|(?:one|1) more "
    r"\w+) "
    r"(?:.{1,60} (?:is the day|is when|and i|and im|and we|i am|im|i 'm|i quit|i resign|i leave|we "
    r"leave)\b|.{1,40} i (?:will|shall|would)\b)|"
    r"nothing (?:scares|frightens|worries|haunts) me (?:more than|like|as much as)\b)"
)
"""What somebody will do once it comes to that: "the day I see a rat in there I'm off"."""
_ONLY = Late(
    r"(?:(?:lol|haha\w*|ha|ok|sorry|no|just|only|i am|was|i was|that was|it was) )*"
    r"(?:jks?|kidding|joking|psyche?|april fools?|a joke)(?: (?:lol|haha\w*|all|guys|folks|sorry))*"
)


_JOKE = Late(
    r"^(?:\w+ ){0,3}knock knock\b|\bwalk(?:s|ed)? into a (?:bar|pub)\b|"
    r"^(?:ok |so |right |hey )*what do you (?:call|get (?:if|when) you cross) an?\b|"
    r"^(?:ok |so )*what did the .{1,25} say (?:to|when)\b|"
    r"\b(?:have you |did you |you )?hear(?:d)? the one about\b|"
    r"^(?:ok |so )*why (?:did|does|do|was) .{1,60} \? .{1,60}\b(?:because|cos|it|he|she|they|to)\b"
    r".{0,40} (?:pail|pale|bin|folds?|cross\w*|laugh\w*|side)\b"
)


def is_joke(message: Message) -> bool:
    """Whether it is told as a riddle or a story for laughs."""
    return message.has(_OF_JOKES) and _JOKE.search(" ".join(message.norms)) is not None


_OF_JOKES = _JESTING | {"why"}


def is_jest(message: Message) -> bool:
    """Whether the words take back what the message tells."""
    if message.has(_SWEARING) and _SWORN.match(" ".join(message.norms)) is not None:
        return True
    if not message.has(_JESTING):
        return False
    return _JEST.search(" ".join(message.norms)) is not None or is_joke(message)


def is_only_a_jest(text: str) -> bool:
    """ "Just kidding": a whole message that takes the one before it back."""
    return _ONLY.fullmatch(text) is not None
