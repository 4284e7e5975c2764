"""A sentence as plain words with its names replaced: what patterns are held against.

Bins stand as `qbin`, members as `qmember`, days as `qday`; stops and the bot's name are left out.
Every gap in a pattern is bounded, so that none can run away.
"""

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from handlers.reading.arranged import Plan
from handlers.reading.calendar.days import Day
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.people.members import MemberRef
from handlers.reading.words.binwords import BIN_WORDS, BinRef
from handlers.reading.words.once import once
from handlers.reading.words.vocabulary import words_in

_SIGNS = frozenset(",.!?:;-()\"'@☺—\n")
_COURTESIES = words_in(
    "ok okay hey hi hello please pls thanks ta cheers so well right and then just sorry"
)


@dataclass(frozen=True, slots=True)
class Phrase:
    """A sentence of a message, and where each of its words stands in it."""

    message: Message
    tokens: tuple[str, ...]
    spans: tuple[tuple[int, int], ...]
    """The words of the message that each token stands for."""
    asked: bool
    to_bot: bool
    sentence: tuple[int, int]
    """The words of the message that it stands in, with courtesies and the bot's name."""
    text: str
    """The tokens with one space between."""

    @property
    def message_text(self) -> str:
        """Its words as they stand, names and days among them."""
        return " ".join(self.message.norms[self.start : self.end])

    @property
    def start(self) -> int:
        """Where its first word stands in the message."""
        return self.spans[0][0]

    @property
    def end(self) -> int:
        """Behind its last word."""
        return self.spans[-1][1]

    @property
    def bins(self) -> list[BinRef]:
        """The group's own bins that it names, as bins and not as places."""
        return [
            ref
            for ref in self.message.bins
            if self.start <= ref.start < self.end and ref.known
            if ref.plain or not ref.place or self.message.norms[ref.start] in BIN_WORDS
        ]

    @property
    def known_bins(self) -> list[BinRef]:
        """The group's own bins that it names, be they places by their names."""
        said = [ref for ref in self.message.bins if self.start <= ref.start < self.end]
        return [ref for ref in said if ref.known and ref.name]

    @property
    def bin(self) -> str | None:
        """The first bin of the group's that it names."""
        return self.bins[0].name if self.bins else None

    @property
    def bin_said(self) -> str | None:
        """The first bin that it names as a bin, be it none of the group's."""
        for ref in self.message.bins:
            if self.start <= ref.start < self.end and ref.name and (ref.plain or ref in self.bins):
                return ref.name
        return None

    @property
    def strange_bin(self) -> str | None:
        """The first bin that it names and the group has not, if it names none of the group's."""
        said = [ref for ref in self.message.bins if self.start <= ref.start < self.end]
        strange = [ref.name for ref in said if ref.plain and not ref.known and ref.name]
        return strange[0] if strange and not self.bin and self.message.context.in_room else None

    @property
    def members(self) -> list[MemberRef]:
        """The members that it names, but for the sender."""
        return [
            ref
            for ref in self.message.members
            if self.start <= ref.start < self.end and not is_sender(self.message, ref.name)
        ]

    @property
    def member(self) -> str | None:
        """The first member that it names, but for the sender."""
        return self.members[0].name if self.members else None

    @property
    def days(self) -> list[Day]:
        """The days that it names."""
        return [day for day in self.message.days if self.start <= day.start < self.end]

    def words(self, match: re.Match[str], group: str) -> tuple[int, int] | None:
        """Which words of the message a part of a match stands for; None if it is empty."""
        first, last = match.span(group)
        if first < 0 or first == last:
            return None
        begin = self.text[:first].count(" ")
        end = begin + self.text[first:last].strip().count(" ")
        return self.spans[begin][0], self.spans[end][1]

    def said(self, match: re.Match[str], group: str) -> str:
        """A part of a match as it was written."""
        span = self.words(match, group)
        return self.message.text(*span) if span else ""


@once
def phrases(message: Message) -> tuple[Phrase, ...]:
    """The sentences of a message, courtesies at their beginning left out."""
    return tuple(_phrases(message))


def _phrases(message: Message) -> Iterator[Phrase]:
    names = _names(message)
    for sentence in message.sentences:
        tokens, spans = _tokens(message, names, sentence.start, sentence.end)
        while len(tokens) > 1 and tokens[0] in _COURTESIES:
            tokens, spans = tokens[1:], spans[1:]
        if tokens:
            yield Phrase(
                message,
                tuple(tokens),
                tuple(spans),
                sentence.asked,
                to_bot=bool(message.bot),
                sentence=(sentence.start, sentence.end),
                text=" ".join(tokens),
            )


def first_plan(
    message: Message, read: Callable[[Phrase], Plan | Found | None], *, most: int
) -> Iterator[Found]:
    """What the first sentence that arranges anything arranges, in all its words unless it is said
    in which; a long message only tells of it.
    """
    said = phrases(message)
    if len(said) > most:
        return
    for phrase in said:
        plan = read(phrase)
        if plan is not None:
            yield plan if isinstance(plan, Found) else Found(*phrase.sentence, plan)
            return


def _names(message: Message) -> dict[int, tuple[str, int]]:
    """What stands in place of each name and day, and the word behind it, by its first word."""
    days = (day for day in message.days if message.norms[day.start] != "now")
    names: dict[int, tuple[str, int]] = {day.start: ("qday", day.end) for day in days}
    names |= {member.start: ("qmember", member.end) for member in message.members}
    names |= {ref.start: ("qbin", ref.end) for ref in message.bins if ref.name is not None}
    return names


def _tokens(
    message: Message, names: Mapping[int, tuple[str, int]], start: int, end: int
) -> tuple[list[str], list[tuple[int, int]]]:
    tokens, spans, at = [], [], start
    while at < end:
        token, stop = names.get(at, (message.norms[at], at + 1))
        stop = max(stop, at + 1)
        if at not in message.bot and token not in _SIGNS:
            tokens.append(token)
            spans.append((at, stop))
        at = stop
    return tokens, spans


def as_written(message: Message, start: int, end: int) -> str:
    """words[start:end] with the gaps that they were written with."""
    parts: list[str] = []
    last = None
    for word in message.words[start:end]:
        if last is not None and word.start > last:
            parts.append(" ")
        if last is None or word.start >= last:
            parts.append(word.text)
            last = word.end
    return "".join(parts)


@once
def named_text(message: Message) -> str:
    """The words of the message, stops among them; bins as `qbin`, members as `qmember`."""
    refs = [(ref.start, ref.end, "qbin") for ref in message.bins]
    held = {i for start, end, _ in refs for i in range(start, end)}
    refs += [(m.start, m.end, "qmember") for m in message.members if m.start not in held]
    starts = {start: name for start, _, name in refs}
    inside = {i for start, end, _ in refs for i in range(start, end)}
    return " ".join(
        starts.get(i, norm)
        for i, norm in enumerate(message.norms)
        if i in starts or i not in inside
    )
