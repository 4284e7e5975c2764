"""What is asked in the same breath as a record: "it bulges again, any tips?", "4 kg, same scoops?".

Beside a record a few words ask enough, since the record says what they are about. They hold
whatever their score, and only where the record was found.
"""

from collections.abc import Iterator
from typing import NamedTuple

from handlers.reading.acts import Topic
from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.questions.briefly import POURED_ON
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


class _Beside(NamedTuple):
    topic: Topic
    records: frozenset[str]
    """The kinds of act, beside one of which it is asked so."""
    cues: frozenset[str]
    """Words without one of which it is not asked."""
    asked: Late
    marked: bool = False
    """It is asked only with a question mark."""


_LOST = (
    r"(?:not (?:sure|certain|clear)|unsure|no (?:clue|idea|notion)|lost|wondering|like to know|"
    r"love to know|glad to know|handy to know|good to know|want(?:s)? to know|be told|tell me|"
    r"somebody say|someone say|let me know|kindly (?:intimate|confirm|say)|doubt)"
)
_END = r"(?: (?:pls|please|plz|anyone|anybody|urgently|welcome|needed|appreciated|[^\w\s]))*$"

_HELP = Late(
    rf"\b(?:kindly|please|pls) (?:guide|advise|suggest|help){_END}|"
    rf"\b(?:advice|tips|ideas|thoughts|suggestions|wisdom|opinions|verdict|remedy|cure|fix|"
    rf"wise words){_END}|"
    r"\b(?:advice needed|got any (?:advice|tips|ideas)|grateful for any|welcome (?:any |some "
    r")?advice|value an opinion)\b|"
    r"\bwhat (?:to do|(?:is|'s) to be done|(?:can|do|should|must|shall|will|could) (?:i|we|"
    r"one) do)\b|\bwh(?:it|a|ah)\b.{1,12}\bd(?:o|ae|one)$|"
    r"\bhow (?:to|do (?:i|we|you)|does one|dyou|'d you|can (?:i|we)) (?:stop|shift|prevent|"
    r"keep|cure|fix|get rid)\b|"
    r"\bhow (?:ah|ar|lah|sia|eh|now)$|(?:^|, |[.!] )(?:oh )?help$|"
    r"\b(?:somebody|someone) (?:please )?(?:save|help) me\b|"
    r"\bat a loss$|\bnot sure what (?:i|we|one) (?:do|does|should|ought)\b|"
    r"\bgood (?:one|sign|thing) or (?:the |a )?bad\b|\bbad sign\b|"
    r"\b(?:is|that 's) (?:this |that |it )?(?:a fail|serious|dangerous)\b|"
    r"\bwhether it 's (?:serious|bad|safe|dangerous|normal)\b|"
    r"\bi killed it\b|, panic$|\bstress or no stress\b"
)
_WORRY = Late(
    r"\b(?:will|would) (?:it|that|this|they) (?:go (?:bad|off|mouldy|moldy|rotten)|bring|"
    r"draw|attract|spoil|ruin|stop the|stink)\b|"
    r"\bhow (?:to|do (?:i|we|you)|does one|'d you|can (?:i|we)) (?:stop|prevent|keep) (?:it|"
    r"them|that)\b|\bwhat keeps (?:it|them) (?:off|away)\b"
)
_WHEN_FERMENTED = Late(
    r"\b(?:when|how (?:soon|long|many days?))\b.{0,30}\b(?:use|used|using|open|opened|ready|"
    r"good|usable|done|wait|come out|comes out|dig|bury|buried|due|start)\b|"
    r"\bhow long must (?:i |we |it )?(?:wait|stand|ferment)\b|"
    r"\b(?:which|what) (?:date|day)(?: 's| is| will| can| may)?\b.{0,30}\b(?:open|ready|"
    r"done|due|use|out)\b|\b(?:what is |what 's )?the earliest (?:i|we|it|one|day|date)\b|"
    r"[.] earliest (?:i|we|it) (?:can|may)\b|"
    r"\b(?:the|of the|what) (?:date|day) (?:it|i|we) (?:is |may |can |will |'s )?(?:comes?|"
    r"becomes?|done|open|due|ready|be)\b|\b(?:digging-in|burial|opening|burying) (?:date|"
    r"day)\b"
)
_WHEN_DONE = Late(
    rf"\b{_LOST}\b.{{0,30}}\b(?:when|date|day)\b.{{0,30}}\b(?:buried|ripe|ready|done|due|"
    rf"completion|finished|over)\b|\bdate of completion\b|"
    r"\bclosing time for\b|\bis (?:it|she|he|qbin) (?:finished|cooked|done|ready|ripe)(?: "
    r"yet| or what)?$|\bdoes that mean (?:she|he|it) (?:'s|is) (?:done|ready|cooked)\b|"
    r"\bis it for the ground\b|\bis it time to (?:shut|close|seal|bury|dig)\b"
)
_DOSE = Late(
    r"\b(?:change|changes) the (?:scoops|bran|dose)\b|\bstill need\b.{0,12}\bscoops?\b|"
    r"\bsame (?:scoops|bran|dose) or\b|\b(?:scoops|bran) (?:or )?(?:different|the same)\b|"
    r"\bis the bran different\b|\bless bran (?:then )?or the same\b|"
    rf"\b{_LOST}\b.{{0,25}}\b(?:scoops|(?:amount|quantity|number) of (?:bran|scoops)|spoons|"
    rf"handfuls)\b|\bwhat bran (?:that|it|goes|does)\b|\bwhat that means in scoops\b|"
    r"\b(?:talk to me about|put me right on) (?:the )?bran\b|"
    r"\bwhat (?:amount|quantity) of bran\b|"
    r"\bwhat (?:is|'s) the dose per\b|\bhow many scoops? (?:to be|go)\b"
)
_SUMS = Late(
    r"\bwhat (?:am i|are we) on (?:now|so far)\b|\bwhat (?:does|'s|is) that (?:make|put|"
    r"leave) (?:me|us)\b|\bwhere does that leave (?:me|us)\b|\b(?:my|our) (?:score|tally)\b|"
    r"\b(?:me|us) at what for\b|\bwhat have we all got\b"
)
_FILL = Late(
    r"\bfull yet$|\bnear the brim (?:or|yet)\b|"
    r"\brunning (?:weight|figure|total)\b.{0,20}\b(?:that|it|"
    r"qbin)\b|\b(?:it|she|he) (?:is |'s )?up to now\b|\bwhat figure has it\b|"
    r"\b(?:does|will) that bring (?:qbin|it)\b|\bthat brings it to\b|"
    r"\bhow full does that make\b|\bwhat (?:kinds? of )?stuff went in\b|"
    r"\bhow much went in it\b"
)
_GOES_IN_TOO = Late(
    r"[.,?] (?:the )?(?:shells?|bones?|crusts?|skins?|peels?|stones?|heads?|box|rinds?|pips|"
    r"tails?|foil|leaves|stalks?|husks?|beaks) (?:too|as well|also|ok|okay|all right|alright|"
    r"inside or)(?: or (?:nah|no|not))?|\b(?:bones|head|skin|icing|crust) (?:is )?(?:ok|okay|"
    r"all right|n all right)$"
)
_UNSURE_OF = Late(
    r"\b(?:not (?:sure|certain)|wasnt sure|keep wondering|dont know)\b.{0,40}\b(?:counts? as|"
    r"allowed|permitted|(?:is|are) fine)\b|\btell me that 's not a problem\b"
)
_SO_MUCH = Late(
    r"(?:^|[ ,.?!])(?:(?:is|isnt|isn't|was|'s) (?:that|it|this) )?(?:(?:not|about|far|a bit|way) )*"
    r"(?:too (?:much|little)|a lot|normal|usual|so much)(?: (?:then|for (?:qbin|it|a bin)))?$|"
    r"(?:^|[ ,.?!])(?:is|isnt|isn't|was) (?:that|it|this) (?:much|enough|ok|okay|all right|alright|"
    r"fine)(?: then)?$"
)
"""Behind what was drained."""
_WATER = Late(r"\bhow much water (?:for|with|to|on|per|goes with) (?:\S+ )?\d")

_BESIDE = (
    _Beside(
        "trouble",
        words_in("observe"),
        words_in(
            "advise guide suggest help advice tips ideas thoughts suggestions wisdom opinion "
            "opinions verdict remedy cure fix do done stop shift prevent save loss sign fail bad "
            "serious dangerous panic killed stress words keep how"
        ),
        _HELP,
    ),
    _Beside(
        "trouble",
        words_in("layer"),
        words_in("will would how what keeps stop wondering worry worried"),
        _WORRY,
    ),
    _Beside(
        "due",
        words_in("batch seal"),
        words_in("when whens how which what date day earliest"),
        _WHEN_FERMENTED,
    ),
    _Beside(
        "due",
        words_in("layer observe drain bury"),
        words_in("when ripe date done ready cooked finished ground closing due shut bury shift"),
        _WHEN_DONE,
    ),
    _Beside(
        "dose",
        words_in("layer amend done batch"),
        words_in("scoops scoop bran spoons handfuls dose"),
        _DOSE,
    ),
    _Beside(
        "totals",
        words_in("layer seal"),
        words_in("what where score tally"),
        _SUMS,
    ),
    _Beside(
        "bin",
        words_in("layer seal drain amend"),
        words_in("full brim running up figure went bring"),
        _FILL,
    ),
    _Beside(
        "allowed",
        words_in("layer"),
        words_in("too well also allowed permitted counts ok fine right problem"),
        _GOES_IN_TOO,
        marked=True,
    ),
    _Beside(
        "allowed",
        words_in("layer"),
        words_in("sure certain wondering know tell"),
        _UNSURE_OF,
    ),
    _Beside(
        "dilution",
        words_in("drain"),
        words_in("put pour use give spray sprinkle tip feed water"),
        POURED_ON,
        marked=True,
    ),
    _Beside(
        "dilution",
        words_in("layer seal bury open batch observe"),
        words_in("water"),
        _WATER,
        marked=True,
    ),
)
_IN_ROOM = _Beside(
    "liquid",
    words_in("drain"),
    words_in("much little lot normal usual enough ok okay right alright fine"),
    _SO_MUCH,
    marked=True,
)
"""What only a room can be asked."""
CUES = frozenset[str]().union(*(each.cues for each in (*_BESIDE, _IN_ROOM)))
"""Words without one of which nothing is asked so."""
LONGEST = 320
"""Letters of a message that may ask so; a longer one tells a story."""


def asked_beside(message: Message, kinds: frozenset[str]) -> Iterator[Topic]:
    """What a message asks beside the acts of those kinds that were found in it."""
    words = message.said
    if any(kind.startswith("ask ") for kind in kinds):
        return
    marked = message.asked
    for each in (*_BESIDE, *((_IN_ROOM,) if message.context.in_room else ())):
        if kinds.isdisjoint(each.records) or words.isdisjoint(each.cues):
            continue
        if each.marked and not marked:
            continue
        text = plain_text(message)
        if len(text) <= LONGEST and each.asked.search(text):
            yield each.topic
