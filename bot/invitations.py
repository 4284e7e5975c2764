"""Whose invitations the bot follows, which rooms it comes to, and which it goes from."""

import asyncio
import json
import logging
from collections.abc import Sequence
from urllib.parse import quote

from nio import InviteEvent, InviteMemberEvent
from nio.client.async_client import AsyncClient
from nio.responses import JoinResponse, RoomLeaveResponse, SyncResponse

from bot.connection import OUT_OF_REACH, call, http_status
from bot.pacing import Bell, Patience
from bot.settings import Settings

log = logging.getLogger(__name__)

_ONLY_INVITATIONS = {
    "room": {
        "timeline": {"limit": 1, "types": []},
        "state": {"types": []},
        "ephemeral": {"types": []},
        "account_data": {"types": []},
    },
    "presence": {"types": []},
    "account_data": {"types": []},
}


class Invitations:
    """Open invitations; each is followed or declined in its own time, beside the sync."""

    def __init__(self, client: AsyncClient, settings: Settings) -> None:
        self._client = client
        self._settings = settings
        self._open: dict[str, str] = {}
        self._awaited: dict[str, str] = {}
        """The rooms that replace ones the bot is in, with a server to find each by."""
        self._left: set[str] = set()
        """The rooms to go from."""
        self._knows_rooms = False
        self.bell = Bell()

    def leave(self, room: str) -> None:
        """Have a room left where there is nobody to talk with."""
        if room not in self._left:
            self._left.add(room)
            self.bell.ring()

    def take(self, response: SyncResponse) -> None:
        """Note what a sync answer brought, once it is known which rooms replace ours."""
        self._knows_rooms = True
        self.bell.ring()
        for room, info in response.rooms.invite.items():
            self._note(room, info.invite_state)
        for room in (*response.rooms.join, *response.rooms.leave):
            self._open.pop(room, None)
        for room in response.rooms.join:
            self._awaited.pop(room, None)
        self._left.difference_update(response.rooms.leave)

    def expect(self, room: str, server: str) -> None:
        """A room the bot is in is replaced by this one: come there, now or when invited."""
        if room not in self._awaited:
            self._awaited[room] = server
            self.bell.ring()

    async def work(self, stop: asyncio.Event) -> None:
        """Follow and decline until `stop`; an invitation that fails is tried again later."""
        while not self._knows_rooms and not stop.is_set():
            await self.bell.wait()
        patience = Patience()
        forgotten = True
        while not stop.is_set():
            # The sync tells of an invitation once: one lost in a crash is found by asking anew.
            forgotten = forgotten and not await self._ask_again()
            out_of_reach = False
            for room, server in list(self._awaited.items()):
                out_of_reach = not await self._come(room, server) or out_of_reach
            for room in list(self._left):
                out_of_reach = not await self._go_from(room) or out_of_reach
            for room, inviter in list(self._open.items()):
                if await self._settle(room, inviter):
                    self._open.pop(room, None)
            if self._open or forgotten or out_of_reach:
                await self.bell.wait(patience.failed())
            else:
                patience.succeeded()
                await self.bell.wait()

    def _note(self, room: str, events: Sequence[object]) -> None:
        for event in events:
            if (
                isinstance(event, InviteMemberEvent)
                and event.state_key == self._client.user_id
                and event.membership == "invite"
            ):
                self._open[room] = event.sender
                self.bell.ring()

    async def _ask_again(self) -> bool:
        path = "/_matrix/client/v3/sync?set_presence=offline&timeout=0&filter="
        only = quote(json.dumps(_ONLY_INVITATIONS))
        try:
            status, answer = await call(self._client, "GET", path + only)
        except OUT_OF_REACH:
            return False
        if status != 200:
            return False
        for room, info in answer.get("rooms", {}).get("invite", {}).items():
            events = info.get("invite_state", {}).get("events", [])
            self._note(room, [InviteEvent.parse_event(event) for event in events])
        return True

    async def _come(self, room: str, server: str) -> bool:
        """Try the door of a replacing room; where it is shut, an invitation is waited for.

        False if it could not even be tried.
        """
        path = f"/_matrix/client/v3/join/{quote(room, safe='')}?server_name={quote(server)}"
        try:
            status, _ = await call(self._client, "POST", f"{path}&via={quote(server)}", {})
        except OUT_OF_REACH:
            return False
        if status == 200:
            log.info("came to the room that replaces one of ours")
        return status < 500

    async def _go_from(self, room: str) -> bool:
        """False if it is to be tried again."""
        try:
            answer = await self._client.room_leave(room)
        except OUT_OF_REACH:
            return False
        if isinstance(answer, RoomLeaveResponse):
            log.info("left a room in which nobody was, or nobody can write")
        return http_status(answer) < 500

    async def _settle(self, room: str, inviter: str) -> bool:
        """True when nothing is left to do about an invitation."""
        try:
            expected = room in self._awaited
            if not expected and not self._settings.may_invite(inviter, self._client.user_id):
                log.info("declined an invitation by %s", inviter)
                answer = await self._client.room_leave(room)
                return isinstance(answer, RoomLeaveResponse) or _is_gone(answer.status_code)
            joined = await self._client.join(room)
        except OUT_OF_REACH:
            return False
        if isinstance(joined, JoinResponse):
            log.info("came to a room on the invitation of %s", inviter)
            return True
        if _is_gone(joined.status_code):
            log.info("the invitation by %s was withdrawn", inviter)
            return True
        return False


def _is_gone(code: str | None) -> bool:
    return code in ("M_FORBIDDEN", "M_NOT_FOUND", "M_UNSUPPORTED_ROOM_VERSION")
