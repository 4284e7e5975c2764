"""How what the bot guessed is named where it asks whether to write it down."""

from collections.abc import Sequence
from datetime import date
from itertools import pairwise

from handlers.answer import Turn
from handlers.phrasing import day, temperature, the, volume
from handlers.practice.figure import listed, number
from handlers.reading.acts import Act, Amend, Batch, Drain, Layer, Observe, Open, Set, Stock
from handlers.recording.layers import right_amount, said_amount
from storage.rows import Facts


def of_home(settings: Sequence[Act], turn: Turn) -> str:
    """Whether the group is to go by the clock, and measure as people do, where it lives."""
    values = [one.value for one in settings if isinstance(one, Set)]
    units = f" and measure in {values[1].upper()} units" if len(values) > 1 else ""
    return f"I go by {turn.book.room.zone} so far. Shall I go by {values[0]}{units}?"


def all_guessed(acts: Sequence[Act], turn: Turn) -> str:
    """The acts one by one, each with its day where these differ; what is of each day in a row is
    said once."""
    days: dict[str, list[date]] = {}
    for one in acts:
        if isinstance(one, Layer | Drain) and one.on:
            days.setdefault(_guessed(one, turn), []).append(one.on)
    if sum(map(len, days.values())) == len(acts) and all(_in_a_row(on) for on in days.values()):
        ends = [
            (words, day(on[0], turn.today), day(on[-1], turn.today)) for words, on in days.items()
        ]
        return listed(
            [f"{words} on each day from {first} to {last}" for words, first, last in ends]
        )
    dated = len({on for told in days.values() for on in told}) > 1
    return listed([_guessed(one, turn) + _on_its_day(one, turn) * dated for one in acts])


def _in_a_row(days: Sequence[date]) -> bool:
    """Whether more days than two follow on each other."""
    return len(days) > 2 and all((b - a).days == 1 for a, b in pairwise(days))


def whole_lot(parts: Sequence[Layer], turn: Turn) -> str:
    """The sentence that tells the whole amount of each of the bins."""
    masses, volumes = [one.mass_kg or 0 for one in parts], [one.volume_l or 0 for one in parts]
    facts = Facts(mass_kg=sum(masses) or None, volume_l=sum(volumes) or None)
    return f"added {said_amount(facts, turn)} each to {listed([one.bin or '' for one in parts])}"


def amount_of(act: Layer | Drain | Batch | Stock) -> float | None:
    """How much is told, by mass or by volume."""
    return act.volume_l if isinstance(act, Drain) or act.mass_kg is None else act.mass_kg


def _guessed(act: Act, turn: Turn) -> str:
    bin: str | None = getattr(act, "bin", None)
    where = f" in {the(bin)}" if bin else ""
    if isinstance(act, Drain) and act.volume_l:
        return f"{volume(act.volume_l, turn.units)} drained{where.replace(' in ', ' from ', 1)}"
    if isinstance(act, Amend) and (act.mass_kg or act.volume_l):
        return f"that it was {right_amount(act, turn)}"
    if isinstance(act, Amend) and bin:
        return f"that it was {the(bin)}"
    if isinstance(act, Layer):
        facts = Facts(mass_kg=act.mass_kg, volume_l=act.volume_l, materials={"mixed": 1.0})
        return f"{said_amount(facts, turn)}{where}"
    if isinstance(act, Open) and bin:
        return f"a new bin, {the(bin)}"
    noun = _NOUNS.get(act.act, act.act)
    seen = f" ({_seen(act, turn)})" if isinstance(act, Observe) else ""
    return f"{noun}{seen}{where}"


def _on_its_day(act: Act, turn: Turn) -> str:
    on: date | None = getattr(act, "on", None)
    return f" ({day(on, turn.today)})" if on else ""


def _seen(act: Observe, turn: Turn) -> str:
    """What was seen and measured: "white mould, 12 °C"."""
    said = [sign.replace("_", " ") for sign in act.signs]
    said += [] if act.celsius is None else [temperature(act.celsius, turn.units)]
    said += [] if act.ph is None else [f"pH {number(act.ph)}"]
    return listed(said or ["nothing amiss"])


_NOUNS = {
    "open": "a new bin",
    "drain": "a draining",
    "seal": "a sealing",
    "bury": "a burial",
    "observe": "what you saw",
    "batch": "a batch of starter",
    "stock": "the starter on hand",
    "amend": "a correction",
    "retract": "that the last record is wrong",
}
"""How an act is named where it is asked about."""
