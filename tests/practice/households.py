"""Simulated households that feed a bin until it is full, to hold the forecast against.

They are simulated and measure nothing real. `varied` ones differ more than the forecast's own
assumptions do in rate (lognormal, sd 0.4), in rhythm (scraps on 35 to 100 % of days, weekends up to
twice a weekday), in the size of portions (gamma), in bins and in how densely they pack. `regular`
ones come from another mould: scraps every so many days with a slip now and then, portions that are
lognormal, a rate that drifts over the weeks.
"""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date, timedelta
from math import ceil, exp
from random import Random

from handlers.practice.density import capacity_kg
from handlers.practice.outlook import HORIZON, Outlook, full_forecast

START = date(2026, 1, 1)
NEVER = date(2030, 1, 1)
A_WEEK_KG = 1.5
"""Food waste of one person: UNEP Food Waste Index 2024, 79 kg a year."""


@dataclass(frozen=True)
class Household:
    layers: list[tuple[date, float]]
    people: float
    capacity_l: float
    full: date
    """The day on which the bin is full; NEVER if it is not in the time that is simulated."""


Mould = Callable[[int], Household]
"""A household from the seed of its randomness."""


def varied(seed: int) -> Household:
    chance = Random(seed)
    people = chance.choice([1, 2, 2, 3, 4, 5])
    rate = people * A_WEEK_KG / 7 * exp(chance.gauss(0, 0.4))
    often, shape, weekend = chance.uniform(0.35, 1), chance.uniform(1, 4), chance.uniform(1, 2)
    capacity = chance.choice([10, 12, 15, 19, 20, 23])
    pressed = chance.triangular(0.60, 0.90, 0.72) / (1 - chance.triangular(0, 0.3, 0.1))
    layers: list[tuple[date, float]] = []
    total = 0.0
    for number in range(500):
        day = START + timedelta(days=number)
        if chance.random() < often:
            more = weekend if day.weekday() >= 5 else (7 - 2 * weekend) / 5
            kg = chance.gammavariate(shape, rate / often / shape) * more
            layers.append((day, kg))
            total += kg
        if total >= capacity * min(pressed, 1.05):
            return Household(layers, people, capacity, day)
    return Household(layers, people, capacity, NEVER)


def regular(seed: int) -> Household:
    chance = Random(seed)
    people = chance.choice([1, 1, 2, 2, 2, 3, 4, 4, 6])
    rate = people * A_WEEK_KG / 7 * chance.uniform(0.4, 1.7)
    every, slips = chance.choice([1, 1, 2, 2, 3]), chance.uniform(0, 0.3)
    spread, drift = chance.uniform(0.2, 0.7), chance.gauss(0, 0.01)
    capacity = chance.choice([8, 10, 15, 18, 20, 25, 30])
    holds = capacity_kg(capacity) * exp(chance.gauss(0, 0.07))
    layers: list[tuple[date, float]] = []
    total, number = 0.0, chance.randrange(7)
    while number < 700:
        day = START + timedelta(days=number)
        kg = rate * (every + slips) * exp(chance.gauss(-(spread**2) / 2, spread) + drift * number)
        layers.append((day, kg))
        total += kg
        if total >= holds:
            return Household(layers, people, capacity, day)
        number += every + (chance.random() < slips)
    return Household(layers, people, capacity, NEVER)


def forecast(home: Household, today: date, *, people_known: bool) -> Outlook:
    """What is forecast on a day from the layers up to then."""
    known = [layer for layer in home.layers if layer[0] <= today]
    people = home.people if people_known else None
    return full_forecast(known, home.capacity_l, today, people=people)


def plain(home: Household, today: date) -> date:
    """The plain average-rate forecast: what is left at kg so far over days so far."""
    known = [kg for day, kg in home.layers if day <= today]
    rate = sum(known) / ((today - home.layers[0][0]).days + 1)
    left = capacity_kg(home.capacity_l) - sum(known)
    return today + timedelta(days=max(0, ceil(left / rate)))


@dataclass
class Held:
    """Forecasts held against the true day: how often in the range, and by how much off."""

    held: int
    early: int
    """Times that the bin was full before the range."""
    ours: list[int]
    """Days that the forecast was off, without sign."""
    theirs: list[int]
    """The same of the plain average-rate forecast."""
    too_early: list[int]
    """Days from the day that was forecast to the true one."""

    @property
    def share(self) -> float:
        return self.held / len(self.ours)


def hold(mould: Mould, seeds: range, *, layers: int = 5, people_known: bool = False) -> Held:
    """The forecasts after so many layers, of households whose bin was not full by then."""
    result = Held(0, 0, [], [], [])
    for seed in seeds:
        home = mould(seed)
        if len(home.layers) <= layers or home.full == NEVER:
            continue
        today = home.layers[layers - 1][0]
        found = forecast(home, today, people_known=people_known)
        result.held += (found.earliest or NEVER) <= home.full <= (found.latest or NEVER)
        result.early += home.full < (found.earliest or NEVER)
        day = found.full_on or today + timedelta(days=HORIZON)
        result.ours.append(abs((day - home.full).days))
        result.theirs.append(abs((plain(home, today) - home.full).days))
        result.too_early.append((home.full - day).days)
    return result
