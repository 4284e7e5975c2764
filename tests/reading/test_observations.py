import pytest

from handlers.practice.signs import Sign
from handlers.reading.acts import Observe
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("white fluff on bin 3", ["white_mould"]),
        ("bin 3 has blue-green mould", ["green_mould"]),
        ("bin 3 smells like pickles", ["sour"]),
        ("bin 3 reeks", ["rotten"]),
        ("bin 3 smells of ammonia", ["ammonia"]),
        ("bin 3 smells like a brewery", ["alcohol"]),
        ("nothing came out of bin 3", ["no_liquid"]),
        ("maggots in bin 3", ["insects"]),
        ("rats have been at bin 3", ["rodents"]),
        ("bin 3 is bulging", ["gas"]),
        ("bin 3 is bone dry", ["dry"]),
        ("bin 3: white mould, no flies, good sour smell", ["white_mould", "sour"]),
    ],
)
def test_what_was_seen_or_smelt(text: str, signs: list[Sign]) -> None:
    (seen,) = acts(text)
    assert isinstance(seen, Observe)
    assert (seen.bin, list(seen.signs)) == ("bin 3", signs)


@pytest.mark.parametrize(
    ("text", "celsius", "ph"),
    [
        ("bin 3 is at 24C", 24, None),
        ("pH of bin 3 is 3.7", None, 3.7),
        ("the thermometer in bin 3 says 18.5", 18.5, None),
    ],
)
def test_what_was_measured(text: str, celsius: float | None, ph: float | None) -> None:
    (seen,) = acts(text)
    assert isinstance(seen, Observe)
    assert (seen.celsius, seen.ph, seen.signs) == (celsius, ph, ())


@pytest.mark.parametrize(
    "text",
    ["it's freezing in the shed", "flies in the shed again", "the shed stinks of paint",
     "20 degrees in the shed",
     "mould on the bathroom ceiling", "my kefir smells sour", "mouldy bread again",
    "no flies on bin 3"],
)  # fmt: skip
def test_what_is_said_of_other_things(text: str) -> None:
    assert acts(text) == ()
