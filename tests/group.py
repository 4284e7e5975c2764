"""A group whose members say acts on days."""

from datetime import UTC, date, datetime, timedelta

from handlers import route
from handlers.answer import Answer, Turn
from handlers.reading.acts import Act
from handlers.recording import keeping
from storage import changes
from storage.book import Book
from storage.moments import local_day

BEGIN = datetime(2026, 3, 2, 18, 0, tzinfo=UTC)
"""A Monday evening in a zone that is on UTC then."""


class Group:
    """Members who say acts on days, each in its own transaction, as messages would."""

    def __init__(self, book: Book) -> None:
        self.book = book
        self.count = 0

    async def says(
        self,
        act: Act,
        *,
        who: str = "ines",
        days: int = 0,
        refers_to: str | None = None,
        event: str | None = None,
    ) -> Answer:
        self.count += 1
        at = BEGIN + timedelta(days=days, minutes=self.count)
        event = event or f"$e{self.count}"
        turn = Turn(
            book=self.book,
            event=event,
            cause=event,
            sender=who,
            at=at,
            now=at,
            today=local_day(at, self.book.room.zone),
            refers_to=refers_to,
        )
        async with self.book.db.transaction():
            await changes.meet(self.book, f"@{who}:test", who)
            answer = await route.answer(act, turn)
            await keeping.carry_out(turn, answer)
        return answer

    async def dues(self) -> dict[tuple[str, str], tuple[date, date]]:
        return {
            (due.bin.name if due.bin else "", due.what): (due.from_day, due.to_day)
            for due in await self.book.dues()
        }
