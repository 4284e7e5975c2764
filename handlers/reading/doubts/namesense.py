"""A bin's name in its ordinary sense: a person who bears it, the room itself, a tank of fish."""

from collections.abc import Sequence

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.binwords import BIN_WORDS, COLOURS, BinRef
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_OUTINGS = (
    "nursery school playgroup creche dentist doctor doctors hospital swimming ballet football "
    "park party cinema zoo station airport bed"
)
_CHILD = "nappy nappies potty pram buggy homework pyjamas teething birthday bath cuddle tantrum"
_AILING = "cold cough flu rash temperature tummy"
_CALLING = "gave sent lent owes sold handed brought baked promised texted rang asked phoned"
_BELONGINGS = (
    "roses coat hair garden allotment husband wife house flat car knee knees hip hips back dress "
    "hat glasses cardigan wedding pension"
)
_PERSON_CUES = words_in(f"{_OUTINGS} {_CHILD} {_AILING} {_CALLING} {_BELONGINGS} clinic surgery")
_HERS = r"(?:her|his)"
_PERSON = Late(
    rf"\bqbin\b.{{0,80}}\b(?:for|on) {_HERS} (?:\w+ )?birthday\b|"
    rf"\bqbin (?:is |'s |was |has been )+(?:all )?(?:teething|full of (?:a |the )?(?:cold|flu))\b|"
    r"\bqbin (?:has|'s|had|has got|got|is down with|caught) (?:got )?(?:a|an|the) (?:\w+ )?"
    r"(?:cold|cough|flu|rash|temperature|tummy bug)\b|"
    rf"\bqbin\b.{{0,60}}\b(?:nappy|nappies|potty|pyjamas|{_HERS} (?:pram|buggy|homework|bath))\b|"
    r"\b(?:gave|give|giving|given|gives) (?:\w+ )?qbin (?:a|her|his) (?:\w+ )?(?:bath|cuddle)\b|"
    r"\b(?:take|takes|took|taking|bring|brought|drive|drove|drop|dropped|walk|walked|fetch|get|"
    r"collect|collected|pick|picked)(?: up| off)? qbin (?:up |off |over |back |home )*"
    rf"(?:to|from|at) (?:the |a |her |his )?(?:{_OUTINGS.replace(' ', '|')})\b(?! (?:bin|bucket))|"
    r"\bqbin (?:has |had |just )*(?:sent|lent|owes|sold|handed|brought|baked|promised|texted|rang|"
    r"asked|phoned) (?:me|us|him|her|them|you|everyone|everybody|the|a|an|\d)\b|"
    r"\bqbin gave (?:me|us|him|her|them|everyone) (?:[\d.]+|an?|half an?|two|three|some) ?"
    r"(?:kg|kilos?|g|grams?|lbs?|pounds?|bags?|boxes|box|jars?)\b|"
    r"\bqbin (?:is |was |'s )?(?:at|in) (?:the )?(?:hospital|clinic|surgery)\b|"
    rf"\bqbin (?:(?:has|had|lost|broke|hurt)\b.{{0,40}}|(?:is|'s|was)\b.{{0,40}}\bin) "
    rf"(?:her|his|that) (?:{_BELONGINGS.replace(' ', '|')})\b|"
    r"\bqbin (?:puts?|threw|dropped) .{1,40} (?:in|into|down) the (?:bath|loo|toilet|sink)\b"
)
"""What is done, had and suffered by people alone: a bin eats, smells and goes round as well."""


def _is_like_a_person(message: Message, ref: BinRef) -> bool:
    """Whether it is one of our bins, called by a name that is no room, colour, number or vessel."""
    words = set(message.norms[ref.start : ref.end])
    named = ref.known and not ref.place and ref.name is not None and ref.name.isalpha()
    return named and words.isdisjoint(BIN_WORDS | COLOURS)


def is_of_person(message: Message) -> bool:
    """ "Rosie got 3 tubs of ice cream for her birthday": told of one who bears a bin's name."""
    if not message.has(_PERSON_CUES):
        return False
    if not any(_is_like_a_person(message, ref) for ref in message.bins):
        return False
    return _PERSON.search(plain_text(message)) is not None


_PETS = words_in(
    "dog dogs cat cats kitten puppy pup budgie budgies parrot canary hamster gerbil rabbit bunny "
    "tortoise goldfish ferret pony horse goat hen cockerel duck pig pet lurcher terrier collie "
    "spaniel labrador greyhound"
)
_DIED = Late(
    r"\b(?:died|dies|dead|passed(?: away)?|put (?:down|to sleep)|vet|gone|good (?:boy|girl|dog)|"
    r"(?:buried|bury|burying) (?:him|her|them)|poor|old age|run over|aged|years old)\b"
)


def is_of_pet(message: Message) -> bool:
    """ "Our dog Blue died, buried under the lilac": a beast that bears a bin's name."""
    if not message.has(_PETS):
        return False
    norms = message.norms
    names = {tuple(name.casefold().split()) for name in message.context.bins}
    at = [(i, n) for i in range(len(norms)) for n in names if tuple(norms[i : i + len(n)]) == n]
    if len({name for _, name in at}) != 1:
        return False
    if any(_is_told_as_beast(norms[i + len(name) :]) for i, name in at):
        return True
    called = any(
        not _PETS.isdisjoint(norms[max(0, i - 1 - _is_named(norms, i)) : i]) for i, _ in at
    )
    return called and _DIED.search(plain_text(message)) is not None


def _is_named(norms: Sequence[str], i: int) -> bool:
    return norms[i - 1 : i] in (["called"], ["named"])


def _is_told_as_beast(behind: Sequence[str]) -> bool:
    """ "Blue the hamster", "Blue, our old hen, ...": said behind the name, between two stops."""
    if behind[:1] == ["the"] and not _PETS.isdisjoint(behind[1:2]):
        return True
    own = behind[:1] == [","] and not _WHOSE_PET.isdisjoint(behind[1:2])
    at = next((k for k in (2, 3) if not _PETS.isdisjoint(behind[k : k + 1])), None)
    return own and at is not None and not _STOPS.isdisjoint([*behind[at + 1 : at + 2], "."][:1])


_WHOSE_PET = words_in("our my her his")
_STOPS = words_in(", . ! ;") | {"\n"}


_WASTE = words_in(
    "scraps scrap peel peels peelings skins rinds cores leftovers crusts waste bones guts heads "
    "shells husks stale mouldy burnt burned spoiled spoilt rotten grounds ends tops "
    "trimmings bin bucket"
)
_ATE = Late(
    r"^(?:(?:so|and|our|little|omg|lol|well) )*qbin (?:just |has |'s )*(?:ate|eaten) "
    r"(?:\d|an?\b|half|some|all|"
    r"the|two|three|about|nearly|over|my|our)"
)


def is_eaten_by_namesake(message: Message) -> bool:
    """ "Rosie ate half a kilo of strawberries": a child, or the bin in jest; nothing says it."""
    if not message.has(EATING) or message.has(_WASTE):
        return False
    if not any(_is_like_a_person(message, ref) for ref in message.bins):
        return False
    return bool(message.items) and _ATE.search(plain_text(message)) is not None


EATING = words_in("ate eaten")
_ROOM_CUES = words_in("painted painting decorated redecorated left forgot found day gone")
_ROOM = Late(
    r"\b(?:painted|painting|decorated|redecorated) (?:the |our |my )?qbin\b|"
    r"\b(?:left|forgot) .{1,40} (?:out|lying|sitting|standing) (?:in|on|at) (?:the |our )?qbin\b|"
    r"\bfound .{1,40} in (?:the |our )?qbin\b(?! and (?:added|put|binned|chucked|in))|"
    r"\bin (?:the |our )?qbin , (?:\w+ )?(?:cake|baking|pancake|jam|pizza|bread|cooking) day\b|"
    r"\b(?:kids|lads|boys|girls|we|they|guests|children|everyone|qmember) (?:all )?had .{1,40} in "
    r"(?:the |our )?qbin ,? (?:and )?(?:the )?(?:whole lot|all|every \w+|lot)(?: is| are|'s)? "
    r"gone\b"
)
"""What is done to and in a room; a layer put in the bin is told in other words."""


_PAINTED = Late(
    r"^(?:(?:i|we|just|finally|have|has|qmember) )*(?:re)?painted (?:the |our |my )?(?:\w+ ){1,2}"
    rf"(?:{'|'.join(sorted(COLOURS))})\b"
)


def is_of_room(message: Message) -> bool:
    """ "Left a kilo of mince out in the kitchen": the room that gave a bin its name."""
    if not message.has(_ROOM_CUES):
        return False
    if _PAINTED.search(" ".join(message.norms)):
        return True
    if not any(ref.place for ref in message.bins):
        return False
    if any(message.has_in(BIN_WORDS, ref.start, ref.end) for ref in message.bins):
        return False
    return _ROOM.search(plain_text(message)) is not None


_TANKS = words_in("tank")
_LIQUIDS = words_in("fish petrol fuel oil diesel septic water gas propane cistern header coolant")
_FISH = Late(
    r"\b(?:fish|goldfish|guppies|tetras|koi) (?:(?:all|are|is|were|was|still|seem|look|has|have) "
    r")*(?:fine|ok|okay|alive|dead|died|dying|happy|swimming)\b|"
    r"\b(?:of|on|in|from) (?:the|my|our|his|her) (?:mower|car|van|bike|motorbike|tractor|boat|"
    r"strimmer|loo|toilet|generator|boiler)\b"
)


def is_of_tank(message: Message) -> bool:
    """ "Drained the fish tank", "the tank of the mower": a tank for what is no scraps."""
    if not message.has(_TANKS):
        return False
    tanks = [ref for ref in message.bins if message.has_in(_TANKS, ref.start, ref.end)]
    if len(tanks) < len([ref for ref in message.bins if ref.known]):
        return False
    norms = message.norms
    at = [i for i, norm in enumerate(norms) if norm in _TANKS]
    return _FISH.search(" ".join(norms)) is not None or all(_is_other_tank(norms, i) for i in at)


def _is_other_tank(norms: Sequence[str], i: int) -> bool:
    """ "Fish tank", "oil tank"; "2 kg of fish, tank bin" is ours."""
    near = "".join(norms[max(0, i - 4) : i])
    qualified = i > 0 and norms[i - 1] in _LIQUIDS and not any(ch.isdigit() for ch in near)
    return qualified and norms[i + 1 : i + 2] != ["bin"]


_COUNCIL_CUES = words_in("council council's councils wheelie kerbside municipal")
_COUNCIL = Late(
    r"\b(?:council(?:'s|s)?|wheelie|kerbside|municipal)(?: 's)? (?:qbin|(?:\w+ )?wheelie qbin)\b"
)


def is_of_council(message: Message) -> bool:
    """ "3 kg of grass in the council green bin": another bin of that colour."""
    if not message.has(_COUNCIL_CUES) or len([ref for ref in message.bins if ref.known]) > 1:
        return False
    return _COUNCIL.search(plain_text(message)) is not None


_DUMPS = "waste|rubbish|refuse|trash|garbage|dumpster|skip|landfill|tip|dump|wheelie|recycling"
_THROWN_CUES = words_in(_DUMPS.replace("|", " "))
_THROWN = Late(
    r"\b(?:emptied|tipped|dumped|chucked|threw|binned|put|cleared)(?: out)?"
    r"(?: the| our| my| whole)* qbin(?: out| all| straight)* (?:in|into|to|on|at) "
    r"(?:the |our |a |my )?"
    rf"(?:(?:council|communal|green|garden|food|general|brown|kerbside) )*(?:{_DUMPS})\b"
)
_AWAY = words_in("out away")
_THREW = Late(
    r"\b(?:threw|thrown|chucked|tossed|binned|chuck|throw)(?: \S+){0,8}? (?:out|away)\b(?! of)"
)
_INSIDE = words_in("in into inside fed added scraps")


def is_thrown_away(message: Message) -> bool:
    """ "Emptied the red bin into the green waste": what was in it is not in the ground."""
    if message.has(_AWAY) and not message.bins and not message.has(_INSIDE):
        return _THREW.search(" ".join(message.norms)) is not None  # "threw out 2 kg of old flour"
    return message.has(_THROWN_CUES) and _THROWN.search(plain_text(message)) is not None


_HUTCHES = (
    "rabbit rabbits hamster hamsters hen hens chicken chickens goat goats pig pigs horse horses "
    "cow cows dog dogs cat cats ferret ferrets pigeon pigeons"
)
_NEXT_DOOR = "neighbour neighbours neighbor neighbors"
_FITTINGS = (
    "fridge freezer drain drains toilet toilets loo sink carpet curtains sofa microwave oven "
    "kettle "
    "lift hallway stairwell shower bath mattress"
)
_BREWS = (
    "beer wine cider mead ale kombucha kimchi sauerkraut kraut sourdough kefir milk bait cheese"
)
_CAUGHT = Late(
    r"\b(?:cats?|dogs?|kitten|puppy|terrier|owl|fox) (?:\w+ )?(?:brought|caught|dragged|killed|"
    r"left|"
    r"chased|ate|dropped) (?:\w+ ){0,3}(?:mouse|mice|rats?|vole|bird)\b"
)
"""What a beast has brought home is no sign of a bin."""
_ELSEWHERE_CUES = words_in(
    f"{_HUTCHES} {_NEXT_DOOR} door kerb curb kerbside curbside pavement flies fly wasps "
    f"{_FITTINGS} {_BREWS} "
    "kitten puppy terrier owl fox"
)
_ELSEWHERE = Late(
    rf"\b(?:{_HUTCHES.replace(' ', '|')})(?: ?'s?)? qbin\b|"
    rf"\b(?:{_NEXT_DOOR.replace(' ', '|')}|next door)(?: ?'s?)? qbin\b|"
    r"\bqbin (?:is |out |bin )*(?:at|on|by) the (?:kerb|curb|kerbside|curbside|pavement)\b|"
    rf"\b(?:{_FITTINGS.replace(' ', '|')}) (?:smells?|stinks?|reeks?|pongs?|hums?|honks?) "
    r"(?:\w+ ){0,2}(?:in|at|of|on) (?:the )?qbin\b"
)
_FROM_ROOM = Late(
    r"\b(?:flies|fly|wasps) (?:from|out of|round|around|outside) (?:our|my) qbin\b|"
    rf"\bqbin (?:'s )?(?:{_FITTINGS.replace(' ', '|')})\b|"
    rf"\b(?:{_FITTINGS.replace(' ', '|')}|{_BREWS.replace(' ', '|')}) (?:in|at|of|on) (?:the "
    rf")?qbin\b"
)


def is_seen_elsewhere(message: Message) -> bool:
    """ "The rabbit shed stinks", "our green bin at the kerb smells": not our bin of that name."""
    if not message.has(_ELSEWHERE_CUES) or len([ref for ref in message.bins if ref.known]) != 1:
        return False
    text = plain_text(message)
    if _ELSEWHERE.search(text) is not None or _CAUGHT.search(text) is not None:
        return True
    room = any(ref.place and not ref.plain for ref in message.bins)
    return room and _FROM_ROOM.search(text) is not None


CUES = (
    _AWAY
    | _COUNCIL_CUES
    | _ELSEWHERE_CUES
    | _PERSON_CUES
    | _PETS
    | _ROOM_CUES
    | _TANKS
    | _THROWN_CUES
)
"""Words without one of which a bin's name is taken for the bin."""
