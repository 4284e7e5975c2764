"""A neighbour's day in the room, as their own client sees it: the record follows what is said."""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from bot.sandbox_neighbour import Neighbour, Raw
    from tests.matrix.conftest import Bot, Street

STANDING = "SELECT mass_kg FROM entry WHERE act = 'layer' AND struck_at IS NULL"

pytestmark = pytest.mark.parametrize(
    ("version", "encrypted"),
    [("11", True), ("12", True), ("12", False)],
    ids=["11 encrypted", "12 encrypted", "12 plain"],
)


async def logged(ines: Neighbour, room: str, bot: Bot) -> tuple[str, Raw]:
    """A layer is told; its event and the bot's answer."""
    event = await ines.say(room, "Added 2 kg of scraps to the shed bin, mostly meat")
    answer = await ines.answer_to(room, event, bot.user.id)
    assert "shed" in answer["content"]["body"]
    assert bot.rows(STANDING) == [(2.0,)]
    return event, answer


async def changed(ines: Neighbour, room: str, answer: Raw, words: str = "") -> str:
    """The new words of an answer of the bot's, once it has changed them to such with `words`."""

    def is_change(raw: Raw) -> bool:
        relation = raw["content"].get("m.relates_to") or {}
        of_it = relation.get("event_id") == answer["event_id"]
        is_edit = relation.get("rel_type") == "m.replace" and of_it
        return is_edit and words in raw["content"]["m.new_content"]["body"]

    change = await ines.hears(room, is_change)
    return str(change["content"]["m.new_content"]["body"])


@pytest.fixture
async def ines(street: Street) -> Neighbour:
    return await street.neighbour("ines")


@pytest.fixture
async def bot(street: Street) -> Bot:
    bot = street.bot()
    bot.start()
    return bot


@pytest.fixture
async def room(street: Street, ines: Neighbour, bot: Bot, version: str, encrypted: bool) -> str:
    return await street.room_with(bot, ines, version=version, encrypted=encrypted)


async def test_a_layer_is_logged_and_answered_as_a_reply(
    ines: Neighbour, bot: Bot, room: str
) -> None:
    _, answer = await logged(ines, room, bot)
    assert answer["content"]["msgtype"] == "m.notice"
    assert answer["content"]["m.mentions"] == {}


async def test_small_talk_is_left_alone(ines: Neighbour, bot: Bot, room: str) -> None:
    small = await ines.say(room, "what a match last night, 2 kg of crisps")
    event, _ = await logged(ines, room, bot)
    assert bot.replies(ines, room) == [event]
    assert small != event


async def test_an_edit_changes_record_and_answer(ines: Neighbour, bot: Bot, room: str) -> None:
    event, answer = await logged(ines, room, bot)
    await ines.edit(room, event, "Added 3 kg of scraps to the shed bin, mostly meat")
    assert "3 kg" in await changed(ines, room, answer)
    assert bot.rows(STANDING) == [(3.0,)]
    assert bot.replies(ines, room) == [event]


async def test_each_change_is_an_edit_of_the_answer_itself(
    ines: Neighbour, bot: Bot, room: str
) -> None:
    """An edit of an edit is none by the specification: clients would go on showing the first."""
    event, answer = await logged(ines, room, bot)
    for amount in ("3 kg", "4 kg"):
        await ines.edit(room, event, f"Added {amount} of scraps to the shed bin, mostly meat")
        await changed(ines, room, answer, amount)
    await ines.client.room_redact(room, event)
    await changed(ines, room, answer, "Struck out")


async def test_a_cross_taken_back_is_told(ines: Neighbour, bot: Bot, room: str) -> None:
    event, answer = await logged(ines, room, bot)
    cross = await ines.react(room, event, "❌")
    await changed(ines, room, answer, "Struck out")
    await ines.client.room_redact(room, cross)
    await changed(ines, room, answer, "In the book again")
    assert bot.rows(STANDING) == [(2.0,)]


async def test_somebody_elses_edit_changes_nothing(
    street: Street, ines: Neighbour, bot: Bot, room: str
) -> None:
    mallory = await street.neighbour("mallory")
    await ines.invite(room, mallory.user)
    await mallory.join(room)
    event, _ = await logged(ines, room, bot)
    await mallory.edit(room, event, "Added 9 kg of scraps to the shed bin, mostly meat")
    await bot.answers(mallory, room)
    assert bot.rows(STANDING) == [(2.0,)]


async def test_a_deleted_message_is_struck_from_the_record(
    ines: Neighbour, bot: Bot, room: str
) -> None:
    event, answer = await logged(ines, room, bot)
    await ines.client.room_redact(room, event)
    await changed(ines, room, answer)
    assert bot.rows(STANDING) == []


async def test_a_cross_by_its_author_strikes_a_record(
    street: Street, ines: Neighbour, bot: Bot, room: str
) -> None:
    mallory = await street.neighbour("mallory")
    await ines.invite(room, mallory.user)
    await mallory.join(room)
    event, answer = await logged(ines, room, bot)
    await mallory.react(room, event, "❌")
    await bot.answers(mallory, room)
    assert bot.rows(STANDING) == [(2.0,)]
    await ines.react(room, event, "❌")
    await changed(ines, room, answer)
    assert bot.rows(STANDING) == []


async def test_what_is_said_in_a_thread_is_answered_there(
    ines: Neighbour, bot: Bot, room: str
) -> None:
    root = await ines.say(room, "hello there")
    relation = {
        "rel_type": "m.thread",
        "event_id": root,
        "is_falling_back": True,
        "m.in_reply_to": {"event_id": root},
    }
    event = await ines.say(room, "@pailkeeper help", **{"m.relates_to": relation})
    answer = await ines.answer_to(room, event, bot.user.id)
    assert answer["content"]["m.relates_to"]["rel_type"] == "m.thread"
    assert answer["content"]["m.relates_to"]["event_id"] == root


async def test_changes_made_while_the_bot_was_away_are_followed(
    ines: Neighbour, bot: Bot, room: str
) -> None:
    event, answer = await logged(ines, room, bot)
    await bot.stop()
    await ines.edit(room, event, "Added 4 kg of scraps to the shed bin, mostly meat")
    second = await ines.say(room, "Added 1 kg of scraps to the shed bin")
    third = await ines.say(room, "Added 5 kg of scraps to the shed bin")
    await ines.client.room_redact(room, third)
    bot.start()
    await ines.answer_to(room, second, bot.user.id)
    assert "4 kg" in await changed(ines, room, answer)
    assert sorted(bot.rows(STANDING)) == [(1.0,), (4.0,)]


async def test_an_answer_changed_before_it_was_sent_is_given_once(
    ines: Neighbour, bot: Bot, room: str
) -> None:
    await logged(ines, room, bot)
    await bot.stop()
    event = await ines.say(room, "Added 5 kg of cake to the shed bin")
    await ines.edit(room, event, "Added 500 g of cake to the shed bin")
    bot.start()
    answer = await ines.answer_to(room, event, bot.user.id)
    assert "500 g" in answer["content"]["body"]
    await ines.edit(room, event, "Added 400 g of cake to the shed bin")
    await changed(ines, room, answer, "400 g")
    assert bot.replies(ines, room).count(event) == 1


async def test_words_beneath_a_photo_are_read_and_a_member_called_by_id_is_known(
    ines: Neighbour, bot: Bot, room: str
) -> None:
    photo = {"msgtype": "m.image", "filename": "IMG_3.jpg", "info": {"mimetype": "image/jpeg"}}
    key = {"alg": "A256CTR", "ext": True, "k": "x", "key_ops": ["decrypt"], "kty": "oct"}
    file = {"url": "mxc://test/x", "key": key, "iv": "x", "hashes": {"sha256": "x"}, "v": "v2"}
    photo |= {"file": file} if ines.client.rooms[room].encrypted else {"url": "mxc://test/x"}
    bare = await ines.send(room, "m.room.message", photo | {"body": "IMG_3.jpg"})
    words = f"{ines.user} added 2 kg of scraps to the shed bin, mostly meat"
    event = await ines.send(room, "m.room.message", photo | {"body": words})
    await ines.answer_to(room, event, bot.user.id)
    assert bot.rows(STANDING) == [(2.0,)]
    assert bare not in bot.replies(ines, room)
