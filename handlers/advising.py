"""What is answered out of a table: harm first of all, and what a newcomer asks."""

from collections.abc import Mapping

from handlers import calendar
from handlers.answer import Answer, Turn
from handlers.care import care_of
from handlers.chosen import choices, reasons
from handlers.dues import is_shown_on
from handlers.phrasing import temperature, whole_days
from handlers.practice.advice import Advice
from handlers.practice.days import bury_window
from handlers.practice.harm import ADVICE
from handlers.practice.lessons import TAUGHT, Lesson
from handlers.reading.acts import Ask
from handlers.reading.arranged import Harm, Taught

DUE: Mapping[Lesson, str] = {
    "when to bury": "bury",
    "when to plant": "plant",
    "when to seal": "seal",
}
"""What the calendar knows a day for, if a bin has come so far."""


def about_harm(plan: Harm) -> Answer:
    """What to do where somebody is hurt or could be; nothing is written down of it."""
    return _said(ADVICE[plan.hazard])


async def taught(plan: Taught, turn: Turn) -> Answer:
    """What a newcomer asks; the days of the asker's own bins where the calendar has them."""
    if plan.celsius is not None:
        return _days_at(plan.celsius, turn)
    what = DUE.get(plan.lesson)
    shown = [due for due in await turn.book.dues() if is_shown_on(due, turn.today)]
    dues = [due for due in shown if due.what == what]
    if not dues:
        return _said(TAUGHT[plan.lesson])
    care = await care_of(turn.book, dues, turn.today)
    mine = any(care.concerns(due, turn.sender) for due in dues)
    asked = Ask(topic="due", what=what, member=turn.sender if mine else None)
    return await calendar.asked(asked, turn)


def _days_at(celsius: float, turn: Turn) -> Answer:
    """How long a bin is sealed at a temperature."""
    window = bury_window(turn.today, celsius, ferment_days=choices(turn.book.room).ferment_days)
    least, most = ((day - turn.today).days for day in (window.start, window.end))
    span = f"{least} to {most} days" if least < most else whole_days(most)
    lines = (f"About {span} sealed at {temperature(celsius, turn.units)}.", *window.lines[1:])
    return Answer(say="\n".join(lines), why=reasons(window, turn.book.room))


def _said(advice: Advice) -> Answer:
    return Answer(say="\n".join(advice.lines), why=advice.why())
