"""Amounts said twice: put right, guessed at again, said in another unit, added up."""

from collections.abc import Sequence
from math import isclose

from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.words.vocabulary import words_in


def result_of(norms: Sequence[str], amounts: list[Amount]) -> list[Amount]:
    """ "2.6 kg minus 400 g = 2.2 kg": what a sum comes to counts alone."""
    for a in reversed(amounts[1:]):
        left = norms[a.start - 1] == "so" and norms[a.end : a.end + 1] in (["only"], ["left"])
        before = norms[max(0, a.start - _NEAR) : a.start]
        left = left or (before[-1:] == ["so"] and not _LESS.isdisjoint(before))
        if a.start and (left or norms[a.start - 1] in ("=", "net", "nett", "balance", "makes")):
            return [b for b in amounts if b.start >= a.start]
    return amounts


_LESS = words_in("minus less without")
_NEAR = 12
"""Words between what was taken off and what is left, at most."""


def without_restated(norms: Sequence[str], amounts: Sequence[Amount]) -> list[Amount]:
    """ "Nearly 700 g, say 650": what is said again counts once, as it was said last."""
    out: list[Amount] = []
    for amount in amounts:
        if out and _is_no_more(norms, amount):
            continue
        last = out[-1] if out else None
        if last is not None and last.quantity == amount.quantity:
            between = norms[last.end : amount.start]
            again = len(between) <= _AGAIN_WORDS and _AGAIN.issuperset(between)
            exact = norms[amount.end : amount.end + 2] == ["to", "be"]  # "well, 4.8 to be exact"
            again = again and not _INSTEAD.isdisjoint(between)
            called = between[-2:] == ["call", "it"]
            same = _is_same(between, last, amount) or _is_insisted(norms, last, amount)
            same = same or _is_denied(norms, last, amount)
            if again or exact or called or _is_repair(between) or same:
                out.pop()
        out.append(amount)
    return out


def _is_no_more(norms: Sequence[str], amount: Amount) -> bool:
    """ "1 kg in the yard, not 3 kg", "another 1 kg, that's 4 kg this week": nothing besides."""
    lead = norms[max(0, amount.start - 3) : amount.start]
    if lead[-1:] == ["not"] and norms[amount.start - 2] in (",", "-", "(", "."):
        return True
    makes = lead[-1:] in (["thats"], ["makes"]) or lead[-2:] in (["that", "'s"], ["that", "is"])
    return makes and norms[amount.end : amount.end + 2] in _RUNNING_ON


_RUNNING_ON = (["this", "week"], ["this", "month"], ["this", "year"], ["so", "far"], ["in", "all"])


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


def _is_insisted(norms: Sequence[str], last: Amount, amount: Amount) -> bool:
    """ "A cup of it, literally one cup", "2 kg of ribs on the table, now 2 kg of ribs in the bin":
    the same figure for the same thing, with a word that says so.
    """
    if not isclose(last.value, amount.value) or amount.start - last.end > _INSISTED_NEAR:
        return False
    lead = norms[amount.start - 1]
    if lead == "the" or lead in ("a", "one"):
        lead = norms[amount.start - 2]
    of = norms[amount.end : amount.end + 2]
    if lead in _NOW:
        return of[:1] == ["of"] and len(of) > 1 and norms[last.end : last.end + 2] == of
    ended = not of or of[0] in _ENDED
    return lead in _INSISTING or (ended and lead in _BARELY)


def _is_denied(norms: Sequence[str], last: Amount, amount: Amount) -> bool:
    """ "2 kg of peel. Well, 3 kg", "not 2 kg, as I said, but 3"."""
    between = norms[last.end : amount.start]
    if between[-1:] == ["but"]:
        return norms[max(0, last.start - 1)] == "not"
    at = len(between) - 1 - (between[-1:] == [","])
    if at < 1 or between[at] != "well" or between[at - 1] not in _STOPS:
        return False
    return len(between) <= _WELL_NEAR and _MORE.isdisjoint(norms[amount.end : amount.end + 4])


_STOPS = words_in(". , ; - — ...")
_WELL_NEAR = 8
_MORE = words_in("too also more as besides another")
_INSISTED_NEAR = 9
_NOW = words_in("now currently")
_INSISTING = words_in("literally exactly precisely honestly truly really")
_BARELY = words_in("just only barely simply")
_ENDED = words_in(". , ; ! ? ) that all no in total") | {"\n"}
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
        if behind[1:] == ["all"] and _has_thing(group, a):
            behind = behind[:1]  # "200 g bread, 1 kg veg all in green"
        near = {*norms[max(0, a.start - 2) : a.start], *(behind if behind[:1] != ["."] else ())}
        told = not near.isdisjoint(_TOTAL) or behind == ["the", "lot"]
        if not told and a is not amounts[0]:
            continue
        parts = [b for b in amounts if b is not a and b.quantity == a.quantity]
        if parts and told and not _RUNNING.isdisjoint(norms[a.end : a.end + 3]):
            return parts  # "2 kg, total 14 kg now"
        rest = not REST.isdisjoint(norms[a.end : group.end])
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
                whole = first or a.value <= _MOST_BEYOND * summed
                whole = whole or not REST.isdisjoint(norms[group.start : a.start])
                return [a] if whole else parts
    return amounts


def _has_thing(group: Group, amount: Amount) -> bool:
    """Whether a thing of stated kind stands just behind an amount ("2 kg was plantain peel")."""
    near = range(amount.end, amount.end + 3)
    return any(item.start in near and not item.generic for item in group.items)


REST = words_in("rest remainder remaining balance others")
_MOST_BEYOND = 2.5
"""Times what was told apart that a total of one layer may be; more has other layers in it."""
_RUNNING = words_in("now far already inside")
