"""Layers: scraps that went into a bin, told with a verb ("added 2 kg") or without one."""

from collections.abc import Sequence
from dataclasses import replace

from handlers.reading.acts import Layer
from handlers.reading.amounts import Amount
from handlers.reading.groups import Group
from handlers.reading.materials import Item, Makeup, makeup
from handlers.reading.message import LIQUID, Message
from handlers.reading.told import bin_of, day_of, is_ahead, member_of
from handlers.reading.names import PLAIN_FOLLOWERS
from handlers.reading.vocabulary import LEFTOVERS_RICH, vocabulary, words_in

_STRONG = frozenset(
    {"add", "chuck", "toss", "dump", "throw", "bung", "lob", "sling", "fling", "scrape", "deposit",
     "contribute", "put", "tip", "pour", "shove", "stuff", "hoy", "lash", "top up", "tip in", "pile",
     "log", "record", "plonk", "layer", "donate", "echar", "feed"}
)  # fmt: skip
_ADDING = frozenset({"add", "feed", "top up", "top", "tip in"})
_NEEDS_BIN = frozenset({"feed", "give", "come", "leave", "do", "bring", "go", "top"})
_OTHER_PLACES = words_in(
    "oven fridge freezer pan pot car boot trunk wiki list recipe basket cart trolley wash washing "
    "machine soup stew batter dough mixture sauce bath pool tank pond bowl wall playlist calendar "
    "chat group spreadsheet doc document rota folder album account bank fund kitty bill order "
    "oven's microwave cooker bbq grill blender mixer dishwasher tumble garden bed beds border "
    "compost heap composter pile ducks duck chooks hens birds dog cat rabbits pigs goats worms "
    "wormery feeder trough bin-lorry skip landfill sink toilet drain loo pie curry cake salad slow"
)
_COOKING = words_in(
    "recipe bake baked baking oven batter simmer stir muffins serves whisk marinade mins minutes "
    "tbsp-of dough knead roast degrees cookbook slow preheat saute garnish pudding cooker blitz"
)
_SHOPPING = words_in(
    "bought buy buying shop shops shopping market sale price offer quid bargain supermarket tesco "
    "checkout groceries order ordered delivery deal cost costs charged selling fundraiser donated "
    "discount offers raffle each"
)
_BODY = words_in("lost gained heavier lighter weight diet scales pounds-lost waist christmas-weight gym "
                 "squat bench deadlift lifting baby newborn born luggage suitcase")  # fmt: skip
_ANIMALS = words_in("ducks hens chooks birds dog cat rabbits guinea pigs goats horses hamster fish-tank "
                    "pony robins hedgehog hedgehogs worms chickens")  # fmt: skip
_INTO = words_in("in into to onto inside at for from")
_DETERMINERS = words_in("the a an my his her their your this that our")
_TOTAL = words_in("total together altogether all combined totals totalling sum")
_HELP_YOURSELF = words_in("help yourself yourselves free spare takers collect")
_GIVEAWAY = words_in("free anyone help yourself yourselves spare going helpyourself want wants share sharing "
                     "collect fancy takers")  # fmt: skip


def layer_of(groups: Sequence[Group], k: int) -> Layer | None:
    """The layer that the k-th group tells of, if it does."""
    group = groups[k]
    if is_ahead(group) or not _is_told(group):
        return None
    rule = _rule(groups, k)
    if rule is None:
        return None
    mass, volume = amount_sum(scrap_amounts(group))
    made = _makeup(group)
    if made is None and mass is None and volume is None and not _without_amount(rule):
        return None
    act = Layer(
        mass_kg=mass,
        volume_l=volume,
        bin=bin_of(groups, k),
        member=member_of(groups, k),
        on=day_of(groups, k),
        rules=(rule,),
    )
    if made is None and rule == "plates were scraped":
        return replace(act, materials={"cooked": 1.0}, rich=LEFTOVERS_RICH)
    if made is None:
        return replace(act, materials={"mixed": 1.0})
    return replace(act, materials=made.shares, rich=made.rich)


def _rule(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    if group.inherited is not None and scrap_amounts(group):
        before = next((j for j in range(k) if groups[j] is group.inherited), None)
        if before is not None and not _comes_out(group) and layer_of(groups, before) is not None:
            return "and another amount"
    return _by_verb(groups, k) if group.verb is not None else _without_verb(groups, k)


def pooled_layer(groups: Sequence[Group]) -> list[Layer]:
    """ "I weighed it and it was 2.4 kg, into the shed it went": a layer told over several clauses.

    Only where no clause told of a record by itself, and the whole message speaks of one bin.
    """
    told = [g for g in groups if g.sense in ("did", "none")]
    if not told or any(g.sense in ("will", "if", "ask", "order", "habit", "said") for g in groups):
        return []
    message = told[0].message
    whole = Group(message, list(told[0].clauses))
    for group in told:
        for clause in group.clauses:
            whole.take(clause)
    named = {b.name for b in whole.bins if b.name is not None}
    if any(g.verb and message.norms[g.verb.start] in _NO_CARRYING for g in told):
        return []
    if _is_gift(whole) or message.context.after_bot:
        return []
    if len(named) != 1 or not scrap_amounts(whole) or not _went_in(whole) or _comes_out(whole):
        return []
    if _is_other_talk_of(message, whole) or is_ahead(whole) or _names_other_thing(whole):
        return []
    made = _makeup(whole)
    mass, volume = amount_sum(scrap_amounts(whole))
    return [
        Layer(
            mass_kg=mass,
            volume_l=volume,
            materials={"mixed": 1.0} if made is None else made.shares,
            rich=None if made is None else made.rich,
            bin=next(iter(named)),
            member=member_of(groups, groups.index(told[0])),
            on=day_of([whole], 0),
            rules=("the message as a whole",),
        )
    ]


def _went_in(whole: Group) -> bool:
    """Whether some words say that it went in: "in they went", "it's in the shed", "into the shed"."""
    norms = whole.message.norms
    into = any(
        norms[max(0, b.start - 2) : b.start][-1:] in (["into"], ["in"], ["→"])
        or norms[max(0, b.start - 2) : b.start] in (["into", "the"], ["in", "the"], ["to", "the"])
        for b in whole.bins
    )
    plain = any(b.plain for b in whole.bins)
    return into or (plain and "in" in norms)


def _is_other_talk_of(message: Message, whole: Group) -> bool:
    words = set(message.norms)
    return not words.isdisjoint(_COOKING | _SHOPPING | _BODY) and not (
        _has_scrap(whole) or any(b.plain for b in whole.bins)
    )


def _without_amount(rule: str) -> bool:
    return rule in ("a bin was fed", "same again", "plates were scraped")


def _is_told(group: Group) -> bool:
    if group.verb is None:
        return group.sense == "none"
    if group.sense == "order":
        return _is_dictated(group)
    return group.sense == "did"


def _is_dictated(group: Group) -> bool:
    """ "Bot, add 2 kg to the shed", "log 2 kg meat shed": the bot is told to write it down."""
    assert group.verb is not None
    writes = group.verb.verb.plain in ("log", "record", "note")
    return writes or bool(group.message.bot) or group.message.context.after_bot


def scrap_amounts(group: Group) -> list[Amount]:
    """Amounts in the group that are of scraps: not of bran, water or liquid, nor a bin's size."""
    norms = group.message.norms
    out = [
        a
        for a in group.measured()
        if not a.negative
        and of_what(group.message, a) == ""
        and not (a.size and norms[max(0, a.start - 2) : a.start][-1:] != []
                 and not {"in", "into"}.isdisjoint(norms[max(0, a.start - 2) : a.start]))
    ]  # fmt: skip
    if any(not a.size for a in out):
        out = [a for a in out if not a.size]
    return _without_total(group, out)


def of_what(message: Message, amount: Amount) -> str:
    """`bran`, `liquid`, `water`, or nothing if the amount is not said to be of these."""
    norms = message.norms
    at = amount.end
    for i in range(at, min(len(norms), at + 4)):
        if message.bran_at(i):
            return "bran"
        if message.liquid_at(i):
            return "liquid"
        if norms[i] in ("water", "molasses", "jaggery", "treacle"):
            return "water"
        if norms[i] not in _OF_BETWEEN and any(x.start <= i < x.end for x in message.items):
            break
        if norms[i] in _OF_ENDS:
            break
    if amount.start and message.bran_at(amount.start - 1) and amount.end < len(norms):
        return "bran"
    return ""


_OF_ENDS = words_in(
    ", . in into and to ( ) ; for from + n how what is are do should can : → off out"
)
_OF_BETWEEN = words_in(
    "of the o fresh old dry more good new wheat rice oat our that extra fermented"
)


def _without_total(group: Group, amounts: list[Amount]) -> list[Amount]:
    """Drops a total given beside its parts, or the parts that do not add up to it."""
    norms = group.message.norms
    for a in amounts:
        near = set(norms[max(0, a.start - 2) : a.start]) | set(norms[a.end : a.end + 2])
        parts = [b for b in amounts if b is not a and b.quantity == a.quantity]
        if parts and not near.isdisjoint(_TOTAL):
            summed = sum(b.value for b in parts)
            if abs(summed - a.value) <= 0.05 * a.value:
                return [b for b in amounts if b is not a]
    return amounts


def amount_sum(amounts: Sequence[Amount]) -> tuple[float | None, float | None]:
    """Mass in kg or volume in litres, added up: mass if any was said, vessels last."""
    mass = [a.value for a in amounts if a.quantity == "mass"]
    if mass:
        return sum(mass), None
    exact = [a.value for a in amounts if a.quantity == "volume" and not a.vessel]
    loose = [a.value for a in amounts if a.quantity == "volume" and a.vessel]
    if exact or loose:
        return None, sum(exact or loose)
    return None, None


def _by_verb(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    assert group.verb is not None
    verb = group.verb.verb
    if _leaves_bin(group) or ("layer" not in verb.classes and not _carried_to_bin(group)):
        return None
    said = bool(scrap_amounts(group)) or any(not i.absent for i in group.items)
    if verb.plain in _GETTING and _bin_got(group):
        return "a bin got scraps" if said else None
    if verb.plain in _GETTING and not _is_goal(group):
        return None
    if group.bins:
        return _into_bin(group, verb.plain, said)
    if verb.plain in ("feed", "give") and "it" in group.norms and said:
        return "it was fed" if any(g.bins for g in groups[:k]) else None
    if _has_other_target(group) or not said or verb.plain in _NEEDS_BIN:
        return None
    return _strong_without_bin(groups, k, verb.plain)


_GETTING = frozenset({"get", "take", "receive", "have", "eat"})


def _leads(group: Group) -> bool:
    """Whether a bin stands as the one that does what the verb says."""
    assert group.verb is not None
    norms, start = group.message.norms, group.verb.start
    return any(
        b.end <= start
        and all(w in _HELPING for w in norms[b.end : start])
        and norms[b.start - 1 : b.start] not in (["in"], ["to"], ["into"], ["from"])
        for b in group.bins
        if b.name is not None or b.plain
    )


_HELPING = words_in(
    "has had just also already now only today yesterday 's have again and finally been is was"
)


def _is_goal(group: Group) -> bool:
    """Whether a bin is where the thing went: "in", "into" or "to" it."""
    norms = group.message.norms
    return any(
        not _GOAL.isdisjoint(norms[max(group.start, b.start - 2) : b.start])
        and norms[b.start - 1 : b.start] != ["of"]
        for b in group.bins
    )


_GOAL = words_in("in into to inside onto → for at en dans via")
_NO_CARRYING = words_in(
    "use used buy bought sell sold need needs needed want wanted spend spent paid water watered paint painted "
    "wash washed fix fixed grow grew picked pick cooked baked ate eat drank drink spilled spilt borrow borrowed "
    "lost lose won win play played watch watched"
)


def _carried_to_bin(group: Group) -> bool:
    """A verb that is no word of putting, but whose amount of scraps went to a bin."""
    assert group.verb is not None
    word = group.message.norms[group.verb.start]
    if (
        word in _NO_CARRYING
        or not _is_goal(group)
        or not (scrap_amounts(group) or _has_scrap(group))
    ):
        return False
    return any(b.plain or not b.place for b in group.bins) or (
        _has_scrap(group) or bool(group.solids())
    )


def _bin_got(group: Group) -> bool:
    """ "Old green got 850 g of gristle": the bin itself is what the verb is said of."""
    liquid = group.message.liquid(group.start, group.end)
    return _leads(group) and bool(scrap_amounts(group)) and not liquid


def _into_bin(group: Group, plain: str, said: bool) -> str | None:
    room = all(b.place and not b.plain for b in group.bins)
    if room and not (_is_goal(group) or _is_fed(group) or _lies_behind(group)):
        return None
    if said:
        if _is_storage(group) or (plain in _NEEDS_BIN and not _enough(group)):
            return None
        if plain in ("feed", "give") and not _ANIMALS.isdisjoint(group.norms):
            return None
        return "scraps went into a bin"
    if plain in _ADDING and not _lid(group):
        return "a bin was fed"
    if plain == "scrape" and not {"plates", "plate", "dishes", "dish", "pans"}.isdisjoint(
        group.norms
    ):
        return "plates were scraped"
    return None


def _is_fed(group: Group) -> bool:
    """Whether the bin stands right behind the verb ("fed the shed", "gave the shed 2 kg")."""
    assert group.verb is not None
    norms, at = group.message.norms, group.verb.end
    return any(
        b.start == at or (b.start == at + 1 and norms[at] in ("the", "our", "up"))
        for b in group.bins
    )


def _lies_behind(group: Group) -> bool:
    """Whether the bin is named in a clause of its own, as in a list ("added 2 kg, shed")."""
    norms = group.message.norms
    return any(
        norms[max(0, b.start - 1) : b.start] in ([","], [":"], ["("], ["-"], [])
        or norms[b.start - 2 : b.start] in ([",", "the"], ["on", "the"], ["at", "the"])
        or norms[b.end : b.end + 1] == [":"]
        or b.end == group.end
        and norms[b.start - 1]
        not in ("for", "the", "of", "from", "my", "near", "by", "behind", "outside")
        for b in group.bins
    )


def _enough(group: Group) -> bool:
    """Whether a weak verb ("left 2 kg of peel in the shed") is borne out by scraps or a bin."""
    return bool(scrap_amounts(group)) or _has_scrap(group) or any(b.plain for b in group.bins)


def _lid(group: Group) -> bool:
    return not {"lid", "lids", "bran", "water", "weight", "plate", "label", "sticker"}.isdisjoint(
        group.norms
    )


def _is_gift(group: Group) -> bool:
    """Food left for others to take."""
    sentence = group.message.sentences[group.clauses[0].sentence]
    gift = group.message.has(_HELP_YOURSELF, sentence.start, sentence.end)
    return gift and not any(b.plain for b in group.bins)


def _is_storage(group: Group) -> bool:
    """Food set down in a place that shares a bin's name ("left a loaf in the kitchen")."""
    if _is_gift(group):
        return True
    floor = not {"floor", "table", "door", "wall", "worktop", "counter", "steps"}.isdisjoint(
        group.norms
    )
    if floor and not any(b.plain for b in group.bins):
        return True
    if any(b.plain for b in group.bins) or scrap_amounts(group) or _has_scrap(group):
        return not _GIVEAWAY.isdisjoint(group.norms) and not any(b.plain for b in group.bins)
    norms = group.message.norms
    return any(norms[b.start - 1 : b.start] in (["the"], ["our"]) for b in group.bins)


def _strong_without_bin(groups: Sequence[Group], k: int, plain: str) -> str | None:
    group = groups[k]
    if plain not in _STRONG and group.message.bins == ():
        return None
    context = group.message.bins or group.message.bot
    if _is_other_talk(group) and not (context and _has_scrap(group)):
        return None
    if group.norms[:1] and "on" in group.norms and plain == "put" and not _has_scrap(group):
        return None
    if _has_scrap(group):
        return "scraps were put in"
    if plain in ("add", "log", "top up", "record", "deposit") and scrap_amounts(group):
        return "an amount was added"
    if scrap_amounts(group) and ((group.items and context) or _in_particle(group)):
        return "an amount was put in"
    return None


def _in_particle(group: Group) -> bool:
    """ "Put 2 kg in": the word for into stands with nothing behind it."""
    norms = group.message.norms
    for i in range(group.start, group.end):
        if norms[i] in ("in", "into"):
            after = norms[i + 1] if i + 1 < group.end else ""
            if (
                not after
                or not after[0].isalpha()
                or after in ("there", "it", "today", "this", "last")
            ):
                return True
            if any(a.start == i + 1 for a in group.amounts):
                return True
    return False


def _has_other_target(group: Group) -> bool:
    """Whether the thing went to another place than a bin ("to the wiki", "in my soup")."""
    message, norms = group.message, group.message.norms
    items = {i for x in group.items for i in range(x.start, x.end)}
    held = items | {i for d in group.days for i in range(d.start, d.end)}
    for i in range(group.start, group.end - 1):
        if norms[i] not in ("in", "into", "to", "onto", "on"):
            continue
        after = norms[i + 1]
        if after in _DETERMINERS and i + 2 < group.end:
            target = norms[i + 2]
            if i + 2 not in held and target not in ("bin", "mix", "morning", "evening", "afternoon",
                                                    "lot", "same", "layer", "layers", "end"):  # fmt: skip
                return True
            if target in _OTHER_PLACES:
                return True
        elif after in _OTHER_PLACES:
            return True
    return message.has(_ANIMALS, group.start, group.end)


def _is_other_talk(group: Group) -> bool:
    """Cooking, shopping or the bathroom scales, by the words of the sentence."""
    sentence = group.message.sentences[group.clauses[0].sentence]
    words = set(group.message.norms[sentence.start : sentence.end])
    return not words.isdisjoint(_COOKING | _SHOPPING | _BODY) or any(
        a.quantity == "money" for a in group.message.amounts
    )


def _has_scrap(group: Group) -> bool:
    return any(item.scrap and not item.absent for item in group.items)


def _leaves_bin(group: Group) -> bool:
    """Whether the words take something out of a bin, or into the ground."""
    norms = group.norms
    return "out" in norms and "of" in norms and not group.items


def _without_verb(groups: Sequence[Group], k: int) -> str | None:
    group = groups[k]
    amounts = scrap_amounts(group)
    present = [i for i in group.items if not i.absent]
    if _same_again(group) and (group.bins or not present):
        return "same again"
    if _comes_out(group) or _is_other_matter(group):
        return None
    if group.bins and amounts:
        return _amount_and_bin(group, present)
    if group.bins and present:
        return _things_and_bin(group, present)
    if amounts and _has_scrap(group) and not _is_other_talk(group):
        return "an amount of scraps" if not _owned(group) else None
    goes_in = group.norms[-1:] == ["in"] and any(g.bins for g in groups[:k])
    if amounts and goes_in:
        return "so much in"
    if amounts and present and _bin_is_near(groups, k) and not _is_other_talk(group):
        return "an amount for the bin named before"
    return None


def _same_again(group: Group) -> bool:
    text = " ".join(group.norms)
    return text.startswith(
        ("same again", "same for", "ditto", "same amount", "another lot")
    ) and bool(group.bins)


def _owned(group: Group) -> bool:
    return not _GIVEAWAY.isdisjoint(group.norms)


def _is_other_matter(group: Group) -> bool:
    """Talk of room, size or starter: the amount is not of scraps."""
    named = {i for b in group.bins for i in range(b.start, b.end)}
    words = {group.message.norms[i] for i in range(group.start, group.end) if i not in named}
    return not words.isdisjoint(
        {"space", "room", "capacity", "left", "holds", "hold", "bran", "starter", "size", "need",
         "needs", "heavier", "lighter", "weigh", "weighs", "full", "recipe", "everybody", "flour",
         "everyone", "sale", "brings", "max", "limit", "costs", "cost"}
    )  # fmt: skip


def _comes_out(group: Group) -> bool:
    norms = group.norms
    if group.message.liquid(group.start, group.end):
        return True
    if norms[-1:] == ["out"]:
        return True
    return any(norms[i] in ("from", "off") or norms[i : i + 2] == ["out", "of"] for i in range(len(norms))
               if norms[i] in ("from", "off", "out") and _bin_at(group, i))  # fmt: skip


def _bin_at(group: Group, i: int) -> bool:
    at = group.start + i
    return any(0 < b.start - at <= 3 for b in group.bins) and not any(
        at < x.start < at + 3 for x in group.items
    )


def _amount_and_bin(group: Group, present: Sequence[Item]) -> str | None:
    plain = any(b.plain or b.known for b in group.bins)
    if not plain or (_is_other_talk(group) and not _has_scrap(group)):
        return None
    if present:
        return "an amount of scraps and a bin"
    return None if _names_other_thing(group) else "an amount and a bin"


def _names_other_thing(group: Group) -> bool:
    """ "2 litres of paint in the shed": the amount is of something that is no scrap."""
    norms = group.message.norms
    if group.solids() and not all(i.generic for i in group.solids()):
        return False
    named = {b.start for b in group.bins}
    unknown = any(
        _is_unknown_thing(norms, a.end) and a.end not in named for a in scrap_amounts(group)
    )
    if unknown and all(b.place and not b.plain for b in group.bins):
        return True
    for a in scrap_amounts(group):
        if norms[a.end : a.end + 1] == ["of"] and a.end + 1 < group.end:
            return norms[a.end + 1] not in ("it", "the", "that", "this", "our", "my", "mixed")
    return False


def _is_unknown_thing(norms: Sequence[str], i: int) -> bool:
    """Whether the word behind an amount is a thing that none of our lists knows ("5 kg blankets")."""
    if norms[i : i + 1] in (["of"], ["o"], ["more"]):
        i += 1
    word = norms[i] if i < len(norms) else ""
    return (
        word.isalpha()
        and len(word) > 2
        and word not in vocabulary()
        and word not in PLAIN_FOLLOWERS
    )


def _things_and_bin(group: Group, present: Sequence[Item]) -> str | None:
    norms = group.message.norms
    if _is_other_talk(group) or _owned(group):
        return None
    into = any(
        (
            norms[b.start - 1 : b.start]
            and norms[b.start - 1] in ("in", "into", "to", "→", "inside", "for")
        )
        or norms[max(0, b.start - 2) : b.start][:1] == ["into"]
        for b in group.bins
    )
    if all(item.food.name in ("stuff", "mix", "food", "gunk") for item in present):
        return None
    thing = _has_scrap(group)
    if thing and (into or any(b.known for b in group.bins)):
        return "scraps and a bin"
    into_the = any({"into", "→"} & set(norms[max(0, b.start - 2) : b.start]) for b in group.bins)
    return "things into a bin" if into_the else None


def _bin_is_near(groups: Sequence[Group], k: int) -> bool:
    """Whether the group just before named nothing but a bin ("Shed:") or told of a layer."""
    if k == 0:
        return False
    before = groups[k - 1]
    return bool(before.names()) and len(before.norms) <= 4


def _makeup(group: Group) -> Makeup | None:
    amounts = scrap_amounts(group)
    items = [i for i in group.items if not i.absent]
    weights = _weights(group, items, amounts)
    own = makeup(items, weights) if items else None
    if own is None and group.inherited is not None:
        return _makeup(group.inherited)
    return own


def _weights(group: Group, items: Sequence[Item], amounts: Sequence[Amount]) -> list[float] | None:
    """Amounts of the single items, where each has one: said before it or behind it."""
    kind = "mass" if any(a.quantity == "mass" for a in amounts) else "volume"
    own = [a for a in amounts if a.quantity == kind]
    if len(own) < 2 or not items:
        return None
    before = own[0].start < items[0].start
    weights: list[float] = []
    for item in items:
        if before:
            near = [a for a in own if a.start < item.start][-1:]
        else:
            near = [a for a in own if a.start >= item.end][:1]
        if not near:
            return None
        sharing = [x for x in items if _nearest(x, own, before) is near[0]]
        weights.append(near[0].value / max(1, len(sharing)))
    return weights


def _nearest(item: Item, own: Sequence[Amount], before: bool) -> Amount | None:
    near = (
        [a for a in own if a.start < item.start][-1:]
        if before
        else [a for a in own if a.start >= item.end][:1]
    )
    return near[0] if near else None
