"""May this go in: the answer first, the reason, and a caution where harm is possible."""

import pytest

from handlers.reading.acts import Ask
from storage.database import Database
from tests.group import Group
from tests.room import TalkingRoom


@pytest.mark.parametrize(
    ("what", "begins", "caution"),
    [
        # Footer 2013 ch. 6: meat goes in, mouldy food does not; the rest is common practice.
        ("raw chicken", "Yes, meat and fish", "does not make meat safe"),
        ("orange peel", "Yes, citrus", ""),
        ("lamb bones", "With care, big bones", ""),
        ("mouldy bread", "No, mouldy food", "Do not sniff mould"),
        ("dog poo", "No, pet waste", ""),
    ],
)
async def test_the_verdict_comes_first(group: Group, what: str, begins: str, caution: str) -> None:
    answer = await group.says(Ask(topic="allowed", what=what))
    lines = answer.say.split("\n")
    assert lines[0].startswith(begins)
    assert len(lines) == (2 if caution else 1)
    assert caution in lines[-1]
    assert answer.why


async def test_words_that_no_table_has_go_by_their_kind(group: Group) -> None:
    said = (await group.says(Ask(topic="allowed", what="zarzuela", materials={"fish": 1.0}))).say
    assert said.startswith("Yes, meat and fish")


async def test_what_nobody_knows_gets_the_rule(group: Group) -> None:
    answer = await group.says(Ask(topic="allowed", what="a thingummy"))
    assert "anything that was food goes in" in answer.say
    assert not answer.why


@pytest.mark.parametrize(
    ("said", "answered"),
    [
        ("how much rice can go in at once?", "No source I know says how much of it is too much"),
        ("how much meat can I add at a time?", "want more starter"),
        ("what's the most oil I can add?", "a spoonful on food is fine"),
        # fish at 0.575 kg/L, loose, in a bucket 29 cm wide: 5.3 cm and 7.9 cm deep
        ("is 2 kg of fish too much in one go?", "about 1 layer in an ordinary bucket"),
        ("is 3 kg of fish too much in one go?", "about 2 layers in an ordinary bucket"),
        ("is 40 kg of fish too much for a 20 L bin?", "Yes: a bin of 20 L holds about"),
    ],
)
async def test_how_much_of_a_food_is_too_much(db: Database, said: str, answered: str) -> None:
    room = TalkingRoom(db)
    (answer,) = await room.says(said)
    assert answered in answer.body
    assert await room.standing() == []
