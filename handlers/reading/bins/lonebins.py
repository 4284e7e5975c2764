"""A bin that stands by itself beside what is told or asked: "black fuzz? the hall one"."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Act, Ask
from handlers.reading.message import Message
from handlers.reading.words.vocabulary import words_in


def asked_of_bin(acts: Sequence[Act], message: Message) -> Sequence[Act]:
    """ "What do I do about mice. They've been at the hall bin": asked of the one bin named."""
    if len(acts) != 1 or not isinstance(acts[0], Ask) or acts[0].bin is not None:
        return acts
    names = {ref.name for ref in message.bins if ref.known}
    of_one = acts[0].topic in _OF_ONE and len(names) == 1
    return [replace(acts[0], bin=names.pop())] if of_one else acts


_OF_ONE = frozenset({"trouble", "bin", "due"})


def lone_bin(message: Message) -> str | None:
    """ "Started the new one. Hall. 20 litres": the one known bin that is a clause by itself."""
    lone = {_next_in_a_row(message, clause.start, clause.end) for clause in message.clauses} - {
        None
    }
    for ref in (*message.bins, *message.named):
        clause = message.clause_at(ref.start) if ref.known else None
        if clause is not None and _BESIDE.issuperset(
            message.norms[clause.start : ref.start] + message.norms[ref.end : clause.end]
        ):
            lone.add(ref.name)
    return lone.pop() if len(lone) == 1 else None


def _next_in_a_row(message: Message, start: int, end: int) -> str | None:
    """ "Started the new one. Bay 4": a clause that is a number behind a word of the other bins."""
    said = message.norms[start:end]
    if len(said) != 2 or not said[1].isdecimal():
        return None
    leads = {name.lower().rpartition(" ")[0] for name in message.context.bins}
    return message.text(start, end) if said[0] in leads else None


_BESIDE = words_in("the our it 's is this that one bin for in at please now here")
