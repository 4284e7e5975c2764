"""A rota is agreed, changed and asked about."""

from dataclasses import replace
from datetime import date

import pytest

from handlers.reading.acts import Ask, Set
from handlers.reading.arranged import Plan
from handlers.reading.arrangements.communal import (
    Rearranged,
    Rota,
)
from handlers.reading.plans import plans
from handlers.reading.read import read
from tests.reading.communal.said_in import THURSDAY, march


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("rota for the shed bin: Ines, Bram and Mei, weekly", ("keep", 7, "shed", None)),
        ("draining rota for bin 3: Ines, Bram, Mei, every 3 days", ("drain", 3, "bin 3", None)),
        ("Ines, Bram and Mei take turns to drain the shed bin, a week each",
         ("drain", 7, "shed", None)),
        ("rota for carrying Gertie: Ines, Bram, Mei, fortnightly from Monday",
         ("carry", 14, "Gertie", march(9))),
        ("rota to drain the bins: Ines, Bram, Mei, every other day", ("drain", 2, None, None)),
    ],
)  # fmt: skip
def test_a_rota_is_read(said: str, meant: tuple[str, int, str | None, date | None]) -> None:
    duty, days, bin, start = meant
    wanted = Rota(
        members=("Ines", "Bram", "Mei"),
        days=days,
        duty=duty,  # type: ignore[arg-type]
        bin=bin,
        start=start,
    )
    assert plans(said, THURSDAY)[0] == (wanted,)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("add me after Bram", Rearranged(member="Ines", place="after", other="Bram", maybe=True)),
        (
            "put Mei between me and Bram",
            Rearranged(member="Mei", place="after", other="Ines", maybe=True),
        ),
        ("make it three weeks each", Rearranged(days=21, maybe=True)),
    ],
)
def test_behind_our_words_a_rota_is_changed_in_few_words(said: str, meant: Plan) -> None:
    assert plans(said, replace(THURSDAY, after_bot=True))[0] == (meant,)
    assert plans(said, THURSDAY)[0] == ()


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("when's my turn?", Ask(topic="custody", what="turn", member="Ines")),
        ("is it Bram's turn?", Ask(topic="custody", what="turn", member="Bram")),
        (
            "am I on next week?",
            Ask(topic="custody", what="turn", member="Ines", on=march(9)),
        ),
        (
            "when do I have the shed bin next?",
            Ask(topic="custody", what="turn", member="Ines", bin="shed"),
        ),
        ("when do I hand it over?", Ask(topic="custody", what="hand over")),
        ("who do I pass bin 3 on to?", Ask(topic="custody", what="hand over", bin="bin 3")),
        ("when does it go back?", Ask(topic="custody", what="hand over")),
        ("when's my turn on the swings?", None),
        ("it's my turn to cook", None),
        ("when do I hand in the form?", None),
        ("when does the shop go back to normal?", None),
    ],
)
def test_a_members_own_turn_is_asked_for(said: str, meant: Ask | None) -> None:
    found, _ = plans(said, replace(THURSDAY, in_room=True))
    assert found == ((meant,) if meant else ())


@pytest.mark.parametrize("said", ["put me on the rota", "ten days per keeper", "stop the rota"])
def test_by_the_reading_contract_a_rota_is_a_setting(said: str) -> None:
    assert read(said, THURSDAY) == (Set(what="rota", value=said),)
