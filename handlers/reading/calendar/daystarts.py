"""Where a day may begin in the words: most words that one begins with begin none."""

from collections.abc import Sequence

from handlers.reading.calendar.daywords import (
    AMOUNT_BEHIND,
    ENDS,
    FIRST_OF_OFFSET,
    MONTHS,
    ORDINALS,
    PLAIN_STARTS,
    SHORT,
    STARTS,
    WEEKDAYS,
)
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word


def day_starts(words: Sequence[Word], norms: Sequence[str]) -> list[int]:
    """Where a day may begin."""
    if is_counted(norms) or "weekend" in norms:
        return [i for i, norm in enumerate(norms) if norm in STARTS or words[i].kind == "number"]
    return [
        i
        for i, norm in enumerate(norms)
        if (norm in PLAIN_STARTS or words[i].kind == "number") and not _is_idle(words, i)
    ]


def is_counted(norms: Sequence[str]) -> bool:
    """Whether a day may be told by how long ago or ahead it is."""
    if _AGO.isdisjoint(norms):
        return False
    return not STEPS.keys().isdisjoint(norms) or "ago" in norms


def _is_idle(words: Sequence[Word], i: int) -> bool:
    """Whether what stands behind word i makes no day of it, where none is counted to."""
    norm = words[i].norm
    behind = words[i + 1] if i + 1 < len(words) else None
    if norm.isdecimal():
        return behind is None or behind.norm not in _BEHIND_NUMBER
    if words[i].kind == "number":
        measured = behind is not None and behind.norm in AMOUNT_BEHIND
        return measured and norm.replace(".", "", 1).isdecimal()
    leads = _LEADS.get(norm)
    if leads is None:
        return False
    return behind is None or not (behind.norm in leads or behind.kind == "number")


def line_heads(norms: Sequence[str]) -> frozenset[int]:
    """ "2/3 Bram 1 kg", a new line, "3/3 Zoe 400 g": where two numbers with a stroke lead a line of
    their own and are no part of something; none if only one does."""
    found = [
        i
        for i, norm in enumerate(norms[:-1])
        if "/" in norm
        and (i == 0 or norms[i - 1] == "\n")
        and STROKE.fullmatch(norm)
        and norms[i + 1] not in AMOUNT_BEHIND
        and norms[i + 1] not in _WHOLES
    ]
    return frozenset(found if len(found) > 1 else ())


def leads_ledger(norms: Sequence[str], i: int) -> bool:
    """Whether one or two words and an amount begin at word i: "green 500 g" behind "3/5"."""
    for at in (i + 1, i + 2):
        if norms[at : at + 1] == [] or not _NO_LEDGER.isdisjoint(norms[i:at]):
            return False
        if norms[at][:1].isdecimal() and norms[at + 1 : at + 2] != []:
            return norms[at + 1] in AMOUNT_BEHIND
    return False


def says_only(norms: Sequence[str], i: int) -> bool:
    """ "And 5/16": whether nothing else is told than word i."""
    return _FURTHER.issuperset(norms[:i]) and _FURTHER.issuperset(norms[i + 1 :])


STROKE = Late(r"\d{1,2}/\d{1,2}")
_WHOLES = frozenset({"of", "a", "an", "the", "full", "empty"})
_NO_LEDGER = words_in("of to in into the and from full went is was or , . : -") | {"\n"}
"""With one of these behind it "3/5" is a share, or stands in a sentence."""
_FURTHER = words_in("and also again too & + , . as well then plus on")
_AGO = frozenset({"ago", "back", "bk", "earlier", "in", "from"})
_BEHIND_NUMBER = ENDS | MONTHS.keys() | {"of"}
_NAMED = WEEKDAYS.keys() | SHORT.keys()
_LEADS = {
    lead: further | {phrase[1] for phrase, _ in FIRST_OF_OFFSET.get(lead, ())}
    for lead, further in (
        ("the", ORDINALS.keys()),
        ("on", _NAMED | {"the"}),
        *((lead, _NAMED | {"week"}) for lead in ("last", "next", "coming", "past")),
        ("this", _NAMED | {"week", "coming", "past"}),
    )
}
"""The words, beside numbers, with which a day goes on behind an article and the like."""
STEPS = {
    unit: days
    for days, units in (
        (0, "hour hours hrs mins minutes minute"), (1, "day days night nights"),
        (7, "week weeks wk wks"), (14, "fortnight fortnights"), (30.4, "month months"),
        (365.25, "year years yr yrs"),
    )
    for unit in units.split()
}  # fmt: skip
"""Days in each unit that people count back or ahead in."""
