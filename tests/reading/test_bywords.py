"""Records told in turns of phrase that need no score, and talk that sounds like them."""

import pytest

from tests.reading.context import acts


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("lids gone on bin 3 so the clock starts", "seal"),
        ("did the taping up on bin 3 before school", "seal"),
        ("bin 3 gone down under the plantain since Friday", "bury"),
        ("emptied the whole of bin 3 along the fence, three trenches and a bad back", "bury"),
        ("half a litre is all bin 3 parted with", "drain"),
        ("bin 3 surrendered a pint and a bit", "drain"),
        ("3 kg of bran under way in the airing cupboard", "batch"),
        ("picked up 2 kg of ready-made bran from the agri shop", "stock"),
        ("we're at 38 degrees in bin 3", "observe"),
    ],
)
def test_a_turn_of_phrase_is_told(text: str, kind: str) -> None:
    assert [act.act for act in acts(text)] == [kind]


@pytest.mark.parametrize(
    "text",
    [
        "lid went on the paint at last",
        "will the lid go on bin 3 if I push",
        "put tape around the shed for the party",
        "the shed went under the hammer for 400",
        "kids were put to bed among the toys in the shed",
        "the kitchen handed over 20 litres of paint",
        "3 kg of bran muffins cooking",
    ],
)
def test_the_same_words_of_other_things_are_not(text: str) -> None:
    assert acts(text) == ()
