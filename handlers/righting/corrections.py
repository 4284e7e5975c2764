"""A record is corrected, or all that a message did is undone: by words, an edit, a sign."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import fields, replace
from datetime import datetime, timedelta

from handlers.answer import Answer, Handler, Turn
from handlers.doubtful import nosuchbin, unsure
from handlers.doubtful.asking import is_meant
from handlers.people import is_same
from handlers.phrasing import capital, the
from handlers.planning.planting import measured_again
from handlers.practice.figure import listed
from handlers.reading.acts import (
    Accept,
    Act,
    Amend,
    Batch,
    Bury,
    Drain,
    Layer,
    Observe,
    Offer,
    Open,
    Seal,
    Stock,
    Unsure,
)
from handlers.reading.corrections.amending import BARE_AMOUNT
from handlers.reading.corrections.numberright import FARTHEST
from handlers.reading.corrections.partright import BY_PART
from handlers.recording.describing import describe
from handlers.recording.starter import moved_anew
from handlers.righting.whichrecord import (
    alone_of_day,
    is_of_all,
    named_by,
    of_sender,
    said,
    told_in_sitting,
)
from handlers.sharing.onoffer import taken_on
from storage.book import Book
from storage.rows import Entry, Facts, NewEntry

AMENDABLE = {
    "mass_kg": ("layer", "batch", "stock"),
    "volume_l": ("drain", "layer", "batch", "stock"),
    "capacity_l": ("open",),
    "shared": ("open",),
    "materials": ("layer",),
    "rich": ("layer",),
    "signs": ("observe",),
    "celsius": ("observe", "bury"),
    "ph": ("observe",),
    "place": ("bury",),
}
"""Which acts have a field, the likeliest first."""

ACTS: Mapping[str, type[Act]] = {
    kind.act: kind
    for kind in (Layer, Drain, Open, Seal, Bury, Observe, Batch, Stock, Offer, Accept)
}

ARRANGED = frozenset(
    {"away", "back", "decline", "withdraw", "unseal", "note", "rename", "retire", "bar", "date"}
    | {"rota", "join", "quit", "over", "swap", "swapped"}
)
"""Acts without figures: a correction is never meant for one."""

PASSING = frozenset({"offer", "accept", "decline", "withdraw"})
"""Acts that have their place in the talk on one bin."""

LAST_IS_MEANT = timedelta(days=2)
"""For so long "no, 3 kg" means the sender's last record; an older one has to be replied to."""

NOTHING_THERE = "Which record do you mean? Reply to the message it is about."


async def amend(act: Amend, turn: Turn, carry_on: Handler) -> Answer:
    """The record replied to, or the sender's last, is written anew as corrected."""
    if act.of:
        turn = replace(turn, refers_to=act.of)
    # What was done on a day that is over is no offer.
    is_over = act.on is not None and act.on < turn.today
    targets = await targets_of(turn, but=ARRANGED | PASSING if is_over else ARRANGED)
    if targets and targets[-1].act == "open" and _is_size(act, targets[-1]):
        act = replace(act, capacity_l=act.volume_l, volume_l=None)  # "no, 25 L" of its size
    if act.what:
        targets = [entry for entry in targets if entry.act == act.what]
    of_day = [entry for entry in targets if act.was and entry.on == act.was]
    if act.was and not (of_day := of_day or await alone_of_day(act, turn)):
        return Answer(say=NOTHING_THERE)
    named, act = named_by(act, of_sender(of_day or targets, turn.sender))
    if not named and BY_PART in act.rules and act.bin and not turn.refers_to:
        named = _alone([e for e in await told_in_sitting(turn) if _is_of(act, e)])
    if is_of_all(act, named):
        return await each_right([(act, target) for target in named], turn, carry_on)
    target = _fitting(act, named)
    corrected = _corrected(target, act) if target else None
    if target is None or corrected is None:
        return await _new_layer(act, targets, turn)
    if said(act) <= {"celsius", "rules"} and (again := await measured_again(act, target, turn)):
        return again
    return await _put_right(act, target, corrected, turn, carry_on)


async def written_anew(target: Entry, act: Amend, turn: Turn, carry_on: Handler) -> Answer:
    """The entry struck out, and written again with the corrected fields."""
    corrected = _corrected(target, act)
    if corrected is None:
        return Answer(say=NOTHING_THERE)
    return await _put_right(act, target, corrected, turn, carry_on)


async def _put_right(
    act: Amend, target: Entry, corrected: Act, turn: Turn, carry_on: Handler
) -> Answer:
    """The record written anew as corrected."""
    if (unheard_of := await nosuchbin.corrected(act, target.act, turn)) is not None:
        return unheard_of
    rest = _rest(target, act)
    unchanged = isinstance(corrected, Open) and corrected == as_act(target)
    if unchanged or (act.rest and rest is None):
        return Answer(say=NOTHING_THERE)
    there = replace(turn, book=turn.book.without([target]), event=target.event, refers_to=None)
    if isinstance(corrected, Stock):
        corrected = await moved_anew(corrected, target, there)
    answer = await carry_on(corrected, there)
    if not answer.entries:
        return answer
    entries = [replace(entry, replaces=target.id) for entry in answer.entries]
    words = answer.say or f"{capital(describe(entries[0], turn))}."
    if rest is not None:
        further = await carry_on(rest, there)
        entries += further.entries
        words = f"{words}\n{further.say.splitlines()[0]}"
    lead = "" if target.bin is None and said(act) <= {"bin", "rules"} else "Corrected. "
    taken = await taken_on(target, entries[0], turn)
    if taken and target.bin:
        words = f"{words} {capital(the(target.bin.name))} stays where it is."
    return replace(
        answer, entries=entries, strikes=[target, *taken], say=f"{lead}{words}", noted=False
    )


def _rest(target: Entry, act: Amend) -> Layer | None:
    """What another put in of a layer: all of it but what the sender did."""
    layer, mine = as_act(target), act.mass_kg or act.volume_l or 0.0
    whole = target.facts.mass_kg if act.mass_kg else target.facts.volume_l
    if act.rest is None or not isinstance(layer, Layer) or not whole or whole <= mine:
        return None
    mass, volume = (whole - mine, None) if act.mass_kg else (None, whole - mine)
    return replace(layer, mass_kg=mass, volume_l=volume, member=act.rest)


async def each_right(pairs: Sequence[tuple[Amend, Entry]], turn: Turn, carry_on: Handler) -> Answer:
    """Each of several records put right."""
    out = Answer()
    for act, target in pairs:
        corrected = _corrected(target, act)
        if corrected is None or corrected == as_act(target):
            continue
        one = await _put_right(act, target, corrected, turn, carry_on)
        out = replace(
            out,
            entries=[*out.entries, *one.entries],
            strikes=[*out.strikes, *one.strikes],
            say="\n".join(filter(None, (out.say, one.say.removeprefix("Corrected. ")))),
            why=[*out.why, *one.why],
        )
    return replace(out, say=f"Corrected. {out.say}") if out.entries else out


def _is_of(act: Amend, entry: Entry) -> bool:
    """Whether the entry is in the bin that is named, and has what is put right."""
    there = entry.bin is not None and is_same(entry.bin.name, act.bin or "")
    return there and any(
        getattr(act, name) and entry.act in acts for name, acts in AMENDABLE.items()
    )


def _alone(entries: Sequence[Entry]) -> Sequence[Entry]:
    return entries if len(entries) == 1 else ()


def _is_size(act: Amend, opened: Entry) -> bool:
    """Whether the volume can be that of the bin: half a litre is none beside 60 L."""
    said = opened.facts.capacity_l
    if not act.volume_l or act.capacity_l is not None:
        return False
    return not said or said / FARTHEST <= act.volume_l <= said * FARTHEST


async def _anothers(act: Amend, turn: Turn) -> Answer | None:
    """The sender has written down nothing: is the group's last record to be put right?"""
    if turn.refers_to:
        return None
    last = await last_of_all(turn, ARRANGED | PASSING)
    if last is None or _corrected(last, act) is None:
        return None
    return is_meant(act, [last], turn)


async def _new_layer(act: Amend, targets: Sequence[Entry], turn: Turn) -> Answer:
    """A bare amount where nothing has one to be put right: perhaps it went in just now."""
    if BARE_AMOUNT not in act.rules:
        return (None if targets else await _anothers(act, turn)) or Answer(say=NOTHING_THERE)
    bin = act.bin or next((entry.bin.name for entry in reversed(targets) if entry.bin), None)
    layer = Layer(
        mass_kg=act.mass_kg,
        volume_l=act.volume_l,
        bin=bin,
        materials=act.materials or {"mixed": 1.0},
    )
    return unsure.asked(Unsure(guess=(layer,)), turn)


def struck_words(entries: Sequence[Entry], turn: Turn) -> str:
    """What was struck out, in words."""
    struck = f"Struck out: {listed([describe(entry, turn) for entry in entries])}."
    is_back = any(entry.act == "back" for entry in entries)
    return f"{struck} The absence stands as it was." if is_back else struck


def undone_words(undone: Answer, turn: Turn) -> str:
    """What was struck out and what stands again, in words."""
    lines = [struck_words(undone.strikes, turn)] if undone.strikes else []
    if undone.entries:
        again = listed([describe(entry, turn) for entry in undone.entries])
        lines.append(f"In the book again: {again}.")
    return " ".join(lines)


async def targets_of(turn: Turn, but: Collection[str] = ()) -> list[Entry]:
    """The entries of the message replied to, or what that put right, else of the sender's last
    recorded message that is not of an act left out; none if that was struck out, whatever stands
    before it.
    """
    if turn.refers_to:
        book, event = turn.book, turn.refers_to
        return await book.of_event(event) or await book.standing_by(event)
    last = await last_lately(turn, but)
    return await turn.book.of_event(last.event) if last and not last.struck else []


async def last_lately(turn: Turn, but: Collection[str] = ()) -> Entry | None:
    """The sender's last entry, if it was written lately enough to be meant."""
    last = await turn.book.last_by(turn.sender, but=but)
    return last if last and turn.now - last.written_at <= LAST_IS_MEANT else None


async def last_of_all(turn: Turn, but: Collection[str] = ()) -> Entry | None:
    """The latest of what each member wrote down last, where that still stands."""
    names = [one.name for one in await turn.book.members()]
    lasts = [await last_lately(replace(turn, sender=name), but) for name in names]
    return max((e for e in lasts if e and not e.struck), key=lambda e: e.id, default=None)


def _fitting(act: Amend, targets: Sequence[Entry]) -> Entry | None:
    """The entry that the corrected fields belong to; the last one if any of them would do."""
    for name, acts in AMENDABLE.items():
        if getattr(act, name) not in (None, ()):
            for wanted in acts:
                for entry in reversed(targets):
                    if entry.act == wanted:
                        return entry
    return targets[-1] if targets else None


def as_act(entry: Entry) -> Act | None:
    """The act that an entry was written down for."""
    kind = ACTS.get(entry.act)
    if kind is None:
        return None
    said = {item.name: getattr(entry.facts, item.name) for item in fields(Facts)}
    said |= {
        "bin": entry.bin.name if entry.bin else None,
        "member": entry.member,
        "on": entry.on,
        "to": entry.receiver,
        "emptied": entry.facts.words,
    }
    return kind(**{item.name: said[item.name] for item in fields(kind) if item.name in said})


def _corrected(target: Entry, amend: Amend) -> Act | None:
    """The entry's act with the corrected fields in place of its own."""
    act = as_act(target)
    return None if act is None else put_right(amend, act)


def put_right(amend: Amend, act: Act) -> Act | None:
    """An act with the corrected fields in place of its own; None if it has none of them."""
    fields = {
        name: value
        for name in (*AMENDABLE, "bin", "member", "on")
        if hasattr(act, name) and (value := getattr(amend, name)) not in (None, ())
    }
    if "mass_kg" in fields and "volume_l" not in fields and hasattr(act, "volume_l"):
        fields["volume_l"] = None  # a new weight takes the place of the volume that was said
    if "volume_l" in fields and "mass_kg" not in fields and hasattr(act, "mass_kg"):
        fields["mass_kg"] = None
    if "materials" in fields and "rich" not in fields:
        fields["rich"] = None
    return replace(act, **fields) if fields else None


async def undo(event: str, turn: Turn) -> Answer:
    """All that a message, an edit, a correction or a mark did to the book is undone.

    Its own entries are struck out. Where it changed another message's record, that record is
    again as the last change that still holds left it.
    """
    book = turn.book
    strikes = {entry.id: entry for entry in await book.of_event(event)}
    restored = []
    void = {event, turn.cause, *await book.edits_of(event)}
    touched = {
        entry.root: entry.event for change in void for entry in await book.touched_by(change)
    }
    for root, message in touched.items():
        if message == event or await book.is_withdrawn(message):
            continue
        chain = await book.chain(root)
        standing = next((entry for entry in chain if not entry.struck), None)
        holding = await _holding(chain, void=void, book=book)
        if holding and standing and holding.cause == standing.cause:
            continue
        if standing:
            strikes[standing.id] = standing
        if holding:
            last, facts = chain[-1].id, holding.facts
            again = holding.anew(turn.now, cause=holding.cause, replaces=last, facts=facts)
            restored.append(again)
    return Answer(entries=restored, strikes=list(strikes.values()))


async def _holding(chain: Sequence[Entry], void: set[str], book: Book) -> Entry | None:
    """The entry that should stand: that of the last change still holding, if it made one."""
    made: dict[str, Entry] = {}
    changes: dict[str, datetime] = {}
    for entry in chain:
        made.setdefault(entry.cause, entry)
        changes.setdefault(entry.cause, entry.written_at)
    for entry in chain:
        if entry.struck_by and entry.struck_at:
            changes.setdefault(entry.struck_by, entry.struck_at)
    for change in sorted(changes, key=lambda change: changes[change], reverse=True):
        if change in void or await book.is_withdrawn(change) or await book.withdraws(change):
            continue
        return made.get(change)
    return None


def _is_succeeded(old: Entry, new: NewEntry) -> bool:
    """Whether one stands in for the other; an offer of another bin is another offer."""
    of_bin = old.bin.name if old.bin else None
    return old.act == new.act and (old.act not in PASSING or of_bin == new.bin)


def succeed(new: Sequence[NewEntry], old: Sequence[Entry]) -> list[NewEntry]:
    """New entries, each pointing at the struck one of the same act that it stands in for."""
    left = list(old)
    linked = []
    for entry in new:
        former = next((one for one in left if _is_succeeded(one, entry)), None)
        if former and entry.replaces is None:
            left.remove(former)
            entry = replace(entry, replaces=former.id)
        linked.append(entry)
    return linked
