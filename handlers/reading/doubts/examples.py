"""What is told to show or explain something, of bins in general, or of what a shop has: no record.

"You can write: sealed the shed bin", "for example added 5 kg", "a usual bin is 20 L".
"""

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in(
    "write say type example instance eg e.g e.g. e like such usual typical normal standard average "
    "ordinary sells sell selling sale offer shop store shops market supplier mill centre "
    "center can cans talk lecture article video course last old previous former first class school"
)
_MOST = 160
"""Letters of a message that only explains; a longer one may tell of something too."""
_SAYING = r"(?:write|say|type|tell (?:it|me|the bot|him)|put it|do it|post)"
_EXAMPLE = Late(
    r"^(?:(?:and|so|or|well|also|then|you|they|people|we|one|i|mean|ok|yes|that|it|is|'s|,) )"
    r"{0,4}(?:"
    rf"(?:can|could|just|should|may|must|simply|only|would|might) (?:also )?{_SAYING}"
    rf"(?: (?:something|it))?(?: like(?: this| so)?| so)? ?[,:\"']|{_SAYING} (?:something |it )?"
    r"like(?: this| so)?\b|(?:like this|like so|for (?:example|instance)|(?:an )?example|"
    r"e ?\.? ?g) ?(?:[.,:\"'] ?)*(?=added|put|sealed|drained|buried|opened|mixed|handing|chucked|"
    r"[\"'\d])|"
    r"e\.?g\.? )"
)
_IN_GENERAL = Late(
    r"^(?:an?|the|our|your|most|any) (?:usual|typical|normal|standard|average|ordinary) (?:\w+ )?"
    r"(?:qbin|bins?|buckets?|pails?)\b.{0,20}\b(?:is|are|holds?|takes?|has|have|weighs?)\b"
)
_FORMER = Late(
    r"^(?:well )?(?:in|at|on) (?:my|our) (?:last|old|previous|former|first) (?!(?:bin|bucket|pail|"
    r"qbin)\b)\w+(?: \w+)? ?,? ?(?:i|we)\b|"
    r"^(?:my|our) (?:(?:last|old|previous|former|first) )?(?:qbin|bin|bucket|pail) (?:took|held|"
    r"had|got|was|used to)\b|"
    r"^(?:in|at) (?:class|school|the (?:class|course|workshop)) .{0,40}\b(?:to|in|into) a (?:qbin|"
    r"bin|bucket|pail)\b|"
    r"\b(?:talk|lecture|article|video|course|lesson) (?:about|on|with|where)\b"
)
_FOR_SALE = Late(
    r"^(?!.*\b(?:i|we|me|us|bought|brought|got|picked|took)\b)(?:.*\b(?:sells?|selling|for sale|"
    r"on offer)\b|(?:the|my|our|a|that|this) (?:\w+ ){0,3}?(?:shop|store|market|supplier|mill|"
    r"garden cent(?:re|er)) (?:has|have|stocks?|offers?|keeps?|carries)\b)"
)
_CAN = Late(
    r"^(?:(?:and|or|so|what about|for|in|a|an|one|with|the|my|,) )*[\d.,]+ ?\w+ (?:watering )?"
    r"cans?(?: for \w+(?: \w+)?)?$"
)


def is_example(message: Message) -> bool:
    """Whether something is only shown or explained, or told of bins in general or of long ago."""
    text = plain_text(message) if message.has(CUES) else ""
    if not text or len(text) > _MOST:
        return False
    if any(turn.search(text) for turn in (_EXAMPLE, _CAN)):
        return True
    if _IN_GENERAL.match(" ".join(message.norms)):
        return True
    ours = any(ref.known for ref in message.bins) or not message.has(_BEFORE)
    return not ours and _FORMER.search(text) is not None


_BEFORE = words_in(
    "last old previous former first class school course workshop talk lecture article video lesson"
)


def is_for_sale(message: Message) -> bool:
    """ "The feed shop has 20 kg of bran": what others have is none of the group's."""
    return _FOR_SALE.search(plain_text(message)) is not None
