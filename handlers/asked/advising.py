"""What is answered out of a table: harm first of all, and what a newcomer asks."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import date

from handlers.answer import Answer, Turn
from handlers.asked.beds import bed_name
from handlers.asked.history import deeds
from handlers.chosen import choices, reasons
from handlers.phrasing import capital, day, span, temperature, the, whole_days
from handlers.planning import calendar
from handlers.planning.care import care_of
from handlers.planning.dues import shown
from handlers.planning.planting import plant_there
from handlers.practice.advice import Advice
from handlers.practice.days import SOIL_BANDS, bury_window
from handlers.practice.figure import Refused
from handlers.practice.harm import ADVICE
from handlers.practice.lessons import Lesson
from handlers.practice.taught import TAUGHT
from handlers.reading.acts import Ask
from handlers.reading.arranged import Harm, Taught
from handlers.state import named, new_run, states_of
from storage.rows import Entry

DUE: Mapping[Lesson, str] = {
    "when to bury": "bury",
    "when to plant": "plant",
    "when to seal": "seal",
}
"""What the calendar knows a day for, if a bin has come so far."""


*_, LITTLE_HAPPENS = SOIL_BANDS


def about_harm(plan: Harm) -> Answer:
    """What to do where somebody is hurt or could be; nothing is written down of it."""
    return _said(ADVICE[plan.hazard])


async def taught(plan: Taught, turn: Turn) -> Answer:
    """What a newcomer asks; the days of the asker's own bins where the calendar has them."""
    if plan.lesson == "when to plant" and (plan.celsius is not None or plan.since):
        return _planted(plan, turn)
    if plan.since is not None:
        return await _buried(plan, plan.since, turn)
    if plan.celsius is not None:
        return _days_at(plan.celsius, turn)
    what = DUE.get(plan.lesson)
    dues = [due for due in await shown(turn.book, turn.today) if due.what == what]
    if not dues:
        answer = _said(TAUGHT[plan.lesson])
        coming = await _to_be_buried(turn) if what == "bury" else []
        so_far = await _buried_so_far(turn) if plan.lesson == "where to bury" else []
        return replace(answer, say="\n".join([*so_far, answer.say, *coming]))
    care = await care_of(turn.book, dues, turn.today)
    mine = any(care.concerns(due, turn.sender) for due in dues)
    asked = Ask(topic="due", what=what, member=turn.sender if mine else None)
    return await calendar.asked(asked, turn)


async def _to_be_buried(turn: Turn) -> list[str]:
    """When the bins that are filling are to be buried, if they are sealed in time."""
    states = {state.bin.name: state for state in await states_of(turn.book, turn.today)}
    to_seal = [d for d in await shown(turn.book, turn.today) if d.what == "seal" and d.bin]
    lines = []
    for due in to_seal[:MOST_BINS]:
        if due.bin is None or due.bin.name not in states:
            continue
        sealed = max(due.to_day, turn.today)
        window = states[due.bin.name].run.to_bury(sealed)
        days = span(window.start, window.end, turn.today)
        bin = capital(the(due.bin.name))
        lines.append(f"{bin} is still open: sealed {day(sealed, turn.today)}, bury it {days}.")
    return lines


async def _buried_so_far(turn: Turn) -> list[str]:
    """Where bins were buried before, the latest first."""
    latest: dict[str, Entry] = {}
    for entry in reversed(await deeds(None, turn, "bury")):
        if entry.facts.place and entry.bin:
            latest.setdefault(bed_name(entry.facts.place), entry)
    told = [
        f"{entry.facts.place} ({the(entry.bin.name)}, {day(entry.on or turn.today, turn.today)})"
        for entry in list(latest.values())[:MOST_BINS]
        if entry.bin
    ]
    return [f"So far: {'; '.join(told)}."] if told else []


MOST_BINS = 4
"""Bins whose days, or places, are told beside a lesson."""


def _days_at(celsius: float, turn: Turn) -> Answer:
    """How long a bin is sealed at a temperature."""
    window = bury_window(turn.today, celsius, ferment_days=choices(turn.book.room).ferment_days)
    least, most = ((day - turn.today).days for day in (window.start, window.end))
    span = f"{least} to {most} days" if least < most else whole_days(most)
    lines = (f"About {span} sealed at {temperature(celsius, turn.units)}.", *window.lines[1:])
    return Answer(say="\n".join(lines), why=reasons(window, turn.book.room))


async def _buried(plan: Taught, sealed: date, turn: Turn) -> Answer:
    """When a bin that was or will be sealed on a day is to be buried; nothing is written down."""
    state = await named(turn.book, plan.bin, turn.today)
    run = state.run if state else new_run(turn.book.room)
    if plan.days:
        run = replace(run, choices=replace(run.choices, ferment_days=plan.days))
    try:
        window = run.to_bury(sealed)
    except Refused as refused:
        return Answer(say=str(refused))
    days = span(window.start, window.end, turn.today)
    return Answer(
        say=f"{_supposed('sealed', sealed, turn)}, bury it {days}.",
        why=reasons(window, turn.book.room),
    )


def _planted(plan: Taught, turn: Turn) -> Answer:
    """When the soil can be planted, by its temperature or by the day of the burial."""
    buried = plan.since or turn.today
    window = new_run(turn.book.room).to_plant(buried, plan.celsius)
    if plan.since:
        then = plant_there(window, plan.celsius, turn)
        say = f"{_supposed('buried', buried, turn)}, {then[:1].lower()}{then[1:]}"
    else:
        least, most = ((on - buried).days for on in (window.start, window.end))
        days = f"{least} to {most} days" if least < most else whole_days(most)
        at = temperature(plan.celsius or 0.0, turn.units)
        say = f"{capital(days)} after burying, in soil of {at}."
        if plan.celsius is not None and plan.celsius < LITTLE_HAPPENS.value:
            over = temperature(LITTLE_HAPPENS.value, turn.units)
            say = (
                f"In soil of {at} hardly anything happens: wait, and count {days} from the day it "
                f"is over {over}."
            )
    return Answer(say=say, why=reasons(window, turn.book.room))


def _supposed(deed: str, on: date, turn: Turn) -> str:
    """The deed as no more than supposed: nobody is to think it written down."""
    return f"If it {'was' if on < turn.today else 'is'} {deed} {day(on, turn.today)}"


def _said(advice: Advice) -> Answer:
    return Answer(say="\n".join(advice.lines), why=advice.why())
