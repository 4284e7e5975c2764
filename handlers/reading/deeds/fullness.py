"""How full a bin is told to be: "green is half full", "there's about 8 litres in green"."""

from collections.abc import Iterator
from re import Match

from handlers.reading.arranged import Fullness
from handlers.reading.found import Found
from handlers.reading.message import Message
from handlers.reading.phrases import Phrase, first_plan
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late

CUES = (" full", "there's ", "there is ", "theres ", " in it")

_ABOUT = (
    r"(?:(?:about|around|roughly|now|already|maybe|only|just|just over|a bit over|over|at least|"
    r"approx|approximately|say|still) )*"
)
_SHARES = {
    "half": 0.5, "1/2": 0.5, "½": 0.5, "quarter": 0.25, "1/4": 0.25, "¼": 0.25, "third": 1 / 3,
    "1/3": 1 / 3, "two thirds": 2 / 3, "2/3": 2 / 3, "three quarters": 0.75, "3/4": 0.75, "¾": 0.75,
}  # fmt: skip
_SHARE = rf"(?P<share>{'|'.join(_SHARES)}|(?P<percent>\d\d?) ?(?:%|percent|per cent))"
_END = r"(?: (?:now|already|qday|so far|by now|up|at least|or so|ish|at the moment|btw|i think))*$"
_IS_FULL = Late(rf"^(?:the |our |my )?qbin (?:is|'s) {_ABOUT}(?:a |one )?{_SHARE} full{_END}")
_AGAIN = Late(
    r"^(?:(?:no|nope|nah|oh|wait|actually|sorry|oops|hang on|well|hm+|i mean|i meant|"
    r"make (?:it|that)|(?:it|that) (?:is|'s|was)|its|more like|rather|nearer(?: to)?|closer to|"
    r"like|[,.]) )*"
    rf"{_ABOUT}(?:a |one )?{_SHARE}(?: full)?(?: (?:tbh|actually|sorry|really|rather|[.!]))*{_END}"
)
_OF_IT = r"(?: of (?:scraps|stuff|food|peelings|waste))?"
_HOLDS = Late(
    rf"^there (?:is|'s|are|re) {_ABOUT}(?P<much>\S+(?: \S+){{0,3}}?){_OF_IT} in (?:the |our |my )?"
    rf"qbin{_END}|"
    rf"^(?:the |our |my )?qbin (?:has|'s got|has got) {_ABOUT}(?P<much2>\S+(?: \S+){{0,3}}?)"
    rf"{_OF_IT} in it{_END}"
)
_FEW_WORDS = 12
_LEAST_LITRES = 2.0
"""Less than that is liquid."""


def fullness(message: Message) -> Iterator[Found]:
    """How full a bin of the group's is, where nothing else is told."""
    if not message.context.in_room:
        return
    yield from first_plan(message, _told, most=1)


def share_again(message: Message) -> float | None:
    """ "No wait, more like half": another share, in answer to a question of one."""
    match = _AGAIN.match(plain_text(message)) if len(message.norms) <= _FEW_WORDS else None
    return _share_of(match) if match else None


def _share_of(match: Match[str]) -> float:
    percent = match["percent"]
    return int(percent) / 100 if percent else _SHARES[match["share"]]


def _told(phrase: Phrase) -> Fullness | None:
    if phrase.asked or phrase.bin is None:
        return None
    if match := _IS_FULL.match(phrase.text):
        return Fullness(bin=phrase.bin, share=_share_of(match))
    match = _HOLDS.match(phrase.text)
    span = phrase.words(match, "much" if match["much"] else "much2") if match else None
    amounts = phrase.message.measured()
    if span is None or len(amounts) != 1 or (amounts[0].start, amounts[0].end) != span:
        return None
    [amount] = amounts
    if amount.quantity == "mass":
        return Fullness(bin=phrase.bin, mass_kg=amount.value)
    return Fullness(bin=phrase.bin, litres=amount.value) if amount.value >= _LEAST_LITRES else None
