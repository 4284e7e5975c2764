"""What another put in besides is theirs, and what the sender put in stays the sender's."""

import pytest

from handlers.reading.acts import Layer
from tests.reading.context import acts


def told(text: str) -> list[tuple[float | None, str | None, str | None, str]]:
    """Kilos, bin, member and kinds of each layer."""
    found = [act for act in acts(text, in_room=True) if isinstance(act, Layer)]
    return [(a.mass_kg, a.bin, a.member, "+".join(a.materials or {})) for a in found]


@pytest.mark.parametrize(
    ("text", "layers"),
    [
        (
            "shed 900g orange peel, and Mia dropped a whole yoghurt in as well",
            [(0.9, "shed", None, "fruit"), (None, "shed", "Mia", "dairy")],
        ),
        (
            "put 900 g of peel in bin 3, Ruth put in some bread as well",
            [(0.9, "bin 3", None, "vegetable"), (None, "bin 3", "ruth", "grain")],
        ),
        (
            "900 g peel in the shed yesterday and ines chucked in some bread too",
            [(0.9, "shed", None, "vegetable"), (None, "shed", "ines", "grain")],
        ),
    ],
)
def test_each_has_their_own_layer(
    text: str, layers: list[tuple[float | None, str | None, str | None, str]]
) -> None:
    assert told(text) == layers


@pytest.mark.parametrize(
    ("text", "kinds"),
    [
        ("900 g of peel in the shed, and bread as well", "vegetable+grain"),
        ("put 900 g peel in the shed, I added bran as well", "vegetable"),
    ],
)
def test_nobody_else_put_anything_in(text: str, kinds: str) -> None:
    assert told(text) == [(0.9, "shed", None, kinds)]
