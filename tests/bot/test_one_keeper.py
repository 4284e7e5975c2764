"""At every moment each bin has one keeper or is openly unattended, whatever is said."""

import asyncio
from pathlib import Path
from tempfile import TemporaryDirectory

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from storage.database import Database
from tests.keepers import WHATS, Step, Watch
from tests.room import TalkingRoom

STEPS = st.lists(
    st.tuples(st.sampled_from(WHATS), st.integers(0, 7), st.integers(0, 30), st.integers(0, 30)),
    min_size=1,
    max_size=40,
)


async def play(steps: list[Step], path: Path) -> None:
    watch = Watch(TalkingRoom(await Database.open(path)), path)
    try:
        await watch.begin()
        for step in steps:
            await watch.step(step)
    finally:
        await watch.room.db.close()


@settings(max_examples=40, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(STEPS)
def test_each_bin_has_one_keeper_or_is_openly_unattended(steps: list[Step]) -> None:
    with TemporaryDirectory() as folder:
        asyncio.run(play(steps, Path(folder) / "book.db"))
