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


async def renumber(book: Book, bin: Bin, *, from_day: date | None, struck: bool) -> None:
    """Put a bin's new entries into runs; only what may have changed is read.

    `from_day`: the earliest day among the new entries. `struck`: entries were struck out, so that
    two runs may have become one.
    """
    present = await book.present_run(bin)
    entries = await book.run(bin, present)
    new = await book.unnumbered(bin)
    starts = [entry.on for entry in entries if entry.on]
    if struck or (starts and from_day and from_day < min(starts)):
        entries, present = await book.history(bin), 1
    else:
        known = {entry.id for entry in entries}
        entries = entries + [entry for entry in new if entry.id not in known]
    ordered = sorted(entries, key=lambda e: (e.on or date.max, e.said_at, e.id))
    runs = number(ordered, max(present, 1))
    now = {entry.id: entry.run for entry in ordered}
    await changes.set_runs(book, [(id, run) for id, run in runs if now[id] != run])
