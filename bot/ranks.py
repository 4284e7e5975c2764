"""Who has power in a room, by its state (client-server specification 1.19)."""

from collections.abc import Mapping
from typing import Any

from storage.leaders import EVERYBODY

CREATORS_STAND_ABOVE = 12
"""From this room version on, its creators have power whatever the levels say."""
STATE_LEVEL = 50
"""The level for changing a room where it names none."""


def leading(content: Mapping[str, Any]) -> frozenset[str]:
    """Those whose level lets them change the room, by an `m.room.power_levels`."""
    needed = _level(content.get("state_default"), STATE_LEVEL)
    if _level(content.get("users_default"), 0) >= needed:
        return frozenset({EVERYBODY})
    users = content.get("users")
    given = users.items() if isinstance(users, Mapping) else ()
    return frozenset(user for user, level in given if _level(level, 0) >= needed)


def creators(sender: str, content: Mapping[str, Any]) -> frozenset[str]:
    """Those whom an `m.room.create` gives power for good."""
    version = content.get("room_version")
    if not (isinstance(version, str) and version.isdecimal()):
        return frozenset()
    if int(version) < CREATORS_STAND_ABOVE:
        return frozenset()
    more = content.get("additional_creators")
    named = more if isinstance(more, list) else []
    return frozenset({sender, *(user for user in named if isinstance(user, str))})


def _level(value: object, otherwise: int) -> int:
    """A level, which old rooms may write as text."""
    if isinstance(value, bool):
        return otherwise
    if isinstance(value, str) and value.strip().lstrip("-").isdecimal():
        return int(value)
    return value if isinstance(value, int) else otherwise
