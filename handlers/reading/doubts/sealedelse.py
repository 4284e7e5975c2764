"""Windows, envelopes and deals that are sealed, and roads and halls that are closed."""

from handlers.reading.doubts.elsewords import else_of

SEALED = else_of(
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
)
