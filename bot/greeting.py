"""What the bot says, once, when it comes into a room."""

from datetime import datetime

from handlers.help import GREETING
from storage import outbox
from storage.database import Database
from storage.rows import Message, Room


async def greet(db: Database, room: Room, at: datetime) -> None:
    """Put the greeting into the outbox, inside a transaction; a room is greeted only once."""
    message = Message(tx_id=f"greet-{room.id}", kind="greeting", body=GREETING)
    await outbox.put(db, room.id, message, at)
