"""The bin that the talk of the room is on, by what the last messages told, asked or promised."""

import json
from collections.abc import Sequence
from dataclasses import replace

from bot.askeddeed import ASKS_DEED
from bot.heard import Said
from bot.lastasked import ASKED_US
from bot.talk import ASKS, NAMES, TALK_GOES_ON, TALKS, TALKS_FIGURES, Talk
from handlers.reading.acts import Act, Ask, Bury, Drain, Seal
from handlers.reading.arranged import Plan
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in
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


async def bin_in_talk(said: Said, talk: Talk, *, done: bool = False) -> str | None:
    """The one bin of the last message that was of any; if something is `done` to it, of none by
    which a bin was only opened.
    """
    book = talk.book
    before = await traces.said_lately(book.db, book.room.address, talk.item.id, MOST_BEFORE)
    for one in before:
        if said.at - one.at > TALK_GOES_ON:
            break
        if bins := await _bins_of(one, talk, done=done):
            return bins.pop() if len(bins) == 1 else None
    return None


_ITS = frozenset({"due", "trench"})
"""What may be asked of "it" where the talk is on one bin."""
_IT = words_in("it that this it's")


async def of_bin_in_talk(
    acts: Sequence[Act | Plan], said: Said, message: Message, talk: Talk
) -> list[Act | Plan]:
    """The acts; "when's it ready?" is of the bin that the talk is on, if it is on one, and "closed
    it" too where its sender spoke of that one last.
    """
    leans = any(map(_leans, acts)) or any(map(_is_deed, acts))
    if not leans or said.replies_to or message.bins or not message.has(_IT):
        return list(acts)
    bin = await bin_in_talk(said, talk)
    done = await bin_in_talk(said, talk, done=True) if any(map(_is_deed, acts)) else None
    done = done if done and await _named_by(said, done, talk) else None
    return [
        replace(act, bin=bin if _leans(act) else done)
        if isinstance(act, Ask | Seal | Drain | Bury) and (_leans(act) or _is_deed(act))
        else act
        for act in acts
    ]


def _is_deed(act: Act | Plan) -> bool:
    return isinstance(act, Seal | Drain | Bury) and act.bin is None and act.each is None


async def _named_by(said: Said, bin: str, talk: Talk) -> bool:
    """Whether that bin was the last that the sender was on: "closed it" is then of none besides."""
    book = talk.book
    before = await traces.said_lately(book.db, book.room.address, talk.item.id, MOST_BEFORE)
    for one in before:
        if one.sender == said.sender and (bins := await _bins_of(one, talk, done=True)):
            return bins == {bin}
    return False


def _leans(act: Act | Plan) -> bool:
    if not isinstance(act, Ask) or act.topic not in _ITS or act.bin or act.bins or act.each:
        return False
    told = (act.mass_kg, act.volume_l, act.member, act.on, act.first, act.place, act.length_m)
    return not any(told)


async def _bins_of(one: Trace, talk: Talk, *, done: bool) -> set[str]:
    """The bins that a message told something of, named, asked us about, or asked a favour for."""
    entries = await talk.book.of_event(one.event)
    if done and entries and all(entry.act == "open" for entry in entries):
        return set()
    told = {entry.bin.name for entry in entries if entry.bin}
    mark = one.mark or ""
    _, sign, named = mark.partition(NAMES)
    if sign and mark[:1] in (NAMES, TALKS, TALKS_FIGURES):
        told.add(json.loads(named))
    if mark.startswith((ASKED_US, ASKS_DEED, f"{ASKS}{{", f"{PROMISES}{{")):
        kept = json.loads(mark.lstrip(ASKS + ASKS_DEED + PROMISES))
        asked = kept if isinstance(kept, list) else [kept]
        told |= {bin for act in asked if (bin := act.get("bin"))}
    return told
