"""What settles a question in other words than yes or no: "put it in", "scratch that", "fish"."""

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime
from zoneinfo import ZoneInfo

from handlers.reading.acts import Act, Amend, Drain, Layer
from handlers.reading.arranged import Fullness
from handlers.reading.context import Context
from handlers.reading.corrections.fewwords import changed_by_few
from handlers.reading.deeds.fullness import share_again
from handlers.reading.measures.unitwords import Unit, unit_table
from handlers.reading.message import read_message
from handlers.reading.words.vocabulary import words_in
from storage.rows import Room

_PUT_IN = re.compile(
    r"\W*(?:(?:ok|and|so|i|i've|have|all|just)\W+)*(?:(?:put|threw|chucked|tipped|popped|added) "
    r"(?:it|that|them)(?: all)?(?: in)?|it(?:'s| is| went)(?: all)? in(?: now)?)\W*$"
)
_TAKEN_BACK = re.compile(
    r"\W*(?:(?:no|oh|sorry|oops|actually|wait)\W+)*(?:(?:scratch|forget|ignore|delete|cancel|undo|"
    r"disregard|drop) (?:that|it|this)|never ?mind)(?:\W+(?:please|sorry|again|thanks|wrong \w+))*"
    r"\W*$"
)


def in_other_words(words: str, guess: Sequence[Act]) -> list[Act] | None:
    """The layers that are in the bin by now, or nothing where it is taken back: no record before
    it is meant.
    """
    said = words.casefold()
    if _TAKEN_BACK.match(said):
        return []
    layers = all(isinstance(act, Layer) for act in guess)
    return list(guess) if layers and _PUT_IN.match(said) else None


def in_its_unit(words: str, guess: Sequence[Act], room: Room) -> list[Act] | None:
    """ "Grams, obviously": the unit in which it was asked, and nothing else; another settles
    nothing.
    """
    unit = unit_alone(words, room)
    [asked, *others] = guess
    if unit is None or others or not isinstance(asked, Layer | Drain):
        return None
    mass = asked.mass_kg if isinstance(asked, Layer) else None
    much = mass if unit.quantity == "mass" else asked.volume_l
    number = round(10 * much / unit.factor, 6) if much else 0.0
    return [asked] if number >= _LEAST and number == int(number) else None


def unit_alone(words: str, room: Room) -> Unit | None:
    """The unit that is named without a number, and no more than that it is meant."""
    said = [word for word in _WORD.findall(words.casefold()) if word not in _SURELY]
    unit = unit_table(room.units).get(said[0]) if len(said) == 1 else None
    return unit if unit and unit.quantity in ("mass", "volume") else None


_WORD = re.compile(r"[\w'’]+")
_SURELY = words_in(
    "yes yep yeah aye ok oh obvs obviously of course that's thats it's its was in i mean meant "
    "lol haha sorry clearly naturally"
)
_LEAST = 10
"""Tenths: a number below one is seldom meant in that unit."""


def fullness_anew(words: str, guess: Sequence[Act], at: datetime, room: Room) -> Fullness | None:
    """ "No, more like half", where it was asked whether the rest of what is in a bin is to be
    written down.
    """
    [asked, *others] = guess
    if others or not isinstance(asked, Layer) or not asked.rest or asked.bin is None:
        return None
    message = read_message(words, Context(at=at, zone=ZoneInfo(room.zone), units=room.units))
    share = share_again(message) if message.words else None
    return Fullness(bin=asked.bin, share=share) if share else None


def with_food(words: str, guess: Sequence[Act], at: datetime, room: Room) -> list[Act] | None:
    """ "Mostly orange peel", "and it was fish": what is asked about, of what it says."""
    [asked, *others] = guess
    if others or not isinstance(asked, Layer | Amend) or not (asked.mass_kg or asked.volume_l):
        return None
    right = changed(words, asked, at, room)
    if right is None or right.mass_kg or right.volume_l or not right.materials:
        return None
    return [replace(asked, materials=right.materials, rich=right.rich)]


def changed(words: str, asked: Layer | Amend, at: datetime, room: Room) -> Amend | None:
    """What a few words would change of a layer that is asked about, were it written down."""
    last = Layer(mass_kg=asked.mass_kg, volume_l=asked.volume_l, materials={"mixed": 1.0})
    words = words.removeprefix("and ")
    message = read_message(
        words, Context(at=at, zone=ZoneInfo(room.zone), units=room.units, last=last)
    )
    acts = changed_by_few(message) if message.words else ()
    return acts[0] if len(acts) == 1 and isinstance(acts[0], Amend) else None
