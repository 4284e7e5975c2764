"""One thing heard in a room, whatever the room: made from a Matrix room event.

The Matrix session and `replay` both pass events through `from_event`, and the terminal room writes
such events itself, so that one mind hears the same everywhere. An event that is not for the mind
(an encrypted one without its key, a topic change, a malformed one) gives None.
"""

import html
import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from datetime import UTC, datetime
from typing import Any

from bot import mentions
from bot.ranks import creators, leading
from handlers.reading.words.ownwords import without_addresses
from storage import words
from storage.leaders import MadeBy

EARLIEST_MS = 0
LATEST_MS = 7_258_118_400_000
"""Events are from 1970 to 2200; a clock that says otherwise is not to be believed."""

WORDED = frozenset({"m.text", "m.notice", "m.emote"})
WITH_FILE = frozenset({"m.image", "m.video", "m.audio", "m.file"})
"""Kinds of messages that are words, and those that are a file and may have words beneath it."""

Raw = Mapping[str, Any]
"""A room event as the client-server API writes it, decrypted if it was encrypted."""


@dataclass(frozen=True, slots=True, kw_only=True)
class _Heard:
    event: str
    sender: str
    at: datetime
    """When the sender's homeserver took it (UTC)."""
    shown: str | None = None
    """The name that the sender shows in the room, where that is known."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Said(_Heard):
    """Somebody wrote a message."""

    body: str
    replies_to: str | None = None
    thread: str | None = None
    mentions: tuple[str, ...] = ()
    automatic: bool = False
    """A notice: another bot's, or our own; never answered."""
    ids: tuple[str, ...] = ()
    """Whom the body calls by "@" and the local part of their Matrix ids, in order."""
    beyond: str = ""
    """What stands behind the stretch of a message that is read, or its beginning."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Edited(_Heard):
    """Somebody changed the words of an earlier message."""

    original: str
    body: str
    mentions: tuple[str, ...] = ()
    automatic: bool = False
    ids: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Withdrawn(_Heard):
    """A message, an edit or a reaction was taken back."""

    target: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Reacted(_Heard):
    """Somebody put a sign on a message."""

    target: str
    key: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Moved(_Heard):
    """A member came, left, or changed the name shown."""

    user: str
    name: str | None
    present: bool


@dataclass(frozen=True, slots=True, kw_only=True)
class Ranked(_Heard):
    """Who has power in the room was decided anew: by its making, or by the levels it gives."""

    users: frozenset[str]
    made_by: MadeBy


Heard = Said | Edited | Withdrawn | Reacted | Moved | Ranked


SHOWN = "pailkeeper.shown"
"""Where an event has the name that its sender shows: the session adds it, no homeserver does."""


def from_event(raw: Raw) -> Heard | None:
    """What a room event says to the mind, or None where it says nothing."""
    heard = _from_event(raw)
    shown = words.name(_text(raw.get(SHOWN))) if heard else ""
    return replace(heard, shown=shown) if heard and shown else heard


def _from_event(raw: Raw) -> Heard | None:
    event, sender, kind = (_text(raw.get(k)) for k in ("event_id", "sender", "type"))
    at = moment(raw.get("origin_server_ts"))
    if not event or not sender or at is None:
        return None
    content = _object(raw.get("content"))
    match kind:
        case "m.room.message":
            return _message(content, event, sender, at)
        case "m.reaction":
            relation = _object(content.get("m.relates_to"))
            target, key = _text(relation.get("event_id")), _text(relation.get("key"))
            if relation.get("rel_type") != "m.annotation" or not target or not key:
                return None
            return Reacted(event=event, sender=sender, at=at, target=target, key=key)
        case "m.room.redaction":
            target = _text(content.get("redacts")) or _text(raw.get("redacts"))
            return Withdrawn(event=event, sender=sender, at=at, target=target) if target else None
        case "m.room.member":
            user = _text(raw.get("state_key"))
            name = words.name(_text(content.get("displayname"))) or None
            present = content.get("membership") == "join"
            if not user:
                return None
            return Moved(event=event, sender=sender, at=at, user=user, name=name, present=present)
        case "m.room.create" | "m.room.power_levels" if raw.get("state_key") == "":
            by_making = kind == "m.room.create"
            users = creators(sender, content) if by_making else leading(content)
            made_by: MadeBy = "creation" if by_making else "level"
            return Ranked(event=event, sender=sender, at=at, users=users, made_by=made_by)
        case _:
            return None


def _message(content: Raw, event: str, sender: str, at: datetime) -> Said | Edited | None:
    automatic = content.get("msgtype") == "m.notice"
    relation = _object(content.get("m.relates_to"))
    if relation.get("rel_type") == "m.replace":
        original = _text(relation.get("event_id"))
        renewed = _object(content.get("m.new_content"))
        new = _words(content, renewed)
        if not original or new is None:
            return None
        new, ids = mentions.shortened(without_fallback(new), sender)
        return Edited(
            event=event,
            sender=sender,
            at=at,
            original=original,
            body=words.text(without_addresses(new)),
            mentions=_mentioned(renewed),
            automatic=automatic,
            ids=ids,
        )
    body = _words(content, content)
    if body is None or (not body and content.get("msgtype") in WITH_FILE):
        return None
    in_thread = relation.get("rel_type") == "m.thread"
    replies_to = _text(_object(relation.get("m.in_reply_to")).get("event_id")) or None
    if in_thread and relation.get("is_falling_back") is True:
        replies_to = None
    body, ids = mentions.shortened(without_fallback(body) if replies_to else body, sender)
    return Said(
        event=event,
        sender=sender,
        at=at,
        body=words.text(without_addresses(body)),
        replies_to=replies_to,
        thread=(_text(relation.get("event_id")) or None) if in_thread else None,
        mentions=_mentioned(content),
        automatic=automatic,
        ids=ids,
        beyond=words.text(without_addresses(body[words.LONGEST_MESSAGE :])),
    )


def _mentioned(content: Raw) -> tuple[str, ...]:
    """The users whom a message is to reach."""
    users = _object(content.get("m.mentions")).get("user_ids")
    return tuple(u for u in users if isinstance(u, str)) if isinstance(users, list) else ()


def _words(message: Raw, content: Raw) -> str | None:
    """The words in the content of a message; of a file those beneath it, if there are any."""
    kind, body, name = message.get("msgtype"), content.get("body"), content.get("filename")
    if not isinstance(kind, str) or not isinstance(body, str):
        return None
    if kind in WITH_FILE:
        # Without another name of the file, the body is its name.
        return body if isinstance(name, str) and name and name != body else ""
    return struck(body, _text(content.get("formatted_body"))) if kind in WORDED else None


_STRUCK = re.compile(r"<(del|s|strike)>(.{1,500}?)</\1>", re.IGNORECASE | re.DOTALL)
_TAG = re.compile(r"<[^<>]{0,500}>")
_LONGEST_FORMATTED = 20_000


def struck(body: str, formatted: str) -> str:
    """The body with "~~" round the words that only its HTML shows as struck through."""
    if "</" not in formatted or "~~" in body or len(formatted) > _LONGEST_FORMATTED:
        return body
    out, at, seen = [], 0, 0
    for found in _STRUCK.finditer(formatted):
        words_before, gone = _plain(formatted[seen : found.start()]), _plain(found[2])
        reached = body.find(words_before.strip(), at) + len(words_before.strip())
        start = body.find(gone, max(at, reached)) if gone.strip() else -1
        seen = found.end()
        if start >= 0:
            out += [body[at:start], f"~~{gone.strip()}~~"]
            at = start + len(gone)
    return "".join([*out, body[at:]])


def _plain(marked_up: str) -> str:
    return html.unescape(_TAG.sub("", marked_up))


def local_part(user: str) -> str:
    """The name within a Matrix user id, or the whole of another kind of name."""
    return user[1:].split(":", 1)[0] if user.startswith("@") else user


def without_fallback(body: str) -> str:
    """The body without the quoted lines that older clients put before a reply."""
    lines = body.split("\n")
    quoted = 0
    while quoted < len(lines) and lines[quoted].startswith("> "):
        quoted += 1
    if quoted == 0 or quoted == len(lines):
        return body
    return "\n".join(lines[quoted:]).lstrip("\n")


def _text(value: object) -> str:
    return value if isinstance(value, str) and words.is_sound(value) else ""


def _object(value: object) -> Raw:
    return value if isinstance(value, Mapping) else {}


def moment(value: object) -> datetime | None:
    """The UTC moment of an event's `origin_server_ts` (ms); None if it is none."""
    if isinstance(value, bool) or not isinstance(value, int | float):
        return None
    if not EARLIEST_MS <= value <= LATEST_MS:
        return None
    return datetime.fromtimestamp(value / 1000, UTC)
