"""A bin that was emptied and washed is begun again: "buried Tall Paul, rinsed him, off again"."""

from collections.abc import Sequence

from handlers.reading.acts import Emptied, Open
from handlers.reading.deeds.toldday import day_of, is_ahead
from handlers.reading.grouping import groups_of
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.people.doers import member_of
from handlers.reading.plaintext import plain_text
from handlers.reading.words.binwords import PLACE_NAMES, BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import verb_words, words_in

RESTARTED = "an emptied bin was begun again"

_ANEW = words_in(
    "again anew afresh over restarted back fresh scratch nought zero nothing new clean"
)
_OVER = r"(?:again|anew|afresh|over|fresh(?! (?:one|bin|bucket|tub|pail|batch|lot)\b)|back up)\b"
_NOUGHT = r"(?:scratch|nought|zero|nothing|square one|the start|the beginning|0)"
_AGAIN = Late(
    rf"\bstart(?:s|ed)?(?: (?:it|her|him|them|qbin))? {_OVER}|"
    r"\b(?:start(?:s|ed)?|begun|began|running|going|off|taking scraps|open)"
    r"(?: (?:it|her|him|them|off|\S+))? (?:again|anew|afresh|over)\b|"
    r"\brestarted\b|"
    rf"\b(?:start|beginn)ing (?:(?:it|her|him|them|qbin|all|off) )?{_OVER}|"
    rf"\b(?:start(?:s|ed|ing)?|beg(?:a|u)n|beginning) (?:it |qbin )?from {_NOUGHT}\b|"
    rf"\bback to {_NOUGHT}\b|\b(?:new|fresh|clean) (?:start|beginning|slate)\b|"
    r"\bback (?:in|on|to|at) (?:service|use|duty|work|business|action)\b"
)
_OPEN_AGAIN = Late(
    rf"(?:^|[.!,;] )(?:the )?qbin (?:is|'s|was|has been) (?:now )?(?:started|begun) {_OVER}|"
    r"^(?:the )?qbin (?:is|'s) (?:(?:now|back|open|for scraps|in use|in service) )+"
    r"(?:again|from|for|since|now)\b|^(?:the )?qbin (?:is|'s) (?:now )?(?:open again|back in use)$"
)
_EMPTIED = words_in(
    "wash washed washing rinsed scrubbed cleaned clean hosed swilled dried empty emptied zero "
    "nothing buried dug trench"
)
_NOT_YET = frozenset({"will", "if", "ask", "not", "said", "order"})


def is_begun_again(message: Message) -> bool:
    """Whether a message tells so by its form, whatever its score."""
    if not message.has(CUES) or not (message.bins or message.named or _leans(message)):
        return False
    return restart_of(groups_of(message)) is not None


def restart_of(groups: Sequence[Group]) -> tuple[int, Open] | None:
    """Where a message tells that its one bin was begun again after it was emptied, and the act."""
    message = groups[0].message if groups else None
    if message is None:
        return None
    if message.norms[0] in _BEGIN and (told := _begun_tersely(groups)):
        return told
    if not message.has(_ANEW):
        return None
    emptied = _emptied(groups)
    if not (emptied or message.has(_EMPTIED)) and _OPEN_AGAIN.search(plain_text(message)) is None:
        return None
    names = {ref.name for ref in (*message.bins, *message.named) if ref.known}
    one = len(names) == 1 or bool(emptied and not message.bins and _leans(message))
    k = _told_in(groups) if one and not _is_of_contents(message, emptied) else None
    if k is None or not (emptied or not _is_of_room(message)):
        return None
    act = Open(
        bin=names.pop() if names else None,
        member=member_of(groups, k),
        on=day_of(groups, k),
        emptied=emptied,
        rules=(RESTARTED,),
    )
    return groups[k].end - 1, act


def _begun_tersely(groups: Sequence[Group]) -> tuple[int, Open] | None:
    """ "Start bin 4 this morning", as who has little of a tongue tells what was done."""
    message = groups[0].message
    ref = next((ref for ref in message.bins if ref.name and ref.plain), None)
    day = next((day for day in message.days if ref and day.start == ref.end), None)
    if ref is None or day is None or message.norms[1 : ref.start] not in ([], ["the"]):
        return None
    early = day.past < message.today or message.norms[day.start : day.end] == ["this", "morning"]
    if message.sentences[0].asked or not early:
        return None
    return 0, Open(bin=ref.name, member=member_of(groups, 0), on=day.past, rules=(RESTARTED,))


_BEGIN = words_in("start begin open")
CUES = _ANEW | _BEGIN
"""Words without one of which nothing is begun again."""


def _leans(message: Message) -> bool:
    """ "Binned the lot and washed it, new start": no bin is named where the talk is of one."""
    context = message.context
    on_bin = context.of_bins or context.last is not None
    return on_bin and not message.items and message.has(_WASHED) and message.has(_IT)


_WASHED = words_in("wash washed washing rinsed scrubbed hosed swilled")
_IT = words_in("it him her")


def _emptied(groups: Sequence[Group]) -> Emptied | None:
    """What became of what was in the bin, if it did not go into the ground."""
    message = groups[0].message
    if not message.context.in_room or message.has(_GROUND):
        return None
    known = [ref for ref in (*message.bins, *message.named) if ref.known]
    if not all(_stands_alone(message, ref) for ref in known):
        return None
    done = [g for g in groups if g.sense not in _NOT_YET and not is_ahead(g)]
    if message.has(_THREW) and any(_THROWN.search(group.text()) for group in done):
        return "thrown out"
    if any(_may_be_room(message, ref) for ref in known):
        return None
    out = message.has(_EMPTIED) and any(_EMPTIED_OUT.search(group.text()) for group in done)
    return "emptied" if out else None


def _stands_alone(message: Message, ref: BinRef) -> bool:
    """ "Green stank", but not "the green team"."""
    behind = message.norms[ref.end : ref.end + 1]
    joined = behind and behind[0].isalpha() and behind[0] not in verb_words() | _BEHIND_NAME
    return ref.plain or not joined


def _may_be_room(message: Message, ref: BinRef) -> bool:
    """ "Emptied the shed and started again" may be of the shed itself."""
    the = message.norms[max(0, ref.start - 1) : ref.start] == ["the"]
    return the and not ref.plain and (ref.name or "").lower() in PLACE_NAMES


_BEHIND_NAME = words_in(
    "is was has had got one out away again today and so because on in at into to this stank went"
)
_GROUND = words_in("buried bury dug trench ground soil bed beds border earth planted")
_THREW = words_in(
    "tipped threw thrown chucked binned bin dumped slung tossed lobbed scrapped scrap"
)
_EMPTIED_OUT = Late(
    r"\b(?:emptied|washed|rinsed|scrubbed|hosed|swilled|cleaned) (?:out |down )?"
    r"(?:(?:the |our |my )?qbin\b(?! (?:'|(?:lids?|tap|tray)\b))|it|her|him)\b|"
    r"\bqbin (?:one )?(?:is|'s|was|got|has been|been) (?:(?:now|all) )*"
    r"(?:emptied|washed|rinsed|scrubbed|hosed|swilled|cleaned)\b"
)
_LOT = (
    r"(?:it(?: all)?|everything|all of it|(?:the |that )?(?:whole )?(?:lot|batch|contents|thing))"
)
_OF = (
    rf"(?:(?:{_LOT}|all) (?:of|from|out of)|(?:what|whatever|{_LOT} that) (?:was|is)(?: left)? in)"
)
_THROWN = Late(
    r"\b(?:tipped|threw|thrown|chucked|binned|dumped|slung|tossed|lobbed|scrapped) (?:out |away )?"
    rf"(?:(?:{_OF} )?(?:the |our |my )?qbin\b|"
    rf"{_LOT}\b(?! (?:back )?(?:in|into|on|onto) (?:the |our |my )?qbin))|"
    rf"\b(?:binned|scrapped|had to (?:qbin|bin|scrap)) {_LOT} in (?:the |our |my )?qbin\b|"
    r"\bqbin (?:one )?(?:got|was|has been|had to be) "
    r"(?:tipped|thrown|chucked|binned|dumped|scrapped)\b"
)


def _is_of_contents(message: Message, emptied: Emptied | None) -> bool:
    """Whether it may be a smell, an insect or the liquid that has begun again."""
    if message.liquid() or (not emptied and (message.signs or message.has(_OF_BIN))):
        return True
    return message.asked


_OF_BIN = words_in("smell smells pong stink stench whiff niff leak leaking drip fizzing hissing")


def _is_of_room(message: Message) -> bool:
    """ "The laundry's been scrubbed and is open again": a room, of which nothing was buried."""
    if _STARTED_OVER.search(plain_text(message)):
        return False
    known = [ref for ref in (*message.bins, *message.named) if ref.known]
    rooms = all((ref.name or "").lower() in PLACE_NAMES and not ref.plain for ref in known)
    return rooms and not message.has(_BURIED)


_STARTED_OVER = Late(rf"\b(?:start(?:s|ed)|begun)(?: (?:it|her|him))? {_OVER}")
""" "The barn's hosed out and starts over": no room does that."""
_BURIED = words_in("buried dug trench begun began")


def _told_in(groups: Sequence[Group]) -> int | None:
    """The group that says that it was begun again, if nothing of it is ahead or denied."""
    for k, group in enumerate(groups):
        before = groups[k - 1].text().split()[-2:] if k else []
        if _AGAIN.search(" ".join((*before, group.text()))):
            return None if group.sense in _NOT_YET or is_ahead(group) else k
    return None
