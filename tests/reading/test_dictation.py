"""What the bot is told by name to write down."""

from datetime import date

import pytest

from handlers.reading.acts import Act, Layer
from tests.reading.context import acts

BINS = ("green", "bin 2", "kitchen")


def in_room(text: str) -> tuple[Act, ...]:
    return acts(text, bins=BINS, in_room=True, bot_names=("pailkeeper", "bot"))


@pytest.mark.parametrize(
    ("text", "bin", "kg", "member", "day"),
    [
        ("bot can you put 3 kg of peelings in green for Ruth", "green", 3.0, "ruth", 17),
        ("pailkeeper please record 200 g of coffee for the kitchen from Monday",
         "kitchen", 0.2, None, 15),
        ("bot, note down 2 kg of bread for bin 2", "bin 2", 2.0, None, 17),
        ("bot log 1 kg in the kitchen from yesterday", "kitchen", 1.0, None, 16),
    ],
)  # fmt: skip
def test_an_order_is_a_report(text: str, bin: str, kg: float, member: str | None, day: int) -> None:
    [act] = in_room(text)
    assert isinstance(act, Layer)
    assert (act.bin, act.mass_kg, act.member, act.on) == (bin, kg, member, date(2026, 6, day))


@pytest.mark.parametrize(
    "text",
    [
        "bot can you put 3 kg of meat in green?",
        "can you put 3 kg of peelings in green for Ruth",
        "bot add 200 g of bran to green",
        "bot put the reminders at 9",
    ],
)
def test_what_is_no_such_order(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in in_room(text))
