"""Gross, tare and net: "2.3 kg with the bucket, bucket alone 400 g" is 1.9 kg."""

from collections.abc import Sequence

from handlers.reading.measures.amounts import Amount
from handlers.reading.words.vocabulary import words_in


def with_tare(norms: Sequence[str], amounts: Sequence[Amount]) -> list[Amount]:
    """The amounts, of a thing that was weighed in its vessel only what is in it: the weight of the
    vessel, and the gross one where both are told, measure nothing.
    """
    masses = [a for a in amounts if a.quantity == "mass"]
    if len(masses) == _NET_OF:
        weights = _gross_and_tare(norms, masses)
        return [a.of_nothing() if a in weights else a for a in amounts]
    if len(masses) != _NET_OF - 1:
        return list(amounts)
    tare, gross = sorted(masses, key=lambda a: a.value)
    if not _is_weighed_in(norms, gross, tare):
        return list(amounts)
    net = gross._replace(value=gross.value - tare.value)
    return [net if a is gross else a.of_nothing() if a is tare else a for a in amounts]


_NET_OF = 3
"""Masses told where gross, tare and net are all named."""


def _gross_and_tare(norms: Sequence[str], masses: list[Amount]) -> list[Amount]:
    """ "4.4 kg with the pail, pail weighs 1.2, so 3.2": the first two."""
    gross = max(masses, key=lambda a: a.value)
    tare, net = (a for a in masses if a is not gross)
    if abs(tare.value + net.value - gross.value) > _ROUNDED * gross.value:
        return []
    if _near(_VESSELS, norms, net, 3, 3) and not _near(_VESSELS, norms, tare, 3, 3):
        tare, net = net, tare
    settled = net is masses[-1] and _near(_SO, norms, net, 3, 1)
    told = settled or _is_with_vessel(norms, gross) or _near(_ALONE, norms, tare, 2, 2)
    return [gross, tare] if told else []


_ROUNDED = 0.02


def _is_weighed_in(norms: Sequence[str], gross: Amount, tare: Amount) -> bool:
    """Whether the one is the weight of the vessel in which the other was weighed."""
    if norms[gross.end : gross.end + 1] == ["before"]:
        return norms[tare.end : tare.end + 1] == ["after"]
    named = _near(_VESSELS, norms, tare, 4, 3) or _near(_EMPTY, norms, tare, 1, 2)
    return named and (_near(_ALONE, norms, tare, 4, 3) or _is_with_vessel(norms, gross))


def _is_with_vessel(norms: Sequence[str], gross: Amount) -> bool:
    """ "500 g with the cup", "with the cup it was 500 g", "1 kg gross"."""
    for i in (
        *range(gross.end, min(gross.end + 4, len(norms))),
        *range(max(0, gross.start - 6), gross.start),
    ):
        if norms[i] == "gross":
            return True
        if norms[i] in _INCLUDING and not _VESSELS.isdisjoint(norms[i + 1 : i + 4]):
            return True
    return False


def _near(words: frozenset[str], norms: Sequence[str], a: Amount, before: int, behind: int) -> bool:
    """Whether one of the words stands so near to an amount, and not within it."""
    around = (*norms[max(0, a.start - before) : a.start], *norms[a.end : a.end + behind])
    return not words.isdisjoint(around)


_VESSELS = words_in(
    "bucket tub pot bowl tin box dish pan tray crate container basin bag jar pail caddy sack "
    "bin basket jug tupperware lunchbox saucepan colander cup mug glass plate carton packet "
    "packaging wrapper wrapping foil punnet beaker bottle can lid dabba tiffin katori pack packs "
    "sieve casserole tureen"
)
_EMPTY = words_in("empty bare tare")
_INCLUDING = words_in("with w including included incl inc")
_ALONE = words_in("alone empty itself tare own weighs bare less minus off deduct subtract")
_SO = words_in("so net nett makes leaves leaving = thats therefore hence netto")
CUES = _INCLUDING | _ALONE | _SO | {"gross", "before"}
"""Words without one of which nothing was weighed in its vessel."""
