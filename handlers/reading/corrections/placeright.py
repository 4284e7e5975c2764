"""Where a bin was buried, told or put right in a few words: "under the lemon", "fig not pear"."""

from handlers.reading.acts import Amend, Bury
from handlers.reading.deeds.placewords import UNDER, WEATHER, WHEN
from handlers.reading.message import Message
from handlers.reading.plaintext import is_asking
from handlers.reading.words.vocabulary import words_in

_RULE = "where it was buried"


def place_owed(message: Message) -> Amend | None:
    """ "Under the lemon" behind "buried blue": where it went, and no more; "sorry, under the fig",
    "fig not pear" where another place was told.
    """
    last, norms = message.context.last, message.norms
    if not isinstance(last, Bury) or message.bins or message.days or message.amounts:
        return None
    if is_asking(message) or any(c.verb is not None for c in message.clauses[:1]):
        return None
    led = next((i for i, norm in enumerate(norms) if norm not in _BEFORE_PLACE), len(norms))
    refused = norms.index("not") if "not" in norms else len(norms)
    end = refused
    while end > led and norms[end - 1] in _BEHIND_PLACE:
        end -= 1
    denied = norms[refused + 1 :]
    known = frozenset((last.place or "").casefold().split())
    instead = bool(denied) and bool(known) and denied[-1] in known
    if denied and not instead:
        return None
    start = led
    if start < end and norms[start] in _WHERE:
        start += 1 + (norms[start + 1 : start + 2] == ["to"])
    elif not instead:
        return None
    articled = start < end and norms[start] in ("the", "our", "my")
    start += articled
    told_anew = led > 0 or end < len(norms) or (message.context.after_bot and articled)
    if (last.place and not told_anew) or not 0 < end - start <= _LONGEST_PLACE:
        return None
    if any(not norm[0].isalpha() or norm in _NO_PLACE for norm in norms[start:end]):
        return None
    place = message.text(start, end)
    return Amend(place=place, rules=(_RULE,)) if place.casefold() != last.place else None


_BEFORE_PLACE = words_in("no nope sorry oops actually it was that i meant mean wait , .")
_BEHIND_PLACE = words_in("sorry actually i mean meant please , . !")
_WHERE = UNDER | words_in("by next in along at between")
_NO_PLACE = (
    WEATHER
    | WHEN
    | words_in(
        "way moment all least once mood hand hour hours minutes steam own breath killed weather "
        "circumstances meantime evening morning afternoon"
    )
)
_LONGEST_PLACE = 4
