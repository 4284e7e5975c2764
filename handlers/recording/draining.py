"""Liquid comes off a bin: written down, and marked as noted."""

from dataclasses import replace
from datetime import timedelta

from handlers.answer import Answer, Turn
from handlers.chosen import reasons
from handlers.phrasing import capital, mass, the, volume
from handlers.practice.cautions import caution
from handlers.practice.figure import Refused, number
from handlers.practice.kinds import Shares
from handlers.practice.liquid import Liquid, liquid
from handlers.practice.units import KILOGRAMS
from handlers.reading.acts import Ask, Drain
from handlers.recording.bins import ask_which, choose, how_much, meant
from handlers.state import BinState, Stage, named
from storage.rows import Entry, Facts, NewEntry

MOST_DRAINED_L = 60.0
"""More liquid than any shared bin gives at once: beyond it, it is a slip of the hand."""

MOST_L_KG = 1.0
"""Litres to one kg: scraps that were water through and through would give no more."""

DRAINED_STAGES: frozenset[Stage] = frozenset({"filling", "fermenting", "ready"})


async def drained(act: Drain, turn: Turn) -> Answer:
    """Liquid was drawn off a bin."""
    if act.volume_l is not None and not 0 <= act.volume_l <= MOST_DRAINED_L:
        return Answer(
            say=f"{volume(abs(act.volume_l), turn.units)} is more liquid than any bin gives, so "
            "nothing is written down. Say it again with the right amount.",
            query=how_much(act),
        )
    name = await choose(act.bin, turn, stages=DRAINED_STAGES)
    state = await named(turn.book, name, turn.today)
    if state and state.capacity_l and act.volume_l and act.volume_l >= state.capacity_l:
        return Answer(
            say=f"{volume(act.volume_l, turn.units)} is all that {the(state.bin.name)} holds, so "
            "nothing is written down. Say it again with the right amount or bin.",
            query=how_much(replace(act, bin=name)),
        )
    facts = Facts(volume_l=act.volume_l)
    entry = turn.entry("drain", bin=name, facts=facts, member=act.member, on=act.on)
    if name is None:
        return await ask_which(entry, turn, DRAINED_STAGES)
    said = _doubted(act, state, turn)
    if act.volume_l and (told := await _told_bare_of(entry, turn)):
        whole = told.anew(turn.now, cause=turn.cause, replaces=told.id, facts=facts)
        return Answer(entries=[whole], strikes=[told], noted=True, say=said)
    return Answer(entries=[entry], noted=True, say=said)


TOLD_ANEW = timedelta(hours=1)
"""So long an amount belongs to the draining that was told without one."""


async def told_bare(turn: Turn) -> Entry | None:
    """The draining that the sender has just told without its amount, if no more was told since."""
    last = await turn.book.last_by(turn.sender)
    if last is None or last.struck or last.act != "drain" or last.facts.volume_l is not None:
        return None
    is_lately = turn.at - last.written_at <= TOLD_ANEW
    return last if is_lately and last.event != turn.event and turn.cause == turn.event else None


async def _told_bare_of(entry: NewEntry, turn: Turn) -> Entry | None:
    """The draining of that bin that the sender has just told without its amount, perhaps with that
    of others: "drained both", and then "250 from the shed".
    """
    last = await turn.book.last_by(turn.sender)
    if last is None or last.act != "drain" or turn.at - last.written_at > TOLD_ANEW:
        return None
    if last.event == turn.event or turn.cause != turn.event:
        return None
    told = [each for each in await turn.book.of_event(last.event) if each.act == "drain"]
    owing = [each for each in told if each.facts.volume_l is None and _is_same(each, entry)]
    return owing[0] if owing else None


def _is_same(told: Entry, entry: NewEntry) -> bool:
    bin = told.bin.name if told.bin else None
    return (bin, told.on, told.member) == (entry.bin, entry.on, entry.member)


def _doubted(act: Drain, state: BinState | None, turn: Turn) -> str:
    """A word where more came off than went in, by what was logged: a slip, or layers left out."""
    kg = state.run.mass_kg if state else 0.0
    if not kg or state is None or (act.volume_l or 0.0) <= kg * MOST_L_KG:
        return ""
    most = volume(float(number(liquid(kg, state.run.make_up).high_l, 2)), turn.units)
    return (
        f"Noted: {volume(act.volume_l or 0.0, turn.units)} drained. That is more than the "
        f"{mass(kg, turn.units)} logged in {the(state.bin.name)} can give ({most} at most, as a "
        "rule). If it was a slip, say the right amount; if layers were not told, tell them."
    )


MUCH = "That is much: drain it every other day, and add torn paper or dry bread."
LITTLE = "That is less than such scraps give: see that the tap and the grid are clear."
USUAL = "What came off is as usual."


async def asked(act: Ask, turn: Turn) -> Answer:
    """How much liquid a bin may give, against what came off it so far or was said."""
    if act.mass_kg and act.materials and act.bin is None:
        return _of_scraps(act.mass_kg, act.materials, turn)
    if act.bin is None and not await turn.book.bins():
        return Answer(say=_in_general(turn), why=liquid(1.0).why())
    state = await meant(act.bin, turn, stages=DRAINED_STAGES)
    if isinstance(state, Answer):
        return state
    if not state.run.mass_kg:
        return Answer(say=_in_general(turn), why=liquid(1.0).why())
    drained = act.volume_l
    if drained is None and state.run.drainings:
        drained = state.run.drained_l
    try:
        found = liquid(state.run.mass_kg, state.run.make_up, drained_l=drained)
    except Refused as refused:
        return Answer(say=str(refused))
    return Answer(
        say=f"{_expected(found, state, turn)}\n{caution('liquid')}",
        why=reasons(found, turn.book.room),
    )


def _of_scraps(kg: float, materials: Shares, turn: Turn) -> Answer:
    """How much liquid scraps that were named may give."""
    try:
        found = liquid(kg, materials)
    except Refused as refused:
        return Answer(say=str(refused))
    most = volume(float(number(found.high_l, 2)), turn.units)
    usual = volume(float(number(found.expected_l, 2)), turn.units)
    said = (
        f"{mass(kg, turn.units)} of such scraps may give about {usual} in all; from none to {most} "
        "is normal."
    )
    return Answer(say=f"{said}\n{caution('liquid')}", why=reasons(found, turn.book.room))


def _expected(found: Liquid, state: BinState, turn: Turn) -> str:
    expected, high = (
        volume(float(number(litres, 2)), turn.units) for litres in (found.expected_l, found.high_l)
    )
    where = capital(the(state.bin.name))
    first = f"{where} may give about {expected} in all; from none to {high} is normal."
    if found.drained is None or found.drained_l is None:
        return first
    so_far = volume(float(number(found.drained_l, 2)), turn.units) if found.drained_l else "None"
    words = {"much": MUCH, "little": LITTLE, "usual": USUAL}[found.drained]
    return f"{first} {so_far} came off so far: {words[:1].lower()}{words[1:]}"


def _in_general(turn: Turn) -> str:
    metric = turn.units == "metric"
    kg, each = (1.0, "kilo") if metric else (KILOGRAMS["pound"], "pound")
    most = volume(liquid(kg).high_l, turn.units)
    return (
        f"Scraps give from none to {most} of liquid for each {each}, fruit and vegetables the "
        "most. Log the layers and I can say for your bin."
    )
