"""Drinks, pickles and plant feeds in the making: "ginger beer fizzing in the shed"."""

from handlers.reading.doubts.asidebins import OF_CRAFT
from handlers.reading.message import Message
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_BREWS = (
    "elderflower kombucha kimchi sauerkraut kraut sourdough cider mead sloe sloes gin wine "
    "homebrew kefir beer nettle nettles comfrey seaweed cordial champagne chutney jam"
)
_BATTERS = (
    "batter dough idli dosa injera appam pickle pickles gherkins cucumbers cabbage olives herring "
    "yoghurt yogurt curd kvass tepache tempeh miso kvas buttermilk"
)
CULTURES = words_in(
    "kimchi sauerkraut kraut kombucha koji kefir scoby brie camembert stilton cheddar cheese miso "
    "tempeh mead brine kvass tepache yoghurt yogurt sourdough bug vinegar natto salami"
)
CUES = words_in(f"{_BREWS} {_BATTERS} salt")
"""Words without one of which nothing is taken for a brew."""
_MAKING = (
    r"(?:bubbling|fizzing|fizzy|steeping|brewing|fermenting|demijohn|carboy|crock|second ferment|"
    r"airlock|on the go|rising|went pop|weight on top|press|potted|big jar|"
    r"popped(?! (?:\d|an? |half|some|the |my |our |about|two|three|another)))"
)
_BREW = Late(
    rf"\b(?:{_BREWS.replace(' ', '|')})\b.*\b{_MAKING}\b|"
    rf"\b{_MAKING}\b.*\b(?:{_BREWS.replace(' ', '|')})\b|"
    r"\bsalt\b.*\bper (?:kilo|kg|pound)\b.*\bpress\b"
)
_PRESERVED = Late(
    r"\b(?:barrels?|crocks?|casks?|vats?|jars?|tubs?) of (?:\w+ )?(?:sauerkraut|kraut|kimchi|"
    r"herring|"
    r"pickles?|olives|gherkins|cucumbers|cabbage|wine|cider)\b.*\b(?:salt|stone|weight|brine|"
    r"winter|"
    r"cellar)\b|"
    r"\b(?:cabbage|cucumbers?|gherkins|herring|olives|pickles?)\b.*\bin (?:a |the )?(?:barrels?|"
    r"crocks?|casks?|vats?|jars?)\b.*\b(?:salt|stone|weight|brine|winter)\b|"
    r"\b(?:batter|dough|injera|appam|tempeh|miso|buttermilk) (?:(?:has|is|was|went|had|all|in|the|"
    r"just|"
    r"nearly|completely) )*(?:overflow\w*|overflown|over|risen|rose|rising|proving|proved|"
    r"proofing|doubled|"
    r"bubbled|escaped|climbed|exploded|sour|fermented)\b|"
    r"\b(?:kimchi|sauerkraut|kraut|pickle|chutney|marmalade|jam) (?:day|making|weekend|season|"
    r"time)\b.*"
    r"\b(?:salted|salting|brine|brined|sugar|chopped|jars?)\b|"
    r"\b(?:bread|dough|loaves|batter) (?:is |are )?(?:proving|rising|proofing|resting)\b"
)
"""Food that is put up, and what is to be baked; said of by their own smells too."""
_THROWN_OUT = words_in(
    "went goes tipped binned slung dumped threw scraped added fed emptied bin bucket chucked "
    "lobbed "
    "mouldy failed dead old scraps skins peel peelings in-it bran tap drained"
)
_LIKENED = Late(rf"\blike (?:an? |old |some )?(?:{_BREWS.replace(' ', '|')})\b")
_OF_THE_BIN = words_in(
    "smell smells smelling smelled smelt whiff reeks reeking stinks old mouldy off nobody noone "
    "failed burnt tap stones skins tops bran juice liquor from out tipped binned slung dumped "
    "threw scraped added fed emptied leaves peel"
)
"""Words of scraps and of a bin's own signs, beside which a brew is but what it smells of."""


def is_of_culture(message: Message) -> bool:
    """ "Koji is fluffy white", "opened the kimchi, it hissed": what else ferments and grows."""
    if message.bins or message.bot or not message.has(CULTURES) or message.has(_OUT_OR_OURS):
        return False
    norms = message.norms
    return any(
        norm in CULTURES and _LIKE.isdisjoint(norms[max(0, i - 2) : i])
        for i, norm in enumerate(norms)
    )


_OUT_OR_OURS = (
    (_THROWN_OUT - words_in("bin bucket mouldy"))
    | OF_CRAFT
    | words_in("into put layer smell smells smelling whiff")
)
_LIKE = words_in("like as than")


def is_brew(message: Message) -> bool:
    """Whether the words tell of a drink, a pickle or a feed in the making, and of no bin."""
    if not message.has(CUES):
        return False
    text = " ".join(message.norms)
    if not message.has(_THROWN_OUT) and _PRESERVED.search(text):
        return True
    if message.has(_OF_THE_BIN):
        return False
    return _LIKENED.search(text) is None and _BREW.search(text) is not None
