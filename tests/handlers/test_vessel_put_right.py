"""The vessel of a layer is put right, what was given of it, and a correction goes on."""

from datetime import date

import pytest

from storage.database import Database
from tests.room import TalkingRoom

SUNDAY, MONDAY = date(2026, 3, 1), date(2026, 3, 2)


async def talked(db: Database, *said: str) -> list[tuple[str | None, float | None, date | None]]:
    """Bin, amount and day of each layer, once all that was said."""
    room = TalkingRoom(db)
    await room.says("opened the green bin, 30 L")
    await room.says("opened the hut bin, 30 L")
    await room.says("hello", who="bram")
    for body in said:
        await room.says(body)
    told = [e for e in await room.standing() if e.act == "layer"]
    return [
        (e.bin.name if e.bin else None, e.facts.mass_kg or e.facts.volume_l, e.on) for e in told
    ]


@pytest.mark.parametrize(
    ("told", "said", "much"),
    [
        ("a bucket of leeks in green", "the bucket was only half full actually", 5),
        ("a bucket of leeks in green", "it was just a quarter full", 2.5),
        ("two buckets of leeks in green", "that's the small bucket, 7 litres", 14),
        ("a bucket of leeks in green", "our bucket holds 8 litres", 8),
        ("a bucket of leeks in green", "it's an 8 litre bucket", 8),
        ("4 kg of leeks in green", "the bucket was only half full", 4),
        ("a bucket of leeks in green", "the hut bin was only half full", 10),
        ("Bram gave me 4 kg of leeks, they're in green", "actually he only gave me 3", 3),
        ("Bram gave me 4 kg of leeks, they're in green", "Bram gave me just 3 kg", 3),
        ("4 kg of leeks in green", "he gave me 3 kg", 4),
    ],
)
async def test_the_amount_follows(db: Database, told: str, said: str, much: float) -> None:
    assert await talked(db, told, said) == [("green", much, MONDAY)]


@pytest.mark.parametrize(
    ("said", "right"),
    [
        (["sorry, that was in the hut", "and it was 3"], ("hut", 3, MONDAY)),
        (["sorry, that was in the hut", "and only 1.5 kg"], ("hut", 1.5, MONDAY)),
        (["sorry, that was in the hut", "and yesterday"], ("hut", 2, SUNDAY)),
        (["and yesterday"], ("green", 2, MONDAY)),
        (["correcting: 1.5 kg"], ("green", 1.5, MONDAY)),
    ],
)
async def test_a_correction_goes_on(
    db: Database, said: list[str], right: tuple[str, float, date]
) -> None:
    assert await talked(db, "2 kg of leeks in green", *said) == [right]


async def test_a_number_alone_is_the_amount_in_a_numbered_bin(db: Database) -> None:
    said = ("opened bin 3, 20 L", "bin 3: 2 kg of leeks", "no, 3")
    assert await talked(db, *said) == [("bin 3", 3, MONDAY)]
