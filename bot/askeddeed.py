"""What a neighbour was asked to have done: kept as the mark of the message that asked it."""

import json
from datetime import timedelta

from bot.heard import Said
from handlers.reading.actjson import as_json, from_json
from handlers.reading.acts import Drain, Layer
from storage import traces
from storage.book import Book
from storage.inbox import Item

ASKS_DEED = "!"
"""How the mark of such a message begins, before the deed."""


def kept(deed: Drain | Layer) -> str:
    """The mark of a message that asked whether it was done: what and where, never its words."""
    return ASKS_DEED + json.dumps(as_json(deed))


async def asked_before(
    said: Said, book: Book, item: Item, within: timedelta
) -> Drain | Layer | None:
    """What another has asked in the message just before, or in the one replied to."""
    if said.replies_to:
        before = await traces.trace(book.db, book.room.address, said.replies_to)
    else:
        lately = await traces.said_lately(book.db, book.room.address, item.id, 1)
        before = lately[0] if lately else None
    if before is None or before.sender == said.sender or said.at - before.at > within:
        return None
    mark = before.mark or ""
    deed = from_json(json.loads(mark[len(ASKS_DEED) :])) if mark.startswith(ASKS_DEED) else None
    return deed if isinstance(deed, Drain | Layer) else None
