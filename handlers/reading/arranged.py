"""What members arrange among themselves: no record, and no act of the reading contract."""

from dataclasses import dataclass
from datetime import date

from handlers.reading.communal import Communal


@dataclass(frozen=True, slots=True, kw_only=True)
class Away:
    """A member is away, from the first day to the last one; until they say so if `last` is None."""

    first: date
    last: date | None = None
    member: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Back:
    """A member is back from a day on."""

    on: date
    member: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Staying:
    """A member does not go away after all."""

    member: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class WhoIsAway:
    """Who is away between two days?"""

    first: date
    last: date


Plan = Away | Back | Staying | WhoIsAway | Communal
