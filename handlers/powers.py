"""Who may do what: everybody, or those with power in the room where the group leaves it to them."""

from collections.abc import Mapping, Sequence

from handlers.answer import Answer, Setting, Turn
from handlers.practice.figure import listed
from handlers.reading.arrangements.communal import POWERS, Power, Reserve
from storage.leaders import leaders

DEEDS: Mapping[Power, str] = {
    "rename": "rename a bin",
    "retire": "retire a bin",
    "take": "take a bin that was not offered to them",
    "settings": "change settings",
}
"""What may be left to those with power, in words."""


async def refusal(what: Power, turn: Turn) -> str:
    """Why the sender may not do something, and whom to ask; empty if they may.

    Where nobody has power, as in a room at the terminal, everybody may.
    """
    if what not in turn.book.room.reserved:
        return ""
    return await _unless_leading(DEEDS[what], turn)


async def _unless_leading(deed: str, turn: Turn) -> str:
    leading = await leaders(turn.book)
    if not leading or turn.sender in leading:
        return ""
    return f"Here only those with power in the room may {deed}: ask {listed(leading, 'or')}."


async def reserved(plan: Reserve, turn: Turn) -> Answer:
    """The group leaves something to those with power, or to everybody; they alone decide it."""
    if refused := await _unless_leading("decide who may do what", turn):
        return Answer(say=refused)
    now = turn.book.room.reserved
    chosen = now - set(plan.what) if plan.for_everybody else now | set(plan.what)
    if not plan.for_everybody and not await leaders(turn.book):
        return Answer(say="Nobody has power in this room that I know of, so it is for everybody.")
    deeds = listed([DEEDS[what] for what in plan.what])
    who = "Everybody" if plan.for_everybody else "Only those with power in this room"
    value = ",".join(sorted(chosen))
    return Answer(settings=[Setting(what="reserved", value=value)], say=f"{who} may {deeds} now.")


async def asked(turn: Turn) -> Answer:
    """Who may do what."""
    held = [what for what in POWERS if what in turn.book.room.reserved]
    leading = await leaders(turn.book)
    if not held or not leading:
        return Answer(say=f"Everybody here may {_deeds(POWERS)}.")
    free = [what for what in POWERS if what not in held]
    lines = [f"Only {listed(leading)} may {_deeds(held)}."]
    if free:
        lines.append(f"Everybody may {_deeds(free)}.")
    return Answer(say=" ".join(lines))


def _deeds(powers: Sequence[Power]) -> str:
    return listed([DEEDS[what] for what in powers])
