"""A member asks to have a bin that another keeps, and the keeper's answer: "can I have the hall bin
next week?", "sure, take it on Sunday".
"""

from collections.abc import Iterator
from datetime import date

from handlers.reading.arrangements.communal import Wanting
from handlers.reading.arrangements.handedon import lent, while_away
from handlers.reading.calendar.stretches import coming
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

CUES = (
    *("while ", "whilst ", "meanwhile", "until ", "till "),
    *("can ", "could ", "may ", "mind if", "ok if", "okay if", "fine if", "alright if", "shall i"),
)
_LEAD = (
    r"(?:(?:any chance|is there any chance|do you think|qmember) )*"
    r"(?:(?:can|could|may|might|shall) (?:i|we)|(?:(?:do|would) you )?mind if (?:i|we)|"
    r"(?:is it |would it be )?(?:ok|okay|fine|alright) if (?:i|we)|(?:i|we) could)"
)
_HAVE = (
    r"(?:have|take|take over|take on|mind|look after|keep|host|be next (?:with|for)|"
    r"had|took|took over|kept|minded|hosted)"
)
_WHEN = (
    r"(?: (?:over|on|at mine|at ours|please|pls|next|then|instead|after (?:that|you|qmember)|"
    r"(?:from |on |for |this |this coming )?(?:the )?qday(?: on(?:wards)?)?|from then|(?:for )?"
    r"(?:next|this) (?:week|month|weekend|time)|for (?:a|the|one|two|a few|the next) "
    r"(?:weeks?|bit|while|months?|fortnight|days?)|from (?:now|then) on|qmember))*"
)
_WANTED = Late(rf"^{_LEAD} {_HAVE} (?P<bin>(?:the |your )?qbin|it|that one){_WHEN}$")
"""Nothing else may stand behind it: "can I take the green bin out" is no wish to keep it."""
_WANTED_MEANWHILE = Late(rf"^{_LEAD} {_HAVE} (?:the |your )?qbin(?: \S+){{0,9}}$")
_PROMISED = Late(
    rf"^(?:(?:no problem|sure|yes|qmember) )*(?:i|we)(?: can|'ll| will| could|'d| would)?"
    rf"(?: (?:happily|gladly|easily|happy to))* {_HAVE} (?:the |your |qmember 's )?qbin"
    r"(?: \S+){0,9}$"
)
"""The same for as long as its keeper is away: "I can have the shed while you're gone"."""

_YES = (
    r"(?:oh|ok|okay|yes|yep|yeah|yup|sure|aye|of course|no worries|no problem|certainly|gladly|"
    r"absolutely|definitely|fine|please do|go ahead|go for it|be my guest|help yourself|"
    r"please|great|lovely|perfect|cool|by all means|that works|thanks|thank you|with pleasure|"
    r"works for me|fine (?:by|with) me|no bother|course|all yours|sounds good|cheers|"
    r"(?:that|it)(?: is| 's| would be| will be|'d be|'ll be) (?:so |very |really )?(?:great|lovely|"
    r"perfect|good|kind(?: of you)?|brilliant|wonderful|fantastic|super|a (?:great |big )?help)|"
    r"you are a (?:star|gem|love|lifesaver)|brilliant|wonderful|fantastic)"
)
_TAKE = (
    r"(?:(?:you can |you may |do |just )?(?:take|have|fetch|get|collect|grab|pick) "
    r"(?:it|her|him|(?:the )?qbin)(?: up| over)?|(?:it is|it 's|she is|she 's) (?:all )?yours)"
)
_GIVEN = Late(
    rf"^(?=\S)(?:{_YES}(?: qmember)?(?: |$))*(?:(?:from |on )?qday(?: |$))?(?:{_TAKE}(?: |$))?"
    r"(?:(?:from |on |but |only |not before |this |the |then |please |qmember )*"
    r"(?:qday|next week|next month|then|please|qmember|thanks)?(?: on)?(?: |$))*$"
)
_REFUSED = Late(
    r"^(?:(?:oh|ah|er|um|sorry|actually) )*(?:no|nope|nah|not (?:yet|really|now|this time)|"
    r"rather not|i (?:would|'d) rather (?:keep|not)|i (?:want|need|would like) to keep|"
    r"i (?:am|'m) keeping)\b"
)
_LONGEST_ANSWER = 12


def wanting(message: Message) -> Iterator[Found]:
    """The bin that the sender asks to have, if a sentence asks no more than that."""
    for phrase in phrases(message):
        bins = phrase.known_bins
        if len(bins) > 1 or not _is_wish(phrase):
            continue
        wish = Wanting(bin=bins[0].name if bins else None, on=_day(phrase))
        yield Found(*phrase.sentence, lent(wish, message))
        return


def _is_wish(phrase: Phrase) -> bool:
    if _WANTED.match(phrase.text):
        return True
    form = _WANTED_MEANWHILE if phrase.asked else _PROMISED
    return form.match(phrase.text) is not None and while_away(phrase.message) is not None


def leave(message: Message) -> tuple[bool, date | None] | None:
    """Whether a keeper says yes to one who asked for a bin, and from which day; None if neither."""
    said = phrases(message)
    if not said or len(message.words) > _LONGEST_ANSWER or any(one.asked for one in said):
        return None
    if _REFUSED.match(said[0].text):
        return False, None
    if not all(_GIVEN.match(one.text) for one in said):
        return None
    return True, next(filter(None, map(_day, said)), None)


def _day(phrase: Phrase) -> date | None:
    """The day from which it is to be had."""
    day = phrase.days[0] if phrase.days else None
    return coming(day.past, day.future, phrase.message.today) if day else None
