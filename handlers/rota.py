"""Turns at keeping, draining or carrying a bin: agreed, shown, swapped."""

from collections.abc import Sequence
from datetime import date, timedelta

from handlers.answer import SILENCE, Answer, Turn
from handlers.dues import ALL_BINS
from handlers.people import gone_from, is_same, known_as, unheard
from handlers.phrasing import capital, day, span, the
from handlers.practice.figure import listed, number, quoted
from handlers.reading.communal import Joining, Quitting, Rota, RotaOver, Swap
from handlers.rotas import AHEAD, RotaState, absences_known, is_on, rotas_of
from handlers.turns import Exchange, Gone, Stint, Turns
from storage.rows import Bin, Entry, Facts, NewEntry

SHORTEST, LONGEST = 1, 90
"""Days of a turn."""
OTHER = (
    "Turns are for keeping, draining or carrying a bin, so nothing is written down for {other}. "
    "Set a reminder for each: “remind Bram every second Monday to wash the lids”."
)
HOW_LONG = f"A turn lasts from {SHORTEST} to {LONGEST} days: say how long."
SHOWN = 4
"""Turns that an answer tells."""

AWAY = "Say “I'm away till Monday” and you are passed over; “can anyone swap my week?” to swap."


async def agreed(plan: Rota, turn: Turn) -> Answer:
    """A rota begins, in place of the one there was for the same."""
    if not SHORTEST <= plan.days <= LONGEST:
        return Answer(say=HOW_LONG)
    if plan.other:
        return Answer(say=OTHER.format(other=quoted(plan.other)))
    bin, refused = await _bin(plan.bin, turn)
    if refused:
        return Answer(say=refused)
    members, known = await called(plan.members, turn), await turn.book.members()
    if left := gone_from(members, known):
        return Answer(say=f"{left} Say the rota again without them.")
    if len(members) < 2:
        return Answer(say="A rota wants two members at least: “rota for the shed bin: …, weekly”.")
    entries, first = await begun(plan, members, bin, turn)
    lines = [first, unheard(members, known, "say the rota again"), AWAY]
    return Answer(entries=entries, say="\n".join(filter(None, lines)))


async def begun(
    plan: Rota, members: Sequence[str], bin: Bin | None, turn: Turn
) -> tuple[list[NewEntry], str]:
    """The entries of a rota, and what its first turns are."""
    start = plan.start or turn.today
    name = bin.name if bin else None
    facts = Facts(words=plan.duty, days=plan.days)
    entries = [turn.entry("rota", bin=name, facts=facts, on=start)]
    entries += [_entry("join", one, name, plan.duty, start, turn) for one in members]
    gone = await absences_known(turn.book, turn.today)
    turns = Turns(start=start, days=plan.days, members=[(m, start) for m in members], gone=gone)
    ahead = timedelta(days=plan.days * (len(members) - 1))
    stints = [s for s in turns.until(max(start, turn.today) + ahead) if s.end >= turn.today]
    each = "a day" if plan.days == 1 else _length(plan.days)
    deed = _deed(plan.duty, bin)
    return entries, f"Turns to {deed}, {each} each: {_told(stints, turn.today)}."


def _length(days: int) -> str:
    weeks, rest = divmod(days, 7)
    if rest == 0:
        return "a week" if weeks == 1 else f"{weeks} weeks"
    return f"{number(days)} days"


def _entry(
    act: str, member: str, bin: str | None, duty: str, on: date | None, turn: Turn
) -> NewEntry:
    return turn.entry(act, bin=bin, member=member, on=on, facts=Facts(words=duty))


async def _bin(name: str | None, turn: Turn) -> tuple[Bin | None, str]:
    """The bin of a rota; None for all of them; or why it cannot be."""
    bins = await turn.book.bins()
    if name is None:
        return (bins[0] if len(bins) == 1 else None), ""
    known = await turn.book.bin(name)
    if known not in bins:
        return None, f"I know no bin called “{name}”. Say “opened {the(name)}” first."
    return known, ""


async def called(names: Sequence[str], turn: Turn) -> list[str]:
    """The members of a rota by the names they show; all who are here if none is named."""
    members = await turn.book.members()
    if not names:
        return [member.name for member in members if member.user and member.present]
    found = []
    for name in names:
        known = known_as(name, members)
        found.append(known[0].name if known else name)
    return list(dict.fromkeys(found))


def _deed(duty: str, bin: Bin | None) -> str:
    return f"{duty} {the(bin.name) if bin else ALL_BINS}"


def _told(stints: Sequence[Stint], today: date) -> str:
    """Who has which turn: "Bram today to Sunday 8 March, then Ines from Monday 9 March"."""
    parts = []
    for number_, stint in enumerate(stints[:SHOWN]):
        who = stint.member or "nobody"
        if number_ == 0:
            parts.append(f"{who} {span(max(stint.start, today), stint.end, today)}")
        else:
            parts.append(f"{who} from {day(stint.start, today)}")
    return ", then ".join(parts)


async def lines(bins: Sequence[Bin], turn: Turn, on: date | None = None) -> list[str]:
    """Whose turn it is with some bins, now or on a day to come, and who comes after."""
    day_of = max(on or turn.today, turn.today)
    said = []
    for one in await rotas_of(turn.book, turn.today):
        if one.bin is None or one.bin in bins:
            coming = one.coming(turn.today, ahead=day_of - turn.today + AHEAD)
            stints = [stint for stint in coming if stint.end >= day_of]
            said.append(f"Turn to {one.deed}: {_told(stints, turn.today)}.")
            said += [_wished(wish, one, turn) for wish in _open_wishes(one, turn.today)]
    return said


async def shown(bin: str | None, turn: Turn, on: date | None = None) -> Answer:
    """The rotas, of a bin or all, from today or a day to come on."""
    known = await turn.book.bin(bin) if bin else None
    said = await lines([known] if known else await turn.book.bins(), turn, on)
    return Answer(
        say="\n".join(said) or "There is no rota. Say “rota for the shed bin: Ines, Bram, weekly”."
    )


async def joined(plan: Joining, turn: Turn) -> Answer:
    """A member comes to a rota."""
    one = await meant(plan.bin, plan.duty, turn)
    if isinstance(one, Answer):
        return one
    [name] = await called([plan.member or turn.sender], turn)
    if left := gone_from([name], await turn.book.members()):
        return Answer(say=left)
    if is_on(one, name):
        return Answer(say=f"{capital(name)} is on that rota already.")
    entry = _entry("join", name, bin_of(one), one.duty, turn.today, turn)
    return Answer(entries=[entry], say=f"{capital(name)} takes turns to {one.deed} now.")


async def quitted(plan: Quitting, turn: Turn) -> Answer:
    """A member leaves a rota."""
    one = await meant(plan.bin, plan.duty, turn, member=plan.member or turn.sender)
    if isinstance(one, Answer):
        return one
    [name] = await called([plan.member or turn.sender], turn)
    if not is_on(one, name):
        return Answer(say=f"{capital(name)} is not on that rota.")
    before = one.coming(turn.today)
    on = plan.on or turn.today
    left = Gone(member=name, first=on, last=date.max, known=on)
    entry = _entry("quit", name, bin_of(one), one.duty, on, turn)
    now = _moved(name, before, one.coming(turn.today, [left]), one, turn)
    since = f" from {day(on, turn.today)} on" if plan.on else ""
    say = f"{capital(name)} takes no more turns to {one.deed}{since}."
    return Answer(entries=[entry], say=" ".join([say, *now]))


async def ended(plan: RotaOver, turn: Turn) -> Answer:
    """A rota ends."""
    one = await meant(plan.bin, plan.duty, turn)
    if isinstance(one, Answer):
        return one
    entry = turn.entry("over", bin=bin_of(one), facts=Facts(words=one.duty))
    return Answer(entries=[entry], say=f"No more turns to {one.deed}.")


def bin_of(one: RotaState) -> str | None:
    """The name of its bin; None for all of them."""
    return one.bin.name if one.bin else None


async def meant(
    bin: str | None, duty: str | None, turn: Turn, member: str | None = None
) -> RotaState | Answer:
    """The one rota that is meant; else what to say."""
    current = await rotas_of(turn.book, turn.today)
    fitting = [
        one
        for one in current
        if (bin is None or (one.bin and is_same(one.bin.name, bin))) and duty in (None, one.duty)
    ]
    own = [one for one in fitting if member and is_on(one, member)]
    if len(own or fitting) == 1:
        return (own or fitting)[0]
    if not fitting:
        return (await shown(None, turn)) if not current else Answer(say="There is no such rota.")
    names = listed([f"to {one.deed}" for one in fitting], "or")
    return Answer(say=f"Which rota: {names}? Say it again with the bin's name.")


async def wished(plan: Swap, turn: Turn) -> Answer:
    """A member would rather have another turn than theirs; the others are asked."""
    found = await _own_stint(plan, turn)
    if found is None:
        return SILENCE if plan.told else Answer(say="You have no turn coming up that I know of.")
    one, stint = found
    before = [wish for wish in _open_wishes(one, turn.today) if _is_of(wish, stint)]
    to = (await called([plan.to], turn))[0] if plan.to else None
    facts = Facts(words=one.duty)
    entry = turn.entry("swap", bin=bin_of(one), on=stint.start, receiver=to, facts=facts)
    others = [to] if to else [name for name, _ in one.members if name != turn.sender]
    asked = f"{capital(to)}, can you swap" if to else "Who can swap"
    days = span(stint.start, stint.end, turn.today)
    return Answer(
        entries=[entry],
        strikes=before,
        say=f"{asked} with {turn.sender}: {one.deed}, {days}? Say “I can” or put "
        f"👍 here; {turn.sender} does your next turn for it.",
        calls=[name for name in others if is_on(one, name)],
    )


async def _own_stint(plan: Swap, turn: Turn) -> tuple[RotaState, Stint] | None:
    """The sender's turn on a day, or the next one; of the bin that was named, if one was."""
    found = [
        (one, stint)
        for one in await rotas_of(turn.book, turn.today)
        if plan.bin is None or (one.bin and is_same(one.bin.name, plan.bin))
        for stint in one.coming(turn.today, ahead=one.round)
        if stint.member == turn.sender and (plan.on is None or stint.start <= plan.on <= stint.end)
    ]
    return min(found, key=lambda each: each[1].start, default=None)


def _open_wishes(one: RotaState, today: date) -> list[Entry]:
    """Swaps asked for that can still be agreed."""
    has = {(stint.member, stint.start) for stint in one.coming(today, ahead=one.round)}
    return [wish for wish in one.wishes if (wish.member, wish.on) in has]


def _is_of(wish: Entry, stint: Stint) -> bool:
    """Whether a swap that was asked for is of that turn."""
    return (wish.member, wish.on) == (stint.member, stint.start)


async def kept(bin: Bin, turn: Turn) -> list[Entry]:
    """The swaps that a member asked for and needs no more: they take their turn with the bin."""
    return [
        wish
        for one in await rotas_of(turn.book, turn.today)
        if one.duty == "keep" and one.bin in (None, bin)
        for wish in _open_wishes(one, turn.today)
        for stint in one.coming(turn.today)[:1]
        if stint.member == turn.sender and _is_of(wish, stint)
    ]


def _wished(wish: Entry, one: RotaState, turn: Turn) -> str:
    when = day(wish.on, turn.today) if wish.on else ""
    if wish.member is None:
        return f"Nobody is there for the turn from {when}: say “I can” if you are."
    return f"{capital(wish.member)} would like to swap the turn from {when}."


async def swap_accepted(turn: Turn, event: str | None) -> Answer | None:
    """Somebody does the turn of another, who does their next one for it; None: there is none.

    `event`: the message that asked for it, if that is known.
    """
    found = await _answerable(turn, event)
    if found is None:
        return None
    one, wish = found
    assert wish.on is not None  # every wish is for a day
    stint = next(s for s in one.coming(turn.today, ahead=one.round) if s.start == wish.on)
    facts = Facts(words=one.duty)
    entry = turn.entry("swapped", bin=bin_of(one), on=wish.on, receiver=wish.member, facts=facts)
    one.exchanges.append(Exchange(giver=wish.member, taker=turn.sender, on=wish.on))
    after = one.coming(turn.today, ahead=wish.on - turn.today + one.round)
    if next((s.member for s in after if s.start == wish.on), None) != turn.sender:
        return Answer(say=f"You are away then. Who else can {one.deed}?")
    back = [s for s in after if s.owner == turn.sender and s.member == wish.member]
    days = span(stint.start, stint.end, turn.today)
    lines = [f"{capital(turn.sender)} is to {one.deed} {days}."]
    if back and wish.member:
        days = span(back[0].start, back[0].end, turn.today)
        lines.append(f"{capital(wish.member)} does it {days} instead.")
    calls = [wish.member] if wish.member else []
    return Answer(entries=[entry], say=" ".join(lines), calls=calls)


async def swap_declined(turn: Turn) -> Answer:
    """A member who was asked by name does not swap."""
    found = await _answerable(turn, turn.refers_to)
    if found is None or found[1].receiver is None:
        return SILENCE
    one, wish = found
    return Answer(
        say=f"Fair enough. Who else can swap with {wish.member}: {one.deed}, from "
        f"{day(wish.on or turn.today, turn.today)}?"
    )


async def _answerable(turn: Turn, event: str | None) -> tuple[RotaState, Entry] | None:
    """The latest swap that the sender can agree to, or that of an event."""
    found = [
        (one, wish)
        for one in await rotas_of(turn.book, turn.today)
        for wish in _open_wishes(one, turn.today)
        if wish.member != turn.sender
        and (wish.receiver is None or is_same(wish.receiver, turn.sender))
    ]
    if event is not None:
        found = [each for each in found if each[1].event == event]
    return max(found, key=lambda each: each[1].id, default=None)


async def after_absence(member: str, first: date, last: date | None, turn: Turn) -> list[str]:
    """Who has the turns of a member who is away from the first day to the last, if there is one."""
    until = last or date.max - timedelta(days=1)
    gone = Gone(member=member, first=first, last=until, known=turn.today)
    said = []
    for one in await rotas_of(turn.book, turn.today):
        before = one.coming(turn.today)
        said += _moved(member, before, one.coming(turn.today, [gone]), one, turn)
    return said


def _moved(
    member: str, before: Sequence[Stint], after: Sequence[Stint], one: RotaState, turn: Turn
) -> list[str]:
    """The first turn of a member that somebody else has now."""
    for stint in before:
        if stint.member != member:
            continue
        now = [s for s in after if s.start <= stint.end and s.end >= stint.start]
        others = [s for s in now if s.member != member and s.end >= turn.today]
        if others:
            days = span(others[0].start, others[0].end, turn.today)
            who = others[0].member or "nobody so far"
            return [f"{capital(who)} is to {one.deed} {days} instead."]
    return []
