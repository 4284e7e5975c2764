"""Faults of matrix-nio 0.26 by which a member, or a crash, could silence the bot: closed here.

Without this, one malformed to-device message ends the sync loop, again after every restart; so does
one device with malformed keys, as soon as the bot writes to its room; state or redactions written
*inside* ciphertext are believed, though no server ever allowed them; and a process that is killed
may lose a room key, or the right to upload keys, for good.
`tests/matrix/test_hardening.py` holds one case for each, so that a newer nio cannot bring one back.
"""

import logging
from collections.abc import Callable
from contextlib import AbstractContextManager
from typing import Any

from nio import (
    BadEvent,
    CallEvent,
    EncryptionError,
    Event,
    KeysClaimResponse,
    KeysQueryResponse,
    MegolmEvent,
    ReactionEvent,
    RoomMessage,
    StickerEvent,
    ToDeviceEvent,
    UnknownEvent,
)
from nio.client.async_client import AsyncClient
from nio.events import UnknownBadEvent
from peewee import PeeweeException

log = logging.getLogger(__name__)

_SAYABLE = (RoomMessage, ReactionEvent, StickerEvent, CallEvent, UnknownEvent)
"""What may come out of ciphertext: no state, no redaction, nothing malformed."""

Decrypted = Event | BadEvent | UnknownBadEvent
ShareKeys = Callable[[], dict[str, Any]]
HandleToDevice = Callable[[ToDeviceEvent], ToDeviceEvent | None]
Atomic = Callable[[], AbstractContextManager[object]]


def harden(client: AsyncClient, takes: Callable[[MegolmEvent], bool]) -> None:
    """Close the faults in this client: after `restore_login`, before the first sync.

    `takes` says of an event whether the device it came from is believed.
    """
    olm, store = client.olm, client.store
    if olm is None or store is None:
        raise RuntimeError("the key store is not open yet")
    # nio calls these methods through the instance, so that replacing them there is enough.
    vars(olm)["handle_to_device_event"] = _all_or_nothing(
        _dropping_bad(olm.handle_to_device_event), store.database.atomic
    )
    vars(olm)["verify_json"] = _refusing_bad(olm.verify_json)
    vars(olm)["_handle_key_query"] = _user_by_user(olm._handle_key_query)
    vars(olm)["_handle_key_claiming"] = _device_by_device(olm._handle_key_claiming)
    vars(olm)["share_keys"] = _keeping_first(olm.share_keys, olm.save_account)
    vars(olm)["decrypt_megolm_event"] = _believing_words_only(olm.decrypt_megolm_event, takes)


def _keeping_first(share_keys: ShareKeys, save_account: Callable[[], None]) -> ShareKeys:
    """Fresh one-time keys are kept before they are uploaded.

    A process killed in between would offer others under the same names, and be refused for ever.
    """

    def share_kept_keys() -> dict[str, Any]:
        keys = share_keys()
        save_account()
        return keys

    return share_kept_keys


def _all_or_nothing(handle: HandleToDevice, atomic: Atomic) -> HandleToDevice:
    """A room key and the step of the ratchet that it came by are kept in one transaction.

    A process killed between the two could never read that sender's session again.
    """

    def handle_at_once(event: ToDeviceEvent) -> ToDeviceEvent | None:
        with atomic():
            return handle(event)

    return handle_at_once


def _dropping_bad(handle: HandleToDevice) -> HandleToDevice:
    def handle_safely(event: ToDeviceEvent) -> ToDeviceEvent | None:
        try:
            return handle(event)
        except PeeweeException:
            raise  # the disk's fault, not the sender's: a key must not be dropped for it
        except Exception as error:  # noqa: BLE001 - anybody may send one, and vodozemac raises many kinds
            log.warning("dropped a bad to-device message: %s", type(error).__name__)
            return None

    return handle_safely


def _refusing_bad(verify: Callable[..., bool]) -> Callable[..., bool]:
    """A signature that cannot even be checked, by a key that is none, is no signature."""

    def verify_safely(*args: Any) -> bool:
        try:
            return verify(*args)
        except Exception:  # noqa: BLE001 - vodozemac raises many kinds
            return False

    return verify_safely


def _user_by_user(
    handle: Callable[[KeysQueryResponse], None],
) -> Callable[[KeysQueryResponse], None]:
    """What one user's device says of itself keeps no other user's from being known."""

    def handle_apart(answer: KeysQueryResponse) -> None:
        for user, devices in answer.device_keys.items():
            part = KeysQueryResponse({user: devices}, {})
            _try(handle, part, "keys")
            answer.changed.update(part.changed)

    return handle_apart


def _device_by_device(
    handle: Callable[[KeysClaimResponse], None],
) -> Callable[[KeysClaimResponse], None]:
    """A device that cannot be written to keeps no other from being written to."""

    def handle_apart(answer: KeysClaimResponse) -> None:
        for user, devices in answer.one_time_keys.items():
            for device, key in devices.items():
                _try(handle, KeysClaimResponse({user: {device: key}}, {}), "one-time key")

    return handle_apart


def _try(handle: Callable[[Any], None], part: object, what: str) -> None:
    try:
        handle(part)
    except PeeweeException:
        raise  # the disk's fault, not the member's
    except Exception as error:  # noqa: BLE001 - a member chose them: anything may be in them
        log.warning("passed over a device's bad %s: %s", what, type(error).__name__)


def _believing_words_only(
    decrypt: Callable[[MegolmEvent, str | None], Decrypted],
    takes: Callable[[MegolmEvent], bool],
) -> Callable[[MegolmEvent, str | None], Decrypted]:
    def decrypt_safely(event: MegolmEvent, room_id: str | None = None) -> Decrypted:
        try:
            decrypted = decrypt(event, room_id)
        except EncryptionError:
            raise
        except Exception as error:  # a member chose the plaintext: anything may be in it
            raise EncryptionError(f"unreadable plaintext: {type(error).__name__}") from error
        if not takes(event):
            raise EncryptionError("from a device that is not trusted")
        if not _is_sayable(decrypted, room_id or event.room_id):
            raise EncryptionError("state, a redaction or another room's event inside ciphertext")
        _prefer_clear_relation(decrypted.source, event)
        return decrypted

    return decrypt_safely


def _is_sayable(decrypted: Decrypted, room: str) -> bool:
    source = decrypted.source
    kind = source.get("type")
    return (
        isinstance(decrypted, _SAYABLE)
        and "state_key" not in source
        and source.get("room_id", room) == room
        # A state event without its state key comes as an unknown one.
        and isinstance(kind, str)
        and (kind == "m.room.message" or not kind.startswith("m.room."))
    )


def _prefer_clear_relation(source: dict[str, Any], envelope: MegolmEvent) -> None:
    """What an event relates to is told outside the ciphertext; nio would prefer the inside."""
    clear = envelope.source["content"].get("m.relates_to")
    if clear is not None:
        source["content"]["m.relates_to"] = clear
