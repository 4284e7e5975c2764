"""What happens in the sandbox's room: the neighbours talk, the bot answers, all of it is shown."""

import asyncio
import sys
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from zoneinfo import ZoneInfo

from bot.heard import moment
from bot.homeserver import SERVER_NAME, Homeserver, HomeserverError, User
from bot.log import Line
from bot.sandbox_neighbour import Neighbour, Raw
from bot.terminal import Painter
from storage.errors import UserError

HOST = "ines"
ALIAS = "pails"
BREATH_SECONDS = 1.5
"""Between two lines on a terminal, so that they can be read as they come."""


class SandboxError(UserError):
    """The sandbox cannot go on; the text says why."""


@dataclass(frozen=True, slots=True)
class Say:
    """A neighbour writes; `answered` if the bot is to reply or mark it."""

    who: str
    text: str
    answered: bool = True


@dataclass(frozen=True, slots=True)
class Change:
    """A neighbour changes the words of their last message."""

    who: str
    text: str
    answered: bool = True


TALK: tuple[Say | Change, ...] = (
    Say("ines", "Morning all! The new bran smells lovely", answered=False),
    Say("ines", "Started a bin called Rosemary, 18 litres"),
    Say("ines", "Added 2 kg of scraps to Rosemary, mostly meat"),
    Change("ines", "Added 1.5 kg of scraps to Rosemary, mostly meat"),
    Say("ines", "Why?"),
    Say("bruno", "What a match last night", answered=False),
    Say("bruno", "Put 3 litres of peelings into the shed bin"),
    Say("mei", "There is white fuzz on top in the shed bin"),
    Say("mei", "How much water for a cup of the liquid, for my tomatoes?"),
    Say("ines", "Drained half a litre from Rosemary"),
    Say("ines", "Sealed Rosemary"),
    Say("bruno", "What's due?"),
)


@dataclass(slots=True)
class Scene:
    """The people, the bot and their room."""

    server: Homeserver
    people: Mapping[str, Neighbour]
    bot: User
    room: str = ""
    last: dict[str, str] = field(default_factory=dict)
    """The last message of each neighbour."""

    @property
    def alias(self) -> str:
        """The room's name for joining."""
        return f"#{ALIAS}:{SERVER_NAME}"

    @property
    def host(self) -> Neighbour:
        """Who made the room, and at whose client it is watched."""
        return self.people[HOST]


async def set_up_room(scene: Scene) -> None:
    """An encrypted room by the host, with everybody and the bot in it."""
    others = [somebody for somebody in scene.people.values() if somebody is not scene.host]
    status, answer = await asyncio.to_thread(
        scene.server.call,
        "POST",
        "/_matrix/client/v3/createRoom",
        {
            "preset": "private_chat",
            "name": "The pails of our street",
            "room_alias_name": ALIAS,
            "invite": [somebody.user for somebody in others],
            "power_level_content_override": {  # the bot is to pin its calendar
                "events": {"m.room.pinned_events": 0}
            },
            "initial_state": [
                {
                    "type": "m.room.encryption",
                    "state_key": "",
                    "content": {"algorithm": "m.megolm.v1.aes-sha2"},
                }
            ],
        },
        scene.host.client.access_token,
    )
    if status != 200:
        raise HomeserverError(f"The room could not be made: {answer.get('error', status)}.")
    scene.room = answer["room_id"]
    for somebody in others:
        await somebody.join(scene.room)
        await _is_in(scene, somebody.user)
    await scene.host.invite(scene.room, scene.bot.id)
    await _is_in(scene, scene.bot.id)


async def _is_in(scene: Scene, user: str) -> None:
    def came(raw: Raw) -> bool:
        is_in = raw["content"].get("membership") == "join"
        return raw["type"] == "m.room.member" and raw.get("state_key") == user and is_in

    await scene.host.hears(scene.room, came)


class Window:
    """Shows what the host's client reads in the room."""

    def __init__(self, scene: Scene) -> None:
        self._scene = scene
        self._painter = Painter(ZoneInfo("UTC"))
        self._shown = 0

    async def watch(self) -> None:
        """Show all there is, and what comes, until cancelled."""
        host, room = self._scene.host, self._scene.room
        while True:
            self.show()
            await host.more_than(room, self._shown)

    def show(self) -> None:
        """Show what has not been shown yet."""
        for raw in self._scene.host.heard[self._scene.room][self._shown :]:
            self._shown += 1
            at = moment(raw["origin_server_ts"])
            assert at is not None  # a homeserver's event always says when
            self._painter.show(Line(self._shown, at, dict(raw)))


async def play(scene: Scene) -> None:
    """The conversation; each line that wants an answer waits for the bot's."""
    await scene.host.hears(scene.room, lambda raw: _is_greeting(scene, raw))
    breath = BREATH_SECONDS if sys.stdout.isatty() else 0.0
    for line in TALK:
        await asyncio.sleep(breath)
        who = scene.people[line.who]
        seen = len(scene.host.heard[scene.room])
        if isinstance(line, Say):
            event = scene.last[line.who] = await who.say(scene.room, line.text)
        else:
            event = scene.last[line.who]
            await who.edit(scene.room, event, line.text)
        if line.answered:
            await _await_answer(scene, event, seen)
    await asyncio.sleep(breath)


async def _await_answer(scene: Scene, event: str, seen: int) -> None:
    try:
        await scene.host.hears(scene.room, _answer(scene, event), seen)
    except TimeoutError:
        raise SandboxError("The bot gave no answer.") from None


def _answer(scene: Scene, event: str) -> Callable[[Raw], bool]:
    """Whether something is the bot's reply to an event, its mark on it, or its reply changed."""

    def is_answer(raw: Raw) -> bool:
        relation = raw["content"].get("m.relates_to") or {}
        to = (relation.get("m.in_reply_to") or relation).get("event_id")
        changes = relation.get("rel_type") == "m.replace"
        return bool(raw["sender"] == scene.bot.id and (changes or to == event))

    return is_answer


def _is_greeting(scene: Scene, raw: Raw) -> bool:
    return bool(raw["sender"] == scene.bot.id and raw["type"] == "m.room.message")
