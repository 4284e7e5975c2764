"""A label drawn: one page, half a sheet of A4 lying down, as SVG with a QR code (ISO/IEC 18004).

Layers of scraps and bran run down its edge. Nothing on it hangs on colour: it is made for any
printer, and to be read by wet hands from an arm's length.
"""

import textwrap
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from html import escape
from io import BytesIO

WIDTH, HEIGHT = 2100, 1480
"""Tenths of a millimetre: A5 lying down."""
EDGE, BAND = 80, 150
"""The margin, and the width of the layers down the side."""
LEFT, TOP, INDENT = BAND + 110, 410, 75
QR_SIZE = 520
SIZES = (50, 46, 42, 38, 34, 30)
"""Sizes of the letters, the largest first."""
BOLD_LETTER = 0.66
LETTER = 0.54
"""How wide letters are in such types on average, as a share of their size."""

INK, SOFT, PAPER = "#2b241c", "#6a5d4d", "#fffdf8"
LAYERS = (
    ("#e9c46a", "M0 {0}h150v{1}H0z", "dots"),
    ("#c97b4a", "M0 {0}h150v{1}H0z", "lines"),
    ("#8a6a4f", "M0 {0}h150v{1}H0z", "none"),
)

PATTERNS = (
    '<pattern id="dots" width="40" height="40" patternUnits="userSpaceOnUse">'
    f'<circle cx="12" cy="14" r="6" fill="{INK}"/><circle cx="30" cy="32" r="4" fill="{INK}"/>'
    "</pattern>"
    '<pattern id="lines" width="36" height="36" patternUnits="userSpaceOnUse">'
    f'<path d="M0 36 36 0" stroke="{INK}" stroke-width="4"/></pattern>'
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """The words of a label, each list in the order it is to be read."""

    name: str
    about: str
    """Its size, and whether it is for everybody; empty if neither is known."""
    starter: str
    """The usual dose."""
    goes_in: Sequence[str]
    with_care: Sequence[str]
    stays_out: Sequence[str]
    cautions: Sequence[str]
    board: str | None
    """The web address of the bin on the group's board; None where none is served."""


def drawn(label: Label) -> str:
    """The label as an SVG document."""
    foot, cautions = _cautions(label.cautions)
    parts = [
        '<?xml version="1.0" encoding="UTF-8"?>',
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH / 10:g}mm" '
        f'height="{HEIGHT / 10:g}mm" viewBox="0 0 {WIDTH} {HEIGHT}" role="img" '
        'font-family="Georgia, &quot;DejaVu Serif&quot;, serif">',
        f"<title>{escape(label.name)}</title>",
        f"<defs>{PATTERNS}</defs>",
        f'<rect width="{WIDTH}" height="{HEIGHT}" fill="{PAPER}"/>',
        *_layers(),
        *_head(label),
        *_lists(label, foot),
        *_board(label),
        *cautions,
        "</svg>",
    ]
    return "\n".join(parts) + "\n"


def _layers() -> Iterator[str]:
    """Scraps and bran by turns, thinner towards the bottom, where the ferment has settled."""
    y, thick, number = 0.0, 230.0, 0
    while y < HEIGHT:
        colour, shape, pattern = LAYERS[number % len(LAYERS)]
        height = min(thick if number % 2 == 0 else thick / 3, HEIGHT - y)
        path = shape.format(f"{y:g}", f"{height:g}")
        yield f'<path d="{path}" fill="{colour}"/>'
        if pattern != "none":
            yield f'<path d="{path}" fill="url(#{pattern})" opacity="0.35"/>'
        y, thick, number = y + height, thick * 0.93, number + 1
    yield f'<path d="M{BAND} 0V{HEIGHT}" stroke="{INK}" stroke-width="6"/>'


def _head(label: Label) -> Iterator[str]:
    size = min(170, round((WIDTH - EDGE - LEFT) / (len(label.name) * BOLD_LETTER)))
    yield _text(LEFT, 200, label.name, size, weight="bold")
    if label.about:
        yield _text(LEFT, 268, label.about, 52, colour=SOFT)
    yield _text(LEFT, 330, label.starter, 46)
    yield f'<path d="M{LEFT} 352H{WIDTH - EDGE}" stroke="{INK}" stroke-width="5"/>'
    yield f'<path d="M{LEFT} 366H{WIDTH - EDGE}" stroke="{INK}" stroke-width="2"/>'


def _lists(label: Label, bottom: float) -> Iterator[str]:
    """What goes in, what with care, what stays out: a full, a half and a crossed-out circle.

    As large as there is room for above the cautions.
    """
    width = WIDTH - EDGE - LEFT - INDENT - (QR_SIZE + 50 if label.board else 0)
    lists = (
        ("Goes in", label.goes_in, _full),
        ("With care", label.with_care, _half),
        ("Stays out", label.stays_out, _crossed),
    )

    def wrapped(things: Sequence[str], size: int) -> list[str]:
        return textwrap.wrap("; ".join(things), int(width / (size * LETTER)))

    def height(size: int) -> float:
        return sum(size * (1.3 * len(wrapped(things, size)) + 2.2) for _, things, _ in lists)

    size = next((size for size in SIZES if TOP + height(size) <= bottom), SIZES[-1])
    y = float(TOP + size)
    for title, things, sign in lists:
        yield sign(LEFT + 26, y - size * 0.4)
        yield _text(LEFT + INDENT, y, title, round(size * 1.2), weight="bold")
        for line in wrapped(things, size):
            y += size * 1.3
            yield _text(LEFT + INDENT, y, line, size)
        y += size * 2.2


def _full(x: float, y: float) -> str:
    return f'<circle cx="{x}" cy="{y}" r="24" fill="{INK}"/>'


def _half(x: float, y: float) -> str:
    return (
        f'<circle cx="{x}" cy="{y}" r="22" fill="none" stroke="{INK}" stroke-width="5"/>'
        f'<path d="M{x - 22} {y}a22 22 0 0 0 44 0z" fill="{INK}"/>'
    )


def _crossed(x: float, y: float) -> str:
    return (
        f'<circle cx="{x}" cy="{y}" r="22" fill="none" stroke="{INK}" stroke-width="5"/>'
        f'<path d="M{x - 15} {y - 15}l30 30M{x + 15} {y - 15}l-30 30" stroke="{INK}" '
        'stroke-width="6"/>'
    )


def _board(label: Label) -> Iterator[str]:
    """The code of the board's address, with the four modules of clear space that it needs."""
    if label.board is None:
        return
    import segno  # only a label wants it

    code = segno.make(label.board, error="m", micro=False)
    modules = code.symbol_size(border=4)[0]
    drawn = BytesIO()
    code.save(drawn, kind="svg", border=4, scale=QR_SIZE / modules, dark="#000", light="#fff",
              xmldecl=False, svgns=False, nl=False)  # fmt: skip
    x, y = WIDTH - EDGE - QR_SIZE, TOP
    yield f'<g transform="translate({x} {y})">{drawn.getvalue().decode()}</g>'
    middle = x + QR_SIZE / 2
    for number, line in enumerate(("What is due, who keeps it,", "how full it is: our board")):
        yield _text(middle, y + QR_SIZE + 48 + 48 * number, line, 37, colour=SOFT, anchor="middle")


def _cautions(cautions: Sequence[str]) -> tuple[float, Sequence[str]]:
    """The cautions at the foot, each on its own lines; and where they begin."""
    lines = [line for one in cautions for line in textwrap.wrap(f"• {one}", 92)]
    y = HEIGHT - EDGE - 44.0 * (len(lines) - 1)
    top = y - 66
    drawn = [f'<path d="M{LEFT} {top:g}H{WIDTH - EDGE}" stroke="{INK}" stroke-width="2"/>']
    for line in lines:
        drawn.append(_text(LEFT + (0 if line.startswith("•") else 28), y, line, 36))
        y += 44
    return top, drawn


def _text(
    x: float,
    y: float,
    words: str,
    size: int,
    *,
    weight: str = "normal",
    colour: str = INK,
    anchor: str = "start",
) -> str:
    return (
        f'<text x="{x:g}" y="{y:g}" font-size="{size}" font-weight="{weight}" fill="{colour}" '
        f'text-anchor="{anchor}">{escape(words)}</text>'
    )
