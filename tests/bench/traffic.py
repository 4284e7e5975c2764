"""What an invented street writes: rooms whose members tend their bins and talk of other things.

Of ten messages about four are records, one asks or corrects, and five are small talk. A bin is fed
for some days, sealed, and buried two weeks later, as groups do; the same seed writes the same.
"""

import random
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from typing import Any

BEGIN = datetime(2026, 3, 2, 7, 0, tzinfo=UTC)
OWN = "@pailkeeper:bench"
MEMBERS = ("ines", "bram", "mei", "kofi", "lale", "dov")
BINS = ("shed", "yard", "blue")
CAPACITY_L = 20

SCRAPS = ("scraps", "potato peelings", "coffee grounds", "leftovers", "apple cores", "bread")
RECORDS = (
    "added {kg} kg {scraps} to the {bin} bin",
    "put {kg} kg of {scraps} in the {bin} bin",
    "{kg} kg {scraps}, mostly meat, into the {bin} bin",
    "about {litres} litres of {scraps} went into the {bin} bin this morning",
)
DRAINED = ("drained the {bin} bin, got {ml} ml", "drained the {bin} bin, nothing came")
QUESTIONS = (
    "what's due?",
    "how full is the {bin} bin?",
    "how much water for 100 ml of the liquid, for the beds?",
    "how much have we done so far?",
    "no, {kg} kg",
    "who has the {bin} bin?",
)
SMALL_TALK = (
    "good morning all",
    "who is coming on Saturday?",
    "thanks Mei, that was lovely",
    "the gate is stuck again, can somebody look at it?",
    "I'll be away until Tuesday",
    "did anybody find a red glove by the tap?",
    "see you at six then",
    "rain at last!",
    "I made 3 jars of plum jam, help yourselves",
    "my bus was 20 minutes late, sorry",
)


@dataclass
class _Bin:
    """A bin of a room as the script has it."""

    name: str
    fed: int = 0
    sealed_on: int | None = None


@dataclass
class Yard:
    """A room and where its script stands."""

    room: str
    dice: random.Random
    bins: list[_Bin] = field(default_factory=lambda: [_Bin(name) for name in BINS])

    def day(self, day: int) -> list[str]:
        """What is written on a day."""
        if day == 0:
            return [f"opened the {name} bin, {CAPACITY_L} L" for name in BINS]
        lines = [line for bin in self.bins for line in self._about(bin, day)]
        lines += self.dice.choices(SMALL_TALK, k=max(2, len(lines)))
        if self.dice.random() < 0.6:
            lines.append(self._filled(self.dice.choice(QUESTIONS), self.dice.choice(self.bins)))
        self.dice.shuffle(lines)
        return lines

    def _about(self, bin: _Bin, day: int) -> list[str]:
        if bin.sealed_on is not None:
            if day - bin.sealed_on < 14:
                return [self._filled(self.dice.choice(DRAINED), bin)] if day % 4 == 0 else []
            bin.fed, bin.sealed_on = 0, None
            return [f"buried the {bin.name} bin under the plum tree"]
        if bin.fed >= 14:
            bin.sealed_on = day
            return [f"sealed the {bin.name} bin"]
        bin.fed += 1
        said = [self._filled(self.dice.choice(RECORDS), bin)]
        return [*said, self._filled(DRAINED[0], bin)] if bin.fed % 3 == 0 else said

    def _filled(self, words: str, bin: _Bin) -> str:
        return words.format(
            bin=bin.name,
            scraps=self.dice.choice(SCRAPS),
            kg=self.dice.randint(3, 14) / 10,
            litres=self.dice.randint(1, 3),
            ml=self.dice.randint(5, 40) * 10,
        )


def events(rooms: int, seed: int = 1) -> Iterator[dict[str, Any]]:
    """Room messages without end, day by day in the order they come; `room_id` names the room."""
    yards = [Yard(f"!yard{n}:bench", random.Random(f"{seed} {n}")) for n in range(rooms)]
    dice = random.Random(seed)
    number = day = 0
    while True:
        said = [(dice.random(), yard.room, line) for yard in yards for line in yard.day(day)]
        for hour, room, line in sorted(said):
            at = BEGIN + timedelta(days=day, hours=14 * hour)
            number += 1
            yield message(room, f"${number}", f"@{dice.choice(MEMBERS)}:bench", at, line)
        day += 1


def message(room: str, event: str, sender: str, at: datetime, words: str) -> dict[str, Any]:
    """A message as a homeserver tells it."""
    return {
        "type": "m.room.message",
        "room_id": room,
        "event_id": event,
        "sender": sender,
        "origin_server_ts": int(at.timestamp() * 1000),
        "content": {"msgtype": "m.text", "body": words},
    }
