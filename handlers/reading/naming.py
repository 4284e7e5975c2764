"""The name that a new bin is given: "called Dot", "meet Dot", "new bin: Dot", "we call him Dot"."""

from collections.abc import Sequence

from handlers.reading.binwords import BIN_WORDS, COLOURS, PLACE_NAMES
from handlers.reading.daywords import MONTHS, WEEKDAYS
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.spans import indexes
from handlers.reading.vocabulary import words_in

_CALLED = words_in(
    "called named call calling name christened christen naming dubbed labelled labeled dub "
    "baptised baptized nicknamed titled callin namin"
)
_NAME_ENDS = words_in(
    "and but it its is for with so in on at the a today to from because cos as after by who "
    "which we i he she now this yesterday if , . ; : ! ? ( ) - — ☺ | then near lol haha hope "
    "see sorry thanks will x xx ta cheers must cant since also already until < >"
)


def called(group: Group) -> bool:
    """Whether a word of naming stands in the group."""
    return not _CALLED.isdisjoint(group.norms)


def given_name(message: Message) -> str | None:
    """The name told anywhere in a message: "They voted to call it Dot", "small one, name Dot"."""
    for i, norm in enumerate(message.norms[:-1]):
        if norm not in _CALLED and norm not in ("call", "calls"):
            continue
        at = i + 1
        while at < len(message.norms) - 1 and message.norms[at] in _IT:
            at += 1
        word = message.words[at]
        if word.kind == "word" and (word.text[:1].isupper() or word.text.isupper()):
            return name_from(message, at, len(message.norms), capital=True)
    if led := _led_name(message) or _quoted(message) or _that_started(message):
        return led
    if led := _sentence_behind(message):
        return led
    fresh = {b.name for b in message.bins if b.name is not None and not b.known}
    return fresh.pop() if len(fresh) == 1 else _place_opened(message)


def _sentence_behind(message: Message) -> str | None:
    """ "New bin. Red": a sentence of its own that is no more than the name."""
    if len(message.sentences) != 2:  # the bin, and its name
        return None
    first, second = message.sentences
    said = [n for n in message.norms[first.start : first.end] if n.isalpha()]
    at, stop = second.start, second.end
    while stop > at and not message.norms[stop - 1][:1].isalnum():
        stop -= 1
    words = message.words[at:stop]
    if second.asked or not 0 < len(words) <= _SHORT_NAME or any(w.kind != "word" for w in words):
        return None
    if said not in (["new", "bin"], ["a", "new", "bin"], ["new", "bucket"], ["another", "bin"]):
        return None
    if not _NO_NAME.isdisjoint(message.norms[at:stop]):
        return None
    held = indexes(message.amounts, message.days)
    return message.text(at, stop) if held.isdisjoint(range(at, stop)) else None


_NO_NAME = words_in(
    "yay yes no hooray woohoo great wow hi hello thanks thank ta cheers lol finally please ok okay "
    "done again today here now help nice good lovely exciting same mine ours shared communal"
)
_SHORT_NAME = 2
"""Words of a name that is a sentence."""
_LEADS = (
    ("goes", "by"), ("going", "by"), ("known", "as"), ("answers", "to"), ("answering", "to"),
    ("name", "'s"), ("se", "llama"), ("le", "pusimos"), ("being",), ("as",), ("it", "'s"),
    ("she", "'s"), ("he", "'s"), ("it", "is"), ("she", "is"), ("he", "is"), ("meet",),
    ("introducing",), ("hello", "to"), ("nickname",), ("name", "will", "be"),
)  # fmt: skip
_LEAD_STARTS = frozenset(lead[0] for lead in _LEADS)


def _led_name(message: Message) -> str | None:
    """ "Going by Nickel", "se llama Paco", "to be known as Prior"."""
    norms = message.norms
    for i, norm in enumerate(norms):
        if norm not in _LEAD_STARTS:
            continue
        for lead in _LEADS:
            at = i + len(lead)
            told = tuple(norms[i:at]) == lead
            at += at < len(norms) and norms[at] in ("'", '"', "the")
            if told and _is_capital(message, at):
                return name_from(message, at, len(norms), capital=True)
    return None


def _quoted(message: Message) -> str | None:
    """ "New bin "Chotu" started": the capital words between quotation marks."""
    mark = next((sign for sign in ('"', "'") if sign in message.norms), None)
    if mark is None:
        return None
    at = message.norms.index(mark) + 1
    named = _is_capital(message, at) and mark in message.norms[at + 1 : at + _LONGEST]
    return name_from(message, at, len(message.norms), capital=True) if named else None


_LONGEST = 5
"""Words in a name and its closing mark, at most."""


def _that_started(message: Message) -> str | None:
    """ "Penny's started", "Mango Two is up and running": the capital words before the copula."""
    norms = message.norms
    for i in range(1, len(norms) - 1):
        if norms[i] not in ("'s", "is") or norms[i + 1] not in _BEGUN:
            continue
        start = i
        while start > 0 and _is_capital(message, start - 1) and norms[start - 1] not in _NO_NAMES:
            start -= 1
        if start < i:
            return message.text(start, i)
    return None


_BEGUN = words_in("started begun up going open live new")
_NO_NAMES = words_in("it that there this here who what he she everything one") | BIN_WORDS


def _is_capital(message: Message, i: int) -> bool:
    """Whether word i is written as a name is, and names no day."""
    word = message.words[i] if i < len(message.words) else None
    capital = word is not None and word.kind == "word" and word.text[:1].isupper()
    return capital and message.norms[i] not in WEEKDAYS and message.norms[i] not in MONTHS


def _place_opened(message: Message) -> str | None:
    """ "Opened shed, 20 litres": a room or a colour right behind the verb, and no other thing."""
    measured = {amount.start for amount in message.amounts}
    for clause in message.clauses:
        if clause.verb is None or "open" not in clause.verb.verb.classes:
            continue
        at = clause.verb.end
        while message.norms[at : at + 1] and message.norms[at] in ("the", "our", "my"):
            at += 1
        if message.norms[at : at + 1] and message.norms[at] in PLACE_NAMES | COLOURS:
            behind = message.norms[at + 1 : at + 2]
            if not behind or not behind[0].isalpha() or at + 1 in measured:
                return message.words[at].text
    return None


_IT = words_in("it him her er them this that one is of 's : \" the")


def _named_already(group: Group) -> str | None:
    """The bin that the words name, if they do not only say that it is a new one."""
    norms = group.message.norms
    names = [
        b.name
        for b in group.bins
        if b.name is not None and "from" not in norms[max(0, b.start - 2) : b.start]
    ]
    fresh = ("new", "second", "third", "other", "spare")
    return next((name for name in names if name.split()[0] not in fresh), None)


def new_name(group: Group) -> str | None:
    """The name of a bin that was started, where its own sentence says it."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(group.start, min(len(message.norms) - 2, sentence.end + 8)):
        if message.norms[i] == "name" and (lead := _behind_name(message.norms, i + 1)):
            return name_from(message, lead, len(message.norms))
    for i in range(group.start, sentence.end - 1):
        if message.norms[i : i + 2] == ["name", "of"]:
            return name_from(message, i + 2, sentence.end)
        if message.norms[i] in _CALLED:
            name = name_from(message, i + 1, sentence.end)
            if name:
                return name
    if found := _named_already(group) or _greeted(group) or _called_next(message, sentence.end):
        return found
    sized = [a.end for a in group.amounts if a.size]
    generic = group.bins[0].end if group.bins else sized[0] if sized else 0
    if generic and message.norms[generic : generic + 2] in (
        ["in", "the"],
        ["on", "the"],
        ["for", "the"],
    ):
        return name_from(message, generic + 2, sentence.end)
    if group.verb is None:
        return name_behind(group) or _introduced(group)
    said = name_from(message, group.verb.end, group.end, capital=True)
    return said or _listed_name(message, group.verb.end, sentence.end) or name_behind(group)


def _called_next(message: Message, start: int) -> str | None:
    """ "New bin, 15 litres, Alf's old one. Calling it Tetchy": the next sentence names it."""
    norms = message.norms
    at = next((i for i in range(start, min(start + 2, len(norms) - 1)) if norms[i] in _CALLED), 0)
    return name_from(message, at + 1, len(norms), capital=True) if at else None


def _behind_name(norms: Sequence[str], i: int) -> int:
    """Index behind what joins "name" and the name ("is", ":", "will be"); 0 if nothing does."""
    if norms[i : i + 1] and norms[i] in (":", "is", "="):
        return i + 1
    return i + 2 if norms[i : i + 2] in (["will", "be"], ["shall", "be"], ["to", "be"]) else 0


def _introduced(group: Group) -> str | None:
    """ "Mabel is our new bin": the capital words before the copula."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(sentence.start + 1, min(sentence.start + 4, sentence.end - 1)):
        if message.norms[i] in ("is", "'s") and message.norms[i + 1] in ("our", "my", "the", "a"):
            return name_from(message, sentence.start, i, capital=True)
    return None


def _listed_name(message: Message, start: int, end: int) -> str | None:
    """ "New bin started today: stairwell, 15 litres": the words behind the colon."""
    for i in range(start, end - 1):
        if message.norms[i] == ":" and message.words[i + 1].kind == "word":
            return name_from(message, i + 1, end)
    return None


def _greeted(group: Group) -> str | None:
    """ "Say hello to Doris", "meet Doris"."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(sentence.start, sentence.end - 1):
        if message.norms[i] in ("meet", "introducing", "welcome") or message.norms[i : i + 2] == [
            "hello",
            "to",
        ]:
            at = i + 1 if message.norms[i] != "hello" else i + 2
            return name_from(message, at, sentence.end, capital=True)
    return None


def name_behind(group: Group) -> str | None:
    """ "New bin alert: Gertrude, 15 L": the capital words behind the first stop."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(group.start, sentence.end - 1):
        if (
            message.norms[i] in (":", ",", "-", "—", "(")
            and message.words[i + 1].text[:1].isupper()
        ):
            return name_from(message, i + 1, sentence.end, capital=True)
    return None


_BEFORE_NAME = words_in("'s it the him her er a \" ' as bin one them : <")
_TOLD_APART = words_in("small little wee big young old junior baby tiny new great")
"""What tells a new bin from one of the same name: "small Grace"."""


def name_from(message: Message, i: int, end: int, *, capital: bool = False) -> str | None:
    """The name said from word i on: a known one, a quoted one, or the words to the next stop."""
    for ref in message.bins:
        if i <= ref.start <= i + 2 and ref.name is not None and not capital:
            told_apart = message.norms[ref.start - 1] in _TOLD_APART and ref.start > i
            return f"{message.words[ref.start - 1].text} {ref.name}" if told_apart else ref.name
    while i < end and message.norms[i] in _BEFORE_NAME:
        i += 1
    stop = i
    limit = min(end, i + 4)
    while stop < limit:
        if not _goes_on(message, i, stop, end):
            word = message.words[stop]
            if message.norms[stop] in _NAME_STOPS:
                break
            if capital and word.kind == "word" and not word.text[:1].isupper():
                break
        stop += 1
    if stop > i and message.words[i].kind == "number":
        return None
    return message.hyphened(i, stop) or None


_NAME_STOPS = _NAME_ENDS | {'"', "'"}


def _goes_on(message: Message, start: int, i: int, end: int) -> bool:
    """Whether a small word stands within a name: "Sir Rots-a-Lot", "Oscar the Grouch"."""
    if i == start or message.words[i].text[:1].isupper():
        return False
    hyphen = message.body[message.words[i].start - 1 : message.words[i].start] == "-"
    linked = message.norms[i] in _LINKS and message.words[start].text[:1].isupper()
    return hyphen or (linked and i + 1 < end and _is_capital(message, i + 1))


_LINKS = words_in("the of von van de la du da mac")


def vessel_as_name(message: Message) -> str | None:
    """ "Opened the barrel, 60 L": the one vessel of its sort is called by it in a room."""
    if not message.context.in_room:
        return None
    pairs = zip(message.norms, message.norms[1:], strict=False)
    named = {word for the, word in pairs if the in ("the", "our") and word in _OF_ITS_SORT}
    return named.pop() if len(named) == 1 else None


_OF_ITS_SORT = words_in("barrel drum keg churn cask urn tank")
