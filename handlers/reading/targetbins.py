"""Bins never named before and not called bins: "to Portable B", "added 1 kg to zebra"."""

from collections.abc import Sequence

from handlers.reading.binwords import PLACE_NAMES, BinRef
from handlers.reading.names import is_part
from handlers.reading.newbins import DIGITS, GENERIC, joined, written
from handlers.reading.vocabulary import vocabulary, words_in
from handlers.reading.words import Word


def target_bins(
    words: Sequence[Word],
    norms: Sequence[str],
    taken: frozenset[int],
    *,
    no_names: bool,
    by_one_word: bool,
) -> tuple[BinRef, ...]:
    """Bins never named before and not called bins: "to Portable B", "in the shed".

    A place counts only in a group that has no names yet (`no_names`); a single word ("to Dot") only
    with `by_one_word`.
    """
    out: list[BinRef] = []
    for i in [i for i, norm in enumerate(norms[:-1]) if norm in _TO]:
        if i in taken:
            continue
        at = i + 2 if norms[i + 1] in ("the", "our") else i + 1
        end = at
        while (
            end < min(len(words), at + 3) and end not in taken and _is_title(words[end], end > at)
        ):
            end += 1
        if end - at >= (1 if by_one_word and _is_new_word(words, norms, at, end) else 2):
            out.append(BinRef(at, end, written(words, at, end)))
        elif by_one_word and i - 1 in taken and _is_new_word(words, norms, at, at + 1):
            out.append(BinRef(at, at + 1, words[at].text))  # "added 1 kg to zebra"
        elif by_one_word and i - 1 in taken and at not in taken and _is_glued(words, at):
            out.append(BinRef(at, at + 2, written(words, at, at + 2)))  # "added 1 kg to plot7"
        elif no_names and at < len(words) and at not in taken and norms[at] in PLACE_NAMES:
            after = norms[at + 1] if at + 1 < len(norms) else ""
            if not is_part(norms[at - 1], after, True, True):
                out.append(BinRef(at, at + 1, words[at].text, place=True))
    return tuple(out)


_TO = frozenset({"in", "into", "to", "off", "from"})


def _is_glued(words: Sequence[Word], at: int) -> bool:
    """Whether a word and a number stand there as one ("plot7")."""
    if at + 1 >= len(words) or words[at].kind != "word" or words[at + 1].kind != "number":
        return False
    return joined(words, at + 1) and len(words[at + 1].text) <= DIGITS


def _is_new_word(words: Sequence[Word], norms: Sequence[str], at: int, end: int) -> bool:
    """Whether "to Dot" ends there, with a word that is known for nothing else."""
    if at >= len(words) or at >= end or words[at].kind != "word":
        return False
    ends = end == len(words) or words[end].kind == "sign" or norms[end] in _BEHIND_NAME
    known = norms[at] in vocabulary() or norms[at] in GENERIC | _NO_NAMES
    new = not known or norms[at] in PLACE_NAMES
    return norms[at - 1] in ("to", "into") and new and ends


_NO_NAMES = words_in(
    "mine ours yours theirs hers him them everything everyone somebody someone anything something "
    "soak rot begin ferment top bottom bed make share eat waste work school town church myself"
)
_BEHIND_NAME = words_in("today yesterday just now this last at and with mostly")


def _is_title(word: Word, further: bool) -> bool:
    """Whether a word may be of a name: a capital; further on also a number or a letter."""
    if word.kind == "number":
        return further and len(word.text) <= 2
    titled = word.kind == "word" and word.text[:1].isupper()
    return titled and word.norm not in _WEEK and word.norm not in _TO


_WEEK = words_in(
    "monday tuesday wednesday thursday friday saturday sunday january february march april "
    "may june july august september october november december i christmas easter"
)
