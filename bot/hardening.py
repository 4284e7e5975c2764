"""Faults of matrix-nio 0.26 that a member of a room could use against the bot, closed.

Without this, one malformed to-device message ends the sync loop, again after every restart, and
state or redactions written *inside* ciphertext are believed, though no server ever allowed them.
`tests/matrix/test_hardening.py` holds one case for each, so that a newer nio cannot bring one back.
"""

import logging
from collections.abc import Callable
from typing import Any

from nio import (
    BadEvent,
    CallEvent,
    EncryptionError,
    Event,
    MegolmEvent,
    ReactionEvent,
    RoomMessage,
    StickerEvent,
    ToDeviceEvent,
    UnknownEvent,
)
from nio.client.async_client import AsyncClient
from nio.events import UnknownBadEvent

log = logging.getLogger(__name__)

_SAYABLE = (RoomMessage, ReactionEvent, StickerEvent, CallEvent, UnknownEvent)
"""What may come out of ciphertext: no state, no redaction, nothing malformed."""

Decrypted = Event | BadEvent | UnknownBadEvent


def harden(client: AsyncClient) -> None:
    """Close the faults in this client: after `restore_login`, before the first sync."""
    olm = client.olm
    if olm is None:
        raise RuntimeError("the key store is not open yet")
    # nio calls both methods through the instance, so that replacing them there is enough.
    vars(olm)["handle_to_device_event"] = _dropping_bad(olm.handle_to_device_event)
    vars(olm)["decrypt_megolm_event"] = _believing_words_only(olm.decrypt_megolm_event)


def _dropping_bad(
    handle: Callable[[ToDeviceEvent], ToDeviceEvent | None],
) -> Callable[[ToDeviceEvent], ToDeviceEvent | None]:
    def handle_safely(event: ToDeviceEvent) -> ToDeviceEvent | None:
        try:
            return handle(event)
        except Exception as error:  # noqa: BLE001 - anybody may send one, and vodozemac raises many kinds
            log.warning("dropped a bad to-device message: %s", type(error).__name__)
            return None

    return handle_safely


def _believing_words_only(
    decrypt: Callable[[MegolmEvent, str | None], Decrypted],
) -> Callable[[MegolmEvent, str | None], Decrypted]:
    def decrypt_safely(event: MegolmEvent, room_id: str | None = None) -> Decrypted:
        try:
            decrypted = decrypt(event, room_id)
        except EncryptionError:
            raise
        except Exception as error:  # a member chose the plaintext: anything may be in it
            raise EncryptionError(f"unreadable plaintext: {type(error).__name__}") from error
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
