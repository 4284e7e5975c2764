"""The one door: a text and its context in, acts out."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import (
    Act,
    Amend,
    Context,
    Decline,
    Drain,
    Later,
    Layer,
    Retract,
    Set,
    Unsure,
)
from handlers.reading.arrangements.doneelse import jobs_of_ours
from handlers.reading.arrangements.jobsdone import jobs_done
from handlers.reading.arrangements.moresettings import with_further_settings
from handlers.reading.arrangements.privacy import about_oneself
from handlers.reading.bins.binroll import bins_told
from handlers.reading.calendar.zones import US_ZONES, zone_of_home
from handlers.reading.completion.askedfood import with_asked_food
from handlers.reading.completion.diary import diary
from handlers.reading.completion.othersshare import CUES as BESIDES
from handlers.reading.completion.othersshare import others_share
from handlers.reading.corrections.anew import CUES as STRIKING
from handlers.reading.corrections.anew import behind_striking, bin_and_amount, is_only_one_thing
from handlers.reading.corrections.byday import CUES as CALLED_BY_DAY
from handlers.reading.corrections.byday import of_that_day
from handlers.reading.corrections.bydeed import STRUCK, struck_by_kind
from handlers.reading.corrections.byscraps import CUES as CALLED
from handlers.reading.corrections.byscraps import called
from handlers.reading.corrections.crossed import CUES as CROSSING
from handlers.reading.corrections.crossed import crossed
from handlers.reading.corrections.joining import put_in_besides
from handlers.reading.corrections.onrecord import on_record
from handlers.reading.corrections.otherdeed import CUES as OF_DEEDS
from handlers.reading.corrections.otherdeed import another_deed
from handlers.reading.corrections.repliedto import right_of_reply
from handlers.reading.corrections.sametoo import AS_JUST_TOLD
from handlers.reading.corrections.slips import put_right
from handlers.reading.deeds.barefigures import FIGURES, is_weighed_talk, with_unit
from handlers.reading.deeds.barelayers import (
    BARE,
    before_no_bran,
    behind_a_group,
    drained_glass,
    is_bare,
)
from handlers.reading.deeds.bothapart import CUES as BOTH
from handlers.reading.deeds.bothapart import parted_at_both
from handlers.reading.deeds.branmoves import bran_moved
from handlers.reading.deeds.buried import IN_GROUND, all_in_the_ground
from handlers.reading.deeds.dictation import as_report
from handlers.reading.deeds.soiltubs import CUES as IN_TUB
from handlers.reading.deeds.soiltubs import in_a_soil_tub
from handlers.reading.deeds.tongues import in_tongues
from handlers.reading.doubts.doubted import by_place
from handlers.reading.doubts.leanelse import without_of_else
from handlers.reading.doubts.onlyasked import without_only_asked
from handlers.reading.doubts.unmeasured import asked_first
from handlers.reading.doubts.untold import without_untold
from handlers.reading.message import Message, read_message
from handlers.reading.questions.headed import asked_by_heading
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
    acts = without_only_asked(_read(message), message)
    if message.context.in_room:
        acts = without_of_else(acts or jobs_done(message, reported=True), message)
        acts = by_place(jobs_of_ours(acts, message), message)
        if message.context.replied and all(isinstance(act, Decline | Later) for act in acts):
            acts = tuple(right_of_reply(message)) or acts
        acts = acts if _rests_on(acts, message) else _bare(message) or acts
        if not acts and message.context.of_bins:
            seen = seen_alone(message) or measured_alone(message) or asked_of_sign(message)
            acts = (seen,) if seen else ()
        acts = tuple(with_asked_food(acts, message))
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
    anew = bins_told(message)  # "another blue bin, 10 L" is no more of the last layer
    if context.after_bot and not anew and (leaning := replies(message)):
        return asked_first(with_further_settings(leaning, message), message)
    if (meant := put_right(message)) is not None:
        message = read_message(meant, context)
    found = _dictated(message) or _figures(message) or _without_bran(message)
    found = found or (_of_group(message) if context.in_room else ())
    return found or told(message) or _by_days(message) or _of_home(message)


def _as_a_whole(message: Message) -> tuple[Act, ...]:
    """What all its words together say, whatever the scores: of the sender, of a record, of jobs, of
    days one after the other.
    """
    context = message.context
    if context.to_bot and (found := about_oneself(message)):
        return found
    if context.in_room and (of_record := _of_the_record(message) or jobs_done(message)):
        return of_record
    if not context.in_room and (right := _right_of_struck(message)):
        return right
    days = _by_days(message)
    if days and isinstance(days[0], Layer):
        return asked_first(without_untold(days, message), message)
    if leant := on_record(message) or _put_in_besides(message):
        return leant
    one = _one_thing(message)
    return (one,) if one else ()


def _by_days(message: Message) -> tuple[Act, ...]:
    return diary(message) if message.context.in_room else ()


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


def _figures(message: Message) -> tuple[Act, ...]:
    """The layers that bare figures beside bins are: asked about, unless the talk is of weights."""
    said = with_unit(message) if message.context.in_room and message.bins else None
    acts = told(read_message(said, message.context)) if said else ()
    layers = [act for act in acts if isinstance(act, Layer) and act.bin is not None]
    if not layers or len(layers) < len(acts):
        return ()
    return (
        tuple(layers)
        if is_weighed_talk(message)
        else (Unsure(guess=tuple(layers), rules=(FIGURES,)),)
    )


def _put_in_besides(message: Message) -> tuple[Act, ...]:
    """What comes to the layer that another has just told, in the same bin."""
    said = put_in_besides(message)
    acts = told(read_message(f"added {said}", message.context)) if said else ()
    if not all(isinstance(act, Layer) and act.bin is None for act in acts):
        return ()
    bin = getattr(message.context.just_told, "bin", None)
    layers = [act for act in acts if isinstance(act, Layer)]
    return tuple(replace(act, bin=bin, rules=(*act.rules, AS_JUST_TOLD)) for act in layers)


def _rests_on(acts: Sequence[Act], message: Message) -> bool:
    """Whether something is told; what only puts another's record right is not."""
    context = message.context
    earlier = None if is_bare(message) else context.earlier  # a further layer, behind others'
    records = [record for record in (context.last, earlier) if record is not None]
    own = any(getattr(one, "member", None) in (None, context.sender) for one in records)
    return bool(acts) and (own or not all(isinstance(act, Amend) for act in acts))


def _bare(message: Message) -> tuple[Act, ...]:
    """The layer that an amount alone may be: asked about, unless the talk is of layers; or the
    liquid, which may be a drink."""
    if glass := drained_glass(message):
        return (Unsure(guess=(glass,), rules=(BARE,)),)
    if not is_bare(message):
        return ()
    said = message.text(0, len(message.words)).removeprefix("put ")
    acts = told(read_message(f"added {said}", message.context))
    layers = [act for act in acts if isinstance(act, Layer)]
    if not layers or len(layers) < len(acts):
        return ()
    return tuple(Unsure(guess=(layer,), rules=(BARE,)) for layer in layers)


def _of_group(message: Message) -> tuple[Act, ...]:
    """The layer of a group or class: into which of several bins is asked."""
    said = behind_a_group(message)
    rest = read_message(said, message.context) if said else None
    if rest is None or not is_bare(rest):
        return ()
    acts = told(read_message(f"added {said}", message.context))
    layers = [act for act in acts if isinstance(act, Layer)]
    return tuple(replace(act, each="either") for act in layers) if len(layers) == len(acts) else ()


def _without_bran(message: Message) -> tuple[Act, ...]:
    """The layer of which it is said that no starter was put on it."""
    said = before_no_bran(message) if message.context.in_room else None
    if said is None:
        return ()
    rest = read_message(said, message.context)
    acts = told(read_message(f"added {said}", message.context) if is_bare(rest) else rest)
    return acts if all(isinstance(act, Layer | Drain) for act in acts) else ()


def _one_thing(message: Message) -> Act | None:
    """What a message says as a whole, by its form: starter that came, all that lies in the ground,
    a question that is only a heading.
    """
    found: Act | None = bran_moved(message)
    if found is None and message.context.in_room and message.has(IN_GROUND | IN_TUB):
        found = all_in_the_ground(message) or in_a_soil_tub(message)
    return found or asked_by_heading(message)


def _dictated(message: Message) -> tuple[Act, ...]:
    """What the bot is told by name to write down: it is scraps, whatever its score."""
    dictated = as_report(message) if message.bot else None
    if dictated is None:
        return ()
    return told(dictated, "layer")


def _of_the_record(message: Message) -> tuple[Act, ...]:
    """What strikes out or puts right a record and says more of it than "that"."""
    if message.has(CALLED) and (by_name := called(message)):
        return (by_name,)
    if message.days and message.has(CALLED_BY_DAY) and (by_day := of_that_day(message)):
        return (by_day,)
    if message.has(STRIKING) and message.has(STRUCK) and (by_kind := struck_by_kind(message)):
        return (by_kind,)
    if message.has(OF_DEEDS) and (other := another_deed(message)):
        return other
    if message.has(CROSSING) and (other_bins := crossed(message)):
        return (other_bins,)
    return (
        _right_of_struck(message)
        or _told_anew(message)
        or _told_apart(message)
        or _told_of_another(message)
    )


def _right_of_struck(message: Message) -> tuple[Act, ...]:
    """What is right of a record that was first struck out: "scratch that, it was green"."""
    rest = _behind_striking(message)
    if rest is None:
        return ()
    if both := bin_and_amount(rest):
        return (both,)
    if is_only_one_thing(rest):  # as "no, it was green"
        said = rest.body.removeprefix("put ")
        rest = read_message(f"no, {said}", rest.context)
    elif not message.context.in_room:
        return ()
    return tuple(act for act in replies(rest) if isinstance(act, Amend))


def _behind_striking(message: Message) -> Message | None:
    """What is told behind a striking out, by itself."""
    at = behind_striking(message) if message.has(STRIKING) else 0
    if not at:
        return None
    context = replace(message.context, after_bot=True)
    return read_message(message.text(at, len(message.words)), context)


def _told_anew(message: Message) -> tuple[Act, ...]:
    """A record struck out with those that are to stand in its place."""
    rest = _behind_striking(message)
    acts = told(rest) if rest is not None else ()
    if not any(kind_of(act) in RECORD_KINDS for act in acts):
        return ()
    anew = any(act.act in RECORD_KINDS for act in acts) or None
    return (Retract(anew=anew, rules=("struck out, and told anew",)), *acts)


def _told_apart(message: Message) -> tuple[Act, ...]:
    """The layers of both bins, and that of one which is told beside them."""
    parts = parted_at_both(message) if message.has(BOTH) else None
    if parts is None:
        return ()
    halves = [read_message(part, message.context) for part in parts]
    acts = [told(half) for half in halves]
    layers = all(half and all(isinstance(act, Layer) for act in half) for half in acts)
    return (*acts[0], *acts[1]) if layers else ()


def _told_of_another(message: Message) -> tuple[Act, ...]:
    """The sender's layer, and what another put into the same bin besides."""
    share = others_share(message) if message.has(BESIDES) else None
    if share is None:
        return ()
    end, others = share
    own = told(read_message(message.text(0, end), message.context))
    layers = [act for act in own if isinstance(act, Layer)]
    if len(layers) != 1 or len(own) > 1:
        return ()
    return (*own, replace(others, bin=layers[0].bin, on=layers[0].on))
