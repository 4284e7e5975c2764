"""Several bins begun in one message, each with its size: "opened shed, 20 L, and blue, 12 L"."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Drain, Layer, Open
from handlers.reading.bins.sizes import SMALLEST, is_shared_behind
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS, PLACE_NAMES, TOLD_BY
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import vocabulary, words_in

INTRODUCED = "bins told with their sizes"
"""The rule of bins that are only told of (`introduced`), which holds whatever its score."""
BETWEEN = BIN_WORDS | words_in(
    ", ( : - – — = is 's was of at holds takes fits a an about one size sized which that"
)
"""Words between a bin's name and its size."""
BEFORE = words_in(
    ", ( ) : ; . - – — and & n + plus then also with the a an our my another new opened started "
    "open start begun is are both one got have bins two three four call called named"
) | {"\n", "•"}
"""Words before a new bin's name that are none of it."""
_NO_NAMES = words_in(
    "it its like for first last with to from into how much than maybe around only just some which "
    "this there here your his her their all"
)
_LONGEST_NAME = 2
BINS = words_in("bins buckets pails tubs caddies drums barrels kegs crocks")


def all_opened(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts with an opening for each bin that is told with its size, and no size as a deed."""
    opened = next((act for act in acts if isinstance(act, Open)), None)
    if opened is None:
        return list(acts)
    sizes = sized(message) or _named_in_a_row(message, opened)
    if len(sizes) < 2:
        return [act for act in acts if not _is_size_of(act, opened)]
    of_all = opened.shared if len(set(sizes.values())) == 1 else None
    begun = [
        replace(
            opened,
            bin=name,
            capacity_l=size,
            shared=_is_shared(message, name) if of_all is None else of_all,
            rules=(INTRODUCED,),
        )
        for name, size in sizes.items()
    ]
    return [*begun, *(act for act in acts if not _is_of_sizes(act, sum(sizes.values())))]


def _is_shared(message: Message, name: str) -> bool | None:
    """ "Shed, 25 L, mine, and yard, 30 L, shared": whose a bin is, told behind its size."""
    size = next((a for a in message.amounts if _name_before(message, a) == name), None)
    return None if size is None else is_shared_behind(message, size)


def _named_in_a_row(message: Message, opened: Open) -> dict[str, float]:
    """ "Opened two five-gallon pails, Maple and Cedar", "Oak and Elm, 10 L each"."""
    size = [a for a in message.amounts if a.quantity == "volume" and a.value == opened.capacity_l]
    if opened.bin is None or len(size) != 1 or not opened.bin[0].isupper():
        return {}
    first = opened.bin.split()[0]
    at = next((i for i, word in enumerate(message.words) if word.text == first), None)
    if at is None:
        return {}
    names, end = [opened.bin], at + len(opened.bin.split())
    while _leads_name(message, end):
        end += 1 + (message.norms[end + 1] in _JOINTS)
        names.append(message.words[end].text)
        end += 1
    number = read_number(message.words, size[0].start)
    counted = number is not None and number.value == len(names) and number.end < size[0].end - 1
    if not (counted or _is_of_each(message, size[0])) or not _ends_there(message, end):
        return {}
    return dict.fromkeys(names, size[0].value / (len(names) if counted else 1))


_JOINTS = words_in(", and & n")


def _leads_name(message: Message, i: int) -> bool:
    """Whether a comma or an "and" stands there with a name behind, of neither member nor day."""
    if message.norms[i : i + 1] == [] or message.norms[i] not in _JOINTS:
        return False
    at = i + 1 + (message.norms[i + 1 : i + 2] == ["and"])
    word = message.words[at] if at < len(message.words) else None
    taken = indexes(message.members, message.days, message.amounts)
    return word is not None and word.text[:1].isupper() and word.text != "I" and at not in taken


def _ends_there(message: Message, i: int) -> bool:
    """Whether nothing is told of the last name but when it was, or how big it is."""
    behind = message.norms[i : i + 1]
    return (
        not behind
        or not behind[0].isalpha()
        or behind[0] in ("today", "both", "this", "yesterday")
        or i in indexes(message.days)
    )


def _is_size_of(act: Act, opened: Open) -> bool:
    """Whether a bin's size was taken for what was drawn from it, or put in where one told of it."""
    amiss = Drain | Layer if INTRODUCED in opened.rules else Drain
    if not isinstance(act, amiss) or act.volume_l is None:
        return False
    return (act.bin, act.volume_l) == (opened.bin, opened.capacity_l)


_DRAWING = words_in("drain draw tap collect fill pour empty take")
TOLD = frozenset({"none", "did", "habit"})


def _is_of_sizes(act: Act, whole: float) -> bool:
    """Whether an act is one of the openings, or takes their sizes for what was put in or drawn."""
    if isinstance(act, Layer | Drain):
        return act.volume_l is not None and act.volume_l <= whole
    return isinstance(act, Open)


def sized(message: Message) -> dict[str, float]:
    """Litres by name; empty unless every volume is the size of a bin that is named before it."""
    measured = message.measured()
    counted = [a for a in measured if a.vessel and message.norms[a.end - 1] in BINS]
    volumes = [a for a in measured if a.quantity == "volume" and a not in counted]
    if len(volumes) == 1 and _is_of_each(message, volumes[0]):
        if listed := _listed(message, volumes[0]):
            whole = volumes[0].value
            return dict.fromkeys(listed, whole / len(listed) if volumes[0].counted else whole)
        return {ref.name: volumes[0].value for ref in message.bins if ref.name is not None}
    if any(c.verb and c.verb.verb.plain in _DRAWING for c in message.clauses):
        return {}
    if any(message.sense_at(a.start) not in TOLD for a in volumes):
        return {}
    if len(volumes) < 2 or any(a.vessel or a.value < SMALLEST for a in volumes):
        return {}
    if len(measured) > len(volumes) + len(counted):
        return {}
    names = [_name_before(message, a) for a in volumes]
    found = {name: a.value for name, a in zip(names, volumes, strict=True) if name is not None}
    return found if len(found) == len(volumes) else {}


def _listed(message: Message, size: Amount) -> list[str]:
    """ "Two buckets, the green one and the one on the porch, both 20 L": the names between the word
    for bins and the size of each; none unless every word there is of a name.
    """
    norms = message.norms
    at = next((i for i, norm in enumerate(norms[: size.start]) if norm in BINS), size.start)
    if norms[at + 1 : at + 2] not in _LISTING:
        return []
    end = size.start - (norms[size.start - 1] in ("both", "all"))
    parts = " ".join("," if norm in _PARTING else norm for norm in norms[at + 2 : end]).split(",")
    said = [part for part in map(str.strip, parts) if part]
    named = [_ONE_CALLED.fullmatch(part) for part in said]
    found = [match["place"] or match["name"] for match in named if match is not None]
    number = read_number(message.words, at - 1) if at else None
    counted = number is None or number.value == len(found)
    new = all(name in TOLD_BY | PLACE_NAMES or name not in vocabulary() for name in found)
    if len(found) < max(2, len(said)) or len(set(found)) < len(found) or not (counted and new):
        return []
    spelled = {word.norm: word.text for word in message.words[at:end]}
    return [spelled[name] for name in found]


_PARTING = _JOINTS | words_in(") : - —")
_LISTING = ([","], [":"], ["("], ["-"], ["—"])
_VESSEL = "|".join(sorted(BIN_WORDS | {"one"}))
_ONE_CALLED = Late(
    r"(?:a |the |an |our |my )?"
    rf"(?:(?:{_VESSEL}) (?:on|in|at|by|under) (?:the |our |my )?(?P<place>[^\W\d_]+)"
    rf"|(?P<name>[^\W\d_]+)(?: (?:{_VESSEL}))?)"
)


def _name_before(message: Message, size: Amount) -> str | None:
    """The bin whose name stands before its size, with nothing else between."""
    norms, at = message.norms, size.start
    ends = {ref.end: ref for ref in (*message.bins, *message.named) if ref.name is not None}
    while at > 0 and at not in ends and norms[at - 1] in BETWEEN:
        at -= 1
    if at in ends:
        ref = ends[at]
        return ref.name if ref.start == 0 or norms[ref.start - 1] in BEFORE else None
    start = at
    while start > max(0, at - _LONGEST_NAME) and is_of_name(norms[start - 1]):
        start -= 1
    ends_well = start == 0 or norms[start - 1] in BEFORE
    called = norms[at : at + 1] == ["one"] or not BIN_WORDS.isdisjoint(norms[at : at + 1])
    food = not called and any(start < i.end and i.start < at for i in message.items)
    if start == at or not ends_well or (food and not message.words[start].text[0].isupper()):
        return None
    return message.text(start, at)


def _is_of_each(message: Message, size: Amount) -> bool:
    """ "20 L each", "both 20 L"."""
    beside = message.norms[size.end : size.end + 1], message.norms[size.start - 1 : size.start]
    return beside[0] in (["each"], ["apiece"]) or beside[1] in (["both"], ["all"])


def is_of_name(norm: str) -> bool:
    """Whether a word may be of a bin's name that stands before its size."""
    return norm[0].isalpha() and norm not in BEFORE | BETWEEN | _NO_NAMES
