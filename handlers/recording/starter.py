"""The starter on hand: batches mixed, stock counted, and how long it lasts."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise

from handlers.answer import SILENCE, Answer, PutOff, Turn
from handlers.chosen import choices, reasons
from handlers.phrasing import capital, day, mass, spoon, starter, volume, whole_days
from handlers.practice.density import BRAN_LOOSE, bran_g, bran_ml
from handlers.practice.dose import weighed
from handlers.practice.figure import Refused, number
from handlers.practice.outlook import HOUSEHOLD, SEED_KG_WEEK
from handlers.practice.starter import DRY_DAYS, FERMENT_DAYS, KEEPS_DRY
from handlers.practice.supply import Supply, keeps_until, supply
from handlers.practice.tablespoons import SPOON_ML
from handlers.reading.acts import Ask, Stock
from handlers.reading.acts import Batch as Mixed
from handlers.reading.deeds.branmoves import A_BATCH
from handlers.recording import batches
from handlers.recording.bins import how_much
from storage import sums
from storage.book import Book
from storage.rows import Due, Entry, Facts

RIPE = timedelta(days=FERMENT_DAYS.value + DRY_DAYS.value)
"""From mixing a batch until it is dry."""

USE_DAYS = 28
"""Doses of the last weeks tell how much starter the group uses."""

COUNT_DAYS = 56
"""Counts of the last weeks tell it better, where there are two."""

LEAST_DAYS = 7
"""Fewer days than a week of doses or counts tell nothing of a week."""


NEVER_COUNTED = (
    "I don't know how much starter there was, so I cannot count on from there. Tell me what is "
    "there now: “we have 3 kg of bran left”."
)


async def mixed(act: Mixed, turn: Turn) -> Answer:
    """Starter bran was mixed to ferment."""
    facts = Facts(mass_kg=act.mass_kg, volume_l=act.volume_l)
    entry = turn.entry("batch", bin=None, facts=facts, member=act.member, on=act.on)
    on = entry.on or turn.today
    dry = on + timedelta(days=FERMENT_DAYS.value)
    say = f"Noted. Keep it airtight until {day(dry, turn.today)}, then dry it in a thin layer."
    step = f"{on} + {number(FERMENT_DAYS.value)} days = {dry}"
    return Answer(entries=[entry], say=say, why=[step, FERMENT_DAYS.line(), DRY_DAYS.line()])


async def counted(act: Stock, turn: Turn) -> Answer:
    """How much starter is on hand."""
    if act.change == "more" and act.mass_kg is None and act.volume_l is None:
        return await _dried(act, turn)
    if A_BATCH in act.rules and not await _ripe(turn):
        return SILENCE
    facts = Facts(mass_kg=act.mass_kg, volume_l=act.volume_l)
    left = await on_hand(turn.book) if act.change else None
    if left is None and act.change == "less":
        return Answer(say=NEVER_COUNTED)
    entry = turn.entry("stock", bin=None, facts=facts, member=act.member)
    if left is None:
        return Answer(entries=[entry], noted=True)
    known_kg = max(left[1], 0.0)
    kg = known_kg + (kg_of(facts) if act.change == "more" else -kg_of(facts))
    if kg < 0:
        return Answer(
            say=f"That is more than the {mass(known_kg, turn.units)} of starter I know of, so "
            "nothing is written down. Tell me what is there: “we have 1 kg of bran left”."
        )
    counted_kg = replace(entry, facts=Facts(mass_kg=kg, words=act.change))
    return Answer(entries=[counted_kg], say=f"So {mass(kg, turn.units)} of starter is on hand.")


async def moved_anew(corrected: Stock, target: Entry, turn: Turn) -> Stock:
    """ "No, more like 200 g", behind what came or went: it is of that, unless it is far more.

    `turn` knows the book without the target.
    """
    left = await on_hand(turn.book) if target.facts.words else None
    if left is None:
        return corrected
    moved_kg = kg_of(target.facts) - left[1]
    told_kg = kg_of(Facts(mass_kg=corrected.mass_kg, volume_l=corrected.volume_l))
    if told_kg > _FAR_MORE * abs(moved_kg):
        return corrected  # "no, 3 kg left", behind half a kilo that was spilled
    return replace(corrected, change="more" if moved_kg > 0 else "less")


_FAR_MORE = 4
"""Times what came or went: an amount told anew that is more than this is of all that is left."""


async def _ripe(turn: Turn) -> list[Due]:
    """The batches that are to be dried by now."""
    return [due for due in await turn.book.dues(until=turn.today) if due.what == "dry"]


async def _dried(act: Stock, turn: Turn) -> Answer:
    """A batch is dry: how much it gave is asked, for it is on hand from now on."""
    ripe = await _ripe(turn)
    if not ripe:
        return SILENCE
    return Answer(
        put_off=[PutOff(due=due, until=date.max) for due in ripe],
        say="Noted: it is dry. How much did it give? Say “4 kg”, and I count it as on hand.",
        query=how_much(act),
    )


async def of_bran(act: Ask, turn: Turn) -> Answer:
    """What is asked of bran by its amount."""
    match act.what:
        case "weight":
            return _weighs(act, turn)
        case "lasts":
            return await _lasts(act, turn)
        case "used":
            return await _used(turn)
        case "yield":
            return batches.comes_to(act, turn)
        case _:
            return batches.at_hand(act, turn)


def _weighs(act: Ask, turn: Turn) -> Answer:
    """What so much bran weighs, or measures."""
    grams = kg_of(Facts(mass_kg=act.mass_kg, volume_l=act.volume_l)) * 1000
    millilitres = bran_ml(grams)
    spoons = starter(millilitres / SPOON_ML[spoon(turn.units)], grams, turn.units)
    metric = turn.units == "metric"
    also = volume(millilitres / 1000, "metric") if metric else mass(grams / 1000, "metric")
    return Answer(
        say=f"{capital(spoons)} of bran, {also}.",
        why=[weighed(millilitres, grams), BRAN_LOOSE.line()],
    )


async def _lasts(act: Ask, turn: Turn) -> Answer:
    """How long so much starter lasts, at the group's rate or at that of one household."""
    kg = kg_of(Facts(mass_kg=act.mass_kg, volume_l=act.volume_l))
    habit = choices(turn.book.room).habit
    a_household = HOUSEHOLD.value * SEED_KG_WEEK.value / 7
    g_day = await used_a_day(turn.book, turn.today)
    try:
        found = supply(kg, a_household, turn.today, habit=habit, g_day=g_day)
    except Refused as refused:
        return Answer(say=str(refused))
    whose = "At the rate you use it" if g_day else "With one household, by the usual dose"
    lines = [f"{whose}, {mass(kg, turn.units)} lasts {_span(found, turn.today)}."]
    if not g_day:
        lines.append("Log the layers, and I can say for your group.")
    return Answer(say="\n".join(lines), why=reasons(found, turn.book.room))


def _span(found: Supply, today: date) -> str:
    if found.starter_out_on is None or found.starter_out_on > keeps_until(today):
        return f"for more than a year; it keeps about {number(KEEPS_DRY.value)} months"
    days = (found.starter_out_on - today).days
    return f"about {whole_days(days)}, until {day(found.starter_out_on, today)}"


async def _used(turn: Turn) -> Answer:
    """How much starter the doses of the last weeks came to."""
    doses = await sums.doses_since(turn.book, turn.today - timedelta(days=USE_DAYS - 1))
    done = [(on, grams) for on, grams in doses if on <= turn.today]
    if not done:
        return Answer(say=f"By what was logged, none in the last {number(USE_DAYS / 7)} weeks.")
    grams, first = sum(grams for _, grams in done), min(on for on, _ in done)
    since = f"since {day(first, turn.today)}" if first < turn.today else "today"
    of = f"{len(done)} layer{'s' if len(done) > 1 else ''}"
    return Answer(
        say=f"About {mass(grams / 1000, turn.units)} of starter {since}, by the doses on {of}.",
        why=[f"the doses of the last {USE_DAYS} days add up to {number(grams)} g"],
    )


async def asked(act: Ask, turn: Turn) -> Answer:
    """How much starter is left, how long it lasts, and when to begin a batch."""
    left = await on_hand(turn.book)
    brewing = await _brewing(turn, left[0] if left else None)
    if left is None:
        ask = "I don't know yet. Tell me what is there: “we have 3 kg of bran left”."
        return Answer(say="\n".join([ask, *brewing]), query=how_much(Stock()))
    counted_on, kg = left
    kg = max(kg, 0.0)
    lines = [
        f"{f'About {mass(kg, turn.units)}' if kg else 'No'} starter is left, by the count of "
        f"{day(counted_on.on or turn.today, turn.today)} less the doses since."
    ]
    lasts = await lasting(turn.book, turn.today)
    if lasts:
        lines += _until(lasts, bool(brewing), turn)
    why = [_counted_down(counted_on, kg), *(lasts.why() if lasts else ())]
    return Answer(say="\n".join([*lines, *brewing]), why=why)


def _counted_down(counted: Entry, left_kg: float) -> str:
    """What is left, as a step of the arithmetic."""
    was_kg = kg_of(counted.facts)
    return (
        f"{number(was_kg * 1000)} g counted on {counted.on}, less "
        f"{number((was_kg - left_kg) * 1000)} g in the doses since = {number(left_kg * 1000)} g"
    )


def _until(lasts: Supply, brewing: bool, turn: Turn) -> list[str]:
    if lasts.starter_out_on is None or lasts.begin_batch_by is None:
        return ["At the rate you use it, that is for years."]
    if lasts.starter_out_on > keeps_until(turn.today):
        return [
            "At the rate you use it, that lasts for more than a year; dried and airtight it keeps "
            f"about {number(KEEPS_DRY.value)} months."
        ]
    until = f"At the rate you use it, that lasts until {day(lasts.starter_out_on, turn.today)}"
    if brewing:
        return [f"{until}."]
    if lasts.begin_batch_by <= turn.today:
        return [f"{until}: begin a batch now, it takes {whole_days(RIPE.days)}."]
    return [f"{until}: begin a batch by {day(lasts.begin_batch_by, turn.today)}."]


async def _brewing(turn: Turn, counted: Entry | None) -> list[str]:
    """A line on the last batch while it ferments or dries, and until it is counted in."""
    mixed_on = await sums.last_mixed(turn.book)
    if mixed_on is None:
        return []
    if counted and counted.on and counted.on >= mixed_on + timedelta(days=FERMENT_DAYS.value):
        return []
    if mixed_on + RIPE > turn.today:
        return [f"A batch is on its way: ready about {day(mixed_on + RIPE, turn.today)}."]
    return [
        f"The batch mixed {day(mixed_on, turn.today)} is not counted in. If it is dry, tell me "
        "what is there with it: “we have 3 kg of bran”."
    ]


async def lasting(book: Book, today: date) -> Supply | None:
    """How long the starter lasts at the rate it is used; None where either is not known."""
    left = await on_hand(book)
    g_day = await used_a_day(book, today) if left else None
    if left is None or not g_day:
        return None
    return supply(max(left[1], 0.0), 1.0, today, g_day=g_day)


async def used_a_day(book: Book, today: date) -> float | None:
    """Starter used a day (g): by the group's own counts if it counted again after a week or more,
    else by the doses of the last four weeks; None if there were neither.
    """
    if counted := _counted_a_day(await sums.counts_since(book, today - timedelta(days=COUNT_DAYS))):
        return counted
    doses = await sums.doses_since(book, today - timedelta(days=USE_DAYS - 1))
    done = [(on, grams) for on, grams in doses if on <= today]
    if not done:
        return None
    days = (today - min(on for on, _ in done)).days + 1
    return sum(grams for _, grams in done) / max(days, LEAST_DAYS)


def _counted_a_day(counts: Sequence[tuple[date, Facts]]) -> float | None:
    """What went a day (g) from each count to the next lower one; None by less than a week."""
    gone, days = 0.0, 0
    for (before, had), (on, has) in pairwise(counts):
        less = kg_of(had) - kg_of(has)
        if less > 0 and on > before:
            gone, days = gone + less, days + (on - before).days
    return gone * 1000 / days if days >= LEAST_DAYS else None


async def on_hand(book: Book) -> tuple[Entry, float] | None:
    """The last count of the starter, and the kg left of it after the doses since."""
    counted = await book.latest_batch("stock")
    if counted is None:
        return None
    return counted, kg_of(counted.facts) - await sums.dosed_since(book, counted) / 1000


def kg_of(facts: Facts) -> float:
    """What starter weighs that was weighed or measured."""
    if facts.mass_kg is not None:
        return facts.mass_kg
    return bran_g((facts.volume_l or 0.0) * 1000) / 1000
