"""How fast messages are read on one core, beside general readers of amounts and of dates.

Two kinds of traffic: what a room of `traffic` writes in a season, and the labelled messages, in
which records, questions and look-alikes are far thicker than in any room. Each is read in the
context of a room, as the bot does. The peers are asked for less (amounts alone, dates alone); they
are slow, so that they get a sample, on which the reading is timed again.
"""

import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import suppress
from dataclasses import replace
from datetime import datetime
from itertools import islice
from zoneinfo import ZoneInfo

from dateparser.search import search_dates
from quantulum3 import classifier, parser

from bot.run import at_hand
from handlers.reading import plans
from handlers.reading.acts import Act, Bury, Drain, Layer, Observe, Offer, Open, Seal, Stock
from handlers.reading.context import Context
from handlers.reading.read import read
from storage import words
from tests.bench import fuzz, traffic
from tests.bench.measure import Measured, median
from tests.reading import hostile
from tests.reading.corpus import FOLDER, context_of, messages

A_SECOND = 5000
HOSTILE_MS = 100
ROOMS, OF_ROOMS = 20, 4000
SAMPLE = 300
PASSES = 5
MUTATED = 100_000
QUANTULUM = "quantulum3's parser, without its classifier"
SEARCH = "dateparser.search, told that it is English"

Said = tuple[str, Context]


async def measure() -> list[Measured]:
    """Messages a second of processor time; milliseconds of hostile texts; what was raised."""
    classifier.USE_CLF = False
    at_hand()  # as in its rooms
    room, labelled = list(_of_rooms()), list(_labelled())
    return [
        _alone("a room's messages", room),
        _alone("labelled messages", labelled),
        *_beside_peers("a room's messages", room),
        *_beside_peers("labelled messages", labelled),
        _hostile(),
        _mutated(),
    ]


def _of_rooms() -> Iterator[Said]:
    for event in islice(traffic.events(ROOMS), OF_ROOMS):
        at = datetime.fromtimestamp(event["origin_server_ts"] / 1000, tz=ZoneInfo("UTC"))
        yield (
            event["content"]["body"],
            Context(
                at=at,
                zone=ZoneInfo("Europe/Lisbon"),
                bins=traffic.BINS,
                members=traffic.MEMBERS,
                sender=event["sender"][1:].partition(":")[0],
                in_room=True,
            ),
        )


def _labelled() -> Iterator[Said]:
    for file in sorted(FOLDER.glob("*.jsonl")):
        for row in messages(file.name):
            yield row["body"], replace(context_of(row), in_room=True)


def _alone(what: str, said: Sequence[Said]) -> Measured:
    return Measured(
        what=f"{what} read on one core",
        value=_speed(said, read),
        unit="a second",
        bar=A_SECOND,
        more_is_better=True,
        note=f"{len(said)} messages of {_length(said):.0f} words on average, heard in a room; "
        f"median of {PASSES} passes, of processor time",
    )


def _length(said: Sequence[Said]) -> float:
    return sum(len(text.split()) for text, _ in said) / len(said)


def _beside_peers(what: str, said: Sequence[Said]) -> list[Measured]:
    sample = said[:: len(said) // SAMPLE]
    peers: list[tuple[str, Callable[[str, Context], object]]] = [
        (QUANTULUM, lambda text, _: parser.parse(text)),
        (SEARCH, _dates),
    ]
    return [
        Measured(
            what=f"{what}, every {len(said) // SAMPLE}th",
            value=_speed(sample, read),
            unit="a second",
            peer=name,
            beside=_speed(sample, peer, passes=1),
            more_is_better=True,
        )
        for name, peer in peers
    ]


def _dates(text: str, context: Context) -> object:
    return search_dates(text, languages=["en"], settings={"RELATIVE_BASE": context.at})


def _speed(
    said: Sequence[Said], reader: Callable[[str, Context], object], passes: int = PASSES
) -> float:
    """Messages a second of processor time, once the reader has started."""
    for each in said[:50]:
        reader(*each)
    return len(said) / median([_spent(said, reader) for _ in range(passes)])


def _spent(said: Sequence[Said], reader: Callable[[str, Context], object]) -> float:
    began = time.process_time()
    for each in said:
        reader(*each)
    return time.process_time() - began


def _hostile() -> Measured:
    """The slowest of the hostile texts, each in a room and behind the bot's words."""
    contexts = [replace(fuzz.CONTEXT, after_bot=after, in_room=True) for after in (False, True)]
    spent = {
        piece: max(_spent([(hostile.text(piece), context)], plans.read) for context in contexts)
        for piece in hostile.PIECES
    }
    slowest = max(hostile.PIECES, key=lambda piece: spent[piece])
    return Measured(
        what=f"{hostile.LENGTH // 1024} KiB of hostile text, the slowest of {len(spent)}",
        value=1000 * spent[slowest],
        unit="ms",
        bar=HOSTILE_MS,
        note=f"{slowest!r} over and over",
    )


def _mutated() -> Measured:
    """How many of the random and mutated messages raise anything."""
    source = fuzz.Source(seed=3)
    contexts = list(_talks())
    raised = sum(
        _raises(words.text(source.text()), contexts[number % len(contexts)])
        for number in range(MUTATED)
    )
    return Measured(
        what=f"{MUTATED:,} random and mutated messages",
        value=raised,
        unit="raised something",
        bar=0,
    )


def _talks() -> Iterator[Context]:
    """The bot's words before, or a record of each kind that a few words may lean on."""
    bin, on = fuzz.CONTEXT.bins[0], fuzz.CONTEXT.at.date()
    records: tuple[Act | None, ...] = (
        *(None, Layer(mass_kg=2.0, bin=bin, on=on), Layer(), Drain(volume_l=0.3, bin=bin, on=on)),
        *(Open(bin=bin, capacity_l=20.0), Seal(bin=bin, on=on), Bury(bin=bin, on=on)),
        *(Observe(bin=bin, signs=("sour",)), Stock(mass_kg=1.0), Offer(bin=bin)),
    )
    for record in records:
        for after_bot in (False, True):
            context = replace(fuzz.CONTEXT, after_bot=after_bot, in_room=True)
            yield replace(context, last=record)
            yield replace(context, earlier=record, to_bot=not after_bot)


def _raises(text: str, context: Context) -> bool:
    with suppress(Exception):
        plans.read(text, context)
        return False
    return True
