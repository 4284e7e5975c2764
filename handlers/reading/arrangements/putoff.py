"""Until when something is put off: "ask me again in 3 days", "at the weekend"."""

from handlers.reading.acts import Later
from handlers.reading.calendar.weeks import named_in
from handlers.reading.doubts.asidebins import OF_CRAFT
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

DAY_ALONE = "a day alone"
"""The rule of words that put something off only where we have just reminded of it."""
FORGOTTEN = "it was forgotten"
"""The rule of words that put off what their sender was reminded of and has not done."""
NOTHING_NAMED = "nothing named"
"""The rule of words that name neither a reminder nor what is put off: "later!", "not today"."""
_ON_A_DAY = Late(
    r"^(?:(?:maybe|probably|sometime|more like|not (?:today|now|tonight|yet)|cant today|sorry|ok|"
    r"yes|will do|(?:i )?(?:will|ll) do (?:it|that|mine)|ill do (?:it|that|mine)|,) )*"
    r"(?:(?:on|at|over|for) )?(?:qday|next week|(?:the |this |next )?weekend)"
    r"(?: (?:morning|afternoon|evening|night|maybe|probably|sorry|then|instead|first thing|,|"
    r"i think|i hope))*$"
)


def names_nothing(message: Message) -> bool:
    """Whether neither a reminder nor a job of ours is named: "later, gotta run"."""
    return not (message.bot or message.bins or message.has(_NAMING))


def is_plan_of_else(message: Message) -> bool:
    """ "Concert tomorrow": a day to come, with a word that has nothing to do with putting off."""
    if not names_nothing(message) or message.has(_CUES):
        return False
    held = indexes(message.days, message.amounts, message.members)
    return not _SMALL.issuperset([w for w in unheld(message.norms, held) if w.isalpha()])


_NAMING = OF_CRAFT | words_in(
    "remind reminder snooze nudge ping poke prod bug nag ask postpone it this job jobs mine"
)
_CUES = words_in(
    "later not no nah nope naw cant cannot couldnt wont didnt give gimme gie leave wait need try "
    "tell push put hold come back will ill ll do did busy cba nt flat until till til late sorry "
    "another more next time meeting work driving quit asking said"
)
_SMALL = words_in(
    "then ok okay yes yep well on at the for in maybe probably perhaps and or so please thanks "
    "ta morning evening afternoon night first thing now just i think hope we ll ish earliest latest"
)


_MOVED_TO = Late(
    r"^(?:(?:ok|okay|so|then|well|yes|right|alright|and|but|hmm|,|please|bot|just|rather|"
    r"better|lets|let|us|'s|we|i|should|'d|can|could) )*"
    r"(?:(?:move|shift|push|postpone|delay|reschedule|put|do) (?:it|that|this|them|the burial)|"
    r"(?<=us )bury (?:it|that|them|(?:the )?qbin)|(?<='s )bury (?:it|that|them|(?:the )?qbin)|"
    r"(?<=lets )bury (?:it|that|them|(?:the )?qbin))"
    r"(?: (?:back|off|out|forward))?(?: (?:to|till|until|on|for|at))?"
    r" (?:the )?(?:qday|next week|(?:this |next )?weekend)"
    r"(?: (?:then|instead|maybe|please|,|i think|"
    r"when the ground (?:has |is )?(?:thawed|thaws|soft)))*$"
)


def is_moved_to(message: Message) -> bool:
    """ "OK move it to 10 April", "let's bury it on Sunday": another day for what is due."""
    return (
        bool(message.days or message.has(_WEEKS))
        and message.norms[-1] != "?"
        and (_MOVED_TO.match(plain_text(message, days=True)) is not None)
    )


_WEEKS = words_in("week weekend")


_FORGOT = Late(
    r"^(?:(?:oh|oops|ah|argh|damn|no|nope|sorry|so|ok|actually|,|\.|!|-) )*"
    r"(?:(?:i|we) )?(?:(?:totally|completely|just|clean) )?(?:forgot|forgotten|missed it|"
    r"(?:didnt|havent|couldnt|never) (?:do|done|manage|make|made|get to|got to|got round to|"
    r"get round to|get around to|bring|brought)(?: it| that)?|ran out of time|had no time|no time)"
    r"(?: (?:about|it|that|to|all|again|yet|sorry|oops|though|,|\.|!|-|☺))*"
    r" (?:(?:will|ill|i|'ll|shall|do|bring|it|that|make|then|so|on|have to be|must be|is|'s|be) )*"
    r"(?:qday|next week|(?:the |this |next )?weekend)"
    r"(?: (?:morning|afternoon|evening|then|instead|sorry|ok|promise|i|for sure|,|\.|!))*$"
)


def forgotten(message: Message) -> Later | None:
    """ "Forgot, sorry. Next Saturday": what the sender was to do by now is for another day."""
    if not message.context.in_room or not message.has(_FORGETTING) or message.norms[-1] == "?":
        return None
    if message.bins or _FORGOT.search(plain_text(message, days=True)) is None:
        return None
    days = put_off_by(message) or _weekend(message)
    return Later(days=days, rules=(FORGOTTEN,)) if days else None


_FORGETTING = words_in("forgot forgotten missed didnt havent couldnt never time did have could not")


def put_off_to(message: Message) -> Later | None:
    """ "At the weekend", "Thursday, sorry": no more than a day to come, right behind our words."""
    if not message.context.after_bot or not message.norms or message.norms[-1] == "?":
        return None
    if _ON_A_DAY.search(plain_text(message, days=True)) is None:
        return None
    days = put_off_by(message) or _weekend(message)
    return Later(days=days, rules=(DAY_ALONE,)) if days else None


def _weekend(message: Message) -> float | None:
    """Days until the weekend that is named begins."""
    named = named_in(" ".join(message.norms), message.today)
    if named is None or named.first is None or named.first <= message.today:
        return None
    return float((named.first - message.today).days)


def put_off_by(message: Message) -> float | None:
    """Days until the reminder is wanted again, where they are said: right behind a word of asking
    again, else as so many days, else as a day.
    """
    told = [*_days_ahead(message), *_days_counted(message)]
    return min(sorted(told), key=lambda each: each[1])[2] if told else _weekend(message)


def _days_ahead(message: Message) -> list[tuple[int, int, float]]:
    """Where each day to come is said, how little it is to be believed, and the days until then."""
    out: list[tuple[int, int, float]] = []
    for day in message.days:
        ahead = day.past if day.past > message.today else day.future
        if ahead <= message.today or day.loose:
            continue
        lead = message.norms[max(0, day.start - 1)]
        rank = 3 if day.aside or lead in _TILL else 2
        if rank == 2 and message.has_in(_AGAIN, max(0, day.start - 3), day.start):
            rank = 0
        out.append((day.start, rank, float((ahead - message.today).days)))
    return out


def _days_counted(message: Message) -> list[tuple[int, int, float]]:
    """The same of each "3 days"; how long something lasted or was late says least."""
    out: list[tuple[int, int, float]] = []
    for amount in message.amounts:
        if amount.quantity == "days":
            lead, behind = message.norms[max(0, amount.start - 1)], message.norms[amount.end :][:1]
            lasts = lead in _LASTING or (behind and behind[0] in _OF_PAST)
            out.append((amount.start, 4 if lasts else 1, amount.value))
    return out


_TILL = words_in("until till til after before since from")
_AGAIN = words_in("again remind ask nudge ping poke prod me us back")
_LASTING = words_in("for been past last took these over within every")
_OF_PAST = words_in("ago late overdue old of off already now early")
