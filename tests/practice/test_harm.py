"""Advice where somebody is hurt, against what poison centres and health services publish."""

import pytest

from handlers.practice.figure import STANDINGS
from handlers.practice.harm import ADVICE, HAZARDS, Hazard


@pytest.mark.parametrize("hazard", HAZARDS)
def test_the_advice_is_short_and_says_where_it_is_from(hazard: Hazard) -> None:
    advice = ADVICE[hazard]
    assert 1 <= len(advice.lines) <= 2
    assert all(len(line) < 220 for line in advice.lines)
    assert advice.standing in STANDINGS
    assert advice.source or advice.standing == "common practice"
    assert advice.why()


@pytest.mark.parametrize(
    ("hazard", "said"),
    [
        # Mayo Clinic, eye emergency: running water for at least 15 minutes, lenses out, then help.
        ("in the eye", ["15 minutes", "running water", "lenses out"]),
        # National Poisons Centre (NZ) and Oklahoma Poison Center: no vomiting, rinse the mouth.
        ("swallowed", ["do not make them vomit", "poison line", "Rinse"]),
        ("swallowed by an animal", ["vet"]),
        # NSW Health, 14 December 2018: fever, cough, headache; see a doctor and say what you used.
        ("breathed in", ["fresh air", "Fever, cough or headache", "doctor"]),
        ("chlorine", ["Leave the room", "poison line"]),
        ("to feed", ["not to any animal"]),
    ],
)
def test_it_says_what_the_source_says(hazard: Hazard, said: list[str]) -> None:
    words = " ".join(ADVICE[hazard].lines)
    assert all(part in words for part in said)
