"""How an entry is named when it is struck out, corrected or marked."""

from handlers.answer import Turn
from handlers.phrasing import day, span, the
from handlers.recording.layers import said_amount
from storage.rows import Bin, Entry, NewEntry


def describe(entry: Entry | NewEntry, turn: Turn) -> str:
    """An entry in a few words: "2 kg in the shed bin", "1 L drained from bin 3"."""
    if entry.act in ("away", "back", "date"):
        return _in_days(entry, turn)
    joint, noun = WORDS.get(entry.act, ("in", entry.act))
    amount = said_amount(entry.facts, turn)
    bin = entry.bin.name if isinstance(entry.bin, Bin) else entry.bin
    words = " ".join(word for word in (amount, noun) if word)
    where = f" {joint} {the(bin)}" if bin else ""
    when = f", {day(entry.on, turn.today)}" if entry.on and entry.on != turn.today else ""
    return f"{words}{where}{when}"


def _in_days(entry: Entry | NewEntry, turn: Turn) -> str:
    """What is of days and no bin: "ana's absence, Monday 30 November to Friday 4 December"."""
    first = entry.on or turn.today
    match entry.act:
        case "date":
            return f"the reminder “{entry.facts.words}”, {day(first, turn.today)}"
        case "back":
            return f"{entry.member}'s return, {day(first, turn.today)}"
        case _:
            days = span(first, entry.until, turn.today) if entry.until else ""
            return f"{entry.member}'s absence, {days or f'from {day(first, turn.today)} on'}"


WORDS = {
    "layer": ("in", ""),
    "drain": ("from", "drained"),
    "open": ("of", "opening"),
    "seal": ("of", "sealing"),
    "bury": ("of", "burial"),
    "observe": ("in", "what was seen"),
    "batch": ("in", "of starter mixed"),
    "stock": ("in", "of starter on hand"),
    "offer": ("of", "offer"),
    "accept": ("of", "taking over"),
    "decline": ("of", "refusal"),
    "withdraw": ("of", "withdrawal"),
    "unseal": ("of", "unsealing"),
    "note": ("of", "what was found"),
    "rename": ("of", "renaming"),
    "retire": ("of", "retirement"),
    "bar": ("of", "rule"),
    "rota": ("of", "rota"),
    "join": ("of", "place on the rota"),
    "quit": ("of", "leaving the rota"),
    "over": ("of", "end of the rota"),
    "swap": ("of", "wish to swap"),
    "swapped": ("of", "swap"),
}
"""How an entry is named when it is struck out or corrected: its joint with the bin, its noun."""
