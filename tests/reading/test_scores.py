"""The scores: what was learned of a message's features, told for all kinds of act at once."""

from collections.abc import Iterable
from importlib.resources import files
from typing import NamedTuple

import pytest

from handlers.reading.message import read_message
from handlers.reading.questions.asks import ASKED_KINDS
from handlers.reading.records import RECORD_KINDS
from handlers.reading.replies import REPLY_KINDS
from handlers.reading.scores import MAY, SURE, likelihood, scores_of
from handlers.reading.weights import NAUGHT, ONE
from tests.reading.context import group


class Written(NamedTuple):
    """The file, number by number."""

    by_kind: dict[str, list[int]]
    at_rest: list[int]
    by_feature: dict[str, list[int]]

    def log_odds(self, kind: str, names: Iterable[str]) -> float:
        """Those of a kind in a message of such features, reckoned one number after the other."""
        told = [self.by_feature[name] for name in names if name in self.by_feature]
        units: list[int] = [
            max(0, rest + sum(told)) for rest, *told in zip(self.at_rest, *told, strict=True)
        ]
        bias, *weights = self.by_kind[kind]
        total: int = bias + sum(u * w for u, w in zip(units, weights, strict=True))
        return total / ONE


@pytest.fixture(scope="module")
def written() -> Written:
    lexicon = files("handlers.reading").joinpath("lexicon", "weights.txt")
    head, at_rest, *features = lexicon.read_text(encoding="utf-8").split("\n\n")
    kinds = [line.split("\t") for line in head.splitlines()]
    names, rows = (part.splitlines() for part in features)
    return Written(
        {kind: [int(number) for number in numbers] for kind, *numbers in kinds},
        [int(number) for number in at_rest.split("\t")],
        {n: [ord(m) - NAUGHT for m in marks] for n, marks in zip(names, rows, strict=True)},
    )


@pytest.mark.parametrize(
    "text",
    [
        "",
        "added 2 kg scraps to the shed bin",
        "how much bran for a kilo of peel? and who has bin 3 now",
        "see you on Saturday, no rain I hope",
        "sealed the shed, drained 300 ml from bin 3, is white fluff ok? sorry, 3 kg. " * 30,
        "".join(f"the {n}th of the {n} sealed bins stank in row {n}, " for n in range(9000)),
    ],
    ids=["nothing", "layer", "questions", "talk", "many", "64 KiB and more"],
)
def test_the_lanes_tell_what_each_number_tells_by_itself(text: str, written: Written) -> None:
    scores = scores_of(read_message(text, group()))
    sure = set()
    for kind in written.by_kind:
        odds = written.log_odds(kind, scores.found)
        assert scores.log_odds[kind] == odds
        assert scores.may(kind) == (likelihood(odds) >= MAY)
        sure |= {kind} if likelihood(odds) >= SURE else set()
    assert set(scores.sure()) == sure


def test_a_score_within_a_stretch_is_of_the_features_that_stand_there(written: Written) -> None:
    scores = scores_of(read_message("added 2 kg to the shed, see you on Saturday", group()))
    inside = [name for name, at in scores.found.items() if at < 4]
    assert scores.within("layer", 0, 4) == written.log_odds("layer", inside)


def test_a_reason_is_what_the_score_loses_without_it(written: Written) -> None:
    scores = scores_of(read_message("added 2 kg to the shed", group()))
    weight, name = scores.reasons("layer")[0].split(" ", 1)
    others = [other for other in scores.found if other != name]
    lost = written.log_odds("layer", scores.found) - written.log_odds("layer", others)
    assert float(weight) == round(lost, 2)


def test_every_kind_that_is_looked_for_only_if_it_may_be_told_is_scored(written: Written) -> None:
    assert written.by_kind.keys() >= RECORD_KINDS | REPLY_KINDS | ASKED_KINDS
