"""How moments and days are kept: UTC milliseconds and ISO 8601 days."""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

_EPOCH = datetime(1970, 1, 1, tzinfo=UTC)
_MS = timedelta(milliseconds=1)


def to_ms(moment: datetime) -> int:
    """UTC milliseconds of an aware moment."""
    return (moment - _EPOCH) // _MS


def from_ms(ms: int) -> datetime:
    """The aware UTC moment of a count of milliseconds."""
    return _EPOCH + timedelta(milliseconds=ms)


def local_day(moment: datetime, zone: str) -> date:
    """The day of an aware moment in an IANA zone."""
    return moment.astimezone(ZoneInfo(zone)).date()


def to_day(text: str | None) -> date | None:
    """The day kept as text, if any."""
    return date.fromisoformat(text) if text else None


def to_hour(text: str | None) -> time | None:
    """The local hour kept as text ("HH:MM"), if any."""
    return time.fromisoformat(text) if text else None
