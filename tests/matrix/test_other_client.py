"""A client of another make reads the bot and is read by it, with its own Rust encryption.

The client is matrix-js-sdk, the library under the Element apps, and its encryption is that of
matrix-rust-sdk; the bot's is matrix-nio.
"""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

import pytest

from tests.matrix.other_client import OtherClient, missing, other_client

if TYPE_CHECKING:
    from bot.sandbox_neighbour import Neighbour
    from tests.matrix.conftest import Bot, Street

RED = 2
"""The shield of a message from a device that its owner has not signed."""
STANDING = "SELECT mass_kg FROM entry WHERE act = 'layer' AND struck_at IS NULL"


@pytest.fixture
async def bot(street: Street) -> Bot:
    bot = street.bot()
    bot.start()
    await bot.comes_to("SELECT 1 FROM session")
    return bot


@pytest.fixture
async def bram(street: Street) -> Neighbour:
    """A neighbour at a client of the bot's own make."""
    return await street.neighbour("bram")


@pytest.fixture
async def room(street: Street, bram: Neighbour, bot: Bot) -> str:
    return await street.room_with(bot, bram)


@pytest.fixture
async def ines(street: Street, bram: Neighbour, room: str) -> OtherClient:
    """A neighbour at the other client, who has come into the room."""
    if lacking := missing():
        if os.environ.get("CI") == "true":
            pytest.fail(lacking)
        pytest.skip(lacking)
    user = street.user("ines")
    client = await street.stack.enter_async_context(other_client(street.server, user))
    await bram.invite(room, user.id)
    await client.does("join", room=room)
    return client


async def a_day_in_the_room(ines: OtherClient, bot: Bot, room: str) -> None:
    """Words, an edit, a reaction and a redaction: each is read, and answered readably."""
    before = bot.rows(STANDING)
    event = await ines.say(room, "Added 2 kg of scraps to the shed bin, mostly meat")
    answer = await ines.answer_to(event)
    assert answer["failure"] is None
    assert answer["encrypted"]
    assert answer["sender"] == bot.user.id
    assert "shed" in answer["content"]["body"]
    assert answer["shield"] != RED
    await ines.edit(room, event, "Added 3 kg of scraps to the shed bin, mostly meat")
    assert "3 kg" in await ines.change_of(answer["event_id"])
    assert bot.rows(STANDING) == [*before, (3.0,)]
    await ines.react(room, event, "❌")
    await bot.comes_to_hold(STANDING, before)
    second = await ines.say(room, "Added 5 kg of scraps to the shed bin")
    await ines.answer_to(second)
    assert bot.rows(STANDING) == [*before, (5.0,)]
    await ines.does("redact", room=room, event=second)
    await bot.comes_to_hold(STANDING, before)


async def test_it_reads_the_bot_and_is_read(ines: OtherClient, bot: Bot, room: str) -> None:
    await a_day_in_the_room(ines, bot, room)


async def test_it_does_so_where_it_trusts_signed_devices_only(
    ines: OtherClient, bot: Bot, room: str
) -> None:
    await ines.does("sign", password=ines.user.password)
    await ines.does("trustSignedOnly")
    await a_day_in_the_room(ines, bot, room)


async def test_after_a_restart_of_the_bot_both_still_read_each_other(
    ines: OtherClient, bot: Bot, room: str
) -> None:
    await ines.does("sign", password=ines.user.password)
    await ines.does("trustSignedOnly")
    await ines.answer_to(await ines.say(room, "@pailkeeper help"))
    await bot.stop()
    while_away = await ines.say(room, "Added 2 kg of scraps to the shed bin")
    bot.start()
    assert (await ines.answer_to(while_away))["failure"] is None
    await a_day_in_the_room(ines, bot, room)
