"""What the signs mean that members set on messages."""

STRIKE = frozenset("❌✖❎")
YES = frozenset("👍✅👌")
NO = frozenset("👎❌")
DONE = frozenset("✅☑✔")
LATER = frozenset("💤😴⏰")

_VARIANT = "\ufe0f"
"""Asks for the coloured form of a sign; it says nothing."""
_SKIN_TONES = "🏻🏼🏽🏾🏿"
_KEYCAP = "\u20e3"
"""Behind a digit: the key of that number."""


def plain(key: str) -> str:
    """A sign without what only changes its looks."""
    return key.replace(_VARIANT, "").rstrip(_SKIN_TONES)


def line_of(key: str) -> int | None:
    """The line of a digest that a number set on it means."""
    digit = key.removesuffix(_KEYCAP)
    return int(digit) if digit != key and digit in set("123456789") else None
