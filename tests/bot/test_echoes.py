"""Scraps that are told twice in a room: once by who put them in, once by who saw or repeats it."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom


async def kilos_after(db: Database, *lines: tuple[str, str]) -> tuple[list[float], str]:
    """The weights of the layers that stand, and what the bot said last."""
    room = TalkingRoom(db)
    for words in ("opened the green bin, 20 L, shared", "opened bin 2, 20 L"):
        await room.says(words, who="olga")
    said = ""
    for who, words in lines:
        said = "".join(message.body for message in await room.says(words, who=who))
    kilos = [e.facts.mass_kg or 0 for e in await room.standing() if e.act == "layer"]
    return kilos, said


@pytest.mark.parametrize(
    ("who", "words"),
    [
        ("ines", "yep, 3 kg in green, all cabbage"),
        ("ines", "like I said 3 kg in green"),
        ("rut", "“3 kg of cabbage in green” haha"),
        ("rut", "3 kg?? in green??"),
        ("rut", "3 kg in the green, I can't believe it"),
    ],
)
async def test_what_only_says_it_again_is_passed_over(db: Database, who: str, words: str) -> None:
    talk = (("ines", "3 kg of cabbage in green"), (who, words))
    assert await kilos_after(db, *talk) == ([3.0], "")


@pytest.mark.parametrize(
    ("first", "second"),
    [
        (("ines", "3 kg of cabbage in green"), ("rut", "Ines put 3 kg in green")),
        (("rut", "Ines put 3 kg of cabbage in green"), ("ines", "I put 3 kg in green")),
    ],
)
async def test_the_same_told_by_another_is_asked_about(
    db: Database, first: tuple[str, str], second: tuple[str, str]
) -> None:
    met = (("ines", "hello"), ("rut", "hello"))
    kilos, said = await kilos_after(db, *met, first, second)
    assert (kilos, "Shall I write down another 3 kg?" in said) == ([3.0], True)


async def test_a_yes_writes_it_down_again(db: Database) -> None:
    talk = (("ines", "3 kg in green"), ("rut", "Ines put 3 kg in green"), ("rut", "yes"))
    assert (await kilos_after(db, *talk))[0] == [3.0, 3.0]


@pytest.mark.parametrize(
    ("who", "words"),
    [
        ("ines", "another 3 kg in green"),
        ("rut", "3 kg in green"),
        ("rut", "Ines put 3 kg in bin 2"),
    ],
)
async def test_what_is_new_is_written_down(db: Database, who: str, words: str) -> None:
    talk = (("ines", "3 kg of cabbage in green"), (who, words))
    assert (await kilos_after(db, *talk))[0] == [3.0, 3.0]
