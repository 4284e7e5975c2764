"""A bin was started, or named for the first time."""

import re
from collections.abc import Sequence

from handlers.reading.acts import Open
from handlers.reading.doers import member_of
from handlers.reading.groups import Group, sentence_text
from handlers.reading.message import Message
from handlers.reading.names import BIN_WORDS
from handlers.reading.told import day_of, is_ahead
from handlers.reading.vocabulary import words_in

_OPENING = frozenset(
    {"open", "start", "begin", "set up", "kick off", "launch", "christen", "name", "get going",
     "inaugurate",
     "set going", "call", "dub"}
)  # fmt: skip
_NAMING = frozenset({"christen", "name", "call", "dub"})
_SHARED = words_in(
    "shared communal everyone everybody all common anybody public community house block whole "
    "anyone"
)
_CALLED = words_in(
    "called named call calling name christened christen naming dubbed labelled labeled dub"
)
_NAME_ENDS = words_in(
    "and but it its is for with so in on at the a today to from because cos as after by who "
    "which we i he she now this yesterday if , . ; : ! ? ( ) - — ☺ | then near lol haha hope "
    "see sorry thanks will x xx ta cheers must cant"
)
_NOT_OPENED = words_in(
    "lid tap spigot window door bag account shop bakery book conversation season batting"
)
_SMALLEST = 2.0
"""Litres; a smaller volume beside a new bin is what went in, not its size."""
_NEW = re.compile(
    r"\b(?:new|fresh) (?:\S+ ){0,2}(?:bin|balde|cubeta|bucket|pail|one|tub|caddy|drum|barrel)\b|"
    r"\b(?:bin|bucket|pail) (?:number )?\d+ joins\b"
)
_IN_USE = re.compile(
    r"\bqbin (?:is |'s |now |officially |has |all |just |been )+(?:up and running|live|open for "
    r"business|in use|in service|"
    r"in action|good to go|on the go|started|up and going|ready for scraps|ready to be filled|"
    r"open)\b"
)
_GOING = re.compile(
    r"\b(?:got|have|get|had|set) (?:\S+ ){0,5}(?:going|on the go|up and running|set up)\b"
)


def open_of(groups: Sequence[Group], k: int) -> Open | None:
    """The opening or naming of a bin that the k-th group tells of, if it does."""
    group = groups[k]
    if is_ahead(group):
        return None
    rule = _opened(groups, k)
    return None if rule is None else open_from(groups, k, rule)


def open_from(groups: Sequence[Group], k: int, rule: str) -> Open:
    """The opening with what the k-th group and its neighbours say of it."""
    group = groups[k]
    return Open(
        bin=_new_name(group),
        capacity_l=_capacity(group),
        shared=True if not _SHARED.isdisjoint(_sentence_words(group)) else None,
        member=member_of(groups, k),
        on=day_of(groups, k, since=True),
        rules=(rule,),
    )


def _sentence_words(group: Group) -> list[str]:
    sentence = group.message.sentences[group.clauses[0].sentence]
    return group.message.norms[sentence.start : sentence.end]


def _opened(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    if _has_size(group):
        return "the size of a bin"
    if not _NOT_OPENED.isdisjoint(_own_words(group)) or group.message.bran(group.start, group.end):
        return None
    if (
        group.sense in ("none", "did", "habit")
        and _IN_USE.search(sentence_text(groups, k))
        and not _known(group)
    ):
        return "a bin is in use"
    if group.verb is None:
        fresh = _NEW.search(" ".join(group.norms)) and group.sense == "none"
        return (
            "a new bin"
            if fresh and (_capacity(group) or _called(group) or _name_behind(group))
            else None
        )
    if group.sense != "did":
        return None
    plain = group.verb.verb.plain
    sized = _capacity(group) is not None
    if (
        plain in ("get", "have", "set")
        and sized
        and ("new" in group.norms or _GOING.search(" ".join(group.norms)))
    ):
        return "a new bin"
    if plain not in _OPENING:
        return None
    return _started(groups, k, plain, sized)


def _has_size(group: Group) -> bool:
    """ "Shed is 20 L", "the blue bin holds 18 litres"."""
    norms = group.message.norms
    if group.sense not in ("none", "did", "habit") or group.items:
        return False
    for b in group.bins:
        at = b.end
        if norms[at : at + 1] and norms[at] in ("is", "'s", "holds", "takes", "fits", "was"):
            at += 1
            while at < group.end and norms[at] in (
                "a",
                "about",
                "around",
                "only",
                "just",
                "the",
                "roughly",
            ):
                at += 1
            for a in group.amounts:
                exact = a.quantity == "volume" and not a.vessel and a.value >= _SMALLEST
                behind = [w for w in norms[a.end : group.end] if w[:1].isalpha()]
                if exact and a.start == at and (not behind or behind[0] in _SIZE_WORDS):
                    return True
    return False


_SIZE_WORDS = words_in("bin bucket pail one in size capacity tub drum barrel max total big when")


def _own_words(group: Group) -> list[str]:
    """The words of the clause with the verb, or of the whole group without one."""
    if group.verb is None:
        return group.norms
    at = group.verb.start
    own = [c for c in group.clauses if c.start <= at < c.end] or group.clauses[:1]
    return group.message.norms[own[0].start : own[0].end]


def _started(groups: Sequence[Group], k: int, plain: str, sized: bool) -> str | None:
    group = groups[k]
    if plain == "open" and not _starts_anew(group):
        return None
    if plain in _NAMING:
        before = any(_opened(groups, j) for j in range(k)) or sized
        fresh = any(b.plain or not b.known for b in group.bins)
        return "a bin was named" if before or fresh else None
    if (group.bins and not _is_only_where(group)) or sized or _called(group):
        return "a bin was started"
    if "new" in group.norms and ("one" in group.norms or not BIN_WORDS.isdisjoint(group.norms)):
        return "a bin was started"
    return None


def _is_only_where(group: Group) -> bool:
    """ "Started a new term at the dorm": a place that is not what was started."""
    assert group.verb is not None
    norms, end = group.message.norms, group.verb.end
    if any(b.plain or not b.place for b in group.bins):
        return False
    return not any(
        b.start == end or (b.start == end + 1 and norms[end] in ("the", "our")) for b in group.bins
    )


def _known(group: Group) -> bool:
    return any(b.known for b in group.bins)


def _starts_anew(group: Group) -> bool:
    """Whether a bin was opened to be used, and not only its lid to look in."""
    if _capacity(group) is not None or _called(group):
        return True
    if not {"new", "again", "fresh", "another", "shared", "communal"}.isdisjoint(group.norms):
        return True
    return not _known(group) and bool(group.names())


def _capacity(group: Group) -> float | None:
    """Litres of the new bin: a size, or a bare volume that no scraps follow."""
    sentence = group.message.sentences[group.clauses[0].sentence]
    exact = [
        a
        for a in group.message.amounts
        if a.quantity == "volume"
        and sentence.start <= a.start < sentence.end
        and a.value >= _SMALLEST
        and (a.size or not a.vessel)
        and not any(a.end <= x.start <= a.end + 2 for x in group.message.items)
    ]
    sized = [a for a in exact if a.size]
    return (sized or exact)[0].value if exact else None


def _called(group: Group) -> bool:
    return not _CALLED.isdisjoint(group.norms)


def _named_already(group: Group) -> str | None:
    """The bin that the words name, if they do not only say that it is a new one."""
    names = [b.name for b in group.bins if b.name is not None]
    fresh = ("new", "second", "third", "other", "spare")
    return next((name for name in names if name.split()[0] not in fresh), None)


def _new_name(group: Group) -> str | None:
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(group.start, min(len(message.norms) - 2, sentence.end + 8)):
        if message.norms[i : i + 2] == ["name", "is"] or message.norms[i : i + 2] == ["name", ":"]:
            return _name_from(message, i + 2, len(message.norms))
    for i in range(group.start, sentence.end - 1):
        if message.norms[i : i + 2] == ["name", "of"]:
            return _name_from(message, i + 2, sentence.end)
        if message.norms[i] in _CALLED:
            name = _name_from(message, i + 1, sentence.end)
            if name:
                return name
    if found := _named_already(group) or _greeted(group):
        return found
    sized = [a.end for a in group.amounts if a.size]
    generic = group.bins[0].end if group.bins else sized[0] if sized else 0
    if generic and message.norms[generic : generic + 2] in (
        ["in", "the"],
        ["on", "the"],
        ["for", "the"],
    ):
        return _name_from(message, generic + 2, sentence.end)
    if group.verb is None:
        return _name_behind(group) or _introduced(group)
    said = _name_from(message, group.verb.end, group.end, capital=True)
    return said or _listed_name(message, group.verb.end, sentence.end) or _name_behind(group)


def _introduced(group: Group) -> str | None:
    """ "Mabel is our new bin": the capital words before the copula."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(sentence.start + 1, min(sentence.start + 4, sentence.end - 1)):
        if message.norms[i] in ("is", "'s") and message.norms[i + 1] in ("our", "my", "the", "a"):
            return _name_from(message, sentence.start, i, capital=True)
    return None


def _listed_name(message: Message, start: int, end: int) -> str | None:
    """ "New bin started today: stairwell, 15 litres": the words behind the colon."""
    for i in range(start, end - 1):
        if message.norms[i] == ":" and message.words[i + 1].kind == "word":
            return _name_from(message, i + 1, end)
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
            return _name_from(message, at, sentence.end, capital=True)
    return None


def _name_behind(group: Group) -> str | None:
    """ "New bin alert: Gertrude, 15 L": the capital words behind the first stop."""
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(group.start, sentence.end - 1):
        if message.norms[i] in (":", ",", "-", "(") and message.words[i + 1].text[:1].isupper():
            return _name_from(message, i + 1, sentence.end, capital=True)
    return None


def _name_from(message: Message, i: int, end: int, *, capital: bool = False) -> str | None:
    """The name said from word i on: a known one, a quoted one, or the words to the next stop."""
    for ref in message.bins:
        if i <= ref.start <= i + 2 and ref.name is not None and not capital:
            return ref.name
    while i < end and message.norms[i] in (
        "it",
        "the",
        "him",
        "her",
        "a",
        '"',
        "'",
        "as",
        "bin",
        "one",
        "them",
        ":",
    ):
        i += 1
    stop = i
    limit = min(end, i + 4)
    while stop < limit and message.norms[stop] not in _NAME_ENDS | {'"', "'"}:
        word = message.words[stop]
        if capital and word.kind == "word" and not word.text[:1].isupper():
            break
        stop += 1
    if stop > i and message.words[i].kind == "number":
        return None
    return message.text(i, stop) or None
