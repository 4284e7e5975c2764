"""Starter bran: a batch mixed, or how much is on hand."""

import re
from collections.abc import Sequence
from math import isclose

from handlers.reading.acts import Batch, Stock
from handlers.reading.deeds.toldday import day_of, is_ahead
from handlers.reading.food.ofwhat import NEARLY, WITHOUT, called_behind, is_denied, of_what
from handlers.reading.food.quantities import amount_sum
from handlers.reading.groups import Group
from handlers.reading.measures.amounts import Amount
from handlers.reading.measures.retold import result_of, without_restated
from handlers.reading.message import Message
from handlers.reading.people.doers import member_of
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_MAKING = frozenset({"make", "mix", "mix up", "brew", "prepare", "prep", "inoculate", "knock up",
                     "ferment",
                     "blend", "whip up", "do", "set", "start", "bag"})  # fmt: skip
_ON = frozenset({"put", "put on", "set", "set up"})
_LEFT = words_in(
    "left remaining remains still hand stock inventory check cupboard leftover spare stash "
    "supply tally count down reserve onhand only last new another bag sack tin jar"
)
_GETTING = frozenset({"buy", "pick up", "get", "receive", "find", "purchase", "arrive", "have",
                      "count",
                      "weigh", "come", "collect", "bring"})  # fmt: skip
_NOT_BRAN = words_in(
    "muffins muffin cereal breakfast ducks horse horses chooks hens pony recipe bread cookies "
    "loaf loaves rolls baking porridge eat ate diet fibre fiber"
)
_SPRINKLED = words_in(
    "sprinkled sprinkle topped dusted layer covered handful handfuls fist fists spoon"
)


def batch_of(groups: Sequence[Group], k: int) -> Batch | None:
    """The batch of starter that the k-th group tells of, if it does."""
    group = groups[k]
    if is_ahead(group) or not _speaks_of_bran(group) or not _is_mixed(group):
        return None
    if is_strewn(group):
        return None
    return batch_from(groups, k, "a batch of starter was mixed")


def batch_from(groups: Sequence[Group], k: int, rule: str) -> Batch:
    """The batch with what the k-th group says of it."""
    left = _left_of_bran(groups[k].message)
    amounts = [a for a in _of_bran(groups[k]) if a not in left]
    if not any(a.quantity == "mass" for a in amounts):
        amounts = _called_bran(groups[k].message) or amounts
    mass, volume = amount_sum(amounts)
    return Batch(
        mass_kg=mass,
        volume_l=volume,
        member=member_of(groups, k),
        on=day_of(groups, k, since=True),
        rules=(rule,),
    )


def _speaks_of_bran(group: Group) -> bool:
    return group.message.bran(group.start, group.end) and _NOT_BRAN.isdisjoint(group.norms)


_IS_ON = Late(
    r"\b(?:bran|starter|batch) (?:is |'s |are )(?:now )?(?:on|on the go|brewing|fermenting|mixed|"
    r"made)\b(?! (?:the shelf|offer|sale|top))"
)


def _is_mixed(group: Group) -> bool:
    norms = group.norms
    if group.sense in ("none", "did") and _of_bran(group) and not group.bins:
        text = " ".join(norms)
        if _IS_ON.search(text) or (
            "batch" in norms and re.search(r"\bon the go\b|\bgoing\b|\bfresh\b", text)
        ):
            return {"left", "remaining", "still"}.isdisjoint(norms)
    if group.verb is None:
        return (
            "batch" in norms
            and group.sense == "none"
            and bool(_of_bran(group))
            and (_LEFT.isdisjoint(norms))
        )
    if group.sense != "did" or group.bins:
        return False
    plain = group.verb.verb.plain
    if plain in _ON or plain == "ferment":
        return (
            "ferment" in norms
            or "fermenting" in norms
            or (
                _is_put_on(norms)
                and bool(_of_bran(group))
                and (_SPRINKLED.isdisjoint(norms) and not group.items)
            )
        )
    if plain in ("do", "start", "bag"):
        return "batch" in norms or bool(_of_bran(group))
    return plain in _MAKING and (not group.items or bool(_of_bran(group)))


def _is_put_on(norms: Sequence[str]) -> bool:
    """ "Put a batch on", as one puts a kettle on; not "on top", "on each layer"."""
    behind = [*norms[1:], ""]
    return any(
        norm == "on" and after not in _STREWN_ON for norm, after in zip(norms, behind, strict=True)
    )


_STREWN_ON = words_in("top it them this that the my our each every all those these its")


def is_strewn(group: Group) -> bool:
    """ "Put 2 tbsp of bran on top": a dose on a layer, neither a batch nor what is on hand."""
    norms = set(group.norms)
    if not norms.isdisjoint(_LEFT | {"batch", "batches"}) or not _speaks_of_bran(group):
        return False
    if group.verb is not None and group.verb.verb.plain in _MAKING - {"do"} | _GETTING:
        return False
    mass, volume = amount_sum(_said_of_bran(group) or _of_bran(group))
    on_it = bool(_STREWN.search(" ".join(group.norms)))
    measured = (mass or 0) + (volume or 0)
    scooped = group.verb is not None and not norms.isdisjoint(_SCOOPS)
    return on_it or 0 < measured <= (_LARGEST_SCOOPED if scooped else _LARGEST_DOSE)


_STREWN = Late(rf"\bon (?:{'|'.join(sorted(_STREWN_ON))})\b(?! (?:go|shelf))")
_LARGEST_DOSE = 0.15
"""Kilos or litres of bran; what is strewn on one layer is hardly more."""
_SCOOPS = words_in("cup cups mug mugs handful handfuls fistful fistfuls scoop scoops spoon spoons")
_LARGEST_SCOOPED = 0.6
"""Litres of bran that somebody added by the handful or the cup."""


def _of_bran(group: Group) -> list[Amount]:
    amounts = [a for a in group.measured() if not a.negative]
    return result_of(group.message.norms, without_restated(group.message.norms, amounts))


def _left_of_bran(message: Message) -> list[Amount]:
    """ "2.5 kg bran, used 300 g, so 2.2 left": what is told as left, where more is measured."""
    masses = [a for a in message.amounts if a.quantity == "mass" and not a.negative]
    if len(masses) < 2:
        return []
    left = [a for a in masses if message.has_in(_LEFT_BEHIND, a.end, a.end + 3)]
    left += [a for a in masses[1:] if message.has_in(_BALANCE, max(0, a.start - 3), a.start)]
    return left if len(left) == 1 else []


def _left_and_got(message: Message) -> list[Amount]:
    """ "5 lb of bran left, and another bag came, 10 lb": what was there and what came to it."""
    masses = [a for a in message.amounts if a.quantity == "mass" and not a.negative]
    if len(masses) != 2 or not message.has(_CAME) or message.has(_GONE):
        return []
    left = [a for a in masses if message.has_in(_LEFT_BEHIND, a.end, a.end + 4)]
    if len(left) != 1:
        return []
    other = next(a for a in masses if a is not left[0])
    near = message.norms[max(0, other.start - 8) : other.end + 4]
    came = not _CAME.isdisjoint(near) and _TO_COME.isdisjoint(near)
    return masses if came and any(n in _BESIDES for n in message.norms) else []


_CAME = words_in("bought got came arrived picked collected fetched delivered received")
_GONE = words_in("used gave given spent took sold lent only now so = makes total")
_TO_COME = words_in("coming ordered order soon tomorrow will should monday tuesday wednesday")
_BESIDES = words_in("another plus and & + more also extra")
_LEFT_BEHIND = words_in("left remaining remains hand old still here balance")
_BALANCE = words_in("balance leaves leaving remaining remains")


def _called_bran(message: Message) -> list[Amount]:
    """ "5 kg of bran, 50 mL of culture, 1.5 L of water, mixed": the mass that is one of bran."""
    masses = [a for a in message.amounts if a.quantity == "mass"]
    return [a for a in masses if called_behind(message, a) == "bran"][:1]


def _said_of_bran(group: Group) -> list[Amount]:
    """The amounts of bran, so called or told as more of it ("and another pound in the freezer")."""
    message, out = group.message, list[Amount]()
    for amount in _of_bran(group):
        of = of_what(message, amount)
        more = bool(out) and of == "" and not group.items and _is_more(message.norms, amount)
        if of == "bran" or (more and amount.quantity == out[-1].quantity):
            out.append(amount)
    kept = [a for a in out if not message.has_in(_SPENT, max(0, a.start - 3), a.start)]
    return kept or out


def _is_more(norms: Sequence[str], amount: Amount) -> bool:
    """ "2 lb of bran in the bag, 5 in the tin": kept beside the first, and not spent."""
    lead = norms[max(0, amount.start - 3) : amount.start]
    return not _LISTED.isdisjoint(lead)


_LISTED = words_in(", and & + plus n")
_SPENT = words_in(
    "used use uses using after from gave give given make making need needs for per last took "
    "sprinkled"
)

_NOT_LISTED = _SPENT | words_in(
    "total together altogether all scraps layer water molasses batch mixed made mix make makes "
    "order ordered each or was should will"
)


def stock_of(groups: Sequence[Group], k: int) -> Stock | None:
    """How much starter the k-th group says is on hand, if it does."""
    group = groups[k]
    amounts = _of_bran(group)
    if is_ahead(group) or not amounts or any(b.name for b in group.bins):
        return None
    rule = _on_hand(groups, k)
    return None if rule is None else stock_from(groups, k, rule)


def stock_from(groups: Sequence[Group], k: int, rule: str) -> Stock:
    """The starter on hand with what the k-th group says of it."""
    amounts = _left_and_got(groups[k].message) or _left_of_bran(groups[k].message)
    amounts = amounts or _kept_apart(groups[k].message)
    amounts = amounts or _said_of_bran(groups[k]) or _of_bran(groups[k])
    exact = [a for a in amounts if not a.vessel] or amounts
    mass, volume = amount_sum(exact)
    if not groups[k].message.measured() and _is_none_left(groups[k]):
        mass = 0.0
    return Stock(mass_kg=mass, volume_l=volume, member=member_of(groups, k), rules=(rule,))


def _kept_apart(message: Message) -> list[Amount]:
    """ "Starter: jar A 1 lb. Jar B 14 oz", "1.5 kg of bran here, 700 g in the hall": each lot."""
    lots = [a for a in message.amounts if a.quantity == "mass" and not a.negative]
    foods = [i for i in message.items if message.norms[i.start : i.end] != ["stock"]]
    if len(lots) < 2 or any(not message.bran(item.start, item.end) for item in foods):
        return []
    summed = sum(a.value for a in lots) / 2
    if len(lots) > 2 and isclose(lots[0].value, summed, rel_tol=_ROUNDED):
        return lots[:1]  # "starter 3 kg: 1 in the tin, 2 in the sack"
    if message.days or message.has(_NOT_LISTED):
        return []
    norms, end = message.norms, 0
    for amount in lots:
        behind = norms[amount.end : amount.end + 1]
        named = message.bran(amount.end, amount.end + 3) or behind in _LIES_IN
        if not named and _HOLDERS.isdisjoint(norms[end : amount.start]):
            return []
        end = amount.end
    return lots


_HOLDERS = words_in(
    "jar jars tub tubs tin tins bag bags bucket buckets box boxes sack sacks pot pots bottle crate "
    "drum caddy container house flat place"
)
_LIES_IN = [["in"], ["at"], ["here"], ["upstairs"], ["downstairs"], ["on"], ["under"]]
_ROUNDED = 0.01
_NONE = words_in("no zero none out outta outa")
_ALL_USED = words_in("finished gone used depleted empty")


def _is_none_left(group: Group) -> bool:
    """ "No bran left"; "the bran is finished", where nothing is said behind it."""
    gone = not _ALL_USED.isdisjoint(group.norms[-2:]) and not is_nearly_gone(group)
    return not _NONE.isdisjoint(group.norms) or gone


def is_nearly_gone(group: Group) -> bool:
    """ "The bran is nearly gone": some is left, and nobody said how much."""
    nearly = not NEARLY.isdisjoint(group.norms) and not group.measured()
    return nearly and not (_ALL_USED | _NONE | {"empty"}).isdisjoint(group.norms)


def is_to_be_mixed(message: Message, *, asked: bool = False) -> bool:
    """ "3 kg of bran and 200 mL of molasses", "3 kg of bran, how do I make starter": what starter
    is made of, and none itself. With `asked` it is asked how starter is made.
    """
    measured = message.measured()
    if message.has((_LEFT_BEHIND - {"here"} if asked else _LEFT_BEHIND) | _ANEW):
        return False
    if any(message.has_in(_READY, a.end, a.end + 3) for a in measured):
        return False
    one = sum(a.quantity == "mass" for a in measured) < 2  # else what is asked of is another
    return (asked and one) or any(message.has_in(MIXED_WITH, a.end, a.end + 3) for a in measured)


def is_without_bran(message: Message) -> bool:
    """ "Bought 2 kg of rice, no bran", "another 2 kg of bran needed": all that is said of it is
    that it is not there.
    """
    told = [i for i in range(len(message.norms)) if message.bran_at(i)]
    norms = message.norms
    denied = all(is_denied(norms, i) or message.has_in(_NEEDED, i + 1, i + 4) for i in told)
    return bool(told) and denied and bool(message.measured())


_NEEDED = words_in("needed wanted required short missing")
DENIED = WITHOUT | _NEEDED | words_in("out")
MIXED_WITH = words_in("molasses treacle culture jaggery")
_READY = words_in("starter inoculant")
_ANEW = words_in("more another again next new")
"""Words that tell of the starter, where nothing is measured, that none is left."""


def _on_hand(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    norms = set(group.norms)
    own = _speaks_of_bran(group)
    before = k > 0 and _speaks_of_bran(groups[k - 1])
    if not own and not (before and not norms.isdisjoint({"left", "still", "old"})):
        return None
    if group.sense not in ("did", "none", "habit"):
        return None
    if not norms.isdisjoint(_SPRINKLED | {"used", "need", "needs", "per"}) and "left" not in norms:
        return None
    level = re.search(
        r"\b(?:bran|starter|stock) (?:is |'s |stands |now )+(?:at|down to|about|only|just) ",
        " ".join(group.norms),
    )
    if level and own:
        return "starter on hand"
    if group.verb is None:
        listed = any(group.message.norms[a.start - 1] == ":" for a in group.measured() if a.start)
        return "starter on hand" if listed or not norms.isdisjoint(_LEFT) else None
    if group.verb.verb.plain in _GETTING and (own or not norms.isdisjoint(_LEFT | {"old"})):
        return "starter was got"
    return "starter on hand" if not norms.isdisjoint(_LEFT) and (own or before) else None
