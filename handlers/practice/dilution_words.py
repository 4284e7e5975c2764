"""Words for a dilution: what it is for, and the ratio as it is said."""

import re
from collections.abc import Mapping

from handlers.practice.dilution import MOST_PARTS, Use
from handlers.practice.figure import Refused, quoted, within
from handlers.practice.quantity import plain_number

_WORDS: Mapping[Use, str] = {
    "bed": "bed beds garden soil border borders vegetable vegetables tree trees shrub shrubs lawn "
    "established rose roses outdoor plant plants flower flowers tomato tomatoes fruit hedge ground",
    "pot": "pot pots potted house window windowsill houseplant houseplants "
    "container containers indoor balcony",
    "seedling": "seedling seedlings seed seeds sprout sprouts start starts",
    "leaf": "leaf leaves foliar foliage spray",
    "drain": "drain drains sink toilet septic pipe pipes",
}
USE_WORDS: Mapping[str, Use] = {
    word: use for use, words in _WORDS.items() for word in words.split()
}
"""Words for a use, in lower case."""

_RATIOS = (
    (re.compile(r"1 ?(?:in|of) ?(.+)"), True),
    (
        re.compile(r"1 ?(?::|/|to|part to|part liquid to) ?(.+?)(?: parts?(?: of)?(?: water)?)?"),
        False,
    ),
    (re.compile(r"(.+?) ?(?::|to) ?1"), False),
    (re.compile(r"(.+?) parts?(?: of)?(?: water)?"), False),
)


def parts_said(words: str) -> float:
    """Parts of water in a ratio as it is said: "100", "1:100", "100 to 1", "1 in 100"."""
    plain = " ".join(words.lower().split())
    for pattern, of_the_mix in _RATIOS:
        if found := pattern.fullmatch(plain):
            parts = plain_number(found[1])
            return parts_in(parts) if of_the_mix else parts
    return plain_number(plain)


def use_named(words: str) -> Use:
    """The use that somebody's words mean; Refused if none is known."""
    found = {
        USE_WORDS[word] for word in words.lower().replace("-", " ").split() if word in USE_WORDS
    }
    # A seedling in a pot is a seedling, a pot in the garden a pot: the tenderest one counts.
    for use in ("drain", "seedling", "leaf", "pot", "bed"):
        if use in found:
            return use
    raise Refused(
        f"I have no dilution for {quoted(words)}: say beds, pots, seedlings, leaves or drains."
    )


def parts_in(whole: float) -> float:
    """Parts of water when it was said as "1 in `whole`" of the mix."""
    return (
        within(
            whole, 1, MOST_PARTS, what="One part in", unit="parts", advice="say it like 1 in 100"
        )
        - 1
    )
