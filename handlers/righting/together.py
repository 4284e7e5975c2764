"""The last records of one sitting, which are put right or struck out together."""

from dataclasses import replace

from handlers.answer import Answer, Handler, Turn
from handlers.reading.acts import Amend
from handlers.righting.corrections import NOTHING_THERE, each_right, struck_words, targets_of
from handlers.righting.whichrecord import told_in_sitting
from storage.rows import Entry


async def put_right(act: Amend, count: int, turn: Turn, carry_on: Handler) -> Answer:
    """Each of the records is written anew as corrected: of all, those that are of one day."""
    targets = await _told_together(count, turn)
    if not count:
        targets = [entry for entry in targets if entry.on == targets[-1].on]
    right = replace(act, several=None)
    answer = await each_right([(right, target) for target in targets], turn, carry_on)
    return answer if answer.entries else Answer(say=NOTHING_THERE)


async def struck(count: int, turn: Turn) -> Answer:
    """The records are struck out."""
    targets = await _told_together(count, turn)
    if not targets:
        return Answer(say=NOTHING_THERE)
    return Answer(strikes=targets, say=struck_words(targets, turn))


async def _told_together(count: int, turn: Turn) -> list[Entry]:
    """The sender's last `count` records, or with 0 all that they told just now; none where it
    cannot be told which these are.
    """
    last = await targets_of(turn)
    if turn.refers_to or len(last) == count:
        return last
    lately = await told_in_sitting(turn)
    if not count:
        return lately or last
    chosen, before = lately[-count:], lately[:-count]
    parted = {entry.event for entry in chosen} & {entry.event for entry in before}
    return [] if parted or len(chosen) < count else chosen
