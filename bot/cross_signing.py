"""The bot signs its own device, so that clients which trust signed devices only do not shut it out.

The three private seeds are kept with the login: the same identity signs the next device as well.
An identity that somebody made elsewhere is never replaced.
"""

import base64
import json
import logging
import secrets
from collections.abc import Awaitable, Callable, Mapping
from dataclasses import dataclass
from typing import Any

from Crypto.PublicKey import ECC
from Crypto.Signature import eddsa

log = logging.getLogger(__name__)

USAGES = ("master", "self_signing", "user_signing")
Json = dict[str, Any]


class CrossSigningError(Exception):
    """The homeserver did not take the signature; the text says what to do."""


Post = Callable[[str, Json], Awaitable[tuple[int, Json]]]
"""One authenticated call: path and JSON body to HTTP status and JSON answer."""


@dataclass(frozen=True, slots=True)
class Device:
    """The device to be signed; `sign` signs a text with the device's own key."""

    user: str
    id: str
    sign: Callable[[str], str]


@dataclass(frozen=True, slots=True)
class Identity:
    """The three Ed25519 keys of an account."""

    keys: Mapping[str, ECC.EccKey]

    @classmethod
    def from_seeds(cls, seeds: Mapping[str, str]) -> "Identity":
        """The keys that grow from `seeds`."""
        return cls(
            {u: ECC.construct(curve="Ed25519", seed=base64.b64decode(seeds[u])) for u in USAGES}
        )

    def public(self, usage: str) -> str:
        """The public key (unpadded base64)."""
        return _unpadded(self.keys[usage].public_key().export_key(format="raw"))

    def sign(self, what: Json, usage: str) -> str:
        """The signature of a JSON object by one of the keys."""
        return _unpadded(eddsa.new(self.keys[usage], "rfc8032").sign(canonical(what).encode()))


def new_seeds() -> dict[str, str]:
    """Fresh private seeds (base64), to be kept secret."""
    return {usage: base64.b64encode(secrets.token_bytes(32)).decode() for usage in USAGES}


async def sign_device(
    post: Post,
    device: Device,
    identity: Identity,
    password: str | None = None,
    *,
    replaces: bool = False,
) -> bool:
    """Publish the identity where the account has none, and sign the device; False if not ours.

    `password` answers a homeserver that asks for it before it takes the keys; `replaces`: another
    identity that the account has gives way.
    """
    answer = await _ask(post, "/_matrix/client/v3/keys/query", {"device_keys": {device.user: []}})
    published = _public_master(answer, device.user)
    if published is None or (replaces and published != identity.public("master")):
        await _publish(post, device, identity, password)
    elif published != identity.public("master"):
        log.warning(
            "this account has a cross-signing identity made elsewhere, which is left as it is: "
            "verify the bot's device %s from there, or, if that identity is lost, run "
            "`python -m bot login --new-identity`",
            device.id,
        )
        return False
    keys = answer.get("device_keys", {}).get(device.user, {}).get(device.id)
    if keys is None:
        raise CrossSigningError("The homeserver does not know the bot's device. Log in again.")
    signer = "ed25519:" + identity.public("self_signing")
    if signer not in keys.get("signatures", {}).get(device.user, {}):
        await _sign(post, device, identity, keys)
    return True


def _public_master(answer: Json, user: str) -> str | None:
    keys = answer.get("master_keys", {}).get(user, {}).get("keys", {})
    return next(iter(keys.values()), None)


async def _publish(post: Post, device: Device, identity: Identity, password: str | None) -> None:
    master = _key(identity, device.user, "master")
    body: Json = {
        "master_key": _signed(master, device.user, device.id, device.sign(canonical(master)))
    }
    for usage in ("self_signing", "user_signing"):
        key = _key(identity, device.user, usage)
        by = identity.public("master")
        body[usage + "_key"] = _signed(key, device.user, by, identity.sign(key, "master"))
    path = "/_matrix/client/v3/keys/device_signing/upload"
    status, answer = await post(path, body)
    if status == 401 and "session" in answer and password is not None:
        body["auth"] = {
            "type": "m.login.password",
            "identifier": {"type": "m.id.user", "user": device.user},
            "password": password,
            "session": answer["session"],
        }
        status, answer = await post(path, body)
    if status == 401:
        raise CrossSigningError(
            "The homeserver wants the password before it takes the bot's signing keys. "
            "Run `python -m bot login` again, with the password."
        )
    if status != 200:
        raise CrossSigningError(_refusal("signing keys", status, answer))


async def _sign(post: Post, device: Device, identity: Identity, keys: Json) -> None:
    unsigned = {k: v for k, v in keys.items() if k not in ("unsigned", "signatures")}
    by = identity.public("self_signing")
    signed = _signed(unsigned, device.user, by, identity.sign(unsigned, "self_signing"))
    path = "/_matrix/client/v3/keys/signatures/upload"
    answer = await _ask(post, path, {device.user: {device.id: signed}})
    if answer.get("failures"):
        raise CrossSigningError(_refusal("signature", 200, answer))


async def _ask(post: Post, path: str, body: Json) -> Json:
    status, answer = await post(path, body)
    if status != 200:
        raise CrossSigningError(_refusal(path.rpartition("/")[2], status, answer))
    return answer


def _refusal(what: str, status: int, answer: Json) -> str:
    why = answer.get("error") or answer.get("failures") or "no reason given"
    return f"The homeserver refused the bot's {what} (HTTP {status}: {why})."


def _key(identity: Identity, user: str, usage: str) -> Json:
    public = identity.public(usage)
    return {"user_id": user, "usage": [usage], "keys": {"ed25519:" + public: public}}


def _signed(what: Json, user: str, by: str, signature: str) -> Json:
    return {**what, "signatures": {user: {"ed25519:" + by: signature}}}


def is_signed_by(what: object, user: str, key: str) -> bool:
    """Whether a JSON object bears a user's signature by a public key (unpadded base64)."""
    try:
        bare = {k: v for k, v in what.items() if k not in ("signatures", "unsigned")}  # type: ignore[attr-defined]
        signature = what["signatures"][user][f"ed25519:{key}"]  # type: ignore[index]
        public = eddsa.import_public_key(_padded(key))
        eddsa.new(public, "rfc8032").verify(canonical(bare).encode(), _padded(signature))
    except (AttributeError, KeyError, TypeError, ValueError):
        return False  # anybody may have written it
    return True


def canonical(what: Json) -> str:
    """Canonical JSON (Matrix specification, appendix "Signing JSON")."""
    return json.dumps(what, sort_keys=True, separators=(",", ":"), ensure_ascii=False)


def _padded(text: str) -> bytes:
    return base64.b64decode(text + "=" * (-len(text) % 4))


def _unpadded(raw: bytes) -> str:
    return base64.b64encode(raw).decode().rstrip("=")
