"""A record that its teller takes back by saying that it was not done."""

import pytest

from handlers.reading.acts import Act, Drain, Layer, Retract, Seal
from handlers.reading.plans import read
from tests.reading.context import group

DRAINED, FED = Drain(volume_l=0.5, bin="shed"), Layer(mass_kg=2.0, bin="shed")


@pytest.mark.parametrize(
    ("text", "last"),
    [
        ("I didn't drain it at all", DRAINED),
        ("actually I never drained it, that was the rain barrel", DRAINED),
        ("no, I haven't added it yet", FED),
        ("oops, I didn't seal it after all", Seal(bin="shed")),
    ],
)
def test_what_was_not_done_is_struck_out(text: str, last: Act) -> None:
    assert read(text, group(in_room=True, last=last)) == (Retract(bin="shed"),)


@pytest.mark.parametrize(
    ("text", "last"),
    [
        ("I didn't drain it at all", FED),
        ("I didn't drain bin 3 though", DRAINED),
        ("I didn't add the eggs", FED),
        ("he didn't drain it", DRAINED),
        ("I didn't drain it at all", None),
    ],
)
def test_what_else_was_not_done_strikes_nothing(text: str, last: Act | None) -> None:
    said = read(text, group(in_room=True, last=last))
    assert not [one for one in said if isinstance(one, Retract)]


def test_the_barrel_for_rain_is_no_bin_called_barrel() -> None:
    said = read("that was the rain barrel", group(in_room=True, bins=("barrel",), last=DRAINED))
    assert said == ()
