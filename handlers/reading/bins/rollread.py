"""A list of bins read piece by piece (see `binroll`)."""

from collections.abc import Sequence

from handlers.reading.bins.rolltold import Bins, Told, Unlike, is_numbered
from handlers.reading.bins.rollwords import Piece
from handlers.reading.bins.sizes import SMALLEST_BARE
from handlers.reading.words.binwords import PLACE_NAMES, SIDES, TOLD_BY
from handlers.reading.words.vocabulary import words_in


class Roll(Bins):
    """The bins of a list, read piece by piece."""

    __slots__ = ()

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
            self.size_all(self.of_each)

    def _is_in_it(self) -> bool:
        """Whether it is told of the last bin that something is in it: "half full, mostly veg"."""
        return self.last is not None and (self.last.part_full or self.last.holds_kg is not None)

    def name(self, piece: Piece) -> None:
        """A name begins a bin of the list, is told of the last one, or is a keeper's."""
        start = self.at - 1
        if self._is_sized_kind(piece):
            return
        while self._goes_on(piece):
            self.at += 1
        if piece.said.islower() and not stands_alone(piece.said) and self.kind() in ("it", "the"):
            raise Unlike  # "baptised it Hector"
        name = self.message.hyphened(piece.start, self.pieces[self.at - 1].end)
        if self.at - start == 1:
            name = piece.said or name
        elif not _is_of_several(self.pieces[start : self.at]):
            raise Unlike
        if not self.bins and self._is_heading():
            return
        if not self.bins and self.kind() == "is" and self.kind(1) == "joins":
            self.keeper = name  # "Tammy is joining, she has a bin"
            return
        if name[:1].isupper() and self._is_keeper(start):
            self.keep(name)
            return
        self.begin(name, start)
        if is_numbered(piece) and self.kind() == "name" and self.ends(1):
            self.at += 1
            self.keep(self.pieces[self.at - 1].said)  # "flat 3 Zoe"

    def _is_sized_kind(self, piece: Piece) -> bool:
        """ "Porch 15 L, barrel 60": begins the barrel, and no bin of that number."""
        kind, _, figure = piece.said.lower().partition(" ")
        sized = figure.isdecimal() and float(figure) >= SMALLEST_BARE and "size" in self.kinds
        if kind not in _CALLED_BY_KIND or not sized or not self.ends():
            return False
        self.begin(kind, self.at - 1)
        if self.last is not None:
            self.last.number, self.last.again = float(figure), False
        return True

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
        if is_numbered(piece) or not behind or behind[0].kind != "name":
            return False
        return not linked or (capital and behind[0].said[:1].isupper())

    def _is_keeper(self, start: int) -> bool:
        """ "Zoe has it", "for Zoe", of somebody who is no member."""
        led = self.pieces[start - 1] if start else None
        if self.kind() == "keeps" and (self.kind(1) == "it" or self.ends(1)):
            return True
        if led is None or self.last is None:
            return False
        of_room = led.kind == "is" and start > 1 and is_numbered(self.pieces[start - 2])
        return led.said in ("for", "to") or (of_room and self.ends())

    def member(self, piece: Piece) -> None:
        """A member keeps the last bin, or the one that comes ("Bram has the red one"); of several
        who have it together the first.
        """
        while self.kind() == "and" and self.kind(1) == "member" and self._have_together():
            self.at += 2
        headed = [p.said for p in self.pieces[self.at : self.at + 1]] == [":"]
        elided = "keeps" in self.kinds and self.kind() == "the" and self.kind(1) == "name"
        taking = (headed or elided or self.kind() in ("keeps", "is")) and not (
            self.kind(1) == "it" or self.ends(1)
        )
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
            self.keep(piece.said)

    def _have_together(self) -> bool:
        """Whether a bin follows on those who are joined there: "Bram + Zoe = the red one"."""
        behind = next((p for p in self.pieces[self.at :] if p.kind not in ("and", "member")), None)
        told_of = self.last is not None and not self.parted  # "red = Bram + Zoe, 12 L"
        if behind is None or (told_of and behind.kind in ("comma", "stop", "size")):
            return told_of
        return behind.kind in ("is", "keeps", "the") or behind.said == ":"

    def mine(self, piece: Piece) -> None:
        """The sender's own."""
        if self.last is not None and piece.said == "mine":
            self.last.shared = False

    def vessel(self, piece: Piece) -> None:
        """ "One on the porch", "a bin on the porch": it is called by where it stands; "a barrel,
        60 L", of which a group has one, by what it is.
        """
        start = self.at - 1
        led = self.pieces[start - 1].kind if start else ""
        if led == "name":
            return
        if self.kind() == "is" and self.kind(1) in ("where", "lives"):
            self.at += 1  # "one's at the church"
        if self.kind() not in ("where", "lives"):
            sized = self.kind(self.kind() in ("comma", "is")) in ("size", "number")
            norm = self.message.norms[piece.start]
            only = norm in _CALLED_BY_KIND and not self._is_of_another(norm)
            if only and sized and led not in ("size", "number"):
                self.begin(norm, start)
            return
        while self.kind() in ("where", "lives", "the"):
            self.at += 1
        place = self.place()
        if not place:
            raise Unlike
        self.begin(place, start)

    def _is_of_another(self, norm: str) -> bool:
        """Whether a bin that is there is called by that word and more ("the rain barrel")."""
        known = self.message.context.bins
        return any(norm != name and norm in name.casefold().split() for name in known)

    def where(self, piece: Piece) -> None:
        """Where a bin stands that has a name."""
        behind_mass = self.kind(-2) == "mass"
        if self.kind() in ("size", "number", "member", "day", "shared", "joins") or behind_mass:
            return
        start = self.at - 1
        while self.kind() in ("the", "where", "more"):
            self.at += 1
        place = self.place()
        if not place or not _FOR_SALE.isdisjoint(place.split()):
            raise Unlike
        begins = self.litres is not None and (self.last is None or self.parted)
        if begins and "called" not in self.kinds:
            self.begin(place, start)  # "a 20 L bin on the balcony"
            if self.last is not None:
                self.last.by_place = True
        elif self.last is not None and self.last.like and " " not in place:
            self.last.name = f"{place} {self.last.like}"  # "another blue bin in the yard"

    def size(self, piece: Piece) -> None:
        """The size of the last bin, of the one that comes, or of each."""
        if self.of_all or self.kind() == "each":
            self.size_all(piece.litres)
            self.at += self.kind() == "each"
        elif self.last is not None and (self.last.again or self.is_open()):
            for one in self._sized_together():
                one.litres, one.again = piece.litres, False
            self.last.litres, self.last.again = piece.litres, False
            for one in self.bins:
                if one.row == self.last.row != -1 and one.litres is None:
                    one.litres = piece.litres
        elif self.litres is None and piece.number == 1:
            self.litres = piece.litres
        else:
            raise Unlike

    def _sized_together(self) -> list[Told]:
        """ "North, South and East (are) 20 L, West 60 L": the bins that share a size, listed
        before, or joined there at the beginning of a list.
        """
        listed, _ = self._named_before(_JOINED | {"comma"})
        joined, at = self._named_before(_JOINED)
        led = self.pieces[max(0, at - 1) : at + 1]
        begins = not led or led[-1].kind in ("stop", "vessels") or led[-1].said == ":"
        begins = begins or [each.kind for each in led] == ["size", "comma"]
        are = "are" in [piece.said for piece in self.pieces[self.at - 3 : self.at]]
        return [
            one
            for one in self.bins
            if one.litres is None
            and ((one.again and (are or one.name in listed)) or (begins and one.name in joined))
        ]

    def _named_before(self, kinds: frozenset[str]) -> tuple[set[str], int]:
        """The names before the piece that is read, as far as pieces are of such kinds; and the
        place of the one before these."""
        names, at = set[str](), self.at - 2
        while at >= 0 and self.pieces[at].kind in kinds:
            names.add(self.pieces[at].said)
            at -= 1
        return names, at

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
        elif self.last is not None and (self.last.again or self.is_open()):
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


_JOINED = frozenset({"name", "and", "the", "is"})
_CALLED_BY_KIND = words_in("barrel drum keg crock caddy churn")
_FOR_SALE = words_in("shop store supermarket market sale window skip tip dump catalogue advert")
"""Where a bin may be seen that nobody has."""
_OF_THE_LAST = words_in("it he she they this which that belongs keeper for holds takes fits")
_READERS = {
    "name": Roll.name, "member": Roll.member, "mine": Roll.mine, "one": Roll.vessel,
    "vessel": Roll.vessel, "where": Roll.where, "size": Roll.size, "number": Roll.number,
    "each": Roll.each, "shared": Roll.share, "and": Roll.joint, "stop": Roll.joint,
    "it": Roll.it, "keeps": Roll.it, "for": Roll.it, "holds": Roll.it,
    "mass": Roll.mass, "sealed": Roll.seal, "open": Roll.open,
    "full": Roll.full, "own": Roll.own, "joins": Roll.it,
}  # fmt: skip


def _is_of_several(pieces: Sequence[Piece]) -> bool:
    """Whether pieces are a name of several words: "Ivan the Terrible", "the parish hall"."""
    placed = len(pieces) == _OF_A_PLACE and pieces[-1].said in PLACE_NAMES
    return placed or all(p.kind == "the" or stands_alone(p.said) for p in pieces)


_OF_A_PLACE = 2
"""Words of a place's name: what it is, and whose or where."""


def stands_alone(said: str) -> bool:
    """Whether a word may be one of several of a name."""
    return said[:1].isupper() or said in TOLD_BY | PLACE_NAMES | SIDES
