"""How much of a food may go in at once: "how much rice at a time?", "is 3 kg of fish too much?"."""

from collections.abc import Iterator, Sequence

from handlers.reading.acts import Ask
from handlers.reading.food.items import Item
from handlers.reading.food.makeups import makeup
from handlers.reading.found import Found
from handlers.reading.message import Message, read_message
from handlers.reading.phrases import Phrase, phrases
from handlers.reading.words.late import Late

CUES = ("how much", "limit", "the most", "maximum", "too much")
_MOST_WORDS = 20
_VESSEL = (
    r"(?:in|into|for) (?:(?:a|an|the|our|my|one|each) )?"
    r"(?:qmuch|(?:qmuch )?(?:bokashi )?(?:qbin|bin|bucket|pail|tub|layer|go))"
)
_HERE = rf"(?: (?:at once|at a time|at most|at one time|per layer|in it|{_VESSEL}))"
_PUT = (
    r"(?:can|may|should|could) (?:(?:i|we|you|one) (?:put|add|throw|chuck|use)|go|"
    rf"be (?:put|added))(?: in)?{_HERE}*"
)
_ASKED = Late(
    rf"(?:and |so |but )?(?:how much qfood {_PUT}|"
    r"(?:is there|what is|what 's) (?:a|an|any|the) (?:limit|maximum|most) (?:(?:to|on|for|of) )?"
    r"(?:how much |the amount of )?qfood(?: (?:i|we|you|one) can (?:put|add|throw)(?: in)?| "
    rf"{_PUT})?{_HERE}*|"
    rf"is qmuch (?:of )?qfood (?:too much|a lot)(?: to (?:put in|add))?{_HERE}+)"
)
_BARELY = Late(
    r"(?:and |so |but )?(?:how much qfood (?:at most|is too much|at once|at a time|per layer)|"
    r"is qmuch (?:of )?qfood (?:too much|a lot))"
)
"""Only said to the bot: others speak of what is eaten."""


def most_of(message: Message) -> Iterator[Found]:
    """The questions of a message how much of a food is too much."""
    for phrase in phrases(message) if len(message.words) <= _MOST_WORDS else ():
        if phrase.asked and (asked := _asked(phrase)) is not None:
            yield Found(*phrase.sentence, asked)


def _asked(phrase: Phrase) -> Ask | None:
    message = phrase.message
    items = [item for item in _things(message) if phrase.start <= item.start < phrase.end]
    made = makeup([item._replace(absent=False) for item in items])
    if made is None:
        return None
    text = _named(phrase, items)
    to_us = phrase.to_bot or message.context.after_bot
    if not (_ASKED.fullmatch(text) or (to_us and _BARELY.fullmatch(text))):
        return None
    measured = [a for a in message.measured() if phrase.start <= a.start < phrase.end]
    sizes = [a for a in measured if a.quantity == "volume" and a.start > items[-1].start]
    lots = [a for a in measured if a not in sizes]
    mass = [a.value for a in lots if a.quantity == "mass"]
    volume = [a.value for a in lots if a.quantity == "volume"]
    return Ask(
        topic="allowed",
        at_most=True,
        what=message.text(items[0].start, items[-1].end),
        materials=made.shares,
        rich=made.rich,
        mass_kg=mass[0] if mass else None,
        volume_l=volume[0] if volume and not mass else None,
        capacity_l=sizes[0].value if sizes else None,
        bin=phrase.bin,
    )


def _things(message: Message) -> Sequence[Item]:
    """The foods, also before "can", which else makes a tin of them ("how much rice can go in")."""
    if message.items or "can" not in message.said:
        return message.items
    words = " ".join("may" if norm == "can" else norm for norm in message.norms)
    again = read_message(words, message.context)
    return again.items if len(again.norms) == len(message.norms) else ()


def _named(phrase: Phrase, items: list[Item]) -> str:
    """Its words with the foods and the amounts replaced."""
    norms = list(phrase.message.norms)
    spans = [(item.start, item.end, "qfood") for item in items]
    spans += [(a.start, a.end, "qmuch") for a in phrase.message.measured()]
    spans += [(ref.start, ref.end, "qbin") for ref in phrase.bins]
    for start, end, name in spans:
        norms[start:end] = [name, *[""] * (end - start - 1)]
    said = norms[phrase.start : phrase.end]
    while said and said[-1] in ("?", ".", "!"):
        said.pop()
    return " ".join(norm for norm in said if norm)
