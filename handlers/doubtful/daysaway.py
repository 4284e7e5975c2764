"""What a keeper answers who was asked from which day to which they are away."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta
from zoneinfo import ZoneInfo

from handlers.reading.acts import Act, Offer
from handlers.reading.arranged import Away, Plan
from handlers.reading.calendar.stretches import stretch_in
from handlers.reading.context import Context
from handlers.reading.message import read_message
from storage.book import Book
from storage.rows import Question

MOST_WORDS = 16
"""A longer message tells more than that."""


def given(words: str, wish: Act, question: Question, book: Book) -> Sequence[Act | Plan] | None:
    """The absence, and the bin offered for it; None where no days are told."""
    if not isinstance(wish, Offer):
        return None
    context = Context(at=question.asked_at, zone=ZoneInfo(book.room.zone))
    message = read_message(words, context)
    if len(message.words) > MOST_WORDS or any(one.asked for one in message.sentences):
        return None
    stretch = stretch_in(message, 0, len(message.words))
    if stretch is None or stretch.last in (None, stretch.first):
        return None
    first, last = stretch.first, stretch.last
    days = (last - first + timedelta(days=1)).days
    return [Away(first=first, last=last), replace(wish, on=first, days=days, away=None)]
