"""The vessel of the last layer put right: "the bucket was only half full", "that's the small
bucket, 8 litres"; and what somebody gave of it: "she only gave me 3".
"""

from dataclasses import replace

from handlers.reading.acts import Amend, Layer
from handlers.reading.corrections.numberright import number_meant
from handlers.reading.corrections.rightwrong import BY_FORM
from handlers.reading.corrections.unitright import amount_of
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.unitwords import unit_table
from handlers.reading.measures.vesselamounts import part_filled
from handlers.reading.message import Message
from handlers.reading.plaintext import SHORT, word_count
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_LEAD = r"(?:(?:no|oh|ah|sorry|oops|wait|actually|well|but|and|btw|,|[.]) )*"
_END = r"(?: (?:actually|though|sorry|really|btw|,|[.!]))*"
_KIND = r"(?:(?:small|smaller|little|big|bigger|large|larger|old|other|new|wee) )?"
_IT = r"(?:that|it|this|thats|its)(?: (?:was|is|'s))?"
_ABOUT = r"(?:(?:only|just|about|really|roughly|a|an|and) )*"  # "an" may be read as "and"
_SIZE = Late(
    rf"{_LEAD}(?:{_IT} (?:only |just )?(?:the|a|an|my|our) {_KIND}qvessel(?: ,)?"
    r"(?: (?:of|which is|thats|that is|so|about))? qmuch|"
    rf"(?:the|my|our|that) {_KIND}qvessel (?:is|was|'s|holds|takes|held) {_ABOUT}qmuch(?: one)?|"
    rf"(?:the|my|our) {_KIND}qvessel (?:, )?so {_ABOUT}qmuch|"
    rf"{_IT} {_ABOUT}(?:(?:the|my|our) )?{_KIND}qmuch qvessel){_END}"
)
_FULL = Late(
    rf"{_LEAD}(?:(?:the|my|our|that) {_KIND}qvessel|(?:it|that) was (?:only|just)(?: about)?) "
    rf"qpart{_END}"
)
_GIVEN = Late(
    rf"{_LEAD}(?:he|she|they|qmember) (?:(?:actually|really) )*(?P<only>(?:(?:only|just) )*)"
    r"(?:gave|brought|handed|left) (?:(?:me|us|over) )*(?P<just>(?:(?:only|just|about) )*)"
    rf"qmuch(?P<end>{_END})"
)
_GIVING = words_in("gave brought handed left")
CUES = _GIVING | words_in("full filled litre litres liter liters l gallon gallons quart quarts")
"""Words without one of which no vessel is put right."""
_HALVES = 2


def vessel_right(message: Message) -> Amend | None:
    """The right amount of the sender's last layer, by its vessel or by what was given."""
    last = message.context.last
    if not isinstance(last, Layer) or last.member not in (None, message.context.sender):
        return None
    if word_count(message) > SHORT or "?" in message.said or message.items or message.days:
        return None
    if any(ref.known and ref.name for ref in message.bins):
        return None
    found = _given(message) if message.has(_GIVING) else None
    if found is None and last.volume_l:
        found = _sized(message, last.volume_l) or _part_full(message, last.volume_l)
    return None if found is None else replace(found, rules=(BY_FORM,))


def _given(message: Message) -> Amend | None:
    """ "Actually he only gave me 3", "she gave me just 3 kg"."""
    norms = message.norms.copy()
    for member in message.members:
        norms[member.start : member.end] = ["qmember"] * (member.end - member.start)
    at = next((i for i, norm in enumerate(norms) if norm in _GIVING), 0)
    amount = next((a for a in message.measured() if a.start > at), None)
    number = next((n for i in range(at, len(norms)) if (n := read_number(message.words, i))), None)
    told = amount or number
    if told is None or (amount is None and number and number.word):
        return None
    text = " ".join([*norms[: told.start], "qmuch", *norms[told.end :]])
    form = _GIVEN.fullmatch(text)
    if form is None or not (form["only"] or form["just"] or not text.startswith(_WHO)):
        return None
    if amount is not None:
        return amount_of(amount.quantity, amount.value)
    return number_meant(told.value, message)


_WHO = ("he ", "she ", "they ", "qmember ")


def _sized(message: Message, said_l: float) -> Amend | None:
    """ "That's the small bucket, 8 litres": as many of them as were told, of that size."""
    amounts = [a for a in message.measured() if a.quantity == "volume"]
    if len(amounts) != 1:
        return None
    [size] = amounts
    vessel = _vessel(message, said_l)
    if vessel is None:
        return None
    at, count = vessel
    end = min(size.end, at) if size.start < at else size.end
    norms = message.norms.copy()
    norms[at] = "qvessel"
    text = " ".join([*norms[: size.start], "qmuch", *norms[end:]])
    if _SIZE.fullmatch(text) is None:
        return None
    is_sum = norms[size.start - 1] == "so"  # "the little bucket, so 2 L"
    return Amend(volume_l=size.value if is_sum else size.value * count)


def _part_full(message: Message, said_l: float) -> Amend | None:
    """ "The bucket was only half full": so much of what was told."""
    norms = message.norms
    vessel = _vessel(message, said_l)
    behind = vessel[0] + 1 if vessel else norms.index("was") + 1 if "was" in norms else len(norms)
    part, end = part_filled(norms, behind)
    if not part or (vessel is None and not _is_of_vessel(message, said_l)):
        return None
    lead = [*norms[: vessel[0]], "qvessel"] if vessel else norms[: behind + 1]
    text = " ".join([*lead, "qpart", *norms[end:]])
    return Amend(volume_l=said_l * part) if _FULL.fullmatch(text) else None


def _vessel(message: Message, said_l: float) -> tuple[int, float] | None:
    """Where a vessel is named in which the last layer was told, and how many they were."""
    table = unit_table(message.context.units)
    for i, norm in enumerate(message.norms):
        unit = table.get(norm)
        if unit is not None and unit.vessel and _is_count(said_l / unit.factor):
            return i, said_l / unit.factor
    return None


def _is_of_vessel(message: Message, said_l: float) -> bool:
    """Whether so much is what some vessel usually holds."""
    table = unit_table(message.context.units)
    return any(unit.vessel and said_l == unit.factor for unit in table.values())


def _is_count(times: float) -> bool:
    return times > 0 and abs(times * _HALVES - round(times * _HALVES)) < _SAME


_SAME = 1e-6
