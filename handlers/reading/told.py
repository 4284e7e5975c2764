"""Which bin, which day and whose doing a report tells of, said or carried over."""

from collections.abc import Sequence
from datetime import date, timedelta

from handlers.reading.days import Day
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

_OWN = words_in("i we ive im my me us")
_THIRD = words_in("she he they her him")
_BETWEEN = words_in(
    "ji san aunty uncle bhai didi sir madam chan sensei anna bhaiya 's after she he has have "
    "had just also already then finally only even today yesterday now is was very kindly "
    "quickly , and again went again's actually apparently must did ( ) they last night this "
    "morning evening afternoon again quietly happily proudly really definitely both"
)
_NOT_BY = words_in(
    "to with for and ask asked tell told see saw like than thanks thank ta cheers from of at "
    "dear hi hello hey happy sorry @ about 's call called"
)


def bin_of(groups: Sequence[Group], k: int) -> str | None:
    """Name of the bin the k-th group means: its own, else the last named, else the next."""
    group = groups[k]
    own = group.names()
    if own:
        return own[0]
    for other in reversed(groups[:k]):
        names = other.names()
        if names:
            return names[-1]
    after = [name for other in groups[k + 1 :] for name in other.names()]
    return after[0] if len(set(after)) == 1 else None


def day_of(groups: Sequence[Group], k: int) -> date:
    """Local date on which the k-th group happened; the day of the message if none was said."""
    group = groups[k]
    said = said_day(group) or _day_beside(groups, k)
    today = group.message.today
    if said is not None:
        return said.past
    return today - timedelta(1) if _late_last_night(group) else today


def said_day(group: Group) -> Day | None:
    """The day that the group's own words give, if any."""
    told = [d for d in group.days if not d.aside and _tells_when(group, d)]
    today = group.message.today
    # "not much today, ... last night": a day that is over says more than today
    return next(
        (d for d in told if d.past != today or d.future != today), told[0] if told else None
    )


def _tells_when(group: Group, day: Day) -> bool:
    """Whether a day dates the deed: beside the verb, before it, or alone in its clause."""
    clause = next((c for c in group.clauses if c.start <= day.start < c.end), None)
    if clause is None or group.verb is None or group.inherited is not None:
        return True
    if clause.start <= group.verb.start:
        return True
    norms = group.message.norms
    held = {i for b in group.bins for i in range(b.start, b.end)}
    other = (
        clause.end
        - clause.start
        - (day.end - day.start)
        - len([i for i in held if clause.start <= i < clause.end])
    )
    return other <= 3 and _MEETING.isdisjoint(norms[clause.start : clause.end])


_MEETING = words_in(
    "see back ready due until till meet return open party by then visit again home away"
)


def is_ahead(group: Group) -> bool:
    """Whether the group's day still lies ahead, so that nothing has happened yet."""
    day = said_day(group)
    if day is None:
        return False
    if day.past > group.message.today:
        return True
    coming = group.verb is not None and group.verb.verb.form == "ing"
    return coming and day.past != group.message.today and day.past != day.future


def _day_beside(groups: Sequence[Group], k: int) -> Day | None:
    sentence = groups[k].clauses[0].sentence
    for other in reversed(groups[:k]):
        if other.clauses[-1].sentence != sentence:
            break
        day = said_day(other)
        if day is not None and other.sense in ("did", "none"):
            return day
    return _day_behind(groups, k, sentence)


def _day_behind(groups: Sequence[Group], k: int, sentence: int) -> Day | None:
    """ "Drained the shed and added 2 kg last night": the day at the end counts for both."""
    for other in groups[k + 1 :]:
        first = other.clauses[0]
        if first.sentence != sentence or first.joint not in ("and", "n", "&", "then", ","):
            return None
        if other.sense != "did" or not _OWN.isdisjoint(other.norms):
            return None
        day = said_day(other)
        if day is not None:
            return day
    return None


def _late_last_night(group: Group) -> bool:
    """ "Before midnight", told in the morning, was yesterday."""
    norms = group.norms
    if "midnight" not in norms:
        return False
    at = norms.index("midnight")
    local = group.message.context.at.astimezone(group.message.context.zone)
    return local.hour < 12 and at > 0 and norms[at - 1] in ("before", "at", "around", "by", "til")


def member_of(groups: Sequence[Group], k: int) -> str | None:
    """The member whose doing it is; None when it is the sender."""
    group = groups[k]
    name = _named_doer(group)
    if name is None and _carries_on(group):
        for other in reversed(groups[:k]):
            name = _named_doer(other)
            if name is not None or not _OWN.isdisjoint(other.norms):
                break
    return None if name is None or is_sender(group.message, name) else name


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
        or (group.verb is not None and group.clauses[0].joint in ("and", "n", "then", "&"))
        or group.inherited is not None
    )


def _left(group: Group) -> list[str]:
    assert group.verb is not None
    return group.message.norms[group.start : group.verb.start]


def _named_doer(group: Group) -> str | None:
    norms = group.message.norms
    for ref in group.message.members:
        if not group.start <= ref.start < group.end:
            continue
        if ref.owner:
            if norms[ref.end + 1 : ref.end + 2] and norms[ref.end + 1] in _SHARE:
                return ref.name
            continue
        before = norms[ref.start - 1] if ref.start > group.start else ""
        if before == "by":
            return ref.name
        if norms[ref.start - 2 : ref.start] == ["behalf", "of"]:
            return ref.name
        if before in ("behalf", "for") and _logs_for(group, ref.start):
            return ref.name
        if before in _NOT_BY and not (before == "from" and group.verb is None):
            continue
        if _does(group, ref.end):
            return ref.name
    return _told_of(group)


_SHARE = words_in("lot share haul contribution load scraps bit offering half portion peelings")


def _told_of(group: Group) -> str | None:
    """ "Kofi, bless him, carried 2 kg": a name, an aside about him, and the verb."""
    message = group.message
    if group.verb is None:
        return None
    sentence = message.sentences[group.clauses[0].sentence]
    for ref in message.members:
        aside = message.norms[ref.end : group.verb.start]
        if ref.start == sentence.start and aside[:1] == [","] and not _THIRD.isdisjoint(aside):
            return None if not _OWN.isdisjoint(aside) else ref.name
    return None


def _logs_for(group: Group, at: int) -> bool:
    norms = group.message.norms
    before = norms[group.start : at]
    return "behalf" in before or not {"log", "logging", "record", "recording", "noting"}.isdisjoint(
        before
    )


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
        return (end < group.end and norms[end] in (":", "-")) or (
            end == group.end == len(norms) and (norms[end - 2 : end - 1] == ["from"])
        )
    if not end <= group.verb.start:
        return False
    between = norms[end : group.verb.start]
    if between[:1] in (["has"], ["have"], ["had"]) and _OWN.isdisjoint(between):
        return True
    return all(w in _BETWEEN for w in norms[end : group.verb.start]) and (
        norms[end : end + 1] != [","] or norms[end + 1] in _THIRD
    )
