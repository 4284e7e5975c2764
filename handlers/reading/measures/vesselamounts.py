"""Amounts told by vessels: their size said later, and how full they were.

"4 caddies of peel, a caddy is 5 litres", "a 10 L pail about halfway up".
"""

from collections.abc import Sequence

from handlers.reading.acts import Units
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.unitwords import unit_table
from handlers.reading.words.vocabulary import words_in


def of_size(norms: Sequence[str], amounts: list[Amount], units: Units) -> list[Amount]:
    """ "One cup of 200 ml", "half a bucket of 10 litres": so much, and no usual cup besides."""
    out: list[Amount] = []
    for amount in amounts:
        last = out[-1] if out else None
        usual = 0.0
        if last and not last.size and amount.factor and not amount.counted:
            between = [norm for norm in norms[last.end : amount.start] if norm not in _ABOUT]
            vessel = between == ["of"] and (last.vessel or norms[last.end - 1] in _CUPS)
            usual = _usual(norms, last, units) if vessel else 0.0
        if last and usual:
            part = last.value / usual
            liquid = None if amount.liquid_l is None else amount.liquid_l * part
            held = amount._replace(start=last.start, value=amount.value * part, liquid_l=liquid)
            out[-1] = held
        else:
            out.append(amount)
    return out


_CUPS = words_in("cup cups")
"""Measures of a certain size that are vessels all the same."""
_ABOUT = words_in("about roughly ~ maybe around approx approximately")


def sized(norms: Sequence[str], amounts: list[Amount], units: Units) -> list[Amount]:
    """ "Half a bucket of peel (the 5 L bucket)": a vessel holds what is told of its size."""
    if not any(a.vessel and not a.size for a in amounts):
        return amounts
    sizes = {_vessel(norms, a): a.value for a in amounts if a.size}
    told = {a: _vessel_sized(norms, amounts, a) for a in amounts if not (a.vessel or a.size)}
    sizes |= {vessel: a.value for a, vessel in told.items() if vessel}
    if not sizes:
        return amounts
    out: list[Amount] = []
    for amount in amounts:
        again = out and amount.vessel and _vessel(norms, amount) == _vessel(norms, out[-1])
        if again and norms[amount.end : amount.end + 1] in _HOLDS:
            continue  # "4 caddies, a caddy is 5 litres": what holds so much, and no more of it
        if told.get(amount):
            amount = amount._replace(size=True)
        size = sizes.get(_vessel(norms, amount))
        usual = _usual(norms, amount, units)
        if size is not None and usual and amount.vessel and not amount.size:
            amount = amount._replace(value=amount.value / usual * size)
        out.append(amount)
    return out


def _vessel_sized(norms: Sequence[str], amounts: Sequence[Amount], amount: Amount) -> str:
    """The vessel of "the bucket's a ten litre", "half a bucket of peel, the 10 L one"."""
    if amount.quantity != "volume" or not amount.start:
        return ""
    at = amount.start - (norms[amount.start - 1] in _DETERMINED)
    joined = at > 1 and norms[at - 1] in ("'s", "is", "was", "holds", "being", "takes")
    joined = joined and norms[at - 2] not in _IT  # "a full bucket, it's the 20 L one"
    if joined and not _DETERMINED.isdisjoint(norms[at : amount.start + 1]):
        return _one_of(norms[at - 2])
    if joined:  # "4 caddies of peel, a caddy is 5 litres"
        said = _one_of(norms[at - 2])
        return next((v for a in amounts if a.vessel and (v := _vessel(norms, a)) == said), "")
    if norms[amount.end : amount.end + 1] and norms[amount.end] in _KINDS and at:
        before = [a for a in amounts if a.vessel and a.end <= at]
        return _vessel(norms, before[-1]) if before else ""
    return ""


_IT = words_in("it that this which mine ours")
_HOLDS = [["is"], ["'s"], ["holds"], ["takes"]]
_KINDS = words_in("one ones kind kinds sort size type")


def _usual(norms: Sequence[str], amount: Amount, units: Units) -> float:
    """Litres in the vessel that ends an amount ("ice cream tubs"), by its name; 0 if unknown."""
    table = unit_table(units)
    for start in range(max(amount.start, amount.end - 3), amount.end):
        unit = table.get("_".join(norms[start : amount.end]))
        if unit is not None:
            return unit.factor
    return 0.0


def _one_of(norm: str) -> str:
    """A vessel's word as that of one: "caddy" for "caddies"."""
    return f"{norm[:-3]}y" if norm.endswith("ies") else norm.removesuffix("s")


def _vessel(norms: Sequence[str], amount: Amount) -> str:
    return _one_of(norms[amount.end - 1])


_DETERMINED = frozenset({"a", "an", "the"})


def filled(norms: Sequence[str], amounts: list[Amount]) -> list[Amount]:
    """ "A 5 gal bucket half full", "a tub, about a third of the way up": so much of the vessel."""
    out: list[Amount] = []
    for amount in amounts:
        if amount.vessel or amount.size:
            part, end = part_filled(norms, _behind_whence(norms, amount.end))
            if part and amount.size and out and _vessel(norms, out[-1]) == _vessel(norms, amount):
                out[-1] = out[-1]._replace(value=out[-1].value * part, vague=True)
            elif part:
                value = amount.value * part
                amount = amount._replace(end=end, value=value, vague=True, vessel=True, size=False)
        if not out or amount.start >= out[-1].end:
            out.append(amount)
    return out


def _behind_whence(norms: Sequence[str], at: int) -> int:
    """Where the words go on behind "from the shed," or "of rice,"."""
    if at >= len(norms) or norms[at] not in _WHENCE:
        return at
    for k in range(at + 1, min(len(norms), at + _FAR)):
        if norms[k] == ",":
            return k
        if not norms[k].isalpha() or norms[k] in _INTO:
            break
    return at


_WHENCE, _INTO = words_in("from off out of"), words_in("in into to and")
_FAR = 6
"""Words that tell where the liquid came from or what it is, at most."""


def part_filled(norms: Sequence[str], at: int) -> tuple[float, int]:
    """The part of a vessel that the words from `at` on say is full, and where they end; else 0."""
    at = _behind_light(norms, at)
    not_full = norms[at : at + 2] == ["not", "full"]  # "but not full, like three quarters"
    if not_full:
        at = _behind_light(norms, at + 2)
    for words, part in _PARTS_FULL:
        end = at + len(words)
        if tuple(norms[at:end]) == words:
            behind = next((b for b in _FULL if tuple(norms[end : end + len(b)]) == b), ())
            return (part, end + len(behind)) if behind or not_full else (0.0, 0)
    return 0.0, 0


def _behind_light(norms: Sequence[str], at: int) -> int:
    while at < len(norms) and norms[at] in _BEFORE_PART_FULL:
        at += 1
    return at


_PARTS_FULL = (
    (("half", "way"), 0.5), (("halfway",), 0.5), (("half",), 0.5), (("1/2",), 0.5),
    (("third",), 1 / 3), (("1/3",), 1 / 3), (("quarter",), 0.25), (("1/4",), 0.25),
    (("three", "quarters"), 0.75), (("three", "quarter"), 0.75), (("3/4",), 0.75),
    (("two", "thirds"), 2 / 3), (("2/3",), 2 / 3),
)  # fmt: skip
_FULL = (("full",), ("of", "the", "way", "full"), ("of", "the", "way", "up"), ("up",), ("filled",))
_BEFORE_PART_FULL = words_in(
    "about roughly ~ maybe around perhaps is was only just a an one , ( but like more it quite"
)
CUES_FULL = words_in("full up filled")
"""Words without one of which no vessel is said to be full or part full."""
