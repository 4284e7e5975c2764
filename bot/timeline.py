"""What a sync answer says of a room, as arrivals in the order they are to be heard.

The rules: nothing from before the bot's own coming is heard; what a limited timeline leaves out is
fetched first; an event without its key is parked; from ciphertext only words are taken, and words
in clear only from before the room was encrypted.
"""

import logging
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from nio import EncryptionError, Event, MegolmEvent, RoomMessagesResponse
from nio.api import MessageDirection
from nio.events import UnknownBadEvent
from nio.events.misc import BadEvent
from nio.responses import RoomInfo

from bot.connection import Client, http_status
from bot.heard import SHOWN
from storage import traces
from storage.database import Database
from storage.inbox import Arrival, Item
from storage.moments import from_ms, to_ms

log = logging.getLogger(__name__)

PAGE = 100
"""Events asked for at once."""
DEEPEST = 50
"""Pages read back at most where the sync token was lost."""
NOT_OURS = (403, 404)
"""No use asking again: we were taken out of the room, or it is gone."""
STANDING = ("m.room.member", "m.room.create", "m.room.power_levels")
OF_DECRYPTED = ("event_id", "sender", "origin_server_ts", "type", "content")

AnyEvent = Event | BadEvent | UnknownBadEvent


class Incomplete(Exception):
    """The homeserver did not give all events; the same sync is to be tried again."""


@dataclass(frozen=True, slots=True)
class News:
    """All that is new in a room, and when the bot came into it, if that is new as well."""

    arrivals: list[Arrival]
    came_at: datetime | None
    in_clear: Sequence[Mapping[str, Any]] = ()
    """Words that are not believed: any homeserver can put some into an encrypted room."""


async def news(
    client: Client,
    db: Database,
    room: str,
    info: RoomInfo,
    since: str | None,
    known: bool,
    received: datetime,
) -> News:
    """What a sync answer tells of a joined room; `known` if the bot was in it before.

    Nothing is later than it was `received`, whatever the clock of its sender's homeserver says.
    """
    events: list[AnyEvent] = list(info.timeline.events)
    start = _coming(events, client.user_id)
    if start is None and info.timeline.limited:
        events = await _missed(client, db, room, info.timeline.prev_batch, since) + events
        start = _coming(events, client.user_id)
    came_at = None if start is None else min(from_ms(_moment(events[start])[0]), received)
    if start is None:
        # Our coming is none of them: it was before them all, or it is not known when.
        start = 0 if known else len(events)
    standing = [event for event in [*info.state, *events[:start]] if _is_standing(event)]
    standing.sort(key=_moment)
    encrypted_from = max(start, _encrypted_from(client, room, events))
    in_clear = [e.source for e in events[encrypted_from:] if _is_words_in_clear(e)]
    encrypted = [e for e in events[encrypted_from:] if not _is_words_in_clear(e)]
    heard = [*standing, *events[start:encrypted_from], *encrypted]
    taken = (_arrival(client, room, event, received) for event in heard)
    return News([arrival for arrival in taken if arrival is not None], came_at, in_clear)


def decrypted(client: Client, item: Item) -> Mapping[str, Any] | None:
    """The parked event in clear, or None while its key is missing."""
    event = Event.parse_event(item.raw)
    if not isinstance(event, MegolmEvent):
        return None
    event.room_id = item.room
    try:
        return raw(client, item.room, client.decrypt_event(event))
    except EncryptionError:
        return None


async def _missed(
    client: Client, db: Database, room: str, before: str | None, since: str | None
) -> list[AnyEvent]:
    """The events that a limited timeline left out, oldest first."""
    if since is not None:
        return await _forwards(client, room, since, before)
    return await _backwards_to_known(client, db, room, before)


async def _forwards(client: Client, room: str, since: str, before: str | None) -> list[AnyEvent]:
    events: list[AnyEvent] = []
    at: str | None = since
    while at is not None:
        page = await _page(client, room, at, before, MessageDirection.front)
        events += page.chunk
        at = page.end if page.chunk else None
    return events


async def _backwards_to_known(
    client: Client, db: Database, room: str, before: str | None
) -> list[AnyEvent]:
    """Without a token: back to an event heard before; nothing if there is none."""
    events: list[AnyEvent] = []
    at = before
    for _ in range(DEEPEST):
        if at is None:
            break
        page = await _page(client, room, at, None, MessageDirection.back)
        for event in page.chunk:
            if await traces.trace(db, room, event.source.get("event_id", "")) is not None:
                return events[::-1]
            events.append(event)
        at = page.end if page.chunk else None
    return []


async def _page(
    client: Client, room: str, start: str, end: str | None, direction: MessageDirection
) -> RoomMessagesResponse:
    answer = await client.room_messages(room, start, end, direction, limit=PAGE)
    if isinstance(answer, RoomMessagesResponse):
        return answer
    if http_status(answer) in NOT_OURS:
        log.error("the homeserver keeps events of a room back: %s", answer.status_code)
        return RoomMessagesResponse(room, [], start)
    raise Incomplete(f"events of a room could not be fetched ({answer.status_code})")


def _coming(events: Sequence[AnyEvent], own: str) -> int | None:
    """Where the bot last came into the room, if it is among the events."""
    for index in range(len(events) - 1, -1, -1):
        source = events[index].source
        if _is_member(events[index]) and source.get("state_key") == own and _joins(source):
            return index
    return None


def _joins(source: Mapping[str, Any]) -> bool:
    """Whether a member event is a coming, not only another name or picture of one present."""
    before = (source.get("unsigned") or {}).get("prev_content") or {}
    is_in = source["content"].get("membership") == "join"
    return is_in and before.get("membership") != "join"


def _encrypted_from(client: Client, room: str, events: Sequence[AnyEvent]) -> int:
    """The first of the events from which on the room is encrypted; their number if it is not."""
    if not client.rooms[room].encrypted:
        return len(events)
    turned_on = (index for index, event in enumerate(events) if _turns_encryption_on(event))
    return next(turned_on, 0)


def _turns_encryption_on(event: AnyEvent) -> bool:
    """Whether the room was not encrypted before it; later ones only change how often keys do."""
    before = event.source.get("unsigned") or {}
    is_first = not before.get("prev_content") and not before.get("replaces_state")
    return event.source.get("type") == "m.room.encryption" and not event.decrypted and is_first


def _is_words_in_clear(event: AnyEvent) -> bool:
    return event.source.get("type") == "m.room.message" and not event.decrypted


def _is_member(event: AnyEvent) -> bool:
    return event.source.get("type") == "m.room.member" and not event.decrypted


def _is_standing(event: AnyEvent) -> bool:
    """Whether it says how things stand in the room, whenever that was decided."""
    return event.source.get("type") in STANDING and not event.decrypted


def _moment(event: AnyEvent) -> tuple[int, str]:
    return event.source["origin_server_ts"], event.source["event_id"]


def _arrival(client: Client, room: str, event: AnyEvent, received: datetime) -> Arrival | None:
    if not isinstance(event.source.get("event_id"), str):
        return None
    parked = isinstance(event, MegolmEvent) and _may_be_read_later(client, room, event)
    source, sent_at = raw(client, room, event), event.source.get("origin_server_ts")
    if isinstance(sent_at, int) and sent_at > to_ms(received):
        source = {**source, "origin_server_ts": to_ms(received)}
    return Arrival(room=room, raw=source, parked=parked)


def _may_be_read_later(client: Client, room: str, event: MegolmEvent) -> bool:
    """Whether its key may come yet, or its device be trusted yet; else it is refused for good."""
    return lacks_key(client, room, event) or not client.trust.takes(event)


def lacks_key(client: Client, room: str, event: MegolmEvent) -> bool:
    """Whether the key of an event has not come."""
    assert client.olm is not None
    store = client.olm.inbound_group_store
    return store.get(room, event.sender_key or "", event.session_id or "") is None


def raw(client: Client, room: str, event: AnyEvent) -> Mapping[str, Any]:
    """The event as the mind hears it, with the name that its sender shows: of a decrypted one only
    what the ciphertext may say.
    """
    source = event.source
    if event.decrypted:
        source = {key: source[key] for key in OF_DECRYPTED if key in source}
    joined = client.rooms.get(room)
    sender = joined.users.get(source.get("sender", "")) if joined else None
    return {**source, SHOWN: sender.display_name} if sender else source
