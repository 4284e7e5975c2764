"""Amounts that are aimed at, allowed or summed up are in no bin yet."""

import pytest

from handlers.reading.acts import Layer
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    ["our target for June: 30 kg in the shed", "maximum 15 kg in big blue",
     "last month's total for the shed was 90 kg", "Friday's plan: shed 2 kg, bin 3 1 kg",
     "to follow: 2 kg apple peel, shed", "still to come: bin 3, 1 kg crusts",
     "later today: shed, 2 kg peelings", "next up: shed 1 kg peel"],
)  # fmt: skip
def test_what_is_not_yet_in_is_no_layer(text: str) -> None:
    assert not any(isinstance(act, Layer) for act in acts(text))


@pytest.mark.parametrize(
    "text",
    ["added 2 kg to the shed, our target is 30", "Friday: shed 2 kg", "shed: 1.5 kg potato peel",
     "to follow: more. added 2 kg to the shed"],
)  # fmt: skip
def test_what_is_in_is_a_layer(text: str) -> None:
    assert any(isinstance(act, Layer) for act in acts(text))
