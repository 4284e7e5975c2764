"""What is found in a message, or in a part of it, by looking once."""

from collections.abc import Callable
from functools import wraps
from typing import Any, Protocol, TypeVar


class _Keeping(Protocol):
    kept: dict[Callable[..., Any], Any]


_Read = TypeVar("_Read", bound=_Keeping)
_Found = TypeVar("_Found")
_UNSEEN: Any = object()


def once(find: Callable[[_Read], _Found]) -> Callable[[_Read], _Found]:
    """The function, which looks at each thing only once; nobody changes what it gives."""

    @wraps(find)
    def found(read: _Read) -> _Found:
        there: _Found = read.kept.get(find, _UNSEEN)
        if there is _UNSEEN:
            there = read.kept[find] = find(read)
        return there

    return found
