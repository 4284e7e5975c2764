"""Which devices the bot believes and writes to in encrypted rooms, by the setting `devices`."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any
from urllib.parse import quote
from uuid import uuid4

import pytest
from aiohttp import web
from aiohttp.test_utils import TestServer
from hypothesis import given
from hypothesis import strategies as st

from bot import matrix
from bot.account import Account
from bot.connection import call, connected
from bot.cross_signing import Device, Identity, Json, is_signed_by, new_seeds, sign_device
from bot.settings import Home
from bot.trust import signing_key
from tests.matrix.conftest import ENCRYPTION

if TYPE_CHECKING:
    from pathlib import Path

    from bot.sandbox_neighbour import Neighbour
    from tests.matrix.conftest import Bot, Street

LAYERS = "SELECT mass_kg FROM entry WHERE act = 'layer' ORDER BY id"
NOT_SIGNED = "its owner has not signed"


async def sign(somebody: Neighbour, identity: Identity) -> None:
    """Have a neighbour's device signed by their account's identity."""
    olm = somebody.client.olm
    assert olm is not None

    async def post(path: str, body: Json) -> tuple[int, Json]:
        return await call(somebody.client, "POST", path, body)

    device = Device(somebody.user, str(somebody.client.device_id), olm.account.sign)
    assert await sign_device(post, device, identity)


def cannot_read(raw: Any, event: str) -> bool:
    return bool(raw["event_id"] == event and raw["type"] == "m.room.encrypted")


async def settled(somebody: Neighbour, bot: Bot, room: str) -> str:
    """Something said and answered, so that all before it was dealt with; the answer's event."""
    event = await somebody.say(room, "@pailkeeper help")
    return str((await somebody.answer_to(room, event, bot.user.id))["event_id"])


def in_clear(street: Street, sender: Neighbour, room: str, content: dict[str, Any]) -> str:
    """A message that a homeserver, or whoever has an access token, puts into a room."""
    path = f"/_matrix/client/v3/rooms/{quote(room)}/send/m.room.message/{uuid4().hex}"
    status, answer = street.server.call("PUT", path, content, sender.client.access_token)
    assert status == 200, answer
    return str(answer["event_id"])


async def test_words_in_clear_are_not_believed_in_an_encrypted_room(street: Street) -> None:
    ines, bot, room = await street.begun()
    event = await bot.answers(ines, room, "added 1 kg scraps to the shed bin")
    new = {"msgtype": "m.text", "body": "added 9 kg scraps to the shed bin"}
    relation = {"rel_type": "m.replace", "event_id": event}
    edit = in_clear(street, ines, room, new | {"m.new_content": new, "m.relates_to": relation})
    in_clear(street, ines, room, {"msgtype": "m.text", "body": "pailkeeper, forget me for good"})
    told = await ines.answer_to(room, edit, bot.user.id)
    assert "it came unencrypted" in told["content"]["body"]
    await ines.react(room, event, "❌")  # which no client encrypts
    await bot.comes_to("SELECT 1 FROM entry WHERE struck_at IS NOT NULL")
    last = await bot.answers(ines, room, "added 2 kg scraps to the shed bin")
    assert bot.rows(LAYERS) == [(1.0,), (2.0,)]
    assert bot.replies(ines, room) == [event, edit, last]


async def test_words_from_before_a_room_was_encrypted_count(street: Street) -> None:
    ines, bot, room = await street.begun(encrypted=False)
    await bot.answers(ines, room)
    await bot.stop()
    before = await ines.say(room, "added 1 kg scraps to the shed bin")
    path = f"/_matrix/client/v3/rooms/{quote(room)}/state/m.room.encryption"
    token = ines.client.access_token
    assert street.server.call("PUT", path, ENCRYPTION["content"], token)[0] == 200
    in_clear(street, ines, room, {"msgtype": "m.text", "body": "added 5 kg scraps"})
    await ines.until(lambda: ines.client.rooms[room].encrypted)
    bot.start()
    await bot.comes_to(LAYERS)
    await bot.answers(ines, room, "added 2 kg scraps to the shed bin")
    assert bot.rows(LAYERS) == [(1.0,), (2.0,)]
    assert before in bot.replies(ines, room)


async def test_a_device_that_its_owner_has_not_signed_is_neither_believed_nor_told(
    street: Street,
) -> None:
    ines, bot, identity = (
        await street.neighbour("ines"),
        street.bot(),
        Identity.from_seeds(new_seeds()),
    )
    bot.start()
    room = await street.room_with(bot, ines)
    await sign(ines, identity)
    first = await ines.say(room, "added 2 kg scraps to the shed bin")
    await ines.answer_to(room, first, bot.user.id)
    stranger = await street.second_device(ines)
    refused = await stranger.say(room, "added 9 kg scraps to the shed bin")
    answer = await ines.answer_to(room, refused, bot.user.id)
    assert NOT_SIGNED in answer["content"]["body"]
    await stranger.say(room, "added 8 kg scraps to the shed bin")
    event = await settled(ines, bot, room)
    assert bot.rows(LAYERS) == [(2.0,)]
    await stranger.hears(room, lambda raw: cannot_read(raw, event))
    assert len([raw for raw in ines.heard[room] if bot.said(NOT_SIGNED)(raw)]) == 1
    # Signed after all, what it said is written down, also when the bot starts again meanwhile.
    await bot.stop()
    await sign(stranger, identity)
    bot.start()
    await bot.comes_to_hold(LAYERS, [(2.0,), (9.0,), (8.0,)])
    await stranger.answer_to(room, await stranger.say(room, "@pailkeeper help"), bot.user.id)


@pytest.mark.parametrize(
    ("devices", "of_one_who_signs", "of_one_who_signs_none"),
    [("signed", False, True), ("only signed", False, False), ("all", True, True)],
)
async def test_the_setting_says_whose_unsigned_devices_are_believed(
    street: Street, devices: str, of_one_who_signs: bool, of_one_who_signs_none: bool
) -> None:
    ines, mei = await street.neighbour("ines"), await street.neighbour("mei")
    bot = street.bot(devices=devices)
    bot.start()
    await sign(ines, Identity.from_seeds(new_seeds()))
    room = await street.room_with(bot, ines)
    await ines.invite(room, mei.user)
    await mei.join(room)
    again = await street.second_device(ines)
    expected = []
    for somebody, is_believed, kg in (
        (again, of_one_who_signs, 3),
        (mei, of_one_who_signs_none, 4),
    ):
        event = await somebody.say(room, f"added {kg} kg scraps to the shed bin")
        answer = await ines.answer_to(room, event, bot.user.id)
        assert (NOT_SIGNED in answer["content"]["body"]) is not is_believed
        expected += [(float(kg),)] * is_believed
    assert bot.rows(LAYERS) == expected


async def test_another_setting_counts_from_the_next_start(street: Street) -> None:
    ines, bot = await street.neighbour("ines"), street.bot(devices="only signed")
    bot.start()
    room = await street.room(ines, bot.user.id)
    await ines.hears(room, lambda raw: raw["type"] == "m.room.encrypted")  # the greeting
    event = await ines.say(room, "added 2 kg scraps to the shed bin")
    await bot.comes_to("SELECT 1 FROM outbox WHERE kind = 'reply'")
    await bot.stop()
    bot.settings = type(bot.settings)(listen="", devices="all")
    bot.start()
    await bot.comes_to_hold(LAYERS, [(2.0,)])
    await settled(ines, bot, room)
    assert bot.rows("SELECT count(*) FROM entry WHERE event = ?", event) == [(1,)]


async def test_no_key_goes_out_before_a_device_is_judged(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    """nio asks for keys itself when it writes to a room whose members it is not sure of."""

    async def leave_it(_: object) -> bool:
        return False

    monkeypatch.setattr(matrix, "tend_keys", leave_it)
    ines, bot = await street.neighbour("ines"), street.bot(devices="only signed")
    bot.start()
    room = await street.room(ines, bot.user.id)
    await bot.comes_to("SELECT 1 FROM outbox WHERE sent_as IS NOT NULL")
    [(greeting,)] = bot.rows("SELECT sent_as FROM outbox")
    await ines.hears(room, lambda raw: cannot_read(raw, greeting))


async def test_a_malformed_device_keeps_no_others_from_being_known(tmp_path: Path) -> None:
    sound = {"algorithms": [], "device_id": "D", "user_id": "@ines:test", "keys": {}}
    devices = {"@ines:test": {"D": sound}, "@mallory:test": {"D": {"algorithms": 5}}}
    asked = []

    async def answer(request: web.Request) -> web.Response:
        users = list((await request.json())["device_keys"])
        asked.append(sorted(users))
        return web.json_response({"device_keys": {user: devices[user] for user in users}})

    app = web.Application()
    app.router.add_post("/_matrix/client/v3/keys/query", answer)
    async with TestServer(app) as server:
        url = str(server.make_url("")).rstrip("/")
        account = Account(homeserver=url, user="@p:test", device="P", token="t", store_key="k")
        async with connected(Home(tmp_path), account) as client:
            assert client.olm is not None
            client.olm.users_for_key_query = set(devices)
            await client.trust.learn()
            assert client.trust.has_judged()
            assert not client.should_query_keys
    assert asked[0] == sorted(devices)
    assert sorted(asked[1:]) == [["@ines:test"], ["@mallory:test"]]


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner),
    max_leaves=8,
)
FIELDS = ("user_id", "usage", "keys", "signatures")


@given(JSON, st.fixed_dictionaries({}, optional=dict.fromkeys(FIELDS, JSON)))
def test_no_answer_of_a_homeserver_is_believed_for_its_shape(what: Any, key: Json) -> None:
    assert not is_signed_by(what, "@ines:test", "A" * 43)
    for answer in (what, {"master_keys": what}, {"master_keys": {"@ines:test": key}}):
        told = answer if isinstance(answer, dict) else {}
        assert signing_key("@ines:test", told | {"self_signing_keys": {"@ines:test": key}}) is None
