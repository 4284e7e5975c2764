"""The words of the questions that hold whatever their score, by topic: a table for `outright`."""

from typing import NamedTuple

from handlers.reading.acts import Topic
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


class _Outright(NamedTuple):
    topic: Topic
    cues: frozenset[str]
    """Words without one of which it is not asked."""
    asked: Late
    of: str | None = None
    """What must be named with it: a food, a bin and its bed, a sign of a bin, or the bot; or
    that it is marked as a question."""


_BRAN = r"(?:bran|starter|inoculant|bokashi mix)"
_BATCH = Late(
    r"\b(?:procedure|steps|method|recipe|instructions|proportions) (?:for|of|to make|to mix|"
    r"to brew)\b.{0,25}\b"
    rf"(?:{_BRAN}|inoculat\w+)\b(?! (?:loaf|loaves|bread|muffins?|flakes))|"
    r"\b(?:explain|show us|walk (?:me|us) through|teach us)\b.{0,20}\b(?:making|"
    r"mixing)\b.{0,15}"
    rf"\b{_BRAN}\b|\bhow the {_BRAN} 's made\b|\btrick to (?:making|mixing) {_BRAN}\b|"
    rf"\b{_BRAN}\b.{{0,40}}\b(?:wet|damp|moist|drier|dry|dried|airtight|air)\b.{{0,40}}\b(?:mix|"
    r"mixing|brews|fermenting|ferments)\b|"
    rf"\b(?:must|does|should) the (?:finished|homemade) {_BRAN} (?:be|have|need)\b|"
    rf"\b{_BRAN}\b.{{0,25}}\b(?:instead of|in place of) (?:wheat|rice|culture|molasses)\b|"
    r"^(?:a )?(?:starter|bran) batch (?:for|of|with|from) (?:[\d.,]+|a|one|two|half) \S+"
    r"(?: \S+){0,4}$|"
    r"\b(?:stand in for|instead of|in place of) (?:wheat )?bran\b.{0,20}\b(?:starter|making)\b|"
    rf"\b(?:can|whether|does|will|could|should|do|must|is) .{{0,60}}\b{_BRAN}\b.{{0,60}}\b(?:or|"
    r"must|has to|have to|needs to|instead of|only) (?:it )?(?:must |has to |have to )?(?:be "
    r")?(?:the )?"
    r"(?:molasses|treacle|jaggery|gur)\b|"
    r"\b(?:litres?|cups?|much|less|more) (?:of )?(?:water|molasses|treacle)\b.{0,30}\bbran\b|"
    r"\b(?:kilos?|kg|lb|pounds?) of bran (?:how much|how many litres of) (?:water|molasses)\b|"
    r"\bhow (?:much|many \w+)(?: of)?(?: the)? (?:em|culture)\b.{0,30}\bfor\b.{0,25}\bbran\b|"
    r"\bbran\b.{0,15}\bhow (?:much|many \w+)(?: of)?(?: the)? (?:em|culture)\b|"
    rf"\bold {_BRAN} in to make new\b|\bfor (?:making|mixing) (?:the |new )?{_BRAN}\b"
    r"|\b(?:how (?:do|does|did|would|should|must|to|can|i go)|whats? (?:\'s |is )?the (?:go|"
    r"craic|deal|story|trick|secret|"
    r"knack) (?:with|to|for|of|on))\b.{0,20}\b(?:make|making|cook up|cooking up|mix|mixing|brew|"
    r"brewing|knock up|knocking up|whip up|rustle up|prepare|preparing|culture) (?:up )?"
    r"(?:(?:me|my|your|ya|yer|her|his|our|own|ones?|the|some|a|batch|of|effective|homemade|"
    r"proper|good|fresh|"
    rf"new) )*{_BRAN}\b(?! (?:loaf|loaves|bread|muffins?|flakes|cake|cookies|biscuits))"
)
_DOSE = Late(
    rf"\b(?:more|less|extra|double|half)(?: the)?(?: usual)? (?:{_BRAN}|"
    r"sprinkle)\b.{0,12}(?:\bin "
    r"(?:summer|winter|monsoon|hot|cold|the heat)|\bor (?:less|more)$|\bstill work\b)|"
    r"\b(?:overdo|put too much|put too little|heavy handed with|"
    rf"stingy)\b.{{0,25}}\b{_BRAN}\b(?! left)|"
    r"\b(?:one|a|two|single) (?:scoop|fistful|handful|spoon)(?: of bran)? (?:per|for every|"
    r"for each|"
    r"to (?:a|the|every)|a|each) (?:layer|inch|kilo|kg|fist)\b|"
    rf"\b(?:percent|percentage|dosage|what dose|which dose|right dose|correct dose|usual dose)\b"
    rf".{{0,30}}\b(?:of {_BRAN}|by weight|of the weight|per kilogram)\b|"
    rf"\b{_BRAN} (?:on every|on each|under the first) layer\b|"
    r"^(?:(?:and|so|ok|hi|hello|bot|,|remind me|tell me) )*whats?(?: is| 's| was)? ?"
    r"(?:the |our )?(?:usual|normal|standard) dose"
    r"(?: (?:again|here|is|then|please|,|bot|(?:for|of|on|per) (?:a|the|each|every) layer))*"
    r" ?[?.!]*$|"
    rf"\b(?:does|do|should|will|would|must) (?:the )?(?:qbin|it|they) (?:get|need|want|take) "
    rf"(?:more|less|extra|double|as much) {_BRAN}\b|"
    rf"\b(?:thin|light) (?:dusting|layer) of {_BRAN}\b|\bwhat 's that in (?:grams of )?{_BRAN}\b"
)
_EACH_TIME = Late(
    r"\b(?:do|must|should|does) (?:i|we|you|ye|one) (?:(?:really|seriously|honestly|actually|"
    r"always|"
    r"even|still) )*(?:(?:have|need|got) to )?(?:put|add|use|sprinkle|throw|chuck|do) "
    rf"(?:(?:the|any|some|more) )?{_BRAN}(?: in| on| over| down)? (?:(?:with|after|on|to) )?"
    r"(?:every|each) (?:single )?(?:time|layer|day|go|load|lot|scrap)\b"
)
_FOR_SO_MUCH = Late(
    rf"^(?:(?:so|ok|okay|and|hi|,) )*{_BRAN} for (?:(?:about|some|another) )?\d[\d.,]* ?"
    r"(?:kg|kgs|kilos?|g|grams?|lbs?|pounds?|l|litres?)\b"
)
_DUE = Late(
    r"^(?:(?:so|hey|hi|ok|okay|and|please|morning|all|folks|,) )*what(?:s| is| 's) "
    r"(?:on (?:the|our) (?:calendar|schedule|agenda)|scheduled)(?: (?:for|on|in|this|next|coming|"
    r"the|week|weekend|month|qday|q?bins?|with|then|please|again|[,?]))*$|"
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
    r"\bhow (?:long|longs|many (?:more )?(?:days|weeks))(?: is| 's| has| have| does| s)? (?:the )?"
    r"qbin (?:(?:is|has|have|got|still) )*(?:left|to go|to run|to wait)\b|"
    r"\bwhen (?:is|are|'s) (?:the |our )?next (?:seal|sealing|drain|draining|burying|bury|dig|"
    r"digging "
    r"in|emptying|bin day)(?: due)?(?=$| \?| (?:for|of|on|bot|please|then|,|up))|"
    r"\bdeadline (?:on|for) (?:the )?qbin\b|\bneed to touch (?:the )?qbin\b|"
    r"\b(?:which|what) date\b.{0,25}\bopen(?:ing)? (?:the )?qbin\b"
    r"|^(?:(?:so|right|and|ok|okay|hey|bot|well|morning|now) ,? ?)*what (?:is|\'s|are) "
    r"(?:all )?overdue(?: (?:then|bot|now|here|,.*|with (?:us|the bins)|this week|today))*$|"
    r"\bwhat is overdue(?: on| with| for)? (?:the )?q?bins?\b|"
    r"\b(?:something|anything|owt|nowt|aught) (?:is )?(?:owing|overdue|outstanding|due) "
    r"(?:on|with|for) (?:it|her|him|qbin|the bins?)\b|\bhas (?:the )?qbin been seen to\b(?! "
    r"by)|"
    r"\bwhen (?:is|are|may|can|will) (?:he|she|it|they|qbin) (?:be )?(?:allowed to |able to "
    r"|fit to |ready to )?be (?:dug in|buried|dug|planted out)\b|"
    r"\bhow (?:long|soon|many days) (?:before|till|until|til) (?:the )?qbin (?:is |go |goes "
    r"|can go |will be |be |gets )?(?:\w+ )?(?:ready |fit |good )?(?:for|to) (?:the "
    r")?(?:ground|soil|earth|bury|dig|bury it|be dug|be buried|trench)\b"
)
_TO_PLANT = Late(
    r"\bhow (?:long|soon|many (?:days|weeks))(?: is it| must i wait| do i wait)? "
    r"(?:till?|until|before) (?:i|we|you|one) (?:can|may|could) (?:plant|sow)"
    r"(?: (?:out|stuff|things|anything))? (?:in|into|on|over) "
    r"(?:it|that|there|this|qbin|top|the (?:trench|hole|spot))\b"
)
_TO_DO = Late(
    r"^(?:(?:ok|okay|so|hey|hi|and|,) )*what(?:(?: all| else)? (?:do|must|should) (?:we|i) "
    r"(?:(?:need|have|got) to )?(?:do|get done|get finished|see to)|(?: is| 's) to do) "
    r"(?:before|by|this|until|till|today|qday)\b"
)
_ABOUT_THEM = Late(
    r"^(?:(?:ok|okay|so|hey|hi|and|,) )*what (?:do|should|can|must|shall) (?:i|we) do about "
    r"(?:them|those|these|it|that|this)(?: all| now| then| please| ,)*$"
)
""" "How long till I can plant in it"; of the bot, what is to do by a day, and about the pests or
the growth just talked of."""
_DUE_SO = Late(
    r"\bqbin (?:(?:stays|remains|is to stay|has to stay|must stay|keeps) (?:closed|shut|"
    r"sealed)(?: up)? "
    r"(?:until|till?)|(?:is to be|gets|will be|is|must be|has to be) (?:buried|drained|dug in|"
    r"opened|"
    r"sealed)(?: on| by)?) (?:the )?qday(?: at \S+)? ,? ?(?:yes|right|correct|no|yeah|eh|innit|"
    r"isnt it|"
    r"am i right|is that (?:right|it|so|correct))$"
)
"""When it is due, for a yes: "bin 3 stays shut till Sunday, right?"."""
_STARTER = Late(
    rf"\bhow (?:many more|much longer|long|far)\b.{{0,25}}\b(?:will|does) (?:our|the) {_BRAN} (?:"
    rf"do|last|stretch|go)\b|\b{_BRAN} (?:count|check)$|\b(?:headcount|count) of the {_BRAN}\b"
    rf"|\bhow much {_BRAN} (?:are |is |'s |have |do |we |you |us |i )*(?:sitting on|sittin on|"
    rf"got left|got|left|to hand|on hand|in hand|in stock|in the kitty|have left)"
    r"(?=$| [,.?!])|"
    rf"\b(?:owt|anything|any|much|summat) left in (?:the |t \' ?|t\' ?)?{_BRAN} (?:tub|bag|"
    rf"box|jar|tin|bucket)\b|"
    rf"\bwhen did (?:we|i|you|anyone|anybody|someone) last (?:make|mix|brew|knock up|do|mix "
    rf"up|make up) (?:a |the |some |any )?(?:batch|{_BRAN})\b(?! of (?!bran|starter))|"
    rf"\b{_BRAN}\b.{{0,60}}\bwhen (?:do|should|shall|must|are) (?:we|i) (?:to )?(?:make|mix|"
    rf"brew|knock up|start)(?: up)? (?:some )?(?:more|another(?: batch| lot)?|a new (?:batch|"
    rf"lot)|the next (?:batch|lot))\b"
)
_HOLE = r"(?:hole|trench|pit|ditch)"
_TRENCH = Late(
    rf"\b(?:line|mix)\b.{{0,25}}\b(?:the|a) {_HOLE}\b|\bas i fill the {_HOLE}\b|"
    r"\b(?:will|does|do|would|can) (?:the |both |all )?\w+(?: all| both)? "
    rf"fits? (?:in|into|inside) (?:a|the|my|our|that|this) {_HOLE}\b|"
    r"\bwhat (?:size|length|width|depth) (?:of )?(?:a )?(?:ditch|trench|hole|"
    r"pit)\b.{0,25}\bq?bin\b|"
    r"\bhow (?:close|near) to\b.{0,20}\b(?:may|can|should) i (?:bury|dig)\b|"
    r"\bhow many (?:centimetres|inches|cm) of (?:earth|soil)\b|"
    r"\bsoil cover\b(?!(?: is| was| of| about|,|:| at least)* \d)|"
    rf"\bbefore i cover the {_HOLE}\b|\bdig it in (?:right )?(?:beside|next to)\b"
    r"|\b(?:can|could|may|do) (?:i|u|you|we|one|ye) (?:just )?bury (?:it|this|that|the "
    r"stuff|the contents|qbin) in (?:a |my |the |some )?(?:big |large )?(?:pots?|planters?|"
    r"window box|containers?|tubs?|raised beds?)\b"
)
BED_WORDS = words_in("bed beds border borders patch plot plots")
_BIN_ON_BED = Late(
    r"\b(?:can|may|could|should) (?:i|we) (?:put|spread|use|work|tip|empty) (?:the |my |our )?\w+ "
    r"(?:bin |bucket )?(?:in )?(?:on|onto|into|under|beside|round|around|among|between) (?:the|my|"
    r"our|those|these)\b|"
    r"\b(?:can|may|could|should|will|would) (?:the |my |our )?\w+ (?:(?:also|still|all|just) )*"
    r"(?:go|be (?:put|spread|worked|used))(?: in)? (?:on|onto|into|in|under|beside|round|around|"
    r"among|between) (?:the|my|our|those|these|a)\b"
)
_BED = Late(
    r"\bhow (?:big|large|much) (?:of )?a bed\b|"
    r"\bhow (?:big|large) (?:should|must|does|would|need) (?:the|a|my|our) bed\b|"
    r"\b(?:is|isnt|would|wouldnt) (?:that|it|this|qbin) (?:be )?(?:too much|enough|ok|okay) "
    r"(?:for|on) (?:the|my|our|that) .{0,30}\b(?:bed|beds|border|patch|plot)\b|"
    r"\bhow (?:much|many \S+)\b.{0,25}\b(?:on|for) (?:a |the |my |our )?[\d.]+ ?(?:x|by|×) ?"
    r"[\d.]+ (?:\w+ )?beds?\b"
)
_BIN = Late(
    r"^(?:bot |please |,)*(?:what|which) (?:are (?:my|our|the)(?: \S+)? (?:bins|qbin)|(?:bins|"
    r"qbin) (?:do|have) (?:i|we) (?:have|got))(?: again| now| please)*$|"
    r"\bhow (?:chocka|chockers|packed|stuffed) is (?:the )?qbin\b|"
    r"^(?:bot |please |,)*(?:tell me about|give me the story (?:so far )?(?:of|on)|"
    r"story so far (?:of|"
    r"on)) (?:the )?qbin\b|\bis (?:the )?qbin (?:open or shut|shut or open|sealed or open)\b|"
    r"\bhas (?:the )?qbin (?:got )?(?:space|room) for (?:a|another|some|more)\b(?!.*\b(?:kids|"
    r"guests|"
    r"people|beds?)\b)|\bwhat 's gone in (?:the )?qbin\b|"
    r"\bwhat 's qbin had (?:in it )?(?:this|so far|since)\b|"
    r"\bwas there (?:any )?(?:meat|fish|dairy|bones?) in (?:the )?qbin\b|"
    r"\bwhat percentage of (?:the )?qbin\b|"
    r"\b(?:did|has|have) (?:anyone|anybody|someone|somebody|any of you) (?:already |actually "
    r")?(?:feed|"
    r"fed|topped up|added (?:anything |owt )?to|put (?:anything|owt|stuff|scraps) in(?:to)?) "
    r"(?:the )?qbin\b(?! 's)"
    r"|(?:^|[.!?,] )(?:(?:so|hey|hi|bot|and|ok|okay|right|oi|,) )*w(?:h?[ao]ts|hat(?: is| "
    r"\'s| all is)?|ot(?: is)?)(?: actually| currently| even| all| already)? in (?:the "
    r")?qbin\b(?! (?:of|on|drawer|fridge|freezer|cupboard|post))(?! for (?:tea|dinner|"
    r"lunch))|"
    r"\b(?:does|can|will) (?:the )?qbin (?:hold|take) (?:more than|over|above|upwards of|as "
    r"much as) [\d.]+ (?:gal|gals|gallons?|litres?|liters?|l|quarts?|kilos?|kg)\b|"
    r"\b(?:is |are )?qbin (?:is )?(?:half ?way|half full|nearly full|almost full|three "
    r"quarters full) (?:or (?:more|less|not|what|over)|yet|already)\b|"
    r"\bwhich (?:one|bin|bucket|qbin|of (?:them|ours|the bins))(?: is| are| 's) "
    r"(?:(?:nearly|almost|closest|nearest|not|getting|about|most|to|the) )*(?:full|fullest|empty|"
    r"emptiest)(?= ?$| [.?!,])"
)
_TOTALS = Late(
    r"\bwhich bin 's had the (?:most|least)\b|\bleaderboard (?:bot|please)\b|^leaderboard\b|"
    r"\bwho (?:has )?put in the most\b|"
    r"\bstats (?:for|of|on) (?:the )?qbin\b|\bcompare (?:the )?qbin and (?:the )?qbin\b|"
    r"\bwho (?:is |'s |has |have )?(?:put|added|given|fed|chucked|logged|thrown) (?:in )?(?:the "
    r")?most"
    r"(?: in| so far| bot| this \w+)?$|"
    r"\bfirst place for (?:kilos|pounds)\b|"
    r"^(?:(?:hi|hey|ok|so|please|pls|and|the|,|our|my|show|give|me|us) )*(?:running )?(?:totals?|"
    r"tally|tallies)(?: (?:for|in|of|so|far|please|pls|this|last|the|month|week|year|to|date|since|"
    r"qday|qbin|bot|then|[,.:?]|\d{4}|jan|feb|mar|apr|may|jun|june|jul|july|aug|sept?|oct|nov|dec|"
    r"january|february|march|april|august|september|october|november|december|spring|summer|autumn|"
    r"winter|fall|season|ytd|up|now|till|until|everyone|all|bins))*$|"
    r"\bhow (?:much|many (?:kgs?|kilos?|kilograms?|lbs?|pounds?))(?: (?:is|are|was|were|have|has|"
    r"did|we|i|the|our|my|all|put|added|given|gave|in|of|scraps|waste|total|so far|from|"
    r"till|until|up to|to|date|now|bot))* (?:from (?:my|our) side|(?:till|up to) (?:date|now))\b|"
    r"\bclass totals\b|\bkilos yet in the bin\b|\bwinning on (?:kilos|kgs|pounds)\b"
)
_ALLOWED = Late(
    r"\b(?:is|are) [a-z ]{3,25} a (?:definite|strict|firm|absolute) no$|"
    r"\bnever put in a bin\b|\bdo those belong in there\b|"
    r"\b(?:past (?:its|their) best|gone off|mouldy)\b.{0,6} any objections?\b|"
    r"^[a-z ]{3,20} (?:: )?allowed or not$"
)
_PUT = (
    r"(?:bung|chuck|feed|throw|toss|put|lob|add|stick|shove|pop|tip|sling|hoy|lash|fling|"
    r"give|dump|drop|"
    r"deposit|bin|compost)"
)
_THERE = r"(?:qbin|the bins?|a bin|there|it|this|these|these things|here|em|them|her|him)"
_FOOD_ALLOWED = Late(
    r"\b(?:do|does|will|would|can|could|dyou think) (?:\w+ ){1,5}(?:rot|rots|break down|compost|"
    r"decompose|ferment|pickle|get a guernsey|get in|make the cut|qualify|belong|go down|go ok|"
    rf"go okay) (?:\w+ )?in {_THERE}(?: too| at all| as well| ever)?(?:$| ?[,.] | or\b| "
    rf"bot\b| then\b)|"
    r"\bis it (?:ok|okay|chill|crook|alright|all right|kosher|safe|legal|cool|sound|grand|"
    r"bad|wrong|"
    r"a sin|a crime|daft|halal|haram|fine|wise|mad|allowed|permitted|permissible|right|good|"
    r"poor form|"
    rf"bad form) (?:if i |for me |for us )?(?:to )?{_PUT}\b.{{0,45}}\b(?:in|into|to|down) "
    rf"{_THERE}\b|"
    r"\bis it (?:ok|okay|chill|crook|alright|all right|bad|wrong|safe|daft|fine) (?:to )?feed "
    r"(?:em|them|qbin|it|her|him|the bins?|bins)\b|"
    r"\b(?:into|in) qbin (?:or (?:no|not|nah|naw|leave it|the bin)|yes or no|yea or nay)\b|"
    r"\b(?:can|could|may|will|would) qbin (?:eat|stomach|digest|have|cope with|handle)\b|"
    r"\b(?:does|do|will|would|can|could) (?:the )?(?:qbin|bins)(?: one)? (?:take|accept)\b"
    r"(?!.* (?:more|ages|all|up|\d+))|"
    r"^(?!.*\b(?:who|when|how)\b)(?:.{0,60} )?qbin (?:can|may) (?:eat|stomach|digest)\b|"
    r"\b(?:can|may|could) (?:it|that|this|they|these|those) (?:all )?(?:go|be put) (?:down|"
    r"in|into) "
    r"(?:the )?qbin\b|\b(?:boleh|can) masuk (?:or not|ke|tak|kah|ah)\b|"
    r"\b(?:is|are) (?:\w+ ){1,4}(?:ok|okay|fine|allowed|alright|all right|safe|good|"
    r"welcome) (?:for|in|"
    r"with) (?:her|him|it|qbin|the bins?)\b"
)
_SIGN_TROUBLE = Late(
    r"\b(?:good or (?:is )?bad|bad or good|good thing or bad|(?:anything|something|owt|"
    r"summat|nothing) "
    r"(?:to|i should|we should|one should) (?:worry|fret|lose sleep|panic|be worried|be "
    r"worrying)(?: about|"
    r" over)?|ought (?:one|i|we) (?:to )?(?:worry|fret|panic|be worried)|should (?:i|we|"
    r"one) (?:be )?(?:worry|"
    r"worried|fret|fretting|panic|concerned|alarmed|worrying)|do i (?:need to )?(?:worry|"
    r"panic)|supposed to "
    r"(?:look|smell|sound|bubble|hiss|drip)|meant to (?:look|smell|sound|bubble|hiss|drip)|"
    r"how worried|wots? to do|"
    r"w(?:hat|at|ot|ots|ats)(?: is| 's)? (?:up|wrong|the matter|going on|goin on|happening|"
    r"happenin) "
    r"(?:with|wi|wid|wit|w/|in) (?:it|qbin|her|him|there)|"
    r"what (?:to do|(?:do|can|must|should) (?:i|we|one) do|does one do|one does) (?:about|"
    r"bout|with)|weh mi fi do|"
    r"(?:tell (?:me|us)|explain(?: to (?:me|us))?|(?:like|love|want|need|dying|keen) to know|"
    r"wonder(?:ing)?) why)\b"
)
_LIQUID_TROUBLE = Late(
    r"\b(?:is|are|should|shouldnt|isnt) (?:(?:the|my|our|that|this) )?(?:qbin (?:'s )?)?(?:juice|"
    r"liquid|liquor|leachate|run-off) (?:(?:supposed|meant|sposed|spose|ment) to be|normally|"
    r"usually|"
    r"always|be) (?:(?:that|so|this|quite|like|a bit|very|all) )*(?:dark|black|brown|clear|pale|"
    r"thick|"
    r"thin|cloudy|milky|yellow|green|red|orange|smelly|strong|slimy|oily|fizzy|bubbly|watery)\b"
)
_ALL_LOST = Late(
    r"\b(?:do|should|must|will|shall) (?:i|we|you) (?:(?:really|just|now) )*(?:(?:have|need|got) "
    r"to )?"
    r"(?:chuck|q?bin|throw|dump|toss|ditch|scrap)(?: out| away)? (?:it all|everything|all of it|"
    r"(?:the|"
    r"this|that) (?:(?:whole|entire) )?(?:lot|thing|batch|contents|bucketful|qbin))"
    r"(?: out| away)?(?=$| [,.?!]| qday| then| or )"
)
_DILUTION = Late(
    r"\b(?:ten|twenty|fifty|1?00?|\d+) to (?:one|1) or (?:a )?(?:\w+ )?(?:hundred|\d+|"
    r"\w+) to (?:one|"
    r"1)\b|\b(?:one|1) in \w+ or (?:one|1) in (?:a )?\w+\b|\bcapful or a cupful\b|"
    r"\b(?:run-off|runnings|bin juice|leachate)\b.{0,40}\b(?:neat or|or neat|whats the go|how weak|"
    r"thinned)\b|\b(?:strength|ratio|mix) for\b.{0,30}\b(?:of the )?(?:run-off|runnings|leachate)\b"
    r"|\bhow (?:many|much) (?:litres|cups|parts|pints)? ?(?:of )?water (?:must|should|do|"
    r"does|goes|go|to)\b.{0,25}\b(?:with|to|for|per) (?:one|a|1|each|every) (?:litre|cup|"
    r"part|pint|quart|glass|jug)\b(?: of (?:the )?(?:juice|liquid|tea|leachate|liquor|"
    r"run-off))?$"
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
    r"|\b(?:how (?:do|can|does|should|i go|will) ?(?:i|we|one|you|person)? ?(?:take "
    r")?(?:use|talk to|work) (?:you|this (?:bot|app|robot|thing)|the bot)(?: now| then| sef|"
    r" please| ,.*)*$|\b(?:meaning|purpose) of this (?:bot|app|robot))"
)
OUTRIGHTS = (
    _Outright("batch", words_in("bran starter inoculant inoculating inoculated"), _BATCH),
    _Outright(
        "dose",
        words_in("bran starter scoop fistful handful sprinkle dosage dose percentage spoon"),
        _DOSE,
    ),
    _Outright("dose", words_in("bran starter inoculant"), _FOR_SO_MUCH, "asked"),
    _Outright("dose", words_in("every each"), _EACH_TIME),
    _Outright(
        "due",
        words_in(
            "overdue owing seen when how want wants wanting outstanding seeing meant "
            "supposed rostered drain draining tip date "
            "dates nearly sleeps days nights programme earliest deadline touch opening open due "
            "calendar schedule agenda scheduled"
        ),
        _DUE,
    ),
    _Outright("due", words_in("plant sow"), _TO_PLANT),
    _Outright("due", words_in("what whats"), _TO_DO, "bot"),
    _Outright("due", words_in("yes right correct no yeah eh innit it so"), _DUE_SO),
    _Outright("starter", words_in("bran starter"), _STARTER),
    _Outright(
        "bed", words_in("go put spread worked used use work tip empty"), _BIN_ON_BED, "bin on bed"
    ),
    _Outright("bed", BED_WORDS, _BED),
    _Outright("trench", words_in("hole trench pit ditch soil earth bury dig"), _TRENCH),
    _Outright(
        "bin",
        words_in(
            "wots wats whats what wot hold take halfway half way nearly three chocka "
            "chockers packed stuffed story which tell shut space room gone had meat fish dairy "
            "bones percentage bins anyone anybody someone somebody any"
        ),
        _BIN,
    ),
    _Outright(
        "totals",
        words_in(
            "most least leaderboard stats compare first total totals tally kilos winning side date "
            "till"
        ),
        _TOTALS,
    ),
    _Outright(
        "allowed",
        words_in("definite strict firm absolute never belong objection objections allowed"),
        _ALLOWED,
    ),
    _Outright(
        "allowed",
        words_in(
            "rot rots break compost decompose ferment pickle get make qualify belong go put ok "
            "okay chill crook alright all kosher safe legal cool sound grand bad wrong sin "
            "crime daft halal haram fine wise mad allowed permitted permissible right good "
            "welcome poor or yes yea eat stomach digest have cope handle masuk take accept"
        ),
        _FOOD_ALLOWED,
        "food",
    ),
    _Outright(
        "trouble",
        words_in(
            "bad good worry worried fret panic sleep concerned alarmed supposed meant do does "
            "up wrong matter going goin happening happenin why"
        ),
        _SIGN_TROUBLE,
        "sign",
    ),
    _Outright("trouble", words_in("juice liquid liquor leachate run-off"), _LIQUID_TROUBLE),
    _Outright("trouble", words_in("about"), _ABOUT_THEM, "bot"),
    _Outright("trouble", words_in("chuck bin throw dump toss ditch scrap"), _ALL_LOST),
    _Outright(
        "dilution",
        words_in("water one 1 capful neat thinned strength ratio leachate runnings run-off juice"),
        _DILUTION,
    ),
    _Outright(
        "custody",
        words_in("after before hand whom peels turn-taking otherwise stint person leave comes"),
        _CUSTODY,
    ),
    _Outright("help", words_in("type magic correct way use work talk meaning purpose"), _HELP),
)
