"""Turns, as members agree on them: "rota for the shed bin: Ines, Bram, weekly", "swap my week"."""

import re
from collections.abc import Iterator
from datetime import date

from handlers.reading.arranged import Plan
from handlers.reading.binwords import BIN_WORDS
from handlers.reading.communal import (
    Duty,
    Joining,
    Quitting,
    Rearranged,
    Rota,
    RotaOver,
    Swap,
    WhoseTurn,
)
from handlers.reading.found import Found
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, first_plan, phrases
from handlers.reading.rearranging import rearranged
from handlers.reading.spans import indexes
from handlers.reading.vocabulary import words_in
from handlers.reading.words import Word

LONGEST = 3
"""Sentences of a message that arranges turns."""

CUES = (
    "rota",
    "roster",
    "turn",
    "swap",
    "my week",
    "per keeper",
    "per household",
    "keeping period",
    "keeps",
    "list of keepers",
)

_ROTA = (
    r"(?:(?:the|our|a|this|bin|draining|drain|keeping|carrying|new|weekly) ){0,4}(?:rota|roster)"
)
_OF_BIN = r"(?: (?:for|of|with) (?:the )?qbin)?"
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
_START = Late(r"\b(?:from|starting|starts|start|beginning|begin|as of)(?: on)? qday\b")

_HEADED = Late(r"^(?:(?:our|new|the|bin|weekly|draining) ){0,2}rota\b")
_SHOW = Late(
    rf"^(?:(?:can|could) (?:you|we|i) )?(?:show|post|see|give|what is|what 's|whats)"
    rf"(?: us| me)? {_ROTA}{_OF_BIN}$|^{_ROTA}{_OF_BIN}(?: now)?$"
)
_REASON = r"(?: (?:he|she|they|i|we|as|because|since)\b.{1,60})?$"
_JOIN = Late(
    rf"^(?:can you |could you |can |could )?(?:add|put) (?P<who>me|us|qmember|[a-z]\w+) "
    rf"(?:on|to|onto|in|down for) {_ROTA}{_OF_BIN}(?: too| as well| again)*{_REASON}|"
    rf"^(?P<joiner>i|qmember) (?:will |would like to |'d like to |want to |wants to |can |am |is |"
    rf"'s )?(?:join|joining|joins)(?: in)? {_ROTA}{_OF_BIN}(?: too| as well| again)*$"
)
_QUIT = Late(
    rf"^(?:can you |could you |can |could )?(?:take|remove|drop|leave|strike|get) (?P<who>me|"
    rf"qmember|[a-z]\w+) (?:off|from|out of|off of) (?:the list of keepers|{_ROTA}{_OF_BIN})"
    rf"(?: from now(?: on)?| for good)*{_REASON}|"
    rf"^(?P<leaver>i|qmember) (?:am |is |'s |will |have to |has to |must |want to |wants to |"
    rf"need to )?"
    rf"(?:off|out of|leave|leaving|quit|quitting|come off|coming off|leaves) {_ROTA}{_OF_BIN}$"
)
_OVER = Late(
    rf"^(?:can we |lets |let us |we )?(?:end|stop|cancel|scrap|drop|finish|abandon|delete) "
    rf"{_ROTA}{_OF_BIN}{_REASON}|^no more (?:turns|rota|roster){_OF_BIN}$|^{_ROTA}{_OF_BIN} (?:is|"
    rf"'s) over$"
)
_MINE = r"(?:my|this|next|that)(?: coming| next)? (?:week|turn|go|days?|slot|fortnight|month)"
_SWAP = (
    Late(
        rf"^(?:can|could|would|will|is|does|do) (?:anyone|anybody|someone|somebody|one of you|"
        rf"any of you|(?P<to>qmember)) (?:please |kindly |be able to |able to |willing to |"
        rf"want to |up to |"
        rf"happy to )?(?:swap|switch|trade|exchange)\b(?: {_MINE}| weeks| turns| days| places|"
        rf" with me| "
        rf"with mine| for theirs| qday| for qday| please| me| for| on| with| of| the|"
        rf" rota)*{_OF_BIN}$"
    ),
    Late(
        rf"^(?:anyone|anybody|someone|somebody|who)(?: here)?(?: is)? (?:can|could|willing to|"
        rf"want to|wants to|"
        rf"able to|up for|happy to|fancy|free to)? ?(?:swap|swapping|switch|switching|trade|"
        rf"trading)"
        rf"(?: {_MINE}| weeks| turns| with me| for qday| qday| with| me)*$"
    ),
    Late(rf"^(?:(?:can|could|may) i )?(?:swap|switch|trade) {_MINE}"
               rf"(?: with (?:(?P<with>qmember)|anyone|someone|somebody))?(?: please)?$"),
    Late(
        rf"^(?:can|could|would|will) (?:anyone|anybody|someone|somebody|one of you|"
        rf"(?P<for>qmember)) "
        rf"(?:please )?(?:cover|do|take|have) {_MINE}(?: for me| instead| qday| please)*{_OF_BIN}$"
    ),
    Late(r"^(?:i )?(?:cant|cannot|wont be able to|am not able to) (?:do|make|manage|cover) "
               r"(?:my (?:week|turn|go))(?: qday| with qbin| this time| sorry)*$"),
    Late(r"^(?:skip|pass on) my (?:turn|week|go)(?: please)?$"),
    Late(rf"^qmember (?:can|could|would|will) you (?:please )?(?:swap|switch|trade)"
               rf"(?: {_MINE}| weeks| turns| with me| qday| for qday)*$"),
    Late(rf"^qmember (?:can|could|would|will) you (?:please )?(?:do|cover|take|have) {_MINE}"
               rf"(?: for me| instead| qday| please)*{_OF_BIN}$"),
)  # fmt: skip
_PAST_ROTA = words_in("was used had last were draft nobody out")


def turntaking(message: Message) -> Iterator[Found]:
    """What a message arranges about turns, if that is all it says."""
    said = list(phrases(message))
    rota = _rota(message, said) if len(said) <= LONGEST else None
    if rota is not None:
        yield Found(0, len(message.words), rota)
    else:
        yield from first_plan(message, _plan, most=LONGEST)


def turns_set(message: Message) -> tuple[str, str] | None:
    """The rota that a message settles or changes, as a setting of the group."""
    if _WORDS.isdisjoint(message.norms):
        return None
    plans = (found.plan for found in turntaking(message))
    said = message.text(0, len(message.words))
    return next((("rota", said) for plan in plans if isinstance(plan, _SETTLED)), None)


_WORDS = words_in("rota roster rotation per keepers keeping keeps")
_SETTLED = (Rota, Joining, Quitting, Rearranged, RotaOver)


def _plan(phrase: Phrase) -> Plan | None:
    text = phrase.text
    if match := _JOIN.match(text):
        return _joining(phrase, match)
    if match := _QUIT.match(text):
        return _quitting(phrase, match)
    if change := rearranged(phrase):
        return change
    if _OVER.match(text):
        return RotaOver(bin=phrase.bin_said, duty=_duty(phrase))
    if _SHOW.match(text):
        return WhoseTurn(bin=phrase.bin_said)
    if any(pattern.match(text) for pattern in _SWAP):
        return Swap(to=phrase.member, bin=phrase.bin_said, on=_of_turn(phrase))
    return None


def _joining(phrase: Phrase, match: re.Match[str]) -> Joining | None:
    who, member = _who(phrase, match, "who", match["joiner"])
    return Joining(member=member, bin=phrase.bin_said, duty=_duty(phrase)) if who else None


def _quitting(phrase: Phrase, match: re.Match[str]) -> Quitting | None:
    who, member = _who(phrase, match, "who", match["leaver"])
    return Quitting(member=member, bin=phrase.bin_said, duty=_duty(phrase)) if who else None


def _who(
    phrase: Phrase, match: re.Match[str], group: str, told: str | None
) -> tuple[bool, str | None]:
    """Whether somebody is meant, and which member if it is not the sender."""
    who = match[group] or told
    if who == "qmember":
        return True, phrase.member
    if who in ("me", "us", "i"):
        return True, None
    name = phrase.said(match, group)
    return name[:1].isupper(), name


def _of_turn(phrase: Phrase) -> date | None:
    """A day of the turn in question."""
    return phrase.days[0].future if phrase.days else None


def _duty(phrase: Phrase) -> Duty | None:
    norms = frozenset(phrase.message.norms)
    return next((duty for duty, words in _DUTIES if not norms.isdisjoint(words)), None)


def _rota(message: Message, said: list[Phrase]) -> Rota | None:
    """ "Rota for the shed bin: Ines, Bram and Mei, a week each, from Monday"."""
    text = " ".join(phrase.text for phrase in said)
    norms = frozenset(message.norms)
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
    duty = next((_duty(phrase) for phrase in said), None)
    return Rota(
        members=members if len(members) > 1 else (),
        days=7 if days is None else days,
        duty=duty or "keep",
        bin=next(filter(None, (phrase.bin_said for phrase in said)), None),
        start=_start(said),
    )


def _is_of_bins(message: Message, said: list[Phrase], norms: frozenset[str]) -> bool:
    if any(phrase.bins for phrase in said) or message.bot or _HEADED.match(said[0].text):
        return True
    return not norms.isdisjoint(BIN_WORDS | {"bins", "buckets", "pails"})


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
