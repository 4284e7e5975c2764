"""A few words that lean on the record in talk: more of it, how much it was, that it never was."""

from collections.abc import Mapping
from dataclasses import replace
from datetime import date
from itertools import pairwise

from handlers.reading.acts import (
    Act,
    Amend,
    Batch,
    Bury,
    Drain,
    Layer,
    Retract,
    Seal,
    Stock,
)
from handlers.reading.corrections.amending import (
    SORRY,
    is_of_another_thing,
)
from handlers.reading.deeds.liquid import drain_from, drawn
from handlers.reading.deeds.scraps import layer_from
from handlers.reading.food.quantities import scrap_amounts
from handlers.reading.grouping import groups_of
from handlers.reading.message import Message
from handlers.reading.plaintext import is_asking, plain_text, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import vocabulary, words_in
from handlers.reading.words.wording import FURTHER, NOTHING_FURTHER, PUTTING_RIGHT, first_in

_RULE = "and another amount"
_MOST_WORDS = 6
REFUSING = SORRY | words_in("no nope nah make")
_UNDONE = frozenset({"will", "if", "not", "said", "ask"})


_OTHER_DEEDS = frozenset({"open", "seal", "bury", "batch", "drain", "stock"})
"""What is told with such a verb is read for itself."""


def adds(message: Message) -> bool:
    """Whether a short answer tells of a further amount, and puts no earlier one right."""
    drains = isinstance(spoken_of(message), Drain)
    deeds = _OTHER_DEEDS - {"drain"} if drains else _OTHER_DEEDS
    return (
        (message.context.after_bot or spoken_of(message) is not None)
        and word_count(message) <= _MOST_WORDS
        and any(a.quantity in ("mass", "volume") for a in message.amounts)
        and not is_asking(message)
        and all(c.sense not in _UNDONE for c in message.clauses)
        and not any(c.verb and c.verb.verb.classes & deeds for c in message.clauses)
        and is_further(message)
        and not is_of_another_thing(message)
    )


def spoken_of(message: Message) -> Act | None:
    """The record that the talk is on, else the sender's own, whoever has spoken since."""
    return message.context.last or message.context.earlier


def is_further(message: Message) -> bool:
    """Whether an amount is told of as a further one: it puts no earlier one right."""
    if any(a == "not" and b[:1].isdigit() for a, b in pairwise(message.norms)):
        return False  # "and 3 lb not 2"
    return REFUSING.isdisjoint(message.norms[:3]) and _tells_further(plain_text(message))


def _tells_further(text: str) -> bool:
    return (
        first_in(FURTHER, text) is not None
        and first_in(NOTHING_FURTHER, text) is None
        and first_in(PUTTING_RIGHT, text) is None
    )


def more(message: Message) -> Layer | Drain | None:
    """The further amount, of the kind and in the bin of the record that the talk is on."""
    if not adds(message):
        return None
    last = spoken_of(message)
    if isinstance(last, Batch | Stock):
        return None
    groups = groups_of(message)
    for k, group in enumerate(groups):
        act: Layer | Drain | None = None
        runs = isinstance(last, Drain) or message.liquid()
        if runs and drawn(group) and not group.solids():
            act = drain_from(groups, k, _RULE)
        elif scrap_amounts(group):
            act = layer_from(groups, k, _RULE)
        if act is not None:
            known = last.bin if isinstance(last, Layer | Drain) else None
            on = _day_of_more(last, act, message)
            return replace(act, bin=act.bin or known, on=on)
    return None


def _day_of_more(last: Act | None, more: Layer | Drain, message: Message) -> date | None:
    """Behind what was told of Friday "and 300 g of bread" went in on that day, too."""
    if not isinstance(last, Layer | Drain) or message.context.last is not last:
        return more.on
    own = last.member in (None, message.context.sender)
    if not own or more.on != message.today or message.days or message.has(_NOW):
        return more.on
    return last.on or more.on


_NOW = words_in("now just today tonight later")


_NEVER_DID = Late(
    r"^(?:(?:no|wait|oops|sorry|actually|hang on|but|hey|,) )*i (?:didnt|did not|havent|never) "
    r"(?:(?:actually|even|really) )?(?P<did>\w+)(?: (?:it|that|any|anything|them))?"
    r"(?: (?:in|on|off|up|at all|after all|yet|today|actually|then|though))*(?: [.,;!].*)?$"
)
_ANOTHER_DAY = Late(
    r"^(?:(?:no|wait|oops|sorry|actually|hang on|but|hey|,) )*i (?:didnt|did not|havent|never) "
    r"(?:(?:actually|even|really) )?(?P<did>\w+)(?: (?:it|that|any|anything|them|am))?"
    r"(?: (?:in|on|off|up|actually|though|o|qday))*(?: [.,;-])*"
    r"(?:(?: but| na| actually| it was| that was| it is| i (?:did|put|added|drained|sealed|buried)"
    r"(?: (?:it|that|am))?(?: in| up)?| it happened| it went in)+(?: on)?) qday"
    r"(?: (?:i|put|did|added|drained|sealed|it|that|am|in|off|up|sorry|actually|instead|o))*$"
)
_DEEDS: Mapping[str, type[Act]] = {
    **dict.fromkeys(("drain", "drained"), Drain),
    **dict.fromkeys(("add", "added", "put"), Layer),
    **dict.fromkeys(("seal", "sealed"), Seal),
    **dict.fromkeys(("bury", "buried"), Bury),
}


def never_done(message: Message) -> Retract | Amend | None:
    """ "I didn't drain it at all", of the record that the talk is on; "I didn't put it in today, it
    was yesterday" was done on another day.
    """
    last = message.context.last
    named = any(ref.known and ref.name for ref in message.bins)
    if last is None or message.amounts or named:
        return None
    moved = _ANOTHER_DAY.match(plain_text(message, days=True)) if message.days else None
    did = moved or _NEVER_DID.match(plain_text(message))
    if did is None or not isinstance(last, Drain | Layer | Seal | Bury):
        return None
    if _DEEDS.get(did["did"]) is not type(last):
        return None
    day = message.days[-1].past if moved else last.on
    if moved and day is not None and day != last.on and day <= message.today:
        return Amend(on=day, rules=("it was done on another day",))
    return Retract(bin=last.bin, rules=("it was not done",))


def another_doer(message: Message) -> Amend | None:
    """ "That was Bram, not me": one whom the group has not named before."""
    if not message.context.after_bot or message.members:
        return None
    match = _NOT_ME.fullmatch(" ".join(message.norms))
    if match is None:
        return None
    named = message.words[match.group()[: match.start("name")].count(" ")]
    if not named.text[:1].isupper() or named.norm in vocabulary():
        return None
    return Amend(member=named.text, rules=("another did it",))


_NOT_ME = Late(
    r"(?:(?:no|oops|sorry|actually|,) )*(?:that|it) (?:was|is|'s) (?P<name>[^\W\d]+)"
    r"(?: ,)?(?: and)? not me(?: [.!])*"
)
