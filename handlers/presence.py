"""A member leaves the room, or comes back: whose bins are unattended, and who takes no turns."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.answer import Answer, Turn
from handlers.keepers import custody_of
from handlers.people import is_same
from handlers.rotas import is_on, rotas_of
from storage.rows import Facts, NewEntry


async def left(member: str, turn: Turn) -> Answer:
    """What a member kept is unattended, what was agreed or on offer to them is off."""
    entries = []
    for bin in await turn.book.bins():
        custody = await custody_of(turn.book, bin, turn.today)
        coming = custody.coming.member if custody.coming else None
        receiver = custody.offer.receiver if custody.offer else None
        if member in (custody.keeper, coming) or is_same(receiver, member):
            entries.append(turn.entry("leave", bin=bin.name, member=member))
    for one in await rotas_of(turn.book, turn.today):
        if is_on(one, member):
            facts, name = Facts(words=one.duty), one.bin.name if one.bin else None
            entries.append(turn.entry("quit", bin=name, member=member, facts=facts))
    return Answer(entries=_unwritten(entries))


async def returned(member: str, turn: Turn) -> Answer:
    """A member who comes back still has the bins that nobody else has taken."""
    entries = []
    for bin in await turn.book.bins():
        custody = await custody_of(turn.book, bin, turn.today)
        if custody.left and custody.left.member == member:
            entries.append(turn.entry("return", bin=bin.name, member=member))
    return Answer(entries=_unwritten(entries))


def _unwritten(entries: Sequence[NewEntry]) -> list[NewEntry]:
    """What nobody wrote, so that no “scratch that” is meant for it."""
    return [replace(entry, writer=None) for entry in entries]
