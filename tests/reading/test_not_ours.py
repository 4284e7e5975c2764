"""What looks like a record of a bin and is none: a lid in trouble, another's shed, old days."""

import pytest

from handlers.reading.acts import Act, Ask, Drain, Layer, Observe, Seal, Unsure
from tests.reading.context import acts

BINS = ("shed", "green", "bin 3", "Mabel")


def read(text: str) -> tuple[Act, ...]:
    return acts(text, bins=BINS, in_room=True)


@pytest.mark.parametrize(
    "text",
    [
        "Mabel's lid is broken",
        "the lid on bin 3 is cracked",
        "green's lid is missing",
        "Mabel needs its lid on",
        "my rabbits shed stinks",
        "the neighbours' shed smells foul",
        "the green bin at the kerb smells rotten",
        "the flies from our shed are a pest",
        "bin 3's tap leaks",
        "remember when we filled the shed with marrows, 8 kg, last Christmas? good days",
        "remember to seal Mabel",
        "flour, 2 kg, birthday cake",
    ],
)
def test_nothing_is_written_down(text: str) -> None:
    assert read(text) == ()


@pytest.mark.parametrize(
    "text",
    ["the lid on Mabel is coming up", "lid of bin 3 is popping up", "lid on green is poofin up"],
)
def test_a_lid_that_rises_is_gas(text: str) -> None:
    [seen] = read(text)
    assert isinstance(seen, Observe)
    assert seen.signs == ("gas",)


@pytest.mark.parametrize(
    "text", ["the lid on Mabel is down", "Mabel's lid is on for good", "the lid of green is taped"]
)
def test_a_lid_that_is_shut_is_a_sealing(text: str) -> None:
    [sealed] = read(text)
    assert isinstance(sealed, Seal)


@pytest.mark.parametrize(
    "text", ["Mabel smells sour, bad or good?", "green is smelling of pickle. Good or bad?"]
)
def test_good_or_bad_is_asked_and_not_smelt(text: str) -> None:
    seen, asked = read(text)
    assert isinstance(seen, Observe)
    assert isinstance(asked, Ask)
    assert seen.signs == asked.signs == ("sour",)


@pytest.mark.parametrize(("way", "drained"), [("in", 0), ("into", 0), ("out of", 1), ("from", 1)])
def test_tea_that_goes_in_is_nothing_drained(way: str, drained: int) -> None:
    acts_read = read(f"2 cups of tea {way} green")
    assert sum(isinstance(act, Drain) for act in acts_read) == drained


@pytest.mark.parametrize("text", ["tea 400 ml shed", "☕ 1 L green"])
def test_a_drink_beside_a_bin_is_asked_about(text: str) -> None:
    [asked] = read(text)
    assert isinstance(asked, Unsure)
    assert isinstance(asked.guess[0], Drain)


def test_tea_poured_into_a_bin_is_a_layer() -> None:
    [layer] = read("a mug of tea into bin 3")
    assert isinstance(layer, Layer)
    assert layer.materials == {"liquid": 1.0}
    assert read("had two cups of tea in the shed") == ()
