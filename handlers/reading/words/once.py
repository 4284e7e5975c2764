"""What is found in a message, or in a part of it, by looking once."""

from collections.abc import Callable
from functools import wraps
from typing import Any, Protocol, TypeVar


class _Keeping(Protocol):
    kept: dict[Callable[..., Any], Any]


_Read = TypeVar("_Read", bound=_Keeping)
_Found = TypeVar("_Found")


def once(find: Callable[[_Read], _Found]) -> Callable[[_Read], _Found]:
    """The function, which looks at each thing only once; nobody changes what it gives."""

    @wraps(find)
    def found(read: _Read) -> _Found:
        kept = read.kept
        if find not in kept:
            kept[find] = there = find(read)
        else:
            there = kept[find]
        return there

    return found
