"""Choices of the craft by their names, whatever is to be set: "set ferment days to twelve".

What cannot be, like -3 days, is found as well: the answer says what can.
"""

from handlers.practice.units import SQUARE_METRES
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.unitwords import unit_table
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_NAMES = (
    ("pot dilution", r"(?:pots?|house ?plants?) dilution|dilution (?:for|in) (?:the )?"
                     r"(?:pots?|house ?plants?)"),
    ("dilution", r"(?:bed )?dilution(?: (?:for|on) (?:the )?beds?)?"),
    ("trench depth", r"trench(?:es)? depth|depth of (?:the |our )?trench(?:es)?"),
    ("nitrogen limit", r"nitrogen limit|limit (?:of|for|on) nitrogen"),
    ("recipe", r"(?:starter |bran )?recipe"),
    ("ferment days", r"ferment(?:ing|ation)? (?:days|time|period)"),
    ("planting days", r"planting (?:days|wait|time)"),
    ("soil", r"soil(?: parts| ratio)?"),
)  # fmt: skip
_CUES = words_in(
    "dilution trench trenches nitrogen recipe ferment fermenting fermentation planting soil"
)
_SET = Late(
    r"(?:^|[.!] |^(?:planting|ferment\w*|dilution|soil|trench|recipe) (?:\w+ )?: )"
    r"(?:(?:please|pls|can you|could you|hey|hi|ok|lets|let 's|bot|pailkeeper|now|so|and|,) )*"
    r"(?:(?P<plain>set|change)|make|put|use|keep|raise|lower) (?:(?:the|our|a) )?"
    rf"(?:{'|'.join(f'(?P<n{i}>{name})' for i, (_, name) in enumerate(_NAMES))}) "
    r"(?P<lead>(?:from (?:\S+ ){1,4}?)?(?:to|at|of|:|=) )?(?:(?:be|about|just|only) )*(?P<value>\S)"
)
_ENDS = words_in("and , . ; ! ? & please pls thanks but instead from") | {"\n", "—"}
_PLAIN_KITCHEN = frozenset({"recipe", "soil"})
"""Told of a cake and of a flower pot too: only with a value that is the craft's."""
_RATIO, _PARTS = Late(r"\S+ (?:to|:|in) \S+|\d+ ?: ?\d+"), Late(r"(?:- )?\S+(?: parts?)?")


def craft_setting(message: Message) -> tuple[str, str] | None:
    """Which choice is to be made, and the value said for it: a figure, or else its words."""
    if _CUES.isdisjoint(message.said):
        return None
    text = " ".join(message.norms)
    match = _SET.search(text)
    if match is None:
        return None
    what = next(what for i, (what, _) in enumerate(_NAMES) if match[f"n{i}"])
    start = text.count(" ", 0, match.start("value"))
    end = next(
        (i for i in range(start, len(message.norms)) if message.norms[i] in _ENDS),
        len(message.norms),
    )
    said = " ".join(message.norms[start:end])
    figure = _figure_of(message, start, end)
    if what in _PLAIN_KITCHEN:
        form = _RATIO if what == "recipe" else _PARTS
        if figure is None or form.fullmatch(said) is None:
            return None
    if what == "recipe" or (figure is None and match["plain"] and match["lead"]):
        return what, said
    return None if figure is None else (what, figure)


def measured_setting(message: Message) -> tuple[str, str] | None:
    """A choice told by its measures: nitrogen by weight to an area, liquid by spoons to water."""
    if _MEASURED.isdisjoint(message.said):
        return None
    match = _SET.search(" ".join(message.norms))
    if match is None:
        return None
    what = next(what for i, (what, _) in enumerate(_NAMES) if match[f"n{i}"])
    measured = message.measured()
    if what == "nitrogen limit" and len(measured) == 1 and measured[0].quantity == "mass":
        area = _area_behind(message, measured[0].end)
        return (what, f"{measured[0].value / area * _HECTARE:.0f}") if area else None
    if what.endswith("dilution") and [a.quantity for a in measured] == ["volume", "volume"]:
        liquid, water = sorted(a.value for a in measured)
        return (what, f"{water / liquid:.0f}") if liquid > 0 else None
    return None


_MEASURED = words_in("nitrogen dilution")
_HECTARE = SQUARE_METRES["hectare"]


def _area_behind(message: Message, at: int) -> float | None:
    """The square metres of "per 1000 sq ft", "per acre", "/ha"."""
    norms = message.norms
    if norms[at : at + 1] not in (["per"], ["/"], ["to"], ["on"], ["a"], ["an"]):
        return None
    told = next((a.value for a in message.amounts if a.quantity == "area" and a.start > at), None)
    if told is not None:
        return told
    unit = "_".join(norms[at + 1 : at + 3]).strip("_")
    known = unit_table(message.context.units)
    named = (known.get(unit) or known.get(norms[at + 1])) if norms[at + 1 :] else None
    if named is not None and named.quantity == "area":
        return named.factor
    large = {"ha": "hectare", "hectare": "hectare", "hectares": "hectare", "acre": "acre"}
    found = next((large[n] for n in norms[at + 1 : at + 3] if n in large), None)
    return SQUARE_METRES[found] if found else None


def _figure_of(message: Message, start: int, end: int) -> str | None:
    """The number that a value ends in, in days or centimetres if it has such a unit.

    That is the 200 of "1:200" and "one to two hundred"; one below nought keeps its sign.
    """
    value, norms, i = None, message.norms, start
    while i < end:
        number = read_number(message.words, i)
        ratio = _WRITTEN_RATIO.fullmatch(norms[i])
        if number is not None:
            below = norms[i - 1] in _MINUS and not norms[i - 2][-1:].isdigit()
            value, i = (-number.value if below else number.value), number.end
            unit = unit_table(message.context.units).get(norms[i]) if i < end else None
            if unit is not None and unit.quantity in _SCALES:
                value *= unit.factor * _SCALES[unit.quantity]
        elif ratio is not None:
            value, i = float(ratio[1]), i + 1
        else:
            i += 1
    return None if value is None else f"{value:g}"


_WRITTEN_RATIO = Late(r"\d+:(\d+)")
_MINUS = ("-", "minus")
_SCALES = {"days": 1, "length": 100}
"""What a unit's measure is to be multiplied by, for days and centimetres."""
