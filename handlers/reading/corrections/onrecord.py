"""What completes or puts right the record that the talk is on, or tells it again."""

from handlers.reading.acts import Act
from handlers.reading.bins.nameowed import name_owed
from handlers.reading.bins.sizes import sizes_of_all
from handlers.reading.corrections.amountowed import amount_owed
from handlers.reading.corrections.bydeed import CUES as CALLED_BY_KIND
from handlers.reading.corrections.bydeed import kind_right
from handlers.reading.corrections.dayright import and_so, opened_on
from handlers.reading.corrections.doerright import was_by_me
from handlers.reading.corrections.fewwords import changed_by_few
from handlers.reading.corrections.furtherdays import CUES as OF_DAYS
from handlers.reading.corrections.furtherdays import further_days
from handlers.reading.corrections.goneon import CUES as GOING_ON
from handlers.reading.corrections.goneon import goes_on
from handlers.reading.corrections.joining import as_much_as_told
from handlers.reading.corrections.justtold import CUES as OF_JUST_TOLD
from handlers.reading.corrections.justtold import anothers_right, own_right
from handlers.reading.corrections.kindtold import kind_told
from handlers.reading.corrections.onlythese import not_of_these
from handlers.reading.corrections.onlywrong import only_wrong, undone
from handlers.reading.corrections.otherbin import (
    in_this_bin,
    perhaps_another_bin,
    went_elsewhere,
)
from handlers.reading.corrections.partright import parts_right
from handlers.reading.corrections.placeright import place_owed
from handlers.reading.corrections.samebin import bare_in_another, same_bin_again
from handlers.reading.corrections.sametoo import (
    as_just_told,
    done_too,
    drained_again,
    drained_as_before,
    sealed_again,
)
from handlers.reading.corrections.splitright import share_moved
from handlers.reading.corrections.vesselright import CUES as OF_VESSELS
from handlers.reading.corrections.vesselright import vessel_right
from handlers.reading.corrections.warmright import warm_right
from handlers.reading.message import Message
from handlers.reading.room.askeddeed import told_as_asked


def on_record(message: Message) -> tuple[Act, ...]:
    """What completes or puts right the record that the talk is on, or tells it again."""
    context = message.context
    if context.in_room and (right := _put_right_by_name(message)):
        return right
    if context.asked_deed and (deed := told_as_asked(message)):
        return (deed,)
    if context.just_told and (too := _of_just_told(message)):
        return (too,)
    if context.in_room and (as_before := drained_as_before(message)):
        return (as_before,)
    if context.earlier is None and context.last is None:
        return ()
    if context.in_room and (further := _further(message)):
        return further
    leant: Act | None = amount_owed(message) or place_owed(message) or same_bin_again(message)
    leant = leant or opened_on(message) or (_in_talk(message) if context.in_room else None)
    return (leant,) if leant else ()


def _of_just_told(message: Message) -> Act | None:
    """What goes on from what another has just told, or puts it right."""
    right = anothers_right(message) if message.has(OF_JUST_TOLD) else None
    return right or as_just_told(message) or as_much_as_told(message)


def _further(message: Message) -> tuple[Act, ...]:
    """The same of other days, more drainings of the bin, or the size of all bins just told of."""
    if message.has(OF_DAYS) and (days := further_days(message)):
        return days
    return (drained_again(message) if message.days else ()) or sizes_of_all(message)


def _in_talk(message: Message) -> Act | None:
    """What only a room is told in so few words."""
    leant: Act | None = name_owed(message) or done_too(message) or sealed_again(message)
    if leant is None and message.bins:
        leant = bare_in_another(message)
    if leant is None and message.has(GOING_ON):
        leant = goes_on(message)
    if leant is None and message.days:
        leant = and_so(message)
    return leant


def _put_right_by_name(message: Message) -> tuple[Act, ...]:
    """What is put right of the records that it names, whoever told them."""
    shared = share_moved(message) if message.context.last else ()
    if shared or (shared := parts_right(message)):
        return shared
    found: Act | None = None
    if message.context.last is not None:
        found = warm_right(message) or undone(message)
    found = (
        found
        or only_wrong(message)
        or went_elsewhere(message)
        or was_by_me(message)
        or kind_told(message)
    )
    found = found or in_this_bin(message) or not_of_these(message)
    if found is None and message.has(OF_JUST_TOLD) and message.bins:
        found = own_right(message)
    if found is None and message.has(CALLED_BY_KIND):
        found = kind_right(message)
    if found is None and message.has(OF_VESSELS):
        found = vessel_right(message)
    if found is not None:
        return (found,)
    perhaps = perhaps_another_bin(message)
    return changed_by_few(message) or ((perhaps,) if perhaps else ())
