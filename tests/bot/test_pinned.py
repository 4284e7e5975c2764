"""The calendar's message: when it is posted, edited and left alone; the pinning is looked at in a
real room in `tests/matrix/test_calendar.py`.
"""

from datetime import UTC, datetime, timedelta
from typing import Any, cast

import pytest
from nio.client.async_client import AsyncClient

from bot import pinned
from bot.pinned import HOW_TO_ALLOW, Notices
from handlers.reading.acts import Drain, Layer
from storage import notices, outbox
from storage.database import Database
from tests.group import Group
from tests.room import TalkingRoom


class Server:
    """What a homeserver says to whoever reads or changes the pinned messages."""

    rooms: dict[str, Any] = {}  # noqa: RUF012 - nio's own, and empty here
    user_id = "@pailkeeper:test"

    def __init__(self, monkeypatch: pytest.MonkeyPatch, allows: bool = True) -> None:
        self.state: list[str] = ["$rules"]
        self.allows = allows
        monkeypatch.setattr(pinned, "call", self.call)

    async def call(
        self, client: object, method: str, path: str, body: Any = None
    ) -> tuple[int, dict[str, Any]]:
        del client
        assert path.endswith("/state/m.room.pinned_events/")
        if method == "GET":
            return 200, {"pinned": self.state}
        if not self.allows:
            return 403, {"errcode": "M_FORBIDDEN"}
        self.state = body["pinned"]
        return 200, {}


def at(day: int, hour: int, minute: int = 0) -> datetime:
    """A moment of March 2026; Lisbon keeps UTC until the 29th."""
    return datetime(2026, 3, day, hour, minute, tzinfo=UTC)


class Posted:
    """The calendar's message of a group, as its room sees it."""

    def __init__(self, group: Group, server: Server) -> None:
        self.group = group
        self.notices = Notices(group.book.db, cast("AsyncClient", server))

    async def looks(self, *moments: datetime) -> list[str]:
        """What is posted or edited when the bot looks at these moments; each is sent at once."""
        said = []
        for moment in moments:
            await self.notices.refresh(moment)
            for row in await outbox.waiting(self.group.book.db):
                await outbox.sent(self.group.book.db, row.id, f"${row.id}", moment)
                words = "edit" if row.message.rewrites else "new"
                said.append(f"{words}: {row.message.body}")
        return said


@pytest.fixture
def server(monkeypatch: pytest.MonkeyPatch) -> Server:
    return Server(monkeypatch)


async def test_it_is_posted_once_there_is_something_and_then_edited(
    group: Group, server: Server
) -> None:
    room = Posted(group, server)
    assert await room.looks(at(2, 18)) == []
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    assert await room.looks(at(2, 18, 1)) == [
        "new: What is due\nWednesday 4 or Thursday 5 March: drain the shed bin (ines)\n"
        "Monday 16 March: seal the shed bin (ines)"
    ]
    assert await room.looks(at(2, 18, 2), at(2, 18, 30)) == []
    assert server.state == ["$rules", "$1"]
    await group.says(Drain(bin="shed"), days=2)
    [edit] = await room.looks(at(4, 19))
    assert edit.startswith("edit: What is due\nFriday 6 or Saturday 7 March: drain")
    assert await room.looks(at(4, 20)) == []


async def test_edits_are_not_made_too_often(group: Group, server: Server) -> None:
    room = Posted(group, server)
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    assert len(await room.looks(at(2, 18))) == 1
    for second in range(1, 50, 10):
        await group.says(Layer(mass_kg=2.0, bin=f"bin {second}"))
        assert await room.looks(at(2, 18) + timedelta(seconds=second)) == []
    assert len(await room.looks(at(2, 18, 2), at(2, 18, 4))) == 1


async def test_a_new_day_is_shown_when_the_night_is_over(group: Group, server: Server) -> None:
    room = Posted(group, server)
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await room.looks(at(5, 18), at(5, 18, 30))
    assert await room.looks(at(5, 23), at(6, 0), at(6, 6, 59)) == []
    [edit] = await room.looks(at(6, 7))
    assert "Late, since Thursday 5 March: drain the shed bin" in edit
    assert await room.notices.refresh(at(6, 8)) == at(7, 0)


async def test_at_night_it_follows_the_book_but_is_not_begun(group: Group, server: Server) -> None:
    room = Posted(group, server)
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    assert await room.looks(at(2, 22)) == []
    assert len(await room.looks(at(3, 7), at(3, 7, 2))) == 1
    await group.says(Layer(mass_kg=2.0, bin="yard"), days=1)
    [edit] = await room.looks(at(3, 23))
    assert "yard" in edit


async def test_what_was_taken_away_is_not_put_up_again_unasked(
    group: Group, server: Server, db: Database
) -> None:
    room = Posted(group, server)
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await room.looks(at(2, 18), at(2, 18, 5))
    async with db.transaction():
        await notices.take_away(db, group.book.room)
    await group.says(Layer(mass_kg=2.0, bin="yard"))
    assert await room.looks(at(2, 19), at(3, 19)) == []
    async with db.transaction():
        await notices.put_up_again(db, group.book.room)
    await group.says(Layer(mass_kg=2.0, bin="blue"))
    assert [said[:4] for said in await room.looks(at(3, 20))] == ["new:"]


async def test_what_is_asked_for_is_posted_at_once_in_place_of_the_old(
    group: Group, server: Server, db: Database
) -> None:
    room = Posted(group, server)
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    await room.looks(at(2, 18), at(2, 18, 5))
    assert server.state == ["$rules", "$1"]
    async with db.transaction():
        await notices.put_up_again(db, group.book.room)
    [again] = await room.looks(at(2, 23), at(2, 23, 5))
    assert again.startswith("new: What is due")
    assert server.state == ["$rules", "$2"]
    await group.says(Drain(bin="shed"), days=1)
    [edit] = await room.looks(at(3, 18))
    assert edit.startswith("edit: ")


async def test_without_the_power_to_pin_that_is_said_once(
    group: Group, monkeypatch: pytest.MonkeyPatch
) -> None:
    room = Posted(group, Server(monkeypatch, allows=False))
    await group.says(Layer(mass_kg=2.0, bin="shed"))
    said = await room.looks(at(2, 18), at(2, 18, 5), at(3, 9))
    await group.says(Layer(mass_kg=2.0, bin="yard"))
    said += await room.looks(at(3, 10), at(4, 10))
    assert said.count(f"new: {HOW_TO_ALLOW}") == 1


async def test_whoever_deletes_it_does_not_want_it(db: Database) -> None:
    room = TalkingRoom(db)
    await room.says("added 2 kg to the shed bin")
    book = await room.book()
    async with db.transaction():
        await notices.put(db, book.room, None, "What is due", room.now.date(), room.now)
    [row] = await outbox.waiting(db)
    await outbox.sent(db, row.id, "$notice", room.now)
    assert await room.deletes("$notice") == []
    found = await notices.find(db, book.room)
    assert found
    assert found.unwanted


async def test_it_is_asked_for_and_called_off_in_words(db: Database) -> None:
    room = TalkingRoom(db)
    [said] = await room.says("unpin the calendar")
    assert said.body.startswith("I no longer keep")
    found = await notices.find(db, (await room.book()).room)
    assert found
    assert found.unwanted
    [said] = await room.says("pin the calendar")
    assert said.body == "I put the calendar up anew and keep it up to date."
