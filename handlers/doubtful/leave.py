"""What a keeper answers to one who asked for their bin."""

from dataclasses import replace
from zoneinfo import ZoneInfo

from handlers.reading.acts import Act, Offer
from handlers.reading.arrangements.wanting import leave
from handlers.reading.context import Context
from handlers.reading.message import read_message
from storage.book import Book
from storage.rows import Question


async def given(words: str, wish: Act, question: Question, book: Book) -> list[Act] | None:
    """The bin passes on, from the day that the keeper says; no acts for a no, None for neither."""
    if not isinstance(wish, Offer):
        return None
    context = Context(
        at=question.asked_at,
        zone=ZoneInfo(book.room.zone),
        bins=tuple([bin.name for bin in await book.bins()]),
        members=tuple([member.name for member in await book.members()]),
    )
    answer = leave(read_message(words, context))
    if answer is None:
        return None
    says_yes, on = answer
    return [replace(wish, on=on or wish.on)] if says_yes else []
