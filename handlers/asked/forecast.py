"""What lies ahead: when a bin will be full, and how many bins the group wants."""

from dataclasses import replace
from datetime import date, timedelta
from math import ceil

from handlers.answer import Answer, Turn
from handlers.asked.filling import outlook_of
from handlers.chosen import choices, reasons
from handlers.phrasing import capital, day, mass, rough_mass, the, volume, whole_days
from handlers.practice.bins import ORDINARY_BIN, Bins, bins
from handlers.practice.cautions import LIFTED_KG, caution
from handlers.practice.days import FILL, high_days, seal_by
from handlers.practice.density import (
    PRESSED_MIXED,
    SETTLING,
    capacity_kg,
    in_bin_l,
    loose_figures,
    loose_volume_l,
    mass_kg,
)
from handlers.practice.figure import Refused, number
from handlers.practice.outlook import HOUSEHOLD, Outlook, forecast_rate, logged_rate
from handlers.reading.acts import Ask
from handlers.recording.bins import filled_step, meant, usual_bin
from handlers.state import BinState, layer_mass
from storage.rows import Units

LONGEST_DAYS = 365
"""Days of filling beyond which no day is named."""

LOOK_BACK = timedelta(days=56)
"""Layers that tell how much the group puts in."""


async def asked_full(act: Ask, turn: Turn) -> Answer:
    """When the bin that was named, or must be meant, will be full."""
    if act.what == "lot":
        return _lot(act, turn)
    if act.what == "weight" and not (act.capacity_l or await turn.book.bins()):
        act = replace(act, capacity_l=ORDINARY_BIN.value)
    if act.what == "weight" and act.capacity_l:
        return _weight(act.capacity_l, f"a bin of {volume(act.capacity_l, turn.units)}", turn)
    state = await meant(act.bin, turn, stages={"filling"})
    if isinstance(state, Answer):
        return state
    if act.what == "weight":
        holds = state.capacity_l
        return _weight(holds, the(state.bin.name), turn) if holds else _how_big(state)
    if act.what == "room":
        return _room(state, turn)
    stage = state.run.stage(turn.today)
    if stage != "filling":
        return Answer(say=f"{capital(the(state.bin.name))} is {stage}, so nothing more goes in.")
    if act.week_kg and (left := _left_kg(state)) is not None:
        return _at_rate(state, left, act.week_kg / 7, turn)
    found = outlook_of(state, turn.today)
    if found is None:
        return _how_big(state)
    return Answer(say=_words(state, found, turn.today), why=reasons(found, turn.book.room))


def _lot(act: Ask, turn: Turn) -> Answer:
    """What scraps told by their volume weigh, or the room that those told by weight take."""
    litres, kg = act.volume_l or 0.0, act.mass_kg or 0.0
    figures = loose_figures(act.materials)
    if act.mass_kg is None:
        weight = rough_mass(mass_kg(litres, act.materials), turn.units)
        say = f"{volume(litres, turn.units)} of that, loosely laid, is about {weight}."
    else:
        loose = round(loose_volume_l(kg, act.materials), 1)
        say = f"{mass(kg, turn.units)} of that, loosely laid, is about {volume(loose, turn.units)}."
    return Answer(say=say, why=[figure.line() for figure in figures])


def _how_big(state: BinState) -> Answer:
    return Answer(say=f"How big is {the(state.bin.name)}? (“{state.bin.name} is 20 L”)")


def _left_kg(state: BinState) -> float | None:
    """What still fits, pressed and settled; None where the bin's size is not known.

    What is to come is reckoned as mixed scraps: dense layers below do not make it denser.
    """
    if not state.capacity_l:
        return None
    taken = in_bin_l(state.run.mass_kg, state.run.make_up)
    return capacity_kg(max(0.0, state.capacity_l - taken))


def _weight(capacity_l: float, name: str, turn: Turn) -> Answer:
    """How heavy a bin is when it is full, as it was filled and as it settled and was topped up."""
    filled, settled = capacity_l * PRESSED_MIXED.value, capacity_kg(capacity_l)
    least, most = (rough_mass(kg, turn.units) for kg in (filled, settled))
    lines = [
        f"Full, {name} holds about {least} of scraps, up to {most} once they settled and more "
        "went in.",
        *([caution("lifting")] if settled > LIFTED_KG.value else []),
    ]
    steps = (
        f"{number(capacity_l)} L x {number(PRESSED_MIXED.value)} kg/L = {number(filled)} kg",
        f"settled by {number(SETTLING.value * 100)} %: {number(settled)} kg",
    )
    figures = (PRESSED_MIXED, SETTLING, LIFTED_KG)
    return Answer(say="\n".join(lines), why=[*steps, *(figure.line() for figure in figures)])


def _room(state: BinState, turn: Turn) -> Answer:
    """How much more goes into a bin."""
    name, left = the(state.bin.name), _left_kg(state)
    stage = state.run.stage(turn.today)
    if stage not in ("filling", "in the ground"):
        return Answer(say=f"{capital(name)} is {stage}, so nothing more goes in.")
    if left is None or not state.capacity_l:
        return _how_big(state)
    holds = state.capacity_l
    if stage == "in the ground":
        left = capacity_kg(holds)
    more = rough_mass(left, turn.units)
    if left <= 0:
        return Answer(say=f"By what was logged {name} is full: press it down and seal it.")
    return Answer(
        say=f"About {more} of scraps still fit into {name}, pressed down.", why=filled_step(state)
    )


def _at_rate(state: BinState, left_kg: float, kg_day: float, turn: Turn) -> Answer:
    """When a bin is full at so much a day."""
    name, rate = the(state.bin.name), rough_mass(kg_day, turn.units)
    days = ceil(left_kg / kg_day)
    if days > LONGEST_DAYS:
        return Answer(say=f"At {rate} a day {name} takes more than a year: use a smaller bin.")
    on = turn.today + timedelta(days=days)
    lines = [f"At {rate} a day {name} is full about {day(on, turn.today)}."]
    lines += _sealed_before(on, state, turn.today)
    step = f"{number(left_kg)} kg still fit; at {number(kg_day)} kg a day that is {days} days"
    return Answer(say="\n".join(lines), why=[*filled_step(state), step])


def _words(state: BinState, found: Outlook, today: date) -> str:
    name = capital(the(state.bin.name))
    if found.filled_share >= 1:
        return f"By what was logged {the(state.bin.name)} is full: press it down and seal it."
    if found.full_on is None:
        return f"At this rate {the(state.bin.name)} takes more than a year: use a smaller bin."
    on, first = day(found.full_on, today), day(found.earliest or today, today)
    until = f"{first} or later"
    if found.latest:
        until = f"between {first} and {day(found.latest, today)}"
    lines = [f"{name} will be full about {on}; four times in five {until}."]
    return "\n".join([*lines, *_sealed_before(found.full_on, state, today)])


def _sealed_before(full_on: date, state: BinState, today: date) -> list[str]:
    """A word where a bin is to be sealed before it is full."""
    seal = seal_by(state.run.first_layer or today).end
    if seal >= full_on:
        return []
    enough = f"{whole_days(high_days(FILL))} of filling are enough"
    return [f"Seal it by {day(seal, today)} all the same: {enough}."]


async def asked_bins(act: Ask, turn: Turn) -> Answer:
    """How many bins are wanted, by the figures said or by what the group logged."""
    capacity = act.capacity_l or await usual_bin(turn)
    week_kg, steps = act.week_kg, tuple[str, ...]()
    if act.volume_l is not None:
        week_kg = mass_kg(act.volume_l)
    if act.days is None and act.people is None and week_kg is None:
        week_kg, steps = await _logged(turn)
    try:
        found = bins(
            fill_days=act.days,
            people=None if act.days or week_kg else act.people,
            rate_kg_week=None if act.days else week_kg,
            capacity_l=capacity,
            ferment_days=act.ferment_days or choices(turn.book.room).ferment_days,
        )
    except Refused as refused:
        return Answer(say=str(refused))
    why = reasons(found.led_by(steps), turn.book.room)
    return Answer(say=_bins_words(found, capacity, turn.units), why=why)


async def _logged(turn: Turn) -> tuple[float, tuple[str, ...]]:
    """kg a week by the layers of the last weeks, one household's where there are none."""
    entries = await turn.book.of_days(date.min, turn.today, "layer")
    layers = [
        (entry.on, kg)
        for entry in entries
        if entry.on and turn.today - LOOK_BACK <= entry.on and (kg := layer_mass(entry.facts))
    ]
    count = "1 layer" if len(layers) == 1 else f"{len(layers)} layers"
    if own := logged_rate(layers, turn.today):
        since, kg = min(on for on, _ in layers), sum(kg for _, kg in layers)
        told = f"{count} of {number(kg)} kg since {since}, the latest counting most"
        return 7 * own, (f"{told}: {number(7 * own)} kg a week",)
    members = {entry.member for entry in entries if entry.member}
    people = len(members) * HOUSEHOLD.value if len(members) > 1 else None
    week_kg = 7 * forecast_rate(layers, turn.today, people=people)
    who = "one household" if len(members) < 2 else f"{len(members)} households"
    return week_kg, (f"{count} of {who} come to {number(week_kg)} kg a week",)


def _bins_words(found: Bins, capacity_l: float, units: Units) -> str:
    size = volume(capacity_l, units)
    rate = f" for {mass(found.rate_kg_week, units)} a week" if found.rate_kg_week else ""
    filled = f"{number(found.fill_days, 2)} days"
    lines = [
        f"{found.bins} bins of {size}{rate}: one fills in about {filled}, and each stands "
        f"{number(found.ferment_days)} days after that."
    ]
    faster, slower = found.sensitivity
    if {faster.bins, slower.bins} != {found.bins}:
        lines.append(
            f"If one filled in {number(faster.fill_days, 2)} days it would be {faster.bins}, in "
            f"{number(slower.fill_days, 2)} days {slower.bins}."
        )
    if found.fill_days > high_days(FILL):
        lines.append(
            f"A bin should be full in {whole_days(high_days(FILL))}: smaller ones, or shared ones, "
            "do better."
        )
    return "\n".join(lines)
