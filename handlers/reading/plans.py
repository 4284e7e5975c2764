"""The second door of the reading: a text and its context in, what is arranged in it out.

What stands here is no act of the reading contract, so that `python -m bot read` prints none of it.
"""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property

from handlers.reading import read as contract
from handlers.reading.acts import Act, Amend, Ask, Batch, Done, Drain, Later, Layer, Observe, Open
from handlers.reading.arranged import Plan
from handlers.reading.arrangements.absence import CUES as ABSENCE_CUES
from handlers.reading.arrangements.absence import absences
from handlers.reading.arrangements.aftercare import CUES as AFTER_CARE_CUES
from handlers.reading.arrangements.aftercare import after_care
from handlers.reading.arrangements.awaychanged import CUES as AWAY_CHANGED_CUES
from handlers.reading.arrangements.awaychanged import away_changed
from handlers.reading.arrangements.calls import CUES as CALL_CUES
from handlers.reading.arrangements.calls import calls
from handlers.reading.arrangements.communal import Condition
from handlers.reading.arrangements.deeddays import CUES as DEED_DAY_CUES
from handlers.reading.arrangements.deeddays import deed_days
from handlers.reading.arrangements.dutydays import CUES as DUTY_DAY_CUES
from handlers.reading.arrangements.dutydays import duty_days
from handlers.reading.arrangements.favours import CUES as FAVOUR_CUES
from handlers.reading.arrangements.favours import favours
from handlers.reading.arrangements.handing import CUES as HANDING_CUES
from handlers.reading.arrangements.handing import handing
from handlers.reading.arrangements.lending import CUES as LENDING_CUES
from handlers.reading.arrangements.lending import lending
from handlers.reading.arrangements.owndates import CUES as OWN_DATE_CUES
from handlers.reading.arrangements.owndates import own_dates
from handlers.reading.arrangements.pausing import CUES as PAUSING_CUES
from handlers.reading.arrangements.pausing import pausing
from handlers.reading.arrangements.turntaking import CUES as TURN_CUES
from handlers.reading.arrangements.turntaking import turntaking
from handlers.reading.arrangements.upkeep import CUES as UPKEEP_CUES
from handlers.reading.arrangements.upkeep import upkeep
from handlers.reading.arrangements.wanting import CUES as WANTING_CUES
from handlers.reading.arrangements.wanting import wanting
from handlers.reading.arrangements.whokeeps import CUES as KEEPING_CUES
from handlers.reading.arrangements.whokeeps import who_keeps
from handlers.reading.bins.binroll import bins_told
from handlers.reading.bins.sizes import CUES as SIZE_CUES
from handlers.reading.bins.sizes import sizes
from handlers.reading.completion.planned import as_told
from handlers.reading.context import Context
from handlers.reading.corrections.leaning import more, never_done
from handlers.reading.corrections.numberright import another_number
from handlers.reading.corrections.restoring import CUES as RESTORING_CUES
from handlers.reading.corrections.restoring import restored
from handlers.reading.deeds.betweenbins import CUES as BETWEEN_CUES
from handlers.reading.deeds.betweenbins import between_bins
from handlers.reading.deeds.branused import CUES as STARTER_USED_CUES
from handlers.reading.deeds.branused import starter_used
from handlers.reading.deeds.fullness import CUES as FULLNESS_CUES
from handlers.reading.deeds.fullness import fullness
from handlers.reading.deeds.reopening import CUES as REOPENING_CUES
from handlers.reading.deeds.reopening import reopened
from handlers.reading.food.unfit import CUES as UNFIT_CUES
from handlers.reading.food.unfit import unfit
from handlers.reading.found import Found
from handlers.reading.harm.harms import CUES as HARM_CUES
from handlers.reading.harm.harms import harm
from handlers.reading.measures.gallons import which_measure
from handlers.reading.message import Message, read_message
from handlers.reading.questions.conditions import CUES as CONDITION_CUES
from handlers.reading.questions.conditions import conditions
from handlers.reading.questions.duequestions import CUES as DUE_CUES
from handlers.reading.questions.duequestions import due_questions
from handlers.reading.questions.followup import asked_again, may_follow
from handlers.reading.questions.ifdone import CUES as IF_DONE_CUES
from handlers.reading.questions.ifdone import if_done
from handlers.reading.questions.lessons import CUES as LESSON_CUES
from handlers.reading.questions.lessons import lessons
from handlers.reading.questions.mostof import CUES as MOST_CUES
from handlers.reading.questions.mostof import most_of
from handlers.reading.questions.outlets import CUES as OUTLET_CUES
from handlers.reading.questions.outlets import outlets
from handlers.reading.questions.recalling import CUES as RECALLING_CUES
from handlers.reading.questions.recalling import recalling
from handlers.reading.questions.recipe import CUES as RECIPE_CUES
from handlers.reading.questions.recipe import recipe
from handlers.reading.questions.settled import CUES as SETTLED_CUES
from handlers.reading.questions.settled import settled
from handlers.reading.questions.turnsasked import CUES as TURN_ASKED_CUES
from handlers.reading.questions.turnsasked import turns_asked
from handlers.reading.room.bytopic import by_topic
from handlers.reading.signs.danger import dangers
from handlers.reading.words.cues import Cues
from handlers.reading.words.madeplain import made_plain
from handlers.reading.words.words import READ_AT_MOST

# Each reader with the letters without one of which it finds nothing.
_READERS: Sequence[tuple[Callable[[Message], Iterator[Found]], tuple[str, ...]]] = (
    (harm, HARM_CUES),
    (pausing, PAUSING_CUES),
    (calls, CALL_CUES),
    (own_dates, OWN_DATE_CUES),
    (away_changed, AWAY_CHANGED_CUES),
    (absences, ABSENCE_CUES),
    (who_keeps, KEEPING_CUES),
    (wanting, WANTING_CUES),
    (favours, FAVOUR_CUES),
    (deed_days, DEED_DAY_CUES),
    (duty_days, DUTY_DAY_CUES),
    (after_care, AFTER_CARE_CUES),
    (lending, LENDING_CUES),
    (handing, HANDING_CUES),
    (turns_asked, TURN_ASKED_CUES),
    (turntaking, TURN_CUES),
    (upkeep, UPKEEP_CUES),
    (recalling, RECALLING_CUES),
    (if_done, IF_DONE_CUES),
    (due_questions, DUE_CUES),
    (sizes, SIZE_CUES),
    (reopened, REOPENING_CUES),
    (between_bins, BETWEEN_CUES),
    (fullness, FULLNESS_CUES),
    (starter_used, STARTER_USED_CUES),
    (restored, RESTORING_CUES),
    (recipe, RECIPE_CUES),
    (conditions, CONDITION_CUES),
    (outlets, OUTLET_CUES),
    (most_of, MOST_CUES),
    (unfit, UNFIT_CUES),
    (lessons, LESSON_CUES),
    (settled, SETTLED_CUES),
)
_CUES = Cues(dict(_READERS))


def read(text: str, context: Context) -> tuple[Act | Plan, ...]:
    """What a message arranges, and the acts that the rest of it means."""
    return Reading(text, context).acts


@dataclass
class Reading:
    """A text, read into words and marks, and from these into acts, once somebody asks for them."""

    text: str
    context: Context

    @cached_property
    def message(self) -> Message:
        """The words of all of it, with their marks."""
        return read_message(self.text, self.context)

    @cached_property
    def acts(self) -> tuple[Act | Plan, ...]:
        """What it arranges, and what the rest of it means."""
        return _acts(self)


def _acts(said: Reading) -> tuple[Act | Plan, ...]:
    text, context = said.text, said.context
    leans = context.asked or any(
        isinstance(record, Batch | Drain | Layer) for record in (context.last, context.just_told)
    )
    if leans and may_follow(text) and (again := asked_again(said.message)):
        return again
    if context.talk_of and (meant := by_topic(said.message)):
        return meant
    arranged, rest = _arranged(said)
    message = rest.message
    if (context.last or context.earlier) is not None:
        own = not context.after_bot and not bins_told(message)
        leaning = never_done(message) or (own and (more(message) or another_number(message)))
        if leaning:
            return (*arranged, leaning)
    acts = () if arranged and _is_scrap(message) else contract.read_in(message)
    if not (arranged or acts):
        return tuple(dangers(text, message))
    measure = which_measure(text, context, acts)
    return (*arranged, *acts, *((measure,) if measure else ()))


def _is_scrap(message: Message) -> bool:
    """Whether so little is left of a message that it means nothing by itself ("ok?")."""
    return sum(word.kind != "sign" for word in message.words) < 2


def planned_in(said: Reading) -> tuple[Layer, ...]:
    """What its sender means to put in, with how much of it, where it tells of no record."""
    told = None if any(not isinstance(act, Plan) for act in said.acts) else as_told(said.message)
    acts = contract.read_in(told) if told else ()
    layers = tuple(act for act in acts if isinstance(act, Layer) and (act.mass_kg or act.volume_l))
    return layers if len(layers) == len(acts) else ()


def plans(text: str, context: Context) -> tuple[tuple[Plan | Ask | Open | Later | Done, ...], str]:
    """What a message arranges, and the rest of its words."""
    arranged, rest = _arranged(Reading(text, context))
    return arranged, rest.text


def _arranged(said: Reading) -> tuple[tuple[Plan | Ask | Open | Later | Done, ...], Reading]:
    """What is arranged, and what is left to read: the same where no words of it are taken."""
    context, heard = said.context, _CUES.heard(made_plain(said.text[:READ_AT_MOST]).casefold())
    readers = [reader for reader, _ in _READERS if reader in heard] if heard else []
    if harm not in readers and context.harmed:
        readers.insert(0, harm)  # "she threw up" is of whoever swallowed of it
    passing = context.on_offer or context.took or context.on_handover or context.taken
    if handing not in readers and passing:
        readers.append(handing)  # "me!" answers only what is on offer
    if own_dates not in readers and context.on_reminder:
        readers.append(own_dates)  # "make it Saturday" moves only what was just set
    if turntaking not in readers and context.on_rota:
        readers.append(turntaking)  # "monthly" is the length of its turns
    if away_changed not in readers and context.on_absence:
        readers.append(away_changed)  # "sorry, 9th to 15th" puts only what was just told right
    if not readers or bins_told(said.message):
        return (), said
    found = list(_apart(one for reader in readers for one in reader(said.message)))
    if context.took and any(isinstance(one.plan, Condition) for one in found):
        found = _beside_records(found, contract.read_in(said.message))
    return tuple(one.plan for one in found), _without(found, said)


def _without(found: Sequence[Found], said: Reading) -> Reading:
    """What was said without the words of what was found in it."""
    own = sorted((one for one in found if not one.aside), key=lambda one: -one.start)
    if not own:
        return said
    rest, words = said.message.body, said.message.words
    for one in own:
        first, last = words[one.start], words[one.end - 1]
        rest = f"{rest[: first.start]} {rest[last.end :]}"
    return Reading(rest, said.context)


def _beside_records(found: Sequence[Found], acts: Sequence[Act]) -> list[Found]:
    """What is recorded or asked is no answer to a bin's card; what is seen in it may be both.

    A weight that would put a record right is the bin's here.
    """
    if all(isinstance(act, Observe | Amend) for act in acts):
        return list(found)
    return [one for one in found if not isinstance(one.plan, Condition)]


def _apart(found: Iterable[Found]) -> Iterator[Found]:
    """Plans told by words that no earlier one was told by."""
    taken: list[Found] = []
    for one in found:
        if all(one.end <= other.start or other.end <= one.start for other in taken):
            taken.append(one)
            yield one
