"""How likely each act is in a message: weights of its features, learned from labelled messages.

`lexicon/weights.txt` holds them, kind by kind; `python -m tests.reading.train` makes it anew.
The rules say what an act's fields are; the scores say whether it was told at all.
"""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import repeat
from math import exp
from typing import NamedTuple

from handlers.reading.features import features
from handlers.reading.message import Message


class _Kind(NamedTuple):
    """One act, or one topic of a question, and the log-odds from which it counts."""

    name: str
    may: float
    """Below it the act was not told, whatever a rule says."""
    sure: float
    """From it the act was told, whether or not a rule found it."""


class _Weights(NamedTuple):
    """The kinds, and the weights of each feature for all of them side by side in one number.

    Each kind has a lane of so many bits, so that one addition adds a feature to the scores of all.
    Weights are told in hundredths: their sums are exact, in whatever order they are added.
    """

    kinds: tuple[_Kind, ...]
    bias: int
    """What speaks for each kind before anything is said."""
    by_feature: dict[str, int]

    def together(self, features: Iterable[str]) -> int:
        """What some features weigh together, for each kind in its lane."""
        return sum(map(self.by_feature.get, features, repeat(0)), _level(len(self.kinds)))


_LANE = 32
_HALF = 1 << _LANE - 1
_MASK = (1 << _LANE) - 1


@cache
def _level(lanes: int) -> int:
    """Nought in each lane; it lies half up the lane, so that nothing is borrowed from the next."""
    return sum(_HALF << _LANE * lane for lane in range(lanes))


def _weight(together: int, lane: int) -> float:
    """The weight that stands in a lane."""
    return ((together >> _LANE * lane & _MASK) - _HALF) / 100


@dataclass(frozen=True, slots=True)
class Scores:
    """Log-odds of each kind of act in one message."""

    log_odds: dict[str, float]
    found: Mapping[str, int]
    """Its features, each with the word that it stands at."""
    believed: frozenset[str]
    """The kinds that may have been told."""

    def may(self, kind: str) -> bool:
        """Whether a rule that finds such an act is believed."""
        return kind in self.believed or kind not in self.log_odds

    def knows(self, kind: str) -> bool:
        """Whether there are weights for that kind of act."""
        return kind in self.log_odds

    def any_may(self, of: Collection[str] | None = None) -> bool:
        """Whether any kind of act at all, or of those kinds, may have been told."""
        return bool(self.believed) if of is None else any(map(self.may, of))

    def sure(self) -> list[str]:
        """The kinds of act that were told, even if no rule found one; the likeliest first."""
        if not self.believed:
            return []
        told = [k.name for k in _weights().kinds if self.log_odds[k.name] >= k.sure]
        return sorted(told, key=lambda k: -self.log_odds[k])

    def within(self, kind: str, start: int, end: int) -> float:
        """What words[start:end] speak for the kind."""
        inside = (name for name, at in self.found.items() if start <= at < end)
        return _weight(_weights().together(inside), _lane(kind))

    def reasons(self, kind: str, most: int = 5) -> list[str]:
        """The features that weigh most in it, with their weights."""
        weights, lane = _weights(), _lane(kind)
        weighed = [(_weight(weights.together([name]), lane), name) for name in self.found]
        weighed.sort(key=lambda pair: -abs(pair[0]))
        return [f"{weight:+.2f} {name}" for weight, name in weighed[:most] if weight]


def scores_of(message: Message) -> Scores:
    """The scores of a message's features."""
    found = features(message)
    weights = _weights()
    together = weights.bias + weights.together(found)
    log_odds = {kind.name: _weight(together, lane) for lane, kind in enumerate(weights.kinds)}
    believed = frozenset([k.name for k in weights.kinds if log_odds[k.name] >= k.may])
    return Scores(log_odds, found, believed)


def likelihood(log_odds: float) -> float:
    """Log-odds as a probability between 0 and 1."""
    return 1 / (1 + exp(-max(-40.0, min(40.0, log_odds))))


@cache
def _lane(kind: str) -> int:
    return next(n for n, known in enumerate(_weights().kinds) if known.name == kind)


@cache
def _weights() -> _Weights:
    """A line `[kind] bias may sure`, then a line `weight feature` for each feature of the kind."""
    kinds: list[_Kind] = []
    total = shift = 0
    by_feature: dict[str, int] = {}
    text = files("handlers.reading").joinpath("lexicon", "weights.txt").read_text(encoding="utf-8")
    for line in text.splitlines():
        if line.startswith("["):
            name, _, numbers = line[1:].partition("]")
            bias, may, sure = (float(number) for number in numbers.split())
            shift = _LANE * len(kinds)
            kinds.append(_Kind(name, may, sure))
            total += round(100 * bias) << shift
        else:
            weight, _, feature = line.partition(" ")
            hundredths = round(100 * float(weight))
            by_feature[feature] = by_feature.get(feature, 0) + (hundredths << shift)
    return _Weights(tuple(kinds), total, by_feature)
