"""How a bin's name is written and said: figures and ordinals, other vessels, parted, in short."""

from collections import Counter
from collections.abc import Iterator, Sequence
from functools import lru_cache

from handlers.reading.bins.shortnames import SHARED_WORDS, own_words, short_names
from handlers.reading.calendar.daywords import ORDINALS
from handlers.reading.words.binwords import BIN_WORDS, COLOURS, PLACE_NAMES, TOLD_BY
from handlers.reading.words.marks import Phrasebook
from handlers.reading.words.vocabulary import vocabulary
from handlers.reading.words.words import norms_of


@lru_cache(maxsize=1024)
def book_of(bins: tuple[str, ...], bots: tuple[str, ...]) -> Phrasebook:
    """All forms of the names of bins and of the bot."""
    entries = [(form, "bin", name) for name in bins for form in _written_forms(name)]
    entries += [(norms_of(name), "bot", name) for name in bots]
    own = {entry[0] for entry in entries}
    others = [*_in_other_vessels(bins), *_joined_or_parted(bins), *_owning_vessels(bins)]
    others += _by_their_looks(bins)
    others += _in_other_tongues(bins)
    entries += [(said, "bin", name) for said, name in others if said not in own]
    own |= {said for said, _ in others}
    entries += [(said, "short", name) for said, name in short_names(bins) if said not in own]
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


def _owning_vessels(bins: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """ "Aunt Bes bin" is Aunt Be's, the apostrophe left out; a plural before it needs none."""
    for name in bins:
        norms = norms_of(name)
        if " " in norms and norms[-1:].isalpha() and not norms.endswith("s"):
            yield from ((f"{norms}s {vessel}", name) for vessel in ("bin", "bucket", "tub", "pail"))


def _in_other_vessels(bins: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """ "Bucket one", "number 1", "the first tub": other words for bin 1, the only one of 1."""
    for number, name in by_their_number(bins).items():
        spelled = {number, SPELLED.get(int(number), number)}
        place = [word for word, value in ORDINALS.items() if value == int(number)]
        for lead in (*BIN_WORDS, "number"):
            yield from ((f"{lead} {said}", name) for said in spelled)
        yield from ((f"{said} {vessel}", name) for said in place for vessel in BIN_WORDS)
    for number, name in siblings(bins).items():
        base = norms_of(name).rpartition(" ")[0]
        place = [word for word, value in ORDINALS.items() if value == int(number)]
        place += [f"{number} {_ENDINGS.get(int(number), 'th')}"]
        yield from ((f"{said} {kind}", name) for said in place for kind in ("one", base))
        yield f"{base} bin {number}", name


def _by_their_looks(bins: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """ "The little blue one", "the large blue bin": other words for small blue and big blue; "blue"
    for the blue tub, the only one of that colour.
    """
    looks = own_words(bins)
    for name in bins:
        look, _, rest = norms_of(name).partition(" ")
        if look in _SIZED and rest in TOLD_BY:
            alike = (word for word, size in _SIZED.items() if size == _SIZED[look])
            yield from ((f"{word} {rest}", name) for word in alike)
        if look in COLOURS and rest in BIN_WORDS and looks[look] == 1:
            yield look, name
            yield from ((f"{look} {vessel}", name) for vessel in BIN_WORDS)


def _in_other_tongues(bins: tuple[str, ...]) -> Iterator[tuple[str, str]]:
    """ "In den grünen", "do czerwonego": a colour behind an article of its tongue."""
    for name in bins:
        for tongue, said in _COLOURS_SAID.get(norms_of(name), {}).items():
            for lead in _ARTICLES_SAID[tongue].split():
                yield from ((f"{lead} {word}", name) for word in said.split())


_ARTICLES_SAID = {
    "de": "den dem der die das ins im", "es": "el la al", "fr": "le la du", "pl": "do w we",
    "it": "nel il nella la",
}  # fmt: skip
_COLOURS_SAID = {
    "red": {
        "de": "roten rote rot",
        "es": "rojo roja",
        "fr": "rouge",
        "pl": "czerwonego czerwonym czerwonej",
        "it": "rosso rossa",
    },
    "green": {
        "de": "grunen grune grun gruenen gruene",
        "es": "verde",
        "fr": "vert verte",
        "pl": "zielonego zielonym zielonej",
        "it": "verde",
    },
    "blue": {
        "de": "blauen blaue blau",
        "es": "azul",
        "fr": "bleu bleue",
        "pl": "niebieskiego niebieskim niebieskiej",
        "it": "blu",
    },
    "yellow": {
        "de": "gelben gelbe gelb",
        "es": "amarillo amarilla",
        "fr": "jaune",
        "pl": "zołtego zołtym zołtej",
        "it": "giallo gialla",
    },
    "black": {
        "de": "schwarzen schwarze schwarz",
        "es": "negro negra",
        "fr": "noir noire",
        "pl": "czarnego czarnym czarnej",
        "it": "nero nera",
    },
    "white": {
        "de": "weißen weiße weiß weissen weisse",
        "es": "blanco blanca",
        "fr": "blanc blanche",
        "pl": "białego białym białej",
        "it": "bianco bianca",
    },
    "brown": {
        "de": "braunen braune braun",
        "es": "marron",
        "fr": "marron brun",
        "pl": "brazowego brazowym",
        "it": "marrone",
    },
    "grey": {
        "de": "grauen graue grau",
        "es": "gris",
        "fr": "gris grise",
        "pl": "szarego szarym szarej",
        "it": "grigio grigia",
    },
}
_SIZED = {
    **dict.fromkeys(("small", "little", "wee"), "small"),
    **dict.fromkeys(("big", "large"), "big"),
}


def by_their_number(bins: tuple[str, ...]) -> dict[str, str]:
    """The bins that are told apart by a number ("bin 40"), by that number; none that two have."""
    named = [(norms_of(name).split(), name) for name in bins]
    found = [(parts[1], name) for parts, name in named if _is_numbered(parts)]
    found += siblings(bins).items()
    count = Counter(number for number, _ in found)
    return {number: name for number, name in found if count[number] == 1}


@lru_cache(maxsize=1024)
def siblings(bins: tuple[str, ...]) -> dict[str, str]:
    """The bins that are called like another one and a number ("yard 2" beside "yard"), by it."""
    known = {norms_of(name) for name in bins}
    parted = [(norms_of(name).rpartition(" "), name) for name in bins]
    found = [(last, name) for (base, _, last), name in parted if last.isdecimal() and base in known]
    count = Counter(number for number, _ in found)
    return {number: name for number, name in found if count[number] == 1}


def _is_numbered(parts: Sequence[str]) -> bool:
    return len(parts) == 2 and parts[0] in BIN_WORDS and parts[1].isdecimal()


def _written_forms(name: str) -> Iterator[str]:
    """A bin's name in words, and "no. 1", "#1" and "number one" for "number 1"."""
    if is_pictured(name):
        return
    yield (norms := norms_of(name))
    article, _, rest = norms.partition(" ")
    if article == "the" and rest:
        yield rest
    yield from _with_ordinals(norms)
    yield from _without_signs(norms)
    if is_floor(norms.removesuffix(" floor")) and norms.endswith(" floor"):
        yield norms.removesuffix(" floor")
    for short in _abbreviated(norms):
        yield short
        yield from _with_ordinals(short)
    lead, _, number = norms.rpartition(" ")
    if not number.isdecimal() or not lead:
        return
    if lead in _NUMBERED:
        yield from (f"{sign} {number}" for sign in _NUMBERED if sign != lead)
        lead = "number"
    if int(number) in SPELLED and lead not in BIN_WORDS | TOLD_BY:  # "the white one" is any
        yield f"{lead} {SPELLED[int(number)]}"
    if lead in TOLD_BY:
        yield from (f"{word} {lead}" for word, place in ORDINALS.items() if place == int(number))
        yield from (f"{number} {end} {lead}" for end in [_ENDINGS.get(int(number), "th")])
        yield from (f"{lead} {vessel} {number}" for vessel in ("bin", "bucket"))


def is_floor(norms: str) -> bool:
    """ "4 th": a floor that is called by its number alone, if it is no date."""
    number, _, ending = norms.partition(" ")
    return number.isdecimal() and ending in ("st", "nd", "rd", "th")


def _without_signs(norms: str) -> Iterator[str]:
    """ "St Mary's", "st. marys" and "st marys" for "St. Mary's", "Hendersons" for "Hendersons'"."""
    bare = norms.replace(" .", "").removesuffix(" '")
    owned = {said.replace(" 's", "s") for said in (norms, bare) if len(said) > _SHORTEST}
    yield from (said for said in (bare, *owned) if said != norms and said not in vocabulary())


def _abbreviated(norms: str) -> Iterator[str]:
    """ "Lvl 3" for "level 3", "blk c" for "block c"."""
    words = norms.split()
    for i, word in enumerate(words if len(words) > 1 else ()):
        for short in _SHORT.get(word, ()):
            yield " ".join([*words[:i], short, *words[i + 1 :]])


_SHORT: dict[str, tuple[str, ...]] = {
    "level": ("lvl", "lv", "lev"), "room": ("rm",), "block": ("blk", "blok"),
    "floor": ("flr", "fl"), "bucket": ("bkt", "bckt"), "barrel": ("brl", "bbl"),
    "building": ("bldg",), "house": ("hse",), "street": ("st",), "garden": ("gdn",),
    "corridor": ("corr",), "kitchen": ("kit", "kitch"), "container": ("cont",),
    "number": ("num", "nbr"), "wing": ("wg",), "apartment": ("apt",), "basement": ("bsmt",),
    "plot": ("plt",), "north": ("nth",), "south": ("sth",),
}  # fmt: skip


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


@lru_cache(maxsize=1024)
def loose_book_of(bins: tuple[str, ...]) -> Phrasebook:
    """The names of bins, and the words that only one of them has."""
    parts, common = own_words(bins), SHARED_WORDS | PLACE_NAMES
    short = [
        (word, "bin", name)
        for name in bins
        for word in norms_of(name).split()
        if " " in name and parts[word] == 1 and len(word) > 2 and word not in common
    ]
    whole = [(norms_of(name), "bin", name) for name in bins if not is_pictured(name)]
    return Phrasebook(entry for entry in (*whole, *short) if entry[0])


def is_pictured(name: str) -> bool:
    """Whether a name is nothing but pictures."""
    return set(norms_of(name).split()) == {"☺"}
