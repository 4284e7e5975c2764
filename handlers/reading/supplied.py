"""Acts that the scores are sure of although no rule found them: their fields, from the words.

The clauses that weigh most for an act are where it is told; the same functions read its fields
there that read them where a rule fired.
"""

from collections.abc import Callable, Sequence
from dataclasses import replace
from itertools import pairwise
from typing import cast

from handlers.reading.acts import (
    Accept,
    Act,
    Amend,
    Ask,
    Decline,
    Later,
    Layer,
    Offer,
    Retract,
    Stock,
    Topic,
    Unsure,
)
from handlers.reading.arrangements.finished import finished, is_not_yet
from handlers.reading.arrangements.offered import (
    bin_meant,
    bin_passed,
    is_consent,
    is_only_yes,
)
from handlers.reading.arrangements.passing import coming, taker
from handlers.reading.arrangements.putoff import put_off_by
from handlers.reading.arrangements.wishes import wish_of
from handlers.reading.corrections.amended import amend_from
from handlers.reading.corrections.amending import is_quoted
from handlers.reading.corrections.anew import CUES as STRIKING
from handlers.reading.corrections.leaning import is_further
from handlers.reading.corrections.numberright import with_figure
from handlers.reading.corrections.striking import of_scraps
from handlers.reading.deeds.bran import batch_from, is_nearly_gone, stock_from
from handlers.reading.deeds.buried import bury_from
from handlers.reading.deeds.liquid import drain_from, drawn
from handlers.reading.deeds.observations import observe_from
from handlers.reading.deeds.opened import open_from
from handlers.reading.deeds.scraps import layer_from
from handlers.reading.deeds.sealed import seal_from
from handlers.reading.deeds.toldday import is_intended
from handlers.reading.doubts.asides import is_aside
from handlers.reading.food.ofwhat import is_drawn
from handlers.reading.food.quantities import scrap_amounts
from handlers.reading.grouping import groups_of
from handlers.reading.groups import Group
from handlers.reading.message import LIQUID, Message
from handlers.reading.notsupplied import by_nobody, is_other
from handlers.reading.plaintext import is_asking
from handlers.reading.questions.askedfigures import filled
from handlers.reading.questions.asks import asking
from handlers.reading.questions.briefly import PLANTS
from handlers.reading.scores import Scores
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

SURE = "the scores are sure of it"
"""The rule of an act that no other rule found."""
_Reader = Callable[[Sequence[Group], int, str], Act | None]
_RECORDS: dict[str, _Reader] = {
    "layer": layer_from,
    "drain": drain_from,
    "open": open_from,
    "seal": seal_from,
    "bury": bury_from,
    "observe": observe_from,
    "batch": batch_from,
    "stock": stock_from,
}
_NOT_TOLD = frozenset({"not", "will", "if", "said"})


def supplied(kind: str, message: Message, scores: Scores) -> Sequence[Act]:
    """The acts of that kind, with their fields; none where the words give them none at all."""
    if kind in _RECORDS:
        return _recorded(kind, message, scores)
    name, _, topic = kind.partition(" ")
    if is_aside(kind, message) or (kind == "ask starter" and _is_habit(message)):
        return ()
    if topic == "custody" and _is_no_question(message):
        return ()  # "it's Ruth's turn to sweep"
    if topic == "allowed" and not message.items and len(message.norms) <= _TOO_FEW:
        return ()  # "ok?"
    if topic == "dilution" and _is_of_clippings(message):
        return ()
    if topic == "starter" and not message.bran() and message.has(_ANEW):
        return ()  # "do we have to start over?"
    act = _asked(topic, message) if name == "ask" else _answer(name, message)
    return () if act is None else (act,)


def _is_no_question(message: Message) -> bool:
    """Whether nothing is asked and no bin is named."""
    return not (is_asking(message) or message.has(_WHO) or message.bins or message.named)


_WHO = words_in("who whose whos who's whom wheres where ? next remind tell list show rota")
_CUT = words_in("clippings cuttings mowings trimmings")
_ANEW = words_in("over anew afresh scratch")


def _is_of_clippings(message: Message) -> bool:
    """ "Half a bag of lawn clippings, can the drum have that?": the lawn is not to be watered."""
    cut = indexes([i for i in message.items if message.has_in(_CUT, i.start, i.end)])
    grown = {i for i, norm in enumerate(message.norms) if norm in PLANTS}
    return bool(cut & grown) and grown <= cut and not message.has(LIQUID | {"water"})


_TOO_FEW = 2
"""Words and signs in which nothing is said of what is to go in."""


def _is_habit(message: Message) -> bool:
    """ "We make bran on the last Saturday of each month": nothing is asked."""
    told = [clause.sense for clause in message.clauses]
    return bool(told) and all(sense == "habit" for sense in told)


def _recorded(kind: str, message: Message, scores: Scores) -> Sequence[Act]:
    groups = groups_of(message)
    act = _record(kind, groups, message, scores) if groups else None
    if not isinstance(act, Layer):
        return () if act is None else (act,)
    days = [_one_of_days(groups, k) for k in range(len(groups))]
    apart = [layer for layer in days if layer is not None]
    return apart if len(apart) > 1 and act in apart else (act,)


def _one_of_days(groups: Sequence[Group], k: int) -> Layer | None:
    """ "2 kg on Monday and 1 kg on Friday": the layer of a group that shares its verb."""
    group = groups[k]
    shares = group.inherited or any(other.inherited is group for other in groups)
    said = group.sense == "did" and group.days and scrap_amounts(group)
    return layer_from(groups, k, SURE) if shares and said else None


def _record(kind: str, groups: Sequence[Group], message: Message, scores: Scores) -> Act | None:
    reader = _RECORDS[kind]
    order = sorted(range(len(groups)), key=lambda k: -_fitness(kind, groups[k], scores) + 0.001 * k)
    told = groups[order[0]]
    if (
        by_nobody(kind, told)
        or is_quoted(told.clauses)
        or (not message.context.in_room and told.is_naught())
    ):
        return None
    if is_intended(told) or is_other(kind, told, scores.likelihood(kind)):
        return None
    act = reader(groups, order[0], SURE)
    if isinstance(act, Stock) and is_nearly_gone(told):
        return Unsure(guess=(act,), rules=(SURE,)) if message.context.in_room else None
    if isinstance(act, Layer) and act.mass_kg is None and act.volume_l is None:
        for k in order[1:]:
            other = layer_from(groups, k, SURE)
            if other.mass_kg is not None or other.volume_l is not None:
                return replace(act, mass_kg=other.mass_kg, volume_l=other.volume_l)
    return act


def _fitness(kind: str, group: Group, scores: Scores) -> float:
    """How much the group speaks for the act, by its weights and by what it measures."""
    told = scores.within(kind, group.start, group.end)
    if group.sense in _NOT_TOLD:
        told -= 3
    match kind:
        case "layer":
            told += 2 * bool(scrap_amounts(group)) + bool(group.solids())
        case "drain":
            told += 2 * bool(drawn(group)) + _comes_out(group)
        case "batch" | "stock":
            told += 3 * bool(group.measured())
    return told


def _comes_out(group: Group) -> float:
    return 2.0 * any(is_drawn(group.message, amount) for amount in group.measured())


def _changes_nothing(act: Amend, message: Message) -> bool:
    """ "This was for bin 3", where the record in talk is of bin 3; "it was Ruth who ate it"."""
    context = message.context
    if act == Amend(bin=act.bin) and context.in_room:
        return act.bin is not None and getattr(context.last, "bin", None) == act.bin
    return act == Amend(member=act.member) and message.has(_EATING)


def _strikes_oneself(message: Message) -> bool:
    """ "Remove me", "take us off the list": a person is no record."""
    return _ONESELF.search(" ".join(message.norms)) is not None


def _strikes_nothing(message: Message) -> bool:
    """ "What was the last thing I logged?", "twice that", "I ate it": what strikes nothing."""
    norms = message.norms
    if is_quoted(message.clauses) or message.has(_REMINDERS):
        return True
    if not message.has(STRIKING):
        text = " ".join(norms)
        if _EATEN.search(text) or _CORRECTED.search(text):
            return True
    if norms[0] in _ASKING:
        return any(clause.sense == "ask" for clause in message.clauses)
    if any(a.start and norms[a.start - 1] in _TAKING_OFF for a in message.measured()):
        return True  # "take off 500 g": no more than that
    return any(pair in _MULTIPLIED for pair in pairwise(norms))


_REMINDERS = words_in("reminder reminders")
_EATING = words_in("ate eaten eat drank")
_TAKING_OFF = words_in("off minus less")
_MULTIPLIED = {("double", "that"), ("double", "it"), ("double", "the"), ("twice", "that")}
_ASKING = words_in("what whats which when who whose how where why did do does is was have has")
_EATEN = Late(r"\b(?:i|we|he|she|they) (?:\w+ )?(?:ate|eat) (?:it|them|that)\b")
_CORRECTED = Late(
    r"\b(?:correct|fix|amend|change|edit|update|adjust|alter|rectify)(?:ed|d|ing)? "
    r"(?:(?:my|the|that|this|our|his|her|their) )?(?:very )?(?:last|previous|latest|entry|record)\b"
)
"""What is to be put right, or was, is not to be struck out."""
_ONESELF = Late(
    r"\b(?:remove|delete|take|strike|cross|scratch|drop|erase|forget|cancel|unsubscribe|wipe|cut) "
    r"(?:me|us|my name|myself)\b"
)


def _asked(topic: str, message: Message) -> Ask:
    return replace(filled(asking(message, topic), cast(Topic, topic)), rules=(SURE,))


def _is_one_amount(message: Message) -> bool:
    """Whether one amount is all that is told, of nobody else and against no other."""
    return len(message.measured()) == 1 and not message.members and "not" not in message.said


def _further(message: Message) -> Act | None:
    """ "Another 500 g" where nothing was written down before: it takes the place of nothing."""
    layer = replace(layer_from(groups_of(message), 0, SURE), bin=bin_meant(message))
    return Unsure(guess=(layer,), rules=(SURE,)) if layer.mass_kg or layer.volume_l else None


def _answer(name: str, message: Message) -> Act | None:
    rules = (SURE,)
    match name:
        case "accept":
            aside = message.context.in_room and (is_consent(message) or is_only_yes(message))
            return Accept(
                bin=bin_meant(message),
                on=coming(message),
                bare="aside" if aside else None,
                rules=rules,
            )
        case "decline":
            return Decline(bin=bin_meant(message), on=coming(message, refused=True), rules=rules)
        case "offer":
            return Offer(
                bin=bin_passed(message), to=taker(message), on=coming(message), rules=rules
            )
        case "retract":
            no_striking = _strikes_oneself(message) or _strikes_nothing(message)
            return None if no_striking else of_scraps(Retract(rules=rules), message)
        case "done":
            return None if is_not_yet(message) else finished(message, SURE)
        case "later":
            return Later(bin=bin_meant(message), days=put_off_by(message), rules=rules)
        case "amend":
            if message.context.in_room and is_further(message) and _is_one_amount(message):
                return _further(message)
            act = with_figure(amend_from(message, SURE), message)
            return None if act == Amend() or _changes_nothing(act, message) else act
        case "set":
            return wish_of(message)
    return None
