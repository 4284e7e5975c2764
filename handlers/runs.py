"""Which run an entry belongs to: from a bin's first layer until it is buried or emptied."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date

from handlers.state import Line
from storage.book import Book
from storage.rows import Bin, NewEntry

STARTERS = frozenset({"open", "layer", "seal", "drain"})
"""After a burial one of these begins the next run; what is observed then is still the soil."""


def number(entries: Sequence[Line], first: int) -> list[int]:
    """The run of each entry, oldest first, counting from `first`."""
    run, begun, buried = first, False, False
    numbered: list[int] = []
    for entry in entries:
        if (buried and entry.act in STARTERS) or (begun and begins_emptied(entry)):
            run, buried = run + 1, False
        begun = begun or entry.act in STARTERS
        buried = buried or entry.act == "bury"
        numbered.append(run)
    return numbered


def begins_emptied(entry: Line) -> bool:
    """Whether a bin begins again there, and what was in it is gone without a burial."""
    return entry.act == "open" and entry.facts.words is not None


def in_order(entries: Iterable[Line]) -> list[Line]:
    """Entries, oldest first; those of the same moment as they were given."""
    return sorted(entries, key=lambda entry: (entry.on or date.max, entry.said_at))


@dataclass(frozen=True, slots=True, kw_only=True)
class Numbering:
    """How the entries of a bin fall into runs once new ones are written down."""

    new: Sequence[tuple[NewEntry, int]]
    moved: Sequence[tuple[int, int]]
    """Entries, by id, that come into another run than they were in."""
    present: int
    """The number of the present run."""
    entries: Sequence[Line]
    """The entries of the present run, oldest first."""


async def numbering(book: Book, bin: Bin, new: Sequence[NewEntry], struck: int | None) -> Numbering:
    """The runs of a bin with new entries; only those runs are read that may change.

    `struck`: the first run that lost an entry by which runs begin or end.
    """
    days = [entry.on for entry in new if entry.on]
    # What comes before the run before all that changes stays as it is.
    touched = [await _run_before(book, bin, min(days))] if days else []
    touched += [struck - 1] if struck else []
    first = max(min(touched) if touched else await book.present_run(bin), 1)
    there = await book.since_run(bin, first)
    entries = in_order([*there, *new])
    runs = number(entries, first)
    run_of = {id(entry): run for entry, run in zip(entries, runs, strict=True)}
    present = runs[-1] if runs else 0
    return Numbering(
        new=[(entry, run_of[id(entry)]) for entry in new],
        moved=[(e.id, run_of[id(e)]) for e in there if e.run != run_of[id(e)]],
        present=present,
        entries=[entry for entry in entries if run_of[id(entry)] == present],
    )


async def _run_before(book: Book, bin: Bin, day: date) -> int:
    """The run of the last entry of a bin from before a day; the present one is known already."""
    present = await book.present_run(bin)
    if any(entry.on and entry.on < day for entry in await book.since_run(bin, present)):
        return present
    return await book.run_before(bin, day)
