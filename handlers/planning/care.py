"""Who sees to a due: its keeper, or whoever stands in while the keeper is away."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, timedelta

from handlers.people import is_same
from handlers.planning.dues import TURNS
from handlers.sharing.promised import helpers_of
from handlers.state import look_up
from storage.absences import absences
from storage.book import Book
from storage.rows import Absence, Bin, Due


@dataclass(frozen=True, slots=True, kw_only=True)
class Care:
    """The keepers of the bins that dues are of, who is away, and who stands in."""

    today: date
    keepers: Mapping[Bin, str | None]
    absences: Sequence[Absence] = ()
    stand_ins: Mapping[tuple[Bin, date], str | None] = field(default_factory=dict)
    helpers: Mapping[tuple[Bin, str], str] = field(default_factory=dict)
    """Who promised which deed on a bin in its keeper's place."""
    discreet: bool = False
    """Where strangers may read along, it is not said that a home stands empty."""

    def keeper(self, due: Due) -> str | None:
        """Whose it is: of what is of no bin or goes by turns, who it was said for or has the turn;
        else the bin's keeper.
        """
        if due.what in TURNS or (due.to_member and due.what != "hand over"):
            return due.to_member
        return self.keepers.get(due.bin) if due.bin else None

    def first_day(self, due: Due) -> date:
        """From when it is to be done, seen from today."""
        return max(due.from_day, due.put_off_until or due.from_day, self.today)

    def is_away(self, due: Due) -> bool:
        """Whether its keeper is away when it is to be done, and not back before its last day."""
        keeper, first = self.keeper(due), self.first_day(due)
        if keeper is None or due.what in TURNS or not is_gone(self.absences, keeper, first):
            return False
        return first == self.today or is_gone(self.absences, keeper, due.to_day)

    def stand_in(self, due: Due) -> str | None:
        """Who does it in the place of a keeper who is away, if that is known."""
        if not self.is_away(due):
            return None
        first = self.first_day(due)
        if due.bin is None:
            return next(iter(_named(self.absences, self.keeper(due) or "", first)), None)
        return self.stand_ins.get((due.bin, first))

    def helper(self, due: Due) -> str | None:
        """Who promised to do it in the place of its keeper."""
        helper = self.helpers.get((due.bin, due.what)) if due.bin else None
        return None if helper is None or is_same(helper, self.keeper(due) or "") else helper

    def doers(self, due: Due) -> list[str]:
        """Who is to be told: the keeper, the stand-in or whoever promised to do it, and who takes a
        bin that passes on.
        """
        own = self.stand_in(due) if self.is_away(due) else self.keeper(due)
        own = self.helper(due) or own
        return [name for name in dict.fromkeys((own, due.to_member)) if name]

    def concerns(self, due: Due, member: str) -> bool:
        """Whether a due is a member's: they keep the bin, stand in for it, take it or promised to
        see to it.
        """
        names = (self.keeper(due), self.stand_in(due), self.helper(due), due.to_member)
        return member.casefold() in {name.casefold() for name in names if name}


def is_gone(gone: Iterable[Absence], member: str, day: date) -> bool:
    """Whether a member is away on a day."""
    return any(
        one.member == member and one.first <= day and (one.last is None or day <= one.last)
        for one in gone
    )


def _named(gone: Sequence[Absence], keeper: str, day: date) -> list[str]:
    """Whom a keeper named to stand in on a day, as far as they are there."""
    return [
        one.stand_in
        for one in gone
        if one.member == keeper and one.stand_in and is_gone([one], keeper, day)
        if not is_gone(gone, one.stand_in, day)
    ]


async def care_of(
    book: Book,
    dues: Sequence[Due],
    today: date,
    keepers: Mapping[Bin, str | None] | None = None,
    *,
    discreet: bool = False,
) -> Care:
    """Who sees to each of these dues; on the day a bin changes hands, who has it yet."""
    last = max((due.to_day for due in dues), default=today)
    gone = await absences(book, today, max(last, today))
    if keepers is None:
        keepers = await _keepers(book, dues, today)
    helpers = await helpers_of(book, [due.bin for due in dues if due.bin], today)
    care = Care(today=today, keepers=keepers, absences=gone, helpers=helpers, discreet=discreet)
    if not gone:
        return care
    wanted = {(due.bin, care.first_day(due)) for due in dues if due.bin and care.is_away(due)}
    stand_ins = {
        (bin, day): await _stand_in(book, bin, keepers[bin] or "", day, gone) for bin, day in wanted
    }
    return replace(care, stand_ins=stand_ins)


async def _keepers(book: Book, dues: Sequence[Due], today: date) -> Mapping[Bin, str | None]:
    days = {due.bin: today for due in dues}
    for due in dues:
        if due.what == "hand over" and due.from_day == today:
            days[due.bin] = today - timedelta(days=1)
    return {bin: (await look_up(book, bin, on)).keeper for bin, on in days.items() if bin}


async def _stand_in(
    book: Book, bin: Bin, keeper: str, day: date, gone: Sequence[Absence]
) -> str | None:
    """Whom the keeper named; else who last had a hand in the bin and is there."""
    named = [one.stand_in for one in gone if one.member == keeper and one.stand_in]
    present = {member.name for member in await book.members() if member.user and member.present}
    candidates = [*named, *(name for name in await book.hands(bin) if name in present)]
    others = (name for name in candidates if name != keeper and not is_gone(gone, name, day))
    return next(others, None)
