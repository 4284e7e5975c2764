"""What a message looks like to the scores: its words, with slots for names, figures and things.

A slot is in capitals ("BIN", "MASS", "FOOD"); everything else is a word in lower case. A feature
is a word or its class, two neighbours, two with one between, a slot that stands in the same
message, or what a clause says: its sense, its verb and the slots in it.
"""

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from handlers.reading.message import Message
from handlers.reading.sentences import Clause, Sentence
from handlers.reading.vocabulary import word_classes


class Feature(NamedTuple):
    """One feature, and the index of the word it stands at."""

    name: str
    at: int


def features(message: Message, sentences: Sequence[Sentence] | None = None) -> list[Feature]:
    """The features of a message, or of some of its sentences, each once, in their order."""
    chosen = message.sentences if sentences is None else sentences
    tokens = _tokens(message)
    if sentences is not None:
        start, end = sentences[0].start, sentences[-1].end
        tokens = [t for t in tokens if start <= t.at < end]
    found: dict[str, int] = {}
    for name, at in _all(message, chosen, tokens):
        found.setdefault(name, at)
    return [Feature(name, at) for name, at in found.items()]


def _all(
    message: Message, sentences: Sequence[Sentence], tokens: list[Feature]
) -> Iterator[tuple[str, int]]:
    yield from _runs(tokens)
    stop = 0
    first_word, last_word = (sentences[0].start, sentences[-1].end) if sentences else (0, 0)
    for clause in message.clauses:
        if not first_word <= clause.start < last_word:
            continue
        first = stop
        while first < len(tokens) and tokens[first].at < clause.start:
            first += 1
        stop = first
        while stop < len(tokens) and tokens[stop].at < clause.end:
            stop += 1
        yield from _of_clause(clause, [t.name for t in tokens[first:stop]])
    slots = sorted({t.name for t in tokens if t.name[0].isupper()})
    yield "all " + " ".join(slots), 0
    for kin, at in _classes(tokens).items():
        yield kin, at
        for slot in slots:
            yield f"{kin} & {slot}", at
    for i, one in enumerate(slots):
        for other in slots[i + 1 :]:
            yield f"{one} & {other}", 0
    if any(s.asked for s in sentences):
        yield "asked", 0
    yield f"length {min(6, len(tokens) // 5)}", 0
    yield f"sentences {min(4, len(sentences))}", 0


def _classes(tokens: list[Feature]) -> dict[str, int]:
    """The classes that the words stand in, each with its first word."""
    known = word_classes()
    found: dict[str, int] = {}
    for name, at in tokens:
        for kin in known.get(name, ()):
            found.setdefault(kin, at)
    return found


def _runs(tokens: list[Feature]) -> Iterator[tuple[str, int]]:
    """Single words, neighbours, and words with one between."""
    before, last = "", "^"
    for name, at in tokens:
        yield name, at
        yield f"{last} {name}", at
        if before:
            yield f"{before} _ {name}", at
        before, last = last, name
    if tokens:
        yield f"{last} $", tokens[-1].at
        yield f"{before} _ $", tokens[-1].at


def _of_clause(clause: Clause, names: list[str]) -> Iterator[tuple[str, int]]:
    sense, at = clause.sense, clause.start
    slots = sorted({name for name in names if name[0].isupper()})
    together = " ".join(slots) or "-"
    yield f"{sense}: {together}", at
    if clause.verb is None:
        kinds, plain = ["-"], "-"
    else:
        kinds, plain = sorted(clause.verb.verb.classes), clause.verb.verb.plain
        yield f"{sense}: {plain}", at
    for kind in kinds:
        yield f"{sense}: <{kind}>", at
        yield f"{sense}: <{kind}> {together}", at
    for slot in slots:
        yield f"{sense}: {slot}", at
        yield f"{sense}: {plain} {slot}", at
        for kind in kinds:
            yield f"{sense}: <{kind}> {slot}", at
    if sense == "ask":
        for name in names:
            yield f"ask {name}", at
    for name in names:
        if name[0].islower():
            for slot in slots:
                yield f"{name} .. {slot}", at


def _tokens(message: Message) -> list[Feature]:
    """The words in order, a slot in place of each name, figure, day, sign, food or liquid."""
    slots = _slots(message)
    out: list[Feature] = []
    i = 0
    while i < len(message.norms):
        slot = slots.get(i)
        if slot is None:
            out.append(Feature(_word(message, i), i))
            i += 1
        else:
            out.append(Feature(slot[0], i))
            i = slot[1]
    return out


def _word(message: Message, i: int) -> str:
    if message.liquid_at(i):
        return "LIQUID"
    if message.bran_at(i):
        return "BRAN"
    return "NUMBER" if message.words[i].kind == "number" else message.norms[i]


def _slots(message: Message) -> dict[int, tuple[str, int]]:
    """Slot and end by first word; where two overlap, the one that is surer stands."""
    found: dict[int, tuple[str, int]] = {}
    for item in message.items:
        found[item.start] = ("THING" if item.generic else "FOOD", item.end)
    for sign in message.signs:
        found[sign.start] = (sign.sign.upper() + ("-NO" if sign.absent else ""), sign.end)
    for day in message.days:
        found[day.start] = ("DAY", day.end)
    for amount in message.amounts:
        found[amount.start] = (amount.quantity.upper(), amount.end)
    for i in message.bot:
        found[i] = ("BOT", i + 1)
    for member in message.members:
        found[member.start] = ("OWNER" if member.owner else "MEMBER", member.end)
    for ref in message.named:
        found[ref.start] = ("NAMED", ref.end)
    for ref in message.bins:
        slot = "BIN" if ref.known and ref.plain else "PLACE" if ref.known else "SOME-BIN"
        found[ref.start] = (slot, ref.end)
    return found
