"""Which run an entry belongs to: from a bin's first layer until it is buried."""

from collections.abc import Sequence
from datetime import date

from storage import changes
from storage.book import Book
from storage.rows import Bin, Entry

STARTERS = frozenset({"open", "layer", "seal", "drain"})
"""After a burial one of these begins the next run; what is observed then is still the soil."""


def number(entries: Sequence[Entry], first: int) -> list[tuple[int, int]]:
    """Entry id and run of each entry, oldest first, counting from `first`."""
    run, buried, numbered = first, False, []
    for entry in entries:
        if buried and entry.act in STARTERS:
            run, buried = run + 1, False
        buried = buried or entry.act == "bury"
        numbered.append((entry.id, run))
    return numbered


async def renumber(
    book: Book, bin: Bin, *, from_day: date | None, struck: int | None
) -> tuple[int, list[Entry]]:
    """Put a bin's entries into runs: the number of its present run, and that run's entries.

    Only the runs that may have changed are read. `from_day`: the earliest day among new entries.
    `struck`: the first run that lost an entry by which runs begin or end.
    """
    # What comes before the run before all that changed stays as it is.
    touched = [await book.run_before(bin, from_day)] if from_day else []
    touched += [struck - 1] if struck else []
    first = max(min(touched) if touched else await book.present_run(bin), 1)
    entries = await book.since_run(bin, first)
    runs = number(entries, first)
    changed = [pair for entry, pair in zip(entries, runs, strict=True) if entry.run != pair[1]]
    await changes.set_runs(book, changed)
    last = runs[-1][1] if runs else 0
    return last, [entry for entry, (_, run) in zip(entries, runs, strict=True) if run == last]
