"""The bin that the talk with somebody is on: what "closed it up" leans on."""

import re
from datetime import timedelta

from handlers.answer import Turn
from handlers.phrasing import the
from storage import outbox, traces
from storage.book import Book

TALK_GOES_ON = timedelta(hours=1)
"""How long "it" is what was spoken of."""


_DONE = frozenset({"layer", "drain", "seal", "observe"})
"""What is done to a bin in use: one just opened need not be the one that is drained or closed."""


async def bin_spoken_of(turn: Turn) -> str | None:
    """The one bin of the sender's last record or of our last answer to them, the later of both."""
    last = await turn.book.last_by(turn.sender)
    lately = last is not None and not last.struck and turn.at - last.written_at <= TALK_GOES_ON
    record = last if last and lately and last.act in _DONE else None
    own = record.bin.name if record and record.bin else None
    said = await outbox.latest(turn.book.db, turn.book.room.id)
    if said is None or not said[1] <= turn.at <= said[1] + TALK_GOES_ON:
        return own
    answer, at = said
    if record and record.written_at > at:
        return own
    event = answer.to_event
    if event is None or not await is_of_sender(event, turn):
        return own
    entries = await turn.book.of_event(event)
    if entries and all(entry.act not in _DONE for entry in entries):
        return own
    return await _bin_in(answer.body, turn.book) or own


async def bins_spoken_of(turn: Turn) -> frozenset[str]:
    """All bins of our last answer to the sender, or of what it was an answer to."""
    said = await outbox.latest(turn.book.db, turn.book.room.id)
    if said is None or not said[1] <= turn.at <= said[1] + TALK_GOES_ON:
        return frozenset()
    event = said[0].to_event
    if event is None or not await is_of_sender(event, turn):
        return frozenset()
    told = [entry.bin.name for entry in await turn.book.of_event(event) if entry.bin]
    return frozenset((*told, *await _bins_in(said[0].body, turn.book)))


async def is_of_sender(event: str, turn: Turn) -> bool:
    """Whether a message was the sender's."""
    trace = await traces.trace(turn.book.db, turn.book.room.address, event)
    user = trace.sender if trace else None
    return user is not None and await turn.book.name_of(user) == turn.sender


async def _bin_in(words: str, book: Book) -> str | None:
    """The one bin that is named in an answer."""
    named = await _bins_in(words, book)
    return named[0] if len(named) == 1 else None


async def _bins_in(words: str, book: Book) -> list[str]:
    """The bins that are named in an answer."""
    return [
        bin.name
        for bin in await book.bins()
        if re.search(rf"\b{re.escape(the(bin.name))}\b", words, re.IGNORECASE)
    ]
