"""When it can be planted where a bin was buried, by the soil's temperature where that is known."""

from dataclasses import replace
from datetime import timedelta

from handlers.answer import SILENCE, Answer, Turn
from handlers.beds import bed_name
from handlers.chosen import reasons
from handlers.phrasing import capital, length, span, temperature, the
from handlers.practice.days import COLDEST, HOTTEST, Window
from handlers.practice.trench import COVER_UNFERMENTED
from handlers.reading.acts import Observe
from handlers.state import new_run
from storage.rows import Entry, Units

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
        return Answer(
            say="No soil is that cold or hot, so nothing is written down. Say it again with the "
            "right temperature, in °C or °F."
        )
    run, waiting = new_run(turn.book.room), list[tuple[Entry, Window]]()
    for burial in await turn.book.of_days(turn.today - LONGEST_WAIT, turn.today, "bury"):
        on = burial.on or turn.today
        if _is_meant(act, burial) and run.to_plant(on, burial.facts.celsius).end >= turn.today:
            waiting.append((burial, run.to_plant(on, act.celsius)))
    if not waiting:
        return SILENCE
    whys = {line: None for _, window in waiting for line in reasons(window, turn.book.room)}
    return Answer(
        entries=[
            burial.anew(
                turn.now,
                cause=turn.cause,
                replaces=burial.id,
                facts=replace(burial.facts, celsius=act.celsius),
            )
            for burial, _ in waiting
        ],
        strikes=[burial for burial, _ in waiting],
        say="\n".join(_said(burial, window, act.celsius, turn) for burial, window in waiting),
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
