"""One door to the craft's arithmetic: a topic and named values in words, an answer with units."""

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from typing import TypeVar

from handlers.practice import course, dilution, dose, first_bed, quantity, written_day
from handlers.practice import starter as bran
from handlers.practice import trench as ground
from handlers.practice.allowed import allowed
from handlers.practice.bed import bed
from handlers.practice.bins import bins
from handlers.practice.composition import blend
from handlers.practice.figure import Reckoning, Refused, listed
from handlers.practice.kinds import KINDS
from handlers.practice.liquid import liquid
from handlers.practice.outlook import full_forecast
from handlers.practice.trouble import trouble
from handlers.practice.units import System
from handlers.practice.values import Values

_Value = TypeVar("_Value")

_SPOONS: Mapping[str, dose.Spoon] = {
    "us": "us",
    "metric": "metric",
    "au": "au",
    "australian": "au",
    "imperial": "imperial",
}
_HABITS: Mapping[str, dose.Habit] = {"spoon": "spoon", "weight": "weight"}
_WETNESS = {"dry": 0.0, "ordinary": 0.5, "wet": 1.0}
_AMOUNT = ("mass", "volume")


@dataclass(frozen=True, slots=True)
class Reckoned:
    """An answer: figures by name with their unit in it, plain lines, and the working."""

    topic: str
    answer: Mapping[str, object]
    lines: tuple[str, ...]
    why: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Topic:
    """What can be reckoned: the names of its values, and how."""

    names: tuple[str, ...]
    reckon: Callable[[Values], Reckoning]


def reckon(topic: str, values: Mapping[str, str], *, units: System = "metric") -> Reckoned:
    """The answer to a topic's question; Refused, in one sentence, if it cannot be had."""
    known = TOPICS.get(topic)
    if known is None:
        raise Refused(f"I cannot reckon “{topic[:40]}”: ask for {listed(TOPICS, 'or')}.")
    for name in values:
        if name not in known.names:
            raise Refused(f"{topic} does not take “{name[:40]}”: it takes {listed(known.names)}.")
    found = known.reckon(Values(values, units))
    return Reckoned(topic, found.results(), found.lines, found.why())


def _spoon(values: Values) -> dose.Spoon:
    return values.choice("tablespoon", _SPOONS, "us" if values.units == "us" else "metric")


def _wetness(values: Values) -> float:
    said = (values.text("wetness") or "ordinary").lower()
    return _WETNESS[said] if said in _WETNESS else values.share("wetness") or 0.0


def _dose(values: Values) -> Reckoning:
    return dose.dose(
        mass_kg=values.mass_kg("mass"),
        volume_l=values.volume_l("volume"),
        materials=values.materials(),
        rich=values.share("rich"),
        wetness=_wetness(values),
        trouble=values.yes("trouble"),
        habit=values.choice("habit", _HABITS, "spoon"),
        tablespoon=_spoon(values),
    )


def _first_bed(values: Values) -> Reckoning:
    return first_bed.first_bed(capacity_l=values.volume_l("capacity"), tablespoon=_spoon(values))


def _parts(values: Values) -> float | None:
    said = (values.text("parts") or "").replace(" ", "")
    if said.startswith("1in"):
        return dilution.parts_in(Values({"parts": said[3:]}, values.units).number("parts") or 0.0)
    if said.startswith(("1:", "1/")):
        return Values({"parts": said[2:]}, values.units).number("parts")
    return values.number("parts")


def _dilution(values: Values) -> Reckoning:
    liquid, use = values.volume_l("liquid"), values.text("use")
    return dilution.dilute(
        liquid_ml=None if liquid is None else liquid * 1000,
        water_l=values.volume_l("water"),
        total_l=values.volume_l("total"),
        parts=_parts(values),
        use=None if use is None else dilution.use_named(use),
    )


def _days(values: Values) -> Reckoning:
    return course.course(
        first_layer=values.day("first_layer"),
        drained=values.day("drained"),
        sealed=values.day("sealed"),
        buried=values.day("buried"),
        celsius=values.celsius("celsius"),
        soil_celsius=values.celsius("soil"),
    )


def _trench(values: Values) -> Reckoning:
    volume_l = ground.ferment_l(
        volume_l=values.volume_l("volume"),
        mass_kg=values.mass_kg("mass"),
        bins=values.number("bins") or 1,
        materials=values.materials(),
    )
    if values.yes("tub"):
        return ground.tub(volume_l)
    return ground.trench(
        volume_l,
        depth_m=values.length_m("depth"),
        width_m=values.length_m("width"),
        cover_m=values.length_m("cover"),
        animals=values.yes("animals"),
    )


def _bed(values: Values) -> Reckoning:
    return bed(
        _asked(values.area_m2("area"), "area=4x8ft"),
        mass_kg=values.mass_kg("mass"),
        had_kg=values.mass_kg("had") or 0.0,
        materials=values.materials(),
    )


def _starter(values: Values) -> Reckoning:
    goal, found = values.share("goal"), values.share("moisture")
    if found is not None:
        return bran.mend(_asked(values.mass_kg("mass"), "mass=5kg"), found, goal=goal)
    return bran.batch(
        mass_kg=values.mass_kg("mass"),
        volume_l=values.volume_l("volume"),
        recipe=values.choice("recipe", {name: name for name in bran.RECIPES}, "moisture"),
        goal=goal,
    )


def _moisture(values: Values) -> Reckoning:
    return blend(values.materials(), mass_kg=values.mass_kg("mass"), goal=values.share("goal"))


def _bins(values: Values) -> Reckoning:
    return bins(
        fill_days=values.days("fill"),
        people=values.number("people"),
        rate_kg_week=values.mass_kg("rate"),
        capacity_l=values.volume_l("capacity"),
        ferment_days=values.days("ferment"),
        materials=values.materials(),
    )


def _liquid(values: Values) -> Reckoning:
    return liquid(_asked(values.mass_kg("mass"), "mass=10kg"), values.materials())


def _outlook(values: Values) -> Reckoning:
    return full_forecast(
        _layers(values.text("layers") or "", values.units),
        _asked(values.volume_l("capacity"), "capacity=20L"),
        _asked(values.day("today"), "today=2026-03-20"),
        people=values.number("people"),
        materials=values.materials(),
    )


def _layers(text: str, units: System) -> list[tuple[date, float]]:
    """Layers as "2026-03-01:2kg,2026-03-03:1.5kg"; a comma before a date parts them."""
    layers = []
    for part in filter(None, re.split(r"[,;\s]+(?=\d{4}-)", text)):
        day, _, mass = part.partition(":")
        layers.append((written_day.day(day), quantity.kilograms(mass, units)))
    return layers


def _trouble(values: Values) -> Reckoning:
    return trouble(
        re.findall(r"\w+", values.text("signs") or ""),
        celsius=values.celsius("celsius"),
        ph=values.number("ph"),
        treated=values.yes("treated"),
    )


def _allowed(values: Values) -> Reckoning:
    return allowed(_asked(values.text("what"), "what=bones"))


def _asked(value: _Value | None, example: str) -> _Value:
    if value is None:
        raise Refused(f"Something is missing: say {example}.")
    return value


TOPICS: Mapping[str, Topic] = {
    "dose": Topic((*_AMOUNT, *KINDS, "rich", "wetness", "trouble", "habit", "tablespoon"), _dose),
    "first-bed": Topic(("capacity", "tablespoon"), _first_bed),
    "dilution": Topic(("liquid", "water", "total", "parts", "use"), _dilution),
    "days": Topic(("first_layer", "drained", "sealed", "buried", "celsius", "soil"), _days),
    "trench": Topic(
        (*_AMOUNT, "bins", "depth", "width", "cover", "animals", "tub", *KINDS), _trench
    ),
    "bed": Topic(("area", "mass", "had", *KINDS), _bed),
    "starter": Topic((*_AMOUNT, "recipe", "goal", "moisture"), _starter),
    "moisture": Topic(("mass", "goal", *KINDS), _moisture),
    "carbon": Topic(("mass", "goal", *KINDS), _moisture),
    "bins": Topic(("fill", "ferment", "people", "rate", "capacity", *KINDS), _bins),
    "liquid": Topic(("mass", *KINDS), _liquid),
    "outlook": Topic(("capacity", "layers", "today", "people", *KINDS), _outlook),
    "trouble": Topic(("signs", "celsius", "ph", "treated"), _trouble),
    "allowed": Topic(("what",), _allowed),
}
"""Every topic that can be reckoned, by name."""
