"""One who bears a bin's name, and did something to what is somebody's."""

from handlers.reading.deeds.toldday import WHOSE
from handlers.reading.groups import Group
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.vocabulary import words_in


def is_of_namesake(group: Group) -> bool:
    """ "Dolly's buried her mother": one who bears a bin's name did it, to what is somebody's."""
    verb = group.verb
    if verb is None or verb.verb.form != "past" or verb.verb.plain not in _OF_BINS:
        return False
    norms = group.message.norms
    whose = norms[verb.end : verb.end + 1] and norms[verb.end] in WHOSE - {"the"}
    if not whose or verb.end + 1 >= group.end or any(b.start >= verb.end for b in group.bins):
        return False
    return any(
        b.end <= verb.start
        and BIN_WORDS.isdisjoint(norms[b.start : b.end])
        and set(norms[b.end : verb.start]) <= _HAS
        for b in group.bins
    )


_OF_BINS = frozenset({"bury", "drain", "seal"})
_HAS = words_in("'s has have had just")
