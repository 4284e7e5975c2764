"""A record is struck out by words, and put back on second thoughts."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.answer import SILENCE, Answer, Handler, Query, Turn
from handlers.doubtful.asking import is_meant
from handlers.doubtful.spokenof import is_of_sender
from handlers.people import is_same
from handlers.phrasing import temperature, the
from handlers.practice.figure import listed
from handlers.practice.kinds import Shares
from handlers.reading.acts import Amend, Retract
from handlers.reading.corrections.amending import UNDONE
from handlers.reading.corrections.bydeed import NOT_THE_LAST
from handlers.reading.corrections.onlywrong import ONLY_WRONG, WRONG_BIN
from handlers.recording.describing import describe
from handlers.righting.corrections import (
    ARRANGED,
    LAST_IS_MEANT,
    NOTHING_THERE,
    PASSING,
    last_lately,
    last_of_all,
    struck_words,
    targets_of,
    undo,
    undone_words,
    written_anew,
)
from handlers.righting.whichrecord import left_without
from handlers.state import look_up
from storage import outbox
from storage.rows import Entry

STRUCK_ALREADY = (
    "Struck out already: {last}. Say “put it back” if it was right, or reply “scratch that” to any "
    "other that is wrong."
)

OR_SCRATCH = "Say “scratch that” to strike it out."
WHAT_WRONG = f"What was wrong? Say how it was (“it was 3 kg”, “it was yesterday”). {OR_SCRATCH}"


async def retract(act: Retract, turn: Turn, carry_on: Handler) -> Answer:
    """The record replied to, or the sender's last, is struck out: never one before it unasked,
    nor another's. Called by some of the scraps that it holds, it loses these alone.
    """
    if act.of:
        turn = replace(turn, refers_to=act.of)
    if NOT_THE_LAST in act.rules and turn.refers_to is None:
        return Answer(say=NOTHING_THERE)
    if act == Retract() and (measured := await _soil_measured(turn)):
        return measured
    return await _struck_by_words(act, turn, carry_on)


async def _struck_by_words(act: Retract, turn: Turn, carry_on: Handler) -> Answer:
    """The record that is meant, or what of it, is struck out."""
    targets = await targets_of(turn)
    if targets and not {ONLY_WRONG, WRONG_BIN}.isdisjoint(act.rules):
        return await asked_what(targets[-1], turn, of_bin=WRONG_BIN in act.rules)
    by_words = act.materials or {}
    such = [entry for entry in targets if _holds(by_words, entry)]
    if by_words and not such and turn.refers_to is None:
        other = await _last_of(by_words, turn, carry_on)
        if other or not any(_may_hold(entry) for entry in targets):
            return other or Answer(say=NOTHING_THERE)
    if such and (len(such) < len(targets) or left_without(by_words, such[-1])):
        return await _taken_out(by_words, such, turn, carry_on)
    if act.bin and turn.refers_to is None and not _is_in(act.bin, targets):
        return await _last_in(act.bin, turn)
    if targets:
        return await _struck_whole(act, targets, turn)
    last = None if turn.refers_to else await last_lately(turn)
    if last and last.struck and UNDONE in act.rules and (again := await restored(turn)) != SILENCE:
        return again
    if last and last.struck:
        return Answer(say=STRUCK_ALREADY.format(last=describe(last, turn)))
    return await _whose(turn)


async def _soil_measured(turn: Turn) -> Answer | None:
    """What the sender said last of the soil is struck out, and the burials stand as they were."""
    event = turn.refers_to or await answered_last(turn)
    if event is None or not await is_of_sender(event, turn):
        return None
    touched = await turn.book.touched_by(event)
    written = [entry for entry in touched if entry.cause == event and not entry.struck]
    before = {entry.id: entry for entry in touched if entry.struck_by == event}
    if not written or not all(_has_other_soil(e, before.get(e.replaces or 0)) for e in written):
        return None
    at = temperature(written[0].facts.celsius or 0.0, turn.units)
    return replace(await _struck_back(event, turn), say=f"Struck out: the soil at {at}.")


def _has_other_soil(entry: Entry, before: Entry | None) -> bool:
    """Whether nothing but the soil's temperature was changed of a burial."""
    if before is None or entry.act != "bury" or entry.facts.celsius is None:
        return False
    same = replace(before.facts, celsius=entry.facts.celsius) == entry.facts
    return same and (entry.bin, entry.on, entry.member) == (before.bin, before.on, before.member)


async def asked_what(last: Entry, turn: Turn, *, of_bin: bool) -> Answer:
    """What is wrong with a record, which stands until that is said."""
    bins = [bin.name for bin in await turn.book.bins() if bin != last.bin]
    say = WHAT_WRONG
    if of_bin and bins:
        say = f"Which bin was it: {listed([the(name) for name in bins], 'or')}? {OR_SCRATCH}"
    return Answer(say=say, query=Query.about(Amend(of=last.event), lacks="which"))


async def _struck_whole(act: Retract, targets: Sequence[Entry], turn: Turn) -> Answer:
    """What a message wrote down, or the correction alone that made its record what it is."""
    there = [entry for entry in targets if act.bin and _is_in(act.bin, [entry])]
    if there and len(there) < len(targets):  # of what one message told of several bins
        return Answer(strikes=there, say=struck_words(there, turn))
    if UNDONE in act.rules and not turn.refers_to and await _was_filled(targets[-1], turn):
        return await _whose(turn)  # others have told what went in since: it is no slip of just now
    made_by = targets[-1].cause
    if UNDONE in act.rules and made_by != targets[-1].event and not turn.refers_to:
        return await _struck_back(made_by, turn)
    back = await _struck_back(targets[0].event, turn)
    return _struck_alone(back, turn) if act.anew else back


async def _was_filled(entry: Entry, turn: Turn) -> bool:
    """Whether it is the opening of a bin that something has gone into."""
    if entry.act != "open" or entry.bin is None:
        return False
    return (await look_up(turn.book, entry.bin, turn.today)).run.first_layer is not None


async def _struck_back(event: str, turn: Turn) -> Answer:
    """What a message wrote down is struck out; what it had struck out itself stands again."""
    undone = await undo(event, turn)
    again = [replace(entry, cause=turn.cause) for entry in undone.entries]
    return replace(undone, entries=again, say=undone_words(undone, turn))


def _struck_alone(back: Answer, turn: Turn) -> Answer:
    """The same without what would stand again: something else was told in its place."""
    alone = replace(back, entries=())
    return replace(alone, say=undone_words(alone, turn))


async def _whose(turn: Turn) -> Answer:
    """Whose the group's last record is, and whether it is meant."""
    last = None if turn.refers_to else await last_of_all(turn)
    return await _is_meant(last, turn) if last else Answer(say=NOTHING_THERE)


async def _taken_out(kinds: Shares, such: Sequence[Entry], turn: Turn, carry_on: Handler) -> Answer:
    """The records of such scraps alone are struck out; else one that holds others is lessened."""
    whole = [entry for entry in such if left_without(kinds, entry) is None]
    if whole:
        return Answer(strikes=whole, say=struck_words(whole, turn))
    left = left_without(kinds, such[-1])
    return await written_anew(such[-1], left, turn, carry_on) if left else SILENCE


async def _last_of(made_of: Shares, turn: Turn, carry_on: Handler) -> Answer | None:
    """The sender's last record is of other scraps: the one of these that came last, if it is the
    sender's too; is it meant, if it is another's?
    """
    first = turn.today - LAST_IS_MEANT
    layers = await turn.book.of_days(first, turn.today, "layer")
    such = [entry for entry in layers if _holds(made_of, entry)]
    last = max(such, key=lambda entry: entry.id, default=None)
    if last is None:
        return None
    if last.writer == turn.sender:
        return await _taken_out(made_of, [last], turn, carry_on)
    return await _is_meant(last, turn, "last record of such scraps", made_of)


def _holds(made_of: Shares, entry: Entry) -> bool:
    return entry.act == "layer" and not made_of.keys().isdisjoint(entry.facts.materials or {})


def _may_hold(entry: Entry) -> bool:
    """Whether it is a layer of which nobody said what it is made of."""
    return entry.act == "layer" and "mixed" in (entry.facts.materials or {"mixed": 1})


def _is_in(bin: str, entries: Sequence[Entry]) -> bool:
    return any(entry.bin and is_same(entry.bin.name, bin) for entry in entries)


async def _last_in(name: str, turn: Turn) -> Answer:
    """Another bin than that of the sender's last record is named: is its last one meant?"""
    bin = await turn.book.bin(name)
    run = await turn.book.run(bin, await turn.book.present_run(bin)) if bin else []
    standing = (one for one in run if not one.struck and one.act not in ARRANGED | PASSING)
    last = max(standing, key=lambda one: one.id, default=None)
    if bin is None or last is None:
        return Answer(say=NOTHING_THERE)
    return await _is_meant(last, turn, "last record there")


async def _is_meant(
    last: Entry, turn: Turn, called: str = "last record", made_of: Shares | None = None
) -> Answer:
    """Whether that message's record is to be struck out, or to be without such scraps."""
    theirs = await turn.book.of_event(last.event)
    part = made_of is not None and left_without(made_of, last) is not None
    deed = "take them out of it" if part else None
    return is_meant(Retract(materials=made_of), theirs, turn, called=called, deed=deed)


async def told_right(act: Amend, turn: Turn, carry_on: Handler) -> Answer | None:
    """ "Scratch that", and then "it was 3 kg": what the sender has just struck out stands again as
    corrected; None where the last words were of anything else.
    """
    last = None if turn.refers_to or act.of else await last_lately(turn)
    if last is None or not last.struck or last.struck_by != await answered_last(turn):
        return None
    again = await written_anew(last, act, turn, carry_on)
    if not again.entries or not await is_of_sender(last.struck_by or "", turn):
        return None
    return replace(again, strikes=[entry for entry in again.strikes if not entry.struck])


async def restored(turn: Turn) -> Answer:
    """What the sender has just struck out or corrected stands again; silence where nothing was."""
    event = turn.refers_to or await answered_last(turn)
    if event is None or not (await is_of_sender(event, turn) or await _struck_own(event, turn)):
        return SILENCE
    again = await _struck_back(event, turn)
    last = await turn.book.last_by(turn.sender)
    if not again.entries and last and last.struck_by and await is_of_sender(last.struck_by, turn):
        again = await _struck_back(last.struck_by, turn)  # behind "struck out already"
    return again if again.entries else SILENCE


async def _struck_own(event: str, turn: Turn) -> bool:
    """Whether another struck out there what the sender had written down."""
    touched = await turn.book.touched_by(event)
    return any(entry.struck_by == event and entry.writer == turn.sender for entry in touched)


async def answered_last(turn: Turn) -> str | None:
    """The message that was answered last, if that was lately."""
    latest = await outbox.latest(turn.book.db, turn.book.room.id)
    if latest is None or turn.now - latest[1] > LAST_IS_MEANT:
        return None
    return latest[0].to_event
