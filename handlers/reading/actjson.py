"""Acts as the reading contract writes them: to JSON and back."""

from collections.abc import Mapping
from dataclasses import fields
from datetime import date
from typing import Any, get_args

from handlers.reading.acts import Act


def as_json(act: Act) -> dict[str, Any]:
    """The act as the reading contract writes it: only the fields that have a value."""
    out: dict[str, Any] = {"act": act.act}
    for item in fields(act):
        value = getattr(act, item.name)
        if item.name == "rules" or value is None or value == ():
            continue
        out[item.name] = _plain(value)
    return out


def from_json(said: Mapping[str, Any]) -> Act:
    """The act that `as_json` wrote; ValueError if it is none."""
    kind = _BY_NAME.get(said.get("act", ""))
    if kind is None:
        raise ValueError(f"no such act: {said.get('act')!r}")
    names = {item.name for item in fields(kind)}
    values = {name: _lively(name, v) for name, v in said.items() if name in names}
    return kind(**values)


def _lively(name: str, value: Any) -> Any:
    if name in ("on", "was", "like", "first", "last"):
        return date.fromisoformat(value)
    if name == "which":
        return from_json(value)
    if name == "guess":
        return tuple(from_json(act) for act in value)
    return tuple(value) if isinstance(value, list) else value


_BY_NAME: Mapping[str, type[Act]] = {kind.act: kind for kind in get_args(Act)}


def _plain(value: object) -> object:
    match value:
        case date():
            return value.isoformat()
        case float():
            return round(value, 6)
        case tuple():
            return [_plain(v) if isinstance(v, str) else as_json(v) for v in value]
        case _ if isinstance(value, Act):
            return as_json(value)
        case Mapping():
            return {kind: round(share, 4) for kind, share in value.items()}
        case _:
            return value
