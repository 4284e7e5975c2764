"""What is edited may have leaned on what another told just before it."""

from storage.database import Database
from tests.room import TalkingRoom


async def test_an_edit_of_what_leans_on_anothers_layer_still_does(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("opened the shed bin, 20 L", who="bram")
    await room.says("opened the plum bin, 18 L, shared", who="ines")
    await room.says("1.2 kg of peel in plum", who="ines")
    await room.says("and 300 g of crusts from me", who="bram", event="$crusts")
    await room.edits("$crusts", "and 400 g of crusts from me", who="bram")
    told = [e for e in await room.standing() if e.act == "layer" and e.bin]
    assert [(e.bin.name, e.facts.mass_kg) for e in told if e.bin] == [("plum", 1.2), ("plum", 0.4)]
