"""What a check finds at the homeserver: an answer, the device with its keys, and the time."""

import json
import urllib.error
import urllib.request
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from email.utils import parsedate_to_datetime
from typing import Any

from bot import clock
from bot.account import Account, damage_of, key_store
from bot.cross_signing import Identity
from bot.settings import Home

CLOCKS_MAY_DIFFER = timedelta(minutes=2)
PATIENCE_SECONDS = 10.0


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing looked at, in a line; `well` if it is in order."""

    well: bool
    text: str


def right(text: str) -> Finding:
    """Something in order."""
    return Finding(True, text)


def wrong(text: str) -> Finding:
    """Something that the person has to put right."""
    return Finding(False, text)


@dataclass(frozen=True, slots=True)
class _Answer:
    status: int
    body: dict[str, Any]
    date: datetime | None


def findings_of_server(place: Home, account: Account) -> Iterator[Finding]:
    """The homeserver, the login, the clock and the device's keys."""
    try:
        versions = _ask(account, "GET", "/_matrix/client/versions", known=False)
    except OSError as error:
        yield wrong(f"the homeserver {account.homeserver} cannot be reached: {error}")
        return
    if versions.status != 200:
        yield wrong(f"the homeserver {account.homeserver} answers HTTP {versions.status}")
        return
    yield right(f"the homeserver {account.homeserver} answers")
    yield _clock(versions.date)
    try:
        yield from _device(place, account)
    except OSError as error:
        yield wrong(f"the homeserver {account.homeserver} stopped answering: {error}")


def _clock(there: datetime | None) -> Finding:
    if there is None:
        return right("the homeserver does not tell its time: the clock is not compared")
    apart = clock.now() - there
    seconds = round(apart.total_seconds())
    if abs(apart) > CLOCKS_MAY_DIFFER:
        return wrong(f"the clock is {seconds:+d} s off the homeserver's: set it, or dues slip")
    return right(f"the clock agrees with the homeserver's ({seconds:+d} s)")


def _device(place: Home, account: Account) -> Iterator[Finding]:
    asked = _ask(account, "GET", "/_matrix/client/v3/account/whoami")
    who = (asked.body.get("user_id"), asked.body.get("device_id"))
    if asked.status != 200 or who != (account.user, account.device):
        yield wrong(f"the homeserver does not know the bot's token ({asked.status}): log in again")
        return
    yield right(f"the bot is {account.user} on the device {account.device}")
    yield _key_store(place, account)
    query: dict[str, Any] = {"device_keys": {account.user: []}}
    answer = _ask(account, "POST", "/_matrix/client/v3/keys/query", query).body
    keys = answer.get("device_keys", {}).get(account.user, {}).get(account.device)
    if keys is None:
        yield wrong(
            "the homeserver has no keys of the bot's device: run the bot once; if it has run "
            "before, log in again with the password"
        )
        return
    yield _signature(account, keys.get("signatures", {}).get(account.user, {}), answer)


def _key_store(place: Home, account: Account) -> Finding:
    store = key_store(place, account)
    if not store.exists():
        return wrong(
            f"the device's keys are not in {place.keys}: if the bot has run before, log in again"
        )
    if damage := damage_of(store):
        return wrong(f"the key store {store} is damaged ({damage}): move it away, log in again")
    return right("the device's keys are whole")


def _signature(account: Account, signatures: dict[str, Any], answer: dict[str, Any]) -> Finding:
    published = answer.get("self_signing_keys", {}).get(account.user, {}).get("keys", {})
    own = Identity.from_seeds(account.seeds).public("self_signing") if account.seeds else None
    if own is not None and own not in published.values():
        return wrong("the account's signing identity is not the bot's own: verify it from there")
    if any(key in signatures for key in published):
        return right("the device is signed by its account")
    return wrong("the device is not signed by its account: some apps will not talk to the bot")


def _ask(
    account: Account, method: str, path: str, body: object = None, *, known: bool = True
) -> _Answer:
    data = None if body is None else json.dumps(body).encode()
    request = urllib.request.Request(account.homeserver + path, method=method, data=data)
    request.add_header("Content-Type", "application/json")
    if known:
        request.add_header("Authorization", f"Bearer {account.token}")
    try:
        with urllib.request.urlopen(request, timeout=PATIENCE_SECONDS) as response:
            return _answer(response.status, response.read(), response.headers.get("Date"))
    except urllib.error.HTTPError as error:
        with error:
            return _answer(error.code, error.read(), error.headers.get("Date"))


def _answer(status: int, text: bytes, date: str | None) -> _Answer:
    try:
        body = json.loads(text)
    except ValueError:
        body = {}
    try:
        there = parsedate_to_datetime(date) if date else None
    except ValueError:
        there = None
    return _Answer(status, body if isinstance(body, dict) else {}, there)
