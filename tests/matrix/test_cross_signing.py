"""The bot's device is signed by the account's own identity, as strict clients demand."""

from __future__ import annotations

import json
from typing import TYPE_CHECKING, Any

import pytest
from vodozemac import Ed25519PublicKey, Ed25519Signature

from bot import account as accounts
from bot.cross_signing import (
    CrossSigningError,
    Device,
    Identity,
    Json,
    canonical,
    new_seeds,
    sign_device,
)

if TYPE_CHECKING:
    from bot.homeserver import Homeserver, User
    from tests.matrix.conftest import Street


def published(server: Homeserver, user: User) -> Json:
    status, answer = server.call(
        "POST", "/_matrix/client/v3/keys/query", {"device_keys": {user.id: []}}, user.token
    )
    assert status == 200
    return answer


def only_key(answer: Json, usage: str, user: str) -> str:
    (key,) = answer[f"{usage}_keys"][user]["keys"].values()
    return str(key)


def assert_signed(what: Json, user: str, by: str, key: str) -> None:
    """Checked with another library than it was signed with."""
    signature = what["signatures"][user][f"ed25519:{by}"]
    bare = {k: v for k, v in what.items() if k not in ("signatures", "unsigned")}
    Ed25519PublicKey.from_base64(key).verify_signature(
        canonical(bare).encode(), Ed25519Signature.from_base64(signature)
    )


async def started_and_stopped(street: Street, user: User | None = None) -> User:
    bot = street.bot(user=user)
    bot.start()
    await bot.comes_to("SELECT 1 FROM session")
    await bot.stop()
    return bot.user


async def test_the_device_is_signed_after_the_first_start(street: Street) -> None:
    user = await started_and_stopped(street)
    answer = published(street.server, user)
    device = answer["device_keys"][user.id][user.device]
    self_signing = only_key(answer, "self_signing", user.id)
    master = only_key(answer, "master", user.id)
    assert_signed(device, user.id, self_signing, self_signing)
    assert_signed(answer["self_signing_keys"][user.id], user.id, master, master)
    own = device["keys"][f"ed25519:{user.device}"]
    assert_signed(answer["master_keys"][user.id], user.id, user.device, own)


async def test_a_later_start_keeps_the_identity(street: Street) -> None:
    bot = street.bot()
    seen = []
    for _ in range(2):
        bot.start()
        await bot.comes_to("SELECT 1 FROM session")
        await bot.stop()
        seen.append(only_key(published(street.server, bot.user), "master", bot.user.id))
    assert seen[0] == seen[1]
    account = accounts.read(bot.home)
    assert account is not None
    assert Identity.from_seeds(account.seeds).public("master") == seen[0]


async def test_an_identity_made_elsewhere_is_left_alone(
    street: Street, caplog: pytest.LogCaptureFixture
) -> None:
    user = street.user("pailkeeper")
    made = Identity.from_seeds(new_seeds())

    async def post(path: str, body: Json) -> tuple[int, Json]:
        return street.server.call("POST", path, body, user.token)

    with pytest.raises(CrossSigningError, match="does not know the bot's device"):
        await sign_device(post, Device(user.id, user.device, lambda text: ""), made)
    await started_and_stopped(street, user)
    assert "made elsewhere" in caplog.text
    assert only_key(published(street.server, user), "master", user.id) == made.public("master")


@pytest.mark.parametrize("password", ["right", None])
async def test_a_homeserver_may_want_the_password_first(password: str | None) -> None:
    asked: list[tuple[str, Any]] = []
    identity = Identity.from_seeds(new_seeds())
    keys = {"user_id": "@p:x", "device_id": "D", "keys": {}, "signatures": {}}

    async def post(path: str, body: Json) -> tuple[int, Json]:
        asked.append((path.rpartition("/v3/")[2], json.loads(json.dumps(body))))
        if path.endswith("keys/query"):
            return 200, {"device_keys": {"@p:x": {"D": keys}}}
        if path.endswith("device_signing/upload") and "auth" not in body:
            return 401, {"session": "s", "flows": [{"stages": ["m.login.password"]}]}
        return 200, {}

    device = Device("@p:x", "D", lambda text: "signature")
    if password is None:
        with pytest.raises(CrossSigningError, match="with the password"):
            await sign_device(post, device, identity, password)
        return
    assert await sign_device(post, device, identity, password)
    auth = asked[2][1]["auth"]
    assert (auth["session"], auth["password"]) == ("s", "right")
    assert asked[3][0] == "keys/signatures/upload"
