"""Questions about the calendar that say whose, by when or which: "who's late?", "what's mine?"."""

import re
from collections.abc import Iterator
from datetime import timedelta

from handlers.reading.acts import Ask, Observe
from handlers.reading.arranged import KeepUp, Show
from handlers.reading.calendar.daywords import MONTHS, WEEKDAYS
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.questions.daysasked import days_asked
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = (
    "due", "late", "mine", "calendar", "ics", "ical", "jobs", "dues", "plate", "overdue", "for me",
    "to do", "i do", "to be done", "next four weeks", "i got", "behind", "i have to", "i need to",
    "when ", "how long", "what day", "ripe", "s on ", "is on ", "anything on", "coming up",
    " now", " yet", "time to ", " ready", "should i ", "should we ", "bury", "dig ", "seal ",
    "draining", "drained", "to drain", "sealing", "burial", "burying", "urgent", "left to do",
    "forgotten", "happening", "planned", "the plan", "got to do", "need to do", "have to do",
    "show ", "list ",
)  # fmt: skip

LATE = "late"
"""In `Ask.what`: only what should have been done before."""

_BEFORE = r"(?:(?:hey|hi|hello|ok|so|and|please|pls|bot|tell me|show me|,) )*"
_AFTER = r"(?: (?:please|pls|then|now|again|today|currently|at the moment|in the group|,))*"
_WHATS = r"(?:what(?: is| 's)|whats)"
_DUE = (
    r"(?:what(?: is| 's| are)?(?: (?:all|still|there|our))?|anything|any bins|which bins are|"
    r"is anything|whats) (?:(?:is|are) )?(?:due|to be done|on the calendar)"
)
_WHAT = Late(rf"{_BEFORE}{_DUE}(?P<more>.*)")
_ON = Late(
    rf"{_BEFORE}(?:{_WHATS}|anything|is anything|is there anything|what is there|what have we got) "
    r"(?:on|to do|coming up)(?: (?:for|on|in|of|the|this|next|coming|with|bins?|calendar|today|"
    rf"tomorrow|tonight|week|weekend|month|\d\d?|st|nd|rd|th|{'|'.join(WEEKDAYS)}|"
    rf"{'|'.join(MONTHS)}))+{_AFTER}"
)
"""With no word in it but days: "what's on next week?"."""
_SHOWN = Late(
    r"(?:(?:can you|could you|please|ok|and|bot|now|,) )*(?:show|list)(?: me| us)?"
    r"(?: (?:everything|all|on|for|in|the|this|next|coming|rest|of|one|two|three|four|days?|"
    rf"weeks?|weekend|months?|today|tomorrow|\d\d?|st|nd|rd|th|{'|'.join(WEEKDAYS)}|"
    rf"{'|'.join(MONTHS)}))+{_AFTER}"
)
"""Days to be shown, behind words of ours: "show me the next two weeks"."""
_LATE = Late(
    rf"{_BEFORE}(?:who(?: is| 's| are| else is)|{_WHATS}|anyone|anybody|anything|"
    r"is any(?:one|body|thing)|which bins? (?:is|are)|who is running) (?:late|overdue|behind)"
    rf"(?: with (?:the|their|a) bins?)?{_AFTER}"
)
_MINE = Late(
    rf"{_BEFORE}(?:{_WHATS} (?:mine|mine to do|due for me)|(?:what are )?my dues|"
    rf"anything due for me|just mine|mine only|only mine){_AFTER}"
)
_MINE_TO_BOT = Late(
    rf"{_BEFORE}(?:mine|{_WHATS} (?:my (?:jobs?|turn|part)|on my plate)|"
    r"what (?:do|must|should) i (?:have |need )?(?:to )?do"
    r"(?: (?:this week|today|next|with the bins?))?|"
    r"my jobs|anything (?:for me|i (?:have|need) to do|i should do)|what have i got(?: to do)?)"
    rf"{_AFTER}"
)
_TIME = (
    r"(?: (?:for|on|in|of|the|this|next|coming|with|qday|first|last|after|today|tomorrow|tonight|"
    rf"week|weekend|month|fortnight|bins?|calendar|{'|'.join(MONTHS)}))"
)
"""A word of a time, or of the bins."""
_TO_DO = Late(
    rf"{_BEFORE}(?:{_WHATS} (?:left to do|coming up)|(?:is )?anything (?:coming up|left to do|on)|"
    r"(?:what|which jobs?) (?:do|must|should) we (?:still )?(?:have|need) to do)"
    rf"{_TIME}+{_AFTER}"
)
_HAPPENING = Late(
    rf"{_BEFORE}(?:{_WHATS}|(?:is )?anything) (?:happening|planned|the plan|in the plan){_TIME}+"
    rf"{_AFTER}"
)
"""What neighbours ask each other, unless a bin or the bot is named."""
_BINS = words_in("bin bins calendar")
_WE_TO_DO = Late(
    rf"{_BEFORE}(?:have we (?:forgotten|missed) anything|(?:is )?anything urgent|"
    rf"{_WHATS} (?:left to do|urgent))(?: with the bins| today| now)*{_AFTER}"
)
"""What should have been done by today."""
_I_TO_DO = Late(
    rf"{_BEFORE}(?:what (?:have|'ve) i got to do|what do i (?:have|need) to do|"
    rf"do i (?:have|need) to do anything|have i got anything to do){_TIME}+{_AFTER}"
)
_MY = Late(
    rf"{_BEFORE}when (?:does|do|should|must|can|is|will) (?:my (?:bin|bucket|pail|one)|mine|i) "
    r"(?:next )?(?:need(?:s)? |have )?(?:to )?(?:be |get )?(?P<verb>buried|bury|burying|sealed|"
    rf"seal|sealing|drained|drain|draining)(?: next| again| mine)?{_AFTER}(?: \?)?"
)
"""Of the sender's own bins: "when do I drain next?"."""
_DEED = (
    r"(?P<verb>buried|bury|burying|burials?|digging in|sealed|seal|sealing|drained|drain|draining)"
)
_OF_DEED = Late(
    rf"{_BEFORE}(?:(?:what|which(?: bins?)?|who|whose(?: bin)?|anyone|anybody)"
    r"(?: (?:else|still|all|bins?))* (?:needs?|wants?|has|have|is|are|'s)(?: (?:still|due|left|to "
    r"be|to|for|next))* "
    rf"{_DEED}|(?:has|have) (?:everyone|everybody|anyone|we all) {_DEED.replace('verb', 'all')}|"
    rf"(?:when(?: is| 's| are)? )?(?:the |our |we )?(?:next )?{_DEED.replace('verb', 'next')}"
    rf"(?: next)?)(?: due)?{_TIME}*{_AFTER}"
)
"""By the deed alone: "what needs draining?", "when's the next burial?"."""
_ONLY_DEED = Late(rf"{_BEFORE}(?:only|just)(?: the)? {_DEED}s?{_AFTER}")
_DOES = Late(
    rf"{_BEFORE}what (?:does|must|should|has) qmember "
    r"(?:have to do|need to do|do|got|got to do|have)(?P<more>.*)"
)
_FOR = Late(r" (?:for|with|of) qmember(?= |$)")
_WHEN = Late(
    rf"{_BEFORE}(?:when (?:can|should|do|must|will|is|are|does|shall|could|to)|"
    r"how long (?:until|till|before)|by when (?:must|should|do)|what day (?:can|should|do)) .*?"
    r"(?P<verb>buried|bury|sealed|seal|closed|close|drained|drain|emptied|planted|plant|ready|"
    r"dug in|dig in|go in the ground)(?P<more>.*)"
)
_ACTS = {
    "buried": "bury", "bury": "bury", "dig": "bury", "burying": "bury", "burial": "bury",
    "ready": "bury", "burials": "bury", "digging in": "bury", "sealing": "seal",
    "draining": "drain",
    "emptied": "bury", "dug in": "bury", "dig in": "bury", "go in the ground": "bury",
    "sealed": "seal", "seal": "seal", "close": "seal", "closed": "seal", "drained": "drain",
    "drain": "drain", "empty": "drain", "planted": "plant", "plant": "plant",
}  # fmt: skip
_MAY = Late(
    rf"{_BEFORE}(?:can|could|may|should|shall|is it (?:ok|okay|fine|alright|all right|safe)"
    r"(?: for (?:us|me))? to) (?:i |we )?(?:now |already |just )?(?P<verb>bury|dig in|dig) "
    r"(?:the )?"
)
"""What stands before the bin in a question whether it may be buried."""
_IN_POTS = Late(r"\b(?:pots?|planters?|boxe?s?|tubs?|containers?)\b")
_KINDS = (
    r"picture of the calendar|calendar picture|calendar as a picture|calendar file|"
    r"calendar as a file|file of the calendar|calendar|next four weeks|ics|ics file|ical|ical file"
)
_RIPE = Late(
    rf"{_BEFORE}(?:{_WHATS}|(?:which|what|are any|any)(?: of (?:the|our))? "
    r"(?:bins?|pails?|buckets?)(?: is| are)?|(?:is )?anything) (?:ripe|ready)"
    r"(?: (?:(?:to|for) (?:be )?)?(?P<verb>bury|buried|burying|seal|sealed))?"
    rf"{_AFTER}(?: \?)?"
)
_WHETHER = Late(
    rf"{_BEFORE}(?:(?:can|could|may|should|shall|do|must) (?:i|we|you) (?:already |now )?"
    r"(?P<deed>bury|dig in|seal|close|drain|empty)|is it (?:already )?time to (?P<time>bury|seal|"
    r"close|drain)) (?:the |our |my )?(?P<bin>qbin)(?: up| off)?(?P<when>(?: (?:now|yet|already|"
    r"today))*)(?: \?)?|(?:is|are) (?:the |our |my )?(?P<of>qbin) (?:is )?(?:ready|ripe)"
    r"(?: (?:to|for) (?:be )?(?P<verb>bury|buried|burying|burial|seal|sealed|drain|drained))?"
    r"(?: (?:now|yet|already|today))*(?: \?)?"
)
_OURS = Late(r"\b(?:bins?|pails?|buckets?)\b|\bwhat.* ripe\b")
_SHOW = Late(
    rf"{_BEFORE}(?:(?:can you |could you )?(?:show|post|send|draw|share|give|see)(?: me| us)?"
    rf"(?: a| an| the| our)? (?P<kind>{_KINDS})|(?P<bare>calendar picture|calendar file)){_AFTER}"
)
_PIN = Late(
    rf"{_BEFORE}(?P<verb>pin|put up|hang up|unpin|take down|stop pinning|dont pin)(?: up)?"
    rf"(?: the| our)? (?:pinned )?calendar(?: again| back| down| up)*{_AFTER}"
)
_DOWN = ("unpin", "take down", "stop pinning", "dont pin")
_FILES = ("file", "ics", "ical")


def due_questions(message: Message) -> Iterator[Found]:
    """Every question about the calendar that says more than "what's due?"."""
    for sentence in message.sentences:
        plan = _asked(message, sentence.start, sentence.end)
        if plan is not None:
            yield Found(sentence.start, sentence.end, plan)


def _asked(message: Message, start: int, end: int) -> Ask | Show | KeepUp | None:
    text = _text(message, start, end)
    if match := _SHOW.fullmatch(text):
        kind = match["kind"] or match["bare"] or ""
        return Show(as_file=any(word in kind for word in _FILES))
    if match := _PIN.fullmatch(text):
        return KeepUp(wanted=match["verb"] not in _DOWN)
    if _LATE.fullmatch(text):
        return Ask(topic="due", what=LATE)
    to_bot = bool(message.bot) or message.context.after_bot
    of_sign = isinstance(message.context.last, Observe)  # "what do I do?" is asked about it
    if _MINE.fullmatch(text) or (to_bot and not of_sign and _MINE_TO_BOT.fullmatch(text)):
        first, on = days_asked(message, start, end, text)
        return Ask(topic="due", member=message.context.sender, first=first, on=on)
    if asked := _by_deed(message, start, end, to_bot=to_bot):
        return asked
    ripe = _RIPE.fullmatch(text)
    if ripe and (to_bot or ripe["verb"] or _OURS.search(text)):
        what = _ACTS[ripe["verb"] or "bury"]
        return Ask(topic="due", what=what, first=message.today, on=message.today)
    if asked := _is_ready(message, start, end) or _days_shown(message, start, end, text):
        return asked
    if _WHAT.fullmatch(text) or _DOES.fullmatch(text) or _ON.fullmatch(text):
        return _narrowed(message, start, end, text)
    if (match := _WHEN.fullmatch(text)) or (match := _may_be_buried(message, start, end, text)):
        return _when(message, start, end, match)
    return None


def _by_deed(message: Message, start: int, end: int, *, to_bot: bool) -> Ask | None:
    """What is to be done of one kind, by the whole group, or by the sender, told with its time."""
    text = _text(message, start, end, days=True).removesuffix(" ?")
    first, on = days_asked(message, start, end, _text(message, start, end))
    named = to_bot or any(ref.known or ref.plain for ref in message.bins) or message.has(_BINS)
    if mine := _MY.fullmatch(text):
        return Ask(topic="due", member=message.context.sender, what=_ACTS[mine["verb"]])
    if named and _WE_TO_DO.fullmatch(text):
        return Ask(topic="due", on=message.today)
    if _I_TO_DO.fullmatch(text):
        return Ask(topic="due", member=message.context.sender, first=first, on=on)
    if on is not None and (_TO_DO.fullmatch(text) or (named and _HAPPENING.fullmatch(text))):
        return Ask(topic="due", first=first, on=on)
    match = _OF_DEED.fullmatch(text) or (_ONLY_DEED.fullmatch(text) if to_bot else None)
    if match is None:
        return None
    deed = next(said for said in match.groupdict().values() if said)
    asks = match.group() != deed and (to_bot or not text.startswith(deed))
    return Ask(topic="due", what=_ACTS[deed], first=first, on=on) if asks else None


def _narrowed(message: Message, start: int, end: int, text: str) -> Ask | None:
    """ "What's due", where it says for whom or by when; else the reading contract has it."""
    members = [m.name for m in message.members if start <= m.start < end]
    asked_of = members[0] if members and (_FOR.search(text) or _DOES.fullmatch(text)) else None
    if " for me" in text:
        asked_of = message.context.sender
    first, on = days_asked(message, start, end, text)
    bins = [bin.name for bin in message.bins if start <= bin.start < end and bin.name]
    if asked_of is None and on is None:
        return None
    return Ask(topic="due", member=asked_of, first=first, on=on, bin=bins[0] if bins else None)


def _when(message: Message, start: int, end: int, match: re.Match[str]) -> Ask | None:
    """ "When can the blue one be buried?": only of a bin that is known."""
    bins = [b.name for b in message.bins if start <= b.start < end and b.known and b.name]
    if not bins:
        return None
    return Ask(topic="due", bin=bins[0], what=_ACTS[match["verb"]])


def _is_ready(message: Message, start: int, end: int) -> Ask | None:
    """ "Can we bury green now?", "is it time to seal the shed?": whether it is due by today."""
    refs = [b for b in message.bins if start <= b.start < end and b.known and b.name]
    if len(refs) != 1:
        return None
    [ref] = refs
    norms = message.norms
    text = " ".join([*norms[start : ref.start], "qbin", *norms[ref.end : end]])
    match = _WHETHER.fullmatch(text)
    if match is None:
        return None
    what = _ACTS[match["deed"] or match["time"] or match["verb"] or "bury"]
    return Ask(topic="due", bin=ref.name, what=what, first=message.today, on=message.today)


def _may_be_buried(message: Message, start: int, end: int, text: str) -> re.Match[str] | None:
    """ "May I bury the shed under the plum?": a bin is what is to be buried, and not where."""
    match = None if _IN_POTS.search(text) else _MAY.match(text)
    lead = match and match.group().rstrip()
    refs = [ref for ref in message.bins if start < ref.start < end]
    return match if any(_text(message, start, ref.start) == lead for ref in refs) else None


def _days_shown(message: Message, start: int, end: int, text: str) -> Ask | None:
    """ "Show me the next two weeks", behind words of ours."""
    if not (message.bot or message.context.after_bot) or _SHOWN.fullmatch(text) is None:
        return None
    first, on = days_asked(message, start, end, text)
    for amount in message.amounts if on is None else ():
        if amount.quantity == "days" and start <= amount.start < end:
            on = message.today + timedelta(days=round(amount.value))
    return Ask(topic="due", first=first, on=on) if on else None


def _text(message: Message, start: int, end: int, *, days: bool = False) -> str:
    """The words of a sentence, members as one word; so are days, if that is wished."""
    members = {m.start: m for m in message.members if not m.owner}
    dated = {day.start: day for day in message.days} if days else {}
    norms: list[str] = []
    i = start
    while i < end:
        member, day = members.get(i), dated.get(i)
        if i not in message.bot and not (message.norms[i] == "," and not norms):
            norms.append("qmember" if member else "qday" if day else message.norms[i])
        i = member.end if member else day.end if day else i + 1
    return " ".join(norms)
