"""What was found out from the book and is so still: remembered, room by room, until it changes."""

from collections import OrderedDict
from collections.abc import Hashable
from functools import lru_cache
from typing import Any

ROOMS = 100
"""Of so many rooms it is remembered: as many as one batch has."""


@lru_cache(maxsize=2000)
def concerns(of: str, table: str, part: str) -> bool:
    """Whether what depends on `of` may be otherwise after a change of a table (of one part of it).

    `of` names tables, parted by spaces, some with the parts that alone matter, for example
    "bin entry:open,bury". A change that names no part changes all of them.
    """
    for word in of.split():
        named, _, parts = word.partition(":")
        if named == table and (not part or not parts or part in parts.split(",")):
            return True
    return False


class Recall:
    """Answers by room, by what they depend on, and by key."""

    def __init__(self) -> None:
        self._rooms: OrderedDict[Hashable, dict[str, dict[Hashable, Any]]] = OrderedDict()
        self._tables: set[str] = set()
        """Those that anything remembered depends on."""

    def of(self, room: Hashable, of: str) -> dict[Hashable, Any]:
        """What is remembered of a room that depends on `of`: to be looked into and added to."""
        known = self._rooms.setdefault(room, {})
        self._rooms.move_to_end(room)
        if len(self._rooms) > ROOMS:
            self._rooms.popitem(last=False)
        if of not in known:
            self._tables |= {word.partition(":")[0] for word in of.split()}
            known[of] = {}
        return known[of]

    def forget(self, table: str, room: Hashable = None, part: str = "") -> None:
        """A table was changed; `room` and `part`, if given, say what alone of it was."""
        if table not in self._tables:
            return
        rooms = self._rooms.values() if room is None else [self._rooms.get(room, {})]
        for known in rooms:
            for of in [of for of in known if concerns(of, table, part)]:
                del known[of]

    def clear(self) -> None:
        """Remember nothing."""
        self._rooms.clear()
