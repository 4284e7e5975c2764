"""What is told of a bin that is not named: "sealed it", "white fuzz on top".

In a room of bin keepers such words mean a bin, but only where nothing else is named: each word of
the report must be one of the lists here.
"""

from collections.abc import Collection, Sequence
from itertools import pairwise

from handlers.reading.groups import Group
from handlers.reading.message import Message
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_MEANT = words_in("it its them they her him everything lot mine ours contents")
_FILLING = words_in(
    "i we 's is are was were has have had been being got just also only finally now already "
    "then so and n & all both right properly tight tightly off up down out shut well good the "
    "my our whole thing this that one as of for safely nicely done today , . ! - ( ) ☺ — : "
    "after work dinner lunch breakfast before bed school last first time again too at long "
    "neatly quickly eventually completely fully firmly myself ourselves though to he she ferment "
    "two 2 week weeks fortnight days ten 10 fourteen 14 a about late early earlier very yesterday "
    "yes yep not bad lovely nice happy job"
) | {"\n"}
_STOWED = words_in(
    "put stored stowed tucked away in under cupboard stairs corner labelled labeled dated stuck "
    "shelf pantry dark warm airing place inside next behind boiler indoors moved set aside"
)
_ELSEWHERE = words_in(
    "posted delivered signed mailed sent letter envelope parcel deal bathroom ceiling wall walls "
    "shower window windows fridge freezer car shoes trainers carpet house flat tent cheese bread "
    "toast jam kitchen toilet toilets bedroom pasta meeting match game goal film movie song "
    "office phone inbox emails email paperwork case sink pool boiler radiator battery wound "
    "milk yogurt rug sofa dog cat laundry washing towel towels drain drains river weather"
)
_SEEN_AMONG = _FILLING | words_in(
    "on top inside in there it its surface layer lid when opened open lifted looked checked "
    "look bit some little lots loads of quite really rather slightly much more than before "
    "smell smells smelled smelt smelling stinks stink stinking reeks like kind sort faintly "
    "strong strongly faint faintly i can see noticed found spotted growing grows grown grew "
    "covered all over patch patches spots few no but with underneath under edge edges sides side "
    "round around now getting going gone turned looking looks seems morning evening night and "
    "from mine ours scraps tap spigot came come coming yet still any gets super proper bad "
    "properly pretty so"
)


def is_of_unnamed_bin(
    groups: Sequence[Group], k: int, place: Collection[int] = frozenset()
) -> bool:
    """Whether the verb of the k-th group is done to a bin that the message does not name.

    `place` are indexes of words that only say where it was done.
    """
    group = groups[k]
    if group.verb is None or not _may_be_meant(group.message, place) or "am" in group.norms:
        return False
    if _is_of_many(group.norms):
        return False
    if any(not _is_empty(other) for other in groups[:k]):
        return False
    own = set(_words(group, place))
    if not own <= _FILLING | _MEANT | _STOWED:
        return False
    if not own.isdisjoint(_MEANT) or place:
        return True
    behind = {word for other in groups[k + 1 :] for word in other.norms}
    return behind <= _FILLING | _STOWED


def _is_of_many(norms: Sequence[str]) -> bool:
    """ "They were sealed": no one bin is "they", unless it is said of both or all."""
    many = any(pair in _MANY for pair in pairwise(norms))
    return many and _EVERY.isdisjoint(norms)


_MANY = {("they", "were"), ("they", "are"), ("they", "'re")}
_EVERY = words_in("both all")


def names_nothing_else(group: Group) -> bool:
    """Whether the group names nothing that has no place in a report of a bin."""
    return set(_words(group)) <= _FILLING | _MEANT | _STOWED | _OFF


_OFF = words_in("from tap spigot tray into jug jar bottle cup juice liquid less more nearly almost")


def is_seen_in_unnamed_bin(groups: Sequence[Group], k: int) -> bool:
    """Whether what the k-th group says was seen or smelt must be of a bin nobody named."""
    group = groups[k]
    message = group.message
    if not _may_be_meant(message) or group.sense == "ask":
        return False
    sentence = message.sentences[group.clauses[0].sentence]
    return is_only_of_bin(message, sentence.start, sentence.end)


def is_only_of_bin(message: Message, start: int, end: int) -> bool:
    """Whether words[start:end] name nothing but signs, and what they are seen on in a bin."""
    held = indexes(message.signs, message.days)
    said = {*unheld(message.norms, held, start, end)}
    return said <= _SEEN_AMONG and said.isdisjoint(("this", "that"))


def _may_be_meant(message: Message, place: Collection[int] = ()) -> bool:
    """Whether the message names neither a bin nor another thing that it could be about."""
    named = any(b.name is not None and b.start not in place for b in message.bins)
    quoted = '"' in message.norms or any(c.sense == "said" for c in message.clauses)
    return not (named or quoted) and _ELSEWHERE.isdisjoint(message.said)


def _is_empty(group: Group) -> bool:
    return set(_words(group)) <= _FILLING


def _words(group: Group, place: Collection[int] = ()) -> list[str]:
    """The words of the group without its verb, its days, its amounts and the members named."""
    message = group.message
    held = indexes(group.days, group.amounts, message.members) | set(place)
    if group.verb is not None:
        held |= set(range(group.verb.start, group.verb.end))
    return unheld(message.norms, held, group.start, group.end)
