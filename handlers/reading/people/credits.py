"""A member to whom scraps or a report are credited away from the verb: "(Kofi)", "from Kofi"."""

from collections.abc import Sequence

from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.people.members import MemberRef
from handlers.reading.words.once import once
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in


def credited(group: Group) -> str | None:
    """The member to whom the group's own words credit what it tells; None if to nobody."""
    members = group.message.members
    found = next((m.name for m in members if _is_credited(group, m)), None)
    return found or next((m.name for m in members if _is_tagged(group, m)), None)


def _is_tagged(group: Group, ref: MemberRef) -> bool:
    """ "She's drained it, Priya has", "sealed since Friday, Priya did it", "... Priya's doing",
    "in the ground since noon, Priya dug it in"."""
    norms = group.message.norms
    before, after = norms[ref.start - 1 : ref.start], norms[ref.end : ref.end + 4]
    if before and before[0] in _TAGS and (not after or after[0] in _ENDING):
        before, after = norms[ref.start - 2 : ref.start - 1], before  # "has Bram"
    elif list(after[:3]) == ["saw", "to", "it"]:
        after = ["did", *after[3:]]
    elif after[:1] and after[0] in _WORKED and not _IT.isdisjoint(after[1:2]):
        after = ["did", *after[2 + (after[2:] != [] and after[2] in _WHITHER) :]]
    elif after[:1] == ["'s"] and after[1:] and after[1] in _DOING:
        after = ["did", *after[2:]]
    if ref.start < group.start or not (before and before[0] in _PAUSES):
        return False
    if not after or after[0] not in _TAGS or not _ends_there(after[1:]):
        return False
    sentences, own = group.message.sentences, group.clauses[-1].sentence
    end = sentences[min(own + 1, len(sentences) - 1)].end
    return ref.end <= end and _OWN.isdisjoint(norms[group.start : ref.start])


def _ends_there(after: Sequence[str]) -> bool:
    """Whether nothing more is said behind "did" or "did it"."""
    rest = after[1:] if after and after[0] in _IT else after
    return not rest or rest[0] in _ENDING or rest[0] == "\n"


_IT = words_in("it that this so")
_TAGS = words_in("has have had did was")
_PAUSES = words_in(", . ; - — ( ! well") | {"\n"}
_WORKED = words_in(
    "dug ploughed plowed forked raked turned buried tipped shovelled spaded emptied carried sealed "
    "shut closed drained"
)
_WHITHER = words_in("in under over down out off up")
_DOING = words_in("doing work handiwork effort job")
_OWN = words_in("i we ive im me my us you")


def _is_credited(group: Group, ref: MemberRef) -> bool:
    if not group.start <= ref.start < group.end or ref.start in indexes(group.bins):
        return False
    if ref.owner:
        return _is_of_his_things(group, ref)
    norms = group.message.norms
    start = ref.start - (norms[ref.start - 1 : ref.start] == ["@"])
    before, after = norms[start - 1 : start], norms[ref.end : ref.end + 1]
    if before == ["("]:
        return after == [")"] and start > 1
    if before == ["-"] and start > 1 and ref.end == len(norms):
        return True  # signed
    if before == ["of"]:
        return norms[start - 2 : start - 1] == ["courtesy"]
    if before == ["to"] and ref.end == group.end:
        return start > 1 and norms[start - 2] in _PRAISE
    if after == ["'s"]:
        return False
    return before in (["from"], ["off"]) and _is_given(group, start)


_PRAISE = words_in("thanks credit kudos props")


def _is_given(group: Group, start: int) -> bool:
    """ "500 g of mash to the crate, from Kofi", "the yard got 2 kg off Kofi", "2 kg from Kofi"."""
    if not group.measured() or group.message.bran(group.start, group.end):
        return False
    norms, verb = group.message.norms, group.verb
    ends = {a.end for a in group.measured()} | {item.end for item in group.items}
    if verb is not None and start <= verb.start:
        return verb.verb.plain in _GOING and start - 1 in ends  # "2 kg from Kofi went in"
    if verb is not None:
        leads = any(b.end <= verb.start for b in group.bins)
        return leads and verb.verb.plain in _RECEIVING and start - 1 >= verb.end
    told = any(b.end <= start - 1 for b in group.bins) or norms[start - 2 : start - 1] == [","]
    return told or (bool(group.bins) and start - 1 in ends)  # "2 kg of peel from Kofi, the yard"


_RECEIVING = words_in("get have take receive eat")


def _is_of_his_things(group: Group, ref: MemberRef) -> bool:
    """ "Kofi's turkey carcass is in bin 3", "2 kg of Kofi's peel to bin 3"."""
    norms = group.message.norms
    at = ref.end + (norms[ref.end : ref.end + 1] == ["'s"])
    if all(item.start != at for item in group.items) or not group.bins:
        return False
    if group.verb is not None and group.verb.verb.plain not in _GOING:
        return False
    return ref.start == group.start or norms[ref.start - 1] == "of"


_GOING = words_in("go come end")


@once
def logged_for(message: Message) -> str | None:
    """ "Ines asked me to record her 2 kg", "Ines says "2 kg in the shed"": whose words they are."""
    for ref in message.members:
        after = message.norms[ref.end : ref.end + 4]
        if after[(after[:1] == ["'s"]) :][:3] in (["been", "at", "it"], ["been", "busy", "."]):
            return ref.name  # "Tom's been at it. 2 kg in bin 3"
        if _heads_or_ends(message.norms, ref, after):
            return ref.name
        if after[:1] and after[0] in _SAID and after[1:2] in (['"'], [":"]):
            return ref.name
        if after[:1] and after[0] in _ASKED and after[1:3] == ["me", "to"]:
            return ref.name if after[3:] and after[3] in _WRITE else None
    return None


def _heads_or_ends(norms: Sequence[str], ref: MemberRef, after: Sequence[str]) -> bool:
    """ "For Kofi: 2 kg in bin 3", "it's me Kofi, sealed it", "... That was Kofi"."""
    before = norms[: ref.start]
    if after[:1] == [":"] and before and before[-1] in ("for", "from"):
        return _HEADING.issuperset(before)
    if before[-1:] == ["me"] or (before[-1:] != [] and before[-1] in ("is", "'s")):
        return _SPEAKING.issuperset(before)
    said = before[-2:-1] and before[-2] in ("that", "this", "it") and before[-1] == "was"
    ends = not after or after[0] in _ENDING | _WHEN
    return bool(said) and (ends or (after[0] in _WHO and after[1:2] != [] and after[1] in _DID))


_WHEN = words_in("on last yesterday today tonight")
_WHO = words_in("who that as")
_DID = words_in("did done has had")
_SPEAKING = words_in("it is 's this me hi hello hey only just now ,")
_HEADING = words_in("for from a message msg note text word report update news one this is")
_ENDING = words_in(". ! , not again btw ) ☺")
_SAID = words_in("says said wrote writes reports texted")
_ASKED = words_in("asked wants wanted told asks texted rang messaged")
_WRITE = words_in("log record note add enter put post write register tell report")
