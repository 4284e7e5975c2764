"""A number that no calendar holds is no day, and no reason to stop reading."""

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

from handlers.reading.acts import Context
from handlers.reading.read import read


def test_a_day_beyond_all_calendars() -> None:
    context = Context(
        at=datetime(2026, 3, 2, 18, tzinfo=UTC),
        zone=ZoneInfo("UTC"),
        units="metric",
        bins=("shed",),
        members=("ines",),
        sender="ines",
    )
    read("added 2 kg scraps to the shed on the 99999999999999999999th of this month", context)
    read("sealed the shed on the 99999999999999999999th", context)
