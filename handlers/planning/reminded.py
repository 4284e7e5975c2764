"""What members answer to a reminder: done, later, tomorrow; by words or by a mark."""

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, timedelta
from typing import Literal

from handlers.answer import SILENCE, Answer, Handler, PutOff, Query, Turn
from handlers.doubtful.several import together
from handlers.doubtful.spokenof import is_of_sender
from handlers.phrasing import day
from handlers.planning.calendar import is_of, task
from handlers.planning.care import care_of
from handlers.planning.dues import OWN, done_to_it, is_shown_on
from handlers.planning.jobs import Job, jobs_of
from handlers.powers import refusal
from handlers.practice.days import DRAIN, high_days
from handlers.practice.figure import listed
from handlers.reading.acts import Act, Bury, Done, Drain, Later, Seal
from handlers.reading.arranged import Pausing
from handlers.reading.arrangements.putoff import DAY_ALONE, NOTHING_NAMED
from handlers.recording.draining import TOLD_ANEW, told_bare
from storage import naming, outbox
from storage.rows import Due

MOST_LATER_DAYS = 60
"""The longest that something can be put off, so that it is not lost."""

JUST_SAID = timedelta(hours=1)
"""So long a bare "done" is about what our last words named."""

PUT_OFF = "I will say again"
"""How it is answered that something is put off."""

RECORDED = {"drain": Drain, "seal": Seal, "bury": Bury}


async def done(act: Done, turn: Turn, carry_on: Handler) -> Answer:
    """What was reminded of has been done: answered as the acts it was."""
    if any(isinstance(one, Drain) and act.bin in (None, one.bin) for one in turn.told):
        return SILENCE  # "done, 100 ml came out": it is told beside
    if not (act.bin or act.volume_l or act.what) and await _answers_else(turn):
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
    jobs = _told_of(jobs_of(await _meant(act.bin, turn, told_today=True), bins), act)
    if not act.each or act.count is None or len(jobs) == act.count:
        return jobs, bool(act.each)
    others = _told_of(jobs_of(await _open(act.bin, turn), bins), act)
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


async def later(act: Later, turn: Turn) -> Answer:
    """What was reminded of is put off."""
    if DAY_ALONE in act.rules and not await _names_dues(turn):
        return SILENCE
    if act.what and act.on:
        return await _deed_put_off(act, act.on, turn)
    if NOTHING_NAMED in act.rules and await _answers_else(turn):
        return SILENCE  # "later!", behind what was answered to a record
    days = min(max(round(act.days or 1), 1), MOST_LATER_DAYS)
    dues = await _meant(act.bin, turn)
    if act.bin is None and turn.refers_to is None:  # what others have to do is theirs to put off
        care = await care_of(turn.book, dues, turn.today)
        dues = [d for d in dues if care.keeper(d) is None or care.concerns(d, turn.sender)]
        named = _named_last(dues)
        long = days > high_days(DRAIN) and all(due.what == "drain" for due in named)
        dues = dues if long else named  # "put it off until 10 April" is said of no draining
    if act.days is None:  # "remind us", of what was just put off to a day
        tomorrow = turn.today + timedelta(days=1)
        again = [due for due in dues if _until(due) > tomorrow]
        dues = [due for due in dues if due not in again]
        if again and not dues:
            return Answer(say=_said_again(again, min(map(_until, again)), turn))
    if days <= high_days(DRAIN):
        return _put_off(dues, days, turn)
    waiting = [due for due in dues if due.what != "drain"]
    answer = _put_off(waiting or dues, days, turn)
    undrained = [task(due) for due in dues if due not in waiting]
    if not (waiting and undrained):
        return answer
    return replace(answer, say=f"{answer.say} Not put off so long: {listed(undrained)}.")


async def _deed_put_off(act: Later, until: date, turn: Turn) -> Answer:
    """A deed waits for a day, as far as it is due before: at once what the sender has to do, what
    others have to do once that is confirmed.
    """
    until = min(until, turn.today + timedelta(days=MOST_LATER_DAYS))
    due = [
        one
        for one in await turn.book.dues(until=until - timedelta(days=1))
        if one.what == act.what and is_shown_on(one, turn.today)
        if act.bin is None or is_of(one, act.bin)
    ]
    care = await care_of(turn.book, due, turn.today)
    own = [
        one
        for one in due
        if care.keeper(one) is None or care.concerns(one, turn.sender) or _is_promised(one, turn)
    ]
    meant = due if act.each or act.bin else own
    if len(meant) > len(own) and not act.firm:
        duties = listed([task(one) for one in meant])
        return Answer(
            say=f"Shall I leave it until {day(until, turn.today)}: {duties}?",
            query=Query.about(replace(act, on=until, firm=True), lacks="yes"),
        )
    return _put_off(meant, (until - turn.today).days, turn)


def _named_last(dues: Sequence[Due]) -> list[Due]:
    """Those that the latest digest named, where it named any: what was named days before, and is
    still to be done, is not meant with them.
    """
    last = max((due.told_on for due in dues if due.told_on), default=None)
    return [due for due in dues if last is None or due.told_on == last]


def _until(due: Due) -> date:
    return due.put_off_until or date.min


def _said_again(dues: Sequence[Due], until: date, turn: Turn) -> str:
    return f"{PUT_OFF} {day(until, turn.today)}: {listed([task(due) for due in dues])}."


def _put_off(dues: Sequence[Due], days: int, turn: Turn) -> Answer:
    if not dues:
        return SILENCE
    until = turn.today + timedelta(days=days)
    return Answer(
        put_off=[PutOff(due=due, until=until) for due in dues], say=_said_again(dues, until, turn)
    )


async def ticked(message: str, line: int | None, turn: Turn) -> tuple[list[Act], Answer]:
    """What a member has done who marks a digest, or a line of it; what is no act is put away."""
    dues = await _told(message, line, turn)
    jobs = jobs_of(dues, await turn.book.bins())
    acts: list[Act] = [RECORDED[job.deed](bin=job.bin.name) for job in jobs if job.deed and job.bin]
    rest = [PutOff(due=due, until=date.max) for due in dues if due.what not in RECORDED]
    return acts, Answer(put_off=rest)


async def snoozed(message: str, turn: Turn) -> Answer:
    """A member marks a digest as not now: their part of it comes again tomorrow."""
    dues = await _told(message, None, turn)
    return _put_off(dues, 1, turn) if dues else Answer()


async def paused(plan: Pausing, turn: Turn) -> Answer:
    """All that falls due before a day waits until then; one member alone is only told how."""
    if plan.own:
        return Answer(say=FOR_ALL)
    if plan.until is None or plan.until <= turn.today:
        return Answer(say=UNTIL_WHEN)
    if refused := await refusal("settings", turn):
        return Answer(say=refused)
    dues = await turn.book.dues(until=plan.until - timedelta(days=1))
    waiting = [due for due in dues if (due.put_off_until or date.min) < plan.until]
    until, begins = day(plan.until, turn.today), ""
    if plan.first:
        waiting = [due for due in waiting if max(due.from_day, turn.today) >= plan.first]
        begins = f" from {day(plan.first, turn.today)}"
    return Answer(
        put_off=[PutOff(due=due, until=plan.until) for due in waiting],
        say=f"No reminders{begins} until {until} of what is down so far: I name it then. Ask "
        "“what's due?” at any time.",
    )


FOR_ALL = (
    "I remind the group together, not one alone. Say “I'm away till Friday” and others are named "
    "meanwhile; “turn the reminders off” stops them for all."
)
UNTIL_WHEN = (
    "Until which day? Say “no reminders till Monday”, or “turn the reminders off” to stop them for "
    "good."
)


async def _told(message: str, line: int | None, turn: Turn) -> list[Due]:
    """What a digest named to a member and is still to be done.

    Of nobody's own, all of it: if it was one thing, or one line was marked.
    """
    named = [due for due in await naming.named(turn.book, message, line) if _is_open(due, turn)]
    care = await care_of(turn.book, named, turn.today)
    own = [due for due in named if care.concerns(due, turn.sender)]
    free = [due for due in named if care.keeper(due) is None]
    is_one = len(named) == 1 or line is not None
    return own or free or (named if is_one else [])


def _is_open(due: Due, turn: Turn) -> bool:
    return due.from_day <= turn.today and is_shown_on(due, turn.today)


async def _meant(bin: str | None, turn: Turn, *, told_today: bool = False) -> list[Due]:
    """What is due now: of the digest replied to, of the bin named; else what was just said to all
    or to the speaker, or what the speaker keeps; with `told_today` also what members set and all
    were reminded of on that day.
    """
    dues = await _open(bin, turn)
    if bin is not None:
        return dues
    care = await care_of(turn.book, dues, turn.today)
    own = [due for due in dues if care.concerns(due, turn.sender) or _is_promised(due, turn)]
    free = own + [due for due in dues if care.keeper(due) is None]
    just_said = {due.id for due in await _just_said(turn)}
    if said := [due for due in free if due.id in just_said]:
        return said
    of_today = [due for due in free if due.what in OWN and due.told_on == turn.today]
    told = [due for due in of_today if due not in own] if told_today else []
    return [*told, *own] or dues


async def _open(bin: str | None, turn: Turn) -> list[Due]:
    """What is due now, whoever is to do it: of the digest replied to, of the bin named."""
    named = await naming.named(turn.book, turn.refers_to, None) if turn.refers_to else []
    return [
        due
        for due in named or await turn.book.dues(until=turn.today)
        if _is_open(due, turn) and (bin is None or is_of(due, bin))
    ]


def _is_promised(due: Due, turn: Turn) -> bool:
    """Whether it is of a bin that the sender promised to see to."""
    return due.bin is not None and due.bin.name in turn.helps


async def _answers_else(turn: Turn) -> bool:
    """Whether it is said to an answer of ours to its sender, or in reply to one to anybody, that
    names nothing due.
    """
    db, room = turn.book.db, turn.book.room
    if turn.refers_to:
        found = await outbox.answer_to(db, room.id, turn.refers_to)
        answer = found[1] if found else None
    else:
        latest = await outbox.latest(db, room.id)
        answer = latest[0] if latest and turn.now - latest[1] <= JUST_SAID else None
        if answer is None or not await is_of_sender(answer.to_event or "", turn):
            return False
    if answer is None or answer.kind != "reply":
        return False
    dues = await turn.book.dues(until=turn.today)
    return not any(
        words in answer.body for due in dues for words in (task(due), done_to_it(due.what)) if words
    )


async def _names_dues(turn: Turn) -> bool:
    """Whether it is said in reply to a digest or reminder, or our last words were one."""
    if turn.refers_to:
        return bool(await naming.named(turn.book, turn.refers_to, None))
    latest = await outbox.latest(turn.book.db, turn.book.room.id)
    if latest is None:
        return False
    is_put_off = latest[0].body.startswith(PUT_OFF)
    return is_put_off or bool(await naming.named(turn.book, latest[0].tx_id, None))


async def _just_said(turn: Turn) -> list[Due]:
    """What our last words named, if they were said a short while ago."""
    latest = await outbox.latest(turn.book.db, turn.book.room.id)
    if latest is None or turn.now - latest[1] > JUST_SAID:
        return []
    return await naming.named(turn.book, latest[0].tx_id, None)
