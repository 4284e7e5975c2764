"""How far to thin the drained liquid.

"1:100" is 1 part liquid to 100 parts water, so 1 part in 101 of the mix. "1 in 100" is 1 part in
100 of the mix; the two differ by a hundredth there, and by half at 1:1.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Literal, get_args

from handlers.practice.figure import (
    Figure,
    Reckoning,
    Refused,
    number,
    positive,
    spoons,
    within,
)
from handlers.practice.tablespoons import SPOON_ML, Spoon, country

Use = Literal["bed", "pot", "seedling", "leaf", "drain"]

USES: tuple[Use, ...] = get_args(Use)

PARTS: Mapping[Use, Figure] = {
    "bed": Figure(
        "water for established beds",
        100,
        "parts to 1 of liquid",
        "Footer, Bokashi Composting, 2013, ch. 8",
        "published",
        100,
        300,
    ),
    "pot": Figure(
        "water for pots and house plants",
        500,
        "parts to 1 of liquid",
        "",
        "common practice",
        500,
        1000,
    ),
    "seedling": Figure(
        "water for seedlings",
        1000,
        "parts to 1 of liquid",
        "in a school trial beans did best at 1:1000 or with none",
        "common practice",
        500,
        1000,
    ),
    "leaf": Figure(
        "water for leaves",
        500,
        "parts to 1 of liquid",
        "Footer, Bokashi Composting, 2013, ch. 8: 500 to 1, or rather not",
        "published",
        500,
        1000,
    ),
    "drain": Figure(
        "water for drains",
        0,
        "parts to 1 of liquid",
        "Footer, Bokashi Composting, 2013: undiluted",
        "published",
    ),
}
"""Parts of water to one part of liquid, by use."""

CHOSEN: Mapping[Use, str] = {"bed": "bed_parts", "pot": "pot_parts"}
"""The uses for which a group may settle its own, and the names of these choices."""

CAN = Figure("a watering can", 10, "L", "", "common practice", 5, 10)
CAN_GALLONS = Figure("a watering can of gallons", 2, "gallons", "", "common practice", 1, 2)
STRONG = Figure(
    "parts of water from which the two readings of a ratio differ by less than a tenth",
    10,
    "parts",
    "1 / 10",
    "derived",
)

MOST_L = 20000.0
MOST_PARTS = 100000.0
_ASK = "say two of liquid, water, the whole mix and the ratio, such as 9 L of water at 1:100"
_UNDILUTED = "A ratio of 1:0 has no water in it: undiluted it is for drains only, never for plants."
_AGREES = 0.01
"""How far three figures may differ and still agree."""
_OFF = 0.05
"""How far a ratio may be from what is wanted before it is called too strong or too mild."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Dilution(Reckoning):
    """Liquid and water for one mix, and how many parts of water that is to one of liquid."""

    liquid_ml: float
    water_l: float
    total_l: float
    parts: float
    one_in: float
    """The same as one part in so many of the mix."""
    cans: float
    """Watering cans that it fills."""
    use: Use | None = None
    remark: str = ""
    """A word on the ratio: what it really is, or that it is too strong or mild; may be empty."""
    more_water_l: float = 0.0
    """Water that makes a mix that is too strong right; 0 where it is not."""


def dilute(
    *,
    liquid_ml: float | None = None,
    water_l: float | None = None,
    total_l: float | None = None,
    parts: float | None = None,
    use: Use | None = None,
    usual: Mapping[Use, float] | None = None,
    tablespoon: Spoon = "metric",
) -> Dilution:
    """The mix from any two of liquid, water, total and parts; a use stands for parts.

    With one amount and neither parts nor a use it is reckoned for established beds; `usual` are
    the parts of water for a use that the group chose itself. A third amount has to agree with the
    two; parts said of a mix of known liquid and water are held against what they really are.
    """
    _bounded(liquid_ml, water_l, total_l, parts)
    amounts = sum(value is not None for value in (liquid_ml, water_l, total_l))
    if not amounts:
        raise Refused(f"How much liquid or water is there? Please {_ASK}.")
    if amounts == 1 and parts is None:
        use = use or "bed"
    by_use = use if amounts == 1 and parts is None else None
    given = parts if by_use is None else (usual or {}).get(by_use, PARTS[by_use].value)
    liquid, water = _solve(liquid_ml, water_l, total_l, given)
    if not water and use != "drain":
        raise Refused(_UNDILUTED)
    _agree((liquid_ml, liquid * 1000), (water_l, water), (total_l, liquid + water))
    ratio = water / liquid
    within(ratio, 0, MOST_PARTS, what="A dilution", unit="parts", advice=_ASK)
    mix = f"{number(liquid * 1000)} mL liquid + {number(water)} L water"
    put_right = _claimed(parts, liquid, water, tablespoon)
    compared = _compared(ratio, water, use, tablespoon, said=amounts == 1)
    remark = " ".join((*_convention(ratio, water), *(put_right or compared)))
    more = 0.0 if put_right else _lacking(liquid, water, use)
    enough = _enough(liquid + water, from_liquid=amounts == 1 and liquid_ml is not None)
    return Dilution(
        liquid_ml=liquid * 1000,
        water_l=water,
        total_l=liquid + water,
        parts=ratio,
        one_in=ratio + 1,
        use=use,
        remark=remark,
        more_water_l=more,
        caution="liquid",
        chosen=tuple(CHOSEN[use] for use in CHOSEN if use == by_use),
        cans=(liquid + water) / CAN.value,
        steps=(
            f"1:{_whole(ratio)} is 1 part liquid to {_whole(ratio)} parts water, "
            f"1 in {_whole(ratio + 1)} of the mix",
            f"{mix} = {number(liquid + water)} L",
        ),
        figures=(*((PARTS[use],) if use else ()), *((CAN,) if enough else ())),
        lines=(
            _said(liquid, water, use),
            *((remark,) if remark else ()),
            *((f"Or add {_volume(more)} of water to it.",) if more else ()),
            *enough,
        ),
    )


def _solve(
    liquid_ml: float | None, water_l: float | None, total_l: float | None, parts: float | None
) -> tuple[float, float]:
    if liquid_ml is not None:
        liquid = liquid_ml / 1000
        if water_l is not None:
            return liquid, water_l
        return liquid, total_l - liquid if total_l is not None else liquid * (parts or 0)
    if total_l is not None:
        if water_l is not None:
            return total_l - water_l, water_l
        return total_l / ((parts or 0) + 1), total_l * (parts or 0) / ((parts or 0) + 1)
    if not parts or not water_l:
        raise Refused("Undiluted there is no water to go by: say how much liquid there is instead.")
    return water_l / parts, water_l


def _bounded(
    liquid_ml: float | None, water_l: float | None, total_l: float | None, parts: float | None
) -> None:
    if liquid_ml is not None:
        positive(liquid_ml, MOST_L * 1000, what="The liquid", unit="mL", advice=_ASK)
    if total_l is not None:
        positive(total_l, MOST_L, what="The mix", unit="L", advice=_ASK)
    if water_l is not None:
        within(water_l, 0, MOST_L, what="The water", unit="L", advice=_ASK)
    if parts == 0:
        raise Refused(_UNDILUTED)
    if parts is not None:
        within(parts, 0, MOST_PARTS, what="A dilution", unit="parts", advice=_ASK)
    if total_l is not None and max((liquid_ml or 0) / 1000, water_l or 0) > total_l:
        raise Refused("There cannot be more liquid or water than the whole mix: check the total.")
    if total_l is not None and water_l == total_l:
        raise Refused("If the mix is all water there is no liquid in it: say how much of either.")


def _agree(*pairs: tuple[float | None, float]) -> None:
    for said, found in pairs:
        if said is not None and abs(said - found) > _AGREES * max(abs(said), abs(found)):
            raise Refused("These figures do not agree with one another: give me only two of them.")


def _said(liquid: float, water: float, use: Use | None) -> str:
    where = f" for {PARTS[use].name.removeprefix('water for ')}" if use else ""
    if not water:
        return f"Undiluted{where}: {_volume(liquid)}."
    mix = f"{_volume(liquid)} of liquid in {_volume(water)} of water"
    return f"{mix}{where}: 1:{_whole(water / liquid)}."


def _convention(ratio: float, water: float) -> tuple[str, ...]:
    """In a strong mix the two readings of a ratio are far apart, so both are named."""
    if not water or ratio >= STRONG.value:
        return ()
    return (
        f"That is 1 part in {_whole(ratio + 1)} of the mix; some call it 1:{_whole(ratio + 1)}.",
    )


def _claimed(
    parts: float | None, liquid: float, water: float, tablespoon: Spoon
) -> tuple[str, ...]:
    """A kind word where the mix is not the ratio that it was said to be."""
    ratio = water / liquid
    if parts is None or abs(parts - ratio) <= _AGREES * max(parts, ratio):
        return ()
    said = f"It is often called 1:{_whole(parts)}, but it is 1:{_whole(ratio)}"
    return (f"{said}; {_takes(water, parts, tablespoon)}.",) if parts else (f"{said}.",)


def _compared(
    ratio: float, water: float, use: Use | None, tablespoon: Spoon, *, said: bool
) -> tuple[str, ...]:
    """A word on a ratio that is far from what its use, or a bed, wants; `said`: it was chosen."""
    wanted = PARTS[use or "bed"]
    if not water or wanted.low is None or wanted.high is None:
        return ()
    takes = _takes(water, wanted.value, tablespoon)
    if ratio < wanted.low * (1 - _OFF):
        return (f"That is stronger than the usual 1:{_whole(wanted.low)}: {takes}.",)
    if ratio > wanted.value * (1 + _OFF) and use is None and not said:
        return (f"That is milder than 1:{_whole(wanted.value)}: {takes}.",)
    return ()


def _lacking(liquid: float, water: float, use: Use | None) -> float:
    """Litres of water that bring a mix that is too strong to what its use, or a bed, wants."""
    wanted = PARTS[use or "bed"]
    strong = water and wanted.low and water < wanted.low * liquid * (1 - _OFF)
    return wanted.value * liquid - water if strong else 0.0


def _takes(water: float, parts: float, tablespoon: Spoon) -> str:
    count = water / parts * 1000 / SPOON_ML[tablespoon]
    takes = f"1:{_whole(parts)} takes {_volume(water / parts)}"
    if not 0.3 <= count <= 20:
        return takes
    size, count = ("tea", count * 3) if count < 0.9 else ("table", count)
    plural = "s" if count > 1.1 else ""
    return f"{takes}, about {spoons(count)} {country(tablespoon)}{size}spoon{plural}"


def _enough(total: float, *, from_liquid: bool) -> tuple[str, ...]:
    if not from_liquid or total < CAN.value:
        return ()
    return (f"Enough for {number(total / CAN.value, 2)} cans of {number(CAN.value)} L.",)


def _volume(litres: float) -> str:
    return f"{number(litres * 1000, 2)} mL" if litres < 1 else f"{number(litres)} L"


def _whole(parts: float) -> str:
    return number(parts, 3) if parts < 1000 else f"{parts:.0f}"
