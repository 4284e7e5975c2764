"""How likely each act is in a message: weights of its features, learned from labelled messages.

`lexicon/weights.txt` holds them, feature by feature; `python -m tests.reading.train` makes it anew.
The rules say what an act's fields are; the scores say whether it was told at all.
"""

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import cache
from math import exp, log

from handlers.reading.features import features
from handlers.reading.message import Message
from handlers.reading.weights import ONE, weights

MAY, SURE = 0.1, 0.5
"""Likelihoods below which no rule is believed that finds such an act, and from which the act was
told, whether or not a rule found it: by the figures of hands kept aside."""
_MAY, _SURE = (log(p / (1 - p)) for p in (MAY, SURE))


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
        return {kind: weights().of_kind(self.together, kind) for kind in weights().kinds}

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
        told = weights().reaching(self.together, _SURE)
        if len(told) > 1:
            told.sort(key=lambda kind: -weights().of_kind(self.together, kind))
        if not self.certain:
            return told
        others = [k for k in told if k not in self.certain and k not in self.ruled_out]
        return [*self.certain, *others]

    def likelihood(self, kind: str) -> float:
        """How likely the kind of act is, from 0 to 1."""
        if kind in self.certain:
            return 1.0
        return likelihood(weights().of_kind(self.together, kind))

    def within(self, kind: str, start: int, end: int) -> float:
        """The log-odds of the kind by what words[start:end] say alone."""
        inside = (name for name, at in self.found.items() if start <= at < end)
        return weights().of_kind(weights().together(inside), kind)

    def reasons(self, kind: str, most: int = 5) -> list[str]:
        """The features that weigh most in it, with what the log-odds lose without them."""
        told = weights().of_kind(weights().together(self.found), kind)
        others = ((name, [n for n in self.found if n != name]) for name in self.found)
        lost = [
            (told - weights().of_kind(weights().together(rest), kind), name)
            for name, rest in others
        ]
        lost.sort(key=lambda pair: -abs(pair[0]))
        return [f"{loss:+.2f} {name}" for loss, name in lost[:most] if loss]


def scores_of(message: Message) -> Scores:
    """The scores of a message's features."""
    found = features(message)
    together = weights().together(found) + _expected(*_expects(message))
    return Scores(together, found, frozenset(weights().reaching(together, _MAY)))


_AWAITED, _LIKELIER = 3 * ONE // 2, ONE
"""Log-odds by which an answer is likelier where one waits for it, and a question or
what puts right where the talk is on them: 4.5- and threefold odds, by judgement. The labelled
messages stand alone and say nothing of that."""
_ANSWERS = frozenset({"accept", "decline", "done", "later"})


def _expects(message: Message) -> tuple[bool, bool, bool]:
    """Whether an answer, a question and a correction are to be expected."""
    context = message.context
    to_bot = context.after_bot or context.to_bot or bool(message.bot)
    return to_bot or context.on_offer, to_bot, context.last is not None


@cache
def _expected(answer: bool, question: bool, righted: bool) -> int:
    """What is added to the scores of the kinds that are to be expected."""
    kinds = [kind for kind in weights().kinds if question and kind.startswith("ask ")]
    kinds += [*(_ANSWERS if answer else ()), *["amend"] * righted]
    shares = {kind: _AWAITED if kind in _ANSWERS else _LIKELIER for kind in kinds}
    return sum(share << weights().lane(kind) for kind, share in shares.items())


def likelihood(log_odds: float) -> float:
    """Log-odds as a probability between 0 and 1."""
    return 1 / (1 + exp(-max(-40.0, min(40.0, log_odds))))


@cache
def _known() -> frozenset[str]:
    return frozenset(weights().kinds)
