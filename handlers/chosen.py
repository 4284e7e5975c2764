"""What the group chose where the craft's sources disagree, and how it says so."""

from collections.abc import Mapping
from typing import NamedTuple

from handlers.answer import Answer, Setting
from handlers.practice.choices import OURS, WHY, Choices
from handlers.practice.figure import number
from storage.rows import Room


class Choice(NamedTuple):
    """A figure that a group may choose: its name among `Choices`, its bounds, how it is told."""

    name: str
    low: float
    high: float
    words: str


CHOICES: Mapping[str, Choice] = {
    "dilution": Choice("bed_parts", 20, 2000, "1 part liquid to {} parts water on beds"),
    "ferment days": Choice("ferment_days", 7, 60, "{} days sealed before a bin is buried"),
    "planting days": Choice("plant_days", 7, 180, "{} days in warm soil before planting"),
    "soil": Choice("soil_parts", 1, 10, "{} parts of soil to one of ferment"),
}
"""What can be chosen, by the words for it."""


def choices(room: Room) -> Choices:
    """The group's choices: its own where it made them, else ours."""
    said = {name: type(getattr(OURS, name))(value) for name, value in room.choices.items()}
    return Choices(habit=room.habit, **said)


def changed(what: str, value: str) -> Answer:
    """A choice is made, or what it can be is said."""
    choice = CHOICES[what]
    figure = _figure(value)
    if figure is None or not choice.low <= figure <= choice.high:
        return Answer(
            say=f"Give a number from {number(choice.low)} to {number(choice.high)}: "
            f"{choice.words.format('so many')}. Usual is {number(getattr(OURS, choice.name))}: "
            f"{WHY[choice.name]}."
        )
    return Answer(
        settings=[Setting(what="choice", value=f"{choice.name}={figure}")],
        say=f"From now on: {choice.words.format(number(figure))}.",
    )


def _figure(value: str) -> float | None:
    """The number of "1:200", "200" or "12 days"."""
    for word in reversed(value.replace(":", " ").split()):
        try:
            return float(word)
        except ValueError:
            continue
    return None
