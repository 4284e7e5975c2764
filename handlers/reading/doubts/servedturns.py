"""What is cooked, served, given away or delivered and went into no bin: more turns of phrase, each
row with its cues; a table for `notscraps`.
"""

from handlers.reading.doubts.notscrapturns import AMOUNT, ENDS, MASS, WEIGHT

_SCRAPS = (
    r"(?:scraps|peel\w*|skins?|leftovers?|stale|old|spoil\w*|rotten|mouldy|moldy|rinds?|bones?|"
    r"shells?|crusts|remains|uneaten|trimmings|"
    r"waste|bran|layer)"
)
"""Words with which it is what is left of it, after all."""
_NOT_IN = (
    rf"^(?!.*\b{_SCRAPS}\b)(?!.*\b(?:to|into|in|inside) (?:the |our )?qbin\b)"
    r"(?!.*[,.:;—-] ?(?:the )?qbin(?: bin)?$)"
)
"""A message that puts nothing into a bin."""
_AT_BIN = r"(?:in|at|on|by|near|round|outside|behind) (?:the )?qbin\b"
SERVED: tuple[tuple[str, str], ...] = (
    (  # made for a feast
        "birthday party wedding christening baptism funeral wake anniversary potluck picnic fete "
        "fair "
        "lunch",
        rf"^(?!.*\b(?:scraps|peel\w*|skins?|leftovers?|left|stale|rinds?|bones?|shells?|crusts|"
        rf"remains|"
        rf"uneaten|after|from)\b).*\b(?:(?:brought|made|baked|cooked|bought|fried|roasted|carried) "
        rf"{AMOUNT}|{WEIGHT}\b[^.;:!?]{{1,30}} (?:cooked|baked|made|fried|roasted|ordered))\b"
        rf"[^.;:!?]{{0,40}} for (?:(?:the|our|my|his|her|a|\w+ 's) )*(?:\w+ )?(?:birthday|party|"
        rf"wedding|"
        rf"christening|baptism|funeral|wake|anniversary|potluck|picnic|fete|fair|lunch)\b{ENDS}",
    ),
    (  # what a scale says from week to week
        "up down since",
        rf"^(?!.*\bqbin\b).*\b(?:up|down) (?:(?:about|nearly|over|another) )*{MASS} (?:since|this "
        rf"(?:week|month)|on last|from last|already|at the)\b{ENDS}",
    ),
    (  # over the fire
        "smoker oven grill spit pot cooker hob stove bbq barbecue braai tandoor pan wok fryer "
        "rotisserie crockpot kettle cauldron fire brining marinating",
        rf"^(?!.*\b(?:scraps|peel\w*|skins?|leftovers?|left|stuck|burnt|burned|stale|forgot\w*|"
        rf"ruined|"
        rf"scraped|bones?|rinds?|trimmings|waste|(?:to|into|down|in) (?:the )?qbin|qbin (?:just |"
        rf"has )?"
        rf"(?:took|got|had))\b)(?!qbin\b)(?!.*[,.:;→>—-] ?(?:the )?qbin(?= ?[,.:;!—]|"
        rf"$)).*\b{WEIGHT}\b(?:(?! qbin\b)[^.;:!?]){{0,40}}"
        rf" (?:(?:in|on|over) (?:(?:the|a|my|our) )*(?:\w+ )?(?:smoker|oven|grill|spit|pot|"
        rf"cooker|hob|stove|bbq|barbecue|braai|tandoor|pan|wok|fryer|rotisserie|crockpot|kettle|"
        rf"cauldron|fire)(?= [,.;!(—-]| since| from| at| for| all| until| till?| now| tonight| "
        rf"already|"
        rf" as we| ready| and|$)|brining|marinating)\b{ENDS}",
    ),
    (  # laid in salt, smoke or a sauce
        "marinade marinaded marinated marinating brined salted pickled soaked smoked rendered",
        rf"{_NOT_IN}.*\b(?:marinad\w+|marinat\w+|brined|salted|pickled|soaked|smoked|rendered) "
        rf"(?:about |another |the )?{AMOUNT}\b.*",
    ),
    (  # in somebody's freezer, on a table
        "freezer fridge larder cupboard table stall",
        rf"{_NOT_IN}(?:(?:the|our|my) )?(?!(?:the|our|my)\b)\w+ (?:'s )?(?:chest |harvest |cake )?"
        r"(?:freezer|fridge|larder|cupboard|table|stall) ?(?::|,|has\b|holds\b|is full of\b).*",
    ),
    (  # to give away
        "spare carving taking sale anyone whoever grabs free collect us you everybody everyone all",
        rf"{_NOT_IN}.*\b(?:to spare|for (?:carving|the taking|sale|whoever|grabs)|going "
        r"(?:free|spare)|up for grabs|free to (?:collect|take))\b.*|"
        rf"{_NOT_IN}.*\b(?:put|left|dropped|popped) [^.;:!?]{{1,40}} (?:on|by|at|"
        rf"outside) "
        r"(?:the )?qbin for (?:us|you|anyone|everybody|everyone|whoever|all|him|her|them|"
        r"qmember)\b.*",
    ),
    (  # come by post
        "parcel parcels package packages courier",
        rf"{_NOT_IN}.*\b(?:parcels?|packages?|courier)\b.*",
    ),
    (  # for those who bring their plates
        "bring",
        rf"^(?!.*\b{_SCRAPS}\b).*\bbring (?:(?:your|a|some|own|and) )*(?:jars?|plates?|bowls?|"
        rf"forks?|"
        r"spoons?|buns|bread|tupperware|containers|appetites?|wine|beers?)\b.*",
    ),
    (  # for those in need
        "shelter foodbank hospice",
        rf"{_NOT_IN}.*\b(?:to|for) the (?:shelter|food ?bank|hospice)\b.*",
    ),
    (  # dropped on a floor
        "dropped tipped knocked",
        rf"\b(?:dropped|knocked) (?:about |nearly )?{AMOUNT}\b[^,.;:!?]{{0,40}} (?:on|over|across|"
        rf"down) "
        rf"(?:the )?qbin\b{ENDS}",
    ),
    (  # cooked at a place
        "grilled smoked roasted barbecued fried cooked baked",
        rf"^(?:(?:we|i|they|qmember|just|also|have|,) )*(?:grilled|smoked|roasted|barbecued|fried|"
        rf"cooked|baked) (?:about |the )?{AMOUNT}\b(?: of)?[^,.;:!?]{{0,30}} (?:in|on|at) "
        rf"(?:the )?qbin\b{ENDS}",
    ),
    (  # thrown at a place, dragged there by a beast
        "threw chucked lobbed hurled pelted raccoon raccoons fox foxes dog cat badger bear "
        "rat possum",
        rf"\b(?:threw|chucked|lobbed|hurled|pelted) {AMOUNT}\b[^,.;:!?]{{0,40}} at (?:the )?qbin\b"
        rf"{ENDS}|"
        r"\b(?:raccoons?|fox|foxes|dog|cat|badger|bear|rat|possum) (?:\w+ )?(?:dragged|carried|"
        rf"hauled|pulled|took|brought|stole) (?:about |a |the )*{AMOUNT}\b{ENDS}",
    ),
    (  # filled, watered, and strewn on beds
        "filled refilled topped watered compost manure mulch gravel soil",
        r"\b(?:topped up|filled|refilled|watered) (?:the|a|my|our|all the) (?!(?:qbin|bins?|"
        r"buckets?|tubs?|"
        r"pails?|caddy|caddies|drums?|barrels?|bowls?|trays?|bags?|one)\b)\w+(?: \w+)? "
        rf"{_AT_BIN}(?: ?, ?{AMOUNT})?{ENDS}|"
        r"\b(?:put|spread|dug|forked|tipped|worked) [^.;:!?]{0,30}\b(?:compost|manure|mulch|"
        r"gravel|soil) "
        r"(?:round|around|on|over|under|between|into) (?:the|my|our|her|his) (?!qbin)\w+"
        rf"(?: \w+)?(?: {_AT_BIN})?{ENDS}",
    ),
    (  # on the bar of a gym
        "deadlift bench squat press pb bar",
        rf"\b(?:added|put) {MASS} (?:to|on|onto) (?:my|his|her|your) (?:bench|squat|deadlift|"
        rf"press|total|"
        rf"pb|bar)\b{ENDS}",
    ),
)
"""Words of which one stands in each turn of phrase, and the turns."""
