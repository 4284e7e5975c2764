"""Totals of a time, and by person, bin, month or week: "how much in March, each?"."""

from dataclasses import replace
from datetime import date, timedelta

from handlers.reading.acts import Ask, By
from handlers.reading.calendar.daywords import MONTHS
from handlers.reading.people.doers import is_sender
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = ("total", "tally", "how much", "per ", "average", "by p", "by m", "by b", "by w", "for each")

Period = tuple[date | None, date | None]
"""The first and the last day that a question is about; None: no such end was said."""

_MONTH = rf"(?P<month>{'|'.join(sorted(MONTHS, key=len, reverse=True))})(?: (?P<year>20\d\d))?"
_IN_MONTH = Late(rf"\b(?P<lead>in|during|since|for|of) {_MONTH}\b(?! \d)")
_IN_YEAR = Late(r"\b(?P<lead>in|during|since|for) (?P<year>20\d\d)\b")
_FROM_NUMBER = Late(
    r"\b(?:between|from) (?:the )?(?P<day>[1-9]|[12]\d)(?:st|nd|rd|th)? (?:and|to|until|till) "
)
_SINCE = words_in("since from after")
_UNTIL = words_in("until till til before by to through")

_GROUPS: tuple[tuple[By, Late], ...] = (
    ("bin", Late(r"\b(?:by|per|for each|in each|of each|each|every|which) "
                 r"(?:bins?|pails?|buckets?)\b")),
    ("month", Late(r"\b(?:by|per|each|every|for each) (?:the )?months?\b|\bmonthly\b|"
                   r"\badd(?:ed)? a month$")),
    ("week", Late(r"\b(?:by|per|each|every|for each) (?:the )?weeks?\b|\bweekly\b|"
                  r"\badd(?:ed)? a week$")),
    ("member", Late(
        r"\b(?:by|per|each|every|for each) (?:persons?|people|members?|households?|names?|"
        r"famil(?:y|ies)|pupils?|students?|neighbou?rs?)\b|\beach$|"
        r"\beach (?:in|so|this|last|since|of us)\b|\beach (?:has|have|did) put\b|"
        r"\bwho (?:has |have |'s )?(?:put|added)\b.*\b(?:most|least)\b"
    )),
)  # fmt: skip


def period_of(phrase: Phrase) -> Period:
    """The days that a question is about: a month, a year, a week, a day, or from a day on."""
    text, today = phrase.message_text, phrase.message.today
    if match := _IN_MONTH.search(text):
        first, last = _month(match["month"], match["year"], today)
        return first, None if match["lead"] == "since" else last
    if match := _IN_YEAR.search(text):
        year = int(match["year"])
        return date(year, 1, 1), None if match["lead"] == "since" else date(year, 12, 31)
    return _named(text, today) or _lately(phrase) or _of_days(phrase)


def _named(text: str, today: date) -> Period | None:
    monday = today - timedelta(days=today.weekday())
    first_of_month = today.replace(day=1)
    before = first_of_month - timedelta(days=1)
    for words, first, last in (
        ("last week", monday - timedelta(days=7), monday - timedelta(days=1)),
        ("this week", monday, today),
        ("last month", before.replace(day=1), before),
        ("this month", first_of_month, today),
        ("next week", monday + timedelta(days=7), monday + timedelta(days=13)),
        ("last year", date(today.year - 1, 1, 1), date(today.year - 1, 12, 31)),
        ("this year", date(today.year, 1, 1), today),
    ):
        if words in text:
            return first, None if f"since {words}" in text else last
    return None


def _lately(phrase: Phrase) -> Period | None:
    """ "In the last two weeks", up to today."""
    norms, today = phrase.message.norms, phrase.message.today
    for amount in phrase.message.amounts:
        behind = norms[amount.start - 1] if phrase.start < amount.start < phrase.end else ""
        if amount.quantity == "days" and behind in ("last", "past") and 1 <= amount.value < 4000:
            return today - timedelta(days=round(amount.value)), today
    return None


def _of_days(phrase: Phrase) -> Period:
    norms = phrase.message.norms
    days = [day for day in phrase.days if norms[day.end - 1] not in ("now", "date")]
    if not days:
        return _since_number(phrase), None
    lead = norms[days[0].start - 1] if days[0].start > phrase.start else ""
    if len(days) > 1 and days[0].past <= days[-1].past:
        return days[0].past, days[-1].past
    if (from_number := _FROM_NUMBER.search(phrase.message_text)) is not None:
        return days[0].past.replace(day=min(int(from_number["day"]), days[0].past.day)), days[
            0
        ].past
    if lead in _UNTIL:
        return None, days[0].past
    return days[0].past, None if lead in _SINCE else days[0].past


def _since_number(phrase: Phrase) -> date | None:
    """ "From 1st till date": the latest day of that number, up to today."""
    match, today = _TO_DATE.search(phrase.message_text), phrase.message.today
    if match is None:
        return None
    number = int(match["day"])
    month = today if number <= today.day else today.replace(day=1) - timedelta(days=1)
    return None if number > month.day and month != today else month.replace(day=number)


_TO_DATE = Late(
    r"\bfrom (?:the )?(?P<day>[1-9]|[12]\d|3[01]) ?(?:st|nd|rd|th) "
    r"(?:to|until|till|up to) (?:date|now|today)\b"
)


def _month(name: str, year: str | None, today: date) -> tuple[date, date]:
    """The month of that name, the latest one that has begun."""
    number = MONTHS[name]
    chosen = int(year) if year else today.year - (number > today.month)
    following = date(chosen + number // 12, number % 12 + 1, 1)
    return date(chosen, number, 1), following - timedelta(days=1)


def grouped_by(phrase: Phrase) -> By | None:
    """By what the total is to be told apart."""
    text = phrase.text.replace("qbin", "bin") if " each qbin" in phrase.text else phrase.text
    return next((by for by, said in _GROUPS if said.search(text)), None)


def summed(act: Ask, q: Question) -> Ask:
    """The question about totals with its time, its parts and whose they are, as a room can ask."""
    own = [p for p in phrases(q.message) if q.start <= p.start < q.end]
    if not own:
        return act
    first, last = period_of(own[-1])
    mine = act.member is None and _is_own(own[-1])
    there = q.message.context.last if act.bin is None and _THERE & q.words else None
    return replace(
        act,
        first=first,
        last=last,
        by=grouped_by(own[-1]),
        what=_what(own[-1]),
        member=q.message.context.sender if mine else act.member,
        bin=getattr(there, "bin", None) or act.bin,
    )


def _what(phrase: Phrase) -> str | None:
    """The liquid, where it is not the scraps that are asked about."""
    drawn = _LIQUID & set(phrase.tokens) or _GIVEN.search(phrase.text)
    return DRAWN if drawn else None


DRAWN = "liquid"
"""In `Ask.what`: what was drained in all."""
_LIQUID = words_in("liquid leachate drain drained draining drainings drawn runoff juice tea")
_GIVEN = Late(
    r"\b(?:come|came|run|ran|got|get|gotten|had|taken?|took|drew) (?:out|off|from)\b"
    r"(?: of)?(?: the)? (?:qbin|it)\b|\b(?:qbin|it) (?:has |'s )?(?:ever )?(?:given?|gave)\b"
)
"""What came out of a bin that has a tap, or what it gave: never its scraps."""


def _is_own(phrase: Phrase) -> bool:
    """Whether it is what the sender put in that is asked about."""
    return _OWN.search(phrase.text) is not None and _ALL.isdisjoint(phrase.tokens)


_OWN = Late(
    r"\b(?:have|did|has|ive) i\b|\bi (?:have |'ve |have got )?(?:personally |already )?(?:put|"
    r"added|add|given|gave|contributed|got|done|did|fed|chucked|tipped|saved)\b|\bfor me\b|"
    r"\bfrom my side\b|"
    r"\bmy (?:\w+ ){0,2}(?:totals?|tally|share|sum|score|best)\b"
)
_ALL = words_in("we us our everyone everybody")
_THERE = words_in("there")


def asks_more(phrase: Phrase) -> Ask | None:
    """ "And per person?", "how much in March?": of totals by its few words alone.

    They are of the scraps where totals or layers are named, or behind the bot's words.
    """
    text = _BESIDE.sub("", phrase.text)
    if not _WORDS.issuperset(text.split()) or not _ASKS.search(text):
        return None
    first, last = period_of(phrase)
    by = grouped_by(phrase)
    what = _what(phrase)
    if not (first or last or by or (what and "so far" in text)):
        return None
    words = _OF_SCRAPS | _ADDED if by else _OF_SCRAPS
    if not (words & set(phrase.tokens) or phrase.to_bot or phrase.message.context.after_bot):
        return None
    others = [ref.name for ref in phrase.message.members if not is_sender(phrase.message, ref.name)]
    return Ask(
        topic="totals",
        bin=phrase.bin,
        member=phrase.message.context.sender if _is_own(phrase) else next(iter(others), None),
        first=first,
        last=last,
        by=by,
        what=what,
        rules=("asks about totals, in a room",),
    )


_BESIDE = Late(r"\b20\d\d\b|\b\d{1,2}(?:st|nd|rd|th)?\b")
_ASKS = Late(
    r"\bhow much\b|\btotals?\b|\btally\b|^(?:and |so |ok )*(?:by|per|for each|in|this|last)\b"
)
_OF_SCRAPS = words_in("total totals tally scraps layers liquid leachate drained")
_ADDED = words_in("add added")
_WORDS = (
    words_in(
        "and so ok how much has have had did do does we i us you they everyone everybody the a put "
        "add added give given go gone went in into far of by per for each every person persons "
        "people member members household households family families name names pupil pupils "
        "student students bin bins pail pails bucket buckets month months week weeks year total "
        "totals tally scraps layers liquid leachate drained monthly weekly during since from to "
        "until till last this past please show me qbin qmember qday all group then on between days "
        "what what's whats"
    )
    | MONTHS.keys()
)
