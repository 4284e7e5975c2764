"""Patterns that are compiled when they are first looked for: few of them come up in one talk.

All those of the reading are, so that the first answer need not wait for seven hundred others; the
bot in its rooms has them compiled before the first message.
"""

import re
from collections.abc import Callable, Iterator
from functools import cached_property
from typing import ClassVar


class Late:
    """A pattern, or a function that gives one: it costs nothing until it is asked."""

    _all: ClassVar[list["Late"]] = []

    def __init__(self, source: str | Callable[[], str], flags: int = 0) -> None:
        self._given = source
        self._flags = flags
        self._all.append(self)

    @cached_property
    def source(self) -> str:
        """The pattern as it is written."""
        return self._given if isinstance(self._given, str) else self._given()

    @classmethod
    def compile_all(cls) -> None:
        """Have every pattern ready: for a program that runs long, before somebody waits."""
        for each in cls._all:
            _ = each._compiled

    @cached_property
    def _compiled(self) -> re.Pattern[str]:
        return re.compile(self.source, self._flags)

    @cached_property
    def search(self) -> Callable[[str], re.Match[str] | None]:
        """The first place in a text."""
        return self._compiled.search

    @cached_property
    def match(self) -> Callable[[str], re.Match[str] | None]:
        """At the beginning of a text."""
        return self._compiled.match

    @cached_property
    def fullmatch(self) -> Callable[[str], re.Match[str] | None]:
        """The whole of a text."""
        return self._compiled.fullmatch

    @cached_property
    def finditer(self) -> Callable[[str], Iterator[re.Match[str]]]:
        """All places in a text."""
        return self._compiled.finditer

    @cached_property
    def sub(self) -> Callable[[str, str], str]:
        """A text with other words in all these places."""
        return self._compiled.sub
