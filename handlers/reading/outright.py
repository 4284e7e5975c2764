"""Questions that hold whatever their score: their words can ask about nothing but the craft."""

from typing import NamedTuple

from handlers.reading.acts import Drain, Topic
from handlers.reading.amending import plain_text, with_people
from handlers.reading.briefly import POURED_ON
from handlers.reading.late import Late
from handlers.reading.message import Message
from handlers.reading.vocabulary import words_in


class _Outright(NamedTuple):
    topic: Topic
    cues: frozenset[str]
    """Words without one of which it is not asked."""
    asked: Late


_BRAN = r"(?:bran|starter|inoculant|bokashi mix)"
_BATCH = Late(
    rf"\b(?:procedure|steps|method|recipe|instructions|proportions) (?:for|of|to make|to mix|"
    rf"to brew)\b.{{0,25}}\b"
    rf"(?:{_BRAN}|inoculat\w+)\b(?! (?:loaf|loaves|bread|muffins?|flakes))|"
    rf"\b(?:explain|show us|walk (?:me|us) through|teach us)\b.{{0,20}}\b(?:making|"
    rf"mixing)\b.{{0,15}}"
    rf"\b{_BRAN}\b|\bhow the {_BRAN} 's made\b|\btrick to (?:making|mixing) {_BRAN}\b|"
    rf"\b{_BRAN}\b.{{0,40}}\b(?:wet|damp|moist|drier|dry|dried|airtight|air)\b.{{0,40}}\b(?:mix|"
    r"mixing|brews|fermenting|ferments)\b|"
    rf"\b(?:must|does|should) the (?:finished|homemade) {_BRAN} (?:be|have|need)\b|"
    rf"\b{_BRAN}\b.{{0,25}}\b(?:instead of|in place of) (?:wheat|rice|culture|molasses)\b|"
    rf"\b(?:stand in for|instead of|in place of) (?:wheat )?bran\b.{{0,20}}\b(?:starter|making)\b|"
    r"\b(?:litres?|cups?|much|less|more) (?:of )?(?:water|molasses|treacle)\b.{0,30}\bbran\b|"
    r"\b(?:kilos?|kg|lb|pounds?) of bran (?:how much|how many litres of) (?:water|molasses)\b|"
    rf"\bold {_BRAN} in to make new\b|\bfor (?:making|mixing) (?:the |new )?{_BRAN}\b"
)
_DOSE = Late(
    rf"\b(?:more|less|extra|double|half)(?: the)?(?: usual)? (?:{_BRAN}|"
    rf"sprinkle)\b.{{0,12}}(?:\bin "
    r"(?:summer|winter|monsoon|hot|cold|the heat)|\bor (?:less|more)$|\bstill work\b)|"
    rf"\b(?:overdo|put too much|put too little|heavy handed with|"
    rf"stingy)\b.{{0,25}}\b{_BRAN}\b(?! left)|"
    r"\b(?:one|a|two|single) (?:scoop|fistful|handful|spoon)(?: of bran)? (?:per|for every|"
    r"for each|"
    rf"to (?:a|the|every)|a|each) (?:layer|inch|kilo|kg|fist)\b|"
    rf"\b(?:percent|percentage|dosage|dose)\b.{{0,30}}\b(?:of {_BRAN}|by weight|of the weight|per "
    rf"kilogram)\b|\b{_BRAN} (?:on every|on each|under the first) layer\b|"
    rf"\b(?:thin|light) (?:dusting|layer) of {_BRAN}\b|\bwhat 's that in (?:grams of )?{_BRAN}\b"
)
_DUE = Late(
    r"\b(?:tell me|remind me|remember|know|say) what (?:is|'s|are) due\b|"
    r"\b(?:anything|owt|what jobs are)\b.{0,15}\b(?:wanting doing|want(?:s)? doing|outstanding|"
    r"on the go|seeing to)\b.{0,30}\b(?:qbin|bins?|bin-wise|qday)\b|"
    r"\b(?:am i|are we) (?:meant to be|supposed to be|up for|rostered to|down to|due to)\b.{0,12}"
    r"\b(?:drain|draining|tip|seal|sealing|bury|burying)\b|\bshould i be draining\b|"
    r"\bdates? (?:of|for) (?:the )?qbin\b|\bwill (?:the )?qbin want (?:doing|draining|seeing to)\b|"
    r"\bqbin wants? (?:doing|draining|seeing to) (?:before|qday|this|while)\b|"
    r"\bwant(?:ing)? (?:doing|seeing to) with qbin\b|\bis (?:the )?qbin nearly (?:there|ready|"
    r"done|ripe)\b|"
    r"\bnearly qbin 's time\b|\bhow many (?:sleeps|days|nights) (?:till|until|before) (?:the )?"
    r"qbin\b|\bbin dates\b|\bprogramme for the bins\b|"
    r"\bthe earliest (?:we|i|you) (?:can|could|may) (?:empty|open|bury|drain|dig)\b|"
    r"\bdeadline (?:on|for) (?:the )?qbin\b|\bneed to touch (?:the )?qbin\b|"
    r"\b(?:which|what) date\b.{0,25}\bopen(?:ing)? (?:the )?qbin\b"
)
_STARTER = Late(
    rf"\bhow (?:many more|much longer|long|far)\b.{{0,25}}\b(?:will|does) (?:our|the) {_BRAN} (?:"
    rf"do|last|stretch|go)\b|\b{_BRAN} (?:count|check)$|\b(?:headcount|count) of the {_BRAN}\b"
)
_HOLE = r"(?:hole|trench|pit|ditch)"
_TRENCH = Late(
    rf"\b(?:line|mix)\b.{{0,25}}\b(?:the|a) {_HOLE}\b|\bas i fill the {_HOLE}\b|"
    rf"\bwhat (?:size|length|width|depth) (?:of )?(?:a )?(?:ditch|trench|hole|"
    rf"pit)\b.{{0,25}}\bq?bin\b|"
    r"\bhow (?:close|near) to\b.{0,20}\b(?:may|can|should) i (?:bury|dig)\b|"
    r"\bhow many (?:centimetres|inches|cm) of (?:earth|soil)\b|\bsoil cover\b|"
    rf"\bbefore i cover the {_HOLE}\b|\bdig it in (?:right )?(?:beside|next to)\b"
)
_BIN = Late(
    r"\bhow (?:chocka|chockers|packed|stuffed) is (?:the )?qbin\b|"
    r"^(?:bot |please |,)*(?:tell me about|give me the story (?:so far )?(?:of|on)|"
    r"story so far (?:of|"
    r"on)) (?:the )?qbin\b|\bis (?:the )?qbin (?:open or shut|shut or open|sealed or open)\b|"
    r"\bhas (?:the )?qbin (?:got )?(?:space|room) for (?:a|another|some|more)\b(?!.*\b(?:kids|"
    r"guests|"
    r"people|beds?)\b)|\bwhat 's gone in (?:the )?qbin\b|"
    r"\bwhat 's qbin had (?:in it )?(?:this|so far|since)\b|"
    r"\bwas there (?:any )?(?:meat|fish|dairy|bones?) in (?:the )?qbin\b|"
    r"\bwhat percentage of (?:the )?qbin\b"
)
_TOTALS = Late(
    r"\bwhich bin 's had the (?:most|least)\b|\bleaderboard (?:bot|please)\b|^leaderboard\b|"
    r"\bwho (?:has )?put in the most\b|"
    r"\bstats (?:for|of|on) (?:the )?qbin\b|\bcompare (?:the )?qbin and (?:the )?qbin\b|"
    r"\bfirst place for (?:kilos|pounds)\b|"
    r"\bclass totals\b|\bkilos yet in the bin\b|\bwinning on (?:kilos|kgs|pounds)\b"
)
_ALLOWED = Late(
    r"\b(?:is|are) [a-z ]{3,25} a (?:definite|strict|firm|absolute) no$|"
    r"\bnever put in a bin\b|\bdo those belong in there\b|"
    r"\b(?:past (?:its|their) best|gone off|mouldy)\b.{0,6} any objections?\b|"
    r"^[a-z ]{3,20} (?:: )?allowed or not$"
)
_DILUTION = Late(
    r"\b(?:ten|twenty|fifty|1?00?|\d+) to (?:one|1) or (?:a )?(?:\w+ )?(?:hundred|\d+|"
    r"\w+) to (?:one|"
    r"1)\b|\b(?:one|1) in \w+ or (?:one|1) in (?:a )?\w+\b|\bcapful or a cupful\b|"
    r"\b(?:run-off|runnings|bin juice|leachate)\b.{0,40}\b(?:neat or|or neat|whats the go|how weak|"
    r"thinned)\b|\b(?:strength|ratio|mix) for\b.{0,30}\b(?:of the )?(?:run-off|runnings|leachate)\b"
)
_CUSTODY = Late(
    r"^(?:i have forgotten the order . )?(?:and )?after (?:me|qmember)(?: ,)? who(?:$| is\b|"
    r" has\b| comes\b)|"
    r"\bwho (?:is |'s )?(?:comes|on|next) after me$|\bwhose (?:go|turn|week|stint) (?:is it )?"
    r"otherwise$|\bwhose stint starts\b|\bwho had it before (?:qmember|me)\b|"
    r"\bwho do i hand it (?:over )?to\b|\b(?:to whom|whom)\b.{0,12}\bpeels\b|\bpeels to whom\b|"
    r"\bhow does the turn-taking go\b|\bwhich person comes when\b|\bwho does that leave$"
)
_HELP = Late(
    r"\bwhat do i type (?:if|when|once|to|for a|$)|\bmagic (?:phrase|word)\b.{0,12}\blog\b|"
    r"\bhow (?:to|do i) correct\b.{0,20}"
    r"\b(?:typed|logged|wrote|entered)\b|\bway to take\b.{0,15}\bback\b.{0,10}\blogged\b"
)
_OUTRIGHT = (
    _Outright("batch", words_in("bran starter inoculant inoculating inoculated"), _BATCH),
    _Outright(
        "dose",
        words_in("bran starter scoop fistful handful sprinkle dosage dose percentage spoon"),
        _DOSE,
    ),
    _Outright(
        "due",
        words_in(
            "want wants wanting outstanding seeing meant supposed rostered drain draining tip date "
            "dates nearly sleeps days nights programme earliest deadline touch opening open due"
        ),
        _DUE,
    ),
    _Outright("starter", words_in("bran starter"), _STARTER),
    _Outright("trench", words_in("hole trench pit ditch soil earth bury dig"), _TRENCH),
    _Outright(
        "bin",
        words_in(
            "chocka chockers packed stuffed story tell shut space room gone had meat fish dairy "
            "bones percentage"
        ),
        _BIN,
    ),
    _Outright(
        "totals",
        words_in("most least leaderboard stats compare first totals kilos winning"),
        _TOTALS,
    ),
    _Outright(
        "allowed",
        words_in("definite strict firm absolute never belong objection objections allowed"),
        _ALLOWED,
    ),
    _Outright(
        "dilution",
        words_in("one 1 capful neat thinned strength ratio leachate runnings run-off juice"),
        _DILUTION,
    ),
    _Outright(
        "custody",
        words_in("after before hand whom peels turn-taking otherwise stint person leave comes"),
        _CUSTODY,
    ),
    _Outright("help", words_in("type magic correct way"), _HELP),
)
_CUES = frozenset[str]().union(*(each.cues for each in _OUTRIGHT))
LONGEST = 240
"""Letters of a message that may ask so; a longer one tells a story."""
OUTRIGHT = "asked in words that can ask about nothing else"


def asked_outright(message: Message) -> Topic | None:
    """The topic that a message can only ask about, if its words are such."""
    if isinstance(message.context.last, Drain) and POURED_ON.search(plain_text(message)):
        return "dilution" if any(sentence.asked for sentence in message.sentences) else None
    words = _CUES.intersection(message.norms)
    text = ""
    for each in _OUTRIGHT if words else ():
        if words.isdisjoint(each.cues):
            continue
        text = text or with_people(message, plain_text(message, days=True))
        if len(text) <= LONGEST and each.asked.search(text):
            return each.topic
    return None
