"""What was told of several bins is struck out where it was not done."""

from collections.abc import Sequence

from handlers.answer import SILENCE, Answer, Turn
from handlers.people import is_same
from handlers.reading.acts import Retract
from handlers.recording.describing import describe
from handlers.righting.corrections import LAST_IS_MEANT, struck_words, targets_of
from handlers.righting.retracting import asked_what
from storage.rows import Entry


async def struck(act: Retract, turn: Turn) -> Answer:
    """The entries of the bins that it does not hold for; silence where there are none."""
    name = act.bin or ""
    if act.of_bin == "undone":
        return await _undone(name, act.what or "", turn)
    targets = [entry for entry in await targets_of(turn) if entry.bin]
    named = _in_bin(name, targets)
    others = [entry for entry in targets if entry not in named]
    if act.of_bin == "not" and named and not others:
        return await asked_what(named[-1], turn, of_bin=True)
    if not named or not others:
        return SILENCE  # it was told of no other
    wrong = others if act.of_bin == "only" else named
    return Answer(strikes=wrong, say=struck_words(wrong, turn))


def _in_bin(name: str, entries: Sequence[Entry]) -> list[Entry]:
    return [e for e in entries if e.bin and is_same(e.bin.name, name)]


async def _undone(name: str, what: str, turn: Turn) -> Answer:
    """The sender's own record of that deed in the bin's present run; another's is named."""
    bin = await turn.book.bin(name)
    run = await turn.book.run(bin, await turn.book.present_run(bin)) if bin else []
    told = [entry for entry in run if entry.act == what and not entry.struck]
    if not told:
        return SILENCE
    last = told[-1]
    if last.writer == turn.sender and turn.now - last.written_at <= LAST_IS_MEANT:
        return Answer(strikes=[last], say=struck_words([last], turn))
    return Answer(
        say=f"{last.writer} wrote down the {describe(last, turn)}. If that is wrong, reply "
        "“scratch that” to the message that told it."
    )
