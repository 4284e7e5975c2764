"""What is said to a favour that was asked: "sure", "later", and the "closed" that keeps it."""

from handlers.reading.arranged import Deed
from handlers.reading.arrangements.favours import BIN, SHALL, VERB
from handlers.reading.message import Message
from handlers.reading.phrases import phrases
from handlers.reading.words.late import Late

_YES = (
    r"(?:oh|ok|okay|yes|yep|yeah|yup|sure|aye|of course|no problem|no worries|np|certainly|gladly|"
    r"absolutely|definitely|happy to|fine|(?:will|can) do(?: it| that)?|course|sure thing|"
    r"no bother|no probs?|"
    r"go on then|👍)"
)
_MYSELF = (
    rf"(?:{SHALL} {VERB} {BIN}(?:(?: (?!if|but|not|unless|after you)[\w']+){{0,6}}$)?|"
    rf"{SHALL} (?:pop|come|nip|drop|be) (?:round|over|by|in)|"
    r"(?:i|we) (?:will|can|could|shall)|me|me then|count me in|let me|"
    r"leave (?:it|that) (?:to|with) (?:me|us)|(?:i am |we are )?on it|"
    r"consider it done|(?:i|we) have got (?:it|this)|my pleasure|with pleasure)"
)
_SOON = (
    r"(?: (?:qday|tonight|later|after (?:work|lunch|dinner|tea|supper|school)|this "
    r"(?:evening|afternoon|morning)|in (?:a bit|an hour|the (?:morning|evening|afternoon))|"
    r"for (?:you|him|her|them|qmember)|then|qmember|no problem|no worries|gladly|first thing|"
    r"when i (?:am|get) (?:home|back|in|there)|(?:but )?(?:only|not before|not until|from) qday|"
    r"morning|evening|afternoon|night|lunchtime|(?:at|about|around|by|after) \d+|[ap]m|ish|"
    r"at lunch(?:time)?|before (?:dinner|lunch|work|tea)|"
    r"on (?:my|the) way(?: home| back)?|if you like|instead|thanks))*"
)
_ASSENT = Late(rf"^(?=\S)(?P<yes>{_YES}(?: {_YES})*)?(?: ?\b(?P<self>{_MYSELF}))?{_SOON}$")
_LATER = Late(r"(?:later|tonight|after (?:work|lunch|dinner|tea|supper|school)|in a bit)(?: on)?")
"""Said to who asked it: "later" promises as a yes does."""
_LONGEST_ASSENT = 12
_PLEASE = Late(r"\b(?i:please|pls|plz)\b")
_THUMBS = ("👍", "👌", "✅", "🙋")


def assents(body: str, message: Message) -> bool | None:
    """Whether it says yes to a favour: True if the speaker puts themselves forward, False if it is
    but a yes; None if it is neither.
    """
    said = phrases(message)
    if body.strip() in _THUMBS:
        return False
    if not said or len(message.words) > _LONGEST_ASSENT or any(phrase.asked for phrase in said):
        return None
    if _PLEASE.search(body):
        return None  # "yes please" is no yes of whoever is to do it
    text = " ".join(phrase.text for phrase in said)
    if _LATER.fullmatch(text):
        return False
    match = _ASSENT.match(text)
    if match is None or not (match["yes"] or match["self"]):
        return None
    return match["self"] is not None or "do" in (match["yes"] or "").split()


_BRIEFLY = Late(
    r"(?:(?:i|we|have|'ve|it|that|all|is|'s|just|now|and|ok|right|yes|yep|there|finally) )*"
    r"(?:(?P<seal>closed|shut|taped|lidded|clamped)|(?P<drain>emptied|tapped))"
    r"(?: (?:it|that|up|off|down|now|tight|for good|qday|done|too|then))*"
)


def briefly_done(message: Message) -> Deed | None:
    """What "closed" or "emptied it" tells where that was promised; it may be of any door else."""
    said = phrases(message)
    found = _BRIEFLY.fullmatch(said[0].text) if len(said) == 1 and not said[0].asked else None
    if found is None:
        return None
    return "seal" if found["seal"] else "drain"
