"""The cautions are short, one sentence each, and there where harm is possible."""

import pytest

from handlers.practice.cautions import CAUTIONS, caution


@pytest.mark.parametrize("name", CAUTIONS)
def test_a_caution_is_one_short_sentence(name: str) -> None:
    words = caution(name)
    assert words.endswith(".")
    assert ". " not in words
    assert len(words) <= 160


@pytest.mark.parametrize(
    ("name", "words"),
    [
        # NSW Health and WorkSafe Queensland: mask, gloves, damp it down.
        ("mould", "mask and gloves"),
        # EU 1069/2009, Art. 11, and the US Swine Health Protection Act: no feeding.
        ("meat", "never feed it to animals"),
        ("meat", "local authority"),
        # First-aid practice for splashes: a quarter of an hour.
        ("splash", "quarter of an hour"),
        # Acid and bleach give chlorine.
        ("liquid", "bleach"),
        # NIOSH and HSE: 15 kg is under both bounds for one pair of hands.
        ("lifting", "15 kg"),
        ("illness", "doctor"),
    ],
)
def test_a_caution_says_what_health_services_say(name: str, words: str) -> None:
    assert words in caution(name)


def test_a_full_ordinary_bin_is_over_one_persons_lift() -> None:
    # Waters et al. 1993: RWL = 23 x 25/30 x (1 - 0.003 x 35) x (0.82 + 4.5/60) = 15.35 kg.
    limit = 23 * 25 / 30 * (1 - 0.003 * 35) * (0.82 + 4.5 / 60)
    assert limit == pytest.approx(15.35, abs=0.05)
    assert "15 kg" in caution("lifting")
