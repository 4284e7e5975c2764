"""Reminders that members set: "remind us to empty the shed caddy on Friday at 6"."""

import re
from collections.abc import Iterator
from itertools import pairwise

from handlers.reading.arranged import CallOff, Moved, NoSuchDay, OwnDate, OwnDates
from handlers.reading.arrangements.pared import Pared
from handlers.reading.arrangements.skipped import CUES as SKIPPED_CUES
from handlers.reading.arrangements.skipped import called_by_word, skipped
from handlers.reading.arrangements.untimed import CUES as UNTIMED_CUES
from handlers.reading.arrangements.untimed import untimed
from handlers.reading.calendar.hours import hour_at, hour_behind
from handlers.reading.calendar.nodates import is_no_date
from handlers.reading.calendar.whens import When, hour_today, when_in
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = (
    "remind",
    "calendar",
    "diary",
    "cancel",
    "call off",
    "move ",
    "change ",
    " instead",
    "postpone",
    "schedule",
    *("note", "book ", "block ", "pencil", "mark ", "reserve ", "save the date", "set aside"),
    *(f"{verb} {mark}" for verb in ("put", "add", "enter", "note") for mark in '"“'),
    *SKIPPED_CUES,
    *UNTIMED_CUES,
)

_LEADS = (
    r"hey|hi|hello|ok|so|also|and|then|please|pls|plz|kindly|can you|could you|would you|"
    r"will you|can we|,|:|-|just|dont forget to|remember to|i want you to|id like you to"
)
_BEFORE = rf"(?:(?:{_LEADS}) )*"
_ALL = r"(?:us|everyone|everybody|all|all of us|the group|people|the lot of us)"
_REMIND = Late(
    rf"{_BEFORE}remind (?P<who>me|{_ALL}|qmember)(?:(?: ,)?(?: and)? qmember)*"
    r"(?: (?:please|pls|,|all))*"
    r"(?: (?:to|about|that|of|it is|for|:))+ (?P<rest>.*)"
)
_SET_ONE = Late(
    rf"{_BEFORE}(?:(?:set|make|add|create|schedule|put in)(?: up)? "
    r"(?:a |an |another |me a |us a )?)?"
    r"reminder(?: for (?P<who>me|us|qmember))?"
    r"(?: (?:to|about|that|of|for|:))+ (?P<rest>.*)"
)
_PUT_DOWN = Late(
    rf"{_BEFORE}(?:put|add|write|note|enter) (?:down )?(?P<rest>.*) (?:in|on|to|into) "
    r"(?:the |our )?(?:shared )?(?:calendar|diary)(?: ,| please)*(?P<more>.*)"
)
_SCHEDULE = Late(
    rf"{_BEFORE}(?:schedule (?P<rest>.*?)|"
    r"(?:put|add|enter|note)(?: down)? \" (?P<quoted>[^\"]+) \")(?: ,| please| for| on)*"
)
"""A job set down for a day, or what stands in quotation marks."""
_HEADED = Late(
    rf"{_BEFORE}(?:for )?(?:the |our )?(?:calendar|diary) [:-] (?P<headed>.+)|"
    rf"{_BEFORE}save the date (?:[:-] )?(?P<saved>.+)|"
    rf"{_BEFORE}(?:(?:note|plan|mark)(?: down)?|book|block|keep|reserve|pencil in|set aside)"
    r"(?: for)? (?:[:-] )?(?P<kept>.+)"
)
"""What a day is kept for: "note for Saturday: bring spades", "book the 28th for digging"."""
_IS_TOLD = Late(
    r"\b(?:was|were|is|are|did|has|have|had|drained|sealed|buried|emptied|added|opened|put)\b"
)
"""What is told of a day, and not what it is kept for."""
_OF_OURS = Late(
    r"\b(?:dig|digging|bury|burying|burials?|drain|draining|seal|sealing|spades?|compost|bran|bins?|"
    r"buckets?|starter|plot|beds?|garden|gardening|allotment|work(?:ing)? (?:party|day)|trench)\b"
)
"""Without one of these, and not said to us, it is any other matter of the neighbours'."""
_REMINDING = Late(
    rf"{_BEFORE}(?:remind (?:me|{_ALL}|qmember)|(?:(?:set|make|add|create) )?(?:a )?reminder)"
    r"(?= |$)"
)
_STOP = Late(
    rf"{_BEFORE}(?:stop|quit|dont|no more) "
    r"(?:reminding|remind|reminders?|(?:the|our|my|that|this) reminders?(?= to )|"
    r"(?:the|our|my|that|this) reminder(?= (?:about|of|for) ))"
    r"(?: (?:me|us|everyone|qmember))?(?: (?:to|about|of|for|that))+ (?P<rest>.*?)"
    r"(?: any ?more| any longer| please| now)*"
)
_CANCEL = Late(
    rf"{_BEFORE}(?:cancel|delete|remove|drop|scrap|end|forget|call off|take out)"
    r"(?: (?:the|our|my|that|this|all))* reminders?(?: (?:to|about|of|for|that|on))* ?(?P<rest>.*)"
)
_CANCEL_NAMED = Late(
    rf"{_BEFORE}(?:cancel|delete|remove|drop|scrap|end|call off)(?: (?:the|our|my|that|this))* "
    r"(?P<rest>.+?) reminders?(?P<more>.*)"
)
_STOP_NAMED = Late(
    rf"{_BEFORE}(?:stop|quit|no more|(?:turn|switch) off)(?: (?:the|our|my|that|this|those))* "
    r"(?P<rest>\S+(?: \S+){0,4}?) reminders?(?: any ?more| any longer| please| now)*"
)
_CANCEL_ALL = Late(
    rf"{_BEFORE}(?:cancel|delete|remove|drop|scrap|clear) (?:all|every one of)"
    r"(?: (?:of|the|our|my))* reminders(?: please)?"
)
_CANCEL_ANY = Late(
    rf"{_BEFORE}(?:cancel|call off)(?: (?:the|our|my|that))* (?P<rest>\S+(?: \S+){{0,6}})"
)
_CANCEL_HAD = Late(
    rf"(?:(?:{_LEADS}|actually|no|wait|oh|sorry|you can) )*"
    r"(?:cancel|forget|skip|scrap|drop|call off) (?:it|that)"
    r"(?: now| then| please| ,| \.| -| because| as| cos| since)* "
    r"(?:i|we|qmember)(?: have|'ve| has|'s)?(?: just| already| now)* "
    r"(?:got|have|has|had|found|bought|did|done)(?: some| enough| the| plenty of| all the| it| a)* "
    r"(?P<rest>(?!(?:them|one|those|this|found|got|had|done|bought|been|to)\b)\S+(?: \S+){0,3}?)"
    r"(?: now| already| myself| here| at home| after all)*"
)
"""What is called off with the reason that it is there already: "cancel it, I have spades"."""
_MOVE = Late(
    rf"{_BEFORE}(?:move|shift|postpone|reschedule|bring forward|put off|"
    r"change(?! of plans?\b))"
    r"(?: (?:the|our|my|that))* (?P<rest>\S+(?: \S+){0,6}?)(?: reminder)?(?: to| until| for)*"
)
_MAKE = Late(
    rf"{_BEFORE}make (?:the|our|my|that) (?P<rest>\S+(?: \S+){{0,6}}?)(?: one| reminder)?"
    r"(?: to| for| on| be)* instead(?: please)?"
)
_MAKE_IT = Late(
    rf"(?:(?:{_LEADS}|no|nope|actually|oh|oops|sorry|wait|i mean|i meant|better) )*"
    r"(?:make (?:it|that|this)(?: one)?|(?:and )?(?:the )?same(?: again)?|"
    r"(?:it|that) (?:should|is to) be)?"
    r"(?: (?:to|for|on|be|instead|please|rather|,))*"
)
"""Right behind a reminder: its day or hour, and no more said than that it is another."""
_INSTEAD = Late(
    rf"{_BEFORE}(?P<rest>\S+(?: \S+){{0,6}}?)(?: reminder)?(?: to| until| for)* instead"
    r"(?: please| from now on)*"
)
_HAND_OVER = Late(r"hand (?:- )?over\b|handover\b|rota\b|roster\b|swap(?: with \S+)?$")
"""What is a bin's, or of turns, and no reminder's."""
_LIST = Late(
    rf"{_BEFORE}(?:(?:what|which) (?:other )?reminders (?:do we have|have we got|have we set|are "
    r"there|are set|do i have)|(?:list|show)(?: me| us)?(?: the| our| all| all the| my)? "
    r"reminders|(?:our|what are our|what are the) reminders)(?: set| please| ,)*"
)


def own_dates(message: Message) -> Iterator[Found]:
    """Every reminder that a message sets, calls off or asks for."""
    for sentence in message.sentences:
        found = _found(message, sentence.start, sentence.end)
        if found is not None:
            yield found


def _found(message: Message, start: int, end: int) -> Found | None:
    bare = Pared(message, start, end, frozenset())
    if _LIST.fullmatch(bare.text):
        return Found(start, end, OwnDates())
    when = when_in(message, start, end)
    text = Pared(message, start, end, when.said if when else frozenset())
    if _CANCEL_ALL.fullmatch(text.text):
        return Found(start, end, CallOff(words="", all=True))
    if called_off := _called_off(text, when):
        return Found(start, end, called_off, aside=called_off.if_set and "remind" not in text.text)
    if left_out := skipped(message, start, end, when):
        return left_out
    is_ahead = when is not None and (when.rule or (when.first and when.first > message.today))
    if not is_ahead and (wished := untimed(bare, asked=message.norms[end - 1] == "?")):
        return Found(start, end, wished)
    if moved := _moved(text, when):
        return Found(start, end, moved, aside=bool(moved.words))
    if _REMINDING.match(text.text) and is_no_date(message.words[start:end]):
        return Found(start, end, NoSuchDay())
    plan = _set_down(text, when) or _set_today(message, start, end, when)
    return Found(start, end, plan) if plan else None


def _set_down(text: Pared, when: When | None) -> OwnDate | None:
    """A reminder that is set; without a day, where it can be asked on which."""
    for pattern in (_REMIND, _SET_ONE, _PUT_DOWN, _SCHEDULE):
        match = pattern.fullmatch(text.text)
        if match is None:
            continue
        words = text.said(match, "quoted" if match.groupdict().get("quoted") else "rest")
        shorter = words.removesuffix(" instead")
        instead, words = shorter != words, shorter
        if pattern is _PUT_DOWN and match["rest"] in _IT:  # "put it in the calendar: digging"
            words = text.said(match, "more")
            if not words:
                return OwnDate(words="", first=None)
        if not words or (when is None and pattern in (_PUT_DOWN, _SCHEDULE)):
            return None
        if when is None and not (text.message.bot or _is_asked_of_us(text, match)):
            return None
        for_whom, called = text.whom(match)
        return _own_date(f"{called}{words}", when, for_whom, instead=instead)
    if when is not None and (kept := _kept_for(text)):
        return _own_date(kept, when, None, instead=False)
    match = _ON_ODD_DAY.fullmatch(text.text)
    if match is None or _is_talk(match["rest"]) or not text.said(match, "rest"):
        return None
    return _own_date(text.said(match, "rest"), None, None, instead=False)


def _kept_for(text: Pared) -> str:
    """What a day is kept for, under a heading or with the day as what is kept; "" if it is not."""
    match = _HEADED.fullmatch(text.text)
    if match is None or _IS_TOLD.search(text.text):
        return ""
    group = next(name for name, words in match.groupdict().items() if words)
    to_us = bool(text.message.bot) or text.message.context.after_bot
    if group != "headed" and not (to_us or _OF_OURS.search(match[group])):
        return ""
    return text.said(match, group) if group != "kept" or _is_day_kept(text) else ""


def _is_day_kept(text: Pared) -> bool:
    """Whether the day itself is kept, and not a hall for that day: it stands right behind."""
    last_before = next((a for a, b in pairwise(text.at) if b - a > 1), None)
    return last_before is not None and text.message.norms[last_before] in _KEEPING


_KEEPING = words_in("book block keep reserve in mark aside note plan for")


def _set_today(message: Message, start: int, end: int, when: When | None) -> OwnDate | None:
    """ "Remind us at 10 to bring gloves": the hour right behind is today's."""
    lead = next((i for i in range(start, end) if message.norms[i] in ("to", "that")), start)
    at_hour = hour_today(message, start, lead) if when is None else None
    if at_hour is None:
        return None
    text = Pared(message, start, end, at_hour.said)
    return _set_down(text, at_hour) if _REMIND.match(text.text) else None


def _is_asked_of_us(text: Pared, match: re.Match[str]) -> bool:
    """Whether a wish without a day can be meant for no neighbour: "remind us to bring gloves"."""
    who = match.groupdict().get("who")
    if who in (None, "qmember") or _is_talk(match["rest"]):
        return False
    return _TO_SOMEBODY.match(text.text) is None


def _is_talk(rest: str) -> bool:
    """ "Remind me to never do that again", "remind me to tell you", "remind me to do it later"."""
    return not _TALK.isdisjoint(rest.split()) or _DO_IT.fullmatch(rest) is not None


_TALK = words_in("never not you your him her them why how what who where later again")
_DO_IT = Late(r"(?:do|drain|seal|bury|check|see to|open|look at) (?:it|that|this)(?: please)?")
_TO_SOMEBODY = Late(
    rf"{_BEFORE}(?:can|could|would|will) (?:you|somebody|someone|anyone) remind me "
)
_ON_ODD_DAY = Late(
    rf"{_BEFORE}remind (?:me|{_ALL}|qmember)"
    r"(?:(?: (?!to |that )\S+){0,7} (?:days?|weeks?|weekends?|fortnight|months?|mornings?|"
    r"evenings?|nights?|afternoons?|holiday|mondays?|tuesdays?|wednesdays?|thursdays?|fridays?|"
    r"saturdays?|sundays?|before|after|clocks)(?: (?!to |that )\S+){0,4}) (?:to|that) (?P<rest>.*)"
)
"""A day that no calendar knows by those words: it is asked which."""


def _own_date(words: str, when: When | None, for_whom: str | None, *, instead: bool) -> OwnDate:
    if when is None:
        return OwnDate(words=words, first=None, for_whom=for_whom, instead=instead)
    return OwnDate(
        words=words,
        first=when.first,
        rule=when.rule,
        until=when.until,
        hour=when.hour,
        for_whom=for_whom,
        guessed=when.guessed,
        instead=instead,
    )


def _called_off(text: Pared, when: When | None) -> CallOff | None:
    for pattern in (_STOP, _STOP_NAMED, _CANCEL, _CANCEL_NAMED):
        match = pattern.fullmatch(text.text)
        if match is None:
            continue
        words = text.said(match, "rest")
        on = when.first if when and when.rule is None else None
        if pattern is _STOP_NAMED:
            if words and _GENERAL.isdisjoint(words.casefold().split()):
                return CallOff(words=words, if_set=not _is_to_bot(text.message))
        elif words or on:
            return CallOff(words=words, on=on)
    had = _CANCEL_HAD.fullmatch(text.text) if when is None else None
    if had is not None:
        return CallOff(words=text.said(had, "rest"), if_set=True)
    by_word = called_by_word(text) if when is None else None
    match = _CANCEL_ANY.fullmatch(text.text) if when is None and by_word is None else None
    if match and not _HAND_OVER.match(match["rest"]):
        return CallOff(words=text.said(match, "rest"), if_set=True)
    return by_word


def _is_to_bot(message: Message) -> bool:
    """Whether it is said to the bot: by name, or of a bin of the group's."""
    return bool(message.bot) or any(ref.known and ref.name for ref in message.bins)


_GENERAL = words_in(
    "the our my that this those all any your these daily weekly morning evening digest "
    "automatic bot bots annoying constant silly stupid damn sending getting with about of for to"
)
"""What is said of no one reminder."""


def _moved(text: Pared, when: When | None) -> Moved | None:
    leaning = text.text and text.message.context.on_reminder
    if when is None:
        return _at_another_hour(text) if leaning else None
    if leaning and _MAKE_IT.fullmatch(text.text):
        return Moved(words="", first=when.first, rule=when.rule, hour=when.hour)
    match = _MOVE.fullmatch(text.text.removesuffix(" instead"))
    match = match or _MAKE.fullmatch(text.text)
    match = match or (_INSTEAD.fullmatch(text.text) if when.rule else None)
    if match is None or _REMINDING.match(text.text):
        return None
    words = text.said(match, "rest")
    if _HAND_OVER.match(match["rest"]):
        return None
    if words.casefold() in _IT:
        if not text.message.context.on_reminder:
            return None
        words = ""
    return Moved(words=words, first=when.first, rule=when.rule, hour=when.hour)


def _at_another_hour(text: Pared) -> Moved | None:
    """ "Make it 7", "no, half past six": another hour of the reminder that was just set."""
    first, end = text.at[0], text.at[-1] + 1
    for i in range(first, end):
        hour = hour_at(text.message.words, text.message.norms, i) or hour_behind(
            text.message.words, text.message.norms, i
        )
        if hour is not None and hour.end == end:
            lead = Pared(text.message, first, i, frozenset()).text
            is_bare = text.message.norms[hour.start : end][-1:] == text.message.norms[i:end]
            is_led = lead and (_MAKE_IT.fullmatch(lead) or _MAKE_IT.fullmatch(f"{lead} "))
            if not is_led or (is_bare and not _MADE.intersection(lead.split())):
                return None
            return Moved(words="", first=None, hour=hour.at, same_half=is_bare)
    return None


_MADE = words_in("make should no nope sorry oops mean meant actually")
"""With one of these a number alone is an hour, right behind one's own reminder."""


_IT = words_in("it that this")
