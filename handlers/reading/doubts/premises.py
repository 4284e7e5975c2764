"""The place that gave a bin its name: shut for a strike, torn up, with a supper or a well in it.

"The school closed early" is no sealing, and what was cooked for a party in the shed is no layer.
"""

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.binwords import BIN_WORDS
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_SHUT = words_in("closed shut closing")
_SHUT_FOR = Late(
    r"^(?!.*\b(?:lids?|bran|scraps|juice|leachate|taps?|taped?|airtight|bokashi|ferment\w*|brim|"
    r"labell?(?:ed)?|full)\b).*\bqbin"
    r"(?: (?:is|was|'s|has|been|got|all|again|now|qday|just|actually))* "
    r"(?:closed|shut|closing)\b(?: (?:up|down|off|again|at|by|noon|midday|\d\S*|qday|all|half|a|"
    r"the|rest|of|day|this|morning|afternoon))*(?: early\b| half day\b| ?[,;:(—-]* ?"
    r"(?:(?!(?:till|until|after|before|since)\b)\S+ ){0,3}?"
    r"(?:strikes?|striking|paint(?:ed|ing|ers)|decorat\w+|plumbers?|electricians?|builders?|"
    r"meetings?|bank holiday|half term|half day|repairs?|renovations?|inspection|elections?|"
    r"funeral|wedding|power cut|blackout|load shedding|no power|no water|training|exams?|"
    r"fumigation|pest control|burst|burglary|break-in|protest|marathon|works|"
    r"(?:machine|lift|boiler|heating|door|lock|toilets?) (?:is )?(?:broken|broke|out)|"
    r"(?:because of|due to|owing to|cause of|with) (?:all )?(?:the |a )?(?:\w+ )?(?:rain|rains|"
    r"storms?|floods?|flooding|snow|ice|heat|heatwave|wind|winds|gales?|cyclone|hurricane|monsoon|"
    r"smoke))\b)"
)
"""What shuts a room, a school or a depot, and no lid."""


_LOCKED_UP = Late(
    r"\b(?:closed|shut) (?:up )?(?:the )?qbin (?:up )?and locked "
    r"(?:up\b|the (?:\w+ )?(?:store|gates?|doors?|shop|office|classroom|kitchen|room|building)\b)"
)
_SHUT_ON = Late(r"^(?:the )?qbin (?:is|'s) (?:closed|shut) (?:on )?(?:every )?qday(?: and qday)*$")
""" "The hall is closed Monday": on which days it opens."""
_SHUT_TILL = Late(
    r"^(?!.*\b(?:lids?|bran|scraps|juice|leachate|taps?|taped?|airtight|bokashi|ferment\w*|brim|"
    r"labell?(?:ed)?|full|bury|burial|drain\w*)\b).*\bqbin (?:(?:is|was|'s|has|been|now|all) )*"
    r"(?:closed|shut) (?:till?|until|for|again|on|at|by|down|over)\b(?P<why>.*)$"
)
_OPENS_DAILY = words_in(
    "cafe café canteen cafeteria restaurant bakery bistro tearoom pub bar shop store kiosk stall "
    "school nursery kindergarten college library clinic surgery museum gallery theatre gym pool "
    "salon barber chapel church mosque temple synagogue gurdwara office depot studio market"
)
"""What a place is called that keeps hours of its own."""
_WHY_SHUT = Late(
    r"[,;.:(—-] ?(?:(?:and|so|as|cos|because) )?(?:they|he|she|the (?:guy|man|woman|owners?|staff|"
    r"landlord|caretaker|teacher|sign)|teacher|owners?|staff|sign|family|holidays?|wedding|funeral|"
    r"leave|illness|sick)\b|\b(?:further notice|(?:family|personal|health) reasons|last (?:year|"
    r"month|spring|summer|autumn|winter)|for good|the season)\b|\bsays the \w+$"
)


def is_premises_shut(message: Message) -> bool:
    """ "Depot closed today, strike", "school closed early": the place, and no bin was sealed."""
    if not message.has(_SHUT) or _says_bin(message):
        return False
    text = plain_text(message, days=True)
    if any(shut.search(text) is not None for shut in (_SHUT_FOR, _SHUT_ON, _LOCKED_UP)):
        return True
    till = _SHUT_TILL.search(text)
    if till is None:
        return False
    named = {norm for ref in message.bins for norm in message.norms[ref.start : ref.end]}
    return not _OPENS_DAILY.isdisjoint(named) or _WHY_SHUT.search(till["why"]) is not None


def _says_bin(message: Message) -> bool:
    """Whether a vessel is spoken of: "the school bin", "bin 3", "the bucket in the yard"."""
    return message.has(BIN_WORDS)


_TORN = words_in("dug torn ripped")
_TORN_UP = Late(
    r"\b(?:is|are|'s|was|were|be|been|being|got|getting|all|half) (?:all |still |half |being |"
    r"just )*(?:dug|torn|ripped) up\b"
)
_BURIED = Late(r"\b(?:bur(?:y|ied|ying)|dug in|trench\w*|in(?:to)? the (?:ground|soil|earth))\b")


def is_torn_up(message: Message) -> bool:
    """ "The courtyard is all dug up again": holes that somebody made, and nothing laid in them."""
    if not message.has(_TORN):
        return False
    text = plain_text(message)
    return _TORN_UP.search(text) is not None and _BURIED.search(text) is None


_FEASTS = (
    r"(?:(?:film|movie|quiz|games?|bingo|curry|soup|music|open mic|poetry|book|craft|pizza|pudding|"
    r"dance|karaoke) (?:night|evening|afternoon|club|lunch|supper)|coffee mornings?|"
    r"(?:cream |afternoon )teas?|party|parties|supper|lunch|dinner|breakfast|brunch|picnic|"
    r"potluck|barbecue|bbq|concert|recital|rehearsal|ceilidh|social|gathering|celebration|"
    r"reception|"
    r"wake|christening|workshop|screening|fete|fair|open day|open house|get-together|"
    r"jumble sale|bake sale|cake sale|bingo|karaoke|meeting|agm|talk|exhibition)"
)
_FEAST_CUES = words_in(
    "night evening afternoon club mornings morning tea teas party parties supper lunch dinner "
    "breakfast brunch picnic potluck barbecue bbq concert recital rehearsal ceilidh social "
    "gathering celebration reception wake christening workshop screening fete fair open "
    "get-together sale bingo karaoke meeting agm talk exhibition"
)
_HELD = Late(
    rf"^(?:(?:the|our|a|another|don ?'?t forget|dont forget|reminder|next|big|annual|community|"
    rf"birthday|leaving|farewell|street|summer|winter|spring|autumn|christmas|easter|:|,) )*"
    rf"(?:\w+ )?{_FEASTS}(?: (?:is|will be|was))? (?:in|at|on) (?:the |our )?qbin "
    r"(?:(?:on|this|next|from|is|,) )*(?:qday|at|from|\d)\b"
)
_LEFT = Late(
    r"\b(?:leftovers?|left|scraps?|waste|went|uneaten|stale|peel\w*|skins?|crusts?|bones?|shells?|"
    r"rinds?|put|added|add|tipped|chucked|binned|scraped|in it|kg|kilos?)\b"
)


def is_feast_held(message: Message) -> bool:
    """ "Supper in the courtyard on Friday, soup by Ines": what will be eaten there, or was."""
    if not message.has(_FEAST_CUES) or message.measured() or _says_bin(message):
        return False
    text = plain_text(message, days=True)
    return _HELD.search(text) is not None and _LEFT.search(text) is None


_DONE_TO = words_in("drained emptied sealed shut closed buried")
_THING_THERE = Late(
    r"\b(?:the|an?|our|that|their) (?:\w+ )?(?:wells?|ponds?|pools?|fountains?|boilers?|cisterns?|"
    r"tanks?|gutters?|drains?|sewers?|septic|toilets?|loos?|sinks?|urns?|geysers?|radiators?|"
    r"fridges?|freezers?|pipes?|cables?|gates?|doors?|windows?|skylights?|roofs?|manholes?|wires?|"
    r"ditch(?:es)?|pits?|aquarium|bath|butts?|machine) (?:\w+ )?(?:in|at|on|by|behind|outside|near|"
    r"under|inside|beside|of) (?:the |our )?qbin "
    r"(?:(?:is|are|was|were|'s|has|have|had|been|got|being|all|now|finally|just|again|still|"
    r"properly) )*(?:drained|emptied|sealed|shut|closed|buried)\b"
)


def is_thing_there(message: Message) -> bool:
    """ "The well at the school was drained": what stands at a place, and not its bin."""
    if not message.has(_DONE_TO):
        return False
    return _THING_THERE.search(plain_text(message)) is not None


_LEAKY = words_in(
    "drip drips dripping dripped leak leaks leaking leaked overflowed overflowing burst"
)
_HOUSE = (
    r"(?:(?:sink|basin|bath|shower|toilet|loo|cistern|roof|gutter|ceiling|skylight|window|radiator|"
    r"boiler|geyser|pipe|hose|hosepipe|fridge|freezer|dishwasher|dehumidifier|aircon|washer|"
    r"(?:washing|coffee|ice) machine|water (?:butt|tank|heater|meter)|downpipe|drainpipe|"
    r"(?:outside|garden|kitchen|bath|bathroom|mains|standpipe) tap)s?|"
    r"(?:tap|standpipe|spigot)s? (?:by|beside|near|outside|behind|opposite|next to|across from|at|"
    r"round) (?:the |our )?qbin)"
)
_HOUSE_LEAKS = Late(
    rf"\b{_HOUSE}\b(?: \S+){{0,6}}? (?:drips?|dripp(?:ing|ed)|leak(?:s|ing|ed)?|overflow(?:ed|ing)|"
    r"burst)\b(?!.*\b(?:drain(?:ed|ing)?|juice|liquid|liquor|leachate|bins?|scraps|bran)\b)"
)


def is_house_leaking(message: Message) -> bool:
    """ "The sink by the shed drips, emptied two litres from under it": water of the house."""
    if not message.has(_LEAKY) or sum(ref.name is not None for ref in message.bins) > 1:
        return False
    return _HOUSE_LEAKS.search(plain_text(message)) is not None


_PLUMBING = words_in("isolator isolators stopcock stopcocks ballcock washer washers")
_OF_PLUMBING = Late(
    r"\b(?:isolators?|stopcocks?|ballcock)\b|"
    r"\b(?:taps?|sinks?|pipes?|basin) (?:at|in) (?:the )?qbin\b.{0,40}\bwashers?\b|"
    r"\bwashers?\b.{0,20}\b(?:taps?|sinks?|pipes?|basin) (?:at|in) (?:the )?qbin\b"
)


def is_plumbing(message: Message) -> bool:
    """ "The stopcock by the shed was stuck, drained two litres": a house's tap is mended."""
    if not message.has(_PLUMBING) or message.liquid():
        return False
    return _OF_PLUMBING.search(plain_text(message)) is not None


CUES = _SHUT | _TORN | _FEAST_CUES | _DONE_TO | _LEAKY | _PLUMBING
"""Words without one of which it is the bin."""
