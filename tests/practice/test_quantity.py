"""Values as people write them on the command line."""

from collections.abc import Callable
from contextlib import suppress

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice import quantity
from handlers.practice.figure import Refused
from handlers.practice.quantity import SPELLINGS, kilograms, litres, metres, square_metres
from handlers.practice.units import BARE, KILOGRAMS, LITRES, METRES, SQUARE_METRES, System

# Factors: NIST SP 811 and Handbook 44; UK Weights and Measures Act 1985.


@pytest.mark.parametrize(
    ("text", "units", "value"),
    [
        ("9L", "metric", 9.0),
        ("9 l", "metric", 9.0),
        ("2,5 L", "metric", 2.5),
        ("2.5 litres", "metric", 2.5),
        (".5 l", "metric", 0.5),
        ("500 ml", "metric", 0.5),
        ("5 dl", "metric", 0.5),
        ("1/2 cup", "us", 0.11829411825),
        ("1 1/2 cups", "metric", 0.375),
        ("5 gal", "us", 18.92705892),
        ("5 gal", "imperial", 22.73045),
        ("5 gal", "metric", 22.73045),
        ("5 US gal", "metric", 18.92705892),
        ("1 tbsp", "us", 0.01478676478125),
        ("1 tbsp", "metric", 0.015),
        ("1 australian tbsp", "us", 0.020),
        ("2 oz", "us", 0.059147059125),
        ("2 fl oz", "us", 0.059147059125),
        ("1 pint", "metric", 0.56826125),
        ("1 gal 2 qt", "us", 5.678117676),
        ("4 cu ft", "metric", 113.267386368),
        ("2 ft3", "metric", 56.633693184),
        ("½ cup", "us", 0.11829411825),
        ("1½ cups", "metric", 0.375),
        ("about 2 L", "metric", 2.0),
        ("1 gal (US)", "metric", 3.785411784),
        ("2 tbsp US", "metric", 0.0295735295625),
        ("1 U.S. gallon", "imperial", 3.785411784),
        ("3 fl. oz.", "us", 0.0887205886875),
        # Units that only pint's registry has (default_en.txt): by their definitions in NIST HB 44
        # and the UK Act, a gill is 1/32 US gal or 5 imperial fl oz, a peck 1/4 bushel.
        ("1 gill", "us", 3.785411784 / 32),
        ("1 gill", "metric", 0.0284130625 * 5),
        ("2 pecks", "us", 35.23907016688 / 2),
    ],
)
def test_volumes(text: str, units: System, value: float) -> None:
    assert litres(text, units) == pytest.approx(value, rel=1e-9)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("2kg", 2.0),
        ("2,5 kg", 2.5),
        ("800 g", 0.8),
        ("1 lb 4 oz", 0.5669904625),
        ("1lb4oz", 0.5669904625),
        ("1 lb and 4 oz", 0.5669904625),
        ("1 stone", 6.35029318),
        ("3 pounds", 1.36077711),
        ("1 lb + 4 oz", 0.5669904625),
        # A troy ounce is 480 grains of 64.79891 mg (NIST HB 44).
        ("1 troy_ounce", 0.0311034768),
        # A long hundredweight is 112 lb, a long ton 2240 lb (UK Weights and Measures Act 1985).
        ("1 cwt", 50.80234544),
        ("1 long ton", 1016.0469088),
        ("2 short tons", 1814.36948),
        ("1 ton", 1000.0),
    ],
)
def test_masses(text: str, value: float) -> None:
    assert kilograms(text) == pytest.approx(value, rel=1e-9)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("4x8ft", 2.97289728),
        ("4 ft x 8 ft", 2.97289728),
        ("4 by 8 ft", 2.97289728),
        ("4' x 8'", 2.97289728),
        ("1,2x2,4m", 2.88),
        ("120cm × 2.4 m", 2.88),
        ("32 sq ft", 2.97289728),
        ("32 sq. ft", 2.97289728),
        ("32 square feet", 2.97289728),
        ("3 m^2", 3.0),
        ("3 m2", 3.0),
        ("3m²", 3.0),
        ("1 acre", 4046.8564224),
    ],
)
def test_areas(text: str, value: float) -> None:
    assert square_metres(text) == pytest.approx(value, rel=1e-9)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("30cm", 0.3),
        ("0.003 km", 3.0),
        ("1 mile", 1609.344),
        ("12 in", 0.3048),
        ("5 ft 3 in", 1.6002),
        ("8″", 0.2032),
    ],
)
def test_lengths(text: str, value: float) -> None:
    assert metres(text) == pytest.approx(value, rel=1e-9)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("20", 20.0),
        ("20 C", 20.0),
        ("68F", 20.0),
        ("-5 °C", -5.0),
        ("−40 °F", -40.0),
        ("68 fahrenheit", 20.0),
    ],
)
def test_temperatures(text: str, value: float) -> None:
    assert quantity.degrees_celsius(text) == pytest.approx(value)


@pytest.mark.parametrize(
    ("text", "value"),
    [("0.7", 0.7), ("70%", 0.7), ("70 percent", 0.7), ("0,7", 0.7), ("1/2", 0.5), ("1", 1.0)],
)
def test_shares(text: str, value: float) -> None:
    assert quantity.share(text) == pytest.approx(value)


@pytest.mark.parametrize(
    ("read", "text"),
    [
        (litres, ""),
        (litres, "9"),
        (litres, "nine litres"),
        (litres, "-2 L"),
        (litres, "2 L each"),
        (litres, "2 kg"),
        (litres, "1,000 L"),
        (litres, "1/0 L"),
        (litres, "1e5 L"),
        (kilograms, "9**9**9"),
        (kilograms, "2 gal"),
        (kilograms, "2kg meat"),
        (kilograms, "9" * 400 + "kg"),
        (litres, "2 kg^2"),
        (litres, "5 pi"),
        (litres, "9 degF"),
        (litres, "2 __class__"),
        (quantity.mass_or_volume, "3 m"),
        (quantity.mass_or_volume, "5"),
        (square_metres, "4x8"),
        (square_metres, "x8ft"),
        (square_metres, "4x8x2 ft"),
        (quantity.degrees_celsius, "warm"),
        (quantity.degrees_celsius, "20 K"),
        (quantity.share, "1.2"),
        (quantity.share, "most"),
        (quantity.plain_number, "1_000"),
        (quantity.plain_number, "٣"),
    ],
)
def test_what_is_no_value_is_refused_in_one_sentence(
    read: Callable[[str], object], text: str
) -> None:
    with pytest.raises(Refused) as refused:
        read(text)
    sentence = str(refused.value)
    assert sentence.endswith(".")
    assert "\n" not in sentence
    assert len(sentence) < 200


def test_every_spelling_has_a_factor_and_no_spelling_two() -> None:
    factors = {**LITRES, **KILOGRAMS, **METRES, **SQUARE_METRES}
    assert all(unit in factors or unit in BARE["metric"] for unit in SPELLINGS)
    words = [word for spelling in SPELLINGS.values() for word in spelling.split()]
    assert len(words) == len(set(words))


@given(
    st.integers(min_value=1, max_value=100_000),
    st.sampled_from([unit for unit in SPELLINGS if unit in LITRES]),
)
def test_what_is_written_is_read_back(hundredths: int, unit: str) -> None:
    spelling = SPELLINGS[unit].split()[-1]
    text = f"{hundredths // 100}.{hundredths % 100:02d} {spelling}"
    assert litres(text) == pytest.approx(hundredths / 100 * LITRES[unit])


@given(st.text(max_size=80))
def test_any_text_is_read_or_refused(text: str) -> None:
    for read in (litres, kilograms, metres, square_metres, quantity.degrees_celsius):
        with suppress(Refused):
            assert read(text) > -1e66


def test_an_amount_of_either_kind() -> None:
    assert quantity.mass_or_volume("2 kg") == (2.0, None)
    assert quantity.mass_or_volume("10 cups", "us")[1] == pytest.approx(2.365882365)
    # An ounce is one of weight where a weight may stand.
    assert quantity.mass_or_volume("16 oz")[0] == pytest.approx(0.45359237)


@given(st.text(alphabet="abcdefghijklmnopqrstuvwxyz_*()^.0123456789", min_size=1, max_size=12))
def test_no_expression_is_ever_worked_out(word: str) -> None:
    with suppress(Refused):
        assert litres(f"2 {word}") < 1e30
