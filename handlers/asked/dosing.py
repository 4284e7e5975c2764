"""How much starter: on the scraps in question, on a layer just told, on an end of the bin."""

from dataclasses import replace

from handlers.answer import Answer, Turn
from handlers.chosen import reasons
from handlers.doubtful.spokenof import TALK_GOES_ON
from handlers.doubtful.unsure import guess_of
from handlers.phrasing import capital, day, length, spoon, starter, the, volume
from handlers.practice.density import capacity_kg
from handlers.practice.figure import Refused, number
from handlers.practice.first_bed import first_bed
from handlers.practice.units import KILOGRAMS
from handlers.reading.acts import Ask, Layer
from handlers.reading.questions.doses import dose_on
from handlers.reading.questions.ofthelayer import OF_TALK
from handlers.recording.bins import how_much, usual_bin
from handlers.recording.layers import layer_dose, said_amount, unmeasured, usual_dose
from handlers.state import BinState, named
from storage import traces
from storage.rows import Bin, Entry, Facts

MOST_SINCE = 6
"""Messages that are looked back on for what we asked about."""
NOT_THAT_LITTLE = (
    "No layer weighs nothing or less: how much do you mean? Say “how much starter for 1 kg?”"
)


async def asked(act: Ask, turn: Turn) -> Answer:
    """How much starter: for the scraps in question, on an end of the bin, or the rule."""
    state = await named(turn.book, act.bin, turn.today)
    if act.what in _STREWN:
        return _strewn(act, state, turn)
    count, full = act.count or 1, ""
    if act.count and act.mass_kg is act.volume_l is act.depth_m is None:
        each_l = await usual_bin(turn)
        full = f"{number(count)} bins of {volume(each_l, turn.units)} as they fill"
        act = replace(act, mass_kg=capacity_kg(each_l, act.materials))
    if act.mass_kg is act.volume_l is act.depth_m is None:
        layer = await _lately_told(act, state, turn)
        if act.what == OF_TALK and (in_doubt := await _lately_asked(layer, turn)):
            return await asked(dose_on(in_doubt), turn)
        if layer and layer.bin:
            return await _of_layer(layer, layer.bin, turn)
        say = f"{unmeasured(turn.units)}\n{_by_weight(turn)}"
        return Answer(say=say, why=usual_dose(turn), query=how_much(act))
    if (act.mass_kg or act.volume_l or act.depth_m or 0) <= 0:
        return Answer(say=NOT_THAT_LITTLE)
    facts = Facts(
        mass_kg=act.mass_kg, volume_l=act.volume_l, materials=act.materials, rich=act.rich
    )
    try:
        reckoned = layer_dose(facts, state, turn, act.depth_m, act.width_m)
    except Refused as refused:
        return Answer(say=str(refused))
    spoons = starter(
        count * reckoned.tablespoons,
        count * reckoned.starter_g,
        turn.units,
        in_cups=act.what == "cups",
    )
    deep = f"a layer {length(act.depth_m, turn.units)} deep" if act.depth_m else ""
    each = deep or said_amount(facts, turn)
    if act.count:
        whole_g = number(count * reckoned.starter_g)
        step = f"{number(count)} bins at {number(reckoned.starter_g)} g each: {whole_g} g"
        reckoned = reckoned.led_by((step,))
        each = full or f"{number(count)} bins, {each} in each"
    return Answer(
        say=f"{capital(spoons)} of starter on {each}: {reckoned.reason}.",
        why=reasons(reckoned, turn.book.room),
    )


_STREWN = {
    "bottom": "on the floor of the empty bin",
    "top": "on top, as much as on the floor; press it down and shut the lid tight",
}
"""The ends of a bin, where starter is strewn and no scraps are dosed."""


def _strewn(act: Ask, state: BinState | None, turn: Turn) -> Answer:
    """How much starter goes on the floor of a bin, or on top of all before it is sealed."""
    capacity_l = act.capacity_l or (state.capacity_l if state else None)
    try:
        bed = first_bed(capacity_l=capacity_l, tablespoon=spoon(turn.units))
    except Refused as refused:
        return Answer(say=str(refused))
    spoons = capital(starter(bed.tablespoons, bed.starter_g, turn.units))
    return Answer(say=f"{spoons} of starter {_STREWN[act.what or 'bottom']}.", why=bed.why())


async def _lately_told(act: Ask, state: BinState | None, turn: Turn) -> Entry | None:
    """The layer that is meant where no amount is asked of: the last one today in the bin named,
    else the sender's own or the one in talk, while that goes on.
    """
    if act.materials or act.what not in (None, OF_TALK) or act.count:
        return None
    bins = [state.bin] if state else [] if act.bin else await turn.book.bins()
    told = [entry for bin in bins if (entry := await turn.book.latest(bin, "layer"))]
    last = max(told, key=lambda entry: entry.written_at, default=None)
    if last is None or not (last.facts.mass_kg or last.facts.volume_l):
        return None
    if state:
        return last if last.on == turn.today else None
    lately = last.written_at <= turn.at <= last.written_at + TALK_GOES_ON
    own = last.writer == turn.sender or act.what == OF_TALK
    return last if lately and own else None


async def _lately_asked(told: Entry | None, turn: Turn) -> Layer | None:
    """The layer of which we asked, since one was told, whether it is to be written down, if nobody
    has said.
    """
    since = max(turn.at - TALK_GOES_ON, told.written_at) if told else turn.at - TALK_GOES_ON
    db, address = turn.book.db, turn.book.room.address
    for before in await traces.said_lately(db, address, traces.LAST, MOST_SINCE):
        question = await turn.book.question_about(before.event)
        if question and question.asked_at > since:
            [guess, *more] = guess_of(question)
            return guess if isinstance(guess, Layer) and not more else None
    return None


async def _of_layer(layer: Entry, bin: Bin, turn: Turn) -> Answer:
    """The dose of a layer that is in the book, said again."""
    state = await named(turn.book, bin.name, turn.today)
    try:
        reckoned = layer_dose(layer.facts, state, turn)
    except Refused as refused:
        return Answer(say=str(refused))
    spoons = starter(reckoned.tablespoons, reckoned.starter_g, turn.units)
    whose = f" by {layer.member}" if layer.member and layer.member != turn.sender else ""
    on = day(layer.on, turn.today) if layer.on and layer.on != turn.today else ""
    where = f"in {the(bin.name)}{', ' if on else ''}{on}"
    return Answer(
        say=f"{capital(spoons)} of starter on the {said_amount(layer.facts, turn)}{whose} {where}: "
        f"{reckoned.reason}.\n{_by_weight(turn)}",
        why=reasons(reckoned, turn.book.room),
    )


def _by_weight(turn: Turn) -> str:
    """The usual dose on a kilo, or a pound, of plain scraps."""
    kg, unit = (1.0, "kilo") if turn.units == "metric" else (KILOGRAMS["pound"], "pound")
    usual = layer_dose(Facts(mass_kg=kg), None, turn)
    spoons = starter(usual.tablespoons, usual.starter_g, turn.units)
    return f"On a {unit} of plain scraps that is {spoons}."
