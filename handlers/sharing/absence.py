"""Who is away and who is back; written down quietly, so that reminders go to others meanwhile."""

from dataclasses import replace
from datetime import date, timedelta

from handlers.answer import SILENCE, Answer, Turn
from handlers.people import gone_from, is_same, known_as, unheard
from handlers.phrasing import capital, day, span
from handlers.reading.arranged import Away, AwayChanged, Back, Staying, WhoIsAway
from handlers.sharing import loans, rota
from storage.absences import ASKED, absences
from storage.rows import Absence, Entry, Facts

AGAIN = (
    "Days away that come again I cannot keep. Say each by itself: “I'm away on Tuesday”; turns "
    "that never suit you can be swapped, or “take me off the rota”."
)
STAND_IN = "{asked}, will you stand in for {away}? Say “yes” or put 👍 here."
ASKED_STANDS = timedelta(days=1)
"""So long a bare yes may be to somebody who asked for a stand-in."""
ENDED_LATELY = timedelta(days=7)
"""An absence that was to end so many days ago may yet be prolonged."""
DAY, WEEK = timedelta(days=1), timedelta(days=7)
EITHER = "Is that the day you go, or are you back {day}? Say “leaving {day}” or “back {day}”."
BACK_WHEN = "And when are you back? Say it with both days, such as “I'm away Sunday to Thursday”."
ENDS_FIRST = (
    "That ends before it begins, so nothing is written down. Say again from which day to which, "
    "with the year if it is another."
)


async def away(plan: Away, turn: Turn) -> Answer:
    """A member is away; a mark is answer enough, unless a turn of theirs goes to somebody else.

    What members said of themselves stands against what others say of the same days.
    """
    if plan.last and plan.last < plan.first:
        return Answer(say=ENDS_FIRST)
    if own := await _own_word(plan, turn):
        who = capital(own.member)
        return Answer(
            say=f"{who} told me: away{_until(own, turn.today)}. I leave it at that; if it has "
            f"changed, {who} can say so."
        )
    former = await _told_before(plan, turn)
    asked = await _asked(plan, turn)
    entry = turn.entry(
        "away",
        bin=None,
        member=plan.member,
        on=former.on if former else plan.first,
        until=plan.last,
        receiver=plan.stand_in or asked or (former.receiver if former else None),
        facts=Facts(words=ASKED) if asked else former.facts if former else None,
    )
    if former:
        entry = replace(entry, event=former.event, replaces=former.id)
    lines = await rota.after_absence(plan.member or turn.sender, plan.first, plan.last, turn)
    if plan.stand_in:
        members = await turn.book.members()
        left = gone_from([plan.stand_in], members)
        lines.append(f"{left} Who else could do it?" if left else "")
        lines.append(unheard([plan.stand_in], members, "say it again"))
    if asked:
        lines.append(STAND_IN.format(asked=capital(asked), away=plan.member or turn.sender))
    say = "\n".join(filter(None, lines))
    return Answer(
        entries=[entry],
        strikes=[former] if former else [],
        noted=True,
        say=f"Noted. {say}" if say else "",
        calls=[asked] if asked else [],
    )


async def _asked(plan: Away, turn: Turn) -> str | None:
    """Who is asked to stand in, by the name they show, if they are here."""
    called = known_as(plan.asked, await turn.book.members()) if plan.asked else []
    return called[0].name if len(called) == 1 and called[0].present else None


async def stands_in(turn: Turn, event: str | None) -> Answer | None:
    """The sender stands in for whoever asked them to; None: nobody did, or not lately.

    `event`: the message that asked, if that is known.
    """
    for one in reversed(await absences(turn.book, turn.today, date.max)):
        entry = await _entry(one, turn)
        if one.asked is None or entry is None or not is_same(one.asked, turn.sender):
            continue
        if event == entry.event or (event is None and turn.at - entry.said_at <= ASKED_STANDS):
            named = turn.entry(
                "away", bin=None, member=one.member, on=entry.on, until=entry.until,
                receiver=turn.sender,
            )  # fmt: skip
            named = replace(named, event=entry.event, replaces=entry.id, writer=entry.writer)
            return Answer(entries=[named], strikes=[entry], noted=True)
    return None


async def changed(plan: AwayChanged, turn: Turn) -> Answer:
    """An absence that was told before is on other days; of one who was not away it is no news."""
    member = plan.member or turn.sender
    gone = await _of(member, turn.today - ENDED_LATELY, date.max, turn)
    entries = [entry for entry in [await _entry(one, turn) for one in gone] if entry]
    if plan.first or plan.later or plan.either:  # said right behind it: the one told last
        entries = sorted(entries, key=lambda entry: entry.id)[-1:]
    former = next(iter(entries), None)
    if former is None or former.on is None:
        return SILENCE
    if plan.either:
        on = _near(replace(plan, is_back=True), plan.either, former, turn)
        return Answer(say=EITHER.format(day=day(on, turn.today)))
    first, last = _first(plan, former, turn), _last(plan, former, turn)
    if last is None or (former.on, former.until) == (first, last) or last < turn.today:
        return SILENCE
    if last < first:
        return Answer(say=BACK_WHEN) if first != former.on else SILENCE
    named = turn.entry(
        "away", bin=None, member=former.member, on=first, until=last,
        receiver=former.receiver, facts=former.facts,
    )  # fmt: skip
    lines = await rota.after_absence(member, first, last, turn)
    lent = await loans.moved(former, first, last + DAY, turn)
    lines += [lent.say] if lent.say else []
    return replace(
        lent,
        entries=[replace(named, event=former.event, replaces=former.id), *lent.entries],
        strikes=[former, *lent.strikes],
        noted=True,
        say="\n".join(["Noted.", *lines]) if lines else "",
    )


def _first(plan: AwayChanged, former: Entry, turn: Turn) -> date:
    """The first day of an absence that is changed; what has begun begins on no other day."""
    told = former.on or turn.today
    if plan.later:
        return told + timedelta(days=plan.later)
    if plan.first is None or (plan.last is None and told <= turn.today):
        return told
    first = _near(plan, plan.first, former, turn)
    return max(first, told) if plan.no_earlier else first


def _last(plan: AwayChanged, former: Entry, turn: Turn) -> date | None:
    """The last day of an absence that is changed; None where its own has no end."""
    if plan.more:
        return former.until + timedelta(days=plan.more) if former.until else None
    if plan.last is None:
        return former.until
    if plan.first is None and plan.is_back and former.until:
        return _near(plan, plan.last + DAY, former, turn) - DAY
    return None if plan.first is None and former.until is None else plan.last


def _near(plan: AwayChanged, on: date, former: Entry, turn: Turn) -> date:
    """A day of the week is that of the absence, if it is still to come: its first, or the day its
    member is back.
    """
    if plan.weekday and plan.is_back and plan.no_earlier and former.until and on <= former.until:
        return on + ((former.until - on) // WEEK + 1) * WEEK
    if not plan.weekday or former.on is None or former.on <= turn.today:
        return on
    if plan.is_back and on > former.on:
        return on
    near = former.until + DAY if plan.is_back and former.until else former.on
    there = on + round((near - on) / WEEK) * WEEK
    return there if there > turn.today else on


async def _told_before(plan: Away, turn: Turn) -> Entry | None:
    """The member's absence that begins with this one, or has begun as this one has by today: of
    two ends that were told for it, the later word counts.
    """
    for one in await _of(plan.member or turn.sender, plan.first, plan.first, turn):
        if plan.last and (one.first == plan.first or one.first <= turn.today == plan.first):
            entry = await _entry(one, turn)
            if entry and entry.until and entry.event != turn.event:
                return entry
    return None


async def _own_word(plan: Away, turn: Turn) -> Absence | None:
    """What the member said of these days where somebody else says something different now."""
    if plan.member is None or is_same(plan.member, turn.sender):
        return None
    for one in await _of(plan.member, plan.first, plan.last or date.max, turn):
        entry = await _entry(one, turn)
        theirs = entry is not None and entry.writer == one.member
        if theirs and (one.first, one.last) != (plan.first, plan.last):
            return one
    return None


async def back(plan: Back, turn: Turn) -> Answer:
    """A member is back; nothing is said of one who was never away, and is not about to be."""
    member = plan.member or turn.sender
    ahead = await _of(member, turn.today, date.max, turn) if plan.on > turn.today else []
    if ahead and ahead[0].last:
        other_end = AwayChanged(
            last=plan.on - DAY, member=plan.member, weekday=plan.weekday, is_back=True
        )
        ends = await changed(other_end, turn)
        return ends if ends.entries else Answer(noted=True)
    gone = await _of(member, plan.on - timedelta(days=1), plan.on, turn)
    coming = [one for one in await _of(member, plan.on, date.max, turn) if one.first > plan.on]
    entry = turn.entry("back", bin=None, member=plan.member, on=plan.on)
    is_told = coming and not plan.by_the_way
    say = _still_to_come(coming[0], turn) if is_told else ""
    former = await _entry(gone[0], turn) if gone else None
    lent = await loans.moved(former, plan.on, plan.on, turn) if former else Answer()
    return replace(
        lent,
        entries=[*([entry] if gone else []), *lent.entries],
        noted=bool(gone),
        say="\n".join(filter(None, [say, lent.say])),
    )


def _still_to_come(absence: Absence, turn: Turn) -> str:
    who = capital(absence.member)
    called_off = "I'm" if absence.member == turn.sender else f"{who} is"
    return (
        f"{who} is still down as away{_until(absence, turn.today)}. "
        f"If that is off, say “{called_off} not away after all”."
    )


async def staying(plan: Staying, turn: Turn) -> Answer:
    """A member does not go away after all: what is still to come of it is struck out."""
    coming = await _of(plan.member or turn.sender, turn.today, date.max, turn)
    gone = [entry for entry in [await _entry(one, turn) for one in coming] if entry]
    lent = [await loans.off(entry, turn) for entry in gone]
    return Answer(
        entries=[one for answer in lent for one in answer.entries],
        strikes=[*gone, *(one for answer in lent for one in answer.strikes)],
        noted=bool(gone),
        say="\n".join(answer.say for answer in lent if answer.say),
        calls=[name for answer in lent for name in answer.calls],
    )


async def who(plan: WhoIsAway, turn: Turn) -> Answer:
    """Who is away between two days."""
    gone = await absences(turn.book, plan.first, plan.last)
    words = span(plan.first, plan.last, turn.today)
    lines = [f"{capital(one.member)} is away{_until(one, turn.today)}." for one in gone]
    return Answer(say="\n".join(lines) or f"Nobody is away {words}, as far as I know.")


def _until(absence: Absence, today: date) -> str:
    if absence.last is None:
        begun = absence.first <= today
        return " until they say so" if begun else f" from {day(absence.first, today)} on"
    if absence.first <= today:
        return f", back {day(absence.last + timedelta(days=1), today)}"
    return f" {span(absence.first, absence.last, today, two='and')}"


async def _of(member: str, first: date, last: date, turn: Turn) -> list[Absence]:
    gone = await absences(turn.book, first, last)
    return [one for one in gone if is_same(one.member, member)]


async def _entry(absence: Absence, turn: Turn) -> Entry | None:
    return await turn.book.entry(absence.entry)
