"""A room is upgraded: another takes its place, and the group's book moves along.

Both rooms must say so: the old one by its tombstone, which only its moderators can set, and the new
one by the predecessor it names, which cannot be changed later. Either alone moves nothing.
"""

import logging
from datetime import datetime
from urllib.parse import quote

from nio.client.async_client import AsyncClient
from nio.responses import RoomInfo

from bot.connection import call
from bot.settings import server_of
from storage import outbox, rooms
from storage.database import Database
from storage.rows import Message

log = logging.getLogger(__name__)

MOVED = "This room takes the place of the one before. The book has come along: nothing is lost."


def replacement(info: RoomInfo) -> tuple[str, str] | None:
    """The room that replaces one, with a server to find it by; None for a room that goes on."""
    for event in reversed([*info.state, *info.timeline.events]):
        source = event.source
        if source.get("type") != "m.room.tombstone" or event.decrypted:
            continue
        if source.get("state_key") != "" or not isinstance(source.get("content"), dict):
            continue
        new, sender = source["content"].get("replacement_room"), source.get("sender")
        if isinstance(new, str) and new and isinstance(sender, str):
            return new, server_of(sender)
    return None


async def predecessor(client: AsyncClient, room: str) -> str | None:
    """The room that this one replaces, if both say so; asked of the homeserver's own state."""
    named = (await _state(client, room, "m.room.create")).get("predecessor")
    old = named.get("room_id") if isinstance(named, dict) else None
    if not isinstance(old, str):
        return None
    tombstone = await _state(client, old, "m.room.tombstone")
    return old if tombstone.get("replacement_room") == room else None


async def take_along(db: Database, old: str, new: str, now: datetime) -> bool:
    """Move the book of one room to another, and say so there; False if there was none to move."""
    async with db.transaction():
        room = await rooms.move(db, old, new)
        if room is None:
            return False
        said = Message(tx_id=f"moved-{room.id}-{new}", kind="greeting", body=MOVED)
        await outbox.put(db, room.id, said, now)
    log.info("a room was upgraded, and its book moved along")
    return True


async def _state(client: AsyncClient, room: str, kind: str) -> dict[str, object]:
    path = f"/_matrix/client/v3/rooms/{quote(room, safe='')}/state/{kind}/"
    status, content = await call(client, "GET", path)
    return content if status == 200 else {}
