"""A message with all that the word lists find in it: what every rule looks at."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import date, datetime
from itertools import pairwise
from typing import Any

from handlers.reading.acts import Context
from handlers.reading.amountlists import read_amounts
from handlers.reading.amounts import Amount
from handlers.reading.courtesies import without_courtesies
from handlers.reading.days import Day, read_days
from handlers.reading.marks import Mark
from handlers.reading.materials import Item, find_items
from handlers.reading.names import (
    BIN_WORDS,
    BinRef,
    MemberRef,
    find_bot,
    find_members,
    known_bins,
    mentions,
    slipped,
)
from handlers.reading.newbins import said_bins, target_bins
from handlers.reading.sentences import Clause, Sentence, clauses_of, sentences_of
from handlers.reading.signs import Seen, find_signs
from handlers.reading.spans import indexes
from handlers.reading.verbs import verbs_of
from handlers.reading.vocabulary import is_spelling_slip, verb_meant, vocabulary, words_in
from handlers.reading.words import Word, cleaned, words_of

BRAN = words_in("bran starter inoculant em culture kleie salvado innoculant brann starters bokashi")
_OTHER_BRAN = words_in(
    "flakes flake muffin muffins mash cereal bread loaf buds cookies cake biscuits home kit "
    "motor pack position stick sticks course job salad sourdough"
)
LIQUID = words_in(
    "juice tea liquid leachate liquor runoff drainings jus juices juguito fluid jugo saft "
    "lixiviado liquido drain's brew leachates effluent seepage drippings goo elixir juicy "
    "leachat liquids liqid juise leechate"
)

_DRUNK = words_in("leaves leaf bag bags towel towels time party room pot pots cup cups")
_DRINKS = frozenset({"tea", "brew", "goo"})
_LIQUID_LEADS = words_in(
    "bokashi bin compost the of some this more that shed's bucket fresh worm garden plant"
)


MOST_CLAUSES = 60
"""Clauses of a message that are read for acts; what people report has far fewer."""


@dataclass(slots=True)
class Message:
    """A message read into words and marks, in the order they stand."""

    context: Context
    today: date
    words: list[Word]
    norms: list[str]
    marks: list[Mark]
    bins: tuple[BinRef, ...]
    named: tuple[BinRef, ...]
    """Where else a bin's name stands, perhaps for a room, a colour or a fruit."""
    members: tuple[MemberRef, ...]
    bot: tuple[int, ...]
    """Where the bot is called by name."""
    amounts: tuple[Amount, ...]
    days: tuple[Day, ...]
    items: tuple[Item, ...]
    signs: tuple[Seen, ...]
    sentences: list[Sentence]
    clauses: list[Clause]
    kept: dict[Callable[..., Any], Any] = field(default_factory=dict, repr=False, compare=False)
    """What `once` has found in it."""

    def has(self, words: frozenset[str], start: int = 0, end: int | None = None) -> bool:
        """Whether one of the words stands in the stretch."""
        if end is None and not start:
            return not words.isdisjoint(self.norms)
        return not words.isdisjoint(self.norms[start:end])

    def text(self, start: int, end: int) -> str:
        """The words start to end as written, one space between."""
        parts: list[str] = []
        last = (-1, -1)
        for word in self.words[start:end]:
            if parts and word.start == last[1]:
                parts[-1] += word.text  # "no. 3", "B2"
            elif (word.start, word.end) != last:  # a short form opened into two stands once
                parts.append(word.text)
            last = (word.start, word.end)
        return " ".join(parts)

    def bran_at(self, i: int) -> bool:
        """Whether word i is starter bran, not breakfast, sourdough or a car part."""
        if self.norms[i] not in BRAN:
            return False
        after = self.norms[i + 1] if i + 1 < len(self.norms) else ""
        before = self.norms[i - 1] if i else ""
        if self.norms[i] == "bokashi":
            return after in BRAN
        if self.norms[i] == "em":  # "three pound of em" is no culture
            return self.words[i].text == "EM" or after in ("1", "culture", "solution")
        return after not in _OTHER_BRAN and before not in ("sourdough", "raisin", "oat", "pop")

    def liquid_at(self, i: int) -> bool:
        """Whether word i is the liquid of a bin; "tea" only where it is not the one to drink."""
        norm = self.norms[i]
        if norm not in LIQUID:
            return False
        before = self.norms[i - 1] if i else ""
        after = self.norms[i + 1] if i + 1 < len(self.norms) else ""
        if norm not in _DRINKS:
            return not (norm in ("fluid", "liquid") and after in ("oz", "ounce", "ounces", "ozs"))
        return before in _LIQUID_LEADS and after not in _DRUNK

    def liquid(self, start: int = 0, end: int | None = None) -> bool:
        """Whether the liquid of a bin is named in the stretch."""
        stop = len(self.norms) if end is None else end
        return self.has(LIQUID, start, end) and any(map(self.liquid_at, range(start, stop)))

    def bran(self, start: int = 0, end: int | None = None) -> bool:
        """Whether starter bran is named in the stretch."""
        stop = len(self.norms) if end is None else end
        return self.has(BRAN, start, end) and any(map(self.bran_at, range(start, stop)))


def read_message(text: str, context: Context) -> Message:
    """Everything the word lists find in a text."""
    words = without_courtesies(words_of(cleaned(text)))
    norms = _mended([verb_meant(w.norm) for w in words], context)
    at = _local(context)
    bins = known_bins(words, norms, context.bins)
    members = find_members(words, norms, context.members)
    taken = indexes(bins)
    days = read_days(words, at, month_first=context.units == "us", taken=taken)
    taken |= indexes(days)
    amounts = read_amounts(words, context.units, taken)
    measures = indexes(amounts)
    taken |= measures
    called = taken | indexes(members)
    said = said_bins(words, norms, called, by_food=context.in_room)
    if said:
        bins = tuple(sorted((*bins, *said)))
    if amounts:
        no_names, alone = not context.bins and not bins, context.in_room and not bins
        named = called | indexes(bins)
        fresh = target_bins(words, norms, named, no_names=no_names, by_one_word=alone)
        if fresh:
            bins = tuple(sorted((*bins, *fresh)))
    in_bins = indexes(bins)
    elsewhere = tuple([m for m in mentions(norms, context.bins) if not _overlaps(m, in_bins)])
    marks = vocabulary().find(norms)
    if bins and marks:
        bins = _no_figures_of_speech(bins, marks)
        in_bins = indexes(bins)
    if in_bins:
        marks = [m for m in marks if not _inside(m, in_bins)]
    signs = find_signs(norms, marks)
    used = indexes([s for s in signs if s.plain or s.end - s.start > 1]) | measures
    items = tuple([i for i in find_items(norms, marks, measures) if i.start not in used])
    taken |= in_bins
    held = taken | indexes(_food_marks(marks))
    if len(items) > 1:
        held |= _list_joints(norms, items, amounts)
    sentences = sentences_of(words, held)
    names = frozenset([norms[i] for m in members for i in range(m.start, m.end)])
    verbs = verbs_of(words, marks, taken)
    hedged = indexes(_hedges(norms, marks, {v.start for v in verbs}))
    if hedged:
        verbs = [v for v in verbs if v.start not in hedged]
    over = indexes([d for d in days if d.past == d.future and d.past < at.date()])
    clauses = clauses_of(words, sentences, verbs, held | hedged, names, over, hedged)
    clauses = clauses[:MOST_CLAUSES]
    _set_quoted_aside(norms, clauses)
    return Message(
        context, at.date(), words, norms, marks, bins, elsewhere, members,
        find_bot(norms, context.bot_names), amounts, days, items, signs, sentences, clauses,
    )  # fmt: skip


def _hedges(norms: list[str], marks: list[Mark], verbs: set[int]) -> list[Mark]:
    """The turns of phrase that change no sense; "should be" before a verb is none of them."""
    return [
        m
        for m in marks
        if m.tag == "hedge" and not (m.end in verbs and norms[m.end - 1] in ("be", "been"))
    ]


def _local(context: Context) -> datetime:
    return context.at.astimezone(context.zone)


def _food_marks(marks: Iterable[Mark]) -> list[Mark]:
    return [m for m in marks if m.tag == "food" and m.end - m.start > 1]


def _list_joints(
    norms: list[str], items: tuple[Item, ...], amounts: tuple[Amount, ...]
) -> frozenset[int]:
    """Words that join two things of one list ("600 g rice and 400 g beans") and no clauses."""
    ends = {item.end for item in items}
    starts = {item.start for item in items}
    measured = {
        a.start - 1
        for a in amounts
        if a.start - 1 in ends and norms[a.start - 1] in ("and", "n", "&", "+") and a.end in starts
    }
    return frozenset(measured) | frozenset(
        a.end
        for a, b in pairwise(items)
        if b.start == a.end + 1 and norms[a.end] in ("and", "n", "&", "+", ",", "y", "or", "plus")
    )


def _set_quoted_aside(norms: list[str], clauses: list[Clause]) -> None:
    """A clause between quotation marks is somebody's words, not the sender's report."""
    if '"' not in norms:
        return
    marks = [i for i, norm in enumerate(norms) if norm == '"']
    for start, end in zip(marks[::2], marks[1::2], strict=False):
        if end - start < 4:
            continue
        for clause in clauses:
            if (
                start <= clause.start + 1
                and clause.end <= end + 1
                and clause.sense in ("did", "none")
            ):
                clause.sense = "said"


def _no_figures_of_speech(bins: tuple[BinRef, ...], marks: list[Mark]) -> tuple[BinRef, ...]:
    """The bins without the drum of "tight as a drum"."""
    if all(b.name is not None for b in bins):
        return bins
    spoken = [m for m in marks if m.tag.startswith("sign") and m.end - m.start > 2]
    return tuple(
        b
        for b in bins
        if b.name is not None or not any(m.start < b.start and b.end <= m.end for m in spoken)
    )


def _overlaps(ref: BinRef, taken: frozenset[int]) -> bool:
    return not taken.isdisjoint(range(ref.start, ref.end))


def _inside(mark: Mark, taken: frozenset[int]) -> bool:
    return not taken.isdisjoint(range(mark.start, mark.end))


_BEFORE_BIN = words_in("in into to from off of the inside")
_EXPECTING = _BEFORE_BIN | BIN_WORDS
"""Words beside which a bin's name is expected."""


def _mended(norms: list[str], context: Context) -> list[str]:
    """The words with slips in bin names put right, where a bin's name is expected."""
    if norms and (norms[0][:1].isdigit() or not _DEEDS.isdisjoint(norms)):
        names = tuple([name.removeprefix("the ") for name in context.bins])
        _mend_in_notes(norms, tuple([name for name in names if len(name) > _SHORT]))
    if _EXPECTING.isdisjoint(norms):
        return norms
    known = vocabulary()
    single = tuple([name for name in context.bins if name.isalpha()])
    before = ""
    for i, (norm, after) in enumerate(zip(norms, [*norms[1:], ""], strict=False)):
        expected = before in _BEFORE_BIN or after in BIN_WORDS
        if expected and len(norm) > _SHORT and norm.isalpha() and norm not in known:
            name = slipped(norm, single)
            if name is not None:
                norms[i] = name.lower()
        before = norms[i]
    return norms


_DEEDS = words_in("drained sealed buried opened closed emptied fed filled tapped")


def _mend_in_notes(norms: list[str], names: tuple[str, ...]) -> None:
    """ "Drianed turtel 6 oz", "2 lb corn cobs valut": a name with its letters swapped or left out,
    beside the deed or at the end of a short note."""
    initials = {name[0].lower() for name in names}
    known = vocabulary()
    for i, norm in enumerate(norms):
        if len(norm) <= _SHORT or norm[0] not in initials or norm in known or norm in _OWN_WORDS:
            continue
        beside = norms[i - 1 : i] and norms[i - 1] in _DEEDS
        ahead = i == 0 and not _DEEDS.isdisjoint(norms[1:4])
        ends = i == len(norms) - 1 and i < _NOTE and norms[0][:1].isdigit()
        name = slipped(norm, names) if beside or ahead or ends else None
        if name is not None and is_spelling_slip(norm, name.lower()):
            norms[i] = name.lower()


_NOTE = 6
"""Words of a note that gives no more than an amount, a thing and a bin."""
_OWN_WORDS = words_in("heater diary sliver")
"""Words that are no slip of a name, though they differ from it by as little."""
_SHORT = 3
"""Letters of a word in which nothing is told to be a slip."""
