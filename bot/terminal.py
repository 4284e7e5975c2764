"""How a conversation looks on a terminal; the one place that prints it."""

import shutil
import sys
import textwrap
from collections.abc import Mapping
from datetime import date
from typing import Any
from zoneinfo import ZoneInfo

from bot.heard import Edited, Moved, Reacted, Said, Withdrawn, from_event, local_part
from bot.log import Line
from bot.playback import OWN_NAME, Spoken

WIDEST = 100


def say(text: str) -> None:
    """Print a line at once, so that a pipe sees it too."""
    sys.stdout.write(f"{text}\n")
    sys.stdout.flush()


class Painter:
    """Shows events and the bot's words, with a heading for each new day."""

    def __init__(self, zone: ZoneInfo, *, heard: bool = True) -> None:
        self._zone = zone
        self._heard = heard
        """Whether to show what was heard; at a prompt it stands there already."""
        self._day: date | None = None
        self._names: dict[str, str] = {}
        self._words: dict[str, str] = {}

    def show(self, item: Line | Spoken) -> None:
        """Print what was heard or said."""
        if isinstance(item, Spoken):
            if self._heard:
                self._heading(item)
            self._bot(item)
            return
        words = self._event(item.raw)
        if words:
            self._heading(item)
            name, body = words
            _hang(f"{item.at.astimezone(self._zone):%H:%M}  {name}: ", body)

    def _heading(self, item: Line | Spoken) -> None:
        local = item.at.astimezone(self._zone).date()
        if local != self._day:
            self._day = local
            say(f"\n{local:%A} {local.day} {local:%B %Y}")

    def _bot(self, spoken: Spoken) -> None:
        message = spoken.message
        if message.kind == "reaction":
            say(f"       {message.body}  {OWN_NAME} wrote it down")
            return
        lead = " (changes its answer)" if message.rewrites else ""
        time = f"{spoken.at.astimezone(self._zone):%H:%M}" if message.to_event is None else "     "
        _hang(f"{time}    {OWN_NAME}{lead}: ", message.body)

    def _event(self, raw: Mapping[str, Any]) -> tuple[str, str] | None:
        heard = from_event(raw)
        match heard:
            case Said(body=body):
                self._words[heard.event] = body
                return self._name(heard.sender), body
            case Edited(body=body):
                self._words[heard.original] = body
                return self._name(heard.sender), f"(edits the message) {body}"
            case Withdrawn(target=target):
                return self._name(heard.sender), f"(deletes “{self._quote(target)}”)"
            case Reacted(target=target, key=key):
                return self._name(heard.sender), f"({key} on “{self._quote(target)}”)"
            case Moved(user=user, name=str(name)):
                self._names[user] = name
        return None

    def _name(self, user: str) -> str:
        return self._names.get(user) or local_part(user)

    def _quote(self, event: str) -> str:
        return textwrap.shorten(self._words.get(event, "…"), 40, placeholder="…")


def _hang(lead: str, body: str) -> None:
    """The body after its lead, wrapped and indented under itself."""
    width = min(shutil.get_terminal_size().columns, WIDEST)
    indent = " " * min(len(lead), 11)
    for number, line in enumerate(body.split("\n")):
        first = lead if number == 0 else indent
        say(
            "\n".join(
                textwrap.wrap(
                    line,
                    max(width, 40),
                    initial_indent=first,
                    subsequent_indent=indent,
                    break_long_words=False,
                )
            )
            or first
        )
