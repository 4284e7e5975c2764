"""A bin that is to pass on, and yes or no to that or to a turn."""

from typing import Literal

from handlers.reading.acts import Accept, Decline, Offer
from handlers.reading.arrangements.passing import coming, taker
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, plain_text, with_people, word_count
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import (
    ACCEPTING,
    ACCEPTING_BARE,
    DECLINING,
    DECLINING_BARE,
    OFFERING,
    first_in,
)


def bin_meant(message: Message) -> str | None:
    """The first bin that the message names."""
    names = [b.name for b in message.bins if b.name is not None]
    return names[0] if names else None


def bin_passed(message: Message) -> str | None:
    """ "Sealed Maple and handed Cedar to Ruth": the bin behind the word of passing on."""
    for i, norm in enumerate(message.norms):
        behind = [b.name for b in message.bins if i < b.start <= i + 3] if norm in _PASSES else []
        if behind and behind[0] is not None:
            return behind[0]
    return bin_meant(message)


_PASSES = words_in(
    "pass passing passed hand handing handed give giving gave offer offering offered transfer "
    "transferring leaving turning"
)


def offered(message: Message) -> Offer | None:
    """ "Handing the blue bin to Bram on Friday"."""
    if not message.bins and not message.context.after_bot:
        return None
    match = first_in(OFFERING, with_people(message, plain_text(message)))
    if match is None or is_denied(message):
        return None
    return Offer(
        bin=bin_passed(message),
        to=taker(message),
        on=coming(message),
        rules=("a bin is to pass on",),
    )


def is_denied(message: Message) -> bool:
    """Whether the clause of the bin, or the only clause, is a denial or somebody's words."""
    at = message.bins[0].start if message.bins else 0
    return any(c.sense in ("not", "said") and c.start <= at < c.end for c in message.clauses)


def accepted(message: Message) -> Accept | None:
    """ "I'll take it"; right behind our words no more than "happy to" is wanted."""
    text = plain_text(message)
    if word_count(message) > 2 * SHORT or first_in(DECLINING, text) is not None:
        return None
    if any(message.norms[b.end : b.end + 1] == ["out"] for b in message.bins):
        return None  # "I can take the bins out"
    bare = message.context.after_bot and first_in(ACCEPTING_BARE, text) is not None
    takes = first_in(ACCEPTING, text) is not None
    if not (bare or takes):
        return None
    return Accept(
        bin=bin_meant(message),
        on=coming(message),
        bare=_how_bare(message, takes=takes) if message.context.in_room else None,
        rules=("yes to an offer or a turn",),
    )


def _how_bare(message: Message, *, takes: bool) -> Literal["answer", "aside"] | None:
    if is_only_yes(message):
        return "aside"
    return None if takes else "answer"


def is_only_yes(message: Message) -> bool:
    """ "Yeah, garage", where no bin waits for a taker: it answers whoever asked which bin."""
    rest = unheld(message.norms, indexes(message.bins))
    return not message.context.on_offer and bool(message.bins) and _ONLY_YES.issuperset(rest)


_ONLY_YES = words_in("yes yep yeah aye ok okay the bin one in , . !")


def is_consent(message: Message) -> bool:
    """ "Fine by me", "sounds good": behind others' words it takes only what is offered by name."""
    return _CONSENT.issuperset(message.said)


_CONSENT = words_in(
    "fine ok okay good great grand perfect lovely brilliant works suits sounds happy glad cool no "
    "problem objection objections by with for me us that it this all yes yep yeah sure 's is am i "
    "we idea a plan thats either way too as well and so , . ! ☺ -"
)


def declined(message: Message) -> Decline | None:
    """ "I can't take it"; right behind our words "sorry, no" will do where nothing else is told."""
    text = plain_text(message)
    bare = message.context.after_bot and first_in(DECLINING_BARE, text) is not None
    bare = bare and not (message.amounts or message.items or message.signs or message.liquid())
    if not bare and (word_count(message) > 2 * SHORT or first_in(DECLINING, text) is None):
        return None
    return Decline(
        bin=bin_meant(message),
        on=coming(message, refused=True),
        rules=("no to an offer or a turn",),
    )


OF_DECLINING = words_in(
    "cant cannot wont couldnt unable able pass decline declining skip no nope nah sorry "
    "not "
    "miss somebody someone refuse thanks thank love like puedo posso kann possible havent"
)
OF_OFFERING = words_in(
    "pass passing passed hand handing handed give giving gave offer offering offered "
    "transfer "
    "transferring leave leaving bring bringing send sending moving move drop dropping turn "
    "turning take have host mind keep look collect adopt babysit want grab fancy yours "
    "taking "
    "having getting get takes gets goes going anyone anybody someone somebody who up needs "
    "wants looking over for with like minding hosting"
)
OF_ACCEPTING = words_in(
    "take have host mind keep do collect accept happy glad delighted pleased count ok okay "
    "fine yes mine dibs bagsy put ready free works good get grab adopt babysit love like "
    "look "
    "agree"
)
