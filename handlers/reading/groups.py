"""A group: a clause that tells of something, with the clauses that only add details to it."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from typing import Any

from handlers.reading.calendar.days import Day
from handlers.reading.food.items import Item
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.once import once
from handlers.reading.words.sense import Sense
from handlers.reading.words.sentences import Clause
from handlers.reading.words.spans import indexes
from handlers.reading.words.verbs import VerbUse


@dataclass(slots=True)
class Group:
    """Clauses that belong to one report, with what stands in them."""

    message: Message
    clauses: list[Clause]
    verb: VerbUse | None = None
    sense: Sense = "none"
    inherited: "Group | None" = None
    """The group before, whose verb this one shares ("and today again 350 ml")."""
    amounts: list[Amount] = field(default_factory=list)
    bins: list[BinRef] = field(default_factory=list)
    days: list[Day] = field(default_factory=list)
    items: list[Item] = field(default_factory=list)
    start: int = 0
    """Index of the first word."""
    end: int = 0
    """Index after the last word."""
    norms: list[str] = field(default_factory=list)
    """The words of the group."""
    kept: dict[Callable[..., Any], Any] = field(default_factory=dict, repr=False, compare=False)
    """What `once` has found in it."""

    @property
    @once
    def free(self) -> set[str]:
        """The words of the group outside of its bins' names."""
        inside = indexes(self.bins)
        return {self.message.norms[i] for i in range(self.start, self.end) if i not in inside}

    @once
    def text(self) -> str:
        """The words of the group, one space between, its bins as `qbin`."""
        if not self.bins:
            return " ".join(self.norms)
        starts = {b.start: b.end for b in self.bins}
        inside = indexes(self.bins)
        norms = self.message.norms
        words = [
            "qbin" if i in starts else norms[i]
            for i in range(self.start, self.end)
            if i in starts or i not in inside
        ]
        return " ".join(words)

    def take(self, clause: Clause) -> None:
        """Adds a clause and what stands in it."""
        if clause not in self.clauses:
            self.clauses.append(clause)
        if self.kept:
            self.kept.clear()
        message, a, b = self.message, clause.start, clause.end
        self.start, self.end = self.clauses[0].start, self.clauses[-1].end
        self.norms = message.norms[self.start : self.end]
        if message.amounts:
            self.amounts += [x for x in message.amounts if a <= x.start < b]
        if message.bins:
            self.bins += [x for x in message.bins if a <= x.start < b]
        if message.days:
            self.days += [x for x in message.days if a <= x.start < b]
        if message.items:
            self.items += [x for x in message.items if a <= x.start < b]

    @once
    def solids(self) -> list[Item]:
        """The things in the group that may be scraps: not its liquid, nor "stuff"."""
        return [
            item
            for item in self.items
            if not item.absent
            and item.food.name != "stuff"
            and not (item.end - item.start == 1 and self.message.liquid_at(item.start))
        ]

    @once
    def measured(self) -> list[Amount]:
        """Amounts of mass and volume."""
        return [a for a in self.amounts if a.quantity in ("mass", "volume")]

    def is_naught(self) -> bool:
        """Whether an amount in it is none or less, which nobody can have put in."""
        return any(a.negative or a.value == 0 for a in self.measured())

    @once
    def names(self) -> list[str]:
        """Names of the bins in the group, each once."""
        return list(dict.fromkeys(b.name for b in self.bins if b.name is not None))


def sentence_text(groups: Sequence[Group], k: int) -> str:
    """The words of the sentence that the k-th group stands in, its bins as `qbin`."""
    number = groups[k].clauses[0].sentence
    parts: list[str] = []
    for group in groups:
        if group.clauses[0].sentence == number:
            parts += [group.clauses[0].joint, group.text()] if parts else [group.text()]
    return " ".join(part for part in parts if part)
