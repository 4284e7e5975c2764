"""What the bot says when it comes into a room, once, and when it comes back."""

from datetime import datetime

from handlers.asked.help import GREETING, back_again
from storage import outbox
from storage.book import Book
from storage.database import Database
from storage.moments import to_ms
from storage.rows import Message, Room


async def greet(db: Database, room: Room, at: datetime) -> None:
    """Put the greeting into the outbox, inside a transaction; a room is greeted only once."""
    message = Message(tx_id=f"greet-{room.id}", kind="greeting", body=GREETING)
    await outbox.put(db, room.id, message, at)


async def greet_again(db: Database, room: Room, at: datetime) -> None:
    """The bot was taken out of a room and asked back: what of its book still stands, if anything;
    inside a transaction.
    """
    names = [bin.name for bin in await Book(db, room).bins()]
    if names:
        body = back_again(names)
        message = Message(tx_id=f"back-{room.id}-{to_ms(at)}", kind="greeting", body=body)
        await outbox.put(db, room.id, message, at)
