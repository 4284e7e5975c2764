"""Words for signs that tell nothing of a bin: said of food, of somebody, of a house, of weather."""

from collections.abc import Collection, Sequence
from itertools import pairwise

from handlers.practice.signs import Sign
from handlers.reading.measures.numberwords import NUMBER_WORDS
from handlers.reading.signs.seen import Seen
from handlers.reading.signs.signturns import Turn
from handlers.reading.signs.smells import ANY_LIQUID, SMELL
from handlers.reading.words.marks import Mark
from handlers.reading.words.vocabulary import words_in

LIKE_WEATHER: frozenset[Sign] = frozenset({"wet", "dry", "warm", "cold", "much_liquid"})
"""What may also be told of a room or a day."""
_HOUSE = words_in(
    "roof geyser pipe pipes plumber ceiling boiler radiator dishwasher washer gutter gutters "
    "cistern toilet shower hose hosepipe tyre tyres car van boat tent wall walls cistern sink "
    "window windows fridge freezer kettle nappy pram shoes boots wellies coat umbrella umbrellas "
    "anorak raincoat canoe kayak dinghy paddling"
)
_CAN = ("watering", "can")


def is_of_house(norms: Sequence[str], sign: Sign) -> bool:
    """ "The roof is leaking": water, heat and cold have more places than a bin."""
    if sign not in LIKE_WEATHER:
        return False
    return not _HOUSE.isdisjoint(norms) or _CAN in pairwise(norms)


def is_of_people_or_scraps(norms: Sequence[str], mark: Mark) -> bool:
    """ "I'm sweating", "wasps and all": said of the sender, or of what was put in."""
    told = norms[max(0, mark.start - 2) : mark.start]
    person = not _PEOPLE.isdisjoint(told[-1:]) or (
        len(told) > 1 and told[0] in _PEOPLE and told[1] in _BEING
    )
    behind = list(norms[mark.end : mark.end + 2])
    return (
        (person and mark.value.sign != "rotten")
        or behind == ["and", "all"]
        or not _MORSELS.isdisjoint(behind[:1])
    )


def is_of_creatures(norms: Sequence[str], mark: Mark) -> bool:
    """Whether it is told of creatures, and not that they are in a bin: bites, a meal, droppings."""
    if mark.value.sign == "rodents":
        return _is_of_droppings(norms, mark)
    return _is_biting(norms, mark) or _is_feeding(norms, mark)


def _is_biting(norms: Sequence[str], mark: Mark) -> bool:
    """ "Mosquitoes ate us alive", "stung by wasps": insects that bit people."""
    if _is_only_spoken_of(norms, mark):
        return True
    if "by" in norms[max(0, mark.start - 3) : mark.start]:
        return not _BITES.isdisjoint(norms[max(0, mark.start - 4) : mark.start])
    behind = norms[mark.end : mark.end + 4]
    at = next((i for i, norm in enumerate(behind) if norm in _BITES), None)
    if at is None or not behind[0][0].isalpha() or behind[0] == "and":
        return False
    return not _BITTEN.isdisjoint(norms[mark.end + at + 1 : mark.end + at + 4])


def _is_only_spoken_of(norms: Sequence[str], mark: Mark) -> bool:
    """ "Since we speak of slugs", "my flies are open": talk, and a pair of trousers."""
    led, behind = norms[max(0, mark.start - 2) : mark.start], norms[mark.end : mark.end + 2]
    spoken = led[-1:] in (["of"], ["about"]) and not _SPEAKING.isdisjoint(led[:1])
    undone = not _BEING.isdisjoint(behind[:1]) and not _UNDONE.isdisjoint(behind[1:])
    return spoken or (undone and norms[mark.start] in ("fly", "flies"))


_SPEAKING = words_in("speak speaking speaks spoke talk talking talks talked")
_UNDONE = words_in("open undone down unzipped")


def _is_feeding(norms: Sequence[str], mark: Mark) -> bool:
    """ "The worms got 500 g": what was given to creatures, and none that were seen."""
    behind = norms[mark.end : mark.end + 2]
    if len(behind) < 2 or behind[0] not in _FED:
        return False
    return behind[1][0].isdigit() or behind[1] in NUMBER_WORDS or behind[1] in _LOTS


_FED = words_in("got get had have took ate")
_LOTS = words_in("half most some the rest all a an about their quarter")
_BITES = words_in(
    "ate eat eating eaten bit bite bites biting bitten stung sting stings stinging savaged "
    "murdered chewed chew attacked got devoured nibbled"
)
_BITTEN = words_in("us me him her them everyone everybody alive my our his kids")


def _is_of_mood(norms: Sequence[str], mark: Mark) -> bool:
    """ "Her sour soul", "rotten luck", "a warm welcome": said of a mind, a face or one's lot."""
    behind = norms[mark.end : mark.end + 2]
    if mark.value.sign in LIKE_WEATHER and not _LOOKS.isdisjoint(behind):
        return False  # "the bin shows a dry face"
    return not _MOODS.isdisjoint(behind[:1]) or (
        behind[:1] == ["old"] and not _MOODS.isdisjoint(behind[1:])
    )


_LOOKS = words_in("face faces look looks expression")
_MOODS = words_in(
    "soul souls face faces puss mood moods look looks expression expressions temper attitude "
    "heart hearts luck welcome welcomes regards wishes humour humor wit joke jokes sense shoulder "
    "feelings reception trick tricks liar loser swine sod husband wife kids teenager teenagers "
    "weekend week year month summer winter lot weather job jobs business commute"
)


_MORSELS = words_in(
    "bits bread toast scraps leftovers stuff remains ends rinds nibbled eaten bitten"
)
_PEOPLE = words_in("i we you am he")
_BEING = words_in("am are was were is get got feel felt 're")


def is_of_utility(norms: Sequence[str], mark: Mark) -> bool:
    """ "The gas board", "water pressure": a house's supply, and nothing that swells a lid."""
    if norms[mark.start] not in _SUPPLY:
        return False
    behind, before = norms[mark.end : mark.end + 1], norms[max(0, mark.start - 1) : mark.start]
    return not (_SUPPLIERS.isdisjoint(behind) and _SUPPLIED.isdisjoint(before))


_SUPPLY = words_in("gas pressure")
_SUPPLIERS = words_in(
    "board man men bill bills meter meters fitter fitters engineer cylinder cylinders bottle "
    "bottles "
    "hob hobs cooker main mains company works pipe pipes supply station mark oven ring canister "
    "fridge heater boiler price prices cooker washer washers cooking safe"
)
_SUPPLIED = words_in("natural calor tear laughing camping bottled greenhouse water blood tyre peer")


def describes_food(mark: Mark, foods: Sequence[Mark], norms: Sequence[str]) -> bool:
    """ "Rotten tomatoes", "dry coffee grounds", "sour cream": said of the food, not of the bin."""
    return any(
        (food.start in (mark.end, mark.end + 1) and norms[mark.end : food.start] in ([], ["old"]))
        or (
            food.start <= mark.start < mark.end <= food.end
            and food.end - food.start > mark.end - mark.start
        )
        or (0 < mark.start - food.end <= 3 and norms[food.end] in _WHICH)
        for food in foods
    )


_WHICH = words_in("wey which")
"""Behind a food, before what is said of it: "bean cake wey sour", "milk which had gone sour"."""


def is_of_my_food(mark: Mark, foods: Sequence[Mark], norms: Sequence[str]) -> bool:
    """ "My kefir smells sour": said of a thing to eat; scraps and the liquid of a bin are none."""
    return any(
        norms[food.start - 1 : food.start] == ["my"]
        and not SMELL.isdisjoint(norms[food.end : food.end + 1])
        and food.end < mark.start <= food.end + 3
        and food.value.shares[0][0] != "mixed"
        and food.value.name not in ANY_LIQUID
        for food in foods
    )


def is_of_somebody(norms: Sequence[str], mark: Mark) -> bool:
    """ "My feet smell rotten": said of a body or its clothes."""
    if norms[mark.start] in _BODY and norms[max(0, mark.start - 1)] in ("my", "his", "her"):
        return True  # "my urine smells"
    return any(
        norms[i] in _BODY and norms[i - 1] in _OWN and not SMELL.isdisjoint(norms[i + 1 : i + 4])
        for i in range(max(1, mark.start - 6), mark.start)
    )


def somebody_smells(norms: Sequence[str], people: Collection[int]) -> bool:
    """Whether somebody is said to smell of something: "Zoe smells like vinegar", "I stink of it".

    `people` are the words that name a member.
    """
    return not _SMELLING.isdisjoint(norms) and any(
        norms[k] in _SMELLING
        and (k - 1 in people or norms[k - 1] in _ONE)
        and norms[k + 1] in ("like", "of")
        for k in range(1, len(norms) - 1)
    )


_ONE = words_in("you u ya i we nurse sir madam miss doctor")
_SMELLING = words_in(
    "smell smells smelled smelt smelling stink stinks stank stinking reek reeks reeked reeking "
    "pong pongs whiff whiffs"
)
_OWN = words_in("my his her your our their the")
_BODY = words_in(
    "feet foot socks sock shoes trainers boots breath armpits armpit hair clothes jacket coat car "
    "sofa towels towel laundry dog cat baby husband wife fridge urine wee pee sweat pits hands "
    "fingers skin farts fart poo nappies nappy trainer boot jumper gym kit"
)


def is_of_food(turn: Turn, foods: Sequence[Mark]) -> bool:
    """ "Bananas gone black", "green peas": the colour of a food."""
    return any(
        turn.first - 1 <= food.end <= turn.start or food.start <= turn.end < food.end
        for food in foods
    )


def of_another(norms: Sequence[str], mark: Mark) -> bool:
    """ "Stinks of paint": the smell is named, and it is not one of rot."""
    if norms[mark.end : mark.end + 1] != ["of"]:
        return False
    named = list(norms[mark.end : mark.end + 6])
    stop = next((i for i, norm in enumerate(named) if not norm[0].isalpha()), len(named))
    return _ROT.isdisjoint(named[:stop])


_ROT = words_in(
    "rotten rot death dead sewage drains sick vomit poo fish meat eggs egg bin bins sulphur "
    "sulfur cabbage garbage manure feet everything hell off rubbish trash bad"
)


def is_tank(norms: Sequence[str], seen: Seen) -> bool:
    """ "Poured it down the septic": a tank, and no smell."""
    before, after = norms[max(0, seen.start - 1) : seen.start], norms[seen.end : seen.end + 1]
    return norms[seen.start] == "septic" and (list(before) == ["the"] or list(after) == ["tank"])


def is_of_else(norms: Sequence[str], mark: Mark) -> bool:
    """Whether it is said of somebody's mood, of a worn tap, of what rang or left, or only asked
    whether it is bad.
    """
    return (
        _is_of_mood(norms, mark)
        or _has_left_or_rung(norms, mark)
        or _is_felt(norms, mark)
        or _is_of_tap(norms, mark)
        or _is_verdict(norms, mark)
    )


def _has_left_or_rung(norms: Sequence[str], mark: Mark) -> bool:
    """ "The key is gone off its hook", "the alarm's gone off": no food that went off."""
    if list(norms[mark.start : mark.end]) != ["gone", "off"]:
        return False
    behind, before = norms[mark.end : mark.end + 1], norms[max(0, mark.start - 4) : mark.start]
    return not (_OFF_WHAT.isdisjoint(behind) and _RINGING.isdisjoint(before))


_OFF_WHAT = words_in("the its his her their my our your a an to with on without somewhere")
_RINGING = words_in(
    "alarm alarms light lights lamp bulb power electric electricity lecky heating boiler phone "
    "timer buzzer bell bells siren sirens detector sprinklers internet wifi telly tv firework "
    "fireworks rocket"
)


def _is_felt(norms: Sequence[str], mark: Mark) -> bool:
    """ "Feeling rotten", "I feel off": how somebody is, where no bin feels so."""
    if norms[mark.start - 1 : mark.start] != ["feeling"]:
        return False
    before = [norm for norm in norms[max(0, mark.start - 4) : mark.start - 1] if norm not in _STILL]
    return not before or not before[-1][0].isalpha() or before[-1] in _PEOPLE


_STILL = words_in("am are was were been just still really so bit pretty proper right rather 'm 're")


def _is_of_droppings(norms: Sequence[str], mark: Mark) -> bool:
    """ "Pigeon droppings": of birds and beasts that come to no bin for what is in it."""
    return norms[mark.start] in _DROPPINGS and not _DROPPERS.isdisjoint(
        norms[max(0, mark.start - 1) : mark.start]
    )


_DROPPINGS = words_in("droppings dropping")
_DROPPERS = words_in(
    "pigeon pigeons bird birds gull gulls seagull seagulls crow crows parrot goose geese duck "
    "ducks swan swans hen hens chicken chickens sheep goat goats rabbit rabbits deer horse cow bat "
    "bats dog cat fox swallow swallows starling starlings"
)


def _is_of_tap(norms: Sequence[str], mark: Mark) -> bool:
    """ "Bin 2's tap leaks": the tap is worn, and the bin no wetter for it."""
    return norms[mark.start] in _LEAKING and not _TAPS.isdisjoint(
        norms[max(0, mark.start - 6) : mark.start]
    )


_LEAKING = words_in("leak leaks leaking leaked leaky")
_TAPS = words_in("tap spigot valve")


def _is_verdict(norms: Sequence[str], mark: Mark) -> bool:
    """ "Smells sour, bad or good?": the one word or the other is asked for, and no smell told."""
    if norms[mark.start] not in _BAD:
        return False
    near = norms[max(0, mark.start - 2) : mark.end + 2]
    return any(list(near[k : k + 2]) in _OR_GOOD for k in range(len(near) - 1))


_BAD = words_in("bad off rotten")
_OR_GOOD = [
    [a, b]
    for good in ("good", "fine", "ok", "okay", "normal")
    for a, b in (("or", good), (good, "or"))
]


def is_meant_well(norms: Sequence[str], seen: Seen) -> bool:
    """ "Stinky in the good way": strong, and not foul."""
    behind = norms[seen.end : seen.end + 5]
    return any(
        behind[k] in ("good", "nice") and behind[k + 1] in ("way", "sense")
        for k in range(len(behind) - 1)
    )
