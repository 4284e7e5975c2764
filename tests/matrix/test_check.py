"""`python -m bot check` against a real homeserver."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest

from bot import account as accounts
from bot import clock
from bot.check_server import findings_of_server

if TYPE_CHECKING:
    from tests.matrix.conftest import Bot, Street


def wrong_with(bot: Bot) -> list[str]:
    account = accounts.read(bot.home)
    assert account is not None
    return [found.text for found in findings_of_server(bot.home, account) if not found.well]


async def test_a_bot_that_has_run_is_in_order(
    street: Street, monkeypatch: pytest.MonkeyPatch
) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    assert wrong_with(bot)[0].startswith("the device's keys are not in")
    bot.start()
    await street.room_with(bot, ines)
    assert wrong_with(bot) == []
    await bot.stop()
    assert wrong_with(bot) == []
    with monkeypatch.context() as fast:
        now = clock.now
        fast.setattr("bot.clock.now", lambda: now() + timedelta(minutes=5))
        [late] = wrong_with(bot)
    assert late.startswith("the clock is +")


async def test_what_is_wrong_at_the_homeserver(street: Street) -> None:
    ines, bot = await street.neighbour("ines"), street.bot()
    bot.start()
    await street.room_with(bot, ines)
    await bot.stop()
    account = accounts.read(bot.home)
    assert account is not None
    accounts.write(bot.home, replace(account, token="another"))
    assert wrong_with(bot) == ["the homeserver does not know the bot's token (401): log in again"]
    accounts.write(bot.home, replace(account, homeserver=f"{account.homeserver}/nowhere"))
    assert wrong_with(bot) == [f"the homeserver {account.homeserver}/nowhere answers HTTP 404"]
    accounts.write(bot.home, account)
    [store] = bot.home.keys.glob("*.db")
    store.write_text("Dear neighbours, " * 100)
    assert wrong_with(bot)[0].startswith(f"the key store {store} is damaged")
