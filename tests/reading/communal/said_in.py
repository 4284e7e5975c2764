"""What the words of shared bins are read in."""

from dataclasses import replace
from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

from handlers.reading.context import Context

THURSDAY = Context(
    at=datetime(2026, 3, 5, 10, tzinfo=UTC),
    zone=ZoneInfo("Europe/Lisbon"),
    bins=("courtyard", "shed", "bin 3", "Gertie"),
    members=("Ines", "Bram", "Mei"),
    sender="Ines",
)
OFFERED = replace(THURSDAY, on_offer=True, after_bot=True)
TAKEN = replace(THURSDAY, took="shed")


def march(day: int) -> date:
    return date(2026, 3, day)
