"""How warm the soil is, put right behind its reading: "3 C", "6 not 8", "it's 46 F"."""

from handlers.practice.days import COLDEST, HOTTEST
from handlers.practice.units import celsius
from handlers.reading.acts import Amend, Bury
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

_LONGEST = 10
_LEADS = words_in(
    "no nope sorry oops it is 's was actually more like make that only about * , . ! now rather "
    "nearer i mean meant its today down up to just really than"
)
_CELSIUS, _FAHRENHEIT = words_in("c celsius °c"), words_in("f fahrenheit °f")
_DEGREES = words_in("degrees degree deg °")


def warm_right(message: Message) -> Amend | None:
    """The soil's temperature that is right, if no more is said; a bare figure tells none."""
    last, norms = message.context.last, message.norms
    if not isinstance(last, Bury) or last.celsius is None or not message.context.after_bot:
        return None
    if len(norms) > _LONGEST or message.bins or message.items or "?" in norms:
        return None
    at = next((i for i, norm in enumerate(norms) if norm not in _LEADS), len(norms))
    number = read_number(message.words, at) if at < len(norms) else None
    if number is None or number.word:
        return None
    end = number.end
    while end < len(norms) and norms[end] in _DEGREES | _CELSIUS | _FAHRENHEIT:
        end += 1
    unit = frozenset(norms[number.end : end])
    refused = norms[end : end + 1] == ["not"]
    behind = [n for n in norms[end + 1 if refused else end :] if not n.isdecimal() or not refused]
    if not _LEADS.issuperset(behind) or not (at or unit or refused or behind):
        return None
    hot = bool(unit & _FAHRENHEIT) or (message.context.units == "us" and not unit & _CELSIUS)
    warm = celsius(number.value) if hot else number.value
    if not COLDEST <= warm <= HOTTEST or warm == last.celsius:
        return None
    return Amend(celsius=warm, rules=("the soil's temperature, put right",))
