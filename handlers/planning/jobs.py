"""What is to be done, as members call it: one job for all the dues that it does away with."""

import re
from collections.abc import Sequence
from dataclasses import dataclass, replace

from handlers.people import is_same
from handlers.planning.calendar import task
from handlers.planning.dues import ACTS, OWN
from storage.rows import Bin, Due

_DEEDS = {"drain": "drain", "empty": "drain", "seal": "seal", "close": "seal", "bury": "bury"}
_OF_A_BIN = re.compile(
    rf"({'|'.join(_DEEDS)}) (?:up )?(?:the )?(.{{1,60}}?)(?: bin)?", re.IGNORECASE
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Job:
    """Something to be done, by its name."""

    name: str
    dues: tuple[Due, ...]
    deed: str | None = None
    """What is recorded once it is done: "drain", "seal" or "bury"."""
    bin: Bin | None = None


def jobs_of(dues: Sequence[Due], bins: Sequence[Bin]) -> list[Job]:
    """The jobs that dues come to: a turn to drain, or a reminder to drain that bin, is no second
    one beside the draining.
    """
    jobs: dict[str, Job] = {}
    for due in dues:
        job = _job_of(due, bins)
        before = jobs.get(job.name)
        jobs[job.name] = replace(before, dues=(*before.dues, due)) if before else job
    return list(jobs.values())


def _job_of(due: Due, bins: Sequence[Bin]) -> Job:
    deed, bin = due.what.removeprefix("turn to "), due.bin
    if due.what in OWN:
        deed, bin = _said_of(due.words or "", bins)
    if deed not in ACTS or bin is None:
        return Job(name=task(due), dues=(due,))
    return Job(
        name=task(replace(due, what=deed, bin=bin, words=None)), dues=(due,), deed=deed, bin=bin
    )


def _said_of(words: str, bins: Sequence[Bin]) -> tuple[str, Bin | None]:
    """The deed and the bin that members set a reminder of, if it is one: "drain the yard bin"."""
    found = _OF_A_BIN.fullmatch(words.strip(" .!"))
    if found is None:
        return "", None
    name = found[2]
    bin = next((b for b in bins if is_same(b.name, name) or is_same(b.name, f"{name} bin")), None)
    return _DEEDS[found[1].casefold()], bin
