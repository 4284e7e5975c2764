"""Whose doing a report tells of: the member who is said to have done it, or the sender."""

from collections.abc import Sequence

from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.people.credits import credited, logged_for
from handlers.reading.people.members import MemberRef
from handlers.reading.people.strangers import stranger
from handlers.reading.words.binwords import PLAIN_FOLLOWERS
from handlers.reading.words.sense import SAID, SPOKE
from handlers.reading.words.vocabulary import vocabulary, words_in

_QUOTED = 12
"""Words before a verb in which a colon and whose words follow it are looked for."""
_OWN = words_in("i we ive im my me us")
_THIRD = words_in("she he they her him")
_OF_HIM = _THIRD | words_in("which who whose his hers himself herself this one even")
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


def member_of(groups: Sequence[Group], k: int) -> str | None:
    """The member whose doing it is; None when it is the sender."""
    group = groups[k]
    if not group.message.members:
        return stranger(group)
    if group.norms[:1] == ["me"] and any(a.start == group.start + 1 for a in group.amounts):
        return None  # "me 1 kg, Ines 2 kg"
    if group.verb is not None:
        at = group.verb.end
        if group.message.norms[at : at + 1] == ["me"]:
            return None  # "Priya handed me 900 g"
        if _turns_to_us(group, at):
            return None
    name = _quoted(group) or _before_amount(group) or _named_doer(group) or stranger(group)
    if name is None and _carries_on(group):
        for other in reversed(groups[:k]):
            name = _named_doer(other)
            if name is not None or not _OWN.isdisjoint(other.norms):
                break
    name = name or _meant_by_pronoun(group) or _leads_sentence(group)
    name = name or logged_for(group.message) or credited(group)
    return None if name is None or is_sender(group.message, name) else name


def _before_amount(group: Group) -> str | None:
    """ "And Carla 2 kg of bones": who put in what stands behind the name alone."""
    norms, starts = group.message.norms, {a.start for a in group.measured()}
    for ref in group.message.members:
        led = ref.start == group.start or norms[ref.start - 1] in _JOINED
        if group.start <= ref.start and ref.end in starts and led and not ref.owner:
            return ref.name
    return None


_JOINED = words_in(", and &")


def _turns_to_us(group: Group, at: int) -> bool:
    """ "Ruth baked for thirty and we binned 2 kg": whether "I" or "we" stands before the amount."""
    norms, end = group.message.norms, group.amounts[0].start if group.amounts else at
    return any(norms[i] in ("i", "we") and norms[i - 1] in _THEN for i in range(at, end))


_THEN = words_in("and n & so then but")


def _quoted(group: Group) -> str | None:
    """ "Ines told me: I drained it": the member whose words stand behind the colon."""
    if group.verb is None:
        return None
    norms, start = group.message.norms, group.message.sentences[group.clauses[0].sentence].start
    start = max(start, group.verb.start - _QUOTED)
    if ":" not in (before := norms[start : group.verb.start]):
        return None
    lead = frozenset(before[: before.index(":")])
    if lead.isdisjoint(SAID | SPOKE) or "i" in lead or "we" in lead:
        return None
    end = start + before.index(":")
    return next((m.name for m in group.message.members if start <= m.start < end), None)


def _meant_by_pronoun(group: Group) -> str | None:
    """ "Ines told me she had put 2 kg in": the one other member named before "she"."""
    verb = group.verb
    if verb is None:
        return None
    message = group.message
    left = _left(group)
    at = next((i for i, norm in enumerate(left) if norm in _HE), None)
    if at is None or not _PASSIVE.isdisjoint(left[at:]) or not _SPEAKER.isdisjoint(left[at:]):
        return None
    before = [m for m in message.members if m.start < verb.start]
    telling = [m for m in before if message.norms[m.end] in SAID] or before
    others = {m.name for m in telling if not is_sender(message, m.name)}
    return others.pop() if len(others) == 1 else None


_HE = words_in("he she")
_SPEAKER = words_in("i we ive")
_PASSIVE = words_in("is was are were been being got gets needs")


def _leads_sentence(group: Group) -> str | None:
    """ "Ines tapó el cubo": a member begins the sentence and a word that we do not know follows."""
    message = group.message
    start = message.sentences[group.clauses[0].sentence].start
    named = {m.start: m for m in message.members if not m.owner}
    while start < group.end - 1 and start not in named and message.norms[start] in _BEFORE_NAME:
        start += 1
    ref = named.get(start)
    if ref is None or ref.end >= len(message.norms) or group.sense not in ("did", "none"):
        return None
    end = ref.end
    while (
        end + 1 in named
        and message.norms[end] in _TOGETHER
        and named[end + 1].end < len(message.words)
    ):
        end = named[end + 1].end  # "Winston and Ravindra dig it in"
    after = message.words[end]
    spans = (message.bins, message.amounts, message.items)
    if (
        any(x.start == end for span in spans for x in span)
        or after.kind != "word"
        or after.norm in _SPOKEN_TO
    ):
        return None
    if group.verb is None:
        unknown = after.norm not in vocabulary() and after.norm not in PLAIN_FOLLOWERS
        unknown = unknown or (after.norm in _DEEDS and _PLEASE.isdisjoint(group.norms))
        return ref.name if unknown and group.start < end else None
    between = message.norms[end : group.verb.start]
    others = any(end <= m.start < group.verb.start for m in message.members)
    if others or not _OWN.isdisjoint(between) or not _NOT_HIS.isdisjoint(between):
        return None
    return ref.name if end <= group.verb.start else None


_DEEDS = words_in(
    "add put throw mix pour seal close shut bury dig drain bring dump tip chuck open start give "
    "take make scrape empty toss drop carry"
)
"""Verbs in the bare form that learners tell of the past with ("Kumar throw 2 kg in")."""
_PLEASE = words_in("please pls plz can could will")
_BEFORE_NAME = words_in(
    "just now so oh ok okay and well then today yesterday btw fyi also mr mrs ms miss "
    "dr sister brother na abeg a la el der die"
)
_SPOKEN_TO = words_in(
    "thanks thank ta cheers please pls yes no ok okay done sorry hi hello can could would will "
    "do dont you your youre u the a an my our this that it its there what how when where who why "
    "if in at on to for of from with is are not just and or but said says thinks wants bot love "
    "well lol haha fyi"
)
_NOT_HIS = words_in("you u ye my our thanks please ! ? . ; who says said")


def is_sender(message: Message, name: str) -> bool:
    """Whether a name is the sender's own."""
    sender = message.context.sender
    return sender is not None and sender.lstrip("@").casefold() == name.lstrip("@").casefold()


def _carries_on(group: Group) -> bool:
    """Whether the group names no doer of its own, so that the one before goes on."""
    left = group.norms if group.verb is None else _left(group)
    if not _OWN.isdisjoint(left):
        return False
    return (
        not _THIRD.isdisjoint(left)
        or (group.verb is not None and _goes_on(group))
        or group.inherited is not None
    )


def _goes_on(group: Group) -> bool:
    """Whether a group with a verb goes on with the subject of the verb before it."""
    first = group.clauses[0]
    within = first.start > group.message.sentences[first.sentence].start
    return first.joint in ("and", "n", "then", "&") or (first.joint == "" and within)


def _left(group: Group) -> list[str]:
    assert group.verb is not None
    return group.message.norms[group.start : group.verb.start]


def _named_doer(group: Group) -> str | None:
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
    while (norms[start - 1 : start] or [""])[0] in _TOGETHER and start > 1:
        before = ends.get(start - 1)
        if before is None and norms[start - 2] not in _US:
            break
        joined = joined or norms[start - 1] != ","
        start = start - 2 if before is None else before.start
    while (norms[end : end + 1] or [""])[0] in _TOGETHER:
        after = named.get(end + 1)
        if after is None and (norms[end] == "," or norms[end + 1 : end + 2] not in _US_BEHIND):
            break
        joined = joined or norms[end] != ","
        end = end + 2 if after is None else after.end
    if not joined:
        return ref.name
    ours = not _US.isdisjoint(norms[start:end])
    return None if ours else named[start].name if start in named else ref.name


_TOGETHER = words_in(", and & n + with plus")
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
    return "(" in left and ")" not in left and not _OWN.isdisjoint(left)


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
            return None if not _OWN.isdisjoint(aside) else ref.name
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
    if between[:1] in (["has"], ["have"], ["had"]) and _OWN.isdisjoint(between):
        return True
    return all(w in _BETWEEN for w in norms[end : group.verb.start]) and (
        norms[end : end + 1] != [","] or norms[end + 1] in _THIRD
    )
