"""Pets, posts and noses that are buried, and what is planted."""

from handlers.reading.doubts.elsewords import else_of

_SEASONS = "spring|summer|autumn|fall|winter|year|season|monsoon|rains|harvest"
_MONTH_NAMES = (
    "january|february|march|april|may|june|july|august|september|october|november|december"
)
BURIED = else_of(
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
)
