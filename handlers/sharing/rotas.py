"""The group's rotas as its entries tell them: who takes turns at what, and who has which."""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date, timedelta

from handlers.answer import Turn
from handlers.people import is_same, known_as
from handlers.phrasing import the
from handlers.planning.dues import ALL_BINS
from handlers.sharing.turns import DAY, Exchange, Gone, Stint, Turns
from storage import rotas
from storage.book import Book
from storage.moments import local_day
from storage.rows import Bin, Due, Entry

AHEAD = timedelta(weeks=4)
"""How far ahead turns stand in the calendar; further, if a turn is long."""
MOST_AHEAD = 3
"""Turns that stand in the calendar at least."""

ON_TURNS = frozenset({"rota", "join", "quit", "over", "swapped", "away", "back", "leave", "return"})
"""The acts from which the turns follow."""


@dataclass(slots=True, kw_only=True)
class RotaState:
    """Turns at one duty with one bin, or with all (None)."""

    said: Entry
    duty: str
    bin: Bin | None
    members: list[tuple[str, date]] = field(default_factory=list)
    gone: list[Gone] = field(default_factory=list)
    exchanges: list[Exchange] = field(default_factory=list)
    over: date | None = None
    wishes: list[Entry] = field(default_factory=list)
    """Exchanges asked for and not agreed yet."""
    swapped: list[Entry] = field(default_factory=list)
    """Exchanges agreed."""

    @property
    def deed(self) -> str:
        """What the turns are for: "drain the shed bin"."""
        return f"{self.duty} {the(self.bin.name) if self.bin else ALL_BINS}"

    @property
    def start(self) -> date:
        """The first day of the first turn."""
        assert self.said.on is not None  # every entry of a rota has its day
        return self.said.on

    @property
    def days(self) -> int:
        """How long a turn lasts."""
        return self.said.facts.days or 7

    def stints(
        self, today: date, more: Sequence[Gone] = (), ahead: timedelta = AHEAD
    ) -> list[Stint]:
        """The turns from the first one to some weeks ahead; `more`: absences not written yet."""
        turns = Turns(
            start=self.start,
            days=self.days,
            members=self.members,
            gone=[*self.gone, *more],
            exchanges=self.exchanges,
            over=self.over,
        )
        return turns.until(max(today, self.start) + max(ahead, MOST_AHEAD * self.days * DAY))

    def coming(
        self, today: date, more: Sequence[Gone] = (), ahead: timedelta = AHEAD
    ) -> list[Stint]:
        """The present turn and those ahead."""
        return [stint for stint in self.stints(today, more, ahead) if stint.end >= today]

    @property
    def round(self) -> timedelta:
        """How long it takes until everybody has had a turn, and some."""
        return (len(self.members) + 2) * self.days * DAY


async def rotas_of(book: Book, today: date) -> list[RotaState]:
    """The rotas that are not over."""
    said = await rotas.said(book)
    if not said:
        return []
    found: dict[tuple[int | None, str], RotaState] = {}
    left: list[Gone] = []
    for entry in said:
        if entry.act in ("leave", "return") and entry.member and entry.on:
            left = _with_presence(left, entry.act, entry.member, entry.on)
        else:
            _take(found, entry)
    current = [one for one in found.values() if one.over is None or one.over > today]
    if current:
        away = left + await absences_known(book, min(one.start for one in current))
        for one in current:
            one.gone += away
    return current


def _take(found: dict[tuple[int | None, str], RotaState], entry: Entry) -> None:
    duty = entry.facts.words or "keep"
    key = entry.bin.id if entry.bin else None, duty
    if entry.act == "rota":
        found[key] = RotaState(said=entry, duty=duty, bin=entry.bin)
    elif (one := found.get(key)) and entry.on:
        _change(one, entry, entry.member or "", entry.on)


def _change(one: RotaState, entry: Entry, member: str, on: date) -> None:
    match entry.act:
        case "join":
            _join(one, member, on)
        case "quit":
            one.gone.append(Gone(member=member, first=on, last=date.max, known=on))
        case "over":
            one.over = on
        case "swap":
            one.wishes.append(entry)
        case "swapped":
            one.swapped.append(entry)
            one.exchanges.append(exchange_of(entry))
            one.wishes = [w for w in one.wishes if (w.member, w.on) != (entry.receiver, on)]


def exchange_of(swapped: Entry) -> Exchange:
    """The exchange of turns that an entry tells."""
    assert swapped.on is not None  # every exchange is of the turn of a day
    return Exchange(giver=swapped.receiver, taker=swapped.member or "", on=swapped.on)


def _with_presence(left: list[Gone], act: str, member: str, on: date) -> list[Gone]:
    """Whoever leaves the room takes no turns from the next day on until they are back."""
    if act == "leave":
        return [*left, Gone(member=member, first=on + DAY, last=date.max, known=on)]
    return _ended(left, member, on)


def _ended(gone: list[Gone], member: str, on: date) -> list[Gone]:
    """An absence without an end ends with a return."""
    return [
        replace(one, last=on - DAY) if one.member == member and one.last == date.max else one
        for one in gone
    ]


def _join(one: RotaState, member: str, on: date) -> None:
    """A member comes to a rota, or comes back to it."""
    if all(name != member for name, _ in one.members):
        one.members.append((member, on))
        return
    one.gone = _ended(one.gone, member, on)


async def absences_known(book: Book, first: date) -> list[Gone]:
    """Who is away on a day or later, as rotas know it."""
    return [
        Gone(
            member=absence.member,
            first=absence.first,
            last=absence.last or date.max - DAY,
            known=local_day(told_at, book.room.zone),
        )
        for absence, told_at in await rotas.known_absences(book, first)
    ]


def is_on(one: RotaState, member: str) -> bool:
    """Whether a member takes turns."""
    has_quit = any(g.member == member and g.last == date.max for g in one.gone)
    return not has_quit and any(is_same(name, member) for name, _ in one.members)


def dues_of_turns(current: Sequence[RotaState], bin: Bin | None, today: date) -> list[Due]:
    """The turns of a bin, or of all together (None), as they stand in the calendar."""
    dues = []
    for one in current:
        if one.bin != bin:
            continue
        for stint in one.coming(today):
            dues.append(
                Due(
                    bin=bin,
                    what=f"turn to {one.duty}",
                    occasion=stint.start.isoformat(),
                    from_day=stint.start,
                    to_day=stint.end,
                    to_member=stint.member,
                )
            )
    return dues


def turn_to_drain(current: Sequence[RotaState], bin: Bin, today: date) -> str | None:
    """Who has the turn to drain a bin, if that goes by turns."""
    for one in current:
        if one.duty == "drain" and one.bin in (None, bin):
            stint = next(iter(one.coming(today)), None)
            if stint and stint.start <= today:
                return stint.member
    return None


def bin_of(one: RotaState) -> str | None:
    """The name of its bin; None for all of them."""
    return one.bin.name if one.bin else None


async def called(names: Sequence[str], turn: Turn) -> list[str]:
    """The members of a rota by the names they show; all who are here if none is named."""
    members = await turn.book.members()
    if not names:
        return [member.name for member in members if member.user and member.present]
    found = []
    for name in names:
        known = known_as(name, members)
        found.append(known[0].name if known else name)
    return list(dict.fromkeys(found))
