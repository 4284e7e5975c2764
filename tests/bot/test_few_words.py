"""A few words right behind one's own record that change it."""

import pytest

from storage.database import Database
from storage.rows import Entry
from tests.room import TalkingRoom


async def standing_after(db: Database, *lines: tuple[str, str]) -> list[Entry]:
    """What stands, but for the openings, when the lines are said."""
    room = TalkingRoom(db)
    for words in ("opened the green bin, 20 L, shared", "opened bin 2, 20 L"):
        await room.says(words, who="olga")
    for who in ("rut", "ines"):
        await room.says("hello", who=who)
    for who, words in lines:
        await room.says(words, who=who)
    return [entry for entry in await room.standing() if entry.act != "open"]


@pytest.mark.parametrize(
    ("words", "kg"),
    [
        ("double that", 8.0),
        ("half that actually", 2.0),
        ("more like 5", 5.0),
        ("it was 3", 3.0),
        ("well almost, 3.5", 3.5),
        ("nearly 5 actually", 5.0),
        ("nearly 90", 4.0),
        ("make it 6", 6.0),
        ("that's pounds btw", 1.81),
        ("more like 4", 4.0),
        ("that was fun", 4.0),
        ("it was 90", 4.0),
        ("half that film was ads", 4.0),
    ],
)
async def test_how_much_it_was(db: Database, words: str, kg: float) -> None:
    [entry] = await standing_after(db, ("ines", "put 4 kg of peelings in green"), ("ines", words))
    assert round(entry.facts.mass_kg or 0, 2) == kg


@pytest.mark.parametrize(
    ("words", "materials"),
    [
        ("that was all fish", {"fish": 1.0}),
        ("mostly bread tbh", {"grain": 0.7, "mixed": 0.3}),
        ("fish for tea", {"mixed": 1.0}),
        ("that fish was great", {"mixed": 1.0}),
    ],
)
async def test_what_it_was(db: Database, words: str, materials: dict[str, float]) -> None:
    [entry] = await standing_after(db, ("ines", "put 4 kg in green"), ("ines", words))
    assert entry.facts.materials == pytest.approx(materials)


async def test_a_starred_name_is_the_right_bin(db: Database) -> None:
    [entry] = await standing_after(db, ("ines", "put 4 kg in green"), ("ines", "bin 2*"))
    assert entry.bin is not None
    assert entry.bin.name == "bin 2"


async def test_a_share_of_it_was_anothers(db: Database) -> None:
    entries = await standing_after(
        db, ("ines", "put 4 kg in green"), ("ines", "a quarter of that was rut's")
    )
    assert [(e.member, e.facts.mass_kg) for e in entries] == [("ines", 3.0), ("rut", 1.0)]


async def test_a_number_is_put_right_though_another_spoke(db: Database) -> None:
    talk = (("ines", "put 4 kg in green"), ("rut", "morning"), ("ines", "make it 5"))
    [entry] = await standing_after(db, *talk)
    assert entry.facts.mass_kg == 5.0


@pytest.mark.parametrize("words", ["same here", "same for me", "me too", "us as well", "likewise"])
async def test_as_much_of_ones_own_is_asked_about(db: Database, words: str) -> None:
    talk = (("ines", "put 4 kg in green"), ("rut", words), ("rut", "yes"))
    entries = await standing_after(db, *talk)
    assert [(e.member, e.facts.mass_kg) for e in entries] == [("ines", 4.0), ("rut", 4.0)]


async def test_another_members_record_stays(db: Database) -> None:
    talk = (("ines", "put 4 kg in green"), ("rut", "double that"))
    [entry] = await standing_after(db, *talk)
    assert entry.facts.mass_kg == 4.0


@pytest.mark.parametrize(
    ("told", "said", "much"),
    [
        ("drained green", ["and it was 2 cups"], [("drain", 0.5)]),
        ("drained green 1 L", ["and that was about 300 ml"], [("drain", 0.3)]),
        ("drained green", ["rut: nice", "and it was 2 cups"], [("drain", 0.5)]),
        ("put 2 kg in green", ["rut: nice", "and it was 3 kg"], [("layer", 3.0)]),
        ("put 2 kg in green", ["thanks", "and it was 3 kg"], [("layer", 3.0)]),
        ("put 2 kg in green", ["rut: how heavy is your dog?", "and it was 3 kg"], [("layer", 2.0)]),
        ("drained green", ["and 2 cups more"], [("drain", 0.5)]),
        ("put 2 kg in green", ["and it was a kilo more"], [("layer", 2.0), ("layer", 1.0)]),
        ("put 2 kg in green", ["and that was another 2 kg"], [("layer", 2.0), ("layer", 2.0)]),
    ],
)
async def test_and_it_was_so_much(
    db: Database, told: str, said: list[str], much: list[tuple[str, float | None]]
) -> None:
    lines = [("rut", s[5:]) if s.startswith("rut: ") else ("ines", s) for s in said]
    found = await standing_after(db, ("ines", told), *lines)
    assert [(e.act, e.facts.mass_kg or e.facts.volume_l) for e in found] == much


@pytest.mark.parametrize(
    ("words", "main"),
    [
        ("salmon skins", "fish"),
        ("old bread and pasta", "grain"),
        ("it was some leftover stew", "cooked"),
        ("chicken bones mostly", "bone"),
        ("prawns?", "mixed"),
        ("salmon for supper", "mixed"),
        ("I love salmon", "mixed"),
        ("rut do you want salmon", "mixed"),
    ],
)
async def test_what_it_was_is_told_in_the_next_words(db: Database, words: str, main: str) -> None:
    [entry] = await standing_after(db, ("ines", "put 700 g in green"), ("ines", words))
    held = entry.facts.materials or {}
    assert max(held, key=lambda kind: held[kind]) == main


@pytest.mark.parametrize(
    ("between", "main"),
    [
        (("rut", "what was it?"), "fish"),
        (("rut", "thanks"), "fish"),
        (("rut", "what are you cooking for the party tonight?"), "mixed"),
        (("rut", "put 1 kg of peel in bin 2"), "mixed"),
    ],
)
async def test_a_neighbour_may_have_asked_for_it(
    db: Database, between: tuple[str, str], main: str
) -> None:
    talk = (("ines", "put 700 g in green"), between, ("ines", "salmon skins"))
    [first, *_] = sorted(await standing_after(db, *talk), key=lambda entry: entry.id)
    assert max(first.facts.materials or {}) == main


async def test_what_had_a_kind_is_not_made_of_the_next_food_named(db: Database) -> None:
    talk = (("ines", "put 700 g of kale in green"), ("ines", "salmon skins"))
    [entry] = await standing_after(db, *talk)
    assert entry.facts.materials == {"vegetable": 1.0}
