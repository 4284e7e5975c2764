"""A list of bins in pieces: names, sizes, vessels, people, and the small words between them."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from handlers.reading.calendar.daywords import ORDINALS
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS, PLACE_NAMES, SIDES, TOLD_BY, BinRef
from handlers.reading.words.spans import indexes
from handlers.reading.words.titles import end_of_titled
from handlers.reading.words.vocabulary import vocabulary, words_in

VESSELS = words_in("bins buckets pails tubs caddies drums barrels kegs crocks containers totes")
_KINDS: Mapping[str, frozenset[str]] = {
    "comma": words_in(", - – — ( ) : /"),
    "stop": words_in(". ; ! •") | {"\n"},
    "and": words_in("and & n + plus und y et aur oraz"),
    "the": words_in("the a an our my your its his her"),
    "one": words_in("one"),
    "ones": words_in("ones"),
    "each": words_in("each both all apiece"),
    "is": words_in("is 's s are was ="),
    "called": words_in("called named name labelled labeled lettered marked"),
    "look": words_in(
        "big small little wee large huge tiny tall short old new plain plastic metal lidded proper "
        "second third fourth fifth sixth first last other another more"
    ),
    "except": words_in("except but"),
    "where": words_in("in on by under at near beside behind outside beneath next"),
    "lives": words_in("lives live stands stand sits sit kept living standing sitting"),
    "for": words_in("for keeper"),
    "keeps": words_in("has have share keeps keep looks does do minds runs belongs belong after"),
    "holds": words_in("holds takes fits hold take"),
    "it": words_in(
        "it he she they that which this who them these those there here i we ours theirs hers"
    ),
    "mine": words_in("mine me myself"),
    "shared": words_in("shared communal everyone everybody public"),
    "sealed": words_in("sealed"),
    "own": words_in("own brought"),
    "joins": words_in("joining joined"),
    "share": words_in("half third thirds quarter quarters"),
    "full": words_in("full"),
    "open": words_in("opened open started start set register registered begun"),
    "more": words_in(
        "of size sized about around roughly up got also just so ok okay well right far as use "
        "using us at neighbour neighbor friend hi hello hey folks morning evening currently please "
        "already inside say capacity btw fyi finally again now yay lol "
        "numbered holding total altogether pls then too mostly nearly almost '"
    )
    | {'"'},
}
"""Kinds of small words; a word of two kinds is of the first."""
_KIND_OF = {norm: kind for kind, norms in reversed([*_KINDS.items()]) for norm in norms}
_NUMBERED = words_in("flat room plot class unit apartment apt house level")
_FLOORS = words_in("ground top upper lower middle")
_ORDINAL_ENDS = words_in("st nd rd th")
_WITH = ("w",)


@dataclass(frozen=True, slots=True)
class Piece:
    """Words start to end of a message, and what they are in a list of bins."""

    kind: str
    start: int
    end: int
    said: str = ""
    """The name of a bin or of a person; for a small word, that word."""
    litres: float = 0.0
    number: float = 0.0
    """A bare number, how many there are of that size, or kilos."""


def pieces_of(message: Message) -> list[Piece]:
    """The whole message in pieces; a word that belongs to no list of bins is of the kind "word"."""
    out: list[Piece] = []
    i = 0
    while i < len(message.words):
        out += _numbered_in_a_row(message, i) or [_piece(message, i)]
        i = out[-1].end
    return out


def _numbered_in_a_row(message: Message, i: int) -> list[Piece]:
    """ "Bins 1, 2 and 3", "six bins, numbered 1 to 6": a name for each number, if one behind the
    word for bins begins at word i.
    """
    norms, words = message.norms, message.words
    led = norms[i - 1] if i else ""
    vessel = next((norm for norm in reversed(norms[:i]) if norm in VESSELS), "")
    behind = led in (",", "(", ":", "is", "are") and i > 1 and norms[i - 2] in VESSELS
    if not vessel or not (led in VESSELS or led in _TELL_NUMBERS or behind):
        return []
    one = "caddy" if vessel == "caddies" else vessel.removesuffix("s")
    if lettered := _lettered_in_a_row(message, i):
        end = i + 2 * len(lettered) - 1
        return [p for x in lettered for p in _parted(Piece("name", i, end, f"{one} {x}"))]
    numbers: list[int] = []
    end, held = i, indexes(message.amounts)
    for at in range(i, len(words), 2):
        if words[at].kind != "number" or not norms[at].isdecimal() or at in held:
            break
        joint = norms[at - 1] if numbers else ""
        through = joint in _THROUGH and numbers[-1] < int(norms[at])
        numbers += range(numbers[-1] + 1 if through else int(norms[at]), int(norms[at]) + 1)
        end = at + 1
        if norms[end : end + 1] not in _ROW_JOINTS or len(numbers) > _MOST_NUMBERED:
            break
    if not 1 < len(numbers) <= _MOST_NUMBERED:
        return []
    return [p for x in numbers for p in _parted(Piece("name", i, end, f"{one} {x}"))]


def _parted(name: Piece) -> tuple[Piece, Piece]:
    return name, Piece("comma", name.start, name.end, ",")


def _lettered_in_a_row(message: Message, i: int) -> list[str]:
    """ "A, B and C": the letters of a row that begins at word i, of two at least."""
    letters: list[str] = []
    for at in range(i, len(message.words), 2):
        text = message.words[at].text
        if len(text) > 1 or not text.isupper() or text in letters:
            break
        letters.append(text)
        if message.norms[at + 1 : at + 2] not in _LETTER_JOINTS:
            break
    return letters if len(letters) > 1 else []


_LETTER_JOINTS = [[","], ["and"], ["&"], ["+"]]
_TELL_NUMBERS = words_in(
    "numbered nos numbers called named labelled labeled lettered marked letters"
)
_THROUGH = words_in("to - – through till")
_ROW_JOINTS = [[joint] for joint in (",", "and", "&", "+", *sorted(_THROUGH))]
_MOST_NUMBERED = 30
"""Bins of one group that are told apart by numbers in a row, at most."""


def _piece(message: Message, i: int) -> Piece:
    """The piece that begins at word i."""
    if end := _end_of_unsized(message.norms, i):
        return Piece("more", i, end)
    amount = next((a for a in message.amounts if a.start == i), None)
    if amount is not None and (one := _size(message, amount)):
        return one
    if member := next((m for m in message.members if m.start == i), None):
        return Piece("member", i, member.end, member.name)
    if end := _end_of_numbered(message, i):
        return Piece("name", i, end, message.text(i, end))
    refs = [r for r in (*message.bins, *message.named) if r.start == i]
    ref = next((r for r in refs if r.known or _is_next(r, message)), None)
    if ref is not None and ref.name is not None:
        vessel = ref.plain and ref.end - i > 1 and message.norms[ref.end - 1] in BIN_WORDS
        return Piece("name", i, ref.end - vessel, ref.name)
    if day := next((d for d in message.days if d.start == i), None):
        return Piece("day", i, day.end)
    return _of_one_word(message, i)


def _is_next(ref: BinRef, message: Message) -> bool:
    """ "Yard 2", beside a bin called yard: the number is no size."""
    base, _, number = (ref.name or "").rpartition(" ")
    return ref.plain and number.isdecimal() and base in message.context.bins


def _end_of_unsized(norms: Sequence[str], i: int) -> int:
    """Where "no idea how big" ends; 0 if it does not stand at word i."""
    led = [lead for lead in _UNSURE if norms[i : i + len(lead)] == lead]
    end = i + len(led[0]) if led else 0
    sized = norms[end : end + 2] in (["how", "big"], ["how", "large"], ["what", "size"])
    return end + 2 if led and sized else 0


_UNSURE = (["no", "idea"], ["not", "sure"], ["do", "not", "know"], ["dont", "know"])


def _size(message: Message, amount: Amount) -> Piece | None:
    """ "20 L", "5 gallon bucket", "two 12 L bins"; None for "4 buckets", which counts them."""
    if amount.vessel and not amount.size:
        return None
    if amount.quantity != "volume":
        mass = amount.quantity == "mass" and not amount.negative
        return Piece("mass" if mass else "word", *amount[:2], number=amount.value)
    many = 1.0
    if amount.vessel or amount.counted:
        number = read_number(message.words, amount.start)
        many = number.value if number is not None else 0
        if number is not None and amount.counted and number.end == amount.end - 1:
            many = amount.value / (many * amount.factor or 1)  # "numbered 1 to 4, 15 L each"
    sound = many > 0 and not amount.negative
    litres = amount.value / many if sound else 0
    return Piece("size" if sound else "word", *amount[:2], litres=litres, number=many)


def _end_of_numbered(message: Message, i: int) -> int:
    """Where "flat 2", "bin 3", "4th floor" or "Mr. Stinky" ends; 0 if none begins at word i."""
    norms, words = message.norms, message.words
    if titled := end_of_titled(words, norms, i):
        return titled
    behind = norms[i + 1 : i + 3]
    if norms[i] in ORDINALS.keys() | _FLOORS and behind[:1] == ["floor"]:
        return i + 2
    figure = words[i].kind == "number"
    if figure and behind[:1] and behind[0] in _ORDINAL_ENDS and behind[1:] == ["floor"]:
        return i + 3
    letter = words[i + 1].text if i + 1 < len(words) else ""
    if len(words[i].text) == 1 and words[i].text.isupper() and letter.isdecimal():
        return i + 2 if words[i].end == words[i + 1].start else 0  # "A1"
    if norms[i] in BIN_WORDS and len(letter) == 1 and letter.isupper() and letter != "I":
        return i + 2  # "bin A"
    numbered = norms[i] in _NUMBERED or (norms[i] in BIN_WORDS and i == 0)
    numbered = numbered or (norms[i] in BIN_WORDS and words[i - 1].kind != "word")
    if not numbered or i + 1 >= len(words) or words[i + 1].kind != "number":
        return 0
    if any(a.start <= i + 1 < a.end for a in message.amounts):
        return 0
    joined = i + 2 < len(words) and words[i + 2].start == words[i + 1].end
    return i + 2 + (joined and len(norms[i + 2]) == 1 and norms[i + 2].isalpha())


def _of_one_word(message: Message, i: int) -> Piece:
    word, norm = message.words[i], message.norms[i]
    capital = word.text[:1].isupper()
    if norm == "one" and capital and _is_in_capital(message, i - 1):
        return Piece("name", i, i + 1, word.text)  # "the Old One"
    if word.kind == "number":
        read = read_number(message.words, i)
        alone = read is not None and read.end == i + 1
        return Piece("number" if alone else "word", i, i + 1, number=read.value if read else 0)
    if norm in BIN_WORDS or norm in VESSELS:
        return Piece("vessels" if norm in VESSELS else "vessel", i, i + 1)
    if norm in ("two", "three", "four", "five", "six"):
        read = read_number(message.words, i)
        return Piece("number", i, i + 1, number=read.value if read else 0)
    first = i == 0 or _KIND_OF.get(message.norms[i - 1]) == "stop"
    next_capital = message.words[i + 1 : i + 2] and message.words[i + 1].text[:1].isupper()
    leads_name = capital and not first and next_capital and word.kind == "word" and norm != "i"
    kind = _KIND_OF.get(norm)
    if by_next := _by_the_next(message, i):
        return by_next
    if kind in ("look", "the") and leads_name:
        return Piece("name", i, i + 1, word.text)
    if kind is not None:
        return Piece(kind, i, i + 1, norm)
    named = word.kind == "word" and (
        norm in TOLD_BY | PLACE_NAMES
        or norm not in vocabulary()
        or (capital and not first and not all(w.text.isupper() for w in message.words))
        or (capital and any(w.text == word.text for w in message.words[:i]))
    )
    if named and norm.isalpha() and word.text not in _WITH:
        return Piece("name", i, i + 1, word.text)
    food = next((item for item in message.items if item.start == i), None)
    return Piece("food", i, food.end) if food else Piece("word", i, i + 1, word.text)


def _by_the_next(message: Message, i: int) -> Piece | None:
    """ "Belongs to Bram", "add a bin", "the other by the gate", "the front bin": what a word is by
    those that follow it.
    """
    norm = message.norms[i]
    if norm in ("to", "add") and _is_of_list(message, i):
        return Piece("for" if norm == "to" else "open", i, i + 1, norm)
    if norm in _THE_NEXT and message.norms[i + 1 : i + 2] in _STANDING:
        return Piece("one", i, i + 1, norm)
    if norm in SIDES and _is_of_bin(message, i):
        return Piece("name", i, i + 1, message.words[i].text)
    return None


_THE_NEXT = words_in("other second third last")
_STANDING = [[norm] for norm in ("is", "'s", *sorted(_KINDS["where"] | _KINDS["lives"]))]


def _is_of_bin(message: Message, i: int) -> bool:
    """ "A front bin", "the back one", "two bins: front 20 L and back, 15 L"."""
    behind = message.norms[i + 1] if i + 1 < len(message.norms) else ""
    if behind in BIN_WORDS or behind == "one" or (i > 0 and not behind[:1].isalpha()):
        return True
    return any(amount.start == i + 1 for amount in message.amounts) or behind in _BESIDE_SIDE


_BESIDE_SIDE = words_in("and is")


def _is_in_capital(message: Message, i: int) -> bool:
    """Whether word i is a name's, or a look's that is one: no word for a bin."""
    if i < 0 or message.words[i].kind != "word" or message.norms[i] in BIN_WORDS:
        return False
    return message.words[i].text[:1].isupper()


def _is_of_list(message: Message, i: int) -> bool:
    """ "Belongs to Bram", "add a bin": no other "to" or "add" is of a list of bins."""
    norms = message.norms
    if norms[i] == "to":
        return norms[i - 1 : i] in (["belongs"], ["belong"])
    at = i + 1 + (norms[i + 1 : i + 2] in (["a"], ["the"], ["another"]))
    at += norms[at : at + 1] == ["new"]
    return i == 0 and norms[at : at + 1] in (["bin"], ["bins"])
