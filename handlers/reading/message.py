"""A message with all that the word lists find in it: what every rule looks at."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from datetime import date
from itertools import pairwise
from typing import Any

from handlers.reading.bins.bincalls import by_further_number
from handlers.reading.bins.keptbins import kept_bins, without_owners
from handlers.reading.bins.meantbins import figures_of_speech, no_figures_of_speech
from handlers.reading.bins.mending import mended
from handlers.reading.bins.names import by_known_name, find_bot, known_bins, mentions
from handlers.reading.bins.newbins import said_bins
from handlers.reading.bins.nextbins import beside_known
from handlers.reading.bins.targetbins import SHUT_OR_DRAWN, leading_bin, more_bins, target_bins
from handlers.reading.bins.wherebins import STANDS, by_where
from handlers.reading.calendar.days import Day, read_days
from handlers.reading.context import Context
from handlers.reading.food.foodparts import ENDS
from handlers.reading.food.items import Item
from handlers.reading.food.materials import find_items, is_loose
from handlers.reading.food.turned import turned
from handlers.reading.measures.amountlists import read_amounts
from handlers.reading.measures.amounts import Amount
from handlers.reading.people.members import (
    MemberRef,
    doers_unknown,
    find_members,
    set_apart,
    told_apart,
)
from handlers.reading.room.pasted import without_pasted
from handlers.reading.signs.seen import Seen
from handlers.reading.signs.spotted import find_signs
from handlers.reading.words.binwords import PLACE_NAMES, TOLD_BY, BinRef
from handlers.reading.words.clauses import clauses_of
from handlers.reading.words.courtesies import without_courtesies
from handlers.reading.words.drawn import with_foods_named
from handlers.reading.words.marks import Mark
from handlers.reading.words.sentences import Clause, Cutter, Sentence, sentences_of
from handlers.reading.words.spans import Span, indexes
from handlers.reading.words.verbs import VerbUse, verbs_of
from handlers.reading.words.vocabulary import verb_meant, vocabulary, words_in
from handlers.reading.words.words import Word, cleaned, norms_in, words_of

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
_LEADING = TOLD_BY | PLACE_NAMES | SHUT_OR_DRAWN
"""Words without one of which no bin is told by a colour, a place or a name that nobody knows."""

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
    asked: bool
    """One of its sentences ends with a question mark."""
    clauses: list[Clause]
    body: str
    """The cleaned text that the words were cut from."""
    said: frozenset[str]
    """Its words, each once."""
    kept: dict[Callable[..., Any], Any] = field(default_factory=dict, repr=False, compare=False)
    """What `once` has found in it."""

    def has(self, words: frozenset[str]) -> bool:
        """Whether one of the words stands in it."""
        return not words.isdisjoint(self.said)

    def has_in(self, words: frozenset[str], start: int, end: int | None = None) -> bool:
        """Whether one of the words stands in the stretch."""
        return not words.isdisjoint(self.norms[start:end])

    def clause_at(self, i: int) -> Clause | None:
        """The clause of word i, if that word is in one that is read."""
        return next((c for c in self.clauses if c.start <= i < c.end), None)

    def sense_at(self, i: int) -> str:
        """What the clause of word i says of its deed: "did", "ask", "if" and so on."""
        clause = self.clause_at(i)
        return "none" if clause is None else clause.sense

    def measured(self) -> list[Amount]:
        """The masses and volumes in it."""
        return [a for a in self.amounts if a.quantity in ("mass", "volume")] if self.amounts else []

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

    def hyphened(self, start: int, end: int) -> str:
        """The words start to end as written, with the hyphens between them ("Jean-Luc")."""
        said = self.text(start, end)
        written = self.body[self.words[start].start : self.words[end - 1].end] if said else ""
        return written if written.replace("-", " ") == said else said

    def bran_at(self, i: int) -> bool:
        """Whether word i is starter bran, not breakfast, sourdough or a car part."""
        if self.norms[i] not in BRAN:
            return False
        after = self.norms[i + 1] if i + 1 < len(self.norms) else ""
        before = self.norms[i - 1] if i else ""
        if self.norms[i] == "bokashi":
            return after in BRAN or after == "powder"
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
        return before in _LIQUID_LEADS and after not in _DRUNK and not self._goes_in(i + 1)

    def _goes_in(self, at: int) -> bool:
        """ "2 cups of tea in green": whether a bin stands behind "in" or "into" at a word."""
        if self.norms[at : at + 1] not in _INTO:
            return False
        at += 1 + (self.norms[at + 1 : at + 2] == ["the"])
        return any(ref.start <= at < ref.end for ref in self.bins)

    def liquid(self, start: int = 0, end: int | None = None) -> bool:
        """Whether the liquid of a bin is named in the stretch."""
        stop = len(self.norms) if end is None else end
        return self.has_in(LIQUID, start, end) and any(map(self.liquid_at, range(start, stop)))

    def bran(self, start: int = 0, end: int | None = None) -> bool:
        """Whether starter bran is named in the stretch."""
        stop = len(self.norms) if end is None else end
        return self.has_in(BRAN, start, end) and any(map(self.bran_at, range(start, stop)))


_INTO = (["in"], ["into"])


def read_message(text: str, context: Context) -> Message:
    """Everything the word lists find in a text."""
    body = cleaned(with_foods_named(without_pasted(text, context.members), context.bins))
    words = without_courtesies(words_of(body))
    written = norms_in(words)
    norms = mended(list(map(verb_meant, written)), context)
    at = context.at.astimezone(context.zone)
    bins = known_bins(words, norms, context.bins)
    members, bins = _people_beside(norms, context, bins)
    in_bins, by_name = indexes(bins), indexes(members)
    written = set_apart(words, norms, written, members, in_bins if context.in_room else None)
    days = read_days(words, written, at, month_first=context.units == "us", taken=in_bins)
    taken = in_bins | indexes(days) if days else in_bins
    amounts = read_amounts(words, written, context.units, taken)
    measures = indexes(amounts)
    taken |= measures
    if further := _further_bins(words, norms, context, bins, taken | by_name, amounts):
        bins = tuple(sorted((*bins, *further)))
        in_bins = indexes(bins)
        amounts = tuple([a for a in amounts if not _overlaps(a, in_bins)])
    if bins:
        bins, amounts = _more_closely(words, norms, bins, context, amounts, days)
        in_bins = indexes(bins)
    elsewhere = mentions(norms, context.bins, in_bins)
    marks = vocabulary().find(norms)
    spoken = figures_of_speech(marks) if bins else []
    if spoken:
        bins = no_figures_of_speech(bins, spoken)
        in_bins = indexes(bins)
    if in_bins:
        marks = [m for m in marks if not _overlaps(m, in_bins)]
    signs = find_signs(norms, marks, in_bins, by_name - indexes(elsewhere))
    items = find_items(norms, marks, measures)
    if items:
        used = measures | indexes([s for s in signs if s.plain or s.end - s.start > 1])
        items = tuple([i for i in items if i.start not in used and (bins or not is_loose(i))])
    taken |= in_bins
    held = taken | indexes(_wide_foods(marks), [m for m in members if m.end - m.start > 1])
    if len(items) > 1 or "c" in norms:
        held |= _list_joints(norms, items, amounts) | _ratio_of_carbon(norms)
    sentences = sentences_of(words, written, held)
    verbs = verbs_of(words, marks, taken)
    if of_food := turned(norms, items) if amounts else frozenset():
        signs = tuple([s for s in signs if s.start not in of_food])
    hedged = of_food | indexes(_hedges(norms, marks, verbs, amounts))
    if hedged:
        verbs = [v for v in verbs if v.start not in hedged]
        held |= hedged
    named = doers_unknown(words, [v.start for v in verbs] if context.in_room else ())
    named |= {norms[i] for i in by_name} if by_name else frozenset()
    clauses = clauses_of(
        sentences, Cutter(written, verbs, held, named, *_over_and_coming(days, at.date()), hedged)
    )
    return Message(
        context, at.date(), words, norms, marks, bins, elsewhere, members,
        find_bot(norms, context.bot_names), amounts, days, items, signs, sentences,
        any(sentence.asked for sentence in sentences), clauses[:MOST_CLAUSES], body,
        frozenset(norms),
    )  # fmt: skip


def _people_beside(
    norms: list[str], context: Context, bins: tuple[BinRef, ...]
) -> tuple[tuple[MemberRef, ...], tuple[BinRef, ...]]:
    """The members named, and the bins with those that are called by their keepers; a member who
    has a bin's name puts something in another.
    """
    members = find_members(norms, context.members, indexes(bins))
    if context.kept and (kept := kept_bins(norms, members, context.kept, context.sender, bins)):
        bins = tuple(sorted((*bins, *kept)))
        members = without_owners(members, kept)
    return told_apart(norms, bins, members) if members and bins else (members, bins)


def _over_and_coming(days: tuple[Day, ...], today: date) -> tuple[frozenset[int], frozenset[int]]:
    """The words of days that are over, and of those that may be to come."""
    if not days:
        return frozenset(), frozenset()
    over = [d for d in days if d.past == d.future and d.past < today]
    return indexes(over), indexes([d for d in days if d.future > today])


def _hedges(
    norms: list[str], marks: list[Mark], verbs: list[VerbUse], amounts: Iterable[Amount]
) -> list[Mark]:
    """The turns of phrase that change no sense; "should be" before a verb is none of them, nor
    is "I'd put it at" before a place.
    """
    hedges = [m for m in marks if m.tag == "hedge"]
    if not hedges:
        return hedges
    before = {v.start for v in verbs}
    hedges = [m for m in hedges if not (m.end in before and norms[m.end - 1] in ("be", "been"))]
    if not _HAD_IT_BEEN.isdisjoint(norms):  # "it would have been 2 kg, but the dog had it"
        hedges = [m for m in hedges if norms[m.start : m.start + 2] not in _WOULD_HAVE]
    weighed = {
        at for a in amounts if a.quantity in ("mass", "volume") for at in (a.start, a.start - 1)
    }
    return [m for m in hedges if norms[m.end - 2 : m.end] != ["it", "at"] or m.end in weighed]


_HAD_IT_BEEN = frozenset({"but", "if", "only", "except"})
_WOULD_HAVE = (["would", "have"], ["'d", "have"])


def _further_bins(
    words: list[Word],
    norms: list[str],
    context: Context,
    known: tuple[BinRef, ...],
    called: frozenset[int],
    amounts: tuple[Amount, ...],
) -> list[BinRef]:
    """The bins that are meant by words that are no known name, beside the known ones."""
    several = context.in_room and len(context.bins) > 1
    said = said_bins(words, norms, called, by_food=context.in_room, by_place=several)
    found = [by_known_name(ref, context.bins) for ref in said]
    if context.in_room and amounts:
        found += by_further_number(words, norms, context.bins)
    if context.in_room and not known and not found:
        found += leading_bin(words, norms, called)
    if amounts:
        alone = not known and not found
        found += target_bins(
            words,
            norms,
            called | indexes(found) if found else called,
            no_names=alone and not context.bins,
            by_one_word=alone and context.in_room,
        )
    beside = context.in_room and bool(known or found)
    coloured = context.bins or (context.in_room and not (TOLD_BY | SHUT_OR_DRAWN).isdisjoint(norms))
    if coloured and (beside or not _LEADING.isdisjoint(norms)):
        there = (*known, *found)
        more = more_bins(words, norms, there, called | indexes(found), by_one_word=beside)
        found += [by_known_name(ref, context.bins) for ref in more]
    return found


def _more_closely(
    words: list[Word],
    norms: list[str],
    bins: tuple[BinRef, ...],
    context: Context,
    amounts: tuple[Amount, ...],
    days: tuple[Day, ...],
) -> tuple[tuple[BinRef, ...], tuple[Amount, ...]]:
    """The bins, with one more of a known one's name and those told apart by where they stand; and
    the amounts without the numbers that are of a name.
    """
    if context.in_room:
        held = indexes(days, [a for a in amounts if a.end - a.start > 1])
        known = bins
        bins = beside_known(words, norms, known, context.bins, held)
        if bins != known:
            named = indexes([ref for ref in bins if ref not in known])
            amounts = tuple([a for a in amounts if not _overlaps(a, named)])
    if len(context.bins) > 1 and not STANDS.isdisjoint(norms):
        bins = by_where(norms, bins, context.bins)
    return bins, amounts


def _wide_foods(marks: Iterable[Mark]) -> list[Mark]:
    """The foods that are named by several words."""
    return [m for m in marks if m.end - m.start > 1 and m.tag == "food"]


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
        if b.start == a.end + 1 + _led(norms, a)
        and norms[a.end] in ("and", "n", "&", "+", ",", "y", "or", "plus")
    )


def _led(norms: list[str], item: Item) -> bool:
    """ "The ends and the bread went in": one list, though the second thing is led by "the"."""
    return norms[item.end - 1] in ENDS and norms[item.end + 1 : item.end + 2] == ["the"]


def _ratio_of_carbon(norms: list[str]) -> frozenset[int]:
    """The sign and the letter behind the C of "C:N", which begin no clause."""
    at = [i for i, norm in enumerate(norms) if norm == "c" and norms[i + 2 : i + 3] == ["n"]]
    return frozenset([k for i in at if norms[i + 1] in (":", "/") for k in (i + 1, i + 2)])


def _overlaps(span: Span, taken: frozenset[int]) -> bool:
    return not taken.isdisjoint(range(span.start, span.end))
