"""Why something is due on its days: the arithmetic behind the calendar."""

from collections.abc import Sequence
from datetime import date

from handlers.chosen import choice_lines
from handlers.phrasing import the
from handlers.planning.dues import OF_STARTER, windows
from handlers.practice.figure import Figure
from handlers.practice.starter import FERMENT_DAYS
from handlers.state import look_up, run_before
from storage.book import Book
from storage.rows import Due


async def why_due(book: Book, dues: Sequence[Due], today: date) -> list[str]:
    """The steps that lead to the days of each due, then the figures, each told once."""
    steps, figures, chosen = list[str](), list[Figure](), list[str]()
    for bin in dict.fromkeys(due.bin for due in dues):
        wanted = {due.what for due in dues if due.bin == bin}
        if bin is None:
            if wanted & OF_STARTER:
                figures.append(FERMENT_DAYS)
            continue
        state = await look_up(book, bin, today)
        for what, _, window in windows(state, await run_before(book, state)):
            if what in wanted:
                steps += [f"{the(bin.name)}: {step}" for step in window.steps]
                figures += window.figures
                chosen += window.chosen
    told = [figure.line() for figure in dict.fromkeys(figures)]
    return [*dict.fromkeys(steps), *told, *choice_lines(chosen, book.room)]
