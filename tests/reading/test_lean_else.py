"""What leans on a record by its form, and is of something else."""

from datetime import date

import pytest

from handlers.reading.acts import Amend, Later, Layer, Retract
from tests.reading.context import acts

RECORD = Layer(mass_kg=1.0, bin="big blue", materials={"vegetable": 1.0})
ROOM = {"in_room": True, "last": RECORD}


@pytest.mark.parametrize(
    "text",
    [
        "it was 3 kg, the baby",
        "it weighs 2 kg, the cat",
        "it's 30 litres, the rucksack",
        "it was 2 kg, your parcel I mean",
        "sealed it, the envelope",
        "drained it, the paddling pool",
        "took it out, my splinter",
        "it was shed, the colour",
        "Wednesday was bin day",
        "Monday was lovely",
        "yesterday actually was fun",
        "it was Tuesday, wasn't it?",
        "it was the big blue one that got away",
        "half and half, I'd say",
        "2 kg down since January",
        "scrap that idea",
        "forget the plan",
        "cancel that lunch invite",
        "cancel that, Otto found it",
        "scratch that, we got one already",
        "same again next week?",
    ],
)
@pytest.mark.parametrize("after_bot", [False, True])
def test_of_something_else(text: str, *, after_bot: bool) -> None:
    assert acts(text, after_bot=after_bot, **ROOM) == ()


@pytest.mark.parametrize(
    ("text", "right"),
    [
        ("it was 3 kg, the lot", Amend(mass_kg=3.0)),
        ("it was 3 kg, my mistake", Amend(mass_kg=3.0)),
        ("sorry, 3 kg, the scale was off", Amend(mass_kg=3.0)),
        ("it was shed, my bad", Amend(bin="shed")),
        ("it was the shed one that I filled", Amend(bin="shed")),
        ("it was 3 kg, the scale lied", Amend(mass_kg=3.0)),
        ("it was Tuesday", Amend(on=date(2026, 6, 16))),
        ("no, half", Amend(mass_kg=0.5)),
        ("scrap that", Retract()),
        ("cancel that, wrong bin", Retract()),
        ("scratch that, I counted it twice", Retract()),
    ],
)
def test_of_the_record(text: str, right: Amend | Retract) -> None:
    assert acts(text, **ROOM) == (right,)


@pytest.mark.parametrize(
    "text",
    [
        "away game on Saturday",
        "concert tomorrow",
        "exam tomorrow",
        "suitcase 2 kg, phew",
        "shared 2 kg with Ruth",
        "correction: it's at 8",
        "sorry, it starts at 7",
    ],
)
def test_plans_and_figures_of_other_things(text: str) -> None:
    assert acts(text, after_bot=len(text.split()) <= 6, **ROOM) == ()


@pytest.mark.parametrize(
    ("text", "days"),
    [("tomorrow then", 1.0), ("busy today, exam", None), ("not tonight, choir", None)],
)
def test_a_job_is_put_off(text: str, days: float | None) -> None:
    [later] = acts(text, in_room=True, after_bot=True)
    assert isinstance(later, Later)
    assert later.days == days
