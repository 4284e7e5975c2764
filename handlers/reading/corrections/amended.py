"""What a correction puts right: its fields, without what it takes back."""

from collections.abc import Collection, Sequence

from handlers.reading.acts import Amend
from handlers.reading.bins.meantbins import tells_of
from handlers.reading.food.makeups import makeup
from handlers.reading.food.quantities import amount_sum
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.digits import digits_value
from handlers.reading.measures.numbers import read_number
from handlers.reading.measures.numberwords import NUMBER_WORDS
from handlers.reading.measures.retold import without_restated
from handlers.reading.message import Message
from handlers.reading.people.members import MemberRef
from handlers.reading.words.binwords import BinRef
from handlers.reading.words.vocabulary import words_in


def amend_from(message: Message, rule: str) -> Amend:
    """The correction with the fields that the message gives, without those it takes back."""
    amounts, kept = _amounts_right(message, rule)
    mass, volume = amount_sum(amounts)
    items = [i for i in message.items if i.start in kept and not i.absent and not i.generic]
    items = [i for i in items if not _is_counted(message, i.start)]
    made = makeup(items) if items and rule != NOT_ANOTHER else None
    warm = [a.value for a in message.amounts if a.quantity == "celsius" and a.start in kept]
    acid = [a.value for a in message.amounts if a.quantity == "ph" and a.start in kept]
    days = [
        d.past
        for d in message.days
        if not d.aside and d.start in kept and message.norms[d.start] != "now"
    ]  # "it was nearer 2 kg now I think of it"
    people = [
        m
        for m in message.members
        if m.start in kept and (m.owner or not _addressed(message, m.start, m.end))
    ]
    return Amend(
        mass_kg=mass,
        volume_l=volume,
        materials=None if made is None else made.shares,
        rich=None if made is None else made.rich,
        celsius=warm[0] if warm else None,
        ph=acid[0] if acid else None,
        bin=_bin_meant(message, kept),
        member=_said_to_be_right(message, people),
        on=days[0] if days else None,
        rules=(rule,),
    )


def _amounts_right(message: Message, rule: str) -> tuple[Sequence[Amount], set[int]]:
    """The amounts that are right, and the words that tell of this record and take nothing back."""
    kept = _not_denied(message)
    if rule == ANOTHER_AMOUNT:
        kept &= set(range(message.sentences[0].end))  # what follows is its reason
    amounts = [a for a in message.measured() if a.start in kept and not _is_over(message, a)]
    amounts = _owned(message, amounts) or amounts
    amounts = [a for a in amounts if message.sense_at(a.start) != "ask"] or amounts
    right = [a for a in amounts if _stands_against(message, a)]
    if len(amounts) > 1 and len(right) == 1:  # "the clams were 9 lb, not 7"
        clause = message.clause_at(right[0].start)
        kept &= set(range(clause.start, clause.end)) if clause else kept
        amounts = right
    besides = [a.start for a in amounts[1:] if _is_another(message, a)]
    if besides:  # what follows is of another record
        clause = message.clause_at(besides[0])
        kept &= set(range(besides[0] if clause is None else clause.start))
        amounts = [a for a in amounts if a.start in kept] or amounts[:1]
    amounts = _last_said(message, without_restated(message.norms, amounts))
    return _in_the_other_unit(message) or _more_like(message) or amounts, kept


def _bin_meant(message: Message, kept: Collection[int]) -> str | None:
    """ "I said shed and it was the hall": the bin that is said to be right, not the wrong one."""
    refs = [
        b
        for b in message.bins
        if b.start in kept and b.name is not None and not tells_of(message.norms, b.end)
    ]
    meant = message.norms.index("meant") if "meant" in message.said else 0
    refs = [b for b in refs if b.start > meant] or refs
    return _said_to_be_right(message, refs)


def _said_to_be_right(message: Message, refs: Sequence[BinRef | MemberRef]) -> str | None:
    """The name that none says was only written, of which it is said that it was that one."""
    if len({ref.name for ref in refs}) < 2:
        return refs[0].name if refs else None
    ends = {ref.end for ref in refs}
    leads = {ref.start: _lead_of(message.norms, ref.start, ends) for ref in refs}
    free = [x for x in refs if leads[x.start] & _INTENDED or not leads[x.start] & _WRITTEN]
    right = [x for x in free if leads[x.start] & _NAMED]
    return (right or free or refs)[0].name


def _lead_of(norms: Sequence[str], start: int, ends: Collection[int]) -> frozenset[str]:
    """The words that lead to a name, back to a sign or to the name before."""
    at = start
    while at > max(0, start - _LEAD) and at not in ends and norms[at - 1] not in _STOPS:
        at -= 1
    return frozenset(norms[at:start])


_LEAD = 6
_STOPS = frozenset(".,;:!?()\n")
_WRITTEN = words_in(
    "said say wrote written write put told typed tapped logged labelled labeled label marked "
    "ticked never picked recorded entered change changed swap for"
)
"""Before the wrong bin, unless one of these stands there as well."""
_INTENDED = words_in("meant mean should intended read")
_NAMED = words_in("meant mean should intended was is 's be actually really to read")


def _is_over(message: Message, amount: Amount) -> bool:
    """ "500 g too much": how far the record is out, and not what it should be."""
    behind = message.norms[amount.end : amount.end + 2]
    return behind[:1] == ["too"] and not {"much", "many", "heavy"}.isdisjoint(behind)


def _stands_against(message: Message, amount: Amount) -> bool:
    """Whether the wrong figure stands right behind: ", not 7"."""
    at = amount.end + (message.norms[amount.end : amount.end + 1] == [","])
    wrong = message.words[at + 1 : at + 2]
    return message.norms[at : at + 1] == ["not"] and bool(wrong) and wrong[0].kind == "number"


def _is_another(message: Message, amount: Amount) -> bool:
    """ "Then another 200 g", "and the cafe had 300 g too": what was put in besides."""
    norms = message.norms
    lead = norms[max(0, amount.start - 3) : amount.end]
    if "like" in lead and "more" in lead:
        return False  # "it's more like 600"
    if not _BESIDES.isdisjoint(lead):
        return True
    clause = message.clause_at(amount.start)
    if clause is None or clause.verb is None or clause.start == message.clauses[0].start:
        return False
    words = norms[clause.start : clause.end]
    own = any(clause.start <= b.start < clause.end for b in message.bins)
    return own or not _BESIDES.isdisjoint(words) or clause.verb.verb.plain == "forget"


def _last_said(message: Message, amounts: list[Amount]) -> list[Amount]:
    """ "I wrote 5 kg, it is 500 g only", "make it 5 kg, one kilo was the bag": the right figure."""
    if len(amounts) < 2 or amounts[0].quantity != amounts[1].quantity:
        return amounts
    norms, (first, second) = message.norms, amounts[:2]
    between = norms[first.end : second.start]
    corrected = not _IT_IS.isdisjoint(between)
    if not corrected and not _JOINED.isdisjoint(between) and _DENIED.isdisjoint(between):
        return amounts
    lead = norms[max(0, first.start - 4) : first.start]
    right = not _RIGHT.isdisjoint(lead) and lead[-1:] != ["by"]
    right = right or not _DENIED.isdisjoint(between)
    return [first] if right and not corrected else [second]


_JOINED = words_in("and & plus + n then another")
_DENIED = words_in("no not nao nicht non nie")
_IT_IS = words_in("it its meant correct should actual actually right real wait sorry")
_RIGHT = words_in("make was its is 's foram eran fue war should thats")


_BESIDES = words_in("another also more plus too besides further extra then")


def _owned(message: Message, amounts: list[Amount]) -> list[Amount]:
    """The amounts that no clause denies: "12 ounces, I don't own 12 pounds of anything"."""
    return [a for a in amounts if not _DENYING & set(_clause_before(message, a.start))]


_DENYING = frozenset({"dont", "didnt", "never", "havent"})


def _clause_before(message: Message, i: int) -> list[str]:
    clause = message.clause_at(i)
    return [] if clause is None else message.norms[clause.start : i]


def _in_the_other_unit(message: Message) -> list[Amount]:
    """ "2.5 not 2 kg": the bare number has the unit of the one it corrects."""
    words = message.words
    for a in message.amounts:
        at = a.start - 2
        if a.quantity in ("mass", "volume") and at >= 0 and words[at + 1].norm == "not":
            right, wrong = digits_value(words[at].norm), digits_value(words[a.start].norm)
            if right is not None and wrong:
                return [a._replace(value=a.value * right / wrong)]
    return []


def _more_like(message: Message) -> list[Amount]:
    """ "I said 2 kilos, it was more like one point two": a bare number in the unit before it."""
    said = message.measured()
    if len(said) != 1:
        return []
    wrote = message.has_in(_WROTE, max(0, said[0].start - 3), said[0].start)
    for i in range(said[0].end, len(message.words)):
        number = read_number(message.words, i)
        if number is not None and message.norms[i - 1] in ("than", "not"):
            return []  # "900 g rather than seven"
        if number is None or number.word:
            continue
        behind = message.norms[number.end : number.end + 1]
        ends = not behind or not behind[0][0].isalpha()
        right = wrote and ends and message.norms[i - 1] in _IT_WAS  # "I said 3 lb, its 2"
        if right or message.has_in(_RATHER, said[0].end, i):
            first = read_number(message.words, said[0].start)
            if first is not None and first.value:
                return [said[0]._replace(value=said[0].value * number.value / first.value)]
    return []


_IT_WAS = words_in("its is 's was be being")
_RATHER = words_in("like actually really rather")


def _addressed(message: Message, start: int, end: int) -> bool:
    """A member who is only spoken to: "sorry Bev", "2 kg not 3, Alf"."""
    norms = message.norms
    before = norms[start - 1] if start else ""
    after = norms[end] if end < len(norms) else "."
    aside = before in ("sorry", ",", "@", "cheers", "ta", "thanks", "", "as", "like", "than")
    return aside or after in (",", ":", "!")


ANOTHER_AMOUNT = "no, another amount"
NOT_ANOTHER = "an amount, not another"


def _is_counted(message: Message, at: int) -> bool:
    """ "Make it three pizzas": a number of dishes, not what went in."""
    before = message.norms[at - 1] if at else ""
    held = {k for a in message.amounts for k in range(a.start, a.end)}
    counts = before.isdecimal() or before in NUMBER_WORDS - _PARTS_OF
    return at - 1 not in held and counts


_PARTS_OF = frozenset({"half", "haf", "quarter", "third", "a", "an", "one", "few", "couple"})


_BUT = frozenset({"but", "should"})
_WROTE = frozenset({"put", "wrote", "said", "typed", "logged", "posted", "entered"})


def _not_denied(message: Message) -> set[int]:
    """Indexes of the words that are not behind a "not", up to the next stop."""
    kept: set[int] = set()
    denied = False
    for i, norm in enumerate(message.norms):
        if norm in _WROTE and not _BUT.isdisjoint(message.norms[i:]):
            denied = True  # "I wrote 3 kg but it was 2 kg"
        elif norm in ("not", "isnt", "wasnt", "instead", "than", "rather"):
            denied = norm != "instead" or message.norms[i + 1 : i + 2] == ["of"]
        elif norm in (
            ",",
            ".",
            ";",
            ":",
            "but",
            "its",
            "it",
            "\n",
            "!",
            "and",
            "(",
            "-",
            "—",
            "actually",
            "sorry",
        ):
            denied = False
        if not denied:
            kept.add(i)
    return kept
