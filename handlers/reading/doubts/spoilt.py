"""Spoilage of the food thrown in is no sign of the bin: "weevils in the flour, 3 kg of it"."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.practice.signs import Sign
from handlers.reading.acts import Act, Layer, Observe
from handlers.reading.food.items import Item
from handlers.reading.message import Message
from handlers.reading.signs.seen import Seen
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_SPOILAGE: frozenset[Sign] = frozenset(
    {
        "white_mould", "green_mould", "black_mould", "other_mould", "rotten", "sour", "wet", "dry",
        "insects", "rodents", "warm", "cold",
    }
)  # fmt: skip
"""What food may have that is thrown out for it."""
_OF_BIN = words_in(
    "lid lids nose inside rim rims top surface tap spigot smell smells smelling whiff stinks reeks "
    "pongs "
    "hums opened opening lifted open look looks looking contents layer layers bottom underneath "
    "under sides walls corner already growing grows yesterday's last bin's juice liquid leachate "
    "bokashi everywhere now still again there it's its is"
)
"""Words that turn to the bin itself, or say how things stand in it."""
_BEHIND_FOOD = Late(
    r"(?:(?:and|that|which|who|so|all|a|an|the|some|bit|of|with|full|covered|riddled|crawling|"
    r"walking|had|has|have|having|don|was|were|been|being|gone|going|went|got|gotten|getting|"
    r"turned|turning|grew|grown|started|beginning|begun|to|just|very|pure|half|mostly|too|proper|"
    r"really|slightly|quite|right|damp|soft|wey|dey|in|by|from|cos|because|since|it|they|them|"
    r"smelt|smelled|ponged|hummed|reeked|stank|look|looked|[,(—-]|[\d.]+|kg|g|kilos?|grams?) )*"
)
"""What may stand between a food and the word for what is wrong with it."""
_WITHIN_FOOD = Late(
    r"(?:(?:had|have|has|don|got|get|gotten|been|crept|crawled|moved|all|right|at|into|in|on|over|"
    r"of|through|inside|from|to|a|the|my|our|his|her|their|that|this|those|some|old|whole|bag|sack|"
    r"box|tin|jar|packet|tub) )+"
)
"""What may stand between the word for what is wrong and its food, where that is told first."""
_GOT_IN = Late(
    r"(?: (?:had|have|has|don|did))? (?:got|get|gotten|moved|been|crept|crawled|broke|find|found) "
    r"(?:in|into|at|to|through)\b(?! (?:the |our )?qbin)"
)
_IN_STORE = Late(
    r" (?:\w+ )?(?:in|into|at|through|all over|all through|from) (?:the|my|our|his|her|their|a|"
    r"that) "
    r"(?:(?:whole|old|last|big|new) )?(?:(?:bags?|sacks?|tins?|jars?|packets?|boxes|box) of )?"
    r"(?:pantry|larder|cupboards?|fridge|freezer|shel(?:f|ves)|stores?|barn|silo|granary|sugar|"
    r"wheat|millet|sorghum|besan|maida|cereals?|couscous|quinoa|bags?|sacks?|packets?|jars?|"
    r"cartons?|box|lunch ?box|car|boot)\b"
)
"""Where food spoils that no bin has yet."""
_FULL_OF = Late(
    r"\b(?:bags?|sacks?|box|boxes|tins?|jars?|packets?|packs?|cartons?|crates?|trays?|kg|kilos?|g|"
    r"grams?|pounds?|lbs?|lot|load)(?: bag)? of (?:\w+ ){1,3}?(?:that |which )?(?:was |were |is |"
    r"are |all |gone |half )*(?:full of|riddled with|crawling with|alive with|walking with|thick "
    r"with)(?: \w+)?$"
)
"""Food by the sack and what it was full of."""
_LOOKS = words_in(
    "wet soggy slimy old stale mouldy moldy manky rank whole red green black brown white fried "
    "cooked raw half frozen hot cold limp mushy soft smelly stinky furry fuzzy boiled roast"
)
_SMELLS = words_in(
    "smell smells smelled smelt smelling whiff whiffs stink stinks reek reeks pong pongs hums like "
    "bouquet nose note notes scent odour odor"
)
"""Behind these a food is only likened to: "smells like rotten eggs"."""
_AT_BIN = words_in("in on at from round around under by inside off into of over")
_ARTICLES = words_in("the our my a")


def without_spoilage(acts: Sequence[Act], message: Message) -> list[Act]:
    """The acts without what beside a layer is only seen in the food that went in."""
    if not message.signs or not any(isinstance(act, Layer) for act in acts):
        return list(acts)
    if not any(isinstance(act, Observe) for act in acts):
        return list(acts)
    there = [seen for seen in message.signs if not seen.absent]
    of_bin = {seen.sign for seen in there if not _is_of_food(message, seen)}
    if len(of_bin) == len({seen.sign for seen in there}):
        return list(acts)
    out: list[Act] = []
    for act in acts:
        if isinstance(act, Observe):
            signs = tuple(sign for sign in act.signs if sign in of_bin)
            if not signs and act.celsius is None and act.ph is None:
                continue
            act = replace(act, signs=signs)
        out.append(act)
    return out


def _is_of_food(message: Message, seen: Seen) -> bool:
    """Whether a sign is said of a food that is named beside it, and of no bin."""
    if seen.sign not in _SPOILAGE:
        return False
    norms = message.norms
    sentence = next(s for s in message.sentences if s.start <= seen.start < s.end)
    foods = [
        item
        for item in message.items
        if sentence.start <= item.start < sentence.end and not (item.generic or item.absent)
    ]
    if any(_describes(norms, seen, item) for item in foods):
        return True
    if message.has_in(_OF_BIN, sentence.start, sentence.end) or _stands_at_bin(message, seen):
        return False
    if any(_is_behind(message, item, seen) or _is_within(message, item, seen) for item in foods):
        return True
    return _is_before_bin(message, seen) and _is_in_store(message, seen, foods)


def _describes(norms: Sequence[str], seen: Seen, item: Item) -> bool:
    """ "Mouldy bread", "soggy wet crisps"."""
    before = norms[max(0, seen.start - 5) : seen.start]
    if not _SMELLS.isdisjoint(before) or (seen.sign == "sour" and norms[seen.start] != "sour"):
        return False
    gap = norms[seen.end : item.start]
    inside = item.start <= seen.start < item.end
    return inside or (item.start >= seen.end and _LOOKS.issuperset(gap))


def _is_in_store(message: Message, seen: Seen, foods: Sequence[Item]) -> bool:
    """ "Ants in the sugar", "a sack of wheat full of weevil", "basmati, weevils had got in"."""
    norms = message.norms
    behind = " ".join(["", *norms[seen.end : seen.end + 9]])
    if _IN_STORE.match(behind) or _FULL_OF.search(" ".join(norms[: seen.start])):
        return True
    return any(item.end <= seen.start for item in foods) and _GOT_IN.match(behind) is not None


def _stands_at_bin(message: Message, seen: Seen) -> bool:
    """ "White mould in the shed", "the shed has flies"."""
    norms, at = message.norms, seen.end
    if norms[at : at + 1] and norms[at] in _AT_BIN:
        at += 1
    if norms[at : at + 1] and norms[at] in _ARTICLES:
        at += 1
    return at > seen.end and any(ref.start == at for ref in message.bins)


def _is_before_bin(message: Message, seen: Seen) -> bool:
    named = [ref.start for ref in message.bins]
    return bool(named) and all(seen.start < start for start in named)


def _is_behind(message: Message, item: Item, seen: Seen) -> bool:
    """ "Garri that got damp and grew black fuzz": the sign is said of the food before it."""
    if item.end > seen.start or any(item.end <= ref.start < seen.start for ref in message.bins):
        return False
    between = " ".join([*message.norms[item.end : seen.start], ""])
    if _BEHIND_FOOD.fullmatch(between) is None:
        return False
    linked = between.strip(" ,(-—0123456789.") not in ("", "kg", "g")
    return linked or _is_before_bin(message, seen) or "(" in between


def _is_within(message: Message, item: Item, seen: Seen) -> bool:
    """ "Weevils in the flour": told before the bin, it is the reason for throwing it out."""
    if item.start < seen.end or not _is_before_bin(message, seen):
        return False
    between = " ".join([*message.norms[seen.end : item.start], ""])
    return _WITHIN_FOOD.fullmatch(between) is not None
