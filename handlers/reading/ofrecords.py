"""What strikes out or puts right a record, and what is told anew in its place or beside it."""

from dataclasses import replace

from handlers.reading.acts import Act, Amend, Layer, Retract
from handlers.reading.completion.othersshare import CUES as BESIDES
from handlers.reading.completion.othersshare import SAME, likewise, others_share
from handlers.reading.corrections.anew import CUES as STRIKING
from handlers.reading.corrections.anew import behind_striking, bin_and_amount, is_only_one_thing
from handlers.reading.corrections.byday import CUES as CALLED_BY_DAY
from handlers.reading.corrections.byday import of_that_day
from handlers.reading.corrections.bydeed import STRUCK, struck_by_kind
from handlers.reading.corrections.byscraps import CUES as CALLED
from handlers.reading.corrections.byscraps import called
from handlers.reading.corrections.crossed import CUES as CROSSING
from handlers.reading.corrections.crossed import crossed
from handlers.reading.corrections.leftout import CUES as LEAVING_OUT
from handlers.reading.corrections.leftout import left_out
from handlers.reading.corrections.otherdeed import CUES as OF_DEEDS
from handlers.reading.corrections.otherdeed import another_deed
from handlers.reading.corrections.severalright import CUES as OF_SEVERAL
from handlers.reading.corrections.severalright import several_right
from handlers.reading.deeds.bothapart import CUES as BOTH
from handlers.reading.deeds.bothapart import parted_at_both
from handlers.reading.message import Message, read_message
from handlers.reading.records import RECORD_KINDS
from handlers.reading.replies import replies
from handlers.reading.weighed import kind_of, told
from handlers.reading.words.once import once


def of_the_record(message: Message) -> tuple[Act, ...]:
    """What strikes out or puts right a record and says more of it than "that"."""
    if message.has(CALLED) and (by_name := called(message)):
        return (by_name,)
    if message.has(LEAVING_OUT) and (out := left_out(message)):
        return (out,)
    if message.days and message.has(CALLED_BY_DAY) and (by_day := of_that_day(message)):
        return (by_day,)
    if message.has(OF_SEVERAL) and (several := several_right(message)):
        return several
    if message.has(STRIKING) and message.has(STRUCK) and (by_kind := struck_by_kind(message)):
        return (by_kind,)
    if message.has(OF_DEEDS) and (other := another_deed(message)):
        return other
    if message.has(CROSSING) and (other_bins := crossed(message)):
        return (other_bins,)
    return (
        right_of_struck(message)
        or _told_anew(message)
        or _told_apart(message)
        or _told_of_another(message)
        or as_much(message)
    )


def right_of_struck(message: Message) -> tuple[Act, ...]:
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


@once
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
    if rest is None:
        return ()
    acts = told(rest)
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
    own = _one_layer(message, end)
    return () if own is None else (own, replace(others, bin=own.bin, on=own.on))


def as_much(message: Message) -> tuple[Act, ...]:
    """A layer, and the same that another put in too."""
    too = likewise(message) if message.has(SAME) else None
    layer = _one_layer(message, too[0]) if too else None
    return (layer, replace(layer, member=too[1])) if too and layer else ()


def _one_layer(message: Message, end: int) -> Layer | None:
    """The layer that the words up to one tell, if they tell nothing else."""
    acts = told(read_message(message.text(0, end), message.context))
    return acts[0] if len(acts) == 1 and isinstance(acts[0], Layer) else None
