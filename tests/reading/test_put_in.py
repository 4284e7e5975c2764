""" "Put 2 kg in" tells a layer, and is no correction of the last one."""

import pytest

from handlers.reading.acts import Act, Amend, Layer, Open, Unsure
from tests.reading.context import acts


@pytest.mark.parametrize("last", [None, Open(bin="shed"), Layer(bin="shed", mass_kg=1)])
@pytest.mark.parametrize(
    "text",
    ["put 2 kg in", "put in 2 kg", "I've put 2 kg in", "I've put in 2 kg already",
     "put in 2 kg please",
     "we have put 2 kg in so far"],
)  # fmt: skip
def test_what_was_put_in_is_a_layer(text: str, last: Act | None) -> None:
    told = acts(text, bins=("shed",), in_room=True, last=last)
    assert [act.mass_kg for act in told if isinstance(act, Layer)] == [2]
    assert not any(isinstance(act, Amend) for act in told)


@pytest.mark.parametrize(
    "text", ["I put 2 kg, it's 3 kg", "oops I put 2 kg, it was 3 kg", "I put 2 kg, should be 3 kg"]
)
def test_what_was_written_is_put_right(text: str) -> None:
    told = acts(text, bins=("shed",), in_room=True, last=Layer(bin="shed", mass_kg=2))
    assert [type(act) for act in told] == [Amend]


@pytest.mark.parametrize(
    "text",
    ["I'll put 2 kg in", "should I put 2 kg in?", "put 2 kg in the post", "put 2 kg in the car"],
)
def test_what_goes_in_elsewhere_or_later_is_none(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in acts(text, bins=("shed",), in_room=True))


@pytest.mark.parametrize(
    "text", ["shed: 1 500 g, 2 250 g", "1 350 g peelings, 3 200 g bread in the shed"]
)
def test_a_list_of_counts_or_of_thousands_is_asked_about(text: str) -> None:
    [asked] = acts(text, bins=("shed",), in_room=True)
    assert isinstance(asked, Unsure)
    assert all(isinstance(act, Layer) for act in asked.guess)


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("put 1 500 g of peelings in the shed", 1.5),
        ("put 2 250 g bags of peelings in the shed", 0.5),
        ("put 12 500 g of peelings in the shed", 12.5),
    ],
)
def test_one_of_them_is_not(text: str, kg: float) -> None:
    [layer] = acts(text, bins=("shed",), in_room=True)
    assert isinstance(layer, Layer)
    assert layer.mass_kg == kg
