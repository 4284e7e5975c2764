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
    Seal,
)
from handlers.reading.amending import plain_text
from handlers.reading.flatly import FLATLY
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.passing import BY_NAME

_DONE = Late(
    r"(?:^|[.,!;:] )(?:(?:yep|yes|ok|okay|i|we|have|just|now|already|all|that is|that 's|it is|"
    r"it 's|consider it|so|,) )*(?:done|did (?:it|her|him|that|them)|dealt|seen to|sorted|settled|"
    r"finish|finished|ticked|as asked)\b|\boff (?:your|the|my) list\b"
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
    if message.bot and any(isinstance(act, Later) for act in out):
        out = [act for act in out if not _is_weak(act, Accept, Decline)]
    if len(message.sentences) == 1 and any(_is_of_keeping(act) for act in out):
        out = [act for act in out if not (isinstance(act, Ask) and act.topic == "due")]
    if any(isinstance(act, Ask) and act.topic == "allowed" for act in out):
        out = [act for act in out if not _is_bare_dilution(act)]
    deeds = any(isinstance(act, Seal | Drain | Bury) for act in out)
    if (
        deeds
        and any(isinstance(act, Done) for act in out)
        and not _DONE.search(plain_text(message))
    ):
        out = [act for act in out if not _is_weak(act, Done)]
    return out


def _is_bare_dilution(act: Act) -> bool:
    """Whether it asks for a dilution, neither how much nor what for: "add liquids like soup"."""
    if not isinstance(act, Ask) or act.topic != "dilution":
        return False
    return not any((act.water_l, act.liquid_l, act.parts, act.use))


def _is_of_keeping(act: Act) -> bool:
    """Whether it asks who has a bin in words that ask nothing else: "when do I get bin 3"."""
    return isinstance(act, Ask) and act.topic == "custody" and BY_NAME in act.rules


def _is_weak(act: Act, *kinds: type[Act]) -> bool:
    return isinstance(act, kinds) and _OWN_WORDS.isdisjoint(act.rules)
