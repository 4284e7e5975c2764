"""Who has a bin, or each; what is on offer, and whose turn it is."""

from collections.abc import Sequence
from datetime import date

from handlers.answer import Answer, Turn
from handlers.people import is_same
from handlers.phrasing import capital, day, span, the
from handlers.reading.acts import Ask
from handlers.reading.questions.turnsasked import HAND_OVER, TURN
from handlers.recording.bins import NO_BINS, unknown
from handlers.sharing import rota
from handlers.sharing.keepers import custody_of, is_return, last_day, present_custody
from handlers.sharing.onoffer import bins_named
from handlers.sharing.rotas import rotas_of
from handlers.state import states_of
from storage.absences import absences
from storage.rows import Bin


async def asked(act: Ask, turn: Turn) -> Answer:
    """Who has a bin, or who has each; what is on offer, and whose turn it is."""
    if act.what == HAND_OVER:
        return await _handed_on(act.bin, turn)
    if act.what == TURN and act.member and (said := await _turns_of(act.member, act, turn)):
        return said
    states = await states_of(turn.book, turn.today)
    chosen = [s for s in states if not act.bin or is_same(s.bin.name, act.bin)]
    if not states:
        return Answer(say=NO_BINS)
    if not chosen:
        return unknown(act.bin or "", states)
    lines = [await _line(state.bin, turn) for state in chosen]
    on = act.on or turn.today
    then = [(await custody_of(turn.book, state.bin, on)).keeper for state in chosen]
    lines += await _away(on, then, turn)
    lines += await rota.lines([state.bin for state in chosen], turn, act.on)
    return Answer(say="\n".join(lines))


async def _turns_of(member: str, act: Ask, turn: Turn) -> Answer | None:
    """The next turn of a member in each rota, from a day on; None where there is no rota."""
    rotas = [
        one
        for one in await rotas_of(turn.book, turn.today)
        if act.bin is None or one.bin is None or is_same(one.bin.name, act.bin)
    ]
    if not rotas:
        return None
    since = max(act.on or turn.today, turn.today)
    said = []
    for one in rotas:
        coming = one.coming(turn.today, ahead=since - turn.today + one.round)
        own = [s for s in coming if s.end >= since and is_same(s.member or "", member)]
        if own:
            days = span(max(own[0].start, turn.today), own[0].end, turn.today)
            said.append(f"{capital(member)} is to {one.deed} {days}.")
    return Answer(say="\n".join(said) or f"No turn of {capital(member)}'s is coming up.")


async def _handed_on(bin: str | None, turn: Turn) -> Answer:
    """When a bin, or each that the asker has, is handed on, and to whom."""
    said, unasked = list[str](), list[str]()
    rotas = [one for one in await rotas_of(turn.book, turn.today) if one.duty == "keep"]
    for one in await bins_named(bin, turn):
        custody = await present_custody(turn.book, one, turn.today)
        stints = [s for rota in rotas if rota.bin in (None, one) for s in rota.coming(turn.today)]
        keeper = stints[0].member if stints and stints[0].start <= turn.today else custody.keeper
        own = turn.sender in (keeper, custody.keeper) or custody.is_lent_by(turn.sender)
        if bin is None and not own:
            continue
        then = next((s for s in stints if s.member and s.member != keeper), None)
        if custody.coming is None and then and custody.keeper == keeper:
            said.append(
                f"{capital(the(one.name))}: {then.member} takes it {day(then.start, turn.today)}."
            )
        elif custody.coming or custody.pending(turn.today, turn.book.room.zone):
            said.append(await _line(one, turn))
            said += [f"Then {then.member} {day(then.start, turn.today)}."] if then else []
        else:
            unasked.append(f"No hand-over of {the(one.name)} is agreed.")
    return Answer(say="\n".join(said or unasked))


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
        who = f"nobody, since {custody.leaver} left" if custody.leaver else "nobody"
    words = f"{capital(the(bin.name))}: {who}."
    for one in custody.ahead:
        if one.on and is_return(one):
            words += f" It is to go back to {one.member} {day(one.on, turn.today)}."
        elif one.on:
            words += f" {capital(day(one.on, turn.today))} {one.member} takes it."
    if offer := custody.pending(turn.today, turn.book.room.zone):
        until = day(last_day(offer, turn.book.room.zone), turn.today)
        words += f" On offer to {offer.receiver or 'anybody'} until {until}."
    return words
