"""Long answers of a homeserver are taken as nio would take them, without holding others up."""

import json
from collections.abc import AsyncIterator
from types import SimpleNamespace
from typing import Any, cast

import pytest
from aiohttp import ClientResponse
from nio.client.async_client import AsyncClient
from nio.responses import SyncError, SyncResponse

from bot.unhurried import LONG_BYTES, unhurry
from tests.bench.held import watched
from tests.bench.memory import FakeHomeserver


@pytest.fixture
async def client() -> AsyncIterator[AsyncClient]:
    made = AsyncClient("http://bench", "@pailkeeper:bench", "D")
    yield made
    await made.close()  # type: ignore[no-untyped-call]


def answer(body: str, status: int = 200) -> ClientResponse:
    async def read() -> bytes:
        return body.encode()

    async def text() -> str:
        return body

    async def parsed() -> Any:
        return json.loads(body)

    return cast(
        ClientResponse,
        SimpleNamespace(
            read=read,
            text=text,
            json=parsed,
            status=status,
            content_type="application/json",
            content_disposition=None,
        ),
    )


async def test_a_thousand_rooms_are_all_taken_in_and_nobody_waits(client: AsyncClient) -> None:
    unhurry(client)
    body = json.dumps(FakeHomeserver().first_sync())
    assert len(body) > LONG_BYTES
    with watched() as held:
        response = await client.create_matrix_response(SyncResponse, answer(body))
        assert isinstance(response, SyncResponse)
        await client.receive_response(response)
    assert len(client.rooms) == 1000
    assert {len(room.users) for room in client.rooms.values()} == {7}
    assert held.steps > 50


async def test_they_are_what_they_would_have_been(client: AsyncClient) -> None:
    body = json.dumps(FakeHomeserver().first_sync())
    plain = await client.create_matrix_response(SyncResponse, answer(body))
    unhurry(client)
    aside = await client.create_matrix_response(SyncResponse, answer(body))
    assert isinstance(plain, SyncResponse)
    assert isinstance(aside, SyncResponse)
    assert aside.rooms == plain.rooms
    assert aside.next_batch == plain.next_batch


@pytest.mark.parametrize(
    ("status", "body"), [(502, "<h1>Bad gateway</h1>" * 2000), (403, '{"errcode": "M_FORBIDDEN"}')]
)
async def test_what_is_no_sync_is_an_error(client: AsyncClient, status: int, body: str) -> None:
    unhurry(client)
    response = await client.create_matrix_response(SyncResponse, answer(body, status))
    assert isinstance(response, SyncError)
