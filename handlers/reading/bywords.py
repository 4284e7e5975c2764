"""Records that hold whatever their score: turns of phrase that can tell nothing else of a bin."""

from typing import NamedTuple

from handlers.reading.amending import plain_text
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.places import GREEN
from handlers.reading.vocabulary import words_in


class _Byword(NamedTuple):
    kind: str
    cues: frozenset[str]
    """Words without one of which it is not told."""
    told: Late
    rivals: frozenset[str] = frozenset()
    """Records that the same words are taken for where they are all that is said."""
    of_bin: bool = True
    """Whether a bin must be named."""
    measured: str | None = None
    """The quantity that must be measured."""


_DAY = r"(?:,? ?(?:qday|already|now|just|finally|officially|well|all|both|at noon|at last) ?)*"
_IS = r"(?: ?\b(?:is|are|was|has|been|got|get|did|don|done|dusted|and)\b| ?'s\b| ?[,:])*"
_PLANTED = "|".join(
    sorted(
        (GREEN - words_in("fence shed wall arch trellis"))
        | words_in(
            "spinach lettuce lettuces cucumbers cucumber pepper peppers chillies chilli okra maize "
            "cassava yam yams plantain pawpaw apricots apricot peach peaches cherry rosemary sage "
            "herbs veg vegetables flowers lavender gooseberries blackberries currant currants "
            "asparagus artichokes beetroot carrots parsnips chard aubergines pumpkin marrows "
            "strawberry raspberry garlic cabbage callaloo sukuma moringa kalabasa sod turf "
        )
    )
)
_SEAL = Late(
    rf"\blids?{_DAY} (?:has )?(?:gone|went|goes)(?: back)?(?: down)? (?:on|onto) (?:the )?qbin\b"
    r"(?! (?:again|upside)|.{0,15}\b(?:wrong|crooked|wonky|again|squint))|"
    r"\blid (?:of|on) (?:the )?qbin\b.{0,25}\b(?:went|has gone|gone|is|came) (?:down|on)\b"
    r".{0,4} (?:for the last time|for good)\b|"
    rf"\bqbin{_IS}{_DAY} ?(?:[,:] )?(?:shut|closed|lidded|put up tight|shut up){_DAY}"
    r"(?: ,| and)* (?:(?:\w+ )?(?:taped|clamped|clipped)|with tape)\b|"
    rf"\bqbin{_IS}.{{0,20}}\b(?:run|ran|wrapped|wound|stuck|slapped|put|whacked) (?:the |some |my |"
    r"duct |gaffer |two \w+ of |a \w+ of )*tape (?:all )?(?:round|around|over|across|right round) "
    r"(?:her|him|it|the lid|the rim)\b|"
    r"\b(?:wrapped|wound|stuck|slapped|ran) (?:the |some |duct |gaffer )*tape (?:all )?(?:round|"
    r"around|over|across) (?:the )?(?:lid of )?(?:the )?qbin\b|"
    r"\bdid the (?:seal|sealing|lid|tape|taping)(?:-up| up)? (?:on|of|for) (?:the )?qbin\b|"
    rf"\bcover(?:ed)? (?:the )?qbin\b{_DAY}(?: ,|,| because| since| cos)* (?:it |she |he )?(?:is |"
    r"be )?(?:no (?:more )?(?:space|room|place)|full|don full|filled up)\b|"
    rf"\bqbin{_IS}{_DAY}:? ?(?:closed|shut|sealed)\b{_DAY} (?:and |, )?(?:it is |is )?not to be "
    r"(?:opened|touched|lifted)\b(?!.*\b(?:police|till|until)\b)|"
    rf"\bqbin\b{_DAY} ?[.,:] (?:put up|shut up|closed up|done up) tight\b"
)
_BURY = Late(
    r"\bqbin(?: 's)?(?: (?:has|have|is|was|been|got|been|all|now|finally|safely|qday|contents|"
    r"done|don))* (?:put to bed|laid to rest|tucked up|bedded|planted|sleeping|asleep|went down|"
    r"gone down|"
    r"went|gone|lifted and planted|forked in|spaded in|trenched)(?: down| in| out| deep)* "
    r"(?:in|under|among|amongst|beneath|with|below|between|beside|alongside) (?:the |our |my |"
    rf"those |them )?(?:\w+ ){{0,2}}(?:{_PLANTED})\b(?! (?:curry|soup|peelings|peels|stalks|"
    r"skins|leaves|tops|scraps|in qbin))|"
    r"\b(?:took|tipped|emptied|gave|fed|carted|hauled|carried) (?:the )?(?:whole|all|lot|"
    r"contents)? ?(?:of )?(?:the )?qbin\b.{0,75}\b(?:trench|trenches|in a hole|spade|spades|"
    r"shovel|"
    r"dug in)\b|"
    r"\bplanted (?:it|her|him|the lot|the whole lot|qbin) (?:in )?(?:under|among|amongst|"
    rf"beneath|between|alongside) (?:the |our |my )?(?:\w+ ){{0,2}}(?:{_PLANTED})\b|"
    rf"\bqbin (?:is )?(?:out|emptied|empty) [.,] (?:in |into |under |to )?(?:the )?(?:{_PLANTED}) "
    r"(?:rows?|beds?|patch|trench|bushes|canes)\b(?! next)|"
    rf"^(?:under|beneath|among|amongst|between) the (?:\w+ )?(?:{_PLANTED})\b.{{0,35}} ?[:,] "
    r"(?:the )?qbin , (?:all|the whole|the lot|every)\b"
)
_GIVES = (
    r"(?:parted with|part with|relinquished|gave up|given up|let go of|coughed up|yielded|"
    r"surrendered|ran off|spat out|wept|peed|pee 'd|dribbled|dripped out|handed over|bled|"
    r"released|squeezed out|leaked out|leaked)"
)
_DRAIN = Late(
    r"\bqbin (?:has |have |had |only |just |finally |both |kindly |would |could |'d |did |qday )*"
    rf"{_GIVES}\b|"
    r"\b(?:withdrew|withdrawn|decanted|extracted|drew off|drawn off|ran off|tapped off|let off|"
    r"let out|took off) .{0,25}\b(?:liquor|liquid|juice|tea|leachate|fluid|run-off|runnings)\b"
    r".{0,12}\b(?:from|off|out of|of) (?:the )?qbin\b|"
    r"\b(?:pulled|popped|took) the (?:plug|bung|stopper) (?:on|of|from|out of) (?:the )?qbin\b|"
    r"\bopened the (?:tap|spigot|spout|gripo) (?:for|of|on) (?:the )?qbin\b.{0,25}\b(?:cups?|ml|"
    r"pints?|litres?|jars?)\b"
)
_BRAN = r"(?:bran|starter|wheat bran|rice bran|dedak|pollard|inoculant)"
_WORKING = (
    r"(?:lying and working|working|fermenting|culturing|incubating|bedded down|bedded|under "
    r"way|brewing|"
    r"cooking|wetted|inoculated|bagged up|packed down|tamped down|pressed down)"
)
_BATCH = Late(
    rf"\b(?:kilos?|kg|kgs|litres?|liters?|l|lbs?|pounds?|grams?|g) of (?:\w+ )?{_BRAN} (?:is |are |"
    rf"now |all |has been |have been |been )*{_WORKING}\b"
)
_STOCK = Late(
    r"\b(?:bought|purchased|picked up|got)\b.{0,20}\b(?:of )?(?:ready-made|ready made|ready|"
    rf"finished|fermented|shop|pre-made|premade|made-up|made up|inoculated) {_BRAN}\b(?! "
    rf"(?:flakes|muffins|buds|cereal|bread))"
)
_OBSERVE = Late(
    r"\b(?:we|she|he) (?:is|are|'s) (?:at |on )?[\d.,]+ (?:degrees|celsius|c)\b(?: in| inside| "
    r"with) (?:the )?qbin\b|"
    r"\bqbin (?:is |'s |was )?(?:at |reads |reading |showing |shows )?(?:[\d.,]+) (?:degrees|"
    r"celsius|c|f|fahrenheit|deg|° c|° f|°)(?: c| f)? (?:inside|in the middle|in the core|in there|"
    r"under the lid|at the core)\b"
)
_BYWORDS = (
    _Byword(
        "seal",
        words_in("lid lids tape taped seal sealing cover covered closed shut tight clamped taping"),
        _SEAL,
        words_in("layer open observe done"),
    ),
    _Byword(
        "bury",
        words_in(
            "bed rest tucked bedded planted sleeping asleep gone went out emptied empty trench "
            "trenches spade spades shovel hole dug under beneath among amongst between forked"
        ),
        _BURY,
        words_in("layer seal open observe"),
    ),
    _Byword(
        "drain",
        words_in(
            "parted part relinquished gave given go coughed yielded surrendered ran spat wept peed "
            "dribbled dripped handed bled released squeezed leaked withdrew withdrawn decanted "
            "extracted drew drawn tapped let took plug bung stopper opened"
        ),
        _DRAIN,
        words_in("layer open"),
        measured="volume",
    ),
    _Byword(
        "batch",
        words_in("bran starter dedak pollard inoculant"),
        _BATCH,
        words_in("stock layer"),
        of_bin=False,
    ),
    _Byword(
        "stock",
        words_in("bran starter dedak pollard inoculant"),
        _STOCK,
        words_in("batch layer"),
        of_bin=False,
        measured="mass",
    ),
    _Byword(
        "observe",
        words_in("degrees celsius c f fahrenheit deg °"),
        _OBSERVE,
        words_in("layer"),
    ),
)
_CUES = frozenset[str]().union(*(each.cues for each in _BYWORDS))
_UNTOLD = words_in(
    "? not no never nobody noone none nowt wont will if when unless until shall should would "
    "could can cannot cant might may must tomorrow gonna going want wants wanna need needs "
    "please pls kindly who why how did does do says said told dream imagine hypothetically "
    "nearly almost again wish hope hoping let's lets pick anybody anyone spare"
)
"""Words beside which a deed may be asked, denied, wished or planned."""
_ALLOWED = {
    "seal": words_in("no not please kindly did until again if"),
    "bury": words_in("no never not if will going please kindly"),
    "drain": words_in("would could not no kindly please do"),
    "batch": words_in("kindly please no not"),
    "stock": words_in("kindly please said told says no not"),
    "observe": words_in("told said"),
}
"""Of those words, such as stand in a turn of phrase or beside it."""
LONGEST = 200
"""Letters of a message that may tell so; a longer one tells a story."""


def told_by_word(message: Message) -> tuple[str | None, frozenset[str]]:
    """The kind of record that a turn of phrase tells, and the kinds that it is not."""
    words = _CUES.intersection(message.norms)
    text = ""
    for each in _BYWORDS if words else ():
        if words.isdisjoint(each.cues) or (each.of_bin and not _names_bin(message)):
            continue
        if each.measured and all(a.quantity != each.measured for a in message.amounts):
            continue
        text = text or plain_text(message, days=True)
        if len(text) > LONGEST:
            return None, frozenset()
        found = each.told.search(text)
        if found and _is_told(text[: found.end()], text[found.end() :], each.kind):
            return each.kind, each.rivals
    return None, frozenset()


def _names_bin(message: Message) -> bool:
    return any(b.name and (b.plain or b.known) for b in message.bins)


def _is_told(upto: str, after: str, kind: str) -> bool:
    """Whether no word of the sentence up to its end takes the deed back."""
    start = max(upto.rfind(stop) for stop in (" . ", " ! ", " ? ")) + 1
    rest = after.split(" . ")[0].split(" ! ")[0]
    if kind == "drain" and _OTHER_LIQUID.search(f"{upto}{rest}"):
        return False
    said = set(f"{upto[start:]} {rest}".split())
    return said.isdisjoint(_UNTOLD - _ALLOWED[kind]) and "?" not in said


_OTHER_LIQUID = Late(
    r"\b(?:milk|oil|paint|petrol|diesel|beer|wine|cider|ale|rainwater|rain|coolant|varnish|soup|"
    r"blood|bleach|ghost|roof|ceiling|window|fridge|freezer|mower|pipe|boiler|radiator|cash|rent)\b"
)
"""What is no liquid of a bin, and what else may leak."""
