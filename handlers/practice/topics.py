"""What can be reckoned: each topic with the names of its values, and how they are read."""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import TypeVar

from handlers.practice import (
    course,
    density,
    dilution,
    dilution_words,
    dose,
    first_bed,
    quantity,
)
from handlers.practice import starter as bran
from handlers.practice import trench as ground
from handlers.practice.allowed import allowed
from handlers.practice.bed import bed
from handlers.practice.bins import ORDINARY_BIN, bins
from handlers.practice.blending import blend
from handlers.practice.choices import Choices
from handlers.practice.figure import Figure, Reckoning, Refused
from handlers.practice.liquid import liquid
from handlers.practice.outlook import HOUSEHOLD, forecast_rate, full_forecast
from handlers.practice.prospect import prospect
from handlers.practice.signs import SIGNS, signs_named
from handlers.practice.supply import supply
from handlers.practice.tablespoons import Spoon
from handlers.practice.trouble import trouble
from handlers.practice.value_names import HABITS, RECIPES, SPOONS
from handlers.practice.values import Values

_Value = TypeVar("_Value")


@dataclass(frozen=True, slots=True)
class Topic:
    """What can be reckoned: the names of its values, whether kinds of scraps are, and how."""

    names: tuple[str, ...]
    reckon: Callable[[Values, Choices], Reckoning]
    kinds: bool = False


def _spoon(values: Values) -> Spoon:
    return values.choice("tablespoon", SPOONS, "us" if values.units == "us" else "metric")


def _in_trouble(values: Values) -> bool:
    """Yes or no, or the signs of it."""
    said = values.text("trouble") or "no"
    signs = set(signs_named(said))
    if signs and signs <= set(SIGNS):
        return trouble(signs).verdict != "good"
    return said.lower() != "none" and values.yes("trouble")


def _dose(values: Values, choices: Choices) -> Reckoning:
    mass, volume = values.mass_of_scraps_kg(), values.volume_l("volume")
    capacity, depth = values.volume_l("capacity"), values.length_m("depth")
    amounts = (mass, volume, depth)
    if amounts == (None, None, None) and (values.yes("empty") or capacity is not None):
        return first_bed.first_bed(capacity_l=capacity, tablespoon=_spoon(values))
    layer = dose.dose(
        mass_kg=mass,
        volume_l=volume,
        depth_m=depth,
        width_m=values.length_m("width"),
        materials=values.materials(),
        rich=values.share("rich"),
        wetness=values.wetness("wetness"),
        trouble=_in_trouble(values),
        habit=values.choice("habit", HABITS, choices.habit),
        tablespoon=_spoon(values),
    )
    return first_bed.with_bed(layer, capacity) if values.yes("empty") else layer


def _first_bed(values: Values, _: Choices) -> Reckoning:
    return first_bed.first_bed(capacity_l=values.volume_l("capacity"), tablespoon=_spoon(values))


def _dilution(values: Values, choices: Choices) -> Reckoning:
    liquid, use, parts = values.volume_l("liquid"), values.text("use"), values.text("parts")
    return dilution.dilute(
        liquid_ml=None if liquid is None else liquid * 1000,
        water_l=values.volume_l("water"),
        total_l=values.volume_l("total"),
        parts=None if parts is None else dilution_words.parts_said(parts),
        use=None if use is None else dilution_words.use_named(use),
        usual=choices.parts,
        tablespoon=_spoon(values),
    )


def _days(values: Values, choices: Choices) -> Reckoning:
    return course.course(
        first_layer=values.day("first_layer"),
        drained=values.day("drained"),
        sealed=values.day("sealed"),
        buried=values.day("buried"),
        celsius=values.celsius("celsius"),
        soil_celsius=values.celsius("soil"),
        ferment_days=values.whole_days("ferment_days", choices.ferment_days),
        plant_days=values.whole_days("plant_days", choices.plant_days),
    )


def _trench(values: Values, choices: Choices) -> Reckoning:
    said = values.text("soil_parts")
    parts = choices.soil_parts if said is None else dilution_words.ratio_said(said)
    tub_l = values.volume_if_unit("tub")
    mass, volume = values.mass_of_scraps_kg(), values.volume_l("volume")
    if mass is None and volume is None:
        if tub_l is not None:
            return ground.tub(ground.tub_holds_l(tub_l, parts), soil_parts=parts)
        volume = ORDINARY_BIN.value if values.text("bins") else None
    ferment = ground.ferment(
        volume_l=volume,
        mass_kg=mass,
        bins=1 if (bins := values.number("bins")) is None else bins,
        materials=values.materials(),
    )
    if tub_l is not None or values.yes("tub"):
        tub = ground.tub(ferment.litres, soil_parts=parts, tub_l=tub_l)
        return tub.led_by(ferment.steps, ferment.figures)
    trench = ground.trench(
        ferment.litres,
        depth_m=values.length_m("depth"),
        width_m=values.length_m("width"),
        cover_m=values.length_m("cover"),
        animals=values.yes("animals"),
        soil_parts=parts,
        usual_depth_m=choices.depth_cm / 100,
    )
    return trench.led_by(ferment.steps, ferment.figures)


def _bed(values: Values, choices: Choices) -> Reckoning:
    limit = values.number("limit_kg_ha")
    return bed(
        _asked(values.area_m2("area"), "area=4x8ft"),
        mass_kg=values.mass_of_scraps_kg(),
        had_kg=values.mass_kg("had") or 0.0,
        materials=values.materials(),
        depth_m=values.length_m("depth"),
        limit_kg_ha=choices.limit_kg_ha if limit is None else limit,
    )


def _starter(values: Values, choices: Choices) -> Reckoning:
    goal, found = values.share("goal"), values.share("moisture")
    mass, volume = values.mass_or_volume("bran")
    if found is not None and values.text("mass") and not values.text("bran"):
        return bran.mend(_asked(values.mass_kg("mass"), "mass=5kg"), found, goal=goal)
    if not values.text("bran"):
        mass, volume = values.mass_kg("mass"), values.volume_l("volume")
    return bran.batch(
        mass_kg=mass,
        volume_l=volume,
        recipe=values.choice("recipe", RECIPES, choices.recipe),
        goal=goal,
        mixed=values.day("mixed"),
        ferment_days=values.whole_days("ferment_days", int(bran.FERMENT_DAYS.value)),
        found=found,
        water_l=values.volume_l("water"),
    )


def _moisture(values: Values, _: Choices) -> Reckoning:
    return blend(values.parts(), mass_kg=values.mass_of_scraps_kg(), goal=values.share("goal"))


def _carbon(values: Values, _: Choices) -> Reckoning:
    goal = values.text("goal")
    return blend(
        values.parts(),
        mass_kg=values.mass_of_scraps_kg(),
        purpose="carbon",
        goal=None if goal is None else quantity.plain_number(re.sub(r"\s*(:|to)\s*1$", "", goal)),
    )


def _bins(values: Values, _: Choices) -> Reckoning:
    materials, holds = values.materials(), values.mass_of_scraps_kg()
    fill_days, people = values.days("fill_days"), values.number("people")
    rate = values.weekly_kg("rate", density.loose_kg_l(materials))
    usual: tuple[Figure, ...] = ()
    if holds is not None and fill_days is None and people is None and rate is None:
        people, usual = HOUSEHOLD.value, (HOUSEHOLD,)
    found = bins(
        fill_days=fill_days,
        people=people,
        rate_kg_week=rate,
        capacity_l=values.volume_l("capacity"),
        ferment_days=values.days("ferment_days"),
        materials=materials,
        holds_kg=holds,
    )
    return found.led_by((), usual)


def _liquid(values: Values, _: Choices) -> Reckoning:
    materials, mass = values.materials(), values.mass_of_scraps_kg()
    volume = values.volume_l("volume")
    if mass is None and volume is not None:
        mass = density.mass_kg(volume, materials)
    return liquid(_asked(mass, "mass=10kg"), materials, drained_l=values.volume_l("drained"))


def _outlook(values: Values, choices: Choices) -> Reckoning:
    materials = values.materials()
    layers = values.layers("layers", density.loose_kg_l(materials))
    last = max((on for on, _ in layers), default=None)
    capacity, people = values.volume_l("capacity"), values.number("people")
    if values.text("starter") is None:
        capacity = _asked(capacity, "capacity=20L")
    today = _asked(values.day("today") or last, "today=2026-03-20")
    filling = lasts = None
    if capacity is not None:
        filling = full_forecast(layers, capacity, today, people=people, materials=materials)
    if values.text("starter") is not None:
        mass, volume = values.mass_or_volume("starter")
        lasts = supply(
            density.bran_g((volume or 0) * 1000) / 1000 if mass is None else mass,
            forecast_rate(layers, today, people=people),
            today,
            habit=values.choice("habit", HABITS, choices.habit),
            materials=materials,
        )
    return prospect(filling, lasts)


def _trouble(values: Values, _: Choices) -> Reckoning:
    return trouble(
        signs_named(values.text("signs") or ""),
        celsius=values.celsius("celsius"),
        ph=values.number("ph"),
        treated=values.yes("treated"),
    )


def _allowed(values: Values, _: Choices) -> Reckoning:
    return allowed(_asked(values.text("what"), "what=bones"))


def _asked(value: _Value | None, example: str) -> _Value:
    if value is None:
        raise Refused(f"Something is missing: say {example}.")
    return value


TOPICS: Mapping[str, Topic] = {
    "dose": Topic(
        (
            *("mass", "volume", "rich", "wetness", "trouble", "habit", "tablespoon"),
            *("depth", "width", "empty", "capacity"),
        ),
        _dose,
        kinds=True,
    ),
    "first-bed": Topic(("capacity", "tablespoon"), _first_bed),
    "dilution": Topic(
        ("liquid", "water", "total", "parts", "use", "tablespoon"),
        _dilution,
    ),
    "days": Topic(
        (
            *("first_layer", "drained", "sealed", "buried", "celsius", "soil"),
            *("ferment_days", "plant_days"),
        ),
        _days,
    ),
    "trench": Topic(
        (
            *("mass", "volume", "bins", "depth", "width", "cover", "animals", "tub"),
            "soil_parts",
        ),
        _trench,
        kinds=True,
    ),
    "bed": Topic(
        ("area", "mass", "had", "depth", "limit_kg_ha"),
        _bed,
        kinds=True,
    ),
    "starter": Topic(
        (
            *("bran", "recipe", "water", "goal", "moisture", "mass", "volume"),
            *("mixed", "ferment_days"),
        ),
        _starter,
    ),
    "moisture": Topic(("mass", "goal"), _moisture, kinds=True),
    "carbon": Topic(("mass", "goal"), _carbon, kinds=True),
    "bins": Topic(
        ("fill_days", "ferment_days", "people", "rate", "capacity", "mass"), _bins, kinds=True
    ),
    "liquid": Topic(("mass", "volume", "drained"), _liquid, kinds=True),
    "outlook": Topic(
        ("capacity", "layers", "today", "people", "starter", "habit"), _outlook, kinds=True
    ),
    "trouble": Topic(("signs", "celsius", "ph", "treated"), _trouble),
    "allowed": Topic(("what",), _allowed),
}
"""Every topic that can be reckoned, by name."""
