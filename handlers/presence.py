"""A member leaves the room, or comes back: whose bins are unattended, and who takes no turns."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.answer import Answer, Turn
from handlers.rotas import is_on, rotas_of
from storage.rows import Facts, NewEntry


async def left(member: str, turn: Turn) -> Answer:
    """What a member kept is unattended, what was agreed or on offer to them is off."""
    entries = [turn.entry("leave", bin=None, member=member)]
    for one in await rotas_of(turn.book, turn.today):
        if is_on(one, member):
            facts, name = Facts(words=one.duty), one.bin.name if one.bin else None
            entries.append(turn.entry("quit", bin=name, member=member, facts=facts))
    return Answer(entries=_unwritten(entries))


def returned(member: str, turn: Turn) -> Answer:
    """A member who comes back still has the bins that nobody else has taken."""
    return Answer(entries=_unwritten([turn.entry("return", bin=None, member=member)]))


def _unwritten(entries: Sequence[NewEntry]) -> list[NewEntry]:
    """What nobody wrote, so that no “scratch that” is meant for it."""
    return [replace(entry, writer=None) for entry in entries]
