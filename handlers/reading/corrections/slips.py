"""A slip put right in the same breath: "2 kg to the blue, no wait, to the shed"."""

from collections.abc import Sequence
from math import isclose

from handlers.reading.acts import Layer
from handlers.reading.bins.meantbins import tells_of
from handlers.reading.calendar.days import Day
from handlers.reading.food.items import Item
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.unitwords import unit_table
from handlers.reading.message import Message
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_Thing = BinRef | Day | Amount | Item

_TURNS = tuple(
    tuple(turn.split())
    for turn in (
        "no wait", "wait no", "wait", "no sorry", "sorry no", "sorry", "oops", "whoops",
        "oh no", "i mean", "i meant", "or rather", "rather", "correction", "scratch that",
        "make that", "actually", "actually no", "no actually", "no", "no i mean", "sorry i mean",
        "sorry i meant", "hang on", "no hang on", "hold on", "no hold on", "my mistake", "my bad",
        "my error", "mistake", "typo", "nope", "lies", "i lie", "no i lie", "tell a lie",
        "i tell a lie", "no tell a lie", "no i tell a lie", "scrap that", "strike that",
        "check that", "no make that", "sorry make that", "er no", "erm no", "um no", "uh no",
        "no no", "misread", "i misread", "misread that", "i misread it", "misread it",
    )
)  # fmt: skip
_LONGEST_TURN = max(map(len, _TURNS))
_BEGIN_TURNS = frozenset(turn[0] for turn in _TURNS)
_SIGNS = frozenset({",", ".", "-", "—", "!", ";", ":", "(", ")", "*", "\n"})
_LEADS = _SIGNS | words_in(
    "to in into from the it was that is 's of on for about make should have been meant supposed be"
)
_TRAILS = words_in("sorry please lol haha oops bin bucket") | _SIGNS
_EXCUSED = Late(
    r"(?:(?:sorry|i|i've|ive|we|just|only|my|the|scales?|was|were|had|keep|cant|read|reading|misread|"
    r"misreading|it|that|them|those|wrong|wrongly|backwards|upside|down|twice|typo|fat|thumbs?|"
    r"fingers?|glasses|without|specs|now|see|got|on|not|dont|have|properly|looked|again|"
    r"checked|[,.!;:-])(?: |$))+"
)
""" "..., I read it wrong", "my thumbs": how the slip came about."""
_LONGEST_EXCUSE = 12
_IT = words_in("that it she he this")
_IS = words_in("is 's was")
_SINCE = words_in("since so because as for and the well")
_ALREADY = words_in("already now all been has bin bucket one")
_TAKES_NONE = words_in("sealed closed shut full fermenting buried chockers brimming")
_RECORDED = frozenset({"layer", "drain", "seal", "bury", "open"})


def put_right(message: Message) -> str | None:
    """The message as it was meant, if it puts right what it told just before; else None."""
    if not message.has(_SIGNS):
        return None
    norms = message.norms
    for at in [i for i, norm in enumerate(norms) if norm in _SIGNS]:
        start = _behind_turn(norms, at) if 0 < at < len(norms) - 1 else None
        if start is not None and (meant := _meant(message, at, start)):
            return meant
    return None


def _behind_turn(norms: Sequence[str], at: int) -> int | None:
    """Where the right words begin, if a turn of putting right follows the sign at words[at]."""
    if norms[at - 1] in _SIGNS:
        return None
    start = at
    while start < len(norms) and norms[start] in _SIGNS:
        start += 1
    if start < len(norms) and norms[start] in _BEGIN_TURNS:
        for length in range(_LONGEST_TURN, 0, -1):
            if tuple(norms[start : start + length]) in _TURNS:
                return start + length
    return start if norms[start - 1] == "*" else None


def _meant(message: Message, at: int, start: int) -> str | None:
    if not _is_told(message, at):
        return None
    norms = message.norms
    start = _behind_reason(message, at, start)
    while start < len(norms) and norms[start] in _LEADS:
        start += 1
    return (
        _another_deed(message, at, start)
        or _another_thing(message, at, start)
        or _another_number(message, at, start)
        or _another_unit(message, at, start)
        or _another_report(message, at, start)
    )


def _is_told(message: Message, at: int) -> bool:
    """Whether a deed for the book, and no question, stands before."""
    if message.asked:
        return False
    return _is_amount_of_food(message, at) or any(
        c.start < at
        and c.sense == "did"
        and c.verb
        and not _RECORDED.isdisjoint(c.verb.verb.classes)
        for c in message.clauses
    )


def _is_amount_of_food(message: Message, at: int) -> bool:
    """ "1 kg of crusts", "crusts in the shed, 1 kg", "1 kg in the shed on Monday": an amount, what
    it is of or its bin, and no more stand before.
    """
    of_what = [item for item in message.items if item.end <= at]
    known = of_what or any(bin.end <= at for bin in message.bins)
    measured = [a for a in message.measured() if a.end <= at and not a.negative]
    held = indexes(of_what, measured, message.bins, message.days)
    left = [message.norms[i] for i in range(at) if i not in held]
    return len(measured) == 1 and bool(known) and _SMALL.issuperset(left)


_SMALL = words_in(
    "of about around roughly some more another a the old and & in into to from me , :"
)


def _another_deed(message: Message, at: int, start: int) -> str | None:
    """ "Buried the shed bin. Wait no, drained": the verb alone is another."""
    deeds = [
        c.verb
        for c in message.clauses
        if c.sense == "did" and c.verb and not _RECORDED.isdisjoint(c.verb.verb.classes)
    ]
    wrong = [verb for verb in deeds if verb.end <= at]
    right = [verb for verb in deeds if verb.start == start]
    if not (wrong and right and _is_all(message, right[0].end)):
        return None
    said = message.text(start, right[0].end)
    return _joined(message.text(0, wrong[-1].start), said, message.text(wrong[-1].end, at))


def _another_thing(message: Message, at: int, start: int) -> str | None:
    things: Sequence[Sequence[_Thing]] = (
        [b for b in (*message.bins, *message.named) if b.name is not None],
        message.days,
        [a for a in message.amounts if a.quantity == "mass"],
        [a for a in message.amounts if a.quantity == "volume"],
        message.items,
    )
    for kind in things:
        right = next((thing for thing in kind if thing.start == start), None)
        wrong = [thing for thing in kind if thing.end <= at]
        if right is None or not wrong:
            continue
        if isinstance(right, BinRef) and _is_told_of(message, right):
            return None
        if isinstance(right, Item) and not _is_other_food(message, right, len(wrong)):
            return None
        last = max(wrong, key=lambda thing: thing.start)
        rest = message.text(right.end, len(message.norms))
        if not _is_all(message, _behind_reason(message, at, right.end)):
            if last.end != at or any(c.verb and c.start >= at for c in message.clauses):
                return None  # more is told than what was wrong
        else:
            rest = ""
        said = _in_its_unit(message, right, last)
        if isinstance(last, Amount) and _was_told(message, last, at):
            return f"no, {said}"
        return _joined(message.text(0, last.start), said, message.text(last.end, at), rest)
    return None


def _is_other_food(message: Message, right: Item, before: int) -> bool:
    """ "Rice, no, pasta" puts it right; "rice, no meat" does not."""
    led = message.norms[right.start - 1]
    return before == 1 and (led in _SIGNS or led in _MEANT) and _is_all(message, right.end)


_MEANT = words_in("mean meant")


def _is_told_of(message: Message, bin: BinRef) -> bool:
    """ "Sorry, the gate one is full": something is told of that bin."""
    behind = bin.end + (message.norms[bin.end : bin.end + 1] == ["one"])
    return tells_of(message.norms, behind)


def _another_number(message: Message, at: int, start: int) -> str | None:
    """ "2 kg of rice, sorry, 3": a number alone is of the one amount before."""
    measured = [a for a in message.measured() if a.end <= at and a.end - a.start > 1]
    number = read_number(message.words, start)
    if number is None or len(measured) != 1:
        return None
    if start in indexes(message.days) or not _is_all(message, number.end):
        return None
    [wrong] = measured
    figure = read_number(message.words, wrong.start)
    behind = wrong.start + 1 if figure is None else figure.end
    said = _joined(message.text(start, number.end), message.text(behind, wrong.end))
    if _was_told(message, wrong, at):
        return f"no, {said}"
    return _joined(message.text(0, wrong.start), said, message.text(wrong.end, at))


def _another_unit(message: Message, at: int, start: int) -> str | None:
    """ "2 lb in the shed, I mean ounces": a unit alone is of the one amount before."""
    if start >= len(message.norms) or not _is_all(message, start + 1):
        return None
    unit = unit_table(message.context.units).get(message.norms[start])
    measured = [a for a in message.measured() if a.end <= at]
    if unit is None or unit.vessel or len(measured) != 1 or unit.quantity != measured[0].quantity:
        return None
    number = read_number(message.words, measured[0].start)
    if number is None or number.end >= measured[0].end:
        return None
    said = _joined(message.text(0, number.end), message.text(start, start + 1))
    return _joined(said, message.text(measured[0].end, at))


def _was_told(message: Message, wrong: Amount, at: int) -> bool:
    """Whether it only says again what the last record holds, to put that right."""
    last = message.context.last
    if not isinstance(last, Layer) or not _is_amount_of_food(message, at):
        return False
    told = last.mass_kg if wrong.quantity == "mass" else last.volume_l
    return told is not None and isclose(told, wrong.value, rel_tol=0.01)


def _another_report(message: Message, at: int, start: int) -> str | None:
    """ "Put 1 kg in the hall. Wait no, 1 kg in the church and 2 in the hall": all of it again."""
    measured = [a for a in message.amounts if a.quantity in ("mass", "volume")]
    again = any(a.start == start for a in measured) and any(b.start > start for b in message.bins)
    if (
        not again
        or not any(a.end <= at for a in measured)
        or any(c.verb for c in message.clauses if c.start >= at)
    ):
        return None
    did = next((c.verb for c in message.clauses if c.sense == "did" and c.verb), None)
    if did is None or did.end > at:
        return None
    return _joined(message.text(0, did.end), message.text(start, len(message.norms)))


def _behind_reason(message: Message, at: int, start: int) -> int:
    """Where the words go on behind "that's sealed" or "the blue one is full": the reason why the
    bin named before `at` was wrong. The start itself, if no such reason begins there.
    """
    norms = message.norms
    wrong = [ref for ref in message.bins if ref.name is not None and ref.end <= at]
    k = start
    while k < len(norms) and norms[k] in _SIGNS | _SINCE:
        k += 1
    named = [r for r in message.bins if r.start == k and wrong and r.name == wrong[-1].name]
    if named:
        k = named[0].end
    elif k < len(norms) and norms[k] in _IT:
        k += 1
    else:
        return start
    while k < len(norms) and norms[k] in _ALREADY:
        k += 1
    if k >= len(norms) or norms[k] not in _IS:
        return start
    k += 1
    while k < len(norms) and norms[k] in _ALREADY:
        k += 1
    return k + 1 if k < len(norms) and norms[k] in _TAKES_NONE else start


def _in_its_unit(message: Message, right: _Thing, wrong: _Thing) -> str:
    """The right words; a bare number with the unit of the wrong one."""
    said = message.text(right.start, right.end)
    if isinstance(right, Amount) and right.end - right.start == 1 and wrong.end - wrong.start > 1:
        return _joined(said, message.text(wrong.start + 1, wrong.end))
    return said


def _is_all(message: Message, end: int) -> bool:
    """Whether nothing but courtesies and how it came about is said from there on."""
    rest = message.norms[end:]
    if all(norm in _TRAILS for norm in rest):
        return True
    return len(rest) <= _LONGEST_EXCUSE and bool(_EXCUSED.fullmatch(" ".join(rest)))


def _joined(*parts: str) -> str:
    return " ".join(part for part in parts if part)
