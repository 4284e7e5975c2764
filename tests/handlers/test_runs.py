"""Runs are numbered the same, whether all of a bin is read or only what may have changed."""

import asyncio
from datetime import timedelta

from hypothesis import given, settings
from hypothesis import strategies as st

from handlers.answer import Answer, Turn
from handlers.recording import keeping
from handlers.runs import number
from storage import rooms
from storage.book import Book
from storage.database import Database
from storage.rows import Facts
from tests.group import BEGIN

STEPS = st.lists(
    st.tuples(
        st.sampled_from(["layer", "drain", "seal", "bury", "bury", "emptied", "observe", "strike"]),
        st.integers(0, 40),
        st.integers(0, 30),
    ),
    max_size=25,
)


async def step(book: Book, count: int, act: str, day: int, pick: int) -> None:
    at = BEGIN + timedelta(days=day, minutes=count)
    event = f"$e{count}"
    turn = Turn(book=book, event=event, cause=event, sender="ines", at=at, now=at, today=at.date())
    standing = [entry for entry in await book.entries() if not entry.struck]
    if act == "strike":
        answer = Answer(strikes=standing[pick:][:1])
    elif act == "emptied":
        facts = Facts(words="thrown out")
        answer = Answer(entries=[turn.entry("open", bin="shed", facts=facts)])
    else:
        answer = Answer(entries=[turn.entry(act, bin="shed")])
    await keeping.carry_out(turn, answer)


@settings(max_examples=150, deadline=None)
@given(STEPS)
def test_any_order_of_records_and_strikes(steps: list[tuple[str, int, int]]) -> None:
    async def check() -> None:
        db = await Database.open(":memory:")
        try:
            async with db.transaction():
                room = await rooms.join(db, "!y:test", BEGIN, zone="UTC", units="metric")
                book = Book(db, room)
                for count, (act, day, pick) in enumerate(steps):
                    await step(book, count, act, day, pick)
                    standing = [e for e in await book.entries() if not e.struck]
                    standing.sort(key=lambda e: (e.on or BEGIN.date(), e.said_at, e.id))
                    assert [entry.run for entry in standing] == number(standing, 1)
        finally:
            await db.close()

    asyncio.run(check())
