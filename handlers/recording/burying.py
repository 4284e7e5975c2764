"""Fermented contents go into the soil: when it can be planted."""

from dataclasses import replace
from datetime import date, timedelta

from handlers.answer import Answer, Query, Turn
from handlers.asked.beds import bed_name
from handlers.chosen import reasons
from handlers.doubtful.nosuchbin import first_heard
from handlers.phrasing import capital, day, span, the
from handlers.planning.planting import plant_there, well_covered
from handlers.practice.cautions import caution
from handlers.practice.figure import number
from handlers.practice.trench import TUB_DAYS
from handlers.reading.acts import Amend, Bury, Retract
from handlers.reading.deeds.placewords import SOIL
from handlers.reading.deeds.soiltubs import PLACE
from handlers.recording.bins import ask_which, choose
from handlers.state import BinState, Stage, named, new_run
from storage.rows import Entry, Facts

CLOSED: frozenset[Stage] = frozenset({"fermenting", "ready"})


async def buried(act: Bury, turn: Turn) -> Answer:
    """Fermented contents went into soil."""
    name = await choose(act.bin, turn, stages=CLOSED)
    if act.part:
        return Answer(say=_in_part(name))
    facts = Facts(place=act.place, celsius=act.celsius)
    entry = turn.entry("bury", bin=name, facts=facts, member=act.member, on=act.on)
    if name is None:
        return await ask_which(entry, turn, CLOSED)
    on = entry.on or turn.today
    state = await named(turn.book, name, turn.today)
    if state and not act.firm and (former := await _former(state, on, turn)):
        return _another_day(replace(act, bin=name, on=on), former, turn)
    if state and not act.firm and (later := _later(state, on)):
        return _doubted(replace(act, bin=name, on=on), later, turn)
    if state and _is_told(state, act, on):
        return _known(state, turn)
    if state and not act.firm and (told := await _told_otherwise(state, on, turn)):
        return _asked_anew(told, replace(act, bin=name, on=on), turn)
    window = (state.run if state else new_run(turn.book.room)).to_plant(on, act.celsius)
    when = "" if on == turn.today else f" since {day(on, turn.today)}"
    if act.place == PLACE:
        lines = [f"{capital(the(name))} is in the soil tub{when}. {_leave_it()}"]
    else:
        until = plant_there(window, act.celsius, turn)
        lines = [f"{capital(the(name))} is in the ground{when}. {until}"]
    lines += _early(state, turn, on) if state else []
    lines += await first_heard(name, turn)
    return Answer(entries=[entry], say="\n".join(lines), why=reasons(window, turn.book.room))


def _leave_it() -> str:
    """How long it takes in a tub."""
    return f"Leave it about {number(TUB_DAYS.value)} days, two weeks longer the first time."


async def _former(state: BinState, on: date, turn: Turn) -> Entry | None:
    """The burial of the run before, told by itself, if that day can be the right one of it: the
    bin was opened again since."""
    opened = state.run.opened
    if state.run.buried or opened is None or opened < on or not turn.book.is_whole:
        return None
    run = await turn.book.run(state.bin, state.number - 1)
    burial = next((entry for entry in run if entry.act == "bury"), None)
    if burial is None or burial.on is None or burial.on == on:
        return None
    sealed = max((e.on for e in run if e.act == "seal" and e.on), default=burial.on - A_SLIP)
    alone = len(await turn.book.of_event(burial.event)) == 1
    return burial if alone and sealed <= on and abs(burial.on - on) <= A_SLIP else None


A_SLIP = timedelta(days=14)
"""So far a burial told for a second time may lie from its day in the book."""


def _another_day(act: Bury, former: Entry, turn: Turn) -> Answer:
    """A burial that is in the book on another day: is that to be put right?"""
    right = replace(act, place=act.place or former.facts.place, firm=True)
    on, wrong = day(act.on or turn.today, turn.today), day(former.on or turn.today, turn.today)
    return Answer(
        say=f"By the book {the(act.bin or '')} was buried {wrong}. Shall I correct it to {on}?",
        query=Query.about(Retract(of=former.event), right, lacks="yes"),
    )


def _later(state: BinState, on: date) -> tuple[str, date] | None:
    """What the book has of the bin's present run from after a burial on that day."""
    run = state.run
    if run.sealed and not run.buried and run.sealed > on:
        return "sealed", run.sealed
    return ("opened", run.opened) if run.opened and run.opened > on else None


def _doubted(act: Bury, later: tuple[str, date], turn: Turn) -> Answer:
    """A burial from before the bin was sealed or opened may be a slip, or of an earlier run."""
    deed, since = later
    say = f"By the book {the(act.bin or '')} was {deed} later, {day(since, turn.today)}."
    if not turn.book.is_whole:
        return Answer(say=f"{say} Its burial stands as it was. Say it again with the right day.")
    on = day(act.on or turn.today, turn.today)
    return Answer(
        say=f"{say} Shall I write down all the same that it was buried {on}?",
        query=Query.about(replace(act, firm=True), lacks="yes"),
    )


def _is_told(state: BinState, act: Bury, on: date) -> bool:
    """Whether a burial is in the book already: so soon no bin is filled and fermented again."""
    since = state.run.buried
    if since is None or not since <= on < state.run.to_bury(since).start:
        return False
    if act.place is None or act.place in SOIL:  # "in the ground" says no more than buried
        return True
    return bed_name(act.place) == bed_name(state.run.place or "")


async def _told_otherwise(state: BinState, on: date, turn: Turn) -> Entry | None:
    """The burial of the run that another told, or the sender without its place, where this one
    cannot be of scraps put in since.
    """
    since = state.run.buried
    if since is None or on >= state.run.to_bury(since).start or not turn.book.is_whole:
        return None
    run = await turn.book.run(state.bin, state.number)
    told = [one for one in run if one.act == "bury" and not one.struck]
    if not told:
        return None
    placed = told[-1].on != on or not (told[-1].facts.place is None or told[-1].facts.place in SOIL)
    return None if told[-1].writer == turn.sender and placed else told[-1]


def _asked_anew(told: Entry, act: Bury, turn: Turn) -> Answer:
    """Whether the burial in the book is the one now told, on another day or in another place."""
    was = _when_and_where(told.on or turn.today, told.facts.place, turn)
    now = _when_and_where(act.on or turn.today, act.place, turn)
    right = Amend(of=told.event, on=act.on, place=act.place, member=act.member)
    return Answer(
        say=f"{capital(the(act.bin or ''))} is in the book as buried {was} by "
        f"{told.member or told.writer}. Shall I correct that to {now}?",
        query=Query.about(right, lacks="yes"),
    )


def _when_and_where(on: date, place: str | None, turn: Turn) -> str:
    return day(on, turn.today) + (f" ({place})" if place else "")


def _known(state: BinState, turn: Turn) -> Answer:
    since = state.run.buried or turn.today
    window = state.run.to_plant(since)
    return Answer(
        say=f"{capital(the(state.bin.name))} is in the book as buried {day(since, turn.today)}: "
        f"plant there {span(window.start, window.end, turn.today)}.",
        why=reasons(window, turn.book.room),
    )


def _in_part(name: str | None) -> str:
    """What is said of a bin that is not empty yet: its run ends with the last of it."""
    which = the(name) if name else "the bin"
    return (
        f"Only a part of {which}? I note a burial once all of it is in the ground, so nothing is "
        f"written down. Then say “buried {which}”."
    )


def _early(state: BinState, turn: Turn, on: date) -> list[str]:
    """A word where the bin was buried before it can have fermented, else the usual caution."""
    sealed = state.run.sealed
    others = state.run.opened, state.run.last_layer
    if any(other and on < other for other in others):  # it is of the run before
        return [caution("digging")]
    if sealed is None:
        return [_never_sealed(turn)] if state.run.first_layer else [caution("digging")]
    if on < sealed or on >= state.run.to_bury(sealed).start:
        return [caution("digging")]
    days = (on - sealed).days
    since = f"only {days} day{'' if days == 1 else 's'} before" if days else "the same day"
    return [f"It was sealed {since}: {well_covered(turn.units)}"]


def _never_sealed(turn: Turn) -> str:
    return (
        f"I have no sealing of it. If it did not ferment, {well_covered(turn.units)} If it was "
        "sealed, say when: “sealed it on 3 May”."
    )
