"""How to thin the liquid that was drained."""

from collections.abc import Mapping

from handlers.answer import Answer, Turn
from handlers.chosen import choices, reasons
from handlers.phrasing import capital, spoon, volume
from handlers.practice.cautions import caution
from handlers.practice.dilution import CAN, CAN_GALLONS, PARTS, Dilution, Use, dilute
from handlers.practice.dilution_words import EATEN_RAW, use_named
from handlers.practice.figure import Refused, in_spoons, number, spoons
from handlers.practice.tablespoons import SPOON_ML
from handlers.practice.units import LITRES
from handlers.reading.acts import Ask
from storage.rows import Units

CAN_L: Mapping[Units, float] = {
    "metric": CAN.value,
    "us": CAN_GALLONS.value * LITRES["us_gallon"],
    "imperial": CAN_GALLONS.value * LITRES["imperial_gallon"],
}
"""The watering can reckoned for where no amount was said."""
TEASPOON_ML = LITRES["metric_teaspoon"] * 1000
LEAST_ML = TEASPOON_ML / 2
"""A small spoon of a kitchen: less than that is dripped, and drops are no measure."""
MOST_TABLESPOONS = 8
MOST_EXACT_ML = 100
SPOON_OFF = 0.2
"""How far a count of spoons may be from what is to be measured."""

DOWN_THE_DRAIN = (
    "Down the drain it goes undiluted, with plenty of water after it, if local rules allow. Never "
    "together with bleach."
)
NOT_NEAT = "Never undiluted on plants: it is sour enough to burn them."
NOT_RAW = "not on what is eaten raw: only on the soil beside it, thinned; wash what you pick."
ON_LEAVES = (
    "Better on the soil: on leaves rather not, never sprayed as a mist, and not on fruit crops in "
    "flower."
)
NO_USE = (
    f"I have no dilution for that. For beds it is 1 part to {number(PARTS['bed'].value)} parts "
    f"water, for pots 1 to {number(PARTS['pot'].value)}, for leaves 1 to "
    f"{number(PARTS['leaf'].value)}, for seedlings 1 to {number(PARTS['seedling'].value)}."
)


def asked(act: Ask, turn: Turn) -> Answer:
    """What to mix, from any of liquid, water, parts and use; a canful where none was said."""
    liquid_ml = act.liquid_l * 1000 if act.liquid_l is not None else None
    water_l, total_l = act.water_l, act.total_l
    try:
        use = use_named(act.use) if act.use else None
    except Refused:
        return Answer(say=NO_USE, why=[figure.line() for figure in PARTS.values()])
    if use == "drain":
        return Answer(say=DOWN_THE_DRAIN)
    if liquid_ml is water_l is total_l is None:
        water_l = CAN_L[turn.units]
    is_neat = act.parts == 0
    try:
        mix = dilute(
            liquid_ml=liquid_ml,
            water_l=water_l,
            total_l=total_l,
            parts=None if is_neat else act.parts,
            use=use,
            usual=choices(turn.book.room).parts,
            tablespoon=spoon(turn.units),
        )
    except Refused as refused:
        return Answer(say=str(refused))
    remark = mix.remark or (_enough(mix, turn.units) if water_l is total_l is None else "")
    if mix.more_water_l:
        remark += f" Or add {volume(mix.more_water_l, turn.units)} of water to it."
    mixing = [_words(mix, turn.units), _too_little(mix, turn.units), remark]
    on_leaves = ON_LEAVES if use == "leaf" else ""
    lines = [NOT_NEAT if is_neat else "", on_leaves, _not_raw(act), *mixing, caution("liquid")]
    return Answer(say="\n".join(filter(None, lines)), why=reasons(mix, turn.book.room))


def _not_raw(act: Ask) -> str:
    """A word first of all where it is asked for what is eaten raw."""
    if act.use is None or EATEN_RAW.isdisjoint(act.use.casefold().split()):
        return ""
    may_it = act.water_l is act.liquid_l is act.parts is None
    return f"No, {NOT_RAW}" if may_it else capital(NOT_RAW)


def _enough(mix: Dilution, units: Units) -> str:
    cans = round(mix.total_l / CAN_L[units])
    if cans < 1:
        return ""
    plural = "s" if cans > 1 else ""
    each = volume(CAN_L[units], units)
    return f"That is enough for about {number(cans, 2)} watering can{plural} of {each}."


def _words(mix: Dilution, units: Units) -> str:
    liquid = measured(mix.liquid_ml / 1000, units)
    purpose = f", for {_purpose(mix.use)}" if mix.use else ""
    ratio = f"1 part liquid to {number(mix.parts)} parts water{purpose}"
    return f"{capital(liquid)} of liquid in {volume(mix.water_l, units)} of water: {ratio}."


def _too_little(mix: Dilution, units: Units) -> str:
    """How the same mix is made where so little liquid cannot be measured; empty where it can."""
    if mix.liquid_ml >= LEAST_ML:
        return ""
    more = volume(mix.water_l * TEASPOON_ML / mix.liquid_ml, units)
    return (
        f"That is too little to measure: stir 1 teaspoon ({number(TEASPOON_ML)} mL) into {more} "
        f"and use {volume(mix.water_l, units)} of it."
    )


def measured(litres: float, units: Units) -> str:
    """A small amount of liquid: in spoons too where that is how it will be measured."""
    millilitres = litres * 1000
    in_ml = f"{_legible(millilitres)} mL"
    tablespoons = millilitres / SPOON_ML[spoon(units)]
    if units == "metric" and litres < 1:
        return in_ml
    if units == "metric" or tablespoons > MOST_TABLESPOONS:
        return volume(litres, units)
    size, count = ("tea", tablespoons * 3) if tablespoons < 0.95 else ("table", tablespoons)
    shown = in_spoons(count)
    if abs(shown - count) > count * SPOON_OFF:
        return in_ml
    return f"{spoons(count)} {size}spoon{'s' if shown > 1 else ''} ({in_ml})"


def _legible(millilitres: float) -> str:
    """Millilitres as they are read off a jug: to the nearest five from a hundred on."""
    if millilitres <= MOST_EXACT_ML:
        return number(millilitres, 2)
    return str(round(millilitres / 5) * 5)


def _purpose(use: Use) -> str:
    return PARTS[use].name.removeprefix("water for ")
