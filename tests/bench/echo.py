"""A bare echo bot on matrix-nio, the peer of the bench `reply`: it says again what it hears."""

import asyncio
import sys
from pathlib import Path

from nio import InviteMemberEvent, MatrixRoom, RoomMessageText
from nio.client.async_client import AsyncClient, AsyncClientConfig
from nio.store.database import SqliteStore

from bot import account as accounts
from bot.settings import Home


async def main(home: Home) -> None:
    """Echo until killed."""
    account = accounts.read(home)
    assert account
    home.keys.mkdir(exist_ok=True)
    config = AsyncClientConfig(store=SqliteStore, pickle_key=account.store_key)
    client = AsyncClient(
        account.homeserver, account.user, account.device, str(home.keys), config=config
    )
    client.restore_login(account.user, account.device, account.token)

    async def echo(room: MatrixRoom, event: RoomMessageText) -> None:
        if event.sender == client.user_id:
            return
        relation = {"m.in_reply_to": {"event_id": event.event_id}}
        content = {"msgtype": "m.text", "body": event.body, "m.relates_to": relation}
        await client.room_send(
            room.room_id, "m.room.message", content, ignore_unverified_devices=True
        )

    async def come(room: MatrixRoom, event: InviteMemberEvent) -> None:
        if event.state_key == client.user_id:
            await client.join(room.room_id)

    client.add_event_callback(echo, RoomMessageText)  # type: ignore[arg-type]
    client.add_event_callback(come, InviteMemberEvent)  # type: ignore[arg-type]
    await client.sync_forever(timeout=30_000, full_state=True)


if __name__ == "__main__":
    asyncio.run(main(Home(Path(sys.argv[1]))))
