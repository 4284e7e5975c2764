"""A favour asked of a neighbour for one deed, and the yes to it; a bin passed on is neither."""

from datetime import date

import pytest

from handlers.reading.acts import Act
from handlers.reading.arranged import Favour, Plan, Promise
from handlers.reading.arrangements.assenting import assents
from handlers.reading.context import Context
from handlers.reading.message import read_message
from handlers.reading.plans import read
from tests.reading.context import group


def room() -> Context:
    return group(
        bins=("shed", "blue", "green"),
        members=("ines", "bram", "zoe"),
        sender="bram",
        in_room=True,
    )


def told(text: str) -> list[Act | Plan]:
    return list(read(text, room()))


@pytest.mark.parametrize(
    ("text", "favour"),
    [
        ("I can't do the draining today, Zoe can you?", Favour(deed="drain", to="zoe")),
        ("can't seal today, back's gone. Zoe can you?", Favour(deed="seal", to="zoe")),
        ("can't today, Zoe can you do the shed one?", Favour(bin="shed", to="zoe")),
        ("Zoe, would you mind draining mine while I'm out", Favour(deed="drain", to="zoe")),
        ("Zoe please empty mine today", Favour(deed="drain", to="zoe")),
        ("could you bury the blue one Zoe, I'm in bed", Favour(deed="bury", bin="blue", to="zoe")),
        ("can anyone drain mine tomorrow?", Favour(deed="drain")),
        ("who'll seal the green bin?", Favour(deed="seal", bin="green")),
        ("who's burying the green bin?", Favour(deed="bury", bin="green")),
        ("anyone free to drain Ines's this week?", Favour(deed="drain", whose="ines")),
        ("can someone cover for me?", Favour(cover=True)),
    ],
)
def test_a_favour_is_asked(text: str, favour: Favour) -> None:
    assert told(text) == [favour]


@pytest.mark.parametrize(
    ("text", "promise"),
    [
        ("I'll do Zoe's", Promise(whose="zoe")),
        ("I'll drain the blue bin for Zoe tonight", Promise(deed="drain", bin="blue", whose="zoe")),
        (
            "I'll seal the blue bin on Saturday",
            Promise(deed="seal", bin="blue", on=date(2026, 6, 20)),
        ),
        ("I'll do Zoe's till Friday", Promise(whose="zoe", until=date(2026, 6, 19))),
        (
            "I can do the green bin from Friday",
            Promise(bin="green", on=date(2026, 6, 19)),
        ),
        ("I'm covering for Ines this week", Promise(whose="ines", cover=True)),
        ("Zoe's doing mine this week", Promise(whose="bram", by="zoe", cover=True)),
        ("Ines can't, Zoe will", Promise(by="zoe")),
    ],
)
def test_it_is_promised(text: str, promise: Promise) -> None:
    assert told(text) == [promise]


@pytest.mark.parametrize(
    "text",
    [
        "Zoe can you take the shed bin?",
        "Zoe, can you drain the pasta?",
        "I can't drain the pasta, Zoe can you?",
        "can't empty the dishwasher today, Zoe can you?",
        "I couldn't seal the envelope, anyone free to do it?",
        "Zoe can you do the washing up?",
        "who has the shed bin?",
        "who drained the shed bin?",
        "I'll do Zoe's birthday cake",
        "I'll take the blue bin",
        "Zoe's doing well this week",
        "Zoe will be late",
        "I drained Zoe's for her",
        "can you bury a whole fish?",
    ],
)
def test_other_things_are_no_favour(text: str) -> None:
    assert not [act for act in told(text) if isinstance(act, Favour | Promise)]


def test_what_is_told_beside_it_is_heard() -> None:
    acts = told("put 2 kg of peelings in blue. Zoe can you drain the shed?")
    assert [type(act).__name__ for act in acts] == ["Favour", "Layer"]


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("yes, will do", True),
        ("sure, after work", False),
        ("yep", False),
        ("I will", True),
        ("me", True),
        ("on it", True),
        ("no problem, I'll do it tonight", True),
        ("leave it with me", True),
        ("happy to", False),
        ("👍", False),
        ("yep, will do it tomorrow morning", True),
        ("sure, about 6", False),
        ("I'll do it, no worries. get well soon", True),
        ("yes please", None),
        ("I'll do it if I have time", None),
        ("I'll come over for a beer", None),
        ("yes it was", None),
        ("sorry can't", None),
        ("sure you can?", None),
        ("me neither", None),
        ("I will never forget that", None),
        ("tonight", None),
    ],
)
def test_who_says_yes(text: str, says: bool | None) -> None:
    assert assents(text, read_message(text, room())) is says
