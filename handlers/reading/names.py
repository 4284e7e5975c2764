"""Names of bins and members, found as the group uses them: its own case, slips mended."""

from collections.abc import Sequence
from functools import lru_cache
from typing import NamedTuple

from handlers.reading.marks import Phrasebook
from handlers.reading.vocabulary import verb_words, vocabulary, words_in
from handlers.reading.words import Word, cleaned, words_of


class BinRef(NamedTuple):
    """A bin meant by words[start:end]."""

    start: int
    end: int
    name: str | None
    """The known name, or the words said; None for "the bin", "it", "the same one"."""
    known: bool = False
    plain: bool = False
    """It is said to be a bin ("the shed bin"), or could hardly be anything else."""
    place: bool = False
    """Its name is also that of a room or a place ("the shed")."""


class MemberRef(NamedTuple):
    """A member named by words[start:end]."""

    start: int
    end: int
    name: str
    owner: bool = False
    """ "Bev's"."""


BIN_WORDS = words_in(
    "bin bucket pail caddy tub drum barrel keg crock container cubeta balde tonne eimer tote bokashi"
) - {"tonne"}
_BIN_PLURALS = words_in("bins buckets pails caddies tubs drums barrels kegs containers")
_ONE = frozenset({"one"})
_NOT_OURS = words_in(
    "recycling wheelie rubbish trash garbage dust waste wheely general council paper glass plastic "
    "dog bread toy storage laundry-basket shopping bath ice champagne mop ash sand bottle"
)
_AFTER_NOT_OURS = words_in(
    "day men man bag bags lorry liner liners collection collections store shed juice list hat truck"
)
# Words before "bin" that describe it and are no name.
_GENERIC = words_in(
    "the a an my our your his her their this that these those same other another next second first "
    "third last new old big small wee little full empty whole each every both all any some one two "
    "which what whose of in into to from off on for at and or but with is was are put it i we you "
    "shared communal spare current fermenting ready sealed starter scrap scraps food bokashi "
    "compost kitchen-scrap litre liter l gallon gal plastic metal lidded clean fresh good bad up "
    "out down over no not left per extra large mini nearly almost now then so started opened "
    "sealed drained emptied buried mixed opening starting got get have has had need about how wrong "
    "right actual open closed stinky smelly poor dear damn bloody stupid blasted single correct "
    "gonna go went can could would will should may might do does did more most "
    "kg g lb lbs oz ml litres liters kilos there here when if because cos as than that's like its "
    "'s set start feed fed fill filled check checked close closed seal drain bury dump dumped toss "
    "chucked threw called named calling entire original just also only again already your "
    "still today yesterday tonight tomorrow un una el la los mi nuestro de del der die das den mein "
    "unser le les mon ma une und y e o ang sa yung ng mga"
)
PLACE_NAMES = words_in(
    "kitchen shed laundry roof balcony garage porch garden courtyard basement cellar yard hall "
    "cafeteria office attic patio terrace deck utility lounge bathroom stairs landing loft hallway "
    "pantry school church library canteen garten balkon keller backyard allotment greenhouse "
    "playground barn studio lobby"
)
# What may stand behind a bare name: anything else makes it part of another thing ("shed roof").
PLAIN_FOLLOWERS = words_in(
    "is was has had are were will would can should be been isnt wasnt hasnt got gets get a an the "
    "and or but so then now today yesterday tonight tomorrow last this that on in at to into from "
    "for with without by off out of about around approx after before while when since because cos "
    "cuz as if again too also already just only still finally later twice once lol lmao haha please "
    "pls plz thx thanks ta rn ok okay mate folks all yet btw fyi fwiw tho though i ive we he she it "
    "they you there here smells smelt smelled stinks reeks stank smelling looks looked seems feels "
    "hisses hissing hissed needs needed full sealed drained buried closed opened started going went "
    "gone goes ready due not no never nearly almost over up down another plus more some mostly mainly "
    "half n y e und et o one bin bucket's 's how what when who why where did do does done didnt "
    "one two three four five six seven eight nine ten twenty thirty gave yields today's monday tuesday wednesday thursday friday saturday sunday mon tue wed thu fri sat sun "
    "yielded gave gives giving produced made drips dripping leaking bulging smell stink reek hums "
    "sorry thanks mate cheers im only bot yaar pal love thank tbh imo yo oh um and/or "
    "pls quick via per during this's was's yay innit eh huh yes yep yeah yup even actually "
    "literally properly really very bone way kinda sorta like maybe roughly probably x xx xxx "
    "itself myself myself's using till until around hoy ayer gestern heute ako po na naman daw ba yaar "
    "bhai only's total altogether combined put added dumped chucked tossed threw tipped shut lid "
    "sat has's came comes coming took turned developed grew lid's temp temperature ph bot "
    "first second next earlier lately overnight weighs weighed weighing measured contents starting "
    "have sorted turn turns week round whenever anytime be's fermented ferment right straight"
)
_INTO = words_in(
    "sa dans na in into to from off of inside onto for at via em im ins en al aus into's del"
)


@lru_cache(maxsize=64)
def _book(bins: tuple[str, ...], members: tuple[str, ...], bots: tuple[str, ...]) -> Phrasebook:
    entries = [(_norms(name), "bin", name) for name in bins]
    entries += [(_norms(name.lstrip("@")), "member", name) for name in members]
    entries += [(_norms(name), "bot", name) for name in bots]
    return Phrasebook(entry for entry in entries if entry[0])


def _norms(name: str) -> str:
    return " ".join(word.norm for word in words_of(cleaned(name)))


def find_members(
    words: Sequence[Word], norms: Sequence[str], members: tuple[str, ...]
) -> tuple[MemberRef, ...]:
    """Members named in the words, in order."""
    found = _book((), members, ()).find(norms)
    return tuple(MemberRef(m.start, m.end, m.value, _owns(norms, m.end)) for m in found)


def _owns(norms: Sequence[str], end: int) -> bool:
    """Whether "'s" behind a name is that of an owner, and not "is" or "has"."""
    if norms[end : end + 1] != ["'s"]:
        return False
    after = norms[end + 1] if end + 1 < len(norms) else ""
    return not (after.endswith(("ed", "ing")) or after in _AFTER_IS)


_AFTER_IS = words_in(
    "after just got been put taken taking gone going done dug shut drawn had the a already now"
)


def find_bot(norms: Sequence[str], bots: tuple[str, ...]) -> tuple[int, ...]:
    """Indexes of the words that call the bot."""
    return tuple(m.start for m in _book((), (), bots).find(norms))


def known_bins(
    words: Sequence[Word], norms: Sequence[str], bins: tuple[str, ...]
) -> tuple[BinRef, ...]:
    """The group's own bins that are meant in the words, in order."""
    out: list[BinRef] = []
    for mark in _book(bins, (), ()).find(norms):
        ref = _known(norms, mark.start, mark.end, mark.value)
        if ref is not None:
            out.append(ref)
    return tuple(out)


def _known(norms: Sequence[str], start: int, end: int, name: str) -> BinRef | None:
    after = norms[end] if end < len(norms) else ""
    if after in BIN_WORDS or after in _ONE:
        beyond = norms[end + 1] if end + 1 < len(norms) else ""
        return None if beyond in _AFTER_NOT_OURS else BinRef(start, end + 1, name, True, True)
    if end - start > 1:
        loose = norms[start:end][0] in ("plot", "room") or norms[end - 1] in ("room", "hall")
        return BinRef(start, end, name, True, not loose)
    before = norms[start - 1] if start else ""
    if before in ("the", "our") and start > 1 and norms[start - 2] in _INTO:
        into = True
    else:
        into = before in _INTO
    place = name.lower() in PLACE_NAMES
    if _is_part(before, after, into, place):
        return None
    plain = after in _BIN_PARTS or (not place and into)
    return BinRef(start, end, name, True, plain, place)


def _is_part(before: str, after: str, into: bool, place: bool) -> bool:
    """Whether a one-word name belongs to another thing here ("shed roof", "my kitchen")."""
    if before in ("my", "your", "his", "her", "their", "a", "an", "new"):
        return True
    if not after or not after[0].isalpha() or after in PLAIN_FOLLOWERS or after in _BIN_PARTS:
        return False
    if after in _NOUNS:
        return True
    known = after in vocabulary()
    if place:
        return known and after not in _PAST_VERBS and after not in verb_words()
    return not (into and not known) and after not in _PAST_VERBS


_BIN_PARTS = words_in(
    "lid lids tap spigot contents juice leachate liquid's scraps tray liquid handle"
)
_PAST_VERBS = words_in("fed drained sealed buried filled emptied closed topped got had ate went took received "
                       "gave yielded smelt smelled stank hissed bulged opened started shut ready")  # fmt: skip
_NOUNS = words_in(
    "door's keys key lock padlock gate shelf shelves step steps swing pirates curtains paint island fan "
    "heater furniture sofa railing basket powder machine detergent duty rota staff team manager scissors "
    "association committee knife knives top tops bench oven stove fridge freezer walls windows doors "
    "sink table floor roof door window light wall counter chair garden plant cupboard drawer tea "
    "beans sale lights stairs tiles work party terrace room drain drains pipe tap ceiling bench key"
)


def said_bins(
    words: Sequence[Word], norms: Sequence[str], taken: frozenset[int]
) -> tuple[BinRef, ...]:
    """Bins meant by words that are no known name: "bin 7", "the attic bin", "the bucket"."""
    out: list[BinRef] = []
    for i, norm in enumerate(norms):
        if i in taken:
            continue
        if norm in BIN_WORDS or norm in _BIN_PLURALS:
            ref = _said(words, norms, i, taken)
            if ref is not None:
                out.append(ref)
    return tuple(out)


def _said(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> BinRef | None:
    after = norms[i + 1] if i + 1 < len(norms) else ""
    before = norms[i - 1] if i else ""
    if after in _AFTER_NOT_OURS or before in _NOT_OURS or norms[i] == "bokashi":
        return None
    if norms[i] in _BIN_PLURALS:
        return BinRef(i, i + 1, None, plain=True)
    numbered = _numbered(words, norms, i, taken)
    if numbered is not None:
        return numbered
    start = i
    while start > max(0, i - 2) and _names(words[start - 1], start - 1, taken):
        start -= 1
    if start < i and norms[start] == "'s":
        start += 1
    if start < i:
        name = " ".join(w.text for w in words[start:i])
        return BinRef(start, i + 1, name, plain=True)
    owner = _owner(words, norms, i)
    return owner or BinRef(i, i + 1, None, plain=True)


def _owner(words: Sequence[Word], norms: Sequence[str], i: int) -> BinRef | None:
    """ "Deb's bin" is called so."""
    if i < 2 or norms[i - 1] != "'s" or norms[i - 2] in ("it", "that", "he", "she", "who"):
        return None
    return BinRef(i - 2, i + 1, f"{words[i - 2].text}'s", plain=True)


def _names(word: Word, index: int, taken: frozenset[int]) -> bool:
    if index in taken or word.kind != "word" or word.norm in _GENERIC:
        return False
    return word.norm not in vocabulary() or word.norm in PLACE_NAMES | _COLOURS


_COLOURS = words_in(
    "red blue green yellow orange purple pink white black grey gray brown rojo azul verde amarillo"
)


def _numbered(
    words: Sequence[Word], norms: Sequence[str], i: int, taken: frozenset[int]
) -> BinRef | None:
    """ "bin 3", "bin no 3", "bin #3", "bin three"."""
    at = i + 1
    if norms[at : at + 1] and norms[at] in ("no", "number", "nr", "#"):
        at += 1
        if norms[at : at + 1] == ["."]:
            at += 1
    if at >= len(words) or at in taken:
        return None
    number = _SPELLED.get(norms[at], norms[at] if words[at].kind == "number" else "")
    letter = len(norms[at]) == 1 and norms[at].isalpha() and words[at].text.isupper()
    if letter and norms[at] not in ("i", "a"):
        number = words[at].text
    elif not number.isdecimal() or len(number) > 3:
        return None
    return BinRef(i, at + 1, f"{words[i].norm} {number}", plain=True)


_SPELLED = {
    word: str(n)
    for n, word in enumerate(
        ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine"], 1
    )
}


def slipped(word: str, names: tuple[str, ...]) -> str | None:
    """The one-word name that `word` was meant to be, one slip away; None if not plain."""
    near = [name for name in names if len(name) >= 4 and one_slip(word, name.lower())]
    return near[0] if len(near) == 1 else None


def one_slip(said: str, meant: str) -> bool:
    """Whether two words differ by one letter left out, added, changed or swapped."""
    if said == meant or abs(len(said) - len(meant)) > 1:
        return False
    k = 0
    while k < min(len(said), len(meant)) and said[k] == meant[k]:
        k += 1
    if len(said) == len(meant):
        swapped = said[k + 1 : k + 2] + said[k : k + 1] + said[k + 2 :]
        return said[k + 1 :] == meant[k + 1 :] or swapped == meant[k:]
    longer, shorter = (said, meant) if len(said) > len(meant) else (meant, said)
    return longer[k + 1 :] == shorter[k:]
