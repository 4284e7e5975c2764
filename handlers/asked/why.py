"""The arithmetic behind the last figure, with its sources and how sure each one is."""

from collections.abc import Sequence

from handlers.answer import Answer
from handlers.phrasing import capital

NO_FIGURE = "There is no figure in that to explain. Reply “why?” to the answer you mean."


def explained(lines: Sequence[str]) -> str:
    """The steps and sources of an answer as they are kept with it."""
    return "\n".join(f"- {capital(line)}" for line in lines)


def asked(kept: str | None) -> Answer:
    """What was kept with the answer in question."""
    return Answer(say=kept or NO_FIGURE)
