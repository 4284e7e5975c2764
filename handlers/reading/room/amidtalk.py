"""Questions amid the talk of others: only those that name what is asked of the bins are for us."""

from handlers.reading.acts import Ask, Topic
from handlers.reading.message import Message
from handlers.reading.room.neighbours import BOOKED, CRAFT
from handlers.reading.signs.seenalone import OF_SIGN
from handlers.reading.words.spans import indexes, unheld
from handlers.reading.words.vocabulary import words_in

_NAMED = (
    CRAFT
    | BOOKED
    | words_in(
        "pail pails caddy caddies tub tubs lid lids tap spigot peel juice tea due overdue mould "
        "mold mouldy moldy mildew fungus maggots larvae ferment ferments fermented fermenting "
        "fermentation culture inoculant molasses dilute diluted dilution trenches dig dug "
        "digging keeper keepers calendar scoop scoops"
    )
)
"""Words, one of which makes a question of whatever topic one of the bins."""
_NAMED_FOR: dict[Topic, frozenset[str]] = {
    "allowed": words_in(
        "in inside into allowed permitted permit accept accepted include included put add added go "
        "goes enter chuck throw toss chop ok okay alright leave count taking microbes compostable "
        "yes yea yay nay nah harm upset objection rule ruling acceptable admissible permissible "
        "forbidden problem bacteria bugs"
    ),
    "totals": words_in(
        "total totals tally altogether together kilos kilo kg kgs pounds lbs lb tonnes tons "
        "kilograms stones weight landfill waste saved collected diverted far put brought given we "
        "us our month year sum"
    ),
    "due": words_in(
        "next ground week weekend fortnight shut jobs job need needs doing plant sow empty emptied "
        "emptying anything ones reminders digest days burial ripe list shared"
    ),
    "custody": words_in("turn week rota roster next keeps wheel fortnight order after charge"),
    "help": words_in(
        "help command commands work works use begin start started beginner press say said tell "
        "told type typed temperature talk ask answer words messages understand explain robot write "
        "format functions instructions supported spreadsheet count correct fix mistake mistakes "
        "wrong undo change edit delete remove stop features"
    ),
    "bin": words_in("full inside level empty status room fit"),
    "trouble": words_in(
        "smell smells smelt smelling stink stinks stinker stinky white green black pink orange "
        "grey gray blue brown red fuzz fuzzy fluff fluffy hair hairs hairy web slime slimy wet dry "
        "water soupy watery cloudy bubble bubbles bubbling steam worms flies warm cold inside top"
    ),
    "dilution": words_in(
        "water watering ratio part parts can cans strong weak strength feed litres litre l gallon "
        "gallons pint ml liquid thin thinned mix 1:100 1:200 100 hundred"
    ),
}
"""Words that do so where it is taken for one of that topic."""


_RULED = words_in(
    "allowed permitted permit accept accepted acceptable admissible permissible forbidden ok okay "
    "alright count yes yea yay nay nah rule ruling compostable microbes bacteria put putting add "
    "added go goes enter inside"
)
"""Those of the words for `allowed` that ask though the sentence has not the form of a question."""


def is_of_the_bins(asked: Ask, message: Message) -> bool:
    """Whether a question names what it is about, so that it is for us amid others' talk."""
    if message.bot or asked.bin or asked.signs or asked.place or OF_SIGN in asked.rules:
        return True
    if any(ref.known or ref.plain for ref in message.bins):
        return True
    if asked.topic == "allowed":
        return _asks_what_goes_in(message)
    own = _NAMED_FOR.get(asked.topic)
    return own is None or message.has(own | _NAMED)


def _asks_what_goes_in(message: Message) -> bool:
    """Whether it asks so in its words: the food itself, be it compost, says nothing of it."""
    foods = {i for item in message.items for i in range(item.start, item.end)}
    words = {norm for i, norm in enumerate(message.norms) if i not in foods}
    if message.asked or any(c.sense == "ask" for c in message.clauses):
        own = _NAMED_FOR["allowed"]
        return any(item.scrap for item in message.items) or not words.isdisjoint(own | _NAMED)
    return not words.isdisjoint(_RULED | _NAMED)


def only_names_food(message: Message) -> bool:
    """ "And lemon?", "flour?": a food and no more, which may go on from a list as well."""
    return _BESIDE_FOOD.issuperset(unheld(message.norms, indexes(message.items)))


_BESIDE_FOOD = words_in("and or with some a the also maybe hm hmm oh , ? . !")
