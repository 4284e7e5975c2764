"""What a few words mean while the room talks of its starter or of its liquid: "2 cups left",
"what's the recipe?", "I took off 400 already".

In any other talk they are of something else, and nothing is read from them here.
"""

from handlers.reading.acts import Act, Ask, Batch, Drain, Stock, Unsure
from handlers.reading.measures.digits import digits_value
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

CUES = words_in("left recipe made mixed took taken tapped poured drew got ran making mixing need")
"""Words without one of which a message leans on no such talk."""
LONGEST = 100
"""Letters of a message that may lean so."""

_RULE = ("by what the room talks of",)
_SAYS = (
    r"(?:(?:and|but|so|oh|well|actually|fyi|btw|just|i|we|you|there|they|have|has|'ve|got|is|are|'s|"
    r"only|still|now|think|like|about|around|roughly|maybe|nearly|at most|,) )*"
)
_LEFT = Late(
    rf"{_SAYS}qmuch (?:(?:of it|of that|still|or so|ish) )*left(?: (?:now|here|over|in (?:the|our) "
    r"(?:bag|box|tin|tub|bucket|jar|sack|cupboard|shed|store)|after that|i think|though))*"
    r"(?: ?[,.;(-] ?(?:(?:i|we|just|have|'ve) )*(?:measured|checked|weighed|looked|counted)"
    r"(?: it| up)?)?"
)
_RECIPE = Late(
    r"\b(?:the|a|our) recipe\b"
    r"(?! (?:book|for (?!qmuch\b|it\b|that\b|more\b|some\b)))|"
    r"\bhow (?:do|did|can|should) (?:you|we|i) (?:make|mix) (?:it|that|more|some)\b"
)
_MADE = Late(
    rf"{_SAYS}(?:it is |it 's )?(?:made|mixed) ?(?:it|that|some|more|a batch|the batch|the lot)?"
    r"(?: (?:up|now|today|last night|qday|just now))* ?[,.:-]? ?(?:about |roughly )?qmuch"
    r"(?: (?:of it|in all|altogether|this time))?"
)
_TOOK = Late(
    rf"{_SAYS}(?:took|taken|tapped|drew|poured|ran|got) (?:(?:about|around|roughly|some|like) )*"
    r"(?:off |out )?(?:(?:about|around|roughly) )*qnum(?: (?:off|out|already|from it|off it|of it|"
    r"earlier|just now|today|this morning|last night|qday))*(?: ?[,.;] .{1,40})?"
)
_OFF = words_in("off out from tapped drew")
_LEAST_ML, _MOST_ML = 20, 3000
"""Figures between which millilitres are meant."""


def by_topic(message: Message) -> tuple[Act, ...]:
    """What the words mean in the talk that they stand in; none in other talk."""
    topic = message.context.talk_of
    if topic is None or not message.has(CUES) or any(ref.known for ref in message.bins):
        return ()
    act = _of_liquid(message) if topic == "liquid" else _of_bran(message)
    return (act,) if act else ()


def _of_bran(message: Message) -> Act | None:
    measured = [a for a in message.amounts if a.quantity in ("mass", "volume")]
    if len(measured) > 1 or message.items:
        return None
    much = measured[0] if measured else None
    mass = much.value if much and much.quantity == "mass" else None
    volume = much.value if much and much.quantity == "volume" else None
    text = _text(message)
    asked = message.asked
    if _RECIPE.search(text):
        return Ask(topic="batch", mass_kg=mass, volume_l=volume, rules=_RULE)
    if asked or much is None:
        return None
    if _LEFT.fullmatch(text):
        return Stock(mass_kg=mass, volume_l=volume, rules=_RULE)
    made = message.context.talk_of == "batch" and _MADE.fullmatch(text)
    return Batch(mass_kg=mass, volume_l=volume, on=message.today, rules=_RULE) if made else None


def _of_liquid(message: Message) -> Act | None:
    """A bare figure that was drawn off: millilitres, if the answer to a question says so."""
    numbers = [i for i, word in enumerate(message.words) if word.kind == "number"]
    if message.amounts or message.items or len(numbers) != 1 or not message.has(_OFF):
        return None
    if message.context.units != "metric" or message.asked:
        return None
    value = digits_value(message.norms[numbers[0]]) or 0
    if not _LEAST_ML <= value <= _MOST_ML or _TOOK.fullmatch(_text(message)) is None:
        return None
    over = [day.past for day in message.days if day.past <= message.today]
    drawn = Drain(volume_l=value / 1000, on=over[0] if over else message.today, rules=_RULE)
    return Unsure(guess=(drawn,), rules=_RULE)


def _text(message: Message) -> str:
    """The words with what is measured as `qmuch`, a bare figure as `qnum` and a day as `qday`."""
    spans = {a.start: (a.end, "qmuch") for a in message.amounts}
    spans |= {day.start: (day.end, "qday") for day in message.days}
    out, at = list[str](), 0
    while at < len(message.norms):
        end, name = spans.get(at, (at + 1, message.norms[at]))
        is_figure = at not in spans and message.words[at].kind == "number"
        out.append("qnum" if is_figure else name)
        at = end
    return " ".join(out).strip(" .!?,")
