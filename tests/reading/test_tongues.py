"""Reports in the tongues that neighbours mix in, and bins told by a colour of theirs."""

import pytest

from handlers.reading.acts import Act, Drain, Layer, Unsure
from tests.reading.context import WEDNESDAY, acts


def told(text: str, **changes: object) -> tuple[Act, ...]:
    return acts(text, **{"bins": ("green", "red"), "in_room": True, **changes})


@pytest.mark.parametrize(
    ("text", "bin", "kg"),
    [
        ("300 g do czerwonego", "red", 0.3),
        ("300 g Kaffeesatz in den grünen", "green", 0.3),
        ("medio kilo de arroz en el rojo", "red", 0.5),
        ("wrzuciłam 700 g obierek do czerwonego", "red", 0.7),
        ("j'ai mis 500 g de pain dans le vert", "green", 0.5),
        ("500 g Brot ins Grüne", "green", 0.5),
        ("am Montag 1 kg in green", "green", 1.0),
        ("w poniedziałek 1 kg do zielonego", "green", 1.0),
    ],
)
def test_a_plain_report_is_written_down(text: str, bin: str, kg: float) -> None:
    [layer] = told(text)
    assert isinstance(layer, Layer)
    assert layer.bin == bin
    assert layer.mass_kg == pytest.approx(kg)
    weekday = "montag" in text.casefold() or "poniedz" in text
    assert layer.on
    assert layer.on.isoformat() == ("2026-06-15" if weekday else "2026-06-17")


@pytest.mark.parametrize(
    "text", ["noch 300 g", "encore 300 g", "jeszcze 300 g", "hab noch 300 g dazu", "ancora 300 g"]
)
def test_more_of_the_last_puts_it_not_right(text: str) -> None:
    last = Layer(mass_kg=0.4, bin="green", materials={"mixed": 1.0}, on=WEDNESDAY.date())
    [layer] = told(text, last=last, after_bot=True)
    assert isinstance(layer, Layer)
    assert layer.bin == "green"
    assert layer.mass_kg == pytest.approx(0.3)


@pytest.mark.parametrize(
    ("text", "guess"),
    [
        ("maine 1 kg chilke green mein daale", Layer),
        ("paani nikala 200 ml", Drain),
    ],
)
def test_what_else_is_told_in_a_tongue_is_asked_about(text: str, guess: type[Act]) -> None:
    last = Layer(mass_kg=0.4, bin="green", materials={"mixed": 1.0}, on=WEDNESDAY.date())
    [act] = told(text, last=last, after_bot=True)
    assert isinstance(act, Unsure)
    assert [type(one) for one in act.guess] == [guess]


@pytest.mark.parametrize(
    "text",
    [
        "wir haben 2 kg Mehl",
        "tenemos 2 kilos de arroz",
        "voy a poner 1 kg in green",
        "ich hab gestern 1 kg Brot gegessen",
        "ich habe 500 g Brot gekauft",
        "compré 2 kg de pan",
        "el verde es mi color",
    ],
)
def test_other_talk_is_none(text: str) -> None:
    assert told(text) == ()
