"""The craft's verbs said of other things: sealed envelopes, drained pints, a nose in a book."""

from typing import NamedTuple

from handlers.reading.amending import plain_text
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in


class _Else(NamedTuple):
    """What shows that a kind of deed was done to no bin."""

    cues: frozenset[str]
    """Words without one of which it is not looked for."""
    turns: Late
    itself: Late
    """Words that may tell the deed itself in the rest of the message."""


_WHOSE = r"(?:(?:the|a|an|his|her|my|our|their|your|all|poor|old|good|two|three|\w+ 's|qbin) )*"


def _else(verbs: str, things: str, beside: str, turns: str, cues: str, itself: str) -> _Else:
    """Things that the verbs are said of, words that may stand beside them, and turns of phrase.

    `cues` are the words of which one stands in each turn of phrase.
    """
    pattern = (
        rf"\b(?:{verbs}) {_WHOSE}(?:\w+ )?(?:{things.replace(' ', '|')})\b|"
        rf"\b(?:{verbs})\b.*\b(?:{beside.replace(' ', '|')})\b|"
        rf"\b(?:{beside.replace(' ', '|')})\b.*\b(?:{verbs})\b|{turns}"
    )
    return _Else(words_in(f"{things} {beside} {cues}"), Late(pattern), Late(itself))


_OF_ELSE = {
    "observe": _Else(
        words_in("heap pile midden tank oven aphids ankles campsite"),
        Late(
            r"\b(?:the|our|compost|muck|manure|dung) (?:heap|pile|midden)\b|\bfish tank\b|"
            r"\boven (?:is )?on\b|\baphids\b|\bankles?\b|\bcampsite\b"
        ),
        Late(r"\b(?:bin|bucket|lid|caddy)\b"),
    ),
    "seal": _else(
        "sealed(?: up| off)?",
        "will wills envelope envelopes letter letters card cards parcel parcels crack cracks gap "
        "gaps window windows wall walls floor floors worktop drive driveway patio deck grout "
        "tiles lips deal fate final match win title contract bargain chimney roof leak joint "
        "record door doors",
        "grouted caulk caulked mastic putty varnish varnished coats frost frames sanded insulated "
        "tiled tiles",
        r"\blips (?:are |is )?sealed\b|\bsealed off by\b(?: the)?(?: police)?(?: tape)?|"
        r"\b(?:closed|shut) for (?:the |a )?(?:\w+ )?(?:repairs?|concert|renovations?|"
        r"stocktaking|party|function|refurbishment|wedding|funeral|decorating|maintenance|filming)\b|"
        r"\b(?:shut|closed|sealed) qbin 's (?:birthday|party|mouth|eyes|account|shop)\b",
        "off repair repairs concert renovation renovations stocktaking function refurbishment "
        "wedding funeral decorating maintenance filming birthday party mouth eyes account shop",
        r"\b(?:seal|shut|clos|lid|tape)",
    ),
    "drain": _else(
        "drained(?: off)?|draining",
        "pasta potatoes spuds rice noodles chickpeas tuna pond pool wine beer whisky malt sherry "
        "brandy savings battery batteries ear ears knee knees bilge radiator radiators boiler "
        "mower engine liver abscess",
        "abscess knee cyst blister landlord landlady darts painted repainted doctor vet nurse "
        "surgeon urn heater radiators",
        r"\bdrained (?:my|his|her) (?:glass|pint|mug|coffee|beer)\b|"
        r"\bdrained [\w ]{1,12}\b(?:bottles?|cans?) of (?:malt|whisky|gin|rum|beer|wine)\b|"
        r"(?:\b\w+ (?:off |out )?)?\b[\d.]+ (?:litres?|liters?|l|ml|pints?|gallons?) of (?:oil|"
        r"petrol|diesel|kombucha|wine|cider|beer|milk|sap|comfrey|nettles?|syrup)\b|"
        r"\b(?:comfrey|nettles?|seaweed)(?: \w+)? (?:drawn|drained|strained|off)\b|"
        r"\b(?:syphoned|siphoned|racked|bottled) (?:off )?(?:the )?(?:wine|cider|beer|mead|gin)\b|"
        r"\b(?:gin|wine|cider|mead|ale|beer) is \d",
        "oil petrol diesel kombucha cider milk sap comfrey nettle nettles syrup seaweed mead gin "
        "ale glass pint mug coffee rum",
        r"\b(?:drain|drew|drawn|siphon|syphon|poured|tap\b)",
    ),
    "bury": _else(
        "buried",
        "uncle aunt auntie aunty grandpa grandad granny gran grandma father mother mum dad "
        "husband wife hamster goldfish budgie nose face head feet feelings quad car van treasure",
        "overtime paperwork turnout coffin crematorium mourners hymns",
        r"\bburied (?:under|in) (?:[\d.]+ \w+ of )?(?:work|emails?|debt|snow|laundry|marking|"
        r"homework|admin)\b|"
        r"\bburied in (?:the|a|his|her) (?:crossword|newspaper|book|phone|laptop|telly)\b|"
        r"\bburied (?:his|her|their|your) peas\b|\bburied (?:at sea|alive)\b|"
        r"\b(?:goldfish|hamster|budgie|gerbil|cat|dog|car|van) (?:is |was |'s |got |been )*"
        r"(?:buried|dug in)\b|"
        r"\b\d+ (?:\w+ ){0,2}(?:crowns|bulbs|leeks|seedlings|cloves|tubers|saplings)\b"
        r".*\b(?:into|in) the ground\b|\bdug (?:the|some) (?:compost|manure) in\b|"
        r"\bput in for (?:the|an?)\b",
        "crossword newspaper book phone laptop telly work email emails debt snow laundry marking "
        "homework admin peas sea alive gerbil cat dog crowns bulbs leeks seedlings cloves tubers "
        "saplings compost manure for",
        r"\b(?:bur(?:y|ied)|dug|went in|under)\b",
    ),
}
"""By kind of record."""
CUES = frozenset[str]().union(*(each.cues for each in _OF_ELSE.values()))


def is_of_else(kind: str, message: Message) -> bool:
    """Whether the deed of that kind was done to a thing that is no bin, and to nothing besides."""
    other = _OF_ELSE.get(kind)
    if other is None or not message.has(other.cues):
        return False
    text = plain_text(message)
    found = other.turns.search(text)
    if found is None:
        return False
    return other.itself.search(f"{text[: found.start()]} {text[found.end() :]}") is None
