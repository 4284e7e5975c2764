"""A number that no calendar holds is no day, and no reason to stop reading."""

from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from handlers.reading.context import Context
from handlers.reading.read import read


@pytest.mark.parametrize(
    ("said", "act"),
    [
        ("added 2 kg scraps to the shed on the 99999999999999999999th of this month", "layer"),
        ("sealed the shed on the 99999999999999999999th", "seal"),
    ],
)
def test_a_day_beyond_all_calendars(said: str, act: str) -> None:
    context = Context(
        at=datetime(2026, 3, 2, 18, tzinfo=UTC),
        zone=ZoneInfo("UTC"),
        units="metric",
        bins=("shed",),
        members=("ines",),
        sender="ines",
    )
    assert [one.act for one in read(said, context)] == [act]
