"""A vessel is replaced by another: the bin has its size from then on."""

import pytest

from handlers.reading.acts import Open
from tests.reading.context import acts


def _sized(text: str) -> list[tuple[str | None, float | None]]:
    told = acts(text, bins=("gate", "shed"), members=("Ines", "Bram"), in_room=True)
    return [(act.bin, act.capacity_l) for act in told if isinstance(act, Open)]


@pytest.mark.parametrize(
    ("text", "size"),
    [
        ("swapped the gate bin for a 20 litre one", ("gate", 20)),
        ("replaced the gate bin with a bigger one, 20 L", ("gate", 20)),
        ("gate's cracked, replaced it with a 20 litre bucket", ("gate", 20)),
        ("upgraded the shed bin to a 30 L barrel", ("shed", 30)),
        ("the gate bin was replaced by a new one, 25 L", ("gate", 25)),
    ],
)
def test_it_has_the_size_of_what_took_its_place(text: str, size: tuple[str, float]) -> None:
    assert _sized(text) == [size]


@pytest.mark.parametrize(
    "text",
    [
        "swapped the gate bin with Bram's 20 litre one",
        "swapped the gate bin's tap for a new one",
        "if it leaks we'll swap the gate bin for a 20 L one",
        "swapped 20 litres of juice for eggs at the shed",
        "shall I replace the gate bin with a 20 L one?",
        "I've not replaced the gate bin with a 20 L one",
    ],
)
def test_nothing_took_its_place(text: str) -> None:
    assert _sized(text) == []
