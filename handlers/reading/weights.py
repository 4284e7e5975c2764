"""The learned weights of the scores, and the arithmetic on them.

A feature speaks for a few dozen shades of meaning at once; those that a message reaches at all
(the units of a hidden layer, rectified) speak for each kind of act. Many numbers lie side by side
in one, each in a lane of so many bits: one addition adds a feature to all units, and one product
and one addition tell all kinds what a unit weighs. Whole numbers keep that exact, in whatever
order they are added.
"""

from collections.abc import Iterable, Sequence
from functools import cache
from importlib.resources import files
from itertools import compress
from struct import Struct
from typing import NamedTuple

ONE = 100_000
"""A log-odds of one, as the lanes of the kinds count it."""
NAUGHT = ord("O")
"""The character that stands for a weight of nought; each next one is one more."""
_UNIT_BYTES, _KIND_BYTES = 4, 6
"""Of a lane: half of it is many times what all words of a long text come to together."""
_KEPT = 5000
"""Features kept in lanes, at most: each takes about half a kilobyte."""
_HALF = 1 << 8 * _UNIT_BYTES - 1


class _ByFeature(dict[str, int]):
    """What each feature weighs in each unit: put into lanes when it comes up, and kept until too
    many have. Of fifty thousand features a talk has some hundreds.
    """

    def __init__(self, names: Sequence[str], marks: bytes, units: int) -> None:
        super().__init__()
        self._row = dict(zip(names, range(len(names)), strict=True))
        self._marks = marks
        self._units = units
        self._naught = side_by_side([NAUGHT] * units, _UNIT_BYTES)

    def __missing__(self, feature: str) -> int:
        row = self._row.get(feature)
        if row is None:
            return 0  # it is not kept: of these a talk has no end
        start = row * (self._units + 1)  # each row ends its line
        lanes = bytearray(_UNIT_BYTES * self._units)
        lanes[::_UNIT_BYTES] = self._marks[start : start + self._units]
        if len(self) >= _KEPT:
            self.clear()
        self[feature] = weight = int.from_bytes(lanes, "little") - self._naught
        return weight


class Weights(NamedTuple):
    """All that was learned. Whole numbers; those of the kinds are log-odds times `ONE`."""

    kinds: tuple[str, ...]
    bias: int
    """What speaks for each kind before anything is said."""
    at_rest: int
    """What lies in each unit before anything is said."""
    by_unit: tuple[int, ...]
    """What each unit weighs for each kind."""
    by_feature: _ByFeature
    units: Struct
    """The layout of the units' lanes."""

    def together(self, features: Iterable[str]) -> int:
        """The log-odds of all kinds, side by side, in a message of these features."""
        lanes = sum(map(self.by_feature.__getitem__, features), self.at_rest)
        reached: tuple[int, ...] = self.units.unpack(lanes.to_bytes(self.units.size, "little"))
        return self.bias + sum(
            [
                (lane - _HALF) * weight
                for lane, weight in zip(reached, self.by_unit, strict=True)
                if lane > _HALF
            ]
        )

    def reaching(self, together: int, log_odds: float) -> list[str]:
        """The kinds that reach so much."""
        limits = _all_of(round(ONE * log_odds), len(self.kinds))
        over = together - limits & _level(len(self.kinds), _KIND_BYTES)
        if not over:
            return []
        tops = over.to_bytes(_KIND_BYTES * len(self.kinds), "little")[
            _KIND_BYTES - 1 :: _KIND_BYTES
        ]
        return list(compress(self.kinds, tops))

    def lane(self, kind: str) -> int:
        """By how many bits the numbers of a kind are moved."""
        return 8 * _KIND_BYTES * self.kinds.index(kind)

    def of_kind(self, together: int, kind: str) -> float:
        """The log-odds of one kind among those of all."""
        mask = (1 << 8 * _KIND_BYTES) - 1
        return ((together >> self.lane(kind) & mask) - (mask + 1 >> 1)) / ONE


def side_by_side(numbers: Sequence[int], size: int) -> int:
    """Numbers in lanes of so many bytes."""
    return sum(number << 8 * size * lane for lane, number in enumerate(numbers))


@cache
def _level(lanes: int, size: int) -> int:
    """Nought in each lane: it lies half up the lane, so that nothing is borrowed from the next."""
    return side_by_side([1 << 8 * size - 1] * lanes, size)


@cache
def _all_of(number: int, kinds: int) -> int:
    """The same number for each kind."""
    return side_by_side([number] * kinds, _KIND_BYTES)


@cache
def weights() -> Weights:
    """The file, in parts with an empty line between them: a line for each kind (its name, bias
    and what each unit weighs for it), what lies in each unit at rest, the names of the features,
    a line for each, and in the same order their weights, a mark for each unit.
    """
    data = files("handlers.reading").joinpath("lexicon", "weights.txt").read_bytes()
    head, at_rest, names, marks = data.split(b"\n\n")
    kinds, *numbers = zip(*(line.split("\t") for line in head.decode().splitlines()), strict=True)
    bias, *by_unit = (side_by_side([int(number) for number in row], _KIND_BYTES) for row in numbers)
    resting = [int(number) for number in at_rest.split(b"\t")]
    return Weights(
        kinds=tuple(kinds),
        bias=bias + _level(len(kinds), _KIND_BYTES),
        at_rest=side_by_side(resting, _UNIT_BYTES) + _level(len(resting), _UNIT_BYTES),
        by_unit=tuple(by_unit),
        by_feature=_ByFeature(names.decode().split("\n"), marks, len(resting)),
        units=Struct(f"<{len(resting)}I"),
    )
