"""A bot between a homeserver and a disk that fails: what was taken stays, none is doubled."""

import sqlite3
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from bot.reminders import tell
from bot.turn import work_off
from storage import inbox, outbox, rooms, session
from storage.database import Database
from storage.inbox import Arrival
from storage.moments import from_ms

ROOM, OWN = "!yard:test", "@pailkeeper:test"
BEGIN = datetime(2026, 3, 2, 18, 0, tzinfo=UTC)


@dataclass
class Disk:
    """Lets so many statements that change the book pass, then fails; None: never fails."""

    passes: int | None = None
    code: int = sqlite3.SQLITE_IOERR
    commits: int = 0
    after_commit: Callable[[], None] = lambda: None

    def take(self, sql: str) -> None:
        if sql.split(maxsplit=1)[0].upper() in ("SELECT", "PRAGMA"):
            return
        if self.passes is not None:
            if self.passes == 0:
                error = sqlite3.OperationalError("disk I/O error")
                error.sqlite_errorcode = self.code
                raise error
            self.passes -= 1

    def committed(self, sql: str) -> None:
        if sql == "COMMIT":
            self.commits += 1
            self.after_commit()


class FailingConnection:
    """A connection to a book on such a disk."""

    def __init__(self, connection: sqlite3.Connection, disk: Disk) -> None:
        self._connection = connection
        self._disk = disk

    def __getattr__(self, name: str) -> Any:
        return getattr(self._connection, name)

    def execute(self, sql: str, values: Sequence[Any] = ()) -> Any:
        self._disk.take(sql)
        cursor = self._connection.execute(sql, values)
        self._disk.committed(sql)
        return cursor

    def executemany(self, sql: str, many: Sequence[Any]) -> Any:
        self._disk.take(sql)
        return self._connection.executemany(sql, many)


@dataclass
class Server:
    """A homeserver: it tells events from a token on, and takes each transaction id once."""

    events: list[dict[str, Any]]
    taken: dict[str, str] = field(default_factory=dict)
    resent: int = 0

    def take(self, tx_id: str, body: str) -> str:
        if tx_id in self.taken:
            self.resent += 1
            assert self.taken[tx_id] == body
        self.taken.setdefault(tx_id, body)
        return f"$of-{tx_id}"


def conversation(lines: Sequence[tuple[str, Mapping[str, object]]]) -> list[dict[str, Any]]:
    """Events as a homeserver would tell them: kind and content, six hours apart."""
    return [
        {
            "type": kind,
            "event_id": f"$e{number}",
            "sender": "@ines:test",
            "origin_server_ts": int((BEGIN + timedelta(hours=6 * number)).timestamp() * 1000),
            "content": content,
        }
        for number, (kind, content) in enumerate(lines)
    ]


async def run(server: Server, path: Path, disk: Disk, limit_pages: int | None = None) -> None:
    """The bot from its start until all is said, or the disk fails."""
    db = await Database.open(path)
    try:
        if limit_pages is not None:
            await db.rows(f"PRAGMA max_page_count = {limit_pages}")
        desk = vars(db)["_desk"]
        desk._connection = FailingConnection(desk._connection, disk)
        if await rooms.find(db, ROOM) is None:
            async with db.transaction():
                await rooms.join(db, ROOM, BEGIN, zone="Europe/Lisbon", units="metric")
        heard = int(await session.sync_token(db) or 0)
        for number in range(max(heard - 1, 0), len(server.events)):
            raw = server.events[number]
            if number >= heard:
                await inbox.take_in(db, [Arrival(room=ROOM, raw=raw)], str(number + 1))
            await _go_on(db, server, from_ms(raw["origin_server_ts"]))
    finally:
        await db.close()


async def _go_on(db: Database, server: Server, now: datetime) -> None:
    while await work_off(db, now=lambda: now, own=OWN):
        pass
    await tell(db, now)
    for row in await outbox.waiting(db):
        event = server.take(row.message.tx_id, row.message.body)
        await outbox.sent(db, row.id, event, now)
