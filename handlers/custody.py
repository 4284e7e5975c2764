"""Who keeps a bin, and how it passes from one keeper to the next."""

from handlers.answer import Answer, Turn
from handlers.bins import choose, summary, which
from handlers.phrasing import capital, day, mass, the
from handlers.practice.cautions import caution
from handlers.reading.acts import Accept, Ask, Decline, Offer
from handlers.state import BinState, look_up
from storage.rows import Entry


async def offered(act: Offer, turn: Turn) -> Answer:
    """A bin is to pass to somebody else; the keeper stays so until it is accepted."""
    name = await choose(act.bin, turn)
    if name is None:
        question, _ = await which(turn)
        return Answer(say=f"{question} Say it again with its name.")
    entry = turn.entry("offer", bin=name, on=act.on, receiver=act.to)
    to = act.to or "Anybody"
    when = f" {day(act.on, turn.today)}" if act.on and act.on != turn.today else ""
    return Answer(
        entries=[entry],
        say=f"{capital(to)}, will you take {the(name)}{when}? Say “I'll take it” or “not me”.",
    )


async def accepted(act: Accept, turn: Turn) -> Answer:
    """Somebody takes a bin that was offered, or takes it up unasked."""
    offer = await _open_offer(act.bin, turn)
    if offer is None or offer.bin is None:
        return Answer(say="There is no bin on offer just now.") if act.bin else Answer()
    if offer.receiver and offer.receiver.casefold() != turn.sender.casefold():
        return Answer(say=f"{capital(the(offer.bin.name))} was offered to {offer.receiver}.")
    entry = turn.entry("accept", bin=offer.bin.name, on=act.on or offer.on)
    state = await look_up(turn.book, offer.bin, turn.today)
    from_day = entry.on or turn.today
    if from_day <= turn.today:
        first = f"{capital(turn.sender)} keeps {the(state.bin.name)} now."
    else:
        until = f"; until then {state.keeper} keeps it" if state.keeper else ""
        when = day(from_day, turn.today)
        first = f"{capital(turn.sender)} takes {the(state.bin.name)} {when}{until}."
    return Answer(entries=[entry], say="\n".join([first, *_card(state, turn)]))


async def declined(act: Decline, turn: Turn) -> Answer:
    """Somebody will not take a bin that was offered to them, or to anybody."""
    offer = await _open_offer(act.bin, turn)
    if offer is None or offer.bin is None:
        return Answer()
    entry = turn.entry("decline", bin=offer.bin.name)
    keeper = (await look_up(turn.book, offer.bin, turn.today)).keeper
    stays = f"{keeper} still keeps it" if keeper else "it needs a keeper"
    return Answer(
        entries=[entry], say=f"Fair enough: {stays}. Who else could take {the(offer.bin.name)}?"
    )


async def _open_offer(bin: str | None, turn: Turn) -> Entry | None:
    """The latest offer that nobody has taken or declined, of that bin if one was named."""
    replied = await turn.book.of_event(turn.refers_to) if turn.refers_to else []
    about = bin or next((e.bin.name for e in replied if e.bin and e.act == "offer"), None)
    latest: Entry | None = None
    for known in await turn.book.bins():
        if about and known.name.casefold() != about.casefold():
            continue
        offer = await turn.book.latest(known, "offer")
        if offer is None or (latest and latest.id > offer.id):
            continue
        answers = [
            await turn.book.latest(known, "accept"),
            await turn.book.latest(known, "decline"),
        ]
        if not any(answer and answer.id > offer.id for answer in answers):
            latest = offer
    return latest


def _card(state: BinState, turn: Turn) -> list[str]:
    """What goes with a bin when it changes hands."""
    lines = [f"{capital(summary(state, turn))}."]
    if state.run.last_drain:
        lines.append(f"Last drained {day(state.run.last_drain, turn.today)}.")
    if state.run.mass_kg:
        lines.append(f"It holds about {mass(state.run.mass_kg, turn.units)}. {caution('lifting')}")
    return lines


async def asked(act: Ask, turn: Turn) -> Answer:
    """Who has a bin; or who has each."""
    states = [await look_up(turn.book, bin, turn.today) for bin in await turn.book.bins()]
    lines = [
        f"{capital(the(state.bin.name))}: {state.keeper or 'nobody yet'}."
        for state in states
        if not act.bin or state.bin.name.casefold() == act.bin.casefold()
    ]
    return Answer(say="\n".join(lines) or "I know no such bin yet.")
