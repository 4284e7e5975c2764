"""Whether a member who is named in a report is the one who did it."""

from collections.abc import Sequence

from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.people.members import MemberRef
from handlers.reading.words.vocabulary import words_in

OWN = words_in("i we ive im my me us")
THIRD = words_in("she he they her him")
TOGETHER = words_in(", and & n + with plus")
_OF_HIM = THIRD | words_in("which who whose his hers himself herself this one even")
_BETWEEN = words_in(
    "ji san aunty uncle bhai didi sir madam chan sensei anna bhaiya 's after she he has have "
    "had just also already then finally only even today yesterday now is was very kindly "
    "quickly , and again went again's actually apparently must did ( ) they last night this "
    "morning evening afternoon again quietly happily proudly really definitely both "
    "kind good nice sweet generous decent enough so as to only gone went"
)
_THANKED = words_in("thanks thank out credit kudos props cheers up off goes hand")
_NOT_BY = words_in(
    "to with for and ask asked tell told see saw like than thanks thank ta cheers from of at "
    "dear hi hello hey happy sorry about 's call called help helped helping"
)


def named_doer(group: Group) -> str | None:
    """The member whom the group names as the doer; the first of those who did it together."""
    for ref in group.message.members:
        if group.start <= ref.start < group.end and _is_doer(group, ref):
            return _first_of(group.message, ref)
    return _told_of(group)


def _first_of(message: Message, ref: MemberRef) -> str | None:
    """ "Rose and Olive", "Kofi, me and Priya": the first of those who did it together; the sender
    (None), where one of them is."""
    norms, named = message.norms, {m.start: m for m in message.members}
    ends = {m.end: m for m in message.members}
    start, end, joined = ref.start, ref.end, False
    while (norms[start - 1 : start] or [""])[0] in TOGETHER and start > 1:
        before = ends.get(start - 1)
        if before is None and norms[start - 2] not in _US:
            break
        joined = joined or norms[start - 1] != ","
        start = start - 2 if before is None else before.start
    while (norms[end : end + 1] or [""])[0] in TOGETHER:
        after = named.get(end + 1)
        if after is None and (norms[end] == "," or norms[end + 1 : end + 2] not in _US_BEHIND):
            break
        joined = joined or norms[end] != ","
        end = end + 2 if after is None else after.end
    if not joined:
        return ref.name
    ours = not _US.isdisjoint(norms[start:end])
    return None if ours else named[start].name if start in named else ref.name


_US = words_in("me i myself meself us")
_US_BEHIND = [[word] for word in sorted(_US)]


def _is_doer(group: Group, ref: MemberRef) -> bool:
    norms = group.message.norms
    if ref.owner:
        at = ref.end + (norms[ref.end : ref.end + 1] == ["'s"])
        if any(a.start == at and a.factor for a in group.amounts):
            return True  # "Tom's 2 kg went in"
        return norms[at : at + 1] != [] and norms[at] in _SHARE
    if _stands_in_list(group, ref):
        return True
    start = ref.start
    while start > group.start and norms[start - 1] in _BEFORE_ITS_NAME:
        start -= 1
    before = norms[start - 1] if start > group.start else ""
    if before in (",", "(", "and") and _is_among_us(norms[group.start : start]):
        return False
    if _is_introduced(group, ref, start, before):
        return True
    if group.verb is not None and norms[ref.end : group.verb.start] in (["who"], ["for"]):
        thanked = before in ("to", "goes") and norms[start - 2] in _THANKED  # "thanks to Ines who"
        return thanked or norms[max(0, start - 2) : start] == ["it", "was"]
    if before in _NOT_BY and not (before == "from" and group.verb is None):
        return False
    return _does(group, ref.end)


def _is_among_us(left: Sequence[str]) -> bool:
    """ "We (me, Tom, Priya) buried it": the sender is one of them."""
    return "(" in left and ")" not in left and not OWN.isdisjoint(left)


def _is_introduced(group: Group, ref: MemberRef, start: int, before: str) -> bool:
    """Whether the word before the name makes its bearer the doer: "by", "for" in a log, "from"."""
    norms = group.message.norms
    if before == "by" or norms[start - 2 : start] == ["behalf", "of"]:
        return True
    if before in ("behalf", "for") and _logs_for(group, start):
        return True
    if group.verb is not None and group.verb.end == start and _is_logging(group):
        return True  # "pls note Tom bin 3 700 g"
    # "yesterday has Ines 2 kg brought"
    return before in _HELPERS and (group.verb is None or ref.end <= group.verb.start)


def _stands_in_list(group: Group, ref: MemberRef) -> bool:
    """ "Gate, Kofi, 2 kg", "log this: Kofi, 1.75 kg": a name alone between two signs of a list."""
    norms = group.message.norms
    if group.verb is not None and not _is_logging(group):
        return False
    before, after = norms[ref.start - 1 : ref.start], norms[ref.end : ref.end + 1]
    if any(sign and sign[0] not in _LIST_SIGNS for sign in (before if ref.start else [], after)):
        return False
    sentence = group.message.sentences[group.clauses[0].sentence]
    told = norms[sentence.start : sentence.end]
    if group.verb is not None:
        return "," in told
    number = group.clauses[0].sentence
    verbless = all(c.verb is None for c in group.message.clauses if c.sentence == number)
    return verbless and sum(norm in _LIST_SIGNS for norm in told) > 1


def _is_logging(group: Group) -> bool:
    return group.verb is not None and group.verb.verb.plain in ("log", "record", "note")


_LIST_SIGNS = frozenset({",", ":", "-", "\n", ";", "|", "/"})
_BEFORE_ITS_NAME = words_in(
    "@ miss mr mrs ms dr sister brother pastor auntie aunty aunt uncle old young our"
)
_HELPERS = words_in("has have had hat heeft")
_SHARE = words_in(
    "lot share haul contribution load scraps bit offering half portion peelings "
    "behalf batch donation stuff bucket tub bag caddy leftovers"
)


def _told_of(group: Group) -> str | None:
    """ "Kofi, bless him, carried 2 kg": a name, an aside about him, and the verb."""
    message = group.message
    if group.verb is None:
        return None
    sentence = message.sentences[group.clauses[0].sentence]
    for ref in message.members:
        aside = message.norms[ref.end : group.verb.start]
        aside_of_him = aside[:1] in ([","], ["("]) and not _OF_HIM.isdisjoint(aside)
        if ref.start == sentence.start and aside_of_him:
            return None if not OWN.isdisjoint(aside) else ref.name
    return None


def _logs_for(group: Group, at: int) -> bool:
    norms = group.message.norms
    before = norms[group.start : at]
    asked = "add" in before and not {"kindly", "please", "pls"}.isdisjoint(before)
    return asked or not _LOGGING.isdisjoint(before)


_LOGGING = words_in("behalf log logging record recording noting note")


def _does(group: Group, end: int) -> bool:
    """Whether the member at words[..:end] is the one who did it."""
    norms = group.message.norms
    if (
        group.verb is None
        and norms[end : end + 1]
        and norms[end] in ("was", "has", "'s", "had", "came")
    ):
        return norms[group.start : end] == [] or end - 1 == group.start
    if group.verb is None:
        measured = any(a.start == end and a.factor for a in group.amounts)
        alone = group.start == end - 1 and group.end == end  # "Jack and the scouts dug it in"
        return (
            measured
            or alone
            or (end < group.end and norms[end] in (":", "-"))
            or (end == group.end == len(norms) and (norms[end - 2 : end - 1] == ["from"]))
        )
    if not end <= group.verb.start:
        return False
    between = norms[end : group.verb.start]
    if between[:1] in (["has"], ["have"], ["had"]) and OWN.isdisjoint(between):
        return True
    return all(w in _BETWEEN for w in norms[end : group.verb.start]) and (
        norms[end : end + 1] != [","] or norms[end + 1] in THIRD
    )
