"""A communal bin passes on in a real room, between three people's own clients."""

from __future__ import annotations

import io
import xml.etree.ElementTree as ElementTree
from datetime import UTC, datetime
from typing import TYPE_CHECKING
from urllib.parse import quote

import pytest
from nio.crypto.attachments import decrypt_attachment

if TYPE_CHECKING:
    from bot.sandbox_neighbour import Neighbour, Raw
    from tests.matrix.conftest import Bot, Street

TAKEN = (
    "SELECT member.name FROM entry JOIN member ON member.id = entry.member "
    "WHERE act = 'accept' AND struck_at IS NULL"
)


class Yard:
    """Ines, Bram and Mei in one room with the bot, and the yard bin, which Ines keeps."""

    def __init__(self, bot: Bot, room: str, people: list[Neighbour]) -> None:
        self.bot, self.room = bot, room
        self.ines, self.bram, self.mei = people

    async def says(self, who: Neighbour, words: str) -> Raw:
        """Somebody writes; the bot's reply, as they read it."""
        event = await who.say(self.room, words)
        return await who.answer_to(self.room, event, self.bot.user.id)

    async def keeper(self) -> str:
        answer = await self.says(self.mei, "who has the yard bin?")
        return str(answer["content"]["body"])


@pytest.fixture
async def yard(street: Street, request: pytest.FixtureRequest) -> Yard:
    encrypted = getattr(request, "param", True)
    people = [await street.neighbour(name) for name in ("ines", "bram", "mei")]
    bot = street.bot()
    bot.start()
    room = await street.room_with(bot, people[0], encrypted=encrypted)
    for guest in people[1:]:
        await people[0].invite(room, guest.user)
        await guest.join(room)
    await bot.comes_to("SELECT 1 FROM member WHERE present GROUP BY room HAVING count(*) = 3")
    yard = Yard(bot, room, people)
    await yard.says(people[0], "opened the yard bin, 30 L, shared")
    await yard.says(people[1], "added 4 kg scraps, mostly meat, to the yard bin")
    return yard


async def test_a_bin_is_offered_and_taken_though_the_bot_was_away_in_between(yard: Yard) -> None:
    event = await yard.ines.say(yard.room, "handing the yard bin to Bram")
    asked = await yard.bram.answer_to(yard.room, event, yard.bot.user.id)
    assert asked["content"]["body"].startswith("Bram, will you take the yard bin?")
    assert asked["content"]["m.mentions"] == {"user_ids": [yard.bram.user]}
    assert asked["content"]["msgtype"] == "m.text"
    await yard.bot.stop()
    late = await yard.mei.say(yard.room, "I'll take the yard bin")
    taken = await yard.bram.say(yard.room, "I'll take it")
    yard.bot.start()
    card = await yard.mei.hears(yard.room, yard.bot.said("Bram keeps the yard bin now."))
    assert "It holds about 4 kg. A full bin can weigh more than 15 kg" in card["content"]["body"]
    assert yard.bot.rows(TAKEN) == [("Bram",)]
    assert "The yard bin: Bram." in await yard.keeper()
    told = yard.bot.rows("SELECT to_event FROM outbox WHERE to_event IN (?, ?)", late, taken)
    assert sorted(told) == sorted([(late,), (taken,)])


async def test_a_thumb_on_the_offer_is_enough_after_a_restart(yard: Yard) -> None:
    asked = await yard.says(yard.ines, "can anyone take the yard bin?")
    await yard.bot.stop()
    yard.bot.start()
    await yard.mei.react(yard.room, asked["event_id"], "👍")
    await yard.ines.hears(yard.room, yard.bot.said("Mei keeps the yard bin now."))
    await yard.bram.react(yard.room, asked["event_id"], "👍")
    assert "The yard bin: Mei." in await yard.keeper()
    assert yard.bot.rows(TAKEN) == [("Mei",)]


@pytest.mark.parametrize("yard", [False], indirect=True)
async def test_a_keeper_who_leaves_is_noticed(yard: Yard) -> None:
    await yard.ines.client.room_leave(yard.room)
    await yard.bot.comes_to("SELECT 1 FROM entry WHERE act = 'leave'")
    assert "The yard bin: nobody, since Ines left." in await yard.keeper()
    hour = datetime.now(UTC).hour  # noqa: TID251 - the bot's quiet hours go by the real clock
    if 7 <= hour < 21:
        await yard.mei.hears(yard.room, yard.bot.said("Ines has left the room, and nobody keeps"))


async def test_those_with_power_are_known_from_the_rooms_state(street: Street, yard: Yard) -> None:
    told = await yard.says(yard.ines, "only moderators may rename bins")
    assert told["content"]["body"].startswith("Only those with power in this room may rename")
    told = await yard.says(yard.bram, "rename the yard bin to Gertie")
    assert told["content"]["body"].endswith("may rename a bin: ask Ines.")
    path = f"/_matrix/client/v3/rooms/{quote(yard.room)}/state/m.room.power_levels/"
    status, levels = street.server.call("GET", path, None, yard.ines.client.access_token)
    levels["users"] = {**levels.get("users", {}), yard.bram.user: 50}
    status, answer = street.server.call("PUT", path, levels, yard.ines.client.access_token)
    assert status == 200, answer
    await yard.bot.comes_to("SELECT 1 FROM leader WHERE user LIKE '@bram%'")
    told = await yard.says(yard.bram, "rename the yard bin to Gertie")
    assert told["content"]["body"].startswith("The yard bin is Gertie now.")


@pytest.mark.parametrize("yard", [True, False], indirect=True, ids=["encrypted", "plain"])
async def test_a_label_is_posted_as_a_file(yard: Yard) -> None:
    await yard.ines.say(yard.room, "can we have a label for the yard bin?")

    def is_file(raw: Raw) -> bool:
        return bool(raw["sender"] == yard.bot.user.id and raw["content"].get("msgtype") == "m.file")

    posted = (await yard.ines.hears(yard.room, is_file))["content"]
    assert posted["filename"] == "label-the-yard-bin.svg"
    assert posted["info"]["mimetype"] == "image/svg+xml"
    assert posted["body"].startswith("The label of the yard bin")
    kept = posted.get("file") or {}
    answer = await yard.ines.client.download(mxc=kept.get("url") or posted["url"])
    data = answer.body
    if kept:
        data = decrypt_attachment(data, kept["key"]["k"], kept["hashes"]["sha256"], kept["iv"])
    drawn = ElementTree.parse(io.BytesIO(data))
    assert "The yard bin" in "".join(drawn.getroot().itertext())
