"""Learns the weights of the scores from the labelled messages: `python -m tests.reading.train`.

A few networks, each with one hidden layer of rectified units over the features of a message, tell
all kinds of act at once; the mean of what they tell is steadier than any of them (L. K. Hansen and
P. Salamon, Neural Network Ensembles, IEEE PAMI 1990), and is one network with all their units.
Messages that are kept aside are never learned from. While a network learns, some features of each
message and some units are left out at random, so that none is leaned on alone (N. Srivastava and
others, Dropout, JMLR 2014). Some hands wrote only what was read wrongly: that
teaches what words can mean, but not how often they do, so a feature of its own says whose message
it is, and nobody's message has it when it is read. Needs PyTorch (the extra `train`); the program
does not.
"""

import argparse
import random
import sys
from collections import Counter
from collections.abc import Sequence
from itertools import accumulate
from pathlib import Path
from typing import Any, NamedTuple

import torch
from torch import Tensor, nn

from handlers.reading.features import features
from handlers.reading.message import read_message
from handlers.reading.weights import NAUGHT, ONE
from tests.reading.corpus import FOLDER, context_of, messages, taught

WEIGHTS = Path("handlers/reading/lexicon/weights.txt")
HARDER = frozenset(
    f"taught_{hand}.txt" for hand in ("ab", "ac", "ad", "ae", "af", "ag", "ea", "eb", "ec", *"xyz")
)
"""Files of the hands that wrote what was read wrongly."""
OF_HARDER, OF_WHOLE_LABELS = 0.5, 3.0
"""How much their messages count, and those of whole labels, which are the likest to a room's."""
LEAST_SEEN = 8
"""Messages that must have a feature before it is learned."""
LEAST_TOLD = 3
"""Labelled acts of a kind before it is scored at all."""

NETS, UNITS = 4, 32
"""Networks, and units in the hidden layer of each."""
LEFT_OUT, AT_REST = 0.5, 0.1
"""Shares of the features and of the units that are left out at random."""
ROUNDS, TOGETHER, STEP = 6, 128, 0.006
"""Times that all messages are learned from, messages in a step, and its size at first."""

MARKS = 47
"""The largest weight in the file, either way: what one printable character can tell."""

Row = dict[str, Any]


def to_learn_from() -> list[str]:
    """The files of labelled messages that are not kept aside."""
    names = [p.name for p in FOLDER.iterdir() if p.suffix in (".jsonl", ".txt")]
    return sorted(name for name in names if not name.startswith("kept_"))


def rows_of(name: str) -> list[Row]:
    """The labelled messages of a file; of a `.txt` only the kinds of their acts are known."""
    whole = name.endswith(".jsonl")
    counts = OF_HARDER if name in HARDER else OF_WHOLE_LABELS if whole else 1.0
    rows = messages(name) if whole else taught(name)
    return [{**row, "harder": name in HARDER, "counts": counts} for row in rows]


def kind_of(act: Row) -> str:
    """An act's name in the scores: a question has its topic with it."""
    return f"ask {act.get('topic', '')}" if act["act"] == "ask" else str(act["act"])


class Net(nn.Module):  # type: ignore[misc]  # without PyTorch its classes are unknown
    """Features to units to kinds."""

    def __init__(self, known: int, kinds: int) -> None:
        super().__init__()
        self.by_feature = nn.EmbeddingBag(known, UNITS, mode="sum", sparse=True)
        nn.init.normal_(self.by_feature.weight, 0, 0.02)
        self.at_rest = nn.Parameter(torch.zeros(UNITS))
        self.kinds = nn.Linear(UNITS, kinds)
        nn.init.constant_(self.kinds.bias, -4)  # most kinds are rare

    def forward(self, rows: Sequence[Tensor]) -> Tensor:
        """The log-odds of each kind in each message, given as its features."""
        starts = torch.tensor([0, *accumulate(len(row) for row in rows[:-1])])
        told = self.by_feature(torch.cat(list(rows)), starts)
        units = torch.relu(told / self._share_there() + self.at_rest)
        odds: Tensor = self.kinds(nn.functional.dropout(units, AT_REST, self.training))
        return odds

    def _share_there(self) -> float:
        """Of the features: while it learns, those that are there stand for all."""
        return 1 - LEFT_OUT if self.training else 1.0


class Learned(NamedTuple):
    """What was learned: the names of the kinds and features, and the networks."""

    kinds: list[str]
    known: list[str]
    nets: list[Net]


def learned(rows: Sequence[Row]) -> Learned:
    """The networks that tell the kinds of act of these messages."""
    found = [list(features(read_message(r["body"], context_of(r)))) for r in rows]
    seen = Counter(name for each in found for name in each)
    known = [name for name, times in seen.items() if times >= LEAST_SEEN]
    number = {name: n for n, name in enumerate(known)}
    harder = [len(known)]
    given = [
        torch.tensor(
            [number[n] for n in each if n in number] + harder * row["harder"], dtype=torch.long
        )
        for each, row in zip(found, rows, strict=True)
    ]
    told = [{kind_of(act) for act in row["expect"]} for row in rows]
    often = Counter(kind for kinds in told for kind in kinds)
    kinds = sorted(kind for kind, times in often.items() if times >= LEAST_TOLD)
    wanted = torch.tensor([[float(kind in acts) for kind in kinds] for acts in told])
    counts = torch.tensor([row["counts"] for row in rows])
    nets = [_learn(n, given, wanted, counts, len(known) + 1) for n in range(NETS)]
    return Learned(kinds, known, nets)


def _learn(
    seed: int, given: Sequence[Tensor], wanted: Tensor, counts: Tensor, features: int
) -> Net:
    """A network that has learned in steps that grow smaller, down to nothing at the end."""
    torch.manual_seed(seed)
    net = Net(features, wanted.shape[1])
    sparse = torch.optim.SparseAdam([net.by_feature.weight], lr=STEP)
    dense = torch.optim.Adam([net.at_rest, *net.kinds.parameters()], lr=STEP)
    order = list(range(len(given)))
    draw = random.Random(seed)
    steps = ROUNDS * (len(order) // TOGETHER + 1)
    done = 0
    for _ in range(ROUNDS):
        draw.shuffle(order)
        for first in range(0, len(order), TOGETHER):
            some = order[first : first + TOGETHER]
            for group in (*sparse.param_groups, *dense.param_groups):
                group["lr"] = STEP * (1 - done / steps)
            rows = [given[n][torch.rand(len(given[n])) >= LEFT_OUT] for n in some]
            loss = nn.functional.binary_cross_entropy_with_logits(
                net(rows), wanted[some], reduction="none"
            )
            sparse.zero_grad()
            dense.zero_grad()
            (loss.sum(1) * counts[some]).mean().backward()
            sparse.step()
            dense.step()
            done += 1
    return net


def text_of(found: Learned) -> str:
    """What was learned, as the file holds it (`handlers/reading/weights.py` reads it).

    Each unit is scaled so that its largest weight is the last mark; what it weighs for the kinds
    is scaled the other way, which leaves what it tells unchanged.
    """
    with torch.no_grad():
        by_feature = torch.cat([net.by_feature.weight[:-1] for net in found.nets], dim=1)
        scale = by_feature.abs().amax(0) / MARKS
        marks = (by_feature / scale).round().int().tolist()
        at_rest = (torch.cat([net.at_rest for net in found.nets]) / scale).round().int().tolist()
        for_kinds = torch.cat([net.kinds.weight for net in found.nets], dim=1) / NETS
        by_unit = (for_kinds * scale * ONE).round().int().tolist()
        bias = torch.stack([net.kinds.bias for net in found.nets]).mean(0)
        biases = (bias * ONE).round().int().tolist()
    lines = list[str]()
    for kind, bias, units in zip(found.kinds, biases, by_unit, strict=True):
        lines.append("\t".join(map(str, (kind, bias, *units))))
    told = sorted(zip(found.known, marks, strict=True))
    rows = ["".join(chr(NAUGHT + mark) for mark in row) for _, row in told]
    parts = [lines, ["\t".join(map(str, at_rest))], [name for name, _ in told], rows]
    return "\n\n".join("\n".join(part) for part in parts) + "\n"


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
