"""Whose doing a report tells of: the member who is said to have done it, or the sender."""

from collections.abc import Sequence

from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.people.credits import credited, logged_for
from handlers.reading.people.nameddoer import OWN, THIRD, TOGETHER, named_doer
from handlers.reading.people.strangers import stranger
from handlers.reading.words.binwords import PLAIN_FOLLOWERS
from handlers.reading.words.sense import SAID, SPOKE
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import vocabulary, words_in

_QUOTED = 12
"""Words before a verb in which a colon and whose words follow it are looked for."""


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
    name = _quoted(group) or _before_amount(group) or named_doer(group) or stranger(group)
    if name is None and _carries_on(group):
        for other in reversed(groups[:k]):
            name = named_doer(other)
            if name is not None or not OWN.isdisjoint(other.norms):
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
        and message.norms[end] in TOGETHER
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
    between = _without_asides(message, end, group.verb.start)
    others = any(end <= m.start < group.verb.start for m in message.members)
    if others or not OWN.isdisjoint(between) or not _NOT_HIS.isdisjoint(between):
        return None
    return ref.name if end <= group.verb.start else None


def _without_asides(message: Message, start: int, end: int) -> list[str]:
    """The words there, without "while I was at work": what somebody else did meanwhile."""
    aside = [c for c in message.clauses if c.joint in _WHILE and start <= c.start and c.end <= end]
    held = indexes(aside)
    return [message.norms[i] for i in range(start, end) if i not in held]


_WHILE = words_in("while whilst when")


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
    if not OWN.isdisjoint(left):
        return False
    return (
        not THIRD.isdisjoint(left)
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
