"""A bin that was emptied and washed is begun again: "buried Tall Paul, rinsed him, off again"."""

from collections.abc import Sequence

from handlers.reading.acts import Open
from handlers.reading.deeds.toldday import day_of, is_ahead
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.people.doers import member_of
from handlers.reading.plaintext import plain_text
from handlers.reading.words.binwords import PLACE_NAMES
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

RESTARTED = "an emptied bin was begun again"

_ANEW = words_in("again anew afresh over restarted back")
_AGAIN = Late(
    r"\b(?:start(?:s|ed)?|begun|began|running|going|off|taking scraps|open)"
    r"(?: (?:it|her|him|them|off|\S+))? (?:again|anew|afresh|over)\b|"
    r"\brestarted\b|"
    r"\bback (?:in|on|to|at) (?:service|use|duty|work|business|action)\b"
)
_OPEN_AGAIN = Late(
    r"^(?:the )?qbin (?:is|'s) (?:(?:now|back|open|for scraps|in use|in service) )+"
    r"(?:again|from|for|since|now)\b|^(?:the )?qbin (?:is|'s) (?:now )?(?:open again|back in use)$"
)
_EMPTIED = words_in(
    "wash washed washing rinsed scrubbed cleaned clean hosed swilled dried empty emptied zero "
    "nothing buried dug trench"
)
_NOT_YET = frozenset({"will", "if", "ask", "not", "said", "order"})


def restart_of(groups: Sequence[Group]) -> tuple[int, Open] | None:
    """Where a message tells that its one bin was begun again after it was emptied, and the act."""
    message = groups[0].message if groups else None
    if message is None or not message.has(_ANEW):
        return None
    if not message.has(_EMPTIED) and _OPEN_AGAIN.search(plain_text(message)) is None:
        return None
    names = {ref.name for ref in (*message.bins, *message.named) if ref.known}
    k = _told_in(groups) if len(names) == 1 and not _is_of_contents(message) else None
    if k is None or _is_of_room(message):
        return None
    act = Open(
        bin=names.pop(), member=member_of(groups, k), on=day_of(groups, k), rules=(RESTARTED,)
    )
    return groups[k].end - 1, act


def _is_of_contents(message: Message) -> bool:
    """Whether it may be a smell, an insect or the liquid that has begun again."""
    if message.signs or message.liquid() or message.has(_OF_BIN):
        return True
    return message.asked


_OF_BIN = words_in("smell smells pong stink stench whiff niff leak leaking drip fizzing hissing")


def _is_of_room(message: Message) -> bool:
    """ "The laundry's been scrubbed and is open again": a room, of which nothing was buried."""
    known = [ref for ref in (*message.bins, *message.named) if ref.known]
    rooms = all((ref.name or "").lower() in PLACE_NAMES and not ref.plain for ref in known)
    return rooms and not message.has(_BURIED)


_BURIED = words_in("buried dug trench begun began")


def _told_in(groups: Sequence[Group]) -> int | None:
    """The group that says that it was begun again, if nothing of it is ahead or denied."""
    for k, group in enumerate(groups):
        before = groups[k - 1].text().split()[-2:] if k else []
        if _AGAIN.search(" ".join((*before, group.text()))):
            return None if group.sense in _NOT_YET or is_ahead(group) else k
    return None
