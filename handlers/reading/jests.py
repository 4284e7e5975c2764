"""Reports that take themselves back as a jest: "added 5 kg to the shed, jk", "in my dreams"."""

from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

CUES = words_in(
    "jk jks kidding joking dreams dream universe psych psyche fools fool not nobody noone upon "
    "knock said tell dreamt dreamed"
)
"""Words without one of which nothing is taken for a jest."""
_JEST = Late(
    r"^(?:(?:lol|haha) )?jks?\b(?! (?:it|that|rowling))|\bjks?(?= lol| haha| [.!☺]|$)|"
    r"(?<!no )(?<!not )(?<!not even )\b(?:just |only )?(?:kidding|joking)\b|"
    r"\b(?:in|only in) (?:my|your|his|her|our) (?:wildest )?dreams?\b|"
    r"\b(?:parallel|alternate|alternative|another) universe\b|\bapril fools?\b|"
    r"(?:^|[,.!] )psyche?(?: [!.])*$|[,.!—-] not(?: [!.☺])*$|"
    r"\bin (?:a|the|my|this|that|last night 's) dream\b|"
    r"\b(?:dreamt|dreamed|had a dream)\b(?!.* (?:but|then) )|"
    r"\btell me (?:you|they|he|she|we) (?:didnt|have not|havent)\b|"
    r"\bsaid (?:nobody|noone|no one)\b|\bonce upon a time\b|^knock knock\b"
)
_ONLY = Late(
    r"(?:(?:lol|haha\w*|ha|ok|sorry|no|just|only|i am|was|i was|that was|it was) )*"
    r"(?:jks?|kidding|joking|psyche?|april fools?|a joke)(?: (?:lol|haha\w*|all|guys|folks|sorry))*"
)


def is_jest(message: Message) -> bool:
    """Whether the words take back what the message tells."""
    return message.has(CUES) and _JEST.search(" ".join(message.norms)) is not None


def is_only_a_jest(text: str) -> bool:
    """ "Just kidding": a whole message that takes the one before it back."""
    return _ONLY.fullmatch(text) is not None
