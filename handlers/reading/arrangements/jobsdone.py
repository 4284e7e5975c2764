"""What is answered to a list of jobs, job by job: "blue done, shed done, green tomorrow", "did mine
last night, about 150 ml", "sealed but not drained".

The whole message has to be such an answer, with no more beside it than a remark.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Literal

from handlers.reading.acts import Act, Done, Later, Observe
from handlers.reading.bins.keptbins import only_mine
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.once import once
from handlers.reading.words.vocabulary import words_in

CUES = words_in("done did sorted drained sealed buried draining sealing burying burial there")
JOB_BY_JOB = "job by job"
PLAINLY = "a job, as a deed"
"""The rule of what would be a report by itself: "sealed" of "sealed but not drained"."""
THERE = "there, with what came out"
"""The rule of a word that tells a deed only beside an amount."""

Job = Literal["drain", "seal", "bury"]

_NUMBERS = {"two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8}
_COUNT = rf"(?:[2-8]|{'|'.join(_NUMBERS)})"
_DEED = (
    r"(?:drain|drained|draining|emptied|emptying|seal|sealed|sealing|bury|buried|burying|burial)"
)
_THING = (
    r"(?:that one|it|that|this|them|(?:the )?qbin(?: one)?|the (?:job|draining|sealing|burying|"
    r"burial)(?: (?:of|on|for|at|in)(?: the)? qbin(?: one)?)?)"
)
_ALL = (
    rf"(?:all (?:the |our )?{_COUNT}(?: of (?:them|those)| bins)?|all (?:of (?:them|it|those)|"
    r"(?:the|our) bins)|them all|the (?:whole )?lot|the whole list|every one|every (?:single )?bin|"
    r"(?:everybody|everyone) 's(?: bins?)?)"
)
_LEAD = (
    r"(?:(?:i|we|have|'ve|ive|just|already|also|now|then|only|finally|so|actually|qday|right|ok|"
    r"yes|yep|well(?! done)|fine|sorry) )*"
)
_MUCH = (
    r"(?:(?:about|around|roughly|some|only|just|maybe|nearly|like|with|got|gave|it gave|~|-) )*"
    r"qmuch"
    r"(?: (?:out of it|came out|out|off it|or so|ish|again|this time|in all))*"
)
_TAIL = (
    rf"(?: (?:qday|{_MUCH}|too|as well|also|again|already|now|just now|myself|earlier|at last|"
    r"finally|actually|in the end|for (?:qmember|him|her|them|you|us)|first thing|after all))*"
)
_IS = r"(?:is|'s|are|was|were|has been|have been|all|now|already|just|also|too|been)"
_YES = r"(?:done|sorted|seen to|dealt with|finished)"
_DONE = Late(
    rf"{_LEAD}(?:(?:did|done|sorted|saw to|seen to) (?P<all>{_ALL}|both)|"
    r"qmember (?:(?:has|'s|have|already|just|kindly) )*(?:did|done) (?:the )?qbin(?: one)?|"
    rf"(?:did|done|sorted|saw to|seen to) (?P<thing>{_THING})|"
    rf"did(?= (?:qday|already|earlier|just now))|done|sorted|there){_TAIL}"
)
_IS_DONE = Late(
    rf"(?:and |so |right |ok )?(?:(?P<all>{_ALL}|both)|(?P<thing>{_THING}))"
    rf"(?: {_IS})* {_YES}{_TAIL}"
)
_DEED_DONE = Late(
    rf"{_LEAD}(?:the )?(?P<deed>{_DEED})(?: (?:it|mine|(?:the )?qbin(?: one)?))?"
    rf"(?: (?:yes|{_IS}|{_YES}))*{_TAIL}"
)
_NOT_DONE = Late(
    rf"(?:i |we )?(?:(?:not|no|didnt|havent|couldnt|did not|have not)(?: yet)? (?:the )?{_DEED}"
    rf"(?: it| mine| qbin)?|(?:(?:the )?{_DEED}|(?:the )?qbin(?: one)?)(?: {_IS})* (?:no|not|isnt|"
    r"wasnt|hasnt|not done|still to do))(?: (?:yet|though|qday))*"
)
_FINE = Late(
    r"(?:so |and )?(?:(?:it|all|everything|that|qbin|the rest)"
    r"(?: (?:is|'s|was|looks|smells|seems))? )?(?:all |very |just )?(?:fine|ok|okay|good|well|"
    r"great|sweet|lovely|normal|as usual|no (?:problems?|trouble)|nothing to report|looking good|"
    r"(?:smells|looks) (?:fine|good))"
)
_EXCUSE = Late(
    r"(?:(?:so |very )?sorry(?: (?:for the delay|about (?:that|the delay|the wait)|im late|all))?|"
    r"(?:i )?(?:only )?just saw (?:this|it|the reminder)|(?:i )?forgot to (?:say|mention(?: it)?|"
    r"tell you|log it|write it down|report it)|i was (?:at it|there|passing)|"
    r"no (?:worries|problem)|better late than never|cheers|thanks|ta|about time|phew|finally|"
    r"at last|all good|well done(?: (?:all|everyone|everybody|you|us|bot|qmember))?)"
)
_FURTHER = Late(rf"(?:also |just )?(?:the )?qbin(?: one)?{_TAIL}")
_TO_COME = Late(r"(?:the )?qbin(?: one)?(?: (?:is|will be|comes|follows|ill do))? qday")
_ONLY_MUCH = Late(rf"(?:it was |that was |there was )?{_MUCH}")
_LONGEST = 20
"""Words between two stops; with more it tells a tale."""
_PARTS = words_in(", . ; ! : & - n") | {"and", "but", "then", "while", "whilst", "–", "—"}
_NO_REMARK = words_in(
    "not no didnt havent isnt wasnt nearly almost never if unless when should would could wish "
    "going gonna doing will ill shall must need needs want tomorrow later soon half ? qbin qmuch "
    "kidding joking except apart only"
)


@dataclass(slots=True)
class Part:
    """What stands between two signs or words that join: its words, marks put for names."""

    words: list[str] = field(default_factory=list)
    bins: list[str | None] = field(default_factory=list)
    days: list[date] = field(default_factory=list)
    to_come: list[date] = field(default_factory=list)
    litres: list[float] = field(default_factory=list)
    people: list[str] = field(default_factory=list)

    is_sure: bool = False
    """It names an amount, or a bin by more than "mine"."""

    @property
    def text(self) -> str:
        """Its words, one space between."""
        return " ".join(self.words)


def jobs_done(message: Message, *, reported: bool = False) -> tuple[Act, ...]:
    """The jobs that are done, and those put off to a day; none where something else is told.

    With `reported` a deed that is simply told ("drained, all fine") is one of them.
    """
    if not (message.has(CUES) and (reported or message.has(_ANSWERING))):
        return ()
    if message.items or message.asked:
        return ()
    if any(seen.sign == "no_liquid" for seen in message.signs):
        return ()
    told = _told(message)
    jobs = [one for one in told.out if isinstance(one, Done)] if told else []
    if told is None or not jobs or (told.remarked and not told.strong):
        return ()
    plain = not told.denied and all(PLAINLY in job.rules for job in jobs)
    if plain and not (reported and told.fine):
        return ()
    return (*told.out, *_seen(message, jobs))


_ANSWERING = words_in(
    "done did sorted finished dealt seen saw there yes no not didnt havent couldnt isnt wasnt "
    "hasnt still"
)
"""Words without one of which deeds are simply told, and no jobs answered."""


@dataclass(slots=True)
class _Told:
    """What the parts of a message tell."""

    out: list[Done | Later] = field(default_factory=list)
    strong: bool = False
    """It names a bin, a deed or an amount, so that a remark may stand beside it."""
    remarked: bool = False
    fine: bool = False
    """No more is remarked than that all is well."""
    denied: bool = False
    """Something is said not to be done."""


@once
def _told(message: Message) -> _Told | None:
    """What each part of the message tells; None where one of them is no answer and no remark."""
    told = _Told()
    for part in parts_of(message):
        if len(part.words) > _LONGEST:
            return None
        if _NOT_DONE.fullmatch(part.text):
            told.denied = True
        elif found := _done_in(part, message.today, told.out):
            told.strong |= part.is_sure or any(map(_says_which, found))
            told.out += found
        elif told.out and isinstance(told.out[-1], Done) and _ONLY_MUCH.fullmatch(part.text):
            told.out[-1] = replace(told.out[-1], volume_l=sum(part.litres))
            told.strong = True
        elif _NO_REMARK.isdisjoint(part.words) or _EXCUSE.fullmatch(part.text):
            is_fine = bool(told.out) and _FINE.fullmatch(part.text) is not None
            told.fine = is_fine and not told.remarked
            told.remarked |= not is_fine and _EXCUSE.fullmatch(part.text) is None
        else:
            return None
    dry = [one for one in told.out if isinstance(one, Done) and one.volume_l is None]
    return None if any(THERE in one.rules for one in dry) else told


def _says_which(job: Done | Later) -> bool:
    return isinstance(job, Done) and bool(job.what or job.each)


def _seen(message: Message, jobs: Sequence[Done]) -> Iterator[Observe]:
    """What was seen as the one job was done."""
    signs = tuple(dict.fromkeys(seen.sign for seen in message.signs))
    if signs and len(jobs) == 1:
        yield Observe(bin=jobs[0].bin, signs=signs, on=jobs[0].on, rules=(JOB_BY_JOB,))


def _done_in(part: Part, today: date, before: Sequence[Done | Later]) -> list[Done | Later]:
    """What a part of the message tells; a bin alone is one more of the job told before it."""
    if part.to_come:
        ahead = bool(part.bins) and _TO_COME.fullmatch(part.text)
        days = float((part.to_come[0] - today).days)
        return [Later(bin=part.bins[0], days=days, rules=(JOB_BY_JOB,))] if ahead else []
    done = Done(
        bin=part.bins[0] if part.bins else None,
        on=part.days[0] if part.days else None,
        volume_l=sum(part.litres) if part.litres else None,
        member=part.people[0] if part.people and "for" not in part.words else None,
        rules=(THERE if part.words[-1] == "there" else JOB_BY_JOB,),
    )
    if len(part.bins) > 1 or len(part.days) > 1:
        return []
    if found := _DONE.fullmatch(part.text) or _IS_DONE.fullmatch(part.text):
        named = found["thing"] or ""
        what = next((job for stem, job in _JOBS.items() if stem in named), None)
        if found["all"]:
            return [replace(done, each=True, count=_count(found["all"]))]
        return [replace(done, what=what)]
    if found := _DEED_DONE.fullmatch(part.text):
        what = next(job for stem, job in _JOBS.items() if stem in found["deed"])
        plainly = _ANSWERED.isdisjoint(part.words)
        if plainly and not found["deed"].endswith("ed"):
            return []  # "sealing tonight"
        return [replace(done, what=what, rules=(PLAINLY if plainly else JOB_BY_JOB,))]
    last = before[-1] if before else None
    if isinstance(last, Done) and _FURTHER.fullmatch(part.text):
        return [replace(done, what=last.what, rules=last.rules)]
    return []


_JOBS: dict[str, Job] = {
    "drain": "drain",
    "empti": "drain",
    "empty": "drain",
    "seal": "seal",
    "bur": "bury",
}
_ANSWERED = words_in("yes done sorted finished")


def _count(words: str) -> int:
    """How many "all four" are; 0 where it is everybody's, however many."""
    said = next((w for w in words.split() if w in _NUMBERS or w.isdecimal()), None)
    if words == "both":
        return 2
    return 0 if said is None else _NUMBERS.get(said) or int(said)


@once
def parts_of(message: Message) -> list[Part]:
    """The message cut at its signs and joining words."""
    bins = {ref.start: ref for ref in message.bins}
    days = {day.start: day for day in message.days if not day.aside}
    much = {a.start: a for a in message.amounts if a.quantity == "volume"}
    people = {ref.start: ref for ref in message.members}
    parts, part, at = [], Part(), 0
    while at < len(message.norms):
        end = at + 1
        if at in bins:
            end = bins[at].end
            part.bins.append(bins[at].name)
            part.words.append("qbin")
            part.is_sure |= not only_mine([bins[at]], message.norms)
        elif at in days:
            end = days[at].end
            is_over = days[at].past <= message.today
            (part.days if is_over else part.to_come).append(days[at].past)
            part.words.append("qday")
        elif at in much:
            end = much[at].end
            part.litres.append(much[at].value)
            part.words.append("qmuch")
            part.is_sure = True
        elif at in people:
            end = people[at].end
            part.people.append(people[at].name)
            part.words.append("qmember")
        elif message.norms[at] in _PARTS:
            parts.append(part)
            part = Part()
        else:
            part.words.append(message.norms[at])
        at = end
    return [each for each in (*parts, part) if each.words]
