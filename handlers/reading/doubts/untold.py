"""Records that the words of the whole message take back, whatever rules and scores say of them."""

from collections.abc import Callable, Sequence

from handlers.reading.acts import Act, Unsure
from handlers.reading.corrections.lessened import is_only_a_difference
from handlers.reading.deeds import spoons
from handlers.reading.deeds.bran import DENIED, MIXED_WITH, is_to_be_mixed, is_without_bran
from handlers.reading.deeds.liquid import DRAINED, is_of_fat
from handlers.reading.deeds.notburied import HOLES, PLANTED, is_hole_alone, is_planting
from handlers.reading.deeds.peeks import (
    CLOSED_WELL,
    HOLDING,
    LIDS,
    MENDED,
    is_closed_well,
    is_held_in_a_fall,
    is_mended,
)
from handlers.reading.deeds.sealed import BEFORE, HUSHED, is_hush, is_sealed_before
from handlers.reading.deeds.spoons import is_of_spoons, is_put_on
from handlers.reading.doubts import (
    awaited,
    besidebins,
    brews,
    examples,
    jests,
    kept,
    leaks,
    memories,
    mouths,
    namesense,
    notscraps,
    outlook,
    premises,
    underway,
)
from handlers.reading.doubts.askedof import without_asked_of
from handlers.reading.doubts.awaited import is_awaited
from handlers.reading.doubts.besidebins import without_beside
from handlers.reading.doubts.brews import is_brew, is_of_culture
from handlers.reading.doubts.examples import is_example, is_for_sale
from handlers.reading.doubts.guessed import without_guessed
from handlers.reading.doubts.jests import is_jest
from handlers.reading.doubts.kept import is_kept
from handlers.reading.doubts.leaks import is_leak
from handlers.reading.doubts.leanelse import is_not_the_bin
from handlers.reading.doubts.memories import (
    is_long_ago,
    is_of_others,
    is_on_screen,
    is_recalled,
    is_sum_told,
)
from handlers.reading.doubts.mouths import is_eaten
from handlers.reading.doubts.namesense import (
    is_of_council,
    is_of_person,
    is_of_pet,
    is_of_room,
    is_of_tank,
    is_seen_elsewhere,
    is_thrown_away,
)
from handlers.reading.doubts.notput import without_not_put
from handlers.reading.doubts.notscraps import (
    POURED,
    TAKEN,
    WEIGHING,
    is_bin_weighed,
    is_no_scraps,
    is_of_other_stuff,
    is_poured_over,
    is_taken_out,
)
from handlers.reading.doubts.otherwise import is_of_else
from handlers.reading.doubts.outlook import is_ahead, is_each_week, is_outlook, is_plan
from handlers.reading.doubts.premises import (
    is_feast_held,
    is_house_leaking,
    is_plumbing,
    is_premises_shut,
    is_thing_there,
    is_torn_up,
)
from handlers.reading.doubts.spoilt import without_spoilage
from handlers.reading.doubts.underway import is_under_way
from handlers.reading.food.notfood import STUFFS
from handlers.reading.measures import differences
from handlers.reading.message import Message
from handlers.reading.records import RECORD_KINDS
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.cues import WordCues

_WORDS = 150
"""Words of a message that is judged as a whole; a longer one tells more than one thing."""
_LAYER = frozenset({"layer"})
_DEEDS = RECORD_KINDS - {"observe"}
_TAKEN_BACK: tuple[tuple[Callable[[Message], bool], frozenset[str], frozenset[str]], ...] = (
    (is_jest, RECORD_KINDS, jests.CUES),
    (is_long_ago, RECORD_KINDS | {"ask"}, memories.CUES),
    (is_recalled, RECORD_KINDS, memories.CUES),
    (is_on_screen, RECORD_KINDS, memories.CUES),
    (is_of_others, RECORD_KINDS, memories.CUES),
    (is_sum_told, _LAYER, memories.SUMS),
    (is_example, RECORD_KINDS, examples.CUES),
    (is_for_sale, frozenset({"stock"}), examples.CUES),
    (is_to_be_mixed, frozenset({"stock"}), MIXED_WITH),
    (is_without_bran, frozenset({"stock", "batch"}), DENIED),
    (is_outlook, _LAYER, outlook.CUES),
    (is_plan, _DEEDS, outlook.CUES),
    (is_ahead, frozenset({"layer", "drain"}), outlook.CUES),
    (is_each_week, frozenset({"offer"}), outlook.CUES),
    (is_kept, _LAYER, kept.CUES),
    (is_eaten, _LAYER, mouths.CUES),
    (is_no_scraps, _LAYER, notscraps.CUES),
    (is_of_other_stuff, _LAYER, STUFFS),
    (is_bin_weighed, frozenset({"layer", "amend", "seal"}), WEIGHING),
    (is_taken_out, _LAYER, TAKEN),
    (is_poured_over, frozenset({"layer", "bury", "amend"}), POURED),
    (is_under_way, _LAYER, underway.CUES),
    (is_of_spoons, _LAYER, spoons.CUES),
    (is_put_on, frozenset({"drain", "done"}), spoons.CUES | spoons.HANDFULS),
    (is_only_a_difference, frozenset({"layer", "drain", "batch", "stock"}), differences.CUES),
    (is_brew, frozenset({"layer", "drain", "observe", "batch"}), brews.CUES),
    (is_of_culture, frozenset({"observe"}), brews.CULTURES),
    (is_awaited, frozenset({"seal", "drain", "bury"}), awaited.CUES),
    (is_hush, frozenset({"seal"}), HUSHED),
    (is_sealed_before, frozenset({"seal"}), BEFORE),
    (is_of_fat, frozenset({"drain"}), DRAINED),
    (is_leak, frozenset({"drain"}), leaks.CUES),
    (is_planting, frozenset({"bury"}), PLANTED),
    (is_hole_alone, frozenset({"bury"}), HOLES),
    (is_closed_well, frozenset({"seal"}), CLOSED_WELL | LIDS),
    (is_mended, frozenset({"seal"}), MENDED),
    (is_of_person, RECORD_KINDS | {"offer", "accept", "ask"}, namesense.CUES),
    (is_of_pet, frozenset({"bury", "observe"}), namesense.CUES),
    (is_of_room, RECORD_KINDS | {"ask"}, namesense.CUES),
    (is_of_tank, RECORD_KINDS, namesense.CUES),
    (is_of_council, RECORD_KINDS, namesense.CUES),
    (is_thrown_away, frozenset({"bury", "drain", "layer"}), namesense.CUES),
    (is_seen_elsewhere, frozenset({"observe"}), namesense.CUES),
    (is_premises_shut, frozenset({"seal"}), premises.CUES),
    (is_torn_up, frozenset({"bury"}), premises.CUES),
    (is_feast_held, _LAYER, premises.CUES),
    (is_thing_there, frozenset({"seal", "drain", "bury"}), premises.CUES),
    (is_house_leaking, frozenset({"layer", "drain", "observe"}), premises.CUES),
    (is_plumbing, frozenset({"drain", "observe"}), premises.CUES),
    (is_not_the_bin, frozenset({"amend"}), BIN_WORDS),
    (is_held_in_a_fall, frozenset({"seal"}), HOLDING),
)
"""What a message may be, with the kinds of record that such a message does not tell, and the words
without one of which it is none of that."""
_ROWS = WordCues({row: cues for row, (_, _, cues) in enumerate(_TAKEN_BACK)})


def without_untold(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts without the records that the message as a whole does not tell."""
    if not acts or len(message.norms) > _WORDS:
        return list(acts)
    acts = without_asked_of(without_spoilage(acts, message), message)
    acts = without_guessed(without_not_put(acts, message), message)
    if message.bins and message.has(besidebins.CUES):
        acts = without_beside(acts, message)
    left = told = {_kind(act) for act in acts}
    for row in sorted(_ROWS.heard(message.said)):
        is_such, kinds, _ = _TAKEN_BACK[row]
        if not left.isdisjoint(kinds) and is_such(message):
            left = left - kinds
    left = {kind for kind in left if not is_of_else(kind, message)}
    return list(acts) if left == told else [act for act in acts if _kind(act) in left]


def _kind(act: Act) -> str:
    """The kind of act; of what is asked about first, the kind that it may be."""
    return act.guess[0].act if isinstance(act, Unsure) and act.guess else act.act
