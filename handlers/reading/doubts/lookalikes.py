"""Talk that uses the words of a layer for other things: cooking, shopping, a gift, the gym."""

from collections.abc import Sequence

from handlers.reading.food.quantities import scrap_amounts
from handlers.reading.groups import Group
from handlers.reading.words.binwords import PLAIN_FOLLOWERS, BinRef
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import is_slip_of_food, vocabulary, words_in

_OTHER_PLACES = words_in(
    "trash garbage oven fridge freezer pan pot car boot trunk wiki list recipe basket cart trolley "
    "wash "
    "washing machine soup stew batter dough mixture sauce bath pool tank pond bowl wall "
    "playlist calendar chat group spreadsheet doc document rota folder album account bank "
    "fund kitty bill order oven's microwave cooker bbq grill blender mixer dishwasher tumble "
    "garden bed beds border compost heap composter pile ducks duck chooks hens birds dog cat "
    "rabbits pigs goats worms wormery feeder trough bin-lorry skip landfill sink toilet drain "
    "loo pie curry cake salad slow"
)


_COOKING = words_in(
    "recipe bake baked baking oven batter simmer stir muffins serves whisk marinade mins "
    "minutes tbsp-of dough knead roast degrees cookbook slow preheat saute garnish pudding "
    "cooker blitz kimchi sauerkraut kombucha pickling chutney jam marmalade"
)


_SHOPPING = words_in(
    "bought buy buying shop shops shopping market sale price offer quid bargain supermarket "
    "checkout groceries order ordered delivery deal cost costs charged selling "
    "fundraiser donated discount offers raffle each"
)


_BODY = words_in(
    "lost gained heavier lighter weight diet scales pounds-lost waist christmas-weight gym "
    "squat bench deadlift lifting heavy lift baby newborn born luggage suitcase"
)


_OTHER_TALK = _COOKING | _SHOPPING | _BODY


ANIMALS = words_in(
    "goat pig cow horse duck hen chicken's ducks hens chooks birds dog cat rabbits guinea "
    "pigs goats horses hamster fish-tank pony robins hedgehog hedgehogs worms chickens"
)


_DETERMINERS = words_in("the a an my his her their your this that our")


_HELP_YOURSELF = words_in("help yourself yourselves free spare takers collect")


GIVEAWAY = words_in(
    "free anyone help yourself yourselves spare going helpyourself want wants share sharing "
    "collect fancy takers"
)


NO_CARRYING = words_in(
    "use used buy bought sell sold need needs needed want wanted spend spent paid water "
    "watered paint painted wash washed fix fixed grow grew picked pick cooked baked ate eat "
    "drank drink spilled spilt borrow borrowed lost lose won win play played watch watched"
)


def is_gift(group: Group) -> bool:
    """Food left for others to take."""
    sentence = group.message.sentences[group.clauses[0].sentence]
    gift = group.message.has_in(_HELP_YOURSELF, sentence.start, sentence.end)
    return gift and not any(b.plain for b in group.bins)


def has_other_target(group: Group) -> bool:
    """Whether the thing went to another place than a bin ("to the wiki", "in my soup")."""
    message, norms = group.message, group.message.norms
    items = indexes(group.items)
    held = items | indexes(group.days)
    for i in range(group.start, group.end - 1):
        if norms[i] not in ("in", "into", "to", "onto", "on"):
            continue
        after = norms[i + 1]
        if after in _DETERMINERS and i + 2 < group.end:
            target = norms[i + 2]
            if i + 2 not in held and target not in ("bin", "mix", "morning", "evening", "afternoon",
                                                    "lot", "same", "layer", "layers",
                "end"):  # fmt: skip
                return True
            if target in _OTHER_PLACES:
                return True
            if norms[i] != "on" and i + 2 in items and any(a.end <= i for a in group.amounts):
                return True  # "added 500 g of cheese to the lasagne"
        elif after in _OTHER_PLACES:
            return True
    return message.has_in(ANIMALS, group.start, group.end)


def is_other_talk(group: Group) -> bool:
    """Cooking, shopping or the bathroom scales, by the words of the sentence."""
    sentence = group.message.sentences[group.clauses[0].sentence]
    words = set(group.message.norms[sentence.start : sentence.end])
    return not words.isdisjoint(_OTHER_TALK) or any(
        a.quantity == "money" for a in group.message.amounts
    )


def has_scrap(group: Group) -> bool:
    """Whether the words themselves say that something is waste."""
    return any(item.scrap and not item.absent for item in group.items)


def leaves_bin(group: Group) -> bool:
    """Whether the words take something out of a bin, or into the ground."""
    norms = group.norms
    return "out" in norms and "of" in norms and not group.items


def is_given_away(group: Group) -> bool:
    """Whether the words offer it to others."""
    return not GIVEAWAY.isdisjoint(group.norms)


def is_other_matter(group: Group) -> bool:
    """Talk of room, size or starter: the amount is not of scraps."""
    named = indexes(group.bins, group.amounts)
    words = {group.message.norms[i] for i in range(group.start, group.end) if i not in named}
    if group.message.bran(group.start, group.end) and (not group.solids() or _is_for(group)):
        return True
    return not words.isdisjoint(
        {"space", "room", "capacity", "left", "holds", "hold", "size", "need",
         "needs", "heavier", "lighter", "weigh", "weighs", "full", "recipe", "flour", "sale",
    "brings", "max", "limit", "costs", "cost"}
    )  # fmt: skip


def _is_for(group: Group) -> bool:
    """ "Bran for 1.5 kg of scraps": the scraps are only what the bran is for."""
    norms = group.message.norms
    return any(
        a.start > group.start + 1
        and norms[a.start - 1] == "for"
        and group.message.bran_at(a.start - 2)
        for a in group.amounts
    )


def comes_out(group: Group) -> bool:
    """Whether it tells of liquid, or of something taken from a bin."""
    norms = group.norms
    if group.message.liquid(group.start, group.end):
        return True
    if norms[-1:] == ["out"]:
        return True
    return any(norms[i] in ("from", "off") or norms[i : i + 2] == ["out",
               "of"] for i in range(len(norms))
               if norms[i] in ("from", "off", "out") and _bin_at(group, i))  # fmt: skip


def _bin_at(group: Group, i: int) -> bool:
    at = group.start + i
    return any(0 < b.start - at <= 3 for b in group.bins) and not any(
        at < x.start < at + 3 for x in group.items
    )


def is_only_near(group: Group) -> bool:
    """ "10 kg of rice at the gate": a place that is no goal of what is told."""
    if any(b.plain or not b.place for b in group.bins):
        return False
    norms = group.message.norms
    for b in group.bins:
        before = norms[b.start - 1] if b.start > group.start else ""
        if before in ("the", "our"):
            before = norms[b.start - 2] if b.start - 2 >= group.start else ""
        behind_food = any(i.end in (b.start - 1, b.start - 2) for i in group.items)
        behind_food = behind_food and not _adds_to(norms, group.start)
        if before in _NO_GOAL or (before == "for" and behind_food):
            return True
    return False


def _adds_to(norms: Sequence[str], i: int) -> bool:
    """ "Another 2 kg of rice for the gate": words that go on with what was put in before."""
    while norms[i : i + 1] and norms[i] in ("and", "then", "so", "also"):
        i += 1
    return norms[i : i + 1] != [] and norms[i] in ("another", "plus", "+", "additional")


_NO_GOAL = words_in(
    "at by near behind from of under past outside round around on with off across past opposite"
)


def is_told_of_room(group: Group) -> bool:
    """ "The canteen promised 5 kg", "4 bags for the garden": it is the place itself."""
    if any(b.plain or not b.place for b in group.bins):
        return False
    norms = group.message.norms
    loose = not group.solids() and all(a.vessel for a in scrap_amounts(group))
    return loose or any(_does_itself(norms, b.end) for b in group.bins)


def _does_itself(norms: Sequence[str], i: int) -> bool:
    after = norms[i] if i < len(norms) else ""
    return after.isalpha() and (after in _COPULA or after not in PLAIN_FOLLOWERS)


_COPULA = words_in("is are was were has had will would can")


def is_between_bins(group: Group) -> bool:
    """ "Moved 1 kg from the shed to the kitchen": nothing new went in."""
    norms = group.message.norms
    if _OUT_OF.isdisjoint(group.norms) or len(group.bins) < 2:
        return False
    leads = {_lead(norms, b.start) for b in group.bins if b.known and not _is_source(group, b)}
    return not leads.isdisjoint(_OUT_OF) and not leads.isdisjoint({"to", "into"})


_OUT_OF = words_in("from off")


def _is_source(group: Group, ref: BinRef) -> bool:
    """ "Bread from the church into orange": a place where food named by its kind comes from, where
    no verb says that anything was moved, and no bin word that it is the bin."""
    norms = group.message.norms
    if _lead(norms, ref.start) not in _OUT_OF or ref.plain:
        return False
    place = ref.place or norms[ref.end - 1] in _STEPS
    named = [item for item in group.solids() if not item.generic]
    return place and group.verb is None and bool(named) and bool(scrap_amounts(group))


_STEPS = words_in("step steps doorstep gate drive path lane roadside ramp")
"""Places a bin may be called by, beside rooms and gardens."""


def _lead(norms: Sequence[str], start: int) -> str:
    """The word before a bin, its article left out."""
    at = start - 2 if norms[start - 1 : start] in (["the"], ["our"]) else start - 1
    return norms[at] if at >= 0 else ""


def names_other_thing(group: Group) -> bool:
    """ "2 litres of paint in the shed": the amount is of something that is no scrap."""
    norms = group.message.norms
    if group.solids() and not all(i.generic for i in group.solids()):
        return False
    named = {b.start for b in group.bins}
    if any(
        norms[a.end : a.end + 1] == ["of"] and _is_unknown_thing(norms, a.end)
        for a in scrap_amounts(group)
    ):
        return True
    unknown = any(
        _is_unknown_thing(norms, a.end) and a.end not in named for a in scrap_amounts(group)
    )
    if unknown and all(b.place and not b.plain for b in group.bins):
        return True
    for a in scrap_amounts(group):
        if norms[a.end : a.end + 1] == ["of"] and a.end + 1 < group.end:
            return norms[a.end + 1] not in ("it", "the", "that", "this", "our", "my", "mixed")
    return False


_DESCRIBING = words_in("of o more new brand")


def _is_unknown_thing(norms: Sequence[str], i: int) -> bool:
    """Whether behind an amount stands a thing that no list of ours knows ("5 kg blankets")."""
    while norms[i : i + 1] and norms[i] in _DESCRIBING:
        i += 1
    word = norms[i] if i < len(norms) else ""
    return (
        word.isalpha()
        and len(word) > 2
        and word not in vocabulary()
        and word not in PLAIN_FOLLOWERS
        and not is_slip_of_food(word)
    )
