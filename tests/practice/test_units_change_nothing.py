"""The law that the units of a question never change its answer."""

from collections.abc import Mapping

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from handlers.practice.figure import Refused
from handlers.practice.reckon import reckon
from handlers.practice.units import SYSTEMS

# Factors by definition: NIST HB 44, Appendix C; NIST SP 811; UK Weights and Measures Act 1985.
UNITS: Mapping[str, Mapping[str, float]] = {
    "kg": {"g": 0.001, "lb": 0.45359237, "oz": 0.45359237 / 16, "stone": 6.35029318, "t": 1000.0},
    "L": {
        "ml": 0.001,
        "us gal": 3.785411784,
        "us cups": 0.2365882365,
        "us tbsp": 0.01478676478125,
        "imperial gallons": 4.54609,
        "imperial pints": 0.56826125,
        "ft3": 28.316846592,
        "m3": 1000.0,
    },
    "m": {"cm": 0.01, "mm": 0.001, "in": 0.0254, "ft": 0.3048, "yd": 0.9144},
    "m2": {"sq ft": 0.09290304, "yd2": 0.83612736, "ha": 10000.0, "acre": 4046.8564224},
    "d": {"weeks": 7.0},
}
QUESTIONS: Mapping[str, Mapping[str, tuple[float, float, str]]] = {
    "dose": {"mass": (0.1, 40, "kg")},
    "dose by volume": {"volume": (0.1, 60, "L")},
    "dose by depth": {"depth": (0.01, 0.3, "m"), "width": (0.2, 0.5, "m")},
    "first-bed": {"capacity": (5, 200, "L")},
    "dilution": {"water": (0.5, 50, "L"), "liquid": (0.001, 1, "L")},
    "dilution of a mix": {"total": (0.5, 50, "L")},
    "trench": {
        "volume": (5, 60, "L"),
        "depth": (0.22, 0.6, "m"),
        "width": (0.15, 0.6, "m"),
        "cover": (0.1, 0.2, "m"),
    },
    "trench by mass": {"mass": (5, 60, "kg")},
    "bed": {"area": (1, 50, "m2"), "had": (0, 5, "kg"), "depth": (0.1, 0.3, "m")},
    "starter": {"bran": (0.5, 20, "kg")},
    "starter by volume": {"bran": (1, 80, "L"), "water": (0.1, 20, "L")},
    "moisture": {"mass": (0.5, 50, "kg")},
    "carbon": {"mass": (0.5, 50, "kg")},
    "bins": {"rate": (1, 60, "kg"), "capacity": (10, 60, "L"), "ferment_days": (7, 28, "d")},
    "bins by days": {"fill_days": (2, 30, "d"), "ferment_days": (7, 28, "d")},
    "liquid": {"mass": (1, 40, "kg"), "drained": (0, 5, "L")},
    "outlook": {"capacity": (10, 60, "L"), "starter": (0.1, 3, "kg")},
}
BESIDES: Mapping[str, Mapping[str, str]] = {
    "dose": {"meat": "0.3", "tablespoon": "us"},
    "dose by volume": {"tablespoon": "us"},
    "dose by depth": {"tablespoon": "us", "habit": "weight"},
    "first-bed": {"tablespoon": "us"},
    "dilution": {"tablespoon": "us"},
    "dilution of a mix": {"parts": "100", "tablespoon": "us"},
    "moisture": {"vegetable": "0.9"},
    "carbon": {"meat": "0.4"},
    "liquid": {"vegetable": "0.5"},
    "outlook": {"layers": "2026-03-01:2kg, 2026-03-04:1.4kg", "today": "2026-03-06"},
}


@settings(max_examples=400)
@given(st.data())
def test_units_change_no_answer(data: st.DataObject) -> None:
    name = data.draw(st.sampled_from(sorted(QUESTIONS)), label="question")
    topic = name.partition(" ")[0]
    ours, theirs = dict(BESIDES.get(name, {})), dict(BESIDES.get(name, {}))
    for value, (low, high, unit) in QUESTIONS[name].items():
        # Round figures too, since it is those that lie on the limits of a band.
        whole = st.integers(int(low) + 1, int(high)).map(float) if high > low + 1 else st.nothing()
        amount = data.draw(st.one_of(st.floats(low, high), whole), label=value)
        other = data.draw(st.sampled_from(sorted(UNITS[unit])), label=f"unit of {value}")
        ours[value] = f"{amount:.12f} {unit}"
        theirs[value] = f"{amount / UNITS[unit][other]:.15f} {other}"
    system = data.draw(st.sampled_from(SYSTEMS), label="system")
    assert_same(answered(topic, ours, "metric"), answered(topic, theirs, system))


def answered(topic: str, values: Mapping[str, str], system: str) -> object:
    """The answer, or the word "refused"."""
    try:
        return reckon(topic, {**values, "units": system}).answer
    except Refused:
        return "refused"


def assert_same(one: object, other: object) -> None:
    """Figures alike to nine digits, all else the same."""
    if isinstance(one, Mapping) and isinstance(other, Mapping):
        assert one.keys() == other.keys()
        for key in one.keys() - {"remark"}:  # which tells amounts in rounded figures
            assert_same(one[key], other[key])
    elif isinstance(one, list) and isinstance(other, list):
        assert len(one) == len(other)
        for each, its in zip(one, other, strict=True):
            assert_same(each, its)
    elif isinstance(one, float) and isinstance(other, (int, float)):
        assert other == pytest.approx(one, rel=1e-8, abs=1e-9)
    else:
        assert one == other


@pytest.mark.parametrize(
    ("celsius", "fahrenheit"),
    # NIST SP 811, B.9; the limits of the bands among them.
    [("18", "64.4F"), ("24", "75.2F"), ("10", "50F"), ("31", "87.8F"), ("6", "42.8 F")],
)
def test_a_temperature_is_the_same_on_either_scale(celsius: str, fahrenheit: str) -> None:
    def days(warmth: str, soil: str) -> object:
        return reckon("days", {"sealed": "2026-03-20", "celsius": warmth, "soil": soil}).answer

    assert days(celsius, celsius) == days(fahrenheit, fahrenheit)


def test_a_rate_in_pounds_wants_no_bin_more() -> None:
    # 7 kg a week fill 14 kg in 14 days, and (14 + 14) / 14 are 2.
    for rate in ("7 kg", "15.432358352941 lb", "7000 g", "1 kg a day"):
        assert reckon("bins", {"rate": rate, "capacity": "20L"}).answer["bins"] == 2


def test_the_groups_units_choose_its_spoon() -> None:
    for units in SYSTEMS:
        spoon = reckon("dose", {"mass": "2kg"}, units=units).answer["tablespoon"]
        assert spoon == ("us" if units == "us" else "metric")
    australian = reckon("dose", {"mass": "2kg", "tablespoon": "australian"}).answer
    assert australian["starter_ml"] == pytest.approx(
        float(str(australian["tablespoons"])) * 20, rel=1e-5
    )
