"""What an amount is of where neighbours talk of one: of the starter they speak of, or of the layer
that lacks it.
"""

from collections.abc import Sequence

from bot.heard import Said
from bot.lastasked import asked_in
from bot.talk import ASKS_AMOUNT, TALK_GOES_ON, TALKS_BRAN, Talk
from handlers.reading.acts import Act, Amend, Ask, Batch, Layer, Stock, Unsure, meant
from handlers.reading.arranged import Plan
from handlers.reading.corrections.amountowed import is_measured
from handlers.reading.plans import Reading
from handlers.reading.room.ofbran import may_be_dose
from storage import traces

MOST_OF_BRAN = 2
"""Messages looked back on for whether the talk is of starter."""


async def without_doses(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk
) -> list[Act | Plan]:
    """The acts; none of the book where so few spoons or grams are of the starter talked of."""
    if reading.context.to_bot or not may_be_dose(reading.message):
        return list(acts)
    db, address = talk.book.db, talk.book.room.address
    before = await traces.said_lately(db, address, talk.item.id, MOST_OF_BRAN)
    if said.replies_to:
        replied = await traces.trace(db, address, said.replies_to)
        before = [replied] if replied else []
    for one in before:
        if said.at - one.at > TALK_GOES_ON or await talk.book.of_event(one.event):
            break
        asks = one.sender != said.sender and _asks_dose(one.mark or "") and not lacking(reading)
        if asks or (one.mark or "").endswith(TALKS_BRAN):
            kept: list[Act | Plan] = [act for act in acts if isinstance(act, Batch | Stock)]
            return kept or [act for act in acts if isinstance(act, Ask) and "?" in said.body]
    return list(acts)


def lacking(reading: Reading) -> bool:
    """Whether the layer in talk lacks its amount: one that is told may be of that."""
    record = reading.context.last or reading.context.earlier
    return isinstance(record, Layer) and not is_measured(record)


def _asks_dose(mark: str) -> bool:
    """Whether the mark is that of a message that asked us how much starter goes on."""
    return any(getattr(act, "topic", None) in ("dose", "starter") for act in asked_in(mark))


async def owed_to_neighbour(
    acts: Sequence[Act | Plan], said: Said, reading: Reading, talk: Talk
) -> list[Act | Plan]:
    """The amount that the sender's layer lacks, where another has just asked how much it was; none
    where nothing of the sort was told.
    """
    told = [meant(act) for act in acts if isinstance(act, Unsure | Amend)]
    owed = (
        lacking(reading) and all(isinstance(act, Amend) for act in told) and len(told) == len(acts)
    )
    if not (told and owed) or said.replies_to:
        return []
    before = await traces.last_said(talk.book.db, talk.book.room.address, talk.item.id)
    asked = before is not None and before.sender != said.sender and before.mark == ASKS_AMOUNT
    lately = before is not None and said.at - before.at <= TALK_GOES_ON
    return list(told) if asked and lately else []
