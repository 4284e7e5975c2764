"""Files and pictures: made from what the outbox keeps, and put on the homeserver."""

import asyncio
import io
import json
from dataclasses import dataclass, field
from typing import Any

from nio.client.async_client import AsyncClient
from nio.responses import UploadError

from handlers.planning.sheet import from_json


@dataclass(frozen=True, slots=True, kw_only=True)
class File:
    """A file to post."""

    name: str
    type: str
    data: bytes
    info: dict[str, Any] = field(default_factory=dict)
    """What else is said of it: the width and height of a picture."""


async def made(attached: str) -> File:
    """The file that is kept as what it is made of."""
    said = json.loads(attached)
    if "sheet" not in said:
        kind = said.get("type", "text/calendar")
        return File(name=said["name"], type=kind, data=said["text"].encode())
    # Loading the library takes as long as drawing: neither is for the event loop.
    data, width, height = await asyncio.to_thread(_drawn, said["sheet"])
    size = {"w": width, "h": height}
    return File(name=said["name"], type="image/png", data=data, info=size)


def _drawn(said: dict[str, Any]) -> tuple[bytes, int, int]:
    from bot.picture import drawn

    return drawn(from_json(said))


async def upload(client: AsyncClient, room: str, file: File) -> dict[str, Any] | UploadError:
    """Put it on the homeserver, encrypted if the room is; what the message says of it."""
    known = client.rooms.get(room)
    is_encrypted = known is not None and known.encrypted
    answer, keys = await client.upload(
        io.BytesIO(file.data),
        content_type=file.type,
        # The name of an encrypted file is nobody's business.
        filename=None if is_encrypted else file.name,
        encrypt=is_encrypted,
        filesize=len(file.data),
    )
    if isinstance(answer, UploadError):
        return answer
    info = {"mimetype": file.type, "size": len(file.data), **file.info}
    said: dict[str, Any] = {"filename": file.name, "info": info}
    if keys is None:
        return said | {"url": answer.content_uri}
    return said | {"file": {"url": answer.content_uri, **keys}}
