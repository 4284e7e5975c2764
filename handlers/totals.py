"""How much the group has kept out of the rubbish so far."""

from handlers.answer import Answer, Turn
from handlers.phrasing import day, mass, the
from handlers.practice import density
from handlers.reading.acts import Ask
from storage import sums


async def asked(act: Ask, turn: Turn) -> Answer:
    """Layers and weight so far: of one bin or member if one was named."""
    book = turn.book
    bin = await book.bin(act.bin) if act.bin else None
    member = await book.member(act.member) if act.member else None
    if (act.bin and bin is None) or (act.member and member is None):
        return Answer(say="Nothing so far.")
    parts = await sums.put_in(book, bin, member)
    if not parts:
        return Answer(say="Nothing so far.")
    total = sum(part.mass_kg + density.mass_kg(part.volume_l, part.materials) for part in parts)
    layers = sum(part.layers for part in parts)
    who = f" by {act.member}" if act.member else ""
    where = f" in {the(act.bin)}" if act.bin else ""
    since = await sums.first_layer(book, bin, member) or turn.today
    count = "1 layer" if layers == 1 else f"{layers} layers"
    return Answer(
        say=f"{mass(total, turn.units)} in {count}{who}{where} since {day(since, turn.today)}."
    )
