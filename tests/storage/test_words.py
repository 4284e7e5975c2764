"""No word of anybody's turns a line around, hides something, or runs on without end."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from storage import words

ANY = st.text(st.characters(), max_size=200) | st.text(
    st.sampled_from("ab \n\t\r\0\u202e\u2066\u200b\u200d\u00ad\ufeff:/<>@\ud800"), max_size=200
)
UNSEEN = {"Cc", "Cf", "Cs", "Cn"}


@pytest.mark.parametrize(
    ("said", "name"),
    [
        ("the shed", "the shed"),
        ("  the \n shed\t", "the shed"),
        ("shed\u202egnitor", "shedgnitor"),  # right-to-left override: would show “rotting”
        ("\u2066sh\u200bed\u2069", "shed"),
        ("Zo\u00eb", "Zo\u00eb"),
        ("\U0001f469\u200d\U0001f33e", "\U0001f469\u200d\U0001f33e"),  # a farmer: two signs joined
        ("https://example.org", "https example. org"),
        ("visit www.example.org", "visit www. example. org"),
        ("@ines:example.org", "@ines:example. org"),
        ("bin no.3, 1.5 L", "bin no.3, 1.5 L"),
        ("\0\u200b\u00ad", ""),
        ("x" * 100, "x" * 40),
        ("word " * 20, ("word " * 8).strip()),
    ],
)
def test_a_name(said: str, name: str) -> None:
    assert words.name(said) == name


@given(ANY)
def test_a_name_is_one_short_line_that_can_be_seen(said: str) -> None:
    name = words.name(said)
    assert len(name) <= words.LONGEST_NAME
    assert not {unicodedata.category(char) for char in name if char not in "\u200c\u200d"} & UNSEEN
    assert "\n" not in name
    assert "://" not in name
    assert words.name(name) == name
    name.encode()


@given(ANY)
def test_a_text_keeps_its_lines_and_what_can_be_seen(said: str) -> None:
    text = words.text(said)
    assert words.text(text) == text
    text.encode()
    is_plain = said.isprintable() and said.isascii() and not set(said) & set("/@.")
    if is_plain and max(map(len, said.split()), default=0) < 40:
        assert text == said


def test_a_text_is_not_read_without_end() -> None:
    assert len(words.text("a b " * 10_000)) == words.LONGEST_MESSAGE
    assert words.text("x" * 300 + " y") == "x" * 40 + " y"
