"""A group to read messages in."""

from datetime import datetime
from zoneinfo import ZoneInfo

from handlers.reading.acts import Act
from handlers.reading.context import Context
from handlers.reading.read import read

WEDNESDAY = datetime(2026, 6, 17, 18, 30, tzinfo=ZoneInfo("Europe/London"))


def group(**changes: object) -> Context:
    """A group on a Wednesday evening; `changes` are fields of the context."""
    values: dict[str, object] = {
        "at": WEDNESDAY,
        "zone": ZoneInfo("Europe/London"),
        "bins": ("shed", "bin 3", "big blue", "Tall Paul"),
        "members": ("ines", "kofi", "ruth"),
        "sender": "kofi",
        **changes,
    }
    return Context(**values)  # type: ignore[arg-type]


def acts(text: str, **changes: object) -> tuple[Act, ...]:
    """What a message means in that group."""
    return read(text, group(**changes))
