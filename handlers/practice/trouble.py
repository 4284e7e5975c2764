"""From what is seen and smelt in a bin to its likely causes, in order, and what to do.

Each cause says how often each sign goes with it; several signs together multiply, so that the
cause which explains most of them comes first (a naive Bayes rule). The remedies are the trade's;
how often is our judgement and good for ranking only.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from math import prod
from typing import Literal

from handlers.practice.causes import CAUSES, NOTHING, Cause
from handlers.practice.cautions import caution
from handlers.practice.days import BuryWindow, after, believable, high_days, low_days
from handlers.practice.figure import Figure, Reckoning, Refused, listed, number, quoted
from handlers.practice.signs import SIGNS
from handlers.practice.trench import COVER_UNFERMENTED, DEPTH_SPOILT

GOOD: Mapping[str, str] = {
    "white_mould": "White growth is the ferment at work.",
    "sour": "A pickled, sour smell is what it should smell of.",
    "alcohol": "A beery smell is yeast at work beside the rest, and no fault.",
    "no_liquid": "No liquid is no fault: dry scraps give none.",
}
"""Signs that ask for nothing, and what to say of them."""

Verdict = Literal["good", "mend", "give up"]

ACID = Figure(
    "sour enough",
    4.0,
    "pH",
    "maize silage: 3.7 to 4.2 (Kung and Shaver, University of Wisconsin Extension)",
    "published",
    3.7,
    4.2,
)
ACID_LIMIT = Figure("acid foods reach", 4.6, "pH", "21 CFR 114.3", "published")
HOT = Figure("too warm for the ferment", 35, "°C", "", "common practice")
COLD = Figure("too cold for the ferment", 15, "°C", "", "common practice")
PATIENCE = Figure(
    "days to wait for a treated bin to turn sour", 7, "d", "a South African supplier", "published"
)
NEARLY_SOUR = Figure("wait of a bin that is nearly sour", 3, "d", "", "common practice", 3, 5)
NOT_SOUR = Figure("wait of a bin that is not sour yet", 7, "d", "", "common practice", 7, 14)
UNEXPLAINED = Figure(
    "how often a sign comes by chance", 0.04, "of cases", "our judgement", "derived"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Trouble(Reckoning):
    """Causes in order of likelihood, and whether the bin is good, to be mended or given up."""

    verdict: Verdict
    causes: tuple[Cause, ...]
    discard: str
    """What has to go, and how; empty if nothing."""
    care: str
    """The caution that goes with these signs; empty if none."""
    acidity: str
    """What a pH means; empty if none was measured."""


_MOULDY = frozenset({"green_mould", "black_mould"})
_FOUL = frozenset({"rotten", "ammonia"})
_BAD = _MOULDY | _FOUL | {"other_mould", "insects", "rodents"}
_CARE = (
    ("rodents", "rats"),
    ("green_mould", "mould"),
    ("black_mould", "mould"),
    ("other_mould", "mould"),
    ("gas", "gas"),
    ("much_liquid", "liquid"),
)


def trouble(
    signs: Iterable[str],
    *,
    celsius: float | None = None,
    ph: float | None = None,
    treated: bool = False,
) -> Trouble:
    """Likely causes of the signs together; `treated`: they stayed a week after a remedy.

    A temperature or pH counts as the sign that it is. Refuses words that are no sign.
    """
    told = frozenset(signs)
    seen = _seen(told, celsius, ph)
    ranked = _ranked(seen)
    verdict = _verdict(seen, ranked[0].cause, treated)
    if verdict == "good" and ph is not None and ph > ACID_LIMIT.value:
        verdict = "mend"
    acidity = _acidity(ph)
    discard = _discard(seen, verdict)
    care = next((caution(name) for sign, name in _CARE if sign in seen), "")
    kept = tuple(cause for cause in ranked if cause.weight >= 0.08)[:3]
    steps = tuple(
        f"{cause.cause}: {cause.weight:.0%} likely; the remedy is {cause.standing}"
        + (f": {cause.source}" if cause.source else "")
        for cause in kept
    )
    acids = (ACID, ACID_LIMIT) if ph is not None else ()
    warmth = (COLD, HOT) if celsius is not None else ()
    return Trouble(
        verdict=verdict,
        causes=kept,
        discard=discard,
        care=care,
        acidity=acidity,
        steps=steps,
        figures=(*acids, *warmth, *((PATIENCE,) if treated else ())),
        lines=tuple(filter(None, (*_said(told, kept, verdict, acidity), discard, care))),
    )


def _seen(signs: Iterable[str], celsius: float | None, ph: float | None) -> frozenset[str]:
    seen = set(signs)
    if unknown := seen - set(SIGNS):
        raise Refused(f"{quoted(min(unknown))} is no sign I know: say {listed(SIGNS, 'or')}.")
    if celsius is not None:
        believable(celsius, "A bin")
        seen |= {"warm"} if celsius >= HOT.value else set()
        seen |= {"cold"} if celsius < COLD.value else set()
    if ph is not None:
        if not 0 <= ph <= 14:
            raise Refused("A pH lies between 0 and 14: check the meter or the strip.")
        seen |= {"sour"} if ph <= ACID_LIMIT.value else set()
    if not seen and celsius is None and ph is None:
        raise Refused("Tell me what you see or smell: colour of growth, smell, liquid, flies, gas.")
    return frozenset(seen)


def _ranked(seen: frozenset[str]) -> list[Cause]:
    found = [
        (cause, cause.weight * prod(goes_with.get(sign, UNEXPLAINED.value) for sign in seen))
        for cause, goes_with in CAUSES
        if not (cause.cause == NOTHING and seen & _BAD)
    ]
    whole = sum(weight for _, weight in found)
    shared = [
        Cause(cause.cause, weight / whole, cause.do, cause.source, cause.standing)
        for cause, weight in found
    ]
    return sorted(shared, key=lambda cause: -cause.weight)


def _verdict(seen: frozenset[str], likeliest: str, treated: bool) -> Verdict:
    if seen <= GOOD.keys() or (likeliest == NOTHING and not seen & _BAD):
        return "good"
    if (seen & _FOUL and seen & _MOULDY) or (treated and seen & _BAD):
        return "give up"
    return "mend"


_SPOILT = f"{number(DEPTH_SPOILT.value * 100)} cm deep"


def _discard(seen: frozenset[str], verdict: Verdict) -> str:
    if verdict == "give up":
        return (
            f"Give this bin up: gloves on, bury it now, {_SPOILT} and away from roots, or put it "
            "out with the waste as your council says; then scrub the bin and dry it in the sun."
        )
    if "rodents" in seen:
        return f"If they have been inside, do not save it: bury it at once, {_SPOILT}."
    if seen & _MOULDY:
        mouldy = f"{number(COVER_UNFERMENTED.value * 100)} cm deep"
        return f"Lift out the mouldy scraps with what lies round them, and bury those {mouldy}."
    return ""


def _said(
    seen: frozenset[str], causes: Sequence[Cause], verdict: Verdict, acidity: str
) -> list[str]:
    first, *others = causes
    good = [words for sign, words in GOOD.items() if sign in seen]
    if verdict == "give up":
        return [f"That is too far gone to mend: most likely {first.cause}."]
    if first.cause == NOTHING or verdict == "good":
        return [*good, acidity or "Carry on."] if verdict == "good" else [*good, acidity]
    lines = [f"Most likely {first.cause}: {_lowered(first.do)}"]
    if others and others[0].weight >= 0.15 and others[0].cause != NOTHING:
        lines.append(f"Or {others[0].cause}: {_lowered(others[0].do)}")
    return [*lines, *good, acidity]


def _acidity(ph: float | None) -> str:
    if ph is None:
        return ""
    if ph <= ACID.value:
        return f"A pH of {number(ph)} is sour enough."
    if ph <= ACID_LIMIT.value:
        return f"A pH of {number(ph)} is nearly sour enough: leave it sealed a few days more."
    return (
        f"A pH of {number(ph)} is not sour yet: leave it sealed a week or two more, warmer, with "
        "more starter on top."
    )


def put_back(window: BuryWindow, measured: date, ph: float) -> BuryWindow:
    """The days to bury a bin, later if it was found not to be sour enough on a day."""
    if ph <= ACID.value:
        return window
    wait = NEARLY_SOUR if ph <= ACID_LIMIT.value else NOT_SOUR
    first, last = after(measured, low_days(wait)), after(measured, high_days(wait))
    start, end = max(window.start, first), max(window.end, last)
    step = f"pH {number(ph)} on {measured}: {low_days(wait)} to {high_days(wait)} days more"
    return replace(
        window,
        start=start,
        end=end,
        late_after=max(window.late_after, end),
        steps=(*window.steps, step),
        figures=(*window.figures, wait),
    )


def _lowered(sentence: str) -> str:
    return sentence[0].lower() + sentence[1:]
