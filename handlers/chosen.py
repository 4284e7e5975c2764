"""What the group chose where the craft's sources disagree, and how it says so."""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from handlers.answer import Answer, Setting
from handlers.practice.choices import OURS, WHY, Choices
from handlers.practice.days import FERMENT, PLANT, high_days, low_days
from handlers.practice.figure import Reckoning, listed, number, quoted
from handlers.practice.recipes import RECIPE_NAMES
from handlers.practice.units import METRES
from handlers.practice.value_names import RECIPES
from storage.rows import Room, Units


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """What a group may choose: its name among `Choices`, how it is told, and how it is said."""

    name: str
    words: str
    """With {} for what is chosen."""
    order: str
    """The words that change it."""
    order_in: str = ""
    """The same where a length is measured in inches; empty where it is none."""
    low: float = 0
    high: float = 0
    """Bounds of a figure; both 0 where it is a word."""


CHOICES: Mapping[str, Choice] = {
    "dilution": Choice(
        name="bed_parts",
        words="1 part liquid to {} parts water on beds",
        order="set the dilution to 1:200",
        low=20,
        high=2000,
    ),
    "pot dilution": Choice(
        name="pot_parts",
        words="1 part liquid to {} parts water in pots",
        order="set the pot dilution to 1:1000",
        low=100,
        high=5000,
    ),
    "ferment days": Choice(
        name="ferment_days",
        words="{} days sealed before a bin is buried",
        order="set the ferment days to 21",
        low=7,
        high=60,
    ),
    "planting days": Choice(
        name="plant_days",
        words="{} days in warm soil before planting",
        order="set the planting days to 28",
        low=7,
        high=120,
    ),
    "soil": Choice(
        name="soil_parts",
        words="{} parts of soil to one of ferment",
        order="set the soil to 3 parts",
        low=1,
        high=10,
    ),
    "trench depth": Choice(
        name="depth_cm",
        words="trenches {} deep",
        order="set the trench depth to 30 cm",
        order_in="set the trench depth to 12 in",
        low=20,
        high=100,
    ),
    "nitrogen limit": Choice(
        name="limit_kg_ha",
        words="at most {} kg of nitrogen to the hectare and year",
        order="set the nitrogen limit to 250",
        low=10,
        high=500,
    ),
    "recipe": Choice(name="recipe", words="starter by {}", order="set the recipe to ten to one"),
}
"""What can be chosen, by the words for it."""

_INCH = METRES["inch"] * 100
"""Centimetres."""

_WHOLE = frozenset({"ferment_days", "plant_days"})
"""Choices that are whole numbers."""

_BY_NAME = {choice.name: choice for choice in CHOICES.values()}


def choices(room: Room) -> Choices:
    """The group's choices: its own where it made them, else ours."""
    if not room.choices and room.habit == OURS.habit:
        return OURS
    said: dict[str, Any] = {
        name: int(value) if name in _WHOLE else value for name, value in room.choices.items()
    }
    return replace(OURS, habit=room.habit, **said)


def reasons(found: Reckoning, room: Room) -> tuple[str, ...]:
    """The working of an answer, and what in it was the group's choice or ours."""
    return (*found.why(), *choice_lines(found.chosen, room))


def choice_lines(names: Iterable[str], room: Room) -> list[str]:
    """What decided an answer that a group may settle for itself: its own choice, or ours."""
    ours = choices(room)
    lines = []
    for name in dict.fromkeys(names):
        if getattr(ours, name) == getattr(OURS, name):
            order = _order(name, room.units)
            lines.append(f"our choice where sources differ: {WHY[name]}; say “{order}” for another")
        else:
            usual = _usual(name, room.units)
            lines.append(f"your group's choice; usual is {usual}: {WHY[name]}")
    return lines


def own(room: Room) -> list[str]:
    """What the group chose for itself of the craft, a line for each."""
    return [
        f"{choice.words.format(_shown(choice.name, value, room.units)).capitalize()} "
        f"(“{_order(choice.name, room.units)}”)."
        for choice in CHOICES.values()
        if (value := room.choices.get(choice.name)) is not None
    ]


def changed(what: str, value: str, units: Units) -> Answer:
    """A choice is made, or what it can be is said."""
    choice = CHOICES[what]
    if choice.name == "recipe":
        return _word_chosen(choice, value)
    return _figure_chosen(choice, value, units)


def _word_chosen(choice: Choice, value: str) -> Answer:
    recipe = RECIPES.get("-".join(value.casefold().split()))
    if recipe is None:
        known = listed([f"{name} ({says})" for name, says in RECIPE_NAMES.items()], "or")
        return Answer(say=f"I know no recipe {quoted(value)}: there is {known}.")
    return _set(choice, recipe, RECIPE_NAMES[recipe])


def _figure_chosen(choice: Choice, value: str, units: Units) -> Answer:
    figure = _figure(value)
    if figure is not None and choice.name in _WHOLE:
        figure = round(figure)
    if figure is not None and _is_inches(choice, value, figure, units):
        figure *= _INCH
    if figure is None or not choice.low <= figure <= choice.high:
        low, high = (_measured(choice.name, bound, units) for bound in (choice.low, choice.high))
        return Answer(
            say=f"Give a number from {low} to {high}: {choice.words.format('so many')}. Usual is "
            f"{_usual(choice.name, units)}: {WHY[choice.name]}."
        )
    return _set(choice, f"{figure}", _shown(choice.name, figure, units))


def _is_inches(choice: Choice, value: str, figure: float, units: Units) -> bool:
    """ "Set the trench depth to 12": too little for centimetres, where inches are measured."""
    bare = re.search(r"[a-z]", value.casefold()) is None
    return bool(choice.order_in) and units != "metric" and bare and figure < choice.low


def _set(choice: Choice, value: str, words: str) -> Answer:
    return Answer(
        settings=[Setting(what="choice", value=f"{choice.name}={value}")],
        say=f"From now on: {choice.words.format(words)}.",
    )


def in_words(name: str, room: Room) -> str:
    """What a group takes of that name, be it its own choice or ours."""
    return _shown(name, getattr(choices(room), name), room.units)


def _shown(name: str, value: float | str, units: Units) -> str:
    """What is chosen, in the group's measures; where it is the usual days, from the least on."""
    usual = _USUAL_DAYS.get(name)
    if usual and value == high_days(usual):
        return f"{low_days(usual)} to {high_days(usual)}"
    return _measured(name, value, units)


def _measured(name: str, value: float | str, units: Units) -> str:
    if isinstance(value, str):
        return value
    if not _BY_NAME[name].order_in:
        return number(value)
    return f"{number(value)} cm" if units == "metric" else f"{round(value / _INCH)} in"


_USUAL_DAYS = {"ferment_days": FERMENT, "plant_days": PLANT}


def _order(name: str, units: Units) -> str:
    """The words that change a choice."""
    choice = _BY_NAME.get(name)
    if choice is None:
        return "use the weight habit"
    return choice.order_in if choice.order_in and units != "metric" else choice.order


def kept(name: str, value: str) -> float | str:
    """A choice as the book keeps it: a figure, or a word."""
    return value if isinstance(getattr(OURS, name), str) else float(value)


def _usual(name: str, units: Units) -> str:
    ours = getattr(OURS, name)
    return _measured(name, ours, units) if name in _BY_NAME else str(ours)


def _figure(value: str) -> float | None:
    """The number of "1:200", "200", "12 days" or "30 cm"; inches become centimetres."""
    inches = re.search(r"\bin(?:ch(?:es)?)?$", value.strip()) is not None
    for word in reversed(re.findall(r"(?:(?<!\d)-)?[\d.]+", value)):
        try:
            return float(word) * (_INCH if inches else 1)
        except ValueError:
            continue
    return None
