"""How much starter went on a layer, told behind it: it counts in place of the dose advised."""

from dataclasses import replace
from datetime import timedelta

from handlers.answer import SILENCE, Answer, Turn
from handlers.phrasing import spoon, starter
from handlers.practice.density import bran_ml
from handlers.practice.tablespoons import SPOON_ML
from handlers.reading.arranged import StarterUsed
from handlers.recording.layers import layer_dose
from handlers.recording.starter import kg_of
from handlers.righting.corrections import last_of_all, targets_of
from handlers.state import named
from storage.rows import Entry, Facts

OF_LAYER = timedelta(hours=2)
"""So long behind a layer that is not replied to what was used is told of it."""
MUCH_LESS, MUCH_MORE = 0.5, 20.0
"""Times the dose: less is said, and more is a slip."""


async def told(plan: StarterUsed, turn: Turn) -> Answer:
    """The layer in talk has what was really used on it."""
    layer = await _layer(turn)
    if layer is None:
        return SILENCE
    grams = kg_of(Facts(mass_kg=plan.mass_kg, volume_l=plan.volume_l)) * 1000
    state = await named(turn.book, layer.bin.name if layer.bin else None, turn.today)
    measured = layer.facts.mass_kg or layer.facts.volume_l
    advised = layer_dose(layer.facts, state, turn).starter_g if measured else 0.0
    dose = starter(bran_ml(advised) / SPOON_ML[spoon(turn.units)], advised, turn.units)
    if advised and grams > MUCH_MORE * advised:
        return Answer(say=f"The dose on it is {dose}: how much was it? Nothing is written down.")
    facts = replace(layer.facts, starter_g=grams)
    entry = layer.anew(turn.now, cause=turn.cause, replaces=layer.id, facts=facts)
    say = f"Noted; the dose on it is {dose}." if grams < MUCH_LESS * advised else ""
    return Answer(entries=[entry], strikes=[layer], say=say, noted=not say)


async def _layer(turn: Turn) -> Entry | None:
    """The layer replied to, else the sender's last record, else the group's, if that is one."""
    own = await targets_of(turn)
    if not own and not turn.refers_to:
        own = [last] if (last := await last_of_all(turn)) else []
    last = own[-1] if own else None
    if last is None or last.act != "layer":
        return None
    return last if turn.refers_to or turn.now - last.written_at <= OF_LAYER else None
