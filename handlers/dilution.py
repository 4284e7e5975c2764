"""How to thin the liquid that was drained."""

from handlers.answer import Answer, Turn
from handlers.phrasing import capital, volume
from handlers.practice.cautions import caution
from handlers.practice.dilution import PARTS, Dilution, Use, dilute, use_named
from handlers.practice.figure import Refused, number
from handlers.practice.units import LITRES
from handlers.reading.acts import Ask
from storage.rows import Units

CAN_L = {"metric": 10.0, "us": 2 * LITRES["us_gallon"], "imperial": 2 * LITRES["imperial_gallon"]}
"""The watering can reckoned for where no amount was said: our choice."""


def asked(act: Ask, turn: Turn) -> Answer:
    """What to mix, from any of liquid, water, parts and use; a canful where none was said."""
    liquid_ml = act.liquid_l * 1000 if act.liquid_l is not None else None
    water_l = act.water_l
    try:
        use = use_named(act.use) if act.use else None
    except Refused:
        use = None
    if use == "drain":
        return Answer(say="Down the drain it goes undiluted, with plenty of water after it.")
    if liquid_ml is None and water_l is None:
        water_l = CAN_L[turn.units]
    try:
        mix = dilute(liquid_ml=liquid_ml, water_l=water_l, parts=act.parts, use=use)
    except Refused as refused:
        return Answer(say=str(refused))
    lines = [_words(mix, turn.units), *mix.lines[1:]]
    if mix.use is None and act.parts is None and len(lines) == 1:
        lines.append(_taught(mix))
    lines.append(caution("liquid"))
    return Answer(say="\n".join(line for line in lines if line), why=mix.why())


def _words(mix: Dilution, units: Units) -> str:
    liquid = _liquid(mix.liquid_ml / 1000, units)
    purpose = f", for {_purpose(mix.use)}" if mix.use else ""
    ratio = f"1 part liquid to {number(mix.parts)} parts water{purpose}"
    return f"{capital(liquid)} of liquid in {volume(mix.water_l, units)} of water: {ratio}."


def _liquid(litres: float, units: Units) -> str:
    """A dose of liquid: in tablespoons too where that is how it will be measured."""
    spoons = litres / LITRES["us_tablespoon"]
    if units == "us" and 0.4 <= spoons <= 8:
        return f"{number(round(spoons * 4) / 4)} tablespoons ({number(litres * 1000, 2)} mL)"
    return volume(litres, units)


def _purpose(use: Use) -> str:
    return PARTS[use].name.removeprefix("water for ")


def _taught(mix: Dilution) -> str:
    """Nothing to add where the mix is close to the usual one."""
    usual = PARTS["bed"].value
    return "" if abs(mix.parts / usual - 1) < 0.1 else f"Beds usually get 1:{number(usual)}."
