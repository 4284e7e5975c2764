"""People's words as they are let in: nothing unseen, no links, nothing that turns text around."""

import re
import unicodedata

LONGEST_MESSAGE = 4000
"""Characters of a message that are read; no record is told at more length."""
LONGEST_WORD = 40
LONGEST_NAME = 40
LONGEST_PLACE = 80
LONGEST_NOTE = 200

_JOINERS = "\u200c\u200d"
"""Part of how some scripts, and signs made of several, are written."""
_LONG_WORD = re.compile(rf"(\S{{{LONGEST_WORD}}})\S+")
_SPACE = re.compile(r"\s+")
_HALF = re.compile("[\ud800-\udfff]")
_SCHEME = re.compile(r":/+")
_CALL = re.compile(r"@(?=room\b)", re.IGNORECASE)
"""What calls everybody in a room, where older rules of notifying hold."""
_DOMAIN = re.compile(r"[.．。](?<=[^\W\d_].)(?=[^\W\d_]{2})")
"""A stop with no space behind it, between letters: apps take what is round it for an address."""


def text(said: str) -> str:
    """What somebody wrote: line breaks stay; control and direction characters go; not too long.

    No app takes any of it for a link, or for a call to the whole room, when it is said again.
    """
    lines = said.replace("\r\n", "\n").replace("\r", "\n")[:LONGEST_MESSAGE]
    kept = lines.replace("\t", " ")
    if not kept.isprintable():
        kept = "".join("" if _is_unseen(char) else char for char in kept)
    if "@" in kept:
        kept = _CALL.sub("", kept)
    if "/" in kept:
        kept = _SCHEME.sub(" ", kept)
    kept = _DOMAIN.sub(". ", kept)
    return _LONG_WORD.sub(r"\1", kept) if len(kept) > LONGEST_WORD else kept


def name(said: str, longest: int = LONGEST_NAME) -> str:
    """A name on one line; empty if nothing of it can be seen."""
    line = _SPACE.sub(" ", text(said))
    return line[:longest].strip(" \u200c\u200d")


def is_sound(said: str) -> bool:
    """Whether it is text at all: half a surrogate pair, which JSON allows, can be kept nowhere."""
    return said.isascii() or _HALF.search(said) is None


def _is_unseen(char: str) -> bool:
    if char == "\n" or char in _JOINERS:
        return False
    # Other, control, format, surrogate, unassigned: nothing of these is seen.
    return unicodedata.category(char) in ("Cc", "Cf", "Cs", "Cn")
