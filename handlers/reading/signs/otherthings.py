"""Things and people that what is seen or smelt may be told of, and that are no bin.

Bins have the names of people, rooms and colours: "Mabel's gone green" may be a sea crossing.
"""

from collections.abc import Sequence
from itertools import pairwise

from handlers.reading.message import Message
from handlers.reading.words.binwords import BIN_WORDS, BinRef
from handlers.reading.words.once import once
from handlers.reading.words.spans import indexes
from handlers.reading.words.vocabulary import words_in

_THINGS = words_in(
    "ferry boat cruise flight bill sting stung stings panto pantomime cards cheating "
    "toddler baths swimming bathroom tyre tyres tire tires bike bicycle motorbike football match "
    "balloon balloons firework fireworks rocket rockets bomb car cars van bus train "
    "freezer dishwasher radiator jumper jumpers sweater shirt dress jacket "
    "trousers socks shoes boots hat beret scarf cardigan slippers "
    "wig haircut dyed dye party themed pond river canal sea "
    "beach lawn wallpaper paint plaster plumber "
    "couch curtains mattress pillow towel towels laundry "
    "bulb telly tv guitar choir "
    "ankle ankles knee knees wrist elbow toe toes leg legs belly stomach tummy cheeks "
    "cheek lips gums throat rash hayfever pollen cough coughing sneezing flu asleep "
    "snores snoring laughed sunburn sunburnt blushed giggled jealous envy envious "
    "puppy kitten hamster pony horse budgie parrot goldfish tank aquarium aphids "
    "puked vomited roadkill discharge effluent "
    "boards planks plank timber timbers joist joists joiner carpenter woodworm floorboards rafters "
    "recipe delicious tasty yummy restaurant menu campsite "
    "vet vets algae exhaust sweeping kittens puppies groomer shampoo walkies paws barking barked "
    "whining vaccinated wormer fireside hearth mealybug mealybugs repot repotted petals blossom "
    "regatta rolled "
    "physio putty plasticine chippy mower "
    "hotel wedding funeral birthday scenery forecast crop crops bale bales seedlings barley "
    "vineyard orchard"
)
_UNREAL = words_in("dream dreamed dreamt dreaming nightmare nightmares movie novel")
_OF_BIN = words_in(
    "lid lids rim tap spigot contents grid bran scraps leachate bokashi juice liquid bin bucket "
    "pail tub caddy layer layers ferment fermenting peel peels crusts drained fed opened drain"
)
_SICK = frozenset({"sick"})
_WAS_SICK = frozenset((was, "sick") for was in ("been", "was", "is", "got", "were"))
_BURST = words_in("exploded burst popped blew erupted boiled cracked smashed shattered")
_JARS = words_in(
    "jar jars bottle bottles flask demijohn keg crock kimchi sauerkraut kombucha beer beers pickle "
    "pickles wine cider mug teapot"
)


def _is_jar_burst(norms: list[str]) -> bool:
    """ "A jar of kimchi exploded in the pantry"."""
    return any(
        norm in _BURST
        and not _JARS.isdisjoint(norms[max(0, i - 4) : i])
        and "like" not in norms[max(0, i - 5) : i]
        for i, norm in enumerate(norms)
    )


_DENYING = words_in("not isnt wasnt aint")
_NO_MORE = words_in(". , ! ; ) ☺ this that for either so but and though i honest") | {"\n"}


def _is_not_the_bin(norms: list[str]) -> bool:
    """ "Something died in here and it's not the bin"."""
    return any(
        norm in _DENYING
        and norms[i + 1 : i + 2] in (["the"], ["our"], ["my"], ["any"])
        and not BIN_WORDS.isdisjoint(norms[i + 2 : i + 3])
        and _NO_MORE.issuperset(norms[i + 3 : i + 4])
        for i, norm in enumerate(norms)
    )


_HISSED = words_in("hiss hisses hissed hissing spat spitting")
_HISSERS = words_in(
    "cat cats kitten tomcat goose geese gander swan swans snake snakes possum possums opossum "
    "hedgehog hedgehogs gecko lizard badger raccoon ferret owl cockroach kettle kettles radiator "
    "radiators iron wok pan skillet urn boiler tyre tyres tire tires cooker hob pipe pipes valve "
    "machine stove"
)
_AT = words_in("in on at by near behind under outside inside")
_ARTICLES = words_in("the our my")


def _is_hissed_by_another(message: Message) -> bool:
    """ "There's a possum on the verandah and it hissed at me": a beast or a kettle hissed."""
    norms = message.norms
    for sentence in message.sentences:
        within = range(sentence.start, sentence.end)
        i = next((i for i in within if norms[i] in _HISSED), None)
        if i is None or "like" in norms[max(0, i - 1) : i + 4]:
            continue
        bins = [ref for ref in message.bins if ref.name and sentence.start <= ref.start < i]
        hisser = not _HISSERS.isdisjoint(norms[sentence.start : i])
        if hisser and all(_is_where(norms, ref) for ref in bins):
            return True
    return False


def _is_where(norms: Sequence[str], ref: BinRef) -> bool:
    """ "On the balcony": where something is, and not what it is said of."""
    at = ref.start - 1
    while at > 0 and norms[at] in _ARTICLES:
        at -= 1
    return at >= 0 and norms[at] in _AT


_LIKENING = words_in("like as of than")
_LIKENED = 6
"""Words behind "like" in which a thing is only likened to."""


@once
def is_of_other_things(message: Message) -> bool:
    """Whether what is seen may be of a person or a thing: one is named, and nothing of a bin."""
    norms = message.norms
    if message.has(_SICK) and any(pair in _WAS_SICK for pair in pairwise(norms)):
        return True
    if message.has(_BURST) and _is_jar_burst(norms):
        return True
    if message.has(_HISSED) and _is_hissed_by_another(message):
        return True
    if message.has(_UNREAL) or (message.has(_DENYING) and _is_not_the_bin(norms)):
        return True
    if not message.has(_THINGS) or message.has(_OF_BIN):
        return False
    if any(message.has_in(BIN_WORDS, ref.start, ref.end) for ref in message.bins):
        return False
    held = set(indexes(message.bins, message.signs))
    for i, norm in enumerate(norms):
        same = norm == "as" and not message.bins and "same" in norms[max(0, i - _LIKENED) : i]
        if norm in _LIKENING and not same:  # "the same fluff as my beret" tells of the beret
            held |= set(range(i, i + _LIKENED))
    told = [s for s in message.sentences if any(s.start <= x.start < s.end for x in message.signs)]
    return any(
        norms[i] in _THINGS and i not in held
        for sentence in told
        for i in range(sentence.start, sentence.end)
    )
