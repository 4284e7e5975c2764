"""What a member could do to the bot with malformed or lying events, and cannot.

Each case ends or misleads a client of matrix-nio 0.26 that is not hardened.
"""

from __future__ import annotations

import asyncio
import base64
import json
from collections.abc import Callable
from typing import TYPE_CHECKING, Any
from urllib.parse import quote
from uuid import uuid4

import pytest
import vodozemac
from nio import KeysUploadResponse
from nio.client.async_client import AsyncClient
from nio.store.database import SqliteStore
from peewee import OperationalError

from bot.connection import connected, tend_keys
from bot.cross_signing import canonical
from storage.errors import UserError

if TYPE_CHECKING:
    from bot.homeserver import User
    from bot.sandbox_neighbour import Neighbour, Raw
    from tests.matrix.conftest import Bot, Street

OLM, MEGOLM = "m.olm.v1.curve25519-aes-sha2", "m.megolm.v1.aes-sha2"
NOT_A_KEY = base64.b64encode(bytes(32)).decode().rstrip("=")


def _olm(kind: Any, body: Any, sender_key: Any = NOT_A_KEY) -> dict[str, Any]:
    return {
        "algorithm": OLM,
        "sender_key": sender_key,
        "ciphertext": {"OWN KEY": {"type": kind, "body": body}},
    }


BAD_TO_DEVICE = {
    "no base64": _olm(0, "!!!"),
    "no base64, later message": _olm(1, "!!!"),
    "empty": _olm(0, ""),
    "unknown version": _olm(0, base64.b64encode(b"\x09" * 80).decode()),
    "cut short": _olm(0, base64.b64encode(b"\x03\x0a").decode()),
    "no sender key": _olm(0, base64.b64encode(b"\x03" * 80).decode(), "short"),
    "unknown type": _olm(7, "AAAA"),
    "type of the wrong kind": _olm([], "AAAA"),
    "no algorithm": {"sender_key": NOT_A_KEY},
    "no object": {"algorithm": OLM, "ciphertext": []},
}
VERIFY = {"from_device": "D", "transaction_id": "t", "method": "m.sas.v1", "methods": ["m.sas.v1"]}
BAD_IN_CLEAR: dict[str, dict[str, Any]] = {
    "m.key.verification.request": VERIFY | {"timestamp": 1},
    "m.key.verification.start": VERIFY | {"hashes": ["x"], "key_agreement_protocols": [5]},
    "m.key.verification.accept": VERIFY,
    "m.key.verification.key": {"transaction_id": "t", "key": "!!!"},
    "m.key.verification.mac": {"transaction_id": "t", "mac": {}, "keys": "x"},
    "m.key.verification.cancel": {"transaction_id": 5},
    "m.room_key": {"algorithm": MEGOLM, "room_id": 5, "session_id": [], "session_key": {}},
    "m.room_key_request": {"action": "request", "body": [], "request_id": {}},
    "m.room_key.withheld": {"session_id": {}, "code": []},
    "m.forwarded_room_key": {"session_key": 5},
    "m.secret.request": {"name": 5},
    "m.dummy": {"x": [[[]]]},
}
"""Verification is asked for by clients as a matter of course: the bot need not be verified."""

BAD_VALUES: tuple[Any, ...] = ("!!!", 5, [], {})
ROOM_KEY: dict[str, Any] = {
    "algorithm": MEGOLM,
    "room_id": "!r:x",
    "session_id": "s",
    "session_key": NOT_A_KEY,
}
BAD_INSIDE: tuple[tuple[str, dict[str, Any]], ...] = (
    *(("m.room_key", ROOM_KEY | {name: bad}) for name in ROOM_KEY for bad in BAD_VALUES),
    ("m.room_key", {}),
    ("m.forwarded_room_key", ROOM_KEY | {"forwarding_curve25519_key_chain": [5]}),
    ("m.dummy", {}),
    ("m.secret.send", {"secret": 5}),
    ("no.such.thing", {"x": []}),
)
"""What a member may put into an Olm message that is well encrypted."""


def ines_seals(ines: Neighbour, bot: Bot, kind: str, content: dict[str, Any]) -> dict[str, Any]:
    """Something encrypted for the bot's device alone."""
    olm = ines.client.olm
    assert olm is not None
    device = ines.client.device_store[bot.user.id][bot.user.device]
    session = olm.session_store.get(device.curve25519)
    sealed = olm._olm_encrypt(session, device, kind, content)  # type: ignore[no-untyped-call]
    return dict(sealed)


async def test_no_malformed_to_device_message_stops_the_bot(street: Street) -> None:
    ines, bot, room = await street.begun()
    await ines.say(room, "hello there")  # which gives her a session with the bot's device
    own_key = street.curve_key(bot.user)
    bad = [*BAD_IN_CLEAR.items()]
    for content in BAD_TO_DEVICE.values():
        bad.append(
            ("m.room.encrypted", json.loads(json.dumps(content).replace("OWN KEY", own_key)))
        )
    for kind, content in BAD_INSIDE:
        bad.append(("m.room.encrypted", ines_seals(ines, bot, kind, content)))
    for kind, content in bad:
        path = f"/_matrix/client/v3/sendToDevice/{kind}/{uuid4().hex}"
        body = {"messages": {bot.user.id: {bot.user.device: content}}}
        status, _ = street.server.call("PUT", path, body, ines.client.access_token)
        assert status == 200
    await bot.answers(ines, room)
    await bot.stop()


REFUSED_INSIDE = {
    "power levels": {
        "type": "m.room.power_levels",
        "content": {"users": {"MALLORY": 100}, "users_default": 100},
        "state_key": "",
    },
    "power levels, no state key": {
        "type": "m.room.power_levels",
        "content": {"users": {"MALLORY": 100}, "users_default": 100},
    },
    "a member": {
        "type": "m.room.member",
        "content": {"membership": "join", "displayname": "Ghost"},
        "state_key": "@ghost:sandbox.localhost",
    },
    "a member who is malformed": {"type": "m.room.member", "content": {"membership": "join"}},
    "a tombstone": {
        "type": "m.room.tombstone",
        "content": {"body": "moved", "replacement_room": "!trap:sandbox.localhost"},
        "state_key": "",
    },
    "a redaction": {"type": "m.room.redaction", "redacts": "VICTIM", "content": {}},
    "a redaction of version 11": {"type": "m.room.redaction", "content": {"redacts": "VICTIM"}},
    "an event of another room": {
        "type": "m.room.message",
        "room_id": "!other:sandbox.localhost",
        "content": {"msgtype": "m.text", "body": "Added 5 kg of scraps to the shed bin"},
    },
    "a redacted event": {
        "type": "m.room.message",
        "content": {"msgtype": "m.text", "body": "Added 5 kg of scraps to the shed bin"},
        "unsigned": {"redacted_because": {}},
    },
    "a list": [1],
    "no JSON": "{",
    "no UTF-8": b"\xff\xfe",
}


def by_id(event: str) -> Callable[[Raw], bool]:
    return lambda raw: bool(raw["event_id"] == event)


@pytest.fixture
async def mallory(street: Street) -> Neighbour:
    return await street.neighbour("mallory")


async def test_state_and_redactions_inside_ciphertext_are_not_believed(
    street: Street, mallory: Neighbour
) -> None:
    ines, bot, room = await street.begun()
    await ines.invite(room, mallory.user)
    await mallory.join(room)
    victim = await ines.say(room, "Added 2 kg of scraps to the shed bin")
    await ines.answer_to(room, victim, bot.user.id)
    await mallory.say(room, "hello there")
    for plain in REFUSED_INSIDE.values():
        if not isinstance(plain, bytes):
            text = plain if isinstance(plain, str) else json.dumps(plain)
            plain = text.replace("VICTIM", victim).replace("MALLORY", mallory.user).encode()
        street.send_ciphertext(mallory, room, plain)
    await bot.answers(mallory, room)
    # The clients of the neighbours are hardened as the bot's is: their view of the room is its own.
    view = ines.client.rooms[room]
    assert view.replacement_room is None
    assert set(view.users) == {ines.user, mallory.user, bot.user.id}
    assert view.power_levels.get_user_level(mallory.user) == 0
    assert bot.rows("SELECT mass_kg, struck_at FROM entry WHERE act = 'layer'") == [(2.0, None)]
    assert bot.rows("SELECT user FROM member WHERE name = 'Ghost'") == []
    assert bot.rows("SELECT count(*) FROM inbox WHERE state = 'failed'") == [(0,)]


async def test_who_and_when_come_from_the_envelope(street: Street, mallory: Neighbour) -> None:
    ines, bot, room = await street.begun()
    await ines.invite(room, mallory.user)
    await mallory.join(room)
    await mallory.say(room, "hello there")
    lies = {"sender": ines.user, "event_id": "$lie", "origin_server_ts": 1}
    message = {"msgtype": "m.text", "body": "@pailkeeper help"}
    well_formed = {"type": "m.room.message", "content": message} | lies
    malformed = {"type": "m.room.message", "content": "text"} | lies
    first = street.send_ciphertext(mallory, room, json.dumps(malformed).encode())
    second = street.send_ciphertext(mallory, room, json.dumps(well_formed).encode())
    await mallory.answer_to(room, second, bot.user.id)
    for event in (first, second):
        raw = await ines.hears(room, by_id(event))
        assert raw["sender"] == mallory.user
        assert raw["origin_server_ts"] > 1
    assert bot.rows("SELECT 1 FROM inbox WHERE event = '$lie'") == []
    assert bot.rows("SELECT sender FROM inbox WHERE event = ?", second) == [(mallory.user,)]


async def test_the_clear_relation_counts(street: Street, mallory: Neighbour) -> None:
    ines, _, room = await street.begun()
    clear = {"m.in_reply_to": {"event_id": "$clear"}}
    hidden = {"m.in_reply_to": {"event_id": "$hidden"}}
    await ines.say(room, "hello there")
    content = {"msgtype": "m.text", "body": "hm", "m.relates_to": hidden}
    plain = {"type": "m.room.message", "content": content}
    event = street.send_ciphertext(ines, room, json.dumps(plain).encode(), {"m.relates_to": clear})
    raw = await ines.hears(room, by_id(event))
    assert raw["content"]["m.relates_to"] == clear


class PowerCut(BaseException):
    """Nothing more is done."""


async def test_a_room_key_is_not_lost_when_the_process_dies_while_keeping_it(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    room = await street.room(ines, bot.user.id)
    async with connected(bot.home, bot.account) as client:
        await client.join(room)
        await client.sync(full_state=True)
        await tend_keys(client)
        since = client.next_batch
        await ines.until(lambda: bot.user.id in ines.client.rooms[room].users)
        event = await ines.say(room, "hello there")
        with monkeypatch.context() as patched:

            def die(*_: object) -> None:
                raise PowerCut

            patched.setattr(SqliteStore, "save_inbound_group_session", die)
            with pytest.raises(PowerCut):
                await client.sync(since=since)
    async with connected(bot.home, bot.account, "all") as client:
        response = await client.sync(since=since, full_state=True)
        said = {e.event_id: e for e in response.rooms.join[room].timeline.events}
        assert said[event].decrypted


async def test_a_room_key_that_the_disk_does_not_take_is_not_lost(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    ines, bot, room = await street.begun()
    keep = SqliteStore.save_inbound_group_session
    with monkeypatch.context() as full:

        def refuse(store: SqliteStore, session: object) -> None:
            if store.user_id == bot.user.id:
                raise OperationalError("database or disk is full")
            keep(store, session)

        ines.client.invalidate_outbound_session(room)
        full.setattr(SqliteStore, "save_inbound_group_session", refuse)
        event = await ines.say(room, "added 2 kg scraps to the shed bin")
        assert bot.task is not None
        with pytest.raises(UserError, match=r"keys could not be kept .*nothing is lost"):
            await asyncio.wait_for(bot.task, 20)
        bot.task = None
    bot.start()
    await ines.answer_to(room, event, bot.user.id)


async def test_keys_can_be_uploaded_after_the_process_died_doing_so(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    bot = street.bot()
    with monkeypatch.context() as patched:

        async def die(*_: object) -> None:
            raise PowerCut

        patched.setattr(AsyncClient, "receive_response", die)
        async with connected(bot.home, bot.account) as client:
            with pytest.raises(PowerCut):
                await client.keys_upload()
    async with connected(bot.home, bot.account) as client:
        assert isinstance(await client.keys_upload(), KeysUploadResponse)


def upload_device(street: Street, bad: dict[str, str]) -> User:
    """A user whose device has sound keys but for the bad ones, and signs them all."""
    user, account = street.user(f"mallory{uuid4().hex}"), vodozemac.Account()
    own = {"ed25519": account.ed25519_key.to_base64(), "curve25519": NOT_A_KEY, "once": NOT_A_KEY}
    made = own | bad

    def signed(what: dict[str, Any]) -> dict[str, Any]:
        signature = account.sign(canonical(what).encode()).to_base64()
        return what | {"signatures": {user.id: {f"ed25519:{user.device}": signature}}}

    device = {
        "user_id": user.id,
        "device_id": user.device,
        "algorithms": [OLM, MEGOLM],
        "keys": {f"{kind}:{user.device}": made[kind] for kind in ("ed25519", "curve25519")},
    }
    body = {
        "device_keys": signed(device),
        "one_time_keys": {
            f"signed_curve25519:AAAA{n}": signed({"key": made["once"]}) for n in range(20)
        },
    }
    status, answer = street.server.call("POST", "/_matrix/client/v3/keys/upload", body, user.token)
    assert status == 200, answer
    return user


BAD_DEVICES = {
    "no key": {"curve25519": "nonsense"},
    "an empty key": {"curve25519": ""},
    "no one-time key": {"once": "nonsense"},
    "a short one-time key": {"once": "AAAA"},
    "no fingerprint": {"ed25519": "nonsense"},
    "zeros": {},
}


async def test_no_device_of_a_member_silences_the_bot(street: Street) -> None:
    """Its keys are anything at all: they are only looked at when the bot writes to the room."""
    ines, bot, room = await street.begun()
    for bad in BAD_DEVICES.values():
        user = upload_device(street, bad)
        await ines.invite(room, user.id)
        path = f"/_matrix/client/v3/join/{quote(room)}"
        assert street.server.call("POST", path, {}, user.token)[0] == 200
        await bot.answers(ines, room)
    await bot.stop()
    bot.start()
    await bot.answers(ines, room)
