"""Turns of phrase of harm that no liquid or ferment is named in: who had better not, what is given
to beasts, small hands and cuts, what is stale.
"""

from handlers.practice.harm import Hazard
from handlers.reading.harm.harmwords import ANIMAL, LIQUID, PERSON, WHOSE
from handlers.reading.words.late import Late

CUES = (
    *("heart", "hernia", "sucked", "chewed", "sore", "chemo", "expecting", "months gone"),
    *("weeks gone", "gutter", "storm drain", "street drain", "weil", "legion", " a cut", "blister"),
    *("wound", "bone in", "splinter in", "hens", "chickens", "pigs", "give it to", "goats"),
    *("ducks", " dog", " cat ", "copd", "lungs", "burp", "popped up", "hissing noise"),
    *("before digging", "transplant", "before i dig", "before we dig"),
)

_BIN = r"(?:qbin|bins?|buckets?|pails?|trench|hole|pit|bed|heap)"
_VESSEL = r"(?:lid|tap|spigot|tray|drip tray|scoop|qbin|bin|bucket|pail|jug)"
_ATE = r"(?:ate|eaten|eating|licked|licking|sucked|sucking|tasted|drank|swallowed|chewed|gobbled)"
_HAND = r"(?:hand|hands|finger|fingers|thumb|arm|leg|foot|toe|palm|knee)"
TOLD_NEAR: tuple[tuple[Hazard, Late], ...] = (
    ("swallowed", Late(
        rf"\b{PERSON} (?:\w+ ){{0,2}}?(?:{WHOSE} )?(?:\w+ )?(?:hands?|fingers?|thumbs?) (?:in|into|"
        rf"inside|on)\b.{{0,25}}\b(?:and|then) (?:\w+ )?{_ATE} (?:it|them|those)\b")),
    ("swallowed", Late(
        rf"\b(?:baby|toddler|child|kid|son|daughter|boy|girl|wee one|little one|qmember) (?:\w+ )"
        rf"{{0,2}}?{_ATE} (?:on |at )?(?:the |our )(?:\w+ )?{_VESSEL}$")),
    ("swallowed by an animal", Late(
        rf"\b{ANIMAL} (?:\w+ ){{0,3}}?(?:got|been|broke|climbed|went|was|dug) (?:in|into|at|up|in "
        rf"to) "
        rf"(?:the |our |my )?(?:\w+ )?{_BIN}\b.{{0,15}}\b{_ATE}\b")),
    ("swallowed by an animal", Late(
        rf"\b{ANIMAL} (?:\w+ ){{0,4}}?(?:sick|ill|vomit\w*|threw up|throwing up|poorly|unwell)\b"
        rf".{{0,20}}\b(?:after|since|from)\b.{{0,30}}\b(?:{_BIN}|{LIQUID}|bran|scraps)\b")),
    ("on the skin", Late(
        rf"\b(?:got|get|spilled|spilt|splashed|has|have|had) (?:it|some|juice|liquid)(?: of it)? "
        rf"(?:all )?(?:on|over) (?:{WHOSE} )(?:\w+ )?(?:hands?|face|skin|arms?|legs?|feet)\b")),
    ("in a wound", Late(
        rf"\b(?:\S*bone|splinter|shard|glass|needle|wire|shell)\b (?:\w+ )?(?:in|into|under) "
        rf"(?:{WHOSE} )"
        rf"(?:\w+ )?(?:{_HAND}|nail)\b")),
    ("in a wound", Late(
        rf"\b(?:got|get|gets|splashed|went|it 's|was) (?:\w+ )?(?:in|into) (?:{WHOSE} )(?:open |"
        rf"small |"
        r"fresh )?(?:cut|wound|graze|sore|blister)\b")),
    ("gas", Late(
        r"^(?:(?:the|our|my|oh no) )*lid (?:'s |has |is |just )*(?:popped|lifted|blown) up$|"
        r"\b(?:makes?|making) (?:a |an )?(?:\w+ )?hissing (?:noise|sound)\b")),
)  # fmt: skip
"""Told of a bin, or while the talk is on one."""
_WEAK = (
    r"(?:(?:weak|bad|dodgy|sore|poor|failing) (?:heart|back|hip|knees?|shoulder)|heart (?:trouble|"
    r"condition|disease|problems?|attack)|hernia|slipped disc|pacemaker|pregnant|expecting|"
    r"(?:months|weeks) (?:gone|pregnant))"
)
_WITH_CHILD = (
    r"(?:(?:am|is|'s|are|wife|partner|daughter) expecting(?= (?:can|may|should|is)|$)|"
    r"(?:months|weeks) (?:gone|pregnant)|pregnant)"
)
_FRAIL = (
    rf"(?:{_WITH_CHILD}|(?:on|having|after) chemo\w*|chemo\w*|transplant|asthma|asthmatic|copd|"
    r"immun\w+|(?:weak|bad|dodgy|poor) lungs?|cystic fibrosis)"
)
_HELPING = (
    r"(?:help|do|doing|drain|draining|empty|handle|touch|stir|fill|bury|seal|use|mix|go near|look "
    r"after|feed)"
)
_STOCK = (
    r"(?:hens?|chickens?|chooks?|ducks?|pigs?|goats?|sheep|cows?|geese|poultry|livestock|birds)"
)
_THAT = (
    r"(?:it|this|that|them|some|any|any of it|some of it|the (?:rests?|remains|leftovers|scraps|"
    r"rest|"
    rf"stuff|ferment|contents)|(?:the )?fermented \w+|{LIQUID})"
)
ASKED_OF_ANYBODY: tuple[tuple[Hazard, Late], ...] = (
    ("not to lift", Late(
        rf"\b{_WEAK}\b.*\b(?:can|may|should|could|is it) (?:\w+ ){{1,4}}?(?:lift|carry|move|haul|"
        rf"shift)\b|\b(?:lift|carry|move|haul) (?:it|them|the (?:qbin|bin|"
        rf"bucket))\b.{{0,30}}\b{_WEAK}\b")),
    ("who should not", Late(
        rf"\b{_FRAIL}\b.*\b(?:can|may|should|could|is it) (?:\w+ ){{1,6}}?{_HELPING}\b|"
        rf"\b(?:can|may|should|could) (?:\w+ ){{1,3}}?{_HELPING}\b.{{0,40}}\b{_FRAIL}\b")),
    ("to feed", Late(
        rf"\b(?:can|could|may|should|shall|ok to|okay to|safe to|do) (?:\w+ )?(?:give|feed|offer|"
        rf"throw|"
        rf"put) {_THAT} (?:to|for|out for|into) (?:the |my |our |your |some )?{_STOCK}\b|"
        rf"\b(?:can|could|may|should|will) (?:the |my |our )?{_STOCK} (?:have|eat|get|be given|be "
        rf"fed) "
        rf"(?:some |any )?(?:of )?{_THAT}\b")),
    ("into water", Late(
        rf"\b(?:{LIQUID}|it|this|that|rest|some)\b.{{0,15}}\b(?:down|in|into|to) (?:the |a |our )?"
        r"(?:storm ?drains?|storm water drain|street drain|road drain|gutter|ditch)\b")),
    ("germs", Late(
        r"\b(?:weil ?'? ?s?(?: disease)?|leptospir\w*|legionell\w*|"
        r"legionnaires?)\b.{0,40}\b(?:this|it|"
        r"bokashi|these|bins?|qbin)\b")),
)  # fmt: skip
"""Asked by anybody: the words can mean nothing else."""
ASKED_NEAR: tuple[tuple[Hazard, Late], ...] = (
    ("to feed", Late(
        rf"\b(?:can|could|may|should|will|is it ok if) (?:the |my |our )?{ANIMAL} (?:have|eat|get|"
        rf"drink|"
        rf"be given) (?:some|any|{_THAT})|"
        rf"\b(?:give|feed) {_THAT} to (?:the |my |our |your )?{ANIMAL}\b|"
        rf"^(?:(?:and|or|but|what about|how about) )?(?:to|for) (?:the |my |our )?{ANIMAL}(?: "
        rf"then)?$")),
    ("hands", Late(
        rf"\b(?:sores?|cuts?|wound|graze|blisters?|eczema|scratch(?:es)?) on (?:{WHOSE} )(?:\w+ "
        rf")?{_HAND}\b"
        rf".*\b(?:can|may|should|could|is it)\b")),
    ("gas", Late(r"\b(?:should|must|do|can|need to) (?:i |we )?(?:have to |need to )?(?:burp|vent) "
                 r"(?:it|them|the \w+)\b")),
    ("before digging", Late(
        r"\b(?:should|must|do|need) (?:i|we)\b.{0,20}\b(?:call|ring|phone|ask|"
        r"check)\b.{0,30}\b(?:before|"
        r"first)\b.{0,12}\b(?:dig|digging)\b")),
)  # fmt: skip
"""Asked of a bin, or while the talk is on one."""
FRAIL_TOLD = Late(
    rf"^(?:but |and )?(?:i|my \w+|we) (?:have|has|have got|got|am|'m|is|'s) {_FRAIL}$"
)
STALE = Late(
    r"\b(?:after|for|from) (?:a|one|two|three|\d+|several|some|the) (?:days?|weeks?|months?)\b|"
    r"\b(?:last|days?|weeks?|months?) (?:week|month|old|ago)\b|"
    r"\b(?:smells?|stinks?|reeks?|smelling|stinking|gone off|gone bad|rotten|foul|rancid)\b"
)
"""The liquid is not fresh, so that no recipe is to be given for it."""
