"""The turns of phrase that can tell nothing else of a bin, by the record they tell: a table for
`bywords`.
"""

from typing import NamedTuple

from handlers.reading.deeds.buried import THE_REST
from handlers.reading.deeds.placewords import GREEN
from handlers.reading.words.vocabulary import words_in
from handlers.reading.words.wording import Patterns, patterns


class Byword(NamedTuple):
    """Turns of phrase that tell one kind of record, and what must stand beside them."""

    kind: str
    cues: frozenset[str]
    """Words without one of which it is not told."""
    told: Patterns
    rivals: frozenset[str] = frozenset()
    """Records that the same words are taken for where they are all that is said."""
    of_bin: bool = True
    """Whether a bin must be named."""
    measured: str | None = None
    """The quantity that must be measured."""
    beside: frozenset[str] = frozenset()
    """Further words of which one must stand there too."""
    of_scraps: bool = False
    """Whether an amount of scraps must be named."""
    in_room: bool = False
    """Whether it is told only in a room, where the bins are known."""
    in_talk: bool = False
    """Whether it is told only while the room talks of its bins."""


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


_SEAL = patterns(
    # "Lids gone on bin 3"
    rf"\blids?{_DAY} (?:has )?(?:gone|went|goes)(?: back)?(?: down)? (?:on|onto) (?:the )?qbin\b"
    r"(?! (?:again|upside|roof|key|toolbox|paint)|.{0,15}\b(?:wrong|crooked|wonky|again|squint))",
    # "The lid of bin 3 came down for the last time"
    r"\blid (?:of|on) (?:the )?qbin\b.{0,25}\b(?:went|has gone|gone|is|came) (?:down|on)\b"
    r".{0,4} (?:for the last time|for good)\b",
    # "Bin 3 is shut and taped"
    rf"\bqbin{_IS}{_DAY} ?(?:[,:] )?(?:shut|closed|lidded|put up tight|shut up){_DAY}"
    r"(?: ,| and)* (?:\w+ )?(?:taped|clamped|clipped)\b",
    # "Bin 3's full, wound tape around the rim"
    rf"\bqbin{_IS}.{{0,20}}\b(?:run|ran|wrapped|wound|stuck|slapped|put|whacked) (?:the |some |my |"
    r"duct |gaffer |two \w+ of |a \w+ of )*tape (?:all )?(?:round|around|over|across|right round) "
    r"(?:her|him|it|the lid|the rim)\b",
    # "Ran duct tape round bin 3"
    r"\b(?:wrapped|wound|stuck|slapped|ran) (?:the |some |duct |gaffer )*tape (?:all )?(?:round|"
    r"around|over|across) (?:the )?(?:lid of )?(?:the )?qbin\b(?! (?:roof|door|window|pipe|cable))",
    # "Did the taping up on bin 3"
    r"\bdid the (?:seal|sealing|lid|tape|taping)(?:-up| up)? (?:on|of|for) (?:the )?qbin\b"
    r"(?! (?:roof|door|window|windows|floor|pipe|envelopes?))",
    # "Covered bin 3, it is full"
    rf"\bcover(?:ed)? (?:the )?qbin\b{_DAY}(?: ,|,| because| since| cos)* (?:it |she |he )?(?:is |"
    r"be )?(?:no (?:more )?(?:space|room|place)|full|don full|filled up)\b(?! (?:of|for)\b)",
    # "Bin 3 is closed now and not to be opened"
    rf"\bqbin{_IS}{_DAY}:? ?(?:closed|shut|sealed)\b{_DAY} (?:and |, )?(?:it is |is )?not to be "
    r"(?:opened|touched|lifted)\b(?!.*\b(?:police|till|until)\b)",
    # "Bin 3's done and dusted, lid on tight"
    r"\bqbin\b(?: ?(?:is|are|'s|was|has|been|got|all|now|just|qday|,|:|-))* ?(?:done|full|finished|"
    r"filled|complete|completed|packed|chocka|chockers|chock|topped|rammed|brimming)"
    r"(?: ?(?:is|'s|n|&|and|so|up|off|out|dusted|finished|now|to|the|brim|top|both|qday|we|i|"
    r"sealed|full|,|:|-|\.))* "
    r"(?:(?:the|her|his|its) )?lids? (?:(?:is|'s|are|now|gone|went|firmly) )*(?:on|down|shut)"
    r"(?: nice and| good and| all| an)? (?:tight|tightly|firm|firmly|snug|snugly|hard|for good|"
    r"properly)\b(?! on (?!(?:the )?qbin))",
    # "Bin 3's away to ferment now"
    r"\bqbin (?:(?:is|'s|has|have|now|all|gone|been|officially|finally|just) )*(?:off|gone|put "
    r"away|"
    r"left|set aside|tucked up|tucked away|away|down|closed up|shut up) (?:now )?(?:to|for) "
    r"(?:(?:its|"
    r"her|his|the) )?(?:ferment|fermenting|fermentation|long ferment)\b",
    # "Bin 3 zipped up for its two weeks"
    r"\bqbin (?:(?:is|'s|has|have|now|all|been|got|officially|finally|just) )*(?:zipped up|"
    r"battened "
    r"down|buttoned up|strapped down|screwed down|bunged up|locked up|locked down|corked|plugged "
    r"up|"
    r"lidded|clamped down|latched) (?:for|till|until) (?:(?:its|her|his|the|a) )?(?:two weeks|"
    r"2 weeks|fortnight|ferment\w*|fourteen days|14 days|sleep|rest|long sleep)\b",
    # "Put the board and the brick on bin 3, it's finished"
    r"\bput (?:the |a |its )?(?:board|brick|stone|weight|rock|plank|lid)(?: and (?:the |a |its )?"
    r"(?:\w+))? (?:back )?on (?:top of )?(?:the )?qbin\b.{0,20}\b(?:finished|full|complete|no more|"
    r"for good)\b",
    # "Bin 3, done up tight"
    rf"\bqbin\b{_DAY} ?[.,:] (?:put up|shut up|closed up|done up) tight\b",
)
_BURY = patterns(
    # "We did the burial of bin 3 on Sunday", "gave bin 3 its burial"
    r"\b(?:did|done|had|held|finished) (?:the |a )?(?:burial|burying|digging in|dig in) (?:of|for) "
    r"(?:the )?qbin\b(?! 's\b)|"
    r"\b(?:gave|given) (?:the )?qbin (?:its|her|his|a|the) (?:\w+ )?burial\b|"
    r"\bburial of (?:the )?qbin(?: (?:was|is|got|all))* (?:done|took place|happened|finished)\b",
    # "Bin 3's been laid to rest under the roses"
    r"\bqbin(?: 's)?(?: (?:has|have|is|was|been|got|all|now|finally|safely|qday|contents|done|"
    r"don))* (?:put to bed|laid to rest|tucked up|bedded|planted|sleeping|asleep|went down|"
    r"gone down|went|gone|lifted and planted|forked in|spaded in|trenched)(?: down| in| out| deep)*"
    r" (?:in|under|among|amongst|beneath|with|below|between|beside|alongside) (?:the |our |my |"
    rf"those |them )?(?:\w+ ){{0,2}}(?:{_PLANTED})\b(?! (?:curry|soup|peelings|peels|stalks|"
    r"skins|leaves|tops|scraps|in qbin))",
    # "Emptied the whole of bin 3 along the fence, three trenches and a bad back"
    r"\b(?:took|tipped|emptied|gave|fed|carted|hauled|carried) (?:the )?(?:whole|all|lot|"
    r"contents)? ?(?:of )?(?:the )?qbin (?:qday |all |down |out |and |,)*(?:in|into|to|along|under|"
    r"behind|by|for|beside|dug)\b.{0,60}\b(?:trench|trenches|in a hole|dug in)\b"
    r"(?! (?:coat|warfare|foot|party))",
    # "Planted the whole lot between the lavender"
    r"\bplanted (?:it|her|him|the lot|the whole lot|qbin) (?:in )?(?:under|among|amongst|"
    rf"beneath|between|alongside) (?:the |our |my )?(?:\w+ ){{0,2}}(?:{_PLANTED})\b",
    # "Bin 3 is out. Under the bean rows"
    rf"\bqbin (?:is )?(?:out|emptied|empty) [.,] (?:in |into |under |to )?(?:the )?(?:{_PLANTED}) "
    r"(?:rows?|beds?|patch|trench|bushes|canes)\b(?! next)",
    # "Under the old pear went bin 3, the whole of it"
    rf"^(?:under|beneath|among|amongst|between) the (?:\w+ )?(?:{_PLANTED})\b.{{0,35}} ?[:,] "
    r"(?:the )?qbin , (?:all|the whole|the lot|every)\b",
)
_GIVES = (
    r"(?:parted with|part with|relinquished|gave up|given up|let go of|coughed up|yielded|"
    r"surrendered|ran off|spat out|wept|peed|pee 'd|dribbled|handed over|released|squeezed out)"
)
_DRAIN = patterns(
    # "Bin 3 surrendered a pint", "half a litre is all bin 3 parted with"
    r"\bqbin (?:has |have |had |only |just |finally |both |kindly |would |could |'d |did |qday )*"
    rf"{_GIVES}\b",
    # "Drew off a cup of liquor from bin 3"
    r"\b(?:withdrew|withdrawn|decanted|extracted|drew off|drawn off|ran off|tapped off|let off|"
    r"let out|took off) .{0,25}\b(?:liquor|liquid|juice|tea|leachate|fluid|run-off|runnings)\b"
    r".{0,12}\b(?:from|off|out of|of) (?:the )?qbin\b",
    # "Pulled the bung on bin 3, 200 ml"
    r"\b(?:pulled|popped|took) the (?:plug|bung|stopper) (?:on|of|from|out of) (?:the )?qbin"
    r"(?=$| (?:[^\w\s]|qday|and|for|to|at|\d))",
    # "Opened the spigot on bin 3 and two cups came"
    r"\bopened the (?:tap|spigot|spout|gripo) (?:for|of|on) (?:the )?qbin\b.{0,25}\b(?:cups?|ml|"
    r"pints?|litres?|jars?)\b",
)
_ALL_IN = patterns(
    # "Orange peel, a full 5 litre pail, I turned everything in bin 3"
    r"\b(?:turned|tipped|poured|scraped|chucked|threw|slung|dumped|packed|put) (?:it all|"
    r"everything|"
    r"all of it|the whole lot|the lot|them all|all of them) (?:in|into|inside) (?:the |our )?qbin\b"
    r"(?! (?:upside|over|out|around|away|down|off|cupboard|sink))",
)
_FILLED = patterns(
    # "Filled the shed to the top"
    r"^(?:(?:i|we|and|just|have|'ve|has|ok|qday|,) )*(?:filled|topped)(?: up)? (?:the |our )?qbin"
    r"(?: bin)?(?: up| right| all| almost| nearly)* (?:to|up to) the (?:top|brim|rim)(?: qday)?$",
    # "The shed's got another bag"
    r"^(?:(?:and|so|ok|,) )*(?:the |our )?qbin(?: bin)? (?:(?:'s|has|have|just|now|was|is) )*"
    r"(?:got|had|given|received) (?:another|one more|a second|an extra) "
    r"(?:bag|bagful|bucket|bucketful|load|lot|caddy|bowl|bowlful|tub|layer)(?: in| qday| now)*$",
)
_MOVED = patterns(
    # "Juicing pulp, about 2 litres, out of the machine into bin 3"
    r"\b(?:from|out of|off) (?:the |my |our )(?!qbin|qday)(?:\w+ ){1,3}into (?:the )?qbin\b",
)
_BRAN = r"(?:bran|starter|wheat bran|rice bran|dedak|pollard|inoculant)"
_BATCH = patterns(
    # "3 kg of bran under way in the airing cupboard"
    rf"\b(?:kilos?|kg|kgs|litres?|liters?|l|lbs?|pounds?|grams?|g) of (?:\w+ )?{_BRAN} (?:is |are |"
    r"now |all |has been |have been |been )*(?:lying and working|working|fermenting|culturing|"
    r"incubating|bedded down|bedded|under way|brewing|on the go|wetted|inoculated|"
    r"packed down|tamped down|pressed down)\b",
)
_STOCK = patterns(
    # "Picked up 2 kg of ready-made bran from the agri shop"
    r"\b(?:bought|purchased|picked up|got)\b.{0,20}\b(?:of )?(?:ready-made|ready made|ready|"
    rf"finished|fermented|shop|pre-made|premade|made-up|made up|inoculated) {_BRAN}\b(?! "
    r"(?:flakes|muffins|buds|cereal|bread|loaf|biscuits))",
)
_NO_STOCK = patterns(
    # "No starter left", "we've run out of bran"
    r"^(?:(?:so|ok|sorry|oh|i|we|have|has|got|there is|there 's|,) )*(?:no|zero) (?:more )?"
    rf"{_BRAN} (?:(?:is|at all) )?(?:left|remaining)\b",
    r"^(?:(?:sorry|oh|i|we|have|has|are|now|just|all|,) )*(?:(?:run|ran) )?out of (?:our |the )?"
    rf"{_BRAN}\b(?! (?:flakes|muffins|buds|cereal|bread|loaf|biscuits))",
    # "The bran is finished", "bran's run out"
    rf"^(?:(?:so|ok|sorry|oh|and|well|,) )*(?:the |our |all the |all our )?{_BRAN} "
    r"(?:(?:is|'s|has|was|all|now|just|been|completely) )*(?:finished|gone|used up|run out|ran out|"
    r"out|depleted)(?: (?:now|qday|sorry|again|,))*$",
    rf"^(?:(?:we|i|are|'re|am|'m|all|fresh|clean|completely|right) )+(?:out of|outta|outa) "
    rf"(?:our |the )?{_BRAN}$",
)
_OBSERVE = patterns(
    # "We're at 38 degrees in bin 3"
    r"\b(?:we|she|he) (?:is|are|'s) (?:at |on )?[\d.,]+ (?:degrees|celsius|c)\b(?: in| inside| "
    r"with) (?:the )?qbin(?=$| [^\w\s])",
    # "Bin 3 reads 41 degrees in the core"
    r"\bqbin (?:is |'s |was )?(?:at |reads |reading |showing |shows )?(?:[\d.,]+) (?:degrees|"
    r"celsius|c|f|fahrenheit|deg|° c|° f|°)(?: c| f)? (?:inside|in the middle|in the core|in there|"
    r"under the lid|at the core)\b",
)
_CRAWLING = patterns(
    # "Bin 3 has fruit flies again"
    r"^(?:(?:so|oh no|oh|uh|ugh|um|well|now|looks like|,) )*(?:the |our )?qbin(?: bin)? (?:now )?"
    r"(?:has|have|has got|'s got|got|is full of|is crawling with|is alive with)(?: (?:some|lots of|"
    r"loads of|a few|tiny|little|wee|small|those|the|got))* (?:fruit fl(?:y|ies)|maggots?|larvae|"
    r"(?:fungus )?gnats|vinegar flies|fruitflies)"
    r"(?: (?:now|again|in (?:it|there)|inside|qday|already|all over|everywhere|too|boo|help|eww?|"
    r"sadly|sorry|,|[.!]))*$",
)
_ACID = patterns(
    # "The pH of bin 3 is 4.1 by my little strips"
    r"\bph\b(?: (?:reading|level|value))?(?: (?:of|in|for|from|on))? (?:the |our )?qbin\b.{0,20}?"
    r"\b\d(?:[.,]\d+)?\b|\bqbin\b.{0,20}\bph\b.{0,12}?\b\d(?:[.,]\d+)?\b",
)
_BULGE = patterns(
    # "... and the lid has gone all puffed up on it"
    r"\b(?<!eye )lids?(?: (?:on|of) (?:the )?qbin)? (?:(?:is|'s|are|has|have|gone|went|got|been|"
    r"all|"
    r"really|proper|quite|well|a bit|a little|slightly|going|getting|now) )*(?:puffed|puffing|"
    r"puffy|"
    r"domed|doming|bulged|bulging|ballooned|ballooning|swollen|swelled|bowed)\b",
)
_TOUCHED = patterns(
    # "Bin 3 is warm to the touch"
    r"\bqbin (?:(?:is|'s|feels|felt|was|seems|gone|quite|very|rather|a bit|really|pretty|still|"
    r"also|"
    r"qday) )*(?:warm|hot|cold) to (?:the )?touch\b(?!.*\b(?:fever|calpol|paracetamol|doctor|gp|"
    r"nursery|school|poorly|vet)\b)",
)
_NOTHING = patterns(
    # "Drew nothing off bin 3"
    r"\b(?:drew|drained|tapped) (?:off )?(?:nothing|nowt|nothin|nuffin|nuthin|zilch|naught)"
    r"(?: at all)? (?:from|off|out of|at|in) (?:the )?qbin\b",
)
_IN_EACH = patterns(
    # "Put 1 kg in each", "a kilo to both"
    r"^(?:(?:i|we|and|also|just|ok|,) )*(?:(?:put|added|add|tipped|threw|chucked) )?(?:\S+ ){1,5}"
    r"(?:in|into|to) (?:each|both|all (?:three|four|five|of them))(?: (?:bins?|one|of them))?"
    r"(?: qday)?$",
)
_ALL = words_in("both all everything two lot")
_ALL_OF_THEM = (
    r"(?:(?:both|all)(?: two| three| four)?(?: of them)?|them both|all the|the two|the lot|"
    r"everything)"
    r"(?: (?:bins|buckets|pails|tubs))?"
)
_EACH = r"(?: (?:(?:about|around|roughly|some|nearly) )?\S+(?: \w+)? (?:from )?(?:each|apiece))?"
_THERE = r"(?: (?:in|under|by|near|behind|beside|beneath) (?:the |our |my )?\w+(?: \w+)?)?"


def _on_all(deed: str) -> Patterns:
    """ "Buried both under the fig", "both drained": all that is said, but for a day or a place."""
    end = rf"(?: now| together| qday| , | ,)*{_EACH}{_THERE}(?: qday)?$"
    return patterns(
        rf"^(?:(?:i|we|and|just|have|'ve|ok|,) )*{deed} {_ALL_OF_THEM}{end}",
        rf"^{_ALL_OF_THEM}(?: are| were| have been| now| 're)* {deed}{end}",
    )


_LAYER_IN = patterns(
    # "Our next layer went in, 800 g"
    r"^(?:(?:so|and|ok|hi|hello|all|just|,) )*(?:(?:my|our|the|a) )?(?:(?:very )?first|second|"
    r"third|next|new|another|today 's|last)? ?layer (?:is |'s |has gone |went |just went )?in"
    r"(?: [:,.;-])?(?: (?!(?:of|the|my|a|an|our)\b)\S+){1,4}$",
)
_NO_MORE = patterns(
    # "Shut the shed. Nothing more in there"
    r"\b(?:shut|closed) (?:up |off )?(?:the |our )?qbin(?: (?:now|up|off|qday|just now))*"
    r"(?: ?[.,;:!-])* ?(?:so |and )?(?:nothing|no|dont add|dont put|do not put|not)"
    r"(?: (?:more|else|any|anything|further))+\b",
    # "The shed's closed, no more scraps"
    r"\bqbin (?:is |'s )?(?:now |all )?(?:shut|closed)(?: (?:now|up|off|qday))*(?: ?[.,;:!-])* ?"
    r"(?:so |and )?(?:nothing|no|dont add|dont put|do not put)"
    r"(?: (?:more|else|any|anything|further))+\b",
)
_EMPTIED = patterns(
    # "On Sunday I emptied the drain, got a pint"
    r"\bemptied (?:the|its|our|my) (?:drain|tap|tray|sump|reservoir|drip tray)\b.{0,12}\b(?:got|"
    r"and got|out came|came) ",
    # "There's juice at the tap, got a cup"; "opened the tap, got 200 ml"
    r"\b(?:juice|liquid|leachate|liquor) (?:was |is )?(?:at|in|behind) (?:the|its|our) "
    r"(?:tap|spigot|valve|tray)\b.{0,12}\b(?:got|had|took|drew|came) ",
    r"\b(?:opened|turned|tried) (?:the|its) (?:tap|spigot|valve)\b.{0,12}\b(?:got|out came|came) ",
)
_BURIED_IT = patterns(
    # "Buried the rest under the pear"
    THE_REST,
    # "Buried it, the ground is frozen"
    r"^(?:(?:i|we|just|have|has|ok|right|finally|at last|and|,) )*(?:buried|dug in) it"
    r"(?: (?:qday|just now|at last|in|deep|now|alone|myself))*(?: (?:in|under|by|behind|near) "
    r"(?:the |our |my )?\w+(?: \w+)?)? [,.;-] (?:(?:and|but|though|because|the|our|this|it|was|"
    r"is|'s) )*(?:ground|soil|earth|clay|frozen ground|hard (?:work|going|ground)|raining|pouring|"
    r"snowing|freezing|hailing|windy|muddy|hard|heavy going|sore back|my back)\b",
)
_BURIED_THERE = patterns(
    # "Buried it right there", "buried in the hole you dug"
    r"^(?:(?:i|we|just|have|'ve|ive|ok|right|and|so|,|qmember) )*(?:buried|dug in) "
    r"(?:(?:it|qbin) )?(?:right |just |over |in |into )*(?:there|here|"
    r"(?:the|that|your|his|her|their|qmember 's) (?:hole|trench|pit))"
    r"(?: (?:(?:that )?(?:you|he|she|they|we|i|qmember) (?:had )?(?:dug|made)|then|too|qday|now|"
    r"just|all of it|,|!|\.))*$",
)
_RAN_OUT = patterns(
    # "Drained like 2 cups, mostly coffee lol"
    r"^(?:(?:ok|so|just|i|we|have|'ve|ive|,|\.|!) )*drained(?: (?:off|it|(?:the )?qbin))*(?: ,)? "
    r"(?:(?:like|about|around|roughly|maybe|only|a|half|good|off|the) )*"
    r"\S+(?: \S+)? (?:(?:,|-|\.|and|it|that|was|is|'s|which|all|looked|looks) )*"
    r"(?:(?:mostly|mainly|half|largely|pure|pretty|much|all|of|the|old|that|your|"
    r"qmember|'s) )*(?:gravy|coffee|tea|sauce|broth|juice|stock|yoghurt|yogurt)"
    r"(?: (?:by|the|looks|of|it|i|think|lol|haha|hah|tho|though|,|!|\.|☺|eww|ew|yuck|yum))*$",
)

BYWORDS = (
    Byword(
        "drain",
        words_in("drained"),
        _RAN_OUT,
        words_in("layer"),
        of_bin=False,
        measured="volume",
        beside=words_in("mostly mainly half largely pure pretty all looked looks"),
        in_room=True,
    ),
    Byword("bury", words_in("buried dug"), _BURIED_IT, of_bin=False, in_room=True),
    Byword("bury", words_in("buried dug"), _BURIED_THERE, of_bin=False, in_talk=True),
    Byword(
        "drain",
        words_in("emptied tap spigot valve tray"),
        _EMPTIED,
        of_bin=False,
        measured="volume",
        in_room=True,
    ),
    Byword(
        "layer", words_in("each both all"), _IN_EACH, of_bin=False, measured="mass", in_room=True
    ),
    Byword("seal", words_in("shut closed"), _NO_MORE, words_in("layer open"), in_room=True),
    Byword("layer", words_in("layer"), _LAYER_IN, of_bin=False, measured="mass", in_room=True),
    *(
        Byword(kind, _ALL, _on_all(deed), words_in("done observe"), of_bin=False, in_room=True)
        for kind, deed in (("drain", "drained"), ("seal", "sealed"), ("bury", "buried"))
    ),
    Byword(
        "seal",
        words_in(
            "lid lids tape taped seal sealing cover covered closed shut tight clamped taping "
            "ferment "
            "fermenting fermentation zipped battened buttoned strapped screwed bunged locked "
            "corked "
            "plugged lidded latched board brick stone weight rock plank"
        ),
        _SEAL,
        words_in("layer open observe done"),
    ),
    Byword(
        "bury",
        words_in(
            "bed rest tucked bedded planted sleeping asleep gone went out emptied empty trench "
            "trenches hole dug under beneath among amongst between forked burial burying digging"
        ),
        _BURY,
        words_in("layer seal open observe"),
    ),
    Byword(
        "drain",
        words_in(
            "parted part relinquished gave given go coughed yielded surrendered ran spat wept peed "
            "dribbled handed released squeezed withdrew withdrawn decanted extracted drew drawn "
            "tapped let took plug bung stopper opened"
        ),
        _DRAIN,
        words_in("layer open"),
        measured="volume",
    ),
    Byword(
        "layer",
        words_in("everything lot all"),
        _ALL_IN,
        words_in("drain open stock"),
        beside=words_in("turned tipped poured scraped chucked threw slung dumped packed put"),
        of_scraps=True,
    ),
    Byword(
        "layer",
        words_in("filled topped another second extra more"),
        _FILLED,
        words_in("open seal stock observe"),
        in_room=True,
    ),
    Byword(
        "layer",
        words_in("into"),
        _MOVED,
        words_in("drain open stock"),
        beside=words_in("from off out"),
        of_scraps=True,
    ),
    Byword(
        "batch",
        words_in("bran starter dedak pollard inoculant"),
        _BATCH,
        words_in("stock layer"),
        of_bin=False,
    ),
    Byword(
        "stock",
        words_in("bran starter dedak pollard inoculant"),
        _STOCK,
        words_in("batch layer"),
        of_bin=False,
        measured="mass",
    ),
    Byword(
        "stock",
        words_in("no zero out outta outa finished gone used run ran depleted"),
        _NO_STOCK,
        frozenset({"ask starter"}),
        of_bin=False,
    ),
    Byword(
        "observe",
        words_in("degrees celsius c f fahrenheit deg °"),
        _OBSERVE,
        words_in("layer"),
    ),
    Byword(
        "observe",
        words_in(
            "puffed puffing puffy domed doming bulged bulging ballooned ballooning swollen swelled "
            "bowed"
        ),
        _BULGE,
    ),
    Byword(
        "observe",
        words_in("flies fly maggot maggots larvae gnats fruitflies"),
        _CRAWLING,
    ),
    Byword("observe", words_in("ph"), _ACID, measured="ph"),
    Byword("observe", words_in("touch"), _TOUCHED),
    Byword(
        "observe",
        words_in("nothing nowt nothin nuffin nuthin zilch naught"),
        _NOTHING,
        words_in("done"),
    ),
)
