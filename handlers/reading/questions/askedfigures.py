"""What a question on some topic is asked of: its figures, and the names of bins and members."""

from collections.abc import Callable, Mapping
from dataclasses import replace

from handlers.reading.acts import Ask, Topic
from handlers.reading.food.makeups import makeup
from handlers.reading.food.ofwhat import called_behind
from handlers.reading.measures.amounts import Amount
from handlers.reading.people.doers import is_sender
from handlers.reading.questions.bedsizes import with_size
from handlers.reading.questions.bincounts import bins_counted
from handlers.reading.questions.briefly import PLANTS
from handlers.reading.questions.dilutions import dilution_of
from handlers.reading.questions.doses import dose_of
from handlers.reading.questions.further import place_in
from handlers.reading.questions.outrightwords import BED_WORDS
from handlers.reading.questions.question import Question
from handlers.reading.questions.summing import summed
from handlers.reading.questions.trenchsizes import bins_in, with_bins, with_sides
from handlers.reading.questions.vesselsizes import sides_l, told_l
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


def filled(q: Question, topic: Topic) -> Ask:
    """The question on that topic, with the figures and names said in it."""
    if (reader := _FILLED.get(topic)) is not None:
        return reader(q)
    return Ask(topic=topic, bin=_name(q), rules=(f"asks about {topic}",))


def _dose(q: Question) -> Ask:
    return dose_of(q, _name(q))


def _trouble(q: Question) -> Ask:
    return Ask(topic="trouble", signs=q.signs(), bin=_name(q), rules=("asks about trouble",))


def _custody(q: Question) -> Ask:
    said = [d for d in q.message.days if q.start <= d.start < q.end]
    on = said[0].future if said and q.message.context.in_room else None
    return Ask(topic="custody", bin=_name(q), on=on, rules=("asks about custody",))


def _starter(q: Question) -> Ask:
    """What is left of it; "how much bran do we need for 2 bins?" is a question of the dose."""
    asked = q.message.context.in_room and _BRAN_FOR.search(q.text) is not None
    if asked and bins_counted(q.message, *q.own) is not None:
        return dose_of(q, None)
    return Ask(topic="starter", bin=_name(q), rules=("asks about starter",))


_BRAN_FOR = Late(
    r"\bhow (?:much|many \w+ of) (?:\w+ )?(?:bran|starter) (?:do|does|will|would|should|must) "
    r"(?:we|i|you|it|one) (?:need|want|take|use) (?:for|on|in)\b"
)


def _batch(q: Question) -> Ask:
    mass, volume = [a.value for a in _of_bran(q)], q.amounts("volume")
    mass = mass or q.amounts("mass")
    return Ask(
        topic="batch",
        mass_kg=mass[0] if mass else None,
        volume_l=volume[0] if volume and not mass else None,
        rules=("asks about batch",),
    )


def _totals(q: Question) -> Ask:
    doers = [m.name for m in q.message.members if q.start <= m.start < q.end]
    others = [name for name in doers if not is_sender(q.message, name)]
    named = others[0] if others else None
    act = Ask(topic="totals", bin=_name(q), member=named, rules=("asks about totals",))
    return summed(act, q) if q.message.context.in_room else act


def _bed(q: Question) -> Ask:
    area, mass, in_room = q.amounts("area"), q.amounts("mass"), q.message.context.in_room
    if in_room and area and q.has(_DUG) and not q.has(BED_WORDS):
        return _trench(q)  # "the trench is 2 m x 30 cm": its sides, and no bed's
    act = Ask(
        topic="bed",
        area_m2=area[0] if area else None,
        mass_kg=mass[0] if mass and in_room else None,
        place=place_in(q) if in_room else None,
        bin=_name(q),
        rules=("asks about bed",),
    )
    if not in_room:
        return act
    names = bins_in(q)
    return with_size(replace(act, bins=names) if len(names) > 1 else act, q)


_DUG = words_in("trench trenches hole pit ditch")


def _trench(q: Question) -> Ask:
    mass, by_sides = q.amounts("mass"), sides_l(q)
    litres = told_l(q) if by_sides is None else by_sides
    act = Ask(
        topic="trench",
        mass_kg=mass[0] if mass else None,
        volume_l=None if mass else litres,
        bin=_name(q),
        rules=("asks about trench",),
    )
    if not q.message.context.in_room:
        return act
    return with_bins(act if by_sides else with_sides(act, q.message), q)


def _dilution(q: Question) -> Ask:
    """The dilution; where soil or scraps are measured out, the trench or the dose instead."""
    if not q.liquid() and _SOIL_FOR.search(q.text):
        return _trench(q)
    return _dose(q) if not q.liquid() and _measures_scraps(q) else dilution_of(q, _name(q))


def _measures_scraps(q: Question) -> bool:
    """ "How much for 2 litres of peelings?" """
    starts = {
        item.start for item in q.items() if not q.message.has_in(PLANTS, item.start, item.end)
    }
    lots = [a for a in q.message.amounts if a.quantity == "volume" and q.start <= a.start < q.end]
    of_scraps = any({a.end, a.end + 1} & starts for a in lots)
    return of_scraps and q.words.isdisjoint({"water", "can"})


_SOIL_FOR = Late(
    r"^ (?:(?:and|so|then) )?(?:how much|how many \w+ of|what amount of) (?:soil|earth|dirt)\b"
)


def _name(q: Question) -> str | None:
    """The bin asked about; "it" is the one named before."""
    asked = [c for c in q.message.clauses if c.sense == "ask"]
    refs = [b for b in q.bins() if any(c.start <= b.start < c.end for c in asked)] or q.bins()
    named = [b.name for b in refs if b.name is not None]
    if named:
        return named[0]
    before = [b.name for b in q.message.bins if b.start < q.start and b.name is not None]
    means_it = not q.words.isdisjoint({"it", "its", "that", "this"})
    return before[-1] if before and means_it and not q.bins() else None


def _of_bran(q: Question) -> list[Amount]:
    """Masses in the words that ask, or else those that are said to be of bran."""
    masses = [a for a in q.message.amounts if a.quantity == "mass"]
    start, end = q.own
    asked = [a for a in masses if start <= a.start < end]
    return asked or [a for a in masses if called_behind(q.message, a) == "bran"]


def _allowed(q: Question) -> Ask:
    items = q.items()
    made = makeup(items)
    return Ask(
        topic="allowed",
        what=q.message.text(_with_its_state(q, items[0].start), _with_its_ill(q, items[-1].end))
        if items
        else None,
        materials=None if made is None else made.shares,
        rich=None if made is None else made.rich,
        bin=_name(q),
        rules=("asks about allowed",),
    )


_FILLED: Mapping[Topic, Callable[[Question], Ask]] = {
    "dilution": _dilution,
    "dose": _dose,
    "batch": _batch,
    "trench": _trench,
    "bed": _bed,
    "trouble": _trouble,
    "allowed": _allowed,
    "totals": _totals,
    "custody": _custody,
    "starter": _starter,
}
"""The questions that are asked with figures, or of more than a bin."""


_STATES = words_in(
    "mouldy moldy rotten rotting spoiled spoilt rancid putrid slimy fuzzy furry dead big large raw"
)
_LEAD_STATES = words_in("old very slightly really a bit of gone off bad and green blue")


def _with_its_ill(q: Question, end: int) -> int:
    """Where the words for a thing end, what ails it among them: "potatoes with late blight"."""
    norms = q.message.norms
    ill = [i for i in range(end, min(end + 4, len(norms))) if norms[i] in _ILLS]
    return ill[0] + 1 if ill and norms[end] in ("with", "that") else end


_ILLS = words_in("blight mould mold rot mildew")


def _with_its_state(q: Question, start: int) -> int:
    """Where the words for a thing begin, its state among them: mouldy bread is no bread."""
    norms = q.message.norms
    begin = start
    for i in range(start - 1, max(q.start, start - 4) - 1, -1):
        if norms[i] in _STATES:
            begin = i
        elif norms[i] not in _LEAD_STATES:
            break
    return begin
