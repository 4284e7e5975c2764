"""What people ask about themselves: read where it is said to the bot, and says nothing else."""

import pytest

from handlers.reading.acts import Act, Ask, Forget
from tests.reading.context import acts
from tests.reading.corpus import FOLDER, messages

KNOWN = Ask(topic="me")
ASKED: dict[str, Act] = {
    "what do you know about me?": KNOWN,
    "Pailkeeper, what do you know about me?": KNOWN,
    "what data do you keep about me": KNOWN,
    "What have you got on me?": KNOWN,
    "what have you stored about me please": KNOWN,
    "what did you write down about me": KNOWN,
    "what is kept about me?": KNOWN,
    "what's stored about me?": KNOWN,
    "which data is there on me?": KNOWN,
    "can you tell me what you know about me": KNOWN,
    "tell me everything you know about me": KNOWN,
    "show me my data": KNOWN,
    "bot, forget me": Forget(),
    "please forget me": Forget(),
    "Forget me, pailkeeper.": Forget(),
    "delete my data": Forget(),
    "erase everything you know about me": Forget(),
    "remove me from the book": Forget(),
    "delete all my data from your records please": Forget(),
    "pailkeeper, forget me for good": Forget(sure=True),
    "forget me forever": Forget(sure=True),
}
NOT_ASKED = (
    "don't forget me",
    "do not forget me for good",
    "never forget me",
    "please don't delete my data",
    "forget me not",
    "forget me nots are out in the yard",
    "forget about it",
    "forget it",
    "forget me if I come late on Friday",
    "did you forget me?",
    "you forget me every time",
    "what do you know about bokashi",
    "what do you know about me and the shed bin",
    "what do you know, about time",
    "you know about me",
    "do you know about me being away?",
    "what do they know about me",
    "delete my last message",
    "remove me from the rota",
    "delete the data",
    "my data plan ran out",
    "wipe my nose",
)


@pytest.mark.parametrize("said", ASKED)
def test_what_people_ask_about_themselves(said: str) -> None:
    assert acts(said, to_bot=True) == (ASKED[said],)


@pytest.mark.parametrize("said", ASKED)
def test_it_is_no_act_of_the_reading_contract(said: str) -> None:
    assert not [act for act in acts(said) if act in (KNOWN, Forget(), Forget(sure=True))]


def asks_about_oneself(said: str) -> bool:
    found = acts(said, to_bot=True)
    return any(isinstance(act, Forget) or act == KNOWN for act in found)


@pytest.mark.parametrize("said", NOT_ASKED)
def test_talk_that_sounds_like_it_is_none(said: str) -> None:
    assert not asks_about_oneself(said)


def test_no_labelled_message_is_one() -> None:
    bodies = [row["body"] for file in FOLDER.glob("*.jsonl") for row in messages(file.name)]
    assert len(bodies) > 2000
    assert [body for body in bodies if asks_about_oneself(body)] == []


@pytest.mark.parametrize(
    ("said", "whose"),
    [
        ("pailkeeper, forget Lea", "Lea"),
        ("forget lea for good", "Lea"),
        ("please forget everything about Lea", "Lea"),
        ("pailkeeper, forget Bram Jansen for good please", "Bram Jansen"),
        ("forget Bram", "Bram Jansen"),
        ("forget Lea's rice", None),
        ("forget Jansen", "Bram Jansen"),
        ("forget it", None),
        ("forget Ines", None),  # the sender
        ("don't forget Lea", None),
        ("delete Lea's layer", None),
    ],
)
def test_only_a_member_can_be_forgotten_in_anothers_place(said: str, whose: str | None) -> None:
    found = acts(said, to_bot=True, members=("Ines", "Bram Jansen", "Lea"), sender="Ines")
    assert [act.whose for act in found if isinstance(act, Forget)] == ([whose] if whose else [])
