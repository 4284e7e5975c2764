"""A bin is offered, taken and handed on."""

from dataclasses import replace
from datetime import date

import pytest

from handlers.reading.arranged import Plan
from handlers.reading.arrangements.communal import (
    Condition,
    Handing,
    Refusing,
    Rehanded,
    Rename,
    Retire,
    Taking,
    Withdrawing,
)
from handlers.reading.plans import plans
from tests.reading.communal.said_in import OFFERED, THURSDAY, march


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("handing the courtyard bin to Nives on Friday", ("courtyard", "Nives", march(6))),
        ("passing the shed bin on to Teodor", ("shed", "Teodor", None)),
        ("Can Nives take the shed bin on Sunday?", ("shed", "Nives", march(8))),
    ],
)
def test_a_bin_is_offered_to_somebody_unknown(
    said: str, meant: tuple[str, str, date | None]
) -> None:
    bin, to, on = meant
    assert plans(said, THURSDAY)[0] == (Handing(bin=bin, to=to, on=on),)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("I've got it now", Taking()),
        ("I can", Taking()),
        ("me!", Taking()),
        ("not me", Refusing()),
        ("sorry, I can't either", Refusing()),
        ("I'll keep it after all", Withdrawing()),
        ("never mind, I'm keeping the shed bin", Withdrawing(bin="shed")),
        ("perfect", Taking(by_name=True)),
        ("lovely, see you then", Taking(by_name=True)),
        ("it's arrived", Taking(here=True)),
        ("yep, it's in our porch", Taking(here=True)),
        ("the shed bin is here now", Taking(bin="shed", here=True)),
        ("got it back", Taking(again=True)),
        ("fetched it", Taking(again=True)),
        ("keeping it till Saturday", Rehanded(on=date(2026, 3, 7))),
        ("Bram's not back yet, keeping it till Saturday", Rehanded(on=date(2026, 3, 7))),
        (
            "yep, it's here. lid was loose, about 8 kg",
            Taking(here=True, found=Condition(words="lid was loose, about 8 kg", mass_kg=8.0)),
        ),
    ],
)
def test_bare_answers_count_while_something_is_on_offer(said: str, meant: Plan) -> None:
    assert plans(said, OFFERED)[0] == (meant,)
    if "bin" not in said:
        assert plans(said, THURSDAY)[0] == ()


@pytest.mark.parametrize(
    "said",
    [
        "the parcel has arrived",
        "it's in the oven",
        "perfect weather for it",
        "got the drill back",
        "I keep it in the fridge till Saturday",
    ],
)
def test_what_is_said_of_other_things_takes_nothing_on_offer(said: str) -> None:
    assert plans(said, OFFERED)[0] == ()


@pytest.mark.parametrize("said", ["it's here. added 2 kg of peelings to the shed"])
def test_a_record_beside_a_bin_that_came_is_left_to_the_record(said: str) -> None:
    found, rest = plans(said, OFFERED)
    assert found == (Taking(here=True),)
    assert rest.endswith("added 2 kg of peelings to the shed")


@pytest.mark.parametrize(
    "said", ["great, it's yours from Saturday", "take it over on Saturday then", "on Saturday then"]
)
def test_whoever_hands_on_a_bin_names_another_day(said: str) -> None:
    assert plans(said, replace(THURSDAY, on_handover=True))[0] == (Rehanded(on=date(2026, 3, 7)),)
    assert plans(said, THURSDAY)[0] == ()


def test_who_keeps_each_is_told_in_one_breath() -> None:
    told, _ = plans("the shed bin is mine and bin 3 is Bram's", THURSDAY)
    assert told == (Taking(bin="shed"), Handing(bin="bin 3", to="Bram"))


@pytest.mark.parametrize(
    "said",
    [
        "does Bram keep the shed bin?",
        "Bram keeps the shed bin clean",
        "Bram keeps filling the shed bin",
        "the shed bin is Bram's favourite",
        "the shed bin is mine",
        "take the shed bin off the shelf",
        "please take the lid off the shed bin",
        "let's call the shed bin men",
    ],
)
def test_what_only_sounds_like_it_hands_on_no_bin(said: str) -> None:
    told, _ = plans(said, THURSDAY)
    assert not any(isinstance(plan, Handing | Rename | Retire) for plan in told)
