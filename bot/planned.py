"""What somebody has told they would put in: kept as the mark of that message, until it is in."""

import json
from collections.abc import Sequence

from bot.heard import Said
from handlers.answer import Turn
from handlers.reading.actjson import as_json, from_json
from handlers.reading.acts import Layer
from handlers.sharing.promised import STANDS
from storage import outbox, traces
from storage.book import Book
from storage.inbox import Item
from storage.traces import Trace

PLANS = ">"
"""The mark of a message that tells a plan, before its layers."""
MOST_SINCE = 40
"""Messages that are looked back on for a plan."""


def kept(layers: Sequence[Layer]) -> str:
    """The mark of a message that planned to put something in: what, how much, and where."""
    return PLANS + json.dumps([as_json(layer) for layer in layers])


def _layers(mark: str) -> tuple[Layer, ...]:
    acts = map(from_json, json.loads(mark.removeprefix(PLANS)))
    return tuple(act for act in acts if isinstance(act, Layer))


async def lately(said: Said, book: Book, item: Item, turn: Turn) -> tuple[tuple[Layer, ...], bool]:
    """What the sender planned last and has not put in, and whether nothing was said since."""
    before = await traces.said_lately(book.db, book.room.address, item.id, MOST_SINCE)
    at = next((i for i, one in enumerate(before) if _is_plan_of(said.sender, one)), None)
    if at is None or (said.replies_to and said.replies_to != before[at].event):
        return (), False
    plan = before[at]
    if said.at - plan.at > STANDS or await book.is_withdrawn(plan.event):
        return (), False
    since = await book.last_by(turn.sender)
    told = since is not None and since.written_at > plan.at
    if told and since and since.act == "layer":
        return (), False  # it may have been that
    latest = await outbox.latest(book.db, book.room.id)
    spoken = at > 0 or told or (latest is not None and latest[1] > plan.at)
    return _layers(plan.mark or ""), bool(said.replies_to) or not spoken


async def told_anew(original: Trace, layers: Sequence[Layer], book: Book) -> None:
    """A message that was edited plans what it plans now."""
    if layers or (original.mark or "").startswith(PLANS):
        mark = kept(layers) if layers else ""
        await traces.mark_anew(book.db, book.room.address, original.event, mark)


def _is_plan_of(sender: str, one: Trace) -> bool:
    return one.sender == sender and (one.mark or "").startswith(PLANS)
