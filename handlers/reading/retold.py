"""Amounts said twice: put right, guessed at again, said in another unit, added up."""

from collections.abc import Sequence
from math import isclose

from handlers.reading.amounts import Amount
from handlers.reading.groups import Group
from handlers.reading.vocabulary import words_in


def result_of(norms: Sequence[str], amounts: list[Amount]) -> list[Amount]:
    """ "2.6 kg minus 400 g = 2.2 kg": what a sum comes to counts alone."""
    for a in reversed(amounts[1:]):
        if a.start and norms[a.start - 1] in ("=", "net", "nett", "balance", "makes"):
            return [b for b in amounts if b.start >= a.start]
    return amounts


def without_restated(norms: Sequence[str], amounts: Sequence[Amount]) -> list[Amount]:
    """ "Nearly 700 g, say 650": what is said again counts once, as it was said last."""
    out: list[Amount] = []
    for amount in amounts:
        last = out[-1] if out else None
        if last is not None and last.quantity == amount.quantity:
            between = norms[last.end : amount.start]
            again = len(between) <= _AGAIN_WORDS and _AGAIN.issuperset(between)
            exact = norms[amount.end : amount.end + 2] == ["to", "be"]  # "well, 4.8 to be exact"
            again = again and not _INSTEAD.isdisjoint(between)
            called = between[-2:] == ["call", "it"]
            if again or exact or called or _is_repair(between) or _is_same(between, last, amount):
                out.pop()
        out.append(amount)
    return out


def _is_repair(between: Sequence[str]) -> bool:
    """ "Two kg, sorry three kg": what is said last counts."""
    return len(between) <= _AGAIN_WORDS and is_repair(between)


def is_repair(between: Sequence[str]) -> bool:
    """Whether nothing but words of taking back stands between two names or amounts."""
    denied = "no" in between and {"no", ",", "-", "—", "."}.issuperset(between)  # "2 lb no 3 lb"
    return _REPAIRING.issuperset(between) and (denied or not _REPAIRS.isdisjoint(between))


_REPAIRS = words_in("sorry wait oops mean scratch nope correction er erm whoops rather lie typo")
_REPAIRING = _REPAIRS | words_in(", no i that thats was make actually its - — ... into in the to")


def _is_same(between: Sequence[str], last: Amount, amount: Amount) -> bool:
    """ "A stone of potatoes, that's 14 lb": the same once more, by another unit."""
    other = last.factor and amount.factor and last.factor != amount.factor
    told = not _THAT_IS.isdisjoint(between[-2:])
    return bool(other) and told and isclose(last.value, amount.value, rel_tol=_AS_GOOD_AS)


_THAT_IS = words_in("thats 's is ie = so or")
_AS_GOOD_AS = 0.06
"""Share of an amount by which its rounded value in another unit may differ."""
_AGAIN_WORDS = 4
_INSTEAD = words_in("say well actually rather call like")
_AGAIN = _INSTEAD | words_in(", was it more maybe or no - — about")


_TOTAL = words_in("total together altogether all combined totals totalling sum")


def without_total(group: Group, amounts: list[Amount]) -> list[Amount]:
    """Drops a total given beside its parts, or the parts that do not add up to it."""
    norms = group.message.norms
    for a in amounts if len(amounts) > 1 else ():
        behind = norms[a.end : a.end + 2]
        near = {*norms[max(0, a.start - 2) : a.start], *(behind if behind[:1] != ["."] else ())}
        told = not near.isdisjoint(_TOTAL) or behind == ["the", "lot"]
        if not told and a is not amounts[0]:
            continue
        parts = [b for b in amounts if b is not a and b.quantity == a.quantity]
        if parts and told and not _RUNNING.isdisjoint(norms[a.end : a.end + 3]):
            return parts  # "2 kg, total 14 kg now"
        rest = not _REST.isdisjoint(norms[a.end : group.end])
        first = (len(parts) > 1 or rest) and a is amounts[0]
        first = first and (
            not {":", "("}.isdisjoint(norms[a.end : amounts[1].start])
            or (not _has_thing(group, a) and all(_has_thing(group, b) for b in parts))
        )
        if parts and (told or first):
            summed = sum(b.value for b in parts)
            if abs(summed - a.value) <= (0.05 if told else 0.01) * a.value:
                return [b for b in amounts if b is not a]
            if summed < a.value and (told or rest):
                return [a] if a.value <= _MOST_BEYOND * summed or first else parts
    return amounts


def _has_thing(group: Group, amount: Amount) -> bool:
    """Whether a thing of stated kind stands just behind an amount ("2 kg was plantain peel")."""
    near = range(amount.end, amount.end + 3)
    return any(item.start in near and not item.generic for item in group.items)


_REST = words_in("rest remainder remaining balance others")
_MOST_BEYOND = 2.5
"""Times what was told apart that a total of one layer may be; more has other layers in it."""
_RUNNING = words_in("now far already inside")
