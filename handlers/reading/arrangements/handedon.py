"""Several bins handed on in one breath: "the yard bin to Theo on Monday, the shed bin to Dana"."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import timedelta
from typing import TypeVar

from handlers.reading.acts import KEEPER, Act, Offer
from handlers.reading.arrangements.communal import Handing, Wanting
from handlers.reading.calendar.stretches import coming, stretch_in
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.people.members import MemberRef
from handlers.reading.plaintext import with_people
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def handed_on(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts with an offer for each bin that is followed by its taker, and for how long; the day
    of one told with none is that of the first.
    """
    acts = [lent(a, message) if isinstance(a, Offer) else a for a in acts]
    offers = [act for act in acts if isinstance(act, Offer)]
    pairs = _pairs(message) if len(offers) == 1 and offers[0].to else []
    if len({bin.name for bin, _ in pairs}) < 2 or len({to.name for _, to in pairs}) < 2:
        return acts
    starts = [*(bin.start for bin, _ in pairs[1:]), len(message.norms)]
    each = []
    for (bin, to), end in zip(pairs, starts, strict=True):
        days = [day for day in message.days if to.end <= day.start < end]
        on = coming(days[0].past, days[0].future, message.today) if days else offers[0].on
        each.append(replace(offers[0], bin=bin.name, to=to.name, on=on))
    return [*(act for act in acts if act is not offers[0]), *each]


_Passed = TypeVar("_Passed", Offer, Handing, Wanting)


def lent(offer: _Passed, message: Message) -> _Passed:
    """An offer with how many days the bin is to go for, and from which day, where it is told when
    it comes back: "from 12 to 20 May", "until Friday", "for two weeks".
    """
    if (days := _lasting(message)) is not None:
        return replace(offer, days=days)
    away = while_away(message)
    if not message.days or not (leads := _ENDING.intersection(message.norms)):
        return replace(offer, away=away)
    stretch = stretch_in(message, _first_lead(message), len(message.norms))
    if stretch is None or stretch.last is None or stretch.last <= stretch.first:
        return replace(offer, away=away)
    back = stretch.last + timedelta(days=0 if leads.isdisjoint(_UNTIL) else 1)
    on = stretch.first if stretch.first > message.today else None
    return replace(offer, on=on, days=(back - stretch.first).days)


_LEADING = 4
"""Words before the first day that may tell where its stretch begins."""
_UNTIL = words_in("until till til")
_ENDING = _UNTIL | words_in("to through thru - between")


def _first_lead(message: Message) -> int:
    """From where on the days of a stretch are led in: "with Ruth, from the 5th to the 9th"."""
    first = message.days[0].start
    leads = message.norms[max(first - _LEADING, 0) : first]
    behind_comma = leads[::-1].index(",") if "," in leads else len(leads)
    return first - behind_comma


def while_away(message: Message) -> str | None:
    """Who is away for as long as a bin is handed on, if that is told: a member, or its keeper."""
    if _WHILE.isdisjoint(message.norms):
        return None
    match = _WHILE_AWAY.search(with_people(message, " ".join(message.norms)))
    if match is None:
        return None
    named = [one.name for one in message.members if not is_sender(message, one.name)]
    return named[-1] if "qmember" in match[0] and named else KEEPER


_WHILE = words_in("while whilst when until till til meanwhile meantime absence return as")
_WHO = r"(?:i|we|you|qmember)(?: (?:am|are|is|'s|'re|get|gets|come|comes|feel|will be|have|has))*"
_GONE = (
    r"(?:away|gone|off|out of town|abroad|overseas|travell?ing|"
    r"not (?:here|around)|(?:on|in) (?:(?:my|our|his|her|their|your|the) )?(?:holidays?|"
    r"vacation|leave|trip|travels|hols)|in (?!the |my |our |a )\S+|(?:at|with|visiting) (?:my|our) "
    r"\S+)"
)
_AGAIN = r"(?:back|home|return)"
_WHILE_AWAY = Late(
    rf"\b(?:while|whilst|when|as long as) {_WHO} {_GONE}(?= |$)|"
    rf"\b(?:until|till|til) {_WHO} {_AGAIN}(?= |$)|"
    r"\b(?:meanwhile|in the meantime|(?:in|during) (?:my|our|your) absence|"
    r"(?:until|till|til) (?:my|our|your) return)(?= |$)"
)


def _lasting(message: Message) -> float | None:
    """ "For two weeks": how many days."""
    amounts = (a for a in message.amounts if a.quantity == "days" and a.start)
    return next((a.value for a in amounts if message.norms[a.start - 1] == "for"), None)


def _pairs(message: Message) -> list[tuple[BinRef, MemberRef]]:
    """Each of the group's bins with the member that it goes to."""
    takers = {to.start: to for to in message.members}
    return [
        (bin, takers[bin.end + 1])
        for bin in sorted(message.bins, key=lambda ref: ref.start)
        if bin.known and message.norms[bin.end : bin.end + 1] == ["to"] and bin.end + 1 in takers
    ]
