"""What settles a question in other words than yes or no: "put it in", "scratch that", "fish"."""

import re
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime
from zoneinfo import ZoneInfo

from handlers.reading.acts import Act, Amend, Layer
from handlers.reading.context import Context
from handlers.reading.corrections.fewwords import changed_by_few
from handlers.reading.message import read_message
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
