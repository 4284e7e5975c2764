from datetime import date

import pytest

from handlers.reading.acts import Accept, Act, Amend, Decline, Done, Later, Offer, Retract, Set
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "act"),
    [
        ("600 g not 900 sorry", Amend(mass_kg=0.6)),
        ("*1.6kg", Amend(mass_kg=1.6)),
        ("I meant bin 3", Amend(bin="bin 3")),
        ("make that 1.5 kg", Amend(mass_kg=1.5)),
        ("it was the shed not bin 3", Amend(bin="shed")),
        ("2.5 not 2kg, misread the scales", Amend(mass_kg=2.5)),
        ("scratch that", Retract()),
        ("please delete my last one", Retract()),
        ("done", Done()),
        ("shed's done", Done(bin="shed")),
        ("not now, come back to me in 3 days", Later(days=3)),
        ("remind me tomorrow", Later(days=1)),
        ("later", Later()),
        ("I'll take it", Accept()),
        ("happy to have the shed from Friday", Accept(bin="shed", on=date(2026, 6, 19))),
        ("sorry, can't take it", Decline()),
        (
            "I'm passing the shed on to Ruth on Saturday",
            Offer(bin="shed", to="ruth", on=date(2026, 6, 20)),
        ),
        ("Ruth can you take bin 3?", Offer(bin="bin 3", to="ruth")),
        ("bot set units to metric", Set(what="units", value="metric")),
        ("bot set the time zone to Europe/Lisbon", Set(what="zone", value="Europe/Lisbon")),
        ("bot use the weight habit", Set(what="habit", value="weight")),
    ],
)
def test_what_leans_on_an_earlier_message(text: str, act: Act) -> None:
    assert acts(text) == (act,)


@pytest.mark.parametrize(
    ("text", "act"),
    [("yes", Accept()), ("no", Decline()), ("about 2 kg", Amend(mass_kg=2)), ("done it", Done())],
)
def test_what_is_read_more_readily_behind_the_bot(text: str, act: Act) -> None:
    assert acts(text, after_bot=True) == (act,)


@pytest.mark.parametrize(
    "text",
    ["that's me done for the day", "scratch that itch", "I can't take it anymore",
     "pass the salt", "yes", "no",
     "I'll take the last slice", "forget it, too complicated", "later folks", "I make it 14 "
                                                                              "litres of milk"],
)  # fmt: skip
def test_small_talk_with_the_same_words(text: str) -> None:
    assert acts(text) == ()
