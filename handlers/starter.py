"""The starter on hand: batches mixed, stock counted, and how long it lasts."""

from handlers.answer import Answer, Turn
from handlers.phrasing import day, mass, volume
from handlers.practice.cautions import caution
from handlers.practice.density import bran_g
from handlers.practice.figure import Refused, number
from handlers.practice.starter import batch
from handlers.reading.acts import Ask, Batch, Stock
from storage.book import Book
from storage.rows import Entry, Facts


async def mixed(act: Batch, turn: Turn) -> Answer:
    """Starter bran was mixed to ferment."""
    facts = Facts(mass_kg=act.mass_kg, volume_l=act.volume_l)
    entry = turn.entry("batch", bin=None, facts=facts, member=act.member, on=act.on)
    return Answer(entries=[entry], noted=True)


async def counted(act: Stock, turn: Turn) -> Answer:
    """How much starter is on hand."""
    facts = Facts(mass_kg=act.mass_kg, volume_l=act.volume_l)
    entry = turn.entry("stock", bin=None, facts=facts, member=act.member)
    return Answer(entries=[entry], noted=True)


def asked_batch(act: Ask, turn: Turn) -> Answer:
    """How to mix a batch of starter, from so much bran."""
    some = act.mass_kg is not None or act.volume_l is not None
    try:
        mix = batch(
            mass_kg=act.mass_kg if some else 1.0,
            volume_l=act.volume_l if act.mass_kg is None else None,
        )
    except Refused as refused:
        return Answer(say=str(refused))
    units = turn.units
    water = volume(mix.water_ml / 1000, units)
    return Answer(
        say=f"For {mass(mix.bran_kg, units)} of bran: {water} of water without chlorine, "
        f"{number(mix.culture_ml, 2)} mL of culture and as much molasses. It "
        "should hold a ball when squeezed, without a drip.\n"
        f"Pack it airtight for {number(mix.ferment_days)} days at least, then dry it: about "
        f"{mass(mix.yield_kg, units)}. {caution('mould')}",
        why=mix.why(),
    )


async def asked(act: Ask, turn: Turn) -> Answer:
    """How much starter is left, by the last count less the doses since."""
    left = await on_hand(turn.book)
    if left is None:
        return Answer(say="I don't know yet. Tell me what is there: “we have 3 kg of bran left”.")
    counted_on, kg = left
    return Answer(
        say=f"About {mass(max(kg, 0.0), turn.units)} of starter, reckoned from the count of "
        f"{day(counted_on.on or turn.today, turn.today)} less the doses since."
    )


async def on_hand(book: Book) -> tuple[Entry, float] | None:
    """The last count of the starter, and the kg left of it after the doses since."""
    counted: Entry | None = None
    left = 0.0
    for entry in await book.entries():
        if entry.struck:
            continue
        if entry.act == "stock":
            counted, left = entry, _kg(entry.facts)
        elif entry.act == "layer" and counted:
            left -= (entry.facts.starter_g or 0.0) / 1000
    return (counted, left) if counted else None


def _kg(facts: Facts) -> float:
    if facts.mass_kg is not None:
        return facts.mass_kg
    return bran_g((facts.volume_l or 0.0) * 1000) / 1000
