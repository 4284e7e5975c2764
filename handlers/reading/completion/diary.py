"""Days one after the other, each with what went in: "Mon 1 kg, Tues nothing, Wed 800 g, all in
green", a week copied from a sheet, with days or bins as headings.

Every word is accounted for, so that no score is asked.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from itertools import pairwise

from handlers.reading.acts import Layer, Unsure
from handlers.reading.calendar.days import Day
from handlers.reading.calendar.daywords import SHORT, WEEKDAYS
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import makeup
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.people.members import MemberRef
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.spans import accounted
from handlers.reading.words.vocabulary import words_in

RULE = "days one after the other"
_NOUGHT = words_in("nowt nil nothing none zero 0 nought zilch forgot skipped")
_SAME = words_in("same ditto")
_ALL = words_in("all both everything each")
_ME = words_in("me mine")
_AND = words_in("and &")
_TO = words_in("to till until through thru - –")
_STOPS = words_in(", . ; : ) -") | {"\n"}
_JOINTS = _STOPS | words_in(
    "and & n + ( – then also oh on in into to the our of about roughly just only was were it i we "
    "put added went gone chucked tipped threw from by a bin for ok"
)
_LEAD = _JOINTS | words_in(
    "catching catch up copying copied sheet list log notes note paper book diary fridge week this "
    "last my mine these so far here here's is are what 's scraps layers update summary records "
    "record entries weekly backlog days past few sorry late hi hello hey all bot please write down "
    "typing writing"
)
_PUT = words_in("put added went gone chucked tipped threw scraps layers")
_UNTOLD = frozenset({"not", "will", "if", "ask", "said"})
_LONGEST = 150
_FEW = 2
"""Days of which one tells of many a thing besides scraps."""
_MUCH = 30
"""Kilos or litres from which on it is no day's scraps."""


@dataclass(slots=True)
class _Lot:
    """One amount, and what is said of it."""

    amount: Amount
    items: list[Item] = field(default_factory=list)
    bin: str | None = None
    member: str | None = None
    on: date | None = None


_Span = Amount | BinRef | Item | Day | MemberRef
_Piece = _Span | str


def diary(message: Message) -> tuple[Layer | Unsure, ...]:
    """A layer for each amount, with its own day; none if anything else is said."""
    if len(message.days) < 2 or not message.amounts or len(message.norms) > _LONGEST:
        return ()
    if any(c.sense in _UNTOLD for c in message.clauses) or message.asked:
        return ()
    lots = _Reading(message).lots()
    if not lots or not all(_are_scraps(lot) for lot in lots):
        return ()
    layers = tuple(_layer(lot) for lot in lots)
    if any(lot.bin for lot in lots) or message.has(_PUT):
        return layers
    many = len({lot.on for lot in lots}) > _FEW and all(lot.amount.value < _MUCH for lot in lots)
    return (Unsure(guess=layers, rules=(RULE,)),) if many else ()


def _are_scraps(lot: _Lot) -> bool:
    """Whether what was measured went in: a volume alone may have come out."""
    amount = lot.amount
    if amount.negative or amount.value <= 0 or amount.quantity not in ("mass", "volume"):
        return False
    if any(i.absent or i.food.shares[0][0] == "liquid" for i in lot.items):
        return False
    return amount.quantity == "mass" or bool(lot.items)


def _layer(lot: _Lot) -> Layer:
    made = makeup(lot.items) if lot.items else None
    mass = lot.amount.value if lot.amount.quantity == "mass" else None
    return Layer(
        mass_kg=mass,
        volume_l=None if mass is not None else lot.amount.value,
        materials={"mixed": 1.0} if made is None else made.shares,
        rich=None if made is None else made.rich,
        bin=lot.bin,
        member=lot.member,
        on=lot.on,
        rules=(RULE,),
    )


class _Reading:
    """Takes one piece after the other, and gives up at the first that has no place."""

    def __init__(self, message: Message) -> None:
        self.message = message
        self.told: list[_Lot] = []
        self.days: list[date] = []
        """The days told of, in turn, those of nothing too."""
        self.heading: str | None = None
        self.bin: str | None = None
        self.member: str | None = None
        self.items: list[Item] = []
        self.row = False
        """ "Monday and Tuesday nothing": several days of which nothing has been said yet."""
        self.empty = False
        """Nothing has been said of the last day yet."""
        self.nought = self.nought_next = False
        """ "Nothing on Monday and Tuesday": of the last day, of the one to come."""
        self.collective = False
        """Right behind "all in", of which what follows is said."""

    def lots(self) -> list[_Lot]:
        """The amounts with all that is theirs; none if a word has no place."""
        pieces = self._body()
        if not pieces or not isinstance(first := _first(pieces), Day | Amount):
            return []
        take = self._day_led if isinstance(first, Day) else self._amount_led
        for k, piece in enumerate(pieces):
            if not take(piece, pieces, k):
                return []
        return self.told if self._is_whole() else []

    def _body(self) -> list[_Piece]:
        """The pieces behind the words that lead to them; none if these say something else."""
        message = self.message
        marks = (message.items, message.amounts, message.members, message.named, message.bins)
        spans: list[_Span] = [span for some in (*marks, message.days) for span in some]
        told = accounted(message.norms, spans)
        at = next((k for k, p in enumerate(told) if not isinstance(p, str) or p in _NOUGHT), 0)
        led = all(isinstance(p, str) and p in _LEAD for p in told[:at])
        return list(told[at:]) if led else []

    def _day_led(self, piece: _Piece, pieces: Sequence[_Piece], k: int) -> bool:
        """Whether the piece has its place where each day stands before what is told of it."""
        match piece:
            case Day() if k > 1 and pieces[k - 1] == "as":
                return True  # "same as Monday"
            case Day():
                return self._begin(piece, pieces, k)
            case Amount() if self.message.norms[piece.start] in _SAME:
                return self._as_before(pieces, k)
            case Amount():
                if not self.days or self.row:
                    return False
                self.told.append(_Lot(piece, self.items, self.bin, self.member, self.days[-1]))
                self.items, self.bin, self.empty = [], None, False
                return True
            case str() if piece in _NOUGHT:
                self.row = False
                self.nought_next = not self.empty  # "nothing on Monday", but "Monday nothing"
                self.empty = False
                return True
            case str() if piece in _SAME:
                return self._as_before(pieces, k)
            case "as":
                return pieces[k - 1] in _SAME
        return self._take(piece, pieces, k)

    def _as_before(self, pieces: Sequence[_Piece], k: int) -> bool:
        """ "Wed same as Mon", "Tue ditto": what went in on the day named, or on the one before."""
        like = self.told[-1].on if self.told else None
        if pieces[k + 1 : k + 2] == ["as"]:
            named = pieces[k + 2] if k + 2 < len(pieces) else None
            like = named.past if isinstance(named, Day) else None
        lots = [lot for lot in self.told if like is not None and lot.on == like]
        on = self.days[-1] if self.days else None
        self.told += [replace(lot, on=on) for lot in lots]
        told, self.empty = self.empty, False
        return bool(lots) and told and not self.row

    def _begin(self, day: Day, pieces: Sequence[_Piece], k: int) -> bool:
        """A day begins: of the one before, something or nothing was told."""
        goes_on = k > 1 and pieces[k - 1] in _TO | _AND and isinstance(pieces[k - 2], Day)
        self.row = goes_on and (self.row or self.empty)
        if (self.empty and not goes_on) or (goes_on and not (self.nought or self.row)):
            return False
        self.nought = self.nought_next or (goes_on and self.nought)
        self.empty = not self.nought
        self.nought_next = False
        self.days.append(day.past)
        self.items, self.bin, self.member = [], None, None
        return not day.aside

    def _amount_led(self, piece: _Piece, pieces: Sequence[_Piece], k: int) -> bool:
        """Whether the piece has its place where each amount stands before its day."""
        match piece:
            case Amount():
                if self.told and self.told[-1].on is None and self.told[-1].bin is None:
                    return False
                self.told.append(_Lot(piece))
                return True
            case Day():
                undated = [lot for lot in self.told if lot.on is None]
                if not undated or _leads(pieces, k):
                    return False
                for lot in undated:  # "2 kg yard and 1 kg hall yesterday, 500 g hall today"
                    lot.on = piece.past
                self.days.append(piece.past)
                return True
            case MemberRef():
                return False
        return self._take(piece, pieces, k)

    def _take(self, piece: _Piece, pieces: Sequence[_Piece], k: int) -> bool:
        """Take in what is said of an amount; False if it has no place there."""
        last = self.told[-1] if self.told and not self.empty else None
        match piece:
            case BinRef():
                return piece.known and piece.name is not None and self._place(piece, pieces, k)
            case Item():
                self._made_of(piece, last)
            case MemberRef():
                return self._doer(None if is_sender(self.message, piece.name) else piece.name, last)
            case str() if piece in _ALL:
                self.collective = True
                return True
            case str() if piece in _ME:
                return self._doer(None, last)
            case str():
                letter = self._by_letter(piece)
                if letter and last and last.bin is None:
                    last.bin = letter
                    return True
                return piece in _JOINTS
        self.collective = False
        return True

    def _place(self, ref: BinRef, pieces: Sequence[_Piece], k: int) -> bool:
        """A bin: of all, a heading, or of one amount."""
        if self.collective:
            self.collective = False
            for lot in self.told:
                lot.bin = lot.bin or ref.name
            return True
        if _is_heading(pieces, k):
            self._close()
            self.heading = ref.name
            return not self.empty
        last = self.told[-1] if self.told and not self.empty else None
        if last is None or last.bin is not None:
            free = self.bin is None and (self.empty or last is not None)
            self.bin = ref.name
            return free
        last.bin = ref.name
        return True

    def _close(self) -> None:
        """What stands under a heading is in its bin."""
        for lot in self.told:
            lot.bin = lot.bin or self.heading

    def _made_of(self, item: Item, last: _Lot | None) -> None:
        if self.collective:
            for lot in self.told:
                lot.items = lot.items or [item]
        elif last is None:
            self.items.append(item)
        else:
            last.items.append(item)

    def _doer(self, name: str | None, last: _Lot | None) -> bool:
        """Who put it in: told before the amount or right behind it."""
        if last is None:
            self.member = name
        else:
            last.member = name
        return True

    def _by_letter(self, word: str) -> str | None:
        """The one bin that begins with the letter: "1 kg G, 500 g R"."""
        if len(word) != 1 or not word.isalpha() or word in ("a", "i", "n"):
            return None
        named = [bin for bin in self.message.context.bins if bin.casefold().startswith(word)]
        return named[0] if len(named) == 1 else None

    def _is_whole(self) -> bool:
        """Whether each amount has its day and bin, and the days are over."""
        self._close()
        context = self.message.context
        several = len(set(context.bins) - set(context.retired)) > 1
        if self.empty or self.bin or self.items or len(set(self.days)) < 2:
            return False
        if any(lot.on is None or (several and lot.bin is None) for lot in self.told):
            return False
        self._begun_last_week()
        return all(day <= self.message.today for day in self.days)

    def _begun_last_week(self) -> None:
        """ "Sunday 1 kg, Monday 2 kg", said on a Sunday: the week that began with it."""
        today, first = self.message.today, self.message.days[0]
        name = self.message.norms[first.end - 1]
        if first.past != today or name not in WEEKDAYS.keys() | SHORT.keys():
            return
        later = [day for day in self.days if day != today]
        goes_on = all(a <= b for a, b in pairwise(later))
        if later and goes_on and (later[0] - today).days + _WEEK.days < (today - later[0]).days:
            for lot in self.told[:1]:
                lot.on = today - _WEEK if lot.on == today else lot.on


_WEEK = timedelta(7)


def _first(pieces: Sequence[_Piece]) -> _Piece | None:
    return next((p for p in pieces if isinstance(p, Day | Amount)), None)


def _leads(pieces: Sequence[_Piece], k: int) -> bool:
    """ "1 kg hall, yesterday 2 kg yard": a day that stands before what was put in on it."""
    return (
        k > 0
        and pieces[k - 1] in _STOPS
        and any(isinstance(p, Amount) for p in pieces[k + 1 : k + 2])
    )


def _is_heading(pieces: Sequence[_Piece], k: int) -> bool:
    """A bin on a line of its own, or before a colon or the first day of its list."""
    led = k == 0 or pieces[k - 1] in _BREAKS
    rest = [p for p in pieces[k + 1 : k + 3] if p != "bin"]
    behind = rest[0] if rest else None
    return led and (isinstance(behind, Day) or behind in (":", "\n", "-", "–"))


_BREAKS = words_in(". ;") | {"\n"}
