"""The sides of a trench in a question: "30 cm wide and 25 deep", "a hole 50 cm across"."""

from dataclasses import replace

from handlers.reading.acts import Ask
from handlers.reading.digits import digits_value
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

CUES = words_in("wide deep long across width depth length")
_SIDES = {
    "long": "length_m", "length": "length_m", "wide": "width_m", "width": "width_m",
    "across": "width_m", "deep": "depth_m", "depth": "depth_m",
}  # fmt: skip
_BEFORE = 3
"""Words before a measure among which its side is named ("a depth of 30 cm")."""


def with_sides(act: Ask, message: Message) -> Ask:
    """The question about a trench with the sides that were said, in metres."""
    if not message.has(CUES):
        return act
    norms, sides = message.norms, dict[str, float]()
    lengths = [a for a in message.amounts if a.quantity == "length"]
    for amount in lengths:
        behind = norms[amount.end : amount.end + 1]
        before = [n for n in norms[max(0, amount.start - _BEFORE) : amount.start] if n in _NOUNS]
        name = behind[0] if behind and behind[0] in _SIDES else next(iter(before[-1:]), None)
        if name is not None:
            sides.setdefault(_SIDES[name], amount.value)
    for i, norm in enumerate(norms[1:], 1):  # "30 cm wide and 25 deep"
        number = digits_value(norms[i - 1]) if norm in _SIDES else None
        shared = [a for a in lengths if a.end < i]
        said = digits_value(norms[shared[-1].start]) if shared else None
        if number and said:
            sides.setdefault(_SIDES[norm], shared[-1].value / said * number)
    if "across" in norms and "width_m" in sides:
        sides.setdefault("length_m", sides["width_m"])
    return replace(act, **sides) if sides else act  # type: ignore[arg-type]


_NOUNS = words_in("width depth length")
