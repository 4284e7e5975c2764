"""Words for a dilution: what it is for, and the ratio as it is said."""

import re
from collections.abc import Mapping, Sequence

from handlers.practice.dilution import MOST_PARTS, Use
from handlers.practice.figure import Refused, positive, quoted, within
from handlers.practice.quantity import plain_number

_WORDS: Mapping[Use, str] = {
    "bed": "raspberry raspberries blueberry blueberries blackberry blackberries currant currants "
    "gooseberry gooseberries rhubarb asparagus lettuces salads rocket "
    "spinach cress radish radishes cucumber cucumbers celery "
    "bed beds garden soil border borders vegetable vegetables veg tree trees shrub shrubs "
    "lawn grass established rose roses outdoor plant plants flower flowers tomato tomatoes fruit "
    "hedge ground allotment lettuce salad cabbage kale bean beans pea peas carrot carrots onion "
    "onions strawberry strawberries courgette courgettes zucchini squash pumpkin pumpkins pepper "
    "peppers potato potatoes bush bushes vine vines berry berries veggie veggies compost heap",
    "pot": "pot pots potted house window windowsill houseplant houseplants container containers "
    "indoor balcony orchid orchids cactus cacti succulent succulents fern ferns basil herb herbs "
    "parsley chives mint coriander cilantro dill "
    "planter planters trough troughs tub tubs peace",
    "seedling": "seedling seedlings seed seeds sprout sprouts start starts sown sowing "
    "sowings cutting cuttings tray trays plug plugs transplant transplants "
    "propagator pricked",
    "leaf": "leaf leaves foliar foliage spray sprayer spraying mist misting",
    "drain": "drain drains sink toilet septic pipe pipes",
}
USE_WORDS: Mapping[str, Use] = {
    word: use for use, words in _WORDS.items() for word in words.split()
}
"""Words for a use, in lower case."""

YOUNG = frozenset({"young", "baby", "newly"})
"""Beside the name of a plant: it takes no more than a seedling does."""

_TENDER = (
    "orchid orchids planter planters trough troughs windowsill houseplant houseplants potted peace "
    "fern ferns cactus cacti succulent succulents seedling seedlings sown sowing sowings cutting "
    "cuttings tray trays plug plugs transplant transplants propagator balcony "
    "spray sprayer spraying mist misting foliar leaves"
)
TENDER = frozenset(_TENDER.split())
"""Words of what takes less than a bed does, whatever grows there."""

_RAW = (
    "lettuce lettuces salad salads rocket spinach cress radish radishes herb herbs basil parsley "
    "chives mint coriander cilantro dill cucumber cucumbers celery sprout sprouts berry berries "
    "strawberry strawberries raspberry raspberries blueberry blueberries blackberry blackberries"
)
EATEN_RAW = frozenset(_RAW.split())
"""What is eaten raw, so that nothing of raw waste may touch it."""

_RATIOS = (
    (re.compile(r"1(?: part)?(?: liquid)? ?(?:in|of) ?(.+)"), True),
    (
        re.compile(r"1 ?(?::|/|to|part to|part liquid to) ?(.+?)(?: parts?(?: of)?(?: water)?)?"),
        False,
    ),
    (re.compile(r"(.+?) ?(?::|to) ?1"), False),
    (re.compile(r"(.+?) parts?(?: of)?(?: water)?"), False),
)
_PERCENT = re.compile(r"(.+?) ?(?:%|per ?cent)")
_ANY_RATIO = re.compile(r"(.+?) ?(?::|to) ?(.+)")


def parts_said(words: str) -> float:
    """Parts of water in a ratio as it is said: "100", "1:100", "100 to 1", "1 in 100", "1%"."""
    plain = " ".join(words.lower().split())
    for pattern, of_the_mix in _RATIOS:
        if found := pattern.fullmatch(plain):
            parts = plain_number(found[1])
            return parts_in(parts) if of_the_mix else parts
    if found := _PERCENT.fullmatch(plain):
        share = plain_number(found[1]) / 100
        return parts_in(
            1 / within(share, 1e-5, 1, what="A share", unit="", advice="say it like 1%")
        )
    if found := _ANY_RATIO.fullmatch(plain):
        liquid, water = plain_number(found[1]), plain_number(found[2])
        return water / positive(
            liquid, MOST_PARTS, what="Liquid", unit="parts", advice="say it like 1:100"
        )
    return plain_number(plain)


def ratio_said(words: str) -> float:
    """Parts to one of something, as they are said: "2", "2:1", "2 to 1"."""
    plain = " ".join(words.lower().split())
    found = re.fullmatch(r"(.+?) ?(?::|to) ?1", plain)
    return plain_number(found[1] if found else plain)


def use_said(words: Sequence[str]) -> str | None:
    """The words among some that say what a dilution is for; None where none does."""
    if USE_WORDS.keys().isdisjoint(words):
        return None
    return " ".join(word for word in words if word in USE_WORDS or word in YOUNG)


def use_named(words: str) -> Use:
    """The use that somebody's words mean; Refused if none is known."""
    said = words.lower().replace("-", " ").split()
    found = {USE_WORDS[word] for word in said if word in USE_WORDS}
    if found and not YOUNG.isdisjoint(said):
        found.add("seedling")
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
