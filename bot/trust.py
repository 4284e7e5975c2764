"""Which devices are trusted in encrypted rooms: given the room's keys, and believed.

A device is signed when the account it belongs to vouches for it (cross-signing). Somebody who has
got hold of a password, or runs a homeserver, can add a device to an account, but not sign it.
"""

from collections.abc import Mapping
from typing import Any

from nio import KeysQueryError, KeysQueryResponse, MegolmEvent
from nio.client.async_client import AsyncClient
from nio.crypto.device import OlmDevice

from bot.cross_signing import is_signed_by
from bot.settings import Trusted

Json = Mapping[str, Any]
OK = 200


class Trust:
    """What is known of the devices in the bot's rooms; one that is not trusted is blocked in nio.

    A blocked device is given no keys. What is not known yet is asked for, not guessed.
    """

    def __init__(self, client: AsyncClient, trusted: Trusted) -> None:
        assert client.olm is not None
        self._client = client
        self._olm = client.olm
        self._trusted = trusted
        self._signs: dict[str, bool] = {}
        """The accounts asked about, and whether each signs its devices."""
        self._judged = False
        # The choice, or a signature, may have changed since these devices were kept.
        self._olm.users_for_key_query |= set(self._olm.device_store.users)

    async def learn(self) -> None:
        """Ask for the keys that are wanted, of everybody at once where that can be read."""
        wanted = set(self._olm.users_for_key_query)
        if is_readable(await self._client.keys_query()):
            return
        # One account's device is malformed; it must not keep the others from being known.
        for user in wanted:
            self._olm.users_for_key_query = {user}
            await self._client.keys_query()
            self._signs.setdefault(user, False)
        self._olm.users_for_key_query = set()

    async def judge(self, answer: KeysQueryResponse | KeysQueryError) -> None:
        """Judge the devices that an answer tells of, before anything is written to them."""
        if not isinstance(answer, KeysQueryResponse):
            return
        # nio gives back no signing keys, but the text of the answer is still there. The other,
        # synchronous client of nio is what its types speak of here.
        transport: Any = answer.transport_response
        told: Json = await transport.json()
        for user in answer.device_keys:
            self._judge(user, told)
            self._judged = True

    def has_judged(self) -> bool:
        """Whether devices were judged since this was last asked."""
        judged, self._judged = self._judged, False
        return judged

    def takes(self, event: MegolmEvent) -> bool:
        """Whether an event is believed, by the device that its session came from."""
        if self._trusted == "all" or event.sender == self._client.user_id:
            return True  # nothing is taken from the bot's own account anyway
        if event.sender not in self._signs:
            self._olm.users_for_key_query.add(event.sender)
            return False
        device = self._device_of(event)
        if device is None:
            return self._trusted == "signed" and not self._signs[event.sender]
        return not device.blacklisted

    def refuses(self, event: MegolmEvent) -> bool:
        """Whether an event is not believed, though its sender's devices are known."""
        return event.sender in self._signs and not self.takes(event)

    def _device_of(self, event: MegolmEvent) -> OlmDevice | None:
        devices = self._olm.device_store[event.sender].values()
        return next((d for d in devices if d.curve25519 == event.sender_key), None)

    def _judge(self, user: str, told: Json) -> None:
        signer = signing_key(user, told)
        self._signs[user] = signer is not None
        for device in list(self._olm.device_store.active_user_devices(user)):
            if self._trusted == "all" or (self._trusted == "signed" and signer is None):
                is_trusted = True
            else:
                is_trusted = signer is not None and _is_signed(device, signer, told)
            # Either also has the next message go out under a fresh key, if it changes anything.
            if is_trusted:
                self._client.unblacklist_device(device)
            else:
                self._client.blacklist_device(device)


def is_readable(answer: KeysQueryResponse | KeysQueryError) -> bool:
    """False for an answer of the homeserver's in which something is malformed."""
    transport: Any = answer.transport_response
    return isinstance(answer, KeysQueryResponse) or transport.status != OK


def _is_signed(device: OlmDevice, signer: str, told: Json) -> bool:
    """Whether the keys that we know a device by are signed."""
    keys = _of(_of(_of(told, "device_keys"), device.user_id), device.id)
    known = {f"{kind}:{device.id}": key for kind, key in device.keys.items()}
    return keys.get("keys") == known and is_signed_by(keys, device.user_id, signer)


def signing_key(user: str, told: Json) -> str | None:
    """The key by which an account signs its devices, vouched for by its master key; None if none.

    `told` is a homeserver's answer to a query of keys.
    """
    keys = {}
    for usage in ("master", "self_signing"):
        keys[usage] = _of(_of(told, f"{usage}_keys"), user)
        if keys[usage].get("user_id") != user or usage not in (keys[usage].get("usage") or ()):
            return None
    master, own = (next(iter(_of(key, "keys").values()), None) for key in keys.values())
    if not isinstance(master, str) or not isinstance(own, str):
        return None
    return own if is_signed_by(keys["self_signing"], user, master) else None


def _of(value: Json, name: str) -> Json:
    part = value.get(name)
    return part if isinstance(part, Mapping) else {}
