"""How a batch of starter is mixed, what it comes to, and for how much bran there is enough."""

from collections.abc import Mapping

from handlers.answer import Answer, Turn
from handlers.asked.dilution import measured
from handlers.chosen import choices, reasons
from handlers.phrasing import capital, day, mass, volume
from handlers.practice.cautions import caution
from handlers.practice.figure import Refused, listed, number
from handlers.practice.recipes import PACKED, RECIPE_NAMES, RECIPES, Recipe, bran_for
from handlers.practice.starter import Batch, batch
from handlers.reading.acts import Ask
from storage.rows import Units


def asked(act: Ask, turn: Turn) -> Answer:
    """How to mix a batch of starter from so much bran, by both recipes that people quote."""
    some = act.mass_kg is not None or act.volume_l is not None
    try:
        mix = _batch(act.mass_kg if some else 1.0, act.volume_l, turn)
    except Refused as refused:
        return Answer(say=str(refused))
    lines = [_recipe(mix, turn.units), *_enough_of_each(mix, act.at_hand or {}, turn.units)]
    return _told(mix, lines, turn)


def at_hand(act: Ask, turn: Turn) -> Answer:
    """How much bran the culture or the molasses at hand will do for, and what goes with it."""
    if act.mass_kg is not None or act.volume_l is not None:
        return asked(act, turn)
    recipe = choices(turn.book.room).recipe
    other = next(each for each in RECIPES[:2] if each != recipe)
    have = act.at_hand or {}
    try:
        mix = _batch(_bran_for(recipe, have), None, turn)
    except Refused as refused:
        return Answer(say=str(refused))
    units = turn.units
    there = listed(f"{_ml(litres * 1000, units)} of {what}" for what, litres in have.items())
    lines = [
        f"{capital(there)} {'are' if len(have) > 1 else 'is'} enough for "
        f"{_bran(mix.bran_kg, units)} of bran, by {mix.says}. That takes "
        f"{_ml(mix.molasses_ml, units)} of molasses, {_culture(mix, units)}, and "
        f"{volume(mix.water_ml / 1000, units)} of water that has stood open for a day.",
        f"By {RECIPE_NAMES[other]} there is enough for {_bran(_bran_for(other, have), units)}.",
    ]
    return _told(mix, lines, turn)


def comes_to(act: Ask, turn: Turn) -> Answer:
    """What a batch that was mixed comes to when it is dry."""
    try:
        mix = _batch(act.mass_kg, act.volume_l, turn)
    except Refused as refused:
        return Answer(say=str(refused))
    say = f"Dried, about {mass(mix.yield_kg, turn.units)} of starter."
    return Answer(say=say, why=reasons(mix, turn.book.room))


def _batch(mass_kg: float | None, volume_l: float | None, turn: Turn) -> Batch:
    return batch(
        mass_kg=mass_kg,
        volume_l=volume_l if mass_kg is None else None,
        recipe=choices(turn.book.room).recipe,
        mixed=turn.today,
    )


def _bran_for(recipe: Recipe, have: Mapping[str, float]) -> float:
    return bran_for(recipe, PACKED.value, have.get("culture"), have.get("molasses"))


def _bran(kg: float, units: Units) -> str:
    return mass(float(number(kg, 2)), units)


def _told(mix: Batch, lines: list[str], turn: Turn) -> Answer:
    ripe = mix.ferment_until or turn.today
    lines.append(
        f"Mixed today it stays airtight until {day(ripe, turn.today)}; dried, it is about "
        f"{mass(mix.yield_kg, turn.units)}."
    )
    return Answer(say="\n".join([*lines, caution(mix.caution)]), why=reasons(mix, turn.book.room))


def _recipe(mix: Batch, units: Units) -> str:
    other = mix.others[0]
    return (
        f"For {mass(mix.bran_kg, units)} of bran, by {mix.says}: "
        f"{_ml(mix.molasses_ml, units)} of molasses, {_culture(mix, units)}, and "
        f"{volume(mix.water_ml / 1000, units)} of water that has stood open for a day.\n"
        f"Others take {other.says}: {_ml(other.molasses_ml, units)}, with "
        f"{_ml(other.culture_ml, units)} of culture in {volume(other.water_ml / 1000, units)} of "
        "water. Either way it should hold when squeezed, and not drip."
    )


def _enough_of_each(mix: Batch, have: Mapping[str, float], units: Units) -> list[str]:
    """Whether what there is of culture and molasses is enough, by the one recipe and the other."""
    other = mix.others[0]
    wanted = {
        "culture": (mix.culture_ml, other.culture_ml),
        "molasses": (mix.molasses_ml, other.molasses_ml),
    }
    lines = []
    for what, litres in have.items():
        short = [max(0.0, need - litres * 1000) for need in wanted[what]]
        one, two = (f"{_ml(lack, units)} short" if lack >= 1 else "enough" for lack in short)
        both = f"{one} by either" if one == two else f"{one} by the first, {two} by the other"
        lines.append(f"{capital(_ml(litres * 1000, units))} of {what} is {both}.")
    return lines


def _culture(mix: Batch, units: Units) -> str:
    if mix.culture_ml == mix.molasses_ml:
        return "as much culture"
    return f"{_ml(mix.culture_ml, units)} of culture"


def _ml(millilitres: float, units: Units) -> str:
    return measured(millilitres / 1000, units)
