"""A neighbour at their own Matrix client, with encryption: for the sandbox and the tests."""

import asyncio
from collections import defaultdict
from collections.abc import AsyncIterator, Callable, Mapping
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any
from uuid import uuid4

from nio import JoinResponse, RoomInviteResponse, RoomSendResponse, SyncResponse

from bot import timeline
from bot.account import Account, new_store_key
from bot.connection import Client, connected, tend_keys
from bot.homeserver import Homeserver, User
from bot.settings import Home

Raw = Mapping[str, Any]
PATIENCE_SECONDS = 60.0


class Neighbour:
    """One person's device: hears its rooms all the time, and says what it is told to."""

    def __init__(self, client: Client, name: str) -> None:
        self.client = client
        self.name = name
        self.heard: dict[str, list[Raw]] = defaultdict(list)
        """Events of each room, decrypted, in the order they came."""
        self._news = asyncio.Condition()

    @property
    def user(self) -> str:
        """The Matrix user id."""
        return self.client.user_id

    async def listen(self) -> None:
        """Hear until cancelled."""
        first = True
        while True:
            answer = await self.client.sync(timeout=0 if first else 10_000, full_state=first)
            first = False
            if not isinstance(answer, SyncResponse):
                await asyncio.sleep(0.2)
                continue
            await tend_keys(self.client)
            async with self._news:
                for room, info in answer.rooms.join.items():
                    self.heard[room] += [
                        timeline.raw(self.client, room, e) for e in info.timeline.events
                    ]
                self._news.notify_all()

    async def say(self, room: str, text: str, **more: Any) -> str:
        """Write a message; the id of its event. `more` goes into its content."""
        return await self.send(room, "m.room.message", {"msgtype": "m.text", "body": text} | more)

    async def edit(self, room: str, event: str, text: str) -> str:
        """Change the words of a message."""
        new = {"msgtype": "m.text", "body": text}
        relation = {"rel_type": "m.replace", "event_id": event}
        content = {**new, "body": f"* {text}", "m.new_content": new, "m.relates_to": relation}
        return await self.send(room, "m.room.message", content)

    async def react(self, room: str, event: str, sign: str) -> str:
        """Put a sign on a message."""
        relation = {"rel_type": "m.annotation", "event_id": event, "key": sign}
        return await self.send(room, "m.reaction", {"m.relates_to": relation})

    async def send(self, room: str, kind: str, content: dict[str, Any]) -> str:
        """Send any event; its id."""
        await self.until(lambda: room in self.client.rooms)
        answer = await self.client.room_send(
            room, kind, content, tx_id=uuid4().hex, ignore_unverified_devices=True
        )
        if not isinstance(answer, RoomSendResponse):
            raise RuntimeError(f"{self.name} could not send: {answer}")
        return str(answer.event_id)

    async def invite(self, room: str, user: str) -> None:
        """Invite somebody."""
        answer = await self.client.room_invite(room, user)
        if not isinstance(answer, RoomInviteResponse):
            raise RuntimeError(f"{self.name} could not invite: {answer}")

    async def join(self, room: str) -> None:
        """Follow an invitation."""
        answer = await self.client.join(room)
        if not isinstance(answer, JoinResponse):
            raise RuntimeError(f"{self.name} could not join: {answer}")

    async def answer_to(self, room: str, event: str, sender: str) -> Raw:
        """What `sender` says in reply to an event, once it is there."""

        def replies(raw: Raw) -> bool:
            relation = raw["content"].get("m.relates_to", {})
            to = relation.get("m.in_reply_to", {}).get("event_id")
            return bool(raw["sender"] == sender and to == event)

        return await self.hears(room, replies)

    async def hears(self, room: str, wanted: Callable[[Raw], bool], after: int = 0) -> Raw:
        """The first event of a room that is wanted, past so many, once it is there."""

        def found() -> Raw | None:
            return next((raw for raw in self.heard[room][after:] if wanted(raw)), None)

        await self.until(lambda: found() is not None)
        raw = found()
        assert raw is not None
        return raw

    async def more_than(self, room: str, count: int) -> None:
        """Wait until more than so many events of a room are there."""
        async with self._news:
            await self._news.wait_for(lambda: len(self.heard[room]) > count)

    async def until(self, is_so: Callable[[], bool]) -> None:
        """Wait, for a while at most, until something is so."""
        try:
            async with asyncio.timeout(PATIENCE_SECONDS), self._news:
                await self._news.wait_for(is_so)
        except TimeoutError:
            raise TimeoutError(f"{self.name} waited in vain") from None


@asynccontextmanager
async def neighbour(server: Homeserver, user: User, folder: Path) -> AsyncIterator[Neighbour]:
    """A neighbour who is listening."""
    account = Account(
        homeserver=server.url,
        user=user.id,
        device=user.device,
        token=user.token,
        store_key=new_store_key(),
    )
    async with connected(Home(folder), account, "all") as client:
        somebody = Neighbour(client, user.name)
        listening = asyncio.create_task(somebody.listen())
        try:
            await somebody.until(lambda: bool(client.next_batch))
            yield somebody
        finally:
            listening.cancel()
            await asyncio.gather(listening, return_exceptions=True)
