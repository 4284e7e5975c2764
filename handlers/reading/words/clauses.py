"""The clauses of a message, in order, and what one of them says of another's sense."""

from collections.abc import Sequence
from itertools import pairwise

from handlers.reading.words.asking import is_denial
from handlers.reading.words.sentences import Clause, Cutter, Sentence


def clauses_of(sentences: Sequence[Sentence], cutter: Cutter) -> list[Clause]:
    """All clauses in order, each with its sense."""
    norms = cutter.said
    out = [cutter.cut(sentence, k) for k, sentence in enumerate(sentences)]
    for k, (sentence, answer) in enumerate(pairwise(sentences)) if len(out) > 1 else ():
        said = norms[answer.start : answer.end]
        if sentence.asked and is_denial(said, answer.start, _days(sentence, cutter)):
            _deny(out[k])
    clauses = [clause for each in out for clause in each]
    if '"' in norms:
        _set_quoted_aside(norms, clauses)
    return clauses


def _days(asked: Sentence, cutter: Cutter) -> frozenset[int]:
    """The words of days on which it may have been done; all, where it is asked of some day."""
    words = range(asked.start, asked.end)
    days = cutter.behind | cutter.coming
    today = not _TODAY.isdisjoint(cutter.said[asked.start : asked.end])
    return days if today or not days.isdisjoint(words) else cutter.behind


_TODAY = frozenset({"today", "tonight"})


def _deny(clauses: Sequence[Clause]) -> None:
    """ "Drained the shed? No, not I": the sender asks for the others, and denies it; "added
    2 kg, anything else? No" denies no deed.
    """
    last = clauses[-1].verb if clauses else None
    if last is not None and all(clause.sense in ("did", "none") for clause in clauses):
        for clause in clauses:
            clause.sense = "not"


def _set_quoted_aside(norms: Sequence[str], clauses: Sequence[Clause]) -> None:
    """What stands between quotation marks is somebody's words, not the sender's report."""
    marks = [i for i, norm in enumerate(norms) if norm == '"']
    for start, end in zip(marks[::2], marks[1::2], strict=False):
        if end - start < _QUOTED:
            continue
        for clause in clauses:
            inside = start <= clause.start + 1 and clause.end <= end + 1
            if inside and clause.sense in ("did", "none"):
                clause.sense = "said"


_QUOTED = 4
"""Words from mark to mark; with fewer it is a name."""
