"""Records that are only what is asked about: "making 2 kg of bran, how much molasses?"."""

from collections.abc import Callable, Sequence

from handlers.reading.acts import Act, Ask, Batch, Drain, Observe, Open, Stock
from handlers.reading.deeds.bran import is_to_be_mixed
from handlers.reading.message import Message
from handlers.reading.words.late import Late

_HELD = Late(
    r"\bif (?:someone|somebody|anyone|i|we|you|one)\b|"
    r"\b(?:got|have|with|here|this|is)\b.{0,25}\b(?:in|of) (?:a|an|my|this|the|her|his) (?:old |"
    r"big )?"
    r"(?:mug|jug|cup|bottle|jar|glass|flask|can)\b"
)
_DRAWN = Late(
    r"\b(?:drained|drew|drawn|took|taken|tapped|emptied|collected|pulled|siphoned|syphoned|ran|"
    r"came)\b|"
    r"\bgot .{0,25}\b(?:from|off|out)\b"
)
_STILL_MIXING = Late(
    r"\b(?:making|mixing|brewing|starting|planning)\b.{0,60}\bhow (?:much|many)\b|"
    r"^(?:the )?(?:starter|bran|dose) for [\d.,]+ ?\S+ mixed\b"
)
_IS_THERE = Late(
    r"^(?:(?:bot|pailkeeper|and|so|,) )*(?:do|does|have|has|is|are|would|did|can|could) "
    r"(?:you|we|i|there|it|they|anyone|anybody)\b"
)


def without_asked_of(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts without the records that a question beside them is about."""
    topics = {act.topic for act in acts if isinstance(act, Ask)}
    if not topics or len(acts) == len(topics):
        return list(acts)
    text = " ".join(message.norms)
    return [
        act
        for act in acts
        if not any(
            isinstance(act, kind) and topic in topics and is_such(act, message, text)
            for kind, topic, is_such in _ONLY_ASKED
        )
    ]


def _is_held(_: Act, __: Message, text: str) -> bool:
    """ "80 ml in a mug, how much water?": drawn off before, if ever."""
    return _HELD.search(text) is not None and _DRAWN.search(text) is None


def _is_yet_to_be_mixed(_: Act, __: Message, text: str) -> bool:
    """What goes into it is asked for, or how much of it goes on mixed scraps."""
    return _STILL_MIXING.search(text) is not None


def _is_what_to_mix(_: Act, message: Message, __: str) -> bool:
    """ "I have 3 kg of bran, how do I make starter?"."""
    return is_to_be_mixed(message, asked=True)


def _is_wondered(_: Act, message: Message, text: str) -> bool:
    """ "Do you think we have 2 kg of bran left?"."""
    return len(message.sentences) == 1 and _IS_THERE.match(text) is not None


def _is_of_no_bin(act: Act, message: Message, _: str) -> bool:
    """ "Bucket holds 15 L, how long a trench?", "it has white fur, good?" where no bin is: a bin
    that is not named is none of the group's."""
    named = getattr(act, "bin", None) is not None or any(ref.known for ref in message.bins)
    if named or not message.context.in_room or len(message.sentences) > 1:
        return False
    return isinstance(act, Open) or not (message.bins or message.context.bins)


_ONLY_ASKED: tuple[tuple[type[Act], str, Callable[[Act, Message, str], bool]], ...] = (
    (Drain, "dilution", _is_held),
    (Batch, "batch", _is_yet_to_be_mixed),
    (Batch, "dose", _is_yet_to_be_mixed),
    (Stock, "starter", _is_wondered),
    (Stock, "batch", _is_what_to_mix),
    (Open, "trench", _is_of_no_bin),
    (Observe, "trouble", _is_of_no_bin),
)
"""A kind of record, the question that it may be asked for, and whether it is."""
