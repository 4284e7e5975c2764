"""May this go in? Yes, with care, or no, and why."""

from handlers.answer import SILENCE, Answer
from handlers.phrasing import capital, the
from handlers.practice.allowed import allowed
from handlers.practice.figure import Refused
from handlers.reading.acts import Ask
from handlers.reading.arranged import Unfit


def asked(act: Ask) -> Answer:
    """Whether something may go in, in the words said or by the kinds they were read as."""
    try:
        verdict = allowed(act.what or "", list(act.materials or {}), volume_l=act.volume_l)
    except Refused as refused:
        return Answer(say=str(refused))
    return Answer(say="\n".join(verdict.lines), why=verdict.why())


def put_in(plan: Unfit) -> Answer:
    """What is wrong with something that was put in; no layer is made of it."""
    if not plan.ours:
        return SILENCE
    verdict = allowed(plan.what, volume_l=plan.volume_l)
    where = f"of {the(plan.bin)}" if plan.bin else "of a bin"
    lines = [f"{capital(verdict.what)} should stay out {where}: {verdict.reason}."]
    if not plan.beside_food:
        lines.append(
            "Lift it out again with gloves on; nothing is written down. If it was kitchen scraps, "
            "say so: “2 kg of scraps”."
        )
    return Answer(say="\n".join([*lines, *verdict.lines[1:]]), why=verdict.why())
