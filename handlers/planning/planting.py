"""When it can be planted where a bin was buried, by the soil's temperature where that is known."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from handlers.answer import SILENCE, Answer, Turn
from handlers.asked.beds import bed_name
from handlers.chosen import reasons
from handlers.phrasing import capital, length, span, temperature, the
from handlers.practice.days import COLDEST, HOTTEST, Window
from handlers.practice.trench import COVER_UNFERMENTED
from handlers.reading.acts import Amend, Observe
from handlers.state import new_run
from storage.rows import Entry, Units

NO_SOIL = (
    "No soil is that cold or hot, so nothing is written down. Say it again with the right "
    "temperature, in °C or °F."
)
LONGEST_WAIT = timedelta(days=120)
"""So far back a burial is looked for whose soil may still wait to be planted."""


def well_covered(units: Units) -> str:
    """What is still to be done for scraps in the ground that had not fermented."""
    deep = length(COVER_UNFERMENTED.value, units)
    return f"cover it well ({deep} or more), and give the soil the longer wait."


def plant_there(window: Window, celsius: float | None, turn: Turn) -> str:
    """The days to plant there, and what they hang on."""
    days = span(window.start, window.end, turn.today)
    if celsius is None:
        return f"Plant there {days}, later in cold soil."
    at = temperature(celsius, turn.units)
    return " ".join([f"Plant there {days}, with the soil at {at}.", *window.lines[1:]])


async def measured(act: Observe, turn: Turn) -> Answer:
    """The soil's temperature: it is kept with each burial whose soil still waits to be planted."""
    if act.celsius is None or not COLDEST <= act.celsius <= HOTTEST:
        return Answer(say=NO_SOIL)
    run, burials = new_run(turn.book.room), await _lately_buried(turn)
    return _kept(
        act.celsius,
        [
            burial
            for burial in burials
            if _is_meant(act, burial)
            and run.to_plant(burial.on or turn.today, burial.facts.celsius).end >= turn.today
        ],
        turn,
    )


async def measured_again(act: Amend, target: Entry, turn: Turn) -> Answer | None:
    """A soil's temperature put right in every burial with which it was kept; None where the record
    put right is of no such reading.
    """
    of_reading = target.act == "bury" and target.cause != target.event
    if act.celsius is None or not of_reading or target.facts.celsius is None:
        return None
    if not COLDEST <= act.celsius <= HOTTEST:
        return Answer(say=NO_SOIL)
    same = [burial for burial in await _lately_buried(turn) if burial.cause == target.cause]
    answer = _kept(act.celsius, same, turn)
    return replace(answer, say=f"Corrected. {answer.say}") if answer.entries else None


async def _lately_buried(turn: Turn) -> Sequence[Entry]:
    return await turn.book.of_days(turn.today - LONGEST_WAIT, turn.today, "bury")


def _kept(celsius: float, burials: Sequence[Entry], turn: Turn) -> Answer:
    """The temperature in each of the burials, and the days to plant there."""
    if not burials:
        return SILENCE
    run = new_run(turn.book.room)
    waiting = [(each, run.to_plant(each.on or turn.today, celsius)) for each in burials]
    whys = {line: None for _, window in waiting for line in reasons(window, turn.book.room)}
    return Answer(
        entries=[
            burial.anew(
                turn.now,
                cause=turn.cause,
                replaces=burial.id,
                facts=replace(burial.facts, celsius=celsius),
            )
            for burial, _ in waiting
        ],
        strikes=[burial for burial, _ in waiting],
        say="\n".join(_said(burial, window, celsius, turn) for burial, window in waiting),
        why=list(whys),
    )


def _is_meant(act: Observe, burial: Entry) -> bool:
    """Whether it was measured where that bin was buried, as far as bin and place are said."""
    if burial.bin is None or act.bin not in (None, burial.bin.name):
        return False
    return act.place is None or bed_name(act.place) == bed_name(burial.facts.place or "")


def _said(burial: Entry, window: Window, celsius: float, turn: Turn) -> str:
    name = capital(the(burial.bin.name)) if burial.bin else "A bin"
    return f"{name} is in the ground. {plant_there(window, celsius, turn)}"
