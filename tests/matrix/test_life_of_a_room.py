"""What happens to a room: upgraded, left, come back to; the book stays with its group."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from typing import TYPE_CHECKING, Any
from urllib.parse import quote

import pytest

from bot.pacing import Patience

if TYPE_CHECKING:
    from bot.sandbox_neighbour import Neighbour, Raw
    from tests.matrix.conftest import Street

MOVED = "takes the place of the one before"


def upgrade(street: Street, host: Neighbour, room: str, version: str = "12") -> str:
    """Have the homeserver upgrade a room as clients do; the new room."""
    path = f"/_matrix/client/v3/rooms/{quote(room)}/upgrade"
    body = {"new_version": version}
    status, answer = street.server.call("POST", path, body, host.client.access_token)
    assert status == 200, answer
    return str(answer["replacement_room"])


LAYERS = "SELECT mass_kg FROM entry WHERE act = 'layer' AND struck_at IS NULL ORDER BY id"


@pytest.mark.parametrize(
    ("old", "new", "encrypted"), [("10", "11", False), ("11", "12", True), ("12", "12", True)]
)
async def test_the_book_moves_along_with_an_upgraded_room(
    street: Street, old: str, new: str, encrypted: bool
) -> None:
    ines, bot, room = await street.begun(version=old, encrypted=encrypted)
    first = await bot.answers(ines, room, "added 2 kg scraps to the shed bin")
    later = upgrade(street, ines, room, new)
    await ines.invite(later, bot.user.id)
    await ines.hears(later, bot.said(MOVED))
    await bot.answers(ines, later, "added 3 kg scraps to the shed bin")
    assert bot.rows("SELECT address FROM room") == [(later,)]
    assert bot.rows(LAYERS) == [(2.0,), (3.0,)]
    assert bot.rows("SELECT count(*) FROM bin") == [(1,)]
    assert bot.rows("SELECT name, present FROM member WHERE user IS NOT NULL") == [("Ines", 1)]
    # What is taken back in the old room is taken back; the bot knows both after a restart, too.
    await bot.stop()
    bot.start()
    await ines.client.room_redact(room, first)
    # Its answer was in the old room, where nothing can be changed from the new one.
    struck = await ines.hears(later, bot.said("Struck out: 2 kg"))
    assert "m.new_content" not in struck["content"]
    await bot.answers(ines, later, "added 1 kg scraps to the shed bin")
    assert bot.rows(LAYERS) == [(3.0,), (1.0,)]
    assert bot.rows("SELECT count(*) FROM room") == [(1,)]


async def test_it_follows_an_upgrade_it_slept_through_without_an_invitation(street: Street) -> None:
    ines, bot, room = await street.begun(encrypted=False)
    await bot.answers(ines, room, "added 2 kg scraps to the shed bin")
    await bot.stop()
    later = upgrade(street, ines, room)
    path = f"/_matrix/client/v3/rooms/{quote(later)}/state/m.room.join_rules/"
    street.server.call("PUT", path, {"join_rule": "public"}, ines.client.access_token)
    bot.start()
    await ines.hears(later, bot.said(MOVED))
    assert bot.rows("SELECT address FROM room") == [(later,)]


async def test_one_who_may_not_invite_may_where_the_room_was_upgraded(street: Street) -> None:
    ines, bot, room = await street.begun(encrypted=False)
    await bot.answers(ines, room, "added 2 kg scraps to the shed bin")
    await bot.stop()
    bot.settings = type(bot.settings)(obey=("@ada:elsewhere.test",), listen="")
    later = upgrade(street, ines, room)
    await ines.invite(later, bot.user.id)
    bot.start()
    await ines.hears(later, bot.said(MOVED))


async def test_a_room_that_claims_a_predecessor_gets_no_book(street: Street) -> None:
    """Only the new room says so: anybody can write that, and would have another group's book."""
    ines, bot = await street.neighbour("ines"), street.bot()
    mallory = await street.neighbour("mallory")
    bot.start()
    room = await street.room_with(bot, ines, version="11", encrypted=False)
    last = await bot.answers(ines, room, "added 2 kg scraps to the shed bin")
    made = {
        "room_version": "11",
        "invite": [bot.user.id],
        "creation_content": {"predecessor": {"room_id": room, "event_id": last}},
    }
    token = mallory.client.access_token
    _, answer = street.server.call("POST", "/_matrix/client/v3/createRoom", made, token)
    hers = str(answer["room_id"])
    await mallory.hears(hers, bot.said())
    asked = await mallory.say(hers, "how full is the shed bin?")
    said = await mallory.answer_to(hers, asked, bot.user.id)
    assert "2 kg" not in said["content"]["body"]
    assert {address for (address,) in bot.rows("SELECT address FROM room")} == {room, hers}


async def test_a_tombstone_into_a_room_of_others_takes_nothing_there(street: Street) -> None:
    """Only the old room says so: the new one is another group's, and names no predecessor."""
    ines, bot, room = await street.begun(encrypted=False)
    await bot.answers(ines, room, "added 2 kg scraps to the shed bin")
    other = await street.room_with(bot, await street.neighbour("mei"), encrypted=False)
    path = f"/_matrix/client/v3/rooms/{quote(room)}/state/m.room.tombstone/"
    body = {"body": "moved", "replacement_room": other}
    assert street.server.call("PUT", path, body, ines.client.access_token)[0] == 200
    await bot.answers(ines, room, "added 1 kg scraps to the shed bin")
    assert {address for (address,) in bot.rows("SELECT address FROM room")} == {room, other}


@pytest.mark.parametrize("how", ["room_kick", "room_ban"])
async def test_put_out_and_asked_back_it_has_its_book(street: Street, how: str) -> None:
    ines, bot, room = await street.begun(encrypted=False)
    await bot.answers(ines, room, "added 2 kg scraps to the shed bin")
    await getattr(ines.client, how)(room, bot.user.id)
    await bot.comes_to("SELECT 1 FROM room WHERE left_at IS NOT NULL")
    unheard = await ines.say(room, "added 9 kg scraps to the shed bin")
    if how == "room_ban":
        await ines.client.room_unban(room, bot.user.id)
    await ines.invite(room, bot.user.id)
    await bot.comes_to("SELECT 1 FROM room WHERE left_at IS NULL")
    heard = await bot.answers(ines, room, "added 1 kg scraps to the shed bin")
    assert bot.rows(LAYERS) == [(2.0,), (1.0,)]
    assert bot.replies(ines, room)[-1] == heard
    assert unheard not in bot.replies(ines, room)


async def test_members_leave_come_back_and_change_their_names(street: Street) -> None:
    ines, mei, bot = await street.neighbour("ines"), await street.neighbour("mei"), street.bot()
    bot.start()
    room = await street.room_with(bot, ines, encrypted=False)
    await ines.invite(room, mei.user)
    await mei.join(room)
    await bot.comes_to("SELECT 1 FROM member WHERE name = 'Mei' AND present = 1")
    await bot.answers(mei, room, "added 2 kg scraps to the shed bin")
    await mei.client.room_leave(room)
    await bot.comes_to("SELECT 1 FROM member WHERE name = 'Mei' AND present = 0")
    await ines.invite(room, mei.user)
    await mei.join(room)
    named = {"membership": "join", "displayname": "Mei\u202e Ling\n"}
    member: dict[str, Any] = {"state_key": mei.user, "content": named}
    path = f"/_matrix/client/v3/rooms/{quote(room)}/state/m.room.member/{quote(mei.user)}"
    street.server.call("PUT", path, member["content"], mei.client.access_token)
    await bot.comes_to("SELECT 1 FROM member WHERE name = 'Mei Ling' AND present = 1")
    assert bot.rows("SELECT count(*) FROM member WHERE user = ?", mei.user) == [(1,)]
    assert bot.rows(
        "SELECT member.name FROM entry JOIN member ON member.id = entry.member WHERE act = 'layer'"
    ) == [("Mei Ling",)]
    # Forgotten and heard again, they are called as the room shows them.
    await bot.answers(mei, room, "pailkeeper, forget me for good")
    assert bot.rows("SELECT 1 FROM member WHERE user = ?", mei.user) == []
    await bot.answers(mei, room, "added 1 kg scraps to the shed bin")
    assert bot.rows("SELECT name FROM member WHERE user = ?", mei.user) == [("Mei Ling",)]


def put_state(street: Street, host: Neighbour, room: str, kind: str, content: Raw) -> None:
    path = f"/_matrix/client/v3/rooms/{quote(room)}/state/{kind}/"
    status, answer = street.server.call("PUT", path, dict(content), host.client.access_token)
    assert status == 200, answer


async def test_its_name_topic_and_aliases_are_the_rooms_own_affair(street: Street) -> None:
    ines, bot, room = await street.begun(encrypted=False)
    await bot.answers(ines, room, "added 2 kg scraps to the shed bin")
    alias = f"#bins{street.number}:{ines.user.partition(':')[2]}"
    path = f"/_matrix/client/v3/directory/room/{quote(alias)}"
    token = ines.client.access_token
    assert street.server.call("PUT", path, {"room_id": room}, token)[0] == 200
    put_state(street, ines, room, "m.room.canonical_alias", {"alias": alias})
    put_state(street, ines, room, "m.room.name", {"name": "Bins <b>&"})
    put_state(street, ines, room, "m.room.topic", {"topic": "added 9 kg scraps to the shed bin"})
    await bot.answers(ines, room, "added 3 kg scraps to the shed bin")
    # The alias names another room from now on: the book does not follow it.
    other = await street.room_with(bot, ines, encrypted=False)
    assert street.server.call("DELETE", path, token=token)[0] == 200
    assert street.server.call("PUT", path, {"room_id": other}, token)[0] == 200
    await bot.answers(ines, room, "added 4 kg scraps to the shed bin")
    assert bot.rows(LAYERS) == [(2.0,), (3.0,), (4.0,)]
    assert bot.rows("SELECT address FROM room ORDER BY id") == [(room,), (other,)]


async def test_muted_it_goes_on_recording_and_answers_once_it_may(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(Patience, "LONGEST_SECONDS", 0.2)
    ines, bot, room = await street.begun(encrypted=False)
    other = await street.room_with(bot, ines)
    put_state(street, ines, room, "m.room.power_levels", {"users": {}, "events_default": 50})
    first = await ines.say(room, "added 2 kg scraps to the shed bin")
    second = await ines.say(room, "added 3 kg scraps to the shed bin")
    await bot.comes_to_hold(LAYERS, [(2.0,), (3.0,)])
    await bot.answers(ines, other, "@pailkeeper help")
    assert bot.replies(ines, room) == []
    put_state(street, ines, room, "m.room.power_levels", {"users": {}, "events_default": 0})
    await ines.answer_to(room, second, bot.user.id)
    assert bot.replies(ines, room) == [first, second]


@pytest.mark.parametrize("encrypted", [True, False])
async def test_it_is_called_by_the_name_that_it_shows(street: Street, encrypted: bool) -> None:
    ines, bot, room = await street.begun(encrypted=encrypted)
    bram = await street.neighbour("bram")
    await ines.invite(room, bram.user)
    await bram.join(room)
    named = "SELECT choices ->> 'own_name' FROM room"
    await bot.comes_to_hold(named, [("Pailkeeper",)])
    profile = f"/_matrix/client/v3/profile/{quote(bot.user.id)}/displayname"
    street.server.call("PUT", profile, {"displayname": "Mrs Bucket"}, bot.user.token)
    await bot.comes_to_hold(named, [("Mrs Bucket",)])
    await bram.say(room, "who took my ladder?")
    await bot.answers(ines, room, "mrs bucket, how much for 2 kg of peelings?")
    # A book from before it was kept has the name once the bot has come back.
    await bot.stop()
    with closing(sqlite3.connect(bot.home.book)) as book:
        book.execute("UPDATE room SET choices = '{}'")
        book.commit()
    bot.start()
    await bot.comes_to_hold(named, [("Mrs Bucket",)])
