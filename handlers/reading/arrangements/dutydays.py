"""Who drains on which days of the week: "Bram drains the yard bin on Mondays, Zoe on Thursdays".

No rota has such turns, so that each is a reminder for the one whose day it is.
"""

from collections.abc import Iterator

from handlers.reading.arranged import OwnDate
from handlers.reading.calendar.daywords import WEEKDAYS
from handlers.reading.calendar.recurrence import CODES, first_on
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.people.doers import is_sender
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

CUES = ("drain", "liquid", "juice", "leachate", " tea ", " tap ")

_MOST = 40
"""Words of a message that is looked at."""
_LIQUID = r"(?:the )?(?:qbin )?(?:'s |s )?(?:liquid|juice|leachate|tea|drainings|tap)"
_REST = Late(
    r"(?:(?:ok|so|right|then|and|from now on|the plan|our plan|agreed|who|days?|rota|:|-|,|is) )*"
    r"(?:(?:will |can |to |is to |are to |am to )?"
    r"(?:drains?|draining|(?:do|does|doing|on) (?:the )?(?:draining|liquid|juice|tap)(?: of)?|"
    r"(?:takes?|taking|draws?|lets?|pours?|runs?|gets?|empty|empties|emptying)"
    rf"(?: (?:out|off|away))* {_LIQUID}(?: (?:out|off|away))*|"
    r"(?:opens?|sees? to) (?:the )?(?:qbin )?tap)"
    r"(?: (?:out|off|of|from|for|at|in|the|it|qbin))*)"
    r"(?: (?:,|\.|;|:|-|and|then|does|do|drains?|takes?|it|on|will|is|are|the|please|ok|\?))*"
)
"""What is said besides of the liquid, once members and days are left out."""
_PLURAL = frozenset(name for name in WEEKDAYS if name.endswith("days"))
_EACH = words_in("on every each")
_SELF = words_in("i me")


def duty_days(message: Message) -> Iterator[Found]:
    """A reminder for each member who is said to drain on days that come again."""
    if not message.context.in_room or len(message.norms) > _MOST:
        return
    pairs, rest = _pairs(message)
    bins = [ref for ref in message.bins if ref.known and ref.name]
    is_ours = bool(bins) or len(pairs) > 1 or message.context.of_bins
    if not pairs or not is_ours or _REST.fullmatch(rest) is None or message.norms[-1] == "?":
        return
    for start, end, member, days in pairs:
        rule = f"FREQ=WEEKLY;BYDAY={','.join(days)}"
        set_for = OwnDate(
            words=f"drain {_bin_said(message, bins)}",
            first=first_on(rule, message.today),
            rule=rule,
            for_whom=member,
        )
        yield Found(start, end, set_for)


def _bin_said(message: Message, bins: list[BinRef]) -> str:
    """The bin as it was called, with "the" if that stands before it."""
    if not bins:
        return "the bins" if len(message.context.bins) > 1 else "the bin"
    start, end = bins[0].start, bins[0].end
    with_article = start > 0 and message.norms[start - 1] == "the"
    return message.text(start - with_article, end)


def _pairs(message: Message) -> tuple[list[tuple[int, int, str, list[str]]], str]:
    """Each member with the days told of them, and where; and the words beside."""
    members = {ref.start: ref for ref in message.members if not ref.owner}
    bins = {ref.start: ref.end for ref in message.bins}
    held = indexes(message.bins)
    said: list[tuple[int, str | list[str]]] = []
    rest = list[str]()
    i = 0
    while i < len(message.norms):
        norm, days = message.norms[i], _days_at(message, i)
        if i in members and i not in held:
            ref = members[i]
            own = is_sender(message, ref.name) and message.context.sender
            said.append((i, own or ref.name))
            i = ref.end
        elif norm in _SELF and message.context.sender:
            said.append((i, message.context.sender))
            i += 1
        elif days:
            named = sorted({WEEKDAYS[day] for day in days if day in WEEKDAYS})
            said.append((i, [CODES[day] for day in named]))
            i += len(days)
        elif i in bins:
            rest.append("qbin")
            i = bins[i]
        else:
            rest.append(norm)
            i += 1
    return _told_by_twos(message, said), " ".join(rest)


def _told_by_twos(
    message: Message, said: list[tuple[int, str | list[str]]]
) -> list[tuple[int, int, str, list[str]]]:
    """Members and days by turns, one of each; nothing where they do not stand so."""
    if not said or len(said) % 2:
        return []
    starts = [0, *(at for at, _ in said[2::2])]
    ends = [*starts[1:], len(message.norms)]
    found = []
    for (_, one), (_, other), at, end in zip(said[::2], said[1::2], starts, ends, strict=True):
        match one, other:
            case (str(member), list(days)) | (list(days), str(member)):
                found.append((at, end, member, days))
            case _:
                return []
    return found if len({type(one) for _, one in said[::2]}) == 1 else []


def _days_at(message: Message, i: int) -> list[str]:
    """The words from here on that say days of the week which come again."""
    norms, start = message.norms, i
    again = norms[i] in _PLURAL
    if norms[i] in _EACH:
        again = norms[i] != "on"
        i += 1
    stop = i
    while i < len(norms) and norms[i] in WEEKDAYS:
        again = again or norms[i] in _PLURAL
        stop = i + 1
        i = stop + (norms[stop : stop + 1] == ["and"])
    return norms[start:stop] if again and stop > start + (norms[start] in _EACH) else []
