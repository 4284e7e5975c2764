import pytest

from handlers.practice.household import VESSELS
from handlers.reading.acts import Units
from handlers.reading.measures.amountlists import read_amounts
from handlers.reading.measures.amounts import Amount
from handlers.reading.words.words import cleaned, norms_in, words_of

# NIST Handbook 44, Appendix C, and UK Weights and Measures Act 1985, Schedule 1.
US_PINT, IMPERIAL_PINT, POUND, OUNCE = 0.473176473, 0.56826125, 0.45359237, 0.028349523125
US_GALLON, US_CUP = 3.785411784, 0.2365882365


def amounts(text: str, units: Units = "metric") -> tuple[Amount, ...]:
    words = words_of(cleaned(text))
    return read_amounts(words, norms_in(words), units)


@pytest.mark.parametrize(
    ("text", "kg"),
    [
        ("2 kg", 2), ("2kgs", 2), ("1½ kg", 1.5), ("1,250 g", 1.25), ("1,1 kg", 1.1),
        ("1.250 kg", 1.25), ("a pound and a half", 1.5 * POUND), ("2 lb 4 oz", 2.25 * POUND),
        ("half a kilo", 0.5), ("quarter of a kilo", 0.25), ("1-1.5kg", 1.25), ("1kg to 2kg", 1.5),
        ("two and a half kilos", 2.5), ("a hundred and fifty grams", 0.15), ("2 x 500 g", 1.0),
        ("12 oz", 12 * OUNCE), ("approx. 400 gm", 0.4), ("kilo in the shed", 1.0),
        ("one point two five kg", 1.25), ("a kilo two hundred", 1.2), ("2 kg 350", 2.35),
        ("two kilos three fifty", 2.35), ("2lb 4", 2.25 * POUND), ("two pound ten", 2.625 * POUND),
        ("half a hundredweight", 56 * POUND), ("500 g twice", 1.0),
        ("4 hundred grams", 0.4), ("two, maybe three kilos", 2.5), ("added kilo of rice", 1.0),
        ("arf a kilo", 0.5), ("quater kilo of rice", 0.25), ("two-three kilos", 2.5),
        ("ten twelve kilos", 11), ("five two kilo bags", 10), ("one kilo nine", 1.9),
        ("two kilo four of peel", 2.4), ("nought comma eight kilos", 0.8),
        ("a measly pound", POUND), ("the final pound of rice", POUND), ("plus minus 2 kg", 2.0),
        ("700 g, may have been 800", 0.75), ("1-1/4 lb", 1.25 * POUND), ("250 g x 4 packets", 1.0),
        ("3 quarters of a kilo", 0.75), ("1 kg 200 beetroot", 1.2), ("2 kay gees", 2.0),
        ("teen sau gram", 0.3), ("cuarto de kilo", 0.25), ("a pound or two", 1.5 * POUND),
        ("two bags of the bran five pounds each", 10 * POUND),
        ("2 kg 4 of leeks", 2.4), ("1kg 7, leeks", 1.7), ("2 kg 4 leeks", 2.0),
        ("two kilo half of leeks", 2.5), ("a kilo half, leeks", 1.5), ("2 kg half leek", 2.0),
        ("2 kg half of it leeks", 2.0), ("2 kg half in", 2.0),
    ],
)  # fmt: skip
def test_masses(text: str, kg: float) -> None:
    (amount,) = amounts(text)
    assert amount.quantity == "mass"
    assert amount.value == pytest.approx(kg)


@pytest.mark.parametrize(
    ("text", "units", "litres"),
    [
        ("a pint", "metric", IMPERIAL_PINT), ("a pint", "imperial", IMPERIAL_PINT),
        ("a pint and a half", "us", 1.5 * US_PINT), ("5 gal", "us", 5 * US_GALLON),
        ("3/4 cup", "us", 0.75 * US_CUP), ("a cup", "metric", 0.25), ("2 tbsp", "metric", 0.03),
        ("750 mls", "metric", 0.75), ("0,3 L", "metric", 0.3), ("8 fl oz", "us", US_CUP),
    ],
)  # fmt: skip
def test_volumes_mean_what_the_group_has_chosen(text: str, units: Units, litres: float) -> None:
    (amount,) = amounts(text, units)
    assert amount.quantity == "volume"
    assert amount.value == pytest.approx(litres)


@pytest.mark.parametrize(
    ("text", "quantity", "value"),
    [
        ("24 °C", "celsius", 24), ("75F", "celsius", 23.89), ("68 degrees", "celsius", 20),
        ("pH 3.8", "ph", 3.8), ("ph is 4", "ph", 4), ("4 by 8 feet", "area", 2.97290),
        ("1.2 m x 2.4 m", "area", 2.88), ("3 m²", "area", 3), ("2 weeks", "days", 14),
        ("£5", "money", 5), ("50%", "percent", 0.5),
    ],
)  # fmt: skip
def test_other_quantities(text: str, quantity: str, value: float) -> None:
    (amount,) = amounts(text)
    assert amount.quantity == quantity
    assert amount.value == pytest.approx(value, rel=1e-4)


@pytest.mark.parametrize("text", ["2 packs", "a dozen eggs", "20:15", "room 12", "9 lives", "1 c"])
def test_an_unknown_unit_is_no_amount(text: str) -> None:
    assert amounts(text) == ()


@pytest.mark.parametrize(
    ("text", "vessel", "times"),
    [("a handful", "handful", 1), ("half a bucket", "bucket", 0.5), ("jam jar of fat", "jam jar",
     1),
     ("three quarters of a caddy", "caddy", 0.75)],
)  # fmt: skip
def test_vessels_hold_what_the_household_table_says(text: str, vessel: str, times: float) -> None:
    (amount,) = amounts(text)
    assert amount.vessel
    assert amount.value == pytest.approx(times * VESSELS[vessel].usual)


@pytest.mark.parametrize(
    ("text", "litres"),
    [
        ("10 litre bucket, two thirds full of peel", 20 / 3),
        ("10 l tub three quarters of the way up with peel", 7.5),
        ("a 10 L pail about halfway up with peel", 5),
        ("3 buckets of peel, each one 10 litres", 30),
        ("4 caddies of peel, a caddy is 5 litres", 20),
        ("two ice cream tubs of peel, the 2 litre ones", 4),
        ("two jars of peel, litre jars", 2),
        ("quarter pail of peel. It is the 20 L pail", 5),
    ],
)
def test_vessels_may_be_part_full_or_sized_later(text: str, litres: float) -> None:
    held = [amount for amount in amounts(text) if not amount.size]
    assert sum(amount.value for amount in held) == pytest.approx(litres)


def test_a_volume_before_a_vessel_is_its_size() -> None:
    (amount,) = amounts("a 20 L bucket")
    assert (amount.value, amount.size) == (20, True)
    (part,) = amounts("a third of a 10L bucket")
    assert part.value == pytest.approx(10 / 3)


def test_a_bare_number_takes_the_unit_before_it() -> None:
    assert [a.value for a in amounts("200ml and then another 150")] == pytest.approx([0.2, 0.15])


def test_an_ounce_keeps_its_volume_in_case_it_is_of_liquid() -> None:
    (amount,) = amounts("8 oz", "us")
    assert amount.liquid_l == pytest.approx(US_CUP)


def test_a_minus_is_seen_and_a_bullet_is_none() -> None:
    assert amounts("-3 kg")[0].negative
    assert not amounts("- 3 kg")[0].negative


@pytest.mark.parametrize("name", VESSELS)
def test_each_vessel_has_a_range_round_its_usual_size(name: str) -> None:
    vessel = VESSELS[name]
    assert 0 < vessel.low <= vessel.usual <= vessel.high


@pytest.mark.parametrize(
    ("text", "warm"),
    [("-3 °C in the shed bin", -3), ("minus 3 °C", -3), ("14 °F", -10), ("10-12 °C", 11)],
)
def test_a_temperature_may_be_below_nought(text: str, warm: float) -> None:
    [amount] = amounts(text)
    assert (amount.quantity, round(amount.value, 6)) == ("celsius", warm)


@pytest.mark.parametrize(
    ("text", "value"), [("1e3 g", 1), ("2.5e1 kg", 25), ("1e9 kg", 1e9), ("1E-1 kg", 0.1)]
)
def test_a_number_with_a_power_of_ten(text: str, value: float) -> None:
    [amount] = amounts(text)
    assert amount.quantity == "mass"
    assert amount.value == pytest.approx(value)
