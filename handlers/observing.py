"""What was seen, smelt or measured in a bin, and what it means."""

from handlers.answer import Answer, Turn
from handlers.bins import choose
from handlers.phrasing import capital, the
from handlers.practice.trouble import Trouble, trouble
from handlers.reading.acts import Ask, Observe
from storage.rows import Facts


async def observed(act: Observe, turn: Turn) -> Answer:
    """Something was seen, smelt or measured: written down, and answered if it means anything."""
    name = await choose(act.bin, turn)
    facts = Facts(signs=act.signs, celsius=act.celsius, ph=act.ph)
    entry = turn.entry("observe", bin=name, facts=facts, member=act.member, on=act.on)
    if not act.signs:
        return Answer(entries=[entry], noted=True)
    meaning = trouble(act.signs)
    where = f"{capital(the(name))}: " if name else ""
    return Answer(entries=[entry], say=where + _words(meaning), why=meaning.why())


def asked(act: Ask, turn: Turn) -> Answer:
    """What a sign means and what to do about it."""
    if not act.signs:
        return Answer(
            say="What do you see or smell: white or green mould, a rotten or a sour smell, flies, "
            "a bulging lid, much liquid or none?"
        )
    meaning = trouble(act.signs)
    return Answer(say=_words(meaning), why=meaning.why())


def _words(meaning: Trouble) -> str:
    """The likeliest cause with its remedy, what has to go, and the usual caution."""
    if meaning.verdict == "good":
        return " ".join(meaning.lines)
    return "\n".join(line for line in (meaning.lines[0], meaning.discard, meaning.care) if line)
