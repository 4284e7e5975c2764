"""Answers in a few words to what the bot asked: which bin, how it was shared out, how much."""

from collections.abc import Sequence

import pytest

from storage.database import Database
from tests.room import TalkingRoom

OPENED = (
    "opened the green bin, 20 L, shared",
    "opened bin 2, 20 L",
    "opened a bin called Hettie, 15 L",
    "opened the kitchen bin, 12 L",
)

Line = tuple[str, str]
Layers = list[tuple[str | None, float | None]]


async def layers_after(db: Database, *lines: Line) -> Layers:
    """Bin and kg or litres of each layer that stands when the lines are said, in order."""
    room = TalkingRoom(db)
    for words in OPENED:
        await room.says(words, who="olga")
    for who, words in lines:
        await room.says(words, who=who)
    told = [entry for entry in await room.standing() if entry.act == "layer"]
    return sorted(
        [
            (e.bin.name if e.bin else None, round(e.facts.mass_kg or e.facts.volume_l or 0, 2))
            for e in told
        ],
        key=str,
    )


@pytest.mark.parametrize(
    ("answer", "layers"),
    [
        ("the green one please", [("green", 3.0)]),
        ("they went in Hettie", [("Hettie", 3.0)]),
        ("bot, bin 2", [("bin 2", 3.0)]),
        ("half in Hettie half in green", [("Hettie", 1.5), ("green", 1.5)]),
        ("1 kg in green, the rest in bin 2", [("bin 2", 2.0), ("green", 1.0)]),
        ("we painted the kitchen", [(None, 3.0)]),
    ],
)
async def test_which_bin_it_was(db: Database, answer: str, layers: Layers) -> None:
    assert await layers_after(db, ("ines", "put 3 kg of scraps in"), ("ines", answer)) == layers


@pytest.mark.parametrize(
    ("answer", "layers"),
    [
        ("both in bin 2", [("bin 2", 1.0), ("bin 2", 3.0)]),
        ("scraps Hettie, bread green", [("Hettie", 3.0), ("green", 1.0)]),
    ],
)
async def test_two_questions_are_answered_at_once(
    db: Database, answer: str, layers: Layers
) -> None:
    asked = (("ines", "put 3 kg of scraps in"), ("ines", "and 1 kg of bread"))
    assert await layers_after(db, *asked, ("ines", answer)) == layers


async def test_the_bin_that_another_fed(db: Database) -> None:
    talk = (("rut", "2 kg in Hettie"), ("ines", "put 3 kg of scraps in"), ("ines", "same as Rut"))
    assert await layers_after(db, *talk) == [("Hettie", 2.0), ("Hettie", 3.0)]


@pytest.mark.parametrize(
    ("answer", "layers"),
    [
        ("half each", [("bin 2", 2.0), ("green", 2.0)]),
        ("each", [("bin 2", 4.0), ("green", 4.0)]),
        ("no, 3 in green and 1 in bin 2", [("bin 2", 1.0), ("green", 3.0)]),
        ("1 kg in green, rest in bin 2", [("bin 2", 3.0), ("green", 1.0)]),
        ("no", []),
        ("5 in green and 9 in bin 2?", []),
    ],
)
async def test_how_one_lot_was_shared_out(db: Database, answer: str, layers: Layers) -> None:
    assert await layers_after(db, ("ines", "4 kg into green and bin 2"), ("ines", answer)) == layers


@pytest.mark.parametrize(
    ("lines", "layers"),
    [
        ((("ines", "threw the salad in green"), ("ines", "a bowl")), [("green", 0.75)]),
        ((("ines", "threw the salad in green"), ("rut", "nice"), ("ines", "2 kg"),
          ("ines", "yes")), [("green", 2.0)]),
        ((("ines", "threw the salad in green"), ("rut", "how heavy is the cat"),
          ("ines", "about 4 kg"), ("ines", "no")), [("green", 0.0)]),
        ((("ines", "threw the salad in green"), ("ines", "and 1 kg of bread in bin 2")),
         [("bin 2", 1.0), ("green", 0.0)]),
        ((("ines", "for pounds of peelings into Hettie"), ("ines", "four pounds")),
         [("Hettie", 1.81)]),
    ],
)  # fmt: skip
async def test_how_much_it_was(db: Database, lines: tuple[Line, ...], layers: Layers) -> None:
    assert await layers_after(db, *lines) == layers


@pytest.mark.parametrize(
    ("new", "layers"),
    [
        (("bin 2",), [("bin 2", 1.0)]),
        (("bin 2", "the green one", "in Hettie"), [("Hettie", 1.0)]),
        (("what a day",), [(None, 1.0)]),
        (("what a day", "Hettie"), [("Hettie", 1.0)]),
    ],
)
async def test_an_answer_that_is_edited_answers_anew(
    db: Database, new: Sequence[str], layers: Layers
) -> None:
    room = TalkingRoom(db)
    for words in OPENED:
        await room.says(words, who="olga")
    await room.says("put 1 kg of fish in")
    [first] = await room.says("green", event="$answer")
    assert not first.body.startswith("Corrected")
    for words in new:
        await room.edits("$answer", words)
    told = [entry for entry in await room.standing() if entry.act == "layer"]
    assert [(e.bin.name if e.bin else None, e.facts.mass_kg) for e in told] == layers


async def test_an_answer_that_is_deleted_leaves_its_question_open(db: Database) -> None:
    room = TalkingRoom(db)
    for words in OPENED:
        await room.says(words, who="olga")
    await room.says("put 1 kg of fish in")
    await room.says("green", event="$answer")
    [gone] = await room.deletes("$answer")
    assert gone.body == "Struck out: 1 kg in the green bin. In the book again: 1 kg."
    await room.says("Hettie")
    told = [entry for entry in await room.standing() if entry.act == "layer"]
    assert [e.bin.name for e in told if e.bin] == ["Hettie"]


@pytest.mark.parametrize(
    ("answers", "stands"), [(("yes", "no"), 3.0), (("no", "yes"), 2.0), (("yes", "yes ta"), 2.0)]
)
async def test_a_yes_or_no_is_edited(db: Database, answers: tuple[str, str], stands: float) -> None:
    room = TalkingRoom(db)
    for words in OPENED:
        await room.says(words, who="olga")
    await room.says("put 3 kg of bread in green")
    await room.says("anyone seen my cat?", who="olga")
    [asked] = await room.says("sorry, 2 kg")
    assert "Shall I" in asked.body
    await room.says(answers[0], event="$answer")
    await room.edits("$answer", answers[1])
    layers = [entry for entry in await room.standing() if entry.act == "layer"]
    assert [entry.facts.mass_kg for entry in layers] == [stands]
