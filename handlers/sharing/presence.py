"""A member leaves the room, or comes back: it depends on it who keeps a bin and who takes turns."""

from dataclasses import replace

from handlers.answer import Answer, Turn


def left(member: str, turn: Turn) -> Answer:
    """What a member kept is unattended, what was agreed or on offer to them is off."""
    return _told("leave", member, turn)


def returned(member: str, turn: Turn) -> Answer:
    """A member who comes back has the bins that nobody else has taken, and their turns."""
    return _told("return", member, turn)


def _told(act: str, member: str, turn: Turn) -> Answer:
    # Written by nobody, so that no "scratch that" is meant for it.
    return Answer(entries=[replace(turn.entry(act, bin=None, member=member), writer=None)])
