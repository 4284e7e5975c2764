"""The bin that the talk of the room is on, by what the last messages told, asked or promised."""

import json

from bot.heard import Said
from bot.talk import ASKS, NAMES, TALK_GOES_ON, TALKS, TALKS_FIGURES, Talk
from handlers.reading.message import Message
from handlers.sharing.promised import PROMISES
from storage import traces
from storage.traces import Trace

MOST_BEFORE = 6
"""Messages that are looked back on for a bin."""


def bin_named(message: Message) -> str | None:
    """The one bin of the group's that a message names."""
    named = {ref.name for ref in message.bins if ref.known and ref.name}
    return named.pop() if len(named) == 1 else None


def with_bin(mark: str | None, bin: str | None) -> str | None:
    """The mark of a message, with the bin that it named; of a question or favour it is in that."""
    plain = mark in (None, TALKS, TALKS_FIGURES)
    return f"{mark or ''}{NAMES}{json.dumps(bin)}" if bin and plain else mark


async def bin_in_talk(said: Said, talk: Talk) -> str | None:
    """The one bin of the last message that was of any; the sender's own messages go first."""
    book = talk.book
    before = await traces.said_lately(book.db, book.room.address, talk.item.id, MOST_BEFORE)
    before = [one for one in before if said.at - one.at <= TALK_GOES_ON]
    own = [one for one in before if one.sender == said.sender]
    for one in (*own, *before):
        if bins := await _bins_of(one, talk):
            return bins.pop() if len(bins) == 1 else None
    return None


async def _bins_of(one: Trace, talk: Talk) -> set[str]:
    """The bins that a message told something of, named, asked us about, or asked a favour for."""
    told = {entry.bin.name for entry in await talk.book.of_event(one.event) if entry.bin}
    mark = one.mark or ""
    _, sign, named = mark.partition(NAMES)
    if sign and mark[:1] in (NAMES, TALKS, TALKS_FIGURES):
        told.add(json.loads(named))
    if mark.startswith(("[", f"{ASKS}{{", f"{PROMISES}{{")):
        kept = json.loads(mark.lstrip(ASKS + PROMISES))
        asked = kept if isinstance(kept, list) else [kept]
        told |= {bin for act in asked if (bin := act.get("bin"))}
    return told
