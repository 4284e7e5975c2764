"""Labelled messages, and whether a reading of one agrees with its label."""

import json
import re
from collections.abc import Iterator, Sequence
from datetime import datetime
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

from handlers.practice.kinds import RICH
from handlers.reading.actjson import as_json
from handlers.reading.context import Context
from handlers.reading.read import read

FOLDER = Path(__file__).parent.parent / "corpus"
RECORDS = {"layer", "drain", "open", "seal", "bury", "observe", "batch", "stock"}
_EXACT = ("bin", "member", "to", "on", "topic", "value", "shared")


def messages(name: str) -> Iterator[dict[str, Any]]:
    """The labelled messages of one file."""
    for line in (FOLDER / name).read_text(encoding="utf-8").splitlines():
        yield json.loads(line)


_SETTING = re.compile(
    r"# bins: (?P<bins>.*?)\s+members: (?P<members>.*?)\s+units: (?P<units>\w+)\s+"
    r"sender: (?P<sender>\S+)"
)


def taught(name: str) -> Iterator[dict[str, Any]]:
    """The messages of a file that names only the kinds of act: `layer + ask dose | message`.

    A line that begins with "#" gives the bins, members, units and sender of those after it.
    """
    setting: dict[str, Any] = {}
    for line in (FOLDER / name).read_text(encoding="utf-8").splitlines():
        if found := _SETTING.match(line):
            listed = {
                key: [part.strip() for part in found[key].split(",")] for key in ("bins", "members")
            }
            setting = {**listed, "units": found["units"], "sender": found["sender"]}
        elif " | " in line:
            kinds, _, body = line.partition(" | ")
            acts = [_act(kind) for kind in kinds.split(" + ") if kind.strip() != "-"]
            yield {
                "body": body,
                "at": "2026-06-17T18:30:00+01:00",
                "zone": "Europe/London",
                **setting,
                "expect": acts,
            }


def _act(kind: str) -> dict[str, Any]:
    name, _, topic = kind.strip().partition(" ")
    return {"act": name, "topic": topic} if topic else {"act": name}


def reading(row: dict[str, Any]) -> list[dict[str, Any]]:
    """What the program reads from a labelled message, as the contract writes it."""
    return [as_json(act) for act in read(row["body"], context_of(row))]


def context_of(row: dict[str, Any]) -> Context:
    """The context that a labelled message was sent in."""
    return Context(
        at=datetime.fromisoformat(row["at"]),
        zone=ZoneInfo(row["zone"]),
        units=row["units"],
        bins=tuple(row["bins"]),
        members=tuple(row["members"]),
        sender=row.get("sender"),
    )


def agrees(row: dict[str, Any], got: Sequence[dict[str, Any]]) -> bool:
    """Whether a reading has every act and field of the label, or of one of its alternatives."""
    return any(_same(wanted, got) for wanted in [row["expect"], *row.get("or", [])])


def is_silent(row: dict[str, Any]) -> bool:
    """Whether the label asks for no act at all."""
    return not row["expect"] and not any(row.get("or", []))


def _same(wanted: Sequence[dict[str, Any]], got: Sequence[dict[str, Any]]) -> bool:
    left = list(got)
    for act in wanted:
        match = next((other for other in left if _fits(act, other)), None)
        if match is None:
            return False
        left.remove(match)
    return not left


def _fits(act: dict[str, Any], got: dict[str, Any]) -> bool:
    return all(_field_fits(name, value, got) for name, value in act.items())


def _field_fits(name: str, value: Any, got: dict[str, Any]) -> bool:
    if name == "main":
        shares = got.get("materials") or {"mixed": 1.0}
        return bool(shares[value] >= max(shares.values()) - 1e-6) if value in shares else False
    if name == "rich":
        shares = got.get("materials") or {}
        rich = got.get("rich", sum(s for kind, s in shares.items() if kind in RICH))
        return _near(value, rich, 0.2)
    if name == "signs":
        return set(value) <= set(got.get("signs", ()))
    if name in ("place", "use", "what"):
        return bool(set(_plain(value).split()) & set(_plain(got.get(name, "")).split()))
    if name in _EXACT or isinstance(value, str):
        return bool(_plain(value) == _plain(got.get(name)))
    return _near(value, got.get(name), 0.05 * value if isinstance(value, (int, float)) else 0)


def _near(value: Any, got: Any, tolerance: float) -> bool:
    if not isinstance(got, (int, float)):
        return False
    low, high = value if isinstance(value, list) else (value - tolerance, value + tolerance)
    slack = 0.05 if isinstance(value, list) else 0.0
    return bool(low * (1 - slack) - slack - 1e-9 <= got <= high * (1 + slack) + slack + 1e-9)


def _plain(value: Any) -> Any:
    if not isinstance(value, str):
        return value
    words = value.casefold().split()
    if words[:1] and words[0] in ("the", "my", "our"):
        words = words[1:]
    if len(words) > 1 and words[-1] in ("bin", "bucket"):
        words = words[:-1]
    return " ".join(words)
