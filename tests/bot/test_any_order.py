"""Whatever is edited, corrected, taken back and marked, in any order: the book holds what stands.

The model is written from the promise alone: a message's record is what the last of its changes
that still holds made of it.
"""

import asyncio
from dataclasses import dataclass, field
from pathlib import Path
from tempfile import TemporaryDirectory

from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from storage.database import Database
from tests.room import TalkingRoom

STEPS = st.lists(
    st.tuples(
        st.sampled_from(["say", "edit", "reply", "scratch", "cross", "withdraw", "restart"]),
        st.integers(0, 30),
        st.integers(1, 9),
    ),
    min_size=1,
    max_size=14,
)


@dataclass
class Change:
    event: str
    kg: int | None
    """None where the record was struck out."""


@dataclass
class Model:
    """What each message's record went through, in order."""

    records: dict[str, list[Change]] = field(default_factory=dict)
    withdrawn: set[str] = field(default_factory=set)

    def kg(self, message: str) -> int | None:
        if message in self.withdrawn:
            return None
        holding = [c for c in self.records[message] if c.event not in self.withdrawn]
        return holding[-1].kg if holding else None

    def standing(self) -> list[float]:
        found = (self.kg(message) for message in self.records)
        return sorted(float(kg) for kg in found if kg is not None)


async def play(steps: list[tuple[str, int, int]], path: Path) -> tuple[list[float], list[float]]:
    room, model = TalkingRoom(await Database.open(path)), Model()
    try:
        for number, (what, pick, kg) in enumerate(steps):
            if what == "restart":
                await room.db.close()
                room = room.restarted(await Database.open(path))
            else:
                await step(room, model, what, pick, kg, f"$s{number}")
        found = sorted(e.facts.mass_kg or 0.0 for e in await room.standing() if e.act == "layer")
    finally:
        await room.db.close()
    return found, model.standing()


async def step(room: TalkingRoom, model: Model, what: str, pick: int, kg: int, event: str) -> None:
    messages = list(model.records)
    target = messages[pick % len(messages)] if messages else None
    if what == "say" or target is None:
        await room.says(f"added {kg} kg scraps to the shed bin", event=event)
        model.records[event] = [Change(event, kg)]
    elif what == "edit" and target not in model.withdrawn:
        await room.edits(target, f"added {kg} kg scraps to the shed bin", event=event)
        model.records[target].append(Change(event, kg))
    elif what == "reply" and model.kg(target) is not None:
        await room.says(f"no, {kg} kg", replies_to=target, event=event)
        model.records[target].append(Change(event, kg))
    elif what == "scratch" and model.kg(target) is not None:
        await room.says("scratch that", replies_to=target, event=event)
        model.records[target].append(Change(event, None))
    elif what == "cross" and model.kg(target) is not None:
        await room.marks(target, "❌", event=event)
        model.records[target].append(Change(event, None))
    elif what == "withdraw":
        changes = [change.event for message in messages for change in model.records[message]]
        gone = changes[pick % len(changes)]
        if gone not in model.withdrawn:
            await room.deletes(gone)
            model.withdrawn.add(gone)


@settings(max_examples=60, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@example([("say", 0, 1), ("cross", 0, 1), ("edit", 0, 3), ("cross", 0, 1), ("withdraw", 3, 1)])
@given(STEPS)
def test_the_book_holds_what_the_last_standing_change_made(
    steps: list[tuple[str, int, int]],
) -> None:
    with TemporaryDirectory() as folder:
        found, wanted = asyncio.run(play(steps, Path(folder) / "book.db"))
    assert found == wanted
