"""The bot asks before writing down, and a short answer settles it."""

import pytest

from handlers.doubtful import unsure
from handlers.reading.acts import Amend, Layer, Observe, Unsure
from tests.group import Group

GUESS = Unsure(guess=(Layer(mass_kg=2.0, materials={"meat": 1.0}, bin="shed"),))


async def test_one_short_question_and_nothing_written_down(group: Group) -> None:
    answer = await group.says(GUESS)
    assert answer.say == "Shall I write down 2 kg in the shed bin?"
    assert await group.book.entries() == []


@pytest.mark.parametrize("words", ["yes", "Yes please", "👍", "ok", "yep!"])
async def test_a_bare_yes_stands_for_what_was_guessed(group: Group, words: str) -> None:
    await group.says(GUESS)
    question = await group.book.question("ines")
    assert question
    assert await unsure.settled(words, question, group.book) == list(GUESS.guess)


@pytest.mark.parametrize("words", ["no", "nope", "No thanks"])
async def test_a_bare_no_leaves_it(group: Group, words: str) -> None:
    await group.says(GUESS)
    question = await group.book.question("ines")
    assert question
    assert await unsure.settled(words, question, group.book) == []


@pytest.mark.parametrize(
    "words",
    [
        "",
        "no idea what you are talking about",
        "lovely day",
        "added 3 kg of rice today",
        "do I drain it?",
        "do we open it",
        "sure about that?",
        "no, it was Friday",
        "right then, Friday",
    ],
)
async def test_other_words_are_no_answer(group: Group, words: str) -> None:
    await group.says(GUESS)
    question = await group.book.question("ines")
    assert question
    assert await unsure.settled(words, question, group.book) is None


@pytest.mark.parametrize("words", ["no, 3 kg", "no wait 3 kg", "sorry, it was 3 kg"])
async def test_another_amount_is_of_what_was_asked(group: Group, words: str) -> None:
    await group.says(GUESS)
    question = await group.book.question("ines")
    assert question
    [layer] = await unsure.settled(words, question, group.book) or []
    assert layer == Layer(mass_kg=3.0, materials={"meat": 1.0}, bin="shed")


@pytest.mark.parametrize("words", ["yard", "the yard one", "Yard bin", "in the yard"])
async def test_a_bins_bare_name_says_which(group: Group, words: str) -> None:
    await group.says(Layer(mass_kg=1.0, bin="shed"), who="bram")
    await group.says(Layer(mass_kg=1.0, bin="yard"), who="nives")
    await group.says(Layer(mass_kg=1.0))
    question = await group.book.question("ines")
    assert question
    assert await unsure.settled(words, question, group.book) == [Amend(bin="yard")]


async def test_nothing_guessed_is_nothing_asked(group: Group) -> None:
    assert (await group.says(Unsure())).say == ""


@pytest.mark.parametrize(
    ("seen", "words"),
    [
        (Observe(celsius=12.0, bin="shed"), "what you saw (12 °C) in the shed bin"),
        (Observe(signs=("white_mould",), ph=3.9), "what you saw (white mould and pH 3.9)"),
    ],
)
async def test_what_was_measured_is_asked_about(group: Group, seen: Observe, words: str) -> None:
    assert (await group.says(Unsure(guess=(seen,)))).say == f"Shall I write down {words}?"
