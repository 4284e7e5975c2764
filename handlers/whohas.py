"""Who has a bin, or each; what is on offer, and whose turn it is."""

from collections.abc import Sequence
from datetime import date

from handlers import rota
from handlers.answer import Answer, Turn
from handlers.bins import NO_BINS, unknown
from handlers.keepers import last_day, present_custody
from handlers.people import is_same
from handlers.phrasing import capital, day, the
from handlers.reading.acts import Ask
from handlers.state import states_of
from storage.absences import absences
from storage.rows import Bin


async def asked(act: Ask, turn: Turn) -> Answer:
    """Who has a bin, or who has each; what is on offer, and whose turn it is."""
    states = await states_of(turn.book, turn.today)
    chosen = [s for s in states if not act.bin or is_same(s.bin.name, act.bin)]
    if not states:
        return Answer(say=NO_BINS)
    if not chosen:
        return unknown(act.bin or "", states)
    lines = [await _line(state.bin, turn) for state in chosen]
    lines += await _away(act.on or turn.today, [state.keeper for state in chosen], turn)
    lines += await rota.lines([state.bin for state in chosen], turn, act.on)
    return Answer(say="\n".join(lines))


async def _away(on: date, keepers: Sequence[str | None], turn: Turn) -> list[str]:
    """Which of the keepers is away on a day, and who stands in, if that was said."""
    said = []
    for one in await absences(turn.book, on, on):
        if one.member in keepers:
            who = f"{one.stand_in} stands in" if one.stand_in else "who can stand in?"
            said.append(f"{capital(one.member)} is away {day(on, turn.today)}: {who}")
    return said


async def _line(bin: Bin, turn: Turn) -> str:
    custody = await present_custody(turn.book, bin, turn.today)
    who = custody.keeper or "nobody yet"
    if custody.left:
        who = f"nobody, since {custody.left.member} left"
    words = f"{capital(the(bin.name))}: {who}."
    if custody.coming and custody.coming.on:
        words += f" {capital(day(custody.coming.on, turn.today))} {custody.coming.member} takes it."
    if offer := custody.pending(turn.today, turn.book.room.zone):
        until = day(last_day(offer, turn.book.room.zone), turn.today)
        words += f" On offer to {offer.receiver or 'anybody'} until {until}."
    return words
