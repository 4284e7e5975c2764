"""Liquid that is told in a few words beside what else befell the bin: "2 kg of peel in the shed,
and 200 ml off it".
"""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Drain, Layer, Observe, Seal, Unsure
from handlers.reading.calendar.days import Day
from handlers.reading.deeds.liquid import drain_from, litres
from handlers.reading.deeds.toldday import is_ahead
from handlers.reading.grouping import groups_of
from handlers.reading.measures.amounts import Amount
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.spans import accounted
from handlers.reading.words.vocabulary import words_in

CAME_OFF = "what came off the bin that is told of"


def with_what_came_off(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, and a draining of what is said to have come off the one bin that they tell of."""
    told = [act for act in acts if isinstance(act, Layer | Seal | Observe)]
    names = {act.bin for act in told if act.bin is not None}
    if len(names) != 1 or not message.has(_CUES) or message.asked:
        return list(acts)
    if any(isinstance(act, Drain | Unsure) for act in acts):
        return list(acts)
    name = names.pop()
    if any(ref.known and ref.name != name for ref in message.bins):
        return list(acts)
    used = {act.volume_l for act in told if isinstance(act, Layer)}
    drains = [_drain(amount, name, message) for amount in _came_off(message, name)]
    return [*acts, *(drain for drain in drains if drain and drain.volume_l not in used)]


def _drain(amount: Amount, name: str, message: Message) -> Drain | None:
    """The draining of so much, with what its own clauses say of it."""
    groups = groups_of(message)
    k = next((k for k, g in enumerate(groups) if g.start <= amount.start < g.end), None)
    if k is None or message.sense_at(amount.start) in _UNTOLD:
        return None
    if is_ahead(groups[k]):
        return None
    return replace(drain_from(groups, k, CAME_OFF), volume_l=litres([amount]), bin=name)


def _came_off(message: Message, name: str) -> Iterator[Amount]:
    """The volumes that are said to have come off the bin of that name."""
    things = [item for item in message.items if not message.liquid_at(item.start)]
    pieces = accounted(message.norms, message.days, things, message.amounts, message.bins)
    number = name.rpartition(" ")[2]
    told: list[str] = []
    volumes: list[Amount] = []
    for piece in pieces:
        match piece:
            case Amount(quantity="volume", size=False, negative=False):
                told.append("qvol")
                volumes.append(piece)
            case BinRef():
                told.append("qbin")
            case Day():
                told.append("qday")
            case str():
                told.append("qbin" if piece == number and number.isdecimal() else piece)
            case _:
                told.append("qheld")
    text = " ".join(told)
    for found in _OFF.finditer(text):
        yield volumes[text.count("qvol", 0, found.end()) - 1]


_CUES = words_in("off out drain drained")
_UNTOLD = frozenset({"will", "if", "ask", "not", "said"})
_LIQUID = (
    r"(?: (?:of )?(?:the |its |that )?(?:\w+ )?"
    r"(?:juice|juices|liquid|leachate|liquor|run ?off|runoff)\b)?"
)
_DREW = r"(?:ran|run|let|took|taken|drew|drawn|drained|poured|tapped|bled)"
_ENDS = r"(?=$| (?:[,.;!)]|and|&|n|so|now|this|qday|as|because|too|just|before|then|with)(?= |$))"
_NO_LIQUID = r"(?<!qheld )(?<!qheld , )(?<!drank )(?<!drank a )(?<!spilt )(?<!spilled )"
"""Not "milk, 500 ml off", nor "drank a pint out of it"."""
_OFF = Late(
    # "half a cup of juice out of it", "a pint came off her"
    rf"{_NO_LIQUID}\bqvol{_LIQUID} (?:(?:came|come|has come|ran|run|drained) )?"
    rf"(?:off|out|out of|from|off of) (?:it|her|him|there|qbin){_ENDS}(?! (?:first|beforehand))"
    # "250 ml off, 900 g of peel in", "a quart came out"
    rf"|{_NO_LIQUID}\bqvol{_LIQUID} (?:(?:came|come|ran|run) )?(?:off|out){_ENDS}"
    # "I let out 200 ml and now it is quiet"
    rf"|\b{_DREW} (?:off|out) (?:about |some |nearly |almost |another )?qvol{_LIQUID}{_ENDS}"
    # "yesterday drain 4, 600 ml", said after the fact in few words
    r"|\bqday ,? ?(?:i )?(?:drain|tap) (?:the )?qbin(?: [,:])? qvol\b"
)
