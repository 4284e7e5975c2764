"""Whatever people write, the mind goes on: no event fails, and what stands can be exported."""

import asyncio
from pathlib import Path
from tempfile import TemporaryDirectory

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from bot.export import as_csv, as_json
from bot.turn import SORRY
from storage.database import Database
from tests.room import TalkingRoom

WORDS = """
added put drained sealed buried opened started smells mould green white rotten 2 0 -3 2000 1/2 ½
two kg lb litres ml gallons cups handfuls °C pH scraps meat peelings bones liquid starter bran the
shed bin 3 blue to from in under pear tree yesterday today tomorrow on Friday 31/2 2026-02-30 no
not sorry why? what's due how much full yes ❌ 👍 I'll take it done later scratch that bot
pailkeeper: , . ! ? @ines 9999999999 1e400 NaN
"""
PIECES = st.sampled_from([*WORDS.split(), "\n", "\u202e", "\x00"])
TALK = st.lists(
    st.one_of(st.lists(PIECES, max_size=12).map(" ".join), st.text(max_size=60)),
    min_size=1,
    max_size=8,
)


async def talk(bodies: list[str], path: Path) -> None:
    db = await Database.open(path)
    try:
        room = TalkingRoom(db)
        for number, body in enumerate(bodies):
            said = await room.says(body, event=f"$m{number}", who=("ines", "bram")[number % 2])
            said += await room.edits(f"$m{number}", f"{body} {bodies[0]}")
            assert all(message.body != SORRY for message in said), body
        assert all(message.body != SORRY for message in await room.waits(days=40))
        book = await room.book()
        await as_json(book, room.now)
        await as_csv(book)
    finally:
        await db.close()


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(TALK)
def test_no_words_stop_the_bot(bodies: list[str]) -> None:
    with TemporaryDirectory() as folder:
        asyncio.run(talk(bodies, Path(folder) / "book.db"))
