"""When a bin would be ready, or its soil, if it was sealed or buried on a day; nothing is told.

"If I seal today when can I bury it?", "buried on 1 May, when can I plant?", "we ferment for 21
days, when is it ready if sealed today?", "when can I plant if the soil is 8 degrees?".
"""

from collections.abc import Iterator
from datetime import date

from handlers.practice.days import COLDEST, HOTTEST
from handlers.practice.lessons import Lesson
from handlers.reading.arranged import Taught
from handlers.reading.calendar.stretches import coming
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.read import read_in
from handlers.reading.records import RECORD_KINDS
from handlers.reading.weighed import kind_of
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = ("when ", "ready", "how long", "how soon")
_DEEDS = words_in("seal sealed close closed bury buried soil ground")

_LEAD = r"(?:(?:so|and|but|bot|pailkeeper|what|say|suppose|supposing|let us say|tell me) )*"
_FERMENTS = (
    r"(?:(?:i|we) (?:always |usually )?ferment (?:it |them )?(?:for )?"
    r"(?P<days{n}>\d{{1,2}}) (?P<unit{n}>days|weeks) )?"
)
_I = r"(?:(?:i|we) |(?:it|qbin|the bin|this one) (?:is|was|gets) )?"
_IT = r"(?: (?:it|them|(?:the |my |our )?(?:qbin|bin|bucket|pail)))?"
_ON = r"(?: (?:on|at|from|since))? qday"
_READY = r"(?:ready|bury|buried|dig|dug|due|done|emptied|opened?)"
_WHEN = r"(?:when|how long|how soon|what day)"
_ROOTS = r"(?:plant|planted|sow|sown|planting|ready for (?:roots|plants|planting))"
_SEAL = r"(?:seal|sealed|close|closed)(?: up)?"
_BURY = r"(?:bury|buried|dig in|dug in)"


def _either(deed: str, asked: str) -> Late:
    """The deed on its day and the question behind it, or the other way round."""
    question = rf"(?:then )?{_WHEN}(?: \w+){{0,5}}? {asked}(?: (?:it|them|in|there|then|up))*"
    ferments = [_FERMENTS.format(n=n) for n in (1, 2)]
    return Late(
        rf"{_LEAD}{ferments[0]}(?:if |when |once |after )?{_I}{deed}{_IT}{_ON} {question}|"
        rf"{_LEAD}{ferments[1]}{question} (?:if|when|once) {_I}{deed}{_IT}{_ON}"
    )


_READ: tuple[tuple[Lesson, Late], ...] = (
    ("when to bury", _either(_SEAL, _READY)),
    ("when to plant", _either(_BURY, _ROOTS)),
)
_IN_SOIL = Late(
    rf"{_LEAD}(?:{_WHEN}(?: \w+){{0,4}}? {_ROOTS}(?: there| in it)? (?:if|when|in) (?:the )?"
    rf"(?:soil|ground) (?:(?:is|at|of|only) )*\S+(?: \S+){{0,2}}|"
    rf"(?:if )?(?:the )?(?:soil|ground) (?:(?:is|at|only) )+\S+(?: \S+)?(?: [cf])? {_WHEN}"
    rf"(?: \w+){{0,4}}? {_ROOTS})"
)


def if_done(message: Message) -> Iterator[Found]:
    """The questions of a message about the days that follow from a deed on a day."""
    if not message.has(_DEEDS):
        return
    for phrase in phrases(message):
        plan = _from_day(phrase) or _in_soil(phrase)
        if plan is not None:
            yield Found(*phrase.sentence, plan)


def _from_day(phrase: Phrase) -> Taught | None:
    if len(phrase.days) != 1:
        return None
    for lesson, read in _READ:
        if match := read.fullmatch(phrase.text):
            count, unit = match["days1"] or match["days2"], match["unit1"] or match["unit2"]
            days = int(count) * (7 if unit == "weeks" else 1) if count else None
            if not _SUPPOSED.intersection(phrase.tokens) and _is_told(phrase.message):
                return None
            return Taught(lesson=lesson, since=_day(phrase), days=days, bin=_bin(phrase))
    return None


def _bin(phrase: Phrase) -> str | None:
    """The bin of the group's that was or would be sealed, be its name a room's."""
    refs = (*phrase.message.bins, *phrase.message.named)
    return next((ref.name for ref in refs if ref.known and ref.start < phrase.end), None)


_SUPPOSED = words_in("if suppose supposing say once")


def _is_told(message: Message) -> bool:
    """ "Sealed shed today, when is it ready?": a record, and what follows from it."""
    return any(kind_of(act) in RECORD_KINDS for act in read_in(message))


def _day(phrase: Phrase) -> date:
    """The day that is meant: one that is over only where it was sealed or buried then."""
    [day] = phrase.days
    is_done = not _DONE.isdisjoint(phrase.tokens) and "if" not in phrase.tokens
    return day.past if is_done else coming(day.past, day.future, phrase.message.today)


_DONE = words_in("sealed closed buried dug")


def _in_soil(phrase: Phrase) -> Taught | None:
    warm = [a.value for a in phrase.message.amounts if a.quantity == "celsius"]
    if len(warm) != 1 or not COLDEST <= warm[0] <= HOTTEST:
        return None
    if _IN_SOIL.fullmatch(phrase.text) is None:
        return None
    return Taught(lesson="when to plant", celsius=warm[0])
