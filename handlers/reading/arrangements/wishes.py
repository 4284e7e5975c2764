"""Settings asked for in free words: "put us back in kilos", "nothing before 9 in the morning".

Only looked for where the scores say that a setting was told: the words alone are those of talk.
Settings that the bot has not are told apart too, so that it can say what there is instead.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise

from handlers.reading.acts import Set
from handlers.reading.arrangements.sethours import hours_wanted
from handlers.reading.arrangements.settings import setting_of
from handlers.reading.calendar.zones import zone_wanted
from handlers.reading.doubts.jests import is_jest
from handlers.reading.message import Message, read_message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_METRIC = words_in(
    "metric kilo kilos kg kgs kilograms grams litre litres liter liters ml millilitres milliliters "
    "celsius"
)
_POUNDS = words_in(
    "pound pounds lb lbs ounce ounces oz pint pints gallon gallons quart quarts cups"
)
_AMERICAN = words_in("american customary quart quarts cups fahrenheit")
_REMINDING = words_in(
    "remind reminds reminder reminders reminding remindin notice notices notification "
    "notifications notify nudge nudges nag nags nagging digest alerts rappel rappels recordatorio "
    "recordatorios avisos erinnerung erinnerungen promemoria ping pings pinging "
    "announcements bulletin summary summaries messages daily"
)
_SPEAKING = words_in(
    "message messaging text texts texting call ring write tell told speak talk bother send "
    "disturb chatter post hour round-up roundup"
)
_US = words_in("us we our everyone everybody group")
_OFF = words_in("off stop pause mute silence cancel enough")
_ON = words_in("start resume unmute")
_SWITCHED = words_in("turn switch put turned switched")
_INSTEAD = words_in(
    "not no none never nae nuh dont without instead rather than nicht pas nada quit stop drop knock"
)
_ENDS = frozenset(
    {".", ",", "!", "?", ";", "\n", "—", "(", ")", "make", "use", "do", "but", "back"}
)
_TURNS = words_in("rota roster rotation keepers keeping handover handovers duty per")
_KEEPER = words_in("keeper incharge charge keeps")
LANGUAGES = words_in(
    "english french german dutch spanish italian portuguese irish gaelic welsh scots polish "
    "swedish danish norwegian finnish greek turkish russian ukrainian arabic hebrew hindi urdu "
    "bengali tamil punjabi swahili afrikaans zulu xhosa yoruba igbo hausa pidgin patois creole "
    "thai malay tagalog vietnamese chinese mandarin cantonese japanese korean maori romanian "
    "hungarian czech catalan basque"
)
_DATES = words_in("dates dd mm")
_RHYTHM = words_in(
    "monday mondays tuesday tuesdays wednesday wednesdays thursday thursdays friday fridays "
    "saturday saturdays sunday sundays sabbath weekday weekdays weekend weekends weekly "
    "fortnightly monthly twice once"
)
_BEFOREHAND = (("day", "before"), ("days", "before"), ("night", "before"), ("evening", "before"),
               ("day", "ahead"), ("days", "ahead"), ("school", "days"), ("school", "holidays"),
               ("on", "holidays"), ("less", "often"), ("per", "job"), ("a", "week"),
               ("the", "month"), ("the", "week"))  # fmt: skip
_DUTIES = words_in("drain draining custody handover handovers seal sealing bury burying")
_FERMENTING = words_in("ferment ferments fermenting fermentation fermented")
_DOSING = words_in("dose doses dosing dosage")
MEASURES = frozenset({"mass", "volume", "difference"})
"""An amount of one of these has its unit for itself: no units are wished for with it."""

_Found = tuple[str, str] | None


def wish_of(message: Message) -> Set | None:
    """The setting that a message asks for in its own words, if it can be told which and to what."""
    if is_of_old(message) or is_jest(message):
        return None
    if _reminds_of_something(message.norms) or _is_notice(message):
        return None
    for part in (*_parts(message), message):
        if wish := plain_wish(part):
            return wish
    other = setting_of(plain_text(message), to_bot=is_to_bot(message))
    other = other or _other(message, _wanted(message))
    return Set(what=other[0], value=other[1], rules=("a wish",)) if other else None


def plain_wish(message: Message) -> Set | None:
    """The setting that its words name, whoever they are said to."""
    said = _wanted(message)
    found = next((one for find in _FINDERS if (one := find(message, said))), None)
    return Set(what=found[0], value=found[1], rules=("a wish",)) if found else None


def _parts(message: Message) -> list[Message]:
    """Its sentences one by one, if there are several: a bin of another one is not meant."""
    if not 1 < len(message.sentences) <= _MOST_SENTENCES:
        return []
    context = replace(message.context, to_bot=is_to_bot(message))
    return [read_message(message.text(s.start, s.end), context) for s in message.sentences]


_MOST_SENTENCES = 8


def set_by_call(message: Message) -> _Found:
    """What the bot is called to set behind a few words to others: "Cool. Bot, use US units"."""
    called = message.bot[0] if message.bot else 0
    before = message.norms[:called]
    if not 0 < called <= _FEW_BEFORE or before[-1] in _NOT_CALLED:
        return None
    behind = read_message(message.text(called, len(message.words)), message.context)
    return setting_of(plain_text(behind), to_bot=True)


_FEW_BEFORE = 6
"""Words and signs that greet or thank."""
_NOT_CALLED = words_in("the our my your a this that")
"""Words behind which the bot is spoken of and not called."""


def asked_by_name(message: Message) -> _Found:
    """What the bot is asked by its name, in words that no score is needed for."""
    if not message.bot or message.sentences[0].asked:
        return None
    said = _wanted(message)
    if not _ANSWERING.isdisjoint(said) and any(
        a == "in" and b in LANGUAGES for a, b in pairwise(said)
    ):
        return _language(message, said)
    rhythm = not _RECURRING.isdisjoint(message.said) or ("a", "week") in pairwise(message.norms)
    named = not _REMINDERS.isdisjoint(message.said)
    return _of_reminders(message, said) if rhythm and named else None


_ANSWERING = words_in("write reply answer answers speak talk message respond")
_REMINDERS = words_in("reminders nudge nudges nagging nag ping pings pinging digest")
_RECURRING = words_in(
    "mondays tuesdays wednesdays thursdays fridays saturdays sundays weekdays weekends weekly "
    "fortnightly"
)


def is_of_old(message: Message) -> bool:
    """ "We used to get the reminders at seven"."""
    return "used" in message.said and ("used", "to") in pairwise(message.norms)


def is_to_bot(message: Message) -> bool:
    """Whether the bot is spoken to."""
    return bool(message.bot) or message.context.to_bot or message.context.after_bot


def _wanted(message: Message) -> list[str]:
    """The words, those left out that say what is no longer wanted ("and not in pounds")."""
    out: list[str] = []
    refused = False
    for norm in message.norms:
        refused = (refused and norm not in _ENDS) or norm in _INSTEAD
        out.append("" if refused else norm)
    return out


def _zone(_: Message, said: Sequence[str]) -> _Found:
    return zone_wanted(said)


def _of_reminders(message: Message, said: Sequence[str]) -> _Found:
    """When and of what the bot reminds: it knows one hour for all, and on or off."""
    norms = message.norms
    if _reminds_of_something(norms) or _are_of_others(norms):
        return None
    hours = hours_wanted(message, said)
    if hours and hours[0] == "quiet hours":
        return hours
    if not _speaks(message):
        return None
    if _of_some(message) or not _DUTIES.isdisjoint(norms):
        return "some reminders", _words(message)
    if _has_rhythm(norms):
        return "reminder days", _words(message)
    return hours or _switch(norms)


def _has_rhythm(norms: Sequence[str]) -> bool:
    """Whether days are named on which to remind, or how often."""
    return not _RHYTHM.isdisjoint(norms) or any(
        (a, b) in _BEFOREHAND or (a == "every" and b not in _DAILY) for a, b in pairwise(norms)
    )


_DAILY = words_in("day morning evening night noon afternoon")


def _of_some(message: Message) -> bool:
    """Whether it is about the reminders of one bin, or of one member."""
    starts = [ref.start for ref in message.bins] + [ref.start for ref in message.members]
    if any(message.norms[ref.end : ref.end + 1] in _NEXT for ref in message.bins):
        return True  # "the shed bin's reminders"
    return any(not _FOR.isdisjoint(message.norms[max(0, at - 2) : at]) for at in starts)


_NEXT = (["reminder"], ["reminders"])
_FOR = words_in("for of about to remind nag ping tell take from")


def _speaks(message: Message) -> bool:
    """Whether it is about what the bot says, and not what a neighbour says."""
    if not _REMINDING.isdisjoint(message.said):
        return True
    of_all = is_to_bot(message) or not _US.isdisjoint(message.said)
    return of_all and not _SPEAKING.isdisjoint(message.said)


def _switch(norms: Sequence[str]) -> _Found:
    """Whether there are any reminders at all."""
    if _REMINDING.isdisjoint(norms):
        return None
    if not _OFF.isdisjoint(norms):
        return "reminders", "off"
    switched_on = "on" in norms and not (_SWITCHED | {"back"}).isdisjoint(norms)
    return ("reminders", "on") if switched_on or not _ON.isdisjoint(norms) else None


def _reminds_of_something(norms: Sequence[str]) -> bool:
    """ "Remind us to empty the caddy at 6" arranges one reminder and sets nothing."""
    return any(
        norm == "remind"
        and (
            not {"about", "that"}.isdisjoint(norms[i + 1 : i + 4])
            or any(a == "to" and b.isalpha() for a, b in pairwise(norms[i + 1 : i + _FAR]))
        )
        for i, norm in enumerate(norms)
    )


def _is_notice(message: Message) -> bool:
    """ "Reminder that the car park is shut on Friday": a neighbour reminds, and sets nothing."""
    if message.bot or "reminder" not in message.norms[:_LED_BY]:
        return False
    return _NOTICE.match(" ".join(message.norms)) is not None


_LED_BY = 5
"""Words in which a notice says that it is one."""
_NOTICE = Late(
    r"(?:(?:a|an|just|only|another|quick|wee|little|friendly|gentle|kind|polite|final|last|daily|"
    r"yet|"
    r"and|,) )*reminder (?:(?:that|to (?:all|everyone|everybody|those|residents|parents)|for "
    r"(?:all|"
    r"everyone|everybody|those|residents|parents))\b|: (?!(?:on|off|at|every|\d)\b)|the (?!(?:day|"
    r"days|night|evening|morning|time|hour|week)\b))"
)


def _are_of_others(norms: Sequence[str]) -> bool:
    """ "The reminders from the dentist come at 6:45"."""
    threes = zip(norms, norms[1:], norms[2:], strict=False)
    return any(a in _REMINDING and b == "from" and c in _WHOSE for a, b, c in threes)


_WHOSE = words_in("the a my her his their")
_FAR = 24
"""Words behind "remind" among which the deed is named that is not to be forgotten."""


def _turns(message: Message, said: Sequence[str]) -> _Found:
    """Whose turn it is and for how long; who keeps a bin."""
    if not _NO_TURNS.isdisjoint(message.said):
        return None
    if not _TURNS.isdisjoint(said) or {"keeper", "day"} <= set(said):
        return "rota", _words(message)
    return None if _KEEPER.isdisjoint(said) else ("keeper", _words(message))


_NO_TURNS = words_in("cant cannot who whose")
"""Words of one who has no time for a turn, or asks whose it is."""


def _language(_: Message, said: Sequence[str]) -> _Found:
    named = [norm for norm in said if norm in LANGUAGES]
    if not named and "language" not in said:
        return None
    return "language", " and ".join(norm.capitalize() for norm in named)


def _dates(message: Message, said: Sequence[str]) -> _Found:
    clock = ("24", "hour") in pairwise(said)
    return ("dates", _words(message)) if clock or not _DATES.isdisjoint(said) else None


def _ferment(message: Message, said: Sequence[str]) -> _Found:
    """How long bins ferment: "three weeks", "21 days"."""
    days = [a.value for a in message.amounts if a.quantity == "days" and said[a.start]]
    if _FERMENTING.isdisjoint(said) or not days:
        return None
    return "ferment days", f"{days[0]:g}"


def _dose(message: Message, said: Sequence[str]) -> _Found:
    return ("habit", _words(message)) if not _DOSING.isdisjoint(said) else None


def _units(message: Message, said: Sequence[str]) -> _Found:
    measured = indexes(a for a in message.amounts if a.quantity in MEASURES)
    named = frozenset(norm for i, norm in enumerate(said) if i not in measured)
    if not _METRIC.isdisjoint(named):
        return "units", "metric"
    if "imperial" in named:
        return "units", "imperial"
    if _POUNDS.isdisjoint(named) and _AMERICAN.isdisjoint(named):
        return None
    return "units", pounds_of(message) if _AMERICAN.isdisjoint(named) else "us"


def pounds_of(message: Message) -> str:
    """Whose pounds are meant: the group's own, those of its clock; in a room left open else."""
    context = message.context
    if any(word.text == "US" for word in message.words):
        return "us"
    if context.in_room and context.units != "metric":
        return context.units
    if context.zone.key.startswith("America/"):
        return "us"
    return "imperial" if context.zone.key in _IMPERIAL or not context.in_room else "pounds"


_IMPERIAL = frozenset({"Europe/London", "Europe/Dublin", "Europe/Belfast"})
"""Clocks of where pounds and pints are the imperial ones."""


def _other(message: Message, said: Sequence[str]) -> _Found:
    """What the bot is asked by name: the hour at which it speaks, or what it has no setting for."""
    if not is_to_bot(message) or any(a.quantity in MEASURES for a in message.amounts):
        return None
    hours = None if _is_of_another_thing(message.norms) else hours_wanted(message, said)
    return hours or ("other", _words(message))


def _is_of_another_thing(norms: Sequence[str]) -> bool:
    """ "Set the layer thickness to six": no hour, for something else is what is to be six."""
    for i, norm in enumerate(norms):
        if norm in _SETTING and "to" in norms[i:]:
            thing = frozenset(norms[i + 1 : norms.index("to", i)]) - _POINTING
            return bool(thing) and thing.isdisjoint(_REMINDING | _SPEAKING | _HOURLY)
    return False


_SETTING = words_in("set change raise lower")
_POINTING = words_in("the our my it that this us them please back")
_HOURLY = words_in("time times clock hours alarm morning evening day from for")


def _words(message: Message) -> str:
    return message.text(0, len(message.words)).strip(" ,.!")


_FINDERS: tuple[Callable[[Message, Sequence[str]], _Found], ...] = (
    _zone,
    _language,
    _of_reminders,
    _ferment,
    _dose,
    _dates,
    _units,
    _turns,
)
"""The first that finds anything is believed."""
