"""Things and people that what is seen or smelt may be told of, and that are no bin.

Bins have the names of people, rooms and colours: "Mabel's gone green" may be a sea crossing.
"""

from handlers.reading.binwords import BIN_WORDS
from handlers.reading.message import Message
from handlers.reading.once import once
from handlers.reading.spans import indexes
from handlers.reading.vocabulary import words_in

_THINGS = words_in(
    "ferry boat cruise flight bill sting stung stings panto pantomime cards cheating "
    "toddler baths swimming bathroom tyre tyres tire tires bike bicycle motorbike football match "
    "balloon balloons firework fireworks rocket rockets bomb car cars van bus train "
    "freezer dishwasher radiator jumper jumpers sweater shirt dress jacket "
    "trousers socks shoes boots hat wig haircut dyed dye party themed pond river canal sea "
    "beach lawn wallpaper paint plaster plumber "
    "couch curtains mattress pillow towel towels laundry "
    "bulb telly tv guitar choir "
    "ankle ankles knee knees wrist elbow toe toes leg legs belly stomach tummy cheeks "
    "cheek lips gums throat rash hayfever pollen cough coughing sneezing flu asleep "
    "snores snoring laughed sunburn sunburnt blushed giggled jealous envy envious "
    "puppy kitten hamster pony horse budgie parrot goldfish tank aquarium aphids "
    "recipe delicious tasty yummy restaurant menu campsite "
    "vet vets algae exhaust sweeping kittens puppies groomer shampoo walkies paws barking barked "
    "whining vaccinated wormer fireside hearth mealybug mealybugs repot repotted petals blossom "
    "regatta rolled "
    "physio putty plasticine chippy mower "
    "hotel wedding funeral birthday scenery forecast"
)
_UNREAL = words_in("dream dreamed dreamt dreaming nightmare nightmares movie novel")
_OF_BIN = words_in(
    "lid lids rim tap spigot contents grid bran scraps leachate bokashi juice liquid bin bucket "
    "pail tub caddy layer layers ferment fermenting peel peels crusts drained fed opened drain"
)
_LIKENING = words_in("like as of than")
_LIKENED = 6
"""Words behind "like" in which a thing is only likened to."""


@once
def is_of_other_things(message: Message) -> bool:
    """Whether what is seen may be of a person or a thing: one is named, and nothing of a bin."""
    norms = message.norms
    if message.has(_UNREAL):
        return True
    if not message.has(_THINGS) or message.has(_OF_BIN):
        return False
    if any(message.has(BIN_WORDS, ref.start, ref.end) for ref in message.bins):
        return False
    held = set(indexes(message.bins, message.signs))
    for i, norm in enumerate(norms):
        if norm in _LIKENING:
            held |= set(range(i, i + _LIKENED))
    told = [s for s in message.sentences if any(s.start <= x.start < s.end for x in message.signs)]
    return any(
        norms[i] in _THINGS and i not in held
        for sentence in told
        for i in range(sentence.start, sentence.end)
    )
