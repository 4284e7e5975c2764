"""The calendar in a real room: pinned and edited in place, as a picture, as a file."""

import asyncio
import io
from datetime import timedelta
from typing import Any
from urllib.parse import quote

import pytest
from icalendar import Calendar
from nio.crypto.attachments import decrypt_attachment
from PIL import Image

from bot.sandbox_neighbour import Neighbour, Raw
from tests.matrix.conftest import Bot, Street

QUICK = timedelta(seconds=0.2)


@pytest.fixture
async def ines(street: Street) -> Neighbour:
    return await street.neighbour("ines")


@pytest.fixture
async def bot(street: Street, monkeypatch: pytest.MonkeyPatch) -> Bot:
    """A bot that does not wait with its edits, whatever the hour."""
    monkeypatch.setattr("bot.pinned.SELDOM", QUICK)
    monkeypatch.setattr("bot.pinned.SOON", QUICK)
    monkeypatch.setattr("bot.pinned.is_quiet", lambda *_: False)
    bot = street.bot()
    bot.start()
    return bot


def state(street: Street, ines: Neighbour, room: str, kind: str) -> dict[str, Any]:
    path = f"/_matrix/client/v3/rooms/{quote(room)}/state/{kind}/"
    status, answer = street.server.call("GET", path, None, ines.client.access_token)
    return answer if status == 200 else {}


def pinned(street: Street, ines: Neighbour, room: str) -> list[str]:
    return list(state(street, ines, room, "m.room.pinned_events").get("pinned", []))


def is_notice(bot: Bot) -> Any:
    def found(raw: Raw) -> bool:
        body = str(raw["content"].get("body", ""))
        return raw["sender"] == bot.user.id and body.startswith("What is due")

    return found


def set_power(street: Street, ines: Neighbour, bot: Bot, room: str) -> None:
    """Ines lets the bot change the room's settings."""
    levels = state(street, ines, room, "m.room.power_levels")
    levels["users"] = {**levels.get("users", {}), bot.user.id: 50}
    path = f"/_matrix/client/v3/rooms/{quote(room)}/state/m.room.power_levels/"
    status, answer = street.server.call("PUT", path, levels, ines.client.access_token)
    assert status == 200, answer


@pytest.mark.parametrize("encrypted", [True, False], ids=["encrypted", "plain"])
async def test_the_calendar_hangs_at_the_top_and_is_edited_in_place(
    street: Street, ines: Neighbour, bot: Bot, encrypted: bool
) -> None:
    room = await street.room_with(bot, ines, encrypted=encrypted)
    set_power(street, ines, bot, room)
    await ines.say(room, "Added 2 kg of scraps to the shed bin")
    notice = await ines.hears(room, is_notice(bot))
    assert "drain the shed bin" in notice["content"]["body"]
    assert notice["content"]["msgtype"] == "m.notice"
    async with asyncio.timeout(60):
        while pinned(street, ines, room) != [notice["event_id"]]:  # noqa: ASYNC110 - no bell
            await asyncio.sleep(0.1)
    await ines.say(room, "Added 1 kg of scraps to the yard bin")

    def is_edit(raw: Raw) -> bool:
        relation = raw["content"].get("m.relates_to") or {}
        of_it = relation.get("event_id") == notice["event_id"]
        return relation.get("rel_type") == "m.replace" and of_it

    edit = await ines.hears(room, is_edit)
    assert "the shed bin (Ines) and the yard bin" in edit["content"]["m.new_content"]["body"]
    posted = [raw for raw in ines.heard[room] if is_notice(bot)(raw)]
    assert len(posted) == 1


async def test_without_the_power_it_says_once_how_to_allow_it(
    street: Street, ines: Neighbour, bot: Bot
) -> None:
    room = await street.room_with(bot, ines)
    await ines.say(room, "Added 2 kg of scraps to the shed bin")
    await ines.hears(room, bot.said("may not pin messages here"))
    event = await ines.say(room, "Added 1 kg of scraps to the yard bin")
    await ines.answer_to(room, event, bot.user.id)
    await asyncio.sleep(2)
    said = [raw for raw in ines.heard[room] if bot.said("may not pin")(raw)]
    assert len(said) == 1
    assert pinned(street, ines, room) == []


async def fetched(ines: Neighbour, content: dict[str, Any]) -> bytes:
    """The bytes of a file or picture, decrypted if it was encrypted."""
    file = content.get("file")
    answer = await ines.client.download(mxc=file["url"] if file else content["url"])
    body: bytes = answer.body
    if file:
        body = decrypt_attachment(body, file["key"]["k"], file["hashes"]["sha256"], file["iv"])
    return body


@pytest.mark.parametrize("encrypted", [True, False], ids=["encrypted", "plain"])
async def test_the_calendar_is_posted_as_a_picture_and_as_a_file(
    street: Street, ines: Neighbour, bot: Bot, encrypted: bool
) -> None:
    room = await street.room_with(bot, ines, encrypted=encrypted)
    await ines.say(room, "Added 2 kg of scraps to the shed bin")
    event = await ines.say(room, "show the calendar")
    shown = (await ines.answer_to(room, event, bot.user.id))["content"]
    assert shown["msgtype"] == "m.image"
    assert "The shed bin (Ines): drain" in shown["body"]
    assert ("file" in shown) == encrypted
    image = Image.open(io.BytesIO(await fetched(ines, shown)))
    assert image.size == (shown["info"]["w"], shown["info"]["h"])
    event = await ines.say(room, "post the calendar file")
    posted = (await ines.answer_to(room, event, bot.user.id))["content"]
    assert posted["msgtype"] == "m.file"
    assert posted["filename"] == "our-bins.ics"
    calendar = Calendar.from_ical(await fetched(ines, posted))
    assert {str(one["SUMMARY"]) for one in calendar.walk("VEVENT")} >= {"Drain the shed bin (Ines)"}
    kept = "SELECT 1 FROM outbox WHERE attached IS NOT NULL"
    await bot.comes_to(f"SELECT 1 WHERE NOT EXISTS ({kept})")
