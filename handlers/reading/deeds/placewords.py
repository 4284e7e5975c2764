"""The words of places, and how far a place goes that is said from a word on."""

from collections.abc import Sequence

from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in

GROUND = words_in(
    "ground soil earth dirt trench trenches hole pit bed beds patch garden plot allotment "
    "border borders planter planters raised flowerbed orchard lawn field yard backyard rows "
    "row ridge drill furrow"
)
GREEN = words_in(
    "roses rose beans bean tomatoes tomato rhubarb tree trees bush bushes hedge apple lemon "
    "plum pear fig courgettes squash pumpkins potatoes spuds raspberries currants "
    "strawberries sweetcorn corn sunflowers dahlias peas brassicas cabbages kale leeks onions "
    "passionfruit banana mango papaya marigolds lavender hydrangea hydrangeas vines vine "
    "shrubs bamboo curry neem guava citrus fence shed wall arch trellis"
)
UNDER = words_in("under beneath below underneath beside behind near")
PLACE = words_in(
    "in into under beneath below by near along beside behind next at on over underneath "
    "between against round around among amongst across opposite alongside amid feeding atras where "
    "en im past debajo bajo "
    "junto detras cerca entre unter neben hinter sous derriere pres alang bawah tepi chini kando "
    "nyuma ilalim ilalom"
)
WHEN = words_in(
    "weekend lunchtime night noon dawn dusk long last first once lunch dinner breakfast teatime "
    "midday midnight sunset sunrise holiday ten eleven twelve"
)
_SKIPPED = words_in(
    "el la los las der den dem the a my our to of an under in at where del de do da di al des du "
    "ya sa ng"
)
_PLACE_ENDS = words_in(
    ", . ; ! ? ( ) - — ☺ & already and but so then because cos with today yesterday last this "
    "which "
    "covered w me my it before after while when now for as lol n i we will are is about roughly "
    "like used go went goes were con not since | → > >"
)
WEATHER = words_in(
    "sleet rain snow hail frost fog mud drizzle dark wind sun sunshine heat cold storm hurry end "
    "peace silence time no"
)
"""What somebody digs in that is no place."""
_BEFORE_DAY = words_in("on at from since during over around about")
_BEFORE_PLACE = PLACE | {",", "-", "☺", ":"}
_OF_DAY = words_in("this morn morning mornin afternoon arvo evening today the other day just now")
_WHO = words_in("he she it they him her that")
_LIES = words_in("go goes went is 's lies lie sits was gone got")
SOIL = frozenset({"ground", "soil", "earth", "dirt", "tierra", "terre", "terra", "erde"})
LONGEST = 7
"""Words in a place that is said without a preposition, at most."""
BEDS = (GROUND - SOIL) | words_in("corner side end foot bay terrace border planter greenhouse")


def place_from(message: Message, i: int, end: int, held: frozenset[int]) -> str | None:
    """The words of a place from word i on, as far as they go; `held` are the words of days."""
    norms = message.norms
    while i < end and norms[i] in _SKIPPED:
        i += 1
    stop, between = i, norms[max(0, i - 2) : i]
    depths = {a.start for a in message.amounts if a.quantity == "length" and a.start > i}
    depths -= {at for at in depths if norms[at - 1] == "of"}  # "a hole of 20 cm"
    while stop < end and stop not in held and stop not in depths:
        numbered = norms[stop] == "." and norms[stop - 1] in ("no", "nr")
        joined = norms[stop] in ("and", "&") and "between" in between
        if norms[stop] in _PLACE_ENDS and not (numbered or joined):
            break
        if norms[stop] in _WHO and norms[stop + 1 : stop + 2] and norms[stop + 1] in _LIES:
            break  # "under the fig he goes"
        if norms[stop] == ":" and norms[i] in SOIL:
            break
        if norms[stop] == "by" and is_somebody(message, stop + 1):
            break
        stop += 1
    while stop in held and stop > i + 1 and norms[stop - 1] in _BEFORE_DAY:
        stop -= 1
    if norms[i : i + 1] and norms[i] in SOIL and (stop - i <= 2 or norms[i + 1] in PLACE):
        passed = held | _deep(message)
        after = _beyond_soil(norms, stop if stop - i <= 2 else i + 1, end, passed)
        return (place_from(message, after, end, held) if after else None) or "ground"
    if stop > i and norms[stop - 1] == "of":
        return None  # "the bottom of it was rotten"
    text = message.text(i, stop)
    return (text[2:] if text[:2] in ("t'", "t’") else text) or None  # "under t'rhubarb"


def _deep(message: Message) -> frozenset[int]:
    """Indexes of the words that say how deep: "in the ground two feet down by the lilacs"."""
    told = [a for a in message.amounts if a.quantity == "length"]
    words = {i for a in told for i in range(a.start, a.end)}
    ends = {a.end for a in told if message.norms[a.end : a.end + 1] in (["down"], ["deep"])}
    return frozenset(words | ends)


def _beyond_soil(norms: Sequence[str], start: int, end: int, held: frozenset[int]) -> int:
    """Index of the place behind "in the ground", past a day and words of place; 0 if none is."""
    at, placed = start, False
    while at < end and (at in held or norms[at] in _BEFORE_PLACE | _OF_DAY):
        placed = placed or (norms[at] in PLACE and at + 1 not in held)
        at += 1
    free = start < at < end and norms[at] not in WHEN and not norms[at][0].isdecimal()
    if free and not placed:  # "in the soil, north bed", but not "in the soil, Uwe dug"
        stop = next((k for k in range(at, min(end, at + LONGEST)) if norms[k] == ","), end)
        free = not (GROUND | BEDS).isdisjoint(norms[at : min(stop, at + LONGEST)])
    return at if free else 0


def is_somebody(message: Message, i: int) -> bool:
    """Whether a person is named at word i ("along the hedge by me and Dom")."""
    return message.norms[i : i + 1] in (["me"], ["us"]) or any(
        m.start == i and not m.owner for m in message.members
    )
