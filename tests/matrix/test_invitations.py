"""Whom the bot follows into a room, that it greets once, and how it goes."""

from __future__ import annotations

from typing import TYPE_CHECKING
from urllib.parse import quote

import pytest

if TYPE_CHECKING:
    from tests.matrix.conftest import Street


@pytest.mark.parametrize("encrypted", [True, False], ids=["encrypted", "plain"])
@pytest.mark.parametrize("version", ["11", "12"])
async def test_the_bot_comes_and_greets_once(street: Street, version: str, encrypted: bool) -> None:
    ines, bot, room = await street.begun(version=version, encrypted=encrypted)
    await bot.stop()
    bot.start()
    await ines.say(room, "@pailkeeper help")
    await ines.hears(room, lambda raw: bot.said()(raw) and "m.relates_to" in raw["content"])
    greetings = [
        raw for raw in ines.heard[room] if bot.said()(raw) and "m.relates_to" not in raw["content"]
    ]
    assert len(greetings) == 1
    assert greetings[0]["content"]["m.mentions"] == {}


@pytest.mark.parametrize(
    ("obey", "comes"),
    [
        ((), True),
        (("{inviter}",), True),
        (("sandbox.localhost",), True),
        (("@somebody:sandbox.localhost",), False),
        (("elsewhere.example",), False),
    ],
)
async def test_the_bot_follows_only_whom_it_obeys(
    street: Street, obey: tuple[str, ...], comes: bool
) -> None:
    ines = await street.neighbour("ines")
    bot = street.bot(obey=tuple(o.format(inviter=ines.user) for o in obey))
    bot.start()
    room = await street.room(ines, bot.user.id)
    moved = await ines.hears(
        room,
        lambda raw: (
            raw.get("state_key") == bot.user.id
            and raw["content"]["membership"] in ("join", "leave")
        ),
    )
    assert moved["content"]["membership"] == ("join" if comes else "leave")


async def test_an_invitation_made_while_the_bot_was_away_is_followed(street: Street) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    bot.start()
    await street.room_with(bot, ines)
    await bot.stop()
    room = await street.room(ines, bot.user.id)
    bot.start()
    await ines.hears(room, bot.said())


async def test_an_invitation_lost_with_its_sync_answer_is_found_again(street: Street) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    room = await street.room(ines, bot.user.id)
    # As after a crash between keeping the token and joining: the token is past the invitation.
    _, answer = street.server.call("GET", "/_matrix/client/v3/sync?timeout=0", token=bot.user.token)
    await bot.keep_token(answer["next_batch"])
    bot.start()
    await ines.hears(room, bot.said())


@pytest.mark.parametrize("away", [False, True], ids=["while it runs", "while it is away"])
async def test_a_bot_that_is_taken_out_of_a_room_notes_it(street: Street, away: bool) -> None:
    ines, bot, room = await street.begun()
    if away:
        await bot.stop()
    await ines.client.room_kick(room, bot.user.id)
    if away:
        bot.start()
    await bot.comes_to("SELECT 1 FROM room WHERE left_at IS NOT NULL")
    # And it comes back when asked again, without a second greeting.
    await ines.invite(room, bot.user.id)
    await bot.comes_to("SELECT 1 FROM room WHERE left_at IS NULL")
    await bot.stop()
    assert len([raw for raw in ines.heard[room] if bot.said()(raw)]) == 1


async def test_a_bot_that_is_asked_back_says_that_its_book_is_still_there(street: Street) -> None:
    ines, bot, room = await street.begun()
    event = await ines.say(room, "Opened the shed bin, 20 L")
    await ines.answer_to(room, event, bot.user.id)
    await ines.client.room_kick(room, bot.user.id)
    await bot.comes_to("SELECT 1 FROM room WHERE left_at IS NOT NULL")
    await ines.invite(room, bot.user.id)
    told = await ines.hears(room, lambda raw: "I am back" in raw["content"].get("body", ""))
    assert "the shed bin" in told["content"]["body"]


async def test_nothing_from_before_the_bot_came_is_acted_upon(street: Street) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    room = await street.room(ines, encrypted=False)
    await ines.say(room, "Added 9 kg of scraps to the shed bin")
    bot.start()
    await ines.invite(room, bot.user.id)
    await ines.hears(room, bot.said())
    event = await ines.say(room, "Added 2 kg of scraps to the shed bin")
    await ines.answer_to(room, event, bot.user.id)
    assert bot.rows("SELECT mass_kg FROM entry WHERE act = 'layer'") == [(2.0,)]


async def test_what_is_said_as_soon_as_the_bot_came_is_heard(street: Street) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    room = await street.room(ines, bot.user.id, encrypted=False)
    await ines.say(room, "Added 9 kg of scraps to the shed bin")
    # The bot comes, and is told of it together with what was said before and after.
    path = f"/_matrix/client/v3/join/{quote(room)}"
    assert street.server.call("POST", path, {}, bot.user.token)[0] == 200
    event = await ines.say(room, "Added 2 kg of scraps to the shed bin")
    bot.start()
    await ines.answer_to(room, event, bot.user.id)
    assert bot.rows("SELECT mass_kg FROM entry WHERE act = 'layer'") == [(2.0,)]


async def test_it_does_not_stay_where_nobody_can_be_talked_with(street: Street) -> None:
    """In a Space nobody writes, and where the last member has left nobody comes back."""
    ines, bot, room = await street.begun()
    made = {"invite": [bot.user.id], "creation_content": {"type": "m.space"}}
    token = ines.client.access_token
    _, answer = street.server.call("POST", "/_matrix/client/v3/createRoom", made, token)
    space = str(answer["room_id"])
    came = await ines.hears(space, lambda raw: raw.get("state_key") == bot.user.id)
    await ines.hears(
        space,
        lambda raw: raw.get("state_key") == bot.user.id and raw["content"]["membership"] == "leave",
    )
    assert came["content"]["membership"] == "invite"
    assert not any(bot.said()(raw) for raw in ines.heard[space])
    await ines.client.room_leave(room)
    await bot.comes_to("SELECT 1 FROM room WHERE left_at IS NOT NULL")
    _, joined = street.server.call("GET", "/_matrix/client/v3/joined_rooms", token=bot.user.token)
    assert joined["joined_rooms"] == []
    assert bot.rows("SELECT address FROM room") == [(room,)]
