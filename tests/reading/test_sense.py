import pytest

from handlers.reading.message import read_message
from handlers.reading.words.asking import is_question
from handlers.reading.words.words import words_of
from tests.reading.context import group


def senses(text: str) -> list[str]:
    return [clause.sense for clause in read_message(text, group()).clauses]


@pytest.mark.parametrize(
    ("text", "sense"),
    [
        ("added 2 kg", "did"),
        ("I've put 2 kg in", "did"),
        ("I'd put in 500 g last night", "did"),
        ("I had to drain it", "did"),
        ("I'll add 2 kg tomorrow", "will"),
        ("planning to bury it", "will"),
        ("we should seal it", "will"),
        ("it needs to be drained", "will"),
        ("I didn't add any", "not"),
        ("almost added the salmon", "not"),
        ("nobody drained it", "not"),
        ("if we add more it bursts", "if"),
        ("had we added more it would smell", "if"),
        ("she said you should drain it", "said"),
        ("we always add a spoon", "habit"),
        ("you added 2 kg", "you"),
        ("did you drain it", "ask"),
        ("I reckon I put 2 kg in", "did"),
        ("not gonna lie, put 2 kg in", "did"),
    ],
)
def test_what_a_clause_claims(text: str, sense: str) -> None:
    assert sense in senses(text)


@pytest.mark.parametrize(
    ("text", "marked", "asks"),
    [
        ("how much bran for 2 kg", False, True),
        ("is white mould ok or", False, True),
        ("when will roof be ready", False, True),
        ("for a 10 L can how much", False, True),
        ("what a day", False, False),
        ("when I drained it it stank", False, False),
        ("could barely lift it", False, False),
        ("shed ready", True, False),
        ("it goes where", True, True),
        ("are onion skins a goer", False, True),
    ],
)
def test_whether_it_asks(text: str, marked: bool, asks: bool) -> None:
    norms = [word.norm for word in words_of(text)]
    assert is_question(norms, marked, frozenset()) is asks
