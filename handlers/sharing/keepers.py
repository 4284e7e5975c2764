"""Who keeps a bin and since when, what is on offer and what is agreed: it follows from entries.

At every moment a bin has one keeper, or none: then it is unattended, and said to be so.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta

from handlers.people import is_same
from storage import custody
from storage.book import Book
from storage.forgetting import FORGOTTEN
from storage.moments import local_day
from storage.rows import Bin, Entry

OFFER_STANDS = timedelta(days=3)
"""How long an offer that names no day waits for an answer."""
ASKING_STANDS = timedelta(days=14)
"""How long it is asked who takes a bin whose keeper is silent."""
GOES_BACK = "back"
"""The words of an acceptance by which a bin that was lent goes back to whoever lent it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Custody:
    """A bin in the care of somebody, as seen on one day."""

    keeper: str | None = None
    since: date | None = None
    by: Entry | None = None
    """The entry that made them the keeper."""
    left: Entry | None = None
    """Since the keeper has left the room: the entry that says so."""
    offer: Entry | None = None
    """What nobody has taken or withdrawn; it may have lapsed, see `pending`. Once its receiver
    has declined it is for anybody else.
    """
    refused: frozenset[str | None] = frozenset()
    """Who was offered it and declined."""
    ahead: tuple[Entry, ...] = ()
    """The acceptances whose days are still to come, in their order."""
    retired: Entry | None = None

    @property
    def coming(self) -> Entry | None:
        """The next acceptance whose day is still to come."""
        return next(iter(self.ahead), None)

    @property
    def goes_back(self) -> Entry | None:
        """The acceptance by which a bin that is lent goes back."""
        return next((one for one in self.ahead if is_return(one)), None)

    def is_lent_by(self, member: str) -> bool:
        """Whether its keeper has only borrowed it of a member."""
        back = self.goes_back
        return back is not None and self.keeper != member and is_same(back.member, member)

    @property
    def taken(self) -> Entry | None:
        """By what it passes on next, or else did so last; a return is only what was agreed."""
        return self.by if self.coming and is_return(self.coming) else self.coming or self.by

    @property
    def leaver(self) -> str | None:
        """Who has left the room, and the bin with it; who asked to be forgotten has not left."""
        if self.left is None or self.left.event.startswith(FORGOTTEN):
            return None
        return self.left.member

    def is_open_to(self, member: str) -> bool:
        """Whether what is on offer can be taken by a member."""
        can = self.offer is not None and may_take(member, self.offer)
        return can and member not in self.refused

    def pending(self, today: date, zone: str) -> Entry | None:
        """The offer that waits for an answer; of a bin that nobody keeps, until somebody does."""
        if self.offer is None:
            return None
        is_needed = self.keeper is None and self.offer.receiver is None
        return self.offer if is_needed or today <= last_day(self.offer, zone) else None


NOBODY = Custody()


def last_day(offer: Entry, zone: str) -> date:
    """The last day on which an offer can be accepted: its own, or some days after it was made."""
    said_on = local_day(offer.said_at, zone)
    if offer.on and offer.on > said_on:
        return offer.on
    return said_on + (ASKING_STANDS if offer.member is None else OFFER_STANDS)


def fold(said: Iterable[Entry], day: date, zone: str) -> Custody:
    """What the entries of a bin, in the order they were said, come to on a day."""
    state, gone, now = NOBODY, dict[str | None, Entry](), date.min
    for entry in said:
        said_on = day_of(entry, zone)
        if said_on > day:
            continue
        now = max(now, said_on)
        state = _passed(state, now)
        if entry.act == "leave":
            gone[entry.member] = entry
        elif entry.act == "return":
            gone.pop(entry.member, None)
        state = _passed(_step(state, entry), now)
        if state.keeper in gone:  # a word that came late from somebody who has left since
            state = replace(state, keeper=None, left=gone[state.keeper])
    return _passed(state, day)


def day_of(entry: Entry, zone: str) -> date:
    """The day from which an entry counts: a bin may be opened before it is told."""
    said_on = local_day(entry.said_at, zone)
    return min(said_on, entry.on or said_on) if entry.act == "open" else said_on


def _passed(state: Custody, day: date) -> Custody:
    """A bin has changed hands by the days that were agreed for it."""
    while (agreed := state.coming) and not (agreed.on and agreed.on > day):
        state = Custody(
            keeper=agreed.member,
            since=agreed.on,
            by=agreed,
            offer=state.offer,
            ahead=state.ahead[1:],
        )
    return state


def _step(state: Custody, entry: Entry) -> Custody:
    match entry.act:
        case "accept":
            return replace(state, ahead=_agreed(state, entry), offer=None)
        case "offer":
            return replace(state, offer=entry, refused=frozenset())
        case "withdraw":
            return replace(state, offer=None)
        case "decline":
            return _declined(state, entry)
        case "leave":
            return _left(state, entry)
        case "return" if state.left and state.left.member == entry.member:
            is_ours = state.offer is not None and state.offer.member is None
            return replace(
                state,
                keeper=entry.member,
                left=None,
                # What was asked for want of a keeper is answered.
                offer=None if is_ours else state.offer,
            )
        case "retire":
            return Custody(retired=entry)
        case "open" if state.keeper is None and state.left is None:
            return replace(state, keeper=entry.member, since=entry.on, by=entry, retired=None)
    return state


def is_return(entry: Entry) -> bool:
    """Whether it is an acceptance that was agreed together with a loan, and ends it."""
    return entry.act == "accept" and entry.facts.words == GOES_BACK


def _agreed(state: Custody, entry: Entry) -> tuple[Entry, ...]:
    """What is agreed once a bin is taken: what is lent goes back whoever has it until then."""
    if is_return(entry):
        return (*state.ahead, entry)
    still = [one for one in state.ahead if is_return(one) and one.member != entry.member]
    on = entry.on or date.min
    return (entry, *(one for one in still if one.on and one.on > on))


def _declined(state: Custody, entry: Entry) -> Custody:
    """No from the one it was offered to leaves it to others; no from one of those, too."""
    offer = state.offer
    if offer is None or offer.receiver is None or not may_take(entry.member, offer):
        return state
    refused = state.refused | {entry.member}
    return replace(state, offer=replace(offer, receiver=None), refused=refused)


def _left(state: Custody, entry: Entry) -> Custody:
    if state.keeper == entry.member:
        state = replace(state, keeper=None, left=entry)
    off = {one.event for one in state.ahead if one.member == entry.member and not is_return(one)}
    stand = [one for one in state.ahead if one.member != entry.member and one.event not in off]
    state = replace(state, ahead=tuple(stand))
    if state.offer and state.offer.receiver and is_same(state.offer.receiver, entry.member):
        state = replace(state, offer=None)
    return state


def may_take(member: str | None, offer: Entry) -> bool:
    """Whether an offer is made to a member, by their name or the first part of it."""
    if offer.receiver is None or is_same(offer.receiver, member):
        return True
    short = " " not in offer.receiver and (member or "").split()[:1]
    return bool(short) and is_same(offer.receiver, (member or "").split()[0])


async def custody_of(book: Book, bin: Bin, day: date) -> Custody:
    """Who keeps a bin on a day, and what is on offer or agreed."""

    async def ask() -> tuple[Custody, date | None]:
        return await _custody_since(book, bin, day)

    key = "custody", bin.id, book.aside, book.room.zone
    found, since = await book.known(custody.OF_CUSTODY, key, ask)
    if since is None or day < since:
        found, _ = await ask()
    return found


async def _custody_since(book: Book, bin: Bin, day: date) -> tuple[Custody, date | None]:
    """The custody on a day, and since when it was the same; None if it may yet be another."""
    said = await custody.said_since_taken(book, bin, day)
    is_retired = any(one.act == "retire" for one in said)
    is_taken = bool(said) and said[0].act == "accept" and not is_retired
    deeds = [] if is_taken else await _first_deeds(book, bin, said)

    begun = _begun(deeds, said)
    found, zone = fold(begun, day, book.room.zone), book.room.zone
    days = [max(local_day(entry.said_at, zone), entry.on or date.min) for entry in begun]
    since = max(days, default=date.min)
    # What is only added comes before no deed of the first run.
    lasts = is_taken or (not is_retired and bool(deeds) and deeds[0].run == 1)
    return found, since if lasts and found.coming is None and since <= day else None


async def present_custody(book: Book, bin: Bin, today: date) -> Custody:
    """Who keeps a bin by all that was heard of it, whichever day the present message is of.

    A message that comes late finds what has happened meanwhile.
    """
    said, zone = await custody.said_since_taken(book, bin, date.max), book.room.zone
    days = [today, *(local_day(one.said_at, zone) for one in said)]
    return await custody_of(book, bin, max(days))


async def whole_custody(book: Book, bin: Bin) -> list[Entry]:
    """All that was said of who keeps a bin, its beginning first."""
    said = await custody.said(book, bin)
    return _begun(await _first_deeds(book, bin, said), said)


async def _first_deeds(book: Book, bin: Bin, said: Sequence[Entry]) -> list[Entry]:
    """By what the records of a bin began, and began again once it was retired."""
    since = max((entry.root for entry in said if entry.act == "retire"), default=0)
    deeds = [await custody.first_deed(book, bin, after) for after in {0, since}]
    return [deed for deed in deeds if deed]


def _begun(deeds: Sequence[Entry], said: Sequence[Entry]) -> list[Entry]:
    """Whoever began the records of a bin, be it without a word, has opened it."""
    opened = [replace(deed, act="open") for deed in deeds]
    return sorted([*opened, *said], key=lambda entry: entry.root)
