"""Where a bin was buried: the free words for the place, said with a preposition or alone."""

from collections.abc import Mapping, Sequence

from handlers.reading.binwords import BinRef
from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.sentences import Clause
from handlers.reading.spans import indexes
from handlers.reading.vocabulary import words_in

GROUND = words_in(
    "ground soil earth dirt trench trenches hole pit bed beds patch garden plot allotment "
    "border borders planter planters raised flowerbed orchard lawn field yard backyard rows "
    "row"
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
_WHEN = words_in(
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
_WEATHER = words_in(
    "sleet rain snow hail frost fog mud drizzle dark wind sun sunshine heat cold storm hurry end "
    "peace silence time no"
)
"""What somebody digs in that is no place."""
_BEFORE_DAY = words_in("on at from since during over around about")
_BEFORE_PLACE = PLACE | {",", "-", "☺", ":"}
_OF_DAY = words_in("this morn morning mornin afternoon arvo evening today the other day just now")
_WHO = words_in("he she it they him her that")
_LIES = words_in("go goes went is 's lies lie sits was gone got")
_SOIL = frozenset({"ground", "soil", "earth", "dirt", "tierra", "terre", "terra", "erde"})
_LONGEST = 7
"""Words in a place that is said without a preposition, at most."""
_AFTER = 3
"""Clauses behind the burial in which the place is looked for."""


def place_of(group: Group, target: BinRef | None) -> str | None:
    """The free words for where it went; the ground itself if nothing more is said."""
    said = _said(group, target) or _before(group, target) or _behind_arrow(group, target)
    said = said or _put_bare(group, target)
    if said is None or said.lower() in _DUG:
        return _alone(group, target) or _dug_at(group) or said
    return said


_DUG = words_in("ground hole trench pit dirt soil earth grun garden")
"""What anything is buried in: a place that is told besides says more."""


def _dug_at(group: Group) -> str | None:
    """ "Dug a hole behind the fuchsia", "into the hole the lads left": where the hole is."""
    message = group.message
    norms = message.norms
    for i in range(group.start, min(group.end, len(norms) - 2)):
        if norms[i] not in _HOLES or norms[i + 1] not in UNDER | _BY:
            continue
        at = i + 2 + (norms[i + 1 : i + 3] == ["next", "to"])
        return _place_from(message, at, group.end, indexes(message.days))
    return None


_HOLES = words_in("hole holes trench pit")


def _said(group: Group, target: BinRef | None) -> str | None:
    """Behind the first word of place after the bin or the verb."""
    message = group.message
    norms = message.norms
    start = group.verb.end if group.verb is not None else group.start
    if target is not None:
        start = max(start, target.end)
    sentence = message.sentences[group.clauses[0].sentence]
    if target is not None and target.start >= sentence.end:
        sentence = next(x for x in message.sentences if target.start < x.end)
    held = indexes(message.days)
    when = sentence.end
    for i in range(start, sentence.end - 1):
        if i > when and norms[i] == ",":
            break  # "at lunch, raised bed 2"
        if norms[i] not in PLACE or i + 1 in held or norms[i + 1] in PLACE | _WEATHER:
            continue
        if norms[i + 1] in _WHEN:
            when = min(when, i)
            continue
        if _leads_to_no_place(message, i):
            continue
        place = _place_from(message, i + 1, sentence.end, held)
        if place and not _is_when(place.lower().split()):
            return place
        when = min(when, i)
    return None


def _leads_to_no_place(message: Message, i: int) -> bool:
    """ "By me", "on her own", "14 in deep": a word of place that tells something else."""
    norms = message.norms
    if norms[i] == "by" and _is_somebody(message, i + 1):
        return True
    number = i > 0 and message.words[i - 1].kind == "number"
    inches = norms[i] == "in" and number and not _names_bin(message, i - 1)
    return inches or norms[i + 2 : i + 3] == ["own"]


def _is_when(said: Sequence[str]) -> bool:
    """ "On the long weekend", "in the rain": when it was, or in what weather."""
    return said[0] in _WEATHER or (len(said) == 1 and said[0] in _WHEN) or said[-1] in _HOLIDAYS


_HOLIDAYS = words_in("weekend holiday holidays break lunch dinner tea")


def _put_bare(group: Group, target: BinRef | None) -> str | None:
    """ "Down the back of the polytunnel", "buried the shed, bed 3": no word of place before it."""
    message = group.message
    norms = message.norms
    start = group.verb.end if group.verb is not None else group.start
    start = start if target is None else max(start, target.end)
    end, held = message.sentences[group.clauses[0].sentence].end, indexes(message.days)
    for i in range(max(start - 1, group.start), end - 2):
        way = norms[i] in _WAYS and norms[i + 2] in _ENDS_OF
        if norms[i + 1] in _THE and (way or norms[i] == "joined"):
            return _place_from(message, i + 1, end, held)
    if target is None or start != target.end or start >= end or start in held:
        return None
    place = _place_from(message, start, end, held)
    bare = place is not None and place != "ground" and len(place.split()) <= _BARE
    return place if bare and not _PLOTS.isdisjoint(norms[start : start + _BARE]) else None


_WAYS = words_in("down up out over round through off")
_THE = words_in("the at our my his her their")
_ENDS_OF = words_in("back front top bottom end far side foot edge corner middle back garden yard")
_PLOTS = words_in("bed beds patch border trench plot row allotment")
_BARE = 3
"""Words of a place that stands behind the bin with nothing between, at most."""


def _is_somebody(message: Message, i: int) -> bool:
    """Whether a person is named at word i ("along the hedge by me and Dom")."""
    return message.norms[i : i + 1] in (["me"], ["us"]) or any(
        m.start == i and not m.owner for m in message.members
    )


def _names_bin(message: Message, i: int) -> bool:
    return any(ref.start <= i < ref.end for ref in message.bins)


def _before(group: Group, target: BinRef | None) -> str | None:
    """ "Have the bin under the cherry tree buried": the place stands before the verb."""
    if group.verb is not None and group.norms[0] in UNDER and group.verb.start > group.start:
        held = indexes(group.message.days)  # "under the fig he goes"
        return _place_from(group.message, group.start + 1, group.verb.start, held)
    if target is None:
        return None
    if group.verb is None:  # "6 inches down under the sweetcorn, Doris"
        held = indexes(group.message.days)
        for i in range(group.start, target.start - 1):
            after = group.message.norms[i + 1]
            if group.message.norms[i] in PLACE and i + 1 not in held and after not in _WHEN:
                return _place_from(group.message, i + 1, target.start, held)
        return None
    if target.end > group.verb.start:
        other = [b for b in group.bins if b.name != target.name and b.end <= group.verb.start]
        return next((b.name for b in other if b.name is not None), None)
    message = group.message
    held = indexes(message.days)
    for i in range(target.end, group.verb.start - 1):
        if message.norms[i] in PLACE and i + 1 not in held:
            return _place_from(message, i + 1, group.verb.start, held)
    return None


def _behind_arrow(group: Group, target: BinRef | None) -> str | None:
    """ "Shed → pit no. 3"."""
    message = group.message
    at = group.end if target is None else target.end
    if message.norms[at : at + 2] == ["-", ">"]:
        at += 1
    if message.norms[at : at + 1] not in (["→"], [">"]):
        return None
    sentence = message.sentences[group.clauses[0].sentence]
    return _place_from(message, at + 1, max(sentence.end, at + 2), indexes(message.days))


def _place_from(message: Message, i: int, end: int, held: frozenset[int]) -> str | None:
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
        if norms[stop] == ":" and norms[i] in _SOIL:
            break
        if norms[stop] == "by" and _is_somebody(message, stop + 1):
            break
        stop += 1
    while stop in held and stop > i + 1 and norms[stop - 1] in _BEFORE_DAY:
        stop -= 1
    if norms[i : i + 1] and norms[i] in _SOIL and (stop - i <= 2 or norms[i + 1] in PLACE):
        after = _beyond_soil(norms, stop if stop - i <= 2 else i + 1, end, held)
        return (_place_from(message, after, end, held) if after else None) or "ground"
    text = message.text(i, stop)
    return (text[2:] if text[:2] in ("t'", "t’") else text) or None  # "under t'rhubarb"


def _beyond_soil(norms: Sequence[str], start: int, end: int, held: frozenset[int]) -> int:
    """Index of the place behind "in the ground", past a day and words of place; 0 if none is."""
    at, placed = start, False
    while at < end and (at in held or norms[at] in _BEFORE_PLACE | _OF_DAY):
        placed = placed or (norms[at] in PLACE and at + 1 not in held)
        at += 1
    free = start < at < end and norms[at] not in _WHEN and not norms[at][0].isdecimal()
    if free and not placed:  # "in the soil, north bed", but not "in the soil, Uwe dug"
        stop = next((k for k in range(at, min(end, at + _LONGEST)) if norms[k] == ","), end)
        free = not (GROUND | _BEDS).isdisjoint(norms[at : min(stop, at + _LONGEST)])
    return at if free else 0


def _alone(group: Group, target: BinRef | None) -> str | None:
    """ "Trenched the shed. North bed.": a clause behind it that only names a place."""
    message = group.message
    first = message.clauses.index(group.clauses[0])
    behind = 0 if group.verb is None and target is None else first + 1
    bins = {b.start: b.end for b in message.bins} if target is None else {}
    for clause in message.clauses[behind : first + 1 + _AFTER + len(group.clauses)]:
        named = clause.verb is None or clause.verb.end == clause.end  # "runner bean trench"
        named = named or message.norms[clause.start] == "top"  # "top terrace"
        said = _said_before(message, clause, bins)
        if (
            not behind
            and not said
            and any(clause.start <= b.start < clause.end for b in message.bins)
        ):
            continue
        if named and clause.sense in ("none", "order", "did") and _is_place(message, clause, said):
            start = clause.start + said
            place = _place_from(message, start, clause.end, indexes(message.days))
            if place:
                return place
    return None


def _said_before(message: Message, clause: Clause, bins: Mapping[int, int]) -> int:
    """How many words stand before the place in "he's under the plum", "2 feet down by the pond"."""
    norms = message.norms[clause.start : clause.end]
    if norms[:1] and (norms[0] in _IT_IS or clause.start in bins):
        at = bins.get(clause.start, clause.start + 1) - clause.start
        at += norms[at : at + 1] != [] and norms[at] in _BEING
        while norms[at : at + 1] and norms[at] in _ABOUT:
            at += 1
    elif "down" in norms[1:_LONGEST]:
        at = norms.index("down", 1) + 1
    else:
        return 0
    if not norms[at : at + 1] or norms[at] not in UNDER | _BY:
        return 0
    return at + 1 + (norms[at : at + 2] == ["next", "to"])


_IT_IS = words_in("he she it they hes shes its theyre")
_BEING = words_in("'s is 're are lies lie sits rests sleeps")
_BY = words_in("by next against between among along alang")
_ABOUT = _WAYS | _THE | _ENDS_OF | words_in("there right just")
"""Between "it's" and the place: "it's down the bottom by the rhubarb"."""


def _is_place(message: Message, clause: Clause, skipped: int) -> bool:
    """Whether a clause has ground or a plant in it, or begins with a word of place."""
    norms = message.norms[clause.start : clause.end]
    start = clause.start + skipped
    held = any(start <= b.start < clause.end and not b.place for b in message.bins)
    measured = any(start <= a.start < clause.end for a in message.amounts)
    if held or measured or (len(norms) > _LONGEST and not skipped):
        return False
    if not norms[skipped][:1].isalpha():
        return False
    leads = norms[0] in PLACE or norms[:1] == ["out"] or skipped > 0 or _is_end_of(norms)
    titled = norms[0] not in _SOIL and not _BEDS.isdisjoint(norms) and norms[-1] != "down"
    titled = titled and norms[1:2] != ["'s"]
    return len(norms) > 1 and (leads or titled)


_BEDS = (GROUND - _SOIL) | words_in("corner side end foot bay terrace border planter greenhouse")


def _is_end_of(norms: Sequence[str]) -> bool:
    """ "Back of the fig", "the far end of the plot"."""
    at = next((k for k in range(1, min(4, len(norms) - 1)) if norms[k] == "of"), 0)
    told = at > 0 and norms[at - 1] in _ENDS_OF and _TIMES.isdisjoint(norms[at:])
    return told and (norms[at - 1] != "end" or at > 1 or norms[at + 1] in _THE)


_TIMES = words_in("day week month year season summer winter story discussion shift april mind")
