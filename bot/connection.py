"""The line to the homeserver: a hardened client of one device, and plain calls beside it."""

import json
import logging
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import replace
from typing import Any

import aiohttp
from nio.client.async_client import AsyncClient, AsyncClientConfig
from nio.exceptions import LocalProtocolError
from nio.responses import KeysUploadError, Response
from nio.store.database import SqliteStore

from bot import account as accounts
from bot.account import Account
from bot.cross_signing import CrossSigningError, Device, Identity, new_seeds, sign_device
from bot.hardening import harden
from bot.settings import Home
from bot.unhurried import unhurry
from storage.errors import UserError

log = logging.getLogger(__name__)
# nio's own lines quote events and payloads, which hold people's words and keys.
logging.getLogger("nio").setLevel(logging.CRITICAL)

OUT_OF_REACH = (aiohttp.ClientError, TimeoutError, OSError, UnicodeDecodeError)
"""What a bad line may raise, or a proxy's page instead of JSON; always worth another try."""


class SignedOut(UserError):
    """The homeserver no longer knows the bot's token; the text says what to do."""

    def __init__(self) -> None:
        super().__init__(
            "The homeserver has signed this bot out. Run `python -m bot login` and start it again."
        )


@asynccontextmanager
async def connected(home: Home, account: Account) -> AsyncIterator[AsyncClient]:
    """A client that is this device, with its key store open."""
    home.keys.mkdir(mode=0o700, parents=True, exist_ok=True)
    config = AsyncClientConfig(
        store=SqliteStore,
        pickle_key=account.store_key,
        # The token of the book counts: nio would save its own before we have kept the events.
        store_sync_tokens=False,
        # A lost line is raised, not retried for ever out of our sight.
        max_timeouts=0,
    )
    client = AsyncClient(
        account.homeserver, account.user, account.device, str(home.keys), config=config
    )
    client.restore_login(account.user, account.device, account.token)
    harden(client)
    unhurry(client)
    try:
        yield client
    finally:
        await client.close()  # type: ignore[no-untyped-call]
        if client.store is not None:
            client.store.database.close()


async def call(
    client: AsyncClient, method: str, path: str, body: object = None
) -> tuple[int, dict[str, Any]]:
    """One authenticated request that nio has no word for: HTTP status and JSON answer."""
    headers = {
        "Authorization": f"Bearer {client.access_token}",
        "Content-Type": "application/json",
    }
    data = None if body is None else json.dumps(body)
    async with await client.send(method, path, data, headers) as response:
        try:
            answer = await response.json(content_type=None)
        except ValueError:
            answer = None
        return response.status, answer if isinstance(answer, dict) else {}


def http_status(answer: Response) -> int:
    """The HTTP status behind one of nio's answers; 0 if there is none."""
    # nio declares the answer of its other, synchronous client here.
    return int(getattr(answer.transport_response, "status", 0))


async def tend_keys(client: AsyncClient) -> None:
    """Upload, query and claim what the encryption needs now, and send what waits for devices."""
    try:
        if client.should_upload_keys:
            answer = await client.keys_upload()
            if isinstance(answer, KeysUploadError):
                log.error(
                    "the homeserver refuses the device's keys (%s). If this goes on, move the "
                    "keys folder away and run `python -m bot login` again",
                    answer,
                )
        if client.should_query_keys:
            await client.keys_query()
        if client.should_claim_keys:
            await client.keys_claim(client.get_users_for_key_claiming())
        await client.send_to_device_messages()
    except (*OUT_OF_REACH, LocalProtocolError) as error:
        log.warning("encryption keys could not be tended, next time: %s", type(error).__name__)


async def cross_sign(
    client: AsyncClient, home: Home, account: Account, password: str | None = None
) -> Account:
    """Have the device signed by the account's own identity; the account with its seeds."""
    if not account.seeds:
        # Kept before they are published: a crash in between must not lose the identity.
        account = replace(account, seeds=new_seeds())
        accounts.write(home, account)
    olm = client.olm
    assert olm is not None
    device = Device(account.user, account.device, olm.account.sign)

    async def post(path: str, body: dict[str, Any]) -> tuple[int, dict[str, Any]]:
        return await call(client, "POST", path, body)

    try:
        await sign_device(post, device, Identity.from_seeds(account.seeds), password)
    except (*OUT_OF_REACH, CrossSigningError) as error:
        log.warning("the device is not cross-signed: %s", error)
    return account
