"""The hours in which a group is not to be disturbed."""

from datetime import time


def is_quiet(hour: time, start: time, end: time) -> bool:
    """Whether a local hour lies in the quiet hours, which may run over midnight."""
    if start <= end:
        return start <= hour < end
    return hour >= start or hour < end


def parsed(words: str) -> time | None:
    """An hour written as "19:00", "7:30" or "8"; None if it is none."""
    hour, _, minute = words.strip().partition(":")
    try:
        return time(int(hour), int(minute or 0))
    except ValueError:
        return None
