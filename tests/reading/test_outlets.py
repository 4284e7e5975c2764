"""Where the book can be seen outside the room, and how it is written out."""

import pytest

from handlers.reading.acts import Ask
from handlers.reading.plans import read
from tests.reading.context import group

EXPORT, PAGE = Ask(topic="help", what="an export"), Ask(topic="help", what="a page")


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("can I get all this as a spreadsheet?", EXPORT),
        ("can you export the records?", EXPORT),
        ("how do I export everything to excel?", EXPORT),
        ("can we download our records as csv?", EXPORT),
        ("is there a csv of our bins?", EXPORT),
        ("is there a web page with the dues?", PAGE),
        ("do we have a website for all this?", PAGE),
        ("where can we see our records?", PAGE),
        ("what's the link to the board?", PAGE),
    ],
)
def test_where_all_is_seen_or_had(text: str, asked: Ask) -> None:
    assert read(text, group(in_room=True)) == (asked,)


@pytest.mark.parametrize("text", ["is there a page?", "where can I see it?"])
def test_few_words_ask_so_only_of_the_bot(text: str) -> None:
    assert read(text, group(in_room=True, after_bot=True)) == (PAGE,)
    assert PAGE not in read(text, group(in_room=True))


@pytest.mark.parametrize(
    "text",
    [
        "can I get the seating plan as a spreadsheet?",
        "where can I see the film?",
        "is there a page missing?",
        "the board meets on Friday",
        "can you download the photos?",
        "do they export bananas?",
    ],
)
def test_other_pages_and_tables_are_not_meant(text: str) -> None:
    said = read(text, group(in_room=True, after_bot=True))
    assert EXPORT not in said
    assert PAGE not in said
