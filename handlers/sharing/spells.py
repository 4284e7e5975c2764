"""Who kept a bin when: the days of its life, each with one keeper or none."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date

from handlers.sharing.keepers import day_of, fold
from handlers.sharing.turns import DAY
from storage.rows import Entry


@dataclass(frozen=True, slots=True, kw_only=True)
class Spell:
    """Days in one care: from the first to the last one, or still (None)."""

    keeper: str | None
    """None while nobody kept it."""
    first: date
    last: date | None = None


def spells(said: Iterable[Entry], today: date, zone: str) -> list[Spell]:
    """The spells of a bin, from all that was said of who keeps it; each day is in one of them.

    The keeper of a day is who has it at the day's end.
    """
    said = list(said)
    told = {day_of(entry, zone) for entry in said}
    agreed = {entry.on for entry in said if entry.on and entry.act == "accept"}
    days = sorted(day for day in told | agreed if day <= today)
    made: list[Spell] = []
    for on in days:
        keeper = fold(said, on, zone).keeper
        if made and made[-1].keeper == keeper:
            continue
        if made:
            made[-1] = replace(made[-1], last=on - DAY)
        made.append(Spell(keeper=keeper, first=on))
    return made
