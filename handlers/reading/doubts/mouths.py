"""Scraps that went to animals or to people, and not to a bin: "the hens had them, not bin 3"."""

from handlers.reading.message import Message
from handlers.reading.phrases import named_text
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_ONE = words_in(
    "hen duck pig dog goat worm chook horse pony rabbit parrot budgie cat gull bird cow calf "
    "hedgehog donkey hamster tortoise bunny fox badger squirrel lodger"
)
_MANY = words_in(
    "hens ducks pigs piglets dogs goats worms chooks chickens horses ponies rabbits cats gulls "
    "birds mice cows calves hedgehogs donkeys sheep geese swans bunnies neighbours neighbors"
)
_CUES = _ONE | _MANY
"""Words without one of which nothing is taken for eaten."""
_PETS = "horse|pony|dog|cat|parrot|budgie|hamster|donkey|tortoise|hens|ducks"


def _any_of(words: frozenset[str]) -> str:
    return f"(?:{'|'.join(sorted(words))})"


_WHOSE = r"(?:(?:the|my|our|his|her|their|your)(?: \w+ 's)?|\w+ 's)"
_MOUTH = rf"(?:{_WHOSE} (?:\w+ )?{_any_of(_ONE)}|(?:{_WHOSE} )?(?:\w+ )?{_any_of(_MANY)})\b"
"""An animal with its owner's word, or some without; "to Hen" may be a bin's name."""
_NO_DISH = r"(?! (?:skins?|bones?|scraps|carcass|feet|foot|food|heads?|curry|soup|stew|pie|fat)\b)"
_DENIED = Late(
    r"\b(?:not|none|nothing|instead of|rather than)(?: (?:to|for|in|into))?(?: the)? qbin\b|"
    r"\bsorry qbin\b|"
    r"\bqbin (?:went hungry|went without|missed out|didnt|would have|got (?:nothing|none|nowt))\b"
)
"""Said of a bin that was given nothing."""
_EATER = Late(
    rf"\bqbin(?: \( (?:the|my|our))? (?:{_PETS})\b{_NO_DISH}|"
    rf"\b(?:in|at) (?:the )?qbin for {_MOUTH}{_NO_DISH}|"
    rf"\bfull\b[^.]*\bso\b(?:(?!qbin).)*\b(?:fed|in|to|into) {_MOUTH}(?!.*qbin)|"
    rf"\bqbin : {_MOUTH} (?:got|had|ate)\b"
)
"""Another mouth beside a bin's name, which is its own, where it is fed, or that of a full bin."""
_FED = Late(
    rf"\b(?:to|for|fed|gave|given) {_MOUTH}{_NO_DISH}|\bbird (?:table|feeder|bath)s?\b|"
    rf"\b{_MOUTH} (?:got|had|have had|ate|finished|demolished|polished off|scoffed)\b"
)
_SHARED = words_in(
    "rest remainder half some other left without bin bucket tub caddy in into added put logged"
)


_TO_TABLE = words_in("me us myself two lunch dinner tea supper breakfast")
_SERVED = Late(
    r"\bfor (?:me|us|myself|two|lunch|dinner|tea|supper|breakfast)"
    r"(?: (?:please|too|tonight|today|then|tomorrow|now|[.!?☺]))*$"
)


def _is_served(message: Message) -> bool:
    """ "A plate of pasta for me": what is on a table goes into no bin."""
    if message.bins or message.named or message.has(_SHARED) or not message.has(_TO_TABLE):
        return False
    return _SERVED.search(" ".join(message.norms)) is not None


_FELT = words_in(
    "sleepy tired yawning awake asleep shaking shaky thirsty hungry freezing wired buzzing human "
    "jittery wrecked knackered groggy zombie drowsy"
)
_CUPS = Late(
    r"\b(?:coffees?|kopi|teas?|teh|chai|espressos?|water|milk|soup|broth|beers?|juice|kombucha)\b"
)


def _is_drunk(message: Message) -> bool:
    """ "Two mugs of coffee and still yawning": how somebody feels behind a drink."""
    if message.bins or message.named or not message.has(_FELT):
        return False
    return _CUPS.search(plain_text(message)) is not None


def is_eaten(message: Message) -> bool:
    """Whether the words say that another mouth had it, and no bin."""
    if _is_served(message) or _is_drunk(message) or _beside_bin(message) or _had_elsewhere(message):
        return True
    return message.has(_EATING) and _is_polished_off(message)


def _is_polished_off(message: Message) -> bool:
    """ "The lads scoffed 2 kg of toffee in the shed": a bin that "scoffed" them is fed."""
    text = named_text(message)
    if _WHO_ATE.match(text) is not None:
        return True
    return _POLISHED_OFF.search(text) is not None and _LEFT_OVER.search(text) is None


_EATING = words_in(
    "scoffed demolished wolfed devoured guzzled inhaled necked munched nibbled troughed through "
    "hoovered polished carried ate eaten nicked pinched swiped"
)
_POLISHED_OFF = Late(
    r"(?<!\bqbin)(?<!\bqbin has)(?<!\bqbin have) (?:scoffed|demolished|wolfed(?: down)?|devoured|"
    r"guzzled|inhaled|necked|munched(?: through)?|nibbled|troughed|(?:got|went|gone) through|"
    r"hoovered up|polished off|carried off|nicked|pinched|swiped|"
    r"(?<=ers )ate|(?<=ors )ate|(?<=kids )ate|(?<=twins )ate|(?<=guests )ate|(?<=gulls )ate|"
    r"(?<=squirrels )ate|(?<=foxes )ate|(?<=raccoons )ate|(?<=crows )ate) "
    r"(?:(?:the|all|about|nearly|over|almost|whole|another) )*"
    r"(?:[\d.]+ ?|an? |half an? |half |one |two |three |four |five |six |ten )+(?:kg|kgs|kilos?|g|"
    r"grams?|lbs?|pounds?|oz|ounces|l|litres?|liters?|pints?)\b"
)
_WHO_ATE = Late(
    r"(?:(?:so|ok|and|right|,) )*who (?:has |'s |the hell )?(?:ate|eaten|scoffed|nicked|pinched|"
    r"swiped|"
    r"polished off|finished)\b"
)
_LEFT_OVER = Late(
    r"\b(?:peel\w*|skins?|scraps?|leftovers?|rinds?|bones?|shells?|cores|crusts|husks|stones|pits|"
    r"stems|tops|rest|what(?: is|'s)? left|(?:to|into|feed|fed|for) (?:the |our )?qbin)\b|"
    r"\b(?:so|then|only|plus|before)\b.*\bqbin\b"
)
"""What is left of a meal, and goes into a bin."""


def _beside_bin(message: Message) -> bool:
    if not message.has(_CUES) or any(_CUES & set(b.lower().split()) for b in message.context.bins):
        return False
    text = plain_text(message)
    if _EATER.search(text):
        return True
    if _DENIED.search(text):
        return text.count("qbin") == 1
    return not (message.bins or message.named or message.has(_SHARED)) and bool(_FED.search(text))


_BEASTS = (
    r"(?:hens|chickens|chooks|ducks?|geese|goats?|pigs?|piglets|horses?|pony|ponies|cows?|calf|"
    r"sheep|lambs?|dogs?|cats?|parrot|rabbits?|gulls?|pigeons|birds|worms|mice|rats)"
)
_PEOPLE = r"(?:neighbours|neighbors|street|kids|children|lads|team|crew|guests|whole \w+)"
_OWNER = r"(?:the |his |her |my |our |their |your |some |\w+ 's )"
_AT_TABLE = words_in(
    "hens chickens chooks ducks duck geese goat goats pig pigs piglets horse horses pony ponies",
    "cow cows calf sheep lamb lambs dog dogs cat cats parrot rabbit rabbits gull gulls pigeons",
    "birds worms mice rats neighbours neighbors street kids children lads team crew guests whole",
    "lie vet doctor slimming ramadan weigh gone",
)
CUES = _CUES | _AT_TABLE | _TO_TABLE | _EATING | _FELT
_HAD = Late(
    rf"\b(?:fed|gave|feeding|giving) {_OWNER}?(?:{_BEASTS}|{_PEOPLE})\b|"
    rf"\b{_OWNER}?{_BEASTS} (?:got|had|ate|have had|finished)\b"
    r"(?! (?:finished|done|been|left|gnawed|chewed|stripped|picked|had its|with)\b)|"
    rf"\b(?:to|for) {_OWNER}{_BEASTS}\b|\( the {_BEASTS} \)|"
    rf"\bqbin (?:, the (?:old|wee|big) )?{_BEASTS}\b"
)
_BY_PERSON = Late(
    r"\b(?:qbin|qmember) (?:'s )?(?:ate|eaten|had|put|gained|lost) .{0,60}"
    r"\b(?:to lie down|the vet|the doctor|slimming|ramadan|weigh in|gone down)\b"
)
_INTO_BIN = Late(
    r"\b(?:in|into|inside) (?:the |our |to )?qbin\b(?! (?:would|instead))|"
    r"(?<!not )(?<!none )\b(?:to|for|within|feeding) (?:the |our )?qbin\b|"
    r"\bqbin (?:got|gets|has|had|took) |\b(?:the )?(?:rest|remainder|leavings)\b"
)


def _had_elsewhere(message: Message) -> bool:
    """ "Gave the hens 2 kg of peel, none for Rosie": what they had went into no bin."""
    if not message.has(_AT_TABLE) or "?" in message.said:
        return False
    text = named_text(message)
    if _BY_PERSON.search(text):
        return True
    return _HAD.search(text) is not None and _INTO_BIN.search(text) is None
