"""Who promised to see to a bin in its keeper's place and has not done so yet, by the marks of the
messages that promised it.
"""

import json
from collections.abc import Iterable, Mapping
from datetime import date, timedelta

from handlers.reading.arranged import Promise
from storage import traces
from storage.book import Book
from storage.moments import local_day
from storage.rows import Bin
from storage.traces import LAST, Trace

PROMISES = "+"
"""The mark of a message by which somebody takes a favour on."""
STANDS = timedelta(days=3)
"""So long what was promised may yet be done."""
MOST_SINCE = 200
"""Messages that are looked back on for a promise."""


def promise_in(one: Trace) -> Promise | None:
    """What was promised by a message, by its mark."""
    mark = one.mark or ""
    promises = mark.startswith(f"{PROMISES}{{")
    return Promise(**json.loads(mark.removeprefix(PROMISES))) if promises else None


async def helpers_of(book: Book, bins: Iterable[Bin], today: date) -> Mapping[tuple[Bin, str], str]:
    """Who promised which deed on which of the bins, as far as it was not done since."""
    by_name = {bin.name.casefold(): bin for bin in bins}
    helpers: dict[tuple[Bin, str], str] = {}
    if not by_name:
        return helpers
    for one in await traces.said_lately(book.db, book.room.address, LAST, MOST_SINCE):
        promise = promise_in(one)
        if promise is None or promise.deed is None:
            continue  # who does whatever is to be done stands in for its keeper
        if local_day(one.at, book.room.zone) < today - STANDS:
            break
        bin = by_name.get((promise.bin or "").casefold())
        if bin is None or await book.is_withdrawn(one.event):
            continue
        by = promise.by or await book.name_of(one.sender or "")
        done = {e.act for e in await book.history(bin) if e.written_at > one.at}
        if by and promise.deed not in done:
            helpers.setdefault((bin, promise.deed), by)
    return helpers
