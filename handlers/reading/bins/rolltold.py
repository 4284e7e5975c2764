"""The bins of a list as far as they are read: which, and what is told of each (see `binroll`)."""

from collections.abc import Sequence
from dataclasses import dataclass, field

from handlers.reading.bins.rollwords import Piece
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

_MOST_PLACE_WORDS = 3

_SIZES = words_in("big small little wee large huge tiny tall short")


@dataclass(slots=True)
class Told:
    """A bin of the list, with what was said of it so far."""

    name: str
    looks: tuple[str, ...] = ()
    litres: float | None = None
    number: float | None = None
    keeper: str | None = None
    shared: bool | None = None
    many: int = 1
    holds_kg: float | None = None
    """What is in it by now."""
    by_place: bool = False
    """It is called by where it stands, right behind its size."""
    part_full: bool = False
    """Part of it is said to be full."""
    like: str | None = None
    """The bin of the group's that is called so already."""
    row: int = -1
    """Where the row of numbers begins that it is one of ("bins 1 and 2 are 10 L")."""
    again: bool = False
    """It is named a second time: what follows holds for it alone."""


class Unlike(Exception):
    """The words are of no list of bins."""


@dataclass(slots=True)
class Bins:
    """The bins of a list, and the place in its pieces that was come to."""

    message: Message
    pieces: Sequence[Piece]
    bins: list[Told] = field(default_factory=list)
    at: int = 0
    last: Told | None = None
    parted: bool = False
    """An "and" or a stop stands behind the last bin: what follows is of the next."""
    of_all: bool = False
    litres: float | None = None
    """A size told before the name of its bin."""
    keeper: str | None = None
    shared: bool | None = None
    of_one: bool = True
    """Such a keeper has the next bin alone, and not all that follow ("Bram has two bins")."""
    of_each: float | None = None
    """A size told for each bin before any is named."""
    further: bool = False
    """The next bin is one more."""
    count: float | None = None
    sealed: int = 0
    """How often it is told that one is sealed."""
    kinds: set[str] = field(default_factory=set)

    def kind(self, ahead: int = 0) -> str:
        """The kind of the piece that comes next, or of one further on or back; "" for none."""
        i = self.at + ahead
        return self.pieces[i].kind if 0 <= i < len(self.pieces) else ""

    def ends(self, ahead: int = 0) -> bool:
        """Whether what is said ends there."""
        return self.kind(ahead) in ("", "comma", "stop", "and")

    def begin(self, name: str, start: int) -> None:
        """A bin of that name, whose words begin at piece `start`: a new one, or the last again."""
        looks, many, i, further = [], 1, start - 1, self.further
        self.further = False
        while i >= 0 and self.pieces[i].kind in ("look", "the"):
            further |= self.pieces[i].said in _FURTHER_ONE
            looks += [self.pieces[i].said] if self.pieces[i].said in _SIZES else []
            i -= 1
        if i >= 0 and self.pieces[i].kind == "number" and self.kind() in ("ones", "vessels"):
            many = int(self.pieces[i].number)
        like = name if further and name in self.message.context.bins else None
        if like:
            name = _next_of(name, self.message.context.bins)
        before = [one for one in self.bins if one.name == name]
        same = next((b for b in before if not looks or not b.looks or [*b.looks] == looks), None)
        called = "called" in [piece.kind for piece in self.pieces[max(0, start - 2) : start]]
        if same is not None and many == 1:
            same.again, self.last = True, same
        elif called and self.last is not None and not self.parted:
            self.last.name = name
        else:
            self.last = Told(name, tuple(looks), many=many, like=like, row=self._row(start))
            self.bins.append(self.last)
        self._settle(self.last)
        self.parted = self.of_all = False

    def _row(self, start: int) -> int:
        """Where the names begin that stand in the same words, if there are several."""
        piece = self.pieces[start]
        alike = sum(other.start == piece.start for other in self.pieces if other.kind == "name")
        return piece.start if alike > 1 else -1

    def _settle(self, one: Told) -> None:
        """What was told before the name is of that bin."""
        if self.litres is not None:
            one.litres, self.litres = self.litres, None
        if self.shared is not None:
            one.shared, self.shared = self.shared, None
        if self.keeper is not None:
            one.keeper = self.keeper
            self.keeper = None if self.of_one else self.keeper

    def keep(self, name: str) -> None:
        """The last bin has that keeper; behind an "and" the one that comes."""
        if self.last is None or self.parted:
            self.keeper = name
        elif self.last.keeper is not None:
            raise Unlike
        else:
            self.last.keeper = name
        while self.kind() in ("keeps", "it", "called", "is", "for"):
            self.at += 1

    def place(self) -> str:
        """The place that stands there, in a few words; "" for none."""
        start, said = self.at, ""
        if self.kind() in ("name", "member") and self.kind(2) == "name" and self._owns():
            self.at += 2  # "Ann's garage"
        while self.kind() in ("name", "word", "look") and self.at - start < _MOST_PLACE_WORDS:
            piece = self.pieces[self.at]
            said = said or (piece.said if is_numbered(piece) else "")  # "the 4th floor landing"
            self.at += 1
        first, behind = self.pieces[start : self.at][:1], self.pieces[self.at - 1]
        return said or (self.message.text(first[0].start, behind.end) if first else "")

    def _owns(self) -> bool:
        return self.pieces[self.at + 1].said == "'s"

    def is_open(self) -> bool:
        """Whether the size of the last bin may come yet."""
        one = self.last
        return one is not None and one.litres is None and one.number is None and not self.parted

    def size_all(self, litres: float) -> None:
        """That is the size of each that has none; of all that come, where none is named yet."""
        self.of_all = False
        if not self.bins:
            self.of_each = litres
            return
        left = [one for one in self.bins if one.litres is None and one.number is None]
        if not left:
            raise Unlike
        for one in left:
            one.litres = litres


def _next_of(name: str, known: Sequence[str]) -> str:
    """ "White 2" for another white bin."""
    return next(f"{name} {k}" for k in range(2, len(known) + 3) if f"{name} {k}" not in known)


_FURTHER_ONE = words_in("another second third fourth other")


def is_numbered(piece: Piece) -> bool:
    """ "Flat 2", "4th floor"."""
    return piece.end - piece.start > 1 and any(letter.isdigit() for letter in piece.said)
