"""The scores: the weights of a message's features, added up for all kinds at once."""

from fractions import Fraction
from importlib.resources import files

import pytest

from handlers.reading.message import read_message
from handlers.reading.questions.asks import ASKED_KINDS
from handlers.reading.records import RECORD_KINDS
from handlers.reading.replies import REPLY_KINDS
from handlers.reading.scores import scores_of
from tests.reading.context import group


def written() -> dict[str, tuple[list[Fraction], dict[str, Fraction]]]:
    """Bias and limits, and weights by feature, of each kind as the file has them."""
    lexicon = files("handlers.reading").joinpath("lexicon", "weights.txt")
    kinds: dict[str, tuple[list[Fraction], dict[str, Fraction]]] = {}
    marked: dict[str, dict[str, Fraction]] = {}
    for line in lexicon.read_text(encoding="utf-8").splitlines():
        first, *rest = line.split("\t")
        if len(rest) > 1:
            marked[first] = {}
            kinds[rest[0]] = [Fraction(number) for number in rest[1:]], marked[first]
        elif rest:
            for weight in rest[0].split():
                marked[weight[0]][first] = Fraction(weight[1:])
    return kinds


@pytest.mark.parametrize(
    "text",
    [
        "",
        "added 2 kg scraps to the shed bin",
        "how much bran for a kilo of peel? and who has bin 3 now",
        "see you on Saturday, no rain I hope",
        "sealed the shed, drained 300 ml from bin 3, is white fluff ok? sorry, 3 kg. " * 30,
    ],
)
def test_each_score_is_the_sum_of_its_own_weights(text: str) -> None:
    scores = scores_of(read_message(text, group()))
    sure = []
    for kind, ((bias, may, least), weights) in written().items():
        score = bias + sum(weights.get(name, Fraction(0)) for name in scores.found)
        assert scores.log_odds[kind] == float(score)
        assert scores.may(kind) == (score >= may)
        sure += [kind] if score >= least else []
    assert set(scores.sure()) == set(sure)


def test_a_score_within_a_stretch_is_of_the_features_that_stand_there() -> None:
    scores = scores_of(read_message("added 2 kg to the shed, see you on Saturday", group()))
    weights = written()["layer"][1]
    inside = [name for name, at in scores.found.items() if at < 4]
    assert scores.within("layer", 0, 4) == float(sum(weights.get(n, Fraction(0)) for n in inside))


def test_every_kind_that_is_looked_for_only_if_it_may_be_told_is_scored() -> None:
    assert written().keys() >= RECORD_KINDS | REPLY_KINDS | ASKED_KINDS
