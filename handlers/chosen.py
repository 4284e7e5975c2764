"""What the group chose where the craft's sources disagree, and how it says so."""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from handlers.answer import Answer, Setting
from handlers.practice.choices import OURS, WHY, Choices
from handlers.practice.figure import Reckoning, listed, number, quoted
from handlers.practice.recipes import RECIPE_NAMES
from handlers.practice.units import METRES
from handlers.practice.value_names import RECIPES
from storage.rows import Room


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """What a group may choose: its name among `Choices`, how it is told, and how it is said."""

    name: str
    words: str
    """With {} for what is chosen."""
    order: str
    """The words that change it."""
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
        words="trenches {} cm deep",
        order="set the trench depth to 30 cm",
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

_WHOLE = frozenset({"ferment_days", "plant_days"})
"""Choices that are whole numbers."""

_ORDERS = {choice.name: choice.order for choice in CHOICES.values()} | {
    "habit": "use the weight habit"
}


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
            lines.append(
                f"our choice where sources differ: {WHY[name]}; say “{_ORDERS[name]}” for another"
            )
        else:
            lines.append(f"your group's choice; usual is {_usual(name)}: {WHY[name]}")
    return lines


def own(room: Room) -> list[str]:
    """What the group chose for itself of the craft, a line for each."""
    return [
        f"{choice.words.format(value if isinstance(value, str) else number(value)).capitalize()} "
        f"(“{choice.order}”)."
        for choice in CHOICES.values()
        if (value := room.choices.get(choice.name)) is not None
    ]


def changed(what: str, value: str) -> Answer:
    """A choice is made, or what it can be is said."""
    choice = CHOICES[what]
    return _word_chosen(choice, value) if choice.name == "recipe" else _figure_chosen(choice, value)


def _word_chosen(choice: Choice, value: str) -> Answer:
    recipe = RECIPES.get("-".join(value.casefold().split()))
    if recipe is None:
        known = listed([f"{name} ({says})" for name, says in RECIPE_NAMES.items()], "or")
        return Answer(say=f"I know no recipe {quoted(value)}: there is {known}.")
    return _set(choice, recipe, RECIPE_NAMES[recipe])


def _figure_chosen(choice: Choice, value: str) -> Answer:
    figure = _figure(value)
    if figure is not None and choice.name in _WHOLE:
        figure = round(figure)
    if figure is None or not choice.low <= figure <= choice.high:
        return Answer(
            say=f"Give a number from {number(choice.low)} to {number(choice.high)}: "
            f"{choice.words.format('so many')}. Usual is {_usual(choice.name)}: "
            f"{WHY[choice.name]}."
        )
    return _set(choice, f"{figure}", number(figure))


def _set(choice: Choice, value: str, words: str) -> Answer:
    return Answer(
        settings=[Setting(what="choice", value=f"{choice.name}={value}")],
        say=f"From now on: {choice.words.format(words)}.",
    )


def kept(name: str, value: str) -> float | str:
    """A choice as the book keeps it: a figure, or a word."""
    return value if isinstance(getattr(OURS, name), str) else float(value)


def _usual(name: str) -> str:
    ours = getattr(OURS, name)
    return str(ours) if isinstance(ours, str) else number(ours)


def _figure(value: str) -> float | None:
    """The number of "1:200", "200", "12 days" or "30 cm"; inches become centimetres."""
    inches = re.search(r"\bin(?:ch(?:es)?)?$", value.strip()) is not None
    for word in reversed(re.findall(r"(?:(?<!\d)-)?[\d.]+", value)):
        try:
            return float(word) * (METRES["inch"] * 100 if inches else 1)
        except ValueError:
            continue
    return None
