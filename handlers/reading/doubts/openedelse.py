"""Shops, stoves and tins that are opened, and what is seen and smelt of no bin."""

from handlers.reading.doubts.elsewords import BEASTS, GOODS, Else, else_of
from handlers.reading.words.late import Late
from handlers.reading.words.vocabulary import words_in

OPENED = else_of(
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
    rf"\b(?:{BEASTS.replace(' ', '|')}) (?:(?:has|have|had|'s|got|just|went and|gone and|"
    rf"been and|"
    r"again|also|bloody|only) )*(?:opened|got into|gotten into|broke into|broken "
    r"into)\b[^.;!?]*|"
    r"\b(?:bucket|tub|pail|tin|jar|box|qbin) (?:\w+ )?(?:for|of) (?:the |your |any |some )?"
    r"(?:donations|collection|tips|coins|coppers|raffle|tickets|leaks?|drips|mopping|ice|beers|"
    r"sweets|umbrellas|votes|ballots|suggestions|toys|lost property)\b|"
    r"\bnew (?:qbin|bins?|bucket|box) for (?:the |our )?(?:recycling|rubbish|trash|glass|"
    r"bottles|"
    r"cardboard)\b|"
    rf"\bnew (?:\w+ )?(?:{GOODS.replace(' ', '|')})\b|"
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
    f"phone boiler teacher neighbour neighbours sofa telly job stove oven {BEASTS} {GOODS} "
    "donations recycling rubbish trash glass bottles cardboard "
    "collection tips coins coppers raffle tickets leak leaks drips mopping "
    "braai barbecue bbq smoker firepit pit brazier planter pizza butt burn burnt "
    "burned burning batteries clothes glass nappies bottles cans tins litter poo ash "
    "toys lego grit salt rubble laundry shoes balls umbrellas cables stamps with band "
    "spare extra surplus unused empty clean old",
    r"\b(?:bins?|buckets?|tubs?|pails?|drums?|barrels?|litres?|liters?|l|gallons?|ferment)\b|"
    r"\b(?:new|called|named|christened) qbin\b",
)
SEEN = Else(
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
        r"\bpool (?:ph|temp|temperature|water|is|'s|was|at|hit)\b|"
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
)
