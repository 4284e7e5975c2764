"""Asking before writing down, and what a short answer to the question settles."""

import json
import re
from collections.abc import Sequence
from dataclasses import replace
from zoneinfo import ZoneInfo

from handlers.answer import Answer, Query, Turn
from handlers.doubtful import binscaught, daysaway, leave, nosuchbin
from handlers.doubtful.confirming import (
    changed,
    in_its_unit,
    in_other_words,
    unit_alone,
    with_food,
)
from handlers.doubtful.guessed import all_guessed, amount_of, of_home, whole_lot
from handlers.doubtful.placed import OWN_BIN, divided, placed
from handlers.planning.owndates import stem
from handlers.reading.actjson import from_json
from handlers.reading.acts import (
    Act,
    Amend,
    Ask,
    Batch,
    Bury,
    Done,
    Drain,
    Layer,
    Observe,
    OnBins,
    Open,
    Retract,
    Seal,
    Set,
    Stock,
    Unsure,
)
from handlers.reading.arranged import Plan
from handlers.reading.bins.sizes import bare_amounts, bare_volume
from handlers.reading.completion.unlike import asked_of, things_of_each
from handlers.reading.context import Context
from handlers.reading.deeds.barefigures import FIGURES
from handlers.reading.doubts.unmeasured import BAD_AMOUNTS
from handlers.reading.food.makeups import makeup
from handlers.reading.message import read_message
from handlers.reading.words.vocabulary import words_in
from handlers.recording.bins import how_much
from storage.book import Book
from storage.rows import Question

YES = words_in(
    "yes y yep yeah yup ya aye ok okay sure right correct si sí ja oui please indeed do 👍 ✅ 👌"
)
NO = frozenset({"no", "n", "nope", "nah", "never", "don't", "dont", "nein", "non", "👎", "❌"})
_BESIDE = (
    YES
    | NO
    | words_in(
        "thanks thank ta cheers you it that this is it's that's was all fine good write down go "
        "ahead note for me us not wrong sorry mate bot pls plz mind of course the"
    )
)
"""What may stand behind a yes or a no that is nothing else."""
HOW_MUCH = (
    "How much is that? Say it again in kilos, litres or a kitchen measure (a bucket, a caddy, a "
    "handful), and I write it down."
)
SOME_DAY = "Which day was that? Say it (“on Thursday”), and I write it down."
WHICH_DAY = "No calendar has that day. Say it again with the right one."
MOST_ANSWER_WORDS, MOST_WITH_BIN = 4, 6
MOST_WORDS = {"task": 8, "amount": 16}
"""A longer message is read for itself, not as the answer to a question that lacks that."""

FIRST = "first"
"""Who has told more since calls by it what was asked about."""

_WORD = re.compile(r"[\w'’]+|[👍👎👌✅❌]")


def asked(act: Unsure, turn: Turn) -> Answer:
    """One short question, with the guess kept for its answer."""
    if act.count:
        return binscaught.some_of(act, turn)
    if not act.guess:
        return Answer()
    if act.no_such_day:
        return Answer(say=WHICH_DAY, query=Query.about(*act.guess, lacks="day"))
    if act.some_day:
        return Answer(say=SOME_DAY, query=Query.about(*act.guess, lacks="day"))
    misheard = not BAD_AMOUNTS.isdisjoint(act.rules)
    if misheard or any(
        one == Amend() or (isinstance(one, _MEASURED) and _lacks_amount(one)) for one in act.guess
    ):
        [first, *others] = act.guess
        lacking = None if others or isinstance(first, Amend) else how_much(first)
        return Answer(say=HOW_MUCH, query=lacking)
    if isinstance(act.guess[0], Set):
        return Answer(say=of_home(act.guess, turn), query=Query.about(*act.guess, lacks="yes"))
    layers = [one for one in act.guess if isinstance(one, Layer)]
    say = f"Shall I write down {all_guessed(act.guess, turn)}?"
    shared = len({one.bin for one in layers}) > 1 and len({one.on for one in layers}) == 1
    if shared and len(layers) == len(act.guess) and FIGURES not in act.rules:
        say += f" If each had all of it, say “{whole_lot(layers, turn)}”."
    return Answer(say=say, query=Query.about(*act.guess, lacks="yes"))


_MEASURED = Layer | Drain | Batch | Stock


def _lacks_amount(act: Layer | Drain | Batch | Stock) -> bool:
    """Whether it says too little without an amount; a bin that was drained needs none."""
    return amount_of(act) is None and not (isinstance(act, Drain) and act.bin)


async def settled(words: str, question: Question, book: Book) -> Sequence[Act | Plan] | None:
    """The acts that a short answer to the question stands for; None if it is no answer to it.

    A plain no gives no acts.
    """
    said = [word.replace("’", "'") for word in _WORD.findall(words.casefold())]
    if question.lacks == "bin":
        return await _in_bin(words, said, question, book)
    if question.lacks == "yes":
        return await _consented(words, said, question, book)
    if question.lacks == "bins":
        [told] = guess_of(question)
        at = question.asked_at
        return (
            await binscaught.told_next(words, told, at, book) if isinstance(told, Unsure) else None
        )
    if question.lacks == "leave":
        [wish] = guess_of(question)
        return await leave.given(words, wish, question, book)
    if question.lacks == "days":
        [wish] = guess_of(question)
        return daysaway.given(words, wish, question, book)
    if not said or len(said) > MOST_WORDS.get(question.lacks, MOST_ANSWER_WORDS):
        return None
    return await _in_few_words(words, said, question, book)


async def _in_few_words(
    words: str, said: list[str], question: Question, book: Book
) -> list[Act] | None:
    """What a bin, a day, a job, a size or an amount stands for, as the question lacks it."""
    if question.lacks == "which":
        return await _which(said, question, book)
    if question.lacks == "day":
        return _dated(words, question, book)
    if question.lacks == "task":
        return _tasks(said, question)
    if question.lacks == "size":
        return await _sized(words, question, book)
    return _measured(words, question, book) if question.lacks == "amount" else None


async def _consented(
    words: str, said: Sequence[str], question: Question, book: Book
) -> list[Act] | None:
    """What a yes stands for, in whatever words; nothing for a no."""
    parts = await divided(words, guess_of(question), question, book)
    if parts or (parts := _confirmed(words, said, question)) is not None:
        return parts
    if (parts := await _with_bin(words, said, question, book)) is not None:
        return parts
    guess = guess_of(question)
    if unit_alone(words, book.room):
        return in_its_unit(words, guess, book.room)
    if (found := in_other_words(words, guess)) is not None:
        return found
    right = _another_amount(words, question, book)
    return right or with_food(words, guess, question.asked_at, book.room)


def _confirmed(words: str, said: Sequence[str], question: Question) -> list[Act] | None:
    """What a plain yes stands for, or nothing for a no."""
    if not 0 < len(said) <= MOST_ANSWER_WORDS:
        return None
    if "?" in words or not _BESIDE.issuperset(said[1:]):
        return None  # "do I stir it?"
    if said[0] in YES:
        return guess_of(question)
    return [] if said[0] in NO else None


async def _with_bin(
    words: str, said: Sequence[str], question: Question, book: Book
) -> list[Act] | None:
    """ "Aye, south": a yes that says again in which bin; "no, north": it was another."""
    guess = guess_of(question)
    asked = {getattr(act, "bin", None) for act in guess}
    if "?" in words or not 0 < len(said) <= MOST_WITH_BIN or len(asked) != 1:
        return None
    name = await _named([word for word in said if word not in YES | NO | _WITH_BIN], book)
    if name is None:
        return None
    if name in asked:
        return None if said[0] in NO else guess
    [first, *others] = guess
    open_still = None in asked or said[0] in NO or "but" in said
    if others or not open_still or not isinstance(first, Layer | Drain):
        return None
    return [replace(first, bin=name)]


_WITH_BIN = words_in("but one mean meant that's it's please thanks sorry")


def _another_amount(words: str, question: Question, book: Book) -> list[Act] | None:
    """ "No wait, 2 L", where it was asked whether 1 L is to be written down."""
    lead = _NO_BUT.match(words.casefold())
    [asked, *others] = guess_of(question)
    if lead is None or others or not isinstance(asked, Layer | Drain) or amount_of(asked) is None:
        return None
    rest = words[lead.end() :]
    if isinstance(asked, Layer):
        right = changed(f"it was {rest}", asked, question.asked_at, book.room)
        if right and (right.mass_kg or right.volume_l):  # "ok 5.5"
            return [replace(asked, mass_kg=right.mass_kg, volume_l=right.volume_l)]
    return _measured(rest, question, book)


_NO_BUT = re.compile(
    r"(?:no|nope|nah|wait|sorry|actually|yes|yep|yeah|ok|okay|well|make (?:it|that))\b"
    r"(?:\W|\b(?:no|wait|sorry|but|only|more like|make (?:it|that)|it was|its)\b)*"
)


async def _in_bin(words: str, said: list[str], question: Question, book: Book) -> list[Act] | None:
    """What puts the record that has no bin into the one that was said."""
    if FIRST in said:
        said = await _of_first(said, question, book)
    if all(entry.bin for entry in await book.of_event(question.event)):
        return None  # it was told since, by a correction
    name = await _named(said, book) if 0 < len(said) <= MOST_ANSWER_WORDS else None
    return [Amend(bin=name)] if name else await placed(words, question, book)


async def _of_first(said: list[str], question: Question, book: Book) -> list[str]:
    """ "The first one was the kitchen": what is said of it, where more was told since."""
    last = await book.last_by(question.sender)
    if last is None or last.event == question.event:
        return said
    return [word for word in _without_small(said) if word != FIRST]


def is_bare(words: str) -> bool:
    """Whether it is a plain yes or no and nothing else."""
    said = _WORD.findall(words.casefold())
    return bool(said) and said[0] in YES | NO and _BESIDE.issuperset(said) and "?" not in words


def record_of(question: Question) -> str | None:
    """The message whose record would be struck out or put right by a yes."""
    acts = guess_of(question) if question.lacks == "yes" else []
    return next((act.of for act in acts if isinstance(act, Amend | Retract) and act.of), None)


def is_of_more(words: str, acts: Sequence[Act | Plan]) -> bool:
    """ "Both in the kitchen", "scraps green, bread Rosie": an answer to two questions."""
    told = [act for act in acts if isinstance(act, Act)]
    return "both" in words.casefold().split() or any(OWN_BIN in act.rules for act in told)


def guess_of(question: Question) -> list[Act]:
    """The acts that the question was about."""
    return [from_json(act) for act in json.loads(question.guess)]


def _measured(words: str, question: Question, book: Book) -> list[Act] | None:
    """What was asked about with the amount that it lacked, if no more than that was said."""
    room = book.room
    context = Context(at=question.asked_at, zone=ZoneInfo(room.zone), units=room.units)
    message = read_message(words, context)
    amounts = bare_amounts(message)
    [asked] = guess_of(question)
    if not amounts or not isinstance(asked, Ask | _MEASURED):
        return None
    if len(amounts) > 1:
        lots = things_of_each(amounts, message)
        return list(asked_of(asked, lots)) if isinstance(asked, Ask) else None
    amount = amounts[0]
    mass, volume = (amount.value, None) if amount.quantity == "mass" else (None, amount.value)
    if isinstance(asked, Drain):
        return [replace(asked, volume_l=volume)] if volume else None
    made = makeup(message.items)
    if made and isinstance(asked, Ask):
        asked = replace(asked, materials=made.shares, rich=made.rich)
    return [replace(asked, mass_kg=mass, volume_l=volume)]


_DATED = Layer | Drain | Open | Seal | Bury | Observe | Batch
"""What is asked about where its day is not known."""


def _dated(words: str, question: Question, book: Book) -> list[Act] | None:
    """What was asked about on the day that was said, if no more than that was said."""
    context = Context(at=question.asked_at, zone=ZoneInfo(book.room.zone), units=book.room.units)
    message = read_message(words, context)
    if len(message.days) != 1 or message.amounts or message.items:
        return None
    on = message.days[0].past
    if on > message.today:
        return None
    return [replace(act, on=on) for act in guess_of(question) if isinstance(act, _DATED)]


async def _which(said: list[str], question: Question, book: Book) -> list[Act] | None:
    """The act on the bin that was said, or on a new one of the name that nobody knew."""
    [act] = guess_of(question)
    if not isinstance(act, nosuchbin.ON_A_BIN | OnBins | Ask | Amend):
        return None
    if name := await _named(said[1:] if said[0] in NO else said, book):
        return [replace(act, bin=name)]
    if isinstance(act, Amend):
        return None
    if not nosuchbin.NEW.isdisjoint(said) or _without_small(said) == _words_of(act.bin or ""):
        return [replace(act, rules=(nosuchbin.ONE_MORE,))]
    return [] if said[0] in NO and _BESIDE.issuperset(said[1:]) else None


def _tasks(said: list[str], question: Question) -> list[Act] | None:
    """Those of the things to do that are named, by words that not all of them have."""
    acts = [act for act in guess_of(question) if isinstance(act, Done)]
    words = [frozenset(map(stem, _words_of(act.task or ""))) for act in acts]
    content = {stem(word) for word in _without_small(said) if word not in _ROUND_TASK}
    if content <= _ALL:
        undivided = [replace(act, volume_l=None) for act in acts]
        return list(undivided) if content - _DONE else None
    content -= _DONE
    if not content <= frozenset().union(*words):
        return None
    shared = frozenset.intersection(*words)
    own = zip(acts, words, strict=True)
    return [act for act, told in own if content & (told - shared)] or None


_ROUND_TASK = words_in("and i that that's sorry please thanks only i've we")
_DONE = frozenset(map(stem, words_in("done just did it's its have")))
_ALL = _DONE | frozenset(map(stem, words_in("both all everything each of them")))


async def _sized(words: str, question: Question, book: Book) -> list[Act] | None:
    """The bin with the bare volume that was said, if nothing else was written down meanwhile."""
    [opened] = guess_of(question)
    name = opened.bin if isinstance(opened, Open) else None
    bin = await book.bin(name) if name else None
    last = await book.last_by(question.sender)
    if bin is None or last is None or last.event != question.event:
        return None
    litres = bare_volume(words, book.room.units)
    if litres is None or (await book.about(bin)).capacity_l:
        return None
    of_each = not _OF_EACH.isdisjoint(words.casefold().split())
    bins = await book.bins() if of_each else [bin]
    unsized = [one for one in bins if (await book.about(one)).capacity_l is None]
    return [Open(bin=one.name, capacity_l=litres) for one in unsized]


_OF_EACH = words_in("all both each")


async def _named(said: list[str], book: Book) -> str | None:
    content = _without_small(said)
    for bin in await book.bins():
        if _WORD.findall(bin.name.casefold()) == said or (
            content and _words_of(bin.name) == content
        ):
            return bin.name
    return None


def _words_of(name: str) -> list[str]:
    """The words of a bin's name that tell it from others."""
    return _without_small(_WORD.findall(name.casefold()))


def _without_small(words: list[str]) -> list[str]:
    return [word for word in words if word not in _SMALL]


_SMALL = words_in("the bin it was in into from my our one to")
