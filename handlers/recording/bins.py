"""A bin is opened, named, asked about; and which bin is meant when none is named."""

from collections.abc import Collection, Mapping, Sequence

from handlers.answer import Answer, Query, Turn
from handlers.doubtful.spokenof import bin_spoken_of
from handlers.people import is_same
from handlers.phrasing import (
    capital,
    day,
    how_full,
    made_of,
    mass,
    spoon,
    starter,
    the,
    volume,
    when,
)
from handlers.planning.due_reasons import why_due
from handlers.planning.dues import TURNS, done_to_it, shown
from handlers.practice.bins import ORDINARY_BIN
from handlers.practice.density import SETTLING, capacity_kg, pressed_kg_l
from handlers.practice.figure import Refused, listed, number
from handlers.practice.first_bed import first_bed
from handlers.reading.acts import Act, Ask, Open
from handlers.reading.deeds.opened import NAME_LOST
from handlers.state import BinState, Stage, look_up, named, states_of
from storage import words
from storage.rows import Bin, Due, Entry, Facts, NewEntry

FIRST_BIN = "bin 1"
"""The name of a group's first bin while it has none."""

LONGEST_NAME = 40
"""Letters of a bin's name; what is longer is no name but a misreading."""

MOST_CHOICES = 8
"""Bins that are named where it is asked which one was meant."""

NO_BINS = "No bin is open yet. Say “opened the blue bin, 20 L” to begin."

AT_WORK: frozenset[Stage] = frozenset({"filling", "fermenting", "ready"})
ANY: frozenset[Stage] = AT_WORK | {"in the ground"}


async def opened(act: Open, turn: Turn) -> Answer:
    """A bin was started, or named for the first time."""
    name = act.bin or await _free_name(turn)
    known = await turn.book.bin(name)
    facts = Facts(capacity_l=act.capacity_l, shared=act.shared)
    entry = turn.entry("open", bin=name, facts=facts, member=act.member, on=act.on)
    if known and known.name.casefold() != words.name(name).casefold():
        return Answer(
            say=f"{capital(the(name))} is {the(known.name)} now, so nothing is written down. "
            f"Say “{known.name} is 20 L” for its size, or another name for a new bin."
        )
    state = await look_up(turn.book, known, turn.today) if known else None
    capacity_l = act.capacity_l or (state.capacity_l if state else None)
    try:
        bed = first_bed(capacity_l=capacity_l, tablespoon=spoon(turn.units))
    except Refused as refused:
        return Answer(say=f"{refused} Nothing is written down.")
    if state and state.number and state.run.stage(turn.today) != "in the ground":
        return Answer(entries=[entry], say=_known(state, act, turn))
    size = f", {volume(act.capacity_l, turn.units)}" if act.capacity_l else ""
    shared = ", for everybody" if act.shared else ""
    kept = f", kept by {act.member}" if entry.member != turn.sender and act.member else ""
    lines = [
        f"Opened {the(name)}{size}{shared}{kept}. First a thin bed of starter bran: "
        f"{starter(bed.tablespoons, bed.starter_g, turn.units)}."
    ]
    if act.bin is None and NAME_LOST in act.rules:
        lines.append(
            f"I cannot call it as you said, so it is {the(name)}. Say “rename {name} to …” for a "
            "name of its own."
        )
    query = None
    if not capacity_l:
        query = how_big(name)
        lines.append(
            f"Tell me how big it is (“{name} is 20 L”) and I can say when it will be full."
        )
    return Answer(entries=[entry], say="\n".join(lines), why=bed.why(), query=query)


def how_big(name: str) -> Query:
    """What keeps the question open how big a bin is."""
    return Query.about(Open(bin=name), lacks="size")


def how_much(act: Act) -> Query:
    """What keeps the question open how much is meant, up to the sender's next words."""
    return Query.about(act, lacks="amount")


def _known(state: BinState, act: Open, turn: Turn) -> str:
    said = []
    if act.capacity_l:
        said.append(f"holds {volume(act.capacity_l, turn.units)}")
    if act.shared is not None:
        said.append("is for everybody" if act.shared else "is no longer shared")
    if said:
        return f"Noted: {the(state.bin.name)} {listed(said)}."
    if state.retired:
        return f"{capital(the(state.bin.name))} is in use again, and its records go on."
    since = state.run.opened or turn.today
    return (
        f"{capital(the(state.bin.name))} is in use since {day(since, turn.today)}, so its records "
        "go on. Say “buried it” first if it starts afresh."
    )


async def _free_name(turn: Turn) -> str:
    taken = {bin.name.casefold() for bin in await turn.book.bins()}
    number = 1
    while f"bin {number}" in taken:
        number += 1
    return f"bin {number}"


async def about(act: Ask, turn: Turn) -> Answer:
    """What is in a bin, how full it is, and what comes next; of several a line for each."""
    states = await states_of(turn.book, turn.today)
    if not states:
        return Answer(say=NO_BINS)
    alone = not act.bin and len(states) == 1
    chosen = states if alone else [s for s in states if is_same(s.bin.name, act.bin)]
    if act.bin and not chosen:
        known = await named(turn.book, act.bin, turn.today)
        if known and known.retired:
            return Answer(say=f"{capital(summary(known, turn))}. It is out of use.")
        return unknown(act.bin, states)
    if chosen:
        dues = [
            due
            for due in await shown(turn.book, turn.today)
            if due.bin == chosen[0].bin and not (due.what in TURNS and due.from_day > turn.today)
        ]
        why = [*filled_step(chosen[0]), *await why_due(turn.book, dues, turn.today)]
        return Answer(say="\n".join(_card(chosen[0], dues, turn)), why=why)
    if act.what and (act.what in STAGES or act.what == "shared"):
        states = [s for s in states if _is_so(s, act.what, turn)]
        if not states:
            return Answer(say=f"No bin is {act.what}.")
    lines = [capital(summary(state, turn)) for state in states]
    return Answer(say="\n".join(lines), why=[step for s in states for step in filled_step(s)])


STAGES: Mapping[str, frozenset[Stage]] = {
    "open": frozenset({"filling"}),
    "sealed": frozenset({"fermenting", "ready"}),
}
"""The stages of the bins that are asked for so."""


def _is_so(state: BinState, what: str, turn: Turn) -> bool:
    return state.shared if what == "shared" else state.run.stage(turn.today) in STAGES[what]


def filled_step(state: BinState) -> list[str]:
    """How full a bin is, as a step of the arithmetic; empty where that is not known."""
    if state.fill is None or not state.capacity_l or not state.run.mass_kg:
        return []
    made_of = state.run.make_up
    holds = capacity_kg(state.capacity_l, made_of)
    return [
        f"{the(state.bin.name)}: {number(state.capacity_l)} L at {number(pressed_kg_l(made_of))} "
        f"kg/L, settled by {number(SETTLING.value * 100)} %, hold {number(holds)} kg; "
        f"{number(state.run.mass_kg)} kg are {state.run.mass_kg / holds:.0%} of that"
    ]


def unknown(name: str, states: Sequence[BinState]) -> Answer:
    """There is no such bin: name those there are."""
    known = listed([the(state.bin.name) for state in states])
    return Answer(say=f"I know no bin called “{name}”. There is {known}.")


def summary(state: BinState, turn: Turn) -> str:
    """A bin in one line: stage, layers and weight, fill."""
    run = state.run
    words = [f"{the(state.bin.name)}: {run.stage(turn.today)}"]
    if run.layer_count:
        layers = "1 layer" if run.layer_count == 1 else f"{run.layer_count} layers"
        weight = f", {mass(run.mass_kg, turn.units)}" if run.mass_kg else ""
        words.append(f"{layers}{weight}")
    elif run.stage(turn.today) == "filling":
        words.append("empty")
    if state.fill is not None and run.layer_count and not run.buried:
        words.append(how_full(state.fill))
    return ", ".join(words)


def _card(state: BinState, dues: Sequence[Due], turn: Turn) -> list[str]:
    run = state.run
    lines = [f"{capital(summary(state, turn))}."]
    if run.layer_count and not run.buried and run.make_up and (parts := made_of(run.make_up)):
        lines.append(f"In it: {parts}.")
    about = []
    if state.keeper:
        about.append(f"Kept by {state.keeper}")
    elif state.left:
        about.append(f"nobody keeps it since {state.left} left")
    if state.capacity_l:
        about.append(f"holds {volume(state.capacity_l, turn.units)}")
    if run.last_drain:
        about.append(f"last drained {day(run.last_drain, turn.today)}")
    if about:
        first, *rest = about
        lines.append(f"{capital(', '.join([first, *rest]))}.")
    for due in dues:
        duty = done_to_it(due.what)
        lines.append(f"{when(due.from_day, due.to_day, turn.today)}: {duty}.")
    return lines


async def choose(
    said: str | None,
    turn: Turn,
    *,
    stages: Collection[Stage] = AT_WORK,
    in_talk: bool = True,
) -> str | None:
    """The bin that was named or must be meant; None where a person would have to ask.

    `stages` are those in which the act makes sense, `in_talk` says whether the bin just spoken of
    is likelier than the one last fed. A group without bins gets its first one.
    """
    if said and len(said) <= LONGEST_NAME:
        known = await turn.book.bin(said)
        if known is None and await _are_several(said, turn):
            return None
        return known.name if known else said
    replied = await turn.book.of_event(turn.refers_to) if turn.refers_to else []
    for entry in replied:
        if entry.bin:
            return entry.bin.name
    bins = await turn.book.bins()
    if not bins:
        return FIRST_BIN
    if len(bins) == 1:
        return bins[0].name
    states = await states_of(turn.book, turn.today)
    fitting = [s for s in states if s.run.stage(turn.today) in stages]
    if any(state.bin.name in turn.helps for state in fitting) and len(fitting) > 1:
        return None
    spoken_of = await bin_spoken_of(turn) if in_talk and len(fitting) > 1 else None
    if any(state.bin.name == spoken_of for state in fitting):
        return spoken_of
    return _likely(fitting, turn.sender, await turn.book.last_layer_by(turn.sender))


async def _are_several(said: str, turn: Turn) -> bool:
    """Whether several bins are told apart by more than that word: white 1 and white 2."""
    names = [bin.name.casefold().split() for bin in await turn.book.bins()]
    return sum(said.casefold() in words for words in names) > 1


def _likely(fitting: Sequence[BinState], sender: str, last: Entry | None) -> str | None:
    """Only one it can be, the one the sender fed last, or the only one the sender keeps."""
    names = [state.bin.name for state in fitting]
    if len(names) == 1:
        return names[0]
    if last and last.bin and last.bin.name in names:
        return last.bin.name
    kept = [state.bin.name for state in fitting if state.keeper == sender]
    return kept[0] if len(kept) == 1 else None


async def meant(
    said: str | None, turn: Turn, *, stages: Collection[Stage] = AT_WORK
) -> BinState | Answer:
    """The bin that was named or must be meant; else what to say: which one, or that there is none.

    For what is only asked; what is to be written down goes by `choose` and `ask_which`.
    """
    state = await named(turn.book, await choose(said, turn, stages=stages), turn.today)
    if state:
        return state
    return await not_meant(said, turn, stages, then="")


async def asked_of(said: str | None, turn: Turn) -> Bin | Answer:
    """The bin that something is asked of, at whatever stage; else what to say."""
    name = await choose(said, turn)
    bin = await turn.book.bin(name) if name else None
    return bin or await not_meant(name, turn)


ASK_AGAIN = "Ask again with its name."


async def not_meant(
    said: str | None, turn: Turn, stages: Collection[Stage] = ANY, then: str = ASK_AGAIN
) -> Answer:
    """What to say where no bin is of the name said, or none was named and several can be meant;
    `then`: what to do, where a bare name would not be understood.
    """
    states = await states_of(turn.book, turn.today)
    if not states:
        return Answer(say=NO_BINS)
    if said:
        return unknown(said, states)
    question, _ = await which(turn, stages)
    return Answer(say=f"{question} {then}".rstrip())


async def ask_which(entry: NewEntry, turn: Turn, stages: Collection[Stage]) -> Answer:
    """The entry is written down without its bin, and the bin is asked for."""
    question, query = await which(turn, stages)
    return Answer(entries=[entry], say=question, query=query)


async def which(turn: Turn, stages: Collection[Stage] = AT_WORK) -> tuple[str, Query]:
    """The question which bin was meant, and what keeps it open."""
    states = await states_of(turn.book, turn.today)
    fitting = [s for s in states if s.run.stage(turn.today) in stages] or states
    question = f"Which bin: {either([state.bin.name for state in fitting])}?"
    return question, Query(guess="[]", lacks="bin")


def either(names: Sequence[str]) -> str:
    """The bins that it may be; of many only the first."""
    shown = [the(name) for name in names[:MOST_CHOICES]]
    rest = len(names) - len(shown)
    return listed([*shown, f"one of {rest} more"] if rest else shown, "or")


async def usual_bin(turn: Turn) -> float:
    """What the group's bins hold, in the middle; an ordinary bin where no size is known."""
    states = await states_of(turn.book, turn.today)
    sizes = sorted(state.capacity_l for state in states if state.capacity_l)
    return sizes[len(sizes) // 2] if sizes else ORDINARY_BIN.value
