"""Acts that no rule found: what is cooked, spilt or said to a neighbour is left alone."""

import pytest

from handlers.reading.acts import Observe, Unsure
from tests.reading.context import acts


@pytest.mark.parametrize(
    "text",
    [
        "Used up 2 kg of quinces, jam all evening",
        "kids went through a kilo of clementines on the ferry",
        "two crates of hay gone, the white dusty sort. wet June",
        "done, kettle's on",
        "done! see you at the match",
        "not tonight, my knees cant",
        "is there choir on Thursday or is it the concert?",
        "heavy that, what's in it",
        "the rental car smells of feet",
    ],
)
def test_words_that_name_no_bin_need_more_than_a_likeness(text: str) -> None:
    assert acts(text) == ()


