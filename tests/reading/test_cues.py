"""Cues are heard wherever they stand, whatever stands round them."""

from hypothesis import given
from hypothesis import strategies as st

from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.numberwords import MEASURE_NUMBERS, TEENS
from handlers.reading.words.cues import Cues
from handlers.reading.words.words import words_of

_LETTERS = st.text(alphabet="abü ", min_size=1, max_size=6)


@given(cues=st.dictionaries(st.integers(0, 4), st.lists(_LETTERS, max_size=4)), text=_LETTERS)
def test_a_reader_is_heard_where_one_of_its_cues_stands(
    cues: dict[int, list[str]], text: str
) -> None:
    plainly = {reader for reader, each in cues.items() if any(cue in text for cue in each)}
    assert Cues(cues).heard(text) == plainly


def test_every_word_of_a_number_still_begins_one() -> None:
    """A number is looked for only behind these words, so each must be read as one somewhere."""
    behind = (
        " kg",
        " of kg",
        " kilos",
        " a kilo",
        " tres kilos",
        " eight",
        " point eight",
        " two and three",
    )
    for word in sorted(MEASURE_NUMBERS | TEENS):
        assert any(read_number(words_of(word + rest), 0) for rest in behind), word
