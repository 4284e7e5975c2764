"""Questions about the calendar that say whose, by when or which: "who's late?", "what's mine?"."""

import re
from collections.abc import Iterator
from datetime import timedelta

from handlers.reading.acts import Ask, Observe
from handlers.reading.arranged import KeepUp, Show
from handlers.reading.calendar.daywords import MONTHS, WEEKDAYS
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.questions.dayandhole import asks_hole
from handlers.reading.questions.daysasked import days_asked
from handlers.reading.questions.duekinds import (
    ACTS,
    AFTER,
    BEFORE,
    DEED,
    DUE,
    OURS,
    WHATS,
    of_a_kind,
    of_it,
    whether_done,
)
from handlers.reading.questions.dueofbin import of_one_bin, to_do_with
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = (
    "due", "late", "mine", "why ", "calendar", "ics", "ical", "jobs", "dues", "plate", "overdue",
    "for me", "s on?", "got on", "buried", "drain ",
    "to do", "i do", "to be done", "next four weeks", "i got", "behind", "i have to", "i need to",
    "when ", "how long", "what day", "ripe", "s on ", "is on ", "anything on", "coming up",
    " now", " yet", "time to ", " ready", "should i ", "should we ", "bury", "dig ", "seal ",
    "draining", "drained", "to drain", "sealing", "burial", "burying", "urgent", "left to do",
    "forgotten", "is next", "s next", "s the next", "can be planted", "fermenting", "sealed",
    "shut", "happening", "planned", "the plan", "got to do", "need to do", "have to do",
    "need any", "need some", "anything i", "be doing",
    "drains", "seals", "buries", "show ", "list ", "schedule", "agenda",
    "which bin", "which of", "which bucket",
)  # fmt: skip

_WHAT = Late(rf"{BEFORE}{DUE}(?P<more>.*)")
_ON = Late(
    rf"{BEFORE}(?:{WHATS}|anything|is anything|is there anything|what is there|what have we got) "
    r"(?:on|to do|coming up)(?: (?:first|second|third|fourth|last|for|on|in|of|the|this|next|"
    rf"coming|with|bins?|calendar|schedule|agenda|today|tomorrow|tonight|week|weekend|month|\d\d?|st|"
    rf"nd|rd|th|{'|'.join(WEEKDAYS)}|"
    rf"{'|'.join(MONTHS)}))+{AFTER}"
)
"""With no word in it but days: "what's on next week?"."""
_SHOWN = Late(
    r"(?:(?:can you|could you|please|ok|and|bot|now|,) )*(?:show|list)(?: me| us)?"
    r"(?: (?:everything|all|on|for|in|the|this|next|coming|rest|of|one|two|three|four|days?|"
    rf"weeks?|weekend|months?|today|tomorrow|\d\d?|st|nd|rd|th|{'|'.join(WEEKDAYS)}|"
    rf"{'|'.join(MONTHS)}))+{AFTER}"
)
"""Days to be shown, behind words of ours: "show me the next two weeks"."""
_MINE = Late(
    rf"{BEFORE}(?:{WHATS} (?:mine|mine to do|due for me)|(?:what are )?my dues|"
    rf"anything due for me|just mine|mine only|only mine){AFTER}"
)
_MINE_TO_BOT = Late(
    rf"{BEFORE}(?:mine|{WHATS} (?:my (?:jobs?|turn|part)|on my plate)|"
    r"what (?:do|must|should) i (?:have |need )?(?:to )?do"
    r"(?: (?:this week|today|next|with the bins?))?|"
    r"my jobs|anything (?:for me|i (?:have|need) to do|i should do)|what have i got(?: to do)?)"
    rf"{AFTER}"
)
_TIME = (
    r"(?: (?:for|on|in|of|the|this|next|coming|with|qday|first|last|after|today|tomorrow|tonight|"
    rf"week|weekend|month|fortnight|bins?|calendar|{'|'.join(MONTHS)}))"
)
"""A word of a time, or of the bins."""
_TO_DO = Late(
    rf"{BEFORE}(?:{WHATS} (?:left to do|coming up)|(?:is )?anything (?:coming up|left to do|on)|"
    r"(?:what|which jobs?) (?:do|must|should) we (?:still )?(?:have|need) to do)"
    rf"{_TIME}+{AFTER}"
)
_HAPPENING = Late(
    rf"{BEFORE}(?:{WHATS}|(?:is )?anything) (?:happening|planned|the plan|in the plan)"
    rf"(?: with (?:the )?\S+(?: \S+)??)?{_TIME}+{AFTER}"
)
"""What neighbours ask each other, unless a bin or the bot is named."""
_BINS = words_in("bin bins calendar")
_WE_TO_DO = Late(
    rf"{BEFORE}(?:have we (?:forgotten|missed) anything|(?:is )?anything urgent|"
    rf"{WHATS} (?:left to do|urgent))(?: with the bins| today| now)*{AFTER}"
)
"""What should have been done by today."""
_I_TO_DO = Late(
    rf"{BEFORE}(?:what (?:have|'ve) i got to do|what do i (?:have|need) to do|"
    rf"do i (?:have|need) to do anything|have i got anything to do){_TIME}+{AFTER}"
)
_MY = Late(
    rf"{BEFORE}when (?:does|do|should|must|can|is|will) (?:my (?:bin|bucket|pail|one)|mine|i) "
    r"(?:next )?(?:need(?:s)? |have )?(?:to )?(?:be |get )?(?P<verb>buried|bury|burying|sealed|"
    rf"seal|sealing|drained|drain|draining)(?: next| again| mine)?{AFTER}(?: \?)?"
)
"""Of the sender's own bins: "when do I drain next?"."""
_OF_DEED = Late(
    rf"{BEFORE}(?:(?:what|which(?: bins?)?|who|whose(?: bin)?|anyone|anybody)"
    r"(?: (?:else|still|all|bins?))* (?:needs?|wants?|has|have|is|are|'s)(?: (?:still|due|left|to "
    r"be|to|for|next))* "
    rf"{DEED}|(?:has|have) (?:everyone|everybody|anyone|we all) {DEED.replace('verb', 'all')}|"
    rf"(?:when(?: is| 's| are)? )?(?:the |our |we )?(?:next )?{DEED.replace('verb', 'next')}"
    rf"(?: next)?)(?: due)?{_TIME}*{AFTER}"
)
"""By the deed alone: "what needs draining?", "when's the next burial?"."""
_WHO_DOES = Late(
    rf"{BEFORE}(?:who|which of us) (?P<verb>drains|seals|buries)"
    rf"(?: (?:it|the bins?|that))?(?: due)?{_TIME}*{AFTER}"
)
""" "Who drains today?", while the talk is of the bins: whose day it is."""
_TOLD = words_in("sealed drained buried")
_ASKING = Late(r"\b(?:what|which|who|whose|anyone|anybody|has|have|when|next)\b")
_ONLY_DEED = Late(rf"{BEFORE}(?:only|just)(?: the)? {DEED}s?{AFTER}")
_DOES = Late(
    rf"{BEFORE}what (?:does|do|must|should|has|have) qmember(?:(?: ,)?(?: and)? (?:qmember|i))* "
    r"(?:have to do|need to do|do|got|got to do|have)(?P<more>.*)|"
    rf"{BEFORE}{WHATS} qmember got (?:to do.*|on(?: (?:this|next|today|tomorrow|on|at|the|week|"
    rf"weekend|month|{'|'.join(WEEKDAYS)}))+)"
)
_FOR = Late(r" (?:for|with|of) qmember(?= |$)")
_AND_ME = Late(r"\bqmember(?: ,)? and (?:me|i)\b|\bfor me(?: ,)? and qmember\b")
_WHEN = Late(
    rf"{BEFORE}(?:when (?:can|should|do|must|will|is|are|does|shall|could|to)|"
    r"how long (?:until|till|before)|by when (?:must|should|do)|what day (?:can|should|do)) .*?"
    r"(?P<verb>buried|bury|sealed|seal|closed|close|drained|drain|emptied|planted|plant|ready|"
    r"dug in|dig in|go in the ground)(?P<more>.*)"
)
_TIME_YET = Late(
    rf"{BEFORE}(?:(?:is it |is it already |already )?time to|do (?:we|i) (?:need|have) to|"
    r"should (?:we|i)|must (?:we|i)) (?P<verb>drain|bury|seal)"
    r"(?: (?:now|yet|already|today|any|anything|something|one|the bins?|a bin|any bins?))*"
    rf"{AFTER}"
)
"""Of any bin: "is it time to drain?"."""
_IN_STAGE = Late(
    rf"{BEFORE}which(?: of (?:the|our))? (?:bins?|buckets?|pails?|ones?)(?: is| are| 's)?"
    r"(?: still| now| currently)? (?:(?P<open>open|filling)|(?P<sealed>sealed|shut|closed|"
    rf"fermenting)|(?P<shared>shared|communal|for (?:everybody|everyone|all))){AFTER}"
)
_MAY = Late(
    rf"{BEFORE}(?:can|could|may|should|shall|is it (?:ok|okay|fine|alright|all right|safe)"
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
    rf"{BEFORE}(?:{WHATS}|(?:which|what|are any|any)(?: of (?:the|our))? "
    r"(?:bins?|pails?|buckets?|ones?)(?: is| are)?|(?:is )?anything) (?:ripe|ready)"
    r"(?: (?:(?:to|for) (?:be )?)?(?P<verb>bury|buried|burying|seal|sealed))?"
    rf"{AFTER}(?: \?)?"
)
_WHETHER = Late(
    rf"{BEFORE}(?:(?:can|could|may|should|shall|do|must) (?:i|we|you) (?:already |now )?"
    r"(?P<deed>bury|dig in|seal|close|drain|empty)|is it (?:already )?time to (?P<time>bury|seal|"
    r"close|drain)) (?:the |our |my )?(?P<bin>qbin)(?: up| off)?(?P<when>(?: (?:now|yet|already|"
    r"today))*)(?: \?)?|(?:is|are) (?:the |our |my )?(?P<of>qbin) (?:is )?(?:ready|ripe)"
    r"(?: (?:to|for) (?:be )?(?P<verb>bury|buried|burying|burial|seal|sealed|drain|drained))?"
    r"(?: (?:now|yet|already|today))*(?: \?)?"
)
_SHOW = Late(
    rf"{BEFORE}(?:(?:can you |could you )?(?:show|post|send|draw|share|give|see)(?: me| us)?"
    rf"(?: a| an| the| our)? (?P<kind>{_KINDS})|(?P<bare>calendar picture|calendar file)){AFTER}"
)
_PIN = Late(
    rf"{BEFORE}(?P<verb>pin|put up|hang up|unpin|take down|stop pinning|dont pin)(?: up)?"
    rf"(?: the| our)? (?:pinned )?calendar(?: again| back| down| up)*{AFTER}"
)
_DOWN = ("unpin", "take down", "stop pinning", "dont pin")
_FILES = ("file", "ics", "ical")


def due_questions(message: Message) -> Iterator[Found]:
    """Every question about the calendar that says more than "what's due?"."""
    for sentence in message.sentences:
        plan: Ask | Show | KeepUp | None = _in_stage(message, sentence.start, sentence.end)
        if plan is None:
            plan = _asked(message, sentence.start, sentence.end)
        if plan is None and sentence.asked:
            plan = _is_time(message, sentence.start, sentence.end)
        if isinstance(plan, Ask) and asks_hole(_text(message, sentence.start, sentence.end)):
            continue  # the hole is asked for as well: see `with_day_of_burial`
        if plan is not None:
            yield Found(sentence.start, sentence.end, plan)


def _asked(message: Message, start: int, end: int) -> Ask | Show | KeepUp | None:
    text = _text(message, start, end)
    if match := _SHOW.fullmatch(text):
        kind = match["kind"] or match["bare"] or ""
        return Show(as_file=any(word in kind for word in _FILES))
    if match := _PIN.fullmatch(text):
        return KeepUp(wanted=match["verb"] not in _DOWN)
    to_bot = bool(message.bot) or message.context.after_bot
    members = [m.name for m in message.members if start <= m.start < end]
    asked = of_a_kind(text, to_bot=to_bot) or (of_it(text) if message.context.of_bins else None)
    if asked or (asked := whether_done(text, members[0] if len(members) == 1 else None)):
        return asked
    of_sign = isinstance(message.context.last, Observe)  # "what do I do?" is asked about it
    if _MINE.fullmatch(text) or (to_bot and not of_sign and _MINE_TO_BOT.fullmatch(text)):
        first, on = days_asked(message, start, end, text)
        return Ask(topic="due", member=message.context.sender, first=first, on=on)
    if asked := to_do_with(message, start, end) or _by_deed(message, start, end, to_bot=to_bot):
        return asked
    ripe = _RIPE.fullmatch(text)
    if ripe and (to_bot or ripe["verb"] or OURS.search(text)):
        what = ACTS[ripe["verb"] or "bury"]
        return Ask(topic="due", what=what, first=message.today, on=message.today)
    if asked := _is_ready(message, start, end) or _days_shown(message, start, end, text):
        return asked
    if _WHAT.fullmatch(text) or _DOES.fullmatch(text) or _ON.fullmatch(text):
        return _narrowed(message, start, end, text)
    if (match := _WHEN.fullmatch(text)) or (match := _may_be_buried(message, start, end, text)):
        return _when(message, start, end, match)
    return None


def _in_stage(message: Message, start: int, end: int) -> Ask | None:
    """ "Which bins are open?", "which bin is shared?"."""
    match = _IN_STAGE.fullmatch(_text(message, start, end))
    return Ask(topic="bin", what=match.lastgroup) if match else None


def _is_time(message: Message, start: int, end: int) -> Ask | None:
    """ "Is it time to drain?", of whichever bin."""
    match = _TIME_YET.fullmatch(_text(message, start, end))
    if match is None:
        return None
    return Ask(topic="due", what=ACTS[match["verb"]], first=message.today, on=message.today)


def _by_deed(message: Message, start: int, end: int, *, to_bot: bool) -> Ask | None:
    """What is to be done of one kind, by the whole group, or by the sender, told with its time."""
    text = _text(message, start, end, days=True).removesuffix(" ?")
    first, on = days_asked(message, start, end, _text(message, start, end))
    named = to_bot or any(ref.known or ref.plain for ref in message.bins) or message.has(_BINS)
    if mine := _MY.fullmatch(text):
        return Ask(topic="due", member=message.context.sender, what=ACTS[mine["verb"]])
    if named and _WE_TO_DO.fullmatch(text):
        return Ask(topic="due", on=message.today)
    if _I_TO_DO.fullmatch(text):
        return Ask(topic="due", member=message.context.sender, first=first, on=on)
    if on is not None and (_TO_DO.fullmatch(text) or (named and _HAPPENING.fullmatch(text))):
        refs = [ref.name for ref in message.bins if start <= ref.start < end and ref.known]
        return Ask(topic="due", bin=refs[0] if refs else None, first=first, on=on)
    match = _OF_DEED.fullmatch(text) or (_ONLY_DEED.fullmatch(text) if to_bot else None)
    if match is None and message.context.of_bins:
        match = _WHO_DOES.fullmatch(text)
    if match is None:
        return None
    deed = next(said for said in match.groupdict().values() if said)
    asks = match.group() != deed and (to_bot or not text.startswith(deed))
    if deed in _TOLD and not _ASKING.search(text):
        return None  # "sealed again" is a record
    return Ask(topic="due", what=ACTS[deed], first=first, on=on) if asks else None


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
    together = dict.fromkeys(members) if asked_of else {}
    if _AND_ME.search(text) and message.context.sender:
        together[message.context.sender] = None
    return Ask(
        topic="due",
        member=asked_of if len(together) < 2 else None,
        members=tuple(together) if len(together) > 1 else (),
        first=first,
        on=on,
        bin=bins[0] if bins else None,
    )


def _when(message: Message, start: int, end: int, match: re.Match[str]) -> Ask | None:
    """ "When can the blue one be buried?": only of a bin that is known."""
    bins = [b.name for b in message.bins if start <= b.start < end and b.known and b.name]
    if not bins:
        return None
    return Ask(topic="due", bin=bins[0], what=ACTS[match["verb"]])


def _is_ready(message: Message, start: int, end: int) -> Ask | None:
    """ "Can we bury green now?", "is it time to seal the shed?": whether it is due by today."""
    if (said := of_one_bin(message, start, end)) is None:
        return None
    bin, text = said
    match = _WHETHER.fullmatch(text)
    if match is None:
        return None
    what = ACTS[match["deed"] or match["time"] or match["verb"] or "bury"]
    return Ask(topic="due", bin=bin, what=what, first=message.today, on=message.today)


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
