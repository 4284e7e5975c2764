"""A room's log: JSON Lines of Matrix room events, in the order they came."""

import json
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

from bot.heard import moment
from storage.errors import UserError

UNTIL = "pailkeeper.until"
"""The type of a last line that lets time run on."""


class LogError(UserError):
    """A line of a log is no event; the message names the line and what is wrong with it."""


@dataclass(frozen=True, slots=True)
class Line:
    """One event of a log and its moment."""

    number: int
    at: datetime
    raw: dict[str, Any]


def lines(path: Path) -> Iterator[Line]:
    """The events of a log; LogError for a line that is none."""
    try:
        with path.open(encoding="utf-8") as file:
            for number, text in enumerate(file, 1):
                if text.strip() and (line := _line(path, number, text)):
                    yield line
    except OSError as error:
        raise LogError(f"cannot read {path}: {error.strerror}") from error
    except UnicodeDecodeError as error:
        raise LogError(f"{path} is not UTF-8 text: save it as UTF-8 and try again") from error


def _line(path: Path, number: int, text: str) -> Line | None:
    """The event of a line; None for an object without a time, which no room ever sent."""
    try:
        raw = json.loads(text)
    except ValueError as error:
        raise LogError(f"{path}, line {number}: not JSON ({error})") from error
    except RecursionError:
        raise LogError(f"{path}, line {number}: nested too deep for an event") from None
    at = moment(raw.get("origin_server_ts")) if isinstance(raw, dict) else None
    return Line(number, at, raw) if at else None
