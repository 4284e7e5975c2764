"""Amounts that are told like a layer's, of what went into no bin: body weight, catches, spills."""

from handlers.reading.amending import plain_text
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

_MASS = (
    r"(?:[\d.]+|an?|half an?|\w+) ?(?:kg|kilos?|kilograms?|g|grams?|lbs?|pounds?|stone|oz|ounces)"
)
_AMOUNT = (
    r"(?:[\d.]+|an?|half|one|two|three|four|five) ?(?:an? )?(?:kg|kilos?|g|grams?|lbs?|pounds?|oz|"
    r"ounces|litres?|liters?|l|ml|cups?|quarts?|gallons?)"
)
_DEED = (
    r"(?:chuck|put|add|tip|throw|drop|bung|sling|lob|dump|toss|empty|feed|scrape|shove|stick|bin|"
    r"layer|get|bring|take)"
)
_DOING = (
    r"(?:chucking|putting|adding|tipping|throwing|dropping|bunging|slinging|lobbing|dumping|"
    r"tossing|emptying|feeding|scraping|shoving|sticking|binning|getting|bringing|taking)"
)
_DONE = (
    r"(?:chucked|put|added|tipped|thrown|threw|dropped|bunged|slung|lobbed|dumped|tossed|emptied|"
    r"fed|scraped|binned)"
)
_AT_ROOM = r"(?: (?:in|at|on|by|near|off|from|round|outside|behind|over) (?:the |our )?qbin\b)?"
_ENDS = r"(?:(?! (?:but|so|then|instead|and|before|until|yet|because)\b)[^,.;:!?])*"
_TURNS: tuple[tuple[str, str], ...] = (
    (  # bodies, luggage and the gym
        "weighed weighs weigh weighing lost gained heavier lighter baby son daughter grandson "
        "granddaughter nephew niece lamb calf toddler puppy kitten rucksack "
        "backpack suitcase luggage added myself meself masel masell bench benched bench-pressed "
        "squatted squats deadlift deadlifted "
        "deadlifts kettlebell kettlebells dumbbell dumbbells barbell slimming midwife",
        r"\b(?:weighed|weighing|weighs|weigh) (?:myself |himself |herself )?in at\b"
        rf"{_ENDS}|"
        rf"\b(?:lost|gained|put on) {_MASS}\b{_ENDS}\b(?:since|slimming|diet|weight|gym|christmas|"
        rf"holidays?|this month|in (?:two|three|six|a) (?:weeks?|months?|fortnight)){_ENDS}|"
        rf"^{_MASS} (?:heavier|lighter) (?:than|since|this)\b{_ENDS}|"
        rf"\b(?:i|im|am|me|dog|cat|husband|wife|feel|felt|back|home) "
        rf"(?:(?:is|am|was|about) )*{_MASS} "
        rf"(?:heavier|lighter)\b{_ENDS}|"
        rf"\b(?:added|put) {_MASS}\b(?: of \w+)? (?:to|tae|on|onto|in|into) (?:my|me|mi|"
        rf"ma) ?(?:self|sel|"
        rf"sell|waist|waistline|belly|bum|hips|arse|tummy)\b{_ENDS}|"
        rf"\b(?:added|put) {_AMOUNT}\b(?: of \w+)? (?:to|tae|in|into) (?:myself|meself|masell?|"
        rf"mysel)\b"
        rf"{_ENDS}|"
        r"\b(?:baby|puppy|kitten|rucksack|backpack|suitcase|luggage|midwife|toddler|son|daughter|"
        r"grandson|granddaughter|nephew|niece|lamb|calf)"
        rf"(?: \w+){{0,4}} (?:is|was|weighs|weighed|came in at) (?:(?:now|only|about|over|nearly|"
        rf"a|at|already|up|to) ){{0,3}}{_MASS}\b{_ENDS}|"
        rf"\b(?:bench(?:ed|-pressed| press(?:ed)?)|squat(?:ted|s)?|deadlift(?:ed|s)?|kettlebells?|"
        rf"dumbbells?|barbell)\b{_ENDS}",
    ),
    (  # what was caught, shot, picked to eat
        "caught landed reeled hooked netted hauled foraged haul catch shot",
        rf"\b(?:caught|landed|reeled in|hooked|netted|hauled (?:in|up|out)|foraged|shot) "
        rf"(?:a |an |about |around |nearly |over |some )?(?:{_MASS}|\d+)\b"
        rf"(?: \w+){{0,4}}?{_AT_ROOM}|"
        rf"\b(?:haul|catch) (?:was|is|of|today|this morning|:)\b(?: \w+){{0,6}}?{_AT_ROOM}",
    ),
    (  # spilt in a room
        "spilled spilt spilling spill knocked dropped",
        rf"\b(?:spilled|spilt|spilling|knocked over)\b(?: [^,.;:!?]+?)?"
        r" (?:in|on|over|across|round) (?:the |our |my |his |her )?(?:qbin|floor|carpet|rug|stairs|"
        r"landing|worktop|table|sofa|car|lap|keyboard|pavement|path|road)\b(?: (?:floor|carpet|"
        r"stairs|"
        r"rug|tiles|table|worktop))?|"
        rf"\b(?:knocked|dropped) {_ENDS}\b(?:over|off|on|down|all over) (?:in |on )?"
        r"(?:(?:the|our|my) )?(?:qbin (?:floor|carpet|stairs|rug|tiles|table|worktop)|floor|carpet|"
        r"rug|stairs|worktop|foot|toe|toes)\b|"
        rf"\bknocked {_ENDS}\bover{_AT_ROOM}",
    ),
    (  # what was only meant, or supposed
        "hypothetically theoretically theory intention intentions meant intended supposed almost "
        "nearly close gets takes suppose supposing argument's argument",
        rf"\b(?:hypothetically|theoretically|in theory|(?:just )?suppos(?:e|ing)|for (?:the sake "
        rf"of "
        rf"argument|argument 's sake))\b[ ,.:—-]*{_ENDS}|"
        rf"\b(?:every|full|no|all the best|the best) intentions? (?:of|to) \w+{_ENDS}|"
        rf"\b(?:meant|intended|supposed) to (?:have )?(?:{_DEED}|{_DONE})\b{_ENDS}|"
        rf"\b(?:nearly|almost|very nearly) {_DONE}\b{_ENDS}|"
        rf"\bif (?:\S+ ){{0,6}}(?:gets?|takes?) (?:one|another|any|a) (?:single )?(?:more "
        rf")?(?:kilo|kg|gram|"
        rf"pound|lb|bag|peel|scrap|litre)\b{_ENDS}|"
        rf"\b(?:close|about) to {_DOING}\b{_ENDS}",
    ),
    (  # the bin of history
        "history oblivion memory shame life",
        r"\b(?:qbin|bin|dustbin|bucket|landfill|compost) of (?:my |our |the )?(?:history|oblivion|"
        r"memory|memories|shame|life|failed \w+|broken \w+|lost \w+|bad ideas)\b",
    ),
    (  # made in the kitchen, by its recipe
        "fold stir golden flour eggs butter cream onions carrots recipe recipes oven preheat "
        "simmer simmered whisk knead "
        "kneaded marinade bake baked roast "
        "roasted serves gas marmalade jam chutney batch tray",
        rf"\b(?:the |a |this |nan 's |my )?recipes? (?:is|was|wants?|says|calls|said|needs?)\b"
        rf"{_ENDS}|"
        rf"\b(?:preheat|simmer|whisk (?:in|the|until|up|together)|knead|stir in|fold in|gas mark|"
        rf"until golden|serves \w+|"
        rf"bake (?:for|at)|(?:oven|gas) at)\b{_ENDS}|"
        r"^(?!.*\bqbin\b).*\bfor (?:\d+|a dozen|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty|"
        r"a hundred)(?: people| of us| guests| mouths)? :"
        r"(?=.*\b(?:flour|eggs|butter|sugar|milk|cups?|cream|oil|onions|carrots)\b)|"
        rf"^(?!.*\bqbin\b).*\b(?:eggs?|flour|{_AMOUNT} (?:of )?(?:milk|butter|sugar|cream))"
        r"(?: \S+)? (?:, |and )+(?:\S+ ){0,3}(?:eggs|flour|sugar|baking powder)\b|"
        rf"\b(?:made|boiled|bottled|put up|potted|jarred) (?:{_MASS}|\d+ \w+) (?:of )?(?:\w+ )?"
        rf"(?:marmalade|jam|chutney|pickle|curd|jelly)\b{_AT_ROOM}",
    ),
    (  # the room, and not the bin
        "room building church place",
        r"\b(?:the )?(?:room|building|church|place) ,? ?not (?:the |a |our )?(?:qbin|bin|bucket)\b",
    ),
    (  # taken to other places
        "food bank foodbank church market recycling tip dump mum's nan's mums nans gran's charity "
        "work office school hospice shelter mum nan gran auntie",
        rf"\b(?:took|taken|carried|brought|dropped off|drove|sent|gave|donated|delivered|lugged|"
        rf"ran) "
        rf"{_ENDS}\b(?:to|round to|over to|down to|up to|at) (?:the |my |our |his |her |a "
        rf")?(?:food ?"
        rf"bank|church|market|recycling|tip|dump|charity shop|work|office|hospice|shelter|"
        rf"(?:mum|nan|gran|auntie|grandma|dad|sister|brother)(?: 's|s)?)\b{_ENDS}",
    ),
)
CUES = words_in(" ".join(cues for cues, _ in _TURNS))
"""Words without one of which nothing here is said."""
_PATTERNS = tuple((words_in(cues), Late(turns)) for cues, turns in _TURNS)
_MANY = words_in("recipe room history")
_OF_MANY = [cues for cues, _ in _PATTERNS if not cues.isdisjoint(_MANY)]
"""Those beside which more than one amount may stand."""
_PUT_IN = Late(
    r"\b(?:into|to|for|inside|feeding|fed) (?:(?:the|our|my|dear|old) )*qbin\b|"
    r"\bqbin(?: \w+)? (?:got|gets|had|ate|took|has|received|swallowed|:)|"
    r"\ball in (?:the |our )?qbin\b|[,.:(] ?(?:the )?qbin$|"
    r"\b(?:went|goes|gone|going|go) (?:straight |all )?(?:in|into|inside)\b|\bin (?:it|they) "
    r"went\b|"
    r"\b(?:binned|tipped|chucked|lobbed|slung|dumped|tossed|scraped|bunged|layered|swept)\b|"
    r"\b(?:scraps|peel|peels|peelings|skins|rinds|cores|leftovers|crusts|layer|guts|heads|bones)\b"
)
"""Words that may tell the layer itself in the rest of the message."""
_IN_BIN = Late(r"\b(?:in|inside) (?:(?:the|our|my) )*qbin\b|^qbin\b")
_MEASURED = Late(rf"\b{_AMOUNT}\b")
"""An amount besides; a recipe has many."""


def is_no_scraps(message: Message) -> bool:
    """Whether the amount is of what went into no bin, and nothing besides is told."""
    if not message.has(CUES):
        return False
    text = plain_text(message)
    in_bin = any(ref.plain for ref in message.bins)
    for cues, turns in _PATTERNS:
        found = turns.search(text) if message.has(cues) else None
        if found is None:
            continue
        rest = f"{text[: found.start()]} ; {text[found.end() :]}".strip()
        more = cues not in _OF_MANY and _MEASURED.search(rest)
        if not (more or _PUT_IN.search(rest) or (in_bin and _IN_BIN.search(rest))):
            return True
    return False


def is_bin_weighed(message: Message) -> bool:
    """ "Weighed the shed bin: 12 kg": what a bin weighs, all told, is no layer."""
    if "weighed" not in message.norms or len(message.measured()) != 1:
        return False
    return _BIN_WEIGHED.fullmatch(plain_text(message)) is not None


_BIN_WEIGHED = Late(
    r"(?:(?:i|we|just|have|so) )*weighed (?:(?:the|our|my) )?qbin(?: full| now| today)?"
    rf"(?: ?[:,=—-])? (?:(?:it|it's|'s|is|was|at|and|came|comes|to|in|now|about) )*{_AMOUNT}"
    r"(?: (?:now|today|full|in all|all told|with .*))?"
)
