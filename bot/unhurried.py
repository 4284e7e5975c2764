"""Long answers of the homeserver, taken without holding the event loop up.

nio parses and checks an answer in one step, and takes in all rooms of a sync in another: with a
thousand rooms more than half a second, in which nobody is answered.
"""

import asyncio
import json
from copy import copy
from typing import Any

from aiohttp import ClientResponse
from nio import Response
from nio.client.async_client import AsyncClient
from nio.responses import RoomMessagesResponse, SyncResponse

LONG = (SyncResponse, RoomMessagesResponse)
"""The answers that can be long."""
LONG_BYTES = 20_000
"""Shorter ones are parsed at once: that takes less than handing them to another thread."""
ROOMS_AT_ONCE = 10


def unhurry(client: AsyncClient) -> None:
    """Have this client take long answers step by step."""
    # nio calls these methods through the instance, so that replacing them there is enough.
    vars(client)["create_matrix_response"] = _parsing_aside(client.create_matrix_response)
    vars(client)["_handle_joined_rooms"] = _room_by_room(client._handle_joined_rooms)


def _parsing_aside(create: Any) -> Any:
    """Long JSON is parsed and checked on another thread."""

    async def create_aside(
        response_class: Any, transport_response: ClientResponse, data: Any = None, **more: Any
    ) -> Response:
        if response_class not in LONG or len(await transport_response.read()) < LONG_BYTES:
            answer: Response = await create(response_class, transport_response, data, **more)
            return answer
        body = await transport_response.text()
        parsed = await asyncio.to_thread(_parsed, response_class, body, data or ())
        vars(parsed)["transport_response"] = transport_response  # as nio does, whatever it declares
        return parsed

    return create_aside


def _parsed(response_class: Any, body: str, data: tuple[Any, ...]) -> Response:
    try:
        values = json.loads(body)
    except json.JSONDecodeError:
        values = {}
    answer: Response = response_class.from_dict(values, *data)
    return answer


def _room_by_room(handle: Any) -> Any:
    """The rooms of a sync are taken in some at a time, and others have their turn in between."""

    async def handle_some_at_a_time(response: SyncResponse) -> None:
        names = list(response.rooms.join)
        for start in range(0, len(names), ROOMS_AT_ONCE):
            some = copy(response)
            some.rooms = copy(response.rooms)
            some.rooms.join = {
                name: response.rooms.join[name] for name in names[start : start + ROOMS_AT_ONCE]
            }
            await handle(some)
            await asyncio.sleep(0)

    return handle_some_at_a_time
