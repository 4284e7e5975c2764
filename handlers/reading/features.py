"""What a message looks like to the scores: its words, with slots for names, figures and things.

A slot is in capitals ("BIN", "MASS", "FOOD"); everything else is a word in lower case. A feature
is a word or its class, two neighbours, two with one between, all slots of the message, or what a
clause says: its sense, its verb and the slots in it.
"""

from bisect import bisect_left
from collections.abc import Callable, Sequence
from functools import lru_cache

from handlers.practice.signs import SIGNS
from handlers.reading.message import BRAN, LIQUID, Message
from handlers.reading.words.sense import Sense
from handlers.reading.words.sentences import Clause
from handlers.reading.words.vocabulary import VerbForm, word_classes

Add = Callable[[str, int], object]
"""Notes a feature and the index of the word it stands at, unless it is known already."""


def features(message: Message) -> dict[str, int]:
    """The features of a message in their order, each with the first word that it stands at."""
    found: dict[str, int] = {}
    add = found.setdefault
    names, places = _tokens(message)
    _add_runs(names, places, add)
    slotted = {name for name in names if name[0].isupper()}
    stop = 0
    for clause in message.clauses:
        first = bisect_left(places, clause.start, stop)
        stop = bisect_left(places, clause.end, first)
        _add_clause(clause, names[first:stop], slotted, add)
    add(_all_of(tuple(sorted(slotted))), 0)
    known = word_classes()
    for name, at in zip(names, places, strict=True):
        if name in known:
            for kin in known[name]:
                add(kin, at)
    if message.asked:
        add("asked", 0)
    add(_LENGTHS[min(_LONGEST, len(names) // 5)], 0)
    add(_SENTENCES[min(_MOST, len(message.sentences))], 0)
    return found


_TABLE = 4096
"""Entries of a table of features that depend on slots, or on a verb and slots."""
_LONGEST, _MOST = 6, 4
_LENGTHS = [f"length {fives}" for fives in range(_LONGEST + 1)]
_SENTENCES = [f"sentences {number}" for number in range(_MOST + 1)]


@lru_cache(_TABLE)
def _all_of(slots: tuple[str, ...]) -> str:
    return "all " + " ".join(slots)


def _add_runs(names: Sequence[str], places: Sequence[int], add: Add) -> None:
    """Single words, neighbours, and words with one between."""
    before, last = "", "^"
    for name, at in zip(names, places, strict=True):
        add(name, at)
        add(f"{last} {name}", at)
        if before:
            add(f"{before} _ {name}", at)
        before, last = last, name
    if names:
        add(f"{last} $", places[-1])
        add(f"{before} _ $", places[-1])


def _add_clause(clause: Clause, names: Sequence[str], slotted: set[str], add: Add) -> None:
    sense, at = clause.sense, clause.start
    slots = tuple(sorted(slotted.intersection(names))) if slotted else ()
    for feature in _of_verb(sense, None if clause.verb is None else clause.verb.verb, slots):
        add(feature, at)
    if sense == "ask":
        for name in names:
            add(f"ask {name}", at)


@lru_cache(_TABLE)
def _of_verb(sense: Sense, verb: VerbForm | None, slots: tuple[str, ...]) -> list[str]:
    """What a clause says by its sense, its verb and its slots, without its other words."""
    together = " ".join(slots) or "-"
    found = [f"{sense}: {together}"]
    if verb is None:
        kinds, plain = ["-"], "-"
    else:
        kinds, plain = sorted(verb.classes), verb.plain
        found.append(f"{sense}: {plain}")
    for kind in kinds:
        found += [f"{sense}: <{kind}>", f"{sense}: <{kind}> {together}"]
    for slot in slots:
        found += [f"{sense}: {slot}", f"{sense}: {plain} {slot}"]
        found += [f"{sense}: <{kind}> {slot}" for kind in kinds]
    return found


def _tokens(message: Message) -> tuple[list[str], list[int]]:
    """The words in order, a slot in place of each name, figure, day, sign, food or liquid; and
    where each of them stands."""
    slots, norms = _slots(message), message.norms
    names: list[str] = []
    places: list[int] = []
    behind = 0
    for i, word in enumerate(message.words):
        if i < behind:
            continue
        places.append(i)
        if i in slots:
            name, behind = slots[i]
        elif word.kind == "number":
            name = "NUMBER"
        else:
            name = norms[i]
            if name in _STUFF:
                name = _named(message, i)
        names.append(name)
    return names, places


_STUFF = LIQUID | BRAN


def _named(message: Message, i: int) -> str:
    """Word i, or the slot of the stuff that it stands for."""
    norm = message.norms[i]
    if norm in LIQUID and message.liquid_at(i):
        return "LIQUID"
    return "BRAN" if norm in BRAN and message.bran_at(i) else norm


_SIGNS = frozenset(slot for sign in SIGNS for slot in (sign.upper(), f"{sign.upper()}-NO"))


def _slots(message: Message) -> dict[int, tuple[str, int]]:
    """Slot and end by first word; where two overlap, the one that is surer stands."""
    found: dict[int, tuple[str, int]] = {}
    for item in message.items:
        found[item.start] = ("THING" if item.generic else "FOOD", item.end)
    for sign in message.signs:
        found[sign.start] = (sign.sign.upper() + ("-NO" if sign.absent else ""), sign.end)
    for day in message.days:
        found[day.start] = ("DAY", day.end)
    for amount in message.amounts:
        found[amount.start] = (amount.quantity.upper(), amount.end)
    for i in message.bot:
        found[i] = ("BOT", i + 1)
    for member in message.members:
        found[member.start] = ("OWNER" if member.owner else "MEMBER", member.end)
    for ref in message.named:
        if not message.bins or found.get(ref.start, ("",))[0] not in _SIGNS:  # "blue on the rice"
            found[ref.start] = ("NAMED", ref.end)
    for ref in message.bins:
        slot = "BIN" if ref.known and ref.plain else "PLACE" if ref.known else "SOME-BIN"
        found[ref.start] = (slot, ref.end)
    return found
