"""The sides of a trench, as they are told and as it is asked what they hold."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.practice.figure import Refused
from handlers.practice.trench import trench, trench_holds_l
from handlers.reading.acts import Ask
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "sides"),
    [
        ("trench for 15 L, 40 cm wide", (None, 0.4, None)),
        ("how big a trench for 15 L, 40 cm wide and 20 deep?", (None, 0.4, 0.2)),
        ("a trench 3 m long, 40 cm wide and 35 cm deep, how much fits?", (3, 0.4, 0.35)),
        ("how long a trench for 15 L with a depth of 35 cm?", (None, None, 0.35)),
        ("I dug a hole 60 cm across and 30 cm deep, is that enough for 15 L?", (0.6, 0.6, 0.3)),
        ("how deep a trench for 15 L?", (None, None, None)),
        ("I've a trench of 1 m by 30 cm, 30 cm deep, how much goes in?", (1, 0.3, 0.3)),
        ("how much fits in a trench of 5 x 2 ft?", (1.524, 0.6096, None)),
        ("is a hole 50 cm x 50 cm x 40 cm enough for 15 L?", (0.5, 0.5, 0.4)),
        ("how much fits in a hole 2 ft square?", (0.6096, 0.6096, None)),
        ("how much fits in a trench of 2 m x 30 x 40 cm?", (2, 0.3, 0.4)),
        ("dug the trench, 1.5 m x 30 x 40 cm", (1.5, 0.3, 0.4)),
        ("the trench is 2 m x 30 cm", (2, 0.3, None)),
    ],
)
def test_sides_said(text: str, sides: tuple[float | None, ...]) -> None:
    [act] = acts(text, in_room=True)
    assert isinstance(act, Ask)
    assert (act.length_m, act.width_m, act.depth_m) == pytest.approx(sides)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("how long a trench for the shed and bin 3 together?", {"bins": ("shed", "bin 3")}),
        ("one trench for the shed and for bin 3, how long?", {"bins": ("shed", "bin 3")}),
        ("how long a trench for both bins?", {"each": "both"}),
        ("how long a trench for 15 L, there are badgers?", {"animals": True}),
        ("how long a trench for 15 L, no dogs here?", {}),
        ("how long a trench for 15 L under 20 cm of cover?", {"cover_m": pytest.approx(0.2)}),
        ("trench for 15 L under 20 cm of soil?", {"cover_m": pytest.approx(0.2)}),
        ("how long a trench for half the shed bin?", {"bin": "shed", "what": "half of it"}),
        ("how long a trench for the shed when it's full?", {"bin": "shed", "what": "full"}),
        ("how long a trench once the shed is full?", {"bin": "shed", "what": "full"}),
        ("how long a trench for the shed full of fish?", {"bin": "shed"}),
        ("when is the shed full and how long a trench for it?", {"bin": "shed"}),
        ("how long a trench for the shed, it's not full?", {"bin": "shed"}),
        ("how long a trench for the shed bin, it's 80 % full?", {"bin": "shed"}),
    ],
)
def test_what_goes_into_a_trench_and_lies_over_it(text: str, said: dict[str, object]) -> None:
    [act] = acts(text, in_room=True)
    assert isinstance(act, Ask)
    told: dict[str, object] = {
        "bins": act.bins,
        "each": act.each,
        "animals": act.animals,
        "cover_m": act.cover_m,
    }
    told |= {"bin": act.bin if "bin" in said else None, "what": act.what}
    assert {name: value for name, value in told.items() if value} == said


@given(
    length=st.floats(0.2, 4),
    width=st.floats(0.1, 1),
    depth=st.floats(0.2, 1),
    parts=st.floats(1, 4),
)
def test_what_a_trench_holds_wants_that_trench(
    length: float, width: float, depth: float, parts: float
) -> None:
    litres = trench_holds_l(length, width, depth, soil_parts=parts)
    dug = trench(litres, width_m=width, depth_m=depth, soil_parts=parts)
    assert dug.length_m == pytest.approx(length)


def test_a_trench_as_no_spade_digs_it_is_refused() -> None:
    with pytest.raises(Refused):
        trench_holds_l(1, 0.3, 9)
