"""Learns the weights of the scores from the labelled messages: `python -m tests.reading.train`.

One logistic regression for each kind of act, over the features of a message. Messages that are
kept aside are never learned from. Some hands wrote only what was read wrongly: that teaches what
words can mean, but not how often they do. So each feature has a weight learned from all messages
and one more from those of the other hands; their sum is what counts (H. Daumé III, Frustratingly
Easy Domain Adaptation, ACL 2007). Needs scikit-learn (the extra `train`); the program does not.
"""

import argparse
import sys
from collections import Counter, defaultdict
from collections.abc import Sequence
from math import log
from pathlib import Path
from string import ascii_letters
from typing import Any

import numpy as np
from scipy.sparse import csr_matrix, diags, hstack
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

from handlers.reading.features import features
from handlers.reading.message import read_message
from handlers.reading.records import RECORD_KINDS
from tests.reading.corpus import FOLDER, context_of, messages, taught

WEIGHTS = Path("handlers/reading/lexicon/weights.txt")
STRENGTH = 1.0
"""Inverse of the L2 penalty."""
HARDER = frozenset(
    f"taught_{hand}.txt" for hand in ("ab", "ac", "ad", "ae", "af", "ag", "ea", "eb", "ec", *"xyz")
)
"""Files of the hands that wrote what was read wrongly."""
OF_THEIR_OWN = 1.0
"""Scale of the features of the other hands: the larger, the freer are their own weights."""
LEAST_SEEN = 2
"""Messages that must have a feature before it is learned."""
LEAST_WEIGHT = 0.12
"""Smaller weights are left out: they change nothing and fill the file."""
LEAST_TOLD = 3
"""Labelled acts of a kind before it is scored at all."""

SURE, SURE_OF_RECORD = 0.55, 0.55
"""Likelihoods from which no rule is needed."""
MAY, MAY_BE = 0.05, {"batch": 0.16}
"""Likelihoods below which no rule is believed; starter that was bought ready-made is no batch."""

Row = dict[str, Any]


def to_learn_from() -> list[str]:
    """The files of labelled messages that are not kept aside."""
    names = [p.name for p in FOLDER.iterdir() if p.suffix in (".jsonl", ".txt")]
    return sorted(name for name in names if not name.startswith("kept_"))


def rows_of(name: str) -> list[Row]:
    """The labelled messages of a file; of a `.txt` only the kinds of their acts are known."""
    rows = messages(name) if name.endswith(".jsonl") else taught(name)
    return [{**row, "harder": name in HARDER} for row in rows]


def kind_of(act: Row) -> str:
    """An act's name in the scores: a question has its topic with it."""
    return f"ask {act.get('topic', '')}" if act["act"] == "ask" else str(act["act"])


def learned(rows: Sequence[Row]) -> dict[str, tuple[float, dict[str, float]]]:
    """Bias and weights by feature for each kind of act."""
    names = [list(features(read_message(r["body"], context_of(r)))) for r in rows]
    seen = Counter(name for each in names for name in each)
    book = DictVectorizer()
    table = book.fit_transform([{n: 1.0 for n in each if seen[n] >= LEAST_SEEN} for each in names])
    own = np.array([0.0 if row["harder"] else OF_THEIR_OWN for row in rows])
    both = csr_matrix(hstack([table, diags(own) @ table, own[:, np.newaxis]]))
    both.indices, both.indptr = both.indices.astype("int32"), both.indptr.astype("int32")
    told = [{kind_of(act) for act in row["expect"]} for row in rows]
    out = {}
    for kind in sorted(set().union(*told)):
        wanted = np.array([kind in acts for acts in told])
        if wanted.sum() >= LEAST_TOLD:
            model = LogisticRegression(C=STRENGTH, solver="liblinear", max_iter=500)
            model.fit(both, wanted)
            of_all, of_own, bias = np.split(model.coef_[0], [table.shape[1], 2 * table.shape[1]])
            by_name = zip(book.feature_names_, of_all + OF_THEIR_OWN * of_own, strict=True)
            kept = {n: float(w) for n, w in by_name if abs(w) >= LEAST_WEIGHT}
            out[kind] = float(model.intercept_[0] + OF_THEIR_OWN * bias[0]), kept
    return out


def text_of(models: dict[str, tuple[float, dict[str, float]]]) -> str:
    """The weights as the file holds them: a line for each kind, then one for each feature."""
    lines, by_feature = list[str](), defaultdict[str, list[str]](list)
    for mark, (kind, (bias, weights)) in zip(
        ascii_letters[: len(models)], models.items(), strict=True
    ):
        limits = (log(p / (1 - p)) for p in _limits(kind))
        lines.append("\t".join([mark, kind, *(f"{number:.2f}" for number in (bias, *limits))]))
        for feature, weight in weights.items():
            by_feature[feature].append(f"{mark}{weight:.2f}")
    lines += ["", *(f"{name}\t{' '.join(by_feature[name])}" for name in sorted(by_feature))]
    return "\n".join(lines) + "\n"


def _limits(kind: str) -> tuple[float, float]:
    """The likelihoods below which no rule is believed, and from which none is needed."""
    return MAY_BE.get(kind, MAY), SURE_OF_RECORD if kind in RECORD_KINDS else SURE


def main() -> None:
    """Learns from every file that is not kept aside and writes the weights."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--without", action="append", default=[], metavar="FILE")
    parser.add_argument("--to", type=Path, default=WEIGHTS)
    args = parser.parse_args()
    rows = [row for name in to_learn_from() if name not in args.without for row in rows_of(name)]
    args.to.write_text(text_of(learned(rows)), encoding="utf-8")
    sys.stdout.write(f"learned from {len(rows)} messages\n")


if __name__ == "__main__":
    main()
