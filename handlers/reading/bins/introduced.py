"""Bins only told of, with their sizes: "our bins: shed 20 L, blue 12 L", "mine is the blue one"."""

from handlers.reading.acts import Open
from handlers.reading.bins.namefrom import is_capital
from handlers.reading.bins.sizes import SMALLEST, SMALLEST_BARE, is_shared_behind
from handlers.reading.deeds.openings import (
    BEFORE,
    BETWEEN,
    BINS,
    INTRODUCED,
    TOLD,
    is_of_name,
    sized,
)
from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS, COLOURS, PLACE_NAMES, TOLD_BY
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import vocabulary, words_in


def introduced(message: Message) -> Open | None:
    """ "Two bins here: kitchen 15 L, garage 30 L": the first of bins that nobody named before.

    So too the one bin that somebody tells to be theirs, or to be one more, with its size.
    """
    if message.has(_WHOSE) and (one := _of_somebody(message)) is not None:
        return one
    if message.has(_FURTHER) and (one := _one_more(message)) is not None:
        return one
    listed = _is_list_of_known(message)
    if not listed and not message.has(BINS):
        return None
    if not listed and any(ref.known for ref in (*message.bins, *message.named)):
        return None
    verbs = [clause.verb.verb.plain for clause in message.clauses if clause.verb is not None]
    if any(clause.sense not in TOLD for clause in message.clauses) or not _HAVING.issuperset(verbs):
        return None
    found = sized(message)
    if len(found) < 2:
        return None
    name, size = next(iter(found.items()))
    return Open(bin=name, capacity_l=size, on=message.today, rules=(INTRODUCED,))


_HAVING = words_in("have get be run use keep start open own")


def _is_list_of_known(message: Message) -> bool:
    """ "Our bins: blue 16 L, green 20 L", "we have a blue bin (15 L) and a green bin (20 L)": bins
    that are known may be told again so.
    """
    if message.items or message.asked:
        return False
    if message.norms[:3] in _LISTED:
        return True
    if message.norms[:1] not in _WE or not message.has(_KEPT):
        return False
    held = indexes(message.measured(), message.bins, message.named)
    rest = {norm for i, norm in enumerate(message.norms) if i not in held}
    sizes = [a.value for a in message.measured()]
    sure = len(sizes) > 1 and min(sizes) >= SMALLEST_BARE
    return sure and rest <= BEFORE | BETWEEN | _KEPT | _AROUND


_LISTED = [
    [whose, vessels, joint]
    for whose in ("our", "the", "my")
    for vessels in sorted(BINS)
    for joint in (":", "is", "are")
]
_WE = (["we"], ["i"])
_KEPT = words_in("have keep use run own")
_AROUND = words_in("we i each both here of at ours now ) .")


def _one_more(message: Message) -> Open | None:
    """ "Third one, the white one, 20 L": one bin more, its name and its size, and nothing else."""
    volumes = message.measured()
    if len(volumes) != 1 or message.items or message.asked:
        return None
    size, norms = volumes[0], message.norms
    if size.quantity != "volume" or size.vessel or size.value < SMALLEST_BARE:
        return None
    if not _BEHIND_SIZE.issuperset(norms[size.end :]):
        return None
    told = _ONE_MORE.search(" ".join((*norms[: size.start], "")))
    if told is None:
        return None
    at = told.string[: told.start("name")].count(" ")
    word, others = message.words[at], indexes(message.members, message.days)
    named = is_capital(message, at) and word.norm not in vocabulary() and at not in others
    if not (named or word.norm in TOLD_BY | PLACE_NAMES) or not is_of_name(word.norm):
        return None
    known = next((ref.name for ref in message.bins if ref.known and ref.start == at), None)
    return Open(
        bin=known or word.text,
        capacity_l=size.value,
        shared=is_shared_behind(message, size),
        on=message.today,
        rules=(INTRODUCED,),
    )


_VESSEL = "|".join(sorted(BIN_WORDS | {"one"}))
_FURTHER = words_in("second third fourth fifth sixth")
_ONE_MORE = Late(
    rf"^(?:(?:and|we|i|have|got|a|our|the|my|there|'s|is|now) )*(?:{'|'.join(sorted(_FURTHER))}) "
    rf"(?:{_VESSEL}) (?:, |: |\( |- |— |is |'s )+(?:(?:the|a|it|is|'s|called|named) )*"
    rf"(?P<name>[^\W\d_]+) (?:(?:{_VESSEL}) )?(?:, |: |\( |- |— |is |it |'s |holds |about |a )*$"
)
_BEHIND_SIZE = words_in(". ! , ) shared communal mine one bin for all everyone everybody")


def _of_somebody(message: Message) -> Open | None:
    """ "Mine is the blue one, 15 L", "my bin is the blue 15 L one": whose a bin is, and its size.

    Nothing else may be told: "mine is the blue one, 15 L added" is no size.
    """
    norms = message.norms
    volumes = [a for a in message.measured() if a.quantity == "volume" and a.value >= SMALLEST]
    if len(volumes) != 1 or len(message.measured()) != 1 or message.items:
        return None
    if message.asked:
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
