"""What may go into a bin: yes, with care, or no, and why.

A row is found by its words. Words inside longer ones that match do not count, so that "egg shells"
are no eggs; of what is left the strictest row does, so that mouldy cheese is no cheese.
"""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from handlers.practice.cautions import caution
from handlers.practice.figure import Figure, Reckoning, Refused, quoted
from handlers.practice.goes_in import GOES_IN, OF_KIND, Row, Verdict, row
from handlers.practice.kinds import Kind
from handlers.practice.stays_out import STAYS_OUT


@dataclass(frozen=True, slots=True, kw_only=True)
class Allowed(Reckoning):
    """Whether it may go in, and why."""

    what: str
    allowed: Verdict
    reason: str


MOST_OIL = Figure("oil that a bin bears at once", 0.2, "L", "", "common practice")
MUCH_OIL = row(
    "that much oil",
    "oil",
    "no",
    "it coats the scraps and keeps the ferment out: let it cool and take it to a collection of "
    "used oil, never down the drain",
)
ROWS: tuple[Row, ...] = (*GOES_IN, *STAYS_OUT)
"""Every kind of thing that the trade has a word on."""

_RULE = "anything that was food goes in: cut up, drained, with starter on each layer"


_STRICTNESS: Mapping[Verdict, int] = {"yes": 0, "with care": 1, "no": 2}


def allowed(what: str, kinds: Iterable[Kind] = (), *, volume_l: float | None = None) -> Allowed:
    """Whether that may go in, in the words somebody used, and that much of it if that is said.

    Where no row has the words, the kinds that they were read as decide; with none, Refused.
    """
    rows = rows_named(what) or [row_of(kind) for kind in kinds]
    if not rows and not what.strip():
        raise Refused("What is to go in? Name it, such as chicken bones.")
    if not rows:
        raise Refused(f"I do not know {quoted(what)}, but {_RULE}.")
    found = strictest(rows)
    if found.name == OF_KIND["oil"] and volume_l is not None and volume_l > MOST_OIL.value:
        found = MUCH_OIL
    said = {"yes": "Yes", "with care": "With care", "no": "No"}[found.verdict]
    return Allowed(
        what=found.name,
        allowed=found.verdict,
        reason=found.why,
        steps=(
            f"{quoted(what)} is read as {found.name}",
            f"{found.verdict}, {found.standing}" + (f": {found.source}" if found.source else ""),
        ),
        figures=(MOST_OIL,) if found is MUCH_OIL else (),
        lines=(
            f"{said}, {found.name}: {found.why}.",
            *((caution(found.care),) if found.care else ()),
        ),
    )


def strictest(rows: Iterable[Row]) -> Row:
    """The row that decides where something is of several."""
    return max(rows, key=lambda row: _STRICTNESS[row.verdict])


def row_of(kind: Kind) -> Row:
    """The row that stands for a kind."""
    return _NAMED[OF_KIND[kind]]


def rows_named(what: str) -> list[Row]:
    """Rows that the words name, the longest words first."""
    text = f" {' '.join(_singular(word) for word in re.findall('[a-zà-ÿ]+', what.lower()))} "
    near = (phrase for word in set(text.split()) for phrase in _BY_FIRST_WORD.get(word, ()))
    found = sorted((phrase for phrase in near if f" {phrase} " in text), key=_RANKS.__getitem__)
    whole = [
        phrase
        for phrase in found
        if not any(phrase != longer and f" {phrase} " in f" {longer} " for longer in found)
    ]
    return [_PHRASES[phrase] for phrase in whole]


def _singular(word: str) -> str:
    if word.endswith("ies") and len(word) > 4:
        return word[:-3] + "y"
    if word.endswith(("eaves", "oaves")):
        return word[:-3] + "f"
    if word.endswith("ie") and len(word) > 3:
        return word[:-2] + "y"
    if word.endswith(("oes", "ches", "shes", "xes", "sses")):
        return word[:-2]
    return word[:-1] if word.endswith("s") and not word.endswith("ss") and len(word) > 3 else word


_PHRASES: Mapping[str, Row] = {
    " ".join(_singular(word) for word in phrase.split()): row
    for row in ROWS
    for phrase in row.words
}
_RANKS = {phrase: k for k, phrase in enumerate(sorted(_PHRASES, key=len, reverse=True))}
"""The longest phrase first."""
_BY_FIRST_WORD: dict[str, list[str]] = {}
for _phrase in _PHRASES:
    _BY_FIRST_WORD.setdefault(_phrase.partition(" ")[0], []).append(_phrase)
_NAMED: Mapping[str, Row] = {row.name: row for row in ROWS}
