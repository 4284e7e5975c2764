"""Two groups share one bot, and not a word: whatever each says, the other never hears of it."""

import asyncio
import json
from datetime import timedelta
from pathlib import Path
from tempfile import TemporaryDirectory

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.board import as_page
from bot.export import as_csv, as_json
from bot.feed import as_calendar
from bot.playback import Playback
from storage import rooms, session
from storage.book import Book
from storage.database import Database
from tests.room import BEGIN, OWN

HERE, THERE = "!here:test", "!there:test"
GROUPS = {
    HERE: ("ophelia", "quincy", "willow", "cider"),
    THERE: ("thaddeus", "zenobia", "juniper", "granite"),
}
"""Each group's own words: two members, two bins; no word of one is in any word of ours."""

SAYINGS = (
    "added {kg} kg scraps, mostly meat, to the {bin} bin",
    "opened the {bin} bin, {kg} L",
    "drained 200 ml from the {bin} bin",
    "sealed the {bin} bin",
    "buried the {bin} bin under the pear tree",
    "{other} takes the {bin} bin next week",
    "I'll take the {bin} bin",
    "the {bin} bin smells rotten",
    "how full is the {bin} bin?",
    "what's due?",
    "who has which bin?",
    "added {kg} kg scraps",
    "no, {kg} kg",
    "yes",
    "why?",
    "scratch that",
    "how much so far?",
    "calendar link please",
    "pailkeeper, what do you know about me?",
    "pailkeeper, forget me for good",
)
STEPS = st.lists(
    st.tuples(
        st.sampled_from([HERE, THERE]),
        st.sampled_from(SAYINGS),
        st.integers(0, 1),
        st.integers(0, 1),
        st.integers(1, 20),
    ),
    min_size=2,
    max_size=16,
)
Step = tuple[str, str, int, int, int]


async def play(steps: list[Step], path: Path) -> None:
    db = await Database.open(path)
    await session.set_address(db, "https://bins.test")
    try:
        playback, now = Playback(db, zone="Europe/Lisbon", units="metric", own=OWN), BEGIN
        for number, (room, saying, who, bin, kg) in enumerate(steps):
            now += timedelta(hours=9)
            async for reminder in playback.run_until(now):
                is_of_its_own(reminder.room, reminder.message.body, reminder.message.mentions)
            names = GROUPS[room]
            body = saying.format(bin=names[2 + bin], other=names[1 - who], kg=kg)
            raw = {
                "type": "m.room.message",
                "event_id": f"${number}",
                "room_id": room,
                "sender": f"@{names[who]}:test",
                "origin_server_ts": int(now.timestamp() * 1000),
                "content": {"msgtype": "m.text", "body": body},
            }
            for said in await playback.take(raw, now):
                assert said.room == room
                is_of_its_own(room, said.message.body, said.message.mentions)
                is_of_its_own(room, said.message.why or "", ())
        for known in await rooms.every(db):
            book = Book(db, known)
            pages: tuple[str, ...] = (await as_csv(book), json.dumps(await as_json(book, now)))
            shown = [await as_calendar(book, now), await as_page(book, now)]
            pages += tuple(page.decode() for page in shown)
            is_of_its_own(known.address, "", pages)
    finally:
        await db.close()


def is_of_its_own(room: str, words: str, more: tuple[str, ...]) -> None:
    """Nothing of what is said in a room is a word of the other."""
    said = " ".join([words, *more]).casefold()
    other = THERE if room == HERE else HERE
    assert not [word for word in GROUPS[other] if word in said], said


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(STEPS)
def test_no_word_of_one_group_reaches_the_other(steps: list[Step]) -> None:
    with TemporaryDirectory() as folder:
        asyncio.run(play(steps, Path(folder) / "book.db"))
