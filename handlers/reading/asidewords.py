"""What people say to one another and of other things in words that could be meant for the bot."""

from handlers.reading.briefly import POURED_ON
from handlers.reading.late import Late
from handlers.reading.otherwise import BRAN_ELSE
from handlers.reading.vocabulary import words_in

_OURS = (
    r"(?!qbin\b|it\b|this\b|that\b|my\b|our\b|the (?:qbin|turn|week|offer|rota|bin|next)\b|"
    r"turns?\b|next\b|one\b|any\b|another\b|weeks?\b|bins?\b|today\b|tomorrow\b|tonight\b|on\b|"
    r"over\b|"
    r"(?:mon|tues|wednes|thurs|fri|satur|sun)days?\b|now\b|more\b|so\b|either\b|sorry\b|for\b|"
    r"you\b|him\b|her\b|them\b|anything\b|right\b|much\b)"
)
_THING = (
    r"(?:the |your |his |a |an |some |another )?(?!the\b|your\b|his\b|a\b|an\b|some\b|another\b|"
    r"qbin\b|qmember\b|it\b|this\b|that\b|these\b|those\b|them\b|him\b|her\b|me\b|us\b|you\b|"
    r"my\b|our\b|one\b|any\b|turns?\b|weeks?\b|weekends?\b|month\b|fortnight\b|shifts?\b|go\b|"
    r"next\b|last\b|first\b|new\b|lot\b|offer\b|rota\b|bins?\b|buckets?\b|pails?\b|tubs?\b|"
    r"drums?\b|barrels?\b|kegs?\b|churns?\b|crates?\b|caddy\b|bran\b|starter\b|today\b|tomorrow\b|"
    r"tonight\b|now\b|then\b|too\b|over\b|care\b|on\b|up\b|in\b|at\b|from\b|for\b|to\b|part\b|"
    r"more\b|so\b|either\b|sorry\b|thanks\b|please\b|(?:mon|tues|wednes|thurs|fri|satur|"
    r"sun)days?\b|"
    r"january\b|february\b|march\b|april\b|may\b|june\b|july\b|august\b|september\b|october\b|"
    r"november\b|december\b|summer\b|winter\b|spring\b|autumn\b)[a-z]{3,}"
)
"""A thing that is neither a bin nor a turn, as the object of an answer."""
_SAID_THING = rf"(?:(?:the|your|his|a|an|some|another) {_THING}|[a-z]+ing\b)"
"""Behind an article, or a pastime: a word alone may be a bin that nobody listed."""
_NO_TURN = (
    r"(?!(?:turn|week|month|weekend|wk|wknd|fortnight|cycle|time|round|rotation|bin|bucket)s?\b|"
    r"(?:one|qbin|go|offer|year|summer|winter|spring|autumn|qday|or|and|either|sorry|any|again|"
    r"now|morning|evening|afternoon|(?:mon|tues|wednes|thurs|fri|satur|sun)days?)\b)"
)
"""Behind "can't do this": what is no turn of ours."""
_CARES = (
    r"(?:take|have|keep|host (?=(?:the )?(?:qbin|it|him|her|bins?|buckets?)\b)|mind|"
    r"drain|empty|feed|fill|bury|seal|make|mix|look|collect|carry|"
    r"check|"
    r"clean|wash|rinse|hold|store|tip|dig|stir|top|"
    r"(?:bring|haul|lug|move|fetch|shift|get|do) (?:the )?(?:qbin|it|him|her|bins?|buckets?|bran))"
)
"""What a turn of ours is for."""
_THINGS = (
    "sofa settee suitcase ladder ladders drill strimmer mower lawnmower pram cot buggy pushchair "
    "bike "
    "bicycle scooter piano guitar telly tv xbox playstation charger headphones puppy kitten "
    "kittens "
    "ticket tickets pizza pizzas trampoline tent gazebo projector screwdriver hammer passport "
    "umbrella wallet purse hoover sewing kayak surfboard mattress wardrobe bookcase"
)
OF_ELSE: dict[str, Late] = {
    "accept": Late(
        r"^(?!.*\b(?:i|me|us)\b).{1,60} at (?:ours|mine)\b.{0,60}\bbring\b|"
        r"\b(?:take|have|drive|bring|get) (?:her|him|it|them) to (?:the |see |a )*(?:dentist|"
        r"doctors?|vets?|school|nursery|hospital|airport|station|football|swimming|ballet|piano|"
        r"clinic|tip|"
        r"garage|cinema|park|menders?|cleaners?|shops?|library|party|church)\b|"
        r"\bbe (?:his|her|their|your) (?:babysitter|bridesmaid|best man|witness|referee|date|"
        r"guest)\b|"
        r"\bgo on then ,? (?:tell|show|sing|spill|dance|surprise|explain|who|what|how|why)\b|"
        rf"\b(?:happy|glad) to (?:take|do|have|mind) {_THING}|"
        r"\bgo on then ,? (?:one|another|just|a) (?:more |quick |wee |last )*"
        r"(?!week\b|month\b|turn\b|go\b|time\b|round\b)[a-z]+|"
        rf"\b(?:take|have|want|love|fancy|collect|grab)\b(?:(?!qbin)[^.]){{0,25}}\b(?:the|an?|"
        rf"that|your|"
        rf"two|three|four|\d) (?:{_THINGS.replace(' ', '|')})\b(?! 's)|"
        rf"\bdibs (?:on {_SAID_THING}|(?:!|,|:) {_THING})|"
        rf"\bi (?:will|shall|can) (?:ring|phone|call|sign|email|text|drive|cook|bake|pay)\b|"
        rf"\bi (?:will|shall) take the (?!qbin\b|turn\b|next\b|week\b|first\b|last\b)[a-z]+|"
        rf"\b(?:want|wants) the last [a-z]+|\bi (?:will|shall) be [a-z]+ie\b|"
        rf"\b(?:cousins|kids|guests|boys|girls|dogs?|cats?) can (?:come|stay)\b"
    ),
    "decline": Late(
        r"\ballergic to (?!(?:the |all |this )*(?:moulds?|molds?|bran|spores|bins?|qbin|smell|"
        r"stuff|yeast|it)\b)|"
        r"\b(?:ask|try) \w+ about (?:the|his|her|my|that) (?!qbin|bins?\b|turn|rota|week|"
        r"bucket)[a-z]+|"
        r"\b(?:count|deal|leave) me out (?:for |of )?(?:this|that|the next) (?:round|game|hand|one|"
        r"argument|debate|sweepstake)\b|"
        r"\b(?:cant|cannot|wont|couldnt) (?:do|make|finish|solve|manage|get) "
        rf"(?:this|that|these|next|another) {_NO_TURN}[a-z]{{3,}}|"
        r"\b(?:cant|cannot|wont) (?:do|make|manage|finish) (?:this|next) (?:week|month|weekend|"
        r"time|round|one) (?:'s (?!turn|go|bin|shift|keep|qbin)[a-z]+|of [a-z]+|signature|trial)|"
        r"\b(?:no|nah) (?:thanks|ta|thank you|cheers) ,? ?i (?:have |am |'ve )?(?:already "
        r")?(?:eaten|ate|"
        r"full|stuffed|driving|got one|have one)\b|"
        rf"\b(?:cant|wont|couldnt) (?:do|make) {_OURS}(?:the )?[a-z]+|"
        rf"\b(?:pass on|decline|refuse|say no to) (?:the|your|his|her|some) "
        r"(?!qbin\b|turn\b|offer\b|bin\b|week\b|next\b|rota\b|bucket\b)[a-z]+|"
        r"\b(?:play|start|eat|sing|carry on|go) without me\b|"
        rf"\b(?:no can do on|pass on|count me out of|saying no to|no thanks re) "
        rf"{_SAID_THING}|"
        rf"\bcount me out for {_THING}|"
        rf"\b(?:cant|cannot) (?:have {_SAID_THING}|(?:swing|afford) {_THING})|"
        r"\bnot possible for me to (?:attend|come|join|give|go|drive|bring|lend|meet|play|sing|"
        r"watch|pay|cook|bake)\b|"
        r"\brather not (?:be|go|come|sing|play|say|talk|sit|dance|eat|drink|drive|speak|read)\b|"
        r"\bany more (?:of\b|"
        r"(?!bins\b|buckets\b|tubs\b|pails\b|turns\b|weeks\b|shifts\b)"
        r"[a-z]{3,}s$)|\bno (?:sign|idea|use|point|chance) (?:of|in)\b|"
        r"\bsorry for (?:the |my )?(?:mistake|english|delay|noise|spelling|late|typos?)\b|"
        r"\bcant take [a-z]+ 's (?:shift|class|lesson|call|kids|dog|cat)\b|"
        r"\bnot for me\b.{0,12} , the (?!qbin|bin)[a-z]+|"
        r"^(?!.*\b(?:turns?|rota|this (?:week|time|month)|pass|take|have it|do it)\b).*"
        r"\b(?:cant|cannot|couldnt|wont) (?:find|climb|hear|feel|breathe|sleep|stand|remember|"
        r"swim|believe|walk|run|smell|bend|see|stop|open|start|move my|lift my|explain|reach|"
        r"sing|dance|draw|eat|spell|read)\b|"
        r"\bno (?:\w+ ){1,2}(?:club|class|practice|training|choir|rehearsal|lessons?|school|"
        r"swimming|yoga|football|match|game|pub|bingo|church|run)\b|"
        r"\bi have no (?:answer|idea|clue|words|memory|signal|bars)\b|"
        r"\bnot (?:so|too|very) (?:good|well|great|clever) (?:today|tonight|this (?:week|"
        r"morning))\b"
    ),
    "offer": Late(
        rf"\btake (?:over|charge of) {_THING}|\b(?:like|want|have|take) (?:my|the|a) "
        r"(?:desk|cot|bed|sofa|chair|table|car|bike|lift|minutes|seat|ticket|tickets|couch|lamp|"
        r"fridge|piano|tent|pram|mattress|wardrobe|telly|dog|cat|kids|class|choir)\b"
    ),
    "retract": Late(
        r"\b(?:match|game|party|meeting|trip|dinner|lunch|practice|rehearsal|choir|bbq|wedding|gig|"
        r"training|class|lesson|quiz|train|flight|bus) (?:is|was|'s|has been) (?:off|cancelled|"
        r"canceled|"
        r"back on|postponed|moved|called off)\b|"
        r"\b(?:delete|cancel|remove|scrap) (?:that|this) (?:pic|pics|photo|picture|video|order|"
        r"booking|meeting|subscription|app|number|song|game|party)\b|"
        r"^cancel (?:the|my|our) (?:milk|papers?|order|delivery|trip|booking|taxi|cab|gym|meeting|"
        r"appointment|subscription|holiday|table)\b|"
        r"\bscratch that ,? ?(?:\w+ ){1,3}for (?:tea|dinner|supper|lunch|breakfast)\b|"
        r"\bscratch that ,? ?(?:(?:on|the|\w*day|\w*noon|morning|evening|\d+|\w+teen) )+"
        r"(?:works|suits|(?:is|'s) (?:better|fine|good|best))\b|"
        r"\b(?:scratch|scrap) that ,? (?:\S+ ){0,4}(?:works|suits|is better|fits|won|lost|scored|"
        r"equalised)\b|"
        r"\btake (?:that|it|this) down (?:from|off) (?:the|that|your|his|her) "
        r"(?!list|log|record|book|count|sheet)|"
        r"\b(?:ignore|forget|disregard) what i said about "
        r"(?!that|it|the last|(?:the |my )?(?:\d|layer|drain|scraps|bran))|"
        r"\b(?:ignore|forget) that (?:message|email|letter|call) from\b|"
        r"\bwipe that (?:[a-z]+ )?(?:look|smile|grin|smirk|expression)\b|"
        r"\b(?:rub|wipe|take) (?:that|the) last (?:bit|drop|piece|slice|biscuit|cake|smear)\b|"
        r"\berase the (?:black|white|chalk)?board\b|"
        r"\bundo that (?:[a-z]+ )?(?:button|zip|knot|bow|lace|screw|buckle|belt)\b|"
        r"\b(?:take|took|taking) back (?:that|those|the|your) (?:\w+ )?(?:books?|drill|ladder|"
        r"shirt|jumper|coat|shoes|dress|telly|phone|chair|tent|library|bottles?|crown|title|"
        r"points?)\b|"
        r"^take it away ,|\bmake that (?!entry|record|one|last|layer|message)[a-z]+ vanish\b|"
        r"\b(?:cancel|scrap|scratch|forget) that ,? ?(?:the |her |his |our )?(?:match|game|party|"
        r"meeting|"
        r"gig|lesson|class|appointment|bus|train|lift|picnic|bbq|barbecue|rehearsal|practice|"
        r"dinner|"
        r"wedding|trip|film|concert)\b|"
        r"\bguest list\b|\bto the waiter\b|"
        r"\btake that back ,? (?:the|my|his|her|your) (?:joke|compliment|insult|remark)\b|"
        r"\bwrong , it (?:is|'s|was) a\b"
    ),
    "amend": Late(
        r"^no way\b|\b(?:baby|newborn|puppy|dog|cat|kitten|daughter|son|parcel|suitcase) (?:is|was|"
        r"'s|weighs|weighed) |"
        r"\bmake (?:that|it) (?:\w+ )?(?:pints?|halves|beers?|wines?|coffees?|teas?|pizzas?|"
        r"tickets?)\b.* (?:brought|here|coming|joining|joined|came|thirsty|as well|too)\b|"
        r"\bmake (?:that|it) (?:\S+ ){1,2}(?:pizzas?|burgers?|kebabs?|curries|lattes?|flat whites?|"
        r"espressos?|chips|rounds?|tickets?|seats?|nights?)\b|"
        r"^make (?:that|it) (?:two|three|four|five|six|\d) (?:\w+ )?(?:pints?|halves|teas?|"
        r"coffees?)"
        r"(?: please| \w+| please \w+)?$|"
        r"\bmake (?:that|it) \S+ (?:coffees|teas|beers|lagers|burgers|pizzas|seats|places|tickets|"
        r"chairs|rooms|beds|portions)\b|"
        r"\bmake (?:that|it) \S+ (?:pints|halves|cups|glasses)\b.{0,30}\b(?:brought|here|coming|"
        r"joining|staying|thirsty|turned up|brother|sister|mates?)\b|"
        r"\bthe (?:milk|beer|wine|paint|petrol|diesel|heating oil) i mean\b|"
        r"\b(?:at|to|told|tell) the (?:deli|waiter|waitress|butcher|pub|bar|chippy|restaurant|vet|"
        r"doctor|nurse|sushi place|door|barber)\b|"
        r"\bwhen the (?:fair|circus|bus|train|post) came\b|"
        r"\bweigh(?:ed|ing) (?:me|myself|him|her|(?:(?:the|my|our|her|his|new|old|little) )*"
        r"(?:ram|ewe|pig|dog|cat|baby|pony|bull|calf|suitcase|parcel|nephew|niece|grandson|"
        r"granddaughter|toddler|puppy|kitten|lamb))\b"
    ),
    "done": Late(
        r"\b(?:painted|plastered|tiled|wallpapered|hoovered|ironed|mowed|mown|polished|wired|varnished|"
        r"decorated|parked|posted)\b|"
        r"\b(?:done|did|finished) (?:the|my|his|her|all the|our) (?:\w+ )?(?:recycling|windows|"
        r"weeding|"
        r"car|mot|fence|taxes|beds|bathroom|floors|stairs|dusting|tidying|baking|cooking|gutters)\b|"
        r"\b(?:homework|chores|antibiotics|exams?|marking|ironing|dishes|taxes|revision|shopping)"
        r"(?: is| all)? done\b|\bfinished with (?:the )?(?:antibiotics|exams|dentist|book)\b|"
        r"\bsorted (?:that one|it|that|them) out with (?:the |my )?(?!qbin)[a-z]+|"
        r"\b(?:done|did|finished) (?:the|my|his|her|all the|our) (?:\w+ )?(?:shopping|hoovering|"
        r"laundry|"
        r"washing|ironing|dishes|homework|school run|accounts|quiz|crossword|exams?|marathon|"
        r"course|"
        r"degree|hedges?|lawn|decorating|tiling|painting|packing|essay|interview|gym)\b|"
        r"\b(?:primer|undercoat|emulsion|gloss)\b|"
        r"\bdone with (?:this|that|these|those|his|her|my|your|the whole) (?!qbin\b|one\b|bins?\b|"
        r"buckets?\b|turn\b|weeks?\b|job\b|lot\b|it\b|round\b|rota\b)[a-z]+|"
        r"\bdone with (?:people|men|women|work|school|winter|summer|dating|politics|christmas)\b|"
        r"\bdone in\b(?: ,| $|$)|\bdone as a [a-z]+\b"
    ),
    "later": Late(
        r"\bgive (?:me|us) (?:till|until) \w+ (?:on|for|with) (?:the|my|that|your) (?!qbin|"
        r"bins?\b|turn|"
        r"rota|bucket|one\b|lot\b|seal|drain|bury)[a-z]+|"
        r"\b(?:remind|nudge) (?:me|us) (?:\w+ ){1,4}about (?:the |my |our |his |her |a )"
        r"(?!qbin|bins?\b|bucket|bran|turn|seal|drain|bury|burial|trench|scraps)[a-z]+|"
        r"\bi meant \w+ (?:not \w+ )?for the (?!qbin|bins?\b|turn|rota|layer|bran)[a-z]+|"
        r"^what a\b|[.!] back (?:on )?"
        r"(?:mon|tues?|wed|thurs?|fri|sat|sun)(?:day|nesday|urday)?$|"
        r"\b(?:ring|phone|telephone|text) (?:me|us) (?:again|back|later|tonight)\b|"
        r"\b(?:remind|nudge) (?:me|us) (?:\w+ )?(?:about|to (?:book|buy|ring|call|pay|renew|"
        r"collect|vote|"
        r"phone|email|text|pick up|get)) (?:the |my |our |his |her |a )?"
        r"(?!qbin|bins?\b|it\b|this\b|that\b|the\b|bran|turn)[a-z]+|"
        r"\b(?:tell|ask) (?:me|us|him|her|them) (?:\w+ )?about (?:the |your |my |his |her |a )?"
        r"(?!qbin|bins?\b|it\b|this\b|that\b|the\b|bran|turn|bucket)[a-z]+|"
        r"\bwe (?:win|won|lost|drew|beat)\b|"
        r"\bgive (?:me|us) a (?:bell|ring|call|buzz|tinkle)\b|"
        r"\bfor (?:ball|cricket|football|golf|tennis|rugby)\b|"
        r"\b(?:days?|weeks?) for the (?!qbin|bin|bucket|turn|rota|layer|bran|soil|trench)[a-z]+"
    ),
    "ask due": Late(r"^(?:and |so |wait )?[a-z]+ (?:it )?(?:what|who|which)$"),
    "ask custody": Late(r"^(?:says|said) who$|^(?:and |so )?who (?:all )?(?:is|'s|will be) away\b"),
}
_WHOSE_ELSE = Late(
    r"\bwhose (?:turn|go|week|job)(?: is it| is)? to (?:host|make|have|do|get|bring|run) (?:the )?"
    r"(?:book|film|movie|games?|quiz|poker|choir|dinner|tea|teas|coffee|school|washing|dishes|"
    r"shopping|raffle|playgroup|meeting)\b|"
    rf"\bwhose (?:turn|go|week|job)(?: is it| is)? to (?!{_CARES}\b)[a-z]+|"
    r"\bwhose (?:turn|go|week|job)(?: is it| is)? (?:for|on|with) (?:the )?(?:[a-z]+ )?(?:flowers|"
    r"stairs|games?|console|rota|biscuits|dishes|bathroom|teas|driving|school run)\b|"
    r"\bwhose (?:turn|go|week|job)(?: is it| is)? for (?:the|a|an) (?!qbin\b|bins?\b|buckets?\b|"
    r"drain|"
    r"seal|bran|tap\b|week|month|rota|keep|bury|burial|scraps|leachate|juice|starter|lot\b|bokashi|"
    r"compost|layer|trench|dig|empty|caddy|pail|tub|drum|one\b|next|turn|peel|food|kitchen|barrel)[a-z]+|"
    r"\bwhose (?!qbin\b|bins?\b|buckets?\b|turn\b|go\b|week\b|tub\b|pail\b|job\b)[a-z]+ is "
    r"(?:loose|"
    r"barking|crying|ringing|beeping|outside|this|"
    r"that|blocking|parked|in the way)\b|"
    r"\bwhose go is it , i have moved\b|"
    r"\bwho (?:is |'s )?(?:has|have|got|looking after|minding|feeding|walking) (?:the )?qbin 's "
    r"(?!lid\b|tap\b|scoop\b|bran\b)[a-z]+|"
    r"\bwho (?:is |'s )(?:babysitting for|teaching|driving|cooking|baking|singing|"
    r"playing|refereeing)\b|"
    r"^(?:and |so |but )?who (?:in (?:their|his|her|your) right mind|elected|died|knew|cares|sells|"
    r"dey sell|keeps putting|would have thought|'d have thought|sent me|on earth)\b|"
    r"\bwho (?:is |'s )?(?:keen|game|in the mood|coming|going) for (?!(?:the )?qbin)|"
    r"\bwho (?:'s |has |have )?got (?:(?:that|this|the) (?:sort|kind|money|time|energy|patience)|"
    r"(?:time|money|energy))\b|\bthe only one who\b|"
    r"\bwho (?:full up|parked|dumped|broke|bruk|hide|hid|nicked|stole|thief|ate|eat|painted|"
    r"scratched|hit|knocked|painted|burnt|burned) (?!(?:the )?qbin)|"
    r"\bwho (?:can|could) (?:say|tell)(?: me)?(?=$| \?| [.])|"
    r"[.,] who (?:is it|'s it|is this|'s this) for\b|"
    r"\bis it (?:just )?me or has\b|\bwho 'd be an?\b"
)
"""Turns and keepers of other things, whatever place with a bin's name stands beside them."""
_RHETORICAL = Late(
    r"\bwhy me$|\bwhy do (?:i|they|we) (?:even bother|bother|hate|always)\b|\bto deserve this\b|"
    r"\bpast caring\b|\bis it any wonder\b|\bhow time flies\b"
)
"""Sighs in the form of a question."""
_ROOM_ELSE = Late(
    r"\b(?:room|space) for (?:\w+ ){0,3}(?:guests?|kids|people|chairs|bikes?|cars?|tables?|beds?|"
    r"prams?|boxes|bodies|visitors|dogs?)\b"
)
_FOR_MOUTHS = Late(
    r"\b(?:can|may|could|should) (?:the |my |our |her |his )?(?:dogs?|cats?|hens|chooks|rabbits?|"
    r"goats?|pony|horses?|ducks?|baby|toddlers?|kids|guests|hamster|parrot) (?:eat|have|drink)\b|"
    r"\b(?:in|into) (?:the|a|my|your) (?:oven|freezer|microwave|dishwasher|wash|stew|lunchbox|"
    r"fryer|slow cooker|salad|sandwich|casserole)\b|"
    r"\b(?:soil|compost|manure|gravel|sand|mulch) (?:in|into|on) (?:the|a|my|your|our) (?:\w+ )?"
    r"(?:pots?|planters?|window ?box(?:es)?|borders?|baskets?|flower ?beds?)\b|" + POURED_ON.source
)
"""What goes into mouths and pots, and what is poured on plants."""
_BRAN_OF_BEASTS = Late(
    rf"{BRAN_ELSE.source}|\bbran\b.{{0,80}}\b(?:breed|(?:horse|pony|donkey) 's)\b|"
    r"\bbran\b(?! for \d).{0,80}\b(?:feed|give|fed) (?:to )?(?:the|my|our|an?|her|his) (?:\w+ "
    r")?(?:horse|pony|"
    r"donkey|"
    r"rabbit|pig|goat|cow|hen|chicken|sheep|calf)s?\b|"
    r"\bbran (?:in|inside|into) (?:my|your) (?:\w+ )?(?:coffee|tea|shaker|protein|smoothie|shake|"
    r"cereal|"
    r"porridge|breakfast|pockets?|shoes?|bed|hair|keyboard|hoover|yoghurt)\b"
)
_COLOURED = (
    r"(?:(?:green|brown|blue|black|gr[ae]y|red|purple|yellow|orange|recycling|garden|glass|paper|"
    r"rubbish|refuse|council|wheelie|landfill|general|trash|garbage|waste|food) ){1,3}"
)
COUNCIL = Late(
    rf"\b{_COLOURED}(?:ones|bins?|week|day|box(?:es)?|sacks?)\b"
    r"(?: (?:do|does|is|are|was|were|supposed|meant|to|being|getting|have|has|been|even|ever|all|"
    r"this|next|week|day|or|again))* (?:go|goes|gone|going|get|gets|put|taken|left|out|emptied|"
    r"collected|collection|picked|missed|brought)\b|"
    rf"\b(?:is it|which|or) (?:the |a )?{_COLOURED}(?:bins?|week|day)?(?: \S+){{0,3}} or (?:the |"
    rf"a )?"
    rf"{_COLOURED}|"
    rf"\b(?:miss|missed|empty|emptied|collect|collected|take|took|put out) (?:the |our |my |all )*"
    rf"{_COLOURED}(?:ones|bins?|box(?:es)?|sacks?)\b|"
    r"\bcouncil (?:lorry |van |men )?(?:(?:do|does|will|is|to|ever|even) )*(?:picks?|collects?|"
    r"collecting|picking|takes?|taking|empt(?:y|ies)|fetch(?:es)?|comes?|coming|has|have)\b|"
    r"\bbin (?:day|lorry|men|man|wagon|truck|collection)\b|\b(?:binmen|binmens|refuse "
    r"collectors?)\b|"
    r"\b(?:do|does|put|get|are|is) (?:the |our )?bins? (?:go |going |to go |being )?(?:out|"
    r"collected|"
    r"emptied by the council)\b|\brecycling (?:now|day|week|collection|collected|lorry|go|goes)\b"
)
"""What a council's lorry takes, and when."""
OF_DAYS = frozenset({"ask due", "ask custody", "ask bin", "ask trouble"})
LORRY_CUES = words_in(
    "green brown blue black grey gray red purple yellow orange recycling garden glass paper "
    "rubbish "
    "refuse council wheelie landfill general trash garbage waste food bin bins binmen"
)
OF_CRAFT = words_in(
    "bury buried burying drain drained draining seal sealed sealing ferment fermented ground soil "
    "trench due ready bran bokashi"
)


_REMINDS = Late(
    r"\b(?:would|could|can|will|may|might) (?!(?:i|we)\b)(?:\S+ ){1,6}?(?:please |kindly |just |"
    r"all )*"
    r"(?:remember|note|refrain|understand|stop|appreciate|respect)\b(?! :)"
)
"""Asked of people, that they mind their manners."""
BESIDE_BINS: dict[str, Late] = {
    "accept": Late(
        r"\b(?:take|taking|bring|drop|dropping|leave|put|carry|move|pick|collect|get|fetch)\b"
        r"(?! (?:my name|me|us|it|him|her)\b)(?:(?!qbin\b)[^.,!?]){1,30} "
        r"(?:in|into|to|at|by|from|behind|outside|near) (?:the )?qbin\b|"
        r"\b(?:am|be|was|were|being) (?:always |never |usually |the |a |still |so )*qbin"
        r"(?= ?[.,!?]|$)(?!.*\b(?:keep\w*|bin|week|turn)\b)|"
        r"\bqbin\b.*\bthe other "
        r"(?!qbin|two|three|four|bins?\b|buckets?\b|ones?\b|week|day|keepers?\b)[a-z]+|"
        r"\b(?:looks?|looked) (?:a bit |very |more |kind of )?qbin to (?:me|us)\b|"
        r"\bqbin (?:tupperware|box|bowl|mug|scarf|coat|hat|jacket|bike|car|keys?|umbrella|"
        r"gloves?|bag|"
        r"flask|torch|phone|charger|ladder) (?:is|are|'s) (?:mine|ours)\b|"
        r"\b(?:had|ate|eaten) (?:my|two|three|one|a|an|enough|plenty|\d)\b.{0,15}\b(?:slices?|"
        r"pieces?|"
        r"helpings?|bowls?|plates?|portions?|fill)\b|"
        r"\b(?:take|drive|bring|get) (?:her|him|them) to (?:the |see |a )*(?:dentist|doctors?|"
        r"vets?|hospital|airport|station|football|swimming|ballet|piano|clinic|cinema)\b|"
        r"\b(?:have|use|borrow|take) (?:the )?qbin for (?:the|a|an|my|our|his|her) (?:\w+ )?"
        r"(?:party|barbecue|bbq|wedding|sale|gig|band|rehearsals?|meeting|afternoon|workshop|"
        r"christening|wake|raffle|fete)\b"
    ),
    "later": Late(
        r"\b(?:put|add|bring|chuck|tip|throw|bung) (?:something|some|my|scraps|more|peel|a (?:bit|"
        r"few|"
        r"little|kilo))\b(?! bran\b).{0,25}\b(?:in|to|into|for) (?:the )?qbin\b"
    ),
    "ask custody": _WHOSE_ELSE,
    "decline": Late(
        r"^(?!.*\b(?:cant|cannot|couldnt|wont|unable|pass|no room|no space|someone else|somebody "
        r"else|busy|away|turn|offer|not me)\b).*(?:\bnot that (?:i|we|he|she|they|qmember) "
        r"(?:had|have|has|did|do)\b|\b(?:not|havent|hasnt|hadnt|aint|didnt|never|nobody|noone)"
        r"(?: (?:yet|even|actually|ever|been and))? (?:took|taken|drained|drain|sealed|seal|"
        r"buried|bury|added|add|drawn|drew|emptied|empty|fed|tipped|chucked|logged|weighed|opened) "
        r"(?:nothing|nothin|nowt|anything|owt|any|it|her|him|the|qbin|a|none|out|off|no)\b)"
    ),
    "ask trouble": Late(
        rf"{_RHETORICAL.source}|\b(?:do|did|does|are|is|will|would) (?:you|they|he|she|we|i|"
        r"qmember) (?:all )?(?:fly|flying)\b"
    ),
    "retract": Late(
        r"\bqbin (?:is )?(?:called|named) (?:scratch|delete|undo|strike|cancel|forget)\b"
    ),
    "offer": Late(
        r"\bwho (?:wants|needs|fancies|would like|'d like) (?:his|her|their|my|our|a|an|some|these|"
        r"the last|\d+) (?!(?:qbin|bins?|buckets?|tubs?|pails?|turn|go|week|one|job|next|for|from|"
        r"this|on|until|till|after|then|now|please|while|over|off|to|and|in|at|more|first|again)\b)"
        r"[a-z]+|"
        r"\b(?:spare|guest|box) (?:room|bed)\b|\broom (?:is )?(?:to let|for rent)\b|"
        r"\b(?:left|leaving|put|there is|there are|box of|bag of|bags of|crate of)\b.{0,40}\b(?:by|"
        r"at|near|on|outside|beside|behind|from) (?:the )?qbin\b.{0,30}\bwhoever (?:wants|needs|"
        r"fancies|likes)\b"
    ),
    "ask bin": _ROOM_ELSE,
    "ask help": Late(
        r"\bwhat do you say to\b|"
        r"\bwhat (?:do|can|did|could|should|will) (?:i|we|you|they) (?:all )?(?:feed|give|call|"
        r"wear|buy|cook|think|fancy|reckon|make of|drink|owe|play|eat|bring|watch|read|sing|"
        r"need|want|see|hear)\b(?! to know)|"
        r"\bwhat (?:are|is|were|was) (?:we|you|they|he|she|qmember) (?:all |lot |two )*"
        r"(?!tracking|recording|logging|noting|counting)[a-z]+ing\b|"
        r"\b(?:which|what) \w+ do (?:you|we|they) (?:want|like|fancy|prefer|need)\b|"
        r"\blist (?:of|for) who\b|\bwho brings what\b"
    ),
    "ask batch": _BRAN_OF_BEASTS,
    "ask dose": _BRAN_OF_BEASTS,
    "ask starter": _BRAN_OF_BEASTS,
    "ask allowed": Late(
        rf"{_FOR_MOUTHS.source}|{_REMINDS.source}|"
        r"^what (?:goes|would go|do (?:you|we) (?:have|serve|do|eat)) (?:best |well )?with (?!qbin)"
    ),
    "ask due": Late(
        r"\bsince when\b|\bmeans? (?:it |that )?when\b|^why bother\b|\bcount our weeks\b"
    ),
}
"""What is an aside although a bin, or a place with a bin's name, stands in it."""
_EVENTS = (
    "football netball choir panto quiz karaoke bingo babysit babysitting babysitter tea-duty "
    "referee linesman carpool cricket rugby match screening"
)
ELSEWHERE = {
    "ask custody": words_in(
        f"{_THINGS} {_EVENTS} cook cooking bake babysit hoover vacuum dishes shopping goalie"
    ),
    "offer": words_in(_THINGS),
    "ask dose": words_in(
        "loaf loaves sourdough baby babies toddler child fever syrup flea fleas formula medicine "
        "paracetamol ibuprofen cows horse horses detergent softener chlorine"
    ),
    "ask starter": words_in("loaf loaves sourdough bread"),
    "ask totals": words_in(
        "raised puppy calf calves steer lamb moose payroll vaccinated parking present fundraiser "
        "collection donations votes goals pumpkin marathon"
    ),
    "ask due": words_in(
        "library books parcel piccalilli cake pie film episode passport homework tide pottery rent"
    ),
    "ask dilution": words_in(
        "rice pasta couscous porridge lentils concrete plaster mortar vinegar windows toddlers "
        "tank cordial bleach detergent softener cot lime whisky gin fry "
        "frying samosa samosas fritters batter eggs dough"
    ),
    "ask bed": words_in(
        "topsoil woodchip bark seed seeds gravel paint mattress bunk carpet tiles stairs bedroom "
        "slabs turf wall walls "
        "wallpaper landlord landlady plaster"
    ),
    "ask trench": words_in(
        "cable cables broadband pipe drainpipe footing footings foundation foundations "
        "concrete cement postcrete mortar hardcore sandbag sandbags hamster goldfish budgie gerbil "
        "tortoise bulb bulbs fence post posts road pool "
        "pond postholes tent"
    ),
    "ask trouble": words_in(
        "printer atm cement ankle telly tv salon radio phone laptop knee boiler shoulder tyre"
    ),
    "ask bin": words_in(
        "suitcase cocktail pint kids handbag fridge freezer flat car boot bus train cinema church "
        "hall theatre pub inbox diary calendar moon bath kettle bag rucksack"
    ),
    "ask allowed": words_in("coleslaw china microwave pancakes ladder ladders suitcase sofa bike"),
    "ask help": words_in("birthday shopping reference homework cv"),
}
"""Words of another matter, in questions that have the craft's shape."""
