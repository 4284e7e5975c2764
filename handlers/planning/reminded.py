"""What a reminder was of has been done: told in words, or by a mark."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from typing import Literal

from handlers.answer import SILENCE, Answer, Handler, PutOff, Query, Turn
from handlers.doubtful.several import together
from handlers.planning.care import care_of
from handlers.planning.jobs import Job, jobs_of
from handlers.planning.remindedof import answers_else, dues_meant, open_dues, told_by
from handlers.practice.figure import listed
from handlers.reading.acts import Act, Bury, Done, Drain, Seal
from handlers.recording.draining import TOLD_ANEW, told_bare

RECORDED = {"drain": Drain, "seal": Seal, "bury": Bury}


async def done(act: Done, turn: Turn, carry_on: Handler) -> Answer:
    """What was reminded of has been done: answered as the acts it was."""
    if any(isinstance(one, Drain) and act.bin in (None, one.bin) for one in turn.told):
        return SILENCE  # "done, 100 ml came out": it is told beside
    if not (act.bin or act.volume_l or act.what) and await answers_else(turn):
        return SILENCE  # the starter is strewn, say
    told = await _told_jobs(act, turn)
    if isinstance(told, Answer):
        return told
    jobs, each = told
    if len(jobs) > 1 and not (each or act.bin) and await _is_of_last(jobs, turn):
        if act.volume_l is None:
            return Answer(noted=True)  # "did it", right behind the record of it
        jobs = [] if await told_bare(turn) else jobs
    if len(jobs) > 1 and not each:
        return Answer(
            say=f"Well done. Which was it: {_names(jobs, 'or')}?",
            query=Query.about(*_each_of(jobs, act), lacks="task"),
        )
    if jobs and act.doubtful:
        return Answer(
            say=f"Is that done: {_names(jobs)}?",
            query=Query.about(*_each_of(jobs, act), lacks="yes"),
        )
    if len(jobs) > 1:
        act = replace(act, volume_l=None)  # nobody said how it was shared out
    answers = [await _done(job, act, turn, carry_on) for job in jobs]
    if not answers:
        return await _undue(act, turn, carry_on)
    return together(answers) if len(answers) > 1 else answers[0]


async def _told_jobs(act: Done, turn: Turn) -> tuple[list[Job], bool] | Answer:
    """The jobs that may be meant, and whether all of them are; or the question whether what others
    have to do is done too.
    """
    bins = await turn.book.bins()
    jobs = _told_of(jobs_of(await dues_meant(act.bin, turn, told_today=True), bins), act)
    if not act.each or act.count is None or len(jobs) == act.count:
        return jobs, bool(act.each)
    others = _told_of(jobs_of(await open_dues(act.bin, turn), bins), act)
    if act.count:
        return others, len(others) == act.count
    if len(others) <= len(jobs):
        return jobs, True
    return Answer(
        say=f"Well done. All of it: {_names(others)}?",
        query=Query.about(*_each_of(others, act), lacks="yes"),
    )


async def _is_of_last(jobs: Sequence[Job], turn: Turn) -> bool:
    """Whether the deed that the sender has just told is meant, as all the jobs are others'."""
    last = await turn.book.last_by(turn.sender)
    if last is None or last.struck or last.act not in RECORDED:
        return False
    if turn.at - last.written_at > TOLD_ANEW or turn.refers_to:
        return False
    dues = [due for job in jobs for due in job.dues]
    care = await care_of(turn.book, dues, turn.today)
    return all(care.keeper(due) and not care.concerns(due, turn.sender) for due in dues)


async def _undue(act: Done, turn: Turn, carry_on: Handler) -> Answer:
    """A job is done that is not due: written down if it is said which deed it was."""
    if act.volume_l is not None or act.what == "drain":
        drained = Drain(bin=act.bin, volume_l=act.volume_l, member=act.member, on=act.on)
        return await carry_on(drained, turn)
    if act.what in RECORDED:
        return await carry_on(RECORDED[act.what](bin=act.bin, member=act.member, on=act.on), turn)
    return SILENCE  # a mark would promise a record that there is none of


def _told_of(jobs: Sequence[Job], act: Done) -> list[Job]:
    """Those of the jobs that were said to be done, by their deed or when it was asked; what came
    out came of a draining, if one is among them.
    """
    deed = act.what or ("drain" if act.volume_l is not None else None)
    told = [job for job in jobs if act.task in (None, job.name)]
    of_it = [job for job in told if deed and deed in (job.deed, *(due.what for due in job.dues))]
    return of_it if of_it or act.what else told


def _names(jobs: Sequence[Job], joint: Literal["and", "or"] = "and") -> str:
    return listed([job.name for job in jobs], joint)


def _each_of(jobs: Sequence[Job], act: Done) -> list[Done]:
    """What each of several jobs is called, and its bin."""
    bins = [job.bin.name if job.bin else None for job in jobs]
    told = replace(act, doubtful=None)
    return [replace(told, bin=bin, task=job.name) for bin, job in zip(bins, jobs, strict=True)]


async def _done(job: Job, act: Done, turn: Turn, carry_on: Handler) -> Answer:
    """One job is done: its record, or where there is none to be made, its end."""
    unrecorded = [due for due in job.dues if due.what not in RECORDED]
    over = [PutOff(due=due, until=date.max) for due in unrecorded]
    if job.deed is None or job.bin is None:
        return Answer(put_off=over, noted=True)
    told = RECORDED[job.deed](bin=job.bin.name, member=act.member, on=act.on)
    if isinstance(told, Drain):
        told = replace(told, volume_l=act.volume_l)
    answer = await carry_on(told, turn)
    return replace(answer, put_off=[*answer.put_off, *over])


async def ticked(message: str, line: int | None, turn: Turn) -> tuple[list[Act], Answer]:
    """What a member has done who marks a digest, or a line of it; what is no act is put away."""
    dues = await told_by(message, line, turn)
    jobs = jobs_of(dues, await turn.book.bins())
    acts: list[Act] = [RECORDED[job.deed](bin=job.bin.name) for job in jobs if job.deed and job.bin]
    rest = [PutOff(due=due, until=date.max) for due in dues if due.what not in RECORDED]
    return acts, Answer(put_off=rest)
