"""Hurried speech: a name as a sentence of its own, the next bin asked for, slips of the verb."""

import pytest

from handlers.reading.acts import Ask, Open
from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("new bin. violet", "violet"),
        ("New bin. Old Greta.", "Old Greta"),
        ("opnd the violet bin, 20 L", "violet"),
        ("new bin. hooray", None),
        ("new bin. 20 L", None),
    ],
)
def test_the_name_of_a_new_bin(text: str, name: str | None) -> None:
    [act] = acts(text)
    assert isinstance(act, Open)
    assert act.bin == name


@pytest.mark.parametrize("text", ["shed?", "and the shed?", "what about the shed bin now?"])
def test_the_next_bin_is_asked_for_behind_an_answer(text: str) -> None:
    [act] = acts(text, after_bot=True)
    assert isinstance(act, Ask)
    assert (act.topic, act.bin) == ("bin", "shed")


@pytest.mark.parametrize("text", ["shed", "shed or big blue?", "and lunch?"])
def test_what_asks_for_no_next_bin(text: str) -> None:
    assert not any(isinstance(act, Ask) for act in acts(text, after_bot=True))
