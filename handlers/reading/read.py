"""The one door: a text and its context in, acts out."""

from handlers.reading.acts import Act, Decline, Later, Layer, Set, Unsure
from handlers.reading.arrangements.doneelse import jobs_of_ours
from handlers.reading.arrangements.jobsdone import jobs_done
from handlers.reading.arrangements.moresettings import with_further_settings
from handlers.reading.arrangements.privacy import about_oneself
from handlers.reading.arrangements.putoff import forgotten
from handlers.reading.bins.binroll import bins_told
from handlers.reading.bins.nameowed import name_settled, named_beside, without_begun_behind
from handlers.reading.bins.replaced import replaced
from handlers.reading.bins.vesselnames import named_with_vessel
from handlers.reading.calendar.zones import US_ZONES, zone_of_home
from handlers.reading.completion.askedfood import with_asked_food
from handlers.reading.completion.begun import further_begun, without_size_asked
from handlers.reading.completion.diary import diary
from handlers.reading.completion.planned import with_planned
from handlers.reading.context import Context
from handlers.reading.corrections.onrecord import on_record
from handlers.reading.corrections.repliedto import right_of_reply
from handlers.reading.corrections.slips import put_right
from handlers.reading.deeds.baredeeds import CUES as BARE_DEEDS
from handlers.reading.deeds.baredeeds import bare_deed
from handlers.reading.deeds.branmoves import bran_moved
from handlers.reading.deeds.buried import IN_GROUND, all_in_the_ground, done_in_the_ground
from handlers.reading.deeds.dictation import as_report
from handlers.reading.deeds.soiltubs import CUES as IN_TUB
from handlers.reading.deeds.soiltubs import in_a_soil_tub
from handlers.reading.deeds.tongues import in_tongues
from handlers.reading.doubts.doubted import by_place
from handlers.reading.doubts.leanelse import without_of_else
from handlers.reading.doubts.onlyasked import without_only_asked
from handlers.reading.doubts.unmeasured import asked_first
from handlers.reading.doubts.untold import without_untold
from handlers.reading.infull import (
    beside_the_last,
    of_amount_alone,
    of_figures,
    of_group,
    of_name,
    rests_on,
    without_bran,
)
from handlers.reading.message import Message, read_message
from handlers.reading.ofrecords import as_much, of_the_record, right_of_struck
from handlers.reading.questions.dayandhole import with_day_of_burial
from handlers.reading.questions.headed import asked_by_heading
from handlers.reading.questions.ofthelayer import asks_dose_of_layer
from handlers.reading.questions.soils import with_soil
from handlers.reading.records import RECORD_KINDS
from handlers.reading.replies import replies
from handlers.reading.room.echoes import with_echoes
from handlers.reading.signs.seenalone import asked_of_sign, measured_alone, seen_alone
from handlers.reading.weighed import kind_of, told


def read(text: str, context: Context) -> tuple[Act, ...]:
    """The acts that a message means, in the order said; small talk gives none."""
    return read_in(read_message(text, context))


def read_in(message: Message) -> tuple[Act, ...]:
    """The acts that a message means, once its words are read."""
    acts = named_with_vessel(without_only_asked(_read(message), message), message)
    if message.context.in_room:
        acts = without_of_else(acts or jobs_done(message, reported=True), message)
        acts = by_place(jobs_of_ours(acts, message), message) if acts else acts
        deed = bare_deed(message) if message.has(BARE_DEEDS) else None
        acts = (deed,) if deed else acts
        if message.context.replied and all(isinstance(act, Decline | Later) for act in acts):
            acts = tuple(right_of_reply(message)) or acts
        acts = acts if rests_on(acts, message) else of_amount_alone(message) or acts
        acts = named_beside(acts or of_name(message), message)
        acts = further_begun(without_begun_behind(acts, message), message)
        acts = without_size_asked(acts, message)
        if not acts and message.context.of_bins:
            seen = seen_alone(message) or measured_alone(message) or asked_of_sign(message)
            acts = (seen,) if seen else ()
        planned = with_planned(with_asked_food(acts, message), message)
        acts = tuple(with_day_of_burial(planned, message))
        acts = with_soil(with_echoes(acts, message) if acts else acts, message)
    message.kept.clear()  # its groups look back at it: it goes at once, not with the collector
    return acts


def _read(message: Message) -> tuple[Act, ...]:
    context = message.context
    if not message.words:
        return ()
    if whole := _as_a_whole(message):
        return whole
    if asked := in_tongues(message):  # no few words that lean on the last record
        plain = told(message)
        return plain if any(kind_of(act) in RECORD_KINDS for act in plain) else asked
    if other := replaced(message):
        return (other,)
    anew = bins_told(message)  # "another blue bin, 10 L" is no more of the last layer
    if context.after_bot and not anew and (leaning := replies(message)):
        return asked_first(with_further_settings(leaning, message), message)
    if (meant := put_right(message)) is not None:
        message = read_message(meant, context)
        if context.in_room and (alone := of_amount_alone(message)):
            return told(message) or alone
    found = _dictated(message) or of_figures(message) or without_bran(message)
    found = found or (of_group(message) if context.in_room else ())
    return found or told(message) or _by_days(message) or _of_home(message)


def _as_a_whole(message: Message) -> tuple[Act, ...]:
    """What all its words together say, whatever the scores: of the sender, of a record, of jobs, of
    days one after the other.
    """
    context = message.context
    if context.to_bot and (found := about_oneself(message)):
        return found
    if context.in_room and (of_record := of_the_record(message) or _job_done(message)):
        return of_record
    if not context.in_room and (right := right_of_struck(message) or as_much(message)):
        return right
    days = _by_days(message)
    if days and isinstance(days[0], Layer):
        return asked_first(without_untold(days, message), message)
    if leant := on_record(message) or beside_the_last(message):
        return leant
    one = _one_thing(message)
    return (one,) if one else ()


def _job_done(message: Message) -> tuple[Act, ...]:
    buried = done_in_the_ground(message) if message.has(IN_GROUND) else None
    return (buried,) if buried else tuple(jobs_done(message))


def _by_days(message: Message) -> tuple[Act, ...]:
    days = diary(message)
    if message.context.in_room:
        return days
    told = all(isinstance(act, Layer) for act in days) and "same" not in message.said
    return days if told else ()


def _of_home(message: Message) -> tuple[Act, ...]:
    """ "We're in Leeds", in a room whose clock nobody has set: is it to be set so?"""
    context = message.context
    unset = context.in_room and context.zone.key == "UTC" and not message.context.after_bot
    zone = zone_of_home(message) if unset else None
    if zone is None:
        return ()
    american = zone in US_ZONES and context.units == "metric"
    units = (Set(what="units", value="us"),) if american else ()
    return (Unsure(guess=(Set(what="zone", value=zone), *units), rules=("where they live",)),)


def _one_thing(message: Message) -> Act | None:
    """What a message says as a whole, by its form: starter that came, all that lies in the ground,
    a question that is only a heading.
    """
    found: Act | None = bran_moved(message)
    if found is None and message.context.in_room and message.has(_OF_SOIL):
        found = all_in_the_ground(message) or in_a_soil_tub(message)
    if found is None and message.context.in_room:
        found = name_settled(message) or forgotten(message)
    return found or asks_dose_of_layer(message) or asked_by_heading(message)


_OF_SOIL = IN_GROUND | IN_TUB


def _dictated(message: Message) -> tuple[Act, ...]:
    """What the bot is told by name to write down: it is scraps, whatever its score."""
    dictated = as_report(message) if message.bot else None
    if dictated is None:
        return ()
    return told(dictated, "layer")
