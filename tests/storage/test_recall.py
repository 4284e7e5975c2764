"""What is remembered from one message to the next changes no answer, and nothing that is kept."""

import sqlite3
from collections.abc import Awaitable, Callable, Hashable
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest

from bot import log
from bot.playback import Playback, own_user
from storage.database import AtTheDesk, Database
from storage.recall import ROOMS, Recall, concerns

LOGS = sorted((Path(__file__).parents[2] / "sample_logs").glob("*.jsonl"))
KEPT = ("entry", "due", "outbox", "question", "member", "bin", "tally", "dosed", "naming")


@pytest.mark.parametrize(
    ("of", "part", "expected"),
    [
        ("bin entry", "layer", True),
        ("bin entry:open,bury", "bury", True),
        ("bin entry:open,bury", "layer", False),
        ("bin entry:open,bury", "", True),
        ("bin member entry:rewritten", "layer", False),
        ("bin member entry:rewritten", "layer,rewritten", True),
        ("bin entry:open,bury", "layer,rewritten", False),
        ("member bin", "", False),
    ],
)
def test_a_change_concerns_what_depends_on_it(of: str, part: str, expected: bool) -> None:
    assert concerns(of, "entry", part) is expected


def test_one_room_forgets_and_the_others_do_not() -> None:
    recall = Recall()
    for room in range(2 * ROOMS):
        recall.of(room, "entry:open")["size"] = room
    recall.forget("entry", ROOMS + 1, "open")
    recall.forget("entry", ROOMS + 2, "layer")
    known = {room for room in range(ROOMS, 2 * ROOMS) if recall.of(room, "entry:open")}
    assert known == {*range(ROOMS, 2 * ROOMS)} - {ROOMS + 1}
    assert not recall.of(0, "entry:open")  # of the rooms longest unheard nothing is remembered
    recall.forget("entry")
    assert not recall.of(2 * ROOMS - 1, "entry:open")


async def told(book: Path, played: Path) -> dict[str, list[Any]]:
    """All that a book holds once a log was played."""
    db = await Database.open(book)
    try:
        events = list(log.lines(played))
        playback = Playback(db, zone="Europe/Lisbon", units="metric", own=own_user(events))
        _ = [item async for item in playback.play(events)]
    finally:
        await db.close()
    with closing(sqlite3.connect(book)) as kept:
        return {table: kept.execute(f"SELECT * FROM {table}").fetchall() for table in KEPT}  # noqa: S608 — ours


@pytest.mark.parametrize("played", LOGS, ids=lambda log: log.stem)
async def test_a_book_is_the_same_without_it(
    played: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    remembering = await told(tmp_path / "remembering.db", played)

    async def known(
        self: AtTheDesk, room: Hashable, of: str, key: Hashable, ask: Callable[[], Awaitable[Any]]
    ) -> Any:
        return await ask()

    monkeypatch.setattr(AtTheDesk, "known", known)
    assert await told(tmp_path / "asking.db", played) == remembering
    assert remembering["entry"]
