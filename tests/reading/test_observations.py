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
        ("bin 3: cotton wool growing on top", ["white_mould"]),
        ("dusting of snow in bin 3", ["white_mould"]),
        ("green velvet on top of bin 3", ["green_mould"]),
        ("turquoise mould in bin 3", ["green_mould"]),
        ("moho verde en bin 3", ["green_mould"]),
        ("black spots in bin 3", ["black_mould"]),
        ("bin 3 smells like pickled onions", ["sour"]),
        ("bin 3 huele a vinagre", ["sour"]),
        ("bin 3 smells like a dead mouse", ["rotten"]),
        ("bin 3 smells of rotten cabbage", ["rotten"]),
        ("bin 3 smells like bad eggs", ["rotten"]),
        ("bin 3 stinks to high heaven", ["rotten"]),
        ("mabaho ang bin 3", ["rotten"]),
        ("bin 3 smells like a litter tray", ["ammonia"]),
        ("bin 3 smells of nail varnish remover", ["alcohol"]),
        ("bin 3 smells like a pub carpet", ["alcohol"]),
        ("bin 3 is a slurry inside", ["wet"]),
        ("bin 3's tap is bone dry", ["no_liquid"]),
        ("nothing at the tap of bin 3", ["no_liquid"]),
        ("not a dribble from bin 3", ["no_liquid"]),
        ("overflowing tap on bin 3", ["much_liquid"]),
        ("fungus gnats round bin 3", ["insects"]),
        ("asticots dans bin 3", ["insects"]),
        ("mouse droppings round bin 3", ["rodents"]),
        ("something gnawed a hole in bin 3", ["rodents"]),
        ("bin 3 is tight as a drum", ["gas"]),
        ("bin 3's lid popped off", ["gas"]),
        ("bin 3 is steaming", ["warm"]),
        ("bin 3 is frozen solid", ["cold"]),
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
     "my yoghurt smells sour", "the tap in the bathroom is dripping",
     "something smells fishy about that invoice", "popping round to the shed later",
    "no flies on bin 3"],
)  # fmt: skip
def test_what_is_said_of_other_things(text: str) -> None:
    assert acts(text) == ()
