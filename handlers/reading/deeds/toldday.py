"""Which day a report tells of, said beside it or for the whole message."""

from collections.abc import Sequence
from datetime import date, timedelta
from itertools import pairwise

from handlers.reading.calendar.days import Day
from handlers.reading.calendar.daywords import BEHIND_A_DAY, WEEKDAYS
from handlers.reading.calendar.otherdays import day_named_again, is_just_now, is_of_other, put_right
from handlers.reading.deeds.told import bin_of
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.people.nameddoer import OWN
from handlers.reading.words.once import once
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in


def day_of(groups: Sequence[Group], k: int, *, since: bool = False) -> date:
    """Local date on which the k-th group happened; the day of the message if none was said.

    With `since` a state is told, so that "since Monday" says when it began.
    """
    group = groups[k]
    said = None
    if group.message.days:
        said = said_day(group) or _day_beside(groups, k) or _day_of_message(groups, k, since)
    today = group.message.today
    if said is not None:
        return (put_right(group.message, said) or said).past
    if (named := day_named_again(group.message)) is not None:
        return named
    return today - timedelta(1) if _late_last_night(group) else today


@once
def said_day(group: Group) -> Day | None:
    """The day that the group's own words give, if any."""
    if not group.days:
        return None
    told = [d for d in group.days if not d.aside and not is_now(group.message, d)]
    told = [d for d in told if _tells_when(group, d)]
    told = [d for d in told if not _is_other_day(group, d)]
    if len(told) > 1:
        told = [d for d in told if not _is_of_a_lack(group, d)] or told
    if group.verb is not None and len(told) > 1:
        told = _beside_verb(group, told)
    just_now = next((d for d in told if is_just_now(group.message, d)), None)
    if just_now is not None:
        return just_now
    today = group.message.today
    # "not much today, ... last night": a day that is over says more than today
    return next(
        (d for d in told if d.past != today or d.future != today), told[0] if told else None
    )


def _is_of_a_lack(group: Group, day: Day) -> bool:
    """ "Missed yesterday, so 800 g today", "800 g today, nothing yesterday": a day without it."""
    message = group.message
    held = indexes(group.amounts)
    for i in range(day.start - 1, max(-1, day.start - _LACK_LEADS), -1):
        if i in held or message.norms[i] in _CLAUSE_ENDS:
            return False
        if message.norms[i] in _LACK:
            return True
    return False


_LACK_LEADS = 7
"""Words before a day among which it is told that nothing was done on it."""
_LACK = words_in(
    "nothing nowt none no not n't never missed skipped forgot didnt couldnt away ill sick"
)
_CLAUSE_ENDS = words_in(", . ; : ! but so and")


def _beside_verb(group: Group, days: list[Day]) -> list[Day]:
    """ "I was ill yesterday so I forgot: on Monday I put ...", "flies on Sunday, sealed it today":
    the deed has its own day, the other tells how somebody was or what was seen.
    """
    own = next((c for c in group.clauses if c.verb is group.verb), None)
    beside = [d for d in days if own is not None and own.start <= d.start < own.end]
    rest = [d for d in days if d not in beside]
    apart = all(_tells_how(group.message, d) for d in rest)
    return beside if beside and rest and apart else days


def _tells_how(message: Message, day: Day) -> bool:
    """Whether the clause of a day tells how somebody was, or no more than a sign."""
    clause = message.clause_at(day.start)
    if clause is None:
        return False
    seen = clause.verb is None and any(clause.start <= s.start < clause.end for s in message.signs)
    return seen or not _WAS_SO.isdisjoint(message.norms[clause.start : clause.end])


_WAS_SO = words_in("was were am is been wasnt werent")


def is_now(message: Message, day: Day) -> bool:
    """ "It's under the tree now, dug in on Saturday": now is no day of a deed."""
    now = message.norms[day.start : day.end] == ["now"]
    before = message.norms[max(0, day.start - 1) : day.start]
    return now and before != ["not"] and not is_just_now(message, day)


def _is_of_what_waits(group: Group, day: Day) -> bool:
    """ "Buried the blue, the green didn't fit, next week": when the other's turn comes."""
    message = group.message
    if group.verb is None or day.past <= message.today:
        return False
    return not _DENIED.isdisjoint(message.norms[group.verb.end : day.start])


_DENIED = words_in("didnt doesnt wouldnt couldnt cant wont not no")


def _is_other_day(group: Group, day: Day) -> bool:
    """ "The Sunday chicken", "..., collection is on Monday": a day of something else."""
    message = group.message
    before = message.norms[day.start - 1] if day.start else ""
    if before in _OF_THING and any(
        day.start - 1 == i.end or i.start == day.end for i in message.items
    ):
        return True
    if before in WHOSE and _names_thing(message, day):
        return True
    if _describes_thing(group, day) or _is_of_what_waits(group, day):
        return True
    clause = next((c for c in group.clauses if c.start <= day.start < c.end), None)
    if clause is not None and is_of_other(message, day, clause):
        return True
    if clause is None or clause.verb is not None or len(group.clauses) < 2:
        return False
    if day.past > message.today and clause.end - clause.start > day.end - day.start:
        return not any(clause.start <= a.start < clause.end for a in group.amounts)
    return _is_coming(message, clause.start, clause.end, day)


def _describes_thing(group: Group, day: Day) -> bool:
    """ "Put in 2 kg Sunday roast bones", "leftover Friday curry": the day a dish is named for."""
    message = group.message
    if any(i.start <= day.start < i.end for i in message.items):
        return True
    named = message.norms[day.start] in WEEKDAYS and day.end == day.start + 1
    if not named or group.verb is None or all(i.start != day.end for i in message.items):
        return False
    ends = {a.end for a in group.amounts} | {i.end for i in message.items}
    before = message.norms[day.start - 1] if day.start else ""
    return day.start in ends or before in ("of", "old", "leftover", "some", "'s")


def _is_coming(message: Message, start: int, end: int, day: Day) -> bool:
    """Whether the words round a day say that it comes round; the "back" of "3 days back" is its."""
    if message.norms[max(0, day.start - 2) : day.start] == ["as", "of"]:
        return False  # "bin 3 is open as of last night"
    if message.norms[day.end : day.end + 1] == ["after"]:
        end = day.end  # "yesterday after the meeting"
    passed = {a.end for a in message.amounts} | indexes(message.bins)  # "500 g each", "back step"
    around = {n for i, n in enumerate(message.norms[start:end], start) if i not in passed}
    return not _COMING.isdisjoint(around.difference(message.norms[day.start : day.end]))


def _tells_when(group: Group, day: Day) -> bool:
    """Whether a day dates the deed: beside the verb, before it, or alone in its clause."""
    clause = next((c for c in group.clauses if c.start <= day.start < c.end), None)
    if clause is None or group.verb is None or group.inherited is not None:
        return True
    if clause.start <= group.verb.start:
        return True
    norms = group.message.norms
    held = indexes(group.bins)
    other = (
        clause.end
        - clause.start
        - (day.end - day.start)
        - len([i for i in held if clause.start <= i < clause.end])
    )
    return other <= 3 and _MEETING.isdisjoint(norms[clause.start : clause.end])


def _names_thing(message: Message, day: Day) -> bool:
    """Whether a weekday only names what stands behind it ("her Sunday joint")."""
    after = message.words[day.end] if day.end < len(message.words) else None
    weekday = message.norms[day.start] in WEEKDAYS and day.end == day.start + 1
    return weekday and after is not None and after.kind == "word" and after.norm not in _AFTER_DAY


_AFTER_DAY = BEHIND_A_DAY | words_in(
    "before after past gone just when was had so then because as with there that a an on my "
    "you into by for from of but or which"
)
WHOSE = words_in("her his my our their your the")
_MEETING = words_in(
    "see back ready due until till meet return open party by then visit again home away"
)


@once
def is_ahead(group: Group) -> bool:
    """Whether the group's day still lies ahead, so that nothing has happened yet."""
    if is_intended(group):
        return True
    day = said_day(group)
    if day is None:
        return False
    if day.past > group.message.today:
        return True
    coming = group.verb is not None and group.verb.verb.form == "ing"
    return coming and day.past != group.message.today and day.past != day.future


def is_intended(group: Group) -> bool:
    """ "Sealing it tonight": the form of what is going on, with a time that is to come."""
    going_on = group.verb is not None and group.verb.verb.form == "ing"
    if not going_on or not _WAS.isdisjoint(group.norms):
        return False
    norms = group.norms
    return any(
        norm in _TO_COME and norms[max(0, i - 1) : i] not in (["from"], ["of"])
        for i, norm in enumerate(norms)
    )  # "from tonight", "as of tonight" is now


_TO_COME = words_in("tonight tomorrow later soon shortly")
_WAS = words_in("finished was were been done just")


def _day_beside(groups: Sequence[Group], k: int) -> Day | None:
    sentence = groups[k].clauses[0].sentence
    alone = _day_leading(groups[k])
    if alone is not None and alone.past <= groups[k].message.today:
        return alone  # "date night tomorrow, curry scraps ...": no deed is ahead
    along = not _ALONG.isdisjoint(groups[k].norms) and not groups[k].days
    for other in reversed(groups[:k]):
        if other.clauses[-1].sentence < sentence - along:
            break
        day = said_day(other)
        tells = other.sense in ("did", "none", "habit")  # "yesterday night I pour it out, got 1 L"
        if day is not None and tells and day.past <= groups[k].message.today:
            return day
    return _day_behind(groups, k, sentence)


_ALONG = words_in("too also afterwards aswell straightaway")
"""Words that tell a deed with the one before it: "sealed it too"."""


def _day_leading(group: Group) -> Day | None:
    """ "2 kg in the shed, and on Monday, 1 kg in bin 3": a clause that only tells the day of what
    stands behind it.
    """
    message, start = group.message, group.start
    comma = message.norms[start - 1 : start] == [","]
    day = next((d for d in message.days if d.end == start - comma and not d.aside), None)
    clause = message.clause_at(day.start) if day is not None else None
    if day is None or clause is None or is_now(message, day):
        return None
    led = message.norms[clause.start : day.start]
    if led and not _NOTED.isdisjoint(led) and _TO_NOTE.issuperset(led):
        return day  # "log this, bot: Sunday I put ..."
    return day if clause.verb is None and len(led) <= 1 else None


_NOTED = words_in("log note write record enter book jot")
_TO_NOTE = _NOTED | words_in("this that it bot please pls down for me us : , that's")


def _day_behind(groups: Sequence[Group], k: int, sentence: int) -> Day | None:
    """ "Drained the shed and added 2 kg last night": the day at the end counts for both."""
    for other in groups[k + 1 :]:
        first = other.clauses[0]
        if first.sentence != sentence or first.joint not in _GOING_ON:
            return None
        done = other.sense == "did" or _says_when_done(other)
        if not done or _has_own_doer(other.norms):
            return None
        day = said_day(other)
        if day is not None:
            return day
    return None


def _has_own_doer(norms: Sequence[str]) -> bool:
    """Whether a clause says anew who did it; "by me" at its end does not."""
    return any(b in OWN and a != "by" for a, b in pairwise(["", *norms]))


_GOING_ON = frozenset({"and", "n", "&", "then", ",", "-", "—", "("})


def _says_when_done(group: Group) -> bool:
    """ "The shed is sealed, did it Sunday": no question, though it begins as one; "..., tape put by
    me on Sunday": no order.
    """
    if any(a == "by" and b in OWN for a, b in pairwise(group.norms)):
        return True
    told = group.norms[:1] == ["did"] and group.norms[1:2] and group.norms[1] in _IT
    return bool(told) and "?" not in group.message.norms


_IT = words_in("it that this so them him her")


def _day_of_message(groups: Sequence[Group], k: int, since: bool) -> Day | None:
    """The one past day that the message tells, where no other report has it for itself."""
    message = groups[k].message
    days = [d for d in message.days if not d.aside or (since and _since(message, d))]
    if any(d.past == message.today and not is_now(message, d) for d in days):
        return None
    past = [d for d in days if d.past < message.today]
    if len({d.past for d in past}) != 1:
        return None
    held = next((g for g in groups if g.start <= past[0].start < g.end), None)
    if held is None or held is groups[k]:
        return past[0] if _tells(message, past[0], since) else None
    bare = held.verb is None and not held.bins and not held.measured()
    if bare and any(held.start <= m.start < held.end for m in message.members):
        return None  # "(it was Fatima last week)"
    same_bin = not held.measured() and held.names() in ([], [bin_of(groups, k)])
    other = held.sense == "did" and not same_bin
    return None if other or not _tells(message, past[0]) else past[0]


def _since(message: Message, day: Day) -> bool:
    """ "Sealed since Monday"; but "the first bran since Easter" was made now."""
    if day.start == 0 or message.norms[day.start - 1] != "since":
        return False
    clause = message.clause_at(day.start)
    return clause is None or "first" not in message.norms[clause.start : day.start]


def _tells(message: Message, day: Day, since: bool = False) -> bool:
    """Whether the clause of a day tells what was, and not what comes round or lies ahead."""
    clause = message.clause_at(day.start)
    lasts = since and _since(message, day)  # "has been under the plum since Saturday"
    if clause is None or not (clause.sense in ("did", "none") or lasts):
        return False
    if is_of_other(message, day, clause):
        return False
    before = message.norms[day.start - 1] if day.start else ""
    of_thing = any(item.start <= day.start < item.end for item in message.items)
    of_thing = of_thing or before in _OF or any(item.start == day.end for item in message.items)
    of_thing = of_thing or (before in WHOSE and _names_thing(message, day))
    return not of_thing and not _is_coming(message, clause.start, clause.end, day)


_OF = words_in("the de di do da von van del of from our my off frae fae fra")
_OF_THING = _OF - {"of"}
"""A day behind "of" that is not set aside is the deed's ("at the fair of Saturday")."""
_COMING = words_in(
    "due next will until till by collection collected meeting see back open opens ready return "
    "every each deadline leave leaving starting remind nudge ask"
)


def _late_last_night(group: Group) -> bool:
    """ "Before midnight", told in the morning, was yesterday."""
    norms = group.norms
    if "midnight" not in norms:
        return False
    at = norms.index("midnight")
    local = group.message.context.at.astimezone(group.message.context.zone)
    return local.hour < 12 and at > 0 and norms[at - 1] in ("before", "at", "around", "by", "til")
