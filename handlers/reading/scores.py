"""How likely each act is in a message: weights of its features, learned from labelled messages.

`lexicon/weights.txt` holds them, kind by kind; `python -m tests.reading.train` makes it anew.
The rules say what an act's fields are; the scores say whether it was told at all.
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from math import exp
from typing import NamedTuple

from handlers.reading.features import Feature, features
from handlers.reading.message import Message


class _Kind(NamedTuple):
    """One act, or one topic of a question: its bias, and the log-odds from which it counts."""

    name: str
    bias: float
    may: float
    """Below it the act was not told, whatever a rule says."""
    sure: float
    """From it the act was told, whether or not a rule found it."""


class _Weights(NamedTuple):
    kinds: tuple[_Kind, ...]
    by_feature: dict[str, tuple[tuple[int, float], ...]]


@dataclass(frozen=True, slots=True)
class Scores:
    """Log-odds of each kind of act in one message."""

    log_odds: dict[str, float]
    found: Sequence[Feature]

    def may(self, kind: str) -> bool:
        """Whether a rule that finds such an act is believed."""
        known = _limits().get(kind)
        return known is None or self.log_odds[kind] >= known.may

    def knows(self, kind: str) -> bool:
        """Whether there are weights for that kind of act."""
        return kind in self.log_odds

    def any_may(self, of: Collection[str] | None = None) -> bool:
        """Whether any kind of act at all, or of those kinds, may have been told."""
        limits = _limits()
        kinds = self.log_odds if of is None else of
        return any(self.log_odds[kind] >= limits[kind].may for kind in kinds)

    def sure(self) -> list[str]:
        """The kinds of act that were told, even if no rule found one; the likeliest first."""
        limits = _limits()
        told = [k for k, score in self.log_odds.items() if score >= limits[k].sure]
        return sorted(told, key=lambda k: -self.log_odds[k])

    def within(self, kind: str, start: int, end: int) -> float:
        """What words[start:end] speak for the kind."""
        index = next(i for i, k in enumerate(_weights().kinds) if k.name == kind)
        by_feature = _weights().by_feature
        return sum(
            weight
            for feature in self.found
            if start <= feature.at < end
            for i, weight in by_feature.get(feature.name, ())
            if i == index
        )

    def reasons(self, kind: str, most: int = 5) -> list[str]:
        """The features that weigh most in it, with their weights."""
        index = next(i for i, k in enumerate(_weights().kinds) if k.name == kind)
        found = [
            (weight, feature.name)
            for feature in self.found
            for i, weight in _weights().by_feature.get(feature.name, ())
            if i == index
        ]
        found.sort(key=lambda pair: -abs(pair[0]))
        return [f"{weight:+.2f} {name}" for weight, name in found[:most]]


def scores_of(message: Message) -> Scores:
    """The scores of a message's features."""
    weights = _weights()
    totals = [kind.bias for kind in weights.kinds]
    found = features(message)
    by_feature = weights.by_feature
    for name, _ in found:
        for i, weight in by_feature.get(name, ()):
            totals[i] += weight
    return Scores({k.name: t for k, t in zip(weights.kinds, totals, strict=True)}, found)


def likelihood(log_odds: float) -> float:
    """Log-odds as a probability between 0 and 1."""
    return 1 / (1 + exp(-max(-40.0, min(40.0, log_odds))))


@cache
def _limits() -> dict[str, _Kind]:
    return {kind.name: kind for kind in _weights().kinds}


@cache
def _weights() -> _Weights:
    """A line `[kind] bias may sure`, then a line `weight feature` for each feature of the kind."""
    kinds: list[_Kind] = []
    by_feature: dict[str, list[tuple[int, float]]] = {}
    text = files("handlers.reading").joinpath("lexicon", "weights.txt").read_text(encoding="utf-8")
    for line in text.splitlines():
        if line.startswith("["):
            name, _, numbers = line[1:].partition("]")
            kinds.append(_Kind(name, *(float(n) for n in numbers.split())))
        else:
            weight, _, feature = line.partition(" ")
            by_feature.setdefault(feature, []).append((len(kinds) - 1, float(weight)))
    return _Weights(tuple(kinds), {name: tuple(rows) for name, rows in by_feature.items()})
