"""What is measured and went into no bin: turns of phrase, each row with its cues; a table for
`notscraps`.
"""

MASS = (
    r"(?:[\d.]+|an?|half an?|\w+) ?(?:kg|kilos?|kilograms?|g|grams?|lbs?|pounds?|stone|oz|ounces)"
)
WEIGHT = (
    r"(?:[\d.]+|half an?|an?|one|two|three|four|five|six|ten|twenty) ?(?:kg|kilos?|kilograms?|"
    r"lbs?|pounds?|stone|grams?|g)"
)
AMOUNT = (
    r"(?:[\d.]+|an?|half|one|two|three|four|five) ?(?:an? )?(?:kg|kilos?|g|grams?|lbs?|pounds?|oz|"
    r"ounces|litres?|liters?|l|ml|cups?|quarts?|gallons?)"
)
_DEED = (
    r"(?:chuck|put|add|tip|throw|drop|bung|sling|lob|dump|toss|empty|feed|scrape|shove|stick|bin|"
    r"layer|get|bring|take)"
)
_DOING = (
    r"(?:chucking|putting|adding|tipping|throwing|dropping|bunging|slinging|lobbing|dumping|"
    r"tossing|emptying|feeding|scraping|shoving|sticking|binning|getting|bringing|taking)"
)
_DONE = (
    r"(?:chucked|put|added|tipped|thrown|threw|dropped|bunged|slung|lobbed|dumped|tossed|emptied|"
    r"fed|scraped|binned)"
)
_AT_ROOM = r"(?: (?:in|at|on|by|near|off|from|round|outside|behind|over) (?:the |our )?qbin\b)?"
ENDS = (
    r"(?:(?! (?:but|so|then|instead|and|before|until|yet|because)\b)(?:[^,.;:!?]|(?<=\d)\.(?=\d)))*"
)
_LESSON = (
    r"(?:yoga|art|dance|cooking|evening|night|sewing|pottery|language|fitness|swimming|book|chess|"
    r"walking|running|football|tennis|youth|lunch|breakfast|gardening|film|her|his|our|my)"
)
TURNS: tuple[tuple[str, str], ...] = (
    (  # bodies, luggage and the gym
        "christmas xmas easter year holidays holiday lockdown "
        "weighed weighs weigh weighing lost gained heavier lighter baby son daughter grandson "
        "granddaughter nephew niece lamb calf toddler puppy kitten rucksack grandchild ram ewe "
        "pig dog "
        "cat hamster tortoise parcel pram "
        "backpack suitcase luggage added myself meself masel masell bench benched bench-pressed "
        "squatted squats deadlift deadlifted "
        "deadlifts kettlebell kettlebells dumbbell dumbbells barbell slimming midwife",
        r"\b(?:weighed|weighing|weighs|weigh) (?:myself |himself |herself )?in at\b"
        rf"{ENDS}|"
        rf"^(?:(?:i|have|ive|'ve|just|already|,) )*added {MASS} (?:since|over) (?:christmas|"
        rf"easter|new year|xmas|the holidays|the holiday|summer|winter|lockdown)\b{ENDS}|"
        rf"\b(?:lost|gained|put on) {MASS}\b{ENDS}\b(?:since|slimming|diet|weight|gym|christmas|"
        rf"holidays?|this month|in (?:two|three|six|a) (?:weeks?|months?|fortnight)){ENDS}|"
        rf"^{MASS} (?:heavier|lighter) (?:than|since|this)\b{ENDS}|"
        rf"\b(?:i|im|am|me|dog|cat|husband|wife|feel|felt|back|home) "
        rf"(?:(?:is|am|was|about) )*{MASS} "
        rf"(?:heavier|lighter)\b{ENDS}|"
        rf"\b(?:added|put) {MASS}\b(?: of \w+)? (?:to|tae|on|onto|in|into) (?:my|me|mi|"
        rf"ma) ?(?:self|sel|"
        rf"sell|waist|waistline|belly|bum|hips|arse|tummy)\b{ENDS}|"
        rf"\b(?:added|put) {AMOUNT}\b(?: of \w+)? (?:to|tae|in|into|inside) (?:myself|meself|"
        rf"masell?|"
        rf"mysel|me|us|him|her)\b(?! \w+(?: \w+)? (?:bin|bucket|tub|pail|caddy)\b)"
        rf"{ENDS}|"
        rf"\bweigh(?:ed|ing) (?:(?:the|my|our|her|his|their|a|new|old|poor|\w+ 's) )*"
        rf"(?:baby|puppy|kitten|rucksack|backpack|suitcase|luggage|toddler|grandson|granddaughter|"
        rf"grandchild|nephew|niece|lamb|calf|ram|ewe|pig|dog|cat|hamster|tortoise|parcel)\b"
        rf"(?! (?:'s|food|tins?|litter|bowl|basket))"
        rf"(?:(?! (?:but|so|then|scraps|peel\w*|leftovers|qbin)\b)(?:[^.;:!?]|(?<=\d)\.(?=\d)))*|"
        r"\b(?:baby|puppy|kitten|rucksack|backpack|suitcase|luggage|midwife|toddler|son|daughter|"
        r"grandson|granddaughter|nephew|niece|lamb|calf)"
        rf"(?: \w+){{0,4}} (?:is|was|weighs|weighed|came in at) (?:(?:now|only|about|over|nearly|"
        rf"a|at|already|up|to) ){{0,3}}{MASS}\b{ENDS}|"
        rf"\b(?:bench(?:ed|-pressed| press(?:ed)?)|squat(?:ted|s)?|deadlift(?:ed|s)?|kettlebells?|"
        rf"dumbbells?|barbell)\b{ENDS}",
    ),
    (  # what a child or a pet weighs, whatever else is told of it
        "weighs weighed weighing weigh",
        r"^(?!.*\b(?:qbin|bins?|buckets?|scraps|peels?|peelings|leftovers|bran)\b).*\b(?:my|our|"
        r"his|"
        r"her|their|your|the|'s) (?:\w+ )?(?:baby|toddler|newborn|puppy|kitten|grandson|"
        r"granddaughter|grandchild|son|daughter|nephew|niece|twins?|godson|goddaughter|dog|cat|"
        r"pony|"
        r"calf|lamb|foal|rabbit|boy|girl)(?: \w+){0,3} (?:weighs?|weighed|weighing)\b.*",
    ),
    (  # dosed beasts
        "worming wormer flea tablet tablets jab jabs injection antibiotics vaccinated",
        r"^(?!.*\b(?:scraps|peels?|peelings|leftovers|bran|skins)\b).*\b(?:worming|wormer|flea|"
        r"tablets?|"
        r"jabs?|injection|antibiotics|vaccinated)\b.*",
    ),
    (  # bought
        "cash supermarket wholesaler wholesalers corner",
        rf"\b(?:got|bought|picked up|grabbed|fetched) (?:{AMOUNT}|"
        rf"{MASS})\b[^,.;:!?]{{0,30}}\b(?:from|"
        rf"at) (?:the )?(?:cash and carry|supermarket|wholesalers?|corner shop)\b{ENDS}",
    ),
    (  # cooked, sown, served, or thrown elsewhere
        "cooked boiled reduced stewed roasted canned juiced froze frozen blanched mashed people "
        "guests "
        "kids families mouths volunteers pensioners workers students children scattered sowed sown "
        "skip dumpster landfill bonfire woodburner pond hedge lake",
        rf"\b(?:cooked(?: down| up)?|boiled(?: down| up)?|reduced|stewed|roasted|canned|juiced|"
        rf"froze|"
        rf"frozen|blanched|mashed) (?!.*\b(?:peels?|peelings|scraps|skins|leftovers|pulp|waste|"
        rf"bones|tops|ends|"
        rf"husks|shells|stale|burnt|spoiled|spoilt)\b){AMOUNT}\b(?: of)?(?: "
        rf"\w+){{1,3}}?{_AT_ROOM}(?! into)|"
        r"\bfed (?:\w+ ){0,2}(?:people|guests|kids|families|mouths|of us|volunteers|pensioners|"
        r"workers|"
        rf"students|neighbours|neighbors|children)\b{ENDS}|"
        rf"\b(?:scattered|sowed|sown) {AMOUNT}\b{ENDS}|"
        rf"\b(?:{_DONE}|took|put) (?:{AMOUNT}|\w+ \w+)\b[^,.;:!?]{{0,40}} (?:in|into|on) (?:the|"
        rf"a) "
        rf"(?:skip|dumpster|landfill|bonfire|woodburner|pond|hedge|lake)\b{_AT_ROOM}",
    ),
    (  # flour and what it is for
        "flour",
        rf"^(?!.*\bqbin\b)(?:{AMOUNT} (?:of )?)?(?:\w+ )?flour(?: ?,? ?{AMOUNT})? ?(?:,|for) "
        r"(?:(?:for|the|a|my|our|birthday|wedding) )*(?:cakes?|pancakes?|bread|pizzas?|scones|"
        r"muffins|biscuits|cookies|dough|baking)$",
    ),
    (  # to buy, or on the shelves
        "staples shopping groceries rations",
        r"\b(?:staples|shopping(?: list)?|groceries|rations) ?:.*",
    ),
    (  # game
        "dressed pointer buck doe stag deer moose elk caribou boar hunting antlers rack",
        r"^(?!.*\b(?:qbin bin|bins?|buckets?|scraps|trimmings|offcuts|bones?|guts|hide|bran|"
        r"layer)\b)"
        r".*\b(?:field dressed|\w+ pointer|(?:shot|bagged|took|got|hung|dressed|dropped) (?:a|an|"
        r"my|"
        r"his|her|our) (?:\w+ ){0,2}(?:buck|doe|stag|deer|moose|elk|caribou|boar))\b.*",
    ),
    (  # eaten
        "away",
        rf"\b(?:put|putting) {AMOUNT}\b(?: of)?(?: \w+){{1,3}} away\b(?! (?:in|into|to|"
        rf"down)\b){ENDS}|"
        rf"\b(?:put|tucked|packed) away {AMOUNT}\b{ENDS}",
    ),
    (  # what was caught, shot, picked to eat
        "caught landed reeled hooked netted hauled foraged haul catch shot",
        rf"\b(?:caught|landed|reeled in|hooked|netted|hauled (?:in|up|out)|foraged|shot) "
        rf"(?:a |an |about |around |nearly |over |some )?(?:{MASS}|\d+)\b"
        rf"(?: \w+){{0,4}}?{_AT_ROOM}|"
        rf"\b(?:haul|catch) (?:was|is|of|today|this morning|:)\b(?: \w+){{0,6}}?{_AT_ROOM}",
    ),
    (  # spilt in a room
        "spilled spilt spilling spill knocked dropped exploded burst smashed shattered",
        r"\b(?:jars?|bottles?|cans?|flask|demijohn|keg|crock|mug)(?: of (?:\w+ )?\w+)? (?:(?:has|"
        r"have|had|"
        rf"just|got) )*(?:exploded|burst|smashed|shattered)\b{ENDS}|"
        rf"\b(?:spilled|spilt|spilling|knocked over)\b(?: [^,.;:!?]+?)?"
        r" (?:in|on|over|across|round) (?:the |our |my |his |her )?(?:qbin|floor|carpet|rug|stairs|"
        r"landing|worktop|table|sofa|car|lap|keyboard|pavement|path|road)\b(?: (?:floor|carpet|"
        r"stairs|"
        r"rug|tiles|table|worktop))?|"
        rf"\b(?:knocked|dropped) {ENDS}\b(?:over|off|on|down|all over) (?:in |on )?"
        r"(?:(?:the|our|my) )?(?:qbin (?:floor|carpet|stairs|rug|tiles|table|worktop)|floor|carpet|"
        r"rug|stairs|worktop|foot|toe|toes)\b|"
        rf"\bknocked {ENDS}\bover{_AT_ROOM}",
    ),
    (  # what was only meant, or supposed
        "hypothetically theoretically theory intention intentions meant intended supposed almost "
        "nearly close gets takes suppose supposing argument's argument",
        rf"\b(?:hypothetically|theoretically|in theory|(?:just )?suppos(?:e|ing)|for (?:the sake "
        rf"of "
        rf"argument|argument 's sake))\b[ ,.:—-]*{ENDS}|"
        rf"\b(?:every|full|no|all the best|the best) intentions? (?:of|to) \w+{ENDS}|"
        rf"\b(?:meant|intended|supposed) to (?:have )?(?:{_DEED}|{_DONE})\b{ENDS}|"
        rf"\b(?:nearly|almost|very nearly) {_DONE}\b{ENDS}|"
        rf"\bif (?:\S+ ){{0,6}}(?:gets?|takes?) (?:one|another|any|a) (?:single )?(?:more "
        rf")?(?:kilo|kg|gram|"
        rf"pound|lb|bag|peel|scrap|litre)\b{ENDS}|"
        rf"\b(?:close|about) to {_DOING}\b{ENDS}",
    ),
    (  # the bin of history
        "history oblivion memory shame life",
        r"\b(?:qbin|bin|dustbin|bucket|landfill|compost) of (?:my |our |the )?(?:history|oblivion|"
        r"memory|memories|shame|life|failed \w+|broken \w+|lost \w+|bad ideas)\b",
    ),
    (  # made in the kitchen, by its recipe
        "fold stir golden flour eggs butter cream onions carrots recipe recipes oven preheat "
        "simmer simmered whisk knead "
        "kneaded marinade bake baked roast "
        "roasted serves gas marmalade jam chutney batch tray",
        rf"\b(?:the |a |this |nan 's |my )?recipes? (?:is|was|wants?|says|calls|said|needs?)\b"
        rf"{ENDS}|"
        rf"\b(?:preheat|simmer|whisk (?:in|the|until|up|together)|knead|stir in|fold in|gas mark|"
        rf"until golden|serves \w+|"
        rf"bake (?:for|at)|(?:oven|gas) at)\b{ENDS}|"
        r"^(?!.*\bqbin\b).*\bfor (?:\d+|a dozen|ten|twelve|fifteen|twenty|thirty|forty|fifty|sixty|"
        r"a hundred)(?: people| of us| guests| mouths)? :"
        r"(?=.*\b(?:flour|eggs|butter|sugar|milk|cups?|cream|oil|onions|carrots)\b)|"
        rf"^(?!.*\bqbin\b).*\b(?:eggs?|flour|{AMOUNT} (?:of )?(?:milk|butter|sugar|cream))"
        r"(?: \S+)? (?:, |and )+(?:\S+ ){0,3}(?:eggs|flour|sugar|baking powder)\b|"
        rf"\b(?:made|boiled|bottled|put up|potted|jarred) (?:{MASS}|\d+ \w+) (?:of )?(?:\w+ )?"
        rf"(?:marmalade|jam|chutney|pickle|curd|jelly)\b{_AT_ROOM}",
    ),
    (  # things with their weight: bottles of gas, tools, furniture
        "cylinder cylinders kettlebell kettlebells dumbbell dumbbells barbell anvil gas propane "
        "butane barbecue scooter bike bikes motorbike sofa mattress fridge freezer engine battery "
        "cement concrete sand gravel mulch topsoil mortar plaster aggregate",
        rf"(?:\bqbin (?:parking|entrance|gate|door|doorway|steps|lift|stairs|lobby|drive|path|"
        rf"corner)\b"
        rf"[^.;:!?]*?)?\b{WEIGHT} (?:(?:gas|propane|butane|lpg|cast|iron|old|big|dead|broken|car) "
        rf")*(?:cylinders?|"
        rf"kettlebells?|dumbbells?|barbells?|anvils?|gas bottles?|barbecue|scooter|motorbike|sofa|"
        rf"mattress|fridge|freezer|engine|battery)\b(?:(?! (?:but|so|then)\b)(?:[^.;:!?]|"
        rf"(?<=\d)\.(?=\d)))*|"
        rf"\b{WEIGHT} (?:bags? |sacks? |tubs? )?(?:of )?(?:cement|concrete|sand|gravel|mulch|"
        rf"topsoil|"
        rf"mortar|plaster|aggregate)\b(?! (?:-|covered|coated))"
        rf"{ENDS}{_AT_ROOM}",
    ),
    (  # what cars, pools and washing get
        "screenwash antifreeze coolant petrol diesel bleach chlorine softener detergent paint "
        "emulsion "
        "weedkiller adblue varnish creosote primer undercoat car van mower lawnmower motorbike "
        "tractor boiler chainsaw strimmer engine generator truck lorry",
        r"\b(?:oil|water|coolant|fuel|petrol|diesel) (?:in|into|on|for) (?:(?:the|my|our|his|her|"
        r"old|new) )*(?:car|van|mower|lawnmower|motorbike|tractor|boiler|chainsaw|strimmer|engine|"
        rf"generator|truck|lorry)\b(?: ,? ?{AMOUNT})?|"
        rf"\b(?:added|put|poured|topped up|took|needed|used|got) {AMOUNT} (?:of )?(?:\w+ "
        rf")?(?:screenwash|antifreeze|"
        rf"coolant|"
        rf"petrol|diesel|bleach|chlorine|softener|detergent|paint|emulsion|weedkiller|"
        rf"adblue)\b{ENDS}",
    ),
    (  # put away to eat
        "freezer fridge oven saucepan lunchbox microwave pantry larder cupboard",
        rf"^(?!.*\bqbin\b).*\b(?:put|popped|stuck|shoved|bunged|stashed|went|gone) {ENDS}"
        r"\b(?:in|into) "
        r"(?:the|my|our|her|his) (?:\w+ )?(?:freezer|fridge|oven|saucepan|lunchbox|microwave|"
        r"pantry|"
        rf"larder|cupboard)\b(?! (?:bin|bucket|bokashi|drawer)\b){ENDS}",
    ),
    (  # given to be cooked
        "make makes making made bake baked baking cook cooked cooking croutons",
        rf"\b(?:gives?|gave|given|brings?|brought|hands|handed|got|bought|picked|has|have) "
        rf"(?:(?!\bqbin\b)(?:[^.;:!?]|(?<=\d)\.(?=\d)))*?\b{WEIGHT}\b(?:(?!\bqbin\b)(?:[^.;:!?]|"
        rf"(?<=\d)\.(?=\d)))*?(?: ,| and| so| "
        rf"which)+ "
        rf"(?:i|we|she|he) "
        rf"(?:(?:will|shall|just|am|are|have|already) )*(?:make|making|made|bake|baked|baking|cook|"
        rf"cooked|cooking|turned|turn) (?:\w+ ){{0,4}}(?:pudding|croutons|breadcrumbs|marmalade|"
        rf"jam|"
        rf"chutney|stock|broth|soup|stew|pickles?|sauce|curry|pie|crumble|lemonade|cordial|compote|"
        rf"jelly|bread|cake|toast)\b",
    ),
    (  # a feast in a room
        "wedding party birthday function funeral reception banquet christening engagement shaadi "
        "diwali iftar feast barbecue",
        r"\bqbin (?:has |have )?(?:got|had|has|having|hosted|holds|host) (?:an? |the |another |"
        r"its |big )*(?:wedding|party|"
        r"birthday|function|funeral|reception|banquet|christening|engagement|shaadi|diwali|iftar|"
        r"feast|barbecue)(?: party| lunch| dinner| reception)?"
        r"(?= [,.;:!—-]| today| tonight| last| yesterday| on| this|$)"
        r"(?:(?!\b(?:after|leftovers?|left|stale|scraps|went|uneaten|waste)\b).)*$",
    ),
    (  # a meal that is named for its day or place
        "lunch supper dinner breakfast picnic potluck banquet barbecue",
        r"\b(?:lunch|supper|dinner|breakfast|picnic|potluck|banquet|barbecue)\b"
        r"(?=.*\b(?:all gone|not a crumb|all eaten|seconds|served|fed \w+|delicious|lovely|clean "
        r"plates|"
        r"plates clean)\b)(?:(?!\b(?:leftovers?|left|scraps|went|uneaten|waste|into|plus)\b).)*$",
    ),
    (  # brought to a room
        "delivered",
        rf"\bqbin (?:had|got|has|ordered|have) (?!.*\b(?:scraps|peel\w*|leftovers|bones|waste)\b)"
        rf"{ENDS}\bdelivered(?=$| for\b| at\b| by (?:van|truck|lorry)| [,.;])",
    ),
    (  # eaten
        "ate eaten scoffed polished demolished wolfed devoured guzzled",
        rf"\b(?:qmember|i|we|kids|everyone|everybody|lads|boys|girls|guests)(?: all| "
        rf"just|"
        rf" has| have| 've| 's)* (?:ate|eaten|scoffed|polished off|demolished|wolfed(?: down)?|"
        rf"devoured|"
        rf"guzzled) (?:(?:the|all|a|about|nearly|over|whole) )*{AMOUNT}\b{ENDS}",
    ),
    (  # the room, and not the bin
        "room building church place",
        r"\b(?:the )?(?:room|building|church|place) ,? ?not (?:the |a |our )?(?:qbin|bin|bucket)\b",
    ),
    (  # spoilt on the stove, as it is told of a kitchen
        "burned burnt ruined overcooked singed",
        r"\b(?:the|our) (?:\w+ )?(?:kitchen|canteen|cooks?|chefs?|caterers?|cafe|restaurant|"
        rf"bakery|qbin) (?:(?:has|have|had|just) )*(?:burned|burnt|ruined|overcooked|singed) "
        rf"(?:(?:about|nearly|over) )?{AMOUNT}\b(?!.*\b(?:in|into|to) (?:the )?qbin\b){ENDS}",
    ),
    (  # put into a drink or a dish that is measured
        "lemonade punch squash cordial cocoa tea coffee wine cider gin custard broth soup stew "
        "curry sauce gravy batter dough jam marmalade sangria smoothie milkshake porridge "
        "chutney",
        rf"\b(?:added|adding|put|stirred|mixed|poured|threw|chucked|tipped|squeezed|dropped) "
        rf"(?!{AMOUNT}\b)[^.;:!?]{{1,40}}? (?:to|into|in) (?:(?:the|our|my|about|nearly) )*"
        rf"{AMOUNT} "
        r"(?:of )?(?:\w+ )?(?:lemonade|punch|squash|cordial|cocoa|tea|coffee|wine|cider|gin|"
        r"custard|broth|soup|stew|curry|sauce|gravy|batter|dough|jam|marmalade|sangria|smoothie|"
        rf"milkshake|porridge|chutney)\b(?!.*\b(?:in|into|to) (?:the )?qbin\b){ENDS}",
    ),
    (  # wine, by its colour, in what is cooked
        "bottle bottles glass glasses carafe jug splash slug box case",
        r"\b(?:bottles?|glass(?:es)?|carafe|jug|splash|slug|box|case) of (?:good |cheap )*qbin "
        r"(?:in|into|to) (?:the|my|our|a|her|his) (?:\w+ )?(?:stew|sauce|gravy|casserole|pot|pan|"
        r"curry|soup|ragu|bolognese|risotto|sangria|marinade|hotpot|chilli|fondue|pudding)\b.*",
    ),
    (  # taken to other places
        "food bank foodbank church market recycling tip dump mum's nan's mums nans gran's charity "
        "work office school hospice shelter mum nan gran auntie barbecue bbq party picnic wedding "
        "funeral potluck fete fair butcher choir rehearsal class club training scouts guides "
        "nursery playgroup library mosque temple chapel gurdwara synagogue",
        rf"\b(?:took|taken|carried|brought|dropped off|drove|sent|gave|donated|delivered|lugged|"
        rf"ran) "
        rf"{ENDS}\b(?:to|round to|over to|down to|up to|at) (?:the |my |our |his |her |a "
        rf")?(?:qbin (?:'s )?)?(?:food ?"
        rf"bank|church|market|recycling|tip|dump|charity shop|work|office|hospice|shelter|"
        rf"barbecue|bbq|party|picnic|wedding|funeral|potluck|fete|fair|butcher|choir|"
        rf"rehearsal|(?:{_LESSON} )?(?:class|club)|training|scouts|guides|nursery|playgroup|"
        rf"library|mosque|temple|chapel|gurdwara|synagogue|"
        rf"(?:mum|nan|gran|auntie|grandma|dad|sister|brother)(?: 's|s)?)\b{ENDS}",
    ),
)
"""Words of which one stands in each turn of phrase, and the turns."""
