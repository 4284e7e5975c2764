"""The craft's verbs said of other things: sealed envelopes, drained pints, a nose in a book."""

from typing import NamedTuple

from handlers.reading.message import Message
from handlers.reading.plaintext import plain_text
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in


class _Else(NamedTuple):
    """What shows that a kind of deed was done to no bin."""

    cues: frozenset[str]
    """Words without one of which it is not looked for."""
    turns: Late
    itself: Late
    """Words that may tell the deed itself in the rest of the message."""


_BEASTS = (
    "dog dogs cat cats fox foxes raccoon raccoons possum possums badger badgers monkey monkeys "
    "baboon baboons bear bears gull gulls seagull seagulls crow crows goat goats"
)
_GOODS = "machine kettle urn fridge freezer cooker washer dishwasher fryer printer projector tumble"
_PLUMBING = (
    r"(?:house|home|flat|cottage|plumbing|mains|pipes|pipework|water (?:heater|tank|system|main|"
    r"supply)|hot water|heating|central heating|hot tub|jacuzzi|irrigation|sprinklers?|hoses?|"
    r"supply|geyser|cylinder|camper|caravan|motorhome|rv)"
)
_NO_VESSEL = (
    r"(?! (?:'s )?(?:qbin|bins?|buckets?|tubs?|pails?|caddy|caddies|drums?|barrels?|one)\b)"
)
_LOOT = (
    r"(?:(?:\w+ )?(?!(?:juices|drips|drops|dregs|dribbles|runnings|drippings|slops|suds|bubbles|"
    r"lees|"
    r"contents|goodies|leftovers|gubbins|this|his|its|us|yes|plus|gas|was|has|is|as|dunnes)\b)"
    r"\w{2,}[^\Ws]s|(?:\w+ )?(?:sand|gravel|snow|rubble|soil|sawdust|firewood|wood|coal|rubbish|"
    r"junk|"
    r"laundry|ice|cement|concrete|hay|straw|hardcore|topsoil|kindling|clothes|crockery|litter|lego))"
)
"""What is carried out of a room by the bucket and is no liquid."""
_WHOSE = r"(?:(?:the|a|an|his|her|my|our|their|your|all|poor|old|good|two|three|\w+ 's|qbin) )*"
_WHERE = (
    r"(?:in|into|on|onto|over|to|by|beside|before|after|for|and|with|at|near|under|behind|from|"
    r"down|"
    r"off|out|next|qbin|while|when|then|but)"
)
"""Behind one of these stands where or when a bin was dealt with."""


def _else(verbs: str, things: str, beside: str, turns: str, cues: str, itself: str) -> _Else:
    """Things that the verbs are said of, words that may stand beside them, and turns of phrase.

    `cues` are the words of which one stands in each turn of phrase.
    """
    pattern = (
        rf"{turns}|"
        rf"\b(?:{verbs}) {_WHOSE}(?:(?!{_WHERE}\b)\w+ )?(?:{things.replace(' ', '|')})\b|"
        rf"\b(?:{verbs})\b.*\b(?:{beside.replace(' ', '|')})\b|"
        rf"\b(?:{beside.replace(' ', '|')})\b.*\b(?:{verbs})\b"
    )
    return _Else(words_in(f"{things} {beside} {cues}"), Late(pattern), Late(itself))


BRAN_ELSE = Late(
    r"\bbran (?:muffins?|loaf|loaves|bread|flakes|cereal|mash|cakes?|biscuits|cookies|pancakes|"
    r"crackers|sticks|scones)\b|\braisin bran\b|"
    r"\bbran (?:(?:left|kept|saved|and \w+|or \w+|with \w+) )?(?:for|to) "
    r"(?:the |my |our |her |his |a )?(?:horses?|pony|ponies|donkeys?|rabbits?|hens|"
    r"chickens|chooks|pigs?|goats?|cows?|baking|breakfast|bread|muffins|porridge|smoothies)\b"
    r"(?! (?:meat|stew|curry|bones?|heads?|feet|trotters?|offal|liver|fat|skins?|scraps|peel|"
    r"crusts|"
    r"trimmings|waste|leftovers|ends|mess|shit|manure|droppings|\d))|"
    r"\b(?:muffins?|brownies|scones|cookies|flapjacks?) (?:\w+ ){0,2}with bran\b|"
    r"\bbran (?:do|does|should|can) (?:you|i|we|a|the|my) (?:\w+ )?(?:give |feed )?(?:\w+ "
    r")?(?:horse|"
    r"pony|rabbit|pig|goat|hen)s?\b"
)
"""Bran that is eaten, by people or beasts."""
_COURSE = (
    r"\b(?:for|as) (?:a |the |my |our )?starters?\b(?: ,| :)? (?:i|we|they|she|he|there|qmember) "
    r"(?:had|have|did|made|ate|got|ordered)\b|"
    r"\bstarters? (?:\w+ ){0,6}(?:was|were|is|are|will be) (?:\w+ )?(?:soup|prawns?|salad|tomato|"
    r"tomatoes|pepper|peppers|onion|onions|bruschetta|pate|melon|mushrooms?|calamari|samosas?|"
    r"pakoras?|dumplings|garlic bread|olives|scallops|oysters|salmon|chaat|hummus)\b|"
    r"\bstarters? ,? (?:and )?mains?\b|\b(?:mains?|puddings?|desserts?) and starters?\b|"
    r"\b(?:prawn|soup|salad|cold|hot|veg|vegetarian) starters?\b|"
    r"\bstarter (?:motor|home|pistol|course|plug|cable)s?\b|"
    r"\b(?:fire|jump|kefir|yoghurt|yogurt|cheese|kombucha|dosa|idli) starters?\b"
)
"""Starters that are eaten first, or start something else."""
_OF_BRAN = _Else(
    words_in("bran dough loaves levain starter starters"),
    Late(rf"{BRAN_ELSE.source}|\b(?:dough|loaves|levain)\b|{_COURSE}"),
    Late(r"\b(?:bran|bokashi|inoculated|culture|molasses|bins?|qbin)\b"),
)
_SEASONS = "spring|summer|autumn|fall|winter|year|season|monsoon|rains|harvest"
_MONTH_NAMES = (
    "january|february|march|april|may|june|july|august|september|october|november|december"
)
_OF_ELSE = {
    "stock": _OF_BRAN,
    "batch": _OF_BRAN,
    "open": _else(
        "opened(?: up)?|started(?: up)?|lit|fired up|starting|opening",
        "stove stoves oven engine mower car van fire fires window windows door doors curtains tin "
        "present presents letter letters book diet job course account cafe pub library school term "
        "choir class classes business tab windows wine beer bottle umbrella parcel parcels post "
        "kiln furnace range burner tractor bike hob grill aga rayburn shop stall season school "
        "hall gym library clinic museum gallery theatre bar restaurant station bridge",
        "kindling firelighters",
        r"^(?!.*\b(?:(?<!braai )(?<!bbq )(?<!barbecue )q?bins?|buckets?|tubs?|pails?|caddy|"
        r"bokashi|scraps|bran|ferment\w*|called|"
        r"named|name)"
        r"\b)(?:"
        r".*\b(?<!by the )(?<!near the )(?<!at the )(?<!to the )(?<!behind the )(?<!beside the "
        r")(?:braai|barbecue|bbq|smoker|firepit|fire pit|brazier|planter|pizza oven|water "
        r"butt)\b.*|"
        r".*\bburn(?:t|ed|ing)? (?:\S+ ){0,6}(?:drum|barrel)\b.*)$|"
        r"^.*\b(?:q?bins?|drum|bank|box|bucket|skip) (?:just |only )?for (?:\w+ )?(?:batteries|"
        r"clothes|"
        r"glass|nappies|bottles|cans|tins|litter|poo|ash|toys|lego|grit|salt|rubble|laundry|shoes|"
        r"balls|"
        r"umbrellas|cables|stamps)(?=$| (?:[,.;:!?)(—-]|now|only|at|in|on|by|and|or|behind|"
        r"outside|please)"
        r"(?: |$)).*$|"
        rf"\b(?:{_BEASTS.replace(' ', '|')}) (?:(?:has|have|had|'s|got|just|went and|gone and|"
        rf"been and|"
        r"again|also|bloody|only) )*(?:opened|got into|gotten into|broke into|broken "
        r"into)\b[^.;!?]*|"
        r"\b(?:bucket|tub|pail|tin|jar|box|qbin) (?:\w+ )?(?:for|of) (?:the |your |any |some )?"
        r"(?:donations|collection|tips|coins|coppers|raffle|tickets|leaks?|drips|mopping|ice|beers|"
        r"sweets|umbrellas|votes|ballots|suggestions|toys|lost property)\b|"
        r"\bnew (?:qbin|bins?|bucket|box) for (?:the |our )?(?:recycling|rubbish|trash|glass|"
        r"bottles|"
        r"cardboard)\b|"
        rf"\bnew (?:\w+ )?(?:{_GOODS.replace(' ', '|')})\b|"
        r"\bnew (?:stove|oven|car|van|job|phone|boiler|kiln|cafe|pub|shop|teacher|"
        r"neighbours?|"
        r"sofa|telly|bike)\b|"
        r"\b(?:they|he|she|the band|qmember) opened (?:up )?with (?:(?:a|an|the|their|one) )?"
        r"(?!.*\b(?:kilos?|kg|g|grams|lbs?|pounds?|peel\w*|scraps|layer|bread|rice|"
        r"qbin(?! (?:solo|kit|roll)))\b)\w+.*|"
        r"\bopened for (?:the|a) (?:band|show|act|headliners?)\b|"
        r"\b(?:got|have|has|had|ve|'ve|is|'s|are|found|giving away|selling) (?:(?:an?|another|two|"
        r"three|four|some|\d+|this|these|few) )*(?:(?!qbin\b)[\w-]+ )?(?:spare|extra|surplus|"
        r"unused|empty|clean|old) (?:[\w-]+ ){0,2}(?:qbin|bins?|buckets?|tubs?|pails?|drums?|"
        r"barrels?|containers?)\b.*\b(?:any(?:one|body)|whoever|some(?:one|body)|who|free|good "
        r"home|up for grabs|collect|takers|any use)\b.*",
        f"phone boiler teacher neighbour neighbours sofa telly job stove oven {_BEASTS} {_GOODS} "
        "donations recycling rubbish trash glass bottles cardboard "
        "collection tips coins coppers raffle tickets leak leaks drips mopping "
        "braai barbecue bbq smoker firepit pit brazier planter pizza butt burn burnt "
        "burned burning batteries clothes glass nappies bottles cans tins litter poo ash "
        "toys lego grit salt rubble laundry shoes balls umbrellas cables stamps with band "
        "spare extra surplus unused empty clean old",
        r"\b(?:bins?|buckets?|tubs?|pails?|drums?|barrels?|litres?|liters?|l|gallons?|ferment)\b|"
        r"\b(?:new|called|named|christened) qbin\b",
    ),
    "observe": _Else(
        words_in(
            "heap pile midden tank oven aphids ankles campsite septic cesspit brain heart wee "
            "wees weed pee piss pissed "
            "scoby worktop worktops eaves loft attic wardrobe ceiling fog foggy mist drizzle "
            "freezing heating radiators sourdough landlord landlady starter "
            "bag sack jar pool pond soil lawn snow rain winter summer spring autumn "
            "christmas storm thunder inspector inspectors hygiene flour bread grain feed corn rice "
            "every"
        ),
        Late(
            r"^(?!.*\bqbin (?:has|had|is|was)\b).*\b(?:inspectors?|hygiene (?:man|woman|lady)|"
            r"environmental health)\b.*\b(?:every|all the|the) (?:bins?|qbin|drains?)\b.*|"
            r"\b(?:flour|bread|grain|feed|corn|rice) (?:bins?|qbin)\b.*|"
            r"\b(?:the|our|my|your|his|her|compost|muck|manure|dung) (?:heap|pile|midden)\b|"
            r"\bfish tank\b|"
            r"\boven (?:is )?on\b|\baphids\b|\bankles?\b|\bcampsite\b|"
            r"\bstarter (?:(?:is|has|'s|looks|went|all|in|the|its|bag|sack|jar) )*(?:gone|got|"
            r"turned|went|"
            r"furry|fuzzy|mouldy|moldy|green|smells)\b|"
            r"\b(?:smells?|feels?|looks?) like (?:snow|rain|winter|summer|spring|autumn|"
            r"christmas|thunder|"
            r"a storm)\b|"
            r"\bpool (?:ph|temp|temperature|water|is)\b|"
            r"\bph (?:of|in) the (?:pool|pond|tank|soil|bed|lawn)\b|"
            r"\bin the (?:bag|sack|jar) ,? ?not (?:in )?(?:the )?(?:qbin|bin)\b.*|"
            r"\bseptic tank\b|\bdown the septic\b|\bcesspit\b|"
            r"\b(?:my|your|his|her) (?:brain|heart)\b|\bbrain (?:is |like )?an? \w+|"
            r"\b(?:dogs?|cats?|fox|foxes|whose|kids|drunks?)\b.*\b(?:wee|wees|weed|pee|piss|"
            r"pissed)\b|\bscoby\b|\bon the (?:\w+ )?worktops?\b|"
            r"\bin (?:the|our|my) (?:\w+ )?(?:eaves|loft|attic|wardrobe)\b|\bmy sourdough\b|"
            r"\bsourdough (?:starter|has|is|died|looks|smells)\b|\b(?:bathroom|bedroom) ceiling\b|"
            r"^(?:fog|foggy|mist|drizzle|freezing)\b(?! qbin)|\b(?:no heating|heating (?:is "
            r")?(?:off|"
            r"broken|on))\b|\blandl(?:ord|ady) (?:says|reckons|wont|blames)\b"
        ),
        Late(r"\b(?:bin|bins|bucket|lid|lids|caddy|tap|scraps|bran|contents|juice|like)\b"),
    ),
    "seal": _else(
        "sealed(?: up| off)?",
        "will wills envelope envelopes letter letters card cards parcel parcels crack cracks gap "
        "gaps window windows wall walls floor floors worktop drive driveway patio deck grout "
        "tiles lips deal fate final match win title contract bargain chimney roof leak joint "
        "record door doors roofs gutter gutters bath shower sink cart axle jar jars steaks steak "
        "exhaust windscreen windshield sunroof sill sills wound wounds bid bids tender tenders "
        "orders evidence verdict indictment "
        "bearing bearings tank hull kayak boat tyre tyres puncture pipe pipes skylight "
        "conservatory loft "
        "tin tins tupperware ziploc packet packets sachet sachets cling",
        "grouted caulk caulked mastic putty varnish varnished coats frost frames sanded insulated "
        "tiled tiles draught draughts draughty draft drafts drafty",
        r"\bsealing (?:\w+ ){0,2}(?:roofs?|gutters?|windows?|floors?|walls?|bath|shower|carts?|"
        r"patio|"
        r"drive|driveway|loft|tank|boat|hull|grout)\b|"
        r"\b(?:roofs?|gutters?|windows?|floors?|walls?|bath|shower|carts?|patio|driveway|jars|"
        r"envelopes?|steaks|boat|hull|bathroom|tanks?)(?: (?:of|in|on|at) (?:the |our )?qbin)? "
        r"(?:(?:is|are|was|were|'s|has|have|been|got|all|now|finally|properly|half) )*sealed\b|"
        r"\bsealed (?:\w+ ){0,3}with (?:\w+ )?(?:felt|bitumen|silicone|mortar|grease|resin|tar|"
        r"epoxy|sealant|a kiss|beeswax|oil)\b|\bvacuum sealed\b|"
        r"\bsealed off\b.*\b(?:asbestos|police|scaffolding)\b|"
        r"\b(?:closed|shut|locked)(?: up)?(?: (?:the )?qbin)?(?: up)? (?:(?:for|until|till) "
        r"(?:the )?(?:night|day|weekend|evening)|early(?!.*\b(?:room|full)\b)|"
        r"on (?:mon|tues|wednes|thurs|fri|satur|sun)days)\b.*|"
        r"^(?!.*\bqbin\b).*\b(?:closed|shut)(?: up)? (?:for|until|till) (?:the )?(?:season|summer|"
        r"winter|(?:school )?holidays?|half term)\b.*|"
        r"\blips (?:are |is )?sealed\b|\bsealed off by\b(?: the)?(?: police)?(?: tape)?|"
        r"\b(?:closed|shut)\b.{0,25}\b(?:chippy|takeaway|takeout|pizza|eating out|sandwiches)\b|"
        r"\b(?:closed|shut) for (?:the |a )?(?:\w+ )?(?:resurfacing|tarmac|gritting|refit|rewiring|"
        r"asbestos|electrics|roofers|inspection|elections?|polling|choir|mass|prayers|lunch)\b|"
        r"\b(?:closed|shut)\b.{0,30}\b(?:gas ?works|road ?works|water main|burst main|council|"
        r"police|floods?|flooded|flooding|snow|bank holiday|staff training|exams?)\b|"
        r"\b(?:closed|shut) for (?:the |a )?(?:\w+ )?(?:repairs?|concert|renovations?|"
        r"stocktaking|party|lunch|final|match|exams|deep clean|function|refurbishment|wedding|"
        r"funeral|"
        r"decorating|maintenance|"
        r"filming)\b|"
        r"\b(?:shut|closed|sealed) qbin 's (?:birthday|party|mouth|eyes|account|shop)\b|"
        r"\bput (?:tape|ribbons?|string|rope|bunting) (?:round|around|along|across)\b.{0,40}"
        r"\bfor (?:the|a) (?:\w+ )?(?:party|wedding|fair|birthday|decorat(?:ors|ing)|race)\b",
        "night day weekend evening season summer winter early mondays tuesdays wednesdays "
        "thursdays fridays saturdays sundays half "
        "lunch final match exams clean asbestos police scaffolding off repair repairs concert "
        "chippy takeaway takeout pizza eating sandwiches resurfacing tarmac gritting refit "
        "rewiring electrics roofers inspection election elections polling choir mass prayers "
        "gas gasworks works roadworks main council flood floods flooded flooding snow "
        "holiday staff exam renovation renovations stocktaking "
        "function refurbishment "
        "wedding funeral decorating maintenance filming birthday party mouth eyes account shop "
        "bathroom felt bitumen silicone mortar grease resin tar epoxy sealant kiss beeswax oil "
        "vacuum",
        r"\b(?:seal|shut|clos|lid|tape)",
    ),
    "drain": _else(
        "drained(?: off)?|draining|emptied|emptying",
        "pasta potatoes spuds rice noodles chickpeas tuna pond pool wine beer whisky malt sherry "
        "brandy savings battery batteries ear ears knee knees bilge radiator radiators boiler "
        "mower engine liver abscess dam dams septic cesspit cesspool sump gutters gutter ditch "
        "ditches "
        "footer footers putt putts birdie "
        "field fields swamp marsh moat canal lock reservoir lake bath bathtub dishwasher aquarium "
        "dehumidifier gearbox carburettor tractor cistern lagoon puddle puddles lasagne spaghetti "
        "beans lentils sprouts tofu bladder flask teapot",
        "abscess knee cyst blister landlord landlady darts painted repainted doctor vet nurse "
        "surgeon urn heater radiators dehumidifier gearbox",
        r"\b(?:qbin|street|road|bathroom|kitchen|shower|sink|bath|main|outside|storm|yard|garden|"
        r"shed|garage|cellar|basement|patio|courtyard) drains?(?: 's)? "
        r"(?:(?:is|'s|was|got|has|are|been|all|keeps) )*(?:blocked|clogged|"
        r"backed up|overflowing|backing up|bunged up|unblocked)\b.*|"
        r"^(?!.*\bqbin\b).*\b(?:absolutely|totally|completely|utterly|emotionally|mentally|"
        r"physically|feel|feeling|felt|feels|look|looks|looking) (?:so |a bit |pretty |really )*"
        r"drained\b(?! (?:it|them|both|all|off)\b).*$|"
        r"\b(?:drained|draining|emptied|finished) (?:my|his|her|the|a|two|three|four|another|\d) "
        r"(?:glass(?:es)?|pints?|mugs?|coffees?|beers?|teas?|cuppas?|bowl)\b(?! (?:full "
        r")?(?:from|off|"
        r"out|of (?:liquid|juice|leachate|liquor|qbin|it|the stuff|brown))\b)|"
        r"\b(?:(?:drained|drew|got|took|emptied|pulled) (?:off |out |about |nearly "
        r")*)?(?:[\d.]+ ?|a "
        r"|half a )?(?:litres?|liters?|l|ml|pints?|gallons?|cups?|cupful)\b(?: (?!qbin)\w+){0,3} "
        r"(?:from|off|"
        r"out of|in) (?:the |my |our |his |her )?(?:dehumidifier|wound|knee|lung|lungs|"
        r"radiators?|van|"
        r"mower|tractor|engine|boat|bilge|water butt|cow|cows|goat|goats|maple|gearbox|sump|"
        r"washing machine|dishwasher|tumble dryer|paddling pool|roof|gutter)\b|"
        r"\b(?:dehumidifier|cow|goat|maple|water butt|washing machine) (?:gave|filled|leaked|made|"
        r"yielded|got)\b|\bmilked (?:the |my |our |a )(?:cows?|goats?|ewes?|nanny|heifer|camel|"
        r"buffalo)\b|\bbled the radiators?\b.*|"
        r"^.*\bdrained by (?:the |a |our )?(?:\w+ )?(?:choir|guests|crowd|congregation|band|club|"
        r"wedding party|regulars)\b(?! 's).*$|"
        r"\bqbin (?:had|drank|downed|necked|swallowed) (?:[\d.]+ ?|a |half a )(?:litres?|liters?|"
        r"l|ml|"
        r"pints?|gallons?|cups?) of (?:\w+ )?(?:tea|coffee|beer|wine|milk|squash|cider|water)\b"
        r"(?! (?:from|out|off|of)\b)|"
        r"\bcaught\b.*\b(?:pier|boat|rocks|beach|weir|harbou?r)\b|\bqbin (?:syrup|sap)\b|"
        r"\bqbin (?:\w+ )?drained (?:well|away|fast|slowly|nicely|quickly)\b.*"
        r"\b(?:storm|rain|rains|flood|floods|thaw)\b|"
        r"^(?!.*\b(?:tap|leachate|juice|liquor|bokashi|bran|scraps)\b).*"
        r"\b(?:qbin|cellar|basement|garage|kitchen) (?:is |was |has |been |got |'s )*"
        r"(?:flooded|flooding|awash)\b.*$|"
        r"^.*\btap (?:\S+ ){0,4}(?:drips|dripping|leaks|leaking)\b.*"
        r"\b(?:an hour|a minute|plumber|washer)\b.*$|"
        r"\bdrained (?:the |my |our )?washing machine\b.*|"
        r"^(?!.*\bqbin\b)(?:(?:oh|so|and|ugh|,) )*(?:the|my|our) (?:washing machine|dishwasher|"
        r"tumble dryer|boiler|radiator|van|mower|engine|boat)\b.{0,40}\b(?:drained|emptied) it\b.*|"
        r"\b(?:car park|road|pitch|lane|street|playground)(?: (?:at|by|of) (?:the )?qbin)? "
        r"(?:\w+ )?"
        r"drained\b|\bdrew (?:off )?an? (?:pint|half) of (?:bitter|ale|stout|lager|mild)\b|"
        r"\bdrained [\w ]{1,12}\b(?:bottles?|cans?) of (?:malt|whisky|gin|rum|beer|wine)\b|"
        r"(?:\b\w+ (?:off |out )?)?\b[\d.]+ (?:litres?|liters?|l|ml|pints?|gallons?) of (?:oil|"
        r"emulsion|varnish|creosote|gloss|primer|undercoat|paint|"
        r"petrol|diesel|kombucha|wine|cider|beer|milk|sap|comfrey|nettles?|syrup)\b|"
        r"\b(?:comfrey|nettles?|seaweed)(?: \w+)? (?:drawn|drained|strained|off)\b|"
        r"\b(?:syphoned|siphoned|racked|bottled) (?:off )?(?:the )?(?:wine|cider|beer|mead|gin)\b|"
        r"\b(?:gin|wine|cider|mead|ale|beer) is \d|"
        r"\b(?:vinegar|bleach|descaler|bicarb|detergent) (?:to|for) (?:clean|descal|scrub|wash|"
        r"unblock)"
        r"\w*\b[^.!?]*|"
        r"\bstruck out (?:\d+|two|three|four|five|six|seven|eight|nine|ten|the side|swinging)\b|"
        r"\b(?:caught|landed|reeled in|hooked|netted) (?!.{0,40}\b(?:ml|mls|litres?|liters?|l|"
        r"cups?|"
        r"pints?|juice|liquid|drips?|leachate|fluid|tea|gallons?|quarts?|oz)\b).{0,40}\b(?:off|from|"
        r"out of) (?:the )?qbin\b|"
        r"\b(?:drew|drained|tapped)(?: off)? (?:nothing|nowt|nothin|nuffin|nuthin|zilch|naught)\b"
        r"[^.!?;,]*|"
        rf"\b(?:drained|draining)(?: down)? (?:the |our |my )?(?:whole |entire |outside |all the )*"
        rf"{_PLUMBING}\b{_NO_VESSEL}[^;!?]*|"
        r"\b(?:buckets?|bucketfuls?|boxes|box|bags?|sacks?|crates?|barrows?|wheelbarrows?|loads?|"
        rf"trugs?|tubs?|pails?|qbin) of {_LOOT} (?:out of|from|off) (?:the |our )?qbin\b",
        "blocked clogged backed overflowing backing bunged unblocked absolutely totally completely "
        "utterly emotionally mentally physically feel feeling felt feels look looks looking "
        "emulsion varnish creosote gloss primer undercoat paint wine pier "
        "vinegar bleach descaler bicarb detergent struck caught landed reeled hooked netted "
        "nothing "
        "nowt nothin nuffin nuthin zilch naught house "
        "home flat cottage plumbing mains "
        "pipes pipework water hot heating jacuzzi irrigation "
        "sprinkler sprinklers hose hoses supply geyser cylinder camper caravan motorhome rv "
        "bucket buckets bucketful bucketfuls box boxes bag bags sack sacks crate crates barrow "
        "barrows wheelbarrow wheelbarrows load loads trug trugs tub tubs pail pails "
        "oil petrol diesel kombucha cider milk sap comfrey nettle nettles syrup seaweed mead gin "
        "ale glass glasses pint pints mug mugs coffee coffees rum beer beers tea teas cuppa bowl "
        "wound knee lung lungs radiator van mower tractor engine boat bilge butt cow cows goat "
        "goats maple machine dishwasher dryer paddling roof milked ewe ewes nanny heifer camel "
        "buffalo bled park road pitch lane street "
        "playground bitter stout lager mild drips dripping leaks leaking choir guests crowd "
        "congregation band club party regulars storm rain rains flood floods thaw flooded "
        "flooding awash",
        r"\b(?:drain|drew|drawn|siphon|syphon|poured|tap\b)|"
        r"\b(?:from|off|out of) (?:the |our )?qbin\b(?! (?:roof|gutter|engine|heater|boiler|"
        r"window))",
    ),
    "bury": _else(
        "buried",
        "uncle aunt auntie aunty grandpa grandad granny gran grandma father mother mum dad "
        "husband wife hamster goldfish budgie nose face head feet feelings quad car van treasure "
        "rabbit bunny canary robin sparrow blackbird pigeon koi kitten puppy cat dog tortoise "
        "mouse "
        "ferret parrot gerbil snake lizard frog rat pet pets fish pride grief anger sorrow sorrows "
        "hatchet lede lead capsule cable cables pipe pipes hose wire post posts pole poles fence "
        "slipper slippers walnuts acorns ashes",
        "overtime paperwork turnout coffin crematorium mourners hymns matchbox shoebox duvet",
        r"\bdug (?:over|up) (?:the|my|our|a) (?:\w+ )?(?:beds?|borders?|plot|patch|garden|lawn|"
        r"allotment)(?: (?:by|near|behind|beside|next to) (?:the )?qbin)?|"
        r"\bburied (?:under|in) (?:[\d.]+ \w+ of )?(?:work|emails?|debt|snow|laundry|marking|"
        r"homework|admin)\b|"
        r"\bburied in (?:the|a|his|her) (?:crossword|newspaper|book|phone|laptop|telly)\b|"
        r"\bdug (?:in )?(?:(?:the|a|an|some|my|our|new|two|three|four|six|\d+|gate|fence|first|"
        r"last|"
        r"old) )*(?:posts?|poles?|potatoes|spuds|sweetcorn|bulbs|leeks|onions|strawberry|"
        r"strawberries|raspberries|manure|muck|foundations?|post holes?|postholes?|"
        r"holes? for the)\b|"
        r"\b(?:bulbs|tulips|daffs|daffodils|potatoes|spuds|garlic|leeks|onions|beans|trees?|roses|"
        r"saplings?|seedlings|shrubs?|posts?|poles?|grandpa|grandma|granny|nan|grandad|uncle|"
        r"auntie)\b(?: \w+){0,3} (?:in|into) the ground\b|"
        r"\b(?:died|dead)\b[^.]{0,30}\bburied (?:it|him|her|them)\b|"
        r"\bburied (?:his|her|their|your) peas\b|\bburied (?:at sea|alive)\b|"
        r"\b(?:goldfish|hamster|budgie|gerbil|cat|dog|car|van) (?:is |was |'s |got |been )*"
        r"(?:buried|dug in)\b|"
        r"\b\d+ (?:\w+ ){0,2}(?:crowns|bulbs|leeks|seedlings|cloves|tubers|saplings)\b"
        r".*\b(?:into|in) the ground\b|\bdug (?:the|some) (?:compost|manure) in\b|"
        r"\bput in for (?:the|an?)\b|"
        r"\bburied (?:my|our|his|her|their|your|the|poor|dear|wee|old|little|\w+ 's) (?:\w+ ){0,2}"
        r"(?:hamster|goldfish|budgie|gerbil|guinea pig|rabbit|bunny|canary|cat|kitten|dog|puppy|"
        r"tortoise|parrot|ferret|mouse|rat|pony|pet|chicken|hen|mum|mam|dad|nan|gran|granny|"
        r"grandad|grandpa|grandma|mother|father|uncle|auntie|aunt|husband|wife|brother|sister|"
        r"friend|neighbour|neighbor|colleague)\b(?!.*\b(?:bins?|buckets?|contents|bokashi)\b)"
        r"(?!.*(?<!under the )(?<!by the )(?<!near the )(?<!behind the )"
        r"(?<!beside the )\bqbin\b).*|"
        rf"\bwhere (?:i|we|they|you|he|she|qmember) (?:had )?(?:did|put|buried|dug|dug in|trenched|"
        rf"emptied|tipped|planted) (?:\w+ )?(?:the )?(?:qbin|it|her|him|them|that one)\b"
        rf"[^.!?]*\b(?:last (?:{_SEASONS})|{_SEASONS} before last|(?:months?|years?|seasons?|ages) "
        rf"(?:ago|back)|back in (?:{_MONTH_NAMES}))\b[^!?]*|"
        r"\b(?:was|were) buried\b.*\b\w+ years old\b|"
        r"\bunder (?:\S+ ){1,4}of (?:flood ?water|water|mud|snow|ice|slush|silt)\b|\bsnowed "
        r"under\b|"
        r"\bunder (?:duress|protest|pressure|arrest|oath|orders|control|warranty|the weather|water|"
        r"scaffolding|review|construction|offer|attack|canvas|siege|stress)\b",
        "bed beds border borders plot patch garden lawn allotment "
        "crossword newspaper book phone laptop telly work email emails debt snow laundry marking "
        "homework admin peas sea alive guinea bunny canary kitten mam nan brother sister friend "
        "neighbour neighbor colleague pony where chicken hen gerbil cat dog crowns bulbs leeks "
        "seedlings cloves tubers "
        "saplings compost manure for died dead dug ground under years",
        r"\b(?:bur(?:y|ied)|dug|went in|under)\b|\b(?:contents|ferment|bin|bucket)\b",
    ),
}
"""By kind of record."""
CUES = frozenset[str]().union(*(each.cues for each in _OF_ELSE.values()))


_OF_NO_BIN: dict[str, frozenset[str]] = {
    "observe": words_in("heap pile midden oven aphids ankles campsite"),
    "open": words_in(f"{_BEASTS} {_GOODS} recycling rubbish trash glass cardboard"),
}
"""What is told of a bin wherever one is named that could be nothing else, and the words beside
which it may be told of another thing all the same."""


def is_of_else(kind: str, message: Message) -> bool:
    """Whether the deed of that kind was done to a thing that is no bin, and to nothing besides."""
    other = _OF_ELSE.get(kind)
    if other is None or not message.has(other.cues):
        return False
    named = any(ref.plain and ref.name for ref in message.bins)
    if named and kind in _OF_NO_BIN and not message.has(_OF_NO_BIN[kind]):
        return False
    text = plain_text(message)
    rest = other.turns.sub(" ", text)
    return rest != text and other.itself.search(rest) is None
