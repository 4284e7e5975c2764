"""What the scores take for a record and no book wants: bran strewn, jests, what is only asked."""

from handlers.reading.acts import Drain
from handlers.reading.deeds.bran import is_strewn
from handlers.reading.deeds.buried import is_dug_up
from handlers.reading.deeds.liquid import is_only_set_under
from handlers.reading.deeds.notburied import is_inside, is_only_a_hole
from handlers.reading.deeds.opened import is_several
from handlers.reading.deeds.peeks import is_shut_again
from handlers.reading.deeds.sealed import is_lid_open, is_of_tap
from handlers.reading.deeds.toldday import is_ahead
from handlers.reading.doubts.lookalikes import is_between_bins
from handlers.reading.food.notfood import BITS, is_of_stuff
from handlers.reading.food.ofwhat import is_drawn, is_level
from handlers.reading.food.quantities import is_of_naught
from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.people.namesakes import is_of_namesake
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in


def is_other(kind: str, group: Group, likelihood: float) -> bool:
    """Whether they tell of what goes into no book: bran strewn, a bin only shut again, a jest."""
    if kind in ("bury", "drain", "seal", "open") and (
        is_of_namesake(group) or _asks_which(group) or _is_only_asked(group) or _is_bidden(group)
    ):
        return True
    if kind == "layer":
        nowhere = is_of_naught(group) or is_between_bins(group) or _goes_in_nowhere(group)
        return nowhere or _asks_leave(group)
    if kind == "drain":
        no_liquid = _is_only_of_scraps(group) or _goes_into_bin(group) or _is_yield(group)
        no_liquid = no_liquid or _is_nothing_drawn(group) or _is_of_cloth(group)
        return no_liquid or _is_only_numbered(group) or is_only_set_under(group.message)
    if kind in ("batch", "stock"):
        message = group.message
        of_bins = any(ref.name for ref in message.bins) and not message.bran()  # "bin 4: 500 g"
        return of_bins or is_strewn(group) or (kind == "batch" and _is_only_asked_for(group))
    if kind == "seal":
        message = group.message
        return is_shut_again(message) or is_of_tap(message) or is_lid_open(message)
    if kind == "bury":
        ahead = is_ahead(group) or group.sense == "will"
        return ahead or is_inside(group) or is_dug_up(group) or is_only_a_hole(group)
    if kind == "observe":
        return _is_of_place(group, likelihood)
    return kind == "open" and (is_several(group) or is_ahead(group))


def _is_only_asked(group: Group) -> bool:
    """ "May I bury the shed bin under the plum", "who wants to bury it", "I might": no deed as
    yet."""
    clauses, sentences = group.message.clauses, group.message.sentences
    if group.verb is None or any(clause.sense == "did" for clause in clauses):
        return False
    asked = any(clause.sense == "ask" and clause.start <= group.start for clause in clauses)
    asked = asked and group.verb.verb.plain != "do"  # "did the taping up on bin 3"
    marked = any(one.asked and one.start <= group.start < one.end for one in sentences)
    may = group.sense == "will" and not _MODALS.isdisjoint(group.norms)
    return may or ((asked or marked) and group.sense in ("ask", "if", "will"))


def _is_bidden(group: Group) -> bool:
    """ "It's full, seal it?", "bury it tonight Zoe": somebody is to do it, and nothing is done."""
    message = group.message
    if group.norms[:1] in (["lets"], ["please"]) or group.norms[:2] in (
        ["let", "'s"],
        ["let", "us"],
    ):
        return True
    if group.verb is None or group.sense != "order" or group.measured():
        return False
    asked = any(one.asked and one.start <= group.start < one.end for one in message.sentences)
    return asked or any(ref.start in (group.start - 2, group.end - 1) for ref in message.members)


_MODALS = words_in("might may could would should")


def _is_only_asked_for(group: Group) -> bool:
    """ "Bran for 8 kg mixed?", "a mix for 3 kg?": nobody mixed any."""
    clauses, norms = group.message.clauses, group.message.norms
    asked = all(sentence.asked for sentence in group.message.sentences)
    return asked and (norms[1:2] == ["for"] or all(clause.sense != "did" for clause in clauses))


def _asks_leave(group: Group) -> bool:
    """ "Can we put in a kilo of rice on Monday, two of bread on Friday?": nothing went in."""
    message = group.message
    leave = message.norms[0] in _LEAVE and message.norms[1:2] in (["we"], ["i"])
    return leave and all(sentence.asked for sentence in message.sentences)


_LEAVE = words_in("can could may might should shall")


def _asks_which(group: Group) -> bool:
    """ "Bin 1 or bin 2, which one gets buried first": no deed, though no mark ends it."""
    clauses = group.message.clauses
    asked = any(c.sense == "ask" and c.joint == "which" and c.verb is not None for c in clauses)
    return asked and all(c.sense != "did" for c in clauses)


def _goes_in_nowhere(group: Group) -> bool:
    """ "Took 16 oz off the porch", "12 kg so far": what came out or is in, and no thing named."""
    message, measured = group.message, group.measured()
    others = all(is_drawn(message, amount) or is_level(message, amount) for amount in measured)
    return bool(measured) and others and not group.solids()


def _is_only_of_scraps(group: Group) -> bool:
    """ "The cafe gave us 7 kilos of grounds in 2 buckets": scraps weighed, and their vessels."""
    message, measured = group.message, group.measured()
    if message.liquid(group.start, group.end):
        return False
    if not group.solids():  # "took 1 kg out of the shed bin" was no liquid, nor is "shed is 0 L"
        weighed = bool(measured) and all(
            a.quantity == "mass" and a.liquid_l is None for a in measured
        )
        return weighed or (group.verb is None and any(a.value == 0 for a in measured))
    if measured and all(_is_of_solid(group, amount) for amount in measured):
        return True
    loose = any(a.vessel or a.liquid_l is not None for a in measured)
    return loose and all(
        (a.quantity == "mass" or a.vessel) and not is_drawn(message, a) for a in measured
    )


def _is_nothing_drawn(group: Group) -> bool:
    """ "Noise from the terrace till two": no liquid, no volume, and no word of draining."""
    message = group.message
    if "from" not in message.said or message.liquid() or message.has(_DRAWING):
        return False
    if isinstance(message.context.last, Drain):
        return False
    if any(a.quantity != "mass" or a.liquid_l is not None for a in message.amounts):
        return False
    return all(
        clause.verb is None or "drain" not in clause.verb.verb.classes for clause in message.clauses
    )


_DRAWING = words_in(
    "off out tap tapped spigot drip drips dripped cup cups jug jar bottle nothing nowt dry emptied "
    "empty tray litre litres ml pint"
)


_OF_A_BIN = 0.75
"""Likelihood from which flies in the shed are taken for those of the bin that is called so."""


def _is_of_place(group: Group, likelihood: float) -> bool:
    """ "Flies in the shed again", "walk in is at 38 degrees": of a place that a bin is called
    after, and no word of a bin."""
    if group.message.has(BIN_WORDS) or not group.bins:
        return False
    seen = {s.sign for s in group.message.signs if group.start <= s.start < group.end}
    if not seen:
        return all((ref.name or "").casefold() in _COLD_STORES for ref in group.bins)
    places = likelihood < _OF_A_BIN and all(ref.place for ref in group.bins)
    return places and seen <= {"insects", "rodents"}


_COLD_STORES = frozenset({"walk in", "walk-in", "fridge", "freezer", "cooler", "cold room"})
"""What is kept at a temperature of its own."""


def _is_of_cloth(group: Group) -> bool:
    """ "Took a bag of scraps of silk along": scraps of what holds no liquid."""
    return any(
        norm in BITS and is_of_stuff(group.norms, i + 1) for i, norm in enumerate(group.norms)
    )


def _is_only_numbered(group: Group) -> bool:
    """ "White 4": a bin and a figure, which tells of no liquid where the talk is not of it."""
    message = group.message
    if not message.context.in_room or isinstance(message.context.last, Drain):
        return False
    if message.amounts or group.verb is not None:
        return False
    rest = unheld(message.norms, indexes(message.bins, message.days))
    return not any(norm.isalpha() for norm in rest)


def _is_yield(group: Group) -> bool:
    """ "Ours gave half a litre a week last year": what a bin gives in a time, and no draining."""
    if _GIVES.isdisjoint(group.norms):
        return False
    rated = {amount.end for amount in group.measured() if amount.quantity == "volume"}
    norms = group.message.norms
    return any(norms[at] in _PER and norms[at + 1] in _TIMES for at in rated if at + 1 < len(norms))


_GIVES = words_in("gave gives give giving produced produces made makes make yielded yields")
_PER = words_in("a per each every")
_TIMES = words_in("day week fortnight month")


def _goes_into_bin(group: Group) -> bool:
    """ "Poured half a litre into red": what went in came out of nothing that is named."""
    norms = group.message.norms
    led = [norms[max(group.start, ref.start - 2) : ref.start] for ref in group.bins if ref.known]
    poured = "poured" in group.norms and any("into" in words for words in led)
    put = norms[0] == "put" and any("in" in words or "into" in words for words in led)
    return (poured or put) and _OUT_OF.isdisjoint(group.norms)


_OUT_OF = words_in("from off out drained")


def _is_of_solid(group: Group, amount: Amount) -> bool:
    """ "Two litres of blackberries off the hedge", "2 kg of potatoes from the shed"."""
    at = amount.end + 1
    led = group.message.norms[amount.end : at] == ["of"]
    return led and any(at <= item.start <= at + 1 for item in group.solids())


def by_nobody(kind: str, group: Group) -> bool:
    """ "Nobody added 2 kg": what no one did, however sure its words look."""
    if group.sense != "not" or group.verb is None or kind not in group.verb.verb.classes:
        return False  # "nobody objected, so ..." denies another thing
    found = _NOBODY.match(" ".join(group.norms))
    if found is None:
        return False
    at = group.start + found.group().count(" ") - found.group(1).count(" ")
    return all(item.end != at for item in group.message.items)  # "the platters no one ate"


_NOBODY = Late(r"(?:\S+ ){0,3}(nobody|no ?one|none of (?:us|you|them|the))\b")
