"""The question of the craft that stands last in the talk, so that a few words may change it; and
whether the talk is of starter or of liquid.
"""

import json
from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta

from bot.heard import Edited, Said
from handlers.reading.actjson import as_json, from_json
from handlers.reading.acts import Act, Ask
from handlers.reading.arranged import Plan
from handlers.reading.context import Subject
from handlers.reading.room.bytopic import CUES, LONGEST
from storage import outbox, traces
from storage.book import Book
from storage.inbox import Item

ASKED_US = "["
"""How the mark of a message begins that asked us of the craft: its questions are kept as JSON."""
_NOT_ASKED_ANEW = ("why", "help", "me")


def kept(acts: Sequence[Act | Plan]) -> str | None:
    """The mark of a message that asked of the craft: its questions, never its words."""
    asked = [act for act in acts if isinstance(act, Ask) and act.topic not in _NOT_ASKED_ANEW]
    plain = [replace(act, what=None) if act.topic == "allowed" else act for act in asked]
    return json.dumps([as_json(act) for act in plain]) if plain else None


async def asked_lately(
    heard: Said | Edited, book: Book, item: Item, within: timedelta
) -> tuple[Ask, ...]:
    """What we answered last, or in the message replied to: the questions of the craft in it; of an
    edit, what the sender had asked right before the message that it changes.
    """
    latest = await outbox.latest(book.db, book.room.id)
    answer, at = latest if latest else (None, item.at)
    if isinstance(heard, Said) and heard.replies_to:
        answer, at = await outbox.said_as(book.db, book.room.id, heard.replies_to), item.at
    if answer is None or not answer.tx_id.startswith("re-") or item.at - at > within:
        return ()
    if isinstance(heard, Edited) and answer.to_event == heard.original:
        # what it leant on is behind its own answer
        trace = await traces.said_before(book.db, book.room.address, heard.original)
        trace = trace if trace and trace.sender == heard.sender else None
    else:
        asked = answer.tx_id.removeprefix("re-")
        trace = await traces.trace(book.db, book.room.address, asked)
    return asked_in(trace.mark or "") if trace else ()


def asked_in(mark: str) -> tuple[Ask, ...]:
    """The questions of the craft that a mark keeps."""
    if not mark.startswith(ASKED_US):
        return ()
    return tuple(act for act in map(from_json, json.loads(mark)) if isinstance(act, Ask))


MOST_BEFORE = 5
"""Messages looked back on for what the talk is of."""
_TOPICS: dict[str, Subject] = {
    **dict.fromkeys(("dose", "starter", "bran", "stock"), "bran"),
    "batch": "batch",
    **dict.fromkeys(("dilution", "liquid", "drain"), "liquid"),
}


def may_be_of_topic(body: str) -> bool:
    """Whether a message is so short and so worded that it may lean on what is talked of."""
    words = body.casefold().replace(",", " ").replace(".", " ").split()
    return len(body) <= LONGEST and not CUES.isdisjoint(words)


async def talked_of(
    heard: Said | Edited, book: Book, item: Item, within: timedelta
) -> Subject | None:
    """What was told or asked last of the bins is of."""
    for before in await traces.said_lately(book.db, book.room.address, item.id, MOST_BEFORE):
        if heard.at - before.at > within:
            return None
        topics = [entry.act for entry in await book.of_event(before.event)]
        if (before.mark or "").startswith(ASKED_US):
            topics += [asked.get("topic", "") for asked in json.loads(before.mark or "")]
        if topics:
            return next((_TOPICS[topic] for topic in topics if topic in _TOPICS), None)
    return None
