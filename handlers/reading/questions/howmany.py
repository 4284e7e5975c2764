"""How many bins are wanted: "how many bins do we need for 5 kg a week?", "… for 12 households".

Such a question counts only where each of its words is an amount or in the list here, so that bins
for a party, buckets of water and bins that stand somewhere are nobody's business of ours.
"""

import re

from handlers.practice.outlook import HOUSEHOLD
from handlers.reading.acts import Ask
from handlers.reading.measures.amounts import Amount
from handlers.reading.questions.question import Question
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_NUMBERS = "one two three four five six seven eight nine ten eleven twelve"
COUNTED = {word: number for number, word in enumerate(_NUMBERS.split(), 1)}
_HOW_MANY = Late(
    r"\bhow many (?:more |other |extra |bokashi |fermenting |\S+ (?:l|litres?|liters?|gallons?) )*"
    r"(?:bins|buckets|pails)\b(?! of (?!\d))"
)
_WHAT_SIZE = Late(
    r"\b(?:what|which) (?:size|sized|size of|volume) (?:of )?(?:a )?(?:bokashi |kitchen )*"
    r"(?:bins?|buckets?|pails?)\b|\bhow (?:big|large) (?:of )?(?:a|should (?:a|the|our|my)) "
    r"(?:bokashi |kitchen )*(?:bin|bucket|pail)\b"
)
_WANTED = words_in("need needs needed want enough should would require required buy get takes")
_COUNT = rf"(\d+|{'|'.join(sorted(COUNTED))})"
_HOMES = r"households?|famil(?:y|ies)|homes?|flats?|houses?|apartments?"
_FOR_MANY = Late(rf"\b{_COUNT} (people|persons?|of us|{_HOMES})\b")
_HOMES_OF = Late(
    rf"\b{_COUNT} (?:{_HOMES}) (?:(?:of|with|at|each|,) )+{_COUNT}\b"
    r"(?! (?:days?|weeks?|kgs?|kilos?|l|lit\w+|lbs?|pounds?|gal\w*))"
)
_FERMENTS = Late(
    rf"\bferment(?:s|ing|ed)? (?:(?:for|about|them|it|takes|is) )*{_COUNT} (days?|weeks?)\b|"
    rf"\b{_COUNT} (days?|weeks?) (?:of |to )?(?:ferment|fermenting|fermentation|sealed)\b"
)
_FAMILY_OF = Late(rf"\b(?:family|household|home|house|group) of {_COUNT}\b(?! (?:l|kg)\b)")
_IN_DAYS = Late(r"\bin (\d+) (days?|weeks?)\b")
_SAID = words_in(
    "how many more other extra bokashi fermenting bins bin buckets bucket pails pail do does would "
    "should will must can could we i you one a an the our my this group household households home "
    "homes family families people person persons of us need needs needed want get buy have use be "
    "enough for per each every week weekly weeks day days daily month with scraps food kitchen "
    "waste peelings if it they fills fill filled full up in takes take to about roughly around and "
    "or is are that which makes make throw away put produce collect so ok bot please then at least "
    "all together street building block house neighbours members altogether required require when "
    "flat flats houses apartment apartments each ferment ferments fermented fermentation sealed "
    "takes them school class office club nursery "
    "eat eats who hold holds holding big large small size sized what which should best right good "
    ", : . 's"
)
HOUSEHOLDS = "households"
"""In `Ask.what`: the people were counted by their households."""
_EACH_DAY = words_in("day daily")
_EACH_WEEK = words_in("week weekly")
_EACH_MONTH = words_in("month monthly")
_WEEKS = 365.25 / 12 / 7
"""Weeks in a month."""


def asks_how_many(q: Question) -> Ask | None:
    """The question with its figures: scraps a week, people, days to fill, the size of a bin."""
    text = q.text
    if _HOW_MANY.search(text) is None and _WHAT_SIZE.search(text) is None:
        return None
    amounts = [a for a in q.message.amounts if q.start <= a.start < q.end]
    if not _is_of_the_craft(q, amounts):
        return None
    people = _HOMES_OF.search(text) or _FAMILY_OF.search(text) or _FOR_MANY.search(text)
    days = _IN_DAYS.search(text)
    weighed = [a for a in amounts if a.quantity == "mass"]
    sizes = [a for a in amounts if a.quantity == "volume" and not a.vessel and _weeks(q, a) is None]
    if not (weighed or people or days or q.has(_WANTED)):
        return None
    if not (people or weighed) and _HOW_MANY.search(text) is None:
        return None
    by_volume = [a for a in amounts if a.quantity == "volume" and _weeks(q, a) is not None]
    return Ask(
        topic="bins",
        week_kg=_a_week(q, weighed[0]) if weighed else None,
        volume_l=_a_week(q, by_volume[0]) if by_volume and not weighed else None,
        people=_people(people) if people else None,
        what=HOUSEHOLDS if people and _are_homes(people) else None,
        days=float(days[1]) * (7 if days[2].startswith("week") else 1) if days else None,
        capacity_l=sizes[0].value if sizes else None,
        ferment_days=_ferment_days(text),
        rules=("asks how many bins",),
    )


def _are_homes(found: "re.Match[str]") -> bool:
    """Whether no more than the households were counted."""
    return found.lastindex == 2 and found[2].startswith(("house", "home", "fam", "flat"))


def _is_of_the_craft(q: Question, amounts: list[Amount]) -> bool:
    """Whether each of its words is an amount, a number or one of ours."""
    held = indexes(amounts)
    words = q.message.words
    return all(
        i in held or words[i].kind == "number" or q.message.norms[i] in _SAID | COUNTED.keys()
        for i in range(q.start, q.end)
    )


def _weeks(q: Question, amount: Amount) -> float | None:
    """Times a week of which an amount is said ("5 kg a day" is seven times); None if of none."""
    after = set(q.message.norms[amount.end : min(amount.end + 4, q.end)])
    if not after & (_EACH_DAY | _EACH_WEEK | _EACH_MONTH):
        return None
    if after & _EACH_DAY:
        return 7.0
    return 1 / _WEEKS if after & _EACH_MONTH else 1.0


def _a_week(q: Question, amount: Amount) -> float:
    return amount.value * (_weeks(q, amount) or 1.0)


def weekly_kg(q: Question) -> float | None:
    """The mass that is said of a day, a week or a month, in kg a week; None if none is."""
    for amount in q.message.amounts:
        if amount.quantity == "mass" and q.start <= amount.start < q.end:
            weeks = _weeks(q, amount)
            return None if weeks is None else amount.value * weeks
    return None


def _ferment_days(text: str) -> float | None:
    """Days that a bin is to stand sealed, if they are said."""
    found = _FERMENTS.search(text)
    if found is None:
        return None
    count, unit = found[1] or found[3], found[2] or found[4]
    return _count(count) * (7 if unit.startswith("week") else 1)


def _count(said: str) -> float:
    return float(COUNTED.get(said) or said)


def _people(found: "re.Match[str]") -> float:
    count = _count(found[1])
    if found.lastindex == 2 and (found[2].isdigit() or found[2] in COUNTED):
        return count * _count(found[2])
    of_homes = found.lastindex == 2 and not found[2].startswith(("p", "of"))
    return count * HOUSEHOLD.value if of_homes else count
