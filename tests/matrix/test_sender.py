"""Each thing is said once, in order, whatever happens between the book and the homeserver."""

from __future__ import annotations

import asyncio
from datetime import timedelta
from typing import TYPE_CHECKING, Any

import pytest
from aiohttp import ClientConnectionError
from nio.client.async_client import AsyncClient
from nio.responses import ShareGroupSessionError, ShareGroupSessionResponse

from bot import clock
from bot.connection import connected
from bot.pacing import Patience
from bot.sender import Sender
from storage import outbox, rooms
from storage.database import Database
from storage.rows import Message

if TYPE_CHECKING:
    from tests.matrix.conftest import Bot, Street


async def put(bot: Bot, room: str, message: Message) -> None:
    """Have the bot, which is not running, find something to say in its outbox."""
    db = await Database.open(bot.home.book)
    try:
        async with db.transaction():
            row = await rooms.find(db, room)
            assert row is not None
            await outbox.put(db, row.id, message, clock.now())
    finally:
        await db.close()


@pytest.mark.parametrize("encrypted", [True, False], ids=["encrypted", "plain"])
async def test_a_crash_after_the_homeserver_took_it_doubles_nothing(
    street: Street, monkeypatch: pytest.MonkeyPatch, encrypted: bool
) -> None:
    ines, bot, room = await street.begun(encrypted=encrypted)
    with monkeypatch.context() as patched:

        async def crash(*_: object) -> None:
            raise RuntimeError("power cut")

        patched.setattr(outbox, "sent", crash)
        event = await bot.answers(ines, room)
        assert bot.task is not None
        with pytest.raises(RuntimeError, match="power cut"):
            await bot.task
        bot.task = None
    assert bot.rows("SELECT count(*) FROM outbox WHERE sent_as IS NULL") == [(1,)]
    bot.start()
    last = await bot.answers(ines, room)
    assert bot.replies(ines, room) == [event, last]


@pytest.mark.parametrize("encrypted", [True, False], ids=["encrypted", "plain"])
async def test_a_bot_killed_before_it_could_send_answers_afterwards(
    street: Street, encrypted: bool
) -> None:
    ines, bot, room = await street.begun(encrypted=encrypted)
    await bot.stop()
    # The homeserver takes one message a second: answers pile up in the outbox.
    street.limit(bot.user, per_second=1, burst=1)
    process = await street.process(bot=bot)
    events = [await ines.say(room, "@pailkeeper help") for _ in range(8)]
    await bot.comes_to(
        "SELECT 1 FROM outbox WHERE kind = 'reply' GROUP BY kind HAVING count(*) = 8"
    )
    process.kill()
    await process.communicate()
    assert len(bot.replies(ines, room)) < 8
    street.limit(bot.user, per_second=0, burst=0)
    bot.start()
    await ines.answer_to(room, events[-1], bot.user.id)
    assert bot.replies(ines, room) == events


async def test_many_kills_neither_lose_nor_double_an_answer(street: Street) -> None:
    ines, bot, room = await street.begun()
    await bot.stop()
    events: list[str] = []
    for seconds in (0.7, 0.9, 1.1, 1.3):
        process = await street.process(bot=bot)
        async with asyncio.TaskGroup() as both:
            killing = both.create_task(asyncio.sleep(seconds))
            while not killing.done():
                events.append(await ines.say(room, "@pailkeeper help"))
                await asyncio.sleep(0.2)  # more at once would be answered together
        assert process.returncode is None, await process.communicate()
        process.kill()
        await process.communicate()
    bot.start()
    await ines.answer_to(room, events[-1], bot.user.id)
    assert bot.replies(ines, room) == events


async def test_more_messages_than_one_session_is_used_for(street: Street) -> None:
    """After a hundred messages the encryption takes a new session: none is lost over it."""
    ines, bot, room = await street.begun()
    await bot.stop()
    for number in range(130):
        await put(bot, room, Message(tx_id=f"n-{number}", kind="reply", body=f"{number} of many"))
    bot.start()
    await ines.hears(room, bot.said("129 of many"))
    said = [raw["content"]["body"] for raw in ines.heard[room] if bot.said("of many")(raw)]
    assert said == [f"{number} of many" for number in range(130)]


async def test_a_mark_that_is_there_already_counts_as_put(street: Street) -> None:
    ines, bot, room = await street.begun()
    event = await ines.say(room, "hello there")
    await bot.stop()
    for number in range(2):
        mark = Message(tx_id=f"mark-{number}", kind="reaction", body="👍", to_event=event)
        await put(bot, room, mark)
    bot.start()
    await bot.comes_to("SELECT 1 FROM outbox WHERE tx_id = 'mark-1' AND sent_as IS NOT NULL")
    assert bot.rows("SELECT count(*) FROM outbox WHERE refused IS NOT NULL") == [(0,)]


async def test_one_room_that_refuses_does_not_silence_the_others(street: Street) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    bot.start()
    mute = await street.room_with(bot, ines, encrypted=False)
    open_room = await street.room_with(bot, ines)
    levels = {"users": {}, "events_default": 50}
    await ines.client.room_put_state(mute, "m.room.power_levels", levels)
    await ines.say(mute, "@pailkeeper help")
    await bot.answers(ines, open_room)
    await bot.comes_to("SELECT 1 FROM outbox WHERE kind = 'reply' AND sent_as IS NULL")
    # What it was not let say for a day is not worth saying any more.
    await bot.stop()
    await age(bot, "kind = 'reply' AND sent_as IS NULL")
    bot.start()
    await bot.comes_to("SELECT 1 FROM outbox WHERE refused = 'M_FORBIDDEN'")


async def age(bot: Bot, which: str) -> None:
    """Have messages of the outbox be two days old, as if they had never been sent."""
    db = await Database.open(bot.home.book)
    try:
        async with db.transaction():
            before = clock.now() - timedelta(days=2)
            await db.write(
                f"UPDATE outbox SET sent_as = NULL, made_at = ? WHERE {which}",  # noqa: S608
                (int(before.timestamp() * 1000),),
            )
    finally:
        await db.close()


async def test_an_old_message_that_went_out_is_not_sent_again(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    ines, bot, room = await street.begun()
    event = await bot.answers(ines, room)
    await bot.stop()
    (sent,) = bot.rows("SELECT sent_as FROM outbox WHERE tx_id = ?", f"re-{event}")
    await age(bot, f"tx_id = 're-{event}'")
    db = await Database.open(bot.home.book)
    try:
        async with connected(bot.home, bot.account) as client:
            await client.sync(full_state=True)
            # The homeserver would have forgotten the transaction id by now.
            monkeypatch.setattr(client, "room_send", None)
            sender = Sender(client, db, clock.now)
            stop = asyncio.Event()
            working = asyncio.create_task(sender.work(stop))
            await bot.comes_to("SELECT 1 FROM outbox GROUP BY 1 HAVING count(*) = count(sent_as)")
            stop.set()
            sender.bell.ring()
            await working
    finally:
        await db.close()
    assert bot.rows("SELECT sent_as FROM outbox WHERE tx_id = ?", f"re-{event}") == [sent]


async def test_a_send_that_failed_while_sharing_keys_is_tried_again(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(Patience, "FIRST_SECONDS", 0.01)
    ines, bot = await street.neighbour("ines"), street.bot()
    claim, failures = AsyncClient.keys_claim, 0

    async def fail_once(client: AsyncClient, wanted: Any) -> Any:
        nonlocal failures
        if client.user_id == bot.user.id and not failures:
            failures += 1
            raise ClientConnectionError
        return await claim(client, wanted)

    monkeypatch.setattr(AsyncClient, "keys_claim", fail_once)
    bot.start()
    room = await street.room(ines, bot.user.id)
    await ines.hears(room, bot.said())
    assert failures == 1


@pytest.mark.parametrize("failure", [ClientConnectionError(), None], ids=["lost", "502"])
async def test_a_key_that_did_not_go_out_is_sent_again(
    street: Street, monkeypatch: pytest.MonkeyPatch, failure: Exception | None
) -> None:
    """nio takes the key for shared all the same, and nobody could read what is said under it."""
    monkeypatch.setattr(Patience, "FIRST_SECONDS", 0.01)
    ines, bot = await street.neighbour("ines"), street.bot()
    send, failures = AsyncClient._send, 0

    async def fail_once(client: AsyncClient, kind: Any, *args: Any, **named: Any) -> Any:
        nonlocal failures
        shares = kind is ShareGroupSessionResponse and client.user_id == bot.user.id
        if shares and not failures:
            failures += 1
            if failure:
                raise failure
            return ShareGroupSessionError("Bad gateway", room_id="", users_shared_with=set())
        return await send(client, kind, *args, **named)

    monkeypatch.setattr(AsyncClient, "_send", fail_once)
    bot.start()
    room = await street.room(ines, bot.user.id)
    await ines.hears(room, bot.said())
    assert failures == 1


async def test_within_a_room_order_is_kept_after_a_failure(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(Patience, "FIRST_SECONDS", 0.05)
    ines, bot, room = await street.begun()
    await bot.stop()
    events = [await ines.say(room, "@pailkeeper help") for _ in range(4)]
    send, tried = AsyncClient.room_send, []

    async def fail_every_second(client: AsyncClient, *args: Any, **named: Any) -> Any:
        if client.user_id == bot.user.id:
            tried.append(named["tx_id"])
            if len(tried) % 2:
                raise ClientConnectionError
        return await send(client, *args, **named)

    monkeypatch.setattr(AsyncClient, "room_send", fail_every_second)
    bot.start()
    await ines.answer_to(room, events[-1], bot.user.id)
    assert bot.replies(ines, room) == events
    assert tried == [f"re-{event}" for event in events for _ in range(2)]
