"""The word lists of this folder, loaded once: what a phrase is, by tag."""

from collections.abc import Iterable, Iterator, Mapping
from functools import cache, lru_cache
from importlib.resources import files
from typing import Literal, NamedTuple, cast

from handlers.practice.kinds import KINDS, RICH, Kind
from handlers.practice.signs import Sign
from handlers.reading.words.marks import Entry, Phrasebook

LEFTOVERS_RICH = 0.25
"""Rich share of leftovers of no stated kind: about a quarter is meat, dairy, egg or fat."""


class Food(NamedTuple):
    """What a thing is made of: kind to share, and its rich share (0 to 1)."""

    shares: tuple[tuple[Kind, float], ...]
    rich: float
    name: str = ""


class Head(NamedTuple):
    """A dish that takes its name from the food before it."""

    share: float
    rest: Kind
    rich: float


class VerbForm(NamedTuple):
    """A written form of a verb: the records it may tell of, and its form."""

    classes: frozenset[str]
    form: Literal["plain", "third", "ing", "past", "either"]
    plain: str


class SignWord(NamedTuple):
    """A word of something seen or smelt, and where it counts."""

    sign: Sign
    where: Literal["plain", "smell", "bin", "named", "scent"]


def _text(name: str) -> str:
    return files("handlers.reading").joinpath("lexicon", name).read_text(encoding="utf-8")


def lines_of(name: str) -> Iterator[str]:
    """The lines of a word list, without remarks and blanks."""
    for line in _text(name).splitlines():
        line = line.partition("#")[0].strip()
        if line:
            yield line


def plurals(phrase: str) -> tuple[str, ...]:
    """The phrase and its plural, by the ordinary rules of spelling."""
    if phrase.endswith(("s", "x", "z", "ch", "sh")):
        return phrase, f"{phrase}es"
    if phrase.endswith("y") and phrase[-2:-1] not in ("a", "e", "o", "u"):
        return phrase, f"{phrase[:-1]}ies"
    if phrase.endswith("f") and not phrase.endswith(("ff", "ef")):
        return phrase, f"{phrase[:-1]}ves", f"{phrase}s"
    if phrase.endswith(("o",)):
        return phrase, f"{phrase}es", f"{phrase}s"
    return phrase, f"{phrase}s"


def _kind(name: str) -> Kind:
    if name not in KINDS:
        raise ValueError(f"{name!r} is no kind of scraps")
    return name


def _foods() -> dict[str, Food]:
    table: dict[str, Food] = {}
    kind: Kind = "mixed"
    for line in lines_of("foods.txt"):
        if line.startswith("["):
            kind = _kind(line.strip("[]"))
            continue
        rich = 1.0 if kind in RICH else LEFTOVERS_RICH if kind == "cooked" else 0.0
        for phrase in line.split(","):
            phrase = phrase.strip()
            for form in plurals(phrase) if phrase else ():
                table.setdefault(form, Food(((kind, 1.0),), rich, phrase))
    return table


def _dishes() -> dict[str, Food]:
    table: dict[str, Food] = {}
    for line in lines_of("dishes.txt"):
        names, makeup, rich_text = (part.strip() for part in line.split("|"))
        shares = tuple(
            (_kind(word), float(share))
            for word, share in (item.split() for item in makeup.split(","))
        )
        cooked = dict(shares).get("cooked", 0.0)
        rich = sum(s for k, s in shares if k in RICH) + cooked * float(rich_text)
        for name in names.split(";"):
            for form in plurals(name.strip()):
                table[form] = Food(shares, rich, name.strip())
    return table


def _heads() -> dict[str, Head]:
    table: dict[str, Head] = {}
    for line in lines_of("heads.txt"):
        names, share, rest, rich = (part.strip() for part in line.split("|"))
        for name in names.split(";"):
            for form in plurals(name.strip()):
                table.setdefault(form, Head(float(share), _kind(rest), float(rich)))
    return table


def _verbs() -> dict[str, VerbForm]:
    found: dict[str, VerbForm] = {}
    for line in lines_of("verbs.txt"):
        verb_class, _, forms = (part.strip() for part in line.partition("|"))
        plain, third, ing, *pasts = (form.replace("_", " ") for form in forms.split())
        rows = [(plain, "plain"), (third, "third"), (ing, "ing")]
        rows += [(p.lstrip("="), "either" if p.startswith("=") else "past") for p in pasts]
        for written, form in rows:
            known = found.get(written)
            classes = frozenset({verb_class}) | (known.classes if known else frozenset())
            name = form if known is None or form in ("either", "past") else known.form
            found[written] = VerbForm(classes, cast(Literal["plain"], name), plain)
    return found


def _hedges() -> Iterator[Entry]:
    for line in lines_of("hedges.txt"):
        yield from ((phrase.strip(), "hedge", None) for phrase in line.split(",") if phrase.strip())


def _signs() -> Iterator[Entry]:
    for line in lines_of("signs.txt"):
        sign, where, phrases = (part.strip() for part in line.split("|"))
        for phrase in phrases.split(","):
            word = SignWord(cast(Sign, sign), cast(Literal["plain"], where))
            yield from ((form, f"sign-{where}", word) for form in _likened(phrase.strip()))


def _likened(phrase: str) -> Iterator[str]:
    """ "Like a balloon", and without its article, as many write whose own language has none."""
    yield phrase
    for likening in (" like a ", " as a "):
        if likening in f" {phrase} ":
            yield f" {phrase} ".replace(likening, likening.replace(" a ", " ")).strip()


@cache
def vocabulary() -> Phrasebook:
    """All word lists as one book; tags: food, head, verb, hedge, sign-plain, sign-smell,
    sign-bin, sign-named, sign-scent."""
    foods = _foods() | _dishes()
    entries: list[Entry] = [(phrase, "food", food) for phrase, food in foods.items()]
    entries += [(phrase, "head", head) for phrase, head in _heads().items()]
    entries += [(phrase, "verb", verb) for phrase, verb in _verbs().items()]
    entries += _signs()
    entries += _hedges()
    return Phrasebook(entries)


@cache
def word_classes() -> Mapping[str, tuple[str, ...]]:
    """The classes, in pointed brackets, that a word stands in."""
    found: dict[str, list[str]] = {}
    for line in lines_of("classes.txt"):
        name, _, words = line.partition(":")
        for word in dict.fromkeys(words.split()):
            found.setdefault(word, []).append(f"<{name}>")
    return {word: tuple(names) for word, names in found.items()}


@cache
def verb_words() -> frozenset[str]:
    """Every written form of the verbs we know that is one word."""
    return frozenset(word for word in _verbs() if " " not in word)


@cache
def _food_words() -> Mapping[str, tuple[str, ...]]:
    """The long foods of one word by their first letter; of longer names any word may stand
    elsewhere ("packet", "platter"), so that its slips tell nothing."""
    found: dict[str, set[str]] = {}
    for phrase in _foods() | _dishes():
        if len(phrase) >= 5 and " " not in phrase:
            found.setdefault(phrase[0], set()).add(phrase)
    return {letter: tuple(words) for letter, words in found.items()}


@lru_cache(maxsize=1024)
def is_slip_of_food(word: str) -> bool:
    """Whether a word is one slip away from a food ("brocolli"); its first letter is right."""
    if not 5 <= len(word) <= 20:
        return False
    return any(one_slip(word, food) for food in _food_words().get(word[0], ()))


_DEEDS = {"a": "added", "b": "buried", "c": "closed", "d": "drained", "o": "opened", "s": "sealed"}


@lru_cache(maxsize=2048)
def verb_meant(word: str) -> str:
    """The verb of a record that a word is with its letters doubled, left out or swapped."""
    deed = _DEEDS.get(word[:1])
    if deed is None or len(word) < len(deed) - 1 or word == deed:
        return word
    return deed if _is_scrambled(word, deed) else word


def _is_scrambled(word: str, deed: str) -> bool:
    """A slip that leaves all letters but one: "selaed", "seald", "openned"; no other word's."""
    same = sorted(word) == sorted(deed) or len(word) != len(deed)
    return same and set(word) <= set(deed) and one_slip(word, deed) and word not in vocabulary()


def is_spelling_slip(said: str, meant: str) -> bool:
    """Whether a word one slip away keeps the first letter, and has none that is another's."""
    if len(said) == len(meant):
        return said[0] == meant[0] and sorted(said) == sorted(meant)
    return said[0] == meant[0] and len(said) < len(meant)


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


def words_in(*texts: str) -> frozenset[str]:
    """The words of some texts, as a set."""
    return frozenset(_split(texts))


def _split(texts: Iterable[str]) -> Iterator[str]:
    for text in texts:
        yield from text.split()
