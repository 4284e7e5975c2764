"""Members whose names are words as well ("Hope", "Will", "May", "Basil"): where they are meant."""

from collections.abc import Sequence
from functools import lru_cache

from handlers.reading.daywords import MONTHS
from handlers.reading.names import MemberRef
from handlers.reading.vocabulary import verb_words, vocabulary, words_in
from handlers.reading.words import Word


def set_apart(words: list[Word], norms: list[str], members: Sequence[MemberRef]) -> None:
    """Gives each word that is a member's name here a norm that stands in no list of words."""
    for ref in members:
        one_word = ref.end == ref.start + 1 and _is_word(norms[ref.start])
        if one_word and _is_named(words, ref, members):
            norms[ref.start] = words[ref.start].text.capitalize()
            words[ref.start] = words[ref.start]._replace(norm=norms[ref.start])


@lru_cache(maxsize=1024)
def _is_word(norm: str) -> bool:
    return norm in MONTHS or norm in _OF_SENSE or norm in vocabulary()


_OF_SENSE = words_in("will hope may wish")
"""Names that would change the sense of a clause."""


def _is_named(words: Sequence[Word], ref: MemberRef, members: Sequence[MemberRef]) -> bool:
    """Whether a name is written as one, or stands where only somebody does."""
    word, before = words[ref.start], words[ref.start - 1].norm if ref.start else ""
    after = words[ref.end].norm if ref.end < len(words) else ""
    if before == "by" or (ref.start > 1 and words[ref.start - 2].norm == "behalf"):
        return True
    if before in _OF_THINGS or before.isdecimal():
        return False
    if word.norm in MONTHS and (before in _DATING or after.isdecimal()):
        return False
    capital = word.text[:1].isupper() and not word.text[1:].isupper()
    if capital and (before[:1].isalnum() or after in _HIS):
        return True
    joined = after in _AND and any(m.start == ref.end + 1 for m in members)
    joined = joined or (before in _AND and any(m.end == ref.start - 1 for m in members))
    did = after.endswith("ed") and (capital or after in verb_words())
    return joined or did or after in _DID


_AND = words_in("and & n")
_OF_THINGS = words_in("of some fresh g kg kgs lb lbs oz kilo kilos")
_DATING = words_in("in of on since from until till by last next this early late mid")
_HIS = words_in("'s has had just :")
_DID = words_in("did put dug took gave made threw shut brought drew left")
