"""What to do where somebody is hurt, or could be."""

from handlers.answer import Answer
from handlers.practice.harm import ADVICE
from handlers.reading.arranged import Harm


def answered(plan: Harm) -> Answer:
    """The advice for a hazard; nothing is written down of who was hurt."""
    advice = ADVICE[plan.hazard]
    return Answer(say="\n".join(advice.lines), why=advice.why())
