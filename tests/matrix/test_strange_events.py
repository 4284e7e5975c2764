"""No event that a member can send, however malformed, stops the bot or the room after it."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING, Any
from urllib.parse import quote
from uuid import uuid4

import pytest

from bot import missing_keys

if TYPE_CHECKING:
    from tests.matrix.conftest import Street

MEGOLM = "m.megolm.v1.aes-sha2"
ANYTHING: tuple[Any, ...] = (None, 5, [], "x", {"x": [5]})

OF_MEMBERS: dict[str, tuple[str, ...]] = {
    "m.room.message": ("body", "msgtype", "format", "formatted_body", "url", "file", "info"),
    "m.reaction": ("m.relates_to",),
    "m.sticker": ("body", "url", "info"),
    "m.call.invite": ("call_id", "lifetime", "offer", "version"),
    "m.room.encrypted": ("algorithm", "ciphertext", "sender_key", "session_id", "device_id"),
    "org.matrix.msc3381.poll.start": ("poll",),
}
OF_MODERATORS: dict[str, tuple[str, ...]] = {
    "m.room.name": ("name",),
    "m.room.topic": ("topic",),
    "m.room.avatar": ("url", "info"),
    "m.room.canonical_alias": ("alias",),
    "m.room.guest_access": ("guest_access",),
    "m.room.history_visibility": ("history_visibility",),
    "m.room.tombstone": ("body", "replacement_room"),
    "m.room.pinned_events": ("pinned",),
    "m.room.join_rules": ("join_rule", "allow"),
    "m.room.power_levels": ("users", "events", "users_default"),
    "m.space.child": ("via",),
    "m.space.parent": ("via", "canonical"),
}
WHOLE: dict[str, dict[str, Any]] = {
    "m.room.message": {"body": "hm", "msgtype": "m.text"},
    "m.room.encrypted": {
        "algorithm": MEGOLM,
        "ciphertext": "AAAA",
        "sender_key": "k",
        "session_id": "s",
        "device_id": "D",
    },
}
RELATIONS: tuple[Any, ...] = (
    *ANYTHING,
    {"rel_type": [], "event_id": {}},
    {"rel_type": "m.replace"},
    {"rel_type": "m.replace", "event_id": 5},
    {"rel_type": "m.thread", "event_id": []},
    {"rel_type": "m.annotation", "event_id": "$x", "key": {}},
    {"m.in_reply_to": "x"},
    {"m.in_reply_to": {"event_id": []}},
)


def strange(kinds: dict[str, tuple[str, ...]]) -> list[tuple[str, dict[str, Any]]]:
    """Each field of each kind of event, with anything but what it should be."""
    events = [
        (kind, WHOLE.get(kind, {}) | {field: value})
        for kind, fields in kinds.items()
        for field in fields
        for value in ANYTHING
    ]
    return events + [(kind, {}) for kind in kinds]


def strange_messages() -> list[tuple[str, dict[str, Any]]]:
    whole = WHOLE["m.room.message"]
    events = [("m.room.message", whole | {"m.relates_to": r}) for r in RELATIONS]
    events += [("m.reaction", {"m.relates_to": r}) for r in RELATIONS]
    events += [("m.room.message", whole | {"m.mentions": m}) for m in ANYTHING]
    events += [("m.room.message", whole | {"m.new_content": c}) for c in ANYTHING]
    return events


async def test_strange_events_are_passed_over(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(missing_keys, "GRACE_SECONDS", 0.1)
    ines, mallory = await street.neighbour("ines"), await street.neighbour("mallory")
    bot = street.bot()
    bot.start()
    room = await street.room_with(bot, ines)
    await ines.invite(room, mallory.user)
    await mallory.join(room)
    await bot.answers(mallory, room)
    base = f"/_matrix/client/v3/rooms/{quote(room)}"
    taken = 0
    for kind, content in [*strange(OF_MEMBERS), *strange_messages()]:
        path = f"{base}/send/{kind}/{uuid4().hex}"
        taken += street.server.call("PUT", path, content, mallory.client.access_token)[0] == 200
    for kind, content in strange(OF_MODERATORS):
        path = f"{base}/state/{kind}/"
        taken += street.server.call("PUT", path, content, ines.client.access_token)[0] == 200
    assert taken > 100
    inside = [e for e in strange(OF_MEMBERS) if e[0] != "m.room.encrypted"] + strange_messages()
    for kind, content in inside:
        plain = json.dumps({"type": kind, "content": content, "room_id": room})
        street.send_ciphertext(mallory, room, plain.encode())
    await bot.answers(ines, room)
    # And not the next time either, when all of it is read as state.
    await bot.stop()
    bot.start()
    await bot.answers(ines, room)
    assert bot.rows("SELECT count(*) FROM inbox WHERE state = 'failed'") == [(0,)]
