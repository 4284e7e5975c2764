"""A day put right in the same breath, and a day of something else that is the deed's too."""

from bisect import bisect_left
from collections.abc import Sequence
from datetime import date
from itertools import pairwise

from handlers.reading.calendar.days import Day
from handlers.reading.calendar.feasts import first_words
from handlers.reading.message import Message
from handlers.reading.plaintext import words_between
from handlers.reading.words.late import Late
from handlers.reading.words.once import once
from handlers.reading.words.sentences import Clause
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in


def put_right(message: Message, said: Day) -> Day | None:
    """ "Was it Tuesday I put them in, no it was Monday": the day told last, behind "no"."""
    behind = [d for d in message.days if d.start >= said.end] if "no" in message.said else []
    if not behind:
        return None
    lead = message.norms[said.end : behind[0].start]
    if "no" not in lead:
        return None
    at = len(lead) - 1 - lead[::-1].index("no")
    return behind[0] if _IT_WAS.issuperset(lead[at + 1 :]) else None


_IT_WAS = words_in(
    "it was that on , wait actually sorry i mean tell a lie 's is twas ' rather more"
)


def is_just_now(message: Message, day: Day) -> bool:
    """ "Saturday's bones went in just now": when it was done, whatever day is told of the thing."""
    norms = message.norms
    if norms[day.start : day.end] != ["now"] or norms[max(0, day.start - 1)] not in _JUST:
        return False
    return not message.has_in(_IN_MIND, day.start - 3, day.end + 3)


_JUST = words_in("just right")
_IN_MIND = words_in(
    "remember remembered remembering realise realised realize realized notice noticed saw see "
    "read reading thought thinking writing telling tell log logging entering not cant busy"
)
"""Words of what one does with a record, or has no time for, just now."""


def is_of_other(message: Message, day: Day, clause: Clause) -> bool:
    """Whether the clause of a day tells of something else than a deed."""
    return (
        _is_feast_past(message, day)
        or _is_feast_before(message, day, clause)
        or _is_denied(message, day, clause)
        or _is_of_fill(message, clause)
        or _is_of_mishap(message, clause)
        or _is_of_cooking(message, clause)
        or _is_of_visit(message, clause)
        or _is_filled_by_else(message, day, clause)
        or is_of_absence(message, day)
    )


def _is_filled_by_else(message: Message, day: Day, clause: Clause) -> bool:
    """ "We baked all day Sunday": a day taken by what is neither weighed nor of a bin."""
    before = message.norms[max(0, day.start - 2) : day.start]
    whole = before[-1:] == ["all"] or before in (["all", "day"], ["whole", "of"], ["whole", "day"])
    if not whole or before[:1] in (["it"], ["them"], ["that"]):
        return False
    return indexes(message.bins, message.measured()).isdisjoint(range(clause.start, clause.end))


def _is_of_mishap(message: Message, clause: Clause) -> bool:
    """ "..., the freezer broke yesterday", "bought it on Saturday": when food was got or spoiled,
    in a clause that tells neither how much nor of which bin.
    """
    if not message.has_in(_MISHAPS, clause.start, clause.end):
        return False
    if not indexes(message.bins, message.measured()).isdisjoint(range(clause.start, clause.end)):
        return False
    return _MISHAP.search(words_between(message, clause.start, clause.end)) is not None


_MISHAPS = words_in(
    "brownout brownouts blackout blackouts outage loadshedding shedding powercut power electric "
    "electricity current mains freezer fridge spoiled spoilt thawed defrosted expired bought "
    "cooked baked boiled roasted"
)
_MISHAP = Late(
    r"\b(?:brownouts?|blackouts?|outage|loadshedding|load shedding|powercut|power cut|"
    r"no (?:power|electric|electricity|current))\b|"
    r"\b(?:power|electric|electricity|current|mains|freezer|fridge)"
    r"(?: (?:was|were|went|has|had|'s|is|got|all|just|been|door))* "
    r"(?:out|off|down|dead|broke|broken|died|failed|tripped|conked|packed|gone|stopped|cut|"
    r"unplugged|defrosted|open)\b|"
    r"^(?:(?:it|they|that|which|had|has|was|were|all|i|we|only|just) )*(?:spoiled|spoilt|thawed|"
    r"defrosted|expired|bought|cooked|baked|boiled|roasted)\b"
)


def _is_of_cooking(message: Message, clause: Clause) -> bool:
    """ "Made a dal on Thursday, and it has gone fizzy": when a dish was made that is scraps now."""
    lead = message.norms[clause.start : clause.start + 2]
    if _COOKED.isdisjoint(lead) or not any(
        clause.start <= i.start < clause.end for i in message.items
    ):
        return False
    if message.has_in(_BRAN, clause.start, clause.end):
        return False
    return _tells_no_layer(message, clause) and _is_over(message, clause)


_COOKED = words_in("made brewed stewed fried cooked baked boiled roasted")
_BRAN = words_in("bran starter batch")


def _is_of_visit(message: Message, clause: Clause) -> bool:
    """ "My sister came on Saturday, and what she left has gone in": when somebody was there."""
    verb = clause.verb
    if verb is None or verb.verb.plain not in _VISITING:
        return False
    if not _US.isdisjoint(message.norms[clause.start : verb.start]):
        return False
    return _tells_no_layer(message, clause) and _is_over(message, clause)


_VISITING = words_in("come drive visit stay fly stop drop pop")
_US = words_in("i we")


def _tells_no_layer(message: Message, clause: Clause) -> bool:
    told = indexes(message.bins, message.measured())
    return told.isdisjoint(range(clause.start, clause.end))


def _is_over(message: Message, clause: Clause) -> bool:
    """Whether what became of it is told behind it as it stands now: "it has gone", "so that's"."""
    behind = " ".join(message.norms[clause.end :])
    return _NOW_GONE.search(behind) is not None


_NOW_GONE = Late(
    r"\b(?:has|have|'s|'ve|its) (?:now |all |just |already |since )*(?:gone|been|turned)\b|"
    r"\bso (?:that|it|this) ?(?:is|'s)\b|\bso thats\b"
)


def is_of_absence(message: Message, day: Day) -> bool:
    """ "I was away from the 3rd to the 10th, drained it on Sunday": a day of being away."""
    clause = message.clause_at(day.start) if message.has(_ABSENT) else None
    if clause is None:
        return False
    return _AWAY.search(words_between(message, clause.start, day.start)) is not None


_ABSENT = words_in("away holiday holidays vacation abroad travelling traveling hospital")
_AWAY = Late(
    r"(?:^|\b(?:am|im|'m|be|been|was|is|'s|are|were|'re|going|go|goes|gone|i|we|he|she|they) )"
    r"(?:(?:all|both|off|just|now) )*(?:away|abroad|travelling|traveling|on (?:holidays?|vacation)|"
    r"in hospital)\b"
)


def _is_of_fill(message: Message, clause: Clause) -> bool:
    """ "Closed it, full since Sunday": since when there was no room."""
    return clause.verb is None and message.has_in(_FULL, clause.start, clause.end)


_FULL = words_in("full brimming chocka chockablock")


def _is_feast_past(message: Message, day: Day) -> bool:
    """ "The market was yesterday, so ...": when something was that is no deed with a bin."""
    before = message.norms[max(0, day.start - 2) : day.start]
    return before[1:] == ["was"] and before[0] in _EVENTS


_EVENTS = words_in(
    "day night eve party birthday wedding feast market fair supper dinner lunch brunch barbecue "
    "bbq braai meeting christening funeral wake match concert exam picnic potluck fete festival "
    "carnival anniversary quiz shift holiday collection jumble bazaar"
)


@once
def _today(message: Message) -> list[Day]:
    return [d for d in message.days if d.past == d.future == message.today]


def _is_feast_before(message: Message, day: Day, clause: Clause) -> bool:
    """ "Burns Night at the flat: haggis into the shed this morning": what the scraps are from,
    where the deed was today.
    """
    led = message.norms[max(0, day.start - 1) : day.start]
    if message.norms[day.start] not in first_words() or led == ["on"]:
        return False
    today = _today(message)
    at = bisect_left(today, day.end, key=lambda d: d.start)
    if at == len(today) or today[at].aside:
        return False
    if today[at].start < clause.end:
        return sum(clause.start <= a.start < clause.end for a in message.measured()) < 2
    return clause.verb is None and _tells_no_layer(message, clause)


def _is_denied(message: Message, day: Day, clause: Clause) -> bool:
    """ "It is warm, yesterday it was not": a day on which it was otherwise."""
    if clause.verb is not None or not message.has_in(_NOT, day.end, clause.end):
        return False
    starts = {other.start for other in message.days}  # "yesterday, not today"
    return all(
        norm not in _NOT or i + 1 not in starts
        for i, norm in enumerate(message.norms[day.end : clause.end], day.end)
    )


_NOT = words_in("not wasnt werent isnt")


@once
def day_named_again(message: Message) -> date | None:
    """ "The Sunday bread, added that same day", "the juice of yesterday, forgot to write it": the
    one day over that dates something else, where it is said to be that of the deed too."""
    if not message.days or not message.has(_CUES):
        return None
    past = {d.past for d in message.days}
    if len(past) != 1 or max(past) >= message.today:
        return None
    day, norms = message.days[0], message.norms
    owned = norms[day.end : day.end + 1] == ["'s"]
    of = norms[day.start - 1 : day.start] == ["of"] or owned
    late = of and any(a in _FORGOT and b in ("to", "about") for a, b in pairwise(norms))
    event = owned and message.has_in(_YIELDED, day.end, day.end + _EVENT) and not message.has(_WHO)
    return past.pop() if _is_same(norms) or late or event or (owned and _is_booked(norms)) else None


def _is_same(norms: Sequence[str]) -> bool:
    """ "That same night", "on that day", "there and then"."""
    for i, (a, b) in enumerate(pairwise(norms)):
        if b in _PARTS and (a == "same" or (a == "that" and norms[i - 1] == "on")):
            return True
        if a == "there" and norms[i + 1 : i + 3] == ["and", "then"]:
            return True
    return False


def _is_booked(norms: Sequence[str]) -> bool:
    """ "Put me down for Tuesday's grounds", "for the record, Monday's bread"."""
    text = f" {' '.join(norms)} "
    return any(f" {words} " in text for words in _BOOKED)


_BOOKED = ("put me down", "put us down", "mark me down", "mark us down", "for the record")
_EVENT = 6
"""Words between a day and the verb of what took place on it, at most."""
_YIELDED = words_in("yielded gave produced left netted generated supplied provided")
_WHO = words_in("i we ive weve")
_PARTS = words_in("day night evening afternoon morning evenin nicht")
_FORGOT = words_in("forgot forgotten forget neglected")
_CUES = _FORGOT | _YIELDED | words_in("that same there put mark record")
