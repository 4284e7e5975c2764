import pytest

from handlers.reading.measures.digits import digits_value
from handlers.reading.measures.numbers import read_number
from handlers.reading.words.words import cleaned, words_of


@pytest.mark.parametrize(
    ("written", "value"),
    [
        ("1,250", 1250), ("1,1", 1.1), ("0,250", 0.25), ("1.250", 1.25), ("1/3", 1 / 3),
        ("12,345,678", 12345678), ("20:15", None), ("1/0", None), ("9" * 40, None),
    ],
)  # fmt: skip
def test_digits_are_read_in_both_conventions(written: str, value: float | None) -> None:
    assert digits_value(written) == (None if value is None else pytest.approx(value))


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("two", 2), ("twenty five", 25), ("a hundred and fifty", 150), ("two point five", 2.5),
        ("one and a half", 1.5), ("1 1/2", 1.5), ("half a", 0.5), ("a third of", 1 / 3),
        ("three quarters of", 0.75), ("a couple of", 2), ("between 1 and 2", 1.5), ("1 to 2", 1.5),
        ("1-1.5", 1.25), ("2 x 500", 1000), ("one point two five", 1.25),
        ("one point twenty five", 1.25), ("three fifty", 350), ("one twenty five", 125),
        ("4 hundred", 400), ("two, maybe three", 2.5), ("one comma two", 1.2),
        ("one dot five", 1.5), ("twelve comma seven five", 12.75), ("nought point eight", 0.8),
        ("naught comma two", 0.2), ("two, comma", 2),
    ],
)  # fmt: skip
def test_numbers_as_people_say_them(text: str, value: float) -> None:
    number = read_number(words_of(cleaned(text)), 0)
    assert number is not None
    assert number.value == pytest.approx(value)


@pytest.mark.parametrize(
    "text", ["nought", "naught for dinner", "nowt to say", "nought point", "comma two", "dot com"]
)
def test_words_that_only_stand_in_numbers_are_none(text: str) -> None:
    assert read_number(words_of(cleaned(text)), 0) is None


def test_a_range_is_vague_and_gives_its_middle() -> None:
    number = read_number(words_of("2 or 3 kg"), 0)
    assert number is not None
    assert (number.value, number.vague) == (2.5, True)
