"""The log of a live, encrypted room gives the same book and answers when it is replayed."""

from __future__ import annotations

import json
import subprocess
import sys
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from pathlib import Path

    from tests.matrix.conftest import Bot, Street


def printed(*words: str) -> str:
    command = [sys.executable, "-m", "bot", *words]
    return subprocess.run(command, text=True, capture_output=True, check=True).stdout


def records(book: Path) -> list[Any]:
    return list(json.loads(printed("export", "--book", str(book)))["entries"])


def answers(bot: Bot) -> list[tuple[Any, ...]]:
    """What it answered; what it says unasked, a replay does not say."""
    return bot.rows(
        "SELECT to_event, kind, body FROM outbox WHERE to_event IS NOT NULL ORDER BY id"
    )


async def test_a_live_room_replayed(street: Street, tmp_path: Path) -> None:
    bot = street.bot(street.server.register("pailkeeper", display="Pailkeeper"))
    ines, mei = await street.neighbour("ines"), await street.neighbour("mei")
    bot.start()
    room = await street.room_with(bot, ines)
    await ines.invite(room, mei.user)
    await mei.join(room)
    await bot.comes_to("SELECT 1 FROM member WHERE name = 'Mei'")
    first = await ines.say(room, "Added 2 kg of scraps to the shed bin, mostly meat")
    await ines.answer_to(room, first, bot.user.id)
    await mei.say(room, "what a match last night")
    second = await mei.say(room, "Put 3 litres of peelings into the blue bin")
    await mei.answer_to(room, second, bot.user.id)
    await ines.edit(room, first, "Added 3 kg of scraps to the shed bin, mostly meat")
    third = await ines.say(room, "Added 1 kg of bread to the shed bin")
    await ines.answer_to(room, third, bot.user.id)
    await ines.react(room, third, "❌")
    fourth = await mei.say(room, "Added 500 g of apples to the blue bin")
    await mei.answer_to(room, fourth, bot.user.id)
    await mei.client.room_redact(room, fourth)
    last = await mei.say(room, "@pailkeeper help")
    await mei.answer_to(room, last, bot.user.id)
    await ines.hears(room, lambda raw: raw["event_id"] == last)
    await bot.stop()

    log, book = tmp_path / "log.jsonl", tmp_path / "replayed.db"
    events = [{**raw, "room_id": room} for raw in ines.heard[room]]
    log.write_text("".join(json.dumps(event) + "\n" for event in events), encoding="utf-8")
    out = printed("replay", str(log), "--book", str(book), "--json")
    said = [json.loads(line) for line in out.splitlines()]
    assert [(s["to"], s["kind"], s["body"]) for s in said] == answers(bot)
    assert len(said) >= 8
    assert records(book) == records(bot.home.book)
    assert len(records(book)) >= 4
