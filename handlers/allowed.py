"""May this go in? Yes, with care, or no, and why."""

from handlers.answer import Answer
from handlers.practice.allowed import allowed
from handlers.practice.figure import Refused
from handlers.reading.acts import Ask


def asked(act: Ask) -> Answer:
    """Whether something may go in, in the words said or by the kinds they were read as."""
    try:
        verdict = allowed(act.what or "", list(act.materials or {}))
    except Refused as refused:
        return Answer(say=str(refused))
    return Answer(say="\n".join(verdict.lines), why=verdict.why())
