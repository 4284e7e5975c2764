"""What went into both bins beside what went into one, each read for itself: "500 g coffee in both,
1 kg bread in the shed".
"""

from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

CUES = words_in("both")
_INTO = words_in("in into to")
_NOUNS = words_in("bins buckets")
_JOINTS = words_in(", ; . and & then")


def parted_at_both(message: Message) -> tuple[str, str] | None:
    """The two halves as texts, where the one tells of both bins and the other names its own."""
    norms, last = message.norms, len(message.norms)
    said = [i for i in range(1, last) if norms[i] == "both" and norms[i - 1] in _INTO]
    named = [ref for ref in message.bins if ref.name is not None]
    if len(said) != 1 or not named:
        return None
    end = said[0] + 1 + (norms[said[0] + 1 : said[0] + 2] != [] and norms[said[0] + 1] in _NOUNS)
    if all(ref.start >= end for ref in named):
        at = end
    elif all(ref.end < said[0] for ref in named):
        at = named[-1].end
    else:
        return None
    measured = message.measured()
    apart = any(a.end <= at for a in measured) and any(a.start > at for a in measured)
    if not apart or norms[at] not in _JOINTS:
        return None
    rest = at + 1 + (norms[at + 1] in _JOINTS)
    days = [day for day in message.days if day.start == 0]
    alone = all(day.end <= at for day in message.days)
    on = message.text(0, days[0].end) if days and alone else ""
    return message.text(0, at), f"{on} {message.text(rest, last)}".strip()
