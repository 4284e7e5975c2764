"""What the room is told of what members set."""

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

from storage.rows import Message
from tests.room import TalkingRoom


def words(said: list[Message]) -> list[str]:
    return [message.body for message in said]


async def lives_until(room: TalkingRoom, day: int, hour: int, minute: int = 0) -> list[str]:
    """What is said unasked until a moment of March 2026, with its local time."""
    moment = datetime(2026, 3, day, hour, minute, tzinfo=ZoneInfo("Europe/Lisbon"))
    room.now = max(room.now, moment.astimezone(UTC))
    zone = ZoneInfo("Europe/Lisbon")
    return [
        f"{spoken.at.astimezone(zone):%d %H:%M} {spoken.message.body}"
        async for spoken in room.playback.run_until(room.now)
    ]
