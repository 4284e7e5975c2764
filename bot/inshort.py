"""Many answers as one message: what asks, and what was asked, whole; layers in sums."""

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import datetime

from bot.unasked import turn_of
from handlers.practice.figure import listed
from handlers.recording.layers import summed
from storage import traces
from storage.book import Book
from storage.moments import local_day
from storage.rows import Entry, Message

HEAD = "Many messages came at once; I took them in one by one. In short:"
PIECES = 15
"""Pieces of what is told together; of the rest it is only said whose they are."""
LONGEST = 1000
"""Characters of one piece at most."""
_SAID_OF = re.compile(r" is |\d")
"""Where a line comes to what is so of something."""
REASONS = 5
"""Answers of which the arithmetic is kept."""


@dataclass(frozen=True, slots=True)
class _Piece:
    """What is told of one answer, or of several that are summed up."""

    of: Sequence[Message]
    name: str | None
    lines: Sequence[str]
    layer: Entry | None = None
    """The layer that it tells of, if it may be summed up with others."""
    answers: bool = False
    """Whether it tells of no record: somebody asked."""

    @property
    def rank(self) -> int:
        """What the bot asks comes first, then what it was asked."""
        return 0 if any("?" in line for line in self.lines) else 1 if self.answers else 2

    @property
    def text(self) -> str:
        """Its words: of a record in one line."""
        words = ("\n" if self.answers else " ").join(self.lines)
        if len(words) > LONGEST:
            words = f"{words[:LONGEST].rstrip()}…"
        return f"• {self.name}: {words}" if self.name else f"• {words}"


async def in_short(book: Book, held: Sequence[tuple[int, Message]], now: datetime) -> Message:
    """The one message that tells the answers held back, which come with their row numbers."""
    # The last answer to a message stands; the ones before it were to words since changed.
    latest = {message.to_event: message for _, message in held}
    spoken = [message for message in latest.values() if message.kind != "reaction"]
    each = [piece for message in spoken if (piece := await _piece(book, message))]
    pieces = _in_turn(_summed_up(each, book, now))
    shown, rest = pieces[:PIECES], pieces[PIECES:]
    lines = [HEAD, *(piece.text for piece in shown)]
    if rest:
        count = sum(len(piece.of) for piece in rest)
        whose = listed(sorted({piece.name for piece in rest if piece.name}))
        to = f" to {whose}" if whose else ""
        lines.append(f"… and {count} more answers{to}. Ask again, or about a bin, to hear of it.")
    if marked := len(latest) - len(spoken):
        lines.append(f"Noted without words: {marked}.")
    last = [piece.of[-1] for piece in shown]
    why = [f"{one.body.splitlines()[0]}\n{one.why}" for one in last if one.why]
    calls = dict.fromkeys(user for piece in shown for one in piece.of for user in one.mentions)
    return Message(
        tx_id=f"sum-{held[0][0]}",
        kind="reply",
        body="\n".join(lines),
        mentions=tuple(calls),
        why="\n".join(why[:REASONS]) or None,
    )


async def _piece(book: Book, message: Message) -> _Piece | None:
    """What is told of an answer; None where a later one tells it."""
    event, cause = message.to_event or "", message.tx_id.partition("-")[2]
    touched = await book.touched_by(cause)
    made = [entry for entry in touched if entry.cause == cause]
    if made and all(entry.struck for entry in made):
        return None
    lines = message.body.split("\n")
    if "?" in message.body and await book.is_settled(event):
        lines = [line for line in lines if "?" not in line]
    if not lines:
        return None
    trace = await traces.trace(book.db, book.room.address, event)
    name = await book.name_of(trace.sender) if trace and trace.sender else None
    layer = made[0] if len(made) == 1 and trace and _is_plain(made[0], trace.at, book) else None
    return _Piece([message], name, lines, layer, answers=not touched)


def _is_plain(entry: Entry, at: datetime, book: Book) -> bool:
    """Whether it is a layer of the day it was told on, with its dose, in a bin that is known."""
    dosed = entry.act == "layer" and entry.facts.starter_g is not None
    return dosed and entry.bin is not None and entry.on == local_day(at, book.room.zone)


def _summed_up(pieces: Sequence[_Piece], book: Book, now: datetime) -> list[_Piece]:
    """The same with one piece for all plain layers of one doer in one bin."""
    alike: dict[object, list[_Piece]] = {}
    for piece in pieces:
        layer = piece.layer
        same = (piece.name, layer.member, layer.bin) if layer else (piece.of[0].tx_id,)
        alike.setdefault(same, []).append(piece)
    return [_sum(some, book, now) if len(some) > 1 else some[0] for some in alike.values()]


def _sum(pieces: Sequence[_Piece], book: Book, now: datetime) -> _Piece:
    turn = replace(turn_of(book, now), sender=pieces[0].name or "")
    first = summed([piece.layer for piece in pieces if piece.layer], turn)
    # What else was said; what begins alike ("The blue bin is …") only once: as it was said last.
    more = {
        _SAID_OF.split(line, maxsplit=1)[0]: line for piece in pieces for line in piece.lines[1:]
    }
    of = [message for piece in pieces for message in piece.of]
    return _Piece(of, pieces[0].name, [first, *more.values()])


def _in_turn(pieces: Sequence[_Piece]) -> list[_Piece]:
    """By rank, and within it by turns: whoever wrote much leaves room for the others."""
    had: dict[tuple[int, str | None], int] = {}
    turns = []
    for piece in pieces:
        key = piece.rank, piece.name
        had[key] = had.get(key, 0) + 1
        turns.append((piece.rank, had[key]))
    return [pieces[place] for place in sorted(range(len(pieces)), key=turns.__getitem__)]
