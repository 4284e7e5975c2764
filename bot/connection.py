"""The line to the homeserver: a hardened client of one device, and plain calls beside it."""

import json
import logging
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import replace
from datetime import UTC, datetime
from email.utils import parsedate_to_datetime
from typing import Any

import aiohttp
from nio.client.async_client import AsyncClient, AsyncClientConfig
from nio.exceptions import LocalProtocolError
from nio.responses import (
    KeysQueryError,
    KeysQueryResponse,
    KeysUploadError,
    Response,
    ShareGroupSessionError,
    ShareGroupSessionResponse,
)
from nio.store.database import SqliteStore

from bot import account as accounts
from bot.account import Account
from bot.cross_signing import CrossSigningError, Device, Identity, new_seeds, sign_device
from bot.hardening import harden
from bot.settings import Home, Trusted
from bot.trust import OK, Trust
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


class DeviceLost(UserError):
    """The homeserver has deleted the bot's device with its keys; the text says what to do."""

    def __init__(self) -> None:
        super().__init__(
            "The homeserver no longer has the keys of the bot's device, as after all its sessions "
            "were signed out. Run `python -m bot login` with the password: it becomes a new "
            "device, signed by the same account, and the book stays."
        )


class Client(AsyncClient):
    """A device of an account, which knows the devices that it trusts."""

    trust: Trust

    async def keys_query(self) -> KeysQueryResponse | KeysQueryError:
        """Ask for the keys of devices, and judge these; nio also does so when it sends."""
        answer: KeysQueryResponse | KeysQueryError = await super().keys_query()
        await self.trust.judge(answer)
        return answer

    async def share_group_session(
        self, room_id: str, ignore_unverified_devices: bool = False
    ) -> ShareGroupSessionResponse | ShareGroupSessionError:
        """Give a room's key to all its trusted devices, or to none: ClientError if it did not go.

        nio would write on under a key that was lost on the way to some.
        """
        answer: ShareGroupSessionResponse | ShareGroupSessionError
        answer = await super().share_group_session(room_id, ignore_unverified_devices)
        assert self.olm is not None
        session = self.olm.outbound_group_sessions[room_id]
        wanted = {
            (user, device.id)
            for user in self.rooms[room_id].users
            for device in self.olm.device_store.active_user_devices(user)
            if not device.blacklisted and self.olm.session_store.get(device.curve25519)
        }
        reached = session.users_shared_with | session.users_ignored
        if not wanted <= reached | {(self.user_id, self.device_id)}:
            self.invalidate_outbound_session(room_id)
            raise aiohttp.ClientError("the key of a room did not go out to all its devices")
        return answer


def opened(home: Home, account: Account, trusted: Trusted = "signed") -> Client:
    """A client that is this device, with its key store open.

    To be had before an event loop has other work: a new store waits for the disk, an old one for
    all its keys to be read, and nio's stays with the thread that opened it.
    """
    home.keys.mkdir(mode=0o700, parents=True, exist_ok=True)
    config = AsyncClientConfig(
        store=SqliteStore,
        pickle_key=account.store_key,
        # The token of the book counts: nio would save its own before we have kept the events.
        store_sync_tokens=False,
        # A lost line is raised, not retried for ever out of our sight.
        max_timeouts=0,
    )
    client = Client(account.homeserver, account.user, account.device, str(home.keys), config=config)
    client.restore_login(account.user, account.device, account.token)
    client.trust = Trust(client, trusted)
    harden(client, client.trust.takes)
    unhurry(client)
    return client


@asynccontextmanager
async def connected(
    home: Home, account: Account, trusted: Trusted = "signed"
) -> AsyncIterator[Client]:
    """The same, closed at the end: where the loop has nothing else to do."""
    async with closed_after(opened(home, account, trusted)) as client:
        yield client


@asynccontextmanager
async def closed_after(client: Client) -> AsyncIterator[Client]:
    """A client, with its line and its key store closed at the end."""
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


def http_date(answer: Response) -> datetime | None:
    """The homeserver's own time when it gave an answer (UTC), if it told it."""
    headers = getattr(answer.transport_response, "headers", {})
    try:
        told = parsedate_to_datetime(headers.get("Date", ""))
    except ValueError:
        return None
    return told if told.tzinfo else told.replace(tzinfo=UTC)


async def refuse_lost_device(client: AsyncClient) -> None:
    """DeviceLost where keys that were uploaded are not at the homeserver: nobody would write to it.

    Uploaded again they would help little: a client that saw a device go may never take it back.
    """
    if not client.olm_account_shared:
        return  # they are still to be uploaded
    query: dict[str, Any] = {"device_keys": {client.user_id: []}}
    try:
        status, answer = await call(client, "POST", "/_matrix/client/v3/keys/query", query)
    except OUT_OF_REACH:
        return
    known = answer.get("device_keys", {}).get(client.user_id, {})
    if status == OK and client.device_id not in known:
        raise DeviceLost


async def tend_keys(client: Client) -> bool:
    """Upload, query and claim what the encryption needs now, and send what waits for devices.

    True if other devices were judged anew, so that what was not believed may now be.
    """
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
            await client.trust.learn()
        if client.should_claim_keys:
            await client.keys_claim(client.get_users_for_key_claiming())
        await client.send_to_device_messages()
    except (*OUT_OF_REACH, LocalProtocolError) as error:
        log.warning("encryption keys could not be tended, next time: %s", type(error).__name__)
    return client.trust.has_judged()


async def cross_sign(
    client: AsyncClient,
    home: Home,
    account: Account,
    password: str | None = None,
    *,
    replaces: bool = False,
) -> Account:
    """Have the device signed by the account's own identity; the account with its seeds.

    `replaces`: an identity that was made elsewhere gives way to it.
    """
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
        identity = Identity.from_seeds(account.seeds)
        await sign_device(post, device, identity, password, replaces=replaces)
    except (*OUT_OF_REACH, CrossSigningError) as error:
        log.warning("the device is not cross-signed: %s", error)
    return account
