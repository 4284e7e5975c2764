"""A rota as it is set: "rota for the shed bin: Ines, Bram and Mei, a week each, from Monday"."""

import re
from collections.abc import Iterator
from datetime import date

from handlers.reading.arrangements.communal import Duty, Rota
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, as_written
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.words import Word

_AGREED = Late(
    r"\b(?:rota|roster)\b|\b(?:take|taking|takes|do|share|in) turns\b|\bturns (?:at|with|to)\b"
)
_RHYTHMS = (
    (Late(r"\b(?:every (?:other|second|two|2) weeks?|fortnightly|every fortnight|"
                r"(?:two|2) weeks each|a fortnight each|by the fortnight)\b"), 14),
    (Late(r"\b(?:monthly|every month|a month each|(?:every )?(?:four|4) weeks(?: each)?)\b"),
     28),
    (Late(r"\b(?:every (?:other|second) day|every (?:two|2) days|(?:two|2) days each)\b"), 2),
    (Late(r"\b(?:daily|every day|a day each|one day each|day by day|each day)\b"), 1),
    (Late(r"\b(?:weekly|every week|each week|(?:a|one|1) week (?:each|at a time|apiece)|"
                r"week (?:by|about) week|per week|week each|by the week)\b"), 7),
)  # fmt: skip
_COUNT = r"(?:- )?\d{1,4}|three|four|five|six|ten"
_DAYS = Late(
    rf"\b(?:every (?P<every>{_COUNT}) (?P<step>day|week)s?|"
    rf"(?P<each>{_COUNT}) (?P<long>day|week)s (?:each|at a time))\b"
)
_NUMBERS = {"three": 3, "four": 4, "five": 5, "six": 6, "ten": 10}
_EVERYBODY = Late(r"\b(?:everyone|everybody|all of us|we all|all members|the whole group|us all)\b")
_DUTIES: tuple[tuple[Duty, frozenset[str]], ...] = (
    ("drain", words_in("drain draining drains drained drainage tap")),
    ("carry", words_in("carry carrying carries move moving haul hauling transport lug lugging")),
)
_DRAINING = dict(_DUTIES)["drain"] - {"tap"}
_START = Late(r"\b(?:from|starting|starts|start|beginning|begin|as of)(?: on)? qday\b")

_HEADED = Late(r"^(?:(?:our|new|the|bin|weekly|draining) ){0,2}rota\b")
_PAST_ROTA = words_in("was used had last were draft nobody out")


def duty_of(phrase: Phrase) -> Duty | None:
    """What a sentence says that turns are for."""
    norms = frozenset(phrase.message.norms)
    return next((duty for duty, words in _DUTIES if not norms.isdisjoint(words)), None)


def rota_set(message: Message, said: list[Phrase]) -> Rota | None:
    """ "Rota for the shed bin: Ines, Bram and Mei, a week each, from Monday"."""
    text = " ".join(phrase.text for phrase in said)
    norms = message.said
    if not _AGREED.search(text) or any(phrase.asked for phrase in said):
        return None
    if not norms.isdisjoint(_PAST_ROTA) or not _is_of_bins(message, said, norms):
        return None
    members = tuple(dict.fromkeys(_named(message)))
    if len(members) < 2 and not _EVERYBODY.search(text):
        return None
    days = _rhythm(text, " ".join(message.norms))
    if days is None and not re.search(r"\b(?:rota|roster)\b", text):
        return None
    duty = next((duty_of(phrase) for phrase in said), None)
    return Rota(
        members=members if len(members) > 1 else (),
        days=7 if days is None else days,
        guessed=days is None,
        duty=duty or "keep",
        bin=next(filter(None, (phrase.bin_said for phrase in said)), None),
        start=_start(said),
        other=_other(message),
    )


def _other(message: Message) -> str | None:
    """What turns are for that is no deed of theirs with a bin: "rota for washing the lids"."""
    norms = message.norms
    at = next((i for i, norm in enumerate(norms) if norm in _TURNS), len(norms)) + 1
    lead = norms[at : at + 1]
    if lead not in (["for"], ["to"], ["at"]):
        return None
    held = indexes(message.members)
    stop = next((i for i in range(at, len(norms)) if norms[i] in _STOPS or i in held), len(norms))
    first = next((norm for norm in norms[at + 1 : stop] if norm not in _SMALL), "")
    is_deed = lead == ["to"] or (first.endswith("ing") and first not in _TIMES)
    if not first or first in _OURS or not (is_deed or first in _THINGS):
        return None
    return as_written(message, at + 1, stop)


_TURNS = words_in("rota roster turns")
_STOPS = words_in(": , . ; - weekly daily fortnightly monthly every each from starting a")
_SMALL = words_in("the our all of this these do doing")
_TIMES = words_in("morning evening spring")
_THINGS = words_in(
    "bran starter lids lid tap taps liquid watering tools bed beds shopping tea keys"
)
_OURS = frozenset().union(*(words for _, words in _DUTIES)) | words_in(
    "keep keeping look looking mind minding have having host hosting take taking care caring store "
    "storing hold holding house housing empty emptying"
)
"""First words of what a rota here is for."""


def _is_of_bins(message: Message, said: list[Phrase], norms: frozenset[str]) -> bool:
    if any(phrase.bins for phrase in said) or message.bot or _HEADED.match(said[0].text):
        return True
    return not norms.isdisjoint(BIN_WORDS | _DRAINING | {"bins", "buckets", "pails"})


def _named(message: Message) -> Iterator[str]:
    """Those who take turns: members, and names with a capital in the list behind a colon."""
    known = {ref.start: ref.name for ref in message.members}
    colon = _heading(message.norms)
    taken = indexes(message.bins, message.days, message.members)
    for i, word in enumerate(message.words):
        if i in known:
            yield known[i]
        elif word.norm in ("i", "me", "myself") and message.context.sender:
            yield message.context.sender
        elif i > colon and i not in taken and (_is_name(word) or _is_listed(message, i)):
            yield word.text


def _heading(norms: list[str]) -> int:
    """Where the list of names begins: behind a colon, or behind the word that heads it."""
    if ":" in norms:
        return norms.index(":")
    return next((i for i, norm in enumerate(norms[:_HEAD]) if norm in _HEADS), len(norms))


_HEAD = 3
_HEADS = words_in("rota roster")


def _is_listed(message: Message, i: int) -> bool:
    """Whether a word stands alone between commas, as the names of a list do."""
    around = (message.norms[i - 1], (message.norms[i + 1 :] or ["."])[0])
    alone = all(norm in _JOINTS for norm in around)
    return alone and message.words[i].kind == "word" and message.norms[i] not in _NO_NAMES


_JOINTS = words_in(": , and & . ; rota roster weekly daily fortnightly monthly")


def _is_name(word: Word) -> bool:
    return word.kind == "word" and word.text[:1].isupper() and word.norm not in _NO_NAMES


_NO_NAMES = words_in(
    "weekly daily fortnightly monthly every each from starting and a one we turns i"
)


def _rhythm(text: str, whole: str) -> int | None:
    """How many days a turn lasts; `whole`: the message with its signs ("every -3 days")."""
    for pattern, days in _RHYTHMS:
        if pattern.search(text):
            return days
    match = _DAYS.search(whole)
    if match is None:
        return None
    number, unit = match["every"] or match["each"], match["step"] or match["long"]
    count = _NUMBERS.get(number) or int(number.replace(" ", ""))
    return count * (7 if unit == "week" else 1)


def _start(said: list[Phrase]) -> date | None:
    for phrase in said:
        match = _START.search(phrase.text)
        if match:
            at = phrase.text[: match.end()].count(" ")
            begin = phrase.spans[at][0]
            day = next(day for day in phrase.days if day.start == begin)
            today = phrase.message.today
            return today if day.past == today else day.future
    return None
