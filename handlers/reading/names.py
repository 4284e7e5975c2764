"""Names of bins and members, found as the group uses them: its own case, slips mended."""

from collections import Counter
from collections.abc import Iterator, Sequence
from functools import lru_cache
from typing import NamedTuple

from handlers.reading.daywords import ORDINALS
from handlers.reading.marks import Phrasebook
from handlers.reading.unitwords import unit_starts
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
    "bin bucket pail caddy tub drum barrel keg crock container cubeta balde tonne eimer tote "
    "bokashi"
) - {"tonne"}
_ONE = frozenset({"one"})
AFTER_NOT_OURS = words_in(
    "day men man bag bags lorry liner liners collection collections store shed juice list hat truck"
)
PLACE_NAMES = words_in(
    "kitchen shed laundry roof balcony garage porch garden courtyard basement cellar yard "
    "hall cafeteria office attic patio terrace deck utility lounge bathroom stairs landing "
    "loft hallway pantry school church library canteen garten balkon keller backyard "
    "allotment greenhouse playground barn studio lobby"
)
# What may stand behind a bare name: anything else makes it part of another thing ("shed roof").
PLAIN_FOLLOWERS = words_in(
    "hope hoping see catch talk love well back xoxo amen inshallah fingers finally must cant "
    "couldnt wont didnt under beneath below underneath beside behind near along between "
    "against inside outside across among upon toward towards past above below beyond onto "
    "into within throughout despite instead except like unlike than whilst although whereas "
    "plus minus via is was has had are were will would can should be been isnt wasnt hasnt "
    "got gets get a an the and or but so then now today yesterday tonight tomorrow last this "
    "arvo morning afternoon evening night noon midday "
    "that on in at to into from for with without by off out of about around approx after "
    "before while when since because cos cuz as if again too also already just only still "
    "finally later twice once lol lmao haha please pls plz thx thanks ta rn ok okay mate "
    "folks all yet btw fyi fwiw tho though i ive we he she it they you there here smells "
    "smelt smelled stinks reeks stank smelling looks looked seems feels hisses hissing hissed "
    "needs needed full sealed drained buried closed opened started going went gone goes ready "
    "due not no never halfway completely fully right partly "
    "nearly almost over up down another plus more some mostly mainly half n "
    "y e und et o one bin bucket's 's how what when who why where did do does done didnt one "
    "two three four five six seven eight nine ten twenty thirty gave yields today's monday "
    "tuesday wednesday thursday friday saturday sunday mon tue wed thu fri sat sun yielded "
    "gave gives giving produced made drips dripping leaking bulging smell stink reek hums "
    "sorry thanks mate cheers im only bot yaar pal love thank tbh imo yo oh um and/or pls "
    "quick via per during this's was's yay innit eh huh yes yep yeah yup even actually "
    "literally properly really very bone way kinda sorta like maybe roughly probably x xx xxx "
    "itself myself myself's using till until around hoy ayer gestern heute ako po na naman "
    "daw ba yaar bhai only's total altogether combined put added dumped chucked tossed threw "
    "tipped shut lid sat has's came comes coming took turned developed grew lid's temp "
    "temperature ph bot first second next earlier lately overnight weighs weighed weighing "
    "measured contents starting have sorted turn turns week round whenever anytime be's "
    "fermented ferment right straight holds fits"
)
_INTO = words_in(
    "sa dans na in into to from off of inside onto for at via em im ins en al aus into's del"
)


@lru_cache(maxsize=1024)
def _book(bins: tuple[str, ...], bots: tuple[str, ...]) -> Phrasebook:
    entries = [(form, "bin", name) for name in bins for form in _written_forms(name)]
    entries += [(norms_of(name), "bot", name) for name in bots]
    own = {entry[0] for entry in entries}
    others = [*_in_other_vessels(bins), *_joined_or_parted(bins)]
    entries += [(said, "bin", name) for said, name in others if said not in own]
    return Phrasebook(entry for entry in entries if entry[0])


def _joined_or_parted(bins: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """ "Poly tunnel" for "polytunnel", "northgate" for "north gate"."""
    for name in bins:
        first, _, second = (norms := norms_of(name)).partition(" ")
        joined = first + second
        if second and joined.isalpha() and len(joined) >= _LONG and second not in BIN_WORDS:
            yield joined, name
        for tail in () if second else _TAILS:
            if norms.endswith(tail) and len(norms) - len(tail) >= _SHORTEST:
                yield f"{norms.removesuffix(tail)} {tail}", name


_TAILS = ("house", "shed", "tunnel", "room", "yard", "gate", "barn", "garden", "porch", "deck")
"""Second parts of names that are written in one word and in two."""
_LONG, _SHORTEST = 7, 3


def _in_other_vessels(bins: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """ "Bucket one", "number 1", "the first tub": other words for bin 1, the only one of 1."""
    for number, name in _by_their_number(bins).items():
        spelled = {number, SPELLED.get(int(number), number)}
        place = [word for word, value in ORDINALS.items() if value == int(number)]
        for lead in (*BIN_WORDS, "number"):
            yield from ((f"{lead} {said}", name) for said in spelled)
        yield from ((f"{said} {vessel}", name) for said in place for vessel in BIN_WORDS)


def _written_forms(name: str) -> Iterator[str]:
    """A bin's name in words, and "no. 1", "#1" and "number one" for "number 1"."""
    if _is_pictured(name):
        return
    yield (norms := norms_of(name))
    article, _, rest = norms.partition(" ")
    if article == "the" and rest:
        yield rest
    yield from _with_ordinals(norms)
    lead, _, number = norms.rpartition(" ")
    if not number.isdecimal() or not lead:
        return
    if lead in _NUMBERED:
        yield from (f"{sign} {number}" for sign in _NUMBERED if sign != lead)
        lead = "number"
    if int(number) in SPELLED and lead not in BIN_WORDS:
        yield f"{lead} {SPELLED[int(number)]}"


def _with_ordinals(norms: str) -> Iterator[str]:
    """ "3rd floor" for "third floor", and the other way round; "3rd" is read as two words."""
    for word, number in ORDINALS.items():
        figure = f"{number} {_ENDINGS.get(number, 'th')}"
        for one, other in ((word, figure), (figure, word)):
            if f" {one} " in f" {norms} ":
                yield norms.replace(one, other)


_ENDINGS = {1: "st", 2: "nd", 3: "rd", 21: "st"}
_NUMBERED = ("number", "no", "no .", "nr", "#")
_ONES = ("", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
_TEENS = (
    "ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen",
    "eighteen", "nineteen",
)  # fmt: skip
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
SPELLED: dict[int, str] = dict(
    enumerate((*_ONES[1:], *_TEENS, *(f"{ten} {one}".strip() for ten in _TENS for one in _ONES)), 1)
)
"""The words for the numbers that bins are called by."""


def norms_of(name: str) -> str:
    """A name as its words are read, one space between."""
    return " ".join(word.norm for word in words_of(cleaned(name)))


def find_bot(norms: list[str], bots: tuple[str, ...]) -> tuple[int, ...]:
    """Indexes of the words that call the bot."""
    return tuple([m.start for m in _book((), bots).find(norms)])


def known_bins(
    words: Sequence[Word], norms: list[str], bins: tuple[str, ...]
) -> tuple[BinRef, ...]:
    """The group's own bins that are meant in the words, in order."""
    out: list[BinRef] = []
    for mark in _book(bins, ()).find(norms):
        if out and mark.start < out[-1].end:
            continue  # "the shed bin 3 kg": the word for bin is spoken for
        ref = _known(norms, mark.start, mark.end, mark.value)
        if ref is not None:
            out.append(ref)
    if lettered := _lettered(bins):
        out += _by_letter(words, norms, lettered)
    if not out and (numbered := _numbered(bins)):
        out += _by_number(words, norms, numbered)
    return tuple(sorted((*out, *_pictured(words, norms, bins))) if "☺" in norms else sorted(out))


@lru_cache(maxsize=1024)
def _lettered(bins: tuple[str, ...]) -> dict[str, str]:
    """The bins that are told apart by a letter ("bin B"), by that letter; none that two have."""
    named = [(name.split(), name) for name in bins]
    named = [(parts, name) for parts, name in named if len(parts) == 2 and _is_letter(parts[1])]
    leads = Counter(parts[0].lower() for parts, _ in named)
    found = [
        (parts[1].upper(), name)
        for parts, name in named
        if parts[0].lower() in BIN_WORDS or leads[parts[0].lower()] > 1
    ]
    count = Counter(letter for letter, _ in found)
    taken = {name.upper() for name in bins}
    return {letter: name for letter, name in found if count[letter] == 1 and letter not in taken}


def _is_letter(text: str) -> bool:
    return len(text) == 1 and text.isalpha()


def _by_letter(
    words: Sequence[Word], norms: Sequence[str], lettered: dict[str, str]
) -> Iterator[BinRef]:
    """ "Added 1 kg to B": a capital alone, behind what is done to a bin or goes into it."""
    for i in range(len(words)):
        text = words[i].text
        name = lettered.get(text.upper() if i and text in SMALL_LETTERS else text)
        if name is None:
            continue
        before = norms[i - 1] if i else "."
        after = norms[i + 1] if i + 1 < len(norms) else ""
        led = before in _INTO | _ASKED_OF or before in verb_words()
        ends = not after or not after[0].isalpha() or after in _BEHIND_LETTER
        listed = before == "," and i + 1 == len(words)  # "1 kg of peel, A"
        if (
            (led and ends)
            or (listed and text.isupper())
            or (before in ".!,;\n" and after in _DONE_BY_BIN)
        ):
            yield BinRef(i, i + 1, name, True, True)


@lru_cache(maxsize=1024)
def _numbered(bins: tuple[str, ...]) -> dict[str, str]:
    """The bins that are meant by their number alone: no other is called just so."""
    found = _by_their_number(bins)
    return {number: name for number, name in found.items() if number not in bins}


def _by_their_number(bins: tuple[str, ...]) -> dict[str, str]:
    """The bins that are told apart by a number ("bin 40"), by that number; none that two have."""
    named = [(norms_of(name).split(), name) for name in bins]
    found = [(parts[1], name) for parts, name in named if _is_numbered(parts)]
    count = Counter(number for number, _ in found)
    return {number: name for number, name in found if count[number] == 1}


def _is_numbered(parts: Sequence[str]) -> bool:
    return len(parts) == 2 and parts[0] in BIN_WORDS and parts[1].isdecimal()


def _by_number(
    words: Sequence[Word], norms: Sequence[str], numbered: dict[str, str]
) -> Iterator[BinRef]:
    """ "Mussel shells, 40": the number alone, as a breath of its own or as the one that got it."""
    for i, norm in enumerate(norms):
        name = numbered.get(norm)
        if name is None:
            continue
        after = norms[i + 1] if i + 1 < len(norms) else ""
        alone = _leads_number(norms, i) and (after in _BREATHS or after in _BEHIND_NUMBER)
        within = norms[i - 1 : i] in _WITHIN and (after in _BREATHS or after in _BEHIND_LETTER)
        if alone or within:
            yield BinRef(i, i + 1, name, True, True)


def _leads_number(norms: Sequence[str], i: int) -> bool:
    """Whether a breath begins at word i, and no list of numbers goes on there."""
    if i < 2:
        return i == 0
    return norms[i - 1] in _BREATHS and not norms[i - 2].isdecimal()


_BREATHS = frozenset({"", ",", ".", "-", ":", "!", "(", ")", "—", "\n"})
_BEHIND_NUMBER = words_in("has had got gets 's tapped drained sealed buried gave is was went")
_WITHIN = (["in"], ["into"], ["off"], ["from"], ["fed"])
SMALL_LETTERS = frozenset("bcdef")
"""By which bins are told apart without a capital: they stand for no word and no unit of amounts."""
_ASKED_OF = words_in("is was for about")
_DONE_BY_BIN = words_in("'s got has had is was took smells stinks hisses needs")
_BEHIND_LETTER = words_in(
    "on at since by before after and with today yesterday tonight now just this last please is was "
    "be ready due full mostly"
)


def _pictured(
    words: Sequence[Word], norms: Sequence[str], bins: tuple[str, ...]
) -> tuple[BinRef, ...]:
    """Bins whose names are nothing but pictures, which have one plain form between them all."""
    out: list[BinRef] = []
    for name in bins:
        if not _is_pictured(name):
            continue
        drawn = [word.text for word in words_of(cleaned(name))]
        for i in range(len(words) - len(drawn) + 1):
            end = i + len(drawn)
            called = norms[end : end + 1] and norms[end] in BIN_WORDS
            if "☺" in (*norms[max(0, i - 1) : i], *norms[end : end + 1]):
                continue  # part of a longer row of pictures
            if [word.text for word in words[i:end]] == drawn and (
                called or (i and norms[i - 1] in _INTO | {"the", "called", "named"})
            ):
                out.append(BinRef(i, end + bool(called), name, known=True, plain=True))
    return tuple(out)


def _is_pictured(name: str) -> bool:
    return set(norms_of(name).split()) == {"☺"}


def mentions(norms: list[str], bins: tuple[str, ...], taken: frozenset[int]) -> tuple[BinRef, ...]:
    """Every other place where a bin's name stands, or a word that only one name has ("Reg", "Big
    Reg").

    It may well be a room, a colour or a fruit there: whether a bin is meant, the scores say.
    """
    marks = _loose_book(bins).find(norms)
    return tuple(
        [
            BinRef(m.start, m.end, m.value, known=True)
            for m in marks
            if taken.isdisjoint(range(m.start, m.end))
        ]
    )


@lru_cache(maxsize=1024)
def _loose_book(bins: tuple[str, ...]) -> Phrasebook:
    parts = Counter(word for name in bins for word in set(norms_of(name).split()))
    short = [
        (word, "bin", name)
        for name in bins
        for word in norms_of(name).split()
        if " " in name and parts[word] == 1 and len(word) > 2 and word not in _SHARED_WORDS
    ]
    whole = [(norms_of(name), "bin", name) for name in bins if not _is_pictured(name)]
    return Phrasebook(entry for entry in (*whole, *short) if entry[0])


_SHARED_WORDS = (
    BIN_WORDS
    | PLACE_NAMES
    | words_in(
        "big old new wee little small tall fat the and one two three four five six seven eight "
        "nine ten plot room door side house number flat level shed front back top bottom end "
        "box pot"
    )
)
"""Words of many names, by which no bin is called alone."""


def _known(norms: Sequence[str], start: int, end: int, name: str) -> BinRef | None:
    after = norms[end] if end < len(norms) else ""
    beyond = norms[end + 1] if end + 1 < len(norms) else ""
    if after in BIN_WORDS or (after in _ONE and not _goes_on(norms, end + 1)):
        return None if beyond in AFTER_NOT_OURS else BinRef(start, end + 1, name, True, True)
    if end - start > 1:
        room = _is_room(name, norms[start:end])
        return BinRef(start, end, name, True, not room or after in _BIN_PARTS, room)
    before = norms[start - 1] if start else ""
    if name.lower() in COLOURS and _among_colours(norms, start, end):
        return None
    if before in ("the", "our") and start > 1 and norms[start - 2] in _INTO:
        into = True
    else:
        into = before in _INTO
    place = name.lower() in PLACE_NAMES or (name.islower() and name not in COLOURS)
    if place and before in _OTHER_OWNERS:
        return None
    if (
        not place
        and name.lower() not in COLOURS
        and ((after.endswith(("ing", "s")) and after in verb_words()) or _is_smell(after))
    ):
        return BinRef(start, end, name, True, into, place)
    if after in _PEELS and norms[start] in vocabulary():
        return None  # "na pawpaw skin" beside a bin called Pawpaw
    if is_part(before, after, into, place, name.lower() in PLACE_NAMES):
        return None
    plain = after in _BIN_PARTS or (not place and into)
    return BinRef(start, end, name, True, plain, place)


def _goes_on(norms: Sequence[str], i: int) -> bool:
    """Whether a "one" before word i is a number: "one litre", "one and half kilo"."""
    if norms[i : i + 1] == ["point"]:
        return True
    and_a_half = norms[i : i + 1] in (["and"], ["n"], ["&"]) and "half" in norms[i + 1 : i + 3]
    return and_a_half or (i < len(norms) and norms[i] in unit_starts("metric"))


def by_known_name(ref: BinRef, bins: tuple[str, ...]) -> BinRef:
    """A bin that was said in words ("bin ten"), under the group's own name for it if it has one."""
    said = (ref.name or "").lower()
    known = next((name for name in bins if name.lower() == said), None) if said else None
    return ref if known is None else ref._replace(name=known, known=True)


def _is_smell(word: str) -> bool:
    """ "Gertie pongs": a word of the list of signs, said of the bin."""
    return word.endswith("s") and word in _SIGN_VERBS


_SIGN_VERBS = words_in("pongs hums reeks stinks mings honks hisses bulges")


def is_part(before: str, after: str, into: bool, place: bool, common: bool = True) -> bool:
    """Whether a one-word name belongs to another thing here ("shed roof", "my kitchen")."""
    if before in ("my", "your", "his", "her", "their", "a", "an", "new"):
        return True
    if not after or not after[0].isalpha() or after in PLAIN_FOLLOWERS or after in _BIN_PARTS:
        return False
    if after in _NOUNS:
        return True
    known = after in vocabulary()
    if place and after.endswith("ing"):
        return True
    if place and (known or common):
        return known and after not in _PAST_VERBS and after not in verb_words()
    return not (into and not known) and after not in _PAST_VERBS


def _is_room(name: str, norms: Sequence[str]) -> bool:
    """Whether a name of several words may be a room's or a place's ("laundry room", "plot 9")."""
    if norms[0] in ("plot", "room") or norms[-1] in PLACE_NAMES | {"room", "hall"}:
        return True
    bin_like = BIN_WORDS | COLOURS
    return name.islower() and bin_like.isdisjoint(norms) and not any(n.isdecimal() for n in norms)


def _among_colours(norms: Sequence[str], start: int, end: int) -> bool:
    """ "Green, black, the lot" are colours, not bins."""
    behind = norms[end + 1 : end + 2] if norms[end : end + 1] == [","] else norms[end : end + 1]
    at = start - 2 if norms[start - 1 : start] == [","] else start - 1
    before = norms[at : at + 1] if at >= 0 else []
    return any(norm in COLOURS for norm in (*behind, *before))


_PEELS = words_in("skin skins peel peels peelings seed seeds stones pits rind rinds husks")
_OTHER_OWNERS = words_in(
    "school soup village work office hotel pub canteen restaurant hospital camp club centre"
)
_BIN_PARTS = words_in(
    "lid lids tap spigot contents juice leachate liquid's scraps tray liquid handle"
)
_PAST_VERBS = words_in(
    "fed drained sealed buried filled emptied closed topped got had ate went took received "
    "gave yielded smelt smelled stank hissed bulged opened started shut ready burped belched "
    "popped fizzed exploded leaked leaks hissed reeked ponged"
)
_NOUNS = words_in(
    "list lists cook cooks sheet scales scale crew lads extension renovation refit cleaner "
    "cleaning door's keys key lock padlock gate shelf shelves step steps swing pirates "
    "curtains paint island fan heater furniture sofa railing basket powder machine detergent "
    "duty rota staff team manager scissors association committee knife knives top tops bench "
    "oven stove fridge freezer walls windows doors sink table floor roof door window light "
    "wall counter chair garden plant cupboard drawer tea beans sale lights stairs tiles work "
    "toilet toilets corridor lockers locker gates pupils kids teacher teachers band play hours "
    "wifi code codes post posts hinge latch shutter tiles beam beams bus run trip trips fence "
    "area uniform uniforms fees fete fair concert office caretaker board boards hall alarm "
    "party terrace room drain drains pipe tap ceiling bench key"
)


COLOURS = words_in(
    "red blue green yellow orange purple pink white black grey gray brown rojo azul verde amarillo"
)
