"""Before a record is changed that may not be meant, or is another's: is it to be?"""

from collections.abc import Sequence
from dataclasses import replace

from handlers.answer import Answer, Query, Turn
from handlers.phrasing import capital, day, the, volume, whose
from handlers.practice.figure import listed
from handlers.reading.acts import Amend, Retract
from handlers.recording.describing import describe
from handlers.recording.layers import right_amount
from storage.rows import Entry


def is_meant(
    act: Amend | Retract,
    records: Sequence[Entry],
    turn: Turn,
    *,
    called: str = "last record",
    owner: str | None = None,
    deed: str | None = None,
) -> Answer:
    """ "Ines's last record is 2 kg in the shed bin. Shall I strike it out?"

    `records`: those of one message, the one that would be changed last; `called`: what they are
    to their owner; `owner`: whose they are, if not their writer's; `deed`: what would be done, if
    it is not plain from the act. A yes does it.
    """
    last = records[-1]
    their = capital(whose(owner or last.writer, turn.sender))
    words = listed([describe(entry, turn) for entry in records])
    deed = deed or (_put_right(act, records, turn) if isinstance(act, Amend) else "strike it out")
    return Answer(
        say=f"{their} {called} is {words}. Shall I {deed}?",
        query=Query.about(replace(act, of=last.event), lacks="yes"),
    )


def _put_right(act: Amend, records: Sequence[Entry], turn: Turn) -> str:
    """What a correction would do, as far as it would change anything."""
    bins = {entry.bin.name if entry.bin else None for entry in records}
    days, members = {entry.on for entry in records}, {entry.member for entry in records}
    right = [
        right_amount(act, turn),
        volume(act.capacity_l, turn.units) if act.capacity_l else "",
        the(act.bin) if act.bin and {act.bin} != bins else "",
        day(act.on, turn.today) if act.on and {act.on} != days else "",
    ]
    deeds = [f"correct it to {listed(list(filter(None, right)))}"] if any(right) else []
    if act.member and {act.member} != members:
        deeds.append(f"put it down to {act.member}")
    return " and ".join(deeds) or "correct it"
