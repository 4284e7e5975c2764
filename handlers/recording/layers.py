"""Scraps go in: the layer is written down and answered with the dose of starter."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta

from handlers.answer import Answer, Query, Turn
from handlers.chosen import reasons
from handlers.phrasing import (
    capital,
    day,
    how_full,
    layer_depth,
    mass,
    spoon,
    starter,
    the,
    too_long_ago,
    volume,
)
from handlers.practice.density import bran_ml, capacity_kg
from handlers.practice.dose import LAYER_DEPTH, SPOONS, Dose, dose
from handlers.practice.figure import Refused, listed, ranging
from handlers.practice.tablespoons import SPOON_ML
from handlers.reading.acts import Amend, Layer
from handlers.recording import rules
from handlers.recording.bins import choose, filled_step, how_big, how_much, which
from handlers.state import BinState, fold, layer_mass, named
from storage.rows import Entry, Facts, NewEntry, Units

TROUBLED = frozenset({"rotten", "green_mould", "black_mould"})
"""Signs that raise the dose of the next layers."""

A_SLIP = timedelta(days=14)
"""So long before the opening of its bin a layer may have gone in: it was told a little late."""

OVERFULL = 1.2
"""Times what a bin holds by the book, pressed: beyond it, its size or a layer is wrong."""

LONG_AGO = timedelta(days=60)
"""A layer of a day before that is an anecdote or a slip: its bin has long been buried."""

MOST_LISTED = 5
"""Layers of which each amount is said where they are told together."""

NEARLY_FULL = 0.8
"""From this fill on the answer says that the bin is about to be sealed."""


def unmeasured(units: Units) -> str:
    """The usual dose, where nobody said how much went in."""
    span = layer_depth(units)
    spoons = f"{ranging(SPOONS)} tablespoons"
    return (
        f"The usual dose is {spoons} of starter on a layer {span} deep, more on meat or fish. "
        f"Reply with the amount (“about {'2 kg' if units == 'metric' else '4 lb'}”) "
        "and I can say exactly."
    )


AS_WHICH = "I find no one layer of yours of that day. How much was it, and in which bin?"


async def _as_before(act: Layer, turn: Turn) -> Layer | None:
    """The layer with what the sender's last one was, or the one of the day that is named; None
    where there is no such one, or several."""
    if act.like:
        of_day = await turn.book.of_days(act.like, act.like, "layer")
        own = [e for e in of_day if e.member == turn.sender and e.bin]
        own = [e for e in own if act.bin in (None, e.bin and e.bin.name)] or own
        if len(own) != 1:
            return None
        last = own[0]
    else:
        found = await turn.book.last_layer_by(turn.sender)
        if found is None or turn.today - (found.on or turn.today) > LONG_AGO:
            return act
        last = found
    was = last.facts
    told = replace(act, mass_kg=was.mass_kg, volume_l=was.volume_l, rich=was.rich)
    told = replace(told, materials=was.materials or act.materials)
    return replace(told, bin=told.bin or (last.bin.name if act.like and last.bin else None))


async def added(act: Layer, turn: Turn) -> Answer:
    """Scraps went into a bin."""
    if act.same:
        like = await _as_before(act, turn)
        if like is None:
            return Answer(say=AS_WHICH, query=how_much(replace(act, same=None, like=None)))
        act = like
    name = await choose(act.bin, turn, stages={"filling"}, in_talk=bool(act.in_it))
    state = await named(turn.book, name, turn.today)
    facts = Facts(
        mass_kg=act.mass_kg,
        volume_l=act.volume_l,
        materials=act.materials,
        rich=act.rich,
    )
    measured = act.mass_kg is not None or act.volume_l is not None
    if act.on and turn.today - act.on > LONG_AGO:
        return Answer(say=too_long_ago(act.on, turn.today))
    if state and (too_much := _beyond(facts, state, turn)):
        return Answer(say=too_much, query=how_much(replace(act, bin=name)))
    if state and not act.firm and (opened := _opened_long_after(state, act.on, turn)):
        return _doubted(replace(act, bin=name), opened, turn)
    try:
        reckoned = layer_dose(facts, state, turn) if measured else None
    except Refused as refused:
        return Answer(say=f"{refused} Nothing is written down.")
    if reckoned:
        facts = replace(facts, starter_g=reckoned.starter_g)
    entry = turn.entry("layer", bin=name, facts=facts, member=act.member, on=act.on)
    after = with_layer(state, entry) if state else None
    about_bin = _about_bin(entry, state, after, turn)
    lines = [_words(entry, reckoned, turn), *about_bin]
    lines += await rules.broken(turn.book, name, act.materials)
    why = [*(reasons(reckoned, turn.book.room) if reckoned else usual_dose(turn))]
    if after and about_bin:
        why += filled_step(after)
    begins = state is None or state.number == 0
    query = how_big(name) if name and begins else None
    if name is None:
        question, query = await which(turn, {"filling"})
        lines.append(question)
    return Answer(entries=[entry], say="\n".join(lines), why=why, query=query)


def _opened_long_after(state: BinState, on: date | None, turn: Turn) -> date | None:
    """The day on which the bin was opened by the book, if a layer of that day was long before."""
    opened = state.run.opened
    former = state.run.buried or not turn.book.is_whole
    return opened if opened and on and opened - on > A_SLIP and not former else None


def _doubted(act: Layer, opened: date, turn: Turn) -> Answer:
    """A layer from long before its bin was opened may be a slip, or a memory."""
    on = day(act.on or turn.today, turn.today)
    return Answer(
        say=f"By the book {the(act.bin or '')} was opened later, {day(opened, turn.today)}. "
        f"Shall I write the layer down all the same, {on}?",
        query=Query.about(replace(act, firm=True), lacks="yes"),
    )


def _beyond(facts: Facts, state: BinState, turn: Turn) -> str:
    """A layer that the whole bin could not hold is a slip: what to say to it."""
    weight = layer_mass(facts)
    if weight is None or not state.capacity_l or weight <= capacity_kg(state.capacity_l):
        return ""
    holds = volume(state.capacity_l, turn.units)
    return (
        f"{said_amount(facts, turn)} is more than {the(state.bin.name)} can hold ({holds}), so "
        "nothing is written down. Say it again with the right amount or bin."
    )


def layer_dose(
    facts: Facts,
    state: BinState | None,
    turn: Turn,
    depth_m: float | None = None,
    width_m: float | None = None,
) -> Dose:
    """The starter on a layer of a bin, by the group's habit; raises `Refused`."""
    return dose(
        depth_m=depth_m,
        width_m=width_m,
        mass_kg=facts.mass_kg,
        volume_l=facts.volume_l if facts.mass_kg is None else None,
        materials=facts.materials,
        rich=facts.rich,
        trouble=state is not None and troubled(state, turn.today),
        habit=turn.book.room.habit,
        tablespoon=spoon(turn.units),
    )


def usual_dose(turn: Turn) -> Sequence[str]:
    """The working of the usual dose on a layer as deep as is taught."""
    usual = dose(depth_m=LAYER_DEPTH.value / 100, habit=turn.book.room.habit)
    return reasons(usual, turn.book.room)


def troubled(state: BinState, today: date) -> bool:
    """Whether the bin smelt rotten or grew green or black in its present run."""
    return state.run.stage(today) != "in the ground" and any(
        sign in TROUBLED for _, sign in state.run.signs
    )


def _words(entry: NewEntry, reckoned: Dose | None, turn: Turn) -> str:
    amount = said_amount(entry.facts, turn)
    where = f" in {the(entry.bin)}" if entry.bin else ""
    when = f", {day(entry.on, turn.today)}" if entry.on and entry.on != turn.today else ""
    whose = f", by {entry.member}" if entry.member and entry.member != turn.sender else ""
    if reckoned is None:
        return f"Noted{where}{when}{whose}. {unmeasured(turn.units)}"
    spoons = starter(reckoned.tablespoons, reckoned.starter_g, turn.units)
    reason = "" if reckoned.reason.startswith("nothing") else f": {reckoned.reason}"
    return f"{capital(spoons)} of starter on {amount}{where}{when}{whose}{reason}."


def summed(layers: Sequence[Entry], turn: Turn) -> str:
    """Several layers of one doer in one bin, and the starter that they want in all."""
    bin, doer = layers[0].bin, layers[0].member
    weight = mass(sum(layer_mass(layer.facts) or 0.0 for layer in layers), turn.units)
    if len(layers) <= MOST_LISTED:
        weight = listed(said_amount(layer.facts, turn) for layer in layers)
    grams = sum(layer.facts.starter_g or 0.0 for layer in layers)
    spoons = starter(bran_ml(grams) / SPOON_ML[spoon(turn.units)], grams, turn.units)
    where = f" in {the(bin.name)}" if bin else ""
    whose = f", by {doer}" if doer and doer != turn.sender else ""
    return f"{len(layers)} layers, {weight}{where}{whose}: {spoons} of starter in all."


def said_amount(facts: Facts, turn: Turn) -> str:
    """The amount of a layer as the group measures: by weight if it was weighed."""
    if facts.mass_kg is not None:
        return mass(facts.mass_kg, turn.units)
    if facts.volume_l is not None:
        return volume(facts.volume_l, turn.units)
    return "scraps" if facts.materials else ""


def right_amount(act: Amend, turn: Turn) -> str:
    """The amount that a correction tells; empty where it tells none."""
    return said_amount(Facts(mass_kg=act.mass_kg, volume_l=act.volume_l), turn)


def _about_bin(
    entry: NewEntry, state: BinState | None, after: BinState | None, turn: Turn
) -> list[str]:
    """At most one line on what the layer does to the bin, from `state` to what it is `after` it."""
    if entry.bin is None:
        return []
    if state is None or after is None or state.number == 0:
        return [f"That begins {the(entry.bin)}. How big is it? (“{entry.bin} is 20 L”)"]
    stage = state.run.stage(turn.today)
    name = capital(the(state.bin.name))
    if state.retired:
        return [f"{name} was out of use: with this layer it is in use again."]
    if state.run.buried and entry.on and entry.on < state.run.buried:
        buried = f"{the(state.bin.name)} was buried, {day(state.run.buried, turn.today)}"
        return [f"By the book it went in before {buried}."]
    if stage == "in the ground":
        return [f"{name} begins a new run with this layer: a thin bed of starter under it first."]
    if state.run.sealed and entry.on and entry.on >= state.run.sealed:
        return [
            f"{name} was sealed {day(state.run.sealed, turn.today)}; this opens it again. "
            "Seal it anew when you are done, and its days count from then."
        ]
    share = after.fill
    if share is None or after.run.layers == state.run.layers:
        return []
    holds_kg = capacity_kg(state.capacity_l, after.run.make_up) if state.capacity_l else None
    if state.capacity_l and holds_kg and after.run.mass_kg > OVERFULL * holds_kg:
        holds = volume(state.capacity_l, turn.units)
        return [f"By the book {the(state.bin.name)} holds more than it can: is it really {holds}?"]
    full = f"{name} is {how_full(share)}"
    if share >= NEARLY_FULL:
        return [f"{full}: press it down, cover it with starter and seal it soon."]
    return [f"{full}."]


def with_layer(state: BinState, layer: NewEntry) -> BinState:
    """The bin as it will be with one more layer."""
    return replace(state, run=fold([layer], state.run))
