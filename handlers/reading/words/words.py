"""A message cut into words: lower case, short forms opened, signs apart."""

import re
import unicodedata
from collections.abc import Callable, Iterable, Sequence
from functools import lru_cache, partial
from typing import NamedTuple

from handlers.reading.words.madeplain import made_plain
from handlers.reading.words.ownwords import own_words

READ_AT_MOST = 4000
"""Characters of a message that are read; people's reports are far shorter, and the rest is left."""

WORDS_AT_MOST = 1500
"""Words and signs of a message that are read: a text of letters has fewer, one of signs alone may
have thousands."""

_PIECE = re.compile(
    r"[A-Za-z]++(?![^\s,.!?])"  # a word of plain letters: most are found at once
    r"|\d{4}-\d\d?-\d\d?"  # an ISO date stays whole
    r"|(?:m|ft|cm|M|FT)[2²](?!\w)"  # m2
    r"|(?<![^\s(~≈+=-])\.\d+"  # .5
    r"|\d+(?:[.,]\d+)?[eE][+-]?\d{1,3}(?!\w)"  # 1e3
    r"|\d+(?:[.,:/⁄]\d+)*"  # 1,250  1.5  20:15  1/3  15/8/2026
    r"|[^\W\d_]+(?:['’][^\W\d_]+)*"  # words, with their apostrophes
    r"|\n+|[^\w\s]|_"  # signs, one at a time; the end of a line counts
)

_VULGAR = {
    sign: f" {a}/{b} "
    for sign, (a, b) in {
        "½": (1, 2), "⅓": (1, 3), "⅔": (2, 3), "¼": (1, 4), "¾": (3, 4), "⅛": (1, 8),
        "⅜": (3, 8), "⅝": (5, 8), "⅞": (7, 8), "⅕": (1, 5), "⅖": (2, 5), "⅗": (3, 5), "⅘": (4, 5),
    }.items()
}  # fmt: skip
_CLEAN = {ord(sign): text for sign, text in _VULGAR.items()} | {
    ord("‘"): "'", ord("’"): "'", ord("ʼ"): "'", ord("`"): "'", ord("“"): '"', ord("”"): '"',
    ord("–"): "-", ord("‑"): "-", ord("−"): "-", ord("\u200b"): None, ord("\u200d"): None,
    ord("\ufe0f"): None, ord("\u20e3"): None, ord("×"): "x", ord("，"): ",", ord("．"): ".",
    ord("…"): " . ", ord("º"): "°",
}  # fmt: skip

# What an apostrophe stands for; "n't" is kept in one piece with its verb ("didnt").
_TAILS = {"ll": "will", "re": "are", "ve": "have", "d": "'d", "m": "am", "s": "'s"}
_OPENED = {
    "ive": ("i", "have"), "im": ("i", "am"), "youre": ("you", "are"), "youve": ("you", "have"),
    "theyre": ("they", "are"), "theyve": ("they", "have"), "weve": ("we", "have"),
    "restarted": ("started", "again"), "restarting": ("starting", "again"),
    "gonna": ("going", "to"), "gunna": ("going", "to"), "gotta": ("got", "to"),
    "wanna": ("want", "to"), "thats": ("that", "is"), "whats": ("what", "is"),
    "hows": ("how", "is"), "wheres": ("where", "is"), "whens": ("when", "is"),
    "whos": ("who", "is"), "theres": ("there", "is"), "heres": ("here", "is"),
    "shes": ("she", "is"), "hes": ("he", "is"), "itll": ("it", "will"), "youll": ("you", "will"),
    "theyll": ("they", "will"), "cannot": ("cant",), "lemme": ("let", "me"), "kinda": ("kind",),
    "didn": ("didnt",), "innit": ("innit",), "ima": ("i", "will"), "imma": ("i", "will"),
    "finna": ("going", "to"), "tryna": ("trying", "to"), "outta": ("out", "of"),
    "lotta": ("lot", "of"), "coupla": ("couple", "of"), "inta": ("into",), "til": ("until",),
    "ain": ("aint",), "dunno": ("dont", "know"), "shoulda": ("should", "have"),
    "undr": ("under",), "teh": ("the",), "hte": ("the",), "adn": ("and",), "frm": ("from",),
    "fomr": ("from",), "thw": ("the",), "tht": ("that",), "wits": ("what", "is"),
    "sory": ("sorry",), "blu": ("blue",), "bleu": ("blue",), "opnd": ("opened",),
    "shraed": ("shared",), "ment": ("meant",),
    "srry": ("sorry",), "sorrry": ("sorry",), "whits": ("what", "is"), "taht": ("that",),
    "int": ("in", "the"), "ont": ("on", "the"), "intae": ("into",), "tae": ("to",),
    "inna": ("in",), "ina": ("in",), "wid": ("with",), "di": ("the",),
    "intil": ("into",),
    "oot": ("out",), "aff": ("off",), "fae": ("from",), "frae": ("from",), "wi": ("with",),
    "doon": ("down",), "noo": ("now",), "wis": ("was",), "gied": ("gave",), "intu": ("into",),
    "pittin": ("putting",), "addin": ("adding",), "drainin": ("draining",),
    "wouldve": ("would", "have"), "couldve": ("could", "have"), "shouldve": ("should", "have"),
    "mightve": ("might", "have"), "mustve": ("must", "have"), "whove": ("who", "have"),
    "youd": ("you", "'d"), "theyd": ("they", "'d"), "wouldof": ("would", "have"),
    "thatll": ("that", "will"), "wholl": ("who", "will"), "itd": ("it", "'d"),
    "whod": ("who", "'d"),
    "wiv": ("with",), "wiff": ("with",), "liqud": ("liquid",), "liquied": ("liquid",),
    "likwid": ("liquid",), "drianed": ("drained",), "burried": ("buried",),
    "coulda": ("could", "have"), "woulda": ("would", "have"), "id": ("i", "'d"),
}  # fmt: skip


class Word(NamedTuple):
    """One word, number or sign of a message."""

    norm: str
    """Lower case, without accents or apostrophes."""
    text: str
    """As written."""
    start: int
    """Where it begins in the cleaned text."""
    end: int
    kind: str
    """`word`, `number` or `sign`."""


def norms_in(words: Iterable[Word]) -> list[str]:
    """The norms of some words."""
    return [word.norm for word in words]


_STRONG = re.compile(r"(?<!\S)(\*\*|__)(?=\S)([^*_\n]+)(?<=\S)\1(?!\w)")
"""Words in bold."""


_WITH = re.compile(r"\bw/(?!o\b) ?(?=\w)")
""" "Topped the shed w/ 1 kg of bread"."""


_NOUGHTS = re.compile(r"(?<=\d)[oO]+(?=[\doO]* ?(?:ml|mls|g|gr|grams|kg|l)\b)")
""" "Drained 3oo ml": letters for noughts, before a unit."""


_UNIT = r"(?:kg|kgs|kilos?|g|gr|grams|lbs?|oz|ml|l)"
_RANGED = re.compile(rf"(?<=\d)( ?{_UNIT})[-–](?=\d[\d.,]* ?{_UNIT}\b)", re.IGNORECASE)
""" "1kg-2kg": from the one to the other; "1 kg 2 kg" is none."""


def cleaned(text: str) -> str:
    """The stretch of a message that is read, with typographic signs made plain.

    What is not the sender's own report, as lines quoted or struck through, is left out.
    """
    text = own_words(text[:READ_AT_MOST])
    if "**" in text or "__" in text:
        text = _STRONG.sub(r"\2", text)
    if "oo" in text or "o ml" in text or "o g" in text:
        text = _NOUGHTS.sub(lambda found: "0" * len(found[0]), text)
    if "-" in text or "–" in text:
        text = _RANGED.sub(r"\1 - ", text)
    if "w/" in text:
        text = _WITH.sub("with ", text)
    text = made_plain(text)
    if text.isascii():
        return text
    return unicodedata.normalize("NFC", text).translate(_CLEAN)


def words_of(text: str) -> list[Word]:
    """The words of a cleaned text, in order, as far as they are read."""
    out: list[Word] = []
    begin = 0
    for unspaced in text.split(" "):
        rows = _short(unspaced) if len(unspaced) <= _SHORT else _rows(unspaced)
        for norm, written, start, end, kind in rows:
            if kind == "number" and out and out[-1].norm == "an":
                out[-1] = out[-1]._replace(norm="and")  # "6 pints and 2": said with the d left out
            out.append(_word((norm, written, begin + start, begin + end, kind)))
        begin += len(unspaced) + 1
    return out[:WORDS_AT_MOST]


_Row = tuple[str, str, int, int, str]
_word: Callable[[_Row], Word] = partial(tuple.__new__, Word)
"""Makes a word in half the time that its own constructor takes: there are ten in a message."""


def _rows(unspaced: str) -> list[_Row]:
    """The words of what has no space in it: most often one, whatever stands beside it."""
    out: list[_Row] = []
    for found in _PIECE.finditer(unspaced):
        written, start, end = found[0], found.start(), found.end()
        norm, kind = _alone(written)
        if norm:
            out.append((norm, written, start, end, kind))
        elif kind == "word":
            for norm, said, behind, before in _opened(written):
                out.append((norm, said, start + behind, start + before, kind))
        elif kind == "number" or not _joins(unspaced, start, end):
            out.append((written, written, start, end, kind))
    return out


_SHORT = 24
"""Letters of what is cut into words only once: a group says the same few thousand over and over."""
_short = lru_cache(maxsize=4096)(_rows)


def _joins(text: str, start: int, end: int) -> bool:
    """Whether a hyphen ties two words ("bone-dry", "5-gallon") and not two numbers."""
    if start == 0 or end >= len(text):
        return False
    before, after = text[start - 1], text[end]
    return (before.isalpha() or after.isalpha()) and before.isalnum() and after.isalnum()


_SIGNS = {
    "—": "—", "→": "→", "➡": "→", "⇒": "→", "•": "\n", "￥": "$", "₹": "$", "🪰": "flies",
}  # fmt: skip


def _sign(sign: str) -> str:
    if sign in ".,;:!?()[]\"'-+*&/@#%°=$£€<>~|>":
        return sign
    return _SIGNS.get(sign, "☺")


def _alone(written: str) -> tuple[str, str]:
    """Norm and kind of a piece as it is written; the norm is empty where the piece may be several
    words, or is read by what stands beside it (figures and hyphens)."""
    first = written[0]
    if first.isalpha():
        parts = _opened(written)
        return parts[0][0] if len(parts) == 1 else "", "word"
    if first.isdigit():
        return "", "number"
    if first == "." and len(written) > 1:
        return f"0{written}", "number"
    if first == "-":
        return "", "sign"
    return "\n" if first == "\n" else _sign(first), "sign"


def _opened(written: str) -> tuple[tuple[str, str, int, int], ...]:
    """A written word, its short forms opened ("I'll" is two), each as it is written and with its
    stretch of letters."""
    lower, end = plain(written), len(written)
    if "'" not in lower:
        return tuple((norm, written, 0, end) for norm in _OPENED.get(lower, (lower,)))
    the = lower.index("'") + 1
    if lower[:the] in ("t'", "th'") and len(lower) > _THE_AND_A_WORD:  # "in t'shed"
        word = lower[the:].replace("'", "")
        return (("the", written[:the], 0, the), (word, written[the:], the, end))
    stem, _, tail = lower.rpartition("'")
    if tail == "t" or tail not in _TAILS:
        return ((lower.replace("'", ""), written, 0, end),)
    cut = written.rfind("'") if "'" in written else end
    return (
        (stem.replace("'", ""), written[:cut], 0, cut),
        (_TAILS[tail], written[cut:], cut, end),
    )


_THE_AND_A_WORD = 4
"""Letters of the shortest word with "t'" before it; "t'is" and "t'was" are shorter or known."""


def plain(written: str) -> str:
    """Lower case, without accents."""
    lower = written.lower()
    if lower.isascii():
        return lower
    stripped = unicodedata.normalize("NFKD", lower)
    return "".join(c for c in stripped if not unicodedata.combining(c)) or lower


def norms_of(name: str) -> str:
    """A name as its words are read, one space between."""
    return " ".join(norms_in(words_of(cleaned(name))))


def joined(words: Sequence[Word], i: int) -> bool:
    """Whether word i stands right behind the one before it, without a space."""
    return words[i - 1].end == words[i].start
