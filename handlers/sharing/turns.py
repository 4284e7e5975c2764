"""Whose turn it is: a rota worked out fairly, day by day, around those who are away.

Each turn goes to whoever is there for the longest part of it and has had the fewest. Who could not
take one is counted up to those who could, so that nobody comes home to a row of turns. Of two
members who were equally available, neither ever has more than one turn more than the other: while
both can take a turn, the one with fewer gets it first, and counting up draws the two together.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import date, timedelta

DAY = timedelta(days=1)


@dataclass(frozen=True, slots=True, kw_only=True)
class Gone:
    """A member is not there from the first day to the last; the rota knows of it since a day."""

    member: str
    first: date
    last: date
    known: date

    @property
    def begin(self) -> date:
        """The first day on which anything can follow from it."""
        return max(self.first, self.known)


@dataclass(frozen=True, slots=True, kw_only=True)
class Exchange:
    """A member does the turn of another, on a day, who does their next one for it."""

    giver: str | None
    """None: nobody was there for that day, and the taker helps out."""
    taker: str
    on: date


@dataclass(frozen=True, slots=True, kw_only=True)
class Stint:
    """A turn, or the part of one that a member has."""

    start: date
    end: date
    owner: str | None
    """Whose turn it is counted as; None where nobody is there."""
    member: str | None
    """Who does it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Turns:
    """What a rota is: from a day on, so many days each, by these, each from their day on."""

    start: date
    days: int
    members: Sequence[tuple[str, date]]
    gone: Sequence[Gone] = ()
    exchanges: Sequence[Exchange] = ()
    over: date | None = None
    """The first day without turns."""

    def until(self, last: date) -> list[Stint]:
        """The stints that begin by a day, from the first one on."""
        return _Reckoner(self).stints(last)


@dataclass(slots=True)
class _Account:
    """What a member has had: turns, and turns together with those they were counted up by."""

    order: int
    turns: int = 0
    level: int = 0
    last: date = date.min

    @property
    def rank(self) -> tuple[int, int, date, int]:
        """The lower, the sooner it is their turn."""
        return self.level, self.turns, self.last, self.order


@dataclass(slots=True)
class _Reckoner:
    """One pass through the days of a rota."""

    rota: Turns
    ahead: dict[str, list[Gone]] = field(default_factory=dict)
    """The absences of each member that are not over."""
    accounts: dict[str, _Account] = field(default_factory=dict)
    owed: list[Exchange] = field(default_factory=list)

    def stints(self, last: date) -> list[Stint]:
        made: list[Stint] = []
        for gone in self.rota.gone:
            self.ahead.setdefault(gone.member, []).append(gone)
        day, length = self.rota.start, timedelta(days=max(self.rota.days, 1))
        while day <= last and (self.rota.over is None or day < self.rota.over):
            end = day + length - DAY
            if self.rota.over:
                end = min(end, self.rota.over - DAY)
            while day <= end:
                made.append(self._next(day, end))
                day = made[-1].end + DAY
        return made

    def _next(self, day: date, end: date) -> Stint:
        """Who has the turn from a day on, and how long, until its end at most."""
        for name, absences in self.ahead.items():
            self.ahead[name] = [gone for gone in absences if gone.last >= day]
        there = {name: until for name in self._known(day) if (until := self._there(name, day, end))}
        if not there:
            until = self._nobody_until(day, end)
            return Stint(start=day, end=until, owner=None, member=self._helping(day, until))
        longest = max(there.values())
        able = [name for name, until in there.items() if until == longest]
        owner = min(able, key=lambda name: self.accounts[name].rank)
        self._count(owner, able, day)
        member = self._doing(owner, day, longest)
        until = min(longest, self._there(member, day, end) or longest)
        cut = [
            gone.begin - DAY
            for gone in self.ahead.get(member, ())
            if day < gone.begin <= min(until, gone.last)
        ]
        return Stint(start=day, end=min([until, *cut]), owner=owner, member=member)

    def _known(self, day: date) -> Iterable[str]:
        """The members by then; a newcomer begins where the others are."""
        present = [name for name, since in self.rota.members if since <= day]
        for order, name in enumerate(present):
            if name not in self.accounts:
                level = min((account.level for account in self.accounts.values()), default=0)
                self.accounts[name] = _Account(order, level=level)
        return present

    def _there(self, name: str, day: date, end: date) -> date | None:
        """Until when a member is there from a day on, as known then; None: not even that day."""
        until = end
        for gone in self.ahead.get(name, ()):
            if gone.known <= day and gone.first <= until and gone.last >= day:
                if gone.first <= day:
                    return None
                until = gone.first - DAY
        return until

    def _nobody_until(self, day: date, end: date) -> date:
        while day < end and not any(
            self._there(name, day + DAY, end) for name in self._known(day + DAY)
        ):
            day += DAY
        return day

    def _helping(self, day: date, until: date) -> str | None:
        """Who does a turn that none of the members is there for."""
        helpers = [
            one.taker for one in self.rota.exchanges if one.giver is None and day <= one.on <= until
        ]
        return next((one for one in helpers if self._there(one, day, until) == until), None)

    def _count(self, owner: str, able: Sequence[str], day: date) -> None:
        level = min(self.accounts[name].level for name in able)
        for name, account in self.accounts.items():
            if name not in able:
                account.level = max(account.level, level)
        account = self.accounts[owner]
        account.turns += 1
        account.level += 1
        account.last = day

    def _doing(self, owner: str, day: date, until: date) -> str:
        """Who does an owner's turn: somebody who exchanges it with them, if they are there."""
        for exchange in self.rota.exchanges:
            is_theirs = exchange.giver == owner and day <= exchange.on <= until
            if is_theirs and self._there(exchange.taker, day, until):
                self.owed.append(exchange)
                return exchange.taker
        for exchange in self.owed:
            giver = exchange.giver
            if giver and exchange.taker == owner and self._there(giver, day, until) == until:
                self.owed.remove(exchange)
                return giver
        return owner
