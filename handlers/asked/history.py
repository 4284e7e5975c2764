"""What a bin has been through: who put what in, who kept it when, each member's share."""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from datetime import date
from itertools import groupby

from handlers.answer import Answer, Turn
from handlers.asked.beds import bed_name
from handlers.chosen import reasons
from handlers.people import is_same
from handlers.phrasing import capital, day, mass, span, the, volume, whole_days
from handlers.planning.planting import plant_there
from handlers.practice.figure import listed, quoted
from handlers.practice.kinds import rich_share
from handlers.reading.arrangements.communal import (
    InGround,
    Story,
    WhenLast,
    WhoKept,
    WhoPut,
    Written,
)
from handlers.recording.bins import asked_of
from handlers.recording.describing import describe
from handlers.recording.layers import said_amount
from handlers.sharing.keepers import whole_custody
from handlers.sharing.spells import Spell, spells
from handlers.state import layer_mass, new_run
from storage.rows import Entry

KIND_WORDS = {"mixed": "mixed scraps", "cooked": "leftovers", "liquid": "something to pour"}
"""How kinds are named that are no food by themselves."""

KIN = {"meat": ("bone",), "fish": ("bone",)}
"""What goes in with a kind and may be all that is left of it."""

MOST_TOLD = 8
"""Layers told one by one in an answer."""


async def who_put(plan: WhoPut, turn: Turn) -> Answer:
    """Who put such scraps in, the latest last; the book knows their kinds, not every word."""
    kinds = [*plan.kinds, *(kin for kind in plan.kinds for kin in KIN.get(kind, ()))]
    of_days = await deeds(plan.bin, turn, first=plan.first, last=plan.last)
    layers = [entry for entry in of_days if _is_such(entry, plan, kinds)]
    what = quoted(plan.words) if plan.words else "anything"
    where = f" in {the(plan.bin)}" if plan.bin else ""
    if not layers:
        who, when = capital(plan.member or "nobody"), ""
        if plan.first and plan.last:
            when = f" {span(plan.first, plan.last, turn.today)}"
        if plan.member:
            what = f"nothing{f' of {what}' if plan.words else ''}"
        into = where or " in"
        return Answer(say=f"{who} has put {what}{into}{when} that I know of.")
    lines = []
    if kinds and (plan.words.casefold() not in plan.kinds or len(kinds) > len(plan.kinds)):
        lines.append(f"I keep kinds, so for {what} I looked for {listed(kinds, 'or')}.")
    if len(layers) > MOST_TOLD:
        lines.append(f"The last {MOST_TOLD} of {len(layers)}:")
    lines += [_layer(entry, turn) for entry in layers[-MOST_TOLD:]]
    return Answer(say="\n".join(lines))


def _is_such(entry: Entry, plan: WhoPut, kinds: Sequence[str]) -> bool:
    if plan.member and not is_same(entry.member, plan.member):
        return False
    return not kinds or any(kind in kinds for kind in entry.facts.materials or {})


def _layer(entry: Entry, turn: Turn) -> str:
    shares = entry.facts.materials or {}
    kinds = sorted((kind for kind in shares if shares[kind] > 0), key=lambda kind: -shares[kind])
    named = [KIND_WORDS.get(kind, kind) for kind in kinds]
    amount = said_amount(entry.facts, turn) or "some"
    where = f" in {the(entry.bin.name)}" if entry.bin else ""
    of = f" of {listed(named)}" if named else ""
    when = day(entry.on, turn.today) if entry.on else ""
    return f"{capital(entry.member or 'somebody')}: {amount}{of}{where}, {when}."


async def deeds(
    bin: str | None,
    turn: Turn,
    deed: str = "layer",
    first: date | None = None,
    last: date | None = None,
) -> list[Entry]:
    """The layers (or what else was done) that stand, of a bin or all, of the days from `first` to
    `last`, the oldest first.
    """
    known = await turn.book.bin(bin) if bin else None
    begin, end = first or date.min, last or date.max
    if known:
        entries = [e for e in await turn.book.history(known) if e.act == deed and not e.struck]
    else:
        entries = await turn.book.of_days(begin, end, deed)
    done = [e for e in entries if e.on and begin <= e.on <= end]
    return sorted(done, key=lambda e: (e.on or date.max, e.said_at))


DONE_TO = {"open": "opened", "layer": "fed", "drain": "drained", "seal": "sealed", "bury": "buried"}


async def when_last(plan: WhenLast, turn: Turn) -> Answer:
    """When something was last done to a bin, or to any, and by whom."""
    bin = await turn.book.bin(plan.bin) if plan.bin else None
    done = await deeds(plan.bin, turn, plan.deed)
    if not done:
        which = f"{capital(the(bin.name))} was not" if bin else "No bin was"
        return Answer(say=f"{which} {DONE_TO[plan.deed]} yet, as far as I know.")
    last = done[-1]
    if plan.deed == "layer":
        return Answer(say=_layer(last, turn))
    where = capital(the(last.bin.name)) if last.bin else "A bin"
    when = day(last.on, turn.today) if last.on else ""
    return Answer(say=f"{where}: {_deed(last, turn)}, {when}.")


async def written(plan: Written, turn: Turn) -> Answer:
    """What a member wrote down between two days, each record in a few words."""
    member = "the group" if plan.of_all else plan.member or turn.sender
    if plan.of_all:
        entries = await turn.book.of_days(plan.first, plan.last)
    else:
        entries = await turn.book.written_by(member, plan.first, plan.last)
    days = span(plan.first, plan.last, turn.today)
    if not entries:
        return Answer(say=f"{capital(member)} has written nothing down {days}, as far as I know.")
    told = [
        describe(entry, turn) + (f", by {entry.member}" if plan.of_all and entry.member else "")
        for entry in entries[-MOST_TOLD:]
    ]
    rest = len(entries) - len(told)
    before = f" (the last {len(told)} of {len(entries)})" if rest else ""
    return Answer(say="\n".join([f"{capital(member)}, {days}{before}:", *map(capital, told)]))


async def in_ground(plan: InGround, turn: Turn) -> Answer:
    """What was buried at a place, the latest last, and when it can be planted there."""
    place = bed_name(plan.place)
    there = [e for e in await deeds(None, turn, "bury") if bed_name(e.facts.place or "") == place]
    if not there:
        return Answer(say=f"Nothing was buried there that I know of: {plan.place}.")
    lines = []
    for entry in there[-MOST_TOLD:]:
        on = entry.on or turn.today
        what = capital(the(entry.bin.name)) if entry.bin else "A bin"
        lines.append(f"{what}: {_deed(entry, turn)}, {day(on, turn.today)}.")
    soil = there[-1].facts.celsius
    window = new_run(turn.book.room).to_plant(there[-1].on or turn.today, soil)
    lines.append(plant_there(window, soil, turn))
    return Answer(say="\n".join(lines), why=reasons(window, turn.book.room))


async def who_kept(plan: WhoKept, turn: Turn) -> Answer:
    """Who keeps a bin between two days, before somebody, or since its beginning."""
    bin = await asked_of(plan.bin, turn)
    if isinstance(bin, Answer):
        return bin
    until = max(turn.today, plan.last or turn.today)
    kept = spells(await whole_custody(turn.book, bin), until, turn.book.room.zone)
    if plan.before:
        kept = _before(kept, plan.before)
    first, last = plan.first or date.min, plan.last or date.max
    told = [one for one in kept if one.first <= last and (one.last or until) >= first]
    if not told:
        return Answer(say=f"Nobody kept {the(bin.name)} then, as far as I know.")
    return Answer(say="\n".join([f"{capital(the(bin.name))}:", *(_spell(s, turn) for s in told)]))


def _before(kept: Sequence[Spell], member: str) -> list[Spell]:
    """The keeper before the last spell of a member."""
    at = max((n for n, one in enumerate(kept) if is_same(one.keeper, member)), default=0)
    return list(kept[max(at - 1, 0) : at])


def _spell(spell: Spell, turn: Turn) -> str:
    who = spell.keeper or "nobody"
    if spell.last is None:
        first = day(spell.first, turn.today)
        when = f"from {first} on" if spell.first > turn.today else f"since {first}"
        return f"{capital(who)}, {when}."
    return f"{capital(who)}, {span(spell.first, spell.last, turn.today)}."


def exact_percent(share: float) -> str:
    """A share of 0 to 1 in words."""
    return f"{round(share * 100)} %" if share >= 0.01 else "under 1 %"


def _weights(layers: Iterable[Entry]) -> dict[str, float]:
    """What each member put in (kg), of layers that were measured."""
    weights: dict[str, float] = defaultdict(float)
    for entry in layers:
        weights[entry.member or "somebody"] += layer_mass(entry.facts) or 0.0
    return {member: kg for member, kg in weights.items() if kg}


async def story(plan: Story, turn: Turn) -> Answer:
    """A run of a bin from its first layer to the bed, told in the order of its days."""
    bin = await asked_of(plan.bin, turn)
    if isinstance(bin, Answer):
        return bin
    present = await turn.book.present_run(bin)
    number = plan.run if plan.run > 0 else present + plan.run
    if not 1 <= number <= present:
        return Answer(say=f"{capital(the(bin.name))} has {_runs(present)}, so there is no such.")
    entries = [entry for entry in await turn.book.run(bin, number) if entry.on]
    lines = [f"{capital(the(bin.name))}, run {number}:"]
    for kind, group in groupby(entries, key=lambda entry: entry.act == "layer"):
        told = list(group)
        lines += [_fed(told, turn)] if kind else _deeds(told, turn)
    lines += _end(entries, turn)
    return Answer(say="\n".join(lines))


def _runs(count: int) -> str:
    return "no run yet" if count == 0 else "1 run" if count == 1 else f"{count} runs"


def _fed(layers: Sequence[Entry], turn: Turn) -> str:
    """Layers that followed each other, in one line: who put in how much, and how rich it was."""
    days = [entry.on for entry in layers if entry.on]
    by_member = _weights(layers)
    total = sum(by_member.values())
    count = "1 layer" if len(layers) == 1 else f"{len(layers)} layers"
    who = listed(
        [f"{m} {mass(kg, turn.units)}" for m, kg in by_member.items()]
        or list(dict.fromkeys(entry.member or "somebody" for entry in layers))
    )
    rich = sum((layer_mass(e.facts) or 0.0) * _rich(e) for e in layers)
    meat = (
        f", {exact_percent(rich / total)} of it meat, fish, dairy or fat" if total and rich else ""
    )
    return f"{capital(span(min(days), max(days), turn.today))}: {count} ({who}){meat}."


def _rich(entry: Entry) -> float:
    facts = entry.facts
    return facts.rich if facts.rich is not None else rich_share(facts.materials or {})


def _deeds(entries: Sequence[Entry], turn: Turn) -> list[str]:
    """What was done, seen or agreed, a line for each day."""
    lines = []
    for on, group in groupby(entries, key=lambda entry: entry.on):
        words = [said for entry in group if (said := _deed(entry, turn))]
        if on and words:
            lines.append(f"{capital(day(on, turn.today))}: {', '.join(dict.fromkeys(words))}.")
    return lines


def _deed(entry: Entry, turn: Turn) -> str:  # one line for each act
    who, facts = entry.member or "somebody", entry.facts
    match entry.act:
        case "open":
            size = f" ({volume(facts.capacity_l, turn.units)})" if facts.capacity_l else ""
            begun = f"{facts.words} and begun again" if facts.words else "opened"
            return f"{begun} by {who}{size}"
        case "drain":
            drawn = f"{volume(facts.volume_l, turn.units)} " if facts.volume_l else ""
            return f"{drawn}drained by {who}"
        case "seal" | "unseal" | "retire":
            return f"{_DEEDS[entry.act]} by {who}"
        case "bury":
            return f"buried by {who}" + (f", {facts.place}" if facts.place else "")
        case "observe":
            return listed([sign.replace("_", " ") for sign in facts.signs]) if facts.signs else ""
        case "note" if facts.words:
            return f"{who} found {quoted(facts.words)}"
        case "accept":
            is_to_come = entry.on is not None and entry.on > turn.today
            return f"to be taken over by {who}" if is_to_come else f"taken over by {who}"
        case "rename":
            return f"renamed {quoted(facts.words)}" if facts.words else ""
    return ""


_DEEDS = {"seal": "sealed", "unseal": "opened again", "retire": "retired"}


def _end(entries: Sequence[Entry], turn: Turn) -> list[str]:
    """The whole of a run in one line."""
    layers = [entry for entry in entries if entry.act == "layer"]
    buried = next((entry for entry in entries if entry.act == "bury"), None)
    total, begun = (
        sum(_weights(layers).values()),
        min((e.on for e in entries if e.on), default=None),
    )
    if not layers or begun is None or not total:
        return []
    if buried is None or buried.on is None:
        return [f"So far {mass(total, turn.units)} in {whole_days((turn.today - begun).days)}."]
    return [
        f"In all {mass(total, turn.units)} in {whole_days((buried.on - begun).days)}, begin to bed."
    ]
