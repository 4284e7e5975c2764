"""Options that several commands share, and how their values are checked."""

import argparse
from pathlib import Path
from typing import get_args
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from storage.errors import BookError
from storage.rows import Units

UNITS: tuple[Units, ...] = get_args(Units)


def book_at(path: Path) -> Path:
    """The path of a book that is to be there already."""
    if path.exists():
        return path
    raise BookError(
        f"there is no book at {path}: name one with --book, or begin one with "
        "`python -m bot chat --book FILE`"
    )


def zone(value: str) -> str:
    """An IANA time zone's name."""
    try:
        return ZoneInfo(value).key
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise argparse.ArgumentTypeError(
            f"no time zone is called {value!r}; name it like Europe/Lisbon"
        ) from None


def local_zone() -> str:
    """The zone of this machine, or UTC where it has none by name."""
    from tzlocal import get_localzone_name  # only for rooms of this machine

    return get_localzone_name() or "UTC"


def add_room_options(parser: argparse.ArgumentParser, *, default_zone: str = "UTC") -> None:
    """The zone and units of a room that is new to the book."""
    parser.add_argument(
        "--zone",
        type=zone,
        default=default_zone,
        metavar="IANA",
        help=f"the group's time zone (default: {default_zone})",
    )
    parser.add_argument(
        "--units", choices=UNITS, default="metric", help="the group's units (default: metric)"
    )
