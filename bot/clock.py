"""The only module that asks the time."""

from datetime import UTC, datetime


def now() -> datetime:
    """The present moment, in UTC."""
    return datetime.now(UTC)
