"""A bin emptied into a tub of soil, a "soil factory": where there is no ground it stands for it."""

from handlers.reading.acts import Bury
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in("soil earth dirt")
PLACE = "soil tub"
"""The place that is written down; the days until it is soil are those of a tub."""
_RULE = "into a tub of soil"
_SOIL = r"(?:(?:old|used|dry|garden|potting|some|the|our) )*(?:soil|earth|dirt)"
_VESSEL = r"(?:tub|box|bucket|barrel|container|tote|planter|trough|bin|crate)"
_TUB = (
    r"(?:the |a |an |our |my |that )(?:(?:big|old|spare|large|new|plastic) )*"
    rf"(?:(?:soil|earth|dirt) (?:factory|{_VESSEL})|"
    rf"{_VESSEL} (?:of|with|full of|filled with) {_SOIL})"
)
_ALL = (
    r"(?:it|them|everything|all of it|it all|the lot|the whole lot|the contents|"
    r"(?:(?:the|our|my) )?qname(?: contents)?)"
)
_LEAD = r"^(?:(?:i|we|have|'ve|just|now|and|so|ok|then|also|finally|,) )*"
_ENDS = r"(?: (?:today|now|just now|yesterday|this morning|at last|outside|,|[.]|!))*$"
_EMPTIED = Late(
    rf"{_LEAD}(?:emptied|tipped|put|dumped|turned|moved|buried|poured|scraped|mixed) {_ALL}"
    rf"(?: out| all| over)* (?:into|in) {_TUB}{_ENDS}|"
    rf"{_LEAD}(?:mixed|buried|covered|layered) {_ALL} (?:with|in|under) {_SOIL} in "
    rf"(?:the|a|our|my) (?:\w+ )?{_VESSEL}{_ENDS}|"
    rf"{_LEAD}{_ALL} (?:(?:is|'s|went|has|gone|all|now) )+(?:into|in) {_TUB}{_ENDS}"
)


def in_a_soil_tub(message: Message) -> Bury | None:
    """The burial of what went into a tub of soil, if nothing else is told."""
    if (
        any(not amount.vessel for amount in message.amounts)
        or message.items
        or "?" in message.said
        or message.members
    ):
        return None
    norms, known = message.norms.copy(), [ref for ref in message.bins if ref.known]
    if len(known) > 1:
        return None
    for ref in known:
        norms[ref.start : ref.end] = ["qname"]
    if _EMPTIED.match(" ".join(norms)) is None:
        return None
    days = [day.past for day in message.days if day.past <= message.today]
    on = days[0] if days else message.today
    return Bury(bin=known[0].name if known else None, place=PLACE, on=on, rules=(_RULE,))
