"""What is an aside although a bin, or the word for one, stands in it: turns of other things, the
council's bins, bran of beasts, words of another matter; tables for `asides`.
"""

from handlers.reading.doubts.asidewords import THINGS
from handlers.reading.doubts.branelse import BRAN_ELSE
from handlers.reading.questions.briefly import POURED_ON
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

_CARES = (
    r"(?:take|have|keep|host (?=(?:the )?(?:qbin|it|him|her|bins?|buckets?)\b)|mind|"
    r"drain|empty|feed|fill|bury|seal|make|mix|look|collect|carry|"
    r"check|"
    r"clean|wash|rinse|hold|store|tip|dig|stir|top|"
    r"(?:bring|haul|lug|move|fetch|shift|get|do) (?:the )?(?:qbin|it|him|her|bins?|buckets?|bran))"
)
"""What a turn of ours is for."""
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
    r"compost|layer|trench|dig|empty|caddy|pail|tub|drum|one\b|next|turn|peel|food|kitchen|"
    r"barrel)[a-z]+|"
    r"\bwhose (?!qbin\b|bins?\b|buckets?\b|turn\b|go\b|week\b|tub\b|pail\b|job\b)[a-z]+ is "
    r"(?:loose|"
    r"barking|crying|ringing|beeping|outside|this|"
    r"that|blocking|parked|in the way|on|by|outside|under|behind|in front)\b|"
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
    r"\b(?:can|could|do|should|how do) (?:you|i|we|one) (?:freeze|refreeze|reheat|microwave|fry|"
    r"roast|steam|toast|pickle|bottle|grow|dye|sow)\b|"
    r"\b(?:milk|sugar|honey|lemon) (?:go|goes) in (?:the )?(?:tea|coffee)\b|"
    r"\b(?:good|ok|okay|safe|fine|bad) for (?:the |my |our )?(?:birds?|dogs?|cats?|hens|chickens|"
    r"rabbits?|horses?|ducks|hedgehogs|baby|toddlers?|hair|skin|dyeing)\b|"
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
    r"\b(?:next|when is|when 's|what day is) (?:the )?collection\b|"
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


_GROWN_ELSEWHERE = (
    r"\b(?:mou?lds?|fluff|fuzz|fur|mildew|spots?)\b(?: \w+)? (?:on|over|in|all over) "
    r"(?:(?:the|my|our|his|her|a|some|these|those|your) )*(?!qbin)(?:\w+ )?(?:hydrangeas?|roses?|"
    r"leaves|leaf|lawn|hedge|shrubs?|orchids?|seedlings?|houseplants?|pot ?plants?|vines?|stems?|"
    r"bathroom|shower|ceiling|walls?|windows?|window ?sills?|curtains?|tent|shoes|jacket|mattress|"
    r"grout|tiles|carpet|sofa|boat|sourdough|salami)\b|"
    r"\bmou?ld(?: \w+)? on (?:(?:the|my|our|some) )*(?:jam|marmalade|cheese|bread|loaf|cake|"
    r"yogh?urt|chutney|curd|honey|butter)\b.{0,60}\b(?:scrape|eat|eating|edible|toast|poison\w*|"
    r"ill)\b"
)
"""A growth that is asked about on a plant, a wall or one's breakfast."""
_CARRIED = (
    r"\b(?:allowed|permitted|ok|okay|banned) (?:on|in|onto|aboard|through|at) "
    r"(?:(?:a|an|the|my|our|your|this) )*(?:plane|planes|aeroplane|flights?|train|bus|coach|ferry|"
    r"tram|metro|tube|taxi|hand luggage|luggage|carry-on|cabin|customs|airport|hospital|library|"
    r"cinema|theatre|museum|exam|diet|lent|ramadan)\b"
)
_REMINDS = Late(
    r"\b(?:would|could|can|will|may|might) (?!(?:i|we)\b)(?:\S+ ){1,6}?(?:please |kindly |just |"
    r"all )*"
    r"(?:remember|note|refrain|understand|stop|appreciate|respect)\b(?! :)"
)
"""Asked of people, that they mind their manners."""
_SEEN_TO = (
    "look at|take a look|take a peek|have a look|look in on|"
    "check|check on|peek|see|inspect|empty|drain|bury|seal|dig|wash|"
    "rinse|clean|open|turn on|top up|weigh|mend|fix"
)
"""What a neighbour is asked to do to a bin for once: it is not passed on to him."""
_KEPT = (
    "take(?! an? (?:look|peek|photo|picture|sniff))|takes|taking|"
    "keep|keeping|host|hosting|having|have (?:the |your )?qbin|"
    "have (?:it|him|her)|look after|looking after|mind (?:the |my )?qbin|minding|hand over|"
    "over to you|pass|passing|adopt|foster|yours|home for|a home|want|wants|fancy|like the|"
    "like qbin|turn|swap|instead|keepers?|to you|starting|startin|until|till|while|whilst|"
    "from (?:\\w+day|tomorrow|the \\d+)|for (?:a|the|two|three|\\d+) (?:weeks?|months?|fortnight)"
)
BESIDE_BINS: dict[str, Late] = {
    "accept": Late(
        r"^(?!.*\b(?:turn|week|month|take (?:it|her|him|the|over)|have it|host|keep)\b).*"
        r"\b(?:(?:that|this|it|that one|the \w+)(?: is|'s| 's) (?:mine|ours|my \w+)|mine has|mine "
        r"is|"
        r"mine 's)\b.{0,60} i (?:will|shall|can) .{0,40}\bqbin\b|"
        r"^(?:(?:ok|cool|great|,) )*i (?:will|shall) (?:swing|pop|nip|drop|stop|call|come|go|run|"
        r"be) "
        r"(?:by|in|into|round|over|down|up|past|at|to)(?: to| at| by)? (?:the |your )?qbin\b"
        r"(?!.*\b(?:it|her|him|take|collect|fetch|get|pick|grab|turn|mind|keep|swap)\b)|"
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
    "amend": Late(  # how warm a room was
        r"^(?:(?:phew|wow|god|lord|ugh|gosh|jeez|and|,|!) )*(?:it )?(?:was|is|'s|hit|reached) "
        r"(?:(?:about|over|nearly|only|like|a|at) )*\d\d(?:[.,]\d)? "
        r"(?:in|on|at) (?:the |our )?qbin (?:today|yesterday|last night|tonight|all (?:day|night)|"
        r"this (?:morning|afternoon|week)|at (?:noon|midday|night)|by noon|earlier)\b"
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
        rf"{_RHETORICAL.source}|{_GROWN_ELSEWHERE}|"
        r"\b(?:bad|wrong|ok|okay|normal|weird|odd) (?:that|if|when) (?:i|we|he|she|my \w+) "
        r"(?:\w+ )?(?:ate|eat|drank|drink|slept|sleep|cried|cry|laughed|laugh|like|liked|love|"
        r"loved|want|miss)\b|"
        r"\b(?:do|did|does|are|is|will|would) (?:you|they|he|she|we|i|"
        r"qmember) (?:all )?(?:fly|flying)\b"
    ),
    "retract": Late(
        r"\bqbin (?:is )?(?:called|named) (?:scratch|delete|undo|strike|cancel|forget)\b"
    ),
    "offer": Late(
        r"\bkeys? (?:to|for|of) (?:the )?qbin\b|"
        r"\b(?:want|wants|wanted|need|needs|like|love|have|has|trying|going) to (?:change|fix|"
        r"mend|paint|"
        r"hang|drill|clean|install|replace|repair|rewire|hoover|sweep|put up|take down|swap) "
        r"(?:(?:the|an?|my|our|some|that|new|old) )*(?!(?:qbin|bins?|buckets?|turns?|weeks?|go|"
        r"slot|"
        r"days?|keepers?|rota|with|over)\b)[a-z]+\b|"
        rf"^(?!.*\b(?:{_KEPT})\b)(?:.*\b)?(?:(?:give|giving|lend|lending) (?:me|us) (?:an? )?"
        r"(?:extra )?hand|for a (?:hand|lift)|(?:to|you) help(?: me| us)?|"
        r"have (?:a|five|ten|\d+) (?:mo|moment|minutes?|mins?|sec|second)|would you mind \w+ing|"
        rf"(?:can|could|would|will) you (?:please |just |also |maybe )?(?:{_SEEN_TO})|"
        r"will you be (?:home|in|there|about|around)|are you (?:home|in|about|around))\b|"
        r"\bwho (?:wants|needs|fancies|would like|'d like) (?:his|her|their|my|our|a|an|some|these|"
        r"the last|\d+) (?!(?:qbin|bins?|buckets?|tubs?|pails?|turn|go|week|one|job|next|for|from|"
        r"this|on|until|till|after|then|now|please|while|over|off|to|and|in|at|more|first|again)\b)"
        r"[a-z]+|"
        r"\b(?:spare|guest|box) (?:room|bed)\b|\broom (?:is )?(?:to let|for rent)\b|"
        r"\b(?:left|leaving|put|there is|there are|box of|bag of|bags of|crate of)\b.{0,40}\b(?:by|"
        r"at|near|on|outside|beside|behind|from) (?:the )?qbin\b.{0,30}\bwhoever (?:wants|needs|"
        r"fancies|likes)\b"
    ),
    "ask bin": Late(
        rf"{_ROOM_ELSE.source}|\bhow much (?:is|are|was|for) an? (?!qbin\b|bins?\b|bucket)[a-z]+|"
        r"\bwhat(?: is| 's|s) in (?:the|that|this|my|your|his|her) (?!qbin\b|bins?\b|buckets?\b|"
        r"tub\b|"
        r"drum\b|barrel\b|caddy\b)[a-z]+ (?:on|in|by|at|from|outside|behind|under) (?:the )?qbin\b"
    ),
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
    "ask dose": Late(
        rf"{_BRAN_OF_BEASTS.source}|"
        r"^(?:(?:hi|hey|all|i|we|just|still|,) )*(?:need|want|after|short of|looking for) "
        r"(?:[\d.]+ ?|an? |half an? |two |three )(?:kg|kilos?|g|grams?|lbs?|pounds?|oz|litres?|"
        r"pints?|cups?) "
        r"of (?!bran\b|starter\b|bokashi\b)[a-z]+(?: [a-z]+)?(?: ?[,.?])* (?:any(?:one|body)|"
        r"some(?:one|"
        r"body)|who|please|if|for)\b"
    ),
    "ask starter": _BRAN_OF_BEASTS,
    "ask allowed": Late(
        rf"{_FOR_MOUTHS.source}|{_REMINDS.source}|{_CARRIED}|"
        r"^what (?:goes|would go|do (?:you|we) (?:have|serve|do|eat)) (?:best |well )?with (?!qbin)"
    ),
    "ask due": Late(
        r"^(?:and |so |er )?which (?:one|qbin|bin) ?\??$|"  # a neighbour asks back
        r"\b(?:when|what time) (?:does|do|will|did) (?:the )?qbin (?:open|close|shut)(?: up)?"
        r"(?= today| tomorrow| on| now| this| qday|$)|"
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
        f"{THINGS} {_EVENTS} cook cooking bake babysit hoover vacuum dishes shopping goalie"
    ),
    "offer": words_in(THINGS),
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
