import pytest
from hypothesis import given
from hypothesis import strategies as st

from handlers.reading.words.words import READ_AT_MOST, cleaned, words_of


@pytest.mark.parametrize(
    ("text", "norms"),
    [
        ("Added 2kg", ["added", "2", "kg"]),
        ("I'll add some", ["i", "will", "add", "some"]),
        ("I’ve put it in", ["i", "have", "put", "it", "in"]),
        ("didn't", ["didnt"]),
        ("Bev's bin", ["bev", "'s", "bin"]),
        ("gonna seal it", ["going", "to", "seal", "it"]),
        ("1½ kg", ["1", "1/2", "kg"]),
        ("bone-dry", ["bone", "dry"]),
        ("1-1.5kg", ["1", "-", "1.5", "kg"]),
        ("1,250 g", ["1,250", "g"]),
        ("2026-03-05", ["2026-03-05"]),
        ("a 3 m² bed", ["a", "3", "m2", "bed"]),
        ("Käse", ["kase"]),
        ("int shed", ["in", "the", "shed"]),
        ("sour 🤮", ["sour", "☺"]),
        ("at 16h30", ["at", "16:30"]),
        ("by 18h", ["by", "18:00"]),
        ("1930hrs", ["19:30"]),
        ("at 1900 hours", ["at", "19:00"]),
        ("left for 24h", ["left", "for", "24", "h"]),
        ("for 1h30", ["for", "1", "h", "30"]),
        ("3 hours", ["3", "hours"]),
        ("this a.m.", ["this", "am"]),
        ("6 p.m. Then 2 kg", ["6", "pm", ".", "then", "2", "kg"]),
        ("on 09-03-2026", ["on", "09/03/2026"]),
    ],
)
def test_words_are_cut_and_made_plain(text: str, norms: list[str]) -> None:
    assert [word.norm for word in words_of(cleaned(text))] == norms


def test_only_the_beginning_of_a_long_text_is_read() -> None:
    assert len(cleaned("x" * (READ_AT_MOST + 1))) == READ_AT_MOST


@given(
    st.lists(st.sampled_from(["2kg", " ", "I'll", "t'shed", "½", "-", "\n", ".5", "än", "x" * 30]))
)
def test_a_word_stands_where_it_was_written(pieces: list[str]) -> None:
    text = cleaned("".join(pieces))
    words = words_of(text)
    assert [text[word.start : word.end] for word in words] == [word.text for word in words]
    assert sorted(word.start for word in words) == [word.start for word in words]
