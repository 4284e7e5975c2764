"""A bin's stages: opened, sealed, buried."""

import re
from collections.abc import Sequence

from handlers.reading.acts import Bury, Open, Seal
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.names import BIN_WORDS, BinRef
from handlers.reading.told import bin_of, day_of, is_ahead, member_of
from handlers.reading.vocabulary import words_in

_SEALING = frozenset({"seal", "seel", "close", "shut", "seal up", "close up", "close off", "shut up",
                      "cap", "lid", "tape"})  # fmt: skip
_SURELY_SEALING = frozenset({"seal", "seel", "seal up"})
_NOT_SEALED = words_in(
    "deal windows window door doors lips fate envelope letter gate shop office bath shower grout "
    "curtains road roads library pool school schools account tab eyes mouth victory win jar jars "
    "deck driveway worktop floor floors meeting laptop book books case driveways pub cafe vents"
)
_GROUND = words_in("ground soil earth dirt trench hole bed beds patch garden plot allotment border "
                   "planter planters raised under beneath below")  # fmt: skip
_BURYING = frozenset({"bury", "berry", "trench", "inter", "dig", "dig in"})
_NOT_BURIED = words_in("cat dog hamster goldfish rabbit grandad granny uncle aunt face head treasure "
                       "work paperwork phone sand news hatchet nan")  # fmt: skip
_PLACE = words_in("in into under beneath below by near along beside behind next at on over underneath "
                  "between against round around")  # fmt: skip
_PLACE_ENDS = words_in(", . ; ! ? ( ) - — ☺ and but so then because cos with today yesterday last this "
                       "where which covered me my it before after while when now for as lol n i we "
                       "about roughly")  # fmt: skip
_OPENING = frozenset({"open", "start", "begin", "set up", "kick off", "launch", "christen", "name",
                      "get going", "get"})  # fmt: skip
_SHARED = words_in(
    "shared communal everyone everybody all common anybody public community house block"
)
_CALLED = words_in(
    "called named call calling name christened christen naming dubbed labelled labeled"
)
_NAME_ENDS = words_in("and but it its is for with so in on at the a today to from because cos as after "
                      "who which we i he she now this yesterday by if , . ; : ! ? ( ) - — ☺")  # fmt: skip


def seal_of(groups: Sequence[Group], k: int) -> Seal | None:
    """The sealing that the k-th group tells of, if it does."""
    group = groups[k]
    if is_ahead(group):
        return None
    rule = _sealed(groups, k)
    if rule is None:
        return None
    return Seal(
        bin=bin_of(groups, k),
        member=member_of(groups, k),
        on=day_of(groups, k),
        rules=(rule,),
    )


def _sealed(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    norms = group.norms
    if group.verb is None:
        lid_on = re.search(
            r"\blid (?:is |now )?(?:on|down|shut) (?:for good|tight|for two weeks)", " ".join(norms)
        )
        return "the lid is on" if lid_on and _any_bin(groups, k) and group.sense == "none" else None
    plain = group.verb.verb.plain
    if group.sense != "did" or plain not in _SEALING or not _NOT_SEALED.isdisjoint(norms):
        return None
    if "lid" in norms and plain in ("close", "shut") and not group.bins:
        return None
    if group.bins and not (plain in ("close", "shut") and _is_place_alone(group)):
        return "a bin was sealed"
    means_it = any(w in ("it", "them", "this", "that", "both") for w in norms) or len(norms) <= 3
    if (
        means_it
        and _any_bin(groups, k)
        and plain in _SURELY_SEALING | {"close", "close up", "shut"}
    ):
        return "it was sealed"
    return None


def _is_place_alone(group: Group) -> bool:
    """ "Closed the kitchen", said of a room."""
    norms = group.message.norms
    return all(not b.plain and norms[b.start - 1 : b.start] == ["the"] for b in group.bins)


def _any_bin(groups: Sequence[Group], k: int) -> bool:
    return any(g.bins for g in groups) or groups[k].message.context.after_bot


def bury_of(groups: Sequence[Group], k: int) -> Bury | None:
    """The burial that the k-th group tells of, if it does."""
    group = groups[k]
    if is_ahead(group):
        return None
    rule = _buried(groups, k)
    if rule is None:
        return None
    target = _buried_bin(group)
    return Bury(
        bin=bin_of(groups, k) if target is None else target.name,
        member=member_of(groups, k),
        on=day_of(groups, k),
        place=_place(group, target),
        rules=(rule,),
    )


def _buried_bin(group: Group) -> BinRef | None:
    named = [b for b in group.bins if b.name is not None]
    return named[0] if named else None


def _buried(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    norms = set(group.norms)
    if group.verb is None:
        in_ground = " ".join(group.norms)
        if (
            group.sense == "none"
            and group.bins
            and re.search(r"\bin(?:to)? the (?:ground|soil|earth)\b", in_ground)
        ):
            return "a bin is in the ground"
        return None
    if group.sense != "did" or not norms.isdisjoint(_NOT_BURIED):
        return None
    verb = group.verb.verb
    if "bury" not in verb.classes:
        if group.bins and re.search(
            r"\bin(?:to)? the (?:ground|soil|earth|trench)\b", " ".join(group.norms)
        ):
            return "a bin is in the ground"
        return None
    if verb.plain in _BURYING:
        return _buried_surely(groups, k, norms)
    into = not norms.isdisjoint(_GROUND - {"under", "below", "beneath", "raised"})
    if group.bins and into and not _of_scraps(group):
        return "a bin was emptied into the ground"
    return None


def _of_scraps(group: Group) -> bool:
    return bool(group.measured()) and bool(group.items)


def _buried_surely(groups: Sequence[Group], k: int, norms: set[str]) -> str | None:
    group = groups[k]
    assert group.verb is not None
    surely = group.verb.verb.plain in ("bury", "berry", "inter", "trench")
    if group.bins and (surely or not norms.isdisjoint(_GROUND | {"in", "into"})):
        return "a bin was buried"
    means_it = not norms.isdisjoint(
        {"it", "that", "contents", "lot", "them", "stuff", "batch", "everything"}
    )
    if means_it and _any_bin(groups, k) and (surely or "in" in norms):
        return "it was buried"
    return None


def _place(group: Group, target: BinRef | None) -> str | None:
    """The free words for where it went: behind the first word of place after the bin or verb."""
    message = group.message
    norms = message.norms
    start = group.verb.end if group.verb is not None else group.start
    if target is not None:
        start = max(start, target.end) if target.end >= start else start
    sentence = message.sentences[group.clauses[0].sentence]
    held = {i for d in message.days for i in range(d.start, d.end)}
    for i in range(start, sentence.end - 1):
        if norms[i] in _PLACE and i + 1 not in held:
            place = _place_from(message, i + 1, sentence.end, held)
            if place:
                return place
    return None


def _place_from(message: Message, i: int, end: int, held: set[int]) -> str | None:
    norms = message.norms
    while i < end and norms[i] in ("the", "a", "my", "our", "to", "of", "an", "under", "in", "at"):
        i += 1
    stop = i
    while stop < end and stop not in held and norms[stop] not in _PLACE_ENDS:
        stop += 1
    if norms[i:stop] in (["ground"], ["soil"], ["earth"]):
        after = stop
        while after < end and (norms[after] in (",", "-", "☺") or norms[after] in _PLACE):
            after += 1
        return _place_from(message, after, end, held) if after > stop else "ground"
    return message.text(i, stop) or None


def open_of(groups: Sequence[Group], k: int) -> Open | None:
    """The opening or naming of a bin that the k-th group tells of, if it does."""
    group = groups[k]
    if is_ahead(group):
        return None
    rule = _opened(group)
    if rule is None:
        return None
    name = _new_name(group)
    shared = True if not _SHARED.isdisjoint(_sentence_words(group)) else None
    return Open(
        bin=name,
        capacity_l=_capacity(group),
        shared=shared,
        member=member_of(groups, k),
        on=day_of(groups, k),
        rules=(rule,),
    )


def _sentence_words(group: Group) -> list[str]:
    sentence = group.message.sentences[group.clauses[0].sentence]
    return group.message.norms[sentence.start : sentence.end]


def _opened(group: Group) -> str | None:
    norms = group.norms
    if group.verb is None:
        fresh = re.search(r"\bnew (?:\w+ ){0,2}(?:bin|bucket|pail|one)\b", " ".join(norms))
        return "a new bin" if fresh and (_capacity(group) or _called(group)) else None
    plain = group.verb.verb.plain
    if group.sense != "did" or plain not in _OPENING:
        return None
    if plain == "get" and ("new" not in norms or not _capacity(group)):
        return None
    if not {"lid", "tap", "spigot", "window", "door", "up", "bag"}.isdisjoint(
        norms
    ) or group.message.bran(group.start, group.end):
        return None
    if group.bins or _capacity(group) is not None or _called(group):
        return "a bin was started"
    if "new" in norms and ("one" in norms or not BIN_WORDS.isdisjoint(norms)):
        return "a bin was started"
    return None


def _capacity(group: Group) -> float | None:
    sentence = group.message.sentences[group.clauses[0].sentence]
    exact = [
        a
        for a in group.message.amounts
        if a.quantity == "volume" and sentence.start <= a.start < sentence.end
        and a.value >= 2 and (a.size or not a.vessel)
        and not any(a.end <= x.start <= a.end + 2 for x in group.message.items)
    ]  # fmt: skip
    sized = [a for a in exact if a.size]
    return (sized or exact)[0].value if exact else None


def _called(group: Group) -> bool:
    return not _CALLED.isdisjoint(group.norms)


def _new_name(group: Group) -> str | None:
    message = group.message
    sentence = message.sentences[group.clauses[0].sentence]
    for i in range(group.start, sentence.end - 1):
        if message.norms[i] in _CALLED:
            name = _name_from(message, i + 1, sentence.end)
            if name:
                return name
    named = [b for b in group.bins if b.name is not None]
    if named:
        return named[0].name
    if group.verb is None:
        return None
    return _name_from(message, group.verb.end, group.end, capital=True)


def _name_from(message: Message, i: int, end: int, *, capital: bool = False) -> str | None:
    """The name said from word i on: the known one, the quoted one, or the words to the next stop."""
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
    ):
        i += 1
    stop = i
    limit = min(end, i + 4)
    while stop < limit and message.norms[stop] not in _NAME_ENDS | {'"', "'"}:
        if (
            capital
            and not message.words[stop].text[:1].isupper()
            and message.words[stop].kind == "word"
        ):
            break
        stop += 1
    return message.text(i, stop) or None
