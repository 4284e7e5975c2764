"""What is said while the bot is away, or before its key has come, is heard once and in order."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING, Any
from uuid import uuid4

import pytest

from bot import matrix, missing_keys, timeline
from storage import session
from storage.database import Database

if TYPE_CHECKING:
    from bot.sandbox_neighbour import Neighbour
    from tests.matrix.conftest import Bot, Street


@pytest.mark.parametrize(
    ("version", "encrypted"), [("11", False), ("12", True)], ids=["plain", "encrypted"]
)
@pytest.mark.parametrize("token_lost", [False, True], ids=["", "token lost"])
async def test_more_than_a_timeline_missed(
    street: Street, monkeypatch: pytest.MonkeyPatch, version: str, encrypted: bool, token_lost: bool
) -> None:
    # Few events an answer, so that these fill a timeline and several pages.
    monkeypatch.setitem(matrix.FILTER["room"], "timeline", {"limit": 5})
    monkeypatch.setattr(timeline, "PAGE", 10)
    ines, bot, room = await street.begun(version=version, encrypted=encrypted)
    before = await bot.answers(ines, room)
    await bot.stop()
    events = [await ines.say(room, "@pailkeeper help") for _ in range(25)]
    if token_lost:
        await bot.keep_token("garbage")
    bot.start()
    await ines.answer_to(room, events[-1], bot.user.id)
    assert bot.replies(ines, room) == [before, *events]


async def test_a_member_who_came_meanwhile_is_known(street: Street) -> None:
    ines, bot, room = await street.begun()
    await bot.stop()
    mei = await street.neighbour("mei")
    await ines.invite(room, mei.user)
    await mei.join(room)
    bot.start()
    await bot.comes_to("SELECT 1 FROM member WHERE name = 'Mei' AND present = 1")
    await bot.answers(mei, room)


def withhold(sender: Neighbour, room: str, bot: Bot) -> dict[str, Any]:
    """Have the sender's next session not given to the bot; the key it would need."""
    olm = sender.client.olm
    assert olm is not None
    olm.blacklist_device(sender.client.device_store[bot.user.id][bot.user.device])
    sender.client.invalidate_outbound_session(room)
    olm.create_outbound_group_session(room)
    made = olm.outbound_group_sessions[room]
    return {
        "algorithm": "m.megolm.v1.aes-sha2",
        "room_id": room,
        "session_id": made.id,
        "session_key": made.session_key,
    }


def no_longer_withhold(sender: Neighbour, room: str, bot: Bot) -> None:
    olm = sender.client.olm
    assert olm is not None
    olm.unblacklist_device(sender.client.device_store[bot.user.id][bot.user.device])
    sender.client.invalidate_outbound_session(room)


def hand_over(street: Street, sender: Neighbour, bot: Bot, key: dict[str, Any]) -> None:
    olm = sender.client.olm
    assert olm is not None
    device = sender.client.device_store[bot.user.id][bot.user.device]
    olm_session = olm.session_store.get(device.curve25519)
    sealed = olm._olm_encrypt(olm_session, device, "m.room_key", key)  # type: ignore[no-untyped-call]
    path = f"/_matrix/client/v3/sendToDevice/m.room.encrypted/{uuid4().hex}"
    body = {"messages": {bot.user.id: {bot.user.device: sealed}}}
    status, _ = street.server.call("PUT", path, body, sender.client.access_token)
    assert status == 200


async def test_a_message_waits_for_its_key(street: Street, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(missing_keys, "GRACE_SECONDS", 60.0)
    ines, bot, room = await street.begun()
    first = await bot.answers(ines, room)
    key = withhold(ines, room, bot)
    second = await ines.say(room, "@pailkeeper help")
    await bot.comes_to("SELECT 1 FROM inbox WHERE state = 'parked'")
    no_longer_withhold(ines, room, bot)
    third = await ines.say(room, "@pailkeeper help")
    # The third could be read, but the second was first.
    await bot.comes_to("SELECT 1 FROM inbox WHERE state = 'waiting'")
    hand_over(street, ines, bot, key)
    await ines.answer_to(room, third, bot.user.id)
    assert bot.replies(ines, room) == [first, second, third]


async def test_a_room_is_not_held_up_for_a_key_that_does_not_come(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(missing_keys, "GRACE_SECONDS", 0.3)
    ines, bot, room = await street.begun()
    first = await bot.answers(ines, room)
    key = withhold(ines, room, bot)
    second = await ines.say(room, "@pailkeeper help")
    await bot.comes_to("SELECT 1 FROM inbox WHERE state = 'parked'")
    no_longer_withhold(ines, room, bot)
    third = await bot.answers(ines, room)
    # Late, also after a restart, is better than never.
    await bot.stop()
    hand_over(street, ines, bot, key)
    bot.start()
    await ines.answer_to(room, second, bot.user.id)
    assert bot.replies(ines, room) == [first, third, second]


async def test_the_token_is_kept_only_with_its_events(street: Street) -> None:
    ines, bot, room = await street.begun()
    await bot.stop()
    db = await Database.open(bot.home.book)
    before = await session.sync_token(db)
    await db.close()
    event = await ines.say(room, "@pailkeeper help")
    bot.start()
    await ines.answer_to(room, event, bot.user.id)
    await bot.stop()
    db = await Database.open(bot.home.book)
    after = await session.sync_token(db)
    await db.close()
    assert before != after
    # Told all of it again, the bot answers nothing again.
    assert before is not None
    await bot.keep_token(before)
    bot.start()
    last = await bot.answers(ines, room)
    assert bot.replies(ines, room) == [event, last]


async def test_more_keys_than_the_homeserver_gives_at_once(street: Street) -> None:
    """Synapse hands out a hundred to-device messages with a sync answer; the rest come later."""
    ines, bot, room = await street.begun()
    await bot.answers(ines, room)
    await bot.stop()
    events = []
    for _ in range(120):
        ines.client.invalidate_outbound_session(room)
        events.append(await ines.say(room, "added 1 kg scraps to the shed bin"))
    bot.start()
    made = "SELECT event FROM entry WHERE act = 'layer' ORDER BY id"
    await bot.comes_to_hold(made, [(event,) for event in events])


def say_that_it_is_withheld(
    street: Street, sender: Neighbour, bot: Bot, key: dict[str, Any]
) -> None:
    told = {name: value for name, value in key.items() if name != "session_key"}
    path = f"/_matrix/client/v3/sendToDevice/m.room_key.withheld/{uuid4().hex}"
    body = {"messages": {bot.user.id: {bot.user.device: told | {"code": "m.unverified"}}}}
    status, _ = street.server.call("PUT", path, body, sender.client.access_token)
    assert status == 200


@pytest.mark.parametrize(
    ("on_purpose", "says"), [(False, "has not reached me"), (True, "your app keeps its key")]
)
async def test_a_message_that_stays_unread_is_owned_up_to_once(
    street: Street, monkeypatch: pytest.MonkeyPatch, on_purpose: bool, says: str
) -> None:
    monkeypatch.setattr(missing_keys, "GRACE_SECONDS", 0.1)
    monkeypatch.setattr(missing_keys, "OWN_UP_AFTER", timedelta(0))
    ines, bot, room = await street.begun()
    first = await bot.answers(ines, room)
    key = withhold(ines, room, bot)
    if on_purpose:
        say_that_it_is_withheld(street, ines, bot, key)
    second = await ines.say(room, "@pailkeeper help")
    third = await ines.say(room, "@pailkeeper help")
    answer = await ines.answer_to(room, second, bot.user.id)
    assert says in answer["content"]["body"]
    hand_over(street, ines, bot, key)
    await ines.answer_to(room, third, bot.user.id)
    assert bot.replies(ines, room) == [first, second, second, third]
