"""A room at the terminal for tests: people write, edit, delete and mark; the bot answers."""

from datetime import UTC, datetime, timedelta
from typing import Any

from bot.playback import Playback
from storage.book import Book
from storage.database import Database
from storage.rooms import find
from storage.rows import Entry, Message

BEGIN = datetime(2026, 3, 2, 18, 0, tzinfo=UTC)
OWN = "@pailkeeper:test"


class TalkingRoom:
    """Events go in as a homeserver would send them; what the bot says comes back."""

    def __init__(self, db: Database, *, zone: str = "Europe/Lisbon") -> None:
        self.db = db
        self.playback = Playback(db, zone=zone, units="metric", own=OWN)
        self.now = BEGIN
        self.count = 0

    def restarted(self, db: Database) -> "TalkingRoom":
        """The same room after the bot was stopped and started on the same file."""
        room = TalkingRoom(db)
        room.now, room.count = self.now, self.count
        return room

    async def book(self) -> Book:
        room = await find(self.db, "terminal")
        assert room
        return Book(self.db, room)

    async def standing(self) -> list[Entry]:
        if await find(self.db, "terminal") is None:
            return []
        return [entry for entry in await (await self.book()).entries() if not entry.struck]

    async def kilos(self) -> list[float | None]:
        """What each layer that stands weighs, in the order they were written down."""
        layers = [entry for entry in await self.standing() if entry.act == "layer"]
        return [entry.facts.mass_kg for entry in sorted(layers, key=lambda entry: entry.id)]

    async def keeper(self, bin: str) -> str:
        """Who has a bin, as a newcomer who asks is told."""
        [told] = await self.says(f"who has the {bin} bin?", who="zoe")
        return told.body.split(": ")[1].split(".")[0]

    async def event(
        self,
        kind: str,
        content: dict[str, Any],
        *,
        who: str = "ines",
        event: str | None = None,
        **more: str,
    ) -> list[Message]:
        self.count += 1
        self.now += timedelta(minutes=1)
        raw = {
            "type": kind,
            "event_id": event or f"$e{self.count}",
            "sender": who if who.startswith("@") else f"@{who}:test",
            "origin_server_ts": int(self.now.timestamp() * 1000),
            "content": content,
            **more,
        }
        return [spoken.message for spoken in await self.playback.take(raw, self.now)]

    async def says(
        self,
        body: str,
        *,
        who: str = "ines",
        replies_to: str | None = None,
        event: str | None = None,
        msgtype: str = "m.text",
    ) -> list[Message]:
        content: dict[str, Any] = {"msgtype": msgtype, "body": body}
        if replies_to:
            content["m.relates_to"] = {"m.in_reply_to": {"event_id": replies_to}}
        return await self.event("m.room.message", content, who=who, event=event)

    async def edits(
        self, original: str, body: str, *, who: str = "ines", event: str | None = None
    ) -> list[Message]:
        content = {
            "msgtype": "m.text",
            "body": f"* {body}",
            "m.new_content": {"msgtype": "m.text", "body": body},
            "m.relates_to": {"rel_type": "m.replace", "event_id": original},
        }
        return await self.event("m.room.message", content, who=who, event=event)

    async def deletes(self, target: str, *, who: str = "ines") -> list[Message]:
        return await self.event("m.room.redaction", {"redacts": target}, who=who)

    async def marks(
        self, target: str, key: str, *, who: str = "ines", event: str | None = None
    ) -> list[Message]:
        relation = {"rel_type": "m.annotation", "event_id": target, "key": key}
        return await self.event("m.reaction", {"m.relates_to": relation}, who=who, event=event)

    async def calls_itself(
        self, name: str | None, *, who: str, is_in: bool = True
    ) -> list[Message]:
        """A member comes under a name, changes it, or leaves."""
        content = {"membership": "join" if is_in else "leave", "displayname": name}
        return await self.event("m.room.member", content, who=who, state_key=f"@{who}:test")

    async def waits(self, **passing: float) -> list[Message]:
        self.now += timedelta(**passing)
        return [spoken.message async for spoken in self.playback.run_until(self.now)]


def words(messages: list[Message]) -> str:
    """All that messages say."""
    return "\n".join(message.body for message in messages)
