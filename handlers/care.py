"""Who sees to a due: its keeper, or whoever stands in while the keeper is away."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta

from handlers.dues import TURNS
from handlers.state import look_up
from storage.absences import absences
from storage.book import Book
from storage.rows import Absence, Bin, Due


@dataclass(frozen=True, slots=True, kw_only=True)
class Care:
    """The keepers of the bins that dues are of, and who is away."""

    keepers: Mapping[Bin, str | None]
    away: frozenset[str] = frozenset()
    stand_ins: Mapping[Bin, str | None] = field(default_factory=dict)
    """Of the bins whose keeper is away: who does it meanwhile, if that is known."""

    def keeper(self, due: Due) -> str | None:
        """Whose it is: of what is of no bin or goes by turns, who it was said for or has the turn;
        else the bin's keeper.
        """
        if due.what in TURNS or (due.to_member and due.what != "hand over"):
            return due.to_member
        return self.keepers.get(due.bin) if due.bin else None

    def stand_in(self, due: Due) -> str | None:
        """Who does it in the place of a keeper who is away."""
        return self.stand_ins.get(due.bin) if due.bin else None

    def is_away(self, due: Due) -> bool:
        """Whether its keeper is away."""
        return due.what not in TURNS and self.keeper(due) in self.away

    def doers(self, due: Due) -> list[str]:
        """Who is to be told: the keeper or the stand-in, and who takes a bin that passes on."""
        own = self.stand_in(due) if self.is_away(due) else self.keeper(due)
        return [name for name in dict.fromkeys((own, due.to_member)) if name]

    def concerns(self, due: Due, member: str) -> bool:
        """Whether a due is a member's: they keep the bin, stand in for it or take it."""
        names = (self.keeper(due), self.stand_in(due), due.to_member)
        return member.casefold() in {name.casefold() for name in names if name}


async def care_of(
    book: Book,
    dues: Sequence[Due],
    today: date,
    keepers: Mapping[Bin, str | None] | None = None,
) -> Care:
    """Who sees to each of these dues; on the day a bin changes hands, who has it yet."""
    gone = {one.member: one for one in await absences(book, today, today)}
    if keepers is None:
        keepers = await _keepers(book, dues, today)
    stand_ins = {
        bin: await _stand_in(book, bin, gone[keeper], gone)
        for bin, keeper in keepers.items()
        if keeper in gone
    }
    return Care(keepers=keepers, away=frozenset(gone), stand_ins=stand_ins)


async def _keepers(book: Book, dues: Sequence[Due], today: date) -> Mapping[Bin, str | None]:
    days = {due.bin: today for due in dues}
    for due in dues:
        if due.what == "hand over" and due.from_day == today:
            days[due.bin] = today - timedelta(days=1)
    return {bin: (await look_up(book, bin, on)).keeper for bin, on in days.items() if bin}


async def _stand_in(
    book: Book, bin: Bin, absence: Absence, gone: Mapping[str, Absence]
) -> str | None:
    """Whom the keeper named; else who last had a hand in the bin and is there."""
    named = absence.stand_in
    if named and named not in gone:
        return named
    present = {member.name for member in await book.members() if member.user and member.present}
    hands = await book.hands(bin)
    return next((name for name in hands if name in present and name not in gone), None)
