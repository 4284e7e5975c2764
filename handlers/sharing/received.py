"""Somebody has a bin: it was brought to them, or they have it back."""

from dataclasses import replace

from handlers.answer import SILENCE, Answer, Query, Turn
from handlers.people import is_same
from handlers.phrasing import day, the
from handlers.reading.acts import Accept
from handlers.reading.arrangements.communal import Taking
from handlers.sharing.custody import accepted
from handlers.sharing.handover import found as seen
from handlers.sharing.keepers import present_custody
from handlers.sharing.onoffer import bin_meant, bins_named, in_use


async def had(plan: Taking, turn: Turn) -> Answer:
    """Somebody says to have a bin; of its keeper that is no news."""
    about = await bin_meant(plan.bin, turn)
    if about is None and plan.again:
        about = await _had_before(turn)
    known = await in_use(about, turn) if about else None
    if known:
        custody = await present_custody(turn.book, known, turn.today)
        if custody.keeper == turn.sender and custody.offer is None:
            return SILENCE
    if plan.again and (before := await _had_before(turn)) and about in (None, before):
        return await accepted(Accept(bin=before, on=turn.today, firm=True), turn)
    if plan.here and (early := await _early(about, turn)):
        return early
    answer = await accepted(
        Accept(bin=about, bare="aside" if plan.by_name or plan.here else None), turn
    )
    taken = next((one for one in answer.entries if one.act == "accept"), None)
    if plan.found is None or taken is None or not isinstance(taken.bin, str):
        return answer
    noted = await seen(replace(plan.found, bin=taken.bin), turn)
    return replace(
        answer,
        entries=[*answer.entries, *noted.entries],
        say="\n".join(filter(None, [answer.say, noted.say])),
    )


async def _had_before(turn: Turn) -> str | None:
    """The one bin that somebody took over from the sender."""
    found = []
    for bin in await turn.book.bins():
        custody = await present_custody(turn.book, bin, turn.today)
        if custody.by and custody.by.act == "accept" and custody.keeper != turn.sender:
            before = await present_custody(turn.book.without([custody.by]), bin, turn.today)
            found += [bin.name] if before.keeper == turn.sender else []
    return found[0] if len(found) == 1 else None


async def _early(about: str | None, turn: Turn) -> Answer | None:
    """A question to the one who is to have a bin on a day to come, and may have it already."""
    for bin in await bins_named(about, turn):
        custody = await present_custody(turn.book, bin, turn.today)
        offer = custody.pending(turn.today, turn.book.room.zone)
        is_named = offer is not None and is_same(offer.receiver, turn.sender)
        agreed = custody.coming if custody.coming and custody.coming.member == turn.sender else None
        meant = offer if is_named else agreed
        if meant and meant.on and meant.on > turn.today:
            on = day(meant.on, turn.today)
            sure = Accept(bin=bin.name, on=turn.today, firm=True)
            return Answer(
                say=f"You are to have {the(bin.name)} {on}. Shall I write down that you keep it "
                "from now on?",
                query=Query.about(sure, lacks="yes"),
            )
    return None
