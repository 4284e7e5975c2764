"""Several bins begun in one message, each with its size: "opened shed, 20 L, and blue, 12 L"."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Drain, Layer, Open
from handlers.reading.amounts import Amount
from handlers.reading.binwords import BIN_WORDS, COLOURS
from handlers.reading.message import Message
from handlers.reading.numbers import read_number
from handlers.reading.sizes import SMALLEST, is_shared_behind
from handlers.reading.spans import indexes
from handlers.reading.vocabulary import words_in

INTRODUCED = "bins told with their sizes"
"""The rule of `introduced`, which holds whatever its score."""
_BETWEEN = BIN_WORDS | words_in(
    ", ( : - – — = is 's was of at holds takes fits a an about one size sized which that"
)
"""Words between a bin's name and its size."""
_BEFORE = words_in(
    ", ( ) : ; . - – — and & n + plus then also with the a an our my another new opened started "
    "open start begun is are both one got have bins two three four call called named"
) | {"\n", "•"}
"""Words before a new bin's name that are none of it."""
_NO_NAMES = words_in(
    "it its like for first last with to from into how much than maybe around only just some which "
    "this there here your his her their all"
)
_LONGEST_NAME = 2
_BINS = words_in("bins buckets pails tubs caddies drums barrels kegs crocks")


def all_opened(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts with an opening for each bin that is told with its size, and no size as a deed."""
    opened = next((act for act in acts if isinstance(act, Open)), None)
    if opened is None:
        return list(acts)
    sized = _sized(message) or _named_in_a_row(message, opened)
    if len(sized) < 2:
        return [act for act in acts if not _is_size_of(act, opened)]
    of_all = opened.shared if len(set(sized.values())) == 1 else None
    begun = [
        replace(
            opened,
            bin=name,
            capacity_l=size,
            shared=_is_shared(message, name) if of_all is None else of_all,
            rules=(INTRODUCED,),
        )
        for name, size in sized.items()
    ]
    return [*begun, *(act for act in acts if not _is_of_sizes(act, sum(sized.values())))]


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


def introduced(message: Message) -> Open | None:
    """ "Two bins here: kitchen 15 L, garage 30 L": the first of bins that nobody named before.

    So too the one bin that somebody tells to be theirs, with its size.
    """
    if message.has(_WHOSE) and (one := _of_somebody(message)) is not None:
        return one
    if not message.has(_BINS):
        return None
    asked = any(sentence.asked for sentence in message.sentences)
    # bins that are known may be told again so
    listed = message.norms[:3] in _LISTED and not message.items and not asked
    if not listed and any(ref.known for ref in (*message.bins, *message.named)):
        return None
    verbs = [clause.verb.verb.plain for clause in message.clauses if clause.verb is not None]
    if any(clause.sense not in _TOLD for clause in message.clauses) or not _HAVING.issuperset(
        verbs
    ):
        return None
    sized = _sized(message)
    if len(sized) < 2:
        return None
    name, size = next(iter(sized.items()))
    return Open(bin=name, capacity_l=size, on=message.today, rules=(INTRODUCED,))


def _of_somebody(message: Message) -> Open | None:
    """ "Mine is the blue one, 15 L", "my bin is the blue 15 L one": whose a bin is, and its size.

    Nothing else may be told: "mine is the blue one, 15 L added" is no size.
    """
    norms = message.norms
    volumes = [a for a in message.measured() if a.quantity == "volume" and a.value >= SMALLEST]
    if len(volumes) != 1 or len(message.measured()) != 1 or message.items:
        return None
    if any(sentence.asked for sentence in message.sentences):
        return None
    size = volumes[0]
    spans = {ref.name: (ref.start, ref.end) for ref in message.bins if ref.name is not None}
    colours = {norms[i]: (i, i + 1) for i in range(size.start) if norms[i] in COLOURS}
    if len(named := spans or colours) != 1:
        return None
    name, (start, end) = next(iter(named.items()))
    rest = [n for i, n in enumerate(norms) if i not in indexes([size]) and not start <= i < end]
    led = " ".join((*norms[:start], ""))
    if size.start < start or not led.startswith(_THEIRS) or not _OF_WHOSE.issuperset(rest):
        return None
    return Open(bin=name, capacity_l=size.value, on=message.today, rules=(INTRODUCED,))


_WHOSE = words_in("mine ours my our")
_THEIRS = tuple(
    f"{whose} {verb} "
    for whose in ("mine", "ours", *(f"{o} {b}" for o in ("my", "our") for b in ("bin", "bucket")))
    for verb in ("is", "'s")
)
_OF_WHOSE = _WHOSE | BIN_WORDS | words_in("is 's the a an one , . ! ( ) size of about")
_LISTED = [
    [whose, vessels, joint]
    for whose in ("our", "the", "my")
    for vessels in sorted(_BINS)
    for joint in (":", "is", "are")
]
_DRAWING = words_in("drain draw tap collect fill pour empty take")
_HAVING = words_in("have get be run use keep start open own")
_TOLD = frozenset({"none", "did", "habit"})


def _is_of_sizes(act: Act, whole: float) -> bool:
    """Whether an act is one of the openings, or takes their sizes for what was put in or drawn."""
    if isinstance(act, Layer | Drain):
        return act.volume_l is not None and act.volume_l <= whole
    return isinstance(act, Open)


def _sized(message: Message) -> dict[str, float]:
    """Litres by name; empty unless every volume is the size of a bin that is named before it."""
    measured = message.measured()
    counted = [a for a in measured if a.vessel and message.norms[a.end - 1] in _BINS]
    volumes = [a for a in measured if a.quantity == "volume" and a not in counted]
    if len(volumes) == 1 and _is_of_each(message, volumes[0]):
        return {ref.name: volumes[0].value for ref in message.bins if ref.name is not None}
    if any(c.verb and c.verb.verb.plain in _DRAWING for c in message.clauses):
        return {}
    if any(message.sense_at(a.start) not in _TOLD for a in volumes):
        return {}
    if len(volumes) < 2 or any(a.vessel or a.value < SMALLEST for a in volumes):
        return {}
    if len(measured) > len(volumes) + len(counted):
        return {}
    names = [_name_before(message, a) for a in volumes]
    found = {name: a.value for name, a in zip(names, volumes, strict=True) if name is not None}
    return found if len(found) == len(volumes) else {}


def _name_before(message: Message, size: Amount) -> str | None:
    """The bin whose name stands before its size, with nothing else between."""
    norms, at = message.norms, size.start
    ends = {ref.end: ref for ref in (*message.bins, *message.named) if ref.name is not None}
    while at > 0 and at not in ends and norms[at - 1] in _BETWEEN:
        at -= 1
    if at in ends:
        ref = ends[at]
        return ref.name if ref.start == 0 or norms[ref.start - 1] in _BEFORE else None
    start = at
    while start > max(0, at - _LONGEST_NAME) and _is_of_name(norms[start - 1]):
        start -= 1
    ends_well = start == 0 or norms[start - 1] in _BEFORE
    called = norms[at : at + 1] == ["one"] or not BIN_WORDS.isdisjoint(norms[at : at + 1])
    food = not called and any(start < i.end and i.start < at for i in message.items)
    if start == at or not ends_well or (food and not message.words[start].text[0].isupper()):
        return None
    return message.text(start, at)


def _is_of_each(message: Message, size: Amount) -> bool:
    """ "20 L each", "both 20 L"."""
    beside = message.norms[size.end : size.end + 1], message.norms[size.start - 1 : size.start]
    return beside[0] in (["each"], ["apiece"]) or beside[1] in (["both"], ["all"])


def _is_of_name(norm: str) -> bool:
    return norm[0].isalpha() and norm not in _BEFORE | _BETWEEN | _NO_NAMES
