"""`python -m bot login`: ask once for the account, and keep what the bot needs to come back."""

import argparse
import asyncio
import getpass
import os
import sys
from collections.abc import Callable
from dataclasses import dataclass, field, replace

import aiohttp
from nio.client.async_client import AsyncClient, AsyncClientConfig
from nio.responses import DiscoveryInfoResponse, LoginResponse, WhoamiResponse

from bot import account as accounts
from bot import settings
from bot.account import Account
from bot.connection import (
    OUT_OF_REACH,
    DeviceLost,
    call,
    connected,
    cross_sign,
    refuse_lost_device,
    tend_keys,
)
from bot.settings import Home
from bot.terminal import say
from storage.errors import UserError

DEVICE_NAME = "Pailkeeper"


class LoginError(UserError):
    """The login did not work; the text says what to do."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Answers:
    """What the person answered."""

    homeserver: str
    user: str
    password: str = field(default="", repr=False)
    token: str = field(default="", repr=False)


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Describe the command."""
    parser = subparsers.add_parser(
        "login",
        help="log the bot in to its Matrix account",
        description="Asks for the bot's Matrix account and keeps the login, readable by you only.",
    )
    parser.add_argument("--home", metavar="DIR", help="where the bot keeps everything")
    parser.add_argument(
        "--new-identity",
        action="store_true",
        help="replace the account's signing identity, where the home with the old one was lost; "
        "asks for the password, and whoever verified the bot has to do so again",
    )


def run(args: argparse.Namespace) -> int:
    """Ask, log in, keep; 0 when the bot can be started."""
    os.umask(0o077)
    place = settings.home(args.home)
    with accounts.sole_user(place):
        before = accounts.read(place)
        answers = _ask_account(before)
        account = asyncio.run(_log_in(place, answers, before, args.new_identity))
        say(f"Logged in as {account.user} on {account.homeserver}.")
        _choose_inviters(place, account)
    say(f"All of it is in {place.folder}. Start the bot with: python -m bot run")
    return 0


def _ask_account(before: Account | None) -> Answers:
    homeserver = _ask("Homeserver", before.homeserver if before else "")
    user = _ask("User", before.user if before else "")
    if not homeserver or not user:
        raise LoginError("A homeserver and a user are needed. Run `python -m bot login` again.")
    password = _ask_secret("Password (leave empty to use an access token)")
    token = "" if password else _ask_secret("Access token").strip()
    if not password and not token:
        raise LoginError("A password or an access token is needed. Create the account first.")
    return Answers(homeserver=homeserver, user=user, password=password, token=token)


def _choose_inviters(place: Home, account: Account) -> None:
    if place.settings.exists():
        settings.read(place)
        say(f"Who may invite the bot stays as {place.settings} says.")
        return
    server = settings.server_of(account.user)
    said = _ask(f"Who may invite it: users or servers (empty: everybody on {server})", "")
    obey = tuple(said.replace(",", " ").split())
    text = settings.template(obey)
    settings.parse(text, place.settings)
    place.settings.write_text(text, encoding="utf-8")


async def _log_in(
    place: Home, answers: Answers, before: Account | None, new_identity: bool
) -> Account:
    try:
        homeserver = await _find(answers.homeserver)
        same = before if before and _is_same(place, before, homeserver, answers.user) else None
        try:
            return await _come_in(place, homeserver, answers, before, same, new_identity)
        except DeviceLost:
            if not answers.password:
                raise
            return await _come_in(place, homeserver, answers, before, None, new_identity)
    except OUT_OF_REACH as error:
        raise LoginError(
            f"{answers.homeserver} cannot be reached ({type(error).__name__}). "
            "Check the address and the connection, then run `python -m bot login` again."
        ) from error


async def _come_in(
    place: Home,
    homeserver: str,
    answers: Answers,
    before: Account | None,
    same: Account | None,
    new_identity: bool,
) -> Account:
    """Log in as the `same` device or as a new one, keep the login, and have the device signed."""
    if answers.password:
        account = await _by_password(homeserver, answers, same)
    else:
        account = await _by_token(homeserver, answers, same)
    if before and before.user != account.user:
        raise LoginError(
            f"{place.folder} belongs to {before.user}. "
            f"Give {account.user} a home of its own with --home."
        )
    if before:
        # Also for another device: the same identity signs it.
        account = replace(account, seeds=before.seeds)
    accounts.write(place, account)
    async with connected(place, account) as client:
        try:
            await refuse_lost_device(client)
        except DeviceLost:
            if answers.password:  # a session without keys is of no use to anybody
                await call(client, "POST", "/_matrix/client/v3/logout", {})
            raise
        await tend_keys(client)
        password = answers.password or None
        return await cross_sign(client, place, account, password, replaces=new_identity)


async def _find(said: str) -> str:
    """The base URL behind what a person calls a homeserver (well-known lookup)."""
    if "://" in said:
        return said.rstrip("/")
    base = f"https://{said}"
    client = AsyncClient(base, config=AsyncClientConfig(max_timeouts=0, request_timeout=20))
    try:
        found = await client.discovery_info()
    except aiohttp.ClientError:
        return base
    finally:
        await client.close()  # type: ignore[no-untyped-call]
    return found.homeserver_url.rstrip("/") if isinstance(found, DiscoveryInfoResponse) else base


def _is_same(place: Home, before: Account, homeserver: str, user: str) -> bool:
    """Whether the device logged in before can go on; without its keys it could read nothing."""
    name = user.removeprefix("@").partition(":")[0]
    known = before.user in (user, f"@{name}:{settings.server_of(before.user)}")
    keys = accounts.key_store(place, before)
    return known and before.homeserver == homeserver and keys.exists()


async def _by_password(homeserver: str, answers: Answers, same: Account | None) -> Account:
    client = _stranger(homeserver, answers.user, same.device if same else "")
    try:
        answer = await client.login(answers.password, device_name=DEVICE_NAME)
    finally:
        await client.close()  # type: ignore[no-untyped-call]
    if not isinstance(answer, LoginResponse):
        raise LoginError(_refusal(answer.status_code, answer.message, answers.user))
    return _account(homeserver, answer.user_id, answer.device_id, answer.access_token, same)


async def _by_token(homeserver: str, answers: Answers, same: Account | None) -> Account:
    client = _stranger(homeserver, answers.user, "")
    client.access_token = answers.token
    try:
        answer = await client.whoami()
    finally:
        await client.close()  # type: ignore[no-untyped-call]
    if not isinstance(answer, WhoamiResponse):
        raise LoginError(_refusal(answer.status_code, answer.message, answers.user))
    if not answer.device_id:
        raise LoginError("This access token has no device. Log in with the password instead.")
    kept = same if same and same.device == answer.device_id else None
    return _account(homeserver, answer.user_id, answer.device_id, answers.token, kept)


def _stranger(homeserver: str, user: str, device: str) -> AsyncClient:
    # Without a store: who we are is only known afterwards.
    config = AsyncClientConfig(encryption_enabled=False, max_timeouts=0)
    return AsyncClient(homeserver, user, device, config=config)


def _account(homeserver: str, user: str, device: str, token: str, same: Account | None) -> Account:
    return Account(
        homeserver=homeserver,
        user=user,
        device=device,
        token=token,
        store_key=same.store_key if same else accounts.new_store_key(),
    )


def _refusal(code: str | None, message: str, user: str) -> str:
    match code:
        case "M_FORBIDDEN":
            return f"The homeserver does not take this password for {user}. Check both."
        case "M_UNKNOWN_TOKEN" | "M_MISSING_TOKEN":
            return (
                "The homeserver does not know this access token. Copy it anew or use the password."
            )
        case "M_USER_DEACTIVATED":
            return f"The account {user} has been closed. Use another."
        case _:
            return (
                f"The homeserver refused the login ({message or code}). Is the address that of a "
                "Matrix homeserver, and does it allow passwords? If not, use an access token."
            )


def _ask(question: str, default: str) -> str:
    shown = f"{question} [{default}]: " if default else f"{question}: "
    return _line(shown, input).strip() or default


def _ask_secret(question: str) -> str:
    return _line(f"{question}: ", getpass.getpass)


def _line(shown: str, ask: Callable[[str], str]) -> str:
    if sys.stdin.isatty():
        try:
            return ask(shown)
        except EOFError:
            return ""
    # A pipe shows nothing of what comes through it, and getpass would complain about it.
    sys.stdout.write(shown + "\n")
    sys.stdout.flush()
    return sys.stdin.readline().rstrip("\r\n")
