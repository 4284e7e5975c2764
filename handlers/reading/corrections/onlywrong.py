"""A record that is called wrong, and not how: "bot, that's wrong", "no, that was the other one"."""

from handlers.reading.acts import Bury, Drain, Layer, Retract, Seal
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

ONLY_WRONG, WRONG_BIN = "called wrong, and not how", "in the wrong bin, and not in which"
"""Rules of a striking out before which the bot asks what was wrong."""

_THAT = r"(?:that|this|it|thats|its)(?: (?:one|record|entry|amount))?(?: (?:was|is|'s|went))*"
LEAD = r"^(?:(?:no|nope|sorry|oops|hey|wait|ah|oh|but|actually|hang on|,|[.]) )*"
END = r"(?: (?:sorry|mate|again|i think|though|,|[.!]))*$"
"""What may stand before and behind the few words that put a record right."""
_BIN = Late(
    LEAD + rf"(?:(?:{_THAT} )?(?:(?:in|into|to) )?(?:the )?(?:wrong (?:bin|one)|other (?:one|bin))|"
    rf"{_THAT} (?:a )?different (?:one|bin)|(?:{_THAT} )?not (?:in )?that (?:bin|one)|"
    r"you(?:ve)? (?:have )?(?:put|logged|wrote|written|got|recorded|noted)"
    r"(?: (?:that|it|this|mine))?(?: down)?(?: (?:in|to|into|under|for|on))? the wrong (?:bin|one))"
    + END
)
_WRONG = Late(
    LEAD + rf"(?:{_THAT} (?:all |just |not |the )*(?:wrong|correct|incorrect)"
    r"(?: amount| number| figure)?|(?:that|it|this) (?:'s |is |was )?(?:not|isnt|wasnt)(?: right)?)"
    + END
)
_ENTRY = (
    r"(?:(?:my|the|that|this|our) (?:(?:very )?(?:last|previous|latest|recent) "
    r"(?:entry|record|layer|log|one|message)|(?:last|previous|entry|record)))"
)
_TO_CORRECT = Late(
    LEAD + r"(?:(?:please|pls|kindly|bot|just|can|could|would|will|you|we|i|let|me|have|need|want|"
    r"like|'d|id|got|gotta|to) )*"
    r"(?:correct|fix|amend|change|edit|update|adjust|alter|rectify) "
    rf"{_ENTRY}(?: (?:for me|please|pls|thanks|bot))*{END}|{LEAD}{_ENTRY} (?:needs?|wants?) "
    rf"(?:correcting|fixing|amending|changing|editing|to be (?:corrected|fixed|changed)){END}"
)
"""A correction is announced, and not said: "please correct my last entry"."""
_CAN_I = Late(r"\b(?:can|could|would|will) (?:i|we)\b")
"""How that is done is asked: "can I change my last entry"."""
_CORRECTING = words_in(
    "correct fix amend change edit update adjust alter rectify correcting fixing amending changing "
    "editing corrected fixed changed"
)
_UNDONE = Late(
    r"^(?:(?:oh|ah|oops|sorry|wait|hang on|hmm|ok|well|no|,|[.]) )*"
    r"(?:actually (?:no|not)(?: yet)?|no actually|not yet actually|"
    r"(?:i )?spoke too soon|false alarm|(?:it )?(?:isnt|is not|wasnt|was not|'s not) done"
    r"(?: after all| yet)?|i (?:didnt|havent|did not|have not)(?: after all)?)(?:$| [,.;-])"
)
_TAKING_BACK = words_in("no oops sorry wait actually")
_NOT_YET = Late(
    r"^(?:(?:oh|ah|oops|sorry|wait|hang on|hmm|ok|well|no|nope|actually|but|i mean|,|[.]) )*"
    r"(?:(?:no|not)(?: (?:sealed|drained|buried|done))? yet|not (?:now|today))"
    r"(?: [,.;-])*(?: (?:(?:but|it is|that is|i mean|only|just|(?:i|we) (?:will|am|are)|will|'ll|"
    r"do|doing|seal|drain|bury|sealing|draining|burying|going to|gonna|it|that|on|rather) )*qday)?"
    r"(?: (?:sorry|instead|actually|[,.!]))*$"
)
"""The deed that the sender has just told is still to be done: "no not yet, tomorrow"."""
_COMING = words_in("am im 'm are 're you we going coming thanks")
_DENYING = words_in("wrong not incorrect isnt wasnt")
_CUES = _DENYING | _CORRECTING | words_in("other different")


def undone(message: Message) -> Retract | None:
    """ "Actually no, the tap's stuck": the deed just told was not done; nothing else is told."""
    last, led = message.context.last, message.norms[0] in _TAKING_BACK
    if not isinstance(last, Drain | Seal | Bury) and not (isinstance(last, Layer) and led):
        return None
    if message.bins or message.amounts or message.members or message.items:
        return None
    if last.member in (None, message.context.sender) and _is_still_to_do(message):
        return Retract(rules=("not done after all",))
    if message.days or "?" in message.said:
        return None
    if message.has(_COMING):
        return None  # "actually no, I'm not coming"
    found = _UNDONE.search(" ".join(message.norms).strip(" .!"))
    return Retract(rules=("not done after all",)) if found else None


def _is_still_to_do(message: Message) -> bool:
    """Whether it is told as not done yet; a day said with it lies ahead."""
    ahead = all(day.future > message.today for day in message.days)
    return ahead and _NOT_YET.search(plain_text(message, days=True)) is not None


def only_wrong(message: Message) -> Retract | None:
    """The striking out that may be meant; None if more is said, or nothing is called wrong."""
    if not message.has(_CUES) or (not message.bot and spoken_of(message) is None):
        return None
    if any(b.known for b in message.bins) or message.measured():
        return None
    said = [norm for i, norm in enumerate(message.norms) if i not in message.bot]
    text = " ".join(said).strip(" ,.!?")
    if message.has(_CORRECTING) and _TO_CORRECT.search(text) and not _CAN_I.search(text):
        return Retract(rules=(ONLY_WRONG,))
    if "?" in message.said:
        return None
    if _BIN.search(text):
        return Retract(rules=(WRONG_BIN,))
    wrong = _WRONG.search(text) and not _DENYING.isdisjoint(message.said)
    return Retract(rules=(ONLY_WRONG,)) if wrong else None
