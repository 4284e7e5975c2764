"""The ground of the benches: a real homeserver, neighbours in rooms, the bot as a process."""

import asyncio
import sys
import tempfile
from asyncio.subprocess import PIPE, Process
from collections import Counter
from collections.abc import AsyncIterator
from contextlib import AsyncExitStack, asynccontextmanager
from dataclasses import dataclass, field
from pathlib import Path

from bot import homeserver
from bot.sandbox_neighbour import Neighbour
from storage import backup
from tests.matrix.conftest import Bot, Street

NAMES = ("ines", "bram", "mei")
SETTLED = (
    "SELECT (SELECT count(*) FROM inbox WHERE state IN ('waiting', 'parked')) + (SELECT count(*) "
    "FROM outbox WHERE sent_as IS NULL AND refused IS NULL AND gathered IS NULL) + "
    "(SELECT count(*) FROM outbox WHERE gathered = 0)"
)


@dataclass
class Field:
    """Neighbours and rooms (some encrypted) that the bot is in, and what was written there."""

    street: Street
    bot: Bot
    neighbours: list[Neighbour]
    rooms: list[str]
    written: dict[str, list[str]] = field(default_factory=dict)
    """The events of each room that tell of a layer, in the order they were written."""

    async def write(self, number: int) -> None:
        """The next message: its room and its writer take turns."""
        room = self.rooms[number % len(self.rooms)]
        writer = self.neighbours[number // len(self.rooms) % len(self.neighbours)]
        words = f"added {number % 90 / 10 + 1:.1f} kg scraps to the shed bin"
        self.written.setdefault(room, []).append(await writer.say(room, words))

    async def process(self) -> Process:
        """The bot, started as a person starts it."""
        command = [sys.executable, "-m", "bot", "run", "--home", str(self.bot.home.folder)]
        with self.log.open("ab") as log:
            return await asyncio.create_subprocess_exec(*command, stdout=PIPE, stderr=log)

    @property
    def log(self) -> Path:
        """What the bot says on standard error."""
        return self.street.folder / "bot.log"

    async def ended(self, process: Process) -> bool:
        """Stop the bot as a person does; False if it had ended by itself."""
        if process.returncode is not None:
            return False
        process.terminate()
        await process.wait()
        return True

    async def settled(self, seconds: float) -> None:
        """Wait until nothing waits to be worked through or to be sent."""
        async with asyncio.timeout(seconds):
            while True:
                layers = self.bot.rows("SELECT count(*) FROM entry WHERE act = 'layer'")[0][0]
                rest = self.bot.rows(SETTLED)[0][0]
                if rest == 0 and layers >= sum(map(len, self.written.values())):
                    return
                await asyncio.sleep(0.2)

    def records(self) -> tuple[int, int, bool]:
        """Messages without a record, records too many, and whether they stand in order."""
        lost = doubled = 0
        in_order = True
        for room, events in self.written.items():
            made = [
                event
                for (event,) in self.bot.rows(
                    "SELECT event FROM entry JOIN room ON room.id = entry.room "
                    "WHERE address = ? AND act = 'layer' AND struck_at IS NULL ORDER BY entry.id",
                    room,
                )
            ]
            counted = Counter(made)
            lost += sum(event not in counted for event in events)
            doubled += sum(count - 1 for count in counted.values())
            in_order = in_order and made == events
        return lost, doubled, in_order

    async def replies(self) -> tuple[int, int, int]:
        """Messages never answered, answers heard too often or not the book's, and all heard."""
        known = {
            event
            for (event,) in self.bot.rows("SELECT sent_as FROM outbox WHERE sent_as IS NOT NULL")
        }
        heard: Counter[str] = Counter()
        for room in self.rooms:
            for raw in self.neighbours[0].heard[room]:
                if raw["sender"] == self.bot.user.id and raw["type"] in SAID:
                    heard[raw["event_id"]] += 1
        extra = sum(count - 1 for count in heard.values()) + len(heard.keys() - known)
        answered = {
            event
            for (event,) in self.bot.rows(
                "SELECT one.to_event FROM outbox AS one LEFT JOIN outbox AS many "
                "ON many.id = one.gathered WHERE coalesce(one.sent_as, many.sent_as) IS NOT NULL"
            )
        }
        unanswered = sum(e not in answered for events in self.written.values() for e in events)
        return unanswered + len(known - heard.keys()), extra, len(heard)

    async def outcome(self) -> tuple[str, bool]:
        """What became of all that was written, in words, and whether all is well."""
        await asyncio.sleep(1.0)  # for the last words to reach the neighbours
        lost, doubled, in_order = self.records()
        unanswered, extra, heard = await self.replies()
        damaged = backup.faults(self.bot.home.book, thorough=True)
        told = (
            f"records {lost} lost, {doubled} doubled, {'in' if in_order else 'NOT IN'} order; "
            f"replies {unanswered} lost, {extra} doubled ({heard} messages and marks heard); "
            f"the book is {'DAMAGED' if damaged else 'whole'}"
        )
        return told, not (lost or doubled or unanswered or extra or damaged) and in_order


SAID = ("m.room.message", "m.reaction")


@asynccontextmanager
async def prepared(plain: int, encrypted: int) -> AsyncIterator[Field]:
    """A field whose bot has come to every room, greeted, and stopped."""
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        with homeserver.running(folder / "homeserver") as server:
            async with AsyncExitStack() as stack:
                street = Street(server, folder, stack)
                neighbours = [await street.neighbour(name) for name in NAMES]
                bot = street.bot()
                bot.start()
                rooms = []
                for number in range(plain + encrypted):
                    host = neighbours[0]
                    room = await street.room_with(bot, host, encrypted=number >= plain)
                    for guest in neighbours[1:]:
                        await host.invite(room, guest.user)
                        await guest.join(room)
                    rooms.append(room)
                made = Field(street, bot, neighbours, rooms)
                for number in range(len(rooms) * len(neighbours)):
                    await made.write(number)
                await made.settled(60)
                await bot.stop()
                yield made
