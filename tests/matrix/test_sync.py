"""What the session does when the homeserver does not answer as it should."""

from __future__ import annotations

import asyncio
import json
from collections.abc import AsyncIterator
from datetime import timedelta
from pathlib import Path

import pytest
from aiohttp import web

from bot import clock
from bot.account import Account
from bot.connection import SignedOut, connected
from bot.matrix import Session
from bot.pacing import Bell, Patience
from bot.settings import Home, Settings
from storage import inbox, rooms, session
from storage.database import Database
from storage.moments import to_ms

PAGE, JSON = "text/html", "application/json"
SYNCED = json.dumps({"next_batch": "s2", "rooms": {}})
SIGNED_OUT = json.dumps({"errcode": "M_UNKNOWN_TOKEN", "error": "gone"})
SOFTLY = json.dumps({"errcode": "M_UNKNOWN_TOKEN", "error": "gone", "soft_logout": True})

Answer = tuple[int, str, str]


class FakeHomeserver:
    """Answers each sync with the next of its answers, all else with nothing known."""

    def __init__(self, answers: list[Answer]) -> None:
        self.answers = answers
        self.asked: list[str] = []

    async def answer(self, request: web.Request) -> web.Response:
        if not request.path.endswith("/sync"):
            return web.json_response({"one_time_key_counts": {"signed_curve25519": 50}})
        self.asked.append(request.query.get("since", ""))
        status, kind, text = self.answers[len(self.asked) - 1]
        return web.Response(status=status, content_type=kind, body=text.encode("latin-1"))


@pytest.fixture
async def db(tmp_path: Path) -> AsyncIterator[Database]:
    db = await Database.open(tmp_path / "book.db")
    await inbox.take_in(db, [], "s1")
    yield db
    await db.close()


async def listen(fake: FakeHomeserver, db: Database, home: Path) -> None:
    app = web.Application()
    app.router.add_route("*", "/{path:.*}", fake.answer)
    runner = web.AppRunner(app)
    await runner.setup()
    site = web.TCPSite(runner, "127.0.0.1", 0)
    await site.start()
    url = f"http://127.0.0.1:{runner.addresses[0][1]}"
    account = Account(homeserver=url, user="@p:x", device="D", token="secret", store_key="k")
    try:
        async with connected(Home(home), account) as client:
            listening = Session(client, db, Settings(), clock.now, heard=Bell(), outgoing=Bell())
            await asyncio.wait_for(listening.listen(asyncio.Event()), 20)
    finally:
        await runner.cleanup()


@pytest.fixture(autouse=True)
def _waits_are_short(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(Patience, "FIRST_SECONDS", 0.001)


BAD = {
    "a proxy's page": (502, PAGE, "<h1>Bad gateway</h1>"),
    "a page in another code": (502, "text/html", "<h1>H\xf6lle</h1>"),
    "cut JSON": (200, JSON, SYNCED[:-5]),
    "not UTF-8": (200, JSON, "\xff\xfe"),
    "a list": (200, JSON, "[]"),
    "no token": (200, JSON, "{}"),
    "rooms of the wrong kind": (200, JSON, '{"next_batch": "s2", "rooms": []}'),
    "an error without words": (500, JSON, "{}"),
    "an error": (500, JSON, '{"errcode": "M_UNKNOWN", "error": "sorry"}'),
}


@pytest.mark.parametrize("bad", BAD.values(), ids=BAD.keys())
async def test_a_bad_answer_is_asked_for_again(bad: Answer, db: Database, tmp_path: Path) -> None:
    fake = FakeHomeserver([bad, bad, (200, JSON, SYNCED), (401, JSON, SIGNED_OUT)])
    with pytest.raises(SignedOut):
        await listen(fake, db, tmp_path)
    assert fake.asked == ["s1", "s1", "s1", "s2"]
    assert await session.sync_token(db) == "s2"


@pytest.mark.parametrize("farewell", [SIGNED_OUT, SOFTLY], ids=["for good", "softly"])
async def test_a_bot_that_was_signed_out_stops_at_once(
    farewell: str, db: Database, tmp_path: Path
) -> None:
    fake = FakeHomeserver([(401, JSON, farewell)])
    with pytest.raises(SignedOut, match="python -m bot login"):
        await listen(fake, db, tmp_path)


async def test_a_token_that_the_homeserver_forgot_is_dropped(db: Database, tmp_path: Path) -> None:
    refusal = (400, JSON, '{"errcode": "M_UNKNOWN", "error": "Invalid stream token"}')
    fake = FakeHomeserver([refusal, (200, JSON, SYNCED), (401, JSON, SIGNED_OUT)])
    with pytest.raises(SignedOut):
        await listen(fake, db, tmp_path)
    assert fake.asked == ["s1", "", "s2"]


async def test_keys_that_are_refused_are_told_of_and_stop_nothing(
    db: Database, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    """A device whose keys the homeserver knows otherwise can be mended by a new login alone."""

    class Refusing(FakeHomeserver):
        async def answer(self, request: web.Request) -> web.Response:
            if request.path.endswith("/keys/upload"):
                body = {"errcode": "M_UNKNOWN", "error": "One time key already exists"}
                return web.json_response(body, status=400)
            return await super().answer(request)

    fake = Refusing([(200, JSON, SYNCED), (401, JSON, SIGNED_OUT)])
    with pytest.raises(SignedOut):
        await listen(fake, db, tmp_path)
    assert fake.asked == ["s1", "s2"]
    assert "refuses the device's keys" in caplog.text
    assert "python -m bot login" in caplog.text


def test_patience_doubles_up_to_five_minutes(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(Patience, "FIRST_SECONDS", 1.0)
    patience = Patience()
    waits = [patience.failed() for _ in range(60)]
    for wait, longest in zip(waits, (1, 2, 4, 8, 16, 32, 64, 128, 256, 300, 300), strict=False):
        assert 0.75 * longest <= wait <= longest
    assert max(waits) <= 300
    patience.succeeded()
    assert patience.failed() <= 1


@pytest.mark.parametrize("ahead", [timedelta(days=3), timedelta(days=400), timedelta(days=9999)])
async def test_nothing_is_later_than_it_was_received(
    db: Database, tmp_path: Path, ahead: timedelta
) -> None:
    """A homeserver, which may be a member's own, dates its messages as it likes."""
    before = clock.now()
    async with db.transaction():
        await rooms.join(db, "!r:x", before, zone="UTC", units="metric")
    moments = (before + ahead, before - ahead)
    events = [
        {
            "type": "m.room.message",
            "event_id": f"${number}",
            "sender": "@ines:x",
            "origin_server_ts": to_ms(at),
            "content": {"msgtype": "m.text", "body": "sealed the blue bin"},
        }
        for number, at in enumerate(moments)
    ]
    info = {
        "timeline": {"events": events, "limited": False, "prev_batch": "p"},
        **{part: {"events": []} for part in ("state", "ephemeral", "account_data")},
    }
    synced = json.dumps({"next_batch": "s2", "rooms": {"join": {"!r:x": info}}})
    fake = FakeHomeserver([(200, JSON, synced), (401, JSON, SIGNED_OUT)])
    with pytest.raises(SignedOut):
        await listen(fake, db, tmp_path)
    late, early = await inbox.waiting(db)
    assert before - timedelta(seconds=2) <= late.at <= clock.now()
    assert abs(early.at - moments[1]) < timedelta(milliseconds=1)
