"""Drinks, pickles and plant feeds in the making: "ginger beer fizzing in the shed"."""

from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in

_BREWS = (
    "elderflower kombucha kimchi sauerkraut kraut sourdough cider mead sloe sloes gin wine "
    "homebrew kefir beer nettle nettles comfrey seaweed cordial champagne chutney jam"
)
CUES = words_in(f"{_BREWS} salt")
"""Words without one of which nothing is taken for a brew."""
_MAKING = (
    r"(?:bubbling|fizzing|fizzy|steeping|brewing|fermenting|demijohn|carboy|crock|second ferment|"
    r"airlock|on the go|rising|went pop|popped|weight on top|press|potted|big jar)"
)
_BREW = Late(
    rf"\b(?:{_BREWS.replace(' ', '|')})\b.*\b{_MAKING}\b|"
    rf"\b{_MAKING}\b.*\b(?:{_BREWS.replace(' ', '|')})\b|"
    r"\bsalt\b.*\bper (?:kilo|kg|pound)\b.*\bpress\b"
)
_LIKENED = Late(rf"\blike (?:an? |old |some )?(?:{_BREWS.replace(' ', '|')})\b")
_OF_THE_BIN = words_in(
    "smell smells smelling smelled smelt whiff reeks reeking stinks old mouldy off nobody noone "
    "failed burnt tap stones skins tops bran juice liquor from out tipped binned slung dumped "
    "threw scraped added fed emptied leaves peel"
)
"""Words of scraps and of a bin's own signs, beside which a brew is but what it smells of."""


def is_brew(message: Message) -> bool:
    """Whether the words tell of a drink, a pickle or a feed in the making, and of no bin."""
    if not message.has(CUES) or message.has(_OF_THE_BIN):
        return False
    text = " ".join(message.norms)
    return _LIKENED.search(text) is None and _BREW.search(text) is not None
