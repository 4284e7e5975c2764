"""What was taken out again, or off: "2 kg of veg in the shed, but took 300 g back out", or "2 kg in
the shed, less 300 g I kept", is 1.7 kg.
"""

from collections.abc import Sequence

from handlers.reading.measures.amounts import Amount
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def without_taken_out(norms: Sequence[str], amounts: Sequence[Amount]) -> list[Amount]:
    """The amounts, of what was weighed only what stayed in: what came out again measures nothing.

    Only weights: what is measured by volume and taken out is as a rule the liquid.
    """
    masses = [a for a in amounts if a.quantity == "mass"]
    if len(masses) != 2:
        return list(amounts)
    went_in, came_out = masses
    if came_out.value >= went_in.value or not _came_out(norms, came_out):
        return list(amounts)
    stayed = went_in._replace(value=went_in.value - came_out.value)
    return [stayed if a is went_in else a.of_nothing() if a is came_out else a for a in amounts]


def _came_out(norms: Sequence[str], amount: Amount) -> bool:
    before = " ".join(norms[max(0, amount.start - _NEAR) : amount.start])
    behind = " ".join(norms[amount.end : amount.end + _NEAR])
    if _LESS.search(before):
        return True
    taken = _TAKEN.search(before)
    if taken is None:
        return _TAKEN_BEHIND.match(behind) is not None
    removed = taken["how"] in ("removed", "remove") and _FROM_ELSEWHERE.match(behind) is None
    return removed or taken["out"] is not None or _OUT.match(behind) is not None


_NEAR = 6
"""Words on either side that are looked at."""
_OUT_WITH = words_in("took taken take pulled picked fished scooped lifted dug")
CUES = _OUT_WITH | words_in("came removed remove less minus")
"""Words without one of which nothing came out again."""
_VERB = f"(?:{'|'.join(sorted(_OUT_WITH))})"
_AGAIN = (
    r"(?:back |straight )?out(?= of (?:it|there|that|them)\b| again\b| (?:for|because|and|as|since|"
    r"when|later|after|but)\b| ?[,.;:!)(-]| ?$)"
)
"""Not "out of the freezer", "out to the hall bin": such scraps come from there, or go there."""
_TAKEN = Late(
    rf"\b(?P<how>removed?|{_VERB})(?: (?:(?P<out>back out|out again)|back|about|maybe|roughly|some|"
    r"around|like|nearly|then))*$"
)
_LESS = Late(
    r"(?<!\bno )(?<!\bor )\b(?:less|minus)"
    r"(?: (?:the|about|maybe|perhaps|roughly|some|around|say))*$"
)
_OUT = Late(rf"^(?:of (?:the |that |those )?\w+ )?{_AGAIN}|^(?:of (?:the |that )?\w+ )?back out\b")
_FROM_ELSEWHERE = Late(r"^(?:of (?:the |that )?\w+ )?(?:from|out of) (?!it\b|there\b|that\b)")
_TAKEN_BEHIND = Late(
    rf"^(?:of (?:it|that|them|which) )?(?:(?:i|we|he|she|they|was|were|got|then|later|had|to be) )*"
    rf"(?:removed\b|(?:{_VERB}|came) {_AGAIN})"
)
