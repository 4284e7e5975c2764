"""Which clauses of a message belong to one report: details, completions, introductions."""

from collections.abc import Sequence

from handlers.reading.deeds.placewords import GROUND
from handlers.reading.food.items import is_made_of
from handlers.reading.groups import Group
from handlers.reading.measures.numberwords import NUMBER_WORDS
from handlers.reading.message import Message
from handlers.reading.words.once import once
from handlers.reading.words.sentences import Clause
from handlers.reading.words.spans import indexes
from handlers.reading.words.verbs import VerbUse

_RECORDS = frozenset({"layer", "drain", "open", "seal", "bury", "batch", "stock"})
_ADDS = frozenset({"", ",", "and", "n", "&", "+", "(", ")", ":", "-", "→", "plus", "y", "then",
                   "[", "]",
                   "und", "et", "|", "=", ">", "or", "so", "as", "after", "before", "since",
                       "with"})  # fmt: skip


@once
def groups_of(message: Message) -> list[Group]:
    """The message's groups in order."""
    out: list[Group] = []
    for clause in message.clauses:
        one = _alone(message, clause)
        if clause.joint in _ASIDE and clause.verb is not None and out:
            continue
        last = out[-1] if out and out[-1].clauses[-1].sentence == clause.sentence else None
        if last is not None and last.verb is not None and one.verb and _stands_for(one, last.verb):
            one.verb = last.verb._replace(start=one.verb.start, end=one.verb.end)
        if out and _tells_shares(out[-1], one):
            out[-1].take(clause)
        elif last is None:
            out.append(one)
        elif _is_detail(message, clause, last):
            _add_details(out, last, one)
        elif _introduces(last, one) or _takes_up(last, one) or _ends_list(last, one):
            out[-1] = _merged(last, one)
        else:
            out.append(one)
    return _completed(out)


@once
def whole_of(message: Message) -> Group | None:
    """All that the message says happened, as one group."""
    happened = [g for g in groups_of(message) if g.sense in ("did", "none", "habit", "order")]
    if not happened:
        return None
    if len(happened) == 1 and happened[0].inherited is None:
        return happened[0]
    whole = Group(message, [], happened[0].verb, happened[0].sense)
    for group in happened:
        for clause in group.clauses:
            whole.take(clause)
    return whole


def _stands_for(one: Group, before: VerbUse) -> bool:
    """ "I drained pail 3, Earl did pail 4": whether "did" stands for the verb before it."""
    bare = one.verb is not None and one.verb.verb.plain == "do" and one.sense == "did"
    deed = not before.verb.classes.isdisjoint(_DONE_AGAIN)
    return bare and deed and bool(one.bins) and not one.measured() and not one.items


_DONE_AGAIN = frozenset({"drain", "seal", "bury"})


def _is_detail(message: Message, clause: Clause, last: Group) -> bool:
    """Whether a clause only adds to the group before it."""
    if clause.verb is not None or clause.sense != "none":
        return False
    if clause.joint == "but" and _is_makeup(last, message.norms[clause.start : clause.end]):
        return True
    if clause.joint == "but" and last.verb is None and last.measured() and not last.bins:
        return not _says_something(message, clause)  # "it's only 300 g but it's in the shed"
    if clause.joint not in _ADDS or _is_put_elsewhere(message, clause, last):
        return False
    if last.sense in ("did", "none"):
        return not (_is_empty(last) and _stands_alone(message, clause))
    if last.verb is None or last.verb.verb.classes.isdisjoint(_RECORDS):
        return not _says_something(message, clause)
    first = message.norms[clause.start : clause.start + 2]
    return not (
        first[:1] in (["it"], ["that"], ["they"], ["there"])
        and first[1:] in (["is"], ["'s"], ["was"], ["are"])
    )


def _tells_shares(last: Group, one: Group) -> bool:
    """ "Rice and goat, 2 kg, shed. Mostly rice": how much of it was what was named before."""
    if one.verb is not None or one.bins or one.measured() or not one.items:
        return False
    if any(i.share is None or i.vague or i.absent for i in one.items):
        return False
    if last.sense not in ("did", "none") or not (last.measured() or last.bins):
        return False
    return all(
        any(x.share is None and is_made_of(x.food, i.food) for x in last.items) for i in one.items
    )


def _is_put_elsewhere(message: Message, clause: Clause, last: Group) -> bool:
    """ "Sealed bin 3, 2 kg of leeks into the shed": what was weighed goes into another bin than was
    shut, drained or emptied.
    """
    if not last.bins or not _is_shut_or_emptied(last):
        return False
    a, b = clause.start, clause.end
    if not any(a <= x.start < b and (x.quantity == "mass" or x.vessel) for x in message.amounts):
        return False
    refs = [ref for ref in message.bins if a <= ref.start < b and ref.name is not None]
    led = [ref for ref in refs if not _INTO.isdisjoint(message.norms[ref.start - 2 : ref.start])]
    return bool(led) and {ref.name for ref in led}.isdisjoint(last.names())


def _is_shut_or_emptied(last: Group) -> bool:
    deeds = frozenset() if last.verb is None else last.verb.verb.classes
    if not deeds.isdisjoint(_SHUT_OR_DRAINED):
        return True
    return not last.measured() and ("bury" in deeds or not last.free.isdisjoint(GROUND))


_SHUT_OR_DRAINED = frozenset({"seal", "drain"})
_INTO = frozenset({"in", "into", "to"})


def _is_makeup(last: Group, words: Sequence[str]) -> bool:
    """ "Mostly greens but a fair bit of egg": two short clauses that only say what it was."""
    short = len(last.norms) <= _SHORT and len(words) <= _SHORT + 1
    bare = short and last.verb is None and bool(last.items) and not last.measured()
    return bare and _COPULAS.isdisjoint(words) and _COPULAS.isdisjoint(last.norms)


_SHORT = 5
_COPULAS = frozenset({"is", "was", "'s", "are", "were", "has", "had"})
_LOOSE = frozenset({"get", "do", "have", "come", "go", "make", "find", "run", "leave", "bring"})


def _is_empty(last: Group) -> bool:
    """Whether the verb is said of nothing that we know ("sorry, only getting to it now")."""
    if last.verb is None or last.bins or last.measured() or last.items:
        return False
    return last.verb.verb.plain in _LOOSE or last.verb.verb.classes == frozenset({"other"})


def _says_something(message: Message, clause: Clause) -> bool:
    """Whether a clause has an amount or a sign of its own."""
    a, b = clause.start, clause.end
    measured = any(a <= x.start < b and x.quantity in ("mass", "volume") for x in message.amounts)
    return measured or any(a <= s.start < b for s in message.signs)


def _stands_alone(message: Message, clause: Clause) -> bool:
    """Whether a clause tells both the bin and the amount."""
    a, b = clause.start, clause.end
    return any(a <= x.start < b for x in message.bins) and any(
        a <= x.start < b and x.quantity in ("mass", "volume") for x in message.amounts
    )


_ASIDE = frozenset({"which", "who", "although", "though"})


def _completed(groups: list[Group]) -> list[Group]:
    """ "That's the carcass in big blue. 2.1 kg": a bare amount completes the report before it."""
    out: list[Group] = []
    for group in groups:
        last = out[-1] if out else None
        if last is not None and _completes(last, group):
            for each in _siblings(out, group):
                for clause in group.clauses:
                    each.take(clause)
        elif last is not None and _is_only_bin(group) and _may_lack_bin(out):
            for each in out[-2:-1]:  # "bones, 4 kg, boiled till they crumble. Shed."
                for clause in group.clauses:
                    each.take(clause)
        else:
            out.append(group)
    return out


def _is_only_bin(group: Group) -> bool:
    """Whether a fragment names a bin and nothing else."""
    return len(group.bins) == 1 and group.bins[0].end - group.bins[0].start == len(group.norms)


def _may_lack_bin(out: Sequence[Group]) -> bool:
    """Whether the group before the last told how much, and the last one only how it was."""
    if len(out) < 2 or out[-1].bins or out[-1].measured() or out[-1].verb is None:
        return False
    aside = out[-1].verb.verb.classes.isdisjoint(_RECORDS)
    before = out[-2]
    told = before.verb is None and bool(before.measured()) and not before.bins
    return told and aside and before.clauses[-1].sentence == out[-1].clauses[0].sentence


def _siblings(groups: list[Group], group: Group) -> list[Group]:
    """The groups that a fragment completes: "All lettuce" is said of every layer of a list."""
    last = groups[-1]
    if not group.items or group.measured():
        return [last]
    found = [last]
    while found[-1].inherited is not None and not found[-1].inherited.items:
        found.append(found[-1].inherited)
    return found


def _completes(last: Group, group: Group) -> bool:
    """Whether a fragment only says the amount, the bin or the things of the report before it."""
    if (
        group.verb is not None
        or group.sense != "none"
        or group.days
        or len(group.norms) > _FRAGMENT
    ):
        return _adds_amount(last, group)
    if last.sense not in ("did", "none"):
        return False
    if group.bins and not group.measured() and not group.items:
        return (
            last.verb is None and bool(last.measured()) and not last.bins and len(group.norms) <= 5
        )
    if group.items and not group.measured() and not group.bins:
        plain = bool(last.bins or last.measured())
        plain = plain and all(i.generic or i.absent for i in last.items)
        return plain and bool(last.measured()) and all(not i.absent for i in group.items[:1])
    return _adds_amount(last, group)


_FRAGMENT = 9
"""Words in a sentence that only completes the one before it."""


def _adds_amount(last: Group, group: Group) -> bool:
    bare = group.verb is None and group.sense == "none" and not group.bins and not group.days
    if not bare or not group.measured() or last.measured():
        return False
    told = last.sense == "did" or (last.sense == "none" and bool(last.bins))
    if not told or not (
        last.bins or (last.verb and not last.verb.verb.classes.isdisjoint(_RECORDS))
    ):
        return False
    return not group.items or all(item.generic for item in last.items)


def _alone(message: Message, clause: Clause) -> Group:
    group = Group(message, [clause], clause.verb, clause.sense)
    group.take(clause)
    return group


def _add_details(out: list[Group], last: Group, one: Group) -> None:
    if not _conflicts(last, one):
        for clause in one.clauses:
            last.take(clause)
        return
    one.inherited = last
    one.verb, one.sense = last.verb, last.sense
    out.append(one)


def _conflicts(last: Group, one: Group) -> bool:
    """Whether the details speak of another bin or another day, with its own amount."""
    says_more = bool(one.measured() or one.items)
    if not says_more or not (last.measured() or last.items):
        return False
    other_bin = bool(last.names() and one.names() and set(last.names()) != set(one.names()))
    told = [d for d in last.days if not d.aside]
    own = [d for d in one.days if not d.aside]
    if "out" in (one.norms[-1:] + last.norms[-1:]) and last.measured() and one.measured():
        return True
    other_day = bool(told and own and told[-1].past != own[0].past)
    return other_bin or other_day


def _introduces(last: Group, one: Group) -> bool:
    """Whether a clause without a verb only leads into the one with the verb behind it."""
    if last.verb is not None or last.sense != "none" or one.verb is None:
        return False
    if one.verb.verb.classes.isdisjoint(_RECORDS - {"stock"}):
        return False
    if one.clauses[0].joint in ("and", "but", "so", "then", "n", "&"):
        return bool(last.days) and not last.measured() and not last.items
    if last.bins and (last.measured() or last.items):
        return "open" in one.verb.verb.classes and not one.bins and not last.items
    return not _conflicts(last, one) and not (last.measured() and one.measured())


def _takes_up(last: Group, one: Group) -> bool:
    """ "650 g of beans nobody wanted, scraped into the shed": a verb for the things before it."""
    if last.verb is None or one.verb is None or one.sense != "did" or one.measured() or one.items:
        return False
    other = last.verb.verb.classes <= {"other", "stock", "observe", "layer"} and (
        last.sense == "not" or last.verb.verb.classes == frozenset({"other"})
    )
    before = bool(last.items) and all(i.end <= last.verb.start for i in last.items)
    first = one.clauses[0]
    puts = "layer" in one.verb.verb.classes and first.start == one.verb.start
    return other and before and bool(one.bins) and puts and first.joint in (",", "so", "-", "and")


def _ends_list(last: Group, one: Group) -> bool:
    """ "The carrots, leeks and a bit of ham came to 2 kg": one list, cut before its last thing."""
    if last.verb is not None or one.verb is None or one.sense != "did" or not last.items:
        return False
    dated = any(not day.aside for day in last.days)
    if one.clauses[0].joint not in _LISTING or last.measured() or last.bins or dated:
        return False
    named = indexes(last.items, last.days)  # "tonight's leftovers, four sausages and ..."
    rest = {last.message.norms[i] for i in range(last.start, last.end) if i not in named}
    rest = {norm for norm in rest if not norm.isdecimal() and norm not in NUMBER_WORDS}
    leads = any(one.start <= item.start and item.end <= one.verb.start for item in one.items)
    return leads and rest <= _IN_LIST


_LISTING = frozenset({"and", "n", "&", ","})
_IN_LIST = frozenset(
    ["the", "a", "some", "of", "old", ",", "and", "n", "&", "our", "my", "leftover", "'s", "few",
     "couple", "half", "load", "loads", "bit", "lot", "lots", "bunch"]
)  # fmt: skip


def _merged(last: Group, one: Group) -> Group:
    group = Group(one.message, list(last.clauses), one.verb, one.sense)
    for clause in last.clauses:
        group.take(clause)
    for clause in one.clauses:
        group.take(clause)
    return group
