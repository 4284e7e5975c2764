"""Words and figures of proportion: "mostly", "a third", "40%", "60/40", "hardly any"."""

import re
from collections.abc import Collection, Sequence
from typing import NamedTuple

from handlers.reading.words.vocabulary import words_in


class Said(NamedTuple):
    """A share in words or figures."""

    share: float
    vague: bool = False


MOST = words_in(
    "mostly maistly mainly largely chiefly primarily predominantly mostley moslty majority most"
)
_ALL = words_in("all entirely purely only solely pure completely wholly just")
_SOME = words_in("some plus incl including")
_LITTLE = words_in(
    "bit little few touch tad splash smidge smidgen sprinkle hint dash dab couple odd "
    "cachito poquito smattering drop scrap handful stray scrape smear lick knob trace traces "
    "drizzle pinch speck sliver slivers morsel whisper glug likkle lickle liddle skerrick wisp "
    "shred shreds dregs thoda thodi thode konting kaunting sikit sedikit bisschen beetje"
)
_DONE = words_in("drop splash dash touch sprinkle scrape smear lick drizzle pinch trace glug")
_ONE = words_in("a an one wee tiny small little single last the every")
_HARDLY = words_in("hardly barely scarcely")
_MUCH = words_in("much many lot")
_EATEN = words_in("touched ate eaten tasted nibbled tried finished started used")
PERCENT = words_in("% percent pct")


def share_of(
    norms: Sequence[str], near: Sequence[str], end: int, foods: Collection[int]
) -> Said | None:
    """The share of the thing that ends at a word: said before it (`near`) or behind it.

    `foods` are the indexes of the first words of all things named.
    """
    percents = not PERCENT.isdisjoint(norms)
    behind = percents and _percents_stand_behind(norms, foods)
    stated = _stated([norm for norm in near if norm not in PERCENT] if behind else near)
    if stated is not None:
        return stated
    after = norms[end : end + 1]
    if after and after[0] in MOST:
        return Said(0.7)
    if after and after[0] == "only" and norms[end + 1 : end + 2] in ([], ["."], ["!"]):
        return Said(1.0)
    much = end + 2 + (list(norms[end : end + 3]) == ["a", "little", "bit"])
    if tuple(norms[end : end + 2]) in _A_LITTLE and _ends(norms, much):
        return Said(0.1, vague=True)
    if list(norms[end : end + 1]) == ["small"] and near == ["with"] and _ends(norms, end + 1):
        return Said(0.1, vague=True)  # "with meat small"
    if any(
        tuple(norms[end : end + length]) in _IN_IT_TOO and _ends(norms, end + length)
        for length in (2, 3)
    ):
        return Said(0.3, vague=True)
    return _percent_behind(norms, end, foods, behind) if percents else None


_IN_IT_TOO = frozenset(
    {("also", "inside"), ("inside", "also"), ("inside", "too"), ("bhi", "hai")}
    | {(*words, "too") for words in (("in", "there"), ("in", "it"), ("mixed", "in"))}
)
""" "Fried rice, prawns also inside", "curry, there's raita in there too": some of it."""
_A_LITTLE = frozenset(
    {("a", "little"), ("a", "bit"), ("a", "few"), ("very", "little"), ("small", "small")}
)


def _ends(norms: Sequence[str], at: int) -> bool:
    return not (norms[at : at + 1] and norms[at][0].isalpha() and norms[at] not in _BEHIND_LITTLE)


_BEHIND_LITTLE = words_in("and only also in into inside to i we put went for from")


def _percents_stand_behind(norms: Sequence[str], foods: Collection[int]) -> bool:
    """Whether the last percentage follows the last thing ("veg 60%, meat 40%")."""
    last = max(i for i, norm in enumerate(norms) if norm in PERCENT)
    return last > max(foods, default=0)


def _percent_behind(
    norms: Sequence[str], at: int, foods: Collection[int], behind: bool
) -> Said | None:
    while at < len(norms) and norms[at] in _BEFORE_PERCENT:
        at += 1
    if norms[at + 1 : at + 2] == [] or norms[at + 1] not in PERCENT:
        return None
    return _percent(norms[at]) if behind or at + 2 not in foods else None


_BEFORE_PERCENT = words_in("( : - = about around roughly approx maybe was is at")


def _percent(figure: str) -> Said | None:
    return Said(min(1.0, int(figure) / 100)) if figure.isdecimal() else None


_FRACTIONS = {
    "half": 0.5, "haf": 0.5, "third": 1 / 3, "thirds": 1 / 3, "quarter": 0.25, "quarters": 0.25,
    "fifth": 0.2, "fifths": 0.2, "tenth": 0.1, "tenths": 0.1,
}  # fmt: skip
_COUNTS = {"two": 2, "2": 2, "three": 3, "3": 3, "four": 4, "4": 4, "nine": 9, "9": 9}
_SHARE_WORDS = (
    dict.fromkeys(MOST, Said(0.7))
    | dict.fromkeys(_HARDLY, Said(0.1))
    | dict.fromkeys(_LITTLE, Said(0.1, vague=True))
    | dict.fromkeys(_ALL, Said(1.0))
    | dict.fromkeys(_SOME, Said(0.3, vague=True))
)


def _stated(near: Sequence[str]) -> Said | None:
    """The share said in the words before a thing; the nearest word of proportion counts."""
    if is_not_much(near):
        return Said(0.1)
    for k in range(len(near) - 1, max(-1, len(near) - 6), -1):
        half = near[k] in ("half", "haf")
        if half and (near[k + 1 : k + 2] in _ONE_OF or near[k - 1 : k] in _ONE_OF):
            continue  # "half a loaf", "a half loaf" is a piece, and no share
        if near[k] in _DONE and near[k + 1 : k + 2] != ["of"] and near[max(0, k - 1)] not in _ONE:
            continue  # "drop one bowl of rice" is done, and no little of it
        if near[k] in _HARDLY and near[k + 1 : k + 2] and near[k + 1] in _EATEN:
            continue  # "he hardly touched the quiche"
        if near[k] == "some" and list(near[k + 1 : k + 3]) in _OF_IT:
            return Said(0.3)
        said = _said_at(near[k], near[k - 1] if k else "")
        if said is not None:
            return said
    return None


_OF_IT = (["of", "it"], ["of", "that"], ["of", "them"], ["of", "which"])
_ONE_OF = (["a"], ["an"])


def _said_at(norm: str, before: str) -> Said | None:
    if norm in _FRACTIONS:
        if norm in ("half", "haf") and (before in _COUNTS or before.isdecimal()):
            return None  # "3 half bananas" are counted
        return Said(min(1.0, _FRACTIONS[norm] * _COUNTS.get(before, 1)))
    if norm in PERCENT:
        return _percent(before)
    if norm[0].isdecimal():
        return _ratio(norm)
    return _SHARE_WORDS.get(norm)


def _ratio(figure: str) -> Said | None:
    """The share in "2/3", or the first one in "60/40" and "60:40"."""
    parts = re.fullmatch(r"(\d{1,2})[/:⁄](\d{1,2})", figure)
    if parts is None:
        return None
    first, other = int(parts[1]), int(parts[2])
    if first + other == 100:
        return Said(first / 100)
    return Said(first / other) if ":" not in figure and first < other <= 10 else None


def is_not_much(near: Sequence[str]) -> bool:
    """ "Not much meat" is a little of it all the same."""
    return "not" in near and not _MUCH.isdisjoint(near[near.index("not") :])
