"""How much the group has kept out of the rubbish so far."""

from handlers.answer import Answer, Turn
from handlers.phrasing import day, mass, the
from handlers.reading.acts import Ask
from handlers.state import layer_mass


async def asked(act: Ask, turn: Turn) -> Answer:
    """Layers and weight so far: of one bin or member if one was named."""
    layers = [
        entry
        for entry in await turn.book.entries()
        if entry.act == "layer"
        and not entry.struck
        and (not act.bin or (entry.bin and entry.bin.name.casefold() == act.bin.casefold()))
        and (not act.member or (entry.member or "").casefold() == act.member.casefold())
    ]
    if not layers:
        return Answer(say="Nothing so far.")
    total = sum(layer_mass(entry.facts) or 0.0 for entry in layers)
    who = f" by {act.member}" if act.member else ""
    where = f" in {the(act.bin)}" if act.bin else ""
    since = min(entry.on or turn.today for entry in layers)
    count = "1 layer" if len(layers) == 1 else f"{len(layers)} layers"
    return Answer(
        say=f"{mass(total, turn.units)} in {count}{who}{where} since {day(since, turn.today)}."
    )
