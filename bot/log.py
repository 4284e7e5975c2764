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


def lines(path: Path, passed_over: list[int] | None = None) -> Iterator[Line]:
    """The events of a log; LogError for a line that is not JSON.

    The numbers of lines that are JSON but no event, as no room ever sent them, go to `passed_over`,
    and so does a last line that is not whole yet.
    """
    written = [(number, text) for number, text in enumerate(_written(path), 1) if text.strip()]
    for place, (number, text) in enumerate(written):
        try:
            line = _line(path, number, text)
        except LogError:
            if passed_over is None or not 0 < place == len(written) - 1:
                raise
            line = None
        if line:
            yield line
        elif passed_over is not None:
            passed_over.append(number)


def _written(path: Path) -> list[str]:
    """The lines of a file, without the mark that some programs begin it with."""
    try:
        return path.read_text(encoding="utf-8-sig").split("\n")
    except OSError as error:
        raise LogError(f"cannot read {path}: {error.strerror}") from error
    except UnicodeDecodeError as error:
        raise LogError(f"{path} is not UTF-8 text: save it as UTF-8 and try again") from error


def _line(path: Path, number: int, text: str) -> Line | None:
    """The event of a line; None for what has no time, or neither an id nor a sender."""
    try:
        raw = json.loads(text)
    except ValueError as error:
        raise LogError(
            f"{path}, line {number}: not JSON ({error}): a log has one JSON object a line; "
            "mend that line or take it out"
        ) from error
    except RecursionError:
        raise LogError(f"{path}, line {number}: nested too deep for an event") from None
    if number == 1 and isinstance(raw, list) and any(isinstance(each, dict) for each in raw):
        raise LogError(
            f"{path} is one JSON array: a log has one JSON object a line "
            f"(“jq -c '.[]' {path.name}” writes it so)"
        )
    at = moment(raw.get("origin_server_ts")) if isinstance(raw, dict) else None
    if at is None or not (raw.get("type") == UNTIL or _is_sent(raw)):
        return None
    return Line(number, at, raw)


def _is_sent(raw: dict[str, Any]) -> bool:
    named = all(isinstance(raw.get(key), str) and raw[key] for key in ("event_id", "sender"))
    return named and isinstance(raw["origin_server_ts"], int)
