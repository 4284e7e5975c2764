"""May this go in? Yes, with care, or no, and why."""

from handlers.answer import SILENCE, Answer
from handlers.phrasing import capital, layer_depth, rough_mass, the, volume
from handlers.practice.allowed import Allowed, allowed
from handlers.practice.density import capacity_kg, in_bin_step, mass_kg
from handlers.practice.dose import LAYER_DEPTH
from handlers.practice.figure import Refused
from handlers.practice.layering import layering
from handlers.reading.acts import Ask
from handlers.reading.arranged import Unfit
from storage.rows import Units


def asked(act: Ask) -> Answer:
    """Whether something may go in, in the words said or by the kinds they were read as."""
    verdict = _verdict(act)
    return verdict if isinstance(verdict, Answer) else _said(verdict)


def _verdict(act: Ask) -> Allowed | Answer:
    """What the craft says of it; an answer where it cannot be told what is asked of."""
    try:
        return allowed(act.what or "", list(act.materials or {}), volume_l=act.volume_l)
    except Refused as refused:
        return Answer(say=str(refused))


def _said(verdict: Allowed) -> Answer:
    return Answer(say="\n".join(verdict.lines), why=verdict.why())


def at_most(act: Ask, units: Units) -> Answer:
    """How much of a food is too much: no source says; the usual layers, and what a bin holds."""
    verdict = _verdict(act)
    if isinstance(verdict, Answer):
        return verdict
    if verdict.allowed == "no":
        return _said(verdict)
    kg = act.mass_kg or (mass_kg(act.volume_l, act.materials) if act.volume_l else None)
    lines = [NO_MOST, USUALLY.format(deep=layer_depth(units))]
    if verdict.allowed == "with care":
        lines = [verdict.lines[0], lines[1]]
    why: list[str] = [LAYER_DEPTH.line()]
    if kg and act.capacity_l and kg > (holds := capacity_kg(act.capacity_l, act.materials)):
        most = rough_mass(holds, units)
        lines[0] = f"Yes: a bin of {volume(act.capacity_l, units)} holds about {most} of that."
        why = [in_bin_step(kg, act.materials)]
    elif kg:
        found = layering(mass_kg=act.mass_kg, volume_l=act.volume_l, materials=act.materials)
        lines.insert(1, f"That much is about {found.lines[0]}")
        why = list(found.why())
    if (act.rich or 0.0) >= MOSTLY_RICH:
        lines[-1] += " Meat, fish and the like want more starter: ask me how much."
    return Answer(say="\n".join(lines), why=why)


NO_MOST = "No source I know says how much of it is too much."
USUALLY = (
    "Usual is a layer {deep} deep at a time, mixed with other scraps and pressed down, with "
    "starter on each."
)
MOSTLY_RICH = 0.5
"""Share of meat, fish and the like from which more starter is named."""


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
