"""One of the last records called by its day: "Tuesday's wasn't me, it was Bram", "and Mon was red",
"Wed was 900 not 800", "Monday's was a typo: 200 g", "scratch the Monday one".

Every word is accounted for, so that no score is asked.
"""

from dataclasses import replace

from handlers.reading.acts import Amend, Drain, Layer, Retract
from handlers.reading.calendar.days import Day
from handlers.reading.corrections.leaning import spoken_of
from handlers.reading.corrections.numberright import number_of_talk
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.corrections.unitright import amount_of
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import makeup
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.people.members import MemberRef
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.spans import accounted
from handlers.reading.words.vocabulary import words_in

RULE = "a record called by its day"
CUES = words_in(
    "was were wasnt is isnt went should scratch strike delete remove erase cancel undo typo slip "
    "mistake error"
)
"""Words without one of which no record is called by its day."""
_MOST_WORDS = 16
_LEAD = (
    r"^(?:(?:oh|no|nope|sorry|oops|wait|actually|and|also|but|ah|ok|correction|please|bot|,|[.]|:|-)"
    r" )*"
)
_ONE = r"(?:one|lot|layer|entry|record|scraps|stuff)"
_OWNED = rf"(?:(?:the|my) )?qday (?:'s(?: {_ONE})?|{_ONE})"
_CALLED = rf"(?:{_OWNED}|(?:(?:the|my) )?qday|the {_ONE} (?:(?:from|of|on) )?qday)"
_BEING = r"(?:was|were|is|(?:should|shd|must|ought to) (?:be|have been|read|say))"
_ABOUT = r"(?: (?:really|actually|only|just|about|more like|all|in fact))*"
_END = r"(?: (?:sorry|actually|please|in fact|i think|though|instead|[,.!]))*$"
_PERSON = r"(?:qwho(?: 's)?|mine|me)"
_FIGURE = r"(?:qmuch|\d[\d.,]*)"
_SLIP = r"(?:typo|slip|mistake|error)"
_WRONG = (
    rf"(?: (?:[,.:;-]|was|is|'s|has|had|got|a|my|an|the|just|amount|weight|{_SLIP}|wrong|off))+"
    r"(?: (?:,|[.:;-]|and|it|that|was|is|'s|should|must|be|have|been|read|say|really|actually|only|"
    r"just|about|meant|to))*"
)
"""What is said of a wrong record, before what is right of it."""
_FORMS = Late(
    _LEAD
    + r"(?:(?P<struck>(?:scratch|strike(?: out)?|delete|remove|erase|undo) "
    + rf"{_CALLED}|cancel {_OWNED})|"
    # "Wed was 900 not 800"
    + rf"(?:{_CALLED}(?P<wrong> {_FIGURE})? {_BEING}{_ABOUT}|{_OWNED}{_WRONG}|"
    # as "yesterday's was a typo, should be 200 g", "typo in yesterday's: 200 g"
    + rf"(?:(?:a|my) )?{_SLIP} (?:in|with|on) {_OWNED}{_WRONG}) (?P<much>{_FIGURE})"
    + rf"(?:(?: ,)? not {_FIGURE})?|"
    # "Mon was red", "Friday's went in red"
    + rf"{_CALLED} (?:{_BEING}|went|goes|should (?:go|have gone)){_ABOUT}(?: (?:in|into|to))?"
    + r"(?: the)? (?P<bin>qbin)(?:(?: ,)? not (?:in |into )?(?:the )?qbin)?|"
    # "the Wednesday one was bread", "Thursday's should be Friday"
    + rf"{_OWNED} {_BEING}{_ABOUT} (?P<item>qitem)(?:(?: ,)? not qitem)?|"
    + rf"{_OWNED} {_BEING}{_ABOUT} (?:on )?(?P<day>qday)(?: 's)?|"
    # "Monday's was Zoe's", "Tuesday's wasn't me, it was Bram"
    + rf"{_OWNED} {_BEING}{_ABOUT}(?: (?:by|from))? (?P<who>{_PERSON})"
    + rf"(?:(?: ,)? not {_PERSON})?|"
    + rf"{_OWNED} (?:wasnt|isnt|(?:was|is|were) not)(?: (?:by|from))? {_PERSON}(?: [,.;-])*"
    + rf"(?: (?:but|it|that|was|is|'s|by|from))* (?P<other>{_PERSON}))"
    + _END
)


def of_that_day(message: Message) -> Amend | Retract | None:
    """What is to be struck out or put right of the layer told of one day, or drained on it."""
    last = spoken_of(message)
    if not message.days or len(message.norms) > _MOST_WORDS or not isinstance(last, Layer | Drain):
        return None
    if "?" in message.said or (message.members and message.asked):
        return None
    day = message.days[0]
    found = _FORMS.match(by_kinds(message))
    if found is None or day.past > message.today:
        return None
    which = Layer(on=day.past)
    if found["struck"]:
        return Retract(which=which, rules=(RULE,)) if isinstance(last, Layer) else None
    wrong = [a.end for a in message.measured() if a.start >= day.end and found["wrong"]]
    right = _right(message, found.lastgroup, wrong[0] if wrong else day.end)
    if right is None or isinstance(last, Layer):
        return right and replace(right, which=which, rules=(BY_FORM, RULE))
    drained = right.volume_l is not None
    return replace(right, was=day.past, what="drain", rules=(BY_FORM, RULE)) if drained else None


def _right(message: Message, what: str | None, start: int) -> Amend | None:
    """What is right of it: the first such thing behind what calls it."""
    match what:
        case "much":
            return _much(message, start)
        case "bin":
            refs = [b for b in (*message.bins, *message.named) if b.start >= start]
            return Amend(bin=refs[0].name) if refs[0].known and refs[0].name else None
        case "item":
            made = makeup([i for i in message.items if i.start >= start and not i.generic][:1])
            return None if made is None else Amend(materials=made.shares, rich=made.rich)
        case "day":
            other = message.days[1].past
            return Amend(on=other) if other <= message.today else None
    return _who(message, start, last=what == "other")


def _much(message: Message, start: int) -> Amend | None:
    amounts = [a for a in message.measured() if a.start >= start]
    if amounts:
        return amount_of(amounts[0].quantity, amounts[0].value)
    figure = next(i for i in range(start, len(message.norms)) if message.norms[i][0].isdigit())
    number = read_number(message.words, figure)
    return None if number is None else number_of_talk(number.value, message)


def _who(message: Message, start: int, *, last: bool) -> Amend | None:
    """The member who did it, by name, or the sender: "mine"."""
    told = [(m.start, m.name) for m in message.members if m.start >= start]
    sender = message.context.sender
    own = [(i, sender) for i in range(start, len(message.norms)) if message.norms[i] in _ME]
    people = sorted([(at, name) for at, name in (*told, *own) if name is not None])
    return Amend(member=people[-1 if last else 0][1]) if people else None


_ME = words_in("me mine")


def by_kinds(message: Message) -> str:
    """The words, with what the reading knows put in as one word for its kind."""
    spans = (message.items, message.amounts, message.members, message.named, message.bins)
    return " ".join(
        piece if isinstance(piece, str) else _KINDS[type(piece)]
        for piece in accounted(message.norms, *spans, message.days)
    )


_KINDS = {Day: "qday", Amount: "qmuch", BinRef: "qbin", Item: "qitem", MemberRef: "qwho"}
