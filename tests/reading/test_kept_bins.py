"""Bins that are called by who keeps them."""

import pytest

from handlers.reading.message import read_message
from tests.reading.context import group

KEPT = (("ines", "shed"), ("ruth", "big blue"), ("Dev", "bin 3"), ("Dev", "Tall Paul"))


def named(text: str, sender: str = "ines") -> list[str | None]:
    context = group(members=("ines", "kofi", "ruth", "Dev"), sender=sender, kept=KEPT, in_room=True)
    return [ref.name for ref in read_message(text, context).bins]


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("drained Ruth's", ["big blue"]),
        ("drained Ruth's, 400 ml", ["big blue"]),
        ("sealed Ruth's yesterday", ["big blue"]),
        ("drained ruths too", ["big blue"]),
        ("I did Ruth’s already", ["big blue"]),
        ("1 kg of peel in Ruth's bin", ["big blue"]),
        ("300 ml out of Ruth's", ["big blue"]),
        ("Ruth's is done", ["big blue"]),
        ("done mine and Ruth's", ["shed", "big blue"]),
        ("sealed my bin", ["shed"]),
        ("drained Ines' as well", ["shed"]),
        ("drained Ines's", ["shed"]),
        ("drained Dev's", ["Dev's"]),
    ],
)
def test_a_keepers_name_is_their_bin(text: str, names: list[str]) -> None:
    assert named(text) == names


@pytest.mark.parametrize(
    "text",
    [
        "drained Ruth's pasta",
        "2 kg of peelings from Ruth's",
        "did Ruth's shopping",
        "a friend of mine is here",
        "Ruth's done her homework",
        "emptied Ruth's caddy",
        "dinner at Ruth's",
        "drained Kofi's",
        "buried mine last year",
        "sealed mine with wax",
        "Kofi, can you do mine while I'm away?",
        "could somebody drain Ruth's",
        "mine's empty, threw it all on the compost last week",
        "they had my bin over again, the wheelie one",
    ],
)
def test_what_else_a_keeper_owns_is_no_bin_of_theirs(text: str) -> None:
    assert not {"shed", "big blue"} & set(named(text))


def test_mine_is_left_open_where_the_sender_keeps_several() -> None:
    assert named("drained mine", sender="Dev") == []
