"""The sheet of the next four weeks as a PNG: a row for each due, patterns besides colours.

Made to be read on a phone: 1080 dots wide, no letters under 24 of them high.
"""

import io
import re
import unicodedata
from collections.abc import Callable, Mapping
from datetime import timedelta
from functools import lru_cache

from PIL import Image, ImageDraw, ImageFont
from PIL.ImageFont import FreeTypeFont

from handlers.planning.sheet import DAYS, TITLE, Block, Row, Sheet

WIDTH, EDGE = 1080, 40
DAY = (WIDTH - 2 * EDGE) / DAYS
HEAD, AXIS, TITLE_ROW, ROW, FOOT = 150, 96, 66, 58, 40
BAR = 38

INK, SOFT, PAPER, CARD = "#2b241c", "#6a5d4d", "#fbf7ee", "#fffdf8"
EDGE_LINE, WEEKEND, ALARM = "#ddd0b8", "#f1e8d5", "#9b2226"
FILLS = {
    "drain": "#e9c46a", "seal": "#c97b4a", "bury": "#8a6a4f", "plant": "#8fb47f",
    "cover": "#c9b79c", "check": "#f2d9a0", "hand over": "#cfd8c8",
}  # fmt: skip
OTHER = "#e8e0f0"

STEP = 12
"""Dots from one line of a pattern to the next."""

Box = tuple[float, float, float, float]

FONTS = {
    False: ("DejaVuSans.ttf", "NotoSans-Regular.ttf", "LiberationSans-Regular.ttf", "Arial.ttf"),
    True: ("DejaVuSans-Bold.ttf", "NotoSans-Bold.ttf", "LiberationSans-Bold.ttf", "Arial Bold.ttf"),
}
"""Fonts that systems have, the first one found is used; else the small one that Pillow brings."""


@lru_cache(maxsize=16)
def font(size: int, *, bold: bool = False) -> FreeTypeFont | ImageFont.ImageFont:
    """A font of that size in dots."""
    for name in FONTS[bold]:
        try:
            return ImageFont.truetype(name, size)
        except OSError:
            continue
    return ImageFont.load_default(size)


def drawn(sheet: Sheet) -> tuple[bytes, int, int]:
    """The sheet as PNG, with its width and height in dots. Slow: not for the event loop."""
    height = _height(sheet)
    image = Image.new("RGB", (WIDTH, height), PAPER)
    draw = ImageDraw.Draw(image)
    draw.text((EDGE, 28), TITLE, INK, font(56, bold=True))
    draw.text((EDGE, 98), sheet.days, SOFT, font(34))
    _axis(draw, sheet, height - FOOT)
    y = HEAD + AXIS
    for block in sheet.blocks:
        y = _block(draw, block, y)
    if not sheet.blocks:
        draw.text((EDGE, y + 12), "Nothing is due.", INK, font(34))
    if sheet.more:
        draw.text((EDGE, y + 8), sheet.more, SOFT, font(30))
    out = io.BytesIO()
    image.save(out, "PNG", optimize=True)
    return out.getvalue(), WIDTH, height


def _height(sheet: Sheet) -> int:
    rows = sum(len(block.rows) for block in sheet.blocks)
    return (
        HEAD
        + AXIS
        + TITLE_ROW * max(len(sheet.blocks), 1)
        + ROW * rows
        + FOOT
        + (50 if sheet.more else 0)
    )


def _x(day: float) -> float:
    return EDGE + day * DAY


def _axis(draw: ImageDraw.ImageDraw, sheet: Sheet, bottom: int) -> None:
    """The days: weekends shaded, weeks parted by lines, the first day said to be today."""
    for n in range(DAYS):
        on = sheet.begin + timedelta(days=n)
        if on.weekday() >= 5:
            draw.rectangle((_x(n), HEAD + 48, _x(n + 1), bottom), WEEKEND)
    for n in range(DAYS):
        on = sheet.begin + timedelta(days=n)
        if on.weekday() == 0 or n == 0:
            draw.line((_x(n), HEAD, _x(n), bottom), SOFT if n else INK, 3 if n else 5)
        if on.weekday() == 0 and n > 3:
            _week(draw, f"Mon {on.day} {on:%b}", n, HEAD)
        label = str(on.day)
        small = font(24)
        draw.text((_x(n + 0.5) - draw.textlength(label, small) / 2, HEAD + 54), label, SOFT, small)
    draw.text((_x(0) + 10, HEAD), "today", ALARM, font(30, bold=True))
    draw.line((EDGE, HEAD + AXIS - 6, WIDTH - EDGE, HEAD + AXIS - 6), SOFT, 2)


def _week(draw: ImageDraw.ImageDraw, words: str, day: int, top: int) -> None:
    """A week's first day, where there is room for it before the edge."""
    face = font(30, bold=True)
    if _x(day) + 8 + draw.textlength(words, face) <= WIDTH - EDGE / 2:
        draw.text((_x(day) + 8, top), words, INK, face)


def _block(draw: ImageDraw.ImageDraw, block: Block, y: int) -> int:
    title = _cut(draw, _drawable(block.title), WIDTH - 2 * EDGE, font(36, bold=True))
    width = draw.textlength(title, font(36, bold=True))
    draw.rectangle((EDGE + 4, y + 10, EDGE + 12 + width, y + 58), PAPER)
    draw.text((EDGE + 8, y + 12), title, INK, font(36, bold=True))
    y += TITLE_ROW
    for row in block.rows:
        _row(draw, row, y)
        y += ROW
    return y


def _row(draw: ImageDraw.ImageDraw, row: Row, y: int) -> None:
    left, right = _x(row.first) + 3, _x(row.last + 1) - 3
    top, bottom = y + (ROW - BAR) // 2, y + (ROW + BAR) // 2
    draw.rectangle((left, top, right, bottom), FILLS.get(row.what, OTHER), INK, 3)
    _pattern(draw, row.what, (left + 3, top + 3, right - 3, bottom - 3))
    if row.late:
        draw.polygon(
            ((left - 22, (top + bottom) / 2), (left - 2, top - 2), (left - 2, bottom + 2)), ALARM
        )
    _label(draw, row, left, right, top)


def _label(draw: ImageDraw.ImageDraw, row: Row, left: float, right: float, top: float) -> None:
    """The words behind the bar, or before it where there is more room."""
    after, before = WIDTH - EDGE - right - 14, left - EDGE - 14
    words, face = _drawable(row.words), font(30, bold=row.late)
    for size in (27, 24):  # smaller only where it must be
        if draw.textlength(words, face) > max(after, before):
            face = font(size, bold=row.late)
    if draw.textlength(words, face) > max(after, before):
        words = _WEEKDAY.sub("", words)
    is_after = draw.textlength(words, face) <= after or after >= before
    words = _cut(draw, words, after if is_after else before, face)
    width = draw.textlength(words, face)
    x = right + 12 if is_after else left - 12 - width
    draw.rectangle((x - 4, top + 1, x + width + 4, top + BAR - 1), PAPER)
    draw.text((x, top + 1), words, ALARM if row.late else INK, face)


_WEEKDAY = re.compile(r"\b(?:Mon|Tue|Wed|Thu|Fri|Sat|Sun) (?=\d)")


def _drawable(words: str) -> str:
    """The words without the pictures among them, for which the fonts have only empty boxes.

    One that stands by itself, as a bin's whole name may, is called by its name in Unicode.
    """
    spelled = " ".join(map(_spelled, words.split()))
    return " ".join(spelled.split()).replace("( ", "(")


def _spelled(word: str) -> str:
    bare = "".join(c for c in word if unicodedata.category(c) not in ("Sk", "Cf", "Mn"))
    if len(bare) == 1 and unicodedata.category(bare) == "So":
        return unicodedata.name(bare, "").lower()
    return "".join(c for c in word if unicodedata.category(c) not in ("So", "Sk", "Cf"))


def _cut(
    draw: ImageDraw.ImageDraw, words: str, room: float, face: FreeTypeFont | ImageFont.ImageFont
) -> str:
    if draw.textlength(words, face) <= room:
        return words
    while words and draw.textlength(f"{words}…", face) > room:
        words = words[:-1]
    return f"{words.rstrip()}…"


def _pattern(draw: ImageDraw.ImageDraw, what: str, box: Box) -> None:
    """What tells the kinds apart without colours."""
    if what in PATTERNS:
        PATTERNS[what](draw, box)


def _level(draw: ImageDraw.ImageDraw, box: Box) -> None:
    left, top, right, bottom = box
    for y in range(int(top) + 8, int(bottom), STEP):
        draw.line((left, y, right, y), INK, 2)


def _upright(draw: ImageDraw.ImageDraw, box: Box) -> None:
    left, top, right, bottom = box
    for x in range(int(left) + 8, int(right), STEP):
        draw.line((x, top, x, bottom), INK, 2)


def _slanted(draw: ImageDraw.ImageDraw, box: Box) -> None:
    left, top, right, bottom = box
    height = bottom - top
    for x in range(int(left - height), int(right), STEP):
        start, end = max(x, left), min(x + height, right)
        draw.line((start, bottom - (start - x), end, bottom - (end - x)), INK, 3)


def _filled(draw: ImageDraw.ImageDraw, box: Box) -> None:
    left, top, right, bottom = box
    draw.rectangle((left + 4, top + 4, right - 4, bottom - 4), INK)


def _dotted(draw: ImageDraw.ImageDraw, box: Box) -> None:
    left, top, right, bottom = box
    y = (top + bottom) / 2
    for x in range(int(left) + 8, int(right) - 2, STEP + 4):
        draw.ellipse((x - 3, y - 3, x + 3, y + 3), INK)


def _crossed(draw: ImageDraw.ImageDraw, box: Box) -> None:
    left, top, right, bottom = box
    draw.line((left, top, right, bottom), INK, 3)
    draw.line((left, bottom, right, top), INK, 3)


PATTERNS: Mapping[str, Callable[[ImageDraw.ImageDraw, Box], None]] = {
    "drain": _level,  # like liquid
    "seal": _filled,
    "bury": _slanted,
    "plant": _dotted,
    "cover": _upright,
    "check": _crossed,
}
