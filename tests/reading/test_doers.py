"""Who did it: the member told of, the sender where nobody else is."""

import pytest

from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    [
        "Ruth told me she had put 2 kg of peelings in bin 3",
        "for the record (and Ruth's conscience): she put 2 kg of fish skins in bin 3",
        "2 kg of peelings were added to bin 3 by Miss Ruth",
        "yesterday has Ruth 2,4 kg herring heads brought and in bin 3 thrown",
        "Ruth puso 2 kg de pan en bin 3",
        "Ruth the early bird, she added 2 kg to bin 3",
        "Ruth added 2 kg to bin 3 last night",
        "Ruth throw 2 kg of noodles inside bin 3",
        "please note Ruth bin 3 700 g of peelings",
        'Ruth says "2 kg in bin 3, all peel"',
        "Ruth, which is a strong woman, has put 2 kg of leeks in bin 3",
        "Ruth (her with the accordion) poured 400 ml out of bin 3",
        "500 g of mash to bin 3, from Ruth",
        "Ruth's went and sealed bin 3",
    ],
)
def test_a_member_told_of_is_the_doer(text: str) -> None:
    assert [act.member for act in acts(text)] == ["ruth"]  # type: ignore[union-attr]


@pytest.mark.parametrize(
    "text",
    [
        "Ruth, I added 2 kg to bin 3",
        "thanks Ruth! added 2 kg to bin 3",
        "added 2 kg to bin 3, sorry Ruth",
        "Ruth thanks for the scales, added 2 kg of peelings to bin 3",
        "Ruth and Ines were out so I added 2 kg to bin 3",
        "kofi here, added 2 kg to bin 3",
    ],
)
def test_one_who_is_only_spoken_to_is_not(text: str) -> None:
    assert [act.member for act in acts(text)] == [None]  # type: ignore[union-attr]


@pytest.mark.parametrize("text", ["that was ruths not mine", "that was ruth's not mine, sorry"])
def test_a_correction_names_whose_it_was(text: str) -> None:
    (act,) = acts(text)
    assert act.member == "ruth"  # type: ignore[union-attr]
