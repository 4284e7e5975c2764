"""How much less or more it was: no amount for itself, but a correction of the last one."""

import pytest

from handlers.reading.acts import Act, Amend, Drain, Layer, Retract
from tests.reading.context import acts

LAYER = Layer(mass_kg=3.0, bin="shed")


@pytest.mark.parametrize(
    "text",
    [
        "we used 2 kg less",
        "this week it's 4 kg less",
        "900 g minus",
        "we have 300 g of bran less",
        "500 g less than on Monday in the shed bin",
        "500 g more than on Monday in the shed bin",
        "put in 2 lb less than usual",
    ],
)
@pytest.mark.parametrize("in_room", [False, True])
def test_what_is_only_compared_is_not_written_down(text: str, in_room: bool) -> None:
    assert not acts(text, in_room=in_room)


@pytest.mark.parametrize(
    ("text", "last", "amend"),
    [
        ("500 g less", LAYER, Amend(mass_kg=2.5)),
        ("sorry, that was 1 kg less", LAYER, Amend(mass_kg=2)),
        ("it was 300 g less than I wrote", LAYER, Amend(mass_kg=2.7)),
        ("it was 300 g more than I wrote", LAYER, Amend(mass_kg=3.3)),
        ("100 ml less", Drain(volume_l=0.5), Amend(volume_l=0.4)),
        ("100 ml less", LAYER, Amend()),
        ("that was 300 g less than I said", None, Amend()),
        ("twice that", LAYER, Amend(mass_kg=6)),
        ("no, it was only half that", LAYER, Amend(mass_kg=1.5)),
    ],
)
def test_how_much_less_is_taken_off(text: str, last: Act | None, amend: Amend) -> None:
    assert acts(text, in_room=True, last=last) == (amend,)


def test_an_amount_beside_a_difference_is_the_amount() -> None:
    [layer] = acts("added 2 kg to the shed, 1 kg less than last time")
    assert isinstance(layer, Layer)
    assert layer.mass_kg == 2


@pytest.mark.parametrize("text", ["twice that", "that's twice that of Monday", "double that"])
def test_a_multiple_strikes_nothing_out(text: str) -> None:
    assert not any(isinstance(act, Retract) for act in acts(text, in_room=True, last=LAYER))
