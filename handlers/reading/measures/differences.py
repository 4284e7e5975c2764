"""How much less, or more, it was than something else: "1 kg less", "200 g more than yesterday"."""

from collections.abc import Sequence

from handlers.reading.measures.amounts import Amount
from handlers.reading.words.vocabulary import words_in

_LESS = words_in("less minus")
_THAN = words_in("more heavier lighter")
CUES = _LESS | _THAN
"""Words without one of which no amount is a difference."""
_ENDS = words_in(
    ". , ; ! ? ) than in into from to for on please pls this that today now again sorry actually "
    "so and but i we"
)
_FARTHEST = 4
"""Words of what the amount is of, before "less"; "of" among them."""


def is_difference(norms: Sequence[str], end: int) -> bool:
    """Whether the amount that ends there is only how far another thing is from it.

    "2 kg less the bucket" and "2 kg less 10 %" are amounts, with what is taken off them.
    """
    if norms[end : end + 1] == ["of"]:
        reach = range(end + 1, min(end + _FARTHEST, len(norms)))
        end = next((i for i in reach if norms[i] in CUES), end)
    behind = norms[end + 1] if end + 1 < len(norms) else ""
    if end < len(norms) and norms[end] in _THAN:
        return behind == "than"
    return end < len(norms) and norms[end] in _LESS and (not behind or behind in _ENDS)


def with_differences(norms: Sequence[str], amounts: Sequence[Amount]) -> list[Amount]:
    """The amounts, those that are told of another one as such: they measure nothing."""
    return [a.of_nothing() if a.factor and is_difference(norms, a.end) else a for a in amounts]
