"""What was seen, smelt or measured in a bin, and what it means."""

from collections.abc import Sequence
from datetime import timedelta

from handlers.answer import Answer, Turn
from handlers.chosen import reasons
from handlers.doubtful.spokenof import TALK_GOES_ON
from handlers.people import is_same
from handlers.phrasing import capital, span, the
from handlers.planning.planting import well_covered
from handlers.practice.days import COLDEST, HOTTEST
from handlers.practice.figure import Refused
from handlers.practice.trouble import PATIENCE, Trouble, trouble
from handlers.reading.acts import Ask, Observe
from handlers.recording.bins import choose, which
from handlers.state import BinState, fold, named
from storage.rows import Facts, NewEntry

WHAT_IS_SEEN = (
    "What do you see or smell: white or green mould, a rotten or a sour smell, flies, a bulging "
    "lid, much liquid or none?"
)


async def observed(act: Observe, turn: Turn) -> Answer:
    """Something was seen, smelt or measured: written down, and answered if it means anything."""
    if act.celsius is not None and not COLDEST <= act.celsius <= HOTTEST:
        return Answer(
            say="No bin is that cold or hot, so nothing is written down. Say it again with the "
            "right temperature, in °C or °F."
        )
    name = await choose(act.bin, turn)
    try:
        meaning = trouble(
            act.signs,
            celsius=act.celsius,
            ph=act.ph,
            treated=await _lasts(name, act, turn),
        )
    except Refused as refused:
        # Nothing that could be meant: a pH of 40, or no sign and no figure at all.
        if act.ph is not None:
            return Answer(say=f"{refused} Nothing is written down.")
        meaning = None
    facts = Facts(signs=act.signs, celsius=act.celsius, ph=act.ph)
    entry = turn.entry("observe", bin=name, facts=facts, member=act.member, on=act.on)
    state = await named(turn.book, name, turn.today)
    moved, why = _moved(state, entry, turn) if state else ("", ())
    if meaning is None or (_is_ordinary(act, meaning) and not moved):
        return Answer(entries=[entry], noted=True)
    if state and state.run.stage(turn.today) == "in the ground" and meaning.verdict != "good":
        say = f"{capital(the(state.bin.name))} is in the ground: {well_covered(turn.units)}"
        return Answer(entries=[entry], say=say)
    where = f"{capital(the(name))}: " if name else ""
    said = "" if _is_ordinary(act, meaning) else where + _words(meaning)
    asked, query = await which(turn) if name is None and meaning.verdict != "good" else ("", None)
    say = "\n".join(filter(None, (said, moved, asked)))
    return Answer(entries=[entry], say=say, why=[*meaning.why(), *why], query=query)


def _moved(state: BinState, entry: NewEntry, turn: Turn) -> tuple[str, Sequence[str]]:
    """The days to bury a sealed bin where what was measured moves them, and why; else nothing."""
    sealed = state.run.sealed
    if sealed is None or state.run.buried or (entry.on and entry.on < sealed):
        return "", ()
    window = fold([entry], state.run).to_bury(sealed)
    before = state.run.to_bury(sealed)
    if (window.start, window.end) == (before.start, before.end):
        return "", ()
    days = span(window.start, window.end, turn.today)
    was = span(before.start, before.end, turn.today)
    name = capital(the(state.bin.name))
    return f"{name} is to be buried {days} now, not {was}.", reasons(window, turn.book.room)


def _is_ordinary(act: Observe, meaning: Trouble) -> bool:
    """A temperature at which a bin is well asks for no words."""
    return not act.signs and act.ph is None and meaning.verdict == "good"


async def _lasts(name: str | None, act: Observe, turn: Turn) -> bool:
    """Whether the same was seen a week ago or longer in this run, in spite of what was advised."""
    state = await named(turn.book, name, turn.today)
    if state is None:
        return False
    before = (act.on or turn.today) - timedelta(days=PATIENCE.value)
    return any(sign in act.signs and on <= before for on, sign in state.run.signs)


async def asked(act: Ask, turn: Turn) -> Answer:
    """What a sign means and what to do about it; where none is named, the one just seen."""
    signs = act.signs or (await _just_seen(act.bin, turn) if act.ph is None else ())
    if not signs and act.ph is None:
        return Answer(say=WHAT_IS_SEEN)
    try:
        meaning = trouble(signs, ph=act.ph)
    except Refused as refused:
        return Answer(say=str(refused))
    return Answer(say=_words(meaning), why=meaning.why())


async def _just_seen(bin: str | None, turn: Turn) -> Sequence[str]:
    """What was seen last in a bin, or in any, while the talk may still be on it."""
    bins = [known for known in await turn.book.bins() if bin is None or is_same(known.name, bin)]
    seen = [entry for each in bins if (entry := await turn.book.latest(each, "observe"))]
    last = max(seen, key=lambda entry: entry.written_at, default=None)
    if last is None or not last.written_at <= turn.at <= last.written_at + TALK_GOES_ON:
        return ()
    return last.facts.signs or ()


def _words(meaning: Trouble) -> str:
    """The likeliest cause with its remedy, what has to go, and the usual caution."""
    if meaning.verdict == "good":
        return " ".join(meaning.lines)
    if meaning.verdict == "give up":
        return "\n".join(line for line in (meaning.discard, meaning.care) if line)
    lines = (meaning.lines[0], meaning.acidity, meaning.discard, meaning.care)
    return "\n".join(dict.fromkeys(filter(None, lines)))
