"""What is answered to the dues of ground that was filled; other ground and plants are no answer."""

import pytest

from handlers.reading.acts import Act, Done
from handlers.reading.arranged import Plan
from handlers.reading.plans import read
from tests.reading.context import group


def told(text: str, **more: object) -> tuple[Act | Plan, ...]:
    context = group(
        bins=("shed", "blue"), members=("ines", "bram"), sender="bram", in_room=True, **more
    )
    return read(text, context)


@pytest.mark.parametrize(
    ("text", "done"),
    [
        ("nothing dug there", Done(what="cover")),
        ("looked, nothing's been at it", Done(what="cover")),
        ("no sign of digging so far", Done(what="cover")),
        ("it's undisturbed", Done(what="cover")),
        ("fox had a go at mine, covered it with a slab", Done(what="cover")),
        ("something dug there, put a board over it", Done(what="cover")),
        ("planted beans in mine", Done(what="plant")),
        ("sown carrots on it", Done(what="plant")),
        ("I've planted the courgettes where blue went", Done(what="plant", bin="blue")),
        ("mine's planted", Done(what="plant")),
        ("not planting there this year", Done(what="plant")),
    ],
)
def test_what_was_done_with_the_ground(text: str, done: Done) -> None:
    assert told(text) == (done,)


@pytest.mark.parametrize(
    ("text", "done"),
    [
        ("no digging, all fine", Done(what="cover")),
        ("not dug up", Done(what="cover")),
        ("put a slab over it", Done(what="cover")),
        ("planted!", Done(what="plant")),
    ],
)
def test_in_few_words_it_is_an_answer(text: str, done: Done) -> None:
    assert told(text, after_bot=True) == (done,)
    assert told(text) == ()


@pytest.mark.parametrize(
    "text",
    [
        "nothing dug up the road yet",
        "planted some lettuce in the pots",
        "planted out the tomatoes today",
        "put a lid on it",
        "the dog covered it with kisses",
        "shall we plant beans there?",
        "planted beans in mine?",
        "sowed the peppers in the shed",
        "he planted an idea in my head",
        "put another layer on it",
        "I dug over the bed by the gate",
        "drained blue, 200 ml, fox had a go at mine, covered it with a slab",
    ],
)
def test_other_ground(text: str) -> None:
    assert not any(isinstance(act, Done) for act in told(text))
