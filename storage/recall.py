"""What was found out from the book and is so still: remembered, room by room, until it changes."""

from collections.abc import Hashable
from typing import Any

ROOMS = 100
"""Of so many rooms it is remembered: as many as one batch has."""


def concerns(of: str, table: str, part: str) -> bool:
    """Whether what depends on `of` may be otherwise after a change of a table (of one part of it).

    `of` names tables, parted by spaces, some with the parts that alone matter, for example
    "bin entry:open,bury". A change that names no part changes all of them; it may name several.
    """
    changed = part.split(",")
    for word in of.split():
        named, _, parts = word.partition(":")
        all_of_it = not part or not parts
        if named == table and (all_of_it or not set(changed).isdisjoint(parts.split(","))):
            return True
    return False


class Recall:
    """Answers by room, by what they depend on, and by key."""

    def __init__(self) -> None:
        self._rooms: dict[Hashable, dict[str, dict[Hashable, Any]]] = {}
        self._grounds: set[str] = set()
        """All that anything remembered ever depended on."""
        self._concerned: dict[tuple[str, str], set[str]] = {}
        """Of these grounds, those that a change of a table and part concerns."""

    def of(self, room: Hashable, of: str) -> dict[Hashable, Any]:
        """What is remembered of a room that depends on `of`: to be looked into and added to."""
        try:
            return self._rooms[room][of]
        except KeyError:
            return self._begun(room, of)

    def _begun(self, room: Hashable, of: str) -> dict[Hashable, Any]:
        if of not in self._grounds:
            self._grounds.add(of)
            self._concerned.clear()
        if room not in self._rooms and len(self._rooms) == ROOMS:
            del self._rooms[next(iter(self._rooms))]
        return self._rooms.setdefault(room, {}).setdefault(of, {})

    def forget(self, table: str, room: Hashable = None, part: str = "") -> None:
        """A table was changed; `room` and `part`, if given, say what alone of it was."""
        change = table, part
        if change not in self._concerned:
            self._concerned[change] = {of for of in self._grounds if concerns(of, table, part)}
        concerned = self._concerned[change]
        if not concerned:
            return
        rooms = self._rooms.values() if room is None else [self._rooms.get(room, {})]
        for known in rooms:
            for of in concerned & known.keys():
                del known[of]

    def clear(self) -> None:
        """Remember nothing."""
        self._rooms.clear()
