"""A yes to the bot's question that says again in which bin; the right bin behind a no."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


async def layers_after(db: Database, *lines: tuple[str, str]) -> list[tuple[str, str | None]]:
    """Who has put something in which bin when the lines are said."""
    room = TalkingRoom(db)
    for words in ("opened the east bin, 20 L", "opened the west bin, 20 L"):
        await room.says(words, who="olga")
    await room.says("morning", who="rut")
    await room.says("put 1.5 kg of peel in the east bin", who="ines")
    for who, words in lines:
        await room.says(words, who=who)
    layers = [entry for entry in await room.standing() if entry.act == "layer"]
    made = sorted(layers, key=lambda entry: entry.id)
    return [(entry.member or "", entry.bin.name if entry.bin else None) for entry in made]


INES = ("ines", "east")
ASKED = ("rut", "same here")


@pytest.mark.parametrize(
    ("words", "stands"),
    [
        ("yep east", [INES, ("rut", "east")]),
        ("yeah, in the east one", [INES, ("rut", "east")]),
        ("east please", [INES, ("rut", "east")]),
        ("no, west", [INES, ("rut", "west")]),
        ("yes but in the west bin", [INES, ("rut", "west")]),
        ("no, not east", [INES]),
        ("east?", [INES]),
        ("the wind is from the east", [INES]),
    ],
)
async def test_the_bin_is_said_with_the_yes(
    db: Database, words: str, stands: list[tuple[str, str]]
) -> None:
    assert await layers_after(db, ASKED, ("rut", words)) == stands


async def test_a_neighbour_has_asked_the_same_meanwhile(db: Database) -> None:
    talk = (ASKED, ("olga", "rut do you mean the east one?"), ("rut", "aye east"))
    assert await layers_after(db, *talk) == [INES, ("rut", "east")]


@pytest.mark.parametrize("asked", ["rut, fancy a pint later?", "rut, coming to the match?"])
async def test_a_yes_to_a_neighbour_is_none_to_the_bot(db: Database, asked: str) -> None:
    assert await layers_after(db, ASKED, ("olga", asked), ("rut", "aye")) == [INES]


BARE = ("rut", "west 850")


@pytest.mark.parametrize(
    ("words", "kilos"),
    [
        ("grams obviously", [0.85]),
        ("yes g", [0.85]),
        ("that's in grams", [0.85]),
        ("yes pounds", []),
        ("ml", []),
        ("grams of what?", []),
    ],
)
async def test_the_unit_of_a_bare_figure_settles_it(
    db: Database, words: str, kilos: list[float]
) -> None:
    room = TalkingRoom(db)
    for opened in ("opened the east bin, 20 L", "opened the west bin, 20 L"):
        await room.says(opened, who="olga")
    await room.says(BARE[1], who="rut")
    await room.says(words, who="rut")
    assert await room.kilos() == kilos


@pytest.mark.parametrize(
    ("words", "kilos"),
    [
        ("west again, 850", [1.5, 0.85]),
        ("another 850 in the west", [1.5, 0.85]),
        ("850 more into west", [1.5, 0.85]),
        ("850 miles further west", [1.5]),
        ("west end again at 850", [1.5]),
    ],
)
async def test_a_further_bare_figure_behind_weighed_layers(
    db: Database, words: str, kilos: list[float]
) -> None:
    room = TalkingRoom(db)
    for opened in ("opened the east bin, 20 L", "opened the west bin, 20 L"):
        await room.says(opened, who="olga")
    await room.says("put 1.5 kg of peel in the east bin", who="ines")
    await room.says(words, who="rut")
    assert await room.kilos() == kilos
