"""May this go in? Yes, with care, or no, and why."""

from handlers.answer import Answer
from handlers.practice.allowed import allowed
from handlers.practice.cautions import caution
from handlers.practice.figure import Refused
from handlers.reading.acts import Ask

ANIMAL = frozenset({"meat", "fish", "bone"})


def asked(act: Ask) -> Answer:
    """Whether something may go in, in the words said or by the kinds they were read as."""
    kinds = list(act.materials or {})
    try:
        verdict = allowed(act.what or "", kinds)
    except Refused as refused:
        return Answer(say=str(refused))
    lines = [*verdict.lines, *([caution("meat")] if ANIMAL & set(kinds) else [])]
    return Answer(say="\n".join(lines), why=verdict.why())
