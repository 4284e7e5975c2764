"""How likely each act is in a message: weights of its features, learned from labelled messages.

`lexicon/weights.txt` holds them, feature by feature; `python -m tests.reading.train` makes it anew.
The rules say what an act's fields are; the scores say whether it was told at all.
"""

from collections.abc import Collection, Iterable, Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files
from itertools import compress
from math import exp
from typing import NamedTuple

from handlers.reading.features import features
from handlers.reading.message import Message


class _ByFeature(dict[str, int]):
    """What each feature weighs, from the text of the file: summed up when it first comes up.

    Of fifty thousand features a talk has some hundreds.
    """

    def __init__(self, told: dict[str, str], lane_of: Mapping[str, int]) -> None:
        super().__init__()
        self._told = told
        self._lane_of = lane_of

    def __missing__(self, feature: str) -> int:
        told = self._told.get(feature)
        if told is None:
            return 0  # it is not kept: of these a talk has no end
        lanes = (
            _hundredths(each[1:]) << _LANE * self._lane_of[each[0]] for each in told.split(" ")
        )
        self[feature] = weight = sum(lanes)
        return weight


class _Weights(NamedTuple):
    """What is known of all kinds of act (or topics of a question) side by side in one number.

    Each kind has a lane of so many bits, so that one addition adds a feature to the scores of all.
    Log-odds are told in hundredths: their sums are exact, in whatever order they are added.
    """

    kinds: tuple[str, ...]
    bias: int
    """What speaks for each kind before anything is said."""
    may: int
    """Below it the act was not told, whatever a rule says."""
    sure: int
    """From it the act was told, whether or not a rule found it."""
    by_feature: _ByFeature

    def together(self, features: Iterable[str]) -> int:
        """What some features weigh together, for each kind in its lane."""
        return sum(map(self.by_feature.__getitem__, features), _level(len(self.kinds)))

    def reached(self, together: int, limits: int) -> list[str]:
        """The kinds that reach their limits."""
        over = together - limits & _level(len(self.kinds))
        if not over:
            return []
        tops = over.to_bytes(_BYTES * len(self.kinds), "little")[_BYTES - 1 :: _BYTES]
        return list(compress(self.kinds, tops))


_BYTES = 3
"""Of a lane: half of it is many times what all weights of a kind come to together."""
_LANE = 8 * _BYTES
_HALF = 1 << _LANE - 1
_MASK = (1 << _LANE) - 1


@cache
def _level(lanes: int) -> int:
    """Nought in each lane: it lies half up the lane, so that nothing is borrowed from the next."""
    return sum(_HALF << _LANE * lane for lane in range(lanes))


def _weight(together: int, lane: int) -> float:
    """The weight that stands in a lane."""
    return ((together >> _LANE * lane & _MASK) - _HALF) / 100


@dataclass(slots=True)
class Scores:
    """How likely each kind of act is in one message."""

    together: int
    """The log-odds of all kinds, side by side."""
    found: Mapping[str, int]
    """Its features, each with the word that it stands at."""
    believed: frozenset[str]
    """The kinds that may have been told."""
    certain: tuple[str, ...] = ()
    """The kinds that were told in words that mean nothing else."""
    ruled_out: frozenset[str] = frozenset()
    """The kinds that such words are not."""

    def with_told(self, kind: str, rivals: frozenset[str]) -> "Scores":
        """The scores, certain of one kind and without the kinds that its words are not."""
        believed = self.believed - rivals | {kind}
        return Scores(self.together, self.found, believed, (kind,), rivals)

    @property
    def log_odds(self) -> dict[str, float]:
        """The log-odds of each kind."""
        kinds = enumerate(_weights().kinds)
        return {kind: _weight(self.together, lane) for lane, kind in kinds}

    def may(self, kind: str) -> bool:
        """Whether a rule that finds such an act is believed."""
        return kind in self.believed or kind not in _known()

    def allowed(self, of: frozenset[str]) -> frozenset[str]:
        """The kinds of those in which a rule that finds such an act is believed."""
        return of & self.believed | of - _known()

    def knows(self, kind: str) -> bool:
        """Whether there are weights for that kind of act."""
        return kind in _known()

    def any_may(self, of: Collection[str] | None = None) -> bool:
        """Whether any kind of act at all, or of those kinds, may have been told."""
        return bool(self.believed) if of is None else not self.believed.isdisjoint(of)

    def sure(self) -> list[str]:
        """The kinds of act that were told, even if no rule found one; the likeliest first."""
        told = _weights().reached(self.together, _weights().sure)
        if len(told) > 1:
            told.sort(key=lambda kind: -_weight(self.together, _lane(kind)))
        if not self.certain:
            return told
        others = [k for k in told if k not in self.certain and k not in self.ruled_out]
        return [*self.certain, *others]

    def likelihood(self, kind: str) -> float:
        """How likely the kind of act is, from 0 to 1."""
        if kind in self.certain:
            return 1.0
        return likelihood(_weight(self.together, _lane(kind)))

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
    weights = _weights()
    found = features(message)
    together = weights.bias + weights.together(found) + _expected(*_expects(message))
    return Scores(together, found, frozenset(weights.reached(together, weights.may)))


_AWAITED, _LIKELIER = 150, 100
"""Hundredths of log-odds by which an answer is likelier where one waits for it, and a question or
what puts right where the talk is on them: four- and threefold odds, by judgement. The labelled
messages stand alone and say nothing of that."""
_ANSWERS = frozenset({"accept", "decline", "done", "later"})


def _expects(message: Message) -> tuple[bool, bool, bool, bool]:
    """Whether an answer, a question, a correction and a striking out are to be expected."""
    context = message.context
    to_bot = context.after_bot or context.to_bot or bool(message.bot)
    on_record = context.last is not None
    return to_bot or context.on_offer, to_bot, on_record, on_record or context.on_reminder


@cache
def _expected(answer: bool, question: bool, righted: bool, struck: bool) -> int:
    """What is added to the scores of the kinds that are to be expected."""
    kinds = [kind for kind in _weights().kinds if question and kind.startswith("ask ")]
    kinds += [*(_ANSWERS if answer else ()), *["amend"] * righted, *["retract"] * struck]
    shares = {kind: _AWAITED if kind in _ANSWERS else _LIKELIER for kind in kinds}
    return sum(share << _LANE * _lane(kind) for kind, share in shares.items())


def likelihood(log_odds: float) -> float:
    """Log-odds as a probability between 0 and 1."""
    return 1 / (1 + exp(-max(-40.0, min(40.0, log_odds))))


@cache
def _known() -> frozenset[str]:
    return frozenset(_weights().kinds)


@cache
def _lane(kind: str) -> int:
    return _weights().kinds.index(kind)


@cache
def _weights() -> _Weights:
    """The file: a line for each kind (its mark and name, bias, may, sure), an empty one, and then a
    line for each feature: its weights, each behind the mark of its kind.
    """
    text = files("handlers.reading").joinpath("lexicon", "weights.txt").read_text(encoding="utf-8")
    head, _, rest = text.partition("\n\n")
    kinds = [line.split("\t") for line in head.splitlines()]
    bias, may, sure = (
        sum(_hundredths(kind[place]) << _LANE * lane for lane, kind in enumerate(kinds))
        for place in (2, 3, 4)
    )
    told = dict(line.split("\t", 1) for line in rest.splitlines())
    by_feature = _ByFeature(told, {mark: lane for lane, (mark, *_) in enumerate(kinds)})
    return _Weights(tuple(kind for _, kind, *_ in kinds), bias, may, sure, by_feature)


@cache
def _hundredths(number: str) -> int:
    return round(100 * float(number))
