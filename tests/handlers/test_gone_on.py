"""A few words go on from a record: further signs, scraps, the same of one bin more."""

import pytest

from storage.database import Database
from tests.room import TalkingRoom

Told = tuple[str, str | None, object]


async def talked(db: Database, *said: str) -> list[Told]:
    """Each record but the openings and the first: what, in which bin, how much of what."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L")
    await room.says("opened Rosie, 30 L")
    await room.says("opened the shed, 30 L")
    await room.says("hello", who="bram")
    for body in said:
        who, _, words = body.partition(": ") if body.startswith("bram: ") else ("ines", "", body)
        await room.says(words, who=who)
    out = list[Told]()
    for entry in await room.standing():
        facts, bin = entry.facts, entry.bin.name if entry.bin else None
        much = facts.mass_kg if facts.mass_kg is not None else facts.volume_l
        made = (much, *(facts.materials or ()))
        what: object = facts.signs if facts.signs else made
        out += [] if entry.act == "open" else [(entry.act, bin, what)]
    return out[1:]


RICE, WHITE = "1 kg of rice in green", "white mould on Rosie"


@pytest.mark.parametrize(
    ("said", "further"),
    [
        ([WHITE, "black too"], [("observe", "Rosie", ("black_mould",))]),
        ([WHITE, "and there are flies too"], [("observe", "Rosie", ("insects",))]),
        ([WHITE, "no flies though"], []),
        ([WHITE, "green too"], []),
        ([WHITE, "the shed too"], [("observe", "shed", ("white_mould",))]),
        (
            ["there is water at the bottom of Rosie", "I took it out, about 300 ml"],
            [("drain", "Rosie", (0.3,))],
        ),
        ([RICE, "plus a bit of turkey"], [("layer", "green", (None, "meat"))]),
        ([RICE, "leek tops also"], [("layer", "green", (None, "vegetable"))]),
        ([RICE, "and 2 of leeks"], [("layer", "green", (2, "vegetable"))]),
        ([RICE, "and turkey?"], []),
        ([RICE, "and turkey"], []),
        ([RICE, "same in Rosie"], [("layer", "Rosie", (1, "grain"))]),
        (["bram: 1 kg of rice in green", "same in Rosie"], []),
        (["drained green 200 ml", "same for Rosie"], [("drain", "Rosie", (0.2,))]),
        ([WHITE, "same in green"], [("observe", "green", ("white_mould",))]),
        ([RICE, "🪰🪰 in Rosie 😱"], [("observe", "Rosie", ("insects",))]),
        ([RICE, "4 pears in Rosie"], [("layer", "Rosie", (None, "fruit"))]),
        ([RICE, "4 pears in Rosie?"], []),
        ([RICE, "4 pears in the shed"], []),
        ([RICE, "4 pears in the shed", "500 g"], [("layer", "shed", (0.5, "fruit"))]),
        ([RICE, "filled Rosie to the brim"], [("layer", "Rosie", (None, "mixed"))]),
        (["we have 2 kg of bran", "the bran is used up"], [("stock", None, (0,))]),
        (["we have 2 kg of bran", "we're right out of bran"], [("stock", None, (0,))]),
    ],
)
async def test_what_is_told_besides(db: Database, said: list[str], further: list[Told]) -> None:
    assert await talked(db, *said) == further
