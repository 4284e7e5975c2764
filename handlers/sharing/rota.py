"""Turns at keeping, draining or carrying a bin: agreed, shown, ended."""

from collections.abc import Sequence
from datetime import date, timedelta

from handlers.answer import SILENCE, Answer, Turn
from handlers.people import gone_from, is_same, unheard
from handlers.phrasing import capital, day, span, the
from handlers.planning.dues import ALL_BINS
from handlers.practice.figure import listed, number, quoted
from handlers.reading.arrangements.communal import Joining, Quitting, Rota, RotaOver
from handlers.sharing.rotas import AHEAD, RotaState, absences_known, bin_of, called, is_on, rotas_of
from handlers.sharing.swaps import open_wishes, wish_line
from handlers.sharing.turns import DAY, Gone, Stint, Turns
from storage.rows import Bin, Facts, NewEntry

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

HOW_OFTEN = "Is a week each right? Say “every two weeks” or “monthly” if it is not."


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
    lines = [first, unheard(members, known, "say the rota again")]
    lines.append(HOW_OFTEN if plan.guessed else AWAY)
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
            said += [wish_line(wish, turn) for wish in open_wishes(one, turn.today)]
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
    """A member leaves a rota, or is out of it for some time."""
    if plan.until and not await rotas_of(turn.book, turn.today):
        return SILENCE
    one = await meant(plan.bin, plan.duty, turn, member=plan.member or turn.sender)
    if isinstance(one, Answer):
        return one
    [name] = await called([plan.member or turn.sender], turn)
    if not is_on(one, name):
        return Answer(say=f"{capital(name)} is not on that rota.")
    before = one.coming(turn.today)
    present = before[0] if before and before[0].start <= turn.today else None
    over = present.end + DAY if present and plan.after_turn else None
    on = plan.on or over or turn.today
    left = Gone(member=name, first=on, last=plan.until or date.max, known=on)
    entries = [_entry("quit", name, bin_of(one), one.duty, on, turn)]
    ahead = max(AHEAD, on - turn.today + one.round)
    before = one.coming(turn.today, ahead=ahead)
    now = _moved(name, before, one.coming(turn.today, [left], ahead), one, turn)
    since = f" from {day(on, turn.today)} on" if on > turn.today else ""
    say = f"{capital(name)} takes no more turns to {one.deed}{since}."
    if plan.until:
        entries.append(_entry("join", name, bin_of(one), one.duty, plan.until + DAY, turn))
        say = f"{capital(name)} takes no turn to {one.deed} {span(on, plan.until, turn.today)}."
    return Answer(entries=entries, say=" ".join([say, *now]))


async def ended(plan: RotaOver, turn: Turn) -> Answer:
    """A rota ends."""
    one = await meant(plan.bin, plan.duty, turn)
    if isinstance(one, Answer):
        return one
    entry = turn.entry("over", bin=bin_of(one), facts=Facts(words=one.duty))
    return Answer(entries=[entry], say=f"No more turns to {one.deed}.")


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
        return (
            (await shown(None, turn))
            if not current
            else Answer(say="There is no such rota. Ask “show the rota” for those there are.")
        )
    names = listed([f"to {one.deed}" for one in fitting], "or")
    return Answer(say=f"Which rota: {names}? Say it again with the bin's name.")


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
