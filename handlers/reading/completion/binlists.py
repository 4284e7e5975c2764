"""One deed told of several bins: of a list of them, of both or all, or shared out between them."""

from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import pairwise

from handlers.reading.acts import Act, Bury, Drain, Each, Layer, Observe, OnBins, Open, Seal
from handlers.reading.bins.meantbins import is_either
from handlers.reading.completion.lots import share_of
from handlers.reading.completion.wholelayer import EACH
from handlers.reading.deeds.toldday import is_now
from handlers.reading.food.ofwhat import is_drawn, of_what
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in


def of_each_bin(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts, and one for each further bin of the list that one of them is told of."""
    told = {(act.act, getattr(act, "bin", None)) for act in acts}
    out: list[Act] = []
    for act in acts:
        for each in _for_each(act, message):
            of = each.act, getattr(each, "bin", None)
            if each is act or each == act or of not in told:
                told.add(of)
                out.append(each)
    return out


def _for_each(act: Act, message: Message) -> list[Act]:
    """ "Two closed today: bin 6 and the hall": an act for each bin of the list."""
    if isinstance(act, Observe):
        return [replace(act, bin=name) for name in _seen_in_all(act, message)] or [act]
    if not isinstance(act, LISTED):
        return [act]
    if isinstance(act, Drain) and act.volume_l is not None and not message.has(EACH):
        return [act]
    lists = _lists(message, sure=isinstance(act, Open | Bury))
    for names in lists:
        if act.bin in names or (act.bin is None and len(lists) == 1):
            told = [d for d in message.days if not d.aside and d.past <= message.today]
            days = [d.past for d in told if not is_now(message, d)]
            if len(days) == len(names):  # "sealed: gate (Mon), blue (Tue)"
                return [replace(act, bin=n, on=day) for n, day in zip(names, days, strict=True)]
            return [replace(act, bin=name) for name in names]
    return [act]


def _seen_in_all(act: Observe, message: Message) -> list[str]:
    """ "Shed and bin 3 both have fluff on top": the bins of the list that it is said of."""
    if not message.has(_ALL_OF):
        return []
    for row in listed_bins(message.bins, message):
        said = message.norms[row[-1].end : row[-1].end + 2]
        names = [ref.name for ref in row if ref.name is not None]
        if act.bin in names and not _ALL_OF.isdisjoint(said):
            return names
    return []


_ALL_OF = words_in("both all each")
LISTED = (Seal, Open, Drain, Bury, Observe)
"""What may be told of a list of bins."""


def _lists(message: Message, *, sure: bool = False) -> list[list[str]]:
    """The bins that are named in a row, with nothing but "and" and commas between them; where it
    must be sure, only those that are no colours, rooms or places.
    """
    rows = listed_bins((*message.bins, *message.named), message)
    rows = [row[:-1] if is_denied(row[-1], message.norms) else row for row in rows]
    rows = [row for row in rows if not _goes_on_with_one(row, message.norms)]
    if sure:  # "opened the orange and the pink bin", "buried red and blue"
        rows = [row for row in rows if row[-1].plain or _is_all_told(row, message)]
    names = [list(dict.fromkeys(ref.name for ref in row if ref.name is not None)) for row in rows]
    return [row for row in names if len(row) > 1]


def is_denied(ref: BinRef, norms: Sequence[str]) -> bool:
    """ "Buried bin 1, bin 2 didn't fit": nothing was done to the last one."""
    behind = norms[ref.end : ref.end + 2]
    if behind[:1] == ["not"]:
        return _LITTLE.isdisjoint(behind[1:])
    return not _DENIED.isdisjoint(behind[:1]) or behind == ["will", "have"]


_DENIED = words_in("didnt doesnt wouldnt isnt wasnt couldnt hasnt wont cant")
_LITTLE = words_in("much a bad too as so long only")


def _goes_on_with_one(row: Sequence[BinRef], norms: Sequence[str]) -> bool:
    """ "1 kg in the shed, blue is sealed": the last name begins a clause of its own."""
    last = row[-1]
    return norms[last.end : last.end + 1] in (["is"], ["'s"], ["was"]) and not _INTO.isdisjoint(
        norms[max(0, row[0].start - 2) : row[0].start]
    )


_INTO = words_in("in into to inside")


def _is_all_told(row: Sequence[BinRef], message: Message) -> bool:
    """Whether the row is all that a deed is told of: it stands behind it, or before "are in the
    ground", and nothing goes on with its last name ("the shed and the yard bench").
    """
    norms = message.norms
    start, end = row[0].start, row[-1].end
    start -= norms[start - 1 : start] == ["the"]
    after = norms[end] if end < len(norms) else "."
    behind = any(verb.end == start for verb in (c.verb for c in message.clauses) if verb)
    ends = (
        not after[0].isalpha() or after in _BEHIND_ROW or any(d.start == end for d in message.days)
    )
    leads = start == 0 or not norms[start - 1][0].isalpha()
    lie = after in _BEING or norms[end : end + 3] == ["in", "the", "ground"]
    return (behind and ends) or (leads and lie)


_BEING = words_in("are were both")
_BEHIND_ROW = words_in(
    "in into under beneath below by near along beside behind next at on over underneath between "
    "again too together now just this last yesterday today both with after before while as but "
    "bins buckets pails tubs"
)


def listed_bins(refs: Iterable[BinRef], message: Message) -> list[list[BinRef]]:
    """The bins that stand in a row, with nothing but "and" and commas between them."""
    out: list[list[BinRef]] = []
    end = -1
    for ref in sorted(refs):
        if ref.name is None or ref.start < end:
            continue
        between = message.norms[end : ref.start] if out else [""]
        if out and set(between) <= _JOINTS:
            out[-1].append(ref)
        else:
            out.append([ref])
        end = ref.end
    return [row for row in out if len(row) > 1]


_JOINTS = words_in("and & n , + the then y und et e")


def on_several(act: Act, message: Message) -> Act:
    """ "Sealed both", "drained all of them": a deed on several bins that are not named, and "2 kg
    to the shed or the hall": on one that is to be asked.
    """
    if not isinstance(act, OnBins) or act.bin is not None:
        return act
    if any(is_either(message.norms[a.end : b.start]) for a, b in pairwise(message.bins)):
        return replace(act, each="either")
    text = " ".join(message.norms) if message.has(_SEVERAL_CUES) else ""
    if match := _SEVERAL.search(text):
        return replace(act, each=_so_many(match.group().split()), rules=_rules(act, message))
    several = len(message.context.bins) - len(message.context.retired) > 1
    if several and not message.bins and _THEM.search(text):
        return replace(act, each="them", rules=_rules(act, message))
    return act


def _rules(act: OnBins, message: Message) -> tuple[str, ...]:
    """What came of several bins, "half a litre from both": whether of each or in all is not known,
    unless it is said.
    """
    whole = isinstance(act, Drain) and act.volume_l is not None and not message.has(_APIECE)
    return (*act.rules, UNDIVIDED) if whole else act.rules


def _so_many(said: Sequence[str]) -> Each:
    each: Each = "both" if _TWO.intersection(said) else "all"
    return next((_SO_MANY[word] for word in said if word in _SO_MANY), each)


def with_the_rest(acts: Sequence[Act], message: Message) -> list[Act]:
    """ "Drained both, 300 ml from blue": the acts, and the same done to the bins that are not told
    of by name; what gave nothing was drained with them.
    """
    match = _DONE_TO_ALL.match(" ".join(message.norms)) if message.has(_OF_ALL) else None
    if match is None or not message.bins or not all(isinstance(a, Drain | Observe) for a in acts):
        return list(acts)
    drained = [act for act in acts if isinstance(act, Drain)]
    if not drained or any(act.each or act.bin is None for act in drained):
        return list(acts)
    rest = replace(drained[0], bin=None, volume_l=None, each=_so_many(match["all"].split()))
    return [*(act for act in acts if act not in drained or act.volume_l is not None), rest]


_OF_ALL = words_in("them both all everything")
_DONE_TO_ALL = Late(
    r"(?:(?:ok|i|we|just|have|'ve|now|today|so|,) )*drained (?P<all>them both|both of them|both|"
    r"all of them|them all|all|them|everything)(?: (?:today|now|just now|out))* [,.;:-] "
)


_SO_MANY: dict[str, Each] = {
    "three": "3", "3": "3", "four": "4", "4": "4", "five": "5", "5": "5", "six": "6", "6": "6",
}  # fmt: skip


_APIECE = words_in("each apiece per")
UNDIVIDED = "an amount of several bins"
"""A further rule of what was drawn off several bins, told as one amount."""
_OF_THEM = words_in("them lot")
_THEM = Late(
    r"\b(?:drained|sealed|buried) (?:them(?! (?:all|both|up to|with|in|into|to)\b)|"
    r"the lot(?= ?$| [.!]| (?:today|now|just|this|yesterday)\b))"
)

_TWO = words_in("both two pair")
_EVERY = _TWO | words_in("all every each everything")
_SEVERAL_CUES = _EVERY | _OF_THEM
_VESSELS = r"(?:bin|bucket|pail|tub|drum|caddy|barrel)(?:s|ies)?"
_SEVERAL = Late(
    rf"\bboth(?= of (?:them|the|our)\b| (?:the )?{_VESSELS}\b| [^\w\s]| today\b| now\b| up\b|"
    r" yesterday\b| (?:on|this|last|just|in|under|by|near|behind) \w+|$)|\bthem both\b|"
    r"\b(?:those|these|the|them) (?:two|pair)(?: of them)?"
    r"(?=$| [^\w\s]| (?:today|now|up|yesterday|just|this|last|too)\b)|"
    rf"\bboth (?=drained|sealed|buried)|\b(?:the|our) two {_VESSELS}\b|"
    r"\b(?:sealed|drained|buried) (?:everything\b|all$)|"
    r"\b(?:all|everything)(?: is| are| 's| now)* (?=sealed|drained|buried)|"
    r"\b(?:all(?: of)?(?: the| our| these)?|every) "
    rf"(?:{_VESSELS}|them|three|four|five|six|[3-6])\b|"
    r"\bthem all\b|\b(?:in|into|to|from) each(?: (?:bin|bucket|one|of them))?(?=$| [^\w\s])"
)


def shared_out(layer: Layer, message: Message) -> list[Layer]:
    """ "Split between the shed and the hall" is half for each, "1 kg to each bin" one for each."""
    if len(message.bins) + len(message.named) < 2:
        return []
    measures = indexes(message.amounts, message.items)
    said = {n for i, n in enumerate(message.norms) if i not in measures}
    refs = [
        r for r in sorted((*message.bins, *message.named)) if message.sense_at(r.start) != "ask"
    ]
    if said.isdisjoint(_SHARED_OUT) and not said.isdisjoint(_HALVED):
        refs = [r for r in refs if _has_half(r, message)]
    names = list(dict.fromkeys(ref.name for ref in refs if ref.name is not None))
    if len(names) < 2:
        return []
    if not said.isdisjoint(_SHARED_OUT | _HALVED):
        part = 1 / len(names)
    elif message.has(EACH):
        part = 1.0
    else:
        return []
    return [replace(share_of(layer, part), bin=name) for name in names]


def _has_half(ref: BinRef, message: Message) -> bool:
    """Whether a bin may have half of what went in, and had no other deed done to it: "3 kg in the
    shed and drained the hall, half of it went to Bram".
    """
    clause = message.clause_at(ref.start)
    if clause is None or clause.verb is None:
        return True
    amounts = [a for a in message.amounts if clause.start <= a.start < clause.end]
    classes = clause.verb.verb.classes
    return ("layer" in classes or classes.isdisjoint(_OTHER_DEEDS)) and not any(
        is_drawn(message, a) or of_what(message, a) == "liquid" for a in amounts
    )


_OTHER_DEEDS = frozenset({"drain", "seal", "bury"})
_SHARED_OUT = words_in("split divided divide shared share evenly equally")
_HALVED = words_in("half halves halved mitad")
