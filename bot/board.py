"""The board: one read-only page of a group's bins, for phones, paper and screen readers."""

import base64
import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from html import escape

from bot.style import STYLE
from handlers.asked.labels import place
from handlers.asked.timeline import Stretch, stretches
from handlers.phrasing import capital, day, mass, percent, span, the, volume
from handlers.planning.calendar import calendar, is_late, next_of_each
from handlers.planning.care import care_of
from handlers.planning.dues import shown
from handlers.state import BinState, fold, look_up
from storage.book import Book
from storage.moments import local_day
from storage.rows import Bin, Due

_HASH = base64.b64encode(hashlib.sha256(STYLE.encode()).digest()).decode()

POLICY = (
    f"default-src 'none'; style-src 'sha256-{_HASH}'; base-uri 'none'; form-action 'none'; "
    "frame-ancestors 'none'"
)
"""What a browser may do with the page: nothing but show it in its own style."""

BEFORE, AFTER = timedelta(days=21), timedelta(days=42)
"""How far the timeline reaches back and ahead."""

STAGES = ("filling", "fermenting", "ready", "in the ground")

PATTERNS = """<svg class="patterns" aria-hidden="true" focusable="false"><defs>
<pattern id="filling" width="6" height="6" patternUnits="userSpaceOnUse">
<rect width="6" height="6" class="filling"/><circle cx="3" cy="3" r="1" class="ink"/></pattern>
<pattern id="fermenting" width="6" height="6" patternUnits="userSpaceOnUse">
<rect width="6" height="6" class="fermenting"/><path d="M0 6 6 0" class="line"/></pattern>
<pattern id="ready" width="6" height="6" patternUnits="userSpaceOnUse">
<rect width="6" height="6" class="ready"/></pattern>
<pattern id="in-the-ground" width="6" height="6" patternUnits="userSpaceOnUse">
<rect width="6" height="6" class="in-the-ground"/><path d="M0 3H6" class="line"/></pattern>
</defs></svg>"""


@dataclass(frozen=True, slots=True)
class Shown:
    """A bin with what is known and foreseen of it."""

    state: BinState
    stretches: Sequence[Stretch]
    dues: Sequence[Due]


async def as_page(book: Book, now: datetime) -> bytes:
    """The board as it stands, with days and hours in the group's zone."""
    today = local_day(now, book.room.zone)
    dues = await shown(book, today)
    bins = [await _shown(book, bin, dues, today) for bin in await book.bins()]
    present = f"{today:%A} {today.day} {today:%B} {today.year}"
    keepers = {shown.state.bin: shown.state.keeper for shown in bins}
    care = await care_of(book, dues, today, keepers, discreet=True)
    lines = await calendar(book, next_of_each(dues), today, care)
    late = [due for due in dues if is_late(due, today)]
    parts = [
        _section("What is due", _lines(lines, len(late)), "due"),
        _section("The bins", _legend() + "\n".join(_bin(shown, book, today) for shown in bins)),
    ]
    page = f"""<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex, nofollow">
<title>Our bins</title>
<style>{STYLE}</style>
</head>
<body>
{PATTERNS}
<header><h1>Our bins</h1>
<p>as of <time datetime="{today}">{present}</time>, in the time of {escape(book.room.zone)}</p>
</header>
<main>
{"".join(parts)}
</main>
<footer><p>Kept from what the group writes in its room. For your own calendar program, take
<a href="calendar.ics">the calendar’s address</a>.</p></footer>
</body>
</html>
"""
    return page.encode()


async def _shown(book: Book, bin: Bin, dues: Sequence[Due], today: date) -> Shown:
    state = await look_up(book, bin, today)
    before = fold(await book.run(bin, state.number - 1)) if state.number > 1 else None
    own = [due for due in dues if due.bin == bin]
    return Shown(state, stretches(state, before, own, today), own)


def _section(title: str, inner: str, kind: str = "bins") -> str:
    heading = f'<h2 id="{kind}-heading">{title}</h2>'
    return (
        f'<section class="{kind}" aria-labelledby="{kind}-heading">{heading}\n{inner}</section>\n'
    )


def _lines(lines: Sequence[str], late: int) -> str:
    """The calendar's lines; those that are late stand first."""
    if not lines:
        return "<p>Nothing is due.</p>\n"
    items = []
    for line in lines:
        days, _, duties = line.partition(": ")
        kind = ' class="late"' if late and days.startswith("Late") else ""
        items.append(f"<dt{kind}>{escape(days)}</dt><dd>{escape(capital(duties))}</dd>")
    return f"<dl>{''.join(items)}</dl>\n"


def _legend() -> str:
    items = [f"<li>{_swatch(stage)} {stage}</li>" for stage in STAGES]
    return f'<ul class="legend" aria-label="What the patterns mean">{"".join(items)}</ul>\n'


def _swatch(stage: str) -> str:
    return (
        '<svg class="swatch" viewBox="0 0 24 14" aria-hidden="true" focusable="false">'
        f'<rect width="24" height="14" rx="3" fill="url(#{_id(stage)})"/></svg>'
    )


def _id(stage: str) -> str:
    return stage.replace(" ", "-")


def _bin(shown: Shown, book: Book, today: date) -> str:
    state = shown.state
    stage = state.run.stage(today) if state.number else "empty"
    nobody = f"nobody keeps it since {state.left} left" if state.left else "nobody keeps it yet"
    kept = escape(f"kept by {state.keeper}" if state.keeper else nobody)
    shared = ", for everybody" if state.shared else ""
    last = None if state.run.buried else state.run.last_drain
    drained = f"; last drained {day(last, today)}" if last else ""
    return (
        f'<article id="{place(state.bin)}"><h3>{escape(capital(the(state.bin.name)))} '
        f'<small><span class="aside">, </span>{stage}</small></h3>\n'
        f"<p>{kept}{shared}{drained}</p>\n{_fill(state, book)}{_picture(shown, today)}"
        f"{_words(shown.stretches, today)}</article>"
    )


def _fill(state: BinState, book: Book) -> str:
    units = book.room.units
    if state.run.buried or not state.number:
        return ""
    size = f" of {volume(state.capacity_l, units)}" if state.capacity_l else ""
    held = f"about {mass(state.run.mass_kg, units)} in it" if state.run.mass_kg else "empty so far"
    if state.fill is None:
        return f"<p>{held}</p>\n"
    share = percent(state.fill)
    return (
        '<p class="fill"><meter aria-label="how full" min="0" max="1" '
        f'value="{state.fill:.2f}">{share}</meter> '
        f"{share} full{size}, {held}</p>\n"
    )


def _picture(shown: Shown, today: date) -> str:
    """The stretches drawn to scale; the words below say the same."""
    begin, end = today - BEFORE, today + AFTER
    runs = sorted({stretch.run for stretch in shown.stretches})
    height = 16 * max(len(runs), 1)
    bars = []
    for stretch in shown.stretches:
        first, last = max(stretch.start, begin), min(stretch.end, end)
        if first > last:
            continue
        x, width = _x(first, begin), max(_x(last, begin) - _x(first, begin), 4)
        y = 16 * runs.index(stretch.run)
        bars.append(f'<rect x="{x}" y="{y + 1}" width="{width}" height="14" '
                    f'fill="url(#{_id(stretch.stage)})" class="bar"/>')  # fmt: skip
    weeks = "".join(
        f'<path d="M{_x(begin + timedelta(days=n), begin)} 0V{height}" class="week"/>'
        for n in range(7, (end - begin).days, 7)
    )
    return (
        f'<svg class="line lanes-{len(runs)}" viewBox="0 0 {_x(end, begin)} {height}" '
        f'preserveAspectRatio="none" aria-hidden="true" focusable="false">{weeks}{"".join(bars)}'
        f'<path d="M{_x(today, begin)} 0V{height}" class="now"/></svg>\n'
        f'<p class="scale" aria-hidden="true"><span>{_short(begin)}</span> '
        f"<span>today</span> <span>{_short(end)}</span></p>\n"
    )


def _x(on: date, begin: date) -> int:
    return (on - begin).days * 10


def _short(on: date) -> str:
    return f"{on.day} {on:%b}"


def _words(made: Sequence[Stretch], today: date) -> str:
    if not made:
        return "<p>Nothing is in it yet.</p>\n"
    items = []
    for stretch in made:
        days = _days(stretch, today)
        items.append(f"<li>{_swatch(stretch.stage)} {capital(stretch.stage)}: {days}</li>")
    return f"<ol>{''.join(items)}</ol>\n"


def _days(stretch: Stretch, today: date) -> str:
    if not stretch.is_forecast:
        return span(stretch.start, stretch.end, today)
    if stretch.start > today:
        return f"about {span(stretch.start, stretch.end, today)}"
    since = f"since {day(stretch.start, today)}"
    return since if stretch.end <= today else f"{since}, until about {day(stretch.end, today)}"
