"""What went into both bins, beside what went into one of them."""

from datetime import date

import pytest

from handlers.reading.acts import Layer
from tests.reading.context import acts

TODAY, YESTERDAY = date(2026, 6, 17), date(2026, 6, 16)


@pytest.mark.parametrize(
    ("text", "days"),
    [
        ("500 g tea leaves in both, 2 kg rice in the shed", (TODAY, TODAY)),
        ("added 500 g tea leaves to both bins and 2 kg rice to the shed", (TODAY, TODAY)),
        ("yesterday 500 g tea leaves in both, today 2 kg rice in the shed", (YESTERDAY, TODAY)),
        ("yesterday 500 g tea leaves in both and 2 kg rice in the shed", (YESTERDAY, YESTERDAY)),
        ("2 kg rice in the shed and 500 g tea leaves in both", (TODAY, TODAY)),
    ],
)
def test_each_is_a_layer_of_its_own(text: str, days: tuple[date, date]) -> None:
    told = [act for act in acts(text, in_room=True) if isinstance(act, Layer)]
    told.sort(key=lambda act: act.each is None)
    assert [(a.mass_kg, a.bin, a.each, a.on) for a in told] == [
        (0.5, None, "both", days[0]),
        (2.0, "shed", None, days[1]),
    ]


@pytest.mark.parametrize(
    "text", ["500 g tea leaves in both", "2 kg in both the shed and bin 3", "put both in the shed"]
)
def test_what_is_of_both_alone_is_not_parted(text: str) -> None:
    assert all(
        act.mass_kg in (0.5, 2.0, 1.0) for act in acts(text, in_room=True) if isinstance(act, Layer)
    )
