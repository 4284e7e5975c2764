"""Answers that cannot both be meant: who offers a bin does not refuse it in the same breath."""

from collections.abc import Sequence

from handlers.reading.acts import (
    Accept,
    Act,
    Ask,
    Bury,
    Decline,
    Done,
    Drain,
    Later,
    Offer,
    Open,
    Seal,
)
from handlers.reading.amending import plain_text
from handlers.reading.flatly import FLATLY
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.passing import BY_NAME
from handlers.reading.vocabulary import words_in

_DONE = Late(
    r"(?:^|[.,!;:] )(?:(?:yep|yes|ok|okay|i|we|have|just|now|already|all|that is|that 's|it is|"
    r"it 's|consider it|so|,) )*(?:done|did (?:it|her|him|that|them)|dealt|seen to|sorted|settled|"
    r"finish|finished|ticked|as asked)\b|\boff (?:your|the|my) list\b|"
    r"\bgot (?:er|it|her|him|that|them|the job) done\b"
)
"""A reminder's task is called done in words of its own, beside what was done."""
_OWN_WORDS = frozenset({BY_NAME, FLATLY})


def without_rivals(found: Sequence[Act], message: Message) -> list[Act]:
    """The acts found, without an answer that another of them rules out."""
    if len(found) < 2:
        return list(found)
    out = list(found)
    if any(isinstance(act, Offer) for act in out):
        out = [act for act in out if not _is_weak(act, Accept, Decline)]
    out = [act for act in out if not _is_weak(act, Ask) or not _is_beside_itself(act, out, message)]
    if any(isinstance(act, Open | Seal) for act in out) and not message.has(_PASSING):
        out = [act for act in out if not _is_weak(act, Offer)]
    begun = {act.member for act in out if isinstance(act, Open)} - {None}
    out = [a for a in out if not (isinstance(a, Offer) and a.to in begun and _is_weak(a, Offer))]
    if message.bot and any(isinstance(act, Later) for act in out):
        out = [act for act in out if not _is_weak(act, Accept, Decline)]
    if len(message.sentences) == 1 and any(_is_of_keeping(act) for act in out):
        out = [act for act in out if not (isinstance(act, Ask) and act.topic == "due")]
    deeds = any(isinstance(act, Seal | Drain | Bury | Open) for act in out)
    if (
        deeds
        and any(isinstance(act, Done) for act in out)
        and not _DONE.search(plain_text(message))
    ):
        out = [act for act in out if not _is_weak(act, Done)]
    return out


_PASSING = words_in(
    "have keep keeps mind minds host hosts turn next yours urs pass passes passing hand hands "
    "handing handed over home collect pick fetch want wants fancy goes going give giving given "
    "coming place house offer offers whoever who anyone anybody someone somebody up ready yours "
    "ask swap after"
)
"""Words without one of which nothing that is shut or begun is offered to anybody."""
_HELPING = words_in(
    "help helps ayuda menu command commands type ask say options manual guide instructions use "
    "work works explain write log record"
)
"""Words without one of which it is only called by its name: "Hej bot."."""
_IN_THE_GROUND = frozenset({"bed", "trench"})


def _is_beside_itself(act: Act, found: Sequence[Act], message: Message) -> bool:
    """ "Can bin 3 go in a bed of 3 m2": what may go into the ground is no scraps; and who asks
    something else asks for no help."""
    if not isinstance(act, Ask):
        return False
    topics = {other.topic for other in found if isinstance(other, Ask)}
    if act.topic == "help":
        called = "asks about help" in act.rules and not message.has(_HELPING)
        return called and len(topics) > 1
    return act.topic == "allowed" and not act.materials and not topics.isdisjoint(_IN_THE_GROUND)


def _is_of_keeping(act: Act) -> bool:
    """Whether it asks who has a bin in words that ask nothing else: "when do I get bin 3"."""
    return isinstance(act, Ask) and act.topic == "custody" and BY_NAME in act.rules


def _is_weak(act: Act, *kinds: type[Act]) -> bool:
    return isinstance(act, kinds) and _OWN_WORDS.isdisjoint(act.rules)
