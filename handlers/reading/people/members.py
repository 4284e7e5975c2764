"""Members named in the words: by their names, short forms of them, and names that are words too."""

from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from typing import NamedTuple

from handlers.reading.calendar.daywords import MONTHS, WEEKDAYS
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.marks import Entry, Phrasebook
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import verb_words, vocabulary, words_in
from handlers.reading.words.words import Word, norms_in, norms_of


class MemberRef(NamedTuple):
    """A member named by words[start:end]."""

    start: int
    end: int
    name: str
    owner: bool = False
    """ "Bev's"."""


def find_members(
    norms: list[str], members: tuple[str, ...], taken: frozenset[int]
) -> tuple[MemberRef, ...]:
    """Members named in the words, in order; a short form that stands in `taken` names none."""
    marks = _members_book(members).find(norms)
    return tuple(
        sorted(
            MemberRef(m.start, m.end, m.value.name, m.tag == "owner" or _owns(norms, m.end))
            for m in marks
            if not (m.value.short and m.start in taken)
        )
        if marks
        else ()
    )


def may_be_name(word: Word) -> bool:
    """Whether a word is written as a name is, and is no word that the reading knows."""
    if len(word.text) < _SHORTEST or not word.text.isalpha() or not word.text.istitle():
        return False
    known = word.norm in vocabulary() or word.norm in verb_words()
    return not known and not word.norm.endswith("ly")


_SHORTEST = 3


def doers_unknown(words: Sequence[Word], starts: Iterable[int]) -> frozenset[str]:
    """What may be names of people who are not in the room, right before verbs that start so."""
    return frozenset(
        [
            words[at - 1].norm
            for at in starts
            if at > 1 and may_be_name(words[at - 1]) and words[at - 2].norm not in _THE
        ]
    )


_THE = words_in("the a an my our your his her their this that mr mrs ms miss")


class _Called(NamedTuple):
    name: str
    short: bool = False


@lru_cache(maxsize=1024)
def _members_book(members: tuple[str, ...]) -> Phrasebook:
    called = {norms_of(name.lstrip("@")): _Called(name) for name in members}
    for short, names in _short_forms(members).items():
        if len(names) == 1:
            called.setdefault(short, _Called(names.pop(), short=True))
    entries = [(norms, "member", value) for norms, value in called.items() if norms]
    return Phrasebook((*entries, *_owners(called)))


def _owners(called: dict[str, _Called]) -> Iterator[Entry]:
    """ "That was dots": the names with the s of an owner and no apostrophe."""
    return (
        (f"{norm}s", "owner", value)
        for norm, value in called.items()
        if len(norm) > 2
        and " " not in norm
        and f"{norm}s" not in called
        and f"{norm}s" not in vocabulary()
    )


def _short_forms(members: tuple[str, ...]) -> dict[str, set[str]]:
    """What else members are called by, each with those that it may stand for: "Grace" and "Grace
    O" for "Grace Okoro", "Ravi" for "Ravi (flat 2)", "Mrs. Rao" for "Mrs Rao"."""
    found: dict[str, set[str]] = {}
    for name in members:
        said = name.lstrip("@").partition(":")[0].partition("(")[0]
        further = [part for part in said.split()[1:] if part[:1].isupper()]
        for short in (*_shorter(norms_of(said).split()), *_surnames(further)):
            found.setdefault(short, set()).add(name)
    return found


def _shorter(parts: list[str]) -> Iterator[str]:
    if parts and parts[0] in _TITLES:
        rest = [part for part in parts[1:] if part != "."]
        yield from (" ".join((parts[0], *rest)), " ".join((parts[0], ".", *rest)))
        return
    first = next((part for part in parts if part not in _BYNAMES), "")
    if len(first) > 2 and first.isalpha():
        yield first
    if len(parts) > 1 and parts[0] == first and parts[1].isalpha():
        yield from (f"{first} {parts[1][0]}", f"{first} {parts[1]}")


def _surnames(parts: list[str]) -> Iterator[str]:
    """Further names of a member that are no words."""
    for norm in (norms_of(part) for part in parts):
        if len(norm) > 2 and norm.isalpha() and norm not in _BYNAMES and norm not in vocabulary():
            yield norm


_BYNAMES = words_in(
    "the big little old young wee aunty auntie aunt uncle sister brother pastor miss lady "
    "family team house flat unit apt apartment room number no"
)
"""Words of a member's name by which nobody is called alone."""


def _owns(norms: Sequence[str], end: int) -> bool:
    """Whether "'s" behind a name is that of an owner, and not "is" or "has"."""
    if norms[end : end + 1] != ["'s"]:
        return False
    after = norms[end + 1] if end + 1 < len(norms) else ""
    return not (after.endswith(("ed", "ing")) or after in _AFTER_IS)


_AFTER_IS = words_in(
    "went after just only finally got been put taken taking gone going done dug shut drawn had the "
    "a already now"
)
_TITLES = words_in("mr mrs ms dr st sr jr rev col capt prof fr")


def told_apart(
    norms: Sequence[str], bins: tuple[BinRef, ...], members: tuple[MemberRef, ...]
) -> tuple[tuple[MemberRef, ...], tuple[BinRef, ...]]:
    """The members and bins where somebody is called like a bin: "Shed put 2 kg in blue" is of the
    member, "shed 300 g" of the bin. "Brenda" alone is never little Brenda, the bin.
    """
    alike = {(ref.start, ref.end) for ref in bins} & {(ref.start, ref.end) for ref in members}
    if not alike:
        return members, bins
    doers = {span for span in alike if _does(norms, span, bins)}
    short = {(ref.start, ref.end) for ref in bins if " " in (ref.name or "")}
    doers |= {(start, end) for start, end in alike & short if end - start == 1}
    return (
        tuple(ref for ref in members if (ref.start, ref.end) not in alike - doers),
        tuple(ref for ref in bins if (ref.start, ref.end) not in doers),
    )


def _does(norms: Sequence[str], span: tuple[int, int], bins: tuple[BinRef, ...]) -> bool:
    """Whether a name is that of one who did something to a bin behind it, or it is told "by"."""
    start, end = span
    if start and norms[start - 1] == "by":
        return True
    further = next((ref.start for ref in bins if ref.start > end), None)
    if further is None or norms[end] not in _DEEDS:
        return False
    return _BREAKS.isdisjoint(norms[end:further])


_DEEDS = words_in(
    "put added threw tipped chucked brought dumped tossed dropped sealed drained buried opened "
    "closed emptied fed filled"
)
_BREAKS = words_in(", . ; : ! ? — and & then but") | {"\n"}


def set_apart(
    words: list[Word],
    norms: list[str],
    written: list[str],
    members: Sequence[MemberRef],
    bins: frozenset[int] | None,
) -> list[str]:
    """Gives each word that is somebody's name here a norm that stands in no list of words; the
    norms as they are `written` then. `bins` are the words of bins' names, where strangers count
    too.
    """
    found = bins is not None and _set_strangers_apart(words, norms, bins | indexes(members))
    for ref in members:
        one_word = ref.end == ref.start + 1 and _is_word(norms[ref.start])
        if one_word and _is_named(words, ref, members):
            norms[ref.start] = words[ref.start].text.capitalize()
            words[ref.start] = words[ref.start]._replace(norm=norms[ref.start])
            found = True
    return norms_in(words) if found else written


def _set_strangers_apart(words: list[Word], norms: list[str], taken: frozenset[int]) -> bool:
    """The same for a name that is a word too and of nobody in the room, where it begins what is
    said and a deed with its amount or its bin stands behind it: "Ivy put 400 g of pears in".
    """
    found = False
    for i in range(len(words) - 2) if not _WORD_NAMES.isdisjoint(norms) else ():
        if norms[i] not in _WORD_NAMES or not words[i].text.istitle() or i in taken:
            continue
        leads = i == 0 or norms[i - 1] in _STARTS
        if leads and norms[i + 1] in _DEEDS and (i + 2 in taken or _begins_thing(words[i + 2])):
            norms[i] = words[i].text
            words[i] = words[i]._replace(norm=norms[i])
            found = True
    return found


def _begins_thing(word: Word) -> bool:
    return word.kind == "number" or word.norm in _BEFORE_THING


_BEFORE_THING = words_in("a an the our half about roughly some another")
_STARTS = words_in(". ! ? ; , and") | {"\n"}
_WORD_NAMES = words_in(
    "rose ivy hope will grace mark joy basil may june april faith daisy lily heather holly olive "
    "poppy violet iris hazel amber pearl ruby jade bill rob frank jack pat sue art dean grant "
    "miles rich chase hunter cliff dale glen heath rusty sandy sonny dawn eve penny ginger sage "
    "rosemary fern willow gene ray robin wren jasmine harmony charity patience prudence "
    "constance felicity verity mercy nick drew christian victor ernest dolly kitty"
)
"""Given names that are words."""


@lru_cache(maxsize=1024)
def _is_word(norm: str) -> bool:
    return norm in _DATES or norm in _OF_SENSE or norm in vocabulary()


_DATES = MONTHS.keys() | WEEKDAYS.keys()


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
    if word.norm in _DATES and (before in _DATING or after.isdecimal()):
        return False
    capital = word.text[:1].isupper() and not word.text[1:].isupper()
    written = after in _HIS if word.norm in _DATES else before[:1].isalnum() or after in _HIS
    if capital and written and word.norm not in WEEKDAYS:
        return True
    joined = after in _AND and any(m.start == ref.end + 1 for m in members)
    joined = joined or (before in _AND and any(m.end == ref.start - 1 for m in members))
    did = after.endswith("ed") and (capital or after in verb_words())
    return joined or did or after in _DID


_AND = words_in("and & n")
_OF_THINGS = words_in("of some fresh g kg kgs lb lbs oz kilo kilos")
_DATING = words_in("in of on since from until till by last next this early late mid")
_HIS = words_in("'s has had just :")
_DID = words_in("don did put dug took gave made threw shut brought drew left")
