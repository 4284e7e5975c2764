"""`python -m bot read`: messages in, one a line; the acts they mean out, one line each."""

import argparse
import json
import sys
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime
from typing import TYPE_CHECKING, Any, BinaryIO, TextIO
from zoneinfo import ZoneInfo

from bot.clock import now
from bot.options import add_room_options

if TYPE_CHECKING:
    from handlers.reading.context import Context

LARGEST_LINE = 64 * 1024
"""Bytes in the longest line that is read: a Matrix event may be no larger."""


def add_parser(subparsers: "argparse._SubParsersAction[argparse.ArgumentParser]") -> None:
    """Adds the command and its options."""
    parser = subparsers.add_parser(
        "read",
        help="read messages from standard input and print the acts they mean",
        description="Reads one message a line (a JSON object with body, at and sender, or plain "
        "text) and prints one JSON object a line with the acts it means.",
    )
    add_room_options(parser)
    parser.add_argument(
        "--bins", type=_names, default=(), metavar="A,B,…", help="names of its bins"
    )
    parser.add_argument("--members", type=_names, default=(), metavar="A,B,…", help="its members")
    parser.add_argument("--explain", action="store_true", help="print what each word was read as")


def _names(listed: str) -> tuple[str, ...]:
    return tuple(name.strip() for name in listed.split(",") if name.strip())


def run(args: argparse.Namespace) -> int:
    """Answers every line of standard input; 0 when it ends."""
    from handlers.reading.context import Context

    context = Context(
        at=now(),
        zone=ZoneInfo(args.zone),
        units=args.units,
        bins=args.bins,
        members=args.members,
    )
    answer = explained if args.explain else answered
    answer_lines(sys.stdin.buffer, sys.stdout, context, answer)
    return 0


def answer_lines(
    lines: BinaryIO,
    out: TextIO,
    context: "Context",
    answer: "Callable[[bytes, Context], dict[str, Any]]",
) -> None:
    """Writes an answer for each line, in order, flushed as it goes."""
    for line in _lines(lines):
        out.write(json.dumps(answer(line, context), ensure_ascii=False) + "\n")
        out.flush()


def _lines(source: BinaryIO) -> "Any":
    """The lines of a stream; of one that is too long only a beginning, too long itself, is kept."""
    while True:
        line = source.readline(LARGEST_LINE + 2)
        if not line:
            return
        tail = line
        while not tail.endswith(b"\n") and len(tail) == LARGEST_LINE + 2:
            tail = source.readline(LARGEST_LINE + 2)
        yield line


def answered(line: bytes, context: "Context") -> dict[str, Any]:
    """The answer to one line: its acts, or why it cannot be read."""
    from handlers.reading.actjson import as_json
    from handlers.reading.read import read

    heard = _heard(line, context)
    if isinstance(heard, str):
        return {"acts": [], "refused": heard}
    body, context = heard
    return {"acts": [as_json(act) for act in read(body, context)]}


def explained(line: bytes, context: "Context") -> dict[str, Any]:
    """The answer to one line, with the rules behind it and what each word was read as."""
    from handlers.reading.explain import explain

    heard = _heard(line, context)
    if isinstance(heard, str):
        return {"acts": [], "refused": heard}
    return answered(line, context) | {"explained": explain(*heard)}


def _heard(line: bytes, context: "Context") -> "tuple[str, Context] | str":
    """A line as a body and the context it was sent in; a sentence if it cannot be read."""
    line = line.rstrip(b"\r\n")
    if len(line) > LARGEST_LINE:
        return "the line is over 64 KiB"
    try:
        text = line.decode("utf-8")
    except UnicodeDecodeError:
        return "the line is not UTF-8"
    try:
        event = json.loads(text)
    except (ValueError, RecursionError):
        event = None
    if not isinstance(event, dict):
        return text, replace(context, at=now())
    body, at, sender = event.get("body"), event.get("at"), event.get("sender")
    if not isinstance(body, str):
        return "the object has no body"
    moment = _moment(at)
    if isinstance(moment, str):
        return moment
    return body, replace(context, at=moment, sender=sender if isinstance(sender, str) else None)


def _moment(at: object) -> datetime | str:
    if at is None:
        return now()
    try:
        moment = datetime.fromisoformat(str(at))
    except ValueError:
        return "at is no ISO 8601 time"
    if moment.tzinfo is None:
        return "at has no offset from UTC"
    return moment if 1970 <= moment.year <= 2200 else "at is not between 1970 and 2200"
