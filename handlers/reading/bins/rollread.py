"""A list of bins read piece by piece: which bins, and what is told of each (see `binroll`)."""

from collections.abc import Sequence
from dataclasses import dataclass, field

from handlers.reading.bins.rollwords import Piece
from handlers.reading.message import Message
from handlers.reading.words.binwords import PLACE_NAMES, TOLD_BY
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
class Roll:
    """The bins of a list, read piece by piece."""

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

    def read(self) -> None:
        """Goes through all pieces; `Unlike` where one fits nowhere."""
        self.kinds = {piece.kind for piece in self.pieces}
        while self.at < len(self.pieces):
            piece = self.pieces[self.at]
            self.at += 1
            reader = _READERS.get(piece.kind)
            if reader is not None:
                reader(self, piece)
            elif piece.kind == "word" or (piece.kind == "food" and not self._is_in_it()):
                raise Unlike
        if (
            self.litres is not None
            or (self.keeper is not None and self.of_one)
            or self.shared is not None
        ):
            raise Unlike
        if self.of_each is not None:
            self._size_all(self.of_each)

    def _is_in_it(self) -> bool:
        """Whether it is told of the last bin that something is in it: "half full, mostly veg"."""
        return self.last is not None and (self.last.part_full or self.last.holds_kg is not None)

    def kind(self, ahead: int = 0) -> str:
        """The kind of the piece that comes next, or of one further on or back; "" for none."""
        i = self.at + ahead
        return self.pieces[i].kind if 0 <= i < len(self.pieces) else ""

    def ends(self, ahead: int = 0) -> bool:
        """Whether what is said ends there."""
        return self.kind(ahead) in ("", "comma", "stop", "and")

    def name(self, piece: Piece) -> None:
        """A name begins a bin of the list, is told of the last one, or is a keeper's."""
        start = self.at - 1
        while self._goes_on(piece):
            self.at += 1
        if piece.said.islower() and not stands_alone(piece.said) and self.kind() in ("it", "the"):
            raise Unlike  # "baptised it Hector"
        name = self.message.hyphened(piece.start, self.pieces[self.at - 1].end)
        if self.at - start == 1:
            name = piece.said or name
        elif not all(p.kind == "the" or stands_alone(p.said) for p in self.pieces[start : self.at]):
            raise Unlike
        if not self.bins and self._is_heading():
            return
        if not self.bins and self.kind() == "is" and self.kind(1) == "joins":
            self.keeper = name  # "Tammy is joining, she has a bin"
            return
        if name[:1].isupper() and self._is_keeper(start):
            self._keep(name)
            return
        self._begin(name, start)
        if _is_numbered(piece) and self.kind() == "name" and self.ends(1):
            self.at += 1
            self._keep(self.pieces[self.at - 1].said)  # "flat 3 Zoe"

    def _is_heading(self) -> bool:
        """ "Drei Eimer:", "our gear:"."""
        at = self.at + (self.kind() in ("vessel", "vessels"))
        colon = [piece.said for piece in self.pieces[at : at + 1]] == [":"]
        behind = self.pieces[at + 1].kind if colon and at + 1 < len(self.pieces) else ""
        return colon and behind in ("name", "the", "vessel", "number", "look", "one")

    def _goes_on(self, piece: Piece) -> bool:
        """ "Ivan the Terrible", "Miss Patty": whether the name goes on with the next piece."""
        linked = self.kind() == "the" and self.pieces[self.at].said == "the"
        capital = piece.said[:1].isupper()
        behind = self.pieces[self.at + linked : self.at + linked + 1]
        if _is_numbered(piece) or not behind or behind[0].kind != "name":
            return False
        return not linked or (capital and behind[0].said[:1].isupper())

    def _is_keeper(self, start: int) -> bool:
        """ "Zoe has it", "for Zoe", of somebody who is no member."""
        led = self.pieces[start - 1] if start else None
        if self.kind() == "keeps" and (self.kind(1) == "it" or self.ends(1)):
            return True
        if led is None or self.last is None:
            return False
        of_room = led.kind == "is" and start > 1 and _is_numbered(self.pieces[start - 2])
        return led.said in ("for", "to") or (of_room and self.ends())

    def _begin(self, name: str, start: int) -> None:
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

    def _keep(self, name: str) -> None:
        if self.last is None or self.parted:
            self.keeper = name
        elif self.last.keeper is not None:
            raise Unlike
        else:
            self.last.keeper = name
        while self.kind() in ("keeps", "it", "called", "is", "for"):
            self.at += 1

    def member(self, piece: Piece) -> None:
        """A member keeps the last bin, or the one that comes ("Bram has the red one")."""
        taking = self.kind() in ("keeps", "is") and not (self.kind(1) == "it" or self.ends(1))
        taking = taking and self.kind(1) not in ("keeps", "for", "called", "")
        if self.kind(1) == "joins":
            self.keeper = piece.said
        elif taking:
            self.at += 1
            self.keeper = piece.said
            self.of_one = self.kind() != "number"
        elif self.kind() == "open" and not self.bins:
            self.keeper, self.of_one = piece.said, False
        else:
            self._keep(piece.said)

    def mine(self, piece: Piece) -> None:
        """The sender's own."""
        if self.last is not None and piece.said == "mine":
            self.last.shared = False

    def vessel(self, piece: Piece) -> None:
        """ "One on the porch", "a bin on the porch": it is called by where it stands."""
        start = self.at - 1
        named = start > 0 and self.pieces[start - 1].kind == "name"
        if named or self.kind() not in ("where", "lives"):
            return
        while self.kind() in ("where", "lives", "the"):
            self.at += 1
        place = self._place()
        if not place:
            raise Unlike
        self._begin(place, start)

    def _place(self) -> str:
        """The place that stands there, in a few words; "" for none."""
        start, said = self.at, ""
        while self.kind() in ("name", "word", "look") and self.at - start < _MOST_PLACE_WORDS:
            piece = self.pieces[self.at]
            said = said or (piece.said if _is_numbered(piece) else "")  # "the 4th floor landing"
            self.at += 1
        first, behind = self.pieces[start : self.at][:1], self.pieces[self.at - 1]
        return said or (self.message.text(first[0].start, behind.end) if first else "")

    def where(self, piece: Piece) -> None:
        """Where a bin stands that has a name."""
        behind_mass = self.kind(-2) == "mass"
        if self.kind() in ("size", "number", "member", "day", "shared", "joins") or behind_mass:
            return
        start = self.at - 1
        while self.kind() in ("the", "where", "more"):
            self.at += 1
        place = self._place()
        if not place or not _FOR_SALE.isdisjoint(place.split()):
            raise Unlike
        begins = self.litres is not None and (self.last is None or self.parted)
        if begins and "called" not in self.kinds:
            self._begin(place, start)  # "a 20 L bin on the balcony"
            if self.last is not None:
                self.last.by_place = True
        elif self.last is not None and self.last.like and " " not in place:
            self.last.name = f"{place} {self.last.like}"  # "another blue bin in the yard"

    def size(self, piece: Piece) -> None:
        """The size of the last bin, of the one that comes, or of each."""
        if self.of_all or self.kind() == "each":
            self._size_all(piece.litres)
            self.at += self.kind() == "each"
        elif self.last is not None and (self.last.again or self._is_open()):
            self.last.litres, self.last.again = piece.litres, False
            for one in self.bins:
                if one.row == self.last.row != -1 and one.litres is None:
                    one.litres = piece.litres
        elif self.litres is None and piece.number == 1:
            self.litres = piece.litres
        else:
            raise Unlike

    def _is_open(self) -> bool:
        one = self.last
        return one is not None and one.litres is None and one.number is None and not self.parted

    def _size_all(self, litres: float) -> None:
        self.of_all = False
        if not self.bins:
            self.of_each = litres
            return
        left = [one for one in self.bins if one.litres is None and one.number is None]
        if not left:
            raise Unlike
        for one in left:
            one.litres = litres

    def number(self, piece: Piece) -> None:
        """How many bins there are, or a size whose unit stands beside another."""
        ahead = 0
        while self.kind(ahead) == "look":
            ahead += 1
        if self.kind(ahead) == "vessels":
            self.count = piece.number
        elif piece.number == 1 and self.kind(ahead) == "vessel":
            return  # "1 bin, 15 L, in the yard"
        elif self.kind() == "share" and self.kind(1) == "full":
            return  # "three quarters full"
        elif self.kind(ahead) == "name" and self.kind(ahead + 1) in ("ones", "vessels"):
            return  # "two white ones"
        elif self.last is not None and (self.last.again or self._is_open()):
            self.last.number, self.last.litres, self.last.again = piece.number, None, False
        else:
            raise Unlike

    def mass(self, piece: Piece) -> None:
        """ "5 kg in it so far"."""
        behind = [p.said for p in self.pieces[self.at : self.at + 2]]
        if self.last is None or self.last.holds_kg or behind[:1] not in (["in"], ["inside"]):
            raise Unlike
        self.last.holds_kg = piece.number

    def seal(self, piece: Piece) -> None:
        """A bin is sealed."""
        self.sealed += 1

    def full(self, piece: Piece) -> None:
        """ "Already half full", "three quarters full"."""
        led = self.pieces[self.at - 2] if self.at > 1 else None
        if self.last is None or led is None or not (led.kind == "share" or led.said == "third"):
            raise Unlike
        self.last.part_full = True

    def own(self, piece: Piece) -> None:
        """ "I have my own bin, it's green": one more, though another is called so."""
        self.further = True

    def open(self, piece: Piece) -> None:
        """Bins are begun; behind one that is told already it is somebody else's deed."""
        led = self.kind(-2)  # "started on 1 June" is told of the bin before the comma
        if self.bins and led in ("name", "word"):
            raise Unlike

    def each(self, piece: Piece) -> None:
        """What follows holds for all of them; "for all" is told of one bin."""
        if self.kind(-2) == "for":
            self.share(piece)
        else:
            self.of_all = True

    def share(self, piece: Piece) -> None:
        """The last bin is for everybody, or all are, or the one that comes."""
        if self.of_all:
            for one in self.bins:
                one.shared = True
            self.of_all = False
        elif self.last is not None and not self.parted:
            self.last.shared = True
        elif self.bins or self.kind() in ("vessel", "look", "name"):
            self.shared = True

    def joint(self, piece: Piece) -> None:
        """What follows may be of another bin."""
        self.parted = True

    def it(self, piece: Piece) -> None:
        """ "It", "belongs to", "holds": of the last bin, whatever stood between."""
        if piece.said in _OF_THE_LAST:
            self.parted = False


def _next_of(name: str, known: Sequence[str]) -> str:
    """ "White 2" for another white bin."""
    return next(f"{name} {k}" for k in range(2, len(known) + 3) if f"{name} {k}" not in known)


_FOR_SALE = words_in("shop store supermarket market sale window skip tip dump catalogue advert")
"""Where a bin may be seen that nobody has."""
_FURTHER_ONE = words_in("another second third fourth other")
_OF_THE_LAST = words_in("it he she they this which that belongs keeper for holds takes fits")
_READERS = {
    "name": Roll.name, "member": Roll.member, "mine": Roll.mine, "one": Roll.vessel,
    "vessel": Roll.vessel, "where": Roll.where, "size": Roll.size, "number": Roll.number,
    "each": Roll.each, "shared": Roll.share, "and": Roll.joint, "stop": Roll.joint,
    "it": Roll.it, "keeps": Roll.it, "for": Roll.it, "holds": Roll.it,
    "mass": Roll.mass, "sealed": Roll.seal, "open": Roll.open,
    "full": Roll.full, "own": Roll.own, "joins": Roll.it,
}  # fmt: skip


def _is_numbered(piece: Piece) -> bool:
    """ "Flat 2", "4th floor"."""
    return piece.end - piece.start > 1 and any(letter.isdigit() for letter in piece.said)


def stands_alone(said: str) -> bool:
    """Whether a word may be one of several of a name."""
    return said[:1].isupper() or said in TOLD_BY | PLACE_NAMES
